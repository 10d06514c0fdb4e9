// Chamber of Agriculture of North Rhine-Westphalia, garden tip 40: carbonate of lime on light soil,
// pH under 5.3 150 to 200 g/m², 5.3 to 5.7 120 to 180. Typed from research notes of the page.
import { expect, test } from 'vitest';
import { published } from '../helpers.ts';
import { near, ph } from '../ph.ts';

const source = {
  id: 'nrw-garden-40',
  title: 'Gartentipp 40',
  publisher: 'Landwirtschaftskammer Nordrhein-Westfalen',
  url: 'http://www.landwirtschaftskammer.de/verbraucher/garten/gartentipp040.htm',
  mark: 'read',
} as const;

// A need far over every limit.
const large = { goal: 6.5, lime: '20 ton/acre', depth: '8 in', material: 'Garden lime, CCE 100' } as const;

published(source, () => {
  const caps = [
    ['sand', 4.5, 200],
    ['sandy loam', 5.0, 200],
    ['loamy sand', 5.29, 200],
    ['sand', 5.3, 180],
    ['sandy loam', 5.5, 180],
    ['loamy sand', 5.7, 180],
  ] as const;
  for (const [texture, now, most] of caps) {
    test(`${texture}, pH ${String(now)}: at most ${String(most)} g/m²`, async () => {
      const { row } = await ph({ ...large, texture, now });
      expect(row.verdict).toBe('lime');
      near(row.gPerM2, most);
      expect(row.gPerM2).toBeLessThanOrEqual(most + 1e-6);
    });
  }

  // Medium soil under 5.7 takes 300 to 400 and heavy under 6.3 up to 400: over an orchard's ton to the acre.
  for (const texture of ['loam', 'clay loam', 'clay']) {
    test(`${texture}, pH 5.0: this limit does not bind`, async () => {
      const { row } = await ph({ ...large, texture, now: 5 });
      expect(row.gPerM2).toBeGreaterThan(200);
    });
  }
});
