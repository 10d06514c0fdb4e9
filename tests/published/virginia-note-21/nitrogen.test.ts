// Virginia Cooperative Extension, Soil Test Note 21, "Home Fruit Trees" (452-721).
// The figures were typed a second time, from a stored text of the page itself.
import { LB, expectFigures, expectNeeds, published } from '../helpers.ts';

const source = {
  id: 'virginia-note-21',
  title: 'Soil Test Note 21: Home Fruit Trees',
  publisher: 'Virginia Cooperative Extension',
  url: 'https://turf.spes.vt.edu/content/pubs_ext_vt_edu/en/452/452-721/452-721.html',
  mark: 'read',
} as const;

// A soil that asks for a complete feed.
const soil = 'pH 6.4\nPhosphorus (P) 10 ppm  Mehlich 1  low\nPotassium (K) 30 ppm  Mehlich 1  low\n';

published(source, () => {
  // Half a pound of 10-10-10 a year of age, in March and again in April; 10 lb a year at the most.
  expectFigures(source.id, [
    ['apple, standard, planted 2025, 6 ft across, shoots 4 in', [0.1 * LB], { soil }],
    ['apple, standard, planted 2022, 10 ft across, shoots 4 in', [0.4 * LB], { soil }],
    ['plum, planted 2018, 12 ft across, shoots 4 in', [0.8 * LB], { soil }],
    ['apple, standard, planted 2011, 20 ft across, shoots 4 in', [1 * LB], { soil }],
  ]);

  // Nothing at planting.
  expectNeeds([['apple, planted 2026, 3 ft across', { N: 0, P2O5: 0, K2O: 0 }, { soil }]]);
});
