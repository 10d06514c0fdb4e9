// Ground limestone by texture, lb/100 sq ft to pH 6.5, from a gardening page without a source.
// READ, LOW: widely reprinted, but of little authority. Typed from research notes of the page.
import { expect, test } from 'vitest';
import { published } from '../helpers.ts';
import { expectPrinted, ph } from '../ph.ts';

const source = {
  id: 'lime-texture-page',
  title: 'Raising pH with limestone (low authority)',
  publisher: 'A gardening page',
  url: 'http://www.agroconection.com/raising-ph-with-limestone.html',
  mark: 'read',
} as const;

const textures = ['sandy loam', 'loam', 'clay loam'] as const;

// Present pH, then lb/100 sq ft on sandy loam, loam and clay loam.
const table = [
  [4.0, 11.5, 16, 23],
  [4.5, 9.5, 13.5, 19.5],
  [5.0, 8, 10.5, 15],
  [5.5, 6, 8, 10.5],
] as const;

// pH 6.0 already suits fruit trees, so the row 3 / 4 / 5.5 is reached from just below and from halfway.
const last = [
  [5.99, 3 + 0.02 * 3, 4 + 0.02 * 4, 5.5 + 0.02 * 5],
  [5.75, (6 + 3) / 2, (8 + 4) / 2, (10.5 + 5.5) / 2],
] as const;

published(source, () => {
  const rows = [...table, ...last].flatMap(([now, ...cells]) =>
    cells.map((cell, at) => [{ now, goal: 6.5, texture: textures[at] ?? '' }, cell] as const));
  expectPrinted(source.id, 'lb/100 sq ft', rows);

  // Halfway between two printed rows.
  expectPrinted(source.id, 'lb/100 sq ft', [
    [{ now: 4.75, goal: 6.5, texture: 'sandy loam' }, 8.75],
    [{ now: 5.25, goal: 6.5, texture: 'loam' }, 9.25],
    [{ now: 4.25, goal: 6.5, texture: 'clay loam' }, 21.25],
  ]);

  for (const texture of textures) {
    test(`${texture}: a range where nothing but texture is known, none beside a buffer pH`, async () => {
      const { row } = await ph({ now: 5, goal: 6.4, texture });
      expect(row.range).not.toBeNull();
      expect(row.range?.[0]).toBeLessThanOrEqual(row.range?.[1] ?? NaN);
      const known = await ph({ now: 5, goal: 6.4, texture, buffer: 6.4, method: 'sikora' });
      expect(known.row.range).toBeNull();
    });
  }
});
