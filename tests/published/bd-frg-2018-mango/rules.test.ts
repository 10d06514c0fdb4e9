// Bangladesh Agricultural Research Council, "Fertilizer Recommendation Guide 2018: mango" (2018). The figures were typed a second time, from a stored text of the page.
import { expectFigures, published } from '../helpers.ts';

const source = {
  id: 'bd-frg-2018-mango',
  title: 'Fertilizer Recommendation Guide 2018: mango',
  publisher: 'Bangladesh Agricultural Research Council',
  url: 'https://frg2018.com/fruit_crops',
  mark: 'read',
} as const;

published(source, () => {
  // Urea, grams a tree and year, by age.
  expectFigures(source.id, [
    ['mango, planted 2026, shoots 1 in', [100 * 0.46], { where: 'Bangladesh' }],
    ['mango, planted 2025, shoots 1 in', [100 * 0.46], { where: 'Bangladesh' }],
    ['mango, planted 2024, shoots 1 in', [250 * 0.46], { where: 'Bangladesh' }],
    ['mango, planted 2022, shoots 1 in', [250 * 0.46], { where: 'Bangladesh' }],
    ['mango, planted 2021, shoots 1 in', [500 * 0.46], { where: 'Bangladesh' }],
    ['mango, planted 2019, shoots 1 in', [500 * 0.46], { where: 'Bangladesh' }],
    ['mango, planted 2018, shoots 1 in', [750 * 0.46], { where: 'Bangladesh' }],
    ['mango, planted 2016, shoots 1 in', [750 * 0.46], { where: 'Bangladesh' }],
    ['mango, planted 2015, shoots 1 in', [1000 * 0.46], { where: 'Bangladesh' }],
    ['mango, planted 2011, shoots 1 in', [1000 * 0.46], { where: 'Bangladesh' }],
    ['mango, planted 2010, shoots 1 in', [1500 * 0.46], { where: 'Bangladesh' }],
    ['mango, planted 2006, shoots 1 in', [1500 * 0.46], { where: 'Bangladesh' }],
    ['mango, planted 1996, shoots 1 in', [2000 * 0.46], { where: 'Bangladesh' }],
  ]);
});
