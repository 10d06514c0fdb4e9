// Iowa State University Extension, PM 1688, 2002, lime by the SMP or Sikora buffer:
// lb/acre of calcium carbonate (100 % ECCE), 6 in deep. Typed from research notes of the page
// (table read in a quotation, equation memory).
import { expect, test } from 'vitest';
import { published } from '../helpers.ts';
import { G_PER_M2, INCH, type Flags, expectPrinted, expectTable, near, ph } from '../ph.ts';

const source = {
  id: 'iowa-pm1688',
  title: 'A General Guide for Crop Nutrient and Limestone Recommendations in Iowa',
  publisher: 'Iowa State University Extension',
  url: null,
  mark: 'memory',
} as const;

const flags = (buffer: number, method = 'smp') => ({ where: 'Iowa, US', now: 4.8, method, buffer });

// Buffer pH, then lb/acre to pH 6.5 and 6.9.
const table = [
  [7.0, 0, 1100],
  [6.6, 2100, 4400],
  [6.2, 5000, 7700],
  [5.8, 7900, 10_600],
] as const;

// To pH 6.0; it meets nought a little above buffer pH 6.5.
const toSix = (buffer: number): number => 38_619 - 5915 * buffer;

published(source, () => {
  expectTable(source.id, 'lb/acre', [6.5, 6.9], table, flags);

  expectPrinted(source.id, 'lb/acre', [5.8, 5.9, 6.0, 6.1, 6.2, 6.3, 6.4, 6.5].map((buffer): readonly [Flags, number] => [
    { ...flags(buffer), goal: 6.0 }, Number(toSix(buffer).toFixed(1)),
  ]), 0.5);

  // Either buffer; then halfway between two goals, (1,946 + 5,000) / 2 and (5,000 + 7,700) / 2.
  expectPrinted(source.id, 'lb/acre', [
    [{ ...flags(6.6, 'sikora'), goal: 6.5 }, 2100],
    [{ ...flags(6.2), goal: 6.25 }, 3473],
    [{ ...flags(6.2), goal: 6.7 }, 6350],
  ], 0.5);

  // The quotation's own example: buffer pH 6.6, 2,100 lb to 6.5 and 4,400 to 6.9.
  for (const [goal, pounds] of [[6.5, 2100], [6.9, 4400]] as const) {
    test(`buffer pH 6.6, goal ${goal.toFixed(1)}: ${String(pounds)} lb/acre of pure lime dug 6 in deep`, async () => {
      const { row } = await ph({ ...flags(6.6), goal, material: 'Garden lime, CCE 100' });
      expect(row.verdict).toBe('lime');
      near(row.dugIn?.gPerM2, pounds * G_PER_M2['lb/acre']);
      expect(row.dugIn?.depthM).toBeCloseTo(6 * INCH, 4);
    });
  }
});
