// Utah State University Extension, "Orchard Nutrition: Macronutrients (Intermountain Fruit)". The figures were typed a second time, from a stored text of the page.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'usu-intermountain-macronutrients',
  title: 'Orchard Nutrition: Macronutrients (Intermountain Fruit)',
  publisher: 'Utah State University Extension',
  url: 'https://intermountainfruit.org/nutrition/macronutrition',
  mark: 'read',
} as const;

published(source, () => {
  // 0.01 to 0.04 lb of N per tree and year of age, no more than 0.3 lb a year.
  expectFigures(source.id, [
    ['apple, planted 2020, shoots 1 in', [6 * 0.01 * LB, 6 * 0.04 * LB], { where: 'Utah, US' }],
    ['tart cherry, planted 2022, shoots 1 in', [4 * 0.01 * LB, 4 * 0.04 * LB], { where: 'Utah, US' }],
    ['peach, planted 2014, shoots 1 in', [12 * 0.01 * LB, 0.3 * LB], { where: 'Utah, US' }],
    ['apple, planted 1986, shoots 1 in', [0.3 * LB], { where: 'Utah, US' }],
  ]);
});
