// University of Maine Cooperative Extension, Growing Fruit Trees in Maine, "Fertilization".
// The figures were typed a second time, from a stored text of the page, which breaks off after the last.
import { OZ, expectFigures, expectNeeds, published } from '../helpers.ts';

const source = {
  id: 'maine-fertilization',
  title: 'Growing Fruit Trees in Maine: Fertilization',
  publisher: 'University of Maine Cooperative Extension',
  url: 'https://extension.umaine.edu/fruit/growing-fruit-trees-in-maine/fertilization/',
  mark: 'read',
} as const;

published(source, () => {
  // Half an ounce in the first few years; three ounces for a mature semi-dwarf.
  expectFigures(source.id, [
    ['apple, semi-dwarf, planted 2024, 6 ft across, shoots 4 in', [0.5 * OZ]],
    ['apple, planted 2026, 3 ft across', [0.5 * OZ]],
    ['apple, semi-dwarf, bearing, planted 2010, 15 ft across, shoots 4 in', [3 * OZ]],
    ['pear, semi-dwarf, bearing, planted 2010, 15 ft across, shoots 4 in', [3 * OZ]],
  ]);
  expectNeeds([['apple, planted 2026, 3 ft across', { N: 0 }]]);
});
