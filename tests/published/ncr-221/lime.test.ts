// North Central Regional Publication 221, lime requirement by the SMP buffer after Shoemaker, McLean
// and Pratt 1961: ton/acre of ground limestone of neutralising value 90, 8 in deep.
// MEMORY: the table was recalled, not seen. The change of material was read, in Michigan's E-2567
// (the Tri-State recommendations, 1995), whose table holds the same numbers.
import { expect, test } from 'vitest';
import { published } from '../helpers.ts';
import { G_PER_M2, INCH, expectPrinted, expectTable, figuresOf, near, ph } from '../ph.ts';

const source = {
  id: 'ncr-221',
  title: 'Recommended Chemical Soil Test Procedures (recalled, not seen)',
  publisher: 'North Central Regional Publication 221',
  url: null,
  mark: 'memory',
} as const;

const flags = (buffer: number) => ({ now: 5, method: 'smp', buffer });

// Buffer pH, then ton/acre of agricultural limestone to pH 7.0, 6.5 and 6.0.
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

  // Between rows of a tenth and rows further apart.
  expectPrinted(source.id, 'ton/acre', [
    [{ ...flags(6.75), goal: 6.0 }, 1.35],
    [{ ...flags(5.9), goal: 6.5 }, 8.95],
    [{ ...flags(5.6), goal: 7.0 }, 14.8 - (14.8 - 11.7) / 3],
    [{ ...flags(6.4), goal: 6.25 }, 4.3],
  ]);

  test('the figure says that it was recalled', async () => {
    const figures = figuresOf(await ph({ ...flags(6.2), goal: 6.0 }), source.id, 'ton/acre');
    expect(figures.map((figure) => figure.cite.mark)).toContain('memory');
  });

  test('the depth is 8 in unless another is told', async () => {
    const { row } = await ph({ ...flags(6.8), goal: 6.0, material: 'Garden lime, CCE 100' });
    expect(row.dugIn?.depthM).toBeCloseTo(8 * INCH, 4);
  });

  // Printed: the rate times 0.90, divided by the new neutralising value; 1.125 for a material of 80.
  test('buffer pH 6.8, goal 6.0, a material of neutralising value 80: a quarter of 1.125 ton/acre', async () => {
    const { row } = await ph({ ...flags(6.8), goal: 6.0, material: 'Garden lime, CCE 80' });
    near(row.gPerM2, ((1.0 * 0.9) / 0.8 / 4) * G_PER_M2['ton/acre']);
  });
});
