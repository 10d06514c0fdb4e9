// eXtension blueberries: 1 lb of sulphur to 100 sq ft for a unit of pH on sand; 2 lb on silt, clay or
// over 2 % organic matter; on established plants at most 0.7 lb/100 sq ft a year, on the surface.
// Typed from research notes of the page.
import { expect, test } from 'vitest';
import { LB, published } from '../helpers.ts';
import { G_PER_M2, expectPrinted, ph, said } from '../ph.ts';

const source = {
  id: 'extension-blueberry-ph',
  title: 'Soil pH for blueberry plantings',
  publisher: 'eXtension blueberries',
  url: 'https://blueberries.extension.org/soil-ph-for-blueberry-plantings/',
  mark: 'read',
} as const;

const flags = { crop: 'blueberry' } as const;
const cap = 0.7 * G_PER_M2['lb/100 sq ft'];

published(source, () => {
  expectPrinted(source.id, 'lb/100 sq ft', [
    // The page's own example.
    [{ ...flags, now: 6.0, goal: 5.0, texture: 'sand' }, 1],
    [{ ...flags, now: 6.0, goal: 5.0, texture: 'loamy sand' }, 1],
    [{ ...flags, now: 6.0, goal: 5.0, texture: 'silt loam' }, 2],
    [{ ...flags, now: 6.0, goal: 5.0, texture: 'clay' }, 2],
    [{ ...flags, now: 6.0, goal: 5.0, texture: 'clay loam' }, 2],
    [{ ...flags, now: 6.0, goal: 5.0, texture: 'sand', 'organic-matter': 1 }, 1],
    [{ ...flags, now: 6.0, goal: 5.0, texture: 'sand', 'organic-matter': 3 }, 2],
    [{ ...flags, now: 5.8, goal: 5.0, texture: 'sand' }, 0.8],
    [{ ...flags, now: 6.5, goal: 4.8, texture: 'clay' }, 3.4],
  ]);

  // Needs of several years: the year's limit, in pure sulphur and in a product of 90 %.
  const capped = [
    [{ ...flags, now: 6.5, goal: 4.5, texture: 'clay', material: 'Sulphur, 100 %' }, cap],
    [{ ...flags, now: 6.5, goal: 4.5, texture: 'clay', material: 'Sulphur, 90 %' }, cap / 0.9],
    [{ ...flags, now: 6.5, goal: 4.5, texture: 'loam', material: 'Sulphur, 90 %' }, cap / 0.9],
  ] as const;
  for (const [given, most] of capped) {
    test(`${said(given)}: ${most.toFixed(0)} g/m² this year`, async () => {
      const { row } = await ph({ ...given, area: '100 sq ft' });
      expect(row.verdict).toBe('sulphur');
      // 34.18 g/m² is kept as 34.
      expect(row.gPerM2).toBeLessThanOrEqual(most + 1e-6);
      expect(row.gPerM2).toBeGreaterThan(most * 0.99);
      expect(row.g).toBeLessThanOrEqual(0.7 * LB * (most / cap) + 1e-6);
    });
  }

  // 3.0 lb of pure sulphur is 3.33 lb of a product of 90 %.
  test('a product of 90 % weighs 3.33 for 3.0 of pure sulphur', async () => {
    const pure = await ph({ ...flags, now: 6.0, goal: 5.0, texture: 'clay', material: 'Sulphur, 100 %' });
    const product = await ph({ ...flags, now: 6.0, goal: 5.0, texture: 'clay', material: 'Sulphur, 90 %' });
    expect(product.row.gPerM2 / pure.row.gPerM2).toBeCloseTo(3.3333 / 3, 3);
    // The range is in pure sulphur either way.
    expect(product.row.range).toEqual(pure.row.range);
  });

  // Ontario's 350 kg/ha is 35 g/m², this page's pound to 100 sq ft 48.8.
  test('sand, 6.0 to 5.0: the range reaches from 35 to 48.8 g/m² at least', async () => {
    const { row } = await ph({ ...flags, now: 6.0, goal: 5.0, texture: 'sand' });
    expect(row.range?.[0]).toBeLessThanOrEqual(35 + 0.01);
    expect(row.range?.[1]).toBeGreaterThanOrEqual(G_PER_M2['lb/100 sq ft'] - 0.01);
  });

  for (const texture of ['sand', 'loam', 'clay']) {
    test(`${texture}: above 7.0 blueberry ground cannot be acidified`, async () => {
      const { row } = await ph({ ...flags, now: 7.3, goal: 5.0, texture });
      expect(row.verdict).toBe('cannot');
      expect(row.gPerM2).toBe(0);
      expect(row.doses.filter((dose) => dose.g !== 0)).toEqual([]);
    });
  }
});
