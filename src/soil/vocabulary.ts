/** The tables of names, units, methods and rating words, compiled once into matchers. */
import type { Method, Name, ReportUnit } from '../tables/items.ts';
import { METHOD_PATTERNS, NAMES, RATING_WORDS, UNIT_PATTERNS } from '../tables/items.ts';
import type { Rating } from '../tables/ratings.ts';

export type Span = { readonly start: number; readonly end: number };
export type Found<T> = Span & { readonly is: T };

/** Lines lose their accents before they are matched, and so do the names. */
const unaccented = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '');
const escape = (text: string): string => text.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&').replace(/ /g, '[ ]+');
const NOT_AFTER = '(?<![\\p{L}\\p{N}])';
const NOT_BEFORE = '(?![\\p{L}\\p{N}])';

const byLength = <T>(list: readonly T[], text: (t: T) => string): T[] => [...list].sort((a, b) => text(b).length - text(a).length);
const named = byLength(NAMES.filter((n) => !n.exact).map((n) => ({ ...n, name: unaccented(n.name) })), (n) => n.name);
const symbols = byLength(NAMES.filter((n) => n.exact), (n) => n.name);
const NAME_INDEX = new Map(named.map((n) => [n.name, n]));
const SYMBOL_INDEX = new Map(symbols.map((n) => [n.name, n]));

const NAME_PATTERN = new RegExp(`${NOT_AFTER}(?:${named.map((n) => escape(n.name)).join('|')})${NOT_BEFORE}`, 'giu');
/** A symbol stands at the start of a piece, or right before a number. */
const SYMBOL_PATTERN = new RegExp(`(?<=^ *|[,;|(:]\\s*|  |\\b(?:soil|exch(?:angeable|\\.)?|avail(?:able|\\.)?|extractable|colwell|olsen|bray|morgan's|dtpa|Soil|Colwell|Olsen|Bray|DTPA|Exch(?:angeable|\\.)?) )(?:${symbols.map((n) => escape(n.name)).join('|')})(?=\\s*(?:$|[:;=|(),[-]|  |index\\b|[<>]?\\s*[\\d.]))|${NOT_AFTER}(?:${symbols.map((n) => escape(n.name)).join('|')})(?=\\s*[:=]?\\s*[<>]?\\s*\\.?\\d)`, 'gu');
const UNIT_PATTERN = new RegExp(UNIT_PATTERNS.map(([, p], i) => `(?<u${i}>${p.startsWith('(?:%') ? '' : '(?<![\\p{L}/])'}${p})`).join('|'), 'giu');
const METHOD_PATTERN = new RegExp(METHOD_PATTERNS.map(([, p], i) => `(?<m${i}>${NOT_AFTER}${p})`).join('|'), 'giu');
const ratingWords = byLength(RATING_WORDS.map(([w, r]) => [unaccented(w), r] as const), ([w]) => w);
const RATING_INDEX = new Map<string, Rating>(ratingWords);
const RATING_PATTERN = new RegExp(`${NOT_AFTER}(?:${ratingWords.map(([w]) => escape(w)).join('|')})${NOT_BEFORE}`, 'giu');

const squeeze = (text: string): string => text.replace(/ +/g, ' ');

/** Names in order of place; where two overlap the longer one stands. */
export function findNames(text: string): Found<Name>[] {
  const found: Found<Name>[] = [];
  for (const m of text.matchAll(NAME_PATTERN)) {
    const is = NAME_INDEX.get(squeeze(m[0].toLowerCase()));
    if (is) found.push({ start: m.index, end: m.index + m[0].length, is });
  }
  for (const m of text.matchAll(SYMBOL_PATTERN)) {
    const is = SYMBOL_INDEX.get(squeeze(m[0]));
    const span = { start: m.index, end: m.index + m[0].length };
    if (is && !found.some((f) => f.start < span.end && span.start < f.end)) found.push({ ...span, is });
  }
  return found.sort((a, b) => a.start - b.start);
}

function grouped<T>(pattern: RegExp, text: string, list: readonly (readonly [T, string])[], letter: string): Found<T>[] {
  const found: Found<T>[] = [];
  for (const m of text.matchAll(pattern)) {
    const i = list.findIndex((_, k) => m.groups?.[`${letter}${k}`] !== undefined);
    const entry = list[i];
    if (entry) found.push({ start: m.index, end: m.index + m[0].length, is: entry[0] });
  }
  return found;
}

export const findUnits = (text: string): Found<ReportUnit>[] => grouped(UNIT_PATTERN, text, UNIT_PATTERNS, 'u');
export const findMethods = (text: string): Found<Method>[] => grouped(METHOD_PATTERN, text, METHOD_PATTERNS, 'm');

/** German and Austrian classes A to E, and the letters of American labs that follow a value. */
const LETTER_PATTERN = /(?:\b(?:gehaltsklasse|gehaltsstufe|versorgungsstufe|stufe|klasse|class)\s+([a-e])\b)|(?<=[\d%)]\s{0,24}|[\d)]\s{0,24}\|\s{0,3})(vl|vh|[lmh])[+-]?(?=\s*(?:$|[|,;)]))/gi;
const LETTERS: Readonly<Record<string, Rating>> = { a: 'very-low', b: 'low', c: 'optimum', d: 'high', e: 'very-high', vl: 'very-low', l: 'low', m: 'medium', h: 'high', vh: 'very-high' };

export function findRatings(text: string): Found<Rating>[] {
  const found: Found<Rating>[] = [];
  for (const m of text.matchAll(LETTER_PATTERN)) {
    found.push({ start: m.index, end: m.index + m[0].length, is: LETTERS[(m[1] ?? m[2]!).toLowerCase()]! });
  }
  for (const m of text.matchAll(RATING_PATTERN)) {
    const is = RATING_INDEX.get(squeeze(m[0].toLowerCase()));
    if (is) found.push({ start: m.index, end: m.index + m[0].length, is });
  }
  return found;
}

/** The text with the spans turned to blanks, so that what they hold is not read twice. */
export function blank(text: string, spans: readonly Span[]): string {
  let out = text;
  for (const { start, end } of spans) out = out.slice(0, start) + ' '.repeat(end - start) + out.slice(end);
  return out;
}

/** The unit or method that a whole text names, for answers such as `calcium unit: ppm`. */
export const unitCalled = (text: string): ReportUnit | null => findUnits(text)[0]?.is ?? (/^\s*index\s*$/i.test(text) ? 'index' : null);
export const methodCalled = (text: string): Method | null =>
  /^\s*(?:unknown|don.?t know|not known|\?)\s*$/i.test(text) ? 'unknown' : /^\s*cal\s*$/i.test(text) ? 'cal' : findMethods(text)[0]?.is ?? null;

/** Names and units worth suggesting for a mistyped word. */
export const KNOWN_NAMES: readonly string[] = named.map((n) => n.name).filter((n) => n.length > 3);
export const KNOWN_UNITS: readonly string[] = ['ppm', 'mg/kg', 'mg/L', 'mg/100g', 'lb/acre', 'lbs/acre', 'kg/ha', 'meq/100g', 'cmol/kg', 'dS/m', 'mS/cm', 'mmhos/cm', 'percent'];
