// University of Minnesota Extension, FO-5956, lime by the Sikora buffer: lb/acre of effective neutralising power,
// a ton of pure calcium carbonate being 2,000 lb of it. Area 1 (east) is limed to 6.5, area 2 (west) to 6.0.
// Typed from research notes of the page (memory).
import { expect, test } from 'vitest';
import { published } from '../helpers.ts';
import { G_PER_M2, expectPrinted, expectTable, near, ph } from '../ph.ts';

const source = {
  id: 'minnesota-fo5956',
  title: 'Lime needs in Minnesota',
  publisher: 'University of Minnesota Extension',
  url: null,
  mark: 'memory',
} as const;

const flags = (buffer: number) => ({ where: 'Minnesota, US', now: 4.8, method: 'sikora', buffer });

// Buffer pH, then lb/acre to pH 6.5 (area 1) and 6.0 (area 2).
const table = [
  [6.8, 3000, 2000],
  [6.7, 4000, 2000],
  [6.6, 5000, 2000],
  [6.5, 6000, 2500],
  [6.4, 7000, 3000],
  [6.3, 8000, 3500],
  [6.2, 9000, 4000],
  [6.1, 10_000, 4500],
  [6.0, 11_000, 5000],
] as const;

published(source, () => {
  expectTable(source.id, 'lb/acre', [6.5, 6.0], table, flags);

  // Halfway between two printed readings.
  expectPrinted(source.id, 'lb/acre', [
    [{ ...flags(6.45), goal: 6.5 }, 6500],
    [{ ...flags(6.15), goal: 6.0 }, 4250],
  ], 0.5);

  test('buffer pH 6.4, goal 6.5: 7,000 lb ENP is 7,000 lb of pure lime to the acre', async () => {
    const { row } = await ph({ ...flags(6.4), goal: 6.5, material: 'Garden lime, CCE 100' });
    expect(row.verdict).toBe('lime');
    near(row.dugIn?.gPerM2, 7000 * G_PER_M2['lb/acre']);
  });

  // What is more acid than the last row takes that row, as the least.
  expectPrinted(source.id, 'lb/acre', [[{ ...flags(5.9), goal: 6.5 }, 11_000]]);
});
