// Washington State University, EM119E, table 2, "Nutrient extraction in pounds of element
// per ton of fruit harvested", December 2022, and for peach the California Backyard Orchard.
// The Washington figures were typed a second time, from a stored text of the page itself;
// the Californian one from research notes.
import { expect, test } from 'vitest';
import { LB, onePlant, only, published } from '../helpers.ts';

const source = {
  id: 'washington-removal',
  title: 'Table 2. Nutrient extraction in pounds of element per ton of fruit harvested',
  publisher: 'Washington State University Extension',
  url: 'https://treefruit.wsu.edu/orchard-management/soils-nutrition/table-2-nutrient-extraction-in-pounds-of-element-per-ton-of-fruit-harvested',
  mark: 'read',
} as const;

// Pounds of potassium in a short ton of fruit. Peach: 8.1 in Washington, 86 lb in 15 tons in California.
const table = [
  ['apple, semi-dwarf', 2.0, 3.9],
  ['pear, semi-dwarf', 3.0, 3.0],
  ['sweet cherry', 2.9, 6.3],
  ['peach', 86 / 15, 8.1],
] as const;

const soil =
  'pH 6.4\nPhosphorus (P) 80 ppm  Mehlich 3  high\nPotassium (K) 110 ppm  Mehlich 3  optimum\n';

published(source, () => {
  for (const [crop, low, high] of table) {
    for (const pounds of [40, 80]) {
      test(`${String(pounds)} lb picked from ${crop}: potash at target replaces what was taken`, async () => {
        const facts = `${crop}, bearing, planted 2014, 12 ft across, shoots 13 in, fruit ${String(pounds)} lb`;
        const { K2O } = only(await onePlant(facts, { soil })).need;
        const taken = (perTon: number): number => ((perTon * 1.2046 * pounds) / 2000) * LB;
        expect(K2O).toBeGreaterThan(taken(low) - 0.1);
        expect(K2O).toBeLessThan(taken(high) + 0.1);
      });
    }
  }

  test('no weight known: none at target', async () => {
    const facts = 'apple, semi-dwarf, bearing, planted 2014, 12 ft across, shoots 10 in';
    expect(only(await onePlant(facts, { soil })).need.K2O).toBe(0);
  });
});
