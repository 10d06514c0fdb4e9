// Master Gardener Association of San Diego County, "Fertilize fruit trees". The figures were typed a second time, from a stored text of the page.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'sandiego-mg-fruit-trees',
  title: 'Fertilize fruit trees',
  publisher: 'Master Gardener Association of San Diego County',
  url: 'http://www.mastergardenerssandiego.org/resources/todo/item.php?ID=62',
  mark: 'read',
} as const;

published(source, () => {
  // Mature fruit trees, five years and older: a pound of actual N a year.
  expectFigures(source.id, [
    ['apple, planted 2021, shoots 1 in', [1 * LB], { where: 'California, US' }],
    ['peach, planted 2010, bearing, shoots 1 in', [1 * LB], { where: 'California, US' }],
    ['plum, planted 2010, bearing, shoots 1 in', [1 * LB], { where: 'California, US' }],
  ]);
});
