// Mississippi State University Extension Service, "Fertilizing Fruit Trees, Garden Tips Newsletter" (2002). The figures were typed a second time, from a stored text of the page.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'ms-garden-tips-2002',
  title: 'Fertilizing Fruit Trees, Garden Tips Newsletter',
  publisher: 'Mississippi State University Extension Service',
  url: 'http://msucares.com/lawn/garden/tips/02/020211.html',
  mark: 'read',
} as const;

published(source, () => {
  // Apples and pears, by year: a complete fertilizer (13-13-13) and ammonium nitrate.
  expectFigures(source.id, [
    ['apple, planted 2026, not bearing, shoots 1 in', [(0.13 + 0.25 * 0.34) * LB], { where: 'Mississippi, US' }],
    ['pear, planted 2025, not bearing, shoots 1 in', [(2 * 0.13 + 0.5 * 0.34) * LB], { where: 'Mississippi, US' }],
    ['apple, planted 2024, not bearing, shoots 1 in', [(3 * 0.13 + 0.75 * 0.34) * LB], { where: 'Mississippi, US' }],
    ['pear, planted 2023, not bearing, shoots 1 in', [(4 * 0.13 + 0.34) * LB], { where: 'Mississippi, US' }],
    ['apple, planted 2022, not bearing, shoots 1 in', [(5 * 0.13 + 1.5 * 0.34) * LB], { where: 'Mississippi, US' }],
  ]);

  // Apples and pears of bearing age: 2 to 3 lb of 13-13-13 an inch of trunk.
  expectFigures(source.id, [
    ['apple, planted 2014, bearing, trunk 8 in across, shoots 1 in', [2 * 8 * 0.13 * LB, 3 * 8 * 0.13 * LB], { where: 'Mississippi, US' }],
    ['pear, planted 2010, bearing, trunk 6 in across, shoots 1 in', [2 * 6 * 0.13 * LB, 3 * 6 * 0.13 * LB], { where: 'Mississippi, US' }],
  ]);

  // Peaches, nectarines and plums, by year: 13-13-13.
  expectFigures(source.id, [
    ['peach, planted 2026, not bearing, shoots 1 in', [0.13 * LB], { where: 'Mississippi, US' }],
    ['nectarine, planted 2025, not bearing, shoots 1 in', [2 * 0.13 * LB], { where: 'Mississippi, US' }],
    ['plum, planted 2024, not bearing, shoots 1 in', [4 * 0.13 * LB], { where: 'Mississippi, US' }],
  ]);

  // Bearing: 1 to 1 1/2 lb a year of age (the planting year may count as the first), then 8 to 10 lb.
  expectFigures(source.id, [
    ['peach, planted 2020, bearing, shoots 1 in', [[6 * 0.13 * LB, 7 * 0.13 * LB], [6 * 1.5 * 0.13 * LB, 10 * 0.13 * LB, 7 * 1.5 * 0.13 * LB]], { where: 'Mississippi, US' }],
    ['plum, planted 2000, bearing, shoots 1 in', [8 * 0.13 * LB, 10 * 0.13 * LB], { where: 'Mississippi, US' }],
  ]);
});
