// Cornell Cooperative Extension, Cornell Guide to Growing Fruit at Home, blueberries.
// The figures were typed a second time, from a copy of the guide; no publisher's page was found.
// Nitrogen at 21 %.
import { OZ, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'new-york-home-fruit',
  title: 'Cornell Guide to Growing Fruit at Home',
  publisher: 'Cornell Cooperative Extension',
  url: null,
  mark: 'read',
} as const;

// Ounces of ammonium sulphate a plant, the planting year being year one.
const table = [
  [2025, 4],
  [2024, 5],
  [2023, 6],
  [2022, 7],
  [2010, 8],
] as const;

published(source, () => {
  for (const [planted, ounces] of table) {
    const facts = `blueberry, planted ${String(planted)}, 4 ft across, shoots 3 in`;
    expectFigures(source.id, [[facts, [ounces * OZ * 0.21], { where: 'New York, US' }]]);
  }
});
