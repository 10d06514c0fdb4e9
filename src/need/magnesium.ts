/** Magnesium by distance from target: told beside the plan, since it comes with lime or Epsom salts and never decides a bag of feed. */
import type { Figure } from '../reason/figure.ts';
import { figure } from '../reason/figure.ts';
import type { Facts } from './facts.ts';
import { groundOf, has, isToCome, targetOf } from './facts.ts';
import { classRate, soilFigures } from './soil-rate.ts';

export type Magnesia = Figure<'g', 'MgO'>;

/** Grams of MgO a plant and year; null where the soil was not tested for it, as in tubs, and in the planting year. */
export function magnesiumOf(f: Facts): Magnesia | null {
  const target = targetOf(f, 'magnesium');
  if (target === null || f.years === 0 || isToCome(f)) return null;
  const rate = has(f, 'fed lawn') ? classRate('weinsberg.mgo', 'above') : classRate('weinsberg.mgo', target);
  return figure(rate.low * groundOf(f).value, 'g', 'MgO', rate.low === 0 ? 'none' : 'per-area', rate.cite, [groundOf(f), ...soilFigures(f, 'magnesium')]);
}
