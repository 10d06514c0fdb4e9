// Auburn University, Adams-Evans buffer: lb/acre of calcium carbonate over 2 million lb of soil, the equation's 1.5
// being for what a field does not use. Typed from research notes of the page
// (equation read in part; the curve of pH by saturation, Adams and Evans 1962, memory).
import { expect, test } from 'vitest';
import { published } from '../helpers.ts';
import { G_PER_M2, type Flags, expectPrinted, near, ph } from '../ph.ts';

const source = {
  id: 'alabama-adams-evans',
  title: 'Adams-Evans buffer for lime requirement',
  publisher: 'Auburn University',
  url: null,
  mark: 'memory',
} as const;

const flags = (now: number, buffer: number) => ({ where: 'Alabama, US', now, method: 'adams-evans', buffer });

// Fraction of the exchange sites unsaturated: pH = 7.79 - 5.55 H + 2.27 H², solved for H.
const unsaturated = (pH: number): number => (5.55 - Math.sqrt(5.55 ** 2 - 4 * 2.27 * (7.79 - pH))) / 4.54;
const pounds = (now: number, goal: number, buffer: number): number =>
  ((8000 * (8 - buffer)) / unsaturated(now)) * (unsaturated(now) - unsaturated(goal)) * 1.5;

// Worked to the whole pound for goal 6.5: water pH, then lb/acre at buffer pH 7.9, 7.8, 7.7, 7.6 and 7.5.
const table: readonly (readonly number[])[] = [
  [5.0, 759, 1517, 2276, 3035, 3794],
  [5.5, 606, 1212, 1818, 2425, 3031],
  [6.0, 384, 767, 1151, 1534, 1918],
];

// Water pH, goal and buffer pH.
const points = [
  [4.8, 6.5, 7.85], [4.8, 6.0, 7.6], [5.2, 6.5, 7.65], [5.2, 6.0, 7.8], [5.4, 6.3, 7.55],
  [5.7, 6.5, 7.75], [5.8, 6.8, 7.7], [6.2, 6.5, 7.9], [5.0, 5.8, 7.5], [5.6, 7.0, 7.8],
] as const;

published(source, () => {
  expectPrinted(source.id, 'lb/acre', table.flatMap(([now = NaN, ...cells]) => cells.map((value, at): readonly [Flags, number] => [
    { ...flags(now, [7.9, 7.8, 7.7, 7.6, 7.5][at] ?? NaN), goal: 6.5 }, value,
  ])), 0.6);

  expectPrinted(source.id, 'lb/acre', points.map(([now, goal, buffer]): readonly [Flags, number] => [
    { ...flags(now, buffer), goal }, Number(pounds(now, goal, buffer).toFixed(1)),
  ]), 0.5);

  test('water pH 5.5, buffer pH 7.70, goal 6.5: 1,818 lb/acre of pure lime', async () => {
    const { row } = await ph({ ...flags(5.5, 7.7), goal: 6.5, material: 'Garden lime, CCE 100' });
    expect(row.verdict).toBe('lime');
    near(row.dugIn?.gPerM2, 1818 * G_PER_M2['lb/acre']);
  });
});
