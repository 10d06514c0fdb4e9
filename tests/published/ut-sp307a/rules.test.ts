// University of Tennessee Agricultural Extension Service, "Fertilizing and Liming Fruit Trees, SP307-A" (undated). The figures were typed a second time, from a stored text of the page.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'ut-sp307a',
  title: 'Fertilizing and Liming Fruit Trees, SP307-A',
  publisher: 'University of Tennessee Agricultural Extension Service',
  url: 'https://extension.tennessee.edu/publications/Documents/SP307-A.pdf',
  mark: 'read',
} as const;

published(source, () => {
  // Trees in sod: 0.1 lb of nitrogen a year of age, levelling off at 0.6 to 0.7 lb.
  expectFigures(source.id, [
    ['apple, planted 2023, grass, shoots 1 in', [3 * 0.1 * LB], { where: 'Tennessee, US' }],
    ['peach, planted 2021, grass, shoots 1 in', [5 * 0.1 * LB], { where: 'Tennessee, US' }],
    ['apple, planted 2006, grass, shoots 1 in', [0.6 * LB, 0.7 * LB], { where: 'Tennessee, US' }],
    ['plum, planted 2006, grass, shoots 1 in', [0.6 * LB, 0.7 * LB], { where: 'Tennessee, US' }],
  ]);

  // The planting year is fed too; the rate is that of one year.
  expectFigures(source.id, [
  ]);

  // Age unknown: 0.1 lb an inch of trunk, levelling off alike.
  expectFigures(source.id, [
    ['apple, trunk 5 in across, grass, shoots 1 in', [5 * 0.1 * LB], { where: 'Tennessee, US' }],
    ['tart cherry, trunk 4 in across, grass, shoots 1 in', [4 * 0.1 * LB], { where: 'Tennessee, US' }],
    ['apple, trunk 12 in across, grass, shoots 1 in', [0.6 * LB, 0.7 * LB], { where: 'Tennessee, US' }],
  ]);

  // Pears: half the basic rate.
  expectFigures(source.id, [
    ['pear, planted 2023, grass, shoots 1 in', [3 * 0.05 * LB], { where: 'Tennessee, US' }],
    ['pear, trunk 5 in across, grass, shoots 1 in', [5 * 0.05 * LB], { where: 'Tennessee, US' }],
    ['pear, planted 2006, grass, shoots 1 in', [0.3 * LB, 0.35 * LB], { where: 'Tennessee, US' }],
  ]);
});
