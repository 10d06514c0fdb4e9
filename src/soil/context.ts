/** What the lines above a line told of it. */
import type { Item, Method, ReportUnit } from '../tables/items.ts';
import type { DateOrder } from '../units/date.ts';
import type { Style } from './number.ts';
import type { Look } from './token.ts';
import type { Words } from './vocabulary.ts';

/** What headings said about the lines below them. */
export type Context = {
  readonly file: string;
  readonly words: Words;
  /** How 3/11/2025 is meant, where the report's language or the country says. */
  readonly dates: DateOrder;
  readonly look: Look;
  readonly style: Style;
  readonly method: Method | null;
  /** Methods that a title told item by item. */
  readonly methods: ReadonlyMap<Item, Method>;
  readonly unit: ReportUnit | null;
  readonly saturation: boolean;
  /** The ground that amounts without any are for. */
  readonly ground: string | null;
  /** A German report: a letter A to E behind a value is its class. */
  readonly german: boolean;
  /** The lowest index of a scale that the report names: 0 in the UK, 1 in Ireland. */
  readonly indexFrom: 0 | 1 | null;
  /** A heading says that an index stands in brackets behind each value. */
  readonly indexBeside: boolean;
  /** Dry leaf: contents in %, never shares of exchange sites. */
  readonly leaf: boolean;
};
