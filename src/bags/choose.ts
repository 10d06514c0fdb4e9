/**
 * One bag for each need, from shed and store: first what brings least of a nutrient that is not wanted at all, then what
 * leaves least unmet that no other bag could bring, then least surplus phosphate, then potash, then what costs least (what stands in the shed costs nothing), then the label. A bag with weed killer is never tree feed.
 */
import type { Bag } from '../orchard/bag.ts';
import { CHLORIDE_SENSITIVE } from '../tables/crops.ts';
import type { Crop } from '../tables/crops.ts';
import type { Nutrient } from '../units/substance.ts';
import { NUTRIENTS } from '../units/substance.ts';
import type { Wants } from './mix.ts';
import { compareFaults, faultsOf, mixesOf } from './mix.ts';

export type Portion = { readonly bag: Bag; readonly g: number; readonly serves: Nutrient };

/** Blueberries take no nitrate (New York prints: no nitrates). */
const isNitrate = (bag: Bag): boolean => /nitrat|saltpet|salpeter/i.test(bag.label) || (bag.material !== null && /nitrate/.test(bag.material.id)) || (bag.grade.N > 0.32 && bag.grade.N < 0.355 && bag.grade.P2O5 === 0 && bag.grade.K2O === 0);

/** Whether a bag may feed this plant at all. */
function allowed(bag: Bag, crop: Crop, tub: boolean): boolean {
  if (bag.weedKiller || bag.amends) return false;
  if (crop === 'blueberry' && isNitrate(bag)) return false;
  if (tub) return bag.slow;
  return !bag.liquid && !(bag.chloride && CHLORIDE_SENSITIVE.includes(crop) && bag.grade.N === 0);
}

/** The portions that meet a year's need of one plant as far as these bags can: a bag for each nutrient, or a mix where that serves better. */
export function choose(wants: Wants, bags: readonly Bag[], crop: Crop, tub: boolean): Portion[] {
  const usable = bags.filter((b) => allowed(b, crop, tub));
  const single = oneForEach(wants, usable);
  const faults = faultsOf(single, wants);
  if (faults.every((x) => x <= 0.01) || usable.length < 2) return single;
  let best: { mix: Portion[]; faults: readonly number[] } = { mix: single, faults };
  for (const weighed of mixesOf(usable, wants)) {
    const mix = weighed.map(({ bag, g }): Portion => ({ bag, g, serves: NUTRIENTS.find((n) => wants[n] > 1e-9 && bag.grade[n] > 0)! }));
    const found = faultsOf(mix, wants);
    const better = compareFaults(found, best.faults) || (best.mix === single ? 0 : priceOf(mix) - priceOf(best.mix));
    if (better < 0) best = { mix, faults: found };
  }
  return best.mix;
}

const priceOf = (mix: readonly Portion[]): number => mix.reduce((sum, p) => sum + cost(p), 0);

function oneForEach(wants: Wants, usable: readonly Bag[]): Portion[] {
  const portions: Portion[] = [];
  const left = { ...wants };
  for (const nutrient of ['N', 'P2O5', 'K2O'] as const) {
    if (left[nutrient] <= 1e-9) continue;
    const best = usable
      .filter((b) => b.grade[nutrient] > 0 && (nutrient === 'N' || b.grade.N === 0))
      .map((bag) => ({ bag, g: left[nutrient] / bag.grade[nutrient] }))
      .sort((a, b) => compare(a, b, left, usable))[0];
    if (!best) continue;
    portions.push({ ...best, serves: nutrient });
    for (const other of ['N', 'P2O5', 'K2O'] as const) left[other] -= best.g * best.bag.grade[other];
  }
  return portions;
}

type Try = { readonly bag: Bag; readonly g: number };

function compare(a: Try, b: Try, wants: Wants, usable: readonly Bag[]): number {
  const surplus = (t: Try, n: Nutrient): number => Math.max(0, t.g * t.bag.grade[n] - Math.max(0, wants[n]));
  const differs = (x: number, y: number): number => (Math.abs(x - y) < 1e-6 * Math.max(1, x, y) ? 0 : x - y);
  const unwanted = (t: Try, n: Nutrient): number => (wants[n] <= 1e-9 ? surplus(t, n) : 0);
  const unmet = (t: Try): number => (['P2O5', 'K2O'] as const).reduce((sum, n) =>
    sum + (usable.some((b) => b.grade.N === 0 && b.grade[n] > 0) ? 0 : Math.max(0, wants[n] - t.g * t.bag.grade[n])), 0);
  return differs(unwanted(a, 'P2O5'), unwanted(b, 'P2O5')) || differs(unwanted(a, 'K2O'), unwanted(b, 'K2O')) || differs(unmet(a), unmet(b))
    || differs(surplus(a, 'P2O5'), surplus(b, 'P2O5')) || differs(surplus(a, 'K2O'), surplus(b, 'K2O'))
    || differs(cost(a), cost(b)) || (a.bag.label < b.bag.label ? -1 : a.bag.label > b.bag.label ? 1 : 0);
}

function cost({ bag, g }: Try): number {
  if (bag.left !== null) return 0;
  return bag.price && bag.g ? (g / bag.g) * bag.price.amount : 1e9 + g;
}
