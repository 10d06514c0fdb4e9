// Utah State University Extension, garden fruit questions, "Nitrogen".
// The figures were typed a second time, from a stored text of the page itself.
import { OZ, expectFigures, expectNeeds, published } from '../helpers.ts';

const source = {
  id: 'utah-nitrogen',
  title: 'Nitrogen (garden fruit, frequently asked questions)',
  publisher: 'Utah State University Extension',
  url: 'http://extension.usu.edu/productionhort/htm/fruit/garden-fruit/frequently-asked-questions/nitrogen/',
  mark: 'read',
} as const;

published(source, () => {
  // An ounce of nitrogen for each year of age, never above eight.
  expectFigures(source.id, [
    ['apple, semi-dwarf, planted 2025, 4 ft across, shoots 4 in', [1 * OZ]],
    ['peach, planted 2021, 12 ft across, shoots 4 in', [5 * OZ]],
    ['apple, standard, planted 2018, 20 ft across, shoots 4 in', [8 * OZ]],
    ['apple, standard, planted 2014, 20 ft across, shoots 4 in', [8 * OZ]],
  ]);

  expectNeeds([
    ['apple, standard, planted 2021, 40 ft across, shoots 4 in', { N: 5 * OZ }, { where: 'Utah, US' }],
    ['apple, standard, planted 2010, 40 ft across, shoots 4 in', { N: 8 * OZ }, { where: 'Utah, US' }],
  ]);
});
