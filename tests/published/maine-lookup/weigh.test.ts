// University of Maine, Selecting Fertilizers Based on Soil Test Results: the look-up table of pounds
// of product for pounds of nutrient. The rows of 2, 5 and 10 %, typed from research notes.
import { expect, test } from 'vitest';
import { LB, answer, published } from '../helpers.ts';

const source = {
  id: 'maine-lookup',
  title: 'Selecting Fertilizers Based on Soil Test Results',
  publisher: 'University of Maine Cooperative Extension',
  url: 'https://extension.umaine.edu/gardening/manual/selecting-fertilizers-based-soil-test-results',
  mark: 'read',
} as const;

const wanted = [0.5, 1, 1.5, 2, 2.5, 3, 4, 5] as const;
const rows = [
  [2, [25, 50, 75, 100, 125, 150, 200, 250]],
  [5, [10, 20, 30, 40, 50, 60, 80, 100]],
  [10, [5, 10, 15, 20, 25, 30, 40, 50]],
] as const;

// Printed slips, 73, 700 and 165, with the true division beside them; and one cell printed right.
const slips = [
  [4, 2.5, 62.5],
  [0.25, 1.5, 600],
  [3, 5, 166.67],
  [3, 4, 133.33],
] as const;

async function pounds(nutrient: string, amount: number, bag: string): Promise<number> {
  const { result } = await answer(['weigh', `${String(amount)} lb ${nutrient}`, bag, '--json']);
  expect(result.bags).toHaveLength(1);
  return result.bags[0].g / LB;
}

published(source, () => {
  for (const [percent, cells] of rows) {
    wanted.forEach((amount, at) => {
      const cell = cells[at] ?? NaN;
      test(`${String(amount)} lb at ${String(percent)} %: ${String(cell)} lb`, async () => {
        // The table holds for any nutrient.
        expect(await pounds('N', amount, `${String(percent)}-0-0`)).toBeCloseTo(cell, 4);
        expect(await pounds('P2O5', amount, `0-${String(percent)}-0`)).toBeCloseTo(cell, 4);
        expect(await pounds('K2O', amount, `0-0-${String(percent)}`)).toBeCloseTo(cell, 4);
      });
    });
  }

  for (const [percent, amount, exact] of slips) {
    test(`${String(amount)} lb at ${String(percent)} %: ${String(exact)} lb, by division`, async () => {
      expect(Math.abs((await pounds('N', amount, `${String(percent)}-0-0`)) - exact)).toBeLessThanOrEqual(0.005);
    });
  }
});
