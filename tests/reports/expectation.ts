// How an expected answer to a soil report is written down.

/** A value that the report does not settle: it is not compared. */
export const open = Symbol('open');

/** One of several values, each of which a careful reader could give. */
export type Either = { readonly either: readonly unknown[] };
export const either = (...values: readonly unknown[]): Either => ({ either: values });

type Cell<T> = T | Either | typeof open;
type Range = readonly [number | null, number | null];

/**
 * One reading, in the order of a table:
 * line, item, value, unit, basis, method, mg/kg of the element (three digits), lab's rating, lab's range, target,
 * and what else was printed: the end of a span, a limit, or words that asPrinted must hold.
 */
export type Row = readonly [
  line: Cell<number>,
  item: string,
  value: Cell<number | null>,
  unit: Cell<string | null>,
  basis: Cell<'element' | 'oxide' | null>,
  method: Cell<string | null>,
  mgPerKg: Cell<number | null>,
  labRating: Cell<string | null>,
  labRange: Cell<Range | null>,
  target: Cell<'far-below' | 'below' | 'at' | 'above' | null>,
  also?: { readonly to?: number; readonly below?: number; readonly above?: number; readonly words?: string },
];

export type ExpectedSample = {
  readonly name: Cell<string>;
  /** ISO date, and left out where the report has none. */
  readonly taken?: Cell<string | undefined>;
  /** As printed and in metres. */
  readonly depth?: { readonly printed: string; readonly metres: number };
  readonly readings: readonly Row[];
  /** Readings that may also be given, by item. */
  readonly optional?: readonly string[];
  /** Lines that must be listed as unread. */
  readonly unread?: readonly number[];
  /** Titles and headings: listed as unread or passed over, either is right. */
  readonly mayBeUnread?: readonly number[];
};

export type Mistake = {
  readonly line: number;
  readonly column: number;
  /** A word that the notice must offer. */
  readonly offers?: string;
};

export type Expected = {
  /** Left out where there must be no reading at all, however many samples are named. */
  readonly samples?: readonly ExpectedSample[];
  /** Questions that must be asked, as "code about". */
  readonly ask?: readonly string[];
  /**
   * Questions that may be asked. Any other about a unit or a method must not. Where neither list
   * holds anything, nothing at all may be asked, unless `otherQuestions` says so.
   */
  readonly mayAsk?: readonly string[];
  readonly otherQuestions?: boolean;
  /** At least one question, whatever its code. */
  readonly askSomething?: boolean;
  /** Lines with a mistake in them: one error each, and no other error. */
  readonly mistakes?: readonly Mistake[];
  /** Exit codes that are right; 0 when left out, 3 with mistakes. */
  readonly code?: readonly number[];
};
