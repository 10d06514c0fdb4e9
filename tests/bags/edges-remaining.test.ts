// The diary ticks planned doses off: a dose within a fifth of the planned one is that dose (remaining.ts); what was fed otherwise is planned afresh.
import { describe, expect, test } from 'vitest';
import type { Feed } from '../../src/bags/doses.ts';
import { remainingOf } from '../../src/bags/remaining.ts';
import type { Bag } from '../../src/orchard/bag.ts';
import type { Fed } from '../../src/orchard/history.ts';
import { feed } from './parts.ts';

const [urea, lime] = [feed('Urea', [46, 0, 0]), feed('Garden feed', [10, 5, 20])];
const dose = (bag: Bag, g: number, from: string): Feed => ({ bag, g, serves: 'N', window: { from } }) as unknown as Feed;
const fed = (date: string, bag: string | null, g: number | null, more: Partial<Fed> = {}): Fed => ({ date, bag, g, brought: null, ...more });
const [march, may, june] = [dose(urea, 100, '2026-03-10'), dose(urea, 100, '2026-05-01'), dose(lime, 200, '2026-06-01')];
const left = (list: readonly Fed[], planned: readonly Feed[] = [march, may, june]): Feed[] | null => remainingOf(planned, list)?.feeds.slice() ?? null;

describe('a dose of the diary is a planned one', () => {
  test('nothing fed: all is left, in the order of the plan', () => {
    expect(left([])).toEqual([march, may, june]);
    expect(left([], [june, may, march])).toEqual([june, may, march]);
  });
  test('by its bag, whatever its case, by the numbers on it, or by none', () => {
    expect(left([fed('2026-06-02', 'garden FEED', 200)])).toEqual([march, may]);
    expect(left([fed('2026-06-02', 'something 10-5-20 blue', 200)])).toEqual([march, may]);
    expect(left([fed('2026-03-12', null, 100)])).toEqual([may, june]);
    expect(left([fed('2026-03-12', null, 200)])).toEqual([march, may]);
    expect(left([fed('2026-03-12', 'Bone meal', 100)])).toBeNull();
    // Lime prints no numbers: an empty text stands in every name.
    expect(left([fed('2026-03-12', 'Bone meal', 100)], [dose(feed('Lime', [0, 0, 0], { printed: '' }), 100, '2026-03-10')])).toBeNull();
  });
  test('the earliest first, whatever the order of the plan', () => {
    expect(left([fed('2026-03-12', 'Urea', 100)], [may, june, march])).toEqual([may, june]);
    expect(left([fed('2026-03-12', 'Urea', 100), fed('2026-05-12', 'Urea', 100)])).toEqual([june]);
  });
  test('within a fifth', () => {
    for (const g of [80, 100, 120]) expect(left([fed('2026-03-12', 'Urea', g)])).toEqual([may, june]);
    for (const g of [79, 121]) expect(left([fed('2026-03-12', 'Urea', g)])).toBeNull();
    // Each planned dose is ticked once.
    expect(left([fed('2026-03-12', 'Urea', 100), fed('2026-04-12', 'Urea', 100), fed('2026-05-12', 'Urea', 100)])).toBeNull();
  });
  test('in the order of days, whatever the order of the diary', () => {
    // 90 g fit the dose of 100, and 110 the later one of 120; the other way about the second would find none.
    const planned = [dose(urea, 100, '2026-03-10'), dose(urea, 135, '2026-05-01')];
    expect(left([fed('2026-05-02', 'Urea', 115), fed('2026-03-12', 'Urea', 90)], planned)).toEqual([]);
    expect(remainingOf([march, may], [fed('2026-05-02', 'Urea', 115), fed('2026-03-12', 'Urea', 90)])!.fed.map((f) => f.date)).toEqual(['2026-03-12', '2026-05-02']);
  });
});

test('what was brought: all that it holds, else what is written, else by the grade, of the planned weight where none is written', () => {
  const brought = (f: Fed): unknown => remainingOf([march, may, june], [f])!.fed[0]!.brought;
  const [some, all] = [{ N: 1, P2O5: 2, K2O: 3 }, { N: 9, P2O5: 9, K2O: 9 }];
  expect(brought(fed('2026-03-12', 'Urea', 100, { brought: some, holds: all }))).toEqual(all);
  expect(brought(fed('2026-03-12', 'Urea', 100, { brought: some }))).toEqual(some);
  expect(brought(fed('2026-06-02', 'Garden feed', 220))).toEqual({ N: 22, P2O5: 11, K2O: 44 });
  expect(brought(fed('2026-06-02', 'Garden feed', null))).toEqual({ N: 20, P2O5: 10, K2O: 40 });
  expect(brought(fed('2026-03-12', 'Urea', null))).toEqual({ N: 46, P2O5: 0, K2O: 0 });
});
