/** Whether two values are one test printed twice: "Potassium 120 ppm" and "Potassium 240 lb/acre". */
import { ELEMENT_OF } from '../tables/items.ts';
import { LAB_DOUBLING } from '../tables/soil-facts.ts';
import { ELEMENT_SHARE, MG_PER_CMOL } from '../units/substance.ts';
import { convert } from '../units/units.ts';
import type { Reading } from './reading.ts';

/** Values that the printed digits leave open may differ by no more than this part: "3 ppm" and "7 lb/acre". */
const MOST_APART = 0.2;

/** mg of the element in a kilogram for one of the reading's unit; null for what does not count by weight of soil, or needs a fact of the sample. */
function perUnit({ item, unit, form }: Reading): number | null {
  const element = ELEMENT_OF[item];
  if (!element || unit === null) return null;
  const share = form ? ELEMENT_SHARE[form].share : 1;
  switch (unit) {
    case 'mg/kg': case 'ppm': case 'mg/100g': case 'g/kg': return convert(share, unit, 'mg/kg');
    case 'lb/acre': return share / LAB_DOUBLING.times;
    // By charge the ion is meant, whatever form its name has.
    case 'meq/100g': case 'cmol/kg': return MG_PER_CMOL[element] ?? null;
    default: return null;
  }
}

/** How far rounding may have moved a value: half of its last printed place. */
const half = (value: number): number => 0.5 * 10 ** -(/\.(\d+)$/.exec(String(value))?.[1]!.length ?? 0);

/** True where both values, in different units or forms, are one content within what rounding leaves open. */
export function saysTheSame(a: Reading, b: Reading): boolean {
  const [x, y] = [perUnit(a), perUnit(b)];
  if (x === null || y === null || a.value === null || b.value === null) return false;
  if (a.unit === b.unit && a.form === b.form) return a.value === b.value;
  const apart = Math.abs(a.value * x - b.value * y);
  return apart <= half(a.value) * x + half(b.value) * y && apart <= MOST_APART * Math.min(a.value * x, b.value * y);
}
