/** What a bag that grew or lived sets free of its nitrogen, year by year; null for what is all there at once. */
import type { Cite } from '../reason/figure.ts';
import { KIND_RELEASE, MANURE_MINERALS, RELEASE, ROCK_PHOSPHATE } from '../tables/release.ts';
import type { Bag } from './bag.ts';

/** Shares from 0 to 1; of organic nitrogen alone where `of` says so. */
export type Released = {
  readonly of: 'N' | 'organic N';
  readonly year1: readonly [low: number, high: number];
  readonly year2: readonly [low: number, high: number];
  readonly year3: readonly [low: number, high: number];
  /** Of all nitrogen in the first year, ammonia and all, where that is printed beside organic N. */
  readonly ofAll?: { readonly year1: readonly [low: number, high: number]; readonly cite: Cite };
  readonly cite: Cite;
  /** Of the later years, where that is another. */
  readonly laterCite: Cite;
};

const shares = ([low, high]: readonly [number, number]): readonly [number, number] => [low / 100, high / 100];

export function releaseOf(bag: Pick<Bag, 'material' | 'organic'>): Released | null {
  const row = RELEASE.find((r) => bag.material !== null && r.materials.includes(bag.material.id)) ?? KIND_RELEASE.find((r) => r.kind === bag.organic);
  return row ? { of: row.of, ...(row.ofAll ? { ofAll: { year1: shares(row.ofAll.year1), cite: row.ofAll.cite } } : {}), year1: shares(row.year1), year2: shares(row.year2), year3: shares(row.year3), cite: row.cite, laterCite: row.later?.cite ?? row.cite } : null;
}

/**
 * The most of its nitrogen that a bag sets free in such a year after it was spread, the first being 1; null for what is all there at once.
 * A manure whose ammonia nobody tells counts as if all were organic, save where a share of all is printed.
 */
export function mostFreed(bag: Pick<Bag, 'material' | 'organic'>, year: 1 | 2 | 3): { readonly share: number; readonly cite: Cite } | null {
  const released = releaseOf(bag);
  if (!released) return null;
  const { ofAll, cite, laterCite } = released;
  if (year === 1) return ofAll ? { share: ofAll.year1[1], cite: ofAll.cite } : { share: released.year1[1], cite };
  return { share: released[`year${year}`][1], cite: laterCite };
}

type Span = { readonly low: number; readonly high: number; readonly cite: Cite };

/** Of the phosphate and potash of a manure, what its first year sets free; null for what is no manure. */
export function manureMinerals(bag: Pick<Bag, 'organic'>): { readonly P2O5: Span; readonly K2O: Span } | null {
  const of = ({ low, high, cite }: Span): Span => ({ low: low / 100, high: high / 100, cite });
  return bag.organic === 'manure' ? { P2O5: of(MANURE_MINERALS.P2O5), K2O: of(MANURE_MINERALS.K2O) } : null;
}

/** Of the P2O5 on a bag of rock phosphate, what can feed at such a pH: none in alkaline soil. A label that prints 1 to 3 % prints what is available. Null for anything else. */
export function rockPhosphate(bag: Pick<Bag, 'material' | 'grade'>, ph: number): Span | null {
  if (bag.material?.id !== 'rock-phosphate' || bag.grade.P2O5 <= 0) return null;
  const { available, upTo } = ROCK_PHOSPHATE;
  if (ph > upTo.value) return { low: 0, high: 0, cite: upTo.cite };
  const share = (percent: number): number => Math.min(1, percent / 100 / bag.grade.P2O5);
  const printed = bag.grade.P2O5 * 100 <= available.high;
  return { low: printed ? 1 : share(available.low), high: printed ? 1 : share(available.high), cite: available.cite };
}
