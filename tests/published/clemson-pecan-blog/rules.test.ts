// Clemson Cooperative Extension, "February is Pecan Fertilization Time" (undated). The figures were typed a second time, from a stored text of the page.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'clemson-pecan-blog',
  title: 'February is Pecan Fertilization Time',
  publisher: 'Clemson Cooperative Extension',
  url: 'https://blogs.clemson.edu/upstate/february-is-pecan-fertilization-time/',
  mark: 'read',
} as const;

published(source, () => {
  // Established, bearing trees: 4 lb of 10-10-10 an inch of trunk; the page works out 8 in to 32 lb.
  expectFigures(source.id, [
    ['pecan, planted 2010, bearing, trunk 8 in across, shoots 1 in', [32 * 0.1 * LB], { where: 'South Carolina, US' }],
    ['pecan, planted 2000, bearing, trunk 15 in across, shoots 1 in', [4 * 15 * 0.1 * LB], { where: 'South Carolina, US' }],
  ]);
});
