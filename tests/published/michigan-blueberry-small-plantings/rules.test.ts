// Michigan State University Extension (M. Longstroth), "Blueberry Fertilizer Recommendations for New Growers" (2020). The figures were typed a second time, from a stored text of the page.
import { LB, OZ, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'michigan-blueberry-small-plantings',
  title: 'Blueberry Fertilizer Recommendations for New Growers',
  publisher: 'Michigan State University Extension (M. Longstroth)',
  url: 'https://ask.extension.org/questions/624785',
  mark: 'read',
} as const;

published(source, () => {
  // 50 to 70 lb of N per acre, at 3 x 10 ft (1452 plants): put as 0.5 to 0.8 oz of N, and as 2.5 to 4 oz of 21-0-0, a plant.
  expectFigures(source.id, [
    [
      'highbush blueberry, planted 2016, spacing 3 x 10 ft, shoots 1 in',
      [[(50 * LB) / 1452, 0.5 * OZ, 2.5 * 0.21 * OZ], [(70 * LB) / 1452, 0.8 * OZ, 4 * 0.21 * OZ]],
      { where: 'Michigan, US' },
    ],
    [
      'highbush blueberry, planted 2016, shoots 1 in',
      [[(50 * LB) / 1452, 0.5 * OZ, 2.5 * 0.21 * OZ], [(70 * LB) / 1452, 0.8 * OZ, 4 * 0.21 * OZ]],
      { where: 'Michigan, US' },
    ],
  ]);
});
