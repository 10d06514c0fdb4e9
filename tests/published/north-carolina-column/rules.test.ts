// North Carolina Cooperative Extension, new-year column in the Sylva Herald. The figures were typed a second time, from a stored text of the page; a cup of 10-10-10 is 8 oz (Virginia Soil Test Note 21).
import { LB, OZ, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'north-carolina-column',
  title: 'Cooperative Extension corner, Sylva',
  publisher: 'North Carolina Cooperative Extension',
  url: 'http://www.thesylvaherald.com/columns/cooperative_extension_corner/article_6d0c5462-0117-11e8-bd8d-b3266255854c.html',
  mark: 'derived',
} as const;

const where = 'North Carolina, US';

published(source, () => {
  // Grape, 10-10-10: second year 1/2 lb three times; mature 1 to 2 lb in March and 1 lb in June. The first year's repeats and the spoons are left out.
  expectFigures(source.id, [
    ['grape, planted 2025, 6 ft across', [3 * 0.5 * 0.1 * LB], { where }],
    ['grape, planted 2015, bearing, 10 ft across', [(1 + 1) * 0.1 * LB, (2 + 1) * 0.1 * LB], { where }],
  ]);
  // Blueberry, mature: a cup of 10-10-10, once.
  expectFigures(source.id, [['blueberry, planted 2015, bearing, 4 ft across, shoots 3 in', [8 * 0.1 * OZ], { where }]]);
});
