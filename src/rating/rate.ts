/**
 * Each value against the lab's own word, else its printed range, else the published scale of its method.
 * Says always also how far from target it is; a method that nobody names is never guessed.
 */
import type { Cite, Figure } from '../reason/figure.ts';
import type { Reading, Sample } from '../soil/reading.ts';
import type { Band, Rating, Scale, Target } from '../tables/ratings.ts';
import { SCALES, WORD_TARGET } from '../tables/ratings.ts';
import { contentOf, inUnit, lab } from './content.ts';
import type { Heaviness } from './texture.ts';
import { heavinessOf } from './texture.ts';

export type Rated = {
  readonly reading: Reading;
  readonly mgPerKg: Figure<'mg/kg'> | null;
  readonly rating: Rating | null;
  readonly target: Target | null;
  /** What decided: the lab's word, its range, a scale, or nothing. */
  readonly by: 'word' | 'range' | 'scale' | 'index' | null;
  readonly cite: Cite | null;
};

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
