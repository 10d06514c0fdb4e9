// North Central Region, publication 221, lime requirement by the SMP buffer (after Shoemaker, McLean and Pratt):
// ton/acre of agricultural ground limestone of neutralising power 90 or more, 8 in deep.
// Typed from research notes of the page (memory).
import { expect, test } from 'vitest';
import { published } from '../helpers.ts';
import { INCH, expectPrinted, expectTable, ph } from '../ph.ts';

const source = {
  id: 'ncr-221',
  title: 'Recommended Chemical Soil Test Procedures for the North Central Region',
  publisher: 'North Central Regional Research Publication 221',
  url: null,
  mark: 'memory',
} as const;

const flags = (buffer: number) => ({ now: 4.8, method: 'smp', buffer });

// Buffer pH, then ton/acre of ground limestone to pH 7.0, 6.5 and 6.0 on mineral soil.
const table = [
  [6.8, 1.4, 1.2, 1.0],
  [6.7, 2.4, 2.1, 1.7],
  [6.6, 3.4, 2.9, 2.4],
  [6.5, 4.5, 3.8, 3.1],
  [6.4, 5.5, 4.7, 3.9],
  [6.3, 6.5, 5.5, 4.6],
  [6.2, 7.5, 6.4, 5.3],
  [6.1, 8.6, 7.2, 6.0],
  [6.0, 9.6, 8.1, 6.7],
  [5.8, 11.7, 9.8, 8.1],
  [5.5, 14.8, 12.5, 10.3],
  [5.2, 17.9, 15.1, 12.4],
  [5.0, 20.0, 16.9, 13.9],
] as const;

published(source, () => {
  expectTable(source.id, 'ton/acre', [7.0, 6.5, 6.0], table, flags);

  // Halfway between two printed cells.
  expectPrinted(source.id, 'ton/acre', [
    [{ ...flags(6.45), goal: 6.5 }, 4.25],
    [{ ...flags(5.9), goal: 6.0 }, 7.4],
    [{ ...flags(5.1), goal: 7.0 }, 18.95],
    [{ ...flags(6.2), goal: 6.25 }, 5.85],
    [{ ...flags(6.0), goal: 6.75 }, 8.85],
  ]);

  test('buffer pH 6.2, goal 6.5: reckoned for 8 in', async () => {
    const { row } = await ph({ ...flags(6.2), goal: 6.5, material: 'Garden lime, CCE 100' });
    expect(row.verdict).toBe('lime');
    expect(row.dugIn?.depthM).toBeCloseTo(8 * INCH, 4);
  });

  // What is more acid than the last row takes that row, as the least.
  expectPrinted(source.id, 'ton/acre', [[{ ...flags(4.9), goal: 6.5 }, 16.9]]);
});
