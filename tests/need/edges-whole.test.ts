// The need of one tree as a whole: its verdict, what halts it, its span, and what is asked. Ten square metres of crown; figures of the pages in tables/rules*.ts.
import { describe, expect, test } from 'vitest';
import type { Facts } from '../../src/need/facts.ts';
import type { Need } from '../../src/need/need.ts';
import { decided, needOf } from '../../src/need/need.ts';
import { told } from '../../src/reason/figure.ts';
import type { Advice } from '../../src/soil/advice.ts';
import { sourceOf } from '../../src/tables/sources.ts';
import type { Rule } from '../../src/tables/rule.ts';
import type { Value } from './parts.ts';
import { facts } from './parts.ts';

const OLD = 'apple, planted 2016, bearing';
const need = (line: string, soil: readonly Value[] = [], more: Partial<Facts> = {}, where = 'Ohio, US'): Need => needOf(facts(line, soil, more, where));
const guess = (line: string, where = 'Ohio, US'): Facts => { const f = facts(line, [], {}, where); return { ...f, crown: { ...f.crown, guessed: true } }; };
const asked = (n: Need): readonly string[] => n.questions.map((q) => q.code);
const made = (source: string, more: Partial<Rule> = {}): Rule => ({ id: 'made', source, crops: ['apple'], region: 'US-OH', by: 'plant', gives: { of: 'N', unit: 'g' }, low: 10, cite: { source, at: 'made', mark: 'read' }, ...more });
const says = (of: string, value: number): Advice => ({ of, value, unit: 'g/m2', per: 'area', product: null, line: 7 }) as unknown as Advice;

describe('the verdict', () => {
  const low = (item: string): Value => ({ item, target: 'far-below' });
  test('fed where any of the three is wanted', () => {
    expect(need(OLD)).toMatchObject({ verdict: 'feed', stops: [], N: { value: expect.closeTo(70, 9) as number }, P2O5: { value: 0 }, K2O: { value: 0 }, MgO: null });
    expect(need(`${OLD}, fed lawn`).verdict).toBe('none');
    expect(need(`${OLD}, fed lawn`, [low('phosphorus')])).toMatchObject({ verdict: 'feed', N: { value: 0 }, P2O5: { value: expect.closeTo(40, 9) as number }, K2O: { value: 0 } });
    expect(need(`${OLD}, fed lawn`, [low('potassium')])).toMatchObject({ verdict: 'feed', N: { value: 0 }, P2O5: { value: 0 }, K2O: { value: expect.closeTo(150, 9) as number } });
    expect(need(OLD, [{ item: 'magnesium', target: 'below' }]).MgO!.value).toBeCloseTo(50, 9);
  });
  test('what halts it leaves what it would have been', () => {
    const halted = need(`${OLD}, drought`, [low('phosphorus'), low('potassium'), low('magnesium')]);
    expect(halted).toMatchObject({ verdict: 'wait', stops: [{ id: 'drought' }], MgO: null, questions: [], nitrogen: { none: null } });
    for (const [of, would] of [['N', 70], ['P2O5', 40], ['K2O', 150]] as const) {
      expect(halted[of]).toMatchObject({ value: 0, unit: 'g', of, step: 'stopped', cite: { source: 'grower', at: 'flag' }, from: [{ value: expect.closeTo(would, 9) as number, of }] });
    }
  });
  // Our judgement: over 15 % of organic matter it is no field soil.
  test.each([[15, []], [15.1, ['not-soil']]] as const)('%f %% of organic matter', (value, ids) => {
    const n = need(OLD, [{ item: 'organic-matter', value, unit: '%' }]);
    expect(n.stops.map((s) => s.id)).toEqual(ids);
    if (ids.length > 0) expect(n.stops[0]).toMatchObject({ value, cite: { source: 'medlar', at: 'organic-matter' } });
  });
});

test('no figures for the crop: nothing is given, and the trials that are held are told', () => {
  const n = need('pomegranate, planted 2016, bearing, drought');
  expect(n).toMatchObject({ verdict: 'wait', stops: [{ id: 'no-figures', cite: { source: 'medlar', at: 'no-figures', mark: 'judgement' } }, { id: 'drought' }], MgO: null, leaflets: [], questions: [], nitrogen: { none: null, ifBelow: null, cap: 0, doses: 0, followed: null, lead: null, half: null, need: { value: 0 } } });
  for (const of of ['N', 'P2O5', 'K2O'] as const) {
    expect(n[of]).toMatchObject({ value: 0, unit: 'g', of, step: 'stopped', cite: { at: 'no-figures' }, from: [{ unit: 'm2', of: 'crown' }] });
    expect(n.span[of].map((x) => x.value)).toEqual([0, 0]);
  }
  // Punjab's trial: 300 g of nitrogen a bearing tree.
  expect(n.rules.map((r) => r.value)).toEqual([300]);
  expect(need('pomegranate, planted 2016, tub 60 L')).toMatchObject({ verdict: 'feed', stops: [], rules: [] });
});

describe('neither age nor width', () => {
  test('none until one of them is told', () => {
    const n = needOf(guess('apple, trunk 4 in across'));
    expect(n).toMatchObject({ verdict: 'none', stops: [], MgO: null, nitrogen: { none: 'size-unknown', ifBelow: null, cap: 0, doses: 0, followed: null, lead: null, half: null } });
    for (const of of ['N', 'P2O5', 'K2O'] as const) expect(n[of]).toMatchObject({ value: 0, unit: 'g', of, step: 'none', cite: { source: 'medlar', at: 'size-unknown', mark: 'judgement' } });
    expect([n.span.P2O5, n.span.K2O].map((s) => s.map((x) => x.value))).toEqual([[0, 0], [0, 0]]);
    // Colorado: 0.1 lb an inch of trunk is among the rules that fit.
    expect(n.rules.some((r) => r.cite.source === 'colorado-1216' && Math.abs(r.value - 0.4 * 453.59237) < 1e-6)).toBe(true);
    expect([n.span.N[0].value, n.span.N[1].value]).toEqual([0, Math.max(...n.rules.map((r) => r.value))]);
    expect(n.leaflets.length).toBeGreaterThan(0);
    expect(n.questions.map((q) => [q.code, q.about, q.facts, q.choices, q.changes])).toEqual(['planted-missing', 'crown-missing'].map((code) => [code, 'A', { tree: 'A', crop: 'apple' }, [], 'changes-nitrogen']));
    expect(n.questions[0]!.place).toMatchObject({ file: 'orchard.yaml' });
  });
  test('where the answer would change nothing, nothing is asked', () => {
    expect(needOf(guess('apple, fed lawn'))).toMatchObject({ nitrogen: { none: 'fed-lawn' }, questions: [] });
    expect(needOf(guess('apple, pruned hard'))).toMatchObject({ nitrogen: { none: 'pruned-hard' }, questions: [] });
    expect(needOf(guess('apple, drought'))).toMatchObject({ verdict: 'wait', nitrogen: { none: 'size-unknown' }, questions: [] });
  });
  test('one of them is enough; a tub and a plant to come need neither', () => {
    for (const f of [guess(OLD), facts('apple'), guess('apple, tub 60 L'), { ...guess('apple, planting March 2027'), bed: null }]) expect(needOf(f).nitrogen.none).not.toBe('size-unknown');
  });
});

describe('the lab\'s own advice', () => {
  const byLab = (advice: Advice[], soil: readonly Value[] = [], line = OLD): Facts => facts(line, soil, { advice, byLab: true });
  test('is followed where the grower says so', () => {
    const n = needOf(byLab([says('N', 3), says('K2O', 4)], [{ item: 'potassium', target: 'below' }, { item: 'phosphorus', target: 'below' }]));
    expect(n.nitrogen).toMatchObject({ none: null, ifBelow: null, cap: Infinity, doses: 1, followed: { source: 'lab', at: 'line 7' }, lead: null, half: null });
    expect([n.N, n.P2O5, n.K2O].map((x) => x.value)).toEqual([expect.closeTo(30, 9), expect.closeTo(40, 9), expect.closeTo(40, 9)]);
    // Nothing is asked about a potash that is not ours.
    expect(asked(n)).toEqual([]);
    expect(decided(byLab([says('P2O5', 2)])).p.need).toMatchObject({ value: expect.closeTo(20, 9) as number, of: 'P2O5', cite: { source: 'lab' } });
  });
  test('nothing of it', () => { expect(decided(byLab([says('N', 0)])).nitrogen).toMatchObject({ none: 'table-none', need: { value: 0 } }); });
  test('beside the plan it widens the span', () => {
    const n = need(OLD, [], { advice: [says('N', 90)], byLab: false });
    expect(n.N.value).toBeCloseTo(70, 9);
    expect(n.rules.at(-1)!.value).toBeCloseTo(900, 9);
    expect(n.span.N[1].value).toBeCloseTo(900, 9);
    // Bavaria's 100 g of 8 % is the least that any page gives a grown apple.
    expect(need(OLD).span.N[0].value).toBeLessThanOrEqual(8);
  });
  test('the span holds what is followed and all that fits', () => {
    const least = need(OLD, [], { rules: [made('own-rules', { low: 0.5 })] });
    expect(least.span.N[0].value).toBe(0.5);
    expect(least.span.N[1].value).toBe(Math.max(...least.rules.map((r) => r.value)));
    expect(least.span.N[0].value).toBe(Math.min(...least.rules.map((r) => r.value)));
  });
});

describe('what is asked', () => {
  const SHORT = `${OLD}, shoots 7 in 2025`;
  test.each<[string, Partial<Facts>, string, readonly string[]]>([
    [SHORT, {}, 'Ohio, US', []], [OLD, {}, 'Ohio, US', ['shoots-missing']], ['apple, bearing', {}, 'Ohio, US', ['planted-missing', 'shoots-missing']], ['apple, fed lawn', {}, 'Ohio, US', []], ['apple, pruned hard', {}, 'Ohio, US', []], ['apple, planted 2026', {}, 'Ohio, US', []],
    ['apple, planted 2016, tub 60 L', {}, 'Ohio, US', []], [OLD, { bed: null }, 'Ohio, US', ['bed-missing']], [OLD, { bed: told(5, 'm2', 'crown', 'test') }, 'Ohio, US', []],
    // Colorado goes by the trunk; Georgia's figs by their height.
    [SHORT, {}, 'Colorado, US', ['trunk-missing']], ['fig, planted 2016, shoots 2 in 2025', {}, 'Georgia, US', ['height-missing']],
    [SHORT, { rules: [made('one', { by: 'row' }), made('two')] }, 'Ohio, US', ['spacing-missing']], ['apple, bearing, shoots 7 in 2025', { rules: [made('one', { by: 'years' }), made('two')] }, 'Ohio, US', ['planted-missing']],
    [`${OLD}, shoots 9 in 2025`, {}, 'Ohio, US', ['fed-last-year']], [`${OLD}, shoots 9 in 2025`, { lastN: 0 }, 'Ohio, US', []],
    [SHORT, { byLab: true, advice: [says('K', 3)] }, 'Ohio, US', ['advice-form']], [SHORT, { byLab: true, advice: [says('K2O', 3)] }, 'Ohio, US', []], [SHORT, { byLab: false, advice: [says('K', 3)] }, 'Ohio, US', []], [SHORT, { byLab: true, advice: [says('N', 1), says('K', 3)] }, 'Ohio, US', ['advice-form']],
  ])('%s %j in %s: %j', (line, more, where, wanted) => { expect(asked(need(line, [], more, where))).toEqual(wanted); });
  test('with what it would change, and whose page asks', () => {
    const of = (n: Need): readonly (readonly unknown[])[] => n.questions.map((q) => [q.code, q.about, q.facts, q.choices, q.changes, q.place?.file]);
    const facts_ = { tree: 'A', crop: 'apple' };
    expect(of(need(SHORT, [], {}, 'Colorado, US'))).toEqual([['trunk-missing', 'A', { ...facts_, source: sourceOf('colorado-1216')!.publisher }, [], 'changes-nitrogen', 'orchard.yaml']]);
    expect(need('fig, planted 2016, shoots 2 in 2025', [], {}, 'Georgia, US').questions[0]!.facts).toMatchObject({ crop: 'fig', source: sourceOf('georgia-fig')!.publisher });
    // No page can lead a pecan of untold trunk, so none is named.
    expect(need('pecan, planted 2016, bearing, shoots 2 in 2025', [], {}, 'Georgia, US').questions.map((q) => [q.code, q.facts.source])).toEqual([['trunk-missing', '']]);
    // A page of nobody's that is on the list of sources has no publisher to name.
    expect(need(SHORT, [], { rules: [made('one', { by: 'row' }), made('two')] }).questions[0]!.facts).toEqual({ ...facts_, source: '' });
    expect(of(need('apple, bearing'))[0]).toEqual(['planted-missing', 'A', facts_, [], 'changes-nitrogen', 'orchard.yaml']);
    expect(of(need(OLD, [], { bed: null }))).toEqual([['bed-missing', 'A', facts_, [], 'changes-planting', 'orchard.yaml']]);
    expect(of(needOf(guess(SHORT)))).toEqual([['crown-missing', 'A', facts_, [], 'changes-nitrogen', 'orchard.yaml']]);
    expect(of(need(OLD))[0]!.slice(0, 5)).toEqual(['shoots-missing', 'A', facts_, [], 'changes-nitrogen']);
    expect(of(need(`${OLD}, shoots 9 in 2025`))[0]!.slice(0, 5)).toEqual(['fed-last-year', 'A', facts_, [], 'changes-nitrogen']);
    expect(of(need(SHORT, [], { byLab: true, advice: [says('P', 1)] }))[0]!.slice(0, 5)).toEqual(['advice-form', 'A', facts_, [], 'changes-p-and-k']);
    expect(of(need(SHORT, [{ item: 'potassium', target: 'at' }]))[0]!.slice(0, 5)).toEqual(['fruit-weight', 'A', facts_, [], 'changes-potash']);
  });
  test('nothing is asked for nitrogen that is not given', () => {
    for (const line of [`${OLD}, fed lawn`, `${OLD}, pruned hard`]) expect(asked(needOf(guess(line)))).toEqual([]);
    expect(asked(needOf(guess('apple, planted 2026')))).toEqual([]);
    expect(asked(need('apple, pruned hard', [], {}, 'Colorado, US'))).toEqual([]);
  });
});
