// A need as a grower types it, and the can for a tub. Pound and ounce, gallons and atomic weights by definition; strengths by arithmetic: a milligram a litre is a part in a million.
import { describe, expect, test } from 'vitest';
import { diluteOf, hasCan } from '../../src/bags/dilute.ts';
import { parseNeed } from '../../src/bags/need-text.ts';
import type { Bag } from '../../src/orchard/bag.ts';
import type { Ban } from '../../src/orchard/bans.ts';
import type { Tree } from '../../src/orchard/tree.ts';
import { told } from '../../src/reason/figure.ts';
import { dollars, feed, OZ } from './parts.ts';

const K2O_OF_K = (2 * 39.098 + 15.999) / (2 * 39.098);
const P2O5_OF_P = (2 * 30.974 + 5 * 15.999) / (2 * 30.974);

describe('amounts', () => {
  const goal = (text: string): Record<string, number> | null => { const g = parseNeed(text).goal; return g && Object.fromEntries(Object.entries(g).map(([n, x]) => [n, Math.round(x * 1000) / 1000])); };
  test.each<[string, Record<string, number>]>([
    ['5 g N', { N: 5 }], ['5g N', { N: 5 }], ['5 g of nitrogen', { N: 5 }], ['nitrogen = 5 g', { N: 5 }], ['N:5 g', { N: 5 }], ['phosphate 5 g', { P2O5: 5 }], ['5 g PHOSPHATE', { P2O5: 5 }], ['5 g potash', { K2O: 5 }], ['5 g p2o5 + 4 g k2o', { P2O5: 5, K2O: 4 }], ['5 g N & 4 g potash\n3 g phosphate', { N: 5, K2O: 4, P2O5: 3 }],
    ['100 g P', { P2O5: Math.round(100 * P2O5_OF_P * 1000) / 1000 }], ['100 g phosphorus', { P2O5: Math.round(100 * P2O5_OF_P * 1000) / 1000 }], ['100 g K', { K2O: Math.round(100 * K2O_OF_K * 1000) / 1000 }], ['100 g potassium', { K2O: Math.round(100 * K2O_OF_K * 1000) / 1000 }],
    ['2½ oz N', { N: Math.round(2.5 * OZ * 1000) / 1000 }], ['1⁄2 oz N', { N: Math.round(0.5 * OZ * 1000) / 1000 }], ['1 lb 4 oz N', { N: Math.round(20 * OZ * 1000) / 1000 }], ['0N, 5 g K2O', { N: 0, K2O: 5 }], ['0 N, 5 g K2O', { N: 0, K2O: 5 }], ['5,5 g N', { N: 5.5 }], ['5 g N,4 g K2O', { N: 5, K2O: 4 }], ['N 5 g,K2O 4 g', { N: 5, K2O: 4 }],
    // A hundredth of a gram to ten tonnes.
    ['0.01 g N', { N: 0.01 }], ['10000 kg N', { N: 1e7 }],
  ])('%s', (text, wanted) => {
    expect(goal(text)).toEqual(wanted);
    expect(parseNeed(text).notices).toEqual([]);
  });
  test.each([
    ['0.009 g N', 'need-absurd'], ['10001 kg N', 'need-absurd'], ['5 g iron', 'need-wrong'], ['5 g toString', 'need-wrong'], ['iron 5 g', 'need-wrong'], ['- 5 g N', 'need-negative'], ['N -5 g', 'need-negative'], ['N -.5 g', 'need-negative'], [`${'5'.repeat(58)} g N`, 'need-wrong'], ['1,000 N', 'number-two-ways'], ['5 g N, 5 g nitrogen', 'need-twice'],
    [' ', 'need-empty'], [' + ', 'need-empty'], [' 0 N ', 'need-nothing'], ['5 ft N', 'need-wrong'], ['N 5 g g', 'need-wrong'], ['N five g', 'need-wrong'], ['5 - 5 g N', 'need-wrong'],
  ])('%s: %s', (text, code) => {
    const read = parseNeed(text);
    expect([read.goal, ...read.notices.map((n) => n.code)]).toEqual([null, code]);
    expect(read.notices[0]!.severity).toBe('error');
  });
  test('what is told of a mistake', () => {
    const facts = (text: string): unknown => parseNeed(text).notices[0]!.facts;
    expect(facts('1,000 g N')).toEqual({ read: '1,000', dot: '1.000', plain: '1000' });
    expect(facts('5 g N, 4 g nitrogen')).toEqual({ read: '4 g nitrogen', nutrient: 'N' });
    expect(facts(' 0 N ')).toEqual({ read: '0 N' });
    expect(facts(`${'5'.repeat(70)} g N`)).toEqual({ read: '5'.repeat(60) });
    expect(facts('5 g iron')).toEqual({ read: '5 g iron' });
    expect(parseNeed(`${'5'.repeat(56)} g N`).notices[0]!.code).toBe('need-absurd');
  });
  test.each([['5 oz N', 'us'], ['5 pounds N', 'us'], ['5 LB N', 'us'], ['5 ounces N', 'us'], ['5 g N', 'metric'], ['5 kilos N', 'metric'], ['0 N, 5 lb K2O', 'us'], ['0 N', 'metric'], ['N', 'metric'], ['5 g N, 5 lb K2O', 'metric'], ['5 grams N, 1 oz K2O', 'metric'], ['1 gram N, 1 oz K2O', 'metric'], ['1 kilo N, 1 oz K2O', 'metric'], ['1 ounce N', 'us'], ['1 pound N', 'us'], ['5oz N', 'us'], ['5  oz N', 'us']])('%s: %s', (text, units) => { expect(parseNeed(text).units).toBe(units); });
});

describe('strengths', () => {
  test.each<[string, string | null, Record<string, number>, number, string]>([
    ['150 ppm N', null, { N: 0.15 }, 1, 'metric'], ['150 mg/L N', null, { N: 0.15 }, 1, 'metric'], ['150 mg / litre N in 10 L', null, { N: 1.5 }, 10, 'metric'], ['150ppm N, 0 P2O5 in 10 liters', null, { N: 1.5, P2O5: 0 }, 10, 'metric'], ['100 PPM K in 2 L', null, { K2O: 0.2 * K2O_OF_K }, 2, 'metric'],
    // 3.785411784 L, or 4.54609 L.
    ['100 ppm N in 1 gal', 'US', { N: 0.3785411784 }, 3.785411784, 'us'], ['100 ppm N in 1 gal', 'GB', { N: 0.454609 }, 4.54609, 'us'], ['100 ppm N in 2 quarts', null, { N: 0.1892705892 }, 1.892705892, 'us'], ['100 ppm N in 1 pint', null, { N: 0.0473176473 }, 0.473176473, 'us'],
    ['100 ppm N in 0.1 L', null, { N: 0.01 }, 0.1, 'metric'], ['100 ppm N in 10000 L', null, { N: 1000 }, 10_000, 'metric'],
  ])('%s, %s', (text, country, goal, waterL, units) => {
    const read = parseNeed(text, country);
    expect(read.notices).toEqual([]);
    expect(read.units).toBe(units);
    expect(read.waterL).toBeCloseTo(waterL, 9);
    expect(Object.keys(read.goal!)).toEqual(Object.keys(goal));
    for (const [n, g] of Object.entries(goal)) expect(read.goal![n as 'N']).toBeCloseTo(g, 9);
  });
  test.each<[string, string[]]>([
    ['100 ppm N in 0.09 L', ['need-water']], ['100 ppm N in 10001 L', ['need-water']], ['100 ppm N in 2 L 3 L', ['need-water']], ['100 ppm N in 2 L of rain', ['need-water']], ['100 ppm N in water', ['need-water']], ['100 ppm N in 1,000 L', ['need-water']], ['100 ppm Q in water', ['need-wrong', 'need-water']], ['100 ppm N, 5 g K', ['need-mixed']], ['100 ppm N, 5 lb K in 2 L', ['need-mixed']], ['100 ppm N, 100 ppm nitrogen', ['need-twice']],
  ])('%s: %j', (text, codes) => {
    const read = parseNeed(text);
    expect(read.goal).toBeNull();
    expect(read.notices.map((n) => n.code)).toEqual(codes);
    expect(read.notices.every((n) => n.severity === 'error')).toBe(true);
  });
  test('what is told: the water as it was read, the mix as far as it shows', () => {
    expect(parseNeed('100 ppm N in water').notices[0]!.facts).toEqual({ read: 'water' });
    expect(parseNeed('100 ppm N, 5 g K').notices[0]!.facts).toEqual({ read: '100 ppm N, 5 g K' });
    expect(parseNeed('100 ppm N, 5 g K').units).toBe('metric');
    expect(parseNeed('5 g N').waterL).toBeUndefined();
  });
});

// 100 to 200 mg of N a litre, a fifth of the mix in water at the most (practice); a letter scale shows half grams.
describe('the can for a tub', () => {
  const tub = (litres: number | undefined, crop = 'fig'): Tree => ({ name: 'T', crop, ...(litres === undefined ? {} : { tub: litres }) }) as unknown as Tree;
  const soluble = (label: string, grade: readonly [number, number, number], more: Partial<Bag> = {}): Bag => feed(label, grade, { soluble: true, ...more });
  const twenty = soluble('Twenty', [20, 20, 20]);
  const wants = (n: number, p = 0, k = 0) => ({ N: n, P2O5: p, K2O: k });
  const weeks = (n: number) => ({ from: '2026-04-01', until: `2026-04-${String(1 + 7 * (n - 1)).padStart(2, '0')}` });
  const of = (litres: number, n: number, many: number, bags = [twenty]) => { const d = diluteOf(tub(litres), wants(n), bags, [], weeks(many)); return d && [d.g.value, d.waterL, d.weeks, d.times, d.until]; };
  test.each<[string, number, number, number, (number | string)[] | null]>([
    // Three weeks, 6 g of N: 2 g at a time are 10 g of it; at 150 mg a litre 13.3 L, where 20 are allowed.
    ['each week', 100, 6, 3, [10, 13.5, 1, 3, '2026-04-15']],
    // 12 g of N, 4 at a time: 10 L at 200 mg a litre hold 2 g of them, so 10 g of it.
    ['no stronger, no wetter', 50, 12, 3, [10, 10, 1, 3, '2026-04-15']],
    // 4.5 g of N: 1.5 g at a time are 7.5 g. 5.1 g: 8.5 g. From 10 g on whole grams: 6.9 g are 11.5 g, so 11.
    ['half grams', 100, 4.5, 3, [7.5, 10, 1, 3, '2026-04-15']], ['half grams again', 100, 5.1, 3, [8.5, 11.5, 1, 3, '2026-04-15']], ['rounded down', 100, 5.2, 3, [8.5, 12, 1, 3, '2026-04-15']], ['whole grams', 100, 6.9, 3, [11, 15.5, 1, 3, '2026-04-15']],
    // 0.5 g of N in three weeks: 0.83 g a week are too little; every other week, twice, 1.25 g, so a gram. 0.3 g: once in four weeks 1.5 g; 0.1 g never.
    ['every other week', 100, 0.5, 3, [1, 2, 2, 2, '2026-04-15']], ['once in four', 100, 0.3, 3, [1.5, 2, 4, 1, '2026-04-01']], ['never', 100, 0.1, 3, null], ['once', 100, 0.2, 1, [1, 1.5, 1, 1, '2026-04-01']],
    // 0.6 g of N in three times, 0.2 g in 1.33 L: at least half a litre.
    ['a little water', 100, 0.6, 3, [1, 1.5, 1, 3, '2026-04-15']], ['a small pot', 1.2, 0.6, 3, null],
  ])('%s', (_, litres, n, many, wanted) => { expect(of(litres, n, many)).toEqual(wanted); });
  test('a strong feed for a small pot: half a litre at the least', () => {
    // 2 L of mix take 0.4 L, at 200 mg 0.08 g of N, at 2 % 4 g.
    expect(of(2, 10, 1, [soluble('Weak', [2, 0, 0])])).toEqual([4, 0.5, 1, 1, '2026-04-01']);
  });
  test('why so much', () => {
    const d = diluteOf(tub(50), wants(12), [twenty], [], { ...weeks(3), why: [told(12, 'g', 'N', 'need')] })!;
    expect(d.g).toMatchObject({ unit: 'g', of: 'product', step: 'dilute', cite: { at: 'pot-strength' } });
    expect(d.g.from.map((f) => [f.value, f.unit, f.of])).toEqual([[12, 'g', 'N'], [10, 'L', 'tub']]);
    expect(d.g.from[1]).toMatchObject({ step: 'pot-water', cite: { at: 'pot-water' }, from: [{ value: 50, unit: 'L', of: 'tub', step: 'told' }] });
    expect(diluteOf(tub(50), wants(12), [twenty], [], weeks(3))!.g.from).toHaveLength(1);
  });
  test('nothing without a tub, a bag, a need or a season; on its last day once', () => {
    expect(diluteOf(tub(undefined), wants(12), [twenty], [], weeks(3))).toBeNull();
    expect(diluteOf(tub(50), wants(12), [], [], weeks(3))).toBeNull();
    expect(diluteOf(tub(50), wants(0), [twenty], [], weeks(3))).toBeNull();
    expect(diluteOf(tub(50), wants(12), [twenty], [], { from: '2026-04-02', until: '2026-04-01' })).toBeNull();
    expect(diluteOf(tub(50), wants(12), [twenty], [], { from: '2026-04-01', until: '2026-04-01' })!.times).toBe(1);
  });
  test('which bags do', () => {
    const can = (bag: Bag, crop = 'fig', never: readonly Ban[] = []): boolean => hasCan(tub(50, crop), [bag], never);
    expect(can(twenty)).toBe(true);
    expect(can(feed('Liquid', [5, 0, 0], { liquid: true, organic: 'meal' }))).toBe(true);
    for (const bag of [feed('Grains', [20, 0, 0]), soluble('No N', [0, 20, 20]), soluble('Coated', [20, 0, 0], { slow: true }), soluble('Meal', [5, 0, 0], { organic: 'meal' }), soluble('Weed', [20, 0, 0], { weedKiller: true }), soluble('Lime', [1, 0, 0], { amends: { kind: 'lime', strength: 1, dolomitic: false, burns: false } })]) expect(can(bag), bag.label).toBe(false);
    expect([can(twenty, 'fig', ['mineral']), can(twenty, 'fig', ['chloride'])]).toEqual([false, true]);
    const nitrate = soluble('Nitrate', [15, 0, 0], { nitrate: true });
    expect([can(nitrate, 'blueberry'), can(nitrate), can(twenty, 'blueberry')]).toEqual([false, true, true]);
    expect([hasCan(tub(50), [nitrate, feed('Grains', [20, 0, 0])], []), hasCan(tub(50), [], [])]).toEqual([true, false]);
  });
  test('the best: all that is wanted, then the shed, then the cheapest nitrogen, then by name', () => {
    const which = (w: ReturnType<typeof wants>, ...bags: Bag[]): string => diluteOf(tub(50), w, bags, [], weeks(3))!.bag.label;
    const [np, nk, n] = [soluble('NP', [20, 20, 0]), soluble('NK', [20, 0, 20]), soluble('N', [20, 0, 0], { left: 9 })];
    for (const [w, wanted] of [[wants(9, 3, 3), 'Twenty'], [wants(9, 3, 0), 'NP'], [wants(9, 0, 3), 'NK'], [wants(9), 'N']] as const) {
      const bags = wanted === 'Twenty' ? [n, nk, np, twenty] : [n, nk, np];
      for (const list of [bags, bags.toReversed()]) expect(which(w, ...list)).toBe(wanted);
    }
    // A kilogram of N: $20 ÷ 0.2, or $18 ÷ 0.1; two kilograms at $30 ÷ 0.4.
    const priced = (label: string, percent: number, price: number | null, g: number | null = 1000): Bag => soluble(label, [percent, 0, 0], { g, price: price === null ? null : dollars(price) });
    const orders: [Bag, Bag][] = [[priced('B', 20, 20), priced('A', 10, 18)], [priced('B', 20, 30, 2000), priced('A', 20, 20)], [priced('B', 20, 99), priced('A', 20, null)], [priced('B', 20, 99), priced('A', 20, 1, null)], [{ ...priced('B', 20, 99), left: 5 }, priced('A', 20, 1)], [priced('A', 20, 5), priced('B', 20, 5)], [priced('A', 20, null), priced('B', 20, null)]];
    for (const [first, second] of orders) for (const list of [[first, second], [second, first]]) expect(which(wants(9), ...list)).toBe(first.label);
  });
});
