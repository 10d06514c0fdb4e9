// Michigan State University Extension, "Blueberry fertilization" (2018). The figures were typed a second time, from a stored text of the page.
import { LB, OZ, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'michigan-blueberry-new-replants',
  title: 'Blueberry fertilization',
  publisher: 'Michigan State University Extension',
  url: 'https://ask.extension.org/questions/451283',
  mark: 'read',
} as const;

published(source, () => {
  // New plants, 15 lb of N per acre at 1452 plants; the page rounds it to 1/8 oz of N, 1/3 oz of urea or 1 oz of 21-0-0.
  expectFigures(source.id, [
    [
      'highbush blueberry, planted 2026, spacing 3 x 10 ft, shoots 1 in',
      [[(15 * LB) / 1452, OZ / 8, (0.46 * OZ) / 3, 0.21 * OZ]],
      { where: 'Michigan, US' },
    ],
  ]);
});
