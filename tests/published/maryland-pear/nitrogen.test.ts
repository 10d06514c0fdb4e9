// University of Maryland Extension, care of pears, 2017.
// The figures were typed a second time, from a stored text of the page itself.
import { LB, OZ, expectFigures, expectNeeds, published } from '../helpers.ts';

const source = {
  id: 'maryland-pear',
  title: 'Pears: Care (fertilizing, fruit thinning, harvesting, spray schedule)',
  publisher: 'University of Maryland Extension',
  url: 'http://extension.umd.edu/growit/fruits/pears-care-fertilizing-fruit-thinning-harvesting-spray-schedule',
  mark: 'read',
} as const;

published(source, () => {
  // Most 10-10-10 by size: 2.5, 5 and 10 lb. Trees old enough for the yearly rise to have reached it.
  expectFigures(source.id, [
    ['pear, dwarf, planted 1996, 10 ft across, shoots 4 in', [0.25 * LB]],
    ['pear, semi-dwarf, planted 1996, 15 ft across, shoots 4 in', [0.5 * LB]],
    ['pear, standard, planted 1980, 25 ft across, shoots 4 in', [1 * LB]],
  ]);

  // A quarter pound more each year, on eight ounces or on both of the first year's doses: not clear.
  expectFigures(source.id, [
    ['pear, standard, planted 2022, 10 ft across, shoots 4 in', [[0.15 * LB, 0.2 * LB]]],
  ]);

  // Planting year: eight ounces of 10-10-10 twice. Shown, not given.
  expectFigures(source.id, [['pear, planted 2026, 3 ft across', [[0.8 * OZ, 1.6 * OZ]]]]);
  expectNeeds([['pear, planted 2026, 3 ft across', { N: 0 }]]);

  // The caps bind on old trees of that size with a wide crown.
  expectNeeds([
    ['pear, dwarf, planted 2006, 20 ft across, shoots 4 in', { N: 0.25 * LB }],
    ['pear, semi-dwarf, planted 2006, 25 ft across, shoots 4 in', { N: 0.5 * LB }],
  ]);
});
