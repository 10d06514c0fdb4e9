/** What the nitrogen is cut by: organic matter, clover, or a kind that fire blight takes, a half; compost, what a year sets free of it; meals, manures and composts of earlier seasons, what they still set free. */
import type { Figure } from '../reason/figure.ts';
import { figure, told } from '../reason/figure.ts';
import { BLIGHT, CLOVER, COMPOST, COMPOST_MOST } from '../tables/credits.ts';
import { ORGANIC_MATTER } from '../tables/limits.ts';
import { convert } from '../units/units.ts';
import type { Facts } from './facts.ts';
import { groundOf, has, organicMatter } from './facts.ts';
import type { Nitrogen } from './rules.ts';

/** Grams of N that a year sets free of so many litres. */
function compostN(litres: number): number {
  const grams = litres * 1000 * convert(COMPOST.weight.value, COMPOST.weight.unit, 'g/mL');
  return grams * (COMPOST.nitrogen.high / 100) * (COMPOST.freed.high / 100);
}

export type Credited = { readonly need: Nitrogen; readonly half: 'organic' | 'clover' | 'blight' | null; readonly carried: number; readonly enough: 'compost-enough' | 'carried-enough' | null };

/** Halved once at most, then less the compost's own and what earlier feeds still bring; never under nothing. `carried` is what these bring, g; `enough` what left nothing to give. */
export function credited(f: Facts, whole: Nitrogen): Credited {
  const matter = organicMatter(f);
  const half = matter !== null && matter.value > ORGANIC_MATTER.half ? 'organic' : has(f, 'clover') ? 'clover' : has(f, 'blight-prone') ? 'blight' : null;
  let need = whole;
  if (half === 'organic') need = figure(need.value / 2, 'g', 'N', 'organic-half', ORGANIC_MATTER.cite, [need, matter!]);
  if (half === 'clover') need = figure(need.value * CLOVER.share, 'g', 'N', 'clover-half', CLOVER.cite, [need]);
  if (half === 'blight') need = figure(need.value * BLIGHT.share, 'g', 'N', 'blight-half', BLIGHT.cite, [need]);
  const litres = f.tree.composted;
  if (litres !== undefined) {
    const brings: Figure = figure(compostN(litres), 'g', 'N', 'compost-brings', COMPOST.freed.cite, [told(litres, 'L', 'compost', f.tree.name)]);
    need = figure(Math.max(0, need.value - brings.value), 'g', 'N', 'less-compost', COMPOST.freed.cite, [need, brings]);
  }
  let enough: Credited['enough'] = whole.value > 0 && need.value === 0 ? 'compost-enough' : null;
  const earlier = f.tree.carried ?? [];
  for (const { bag, date, n, frees, cite } of earlier) {
    if (need.value === 0 || n === null) continue;
    const brings: Figure = figure(frees, 'g', 'N', 'carried-brings', cite, [told(n, 'g', 'N', `diary, ${date}: ${bag}`)]);
    need = figure(Math.max(0, need.value - frees), 'g', 'N', 'less-carried', cite, [need, brings]);
    if (need.value === 0) enough = 'carried-enough';
  }
  return { need, half, enough, carried: earlier.reduce((sum, c) => sum + c.frees, 0) };
}

/** Whether its compost is more than a year's, by its crown. */
export const isMuchCompost = (f: Facts): boolean => (f.tree.composted ?? 0) > COMPOST_MOST.litresPerM2 * groundOf(f).value * (1 + 1e-9);
