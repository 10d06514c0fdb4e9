// What the year's feed does to the pH, and whether it is told. Alabama ANR-174: 100 lb of 21 % sulphate of ammonia use up 110 lb of lime, 100 lb of 15 % nitrate of lime bring 20. Told from 10 g/m2 on, up to 0.3 from the low edge (judgement). Sums by hand.
import { describe, expect, test } from 'vitest';
import { acidityNotices } from '../../src/ph-notices.ts';
import type { TreePlan } from '../../src/planned.ts';
import { feed } from '../bags/parts.ts';
import { fig, orchardOf, phOf, plantOf, told } from './parts.ts';

const ammonia = feed('Sulphate of ammonia', [21, 0, 0]);
const nitrate = feed('Calcium nitrate', [15, 0, 0]);
type More = { now?: number; low?: number; zone?: string; verdict?: string; g?: number; crop?: string; bag?: typeof ammonia; ring?: boolean };
/** So many grams of the feed on ten square metres of ring: 100 g of sulphate of ammonia use up 11 g/m2. */
const fedWith = (name: string, grams: number, { now = 6, low = 6, zone = 'bank', verdict = 'leave', g = 0, crop = 'apple', bag = ammonia, ring = true }: More = {}): TreePlan => plantOf(name, {
  tree: { crop, zone }, feeds: [{ bag, g: grams }], ring: ring ? { area: fig(10, 'm2', 'ring') } : null,
  ph: phOf(zone, { g, plan: { verdict, now: fig(now, 'pH', 'soil'), suits: { low, high: low + 1 } } }),
});
const of = (...plans: TreePlan[]): [string, string, object][] => told(acidityNotices(plans, orchardOf()));
const codes = (...plans: TreePlan[]): string[] => of(...plans).map(([code]) => code);

describe('near the low edge', () => {
  test('told as a note, with what it uses up on ten square metres', () => {
    expect(of(fedWith('A', 100, { now: 6.2 }))).toEqual([['feed-acid-low', 'note', { trees: 'A', amount: '110 g', area: '10 m²', now: 6.2, low: 6, at: '' }]]);
  });
  test('on a hundred square feet: 11 g/m2 on 9.29 m2 are 102 g, to the quarter 3 1/2 oz', () => {
    expect(told(acidityNotices([fedWith('A', 100)], orchardOf({ where: { units: 'us' } })))[0]![2]).toMatchObject({ amount: '3 1/2 oz', area: '100 sq ft' });
  });
  test('where the pH, as it is shown, is the edge, the two are one', () => {
    expect([of(fedWith('A', 100))[0]![2], of(fedWith('A', 100, { now: 5.996 }))[0]![2]]).toEqual([{ trees: 'A', amount: '110 g', area: '10 m²', now: 6, low: '', at: 'edge' }, { trees: 'A', amount: '110 g', area: '10 m²', now: 6, low: '', at: 'edge' }]);
    expect(of(fedWith('A', 100, { now: 5.985 }))[0]![2]).toMatchObject({ now: 5.99, low: 6, at: '' });
  });
  test('three tenths to either side', () => {
    expect([5.7, 6.3, 5.69, 6.31].map((now) => codes(fedWith('A', 100, { now })))).toEqual([['feed-acid-low'], ['feed-acid-low'], [], []]);
  });
  // 90.9 g use up 99.99 g of lime, 91 g 100.1 g: on ten square metres just under and over 10 g each.
  test('from ten grams to the square metre on', () => { expect([codes(fedWith('A', 90.9)), codes(fedWith('A', 91)), codes(fedWith('A', 0))]).toEqual([[], ['feed-acid-low'], []]); });
  test('feed that brings lime, or no open ground, is no matter', () => {
    expect([codes(fedWith('A', 1000, { bag: nitrate })), codes(fedWith('A', 100, { ring: false })), codes(plantOf('A', { feeds: [{ bag: ammonia, g: 100 }], ring: { area: fig(10, 'm2', 'ring') } }))]).toEqual([[], [], []]);
  });
});

test('under lime: told where some goes on, before the edge', () => {
  expect(of(fedWith('A', 100, { verdict: 'lime', g: 500 }))).toEqual([['feed-acid-limed', 'note', { trees: 'A', amount: '110 g', area: '10 m²' }]]);
  expect([codes(fedWith('A', 100, { verdict: 'lime', g: 0 })), codes(fedWith('A', 100, { verdict: 'sulphur', g: 50 })), codes(fedWith('A', 100, { verdict: 'lime', g: 1, now: 4 })), codes(fedWith('A', 50, { verdict: 'lime', g: 500 }))]).toEqual([['feed-acid-low'], ['feed-acid-low'], ['feed-acid-limed'], []]);
});

describe('where acid soil is wanted', () => {
  const blue = { crop: 'blueberry', low: 4, now: 5 };
  test('acid feed is welcome, feed that brings lime is warned of, however little', () => {
    expect(of(fedWith('Blue', 100, blue))).toEqual([['feed-acid-welcome', 'note', { trees: 'Blue', amount: '110 g', area: '10 m²' }]]);
    expect(of(fedWith('Blue', 100, { ...blue, bag: nitrate }))).toEqual([['feed-basic', 'warning', { trees: 'Blue', amount: '20 g', area: '10 m²' }]]);
    expect([codes(fedWith('Blue', 50, blue)), codes(fedWith('Blue', 0, blue)), codes(fedWith('Blue', 1, { ...blue, bag: nitrate }))]).toEqual([[], [], ['feed-basic']]);
  });
  test('also on a soil that nobody tested', () => { expect(codes({ ...fedWith('Blue', 100, blue), ph: null })).toEqual(['feed-acid-welcome']); });
});

test('what was fed already counts, by the bag of the shed that its name is', () => {
  const fed = { date: '2026-04-01', bag: 'sulphate of ammonia', g: 100, brought: { N: 21, P2O5: 0, K2O: 0 } };
  const plan = { ...fedWith('A', 0), feeds: [], fed: [fed] };
  expect(told(acidityNotices([plan], orchardOf({ shed: [ammonia] })))[0]![2]).toMatchObject({ amount: '110 g' });
  // A bag by another name is known by its numbers. Those of the store are known as well.
  const odd = feed('Sulphate of ammonia', [21, 0, 0], { printed: '21-0-0' });
  const named = { ...plan, fed: [{ ...fed, bag: 'old 21-0-0' }] };
  // By its nitrogen alone: 21 g take 1.8 times that, 37.8 g, which is under ten to the square metre.
  expect([acidityNotices([named], orchardOf()).length, acidityNotices([named], orchardOf({ store: [odd] })).length, acidityNotices([named], orchardOf({ shed: [odd] })).length]).toEqual([0, 1, 1]);
});

test('once for a zone: the trees of one sentence together with the most of theirs, another zone, edge or sentence apart', () => {
  expect(of(fedWith('A', 100), fedWith('B', 200), fedWith('C', 150), fedWith('D', 100, { zone: 'hill' }), fedWith('E', 100, { low: 5.8 }), fedWith('F', 100, { verdict: 'lime', g: 10 })).map(([code, , facts]) => [code, (facts as { trees: string }).trees, (facts as { amount: string }).amount]))
    .toEqual([['feed-acid-low', 'A, B, C', '220 g'], ['feed-acid-low', 'D', '110 g'], ['feed-acid-low', 'E', '110 g'], ['feed-acid-limed', 'F', '110 g']]);
  expect(of(fedWith('B', 200), fedWith('A', 100))[0]![2]).toMatchObject({ trees: 'B, A', amount: '220 g' });
});
