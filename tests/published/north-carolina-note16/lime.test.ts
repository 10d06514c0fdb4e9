// North Carolina Department of Agriculture, Note 16 "Apples", revised May 1994: lime on the surface
// of an orchard not over 1 ton/acre in a year, the rest the next year. Typed from research notes of the page.
import { expect, test } from 'vitest';
import { published } from '../helpers.ts';
import { G_PER_M2, near, ph, said } from '../ph.ts';

const source = {
  id: 'north-carolina-note16',
  title: 'Note 16, Apples',
  publisher: 'North Carolina Department of Agriculture and Consumer Services, Agronomic Division',
  url: 'http://digital.ncdcr.gov/cdm/ref/collection/p16062coll9/id/120798/',
  mark: 'read',
} as const;

// The ton is kept as 224 g/m².
const cap = Math.floor(G_PER_M2['ton/acre']);
const large = { now: 4.6, goal: 6.5, depth: '8 in', texture: 'clay loam' } as const;

published(source, () => {
  // What goes on in the first year of a need that fills several.
  const capped = [
    [{ ...large, lime: '400 lb/1000 sq ft', material: 'Garden lime, CCE 100' }, cap],
    [{ ...large, lime: '5 ton/acre', material: 'Garden lime, CCE 100' }, cap],
    [{ ...large, lime: '20 ton/acre', material: 'Garden lime, CCE 100' }, cap],
    // Weaker lime: still no more of the product than a ton.
    [{ ...large, lime: '20 ton/acre', material: 'Garden lime, CCE 70' }, cap],
    // Stronger lime: as much less of it.
    [{ ...large, lime: '20 ton/acre', material: 'Dolomitic lime, CCE 108' }, (cap * 100) / 108],
    [{ now: 5, goal: 7.2, buffer: 4.8, method: 'sikora', material: 'Garden lime, CCE 100' }, cap],
    [{ now: 5, goal: 7.0, buffer: 5.0, method: 'smp', material: 'Garden lime, CCE 100' }, cap],
    [{ now: 5, goal: 7.0, acidity: 25.7, material: 'Garden lime, CCE 100' }, cap],
  ] as const;
  for (const [flags, most] of capped) {
    test(`${said(flags)}: ${most.toFixed(0)} g/m² this year`, async () => {
      const { row } = await ph({ ...flags, area: '100 sq ft' });
      expect(row.verdict).toBe('lime');
      near(row.gPerM2, most);
      expect(row.gPerM2).toBeLessThanOrEqual(G_PER_M2['ton/acre'] + 1e-6);
      expect(row.doses.reduce((sum, dose) => sum + dose.gPerM2, 0)).toBeLessThanOrEqual(G_PER_M2['ton/acre'] + 1e-6);
    });
  }

  test('just under the limit nothing is held back', async () => {
    // 3.9 ton/acre at 8 in is 0.975 ton/acre on the surface.
    const { row } = await ph({ ...large, lime: '3.9 ton/acre', material: 'Garden lime, CCE 100' });
    near(row.gPerM2, 0.975 * G_PER_M2['ton/acre']);
  });
});
