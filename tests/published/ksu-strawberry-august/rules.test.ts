// Kansas State University Research and Extension, "Fertilizing Strawberries" (2021). The figures were typed a second time, from a stored text of the page.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'ksu-strawberry-august',
  title: 'Fertilizing Strawberries',
  publisher: 'Kansas State University Research and Extension',
  url: 'https://enewsletters.k-state.edu/postrockdistrictfcs/tag/horticulture/',
  mark: 'read',
} as const;

published(source, () => {
  // In mid-August: 1/2 to 3/4 lb of actual N per 100 ft of row.
  expectFigures(source.id, [
    [
      'strawberry, planted 2024, spacing 1 x 3 ft, shoots 1 in',
      [(1 / 100) * 0.5 * LB, (1 / 100) * 0.75 * LB],
      { where: 'Kansas, US' },
    ],
    [
      'strawberry, planted 2024, spacing 1.5 x 4 ft, shoots 1 in',
      [(1.5 / 100) * 0.5 * LB, (1.5 / 100) * 0.75 * LB],
      { where: 'Kansas, US' },
    ],
  ]);
});
