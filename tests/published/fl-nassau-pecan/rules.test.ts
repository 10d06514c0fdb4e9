// UF/IFAS Extension Nassau County, "When do I fertilize my adult pecan trees and how much?" (2017). The figures were typed a second time, from a stored text of the page.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'fl-nassau-pecan',
  title: 'When do I fertilize my adult pecan trees and how much?',
  publisher: 'UF/IFAS Extension Nassau County',
  url: 'http://blogs.ifas.ufl.edu/nassauco/2017/06/18/q-fertilize-adult-pecan-trees-much/',
  mark: 'read',
} as const;

published(source, () => {
  // Bearing trees: 2 to 4 lb of 10-10-10 an inch of trunk, in February and again in June.
  expectFigures(source.id, [
    ['pecan, planted 2008, bearing, trunk 10 in across, shoots 1 in', [2 * 2 * 10 * 0.1 * LB, 2 * 4 * 10 * 0.1 * LB], { where: 'Florida, US' }],
    ['pecan, planted 1970, bearing, trunk 30 in across, shoots 1 in', [2 * 60 * 0.1 * LB, 2 * 120 * 0.1 * LB], { where: 'Florida, US' }],
  ]);

  // Over 30 in: either the printed 60 to 120 lb or the rate by the inch.
  expectFigures(source.id, [
    ['pecan, planted 1960, bearing, trunk 36 in across, shoots 1 in', [[2 * 60 * 0.1 * LB, 2 * 72 * 0.1 * LB], [2 * 120 * 0.1 * LB, 2 * 144 * 0.1 * LB]], { where: 'Florida, US' }],
  ]);
});
