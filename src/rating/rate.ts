/**
 * Each value against the lab's own word, else its printed range, else the published scale of its method.
 * Says always also how far from target it is; a method that nobody names is never guessed.
 */
import type { Cite, Figure } from '../reason/figure.ts';
import { figure } from '../reason/figure.ts';
import type { Reading, Sample } from '../soil/reading.ts';
import { ELEMENT_OF, TO_MG_PER_KG } from '../tables/items.ts';
import type { Band, Rating, Scale, Target } from '../tables/ratings.ts';
import { SCALES, WORD_TARGET } from '../tables/ratings.ts';
import { ELEMENT_SHARE, MG_PER_CMOL } from '../units/substance.ts';
import type { Element } from '../units/substance.ts';

export type Rated = {
  readonly reading: Reading;
  readonly mgPerKg: Figure<'mg/kg'> | null;
  readonly rating: Rating | null;
  readonly target: Target | null;
  /** What decided: the lab's word, its range, a scale, or nothing. */
  readonly by: 'word' | 'range' | 'scale' | 'index' | null;
  readonly cite: Cite | null;
};

export type Heaviness = 'light' | 'medium' | 'heavy';

const lab = (reading: Reading): Cite => ({ source: 'lab', at: `line ${reading.place.line}`, mark: 'read' });

/** Rates every reading of a sample. `country` chooses between scales of one method. */
export function rateSample(sample: Sample, country: string | null): Rated[] {
  const heaviness = heavinessOf(sample);
  const density = sample.readings.find((r) => r.item === 'density' && r.value !== null)?.value ?? null;
  return sample.readings.map((reading) => rate(reading, country, heaviness, density));
}

function rate(reading: Reading, country: string | null, heaviness: Heaviness | null, density: number | null): Rated {
  const mgPerKg = contentOf(reading, density);
  const { rating: word, range } = reading.lab;
  const done = (rating: Rating, target: Target, by: Rated['by'], cite: Cite): Rated => ({ reading, mgPerKg, rating, target, by, cite });
  if (word) return done(word, WORD_TARGET[word], 'word', lab(reading));
  if (reading.value !== null && range) {
    const target = againstRange(reading, range);
    const rating = ({ 'far-below': 'very-low', below: 'low', at: 'optimum', above: 'high' } as const)[target];
    return done(rating, target, 'range', lab(reading));
  }
  const index = againstIndex(reading.unit === 'index' ? reading.value : reading.index ?? null, country);
  if (index) return done(index.rating, index.target, 'index', index.cite);
  const scaled = againstScale(reading, country, heaviness);
  if (scaled) return done(scaled.band.rating, scaled.band.target, 'scale', scaled.scale.cite);
  return { reading, mgPerKg, rating: null, target: null, by: null, cite: null };
}

/** Under the low end is below, under half of it far below. A value known only as "less than" stands below that number. */
function againstRange(reading: Reading, [low, high]: readonly [number | null, number | null]): Target {
  const value = reading.value!;
  if (low !== null && value < low) return value < low / 2 ? 'far-below' : 'below';
  if (high !== null && (reading.to ?? value) > high) return 'above';
  return 'at';
}

/** UK index 0, 1, 2, 3 and over; Ireland 1, 2, 3, 4. */
function againstIndex(value: number | null, country: string | null): { rating: Rating; target: Target; cite: Cite } | null {
  const first = country === 'IE' ? 1 : country === 'GB' ? 0 : null;
  if (value === null || first === null || value < first) return null;
  const target = (['far-below', 'below', 'at'] as const)[Math.floor(value) - first] ?? 'above';
  const rating = ({ 'far-below': 'very-low', below: 'low', at: 'optimum', above: 'high' } as const)[target];
  return { rating, target, cite: { source: country === 'IE' ? 'ireland-index' : 'northern-ireland-2019-81', at: 'index', mark: 'read' } };
}

function againstScale(reading: Reading, country: string | null, heaviness: Heaviness | null): { scale: Scale; band: Band } | null {
  if (reading.value === null) return null;
  const fits = SCALES.filter((s) =>
    s.item === reading.item && (s.method === 'any' || s.method === reading.method) && (!s.soil || s.soil === heaviness)
    && (!s.countries || (country !== null && s.countries.includes(country)) || s.unit === reading.unit));
  const scale = fits.find((s) => s.countries && country !== null && s.countries.includes(country) && inUnit(reading, s) !== null) ?? fits.find((s) => inUnit(reading, s) !== null);
  if (!scale) return null;
  const value = inUnit(reading, scale)!;
  const band = scale.bands.find((b) => b.upTo === null || value <= b.upTo)!;
  return { scale, band };
}

/** The reading in the scale's own unit; null where that would need a fact nobody gave. Scales hold elements. */
function inUnit(reading: Reading, scale: Scale): number | null {
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
function contentOf(reading: Reading, density: number | null): Figure<'mg/kg'> | null {
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

const HEAVY = /\bclay\b|\bton\b|toniger|schwer/i;
const LIGHT = /\bsandy?\b|\bsand\b|sandig|lehmiger sand|leicht/i;

/** Clay %: Austria's orchard guide calls under 10 light and over 30 heavy. */
const CLAY = { light: 10, heavy: 30 } as const;

/** Light, medium or heavy by clay %, else by the texture's own words: "loamy sand" is light, "sandy clay" heavy, "clay loam" heavy. */
export function heavinessOf(sample: Sample): Heaviness | null {
  const clay = sample.readings.find((r) => r.item === 'clay')?.value;
  if (clay != null) return clay < CLAY.light ? 'light' : clay > CLAY.heavy ? 'heavy' : 'medium';
  const texture = sample.readings.find((r) => r.item === 'texture')?.asPrinted;
  if (!texture) return null;
  if (HEAVY.test(texture)) return 'heavy';
  return LIGHT.test(texture) ? 'light' : /loam|lehm|silt|schluff/i.test(texture) ? 'medium' : null;
}
