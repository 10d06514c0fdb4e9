/** The pH that suits a crop, and what to aim at from outside it. */
import type { Cite, Figure } from '../reason/figure.ts';
import { figure } from '../reason/figure.ts';
import type { Crop } from '../tables/crops.ts';
import { TREE_FRUIT } from '../tables/crops.ts';
import { BLUEBERRY_PH, ECOCROP, LIME_GOAL, PH_RANGES, TREE_FRUIT_PH } from '../tables/ph-ranges.ts';

export type Suits = { readonly low: number; readonly high: number; readonly cite: Cite };

/** EcoCrop's optimum, widened by Washington's for tree fruit and by the extension services' for blueberry. Null for a crop without figures. */
export function suitsOf(crop: Crop): Suits | null {
  if (crop === 'blueberry') return BLUEBERRY_PH;
  const range = PH_RANGES[crop];
  if (!range) return null;
  const [low, high] = range;
  if (!TREE_FRUIT.includes(crop)) return { low, high, cite: ECOCROP };
  return { low: Math.min(low, TREE_FRUIT_PH.low), high: Math.max(high, TREE_FRUIT_PH.high), cite: TREE_FRUIT_PH.cite };
}

/** Fruit trees in general, where no crop is told. */
export const TREES_IN_GENERAL: Suits = { low: TREE_FRUIT_PH.low, high: TREE_FRUIT_PH.high, cite: TREE_FRUIT_PH.cite };

/** From below: a little above the low edge. From above: the top of the best range. */
export function goalOf(crop: Crop | null, suits: Suits, now: number): Figure<'pH', 'soil'> {
  const low = figure(suits.low, 'pH', 'soil', 'ph-low-edge', suits.cite);
  const high = figure(suits.high, 'pH', 'soil', 'ph-high-edge', suits.cite);
  if (now < suits.low) return figure(Math.min(suits.low + LIME_GOAL.above, (suits.low + suits.high) / 2), 'pH', 'soil', 'ph-goal', LIME_GOAL.cite, [low, high]);
  if (now <= suits.high) return figure(now, 'pH', 'soil', 'ph-inside', suits.cite, [low, high]);
  return figure(crop === 'blueberry' ? PH_RANGES.blueberry[1] : suits.high, 'pH', 'soil', 'ph-goal', crop === 'blueberry' ? ECOCROP : suits.cite, [low, high]);
}
