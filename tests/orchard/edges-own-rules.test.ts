// rules.yaml, one slip at a time: what is told, and where. A rule's keys are those of design.md; YAML by its standard, 1.2.
import { describe, expect, test } from 'vitest';
import { loadRules } from '../../src/orchard/own-rules.ts';

const GOOD: Readonly<Record<string, string>> = { id: 'mine', crops: '[apple]', by: 'plant', gives: '{ of: N, unit: oz }', low: '3', from: 'my notebook' };
const rule = (over: Readonly<Record<string, string>> = {}): string => Object.entries({ ...GOOD, ...over }).filter(([, v]) => v !== '-').map(([k, v], i) => `${i === 0 ? '- ' : '  '}${k}: ${v}\n`).join('');
const under = (source: string, line: number, column: number, length: number): string => [...source.split('\n')[line - 1]!].slice(column - 1, column - 1 + length).join('');
const told = (source: string) => loadRules(source).notices.map(({ code, severity, facts, place }) => ({ code, severity, facts, at: place ? [place.line, place.column, under(source, place.line, place.column, place.length)] : null }));

test('a rule as it is written, led by the notebook', () => {
  expect(loadRules(rule())).toEqual({ notices: [], rules: [{ id: 'mine', crops: ['apple'], by: 'plant', gives: { of: 'N', unit: 'oz' }, low: 3, source: 'own-rules', region: 'own', cite: { source: 'own-rules', at: 'my notebook', mark: 'read' } }] });
});
test('two of them', () => expect(loadRules(rule() + rule({ id: 'other', crops: '[pear, plum]' })).rules.map((r) => [r.id, r.crops])).toEqual([['mine', ['apple']], ['other', ['pear', 'plum']]]));
test.each(['', '# nothing yet\n', '---\n'])('nothing in it is no mistake: %j', (source) => expect(loadRules(source)).toEqual({ rules: [], notices: [] }));

describe('the file as a whole', () => {
  test.each([['id: mine\n'], ['mine\n'], ['- mine\n'], [`${rule()}- x\n`]])('no list of rules: %j', (source) => expect(told(source)).toMatchObject([{ code: 'rules-shape', severity: 'error', at: [1, 1, source[0]] }]));
  test('a line too long', () => expect(told(`#${' '.repeat(100_000)}\n${rule()}`)).toMatchObject([{ code: 'line-too-long', severity: 'error', facts: { length: 100_001, most: 100_000 }, at: [1, 1, '#'] }]));
  test('nested deeper than any rule needs', () => expect(told(`${'['.repeat(30)}\n`)).toMatchObject([{ code: 'yaml-broken', facts: { yaml: 'nesting' } }]));
  test('broken', () => {
    const [first] = told('- id: mine\n  crops: [apple\n');
    expect(first).toMatchObject({ code: 'yaml-broken', severity: 'error' });
    expect(String(first!.facts.yaml)).toMatch(/^[a-z ]+$/);
  });
  test.each([['- &a x\n', [1, 6, 'x']], ['- !!str x\n', [1, 9, 'x']], ['- id: &a mine\n- *a\n', [1, 10, 'mine']]])('marks that stand for something else, told at what they mark: %j', (source, at) => expect(told(source)).toMatchObject([{ code: 'yaml-alias', severity: 'error', at }]));
});

describe('a rule', () => {
  test('a key that there is none of', () => {
    expect(told(rule({ hgih: '4' }))).toMatchObject([{ code: 'rule-key', severity: 'error', facts: { read: 'hgih', guess: 'high' }, at: [7, 3, 'hgih'] }]);
    expect(String(told(rule({ hgih: '4' }))[0]!.facts.expected).split(', ')).toEqual(['id', 'crops', 'kinds', 'size', 'climate', 'by', 'gives', 'base', 'low', 'high', 'cap', 'years', 'first', 'doses', 'when', 'ground', 'bearing', 'spacingFt', 'if', 'from']);
  });
  test.each<[Record<string, string>, string, object]>([
    [{ low: '-' }, 'rule-missing', { key: 'low' }], [{ from: '-' }, 'rule-missing', { key: 'from' }], [{ low: 'three' }, 'rule-kind', { key: 'low', kind: 'number' }], [{ crops: 'apple' }, 'rule-kind', { key: 'crops', kind: 'array' }], [{ low: '-3' }, 'rule-more', { key: 'low', least: '0' }], [{ doses: '13' }, 'rule-less', { key: 'doses', most: '12' }],
    [{ by: 'moon' }, 'rule-one-of', { key: 'by', list: expect.stringContaining('plant') }], [{ crops: '[aple]' }, 'rule-one-of', { key: 'crops → 0' }], [{ high: '2' }, 'rule-value', { key: 'high', why: 'rule-span' }], [{ years: '[5, 2]' }, 'rule-value', { key: 'years', why: 'rule-years' }],
    [{ gives: '{ of: product, unit: oz }' }, 'rule-value', { key: 'gives', why: 'rule-percent' }], [{ gives: '{ of: N, unit: cup }' }, 'rule-value', { key: 'gives', why: 'rule-cup' }], [{ by: 'area' }, 'rule-value', { key: 'gives', why: 'rule-area' }], [{ gives: '{ of: product, unit: oz, percentN: 90 }' }, 'rule-less', { key: 'gives → percentN', most: '82' }], [{ crops: '[]' }, 'rule-more', { key: 'crops', least: '1' }], [{ first: '2' }, 'rule-kind', { key: 'first' }],
  ])('%j: %s', (over, code, facts) => {
    const [first, ...others] = told(rule(over));
    expect(others).toEqual([]);
    expect(first).toMatchObject({ code, severity: 'error', facts });
    expect(loadRules(rule(over)).rules).toEqual([]);
  });
  test('each at its place', () => {
    expect(told(rule({ low: 'three' }))[0]!.at).toEqual([5, 8, 'three']);
    expect(told(rule({ by: 'moon' }))[0]!.at).toEqual([3, 7, 'moon']);
    expect(told(rule({ low: '-' }))[0]!.at!.slice(0, 2)).toEqual([1, 3]);
    expect(told(rule({ crops: '[apple, aple]' }))[0]!.at).toEqual([2, 18, 'aple']);
  });
  test('all mistakes at once, and no rule of the file holds', () => {
    const { rules, notices } = loadRules(rule() + rule({ id: 'b', low: 'three', by: 'moon' }));
    expect(notices.map((n) => n.code).sort()).toEqual(['rule-kind', 'rule-one-of']);
    expect(rules).toEqual([]);
  });
  test('one name for two', () => expect(told(rule() + rule())).toMatchObject([{ code: 'name-twice', severity: 'error', facts: { read: 'mine' }, at: [7, 3, expect.any(String)] }]));
  test('"no" is a word, not a truth', () => expect(told(rule({ bearing: 'no' }))).toMatchObject([{ code: 'rule-kind', facts: { key: 'bearing', kind: 'boolean' } }]));
});

// More than 3 kg of nitrogen to a plant or 40 g to a square metre is a slip (tables/limits.ts). Without a cap: twenty years, twenty inches of trunk, twenty feet of height, forty of crown.
describe('what no plant can take', () => {
  const G = '{ of: N, unit: g }';
  test.each<[Record<string, string>, number | null]>([
    [{ gives: G, low: '3000' }, null], [{ gives: G, low: '3001' }, 3001], [{ gives: G, low: '10', high: '3100' }, 3100], [{ gives: G, low: '10', high: '4000', cap: '3000' }, null], [{ gives: G, low: '10', cap: '3002' }, 3002],
    [{ by: 'years', gives: G, low: '150' }, null], [{ by: 'years', gives: G, low: '151' }, 3020], [{ by: 'trunk', gives: G, low: '151' }, 3020], [{ by: 'height', gives: G, low: '151' }, 3020], [{ by: 'canopy', gives: G, low: '75' }, null], [{ by: 'canopy', gives: G, low: '76' }, 3040], [{ by: 'years', gives: G, low: '500', cap: '2000' }, null],
    [{ gives: '{ of: product, unit: kg, percentN: 10 }', low: '30' }, null], [{ gives: '{ of: product, unit: kg, percentN: 10 }', low: '31' }, 3100],
    [{ by: 'area', gives: '{ of: N, unit: g/m2 }', low: '40' }, null], [{ by: 'area', gives: '{ of: N, unit: g/m2 }', low: '41' }, 41],
  ])('%j: %s', (over, grams) => {
    const found = told(rule(over));
    if (grams === null) expect(found).toEqual([]);
    else expect(found).toMatchObject([{ code: 'rule-absurd', severity: 'error', facts: { id: 'mine', grams, limit: over.by === 'area' ? 40 : 3000, unit: over.by === 'area' ? 'g/m²' : 'g' }, at: [1, 3, expect.any(String)] }]);
  });
});
