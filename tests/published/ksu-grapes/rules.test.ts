// Kansas State University Research and Extension, "Fertilizing Grapes" (2021). The figures were typed a second time, from a stored text of the page.
import { OZ, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'ksu-grapes',
  title: 'Fertilizing Grapes',
  publisher: 'Kansas State University Research and Extension',
  url: 'https://www.ksuhortnewsletter.org/newsletters/previous/2',
  mark: 'read',
} as const;

published(source, () => {
  // Cups of 10-10-10, 8 oz each: half a cup twice in the planting year, one cup in the second, two from the third.
  expectFigures(source.id, [
    ['grape, planted 2026, shoots 1 in', [2 * 4 * 0.1 * OZ], { where: 'Kansas, US' }],
    ['grape, planted 2025, shoots 1 in', [8 * 0.1 * OZ], { where: 'Kansas, US' }],
    ['grape, planted 2024, shoots 1 in', [2 * 8 * 0.1 * OZ], { where: 'Kansas, US' }],
    ['grape, planted 2014, bearing, shoots 1 in', [2 * 8 * 0.1 * OZ], { where: 'Kansas, US' }],
  ]);
});
