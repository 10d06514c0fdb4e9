// NC State University, Consumer Horticulture quick reference, "Fruit tree fertilizer".
// The figures were typed a second time, from a stored text of the page itself.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'north-carolina-quick',
  title: 'Quick reference: fruit tree fertilizer',
  publisher: 'NC State University',
  url: 'http://www.ces.ncsu.edu/depts/hort/consumer/quickref/fruit-tree/fruittree-fertilizer.html',
  mark: 'read',
} as const;

published(source, () => {
  // Three quarters of a pound to a pound of 10-10-10 for each year of age.
  expectFigures(source.id, [
    ['apple, standard, planted 2021, 15 ft across, shoots 4 in', [0.375 * LB, 0.5 * LB]],
    ['plum, planted 2018, 12 ft across, shoots 4 in', [0.6 * LB, 0.8 * LB]],
  ]);
});
