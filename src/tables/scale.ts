/**
 * What a published scale is: one upper edge a class, in the unit printed, by extractant, place, soil and crop.
 * `upTo` is the upper edge of a class, the last one open; a value on an edge belongs to the lower class,
 * and a value in a gap between printed bands falls on the side away from the target.
 */
import type { Cite } from '../reason/figure.ts';
import type { Oxide } from '../units/substance.ts';
import type { Item, Method } from './items.ts';

export type Rating = 'very-low' | 'low' | 'medium' | 'optimum' | 'high' | 'very-high';
export type Target = 'far-below' | 'below' | 'at' | 'above';
export const RATINGS: readonly Rating[] = ['very-low', 'low', 'medium', 'optimum', 'high', 'very-high'];

/** Soils as scales part them; a sandy clay loam counts with the clay loams. */
export type Kind = 'sand' | 'loamy sand' | 'sandy loam' | 'loam' | 'silt loam' | 'clay loam' | 'clay' | 'organic';

export type Band = { readonly upTo: number | null; readonly rating: Rating; readonly target: Target; readonly name?: string };

/** Where a scale or a lab's vocabulary is at home; without states, in all of its countries. */
export type Home = { readonly countries?: readonly string[]; readonly states?: readonly string[] };

export type Scale = Home & {
  readonly id: string;
  readonly item: Item;
  /** `any` where the number does not depend on it, or the publication names none. */
  readonly method: Method | 'any';
  /** `MnAI` is Rutgers' manganese activity index, of manganese in ppm and pH. */
  readonly unit: 'ppm' | 'mg/kg' | 'lb/acre' | 'mg/L' | 'mg/100g' | 'kg/ha' | 'meq/100g' | 'mmolc/dm3' | 'pH' | '%' | 'dS/m' | 'MnAI';
  /** The oxide that the edges are printed in; none: the element. */
  readonly form?: Oxide;
  /** Whose crops: orchards and gardens with fruit lead, a field table is used in its own region alone, and one crop's table only where nothing else grows. None: general. */
  readonly serves?: 'fruit' | 'general' | 'field' | { readonly only: string };
  /** A part of the state that the grower must name. */
  readonly within?: string;
  /** Never used outside its home, since the publication names no extractant. */
  readonly homeOnly?: true;
  readonly soil?: 'light' | 'medium' | 'heavy';
  readonly kinds?: readonly Kind[];
  /** Exchange capacity in meq/100 g, over the first number and up to the second. */
  readonly cec?: readonly [over: number, upTo: number];
  readonly bands: readonly Band[];
  readonly cite: Cite;
};

export const below = (upTo: number, rating: Rating = 'low'): Band => ({ upTo, rating, target: rating === 'very-low' ? 'far-below' : 'below' });
export const at = (upTo: number | null, rating: Rating = 'optimum'): Band => ({ upTo, rating, target: 'at' });
export const above = (upTo: number | null, rating: Rating = 'high'): Band => ({ upTo, rating, target: 'above' });
export const index = (name: string, band: Band): Band => ({ ...band, name });

/** The largest value that lies under an edge which the publication prints as "from" or "less than". */
export const under = (edge: number): number => edge - 1e-9 * Math.max(1, edge);

/** One printed range: under its low end is below, under half of that far below; without a high end, nothing is too much. */
export const range = (low: number, high: number | null): readonly Band[] =>
  [below(under(low / 2), 'very-low'), below(under(low)), ...(high === null ? [at(null)] : [at(high), above(null)])];

/** A range without the step at its half, which means nothing for a pH or a share. */
export const between = (low: number, high: number): readonly Band[] => [below(under(low)), at(high), above(null)];

/** A printed highest value. */
export const most = (high: number): readonly Band[] => [at(under(high)), above(null)];

/** What a class's name says of the target where its publication names none. */
export const WORD_TARGET: Readonly<Record<Rating, Target>> = {
  'very-low': 'far-below', low: 'below', medium: 'below', optimum: 'at', high: 'above', 'very-high': 'above',
};

/** Classes by name, each with its upper edge; the last is open. */
export const classes = (...list: readonly (readonly [rating: Rating, upTo?: number])[]): readonly Band[] =>
  list.map(([rating, upTo]) => ({ upTo: upTo ?? null, rating, target: WORD_TARGET[rating] }));
