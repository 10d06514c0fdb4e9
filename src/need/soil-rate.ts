/** Published rates of phosphate, potash and magnesia by the class of the soil, in g/m²; and the soil's value as a figure of its own. */
import type { Cite, Figure } from '../reason/figure.ts';
import { figure } from '../reason/figure.ts';
import type { Item } from '../tables/items.ts';
import type { Target } from '../tables/ratings.ts';
import type { SoilRate } from '../tables/soil-rates.ts';
import { SOIL_RATES } from '../tables/soil-rates.ts';
import { convert } from '../units/units.ts';
import type { Facts } from './facts.ts';
import { ratedOf } from './facts.ts';

export type ClassRate = { readonly low: number; readonly high: number; readonly cite: Cite };

const inClass = (rate: SoilRate, target: Target): ClassRate | null => {
  // A table without a lowest class speaks of all that is below.
  const found = rate.rates.find((c) => c.target === target) ?? (target === 'far-below' ? rate.rates.find((c) => c.target === 'below') : undefined);
  return found ? { low: convert(found.low, rate.unit, 'g/m2'), high: convert(found.high, rate.unit, 'g/m2'), cite: rate.cite } : null;
};

/** One class of one table, by its id. */
export function classRate(id: string, target: Target): ClassRate {
  const rate = SOIL_RATES.find((r) => r.id === id);
  const found = rate && inClass(rate, target);
  if (!found) throw new RangeError(`no class ${target} in ${id}`);
  return found;
}

/** The class in the table of the grower's own state or country; null where none is printed there for soils. */
export function ownRate(f: Facts, nutrient: SoilRate['nutrient'], stage: SoilRate['stage'], target: Target): ClassRate | null {
  const own = SOIL_RATES.find((r) => r.by === 'soil' && r.nutrient === nutrient && r.stage === stage && r.crops.includes(f.crop) && r.region === f.where.region);
  return own ? inClass(own, target) : null;
}

const SOIL_STEP = { 'far-below': 'soil-far-below', below: 'soil-below', at: 'soil-at', above: 'soil-above' } as const;

/** What the soil holds and how that rates, for the reasons; nothing where the report has words alone. */
export function soilFigures(f: Facts, item: Item): Figure[] {
  const rated = ratedOf(f, item);
  if (!rated?.mgPerKg || rated.target === null) return [];
  const { value, unit, of } = rated.mgPerKg;
  return [figure(value, unit, of, SOIL_STEP[rated.target], rated.cite ?? rated.mgPerKg.cite, [rated.mgPerKg])];
}
