// Oregon State University Extension Service, "Growing Blackberries in Your Home Garden (EC 1303)" (2008). The figures were typed a second time, from a stored text of the page.
import { OZ, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'oregon-ec1303',
  title: 'Growing Blackberries in Your Home Garden (EC 1303)',
  publisher: 'Oregon State University Extension Service',
  url: 'https://catalog.extension.oregonstate.edu/ec1303',
  mark: 'read',
} as const;

published(source, () => {
  // After the planting year: 1 to 1 1/2 oz of N a plant a year, in three parts.
  expectFigures(source.id, [
    ['blackberry, planted 2025, spacing 5 x 10 ft, shoots 1 in', [1 * OZ, 1.5 * OZ], { where: 'Oregon, US' }],
    ['blackberry, planted 2020, spacing 5 x 10 ft, bearing, shoots 1 in', [1 * OZ, 1.5 * OZ], { where: 'Oregon, US' }],
  ]);
});
