// New South Wales Department of Primary Industries, Agfact AC.19, lime by effective exchange capacity:
// t/ha of good lime to raise 0-10 cm between two pH values, both in calcium chloride.
// Typed from research notes of the page (memory).
import { expect, test } from 'vitest';
import { published } from '../helpers.ts';
import { type Case, expectPrinted, ph } from '../ph.ts';

const source = {
  id: 'nsw-ac19-lime',
  title: 'Agfact AC.19: soil acidity and liming',
  publisher: 'New South Wales Department of Primary Industries',
  url: null,
  mark: 'memory',
} as const;

/** Asked in water, which reads 0.6 higher (0.5 to 0.8 in the same department's glossary). */
const water = (salt: number): number => Number((salt + 0.6).toFixed(2));
const flags = (ecec: number, now: number, goal: number) => ({ where: 'New South Wales, Australia', now: water(now), goal: water(goal), ecec });

const steps = [[4.0, 5.2], [4.3, 5.2], [4.7, 5.2], [5.2, 5.5]] as const;

// ECEC, cmol(+)/kg, then t/ha for each of the steps.
const table: readonly (readonly number[])[] = [
  [1, 1.6, 0.8, 0.3, 0.2],
  [2, 2.4, 1.2, 0.5, 0.4],
  [3, 3.5, 1.7, 0.7, 0.5],
  [4, 3.9, 2.1, 0.9, 0.6],
  [5, 4.7, 2.5, 1.1, 0.7],
  [6, 5.5, 3.0, 1.2, 0.8],
  [8, 7.1, 3.8, 1.6, 1.1],
  [10, 8.7, 4.6, 1.9, 1.3],
  [15, 12.5, 6.7, 2.8, 1.9],
];

published(source, () => {
  expectPrinted(source.id, 't/ha', table.flatMap(([ecec = NaN, ...cells]) => cells.map((tonnes, at): Case => {
    const [now, goal] = steps[at] ?? [NaN, NaN];
    return [flags(ecec, now, goal), tonnes];
  })));

  // Halfway between two printed capacities.
  expectPrinted(source.id, 't/ha', [
    [flags(7, 4.0, 5.2), 6.3],
    [flags(9, 4.3, 5.2), 4.2],
  ]);

  test('ECEC 4, 4.3 to 5.2: reckoned for 10 cm', async () => {
    const { row } = await ph({ ...flags(4, 4.3, 5.2), material: 'Garden lime, CCE 100' });
    expect(row.verdict).toBe('lime');
    expect(row.dugIn?.depthM).toBeCloseTo(0.1, 3);
  });
});
