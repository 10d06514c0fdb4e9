// Lime of several plants out of one shed: what it does not hold must stand on the list of what to buy. Sums by hand from the plan's own doses of each plant.
import { describe, expect, test } from 'vitest';
import { gather } from '../../src/gather.ts';
import { planSeason } from '../../src/plan.ts';
import type { Plan } from '../../src/plan.ts';

const SOIL = 'pH 5.2\nBuffer pH 6.2\nPhosphorus 164 ppm = very high\nPotassium 400 ppm = very high\n';
/** Trees 6 and 16 feet across want lime by their ring, about 0.5 and 3.5 kg; 3 lb are 1.36 kg. */
function plan(shed: string, trees = ['6', '16']): Plan {
  const source = `where: Ohio, US\nbud-break: 12 April\nfirst-frost: 12 October\nsoil:\n  bank: a.txt\ntrees:\n${trees.map((ft, i) => `  ${'ABCD'[i]!}: apple, planted 2015, ${ft} ft across, shoots 12 in 2025, bank\n`).join('')}shed:\n${shed}`;
  const { orchard, zones } = gather(source, () => ({ text: SOIL }), { entries: [], notices: [] }, '2026-03-14');
  return planSeason(orchard!, zones, '2026-03-14');
}
const bought = (p: Plan): (string | number | null)[][] => p.buy.map((b) => [b.bag.label, Math.round(b.needG), b.bags]);
const grams = (p: Plan): number[] => p.trees.map((t) => Math.round(t.ph!.g));

describe('lime in the shed', () => {
  test('enough for all: nothing to buy', () => {
    const p = plan('  - Garden lime, 90 % CCE, 100 lb, 100 lb left\n');
    const [a, b] = grams(p);
    expect([p.trees.map((t) => t.ph!.bag?.label), a! > 0, b! > a!]).toEqual([['Garden lime', 'Garden lime'], true, true]);
    expect(bought(p)).toEqual([['Garden lime', expect.closeTo(a! + b!, -1), 0]]);
  });
  test('enough for one alone: the lime of the others is bought, whichever comes first', () => {
    for (const trees of [['6', '16'], ['16', '6']]) {
      const p = plan('  - Garden lime, 90 % CCE, 100 lb, 3 lb left\n', trees);
      const small = trees.indexOf('6');
      expect(p.trees[small]!.ph!.bag?.label).toBe('Garden lime');
      expect(p.trees[1 - small]!.ph!.bag).toBeNull();
      // Each by its own dose; what no bag serves has no number of bags.
      expect(new Map(p.buy.map((b) => [b.bags, Math.round(b.needG)]))).toEqual(new Map([[0, grams(p)[small]!], [null, grams(p)[1 - small]!]]));
    }
  });
  test('two plants without a bag are one thing to buy', () => {
    const p = plan('  - Sulphate of ammonia, 21-0-0, 5 lb, 5 lb left\n', ['16', '16']);
    const lime = p.buy.filter((b) => b.bag.amends?.kind === 'lime');
    expect(lime).toHaveLength(1);
    expect(lime[0]!.needG).toBeCloseTo(p.trees.reduce((sum, t) => sum + t.ph!.g, 0), 6);
  });
  test('two bags, the second for what the first does not hold', () => {
    const p = plan('  - Garden lime, 90 % CCE, 100 lb, 1 lb left\n  - Garden lime, 90 % CCE, 100 lb, 40 lb left\n');
    expect(p.trees.every((t) => t.ph!.bag?.label === 'Garden lime')).toBe(true);
    expect(p.buy.reduce((sum, b) => sum + b.needG, 0)).toBeCloseTo(p.trees.reduce((sum, t) => sum + t.ph!.g, 0), 6);
  });
});
