// Kansas State University, MF-2586, lime by the SMP buffer: lb/acre of effective calcium carbonate (100 % ECC),
// with the depth in inches inside the equation. Typed from research notes of the page (memory).
import { expect, test } from 'vitest';
import { published } from '../helpers.ts';
import { G_PER_M2, INCH, type Flags, expectPrinted, near, ph } from '../ph.ts';

const source = {
  id: 'kansas-mf2586',
  title: 'Soil Test Interpretations and Fertilizer Recommendations',
  publisher: 'Kansas State University',
  url: null,
  mark: 'memory',
} as const;

const flags = (buffer: number, inches: number) => ({ where: 'Kansas, US', now: 4.8, method: 'smp', buffer, depth: `${String(inches)} in` });

const equations = [
  [6.8, (b: number, inches: number) => (25_620 - 6360 * b + 391 * b ** 2) * inches],
  [6.0, (b: number, inches: number) => (12_810 - 3180 * b + 196 * b ** 2) * inches],
  [5.5, (b: number, inches: number) => (6405 - 1590 * b + 98 * b ** 2) * inches],
] as const;

// Buffer pH and depth in inches.
const readings = [[6.0, 6], [6.1, 6], [6.2, 6], [6.3, 6], [6.4, 6], [6.5, 6], [6.6, 6], [6.7, 6], [6.8, 6], [6.1, 8], [6.5, 8]] as const;

published(source, () => {
  expectPrinted(source.id, 'lb/acre', equations.flatMap(([goal, pounds]) => readings.map(([b, inches]): readonly [Flags, number] => [
    { ...flags(b, inches), goal }, Number(pounds(b, inches).toFixed(1)),
  ])), 0.5);

  // The same by hand for 6 in, to the whole pound.
  expectPrinted(source.id, 'lb/acre', [
    [{ ...flags(6.8, 6), goal: 6.8 }, 2711],
    [{ ...flags(6.8, 6), goal: 6.0 }, 1494],
    [{ ...flags(6.8, 6), goal: 5.5 }, 747],
    [{ ...flags(6.4, 6), goal: 6.8 }, 5588],
    [{ ...flags(6.4, 6), goal: 6.0 }, 2917],
    [{ ...flags(6.4, 6), goal: 5.5 }, 1458],
    [{ ...flags(6.0, 6), goal: 6.8 }, 9216],
    [{ ...flags(6.0, 6), goal: 6.0 }, 4716],
    [{ ...flags(6.0, 6), goal: 5.5 }, 2358],
  ], 1);

  // Halfway between two goals at buffer pH 6.0, 6 in: (4,716 + 9,216) / 2 and (2,358 + 4,716) / 2.
  expectPrinted(source.id, 'lb/acre', [
    [{ ...flags(6.0, 6), goal: 6.4 }, 6966],
    [{ ...flags(6.0, 6), goal: 5.75 }, 3537],
  ], 0.5);

  test('buffer pH 6.0, goal 6.0, 6 in: 4,716 lb/acre of pure lime', async () => {
    const { row } = await ph({ ...flags(6.0, 6), goal: 6.0, material: 'Garden lime, CCE 100' });
    expect(row.verdict).toBe('lime');
    near(row.dugIn?.gPerM2, 4716 * G_PER_M2['lb/acre']);
    expect(row.dugIn?.depthM).toBeCloseTo(6 * INCH, 4);
  });
});
