/**
 * From one extractant to another: only by published lines, only where they agree, only where no scale of the value's
 * own extractant exists. What comes out is a second opinion, never a reading.
 */
import type { Cite } from '../reason/figure.ts';
import type { Notice } from '../reason/notice.ts';
import { notice } from '../reason/notice.ts';
import type { Reading } from '../soil/reading.ts';
import type { Conversion } from '../tables/extractants.ts';
import { CONVERSIONS, CONVERTED_ERROR, MOST_APART, NO_CONVERSION } from '../tables/extractants.ts';
import { MANGANESE_INDEX, NORTH_CAROLINA_RATES } from '../tables/indexes.ts';
import type { Item, Method } from '../tables/items.ts';
import { SCALES } from '../tables/ratings.ts';
import type { Ground } from './content.ts';
import { contentOf, volumeOf } from './content.ts';

export type Converted = { readonly value: number; readonly low: number; readonly high: number; readonly cites: readonly Cite[] };
/** Why not: no value in mg/kg, no method, the same method, a scale of its own, no published line, or lines that part too far. */
export type Refused = { readonly refused: 'no-content' | 'no-method' | 'same-method' | 'own-scale' | 'no-line' | 'sources-differ'; readonly cites: readonly Cite[] };

const refused = (why: Refused['refused'], cites: readonly Cite[] = []): Refused => ({ refused: why, cites });

/** The value of a reading as another extractant would show it, mg/kg, at least 30 % either way; or why it cannot be told. */
export function convertExtract(reading: Reading, to: Method, density: number | null = null, ground: Ground = {}): Converted | Refused {
  const mg = contentOf(reading, density, ground)?.value ?? null;
  if (mg === null) return refused('no-content');
  if (reading.method === null || reading.method === 'unknown') return refused('no-method');
  if (SCALES.some((s) => s.item === reading.item && s.method === reading.method)) return refused('own-scale');
  return convertContent(mg, reading.item, reading.method, to, ground.state ?? null);
}

/** As above for a bare content in mg/kg, whether or not a scale exists. */
export function convertContent(mg: number, item: Item, from: Method, to: Method, state: string | null): Converted | Refused {
  if (from === to) return refused('same-method');
  const barred = NO_CONVERSION.find((n) => n.item === item && n.pair.includes(from) && n.pair.includes(to));
  if (barred) return refused('sources-differ', [barred.cite]);
  const all = CONVERSIONS.filter((c) => c.item === item && ((c.from === from && c.to === to) || (c.from === to && c.to === from)));
  const home = all.filter((c) => state !== null && c.states.includes(state));
  const lines = home.length > 0 ? home : all;
  if (lines.length === 0) return refused('no-line');
  const cites = lines.map((c) => c.cite);
  const values = lines.map((c) => along(c, mg, from)).sort((a, b) => a - b);
  const [least, most] = [values[0]!, values.at(-1)!];
  if (least <= 0 || most / least > MOST_APART.value) return refused('sources-differ', [...cites, MOST_APART.cite]);
  const value = (values[Math.floor((values.length - 1) / 2)]! + values[Math.ceil((values.length - 1) / 2)]!) / 2;
  return { value, low: Math.min(least, value * (1 - CONVERTED_ERROR.part)), high: Math.max(most, value * (1 + CONVERTED_ERROR.part)), cites: [...cites, CONVERTED_ERROR.cite] };
}

/** Along the printed line, or back along it. */
const along = (c: Conversion, mg: number, from: Method): number => (c.from === from ? mg * c.slope + c.intercept : (mg - c.intercept) / c.slope);

/** Values that the lab measured by volume, that nothing rates, and that a density would turn into mg/kg: one note a sample. */
export function densityNotes(rated: readonly { readonly reading: Reading; readonly rating: unknown; readonly mgPerKg: unknown }[]): Notice[] {
  const lost = rated.filter((r) => r.rating === null && r.mgPerKg === null && volumeOf(r.reading) !== null);
  return lost.length === 0 ? [] : [notice('density-missing', 'note', { n: lost.length }, lost[0]!.reading.place)];
}

/** New Jersey's index of available manganese from ppm (Mehlich-3) and pH; deficient under 25, a warning over 100. */
export const manganeseIndex = (ppm: number, ph: number): number => MANGANESE_INDEX.start + MANGANESE_INDEX.slope * ppm + MANGANESE_INDEX.acidity * ph;

/** North Carolina's rate of P2O5 or K2O for an index, by the number of its equation, in that equation's unit; null for a number not held. */
export function northCarolinaRate(number: number, index: number): number | null {
  const e = NORTH_CAROLINA_RATES.find((r) => r.number === number);
  return e ? Math.max(0, e.square * index ** 2 + e.slope * index + e.start) : null;
}
