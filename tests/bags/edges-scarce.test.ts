// Too little in the shed for all to be served as well as could be, by hand: first the nitrogen, then nothing that is not wanted, then phosphate and potash;
// and each goes without the same part of what could best be brought to it.
import { describe, expect, test } from 'vitest';
import type { Plant } from '../../src/bags/allot.ts';
import { allot } from '../../src/bags/allot.ts';
import { byYalps } from '../../src/bags/by-yalps.ts';
import type { Bag } from '../../src/orchard/bag.ts';
import { feed } from './parts.ts';

const plant = (wants: readonly [number, number, number], usable: readonly Bag[], more: Partial<Plant> = {}): Plant => ({ wants: { N: wants[0], P2O5: wants[1], K2O: wants[2] }, usable, mostQuick: Infinity, count: 1, ...more });
const shed = (label: string, grade: readonly [number, number, number], left: number): Bag => feed(label, grade, { g: 1000, left });
/** Grams of each bag in turn for one of each plant, to two grams: an aim may be missed by a tenth of a gram of nutrient. */
const near = (plants: readonly Plant[], bags: readonly Bag[], wanted: readonly (readonly number[])[]): void => {
  const { shares } = allot(plants, bags, [], byYalps);
  shares.forEach((mine, i) => bags.forEach((b, k) => expect(Math.abs(mine.filter((s) => s.bag === b).reduce((sum, s) => sum + s.g, 0) - wanted[i]![k]!), `plant ${i}, ${b.label}: ${JSON.stringify(mine.map((s) => [s.bag.label, s.g]))}`).toBeLessThan(2)));
};

describe('nitrogen', () => {
  const old = shed('Old', [20, 0, 0], 500);
  test('as much as there is, and each in its part', () => {
    // 100 g for 200 wanted.
    near([plant([100, 0, 0], [old]), plant([100, 0, 0], [old])], [old], [[250], [250]]);
    near([plant([150, 0, 0], [old]), plant([50, 0, 0], [old])], [old], [[375], [125]]);
    near([plant([50, 0, 0], [old], { count: 4 })], [old], [[125]]);
  });
  test('also where their other wants differ', () => {
    near([plant([100, 0, 0], [old]), plant([100, 10, 0], [old])], [old], [[250], [250]]);
    near([plant([150, 10, 0], [old]), plant([50, 0, 0], [old])], [old], [[375], [125]]);
    near([plant([50, 0, 20], [old], { count: 3 }), plant([50, 0, 0], [old])], [old], [[125], [125]]);
  });
  test('a plant that nothing can be brought to does not stand in the way of the others', () => {
    const potash = shed('K', [0, 0, 50], 1000);
    near([plant([100, 0, 20], [potash]), plant([100, 0, 0], [old]), plant([300, 0, 5], [old])], [old, potash], [[0, 40], [125, 0], [375, 0]]);
  });
  test('with phosphate that nobody wants, where there is no other', () => {
    const both = shed('Both', [10, 10, 0], 500);
    near([plant([100, 0, 0], [both], { count: 2 })], [both], [[250]]);
  });
  test('never over, though phosphate is short', () => {
    // 100 g of 10-10-0 hold the 10 g of N that are wanted; of 0-20-0 there are 100 g. 30 g of P2O5 where 100 are wanted.
    const [np, p] = [shed('NP', [10, 10, 0], 5000), shed('P', [0, 20, 0], 100)];
    near([plant([10, 100, 0], [np, p])], [np, p], [[100, 100]]);
  });
});

describe('phosphate and potash', () => {
  test('each its part', () => {
    const [n, p] = [shed('N', [20, 0, 0], 2000), shed('P', [0, 20, 0], 100)];
    near([plant([100, 20, 0], [n, p]), plant([50, 20, 0], [n, p])], [n, p], [[500, 50], [250, 50]]);
    near([plant([100, 30, 0], [n, p]), plant([50, 10, 0], [n, p])], [n, p], [[500, 75], [250, 25]]);
  });
  test('potash for which phosphate comes along that nobody wants stays in the bag', () => {
    const [n, pk] = [shed('N', [20, 0, 0], 100), shed('PK', [0, 10, 10], 1000)];
    near([plant([100, 0, 100], [n, pk])], [n, pk], [[100, 0]]);
  });
  test('unmet phosphate weighs more than unmet potash', () => {
    // Too little of all; 100 g of either, of which so much more N comes with the one that only one of them can be used to the full: 20 g of N, 20 of P2O5 or of K2O.
    const [np, nk] = [shed('NP', [20, 20, 0], 150), shed('NK', [20, 0, 20], 150)];
    near([plant([20, 40, 40], [np, nk])], [np, nk], [[100, 0]]);
  });
});
