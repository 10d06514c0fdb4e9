// The text of a new orchard.yaml and of the form for its report, line by line. What YAML takes for a word, a number or a truth: its standard, 1.2, and 1.1 for "yes" and "no".
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { loadOrchard } from '../../src/orchard/load.ts';
import type { NewOrchard } from '../../src/orchard/new-orchard.ts';
import { FORM_FILE, languageOf, NO_ANSWERS, orchardText, reportForm, splitTree } from '../../src/orchard/new-orchard.ts';

const asked = (more: Partial<NewOrchard> = {}): NewOrchard => ({ ...NO_ANSWERS, trees: [{ name: 'Gate', line: 'apple' }], ...more });
const lines = (more: Partial<NewOrchard> = {}): string[] => orchardText(asked(more)).split('\n');
/** The line that begins so, with or without the sign of a comment. */
const line = (key: string, more: Partial<NewOrchard> = {}): string | undefined => lines(more).find((l) => l.startsWith(`${key}:`) || l.startsWith(`# ${key}:`));

describe('a tree as it is typed', () => {
  test.each<[string, object | null]>([
    ['Gate apple: apple, dwarf', { name: 'Gate apple', line: 'apple, dwarf' }], ['  Gate :  apple ', { name: 'Gate', line: 'apple' }], ['Row 1: left: apple', { name: 'Row 1: left', line: 'apple' }], ['"Gate": apple', { name: 'Gate', line: 'apple' }], ["' Gate ': apple", { name: 'Gate', line: 'apple' }], ['"Gate\': apple', { name: '"Gate\'', line: 'apple' }], ['The "old": apple', { name: 'The "old"', line: 'apple' }],
    ['Gate: apple,', { name: 'Gate', line: 'apple' }], ['Gate: apple;', { name: 'Gate', line: 'apple' }], ['Gate: apple, 3 m across.', { name: 'Gate', line: 'apple, 3 m across' }], ['Gate: apple ,;.', { name: 'Gate', line: 'apple ' }],
    ['apple', null], ['Gate:', null], [': apple', null], ['"": apple', null], ['', null], ['Gate: ,', null],
  ])('%s', (typed, tree) => expect(splitTree(typed)).toEqual(tree));
});

describe('what is told stands there, what is not stands as an example behind a #', () => {
  test.each<[string, Partial<NewOrchard>, string]>([
    ['orchard', { name: 'Chapel Bank' }, 'orchard: Chapel Bank'], ['orchard', {}, '# orchard: Chapel Bank'], ['where', { where: 'Ohio, US' }, 'where: Ohio, US'], ['where', {}, '# where: Ohio, US'],
    ['bud-break', { budBreak: '12 April' }, 'bud-break: 12 April'], ['bud-break', { where: 'Ohio, US' }, '# bud-break: 12 April'], ['first-frost', { firstFrost: '12 October' }, 'first-frost: 12 October'], ['first-frost', { where: 'Ohio, US' }, '# first-frost: 12 October'], ['last-frost', { lastFrost: '3 May' }, 'last-frost: 3 May'],
  ])('%s of %j', (key, more, expected) => expect(line(key, more)).toMatch(new RegExp(`^${expected.startsWith('#') ? `# ${key}: .+` : expected}$`)));
  test('a last frost that nobody told is not asked for', () => expect(line('last-frost')).toBeUndefined());
  test('bags', () => {
    expect(lines({ shed: ['Bone meal, 3-15-0, 5 lb'], store: ['10-10-10, 20 lb, $9', 'Urea, 46-0-0'] })).toEqual(expect.arrayContaining(['shed:', '  - Bone meal, 3-15-0, 5 lb', 'store:', '  - 10-10-10, 20 lb, $9', '  - Urea, 46-0-0']));
    const none = lines();
    expect(none.slice(none.indexOf('# shed:'), none.indexOf('# shed:') + 2)).toEqual(['# shed:', expect.stringMatching(/^# {3}- .+, 3-15-0/)]);
    expect(none.slice(none.indexOf('# store:'), none.indexOf('# store:') + 2)).toEqual(['# store:', expect.stringMatching(/^# {3}- .+, 21-0-0/)]);
  });
  test('it ends with a line end, and blank lines part its four matters', () => {
    expect(lines().at(-1)).toBe('');
    expect(lines().filter((l) => l === '')).toHaveLength(4);
  });
  test('a lab stands in the note above the soil', () => {
    expect(lines({ lab: 'My\u0007Lab' }).find((l) => l.includes('My Lab'))).toMatch(/^# [^(]* \(My Lab\)\. /);
    expect(orchardText(asked())).not.toContain('()');
  });
});

describe('zones', () => {
  test('one for the whole ground where none is told, in the language of the place', () => {
    expect(lines()).toContain(`  garden: ${FORM_FILE}`);
    expect(lines()).toContain('  Gate: apple, garden');
  });
  test('one that is told', () => {
    expect(lines({ zones: ['bank'] })).toEqual(expect.arrayContaining([`  bank: ${FORM_FILE}`, '  Gate: apple, bank']));
    expect(lines({ zones: ['Bank'], trees: [{ name: 'Gate', line: 'apple, BANK' }] })).toContain('  Gate: apple, BANK');
  });
  test('several: each has its sample, and no tree is put into one', () => {
    const all = lines({ zones: ['bank', 'top'] });
    expect(all).toEqual(expect.arrayContaining([`  bank: ${FORM_FILE}, sample 1`, `  top: ${FORM_FILE}, sample 2`, '  Gate: apple']));
  });
  test('a tub stands in none', () => {
    expect(lines({ zones: ['bank'], trees: [{ name: 'Lemon', line: 'lemon, Tub 40 L' }] })).toContain('  Lemon: lemon, Tub 40 L');
    expect(lines({ zones: ['bank'], trees: [{ name: 'Lemon', line: 'lemon, tubs' }] })).toContain('  Lemon: lemon, tubs, bank');
  });
});

describe('words that YAML would misread stand in quotation marks', () => {
  test.each(['yes', 'No', 'y', 'N', 'ON', 'off', 'true', 'False', 'null', '12', '1.5', '-3', '+3', '1,5', '12-3', 'a: b', 'a #b', '- a', '"a"', "'a", '[a', '{a', '*a', '&a', '!a', '%a', '@a', '`a', '> a', '| a', '? a', '~', ' a', 'a\tb', 'a\nb', 'a\u0085b', 'a\u2028b', 'a\u007fb', 'a\ufeffb', '#a', ':a', 'a_b', 'a;b', '.5 acre'])('%j', (name) => {
    const text = orchardText(asked({ name }));
    const typed = text.split('\n')[0]!;
    expect(typed).toMatch(/^orchard: "/);
    expect(typed).not.toMatch(/[\u007f-\u009f\u2028\u2029\ufeff]/);
    expect((parse(text) as { orchard: unknown }).orchard).toBe(name);
  });
  test.each(['Chapel Bank', 'yes please', 'nobody', 'yard', '12 acres', 'a1', "Grand-père's", 'Bône', 'A & B', '50 % slow', 'a/b', 'x+y', '(old)', '$5', '€9 bag', '’t Hof', '21-0-0, 4 lb, $9'])('%s stands plain, save where it begins with another sign', (name) => {
    const typed = orchardText(asked({ name })).split('\n')[0]!;
    expect(typed).toBe(/^[\p{L}\d$£€]/u.test(name) ? `orchard: ${name}` : `orchard: ${JSON.stringify(name)}`);
    expect((parse(typed) as { orchard: unknown }).orchard).toBe(name);
  });
});

test('what is written loads again with what was answered', () => {
  const { orchard, notices } = loadOrchard(orchardText(asked({ name: 'no', where: 'Kent, GB', budBreak: '12 April', firstFrost: '30 October', zones: ['bank'], trees: [{ name: 'Gate: left', line: 'apple, dwarf' }, { name: 'Lemon', line: 'lemon, tub 40 L' }], shed: ['Bone meal, 3-15-0, 5 kg'], store: ['10-10-10, 20 kg, £9'] })), 'orchard.yaml');
  expect(notices).toEqual([]);
  expect(orchard).toMatchObject({ name: 'no', where: { country: 'GB' }, budBreak: { month: 4, date: 12 }, zones: [{ name: 'bank', file: FORM_FILE, sample: null }], trees: [{ name: 'Gate: left', size: 'dwarf', zone: 'bank' }, { name: 'Lemon', tub: 40 }], shed: [{ label: 'Bone meal' }], store: [{ printed: '10-10-10' }] });
});

describe('the form', () => {
  const form = (more: Partial<NewOrchard> = {}): string[] => reportForm(asked(more)).split('\n');
  test('a line for each value, empty behind the colon, and the methods once', () => {
    expect(form().filter((l) => l !== '' && !l.startsWith('#'))).toEqual(['Sample 1: garden', 'taken:', 'depth:', 'pH:', 'buffer pH:', 'Phosphorus (P):', 'Potassium (K):', 'Magnesium (Mg):', 'Calcium (Ca):', 'Organic matter:', 'CEC:', 'texture:', 'phosphorus method:', 'potassium method:', 'buffer pH method:']);
    expect(form().slice(0, 3)).toEqual([expect.stringMatching(/^# /), expect.stringMatching(/^# /), '']);
    expect(form().at(-1)).toBe('');
  });
  test('a sample for each zone', () => {
    expect(form({ zones: ['bank', 'top'] }).filter((l) => l.startsWith('Sample'))).toEqual(['Sample 1: bank', 'Sample 2: top']);
    expect(form({ zones: ['bank', 'top'] }).filter((l) => l === 'pH:')).toHaveLength(2);
    expect(form({ zones: ['bank', 'top'] }).filter((l) => l === 'phosphorus method:')).toHaveLength(1);
  });
  // A heading that the reader could take for a value, or for another sample, is left out; signs of the form's own are taken out of a name.
  test.each([['sample 7', 'Sample 1'], ['Samples', 'Sample 1: Samples'], ['ph 6', 'Sample 1'], ['pH strip', 'Sample 1: pH strip'], ['***', 'Sample 1'], ['low: left', 'Sample 1: low left'], ['A & B', 'Sample 1: A & B'], ['old sample', 'Sample 1: old sample'], ['top_strip #2', 'Sample 1: top strip 2']])('%s: %s', (zone, heading) => expect(form({ zones: [zone] }).filter((l) => l.startsWith('Sample'))).toEqual([heading]));
  test('a lab whose methods are held, by its name there; another is not written', () => {
    expect(form({ lab: 'penn state' }).filter((l) => l.startsWith('lab:'))).toEqual(['lab: Penn State']);
    expect(form({ lab: 'somebody else' }).filter((l) => l.startsWith('lab:'))).toEqual([]);
  });
});

test('the language is that of the place, else British', () => {
  expect([languageOf(asked()), languageOf(asked({ where: 'Ohio, US' })), languageOf(asked({ where: 'nowhere' }))]).toEqual(['en-GB', 'en-US', 'en-GB']);
});
