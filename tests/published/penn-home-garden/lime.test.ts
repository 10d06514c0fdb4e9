// Penn State, notes to the home-garden report: a need of 5 lb/100 sq ft in a material of calcium
// carbonate equivalent 70 is 7 lb (7.14). Clemson, by-products as lime: at 50, one ton is two.
// Typed from research notes of both pages.
import { expect, test } from 'vitest';
import { LB, published } from '../helpers.ts';
import { G_PER_M2, near, ph } from '../ph.ts';

const source = {
  id: 'penn-home-garden',
  title: 'Home garden report notes',
  publisher: 'Penn State Agricultural Analytical Services Laboratory',
  url: 'http://agsci.psu.edu/aasl/online-report/home-garden',
  mark: 'read',
} as const;

// At 8 in a quarter of the need is spread on the surface.
const flags = { now: 5.3, goal: 6.5, lime: '5 lb/100 sq ft', depth: '8 in', area: '100 sq ft' } as const;
const product = [
  [100, 5],
  [70, 7.14],
  [50, 10],
] as const;

published(source, () => {
  for (const [cce, pounds] of product) {
    test(`5 lb of need in a material of ${String(cce)}: ${String(pounds)} lb`, async () => {
      const { row } = await ph({ ...flags, material: `Garden lime, CCE ${String(cce)}` });
      expect(row.verdict).toBe('lime');
      near(row.gPerM2, (pounds / 4) * G_PER_M2['lb/100 sq ft']);
      near(row.dugIn?.gPerM2, 5 * G_PER_M2['lb/100 sq ft']);
      expect(Math.abs((row.g ?? NaN) / ((pounds / 4) * LB) - 1), String(row.g)).toBeLessThan(0.02);
    });
  }
});
