// Oregon State University Extension, EM 9057, lime requirement by the SMP buffer, western Oregon, 2013:
// ton/acre of 100-score lime for a 6 in sample. Typed from research notes of the page (memory).
import { expect, test } from 'vitest';
import { published } from '../helpers.ts';
import { G_PER_M2, INCH, expectPrinted, expectTable, near, ph } from '../ph.ts';

const source = {
  id: 'oregon-em9057',
  title: 'Applying Lime to Raise Soil pH for Crop Production (Western Oregon)',
  publisher: 'Oregon State University Extension',
  url: 'https://extension.oregonstate.edu./catalog/pub/em-9057-applying-lime-raise-soil-ph-crop-production-western-oregon',
  mark: 'memory',
} as const;

const flags = (buffer: number) => ({ where: 'Oregon, US', now: 4.8, method: 'smp', buffer });

// Buffer pH, then ton/acre to pH 5.6, 6.0 and 6.4.
const table = [
  [6.7, 0, 0, 0],
  [6.6, 0, 0, 1.1],
  [6.5, 0, 1.0, 1.7],
  [6.4, 0, 1.1, 2.2],
  [6.3, 0, 1.5, 2.7],
  [6.2, 1.0, 2.0, 3.2],
  [6.1, 1.4, 2.4, 3.7],
  [6.0, 1.7, 2.9, 4.2],
  [5.9, 2.1, 3.3, 4.7],
  [5.8, 2.5, 3.7, 5.3],
  [5.7, 2.8, 4.2, 5.8],
  [5.6, 3.2, 4.6, 6.3],
  [5.5, 3.6, 5.1, 6.8],
  [5.4, 3.9, 5.5, 7.3],
  [5.3, 4.3, 6.0, 7.8],
  [5.2, 4.7, 6.4, 8.3],
  [5.1, 5.0, 6.9, 8.9],
  [5.0, 5.4, 7.3, 9.4],
  [4.9, 5.8, 7.7, 9.9],
  [4.8, 6.2, 8.2, 10.4],
] as const;

published(source, () => {
  expectTable(source.id, 'ton/acre', [5.6, 6.0, 6.4], table, flags);

  // Halfway between two printed cells.
  expectPrinted(source.id, 'ton/acre', [
    [{ ...flags(6.05), goal: 5.6 }, 1.55],
    [{ ...flags(5.75), goal: 6.4 }, 5.55],
    [{ ...flags(6.0), goal: 5.8 }, 2.3],
    [{ ...flags(5.5), goal: 6.2 }, 5.95],
  ]);

  test('buffer pH 6.0, goal 6.4: 4.2 ton/acre of pure lime dug 6 in deep', async () => {
    const { row } = await ph({ ...flags(6.0), goal: 6.4, material: 'Garden lime, CCE 100' });
    expect(row.verdict).toBe('lime');
    near(row.dugIn?.gPerM2, 4.2 * G_PER_M2['ton/acre']);
    expect(row.dugIn?.depthM).toBeCloseTo(6 * INCH, 4);
  });

  // What is more acid than the last row takes that row, as the least.
  expectPrinted(source.id, 'ton/acre', [[{ ...flags(4.7), goal: 6 }, 8.2]]);
});
