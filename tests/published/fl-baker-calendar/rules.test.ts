// UF/IFAS Extension Baker County, "Month by Month Calendar: Fruits & Nuts" (undated). The figures were typed a second time, from a stored text of the page.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'fl-baker-calendar',
  title: 'Month by Month Calendar: Fruits & Nuts',
  publisher: 'UF/IFAS Extension Baker County',
  url: null,
  mark: 'read',
} as const;

published(source, () => {
  // Apples: 1 lb of 10-10-10 a year of age, 7.5 lb at most; the planting year is year 1.
  expectFigures(source.id, [
    ['apple, planted 2026, shoots 1 in', [0.1 * LB], { where: 'Florida, US' }],
    ['apple, planted 2024, shoots 1 in', [3 * 0.1 * LB], { where: 'Florida, US' }],
    ['apple, planted 2021, shoots 1 in', [6 * 0.1 * LB], { where: 'Florida, US' }],
    ['apple, planted 2006, shoots 1 in', [7.5 * 0.1 * LB], { where: 'Florida, US' }],
  ]);

  // Pears: half a pound of 6-6-6 or 8-8-8 a year of age, 5 lb at most.
  expectFigures(source.id, [
    ['pear, planted 2023, shoots 1 in', [[2 * 0.06 * LB, 2 * 0.08 * LB]], { where: 'Florida, US' }],
    ['pear, planted 2006, shoots 1 in', [[5 * 0.06 * LB, 5 * 0.08 * LB]], { where: 'Florida, US' }],
  ]);
});
