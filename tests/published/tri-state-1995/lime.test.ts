// Ohio, Indiana and Michigan, Tri-State recommendations E-2567, 1995, lime by the SMP lime test index:
// ton/acre of limestone of neutralising value 90 %, 8 in deep. Typed from research notes of the page
// (equations and table memory; the change of material read).
import { expect, test } from 'vitest';
import { published } from '../helpers.ts';
import { G_PER_M2, INCH, type Flags, expectPrinted, near, ph } from '../ph.ts';

const source = {
  id: 'tri-state-1995',
  title: 'Tri-State Fertilizer Recommendations, E-2567: soil pH and lime',
  publisher: 'Michigan State University, The Ohio State University and Purdue University Extension',
  url: 'http://web1.msue.msu.edu/msue/imp/modf1/06039707.html',
  mark: 'memory',
} as const;

const flags = (buffer: number, where = 'Ohio, US') => ({ where, now: 4.8, method: 'smp', buffer });

// The lime test index is ten times the buffer pH.
const equations = [
  [6.8, (lti: number) => 71.4 - 1.03 * lti],
  [6.5, (lti: number) => 60.4 - 0.87 * lti],
  [6.0, (lti: number) => 49.3 - 0.71 * lti],
] as const;
const indexes = [60, 61, 62, 63, 64, 64.5, 65, 66, 67, 68] as const;

// Lime test index, then ton/acre to pH 6.8, 6.5 and 6.0, as printed beside the equations.
const table: readonly (readonly number[])[] = [
  [68, 1.4, 1.2, 1.0],
  [67, 2.4, 2.1, 1.7],
  [66, 3.4, 2.9, 2.4],
  [65, 4.5, 3.8, 3.1],
  [64, 5.5, 4.7, 3.9],
  [63, 6.5, 5.5, 4.6],
  [62, 7.5, 6.4, 5.3],
  [61, 8.6, 7.2, 6.0],
  [60, 9.6, 8.1, 6.7],
];

const round = (tons: number): number => Number(tons.toFixed(3));

published(source, () => {
  expectPrinted(source.id, 'ton/acre', equations.flatMap(([goal, tons]) => indexes.map((lti): readonly [Flags, number] => [
    { ...flags(lti / 10), goal }, round(tons(lti)),
  ])));

  // The table rounds the equations, nowhere by more than 0.13.
  expectPrinted(source.id, 'ton/acre', table.flatMap(([lti = NaN, ...cells]) => cells.map((tons, at): readonly [Flags, number] => [
    { ...flags(lti / 10), goal: [6.8, 6.5, 6.0][at] ?? NaN }, tons,
  ])), 0.13);

  // Halfway between two goals: index 64, (4.72 + 3.86) / 2; index 60, (9.6 + 8.2) / 2 for 6.65.
  expectPrinted(source.id, 'ton/acre', [
    [{ ...flags(6.4), goal: 6.25 }, 4.29],
    [{ ...flags(6.0), goal: 6.65 }, 8.9],
  ]);

  // The other two states of the three: index 62, 60.4 - 53.94.
  for (const where of ['Indiana, US', 'Michigan, US']) {
    expectPrinted(source.id, 'ton/acre', [[{ ...flags(6.2, where), goal: 6.5 }, 6.46]]);
  }

  test('index 64, goal 6.0: 3.86 ton/acre at 90 % is 3.474 of pure lime, 8 in deep', async () => {
    const { row } = await ph({ ...flags(6.4), goal: 6.0, material: 'Garden lime, CCE 100' });
    expect(row.verdict).toBe('lime');
    near(row.dugIn?.gPerM2, 3.86 * 0.9 * G_PER_M2['ton/acre']);
    expect(row.dugIn?.depthM).toBeCloseTo(8 * INCH, 4);
  });
});
