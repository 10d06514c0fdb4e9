/** Growth and leaf against their published ranges. */
import type { Figure } from '../reason/figure.ts';
import { figure } from '../reason/figure.ts';
import type { Crop } from '../tables/crops.ts';
import { GROWTH_RANGES, SPUR_TYPE } from '../tables/growth.ts';
import type { LeafNutrient, LeafRange } from '../tables/leaf.ts';
import { LEAF_RANGES } from '../tables/leaf.ts';
import { convert } from '../units/units.ts';
import type { Facts } from './facts.ts';
import { has } from './facts.ts';

export type GrowthEdges = { readonly low: Figure<'m', 'growth'>; readonly high: Figure<'m', 'growth'> };
type Ranged = { readonly crops: readonly Crop[]; readonly kinds?: readonly string[]; readonly region: string; readonly young?: true; readonly label?: string };

/** The range of the grower's own state or country, that for plants which do not bear before one for all; else the first in the table that is for the crop; labelled ones never lead. */
function leading<T extends Ranged>(ranges: readonly T[], f: Facts): T | undefined {
  const mine = ranges.filter((r) => r.label === undefined && r.crops.includes(f.crop) && (r.kinds === undefined || r.kinds.includes(f.tree.word)));
  const here = mine.filter((r) => r.region === f.where.region);
  return here.find((r) => r.young) ?? here[0] ?? mine[0];
}

/** The wanted growth of the crop, bearing or not; null where nobody printed one (citrus). */
export function growthRange(f: Facts): GrowthEdges | null {
  const spur = f.crop === 'apple' && has(f, 'spur-type') && !f.young;
  const range = spur ? SPUR_TYPE : leading(GROWTH_RANGES.filter((r) => r.bearing !== f.young), f);
  if (!range) return null;
  const edge = (length: number): Figure<'m', 'growth'> => figure(convert(length, range.unit, 'm'), 'm', 'growth', 'growth-range', range.cite);
  return { low: edge(range.low), high: edge(range.high) };
}

export type LeafVerdict = { readonly verdict: 'below' | 'sufficient' | 'above'; readonly short: number; readonly range: LeafRange };

/** A leaf value against its range; null where the leaf was not tested for it or no range is held in that unit. */
export function leafVerdict(f: Facts, nutrient: LeafNutrient): LeafVerdict | null {
  const leaf = f.tree.leaf.find((l) => l.nutrient === nutrient);
  const range = leading(LEAF_RANGES.filter((r) => r.nutrient === nutrient && r.unit === leaf?.unit && (r.young === undefined || f.young)), f);
  if (!leaf || !range) return null;
  const verdict = leaf.value < range.low ? 'below' : leaf.value > range.high ? 'above' : 'sufficient';
  return { verdict, short: Math.max(0, range.low - leaf.value), range };
}
