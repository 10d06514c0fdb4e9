// Michigan State University Extension, "Time to fertilize blueberries". The figures were typed a second time, from a stored text of the page.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'michigan-blueberry-time',
  title: 'Time to fertilize blueberries',
  publisher: 'Michigan State University Extension',
  url: 'http://msue.anr.msu.edu/news/time_to_fertilize_blueberries1',
  mark: 'read',
} as const;

published(source, () => {
  // Table 1, lb of N per acre at 2, 4, 6 and 8 years: 15, 30, 45, 65.
  expectFigures(source.id, [
    [
      'highbush blueberry, planted 2024, spacing 4 x 10 ft, shoots 1 in',
      [((4 * 10) / 43560) * 15 * LB],
      { where: 'Michigan, US' },
    ],
    [
      'highbush blueberry, planted 2022, spacing 4 x 10 ft, shoots 1 in',
      [((4 * 10) / 43560) * 30 * LB],
      { where: 'Michigan, US' },
    ],
    [
      'highbush blueberry, planted 2020, spacing 4 x 10 ft, shoots 1 in',
      [((4 * 10) / 43560) * 45 * LB],
      { where: 'Michigan, US' },
    ],
    [
      'highbush blueberry, planted 2018, spacing 4 x 10 ft, shoots 1 in',
      [((4 * 10) / 43560) * 65 * LB],
      { where: 'Michigan, US' },
    ],
  ]);
});
