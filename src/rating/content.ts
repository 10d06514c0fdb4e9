/**
 * What a printed value means as a content of the soil: mg of the element in a kg, or in a litre where the lab scoops a volume.
 * A conversion that needs a fact nobody gave is not made, or is made on an assumption that stands as a step of its own.
 */
import type { Cite, Figure } from '../reason/figure.ts';
import { figure } from '../reason/figure.ts';
import type { Reading, Sample } from '../soil/reading.ts';
import { NORTH_CAROLINA_INDEX, NORTH_CAROLINA_NAMES } from '../tables/indexes.ts';
import type { ReportUnit } from '../tables/items.ts';
import { ELEMENT_OF, SATURATION_OF } from '../tables/items.ts';
import type { Scale } from '../tables/ratings.ts';
import { LAB_DOUBLING, SLICE } from '../tables/soil-facts.ts';
import type { Element, Substance } from '../units/substance.ts';
import { ELEMENT_SHARE, MG_PER_CMOL } from '../units/substance.ts';
import type { Unit } from '../units/units.ts';
import { convert, INCH, UNITS } from '../units/units.ts';

export const lab = (reading: Reading): Cite => ({ source: 'lab', at: `line ${reading.place.line}`, mark: 'read' });

/** What else is known of the sample: the layer's depth in cm, and the state in small letters, whose index scale may be meant. */
export type Ground = { readonly depthCm?: number | null; readonly state?: string | null };

const weights: Cite = { source: 'definition', at: 'atomic weights', mark: 'derived' };
const units: Cite = { source: 'definition', at: 'units of content', mark: 'derived' };
/** kg/ha for one ppm where neither depth nor density is printed: the layer that lb/acre means. */
const KG_PER_HA = { value: convert(LAB_DOUBLING.times, 'lb/acre', 'kg/ha'), cite: { source: 'medlar', at: 'kg-ha-layer', mark: 'judgement' } satisfies Cite } as const;

/** By charge the ion is meant, whatever form its name has. */
const CHARGES: readonly (ReportUnit | null)[] = ['meq/100g', 'cmol/kg', 'mmol/kg', 'cmol/dm3', 'mmolc/dm3'];
/** "mmol/kg" of these may count atoms: only where the report says that it counts charge is it one. */
const TWICE_CHARGED: readonly Element[] = ['Ca', 'Mg', 'Al'];
const SAYS_CHARGE = /meq|mmol *\(?(?:c|p?\+|ie)/i;
const byCharge = (unit: ReportUnit | null): boolean => CHARGES.includes(unit);
const shareOf = (reading: Reading): number => (reading.form && !byCharge(reading.unit) ? ELEMENT_SHARE[reading.form].share : 1);

/** Far beyond any soil, so that no arithmetic can overflow. The reader's own notices tell of such numbers. */
const MOST = 1e12;
export const isPossible = (value: number | null): boolean => value === null || Math.abs(value) <= MOST;
/** As above for what is divided by; nothing at all, or less, counts as not printed. */
const canDivide = (value: number | null): boolean => value === null || value <= 0 || (isPossible(value) && isPossible(1 / value));

/** The density of the prepared soil, g/cm³; null where the report prints none. */
export const densityOf = (sample: Pick<Sample, 'readings'>): number | null => sample.readings.find((r) => r.item === 'density' && (r.value ?? 0) > 0)?.value ?? null;

const DEPTH = /(\d+(?:[.,]\d+)?)\s*(?:(?:-|–|to|bis|a)\s*(\d+(?:[.,]\d+)?))?\s*(mm|cm|m|ft|in)?\b/i;
const PER_CM: Readonly<Record<string, number>> = { mm: 0.1, cm: 1, m: 100, ft: 12 * INCH * 100, in: INCH * 100 };
/** How thick the sampled layer is in cm: "0-6 in" and "6 in" are both 15.24; null for a depth without its unit. */
export function depthCmOf(depth: string | undefined): number | null {
  const m = depth === undefined ? null : DEPTH.exec(depth.replace(/["″]|inch(?:es)?/gi, ' in'));
  if (!m?.[3]) return null;
  const [first, second] = [m[1]!, m[2]].map((n) => (n === undefined ? null : Number(n.replace(',', '.'))));
  const thick = second == null ? first! : second - first!;
  return thick > 0 ? thick * PER_CM[m[3].toLowerCase()]! : null;
}

/** The reading in the scale's own unit; null where that would need a fact nobody gave. Scales hold elements. */
export function inUnit(reading: Reading, scale: Scale, density: number | null = null, ground: Ground = {}): number | null {
  const unit: string = scale.unit;
  if (reading.value === null) return null;
  // The lab's own unit is compared as it stands: no doubling, depth or density can come in between.
  if (reading.unit === unit) return reading.value * shareOf(reading);
  const element = ELEMENT_OF[reading.item];
  const perCmol = element && MG_PER_CMOL[element];
  const volume = volumeOf(reading, ground)?.value ?? null;
  if (unit === 'mg/L') return volume;
  if (unit === 'mmolc/dm3' || unit === 'cmol/dm3') return volume === null || !perCmol ? null : convert(volume / perCmol, 'cmol/dm3', unit);
  const mg = contentOf(reading, density, ground)?.value ?? null;
  if (mg === null) return null;
  if (unit === 'lb/acre') return mg * LAB_DOUBLING.times;
  if (unit === 'kg/ha') return mg * KG_PER_HA.value;
  if (unit === 'meq/100g' || unit === 'cmol/kg' || unit === 'mmol/kg') return perCmol ? convert(mg / perCmol, 'cmol/kg', unit) : null;
  return Object.hasOwn(UNITS, unit) && UNITS[unit as Unit].kind === 'soil content' ? convert(mg, 'mg/kg', unit as Unit) : null;
}

/** mg of the element in a kg of soil, with each step; null where unit, density or the scale of an index is missing, and for numbers beyond any soil's. */
export function contentOf(reading: Reading, density: number | null, ground: Ground = {}): Figure<'mg/kg'> | null {
  if (!isPossible(reading.value) || !canDivide(density) || !canDivide(ground.depthCm ?? null)) return null;
  const volume = volumeOf(reading, ground);
  if (volume) return density !== null && density > 0 ? figure(volume.value / density, 'mg/kg', volume.of, 'volume-to-weight', lab(reading), [volume]) : null;
  const element = ELEMENT_OF[reading.item];
  const weighed = element ? byWeight(reading, element, density, ground) : null;
  return weighed && element ? asElement(weighed, reading, element) : null;
}

/**
 * mg of the element in a litre of soil as the lab scooped it; null for a value by weight, and for a saturated paste, where the litre is one
 * of the water pressed out. An index counts only where its scale is known.
 */
export function volumeOf(reading: Reading, ground: Ground = {}): Figure<'mg/L'> | null {
  const { value, unit } = reading;
  const element = ELEMENT_OF[reading.item];
  if (!element || value === null || !isPossible(value) || unit === null || reading.method === 'paste') return null;
  if (unit === 'mg/L') return asElement(figure(value, unit, reading.form ?? element, 'printed-by-lab', lab(reading)), reading, element);
  if (unit === 'g/dm3') return asElement(figure(value * 1000, 'mg/L', reading.form ?? element, 'content-unit', units, [figure(value, unit, reading.form ?? element, 'printed-by-lab', lab(reading))]), reading, element);
  if (unit === 'mmolc/dm3' || unit === 'cmol/dm3') {
    const perCmol = MG_PER_CMOL[element];
    return perCmol ? figure(convert(value, unit, 'cmol/dm3') * perCmol, 'mg/L', element, 'charge-to-mass', weights, [figure(value, unit, element, 'printed-by-lab', lab(reading))]) : null;
  }
  const scale = unit === 'index' && NORTH_CAROLINA_NAMES.includes(ground.state ?? '') ? NORTH_CAROLINA_INDEX[reading.item] : undefined;
  return scale ? figure(value * scale.mgPerL, 'mg/L', element, 'index-to-content', scale.cite, [figure(value, 'index', element, 'printed-by-lab', lab(reading))]) : null;
}

/** Which fact would make a content of the reading; null where there is one already, or no fact would help. */
export function lacks(reading: Reading, density: number | null, ground: Ground = {}): 'unit' | 'density' | 'depth' | null {
  if (!ELEMENT_OF[reading.item] || reading.value === null || contentOf(reading, density, ground)) return null;
  if (reading.unit === null) return 'unit';
  if (volumeOf(reading, ground)) return 'density';
  return reading.unit === 'kg/ha' ? 'depth' : null;
}

function byWeight(reading: Reading, element: Element, density: number | null, ground: Ground): Figure<'mg/kg'> | null {
  const { value, unit } = reading;
  if (value === null || unit === null) return null;
  const of: Substance = reading.form && !byCharge(unit) ? reading.form : element;
  const printed = <U extends Unit>(u: U): Figure<U> => figure(value, u, of, 'printed-by-lab', lab(reading));
  switch (unit) {
    case 'mg/kg': return printed(unit);
    case 'ppm': case 'mg/100g': case 'g/kg': return figure(convert(value, unit, 'mg/kg'), 'mg/kg', of, 'content-unit', units, [printed(unit)]);
    // A percentage of a cation may be its share of the exchange sites.
    case '%': return SATURATION_OF[reading.item] ? null : figure(value * 10_000, 'mg/kg', of, 'content-unit', units, [printed(unit)]);
    case 'lb/acre': return figure(value / LAB_DOUBLING.times, 'mg/kg', of, 'lab-doubling', LAB_DOUBLING.cite, [printed(unit)]);
    case 'kg/ha': return overArea(reading, printed(unit), density, ground.depthCm ?? null);
    case 'meq/100g': case 'cmol/kg': case 'mmol/kg': {
      const perCmol = MG_PER_CMOL[element];
      if (!perCmol || (unit === 'mmol/kg' && TWICE_CHARGED.includes(element) && !SAYS_CHARGE.test(reading.asPrinted))) return null;
      return figure(convert(value, unit, 'cmol/kg') * perCmol, 'mg/kg', of, 'charge-to-mass', weights, [printed(unit)]);
    }
    default: return null;
  }
}

/** kg/ha is a stock: content × depth in cm × density × 0.1. Nitrate is summed over layers of any depth, so without one it stays unknown. */
function overArea(reading: Reading, printed: Figure<'kg/ha'>, density: number | null, depthCm: number | null): Figure<'mg/kg'> | null {
  if (depthCm === null) return ELEMENT_OF[reading.item] === 'N' ? null : figure(printed.value / KG_PER_HA.value, 'mg/kg', printed.of, 'layer-assumed', KG_PER_HA.cite, [printed]);
  const weight = density !== null && density > 0
    ? figure(density, 'g/mL', 'soil', 'printed-by-lab', { source: 'lab', at: 'density', mark: 'read' })
    : figure(SLICE.density, 'g/mL', 'soil', 'density-assumed', SLICE.cite);
  const depth = figure(depthCm / 100, 'm', 'soil', 'depth', { source: 'lab', at: 'depth', mark: 'read' });
  return figure(printed.value / (depthCm * weight.value * 0.1), 'mg/kg', printed.of, 'area-to-content', { source: 'definition', at: 'area × depth × density', mark: 'derived' }, [printed, depth, weight]);
}

function asElement<U extends 'mg/kg' | 'mg/L'>(printed: Figure<U>, reading: Reading, element: Element): Figure<U> {
  return reading.form && !byCharge(reading.unit) ? figure(printed.value * shareOf(reading), printed.unit, element, 'oxide-to-element', weights, [printed]) : printed;
}
