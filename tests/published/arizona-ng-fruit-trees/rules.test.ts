// University of Arizona Cooperative Extension, quoted by the National Gardening Association, "Fertilizing and watering deciduous fruit trees, as quoted" (2007). The figures were typed a second time, from a stored text of the page.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'arizona-ng-fruit-trees',
  title: 'Fertilizing and watering deciduous fruit trees, as quoted',
  publisher: 'University of Arizona Cooperative Extension, quoted by the National Gardening Association',
  url: 'https://garden.org/frogs/view/46096/',
  mark: 'read',
} as const;

published(source, () => {
  // Apple and pear: 0.1 lb of N per inch of trunk; the first row is the worked example of the page.
  expectFigures(source.id, [
    ['apple, planted 2021, trunk 2 in across, shoots 1 in', [2 * 0.1 * LB], { where: 'Arizona, US' }],
    ['pear, planted 2018, trunk 4 in across, shoots 1 in', [4 * 0.1 * LB], { where: 'Arizona, US' }],
  ]);

  // Apricot, cherry, peach, nectarine and plum: 0.05 lb of N per inch of trunk.
  expectFigures(source.id, [
    ['apricot, planted 2018, trunk 4 in across, shoots 1 in', [4 * 0.05 * LB], { where: 'Arizona, US' }],
    ['sweet cherry, planted 2018, trunk 5 in across, shoots 1 in', [5 * 0.05 * LB], { where: 'Arizona, US' }],
    ['peach, planted 2018, trunk 4 in across, shoots 1 in', [4 * 0.05 * LB], { where: 'Arizona, US' }],
    ['nectarine, planted 2018, trunk 3 in across, shoots 1 in', [3 * 0.05 * LB], { where: 'Arizona, US' }],
    ['plum, planted 2018, trunk 6 in across, shoots 1 in', [6 * 0.05 * LB], { where: 'Arizona, US' }],
  ]);
});
