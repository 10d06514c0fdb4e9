// Colorado State University Extension, PlantTalk 1216, "Fertilizing fruit trees".
// The figures were typed a second time, from a stored text of the page itself.
import { LB, expectFigures, expectNeeds, published } from '../helpers.ts';

const source = {
  id: 'colorado-1216',
  title: 'PlantTalk 1216: Fertilizing fruit trees',
  publisher: 'Colorado State University Extension',
  url: 'https://planttalk.colostate.edu/topics/fruits/1216-fertilizing-fruit-trees/',
  mark: 'read',
} as const;

published(source, () => {
  // A tenth of a pound an inch of trunk for apple and pear, an eighth for stone fruit.
  expectFigures(source.id, [
    ['apple, standard, planted 2014, trunk 5 in across, 20 ft across, shoots 4 in', [0.5 * LB]],
    ['pear, standard, planted 2014, trunk 5 in across, 20 ft across, shoots 4 in', [0.5 * LB]],
    ['apple, standard, planted 2016, trunk 4 in across, 15 ft across, shoots 4 in', [0.4 * LB]],
    ['peach, planted 2014, trunk 5 in across, 15 ft across, shoots 4 in', [0.625 * LB]],
    ['cherry, planted 2014, trunk 5 in across, 15 ft across, shoots 4 in', [0.625 * LB]],
    ['peach, planted 2016, trunk 4 in across, 15 ft across, shoots 4 in', [0.5 * LB]],
  ]);

  expectNeeds([
    [
      'apple, standard, planted 2014, trunk 3 in across, 40 ft across, shoots 4 in',
      { N: 0.3 * LB },
      { where: 'Colorado, US' },
    ],
  ]);
});
