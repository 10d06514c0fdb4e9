/** The tables of names, units, methods and rating words, compiled once into matchers. */
import type { Method, ReportUnit } from '../tables/items.ts';
import { METHODS } from '../tables/items.ts';
import type { Name } from '../tables/names.ts';
import { NAMES } from '../tables/names.ts';
import { RATING_WORDS } from '../tables/rating-words.ts';
import { METHOD_PATTERNS, UNIT_PATTERNS } from '../tables/report-patterns.ts';
import type { Rating } from '../tables/ratings.ts';

export type Span = { readonly start: number; readonly end: number };
export type Found<T> = Span & { readonly is: T };

/** Lines lose their accents before they are matched, and so do the names. */
const unaccented = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '');

/** Lower case that keeps every offset: a letter whose small form is longer stays as it is. */
function lower(text: string): string {
  const small = text.toLowerCase();
  return small.length === text.length ? small : text.replace(/[A-Z]/g, (c) => c.toLowerCase());
}

/** Words by their first two letters, the longest first: a matcher that costs nothing to make. */
type Index<T> = ReadonlyMap<string, readonly { readonly text: string; readonly is: T }[]>;

function indexed<T>(entries: readonly (readonly [text: string, is: T])[]): Index<T> {
  const index = new Map<string, { text: string; is: T }[]>();
  for (const [text, is] of entries) {
    const key = text.slice(0, 2);
    index.set(key, [...(index.get(key) ?? []), { text, is }]);
  }
  for (const list of index.values()) list.sort((x, y) => y.text.length - x.text.length);
  return index;
}

function isWordAt(text: string, i: number): boolean {
  const code = text.charCodeAt(i) | 32;
  return (code >= 97 && code <= 122) || (code >= 48 && code <= 57);
}

/** Where a known word that starts at `i` ends, several blanks counting as one; -1 where it does not stand there. */
function endOf(word: string, text: string, i: number): number {
  let at = i;
  for (let k = 0; k < word.length; k++) {
    if (text[at] !== word[k]) return -1;
    at++;
    if (word[k] === ' ') while (text[at] === ' ') at++;
  }
  return isWordAt(text, at - 1) && isWordAt(text, at) ? -1 : at;
}

function longest<T>(list: readonly { readonly text: string; readonly is: T }[] | undefined, text: string, i: number, accept: (start: number, end: number) => boolean): Found<T> | null {
  if (!list) return null;
  for (const { text: word, is } of list) {
    const end = endOf(word, text, i);
    if (end >= 0 && accept(i, end)) return { start: i, end, is };
  }
  return null;
}

/** All known words as whole words, left to right, the longest at each place. */
function findWords<T>(index: Index<T>, text: string, accept: (start: number, end: number) => boolean = () => true): Found<T>[] {
  const found: Found<T>[] = [];
  for (let i = 0; i < text.length; i++) {
    if (isWordAt(text, i) && isWordAt(text, i - 1)) continue;
    const hit = longest(index.get(text.slice(i, i + 2)), text, i, accept) ?? longest(index.get(text[i]!), text, i, accept);
    if (!hit) continue;
    found.push(hit);
    i = hit.end - 1;
  }
  return found;
}

const named = NAMES.filter((n) => !n.exact).map((n) => ({ ...n, name: unaccented(n.name) }));
const NAME_INDEX = indexed(named.map((n) => [n.name, n] as const));
const SYMBOL_INDEX = indexed(NAMES.filter((n) => n.exact).map((n) => [n.name, n] as const));
const RATING_INDEX = indexed(RATING_WORDS.map(([w, r]) => [unaccented(w), r] as const));

/** Patterns by the letter they start with, each compiled when it is first tried. */
type Patterns<T> = ReadonlyMap<string, readonly { readonly is: T; readonly at: (text: string, i: number) => number }[]>;

function byStart<T>(list: readonly (readonly [is: T, starts: string, pattern: string])[]): Patterns<T> {
  const patterns = new Map<string, { is: T; at: (text: string, i: number) => number }[]>();
  for (const [is, starts, pattern] of list) {
    let compiled: RegExp | null = null;
    const at = (text: string, i: number): number => {
      compiled ??= new RegExp(pattern, 'y');
      compiled.lastIndex = i;
      return compiled.test(text) ? compiled.lastIndex : -1;
    };
    for (const letter of starts) patterns.set(letter, [...(patterns.get(letter) ?? []), { is, at }]);
  }
  return patterns;
}

const UNITS_BY_START = byStart(UNIT_PATTERNS);
const METHODS_BY_START = byStart(METHOD_PATTERNS);

const PIECE_START = /(?:^ *|[,;|(:]\s*|  |\b(?:soil|exch(?:angeable|\.)?|avail(?:able|\.)?|extractable|colwell|olsen|bray|morgan's|dtpa) )$/i;
const AFTER_SYMBOL = /^\s*(?:$|[:;=|(),[-]|index\b|[<>]?\s*[\d.])|^  /;
const BEFORE_NUMBER = /^\s*[:=]?\s*[<>]?\s*\.?\d/;

/** "P Olsen: 31": a method right behind a symbol. */
const startsWithMethod = (after: string): boolean => /^ [a-z]/i.test(after) && findMethods(after)[0]?.start === 1;

/** A symbol stands at the start of a piece, or right before a number. */
function isSymbol(text: string, start: number, end: number): boolean {
  const after = text.slice(end, end + 40);
  if (BEFORE_NUMBER.test(after)) return true;
  return PIECE_START.test(text.slice(Math.max(0, start - 40), start)) && (AFTER_SYMBOL.test(after) || startsWithMethod(after));
}

/** Names in order of place; where two overlap the longer one stands. */
export function findNames(text: string): Found<Name>[] {
  const found = findWords(NAME_INDEX, lower(text));
  for (const f of findWords(SYMBOL_INDEX, text, (start, end) => isSymbol(text, start, end))) {
    if (!found.some((g) => g.start < f.end && f.start < g.end)) found.push(f);
  }
  return found.sort((a, b) => a.start - b.start);
}

/** What the patterns find, left to right; `inside` is a letter after which none may start. */
function findPatterns<T>(patterns: Patterns<T>, text: string, inside: (code: number) => boolean): Found<T>[] {
  const small = lower(text);
  const found: Found<T>[] = [];
  for (let i = 0; i < small.length; i++) {
    const tries = patterns.get(small[i]!);
    if (!tries || (small[i] !== '%' && inside(small.charCodeAt(i - 1)))) continue;
    for (const { is, at } of tries) {
      const end = at(small, i);
      if (end <= i) continue;
      found.push({ start: i, end, is });
      i = end - 1;
      break;
    }
  }
  return found;
}

const isLetter = (code: number): boolean => code >= 97 && code <= 122;
const isDigit = (code: number): boolean => code >= 48 && code <= 57;
const SLASH = 47;

/** A unit may stand right behind its number, a method may not. */
export const findUnits = (text: string): Found<ReportUnit>[] => findPatterns(UNITS_BY_START, text, (c) => isLetter(c) || c === SLASH);
export const findMethods = (text: string): Found<Method>[] => findPatterns(METHODS_BY_START, text, (c) => isLetter(c) || isDigit(c));

/** German and Austrian classes A to E (some add F above it), and the letters of American labs that follow a value. */
const CLASS_LETTER = /\b(?:gehaltsklasse|gehaltsstufe|versorgungsstufe|stufe|klasse|class)\s+([a-f])\b/gi;
const VALUE_LETTER = /[\d%)]([\s|]{0,24})(vl|vh|[lmh])[+-]?(?=\s*(?:$|[|,;)]))/gi;
const LETTERS: Readonly<Record<string, Rating>> = { a: 'very-low', b: 'low', c: 'optimum', d: 'high', e: 'very-high', f: 'very-high', vl: 'very-low', l: 'low', m: 'medium', h: 'high', vh: 'very-high' };

/** A class by its letter alone, "38 mg/100 g D" or "hoch (D)": the end of a piece, and a value between the name and it ("Bor (B)" is a symbol). */
const LONE_LETTER = /(?:[([]([A-F])[)\]]|(?<![\w(./-])([A-F]))(?=\s{0,24}(?:$|[|;,](?!\s{0,24}[<>]?\s?\d)|\(|  ))/g;

export function findClasses(text: string): Found<Rating>[] {
  const found = [...text.matchAll(LONE_LETTER)];
  if (found.length === 0) return [];
  const names = findNames(text);
  const methods = findMethods(text);
  const numbers = blank(blank(blank(text, names), methods), findUnits(blank(text, methods)));
  return found
    .map((m) => ({ start: m.index, end: m.index + m[0].length, is: LETTERS[(m[1] ?? m[2])!.toLowerCase()]! }))
    .filter(({ start }) => /\d/.test(numbers.slice(names.filter((n) => n.end <= start).at(-1)?.end ?? start, start)));
}

export function findRatings(text: string): Found<Rating>[] {
  const found: Found<Rating>[] = [];
  for (const m of text.matchAll(CLASS_LETTER)) found.push({ start: m.index, end: m.index + m[0].length, is: LETTERS[m[1]!.toLowerCase()]! });
  for (const m of text.matchAll(VALUE_LETTER)) found.push({ start: m.index + 1 + m[1]!.length, end: m.index + m[0].length, is: LETTERS[m[2]!.toLowerCase()]! });
  return [...found, ...findWords(RATING_INDEX, lower(text))];
}

/** The text with the spans turned to blanks, so that what they hold is not read twice. */
export function blank(text: string, spans: readonly Span[]): string {
  let out = text;
  for (const { start, end } of spans) out = out.slice(0, start) + ' '.repeat(end - start) + out.slice(end);
  return out;
}

/** "Unknown", "I don't know", "?" as an answer. */
export const isUnknown = (text: string): boolean => /^\s*(?:unknown|(?:i )?(?:don.?t|do not) know|not known|\?)\.?\s*$/i.test(text);

/** The unit or method that a whole text names, for answers such as `calcium unit: ppm`. */
export const unitCalled = (text: string): ReportUnit | null => findUnits(text)[0]?.is ?? (/^\s*index\s*$/i.test(text) ? 'index' : null);
export const methodCalled = (text: string): Method | null =>
  isUnknown(text) ? 'unknown' : /^\s*cal\s*$/i.test(text) ? 'cal' : METHODS.find((m) => m === text.trim().toLowerCase()) ?? findMethods(text)[0]?.is ?? null;

/** Names and units worth suggesting for a mistyped word. */
export const KNOWN_NAMES: readonly string[] = named.map((n) => n.name).filter((n) => n.length > 3);
export const KNOWN_UNITS: readonly string[] = ['ppm', 'mg/kg', 'mg/L', 'mg/100g', 'lb/acre', 'lbs/acre', 'kg/ha', 'meq/100g', 'cmol/kg', 'dS/m', 'mS/cm', 'mmhos/cm', 'percent'];
