// Michigan State University Extension, "Spring fertilization of garden fruits" (newer text).
// The figures were typed a second time, from a stored text of the page itself.
import { LB, expectFigures, expectNeeds, published } from '../helpers.ts';

const source = {
  id: 'michigan-garden-fruit',
  title: 'Spring fertilization of garden fruits',
  publisher: 'Michigan State University Extension',
  url: 'http://msue.anr.msu.edu/news/spring_fertilization_of_garden_fruits',
  mark: 'read',
} as const;

published(source, () => {
  // Apple and pear: 0.05 lb for each year since planting, 0.75 lb at the most.
  expectFigures(source.id, [
    ['pear, standard, planted 2023, 20 ft across, shoots 4 in', [0.15 * LB]],
    ['pear, standard, planted 2021, 20 ft across, shoots 4 in', [0.25 * LB]],
    ['apple, standard, planted 2018, 20 ft across, shoots 4 in', [0.4 * LB]],
    ['apple, standard, planted 2011, 20 ft across, shoots 4 in', [0.75 * LB]],
    ['apple, standard, planted 2006, 20 ft across, shoots 4 in', [0.75 * LB]],
  ]);

  // Stone fruit: half a pound of 10-10-10 a year of age, or a pound an inch of trunk.
  expectFigures(source.id, [
    ['peach, planted 2020, 12 ft across, shoots 4 in', [0.3 * LB]],
    ['peach, planted 2020, trunk 4 in across, 12 ft across, shoots 4 in', [0.4 * LB]],
  ]);

  // The default rule by age: a wide standard crown leaves it the smallest.
  expectNeeds([
    ['pear, standard, planted 2023, 40 ft across, shoots 4 in', { N: 0.15 * LB }],
    ['pear, standard, planted 2021, 40 ft across, shoots 4 in', { N: 0.25 * LB }],
    ['apple, standard, planted 2018, 40 ft across, shoots 4 in', { N: 0.4 * LB }],
    ['apple, standard, planted 2006, 40 ft across, shoots 4 in', { N: 0.75 * LB }],
  ]);
});
