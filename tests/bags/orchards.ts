/** Generated orchards, the same each time: plants with their wants, bags in the shed and at the store. */
import { dice } from '../dice.ts';
import type { Plant } from '../../src/bags/allot.ts';
import type { Bag } from '../../src/orchard/bag.ts';

const GRADES = [[10, 10, 10], [21, 0, 0], [46, 0, 0], [0, 46, 0], [0, 0, 60], [0, 0, 50], [5, 10, 10], [12, 12, 17], [16, 4, 8], [24, 8, 16], [3, 15, 0], [6, 2, 1], [18, 46, 0], [13, 0, 44], [5, 10, 5], [4, 12, 12], [15, 0, 0], [11, 52, 0], [0, 20, 0], [9, 6, 6]] as const;
const SIZES = [1000, 1814, 2268, 4536, 9072, 11_340, 18_144, 22_680];

export const bagOf = (label: string, [n, p, k]: readonly [number, number, number], g: number | null, price: number | null, left: number | null = null): Bag => ({
  label, printed: `${n}-${p}-${k}`, grade: { N: n / 100, P2O5: p / 100, K2O: k / 100 }, g, price: price === null ? null : { amount: price, currency: '$' }, left,
  material: null, slow: false, liquid: false, chloride: false, weedKiller: false, place: { file: 'orchard.yaml' },
} as Bag);

export type Case = { readonly plants: Plant[]; readonly shed: Bag[]; readonly store: Bag[] };
export function orchardOf(seed: number, mostPlants = 60, mostBags = 20): Case {
  const r = dice(seed);
  const pick = <T>(of: readonly T[]): T => of[Math.floor(r() * of.length)]!;
  const some = (most: number): number => 1 + Math.floor(r() * r() * most);
  const store = Array.from({ length: some(mostBags) }, (_, i) => bagOf(`S${String(i).padStart(2, '0')}`, pick(GRADES), pick(SIZES), Math.round(300 + r() * 4000) / 100));
  const shed = r() < 0.4 ? Array.from({ length: some(3) }, (_, i) => bagOf(`H${i}`, pick(GRADES), 4536, null, Math.round(r() * 4536))) : [];
  const all = [...shed, ...store];
  const plants = Array.from({ length: some(mostPlants) }, (): Plant => {
    const kind = r();
    const n = Math.round(5 + r() * 180);
    return {
      wants: { N: kind < 0.05 ? 0 : n, P2O5: r() < 0.6 ? 0 : Math.round(r() * 60), K2O: r() < 0.5 ? 0 : Math.round(r() * 90) },
      usable: r() < 0.15 ? all.filter(() => r() < 0.7) : all, mostQuick: Infinity, count: r() < 0.8 ? 1 : 1 + Math.floor(r() * 6),
    };
  });
  return { plants, shed, store };
}
