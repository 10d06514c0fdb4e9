/** What a report was understood to say. */
import type { Place } from '../reason/notice.ts';
import type { Item, Method, ReportUnit } from '../tables/items.ts';
import { ELEMENT_OF } from '../tables/items.ts';
import type { Rating } from '../tables/ratings.ts';
import type { Oxide } from '../units/substance.ts';

export type Range = readonly [low: number | null, high: number | null];

export type Reading = {
  readonly item: Item;
  /** As printed, in `unit`; null where the report gives words only. */
  readonly value: number | null;
  readonly unit: ReportUnit | null;
  readonly asPrinted: string;
  readonly place: Place;
  readonly method: Method | null;
  /** An extract in brackets that the tables do not know: it tells two tests of one item apart. */
  readonly tag?: string;
  /** The oxide in which the value is printed; null for the element and for items that have no such form. */
  readonly form: Oxide | null;
  readonly lab: { readonly rating: Rating | null; readonly range: Range | null };
  /** The scale of an index, where the report itself shows whose it is: an id of INDEX_SCHEMES. */
  readonly scheme?: 'north-carolina.index';
  /** An index printed beside the value; whose scale it is, the country tells. */
  readonly index?: number;
  /** The other end of a printed span. */
  readonly to?: number;
  readonly below?: true;
  readonly above?: true;
};

export type Unread = { readonly line: number; readonly text: string };

export type Sample = {
  /** A leaf analysis: contents of dry leaf. */
  readonly kind?: 'leaf';
  readonly name: string;
  readonly taken?: string;
  readonly depth?: string;
  readonly readings: readonly Reading[];
  readonly unread: readonly Unread[];
};

export const basisOf = (reading: Reading): 'element' | 'oxide' | null =>
  reading.form ? 'oxide' : ELEMENT_OF[reading.item] ? 'element' : null;
