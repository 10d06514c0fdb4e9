// AGVISE Laboratories, spring 2025: 1 % of calcium carbonate in the top 6 in takes 6,400 lb of sulphur
// to the acre before pH can fall. Typed from research notes of the page.
import { expect, test } from 'vitest';
import { published } from '../helpers.ts';
import { expectPrinted, ph } from '../ph.ts';

const source = {
  id: 'agvise-free-lime',
  title: 'Sulphur against free lime',
  publisher: 'AGVISE Laboratories',
  url: 'https://www.agvise.com/category/agvise/research/',
  mark: 'read',
} as const;

const blueberry = { crop: 'blueberry', now: 6.8, goal: 5.0, texture: 'loam' } as const;
const pear = { crop: 'pear', now: 7.5, goal: 6.5, texture: 'clay' } as const;

published(source, () => {
  expectPrinted(source.id, 'lb/acre', [
    [{ ...blueberry, carbonate: 1 }, 6400],
    [{ ...blueberry, carbonate: 2 }, 12_800],
    [{ ...pear, carbonate: 1 }, 6400],
    [{ ...pear, carbonate: 0.5 }, 3200],
    [{ ...pear, carbonate: 25 }, 160_000],
  ]);

  for (const carbonate of [0.5, 1, 2]) {
    test(`${String(carbonate)} % of carbonate: cannot be done`, async () => {
      const { row } = await ph({ ...pear, carbonate, area: '10 m2' });
      expect(row.verdict).toBe('cannot');
      expect(row.gPerM2).toBe(0);
      expect(row.g ?? 0).toBe(0);
      expect(row.doses.filter((dose) => dose.g !== 0)).toEqual([]);
    });
  }

  test('no carbonate at all: it can', async () => {
    const { row } = await ph({ ...pear, now: 7.0, carbonate: 0 });
    expect(row.verdict).toBe('sulphur');
  });
});
