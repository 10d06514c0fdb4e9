// Ontario Ministry of Agriculture, publication 811 (and factsheet 91-086), lime by the SMP buffer:
// t/ha of limestone of agricultural index 75, 15 cm deep, at least 0 and at most 20.
// Typed from research notes of the page (memory; index 75 read).
import { expect, test } from 'vitest';
import { published } from '../helpers.ts';
import { type Case, expectPrinted, G_PER_M2, near, ph } from '../ph.ts';

const source = {
  id: 'ontario-811',
  title: 'Agronomy Guide for Field Crops: lime requirement',
  publisher: 'Ontario Ministry of Agriculture, Food and Rural Affairs',
  url: null,
  mark: 'memory',
} as const;

const flags = (buffer: number) => ({ where: 'Ontario, Canada', now: 4.8, method: 'smp', buffer });

const equations = [
  [7.0, (b: number) => 334.5 - 90.79 * b + 6.19 * b ** 2],
  [6.5, (b: number) => 291.6 - 80.99 * b + 5.64 * b ** 2],
  [6.0, (b: number) => 255.4 - 73.15 * b + 5.26 * b ** 2],
  [5.5, (b: number) => 37.7 - 5.75 * b],
] as const;
const readings = [5.2, 5.4, 5.5, 5.6, 5.8, 5.9, 6.0, 6.2, 6.3, 6.4, 6.6, 6.8] as const;
const held = (tonnes: number): number => Number(Math.min(20, Math.max(0, tonnes)).toFixed(3));

// Buffer pH, then t/ha to pH 7.0, 6.5, 6.0 and 5.5. Left out: five cells to 5.5 where the table keeps
// a least dressing (6.8, 6.6 and 6.4) or is recalled above the equation (5.4 and 5.2).
const table: readonly (readonly number[])[] = [
  [6.8, 3, 2, 1],
  [6.6, 5, 3, 2],
  [6.4, 7, 4, 3],
  [6.2, 10, 6, 4, 2],
  [6.0, 13, 9, 6, 3],
  [5.8, 16, 12, 8, 4],
  [5.6, 20, 15, 11, 6],
  [5.4, 20, 19, 14],
  [5.2, 20, 20, 17],
];

published(source, () => {
  expectPrinted(source.id, 't/ha', equations.flatMap(([goal, tonnes]) => readings.map((b): Case => [{ ...flags(b), goal }, held(tonnes(b))])));

  // The table rounds the equations to the whole tonne.
  expectPrinted(source.id, 't/ha', table.flatMap(([b = NaN, ...cells]) => cells.map((tonnes, at): Case => [{ ...flags(b), goal: [7.0, 6.5, 6.0, 5.5][at] ?? NaN }, tonnes])), 0.501);

  // By hand, to a tenth.
  expectPrinted(source.id, 't/ha', [
    [{ ...flags(5.4), goal: 5.5 }, 6.7],
    [{ ...flags(5.2), goal: 5.5 }, 7.8],
  ], 0.051);

  // Halfway between two goals: at buffer pH 6.0, (5.86 + 8.70) / 2 and (3.20 + 5.86) / 2.
  expectPrinted(source.id, 't/ha', [
    [{ ...flags(6.0), goal: 6.25 }, 7.28],
    [{ ...flags(6.0), goal: 5.75 }, 4.53],
  ]);

  test('buffer pH 6.0, goal 6.5: 8.70 t/ha at index 75 is 6.525 of pure lime, 15 cm deep', async () => {
    const { row } = await ph({ ...flags(6.0), goal: 6.5, material: 'Garden lime, CCE 100' });
    expect(row.verdict).toBe('lime');
    near(row.dugIn?.gPerM2, 8.7 * 0.75 * G_PER_M2['t/ha']);
    expect(row.dugIn?.depthM).toBeCloseTo(0.15, 3);
  });
});
