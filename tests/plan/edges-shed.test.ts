// A shed that is used up before every plant has had its share: told of those that take another bag for it. Grams made up, sums by hand.
import { expect, test } from 'vitest';
import type { Plant } from '../../src/bags/allot.ts';
import type { Bag } from '../../src/orchard/bag.ts';
import { shedRunsOut } from '../../src/plan-notices.ts';
import { feed } from '../bags/parts.ts';
import { told } from './parts.ts';

const urea = feed('Urea', [46, 0, 0], { left: 100 });
const store = feed('Urea', [46, 0, 0]);
const ammonia = feed('Ammonia', [21, 0, 0]);
const potash = feed('Potash', [0, 0, 50]);
type Got = readonly [Bag, number];
const of = (shed: readonly Bag[], got: readonly (readonly Got[])[], { counts = got.map(() => 1), usable = got.map(() => shed) }: { counts?: readonly number[]; usable?: readonly (readonly Bag[])[] } = {}): [string, string, object][] =>
  told(shedRunsOut(counts.map((count, i) => ({ count, usable: usable[i] })) as unknown as Plant[], got.map((mine) => mine.map(([bag, g]) => ({ bag, g }))), got.map((_, i) => 'ABCD'[i]!), shed));

test('who takes another bag for it is named', () => {
  expect(of([urea], [[[urea, 100]], [[ammonia, 50]], [[urea, 0], [ammonia, 20]], [[potash, 20]]])).toEqual([['shed-runs-out', 'note', { bag: 'Urea', trees: 'B, C' }]]);
  // The same product out of the store is bought, and so another bag.
  expect(of([urea], [[[urea, 100]], [[store, 50]]])[0]![2]).toMatchObject({ trees: 'A, B' });
});
test('while some is left, or nobody takes another, nothing is said', () => {
  expect([of([urea], [[[urea, 98]], [[ammonia, 50]]]), of([urea], [[[urea, 99]], [[ammonia, 50]]]).length, of([urea], [[[urea, 100]]]), of([urea], [[[urea, 101]]]), of([{ ...urea, left: null }], [[[urea, 1000]], [[ammonia, 50]]])]).toEqual([[], 1, [], [], []]);
});
test('each plant of a row counts', () => {
  expect([of([urea], [[[urea, 50]], [[ammonia, 50]]], { counts: [2, 1] }).length, of([urea], [[[urea, 49]], [[ammonia, 50]]], { counts: [2, 1] }).length]).toEqual([1, 0]);
});
test('a plant that may not have it lacks nothing', () => { expect(of([urea], [[[urea, 100]], [[ammonia, 50]]], { usable: [[urea], [ammonia]] })).toEqual([]); });
test('two bags of one product are one stock, told once', () => {
  const second = { ...urea };
  expect([of([urea, second], [[[urea, 100]], [[ammonia, 50]]]), of([urea, second], [[[urea, 100]], [[second, 100]]])]).toEqual([[], []]);
  expect(of([urea, second], [[[urea, 100]], [[second, 100]], [[ammonia, 50]]])).toEqual([['shed-runs-out', 'note', { bag: 'Urea', trees: 'C' }]]);
  expect(of([urea, { ...potash, left: 10 }], [[[urea, 100]], [[ammonia, 50]]]).map(([, , facts]) => facts)).toEqual([{ bag: 'Urea', trees: 'B' }]);
});
