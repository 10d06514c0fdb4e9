// Oregon State University Extension Service, "Caneberries like manure in winter or spring" (2006). The figures were typed a second time, from a stored text of the page.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'oregon-caneberries-manure',
  title: 'Caneberries like manure in winter or spring',
  publisher: 'Oregon State University Extension Service',
  url: 'http://extension.oregonstate.edu/gardening/caneberries-manure-winter-or-spring',
  mark: 'read',
} as const;

published(source, () => {
  // Established, early spring: 4 to 6 lb of 10-20-20 for 100 ft of row.
  expectFigures(source.id, [
    ['raspberry, planted 2020, spacing 2 x 8 ft, bearing, shoots 1 in', [4 * 0.1 * (2 / 100) * LB, 6 * 0.1 * (2 / 100) * LB], { where: 'Oregon, US' }],
    ['blackberry, planted 2020, spacing 5 x 10 ft, bearing, shoots 1 in', [4 * 0.1 * (5 / 100) * LB, 6 * 0.1 * (5 / 100) * LB], { where: 'Oregon, US' }],
  ]);

  // Lacking vigour: 1 to 1 1/2 lb of ammonium nitrate for 100 ft more, at bloom; alone or with the spring's feed.
  expectFigures(source.id, [
    [
      'raspberry, planted 2019, spacing 2 x 8 ft, bearing, shoots 1 in',
      [
        [1 * 0.34 * (2 / 100) * LB, (4 * 0.1 + 1 * 0.34) * (2 / 100) * LB],
        [1.5 * 0.34 * (2 / 100) * LB, (6 * 0.1 + 1.5 * 0.34) * (2 / 100) * LB],
      ],
      { where: 'Oregon, US' },
    ],
    [
      'blackberry, planted 2019, spacing 5 x 10 ft, bearing, shoots 1 in',
      [
        [1 * 0.34 * (5 / 100) * LB, (4 * 0.1 + 1 * 0.34) * (5 / 100) * LB],
        [1.5 * 0.34 * (5 / 100) * LB, (6 * 0.1 + 1.5 * 0.34) * (5 / 100) * LB],
      ],
      { where: 'Oregon, US' },
    ],
  ]);
});
