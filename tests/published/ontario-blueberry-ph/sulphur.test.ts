// Ontario, soil pH for blueberry plants: kg of sulphur to the hectare for each tenth of pH.
// Typed from research notes of the page.
import { expect, test } from 'vitest';
import { published } from '../helpers.ts';
import { expectPrinted, ph } from '../ph.ts';

const source = {
  id: 'ontario-blueberry-ph',
  title: 'Soil pH for blueberry plants',
  publisher: 'Ontario Ministry of Agriculture, Food and Rural Affairs',
  url: 'http://ontario.ca/page/soil-ph-blueberry-plants',
  mark: 'read',
} as const;

const flags = { crop: 'blueberry' } as const;

published(source, () => {
  expectPrinted(source.id, 'kg/ha', [
    [{ ...flags, now: 6.0, goal: 5.0, texture: 'sand' }, 350],
    [{ ...flags, now: 6.0, goal: 5.0, texture: 'sandy loam' }, 750],
    // The page's own example.
    [{ ...flags, now: 6.0, goal: 5.0, texture: 'loam' }, 1100],
    // 35, 75 and 110 for each tenth.
    [{ ...flags, now: 5.6, goal: 5.0, texture: 'sand' }, 210],
    [{ ...flags, now: 5.8, goal: 5.0, texture: 'sandy loam' }, 600],
    [{ ...flags, now: 6.4, goal: 4.5, texture: 'loam' }, 2090],
  ]);

  // 8 × 75 kg/ha is 60 g/m²: 540 g for a bed of 9 m², lying within the range of the rules.
  test('sandy loam, 5.8 to 5.0, a bed of 9 m²: the range holds 540 g', async () => {
    const { row } = await ph({ ...flags, now: 5.8, goal: 5.0, texture: 'sandy loam', area: '9 m2' });
    expect(row.verdict).toBe('sulphur');
    expect((row.range?.[0] ?? NaN) * 9).toBeLessThanOrEqual(540.01);
    expect((row.range?.[1] ?? NaN) * 9).toBeGreaterThanOrEqual(539.99);
  });
});
