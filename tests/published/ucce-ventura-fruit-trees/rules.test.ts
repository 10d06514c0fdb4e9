// University of California Cooperative Extension, Ventura County, "Fertilizing Fruit Trees". The figures were typed a second time, from a stored text of the page.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'ucce-ventura-fruit-trees',
  title: 'Fertilizing Fruit Trees',
  publisher: 'University of California Cooperative Extension, Ventura County',
  url: 'http://ceventura.ucanr.edu/Gardening/Coastal/Veg-Fruit/Fertilizing',
  mark: 'read',
} as const;

published(source, () => {
  // A mature fruit tree: one to two pounds of actual N a year.
  expectFigures(source.id, [
    ['apple, planted 2006, bearing, shoots 1 in', [1 * LB, 2 * LB], { where: 'California, US' }],
    ['peach, planted 2010, bearing, shoots 1 in', [1 * LB, 2 * LB], { where: 'California, US' }],
  ]);
});
