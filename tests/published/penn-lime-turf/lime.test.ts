// Penn State, lime by exchangeable acidity (Mehlich buffer), home-garden and turf table:
// lb of calcium carbonate equivalent to 1000 sq ft, about 7 in deep. Typed from research notes of the page.
import { expect, test } from 'vitest';
import { published } from '../helpers.ts';
import { G_PER_M2, INCH, expectPrinted, expectTable, near, ph } from '../ph.ts';

const source = {
  id: 'penn-lime-turf',
  title: 'Turfgrass handbook: lime recommendations',
  publisher: 'Penn State Agricultural Analytical Services Laboratory',
  url: 'https://agsci.psu.edu/aasl/soil-testing/fertility/handbooks/turf/tables/lime-recommendations-turf',
  mark: 'read',
} as const;

const flags = (acidity: number) => ({ now: 5.5, acidity });

// Exchangeable acidity, meq/100 g, then lb/1000 sq ft to pH 7.0, 6.5 and 6.0.
const table = [
  [2.0, 50, 50, 50],
  [2.6, 70, 50, 50],
  [3.3, 70, 50, 50],
  [3.9, 90, 70, 50],
  [5.2, 110, 90, 50],
  [5.8, 140, 90, 50],
  [6.5, 160, 110, 70],
  [7.1, 160, 110, 90],
  [7.8, 180, 140, 90],
  [9.0, 210, 160, 110],
  [9.7, 230, 180, 140],
  [10.3, 230, 180, 140],
  [11.0, 250, 210, 160],
  [11.6, 280, 210, 160],
  [12.3, 280, 230, 180],
  [13.5, 320, 250, 210],
  [14.2, 320, 280, 210],
  [14.8, 340, 280, 230],
  [15.5, 370, 300, 230],
  [16.1, 370, 320, 250],
  [16.8, 390, 320, 250],
  [18.0, 410, 340, 280],
  [18.7, 440, 370, 300],
  [19.3, 440, 390, 300],
  [20.0, 460, 390, 320],
  [20.6, 480, 410, 320],
  [21.9, 510, 460, 340],
  [22.5, 530, 460, 370],
  [23.2, 530, 460, 370],
  [23.8, 550, 480, 390],
  [24.5, 570, 480, 390],
  [25.1, 570, 510, 410],
  [25.7, 600, 530, 410],
] as const;

published(source, () => {
  expectTable(source.id, 'lb/1000 sq ft', [7.0, 6.5, 6.0], table, flags);

  // Halfway between two printed cells.
  expectPrinted(source.id, 'lb/1000 sq ft', [
    [{ ...flags(4.55), goal: 7.0 }, 100],
    [{ ...flags(4.55), goal: 6.5 }, 80],
    [{ ...flags(8.4), goal: 6.0 }, 100],
    [{ ...flags(6.5), goal: 6.25 }, 90],
    [{ ...flags(6.5), goal: 6.75 }, 135],
  ]);

  // The home-garden pages' example: acidity 6.5.
  for (const [goal, pounds] of [[7.0, 160], [6.5, 110], [6.0, 70]] as const) {
    test(`acidity 6.5, goal ${goal.toFixed(1)}: ${String(pounds)} lb/1000 sq ft dug 7 in deep, two sevenths of it on the surface`, async () => {
      const { row } = await ph({ ...flags(6.5), goal, material: 'Garden lime, CCE 100' });
      const dug = pounds * G_PER_M2['lb/1000 sq ft'];
      expect(row.verdict).toBe('lime');
      near(row.dugIn?.gPerM2, dug);
      expect(row.dugIn?.depthM).toBeCloseTo(7 * INCH, 4);
      // At most one ton to the acre, kept as 224 g/m².
      near(row.gPerM2, Math.min((dug * 2) / 7, 224));
    });
  }
});
