// New York State, "How Best To Fertilize Your Lawn": never more than 1 lb of nitrogen
// to 1000 sq ft at once. Typed a second time, from a copy of the leaflet; no publisher's page was found.
// Ring areas are plain geometry, in square feet, from research notes.
import { expect, test } from 'vitest';
import { LB, onePlant, only, published } from '../helpers.ts';

const source = {
  id: 'new-york-lawn',
  title: 'How Best To Fertilize Your Lawn',
  publisher: 'New York State',
  url: null,
  mark: 'read',
} as const;

const squareFoot = 0.3048 ** 2;
const limit = LB / (1000 * squareFoot);

const plants = [
  'apple, semi-dwarf, planted 2019, trunk 11 in round, 12 ft across, mulch, shoots 6 in',
  'apple, semi-dwarf, planted 2014, 12 ft across, grass, shoots 4 in',
  'plum, planted 2024, 6 ft across, mulch, shoots 4 in',
  'peach, planted 2014, 15 ft across, bare, shoots 4 in',
  'blueberry, planted 2025, 3 ft across, shoots 3 in',
  'blueberry, planted 2022, shoots 3 in',
  'blueberry, planted 2015, 4 ft across, shoots 3 in',
] as const;

published(source, () => {
  for (const facts of plants) {
    test(`${facts}: no dose above the limit on its ring`, async () => {
      const { feeds } = only(await onePlant(facts));
      expect(feeds.length).toBeGreaterThan(0);
      for (const { g, gExact, ring } of feeds) {
        const area = ring?.m2 ?? 0;
        // The limit is kept as 4.9 g/m², a hair over the pound.
        expect((gExact * 0.21) / area).toBeLessThanOrEqual(Math.max(limit, 4.9) + 1e-6);
        expect((g * 0.21) / area).toBeLessThanOrEqual(Math.max(limit, 4.9) + 1e-6);
      }
    });
  }

  // Crown radius, inner edge, how far the ring must reach for two doses to fit, and its area.
  const rings = [
    // Year 2, 23.8 g: twice the radius.
    ['blueberry, planted 2025, 3 ft across, shoots 3 in', 0.5, 3, 27.5],
    // Year 6, 47.6 g: one and a half times the radius.
    ['blueberry, planted 2020, trunk 2 in across, 6 ft across, shoots 3 in', 1, 4.5, 60.5],
  ] as const;
  for (const [facts, inner, outer, area] of rings) {
    test(`${facts}: two doses on ${String(area)} sq ft`, async () => {
      const { feeds } = only(await onePlant(facts));
      expect(feeds).toHaveLength(2);
      for (const { ring } of feeds) {
        expect(ring?.fromM).toBeCloseTo(inner * 0.3048, 3);
        expect(ring?.toM).toBeCloseTo(outer * 0.3048, 3);
        expect((ring?.m2 ?? 0) / squareFoot).toBeCloseTo(area, 1);
      }
    });
  }
});
