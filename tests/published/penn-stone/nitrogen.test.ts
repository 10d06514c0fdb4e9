// Penn State Extension, Fruit Production for the Home Gardener, stone fruit, "Nutritional Requirements".
// The figures were typed a second time, from a stored text of the page itself.
import { LB, OZ, expectFigures, expectNeeds, published } from '../helpers.ts';

const source = {
  id: 'penn-stone',
  title: 'Nutritional Requirements (stone fruit)',
  publisher: 'Penn State Extension',
  url: 'http://extension.psu.edu/plants/gardening/fphg/stone/nutritional-requirements',
  mark: 'read',
} as const;

published(source, () => {
  // 10-10-10: half a pound in the first year after planting, half a pound more each year, to five.
  expectFigures(source.id, [
    ['plum, planted 2025, 6 ft across, shoots 4 in', [0.05 * LB]],
    ['peach, planted 2023, 12 ft across, shoots 4 in', [0.15 * LB]],
    ['sweet cherry, planted 2019, 15 ft across, shoots 4 in', [0.35 * LB]],
    ['peach, planted 2016, 15 ft across, shoots 4 in', [0.5 * LB]],
    ['peach, planted 2014, 15 ft across, shoots 4 in', [0.5 * LB]],
  ]);

  // Eight ounces of 10-10-10 soon after planting: shown, not given.
  expectFigures(source.id, [['peach, planted 2026, 3 ft across', [0.8 * OZ]]]);
  expectNeeds([['peach, planted 2026, 3 ft across', { N: 0, P2O5: 0, K2O: 0 }]]);

  // The default rule by age for stone fruit, under a crown too wide to bind.
  expectNeeds([
    ['peach, standard, planted 2023, 40 ft across, shoots 4 in', { N: 0.15 * LB }],
    ['plum, standard, planted 2019, 40 ft across, shoots 4 in', { N: 0.35 * LB }],
    ['peach, standard, planted 2014, 40 ft across, shoots 4 in', { N: 0.5 * LB }],
  ]);
});
