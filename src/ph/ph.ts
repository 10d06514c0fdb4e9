/**
 * Whether a zone's pH suits what grows there. Inside the range: leave it alone.
 * Outside it the range is told and nothing is dosed: a lime or sulphur rate needs its own planner.
 */
import type { Cite } from '../reason/figure.ts';
import type { Crop } from '../tables/crops.ts';
import { TREE_FRUIT } from '../tables/crops.ts';
import { ECOCROP, PH_RANGES, TREE_FRUIT_PH } from '../tables/ph-ranges.ts';

export type PhVerdict = { readonly now: number; readonly low: number; readonly high: number; readonly verdict: 'leave' | 'too-low' | 'too-high'; readonly cite: Cite };

/** The suiting range of a crop: EcoCrop's optimum, widened by Washington's for tree fruit. Null for a crop without figures. */
function phRange(crop: Crop): { low: number; high: number; cite: Cite } | null {
  if (crop === 'other') return null;
  const [low, high] = PH_RANGES[crop];
  if (!TREE_FRUIT.includes(crop)) return { low, high, cite: ECOCROP };
  return { low: Math.min(low, TREE_FRUIT_PH.low), high: Math.max(high, TREE_FRUIT_PH.high), cite: TREE_FRUIT_PH.cite };
}

export function phVerdict(crop: Crop, now: number): PhVerdict | null {
  const range = phRange(crop);
  if (!range) return null;
  return { now, ...range, verdict: now < range.low ? 'too-low' : now > range.high ? 'too-high' : 'leave' };
}
