// orchard.yaml, one slip at a time: what is told, and where. The keys and forms are those of design.md 5; YAML by its standard, 1.2.
import { describe, expect, test } from 'vitest';
import { languageNamed } from '../../src/orchard/language.ts';
import { loadOrchard, zoneOf } from '../../src/orchard/load.ts';

const TREES = 'trees:\n  Gate: apple\n';
const read = (text: string) => loadOrchard(text, 'orchard.yaml');
const orchard = (text: string) => {
  const { orchard: found, notices } = read(text);
  expect(notices).toEqual([]);
  return found!;
};
/** Code, severity, line, column and the stretch that is underlined. */
const told = (text: string) => read(text).notices.map(({ code, severity, place }) => [code, severity, place?.line, place?.column, place && [...place.source].slice(place.column - 1, place.column - 1 + place.length).join('')]);
const facts = (text: string) => read(text).notices.map((n) => n.facts);

describe('the file as a whole', () => {
  test.each(['', '  \n\t\n'])('nothing in it: %j', (text) => expect(read(text)).toEqual({ orchard: null, notices: [{ code: 'orchard-empty', severity: 'error', facts: { file: 'orchard.yaml' } }], questions: [] }));
  test('no text', () => expect(read(`${TREES}\0`).notices).toEqual([{ code: 'not-text', severity: 'error', facts: { file: 'orchard.yaml' } }]));
  test('a list in place of keys', () => expect(told('- apple\n')).toEqual([['orchard-shape', 'error', 1, 1, '-']]));
  test('no trees', () => {
    expect(told('orchard: Home\n')).toEqual([['trees-missing', 'error', 1, 1, 'o']]);
    expect(told('trees: {}\n').map(([code]) => code)).toEqual(['trees-missing']);
  });
  test('the least that there can be', () => {
    expect(orchard(TREES)).toMatchObject({ name: '', where: { country: null }, budBreak: null, lastFrost: null, firstFrost: null, water: null, never: [], zones: [], shed: [], store: [], rules: [], trees: [{ name: 'Gate', crop: 'apple' }] });
  });
  test('keys with nothing behind them are as if they were not there', () => expect(orchard(`orchard:\nwhere:\nbud-break:\nwater:\nnever:\nsoil:\nshed:\nstore:\n${TREES}`)).toMatchObject({ name: '', zones: [], shed: [], store: [], never: [] }));
  test('all that it can hold', () => {
    const found = orchard(`orchard: 1.50\nwhere: Kent, GB\nbud-break: 12 April\nlast-frost: May 3\nfirst-frost: 30 October\nnever: chloride\nsoil:\n  bank: soil/a.txt, Gate strip\n${TREES}shed:\n  - Bone meal, 3-15-0, 5 lb\nstore:\n  - 10-10-10, 20 lb\n`);
    expect(found).toMatchObject({ name: '1.50', where: { country: 'GB' }, budBreak: { month: 4, date: 12 }, lastFrost: { month: 5, date: 3 }, firstFrost: { month: 10, date: 30 }, zones: [{ name: 'bank', file: 'soil/a.txt', sample: 'Gate strip', byLab: false, others: [] }], shed: [{ label: 'Bone meal' }], store: [{ printed: '10-10-10' }] });
    expect(found.never).toHaveLength(1);
    expect(found.shed[0]!.left).toBeCloseTo(5 * 453.59237, 6);
    expect(found.store[0]!.left).toBeNull();
  });
});

describe('what YAML hides or refuses', () => {
  test('a name that holds a # loses its end: an error in a key, a warning behind it', () => {
    expect(told('trees:\n  Plum #2: plum\n')).toEqual([['hidden-by-hash', 'error', 2, 8, '#2: plum']]);
    expect(facts('trees:\n  Plum #2: plum\n')).toEqual([{ hidden: '#2: plum', key: 'Plum' }]);
    expect(told(`orchard: Home #1\n${TREES}`)).toEqual([['hidden-by-hash', 'warning', 1, 15, '#1']]);
    expect(told(`${TREES}store:\n  - 10-10-10 #3, 5 lb\n`)).toEqual([['hidden-by-hash', 'warning', 4, 14, '#3, 5 lb']]);
  });
  test.each(['# a word\n', '  # a word\n', 'orchard: Home # a word\n', "orchard: 'Home #1'\n", 'orchard: "Home #1"\n', 'orchard: Home#1\n'])('%j hides nothing', (line) => expect(told(`${line}${TREES}`)).toEqual([]));
  test('what is broken is told once, at its place', () => {
    expect(told(`orchard: "Home\n${TREES}`).map(([code]) => code)).toContain('yaml-broken');
    const broken = read('trees:\n  Gate: apple\n\tPlum: plum\n').notices;
    expect(broken[0]).toMatchObject({ code: 'yaml-broken', severity: 'error', place: { line: 3 } });
    expect(String(broken[0]!.facts.yaml)).toMatch(/^[a-z ]+$/);
  });
  test('a name twice', () => {
    expect(told('trees:\n  Gate: apple\n  Gate: pear\n')).toEqual([['name-twice', 'error', 3, 3, expect.any(String)]]);
    expect(told('trees:\n  Gate: apple\n  gate: pear\n')).toEqual([['name-twice', 'error', 3, 3, 'gate']]);
  });
  test.each([['trees:\n  Gate: &a apple\n', 2], ['trees:\n  Gate: !!str apple\n', 2], ['trees:\n  A: &x apple\n  B: *x\n', 2], ['orchard: !!binary aGk=\ntrees:\n  Gate: apple\n', 1]])('marks that stand for something else: %j', (text, line) => {
    expect(read(text)).toMatchObject({ orchard: null, notices: [{ code: 'yaml-alias', severity: 'error', place: { line } }] });
  });
});

describe('keys', () => {
  test('one that there is none of, with what was perhaps meant', () => {
    expect(told(`stroe:\n  - x\n${TREES}`)).toEqual([['key-unknown', 'error', 1, 1, 'stroe']]);
    expect(facts(`stroe:\n  - x\n${TREES}`)).toMatchObject([{ read: 'stroe', guess: 'store' }]);
    expect(facts(`place: Kent\n${TREES}`)).toMatchObject([{ guess: 'where' }]);
    expect(String(facts(`x: y\n${TREES}`)[0]!.expected).split(', ')).toEqual(['orchard', 'where', 'language', 'bud-break', 'last-frost', 'first-frost', 'water', 'never', 'soil', 'trees', 'shed', 'store']);
  });
  test('another form than a key wants', () => {
    expect(told('trees:\n  - apple\n')).toEqual([['value-misshapen', 'error', 2, 3, expect.any(String)]]);
    expect(facts(`${TREES}shed:\n  - a: b\n`)).toEqual([{ key: 'shed → 0', expected: 'shed' }]);
    expect(facts(`orchard: [a]\n${TREES}`)).toEqual([{ key: 'orchard', expected: 'orchard' }]);
    expect(told('trees:\n  Gate:\n')).toEqual([['crop-missing', 'error', 2, 3, 'Gate']]);
  });
});

test.each<[string, string | null, string | null]>([['German', 'GB', 'de'], ['DE', null, 'de'], ['Deutsch', 'US', 'de'], ['Spanish', null, 'es'], ['español', null, 'es'], ['espan\u0303ol', null, 'es'], ['Espanol', null, 'es'], ['English', 'GB', 'en-GB'], ['en', null, 'en-GB'], ['english', 'US', 'en-US'], ['en-us', 'GB', 'en-US'], ['constructor', null, null], ['', null, null]])('the language %s in %s: %s', (said, country, language) => expect(languageNamed(said, country)).toBe(language));

describe('single lines', () => {
  test.each([['bud-break: spring', 'bud-break', 'spring', 12], ['last-frost: 31 June', 'last-frost', '31 June', 13], ['first-frost: 5', 'first-frost', '5', 14]])('%s', (line, key, said, column) => {
    expect(told(`${line}\n${TREES}`)).toEqual([['date-wrong', 'error', 1, column, said]]);
    expect(facts(`${line}\n${TREES}`)).toEqual([{ key, read: said }]);
  });
  test('a place that is not known', () => {
    expect(told(`where: Kent, Gondor\n${TREES}`)).toEqual([['where-unknown', 'error', 1, 8, 'Kent, Gondor']]);
    expect(facts(`where: Somewhere, Irelnd\n${TREES}`)).toMatchObject([{ read: 'Somewhere, Irelnd', guess: 'Ireland' }]);
  });
  test('a language', () => {
    expect(orchard(`where: Ohio, US\nlanguage: English\n${TREES}`).where.language).toBe('en-US');
    expect(orchard(`where: Kent, GB\nlanguage: en-US\n${TREES}`).where).toMatchObject({ country: 'GB', language: 'en-US' });
    expect(told(`language: Klingon\n${TREES}`)).toEqual([['language-unknown', 'error', 1, 11, 'Klingon']]);
    expect(facts(`language: dee\n${TREES}`)).toMatchObject([{ read: 'dee', guess: 'de' }]);
  });
  test('water', () => {
    expect(orchard(`water: alkalinity 200 ppm\n${TREES}`).water).not.toBeNull();
    expect(told(`water: wet\n${TREES}`)).toEqual([['water-wrong', 'error', 1, 8, 'wet']]);
    expect(told(`water: hardness 200 ppm\n${TREES}`).map(([code]) => code)).toEqual(['water-hardness']);
  });
  test('what is never fed', () => {
    expect(told(`never: kryptonite\n${TREES}`)).toEqual([['never-wrong', 'error', 1, 8, 'kryptonite']]);
    expect(facts(`never: kryptonite\n${TREES}`)[0]!.list).toContain('chloride');
  });
});

describe('zones', () => {
  const zones = (text: string) => orchard(`soil:\n${text}${TREES}`).zones;
  test('a file, its sample, and by the lab', () => {
    expect(zones('  bank: a.txt, north, 2 ft, By The Lab\n')).toMatchObject([{ name: 'bank', file: 'a.txt', sample: 'north, 2 ft', byLab: true }]);
    expect(zones('  bank: a.txt, by the lab\n')).toMatchObject([{ sample: null, byLab: true }]);
    expect(zones('  bank: a,b.txt\n')).toMatchObject([{ file: 'a,b.txt', sample: null, byLab: false }]);
    expect(zones('  bank: a.txt\n')[0]!.place).toMatchObject({ line: 2, column: 9, length: 5 });
  });
  test('several reports of one', () => {
    expect(zones('  bank:\n    - a.txt\n    - b.txt, north\n')).toMatchObject([{ name: 'bank', file: 'a.txt', others: [{ file: 'b.txt', sample: 'north', byLab: false }] }]);
  });
  test('one for all, without a name', () => expect(orchard(`soil: a.txt\n${TREES}`).zones).toMatchObject([{ name: 'soil', file: 'a.txt', others: [] }]));
  test('its reports as a list', () => expect(orchard(`soil:\n  - a.txt\n  - b.txt\n${TREES}`).zones).toMatchObject([{ name: 'soil', file: 'a.txt', others: [{ file: 'b.txt' }] }]));
  test('without a report', () => {
    expect(told(`soil:\n  bank: []\n${TREES}`)).toEqual([['zone-without-report', 'error', 2, 3, 'bank']]);
    expect(facts(`soil:\n  bank: ""\n${TREES}`)).toEqual([{ zone: 'bank' }]);
  });
  test('by a name that is a fact of a tree', () => {
    expect(told(`soil:\n  mulch: a.txt\n${TREES}`)).toEqual([['zone-reserved', 'error', 2, 3, 'mulch']]);
    expect(facts(`soil:\n  mulch: a.txt\n${TREES}`)).toEqual([{ zone: 'mulch' }]);
  });
  test.each(['/etc/a.txt', '~/a.txt', '\\\\host\\a.txt', 'C:\\a.txt', 'c:a.txt', '../a.txt', 'soil/../../a.txt', 'soil\\..\\a.txt', '..', 'soil/..'])('a path out of the folder: %s', (path) => {
    expect(told(`soil:\n  bank: ${path}\n${TREES}`)).toEqual([['path-outside', 'error', 2, 9, path]]);
    expect(facts(`soil:\n  bank: ${path}\n${TREES}`)).toEqual([{ path }]);
  });
  test.each(['soil/a.txt', '..a.txt', 'a..txt', 'a../b.txt', 'my.soil/a.txt', 'ab:c.txt'])('a path within it: %s', (path) => expect(zones(`  bank: ${path}\n`)[0]!.file).toBe(path));
  test('the zone of a tree: named, or the only one', () => {
    const named = orchard(`soil:\n  bank: a.txt\n  top: b.txt\ntrees:\n  A: apple, top\n  B: apple\n`);
    expect(named.trees.map((t) => zoneOf(t, named))).toEqual(['top', undefined]);
    const only = orchard(`soil:\n  bank: a.txt\n${TREES}`);
    expect(only.trees.map((t) => zoneOf(t, only))).toEqual(['bank']);
  });
});

describe('trees', () => {
  test.each([['12', 'name-of-digits'], ['"a\\u0007"', 'name-control'], ['"\\u0085"', 'name-control'], ['"\\u007f"', 'name-control'], ['"\\u009f"', 'name-control']])('a name %s: %s', (name, code) => expect(told(`trees:\n  ${name}: apple\n`)).toEqual([[code, 'error', 2, 3, name]]));
  test.each(['12a', 'a12', '12 b', 'Crème', '\u00a0x'])('a name %s may be', (name) => expect(read(`trees:\n  "${name}": apple\n`).notices).toEqual([]));
  test('a slip stands where it was typed', () => {
    expect(told('trees:\n  Gate: apple, dwraf\n')).toEqual([['item-unknown', 'error', 2, 16, 'dwraf']]);
    expect(told('trees:\n  Gate: "apple, dwraf"\n')).toEqual([['item-unknown', 'error', 2, 17, 'dwraf']]);
    expect(told("trees:\n  Gate: 'apple, dwraf'\n")).toEqual([['item-unknown', 'error', 2, 17, 'dwraf']]);
  });
  test('over several lines', () => {
    expect(orchard('trees:\n  Gate: apple,\n    dwarf\n').trees[0]).toMatchObject({ crop: 'apple', size: 'dwarf' });
    expect(told('trees:\n  Gate: apple,\n    dwraf\n')).toEqual([['item-unknown', 'error', 2, 9, 'apple,']]);
    expect(told('trees:\n  Gate: "apple,\n    dwraf"\n')).toEqual([['item-unknown', 'error', 2, 9, '"apple,']]);
    expect(orchard('trees:\n  Gate: >-\n    apple,\n    dwarf\n').trees[0]).toMatchObject({ size: 'dwarf' });
  });
  test('as a map of the same facts', () => {
    const { trees } = orchard('soil:\n  bank: a.txt\ntrees:\n  Gate:\n    Crop: 3 apples\n    size: dwarf\n    zone: bank\n    across: 3 m\n    high: 4 m\n    planted: 2019\n    trunk: 10 cm round\n    mulch: true\n    grass: false\n    flags: [pruned hard, off year]\n    leaf: [n 2.1 %, k 1 %]\n');
    expect(trees).toMatchObject([{ count: 3, crop: 'apple', size: 'dwarf', zone: 'bank', across: 3, high: 4, planted: { year: 2019 }, trunk: { m: 0.1, measured: 'round' }, flags: ['mulch', 'pruned hard', 'off year'], leaf: [{ nutrient: 'N' }, { nutrient: 'K' }] }]);
  });
  test('a slip in such a map', () => expect(told('trees:\n  Gate:\n    crop: apple\n    size: dwraf\n')).toEqual([['item-unknown', 'error', 4, 11, 'dwraf']]));
  test('nothing told of a tree', () => expect(told('trees:\n  Gate: ""\n')).toEqual([['crop-missing', 'error', 2, 3, 'Gate']]));
  test('questions of each', () => expect(read('trees:\n  A: apple, trunk 4 in\n  B: apple, trunk 4 in\n').questions.map((q) => q.about)).toEqual(['A', 'B']));
});

describe('bags', () => {
  test('a slip in a label stands at its line', () => expect(told(`${TREES}store:\n  - Something nice\n`)).toEqual([['grade-missing', 'error', 4, 5, 'Something nice']]));
  test('the same bag twice in the store, but not in the shed and the store', () => {
    expect(told(`${TREES}store:\n  - 10-10-10, 5 lb\n  - 10-10-10, 5 lb\n`)).toEqual([['name-twice', 'error', 5, 5, '10-10-10, 5 lb']]);
    expect(facts(`${TREES}store:\n  - Mix, 10-10-10, 5 lb\n  - Mix, 10-10-10, 5 lb\n`)).toEqual([{ read: 'Mix' }]);
    expect(told(`${TREES}store:\n  - 10-10-10, 5 lb\n  - 10-10-10, 20 lb\n`)).toEqual([]);
    expect(told(`${TREES}shed:\n  - 10-10-10, 5 lb\nstore:\n  - 10-10-10, 5 lb\n`)).toEqual([]);
    expect(told(`${TREES}shed:\n  - 10-10-10, 5 lb\n  - 10-10-10, 5 lb\n`)).toEqual([]);
  });
  test('numbers as the country prints them', () => {
    expect(orchard(`where: Victoria, AU\n${TREES}store:\n  - 10-4-6, 5 kg\n`).store[0]!.grade.P2O5).toBeCloseTo(0.04 / 0.4364, 4);
    expect(orchard(`${TREES}store:\n  - 10-4-6, 5 kg\n`).store[0]!.grade.P2O5).toBeCloseTo(0.04, 9);
  });
});
