/** A soil short of P and K, and a bag that brings all three: the need comes before the surplus. A nutrient not wanted at all comes before both. */
import { expect, test } from 'vitest';
import { medlar } from '../medlar.ts';

const orchard = (tree: string): string => `where: Pennsylvania, US\nbud-break: 15 April\nfirst-frost: 5 October\nsoil:\n  yard: a.txt\ntrees:\n  ${tree}, yard\nstore:\n  - 10-10-10, 20 lb, $14\n  - Urea, 46-0-0, 5 lb, $12\n`;
const bagsOf = async (report: string): Promise<string[]> => {
  const { json } = await medlar(['plan', '--json'], { 'orchard.yaml': orchard('Peach: peach, planted 2020, 10 ft across, shoots 6 in 2025'), 'a.txt': report });
  return (json.result.trees[0].feeds as { bag: string }[]).map((f) => f.bag);
};

// Only 10-10-10 brings the phosphate and potash that the soil lacks; urea beside it spares the phosphate that is not needed.
test('low P and K: the bag that brings them, and no more of it than they need', async () => {
  expect(new Set(await bagsOf('pH 6.2\nPhosphorus 18 ppm low\nPotassium 64 ppm low\n'))).toEqual(new Set(['10-10-10', 'Urea']));
});

// Phosphate must not be added, so potash stays short and is named.
test('very high P: never for the sake of potash', async () => {
  expect(new Set(await bagsOf('pH 6.2\nPhosphorus 180 ppm very high\nPotassium 64 ppm low\n'))).toEqual(new Set(['Urea']));
});
