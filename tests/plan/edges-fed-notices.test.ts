// What is said of what was fed: too much at once, too much in all, compost, what earlier seasons still bring, and what alkaline water does. 2 lb of nitrogen to 1,000 sq ft is the most at once (judgement): 907.2 g to 92.9 m2, 9.765 g to the square metre. Sums by hand.
import { describe, expect, test } from 'vitest';
import type { Orchard } from '../../src/orchard/load.ts';
import { noticesOf } from '../../src/plan-notices.ts';
import type { TreePlan } from '../../src/planned.ts';
import { feed } from '../bags/parts.ts';
import { fig, limeOf, orchardOf, phOf, plantOf, seasonAt, told } from './parts.ts';

type Part = Parameters<typeof plantOf>[1];
const store = [feed('Urea', [46, 0, 0])];
const stocked = orchardOf({ store });
const us = orchardOf({ store, where: { units: 'us' } });
const of = (plans: readonly TreePlan[], orchard: Orchard = stocked): [string, string, object][] => told(noticesOf(plans, [], seasonAt(), orchard));
const one = (more: Part, orchard: Orchard = stocked): [string, string, object][] => of([plantOf('A', more)], orchard);
const some = (more: Part): string[] => one(more).map(([code]) => code);

describe('a feed that was too much', () => {
  const fed = (date: string, n: number | null): object => ({ date, bag: 'Urea', g: 100, brought: n === null ? null : { N: n, P2O5: 0, K2O: 0 } });
  const ten = (...feeds: object[]): string[] => some({ fed: feeds });
  // Ten square metres take 97.65 g at once; rounding explains 8 % more, 105.46 g.
  test('at once, on the day that was worst', () => {
    expect(one({ fed: [fed('2026-03-01', 106), fed('2026-03-05', 150), fed('2026-03-09', 120)] })).toEqual([['fed-burn', 'warning', { tree: 'A', day: '5 March', amount: '150 g', most: '98 g' }]]);
    expect([ten(fed('2026-03-01', 105)), ten(fed('2026-03-01', 106)), ten(fed('2026-03-01', 60), fed('2026-03-01', 60)), ten(fed('2026-03-01', 60), fed('2026-03-02', 60))]).toEqual([[], ['fed-burn'], ['fed-burn'], []]);
    // 150 g are 5.29 oz, 97.65 g 3.44.
    expect(one({ fed: [fed('2026-03-01', 150)] }, us)[0]![2]).toMatchObject({ amount: '5.3 oz', most: '3.4 oz' });
  });
  test('of two days alike the first; a feed of unknown weight brings nothing to it', () => {
    expect(one({ fed: [fed('2026-03-05', 150), fed('2026-03-01', 150)] })[0]![2]).toMatchObject({ day: '5 March' });
    expect(ten(fed('2026-03-01', 100), fed('2026-03-01', null))).toEqual(['fed-unknown']);
  });
  test('what the plan itself gave at once is no burn', () => {
    expect([some({ mostPlanned: 150, fed: [fed('2026-03-01', 160)] }), some({ mostPlanned: 150, fed: [fed('2026-03-01', 163)] }), some({ mostPlanned: 50, fed: [fed('2026-03-01', 106)] })]).toEqual([[], ['fed-burn'], ['fed-burn']]);
  });
  test('a tub takes a season\'s half gram to the litre: 20 g in 40 l, 21.6 with what rounding leaves', () => {
    expect([21.5, 21.7].map((n) => some({ tree: { tub: 40 }, fed: [fed('2026-03-01', n)] }))).toEqual([[], ['fed-burn']]);
    expect(one({ tree: { tub: 40 }, fed: [fed('2026-03-01', 30)] })[0]![2]).toMatchObject({ most: '20 g' });
  });
  test('in all, over 8 % of the need and more than a gram, where the diary has something', () => {
    const over = (n: number, need: number, feeds: object[] = [fed('2026-03-01', 10)]): string[] => some({ fed: feeds, over: { N: n, P2O5: 0, K2O: 0 }, need: { N: fig(need) } });
    expect([over(8, 100), over(8.1, 100), over(1, 0), over(1.1, 0), over(50, 100, [])]).toEqual([[], ['fed-over'], [], ['fed-over'], []]);
    expect(one({ fed: [fed('2026-03-01', 10)], over: { N: 50, P2O5: 0, K2O: 0 } })).toEqual([['fed-over', 'warning', { tree: 'A' }]]);
    // Burnt says it all.
    expect(some({ fed: [fed('2026-03-01', 200)], over: { N: 100, P2O5: 0, K2O: 0 } })).toEqual(['fed-burn']);
    // Also of what needs none.
    expect(some({ fed: [fed('2026-03-01', 10)], over: { N: 10, P2O5: 0, K2O: 0 }, need: { N: fig(0), verdict: 'none' } })).toEqual(['fed-over']);
  });
});

// At most 1.5 litres a square metre and year (Bavaria's overfed gardens): 15 litres on ten.
describe('compost', () => {
  test('too much of it, in the grower\'s measure', () => {
    expect(one({ tree: { composted: 40.4 } })).toEqual([['compost-much', 'warning', { tree: 'A', volume: '40 L', most: '15 L' }]]);
    // Forty litres are 10.6 US gallons, fifteen 3.96.
    expect(one({ tree: { composted: 40 } }, us)[0]![2]).toMatchObject({ volume: '11 gal', most: '4 gal' });
    expect([some({ tree: { composted: 15 } }), some({ tree: { composted: 15.1 } }), some({ tree: { composted: 40, tub: 40 } })]).toEqual([[], ['compost-much'], []]);
  });
  test('untold, how much', () => {
    expect(one({ tree: { flags: ['compost'] } })).toEqual([['compost-untold', 'note', { tree: 'A' }]]);
    expect([some({ tree: { flags: ['compost'], composted: 10 } }), some({ tree: { flags: ['compost'], tub: 40 } }), some({ tree: { flags: ['clover'] } })]).toEqual([[], [], []]);
  });
});

describe('what earlier seasons still bring', () => {
  const carried = [{ date: '2025-04-03', bag: 'Feather meal', n: 60, frees: 6 }, { date: '2025-05-01', bag: 'Manure', n: null, frees: 0 }, { date: '2024-04-01', bag: 'Bone meal', n: 20, frees: 1 }];
  const list = (n: number, carriedN?: number, more: object = {}): [string, string, object][] => one({ tree: { carried, ...more }, need: { N: fig(n), nitrogen: { lead: null, half: null, ...(carriedN === undefined ? {} : { carried: carriedN }) } } });
  const weighed = ['carried-nitrogen', 'note', { tree: 'A', list: 'Feather meal of 3 April 2025, Bone meal of 1 April 2024', amount: '7 g' }];
  const unweighed = ['carried-unweighed', 'note', { tree: 'A', list: 'Manure of 1 May 2025' }];
  test('what was weighed with what it frees, and what was not', () => { expect(list(50, 7)).toEqual([weighed, unweighed]); });
  test('where it is off the need, or a need is there', () => {
    expect([list(50), list(0, 0), list(0), list(0, 7)]).toEqual([[unweighed], [unweighed], [], [weighed, unweighed]]);
    expect([list(50, 7, { tub: 40 }).map(([code]) => code), list(50, 7, { carried: [carried[0]] }).map(([code]) => code), list(50, undefined, { carried: undefined })]).toEqual([['carried-nitrogen'], ['carried-nitrogen'], []]);
    expect(one({ tree: { carried }, need: { verdict: 'wait', N: fig(50) } })).toEqual([]);
  });
});

describe('alkaline water', () => {
  const water = (mgPerL: number, more: object = {}): Orchard => orchardOf({ store, water: { mgPerL }, ...more });
  const blue = plantOf('Blue', { tree: { crop: 'blueberry', word: 'blueberry' } });
  const plan = (name: string, verdict: string, dose = 50, g = 100, bag: unknown = null): TreePlan => plantOf(name, { ph: phOf('bank', { g, bag, plan: { verdict, reason: 'inside', dose: fig(dose, 'g/m2', 'sulphur') } }) });
  // 25 mm are 25 litres a square metre: of 200 mg/L five grams, fifty on ten of them; as sulphur (32.06 of it take 100.09) 16 g.
  test('what it brings, where something wants acid soil', () => {
    expect(of([blue, plantOf('A')], water(200))).toEqual([['water-limes', 'warning', { amount: '50 g', area: '10 m²', depth: '25 mm', share: '16 g', trees: 'Blue' }]]);
    // An inch on a hundred square feet: 5.08 g on 9.29 m2 are 47.2 g, 1.66 oz, and 15.1 g of sulphur, 0.53 oz.
    expect(of([blue], water(200, { where: { units: 'us' } }))[0]![2]).toEqual({ amount: '1 3/4 oz', area: '100 sq ft', depth: 'inch', share: '1/2 oz', trees: 'Blue' });
    expect([of([plantOf('A')], water(200)), of([blue], water(0)), of([blue], stocked), of([plan('A', 'leave')], water(200)), of([plan('A', 'lime', 1)], water(200)).length]).toEqual([[], [], [], [], 0]);
  });
  test('or where the pH is to come down, or cannot', () => {
    expect(of([plan('A', 'cannot')], water(200)).map(([code, , facts]) => [code, (facts as { trees: string }).trees])).toEqual([['water-limes', '']]);
    expect(of([plantOf('B'), plan('A', 'sulphur')], water(100)).map(([code]) => code)).toEqual(['water-limes']);
  });
  // 50 g/m2 of sulphur take 156 g of lime: 31 waterings of five grams; of a product of 90 %, 28.
  test('over 100 mg/L it undoes sulphur: after how many waterings', () => {
    expect(of([plan('A', 'sulphur', 20), plan('B', 'sulphur'), plan('C', 'sulphur', 90, 0), plan('D', 'cannot', 90)], water(200))[0]).toEqual(['ph-water-undoes', 'warning', { tree: 'A, B', mgPerL: 200, most: 100, times: 31, depth: '25 mm' }]);
    const weak = limeOf('Sulphur 90 %', { amends: { kind: 'sulphur', strength: 0.9 } });
    expect(of([plan('A', 'sulphur', 50, 100, weak)], water(200.4))[0]![2]).toMatchObject({ times: 28, mgPerL: 200 });
    // A hundred grams take 312: by the inch of 5.08 g that is 61 times, by 25 mm 62.
    expect(of([plan('A', 'sulphur', 100)], water(200, { where: { units: 'us' } }))[0]![2]).toMatchObject({ times: 61, depth: 'an inch' });
    expect(of([plan('A', 'sulphur', 100)], water(200))[0]![2]).toMatchObject({ times: 62 });
    expect(of([plan('C', 'sulphur', 90, 0)], water(200)).map(([code]) => code)).toEqual(['water-limes']);
  });
});
