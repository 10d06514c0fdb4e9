// How much of the nitrogen of what grew comes free, as printed (release.ts; typed apart from the tables), against what the product counts.
import { describe, expect, test } from 'vitest';
import { parseBag } from '../../../src/orchard/bag.ts';
import { manureMinerals, releaseOf } from '../../../src/orchard/release.ts';
import { RELEASE } from '../../../src/tables/release.ts';
import { published } from '../helpers.ts';
import { MANURE_YEARS } from './examples.ts';
import { PRINTED_PK_RELEASE, PRINTED_RELEASE, PRINTED_RELEASE_SUMS } from './release.ts';

const NOWHERE = { file: '', line: 1, column: 1, length: 1, source: '' };
const bagOf = (text: string) => parseBag(`${text} 1-1-1`, 'US', false, NOWHERE).bag!;
/** What stands for a row's own name. */
const AS: Readonly<Record<string, string>> = { 'fish powder': 'fish meal', 'commercial organic fertiliser': 'organic feed', 'organic lawn fertilisers': 'organic feed', 'poultry litter': 'dried poultry manure', 'most animal manures': 'animal manure' };
const CATTLE = ['cow manure', 'manure', 'feedlot manure'];

/** Organic nitrogen of cattle is that of manures in general; the row of cow manure counts all nitrogen (Iowa). */
const releasedOf = (row: { readonly material: string; readonly of: string }) =>
  row.of === 'organic' && CATTLE.includes(row.material) ? releaseOf({ material: null, organic: 'manure' })! : releaseOf(bagOf(AS[row.material] ?? row.material))!;
const label = (r: { readonly material: string; readonly share: readonly number[]; readonly of: string; readonly at: string; readonly mark: string }): string => `${r.mark === 'memory' ? 'memory: ' : ''}${r.material}: ${r.share.join(' to ')} % of ${r.of} (${r.at})`;

published({ id: 'printed-release', title: 'Nitrogen that comes free of meals, manures and composts', publisher: 'Universities and others, each named at its row', url: null, mark: 'read' }, () => {
  describe('a year', () => {
    const rows = PRINTED_RELEASE.filter((r) => !('days' in r));
    test.each(rows.map((r) => [`year ${r.year}, ${label(r)}`, r] as const))('%s', (_, row) => {
      const released = releasedOf(row);
      const all = row.of === 'total' && row.year === 1 ? RELEASE.find((x) => x.materials.includes(bagOf(row.material).material?.id ?? ''))?.ofAll : undefined;
      const [low, high] = all ? all.year1.map((x) => x / 100) as [number, number] : released[`year${row.year}`];
      expect(row.share[0] / 100).toBeGreaterThanOrEqual(low - 1e-9);
      expect(row.share[1] / 100).toBeLessThanOrEqual(high + 1e-9);
      // All nitrogen is never mistaken for its organic part alone, save where the row of cattle counts all.
      if (row.of === 'total' && !all) expect(released.of).toBe('N');
    });
  });

  // Hartz and Johnstone measured organic nitrogen (the abstract) where the notes head the column "of total": these hold next to no ammonia.
  describe('weeks in a laboratory are less than the most of a year', () => {
    const rows = PRINTED_RELEASE.filter((r) => 'days' in r);
    test.each(rows.map((r) => [label(r), r] as const))('%s', (_, row) => { expect(row.share[1] / 100).toBeLessThanOrEqual(releasedOf(row).year1[1] + 1e-9); });
    test.each(rows.filter((r) => 'days' in r && r.days === 56).map((r) => [label(r), r] as const))('eight weeks are the least of a year: %s', (_, row) => { expect(releasedOf(row).year1[0]).toBeCloseTo(row.share[0] / 100, 9); });
  });

  describe('several years together', () => {
    test.each(PRINTED_RELEASE_SUMS.map((r) => [`${r.years} years, ${label(r)}`, r] as const))('%s', (_, row) => {
      const { year1, year2, year3 } = releasedOf(row);
      const sum = (end: 0 | 1): number => year1[end] + year2[end] + (row.years === 3 ? year3[end] : 0);
      expect(row.share[0] / 100).toBeGreaterThanOrEqual(sum(0) - 1e-9);
      expect(row.share[1] / 100).toBeLessThanOrEqual(sum(1) + 1e-9);
    });
  });

  describe('phosphate and potash of manure in its first year', () => {
    test.each(PRINTED_PK_RELEASE.map((r) => [`${r.nutrient} ${r.share.join(' to ')} (${r.at})`, r] as const))('%s', (_, { nutrient, share }) => {
      const { low, high } = manureMinerals({ organic: 'manure' })![nutrient];
      expect(share[0] / 100).toBeGreaterThanOrEqual(low);
      expect(share[1] / 100).toBeLessThanOrEqual(high);
    });
  });

  test('ten tons an acre of manure with 5 lb organic nitrogen a ton: 17.5, 6.0 and 2.5 lb (notes, D10)', () => {
    const [row] = MANURE_YEARS;
    const { year1, year2, year3, of } = releaseOf(bagOf('Sheep manure'))!;
    expect(of).toBe('organic N');
    expect([year1[1], year2[1], year3[1]].map((x) => Number((x * row.tonsPerAcre * row.organicLbPerTon).toFixed(9)))).toEqual(row.lbByYear);
  });
});
