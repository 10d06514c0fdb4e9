// Phosphate and potash beyond their amounts: how far answers span, by whom, from what; before planting, in a tub, and what a crop took. Ten square metres of crown; sums by hand.
import { describe, expect, test } from 'vitest';
import type { Facts } from '../../src/need/facts.ts';
import { phosphateOf, potashOf } from '../../src/need/potash.ts';
import type { Cite } from '../../src/reason/figure.ts';
import { told } from '../../src/reason/figure.ts';
import type { Value } from './parts.ts';
import { facts } from './parts.ts';

type Need = ReturnType<typeof phosphateOf> | ReturnType<typeof potashOf>;
const OLD = 'apple, planted 2016, bearing';
const p = (target: string | undefined, line = OLD, where = 'Ohio, US', more: Partial<Facts> = {}): Need => phosphateOf(facts(line, [{ item: 'phosphorus', ...(target ? { target } : {}) }], more, where));
const k = (target: string | undefined, line = OLD, where = 'Ohio, US', more: Partial<Facts> = {}): Need => potashOf(facts(line, [{ item: 'potassium', ...(target ? { target } : {}) }], more, where));
const span = (need: Need): readonly number[] => need.span.map((x) => Number(x.value.toFixed(6)));
const source = (need: Need): string => need.need.cite.source;
/** The same soil with whose scale rated it. */
const by = (f: Facts, cite: Cite): Facts => ({ ...f, soil: { ...f.soil!, rated: f.soil!.rated.map((r) => ({ ...r, cite })) } });
const cite: Cite = { source: 'ontario-soil', at: 'made', mark: 'read' };

// Weinsberg: 40 kg/ha of phosphate, or 50 by the other text of its page; RB209 (recalled) 80 where leaf and soil are both very low; up to 30 at target.
describe('phosphate', () => {
  test.each<[string | undefined, string, readonly number[], string]>([
    [undefined, OLD, [0, 0], 'medlar'], ['above', OLD, [0, 0], 'weinsberg'], ['at', OLD, [0, 30], 'ontario-apples'], ['below', OLD, [40, 50], 'weinsberg'], ['far-below', OLD, [40, 50], 'weinsberg'],
    ['far-below', `${OLD}, leaf P 0.05 %`, [40, 80], 'uk-rb209'], ['far-below', 'apple, planted 2026', [0, 50], 'arizona-planting'], ['below', `${OLD}, fed lawn`, [0, 50], 'iowa-fruit-trees'],
  ])('%s, %s: %j by %s', (target, line, wanted, whose) => {
    const need = p(target, line);
    expect(span(need)).toEqual(wanted);
    expect(source(need)).toBe(whose);
    expect(need.ask).toBeNull();
    for (const x of [need.need, ...need.span]) expect(x).toMatchObject({ unit: 'g', of: 'P2O5', step: x.value === 0 ? 'none' : 'per-area' });
    expect(need.need.from[0]).toMatchObject({ unit: 'm2', of: 'crown' });
  });
  test('in whose words', () => {
    expect(p('below', `${OLD}, fed lawn`).need.cite).toEqual({ source: 'iowa-fruit-trees', at: 'fed lawn', mark: 'read' });
    expect(p('far-below', `${OLD}, leaf P 0.05 %`).need.cite).toMatchObject({ mark: 'memory', at: expect.stringMatching(/index 0/) as string });
    expect(source(phosphateOf(by(facts(OLD, [{ item: 'phosphorus', target: 'above', value: 90 }]), cite)))).toBe('ontario-soil');
  });
  // Weinsberg gives 20 kg/ha at target where it is the country's own; nothing in the planting year or a fed lawn.
  test('a country\'s own table', () => {
    expect(p('at', OLD, 'Bavaria, Germany').need).toMatchObject({ value: expect.closeTo(20, 9) as number, cite: { source: 'weinsberg' } });
    expect([p('at', 'apple, planted 2026', 'Bavaria, Germany'), p('at', `${OLD}, fed lawn`, 'Bavaria, Germany'), p('at', 'peach, planted 2016', 'Bavaria, Germany')].map((x) => x.need.value)).toEqual([0, 0, 0]);
    expect(p('below', OLD, 'Bavaria, Germany').need.value).toBeCloseTo(40, 9);
  });
  test('nothing tested but free lime', () => { expect(phosphateOf(facts(OLD, [{ item: 'carbonate', word: 'high' }])).need.value).toBe(0); });
  test('what the soil holds stands among the reasons', () => {
    expect(phosphateOf(facts(OLD, [{ item: 'phosphorus', target: 'below', value: 12 }])).need.from.map((x) => [x.step, x.value])).toEqual([['crown-area', expect.closeTo(10, 9)], ['soil-below', 12]]);
  });
});

// Poland: 80 to 120 kg/ha where it is low; Weinsberg 150; British Columbia 200 of K, 240.9 of K2O. At target 50 to 80 by Poland, 80 by Weinsberg.
describe('potash', () => {
  test.each<[string | undefined, string, readonly number[], string, 'fruit-weight' | null]>([
    [undefined, OLD, [0, 0], 'medlar', null], ['above', OLD, [0, 40], 'weinsberg', null], ['below', 'apple, planted 2026', [0, 200], 'arizona-planting', null], ['below', `${OLD}, fed lawn`, [0, 100], 'iowa-fruit-trees', null],
    ['at', 'apple, planted 2024', [0, 100], 'medlar', null], ['at', OLD, [50, 100], 'medlar', 'fruit-weight'], ['below', `${OLD}, pit-prone`, [80, 200], 'medlar', 'fruit-weight'], ['below', OLD, [80, 200], 'poland-skierniewice', null],
    ['far-below', OLD, [80, 200], 'weinsberg', null], ['far-below', `${OLD}, leaf K 0.3 %`, [80, 200], 'british-columbia-potassium', null],
  ])('%s, %s: %j by %s', (target, line, wanted, whose, ask) => {
    const need = k(target, line);
    expect(span(need)).toEqual(wanted);
    expect(source(need)).toBe(whose);
    expect(need.ask).toBe(ask);
    for (const x of [need.need, ...need.span]) expect(x).toMatchObject({ unit: 'g', of: 'K2O', step: x.value === 0 ? 'none' : 'per-area' });
    expect(need.need.from[0]).toMatchObject({ unit: 'm2', of: 'crown' });
    expect(need.span.map((x) => x.cite.source)).toEqual(['poland-skierniewice', 'weinsberg']);
  });
  test('in whose words', () => {
    expect([k('at', OLD), k('below', `${OLD}, pit-prone`), k('at', 'apple, planted 2024')].map((x) => x.need.cite)).toEqual(['potash-at-target', 'potash-vetoed', 'young-potash'].map((at) => ({ source: 'medlar', at, mark: 'judgement' })));
    expect(k('below', `${OLD}, fed lawn`).need.cite).toEqual({ source: 'iowa-fruit-trees', at: 'fed lawn', mark: 'read' });
    expect(source(potashOf(by(facts(OLD, [{ item: 'potassium', target: 'above', value: 300 }]), cite)))).toBe('ontario-soil');
    expect(k('below', 'apple, planted 2024').need).toMatchObject({ unit: 'g', of: 'K2O', step: 'young-half', cite: { source: 'medlar', at: 'young-potash', mark: 'judgement' }, from: [{ value: expect.closeTo(80, 9) as number }] });
    expect(potashOf(facts(OLD, [{ item: 'potassium', target: 'below', value: 70 }])).need.from.map((x) => x.step)).toEqual(['crown-area', 'soil-below']);
    expect(potashOf(facts(OLD, [{ item: 'potassium', target: 'above', value: 70 }])).need.from.map((x) => x.step)).toEqual(['crown-area', 'soil-above']);
  });
  test('a country\'s own table at target, where nothing forbids it and no crop was weighed', () => {
    expect(k('at', OLD, 'Poland').need).toMatchObject({ value: expect.closeTo(50, 9) as number, cite: { source: 'poland-skierniewice' } });
    expect(k('at', OLD, 'Bavaria, Germany').need.value).toBeCloseTo(80, 9);
    expect(k('at', `${OLD}, pit-prone`, 'Poland').need.value).toBe(0);
    expect(k('at', `${OLD}, fruit 4 kg 2025`, 'Poland').need.step).toBe('removal');
    expect(k('at', `${OLD}, fruit 4 kg 2025, pit-prone`, 'Poland').need.step).toBe('removal');
    // Germany's own gives 150 where it is low, Poland's 80.
    expect([k('below', OLD, 'Bavaria, Germany'), k('below', OLD, 'Poland')].map((x) => x.need.value)).toEqual([expect.closeTo(150, 9), expect.closeTo(80, 9)]);
  });
  test('by the CAL test of potash alone nothing is held back', () => { expect(potashOf(facts(OLD, [{ item: 'potassium', target: 'below', value: 300, method: 'cal' }])).need.value).toBeCloseTo(80, 9); });
});

// Atomic weights (IUPAC): potassium 39.0983, oxygen 15.999, so 1 K is 1.2046 K2O. Washington: apples 3.9 lb of K a short ton at the most, pears 3.0; Tarn-et-Garonne: plums 4.6 kg of K2O a tonne, Ente prunes 3, hazels in shell 7.5;
// Bragantia: citrus 1.513 kg of K; Hamlin oranges 1.54, Kinnow mandarins 78.8 in 40 t.
describe('what a crop took', () => {
  const K = (2 * 39.0983 + 15.999) / (2 * 39.0983);
  test.each<[string, number | null]>([
    ['apple', (20_000 * 3.9 * K) / 2000], ['pear', (20_000 * 3 * K) / 2000], ['plum', 92], ['prune', 60], ['hazelnut', 150], ['lemon', 20 * 1.513 * K], ['orange', 20 * 1.54 * K], ['mandarin', (20 * 78.8 * K) / 40],
    // Austria's figures for gooseberries are of the whole plant; nobody prints a medlar's.
    ['gooseberry', null], ['medlar', null],
  ])('20 kg of %s', (crop, grams) => {
    const need = k('at', `${crop}, planted 2010, bearing, fruit 20 kg 2025`, 'Kenya');
    if (grams === null) { expect(need).toMatchObject({ ask: 'fruit-weight', need: { value: 0 } }); return; }
    expect(need).toMatchObject({ ask: null, need: { unit: 'g', of: 'K2O', step: grams > 150 ? 'per-area' : 'removal', from: [{ value: 20_000, unit: 'g', of: 'fruit' }] } });
    expect(need.need.value / Math.min(grams, 150)).toBeCloseTo(1, 4);
  });
  test('below target twice as much, within what Poland and Weinsberg print', () => {
    const below = (kg: number): Need => k('below', `${OLD}, fruit ${kg} kg 2025`);
    expect(below(20).need.value / ((2 * 20_000 * 3.9 * K) / 2000)).toBeCloseTo(1, 4);
    expect(below(20).need).toMatchObject({ unit: 'g', of: 'K2O', step: 'twice-removal', cite: { source: 'bavaria-garden', mark: 'read' }, from: [{ step: 'removal' }, { step: 'crown-area' }] });
    expect(below(20).need.cite.at).toMatch(/twice/);
    expect([source(below(1)), source(below(100))]).toEqual(['poland-skierniewice', 'weinsberg']);
    expect(k('at', `${OLD}, fruit 100 kg 2025`).need).toMatchObject({ value: expect.closeTo(150, 9) as number, cite: { source: 'weinsberg' } });
    expect(potashOf(facts(`${OLD}, fruit 20 kg 2025`, [{ item: 'potassium', target: 'below', value: 70 }])).need.from.map((x) => x.step)).toEqual(['removal', 'crown-area', 'soil-below']);
  });
  test('no crop took nothing; one that nobody weighed is asked for', () => {
    const f = facts(OLD, [{ item: 'potassium', target: 'at' }]);
    expect(potashOf({ ...f, tree: { ...f.tree, fruit: { said: 'weight', g: 0 } } })).toMatchObject({ ask: null, need: { value: 0, step: 'none' } });
    expect(k('at', `${OLD}, fruit heavy`).ask).toBe('fruit-weight');
  });
});

// RB209 (recalled): 100 kg/ha at index 1, 200 at index 0, here 10 and 20 g/m². Poland: 300 kg/ha of phosphate, 150 to 300 of potash; 100 at the middle class. Aragón: up to 50 and up to 350.
describe('dug in before planting, on five square metres', () => {
  const bed = { bed: told(5, 'm2' as const, 'crown' as const, 'test') };
  test.each<[string | undefined, string, readonly [number, readonly number[]], readonly [number, readonly number[]], string]>([
    ['far-below', 'Ohio, US', [100, [50, 150]], [100, [50, 150]], 'uk-rb209'], ['below', 'Ohio, US', [50, [50, 150]], [50, [50, 150]], 'uk-rb209'], ['at', 'Ohio, US', [0, [0, 0]], [0, [0, 0]], 'uk-rb209'], ['above', 'Ohio, US', [0, [0, 0]], [0, [0, 0]], 'uk-rb209'], [undefined, 'Ohio, US', [0, [0, 0]], [0, [0, 0]], 'uk-rb209'],
    ['below', 'Poland', [150, [50, 150]], [75, [50, 150]], 'poland-skierniewice'], ['at', 'Poland', [50, [50, 50]], [50, [50, 50]], 'poland-skierniewice'],
    ['below', 'Spain', [0, [0, 150]], [0, [0, 175]], 'es-espada-frutales'], ['at', 'Spain', [0, [0, 0]], [0, [0, 0]], 'uk-rb209'],
  ])('%s in %s', (target, where, phosphate, potash, whose) => {
    for (const [need, [grams, wanted], of] of [[p(target, 'apple, planting March 2027', where, bed), phosphate, 'P2O5'], [k(target, 'apple, planting March 2027', where, bed), potash, 'K2O']] as const) {
      expect(need.need.value).toBeCloseTo(grams, 9);
      expect(span(need)).toEqual(wanted);
      expect(need).toMatchObject({ ask: null, need: { unit: 'g', of, step: grams === 0 ? 'none' : 'dug-in', cite: { source: whose }, from: [{ value: 5, unit: 'm2' }] } });
    }
  });
  test('the most by Poland, of each its own row', () => {
    expect(p('below', OLD, 'Ohio, US', bed).span[1].cite.at).toMatch(/without/);
    expect(k('below', OLD, 'Ohio, US', bed).span[1].cite.at).toMatch(/heavy soil/);
  });
  test('nothing where nobody told how much ground', () => {
    for (const need of [p('below', OLD, 'Ohio, US', { bed: null }), k('below', OLD, 'Ohio, US', { bed: null })]) expect(need).toMatchObject({ need: { value: 0, step: 'none', from: [] }, ask: null });
    const soil: Value[] = [{ item: 'potassium', target: 'below', value: 70 }];
    expect(potashOf(facts(OLD, soil, bed)).need.from.map((x) => x.step)).toEqual(['told', 'soil-below']);
  });
});

// memory: 3 parts of nitrogen to 1 of phosphate and 2 of potash, half a gram of nitrogen a litre.
test('in a tub', () => {
  const line = 'apple, planted 2016, tub 60 L';
  for (const [need, grams, of] of [[p('below', line), 10, 'P2O5'], [k('below', line), 20, 'K2O']] as const) {
    expect(need).toMatchObject({ ask: null, need: { unit: 'g', of, step: 'tub', from: [{ value: 60, unit: 'L', of: 'tub' }] } });
    expect(need.need.value).toBeCloseTo(grams, 9);
    expect(span(need)).toEqual([grams, grams]);
  }
});
