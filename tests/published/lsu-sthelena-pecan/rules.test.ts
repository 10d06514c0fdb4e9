// LSU AgCenter, St. Helena Parish, "Pecan Production" (undated). The figures were typed a second time, from a stored text of the page.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'lsu-sthelena-pecan',
  title: 'Pecan Production',
  publisher: 'LSU AgCenter, St. Helena Parish',
  url: 'https://lsuagcenter.com/portals/our_offices/parishes/st%20helena/news/pecan-production',
  mark: 'read',
} as const;

published(source, () => {
  // 3 lb of 8-8-8 an inch of trunk; the page works out 10 in to 30 lb.
  expectFigures(source.id, [
    ['pecan, planted 2014, trunk 10 in across, shoots 1 in', [30 * 0.08 * LB], { where: 'Louisiana, US' }],
    ['pecan, planted 2020, trunk 4 in across, shoots 1 in', [3 * 4 * 0.08 * LB], { where: 'Louisiana, US' }],
  ]);

  // From 25 years on: half a pound of ammonium nitrate an inch on top.
  expectFigures(source.id, [
    ['pecan, planted 1990, bearing, trunk 20 in across, shoots 1 in', [20 * (3 * 0.08 + 0.5 * 0.34) * LB], { where: 'Louisiana, US' }],
  ]);
});
