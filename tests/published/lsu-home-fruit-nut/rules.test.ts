// LSU AgCenter, "Pruning and Fertilizing Fruit and Nut Trees" (undated). The figures were typed a second time, from a stored text of the page.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'lsu-home-fruit-nut',
  title: 'Pruning and Fertilizing Fruit and Nut Trees',
  publisher: 'LSU AgCenter',
  url: 'https://www.lsuagcenter.com/topics/lawn_garden/ornamentals/trees_shrubs/pruning-and-fertilizing-fruit-and-nut-trees',
  mark: 'read',
} as const;

published(source, () => {
  // 1 lb of 8-8-8 or 13-13-13 a year of age.
  expectFigures(source.id, [
    ['peach, planted 2021, shoots 1 in', [[5 * 0.08 * LB, 5 * 0.13 * LB]], { where: 'Louisiana, US' }],
    ['apple, planted 2016, shoots 1 in', [[10 * 0.08 * LB, 10 * 0.13 * LB]], { where: 'Louisiana, US' }],
  ]);

  // At most 8 lb for peaches and plums, 15 lb for pears and apples.
  expectFigures(source.id, [
    ['plum, planted 2000, shoots 1 in', [[8 * 0.08 * LB, 8 * 0.13 * LB]], { where: 'Louisiana, US' }],
    ['peach, planted 2000, shoots 1 in', [[8 * 0.08 * LB, 8 * 0.13 * LB]], { where: 'Louisiana, US' }],
    ['pear, planted 2000, shoots 1 in', [[15 * 0.08 * LB, 15 * 0.13 * LB]], { where: 'Louisiana, US' }],
    ['apple, planted 2000, shoots 1 in', [[15 * 0.08 * LB, 15 * 0.13 * LB]], { where: 'Louisiana, US' }],
  ]);

  // Grapes: 1 to 2 lb a vine.
  expectFigures(source.id, [
    ['grape, planted 2018, bearing, shoots 1 in', [[0.08 * LB, 0.13 * LB], [2 * 0.08 * LB, 2 * 0.13 * LB]], { where: 'Louisiana, US' }],
  ]);

  // Blackberries, a foot of row: half a pound of 8-8-8 or 13-13-13 and half a pound of ammonium nitrate.
  expectFigures(source.id, [
  ]);
});
