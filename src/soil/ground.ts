/** Headings that say for what ground the amounts below them are, as labs head their recommendations. */
import type { ReportUnit } from '../tables/items.ts';
import { RATES } from '../tables/items.ts';

const FOR_GROUND = /(?:^|[\s,(])(?:per|for each|pro|je|por|par) ?(1,?000 ?(?:sq\.? ?(?:ft|feet)\.?|square feet)|100 ?(?:sq\.? ?(?:ft|feet)\.?|square feet)|acre|ha|hectare|m2|m²|tree)\s*\)?\s*:?\s*$/i;
const WEIGHT = /(?:^|[\s,(])(?:lbs?|pounds?|oz|ounces?|kgs?|kilo(?:gram(?:me)?)?s?|ton(?:ne)?s?|t|g|gram(?:m|me)?s?)\.?$/i;

/** "Recommendation, per 1,000 sq ft:": the ground that the amounts below are for, as printed; null for a unit ("lb per acre") and any other line. */
export function groundIn(text: string): string | null {
  const m = FOR_GROUND.exec(text);
  if (!m) return null;
  const before = text.slice(0, m.index);
  return /\d/.test(before) || WEIGHT.test(before) ? null : m[1]!;
}

/** Units in which amounts to bring out are told; pounds an acre may be a content too. */
export const AMOUNTS: readonly ReportUnit[] = [...RATES, 'lb/acre', 'kg/ha'];

/** The unit of a rate that is told as a weight, below a heading that told its ground; null for a pair that nobody prints. */
export function rateUnit(weight: string, ground: string): ReportUnit | null {
  const of = weight.toLowerCase().replace(/^(?:lbs|pounds?)$/, 'lb').replace(/^tons$/, 'ton');
  const on = /1,?000/.test(ground) ? '1000sqft' : /100/.test(ground) ? '100sqft' : /h/i.test(ground) ? 'ha' : /m/i.test(ground) ? 'm2' : ground.toLowerCase();
  return AMOUNTS.find((u) => u === `${of}/${on}`) ?? null;
}
