/** Growth and leaf against their published ranges. */
import type { Figure } from '../reason/figure.ts';
import { figure } from '../reason/figure.ts';
import type { LeafRange } from '../tables/growth.ts';
import { GROWTH_RANGES, LEAF_RANGES } from '../tables/growth.ts';
import { INCH } from '../units/units.ts';
import type { Facts } from './facts.ts';

export type GrowthEdges = { readonly low: Figure<'m', 'growth'>; readonly high: Figure<'m', 'growth'> };

/** The wanted growth of the crop, bearing or not; null where nobody printed one (citrus). */
export function growthRange(f: Facts): GrowthEdges | null {
  const range = GROWTH_RANGES.find((r) => r.crops.includes(f.crop) && r.bearing !== f.young);
  if (!range) return null;
  const edge = (inches: number): Figure<'m', 'growth'> => figure(inches * INCH, 'm', 'growth', 'growth-range', range.cite);
  return { low: edge(range.low), high: edge(range.high) };
}

export type LeafVerdict = { readonly verdict: 'below' | 'sufficient' | 'above'; readonly short: number; readonly range: LeafRange };

/** A leaf value in % against its range; null where the leaf was not tested or no range is held. */
export function leafVerdict(f: Facts, nutrient: 'N' | 'K' | 'P' | 'Mg'): LeafVerdict | null {
  const leaf = f.tree.leaf.find((l) => l.nutrient === nutrient && l.unit === '%');
  const range = LEAF_RANGES.find((r) => r.crop === f.crop && r.nutrient === nutrient);
  if (!leaf || !range) return null;
  const verdict = leaf.value < range.low ? 'below' : leaf.value > range.high ? 'above' : 'sufficient';
  return { verdict, short: Math.max(0, range.low - leaf.value), range };
}
