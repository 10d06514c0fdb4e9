// Washington Post, "Trees: Fertilization and Winterizing Plants" (1978). The figures were typed a second time, from a stored text of the page.
import { LB, crown, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'dc-wapo-1978',
  title: 'Trees: Fertilization and Winterizing Plants',
  publisher: 'Washington Post',
  url: 'https://www.washingtonpost.com/archive/lifestyle/1978/11/26/trees-fertilization-and-winterizing-plants/fc54eb2d-c16b-44d0-86d1-36a0038581d3/',
  mark: 'read',
} as const;

/** Grams of nitrogen to a square metre. */
const RATE = (4 * 0.1 * LB) / (100 * 0.3048 ** 2);

published(source, () => {
  // 4 lb of 10-6-4 to 100 sq ft under the branches.
  expectFigures(source.id, [
    ['apple, planted 2014, 12 ft across, shoots 1 in', [crown(12) * RATE], { where: 'Maryland, US' }],
    ['peach, planted 2018, 15 ft across, shoots 1 in', [crown(15) * RATE], { where: 'Maryland, US' }],
  ]);
});
