// Oregon State University Extension Service, "Growing Raspberries in Your Home Garden (EC 1306)". The figures were typed a second time, from a stored text of the page.
import { OZ, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'oregon-ec1306',
  title: 'Growing Raspberries in Your Home Garden (EC 1306)',
  publisher: 'Oregon State University Extension Service',
  url: 'https://catalog.extension.oregonstate.edu/ec1306',
  mark: 'read',
} as const;

published(source, () => {
  // Established, summer-bearing: 2 to 3 oz of N for 10 ft of row a year, in three parts.
  expectFigures(source.id, [
    ['raspberry, planted 2020, spacing 2 x 10 ft, bearing, shoots 1 in', [2 * (2 / 10) * OZ, 3 * (2 / 10) * OZ], { where: 'Oregon, US' }],
    ['raspberry, planted 2018, spacing 2.5 x 8 ft, bearing, shoots 1 in', [2 * (2.5 / 10) * OZ, 3 * (2.5 / 10) * OZ], { where: 'Oregon, US' }],
  ]);
});
