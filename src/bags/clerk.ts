/** What to ask for at the store: plain grades that bring what is wanted and nothing else, how much of each, and what to leave. */
import type { Nutrient } from '../units/substance.ts';
import { NUTRIENTS } from '../units/substance.ts';
import { MATERIALS } from '../tables/materials.ts';
import type { Material } from '../tables/materials.ts';
import type { Grams } from './weigh.ts';

/** Straight feeds that stores keep, by the nutrient they are bought for; sulphate of potash before muriate. */
const STRAIGHT: Readonly<Record<Nutrient, readonly string[]>> = {
  N: ['ammonium-sulphate', 'urea'],
  P2O5: ['triple-superphosphate', 'superphosphate'],
  K2O: ['potassium-sulphate', 'potassium-chloride'],
};

export type Wish = { readonly nutrient: Nutrient; readonly feeds: readonly { readonly material: Material; readonly g: number }[] };
/** `leave`: nutrients that nothing bought may bring. */
export type ClerkList = { readonly wishes: readonly Wish[]; readonly leave: readonly Nutrient[] };

/** `wanted` in grams for all plants; `chlorideHurts` where one of them takes chloride badly; `leave` is what nobody may bring. */
export function clerkList(wanted: Grams, chlorideHurts: boolean, leave: readonly Nutrient[]): ClerkList {
  const feeds = (n: Nutrient): Wish['feeds'] => STRAIGHT[n].flatMap((id) => {
    const material = MATERIALS.find((m) => m.id === id);
    const at = NUTRIENTS.indexOf(n);
    return material && !(chlorideHurts && material.chloride) ? [{ material, g: wanted[n] / (material.sold.grade[at]! / 100) }] : [];
  });
  return { wishes: NUTRIENTS.filter((n) => wanted[n] > 1).map((nutrient) => ({ nutrient, feeds: feeds(nutrient) })), leave };
}
