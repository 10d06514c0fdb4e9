// Penn State Extension, Fruit Production for the Home Gardener, blueberries, "Nutritional Requirements".
// The figures were typed a second time, from a stored text of the page itself; nitrogen at 21 %.
import { OZ, expectFigures, expectNeeds, published } from '../helpers.ts';

const source = {
  id: 'penn-blueberry',
  title: 'Nutritional Requirements (blueberries)',
  publisher: 'Penn State Extension',
  url: 'http://extension.psu.edu/plants/gardening/fphg/blueberries/nutritional-requirements',
  mark: 'read',
} as const;

// Ounces of ammonium sulphate a plant, the planting year being year one.
const table = [
  [2025, 4],
  [2024, 5],
  [2023, 6],
  [2022, 7],
  [2021, 8],
  [2010, 8],
] as const;

published(source, () => {
  for (const [planted, ounces] of table) {
    const facts = `blueberry, planted ${String(planted)}, 4 ft across, shoots 3 in`;
    expectFigures(source.id, [[facts, [ounces * OZ * 0.21]]]);
    expectNeeds([[facts, { N: ounces * OZ * 0.21 }]]);
  }
  expectNeeds([['blueberry, planted 2026, 2 ft across', { N: 0 }]]);
});
