// Rounding for the scale and the spread over the ring, each edge by hand: half an ounce or 10 g a step, under one step a fifth of it, then a fiftieth (round.ts);
// a turf limit of 1 lb of N on 1,000 square feet is 453.59237 g on 92.90304 m² (both by definition), 4.8824 g/m².
import { describe, expect, test } from 'vitest';
import type { Doses } from '../../src/bags/round.ts';
import { roundAmendment, roundDose, roundTogether, stepOf, withinStock } from '../../src/bags/round.ts';
import { spread } from '../../src/bags/spread.ts';
import type { Ring } from '../../src/orchard/geometry.ts';
import { OZ } from './parts.ts';

const HAIR = 1 + 5e-10;

test('a step is half an ounce or ten grams', () => {
  expect(stepOf('us')).toBeCloseTo(OZ / 2, 9);
  expect(stepOf('metric')).toBe(10);
});

describe('one dose', () => {
  test.each([
    // Two grams are a fifth of a step, two tenths a fiftieth; under half of that nothing is left.
    [8.8, Infinity, 10], [3.2, Infinity, 4], [2.8, Infinity, 2], [0.46, Infinity, 0.4], [0.05, Infinity, 0],
    // The nearest would pass: down to the step under it, and where there is none, to finer ones.
    [17, 19, 10], [25, 17, 10], [8, 9, 8], [7.8, 7.9, 6], [1.9, 1.95, 1.8],
    // What the arithmetic loses does not cost a step.
    [28, 30 / HAIR, 30], [38, 30 / HAIR, 30], [28, 30 / (1 + 1e-8), 20],
  ])('%f g, at most %f: %f', (g, most, wanted) => { expect(roundDose(g, 'metric', most)).toBeCloseTo(wanted, 9); });
});

describe('doses together', () => {
  const dose = (g: number, more: Partial<Doses> = {}): Doses => ({ g, most: Infinity, count: 1, share: 1, ...more });
  const rounded = (...doses: Doses[]): number[] => roundTogether(doses, 'metric');
  test('a sum over 3 % off: the largest moves a step, towards the plan, and no other where that would be worse', () => {
    // 42 planned, 30 rounded; one up makes 40, another 50. 48 planned, 60 rounded; one down makes 50. 62 planned, 50 rounded.
    expect(rounded(dose(14), dose(14), dose(14))).toEqual([20, 10, 10]);
    expect(rounded(dose(16), dose(16), dose(16))).toEqual([10, 20, 20]);
    expect(rounded(dose(14), dose(34), dose(14))).toEqual([10, 40, 10]);
  });
  test('just 3 % off is near enough, and a move that is as far off on the other side is none', () => {
    // Six of 105 g and one of 370 are 1,000 g; rounded 1,030.
    expect(rounded(...Array.from({ length: 6 }, () => dose(105)), dose(370))).toEqual([110, 110, 110, 110, 110, 110, 370]);
    expect(rounded(dose(15))).toEqual([20]);
  });
  test('none falls under a step, none passes its limit', () => {
    // 18 planned, 30 rounded: each would fall to nothing.
    expect(rounded(dose(6), dose(6), dose(6))).toEqual([10, 10, 10]);
    expect(rounded(dose(14, { most: 19 }), dose(14), dose(14))).toEqual([10, 20, 10]);
    expect(rounded(dose(14, { most: 20 }), dose(14), dose(14))).toEqual([20, 10, 10]);
    expect(rounded(dose(14, { most: 20 / HAIR }), dose(14), dose(14))).toEqual([20, 10, 10]);
    expect(rounded(dose(14, { most: 20 / (1 + 1e-8) }), dose(14), dose(14))).toEqual([10, 20, 10]);
  });
  test('a dose counts by its plants and by what is in it', () => {
    // Nitrogen: two of 14.9 g for two plants at 50 %, 14.9 each, and 34.9 g at 10 %, 3.49: 33.29 planned, 23 rounded. The large one to 40: 24; one of the others to 20: 34, within 3 %.
    expect(rounded(dose(14.9, { count: 2, share: 0.5 }), dose(14.9, { count: 2, share: 0.5 }), dose(34.9, { share: 0.1 }))).toEqual([20, 10, 40]);
  });
});

describe('no more than there is', () => {
  const within = (grams: number[], stock: number, counts = grams.map(() => 1)): number[] => withinStock(grams, counts, stock, 'metric');
  test('the largest a step down, then the next, until it is enough', () => {
    expect(within([20, 30], 50)).toEqual([20, 30]);
    expect(within([20, 30], 50 / (1 + 5e-7))).toEqual([20, 30]);
    expect(within([20, 30], 45)).toEqual([20, 20]);
    expect(within([20, 30], 35)).toEqual([10, 20]);
    // Three plants of 20 g and one of 30 are 90.
    expect(within([20, 30], 90, [3, 1])).toEqual([20, 30]);
    expect(within([20, 30], 80, [3, 1])).toEqual([20, 20]);
    expect(within([20, 20], 39)).toEqual([10, 20]);
  });
  test('a dose of no more than a step goes down by what is missing', () => {
    // Twice 6 g were planned of 12 and came to ten each; the first gives way: 2 g, and the second stays.
    expect(within([10, 10], 12)).toEqual([2, 10]);
    expect(within([10, 10], 15)).toEqual([4, 10]);
    expect(within([10, 10], 30, [2, 2])[0]).toBe(4);
    expect(within([10], 6.1)).toEqual([6]);
  });
});

test.each([
  ['us', 31.9 * OZ, 31.5 * OZ], ['us', 0.6 * OZ, 0.5 * OZ], ['us', 32 * OZ, 32 * OZ], ['us', 35.9 * OZ, 32 * OZ], ['us', 36 * OZ, 36 * OZ], ['metric', 999, 990], ['metric', 990, 990], ['metric', 1000, 1000], ['metric', 1049, 1000], ['metric', 1050, 1050],
  // Under a step whole grams.
  ['metric', 7.8, 7], ['us', 14, 14], ['metric', 10, 10], ['metric', 0.5, 0],
] as const)('lime and sulphur downward, %s: %f g is %f', (system, g, wanted) => { expect(roundAmendment(g, system)).toBeCloseTo(wanted, 6); });

describe('the ring', () => {
  const LIMIT = 453.59237 / 92.90304;
  // Ten square metres for each part of the crown's radius: 12.5 m² take 61 g, 15 take 73, 20 take 98.
  const ringAt = (share: number): Ring => ({ area: { value: 10 * share } }) as unknown as Ring;
  const of = (n: number, wanted: number, windows: number): number[] => { const s = spread(n, wanted, windows, ringAt); return [s.doses, s.ring.area.value, Math.round(s.n * 100) / 100, s.cut ? 1 : 0]; };
  test.each<[number, number, number, number[]]>([
    [60, 1, 3, [1, 12.5, 60, 0]], [100, 1, 3, [2, 12.5, 100, 0]], [140, 1, 3, [2, 15, 140, 0]], [190, 1, 3, [2, 20, 190, 0]], [280, 1, 3, [3, 20, 280, 0]],
    // Printed doses stay; never more than there are windows, and one where there is none.
    [60, 3, 3, [3, 12.5, 60, 0]], [380, 4, 4, [4, 20, 380, 0]], [60, 3, 2, [2, 12.5, 60, 0]], [60, 1, 0, [1, 12.5, 60, 0]], [90, 1, 1, [1, 20, 90, 0]],
    // Still over: cut to the limit of so many doses.
    [400, 1, 3, [3, 20, Math.round(3 * 20 * LIMIT * 100) / 100, 1]], [280, 1, 2, [2, 20, Math.round(40 * LIMIT * 100) / 100, 1]],
    [12.5 * LIMIT, 1, 3, [1, 12.5, Math.round(12.5 * LIMIT * 100) / 100, 0]],
  ])('%f g, %i doses, %i windows', (n, wanted, windows, expected) => { expect(of(n, wanted, windows)).toEqual(expected); });
  test('the most a dose may bring', () => {
    for (const n of [60, 400]) expect(spread(n, 1, 3, ringAt).mostPerDose).toBeCloseTo((n === 60 ? 12.5 : 20) * LIMIT, 6);
    expect(spread(12.5 * LIMIT * HAIR, 1, 3, ringAt).doses).toBe(1);
    expect(spread(12.5 * LIMIT * (1 + 1e-8), 1, 3, ringAt).doses).toBe(2);
  });
});
