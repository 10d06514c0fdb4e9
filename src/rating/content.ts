/** What a printed value means as a content of the soil: mg of the element in a kg, or the unit of a scale. */
import type { Cite, Figure } from '../reason/figure.ts';
import { figure } from '../reason/figure.ts';
import type { Reading } from '../soil/reading.ts';
import { ELEMENT_OF, TO_MG_PER_KG } from '../tables/items.ts';
import type { Scale } from '../tables/ratings.ts';
import type { Element } from '../units/substance.ts';
import { ELEMENT_SHARE, MG_PER_CMOL } from '../units/substance.ts';

export const lab = (reading: Reading): Cite => ({ source: 'lab', at: `line ${reading.place.line}`, mark: 'read' });

/** The reading in the scale's own unit; null where that would need a fact nobody gave. Scales hold elements. */
export function inUnit(reading: Reading, scale: Scale): number | null {
  if (scale.unit === 'pH') return reading.unit === 'pH' ? reading.value : null;
  if (scale.unit === 'mg/L') return reading.unit === 'mg/L' && reading.value !== null ? reading.value * elementShare(reading) : null;
  const element = ELEMENT_OF[reading.item];
  const mg = contentOf(reading, null)?.value ?? null;
  if (mg === null || !element) return null;
  if (scale.unit === 'ppm' || scale.unit === 'mg/kg') return mg;
  if (scale.unit === 'lb/acre') return mg * 2;
  const perCmol = MG_PER_CMOL[element];
  return perCmol ? mg / perCmol : null;
}

const elementShare = (reading: Reading): number => (reading.form ? ELEMENT_SHARE[reading.form].share : 1);

/** mg of the element in a kg of soil, with each step; null where unit or density is missing. */
export function contentOf(reading: Reading, density: number | null): Figure<'mg/kg'> | null {
  const element = ELEMENT_OF[reading.item];
  if (!element || reading.value === null || reading.unit === null) return null;
  const printed = toMgPerKg(reading, element, density);
  if (!printed) return null;
  if (!reading.form) return printed;
  return figure(printed.value * elementShare(reading), 'mg/kg', element, 'oxide-to-element', { source: 'definition', at: 'atomic weights', mark: 'derived' }, [printed]);
}

function toMgPerKg(reading: Reading, element: Element, density: number | null): Figure<'mg/kg'> | null {
  const { value, unit } = reading;
  const of = reading.form ?? element;
  if (value === null || unit === null) return null;
  const factor = TO_MG_PER_KG[unit];
  if (factor !== undefined) {
    const step = unit === 'lb/acre' ? 'lab-doubling' : 'content-unit';
    const cite: Cite = unit === 'lb/acre' ? { source: 'ohio-soil-values', at: 'ppm × 2 = lb/acre', mark: 'read' } : { source: 'definition', at: 'units of content', mark: 'derived' };
    return figure(value * factor, 'mg/kg', of, step, cite, [figure(value, 'mg/kg', of, 'printed-by-lab', lab(reading))]);
  }
  if (unit === 'meq/100g' || unit === 'cmol/kg') {
    const perCmol = MG_PER_CMOL[element];
    return perCmol ? figure(value * perCmol, 'mg/kg', of, 'charge-to-mass', { source: 'definition', at: 'atomic weights', mark: 'derived' }, []) : null;
  }
  if (unit === 'mg/L' && density !== null && density > 0) {
    return figure(value / density, 'mg/kg', of, 'volume-to-weight', lab(reading), []);
  }
  return null;
}
