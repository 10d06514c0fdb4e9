// UF/IFAS Extension Nassau County, "When do I fertilize my persimmons?" (2017). The figures were typed a second time, from a stored text of the page.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'fl-nassau-persimmon',
  title: 'When do I fertilize my persimmons?',
  publisher: 'UF/IFAS Extension Nassau County',
  url: 'https://blogs.ifas.ufl.edu/nassauco/2017/06/18/q-fertilize-persimmons/',
  mark: 'read',
} as const;

published(source, () => {
  // The planting year: half a pound to 1 lb of 10-10-10.
  expectFigures(source.id, [
    ['persimmon, planted 2026, shoots 1 in', [0.5 * 0.1 * LB, 0.1 * LB], { where: 'Florida, US' }],
  ]);

  // Half a pound to 1 lb a year of age; the planting year may count as the first.
  expectFigures(source.id, [
    ['persimmon, planted 2022, shoots 1 in', [[4 * 0.05 * LB, 5 * 0.05 * LB], [4 * 0.1 * LB, 5 * 0.1 * LB]], { where: 'Florida, US' }],
  ]);

  // Old trees: 8 to 10 lb at most.
  expectFigures(source.id, [
    ['persimmon, planted 1990, bearing, shoots 1 in', [8 * 0.1 * LB, 10 * 0.1 * LB], { where: 'Florida, US' }],
  ]);
});
