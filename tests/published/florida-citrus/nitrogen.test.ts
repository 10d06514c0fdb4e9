// University of Florida IFAS, "Citrus Culture in the Home Landscape", its feeding table
// as printed in "Feed Your Fruit", 18 October 2013. Typed a second time, from a stored text of that page
// (year labels from a newspaper column of the same extension office, which prints the same table).
import { expect, test } from 'vitest';
import { LB, expectFigures, expectNeeds, nitrogenBy, onePlant, published } from '../helpers.ts';

const source = {
  id: 'florida-citrus',
  title: 'Citrus Culture in the Home Landscape (table in Feed Your Fruit)',
  publisher: 'University of Florida IFAS Extension',
  url: 'https://blogs.ifas.ufl.edu/pinellasco/2013/10/18/feed-your-fruit/',
  mark: 'read',
} as const;

const where = 'Florida, US';

// Year since planting (the planting year is the first), doses a year, pounds of nitrogen a tree a year,
// then pounds a tree a dose of 6-6-6, 8-8-8 and 10-10-10.
const table = [
  { planted: 2026, doses: 6, low: 0.15, high: 0.3, six: [0.4, 0.8], eight: [0.3, 0.6], ten: [0.3, 0.5] },
  { planted: 2025, doses: 5, low: 0.3, high: 0.6, six: [1, 2], eight: [0.8, 1.5], ten: [0.6, 1.2] },
  { planted: 2024, doses: 4, low: 0.45, high: 0.9, six: [1.9, 3.8], eight: [1.4, 2.8], ten: [1.1, 2.3] },
  { planted: 2023, doses: 3, low: 0.8, high: 1, six: [4.4, 5.6], eight: [3.3, 4.2], ten: [2.7, 3.3] },
  { planted: 2022, doses: 3, low: 1.1, high: 1.4, six: [6.1, 7.8], eight: [4.6, 5.8], ten: [3.7, 4.7] },
  { planted: 2012, doses: 3, low: 1.1, high: 1.4, six: [6.1, 7.8], eight: [4.6, 5.8], ten: [3.7, 4.7] },
] as const;

/** One decimal, half upward, as the table rounds. */
function tenth(value: number): number {
  return Math.floor(value * 10 + 0.5 + 1e-9) / 10;
}

published(source, () => {
  for (const { planted, low, high } of table) {
    const facts = `lemon, planted ${String(planted)}, 10 ft across`;
    expectFigures(source.id, [[facts, [low * LB, high * LB], { where }]]);
    expectNeeds([[facts, { N: low * LB }, { where }]]);
  }

  for (const { planted, doses, six, eight, ten } of table) {
    test(`lemon planted ${String(planted)}: the columns of product follow from its nitrogen`, async () => {
      const plan = await onePlant(`lemon, planted ${String(planted)}, 10 ft across`, { where });
      const grams = nitrogenBy(plan, source.id);
      const ends = [Math.min(...grams), Math.max(...grams)].map((g) => g / LB / doses);
      const columns = [
        { grade: 0.06, printed: six },
        { grade: 0.08, printed: eight },
        { grade: 0.1, printed: ten },
      ];
      for (const { grade, printed } of columns) {
        expect(ends.map((pounds) => tenth(pounds / grade))).toEqual([...printed]);
      }
    });
  }
});
