/**
 * The diary: what was done, a line each in `diary.csv` (RFC 4180). A line that cannot be read stays in the file
 * and is told; the others count.
 */
import type { Notice, Place } from '../reason/notice.ts';
import { notice, placeIn } from '../reason/notice.ts';
import { suggest } from '../reason/suggest.ts';
import type { DateOrder, Day } from '../units/date.ts';
import { dateOrderIn, dateOrderOf, isoDate } from '../units/date.ts';
import type { Unclear } from './measure.ts';
import { lengthOf, massOf } from './measure.ts';

/** `withdrawn` takes an earlier entry back: it has all that stood there, and its note begins with what that was. */
export const WHATS = ['fed', 'limed', 'sulphured', 'shoots', 'crop', 'note', 'withdrawn'] as const;
export type What = (typeof WHATS)[number];

/** One thing done or measured. `trees` are names of trees or zones; `g` (grams) and `m` (metres, shoots) are for one plant, null where nobody measured. */
export type Entry = {
  readonly date: Day;
  readonly trees: readonly string[];
  readonly what: What;
  readonly bag: string | null;
  readonly g: number | null;
  readonly m: number | null;
  /** As typed, for one plant: "12 oz", "7 in", "light". */
  readonly amount: string | null;
  readonly note: string;
  /** Where it stands in the file, from 1; 0 before it is written. */
  readonly line: number;
};
export type Diary = { readonly entries: readonly Entry[]; readonly notices: readonly Notice[] };

const COLUMNS = ['date', 'trees', 'what', 'bag', 'amount', 'note'] as const;
const MOST = 2_000_000;

/** How a diary is laid out: spreadsheets move columns, add some, and part them by semicolons where the comma is decimal. */
export type Shape = { readonly separator: ',' | ';'; readonly columns: readonly string[]; readonly newline: string };
const PLAIN: Shape = { separator: ',', columns: COLUMNS, newline: '\n' };

// Reading -------------------------------------------------------------------------------------------------------

type Cell = { readonly text: string; readonly start: number; readonly end: number };
/** `openQuote`: where a quotation mark stands that nothing closes. */
type Row = { readonly cells: readonly Cell[]; readonly start: number; readonly next: number; readonly openQuote?: number };

/** One record of RFC 4180, from `start` on. A quotation mark inside a cell that does not begin with one is plain text. */
function rowAt(text: string, start: number, separator: string): Row {
  const cells: Cell[] = [];
  for (let at = start; ;) {
    const from = at;
    let value = '';
    if (text[at] === '"') {
      for (at++; ;) {
        const quote = text.indexOf('"', at);
        if (quote < 0) return { cells, start, next: text.length, openQuote: from };
        value += text.slice(at, quote);
        at = quote + 1;
        if (text[at] !== '"') break;
        value += '"';
        at++;
      }
      if (at < text.length && text[at] !== separator && text[at] !== '\r' && text[at] !== '\n') return { cells, start, next: at, openQuote: from };
    } else {
      while (at < text.length && text[at] !== separator && text[at] !== '\r' && text[at] !== '\n') at++;
      value = text.slice(from, at);
    }
    cells.push({ text: value, start: from, end: at });
    if (text[at] !== separator) return { cells, start, next: at + (text.startsWith('\r\n', at) ? 2 : 1) };
    at++;
  }
}

/** Where each line of the file begins. */
function lineStarts(text: string): number[] {
  const starts = [0];
  for (let i = 0; i < text.length; i++) if (text[i] === '\n' || (text[i] === '\r' && text[i + 1] !== '\n')) starts.push(i + 1);
  return starts;
}

const isBlank = (row: Row): boolean => row.openQuote === undefined && row.cells.every((c) => c.text.trim() === '');

/** A spreadsheet runs what begins with one of these as a formula; an apostrophe before it keeps it text. */
const FORMULA = /^'*[=+\-@\t\r]/;
const guarded = (text: string): string => (FORMULA.test(text) ? `'${text}` : text);
const unguarded = (text: string): string => (text.startsWith("'") && FORMULA.test(text) ? text.slice(1) : text);

/** The layout by the first line that is not blank; null where it does not name the six columns. */
function shapeOf(text: string): { shape: Shape | null; head: Row } {
  const newline = /\r\n|\n|\r/.exec(text)?.[0] ?? '\n';
  const heads = ([',', ';'] as const).map((separator) => {
    let head = rowAt(text, 0, separator);
    while (isBlank(head) && head.next < text.length) head = rowAt(text, head.next, separator);
    return { head, shape: { separator, columns: head.cells.map((c) => unguarded(c.text).trim().toLowerCase()), newline } };
  });
  const fits = heads.find(({ shape }) => COLUMNS.every((c) => shape.columns.includes(c)));
  return fits ?? { head: heads[0]!.head, shape: null };
}

const withoutMark = (text: string): string => text.replace(/^\ufeff/, '');

/** Reads a diary: what stands and was not taken back. `country` tells how a spreadsheet there writes 3/10/2026. An error means that nothing of it could be read; a warning, that one line could not. */
export function readDiary(source: string, file: string, country: string | null = null): Diary {
  const { entries, notices } = everyEntry(source, file, country);
  const { standing, strays } = withoutWithdrawn(entries);
  return { entries: standing, notices: [...notices, ...strays.map((e) => notice('diary-withdrawn', 'warning', { n: e.line }, { file, line: e.line, column: 1, length: 1, source: '' }))] };
}

/** Each `withdrawn` takes the last entry before it that is the same; `strays` find none. */
function withoutWithdrawn(entries: readonly Entry[]): { standing: Entry[]; strays: Entry[] } {
  const standing: Entry[] = [];
  const strays: Entry[] = [];
  for (const e of entries) {
    if (e.what !== 'withdrawn') {
      standing.push(e);
      continue;
    }
    const what = /^\w+/.exec(e.note)?.[0];
    const at = standing.findLastIndex((x) => x.what === what && x.date === e.date && x.bag === e.bag && x.amount === e.amount && x.trees.join(';') === e.trees.join(';'));
    if (at < 0) strays.push(e);
    else standing.splice(at, 1);
  }
  return { standing, strays };
}

/** The entry that takes another back. */
export const withdrawalOf = (e: Entry, today: Day): Entry => ({ ...e, what: 'withdrawn', g: null, m: null, note: `${e.what}, ${today}${e.note === '' ? '' : `: ${e.note}`}`, line: 0 });

/** What stands, and what takes it back. */
function everyEntry(source: string, file: string, country: string | null = null): Diary {
  const text = withoutMark(source);
  if (text.trim() === '') return { entries: [], notices: [] };
  if (text.includes('\0')) return { entries: [], notices: [notice('not-text', 'error', { file })] };
  if (text.length > MOST) return { entries: [], notices: [notice('report-too-large', 'error', { file, size: text.length, most: MOST })] };
  const starts = lineStarts(text);
  let line = 1;
  /** The line that holds an offset; offsets rise from row to row, so the search goes on from the last. */
  const lineOf = (offset: number): number => {
    while (line > 1 && starts[line - 1]! > offset) line--;
    while (line < starts.length && starts[line]! <= offset) line++;
    return line;
  };
  const place = (start: number, end: number): Place => {
    const n = lineOf(start);
    const from = starts[n - 1]!;
    const printed = text.slice(from, starts[n] ?? text.length).replace(/[\r\n]+$/, '');
    return placeIn(file, n, printed, start - from, Math.min(end - from, printed.length));
  };
  const { shape, head } = shapeOf(text);
  if (!shape) return { entries: [], notices: [notice('diary-head', 'error', { file, columns: COLUMNS.join(',') }, place(head.start, head.start + 1))] };

  const order = dateOrderOf(text, dateOrderIn(country));
  const entries: Entry[] = [];
  const notices: Notice[] = [];
  for (let at = head.next; at < text.length;) {
    const row = rowAt(text, at, shape.separator);
    const first = lineOf(row.start);
    at = row.next;
    if (isBlank(row)) continue;
    const read = entryOf(row, shape, first, place, order);
    if ('entry' in read) entries.push(read.entry);
    else {
      notices.push(...read.notices);
      // A quotation mark in the wrong place may have swallowed good lines: only the first is given up.
      at = Math.min(row.openQuote === undefined ? at : text.length, starts[first] ?? text.length);
    }
  }
  return { entries, notices };
}

function entryOf(row: Row, shape: Shape, line: number, place: (start: number, end: number) => Place, order: DateOrder): { entry: Entry } | { notices: Notice[] } {
  const whole = (): Place => place(row.start, row.cells.at(-1)?.end ?? row.start + 1);
  if (row.openQuote !== undefined) return { notices: [notice('diary-quote', 'warning', {}, place(row.openQuote, row.openQuote + 1))] };
  if (row.cells.length !== shape.columns.length) {
    return { notices: [notice('diary-fields', 'warning', { found: row.cells.length, expected: shape.columns.length, columns: shape.columns.join(shape.separator) }, whole())] };
  }
  const notices: Notice[] = [];
  const cell = (name: (typeof COLUMNS)[number]): Cell => row.cells[shape.columns.indexOf(name)]!;
  const said = (name: (typeof COLUMNS)[number]): string => unguarded(cell(name).text).trim();
  const wrong = (name: (typeof COLUMNS)[number], code: Notice['code'], facts: Notice['facts'] = {}): void => {
    notices.push(notice(code, 'warning', { read: said(name), ...facts }, place(cell(name).start, cell(name).end)));
  };
  const date = dayOf(said('date'), order);
  if (date === null) wrong('date', 'diary-date');
  const what = whatOf(said('what'));
  if (what === null) wrong('what', 'diary-what', { guess: suggest(said('what'), WHATS).join(', '), known: WHATS.join(', ') });
  const trees = namesOf(unguarded(cell('trees').text));
  if (trees.length === 0 && what !== null && what !== 'note' && what !== 'withdrawn') wrong('trees', 'diary-trees');
  const amount = said('amount');
  const measured = amount === '' || what === null ? UNMEASURED : amountOf(what, amount);
  if (measured === null) wrong('amount', 'diary-amount');
  else if ('unclear' in measured) wrong('amount', 'number-two-ways', twoWays(measured));
  else if (what !== null && isTooMuch(what, measured)) wrong('amount', 'diary-too-much', { what, most: MOST_SHOWN[what] });
  if (notices.length > 0 || date === null || what === null || measured === null || 'unclear' in measured) return { notices };
  return { entry: { date, trees, what, bag: said('bag') || null, ...measured, amount: amount || null, note: unguarded(cell('note').text), line } };
}

const whatOf = (text: string): What | null => WHATS.find((w) => w === text.toLowerCase().replace('sulfur', 'sulphur')) ?? null;

/** A day as diaries write it; null also for a month alone, and for 4/10/2026 where nothing tells which is the month. */
function dayOf(text: string, order: DateOrder): Day | null {
  const slashed = SLASHED.exec(text);
  if (slashed) return order === null ? null : isoDate(order === 'month first' ? `${slashed[3]!}-${slashed[1]!}-${slashed[2]!}` : `${slashed[3]!}-${slashed[2]!}-${slashed[1]!}`);
  return /^\p{L}/u.test(text) && !/\d\D+\d/.test(text) ? null : isoDate(text);
}

const SLASHED = /^(\d{1,2})\/(\d{1,2})\/(\d{4})$/;

/** Names parted by semicolons; one that holds a semicolon stands in quotation marks. */
function namesOf(cell: string): string[] {
  return [...cell.matchAll(/\s*(?:"((?:[^"]|"")*)"\s*(?=;|$)|([^;]*))(?:;|$)/g)]
    .flatMap(([, quoted, plain]) => (quoted !== undefined ? [quoted.replaceAll('""', '"')] : plain!.trim() ? [plain!.trim()] : []));
}

// Amounts -------------------------------------------------------------------------------------------------------

export type Amount = { readonly g: number | null; readonly m: number | null };
const UNMEASURED: Amount = { g: null, m: null };
/** Measured, but not by weight. */
const LOOSE = /^(?:an?|half an?|\d[\d.,/ ]*) *(?:cups?|tablespoons?|tbsps?|teaspoons?|tsps?|handfuls?|scoops?|shovels?|ml|l|lit(?:er|re)s?|gal(?:lon)?s?)$/i;

/** "12 oz", "1 lb 4 oz", "7 in", "light" → grams or metres for one plant; null where it is no amount of that kind. */
export function amountOf(what: What, text: string): Amount | Unclear | null {
  const t = text.trim().replace(/\s+/g, ' ');
  if (what === 'note' || what === 'withdrawn') return UNMEASURED;
  const none = /^(?:none|nothing)$/i.test(t) || (what === 'crop' && t === '0');
  if (what === 'shoots') {
    const m = none ? 0 : lengthOf(t);
    return typeof m === 'number' ? finite({ g: null, m }) : m;
  }
  if (none) return { g: 0, m: null };
  if (what === 'crop' && /^(?:light|heavy)$/i.test(t)) return UNMEASURED;
  const both = /^(\d\S* *(?:lbs?|pounds?)\.?),? +(?:and +)?(\d.*(?:oz|ounces?)\.?)$/i.exec(t);
  const parts = (both ? [both[1]!, both[2]!] : [t]).map(massOf);
  const odd = parts.find((p) => typeof p !== 'number');
  if (odd !== undefined) return odd === null && what !== 'crop' && LOOSE.test(t) ? UNMEASURED : odd;
  return finite({ g: parts.reduce<number>((sum, p) => sum + (p as number), 0), m: null });
}

/** More than these, in grams or metres, no plant gets or gives: a slip of the unit, or the sum of several plants. */
const MOST_A_PLANT: Readonly<Record<What, number>> = { fed: 20_000, limed: 60_000, sulphured: 20_000, shoots: 4, crop: 500_000, note: Infinity, withdrawn: Infinity };
export const MOST_SHOWN: Readonly<Record<What, string>> = { fed: '20 kg (44 lb)', limed: '60 kg (132 lb)', sulphured: '20 kg (44 lb)', shoots: '4 m (13 ft)', crop: '500 kg (1100 lb)', note: '', withdrawn: '' };
export const isTooMuch = (what: What, { g, m }: Amount): boolean => (g ?? m ?? 0) > MOST_A_PLANT[what];

const finite = (a: Amount): Amount | null => (Number.isFinite(a.g ?? a.m) ? a : null);

/** The facts of the notice `number-two-ways`. */
export const twoWays = ({ unclear }: Unclear): { read: string; dot: string; plain: string } => ({ read: unclear, dot: unclear.replace(',', '.'), plain: unclear.replace(',', '') });

// Writing -------------------------------------------------------------------------------------------------------

/** One line of the diary, with its line end. It is laid out as the file's first line says. */
export function writeEntry(entry: Entry, shape: Shape = PLAIN): string {
  const quoted = (text: string, must: RegExp): string => (must.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
  const trees = entry.trees.map((t) => quoted(t, /^$|^\s|\s$|[";]/)).join('; ');
  const values: Readonly<Record<string, string>> = { date: entry.date, trees, what: entry.what, bag: entry.bag ?? '', amount: entry.amount ?? '', note: entry.note };
  const seen = new Set<string>();
  const cells = shape.columns.map((name) => {
    // A second column of the same name is somebody's own.
    const value = !seen.has(name) && Object.hasOwn(values, name) ? values[name]! : '';
    seen.add(name);
    return quoted(guarded(value), /[",;\r\n]|^\s|\s$/);
  });
  return `${cells.join(shape.separator)}${shape.newline}`;
}

/**
 * What to add at the end of a diary, so that all that stands there stays as it is: a first line where there is none,
 * a line end where the last line lacks it, and a line for each entry. A notice where the added lines would not be read back.
 */
export function addition(source: string, entries: readonly Entry[], file: string): { text: string; first: number } | { notice: Notice } {
  const before = everyEntry(source, file);
  const stop = before.notices.find((n) => n.severity === 'error');
  if (stop) return { notice: stop };
  const blank = withoutMark(source).trim() === '';
  const shape = (blank ? null : shapeOf(withoutMark(source)).shape) ?? PLAIN;
  const gap = source === '' || /[\r\n]$/.test(source) || source === '\ufeff' ? '' : shape.newline;
  const text = `${gap}${blank ? `${COLUMNS.join(',')}\n` : ''}${entries.map((e) => writeEntry(e, shape)).join('')}`;
  const after = everyEntry(source + text, file).entries.slice(before.entries.length);
  const same = after.length === entries.length && after.every((e, i) => writeEntry(e) === writeEntry(entries[i]!));
  return same ? { text, first: after[0]?.line ?? 0 } : { notice: notice('diary-end', 'error', { file }) };
}
