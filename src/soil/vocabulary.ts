/** The tables of names, units, methods and rating words, compiled once into matchers. */
import type { Method, ReportUnit } from '../tables/items.ts';
import { METHODS } from '../tables/items.ts';
import type { Language } from '../tables/name-set.ts';
import { LANGUAGES, unaccented } from '../tables/name-set.ts';
import type { Name } from '../tables/names.ts';
import { INDEX_NAMES, NAMES, NAMES_BY_LANGUAGE } from '../tables/names.ts';
import { RATING_SETS, RATING_WORDS, RATING_WORDS_BY_LANGUAGE } from '../tables/rating-words.ts';
import type { Rating } from '../tables/ratings.ts';
import type { Found, Span } from './patterns.ts';
import { findMethods, findUnits, lower } from './patterns.ts';

/** Words by their first run of letters and digits, the longest first: a matcher that costs little to make and less to ask. */
type Index<T> = ReadonlyMap<string, readonly { readonly text: string; readonly is: T }[]>;

function indexed<T>(entries: readonly (readonly [text: string, is: T])[]): Index<T> {
  const index = new Map<string, { text: string; is: T }[]>();
  for (const [text, is] of entries) {
    const key = runAt(text, 0);
    const list = index.get(key);
    if (list) list.push({ text, is });
    else index.set(key, [{ text, is }]);
  }
  for (const list of index.values()) list.sort((x, y) => y.text.length - x.text.length);
  return index;
}

/** The letters and digits from `i` on, or the sign that stands there. */
function runAt(text: string, i: number): string {
  let end = i;
  while (isWordAt(text, end)) end++;
  return text.slice(i, Math.max(end, i + 1));
}

function isWordAt(text: string, i: number): boolean {
  const code = text.charCodeAt(i) | 32;
  return (code >= 97 && code <= 122) || (code >= 48 && code <= 57);
}

/** Where a known word that starts at `i` ends, two blanks counting as one; -1 where it does not stand there. */
function endOf(word: string, text: string, i: number): number {
  let at = i;
  for (let k = 0; k < word.length; k++) {
    if (text[at] !== word[k]) return -1;
    at++;
    if (word[k] === ' ' && text[at] === ' ') at++;
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
    if (text[i] === ' ') continue;
    const run = runAt(text, i);
    const hit = longest(index.get(run), text, i, accept);
    if (!hit) {
      i += run.length - 1;
      continue;
    }
    found.push(hit);
    i = hit.end - 1;
  }
  return found;
}

/** The words of a report in one language: those good everywhere, and those good in that language alone. */
export type Words = { readonly language: Language | null; readonly names: (text: string) => Found<Name>[]; readonly ratings: (text: string) => Found<Rating>[] };

/** "Leitfaehigkeit" for "Leitfähigkeit". */
const spelt = (name: string): string[] => (/[äöü]/.test(name) ? [unaccented(name), unaccented(name.replaceAll('ä', 'ae').replaceAll('ö', 'oe').replaceAll('ü', 'ue'))] : [unaccented(name)]);

const plain = (names: readonly Name[]): (readonly [string, Name])[] => names.filter((n) => !n.exact).flatMap((n) => spelt(n.name).map((text) => [text, n] as const));
const symbols = (names: readonly Name[]): (readonly [string, Name])[] => names.filter((n) => n.exact).map((n) => [n.name, n] as const);

function makeWords(language: Language | null): Words {
  const names = [...NAMES, ...INDEX_NAMES, ...NAMES_BY_LANGUAGE.filter((n) => n.in === (language ?? 'en'))];
  const nameIndex = indexed(plain(names));
  const symbolIndex = indexed([...symbols(names), ...INDEX_NAMES.map((n) => [n.name.toUpperCase(), n] as const)]);
  const ratingIndex = indexed([...RATING_WORDS.map(([w, r]) => [unaccented(w), r] as const), ...RATING_WORDS_BY_LANGUAGE.filter(([, , l]) => l === (language ?? 'en')).map(([w, r]) => [unaccented(w), r] as const)]);
  return { language, names: (text) => namesIn(text, nameIndex, symbolIndex), ratings: (text) => ratingsIn(text, ratingIndex) };
}

const MADE = new Map<Language | null, Words>();

/** The words of a language, made once; null is a report whose language nobody can tell. */
export function wordsOf(language: Language | null): Words {
  const made = MADE.get(language) ?? makeWords(language);
  MADE.set(language, made);
  return made;
}

/** Words of rating with the languages that have them. */
let ratingLanguages: Index<readonly Language[]> | null = null;

function ratingLanguageIndex(): Index<readonly Language[]> {
  if (ratingLanguages) return ratingLanguages;
  const by = new Map<string, Language[]>();
  for (const { language, words } of RATING_SETS) for (const w of words.map(unaccented)) if (language !== 'any') by.set(w, [...new Set([...(by.get(w) ?? []), language])]);
  return (ratingLanguages = indexed([...by]));
}

/** The language of a report by the names and words of rating that few languages share; null where none leads. */
export function languageOf(lines: readonly string[]): Language | null {
  const score = new Map<Language, number>();
  for (const line of lines) {
    for (const { is } of wordsOf(null).names(line)) for (const l of is.exact ? [] : is.languages) score.set(l, (score.get(l) ?? 0) + 1 / is.languages.length);
    for (const { is } of findWords(ratingLanguageIndex(), lower(line))) for (const l of is) score.set(l, (score.get(l) ?? 0) + 0.5 / is.length);
  }
  const [first, second] = LANGUAGES.map((l) => [l, score.get(l) ?? 0] as const).sort((a, b) => b[1] - a[1]);
  return first && first[1] >= 0.4 && first[1] > (second?.[1] ?? 0) ? first[0] : null;
}

const PIECE_START = /(?:^ *|[,;|(:]\s*|  |[a-z] [-–] |\b(?:soil|exch(?:angeable|\.)?|avail(?:able|\.)?|extractable|colwell|olsen|bray|morgan's|dtpa|saturation|sat\.|low|medium|high|optimum|optimal|adequate|sufficient|deficient|excessive|normal|average) )$/i;
const AFTER_SYMBOL = /^\s*(?:$|[:;=|(),.[-]|(?:index|fiv|is|was|nach|by|mit|per|selon|por)\b)|^  /i;
const BEFORE_NUMBER = /^\s*(?:[:=]\s*)?(?:[<>≤≥]=?\s*|=\s*)?\.?\d/;

/** "P Olsen: 31": a method right behind a symbol. */
const startsWithMethod = (after: string): boolean => /^ [a-z]/i.test(after) && findMethods(after)[0]?.start === 1;

const WORD_BEHIND = /^ (?:not|nicht|no|non|nao|trac|traz|spur|nd\b|n\.d|n\.n|bdl|below|undetect|low|high|very|medium|optim|excess|deficient|sehr|muy|tres|molto|muito|baj|bas|baix|alt|hoch|niedrig|gering|mittel|faible|moyen|elev|sufficient|adequate)/i;
const BEHIND_VALUE = /\d ?(?:ppm|mg ?\/ ?(?:kg|l|100 ?g)|(?:lbs?|kg) ?\/ ?(?:ac(?:re)?|ha|a)|(?:meq|me) ?\/ ?100 ?g|cmol\S{0,4} ?\/ ?kg|%)? $/i;
const CONDUCTED = /\d ?(?:ds|ms|us|mmhos?|umhos?) ?(?:\/|per) ?c?m $/i;
const startsWithUnit = (after: string): boolean => after.startsWith(' ') && findUnits(after)[0]?.start === 1;

/** A symbol stands at the start of a piece, or right before a number. */
function isSymbol(text: string, start: number, end: number): boolean {
  const after = text.slice(end, end + 40);
  // "N.A." is no nitrogen.
  if (/^\.[A-Za-z]/.test(after)) return false;
  // "P/Al ratio" names a ratio.
  if (text[start - 1] === '/' || (text[end] === '/' && /[A-Za-z]/.test(text[end + 1] ?? ''))) return false;
  // "44.3 ppm NO3": an ion behind a unit is the form of what stands before it.
  if (/^[NPS]O[34]/.test(text.slice(start, end)) && /(?:ppm|mg ?\/ ?(?:kg|l))(?: as)?[ (]{1,2}$/i.test(text.slice(Math.max(0, start - 12), start))) return true;
  // "0.4 dS/m EC": only salts are told in such a unit.
  if (/^(?:EC|CE|E\.C\.)$/.test(text.slice(start, end)) && CONDUCTED.test(text.slice(Math.max(0, start - 16), start)) && /^ *(?:$|[,;|()])|^  /.test(after)) return true;
  // H alone is mostly the letter of "high".
  if (BEFORE_NUMBER.test(after) || (end - start === 1 && text[start] === 'H')) return BEFORE_NUMBER.test(after);
  // "180 ppm Mg low": behind a value and before a word of its own, where one letter may be a class.
  if ((end - start > 1 || text[start] === 'P' || text[start] === 'K') && BEHIND_VALUE.test(text.slice(Math.max(0, start - 16), start)) && WORD_BEHIND.test(after.replace(/^ ?[:=(-] ?/, ' '))) return true;
  return PIECE_START.test(text.slice(Math.max(0, start - 40), start)) && (AFTER_SYMBOL.test(after) || startsWithMethod(after) || startsWithUnit(after) || WORD_BEHIND.test(after));
}

const SURE = /^(?: \([a-z]{1,2}\))? ?[:=|]? ?[<>]? ?\.?\d/i;
let doubtful: Index<Name> | null = null;
const doubtfulIndex = (): Index<Name> => (doubtful ??= indexed(plain(NAMES_BY_LANGUAGE.filter((n) => !n.exact && n.name.length > 2 && n.item !== 'lime'))));

/** "SMP 5.4": a buffer's name before a value of its kind, which no unit makes a rate of lime. */
const BARE_BUFFER = /\b(?:smp|(?:moore[ -])?sikora|adams[ -]evans|woodruff)(?= ?[:=|]? ?[3-8][.,]\d{1,2}(?!\d|[.,]\d)(?! ?(?:%|(?:t|tons?|tonnes?|lbs?|pounds|kg|dt|meq|cmol)\b)))/gi;

const bareBuffers = (text: string): Found<Name>[] => [...text.matchAll(BARE_BUFFER)]
  .filter((m) => /(?:^ *|[,;|] ?| {2}|\d )$/.test(text.slice(Math.max(0, m.index - 8), m.index)))
  .map((m) => ({ start: m.index, end: m.index + m[0].length, is: { name: m[0].toLowerCase(), item: 'buffer-ph', method: findMethods(m[0])[0]!.is, languages: [] } }));

/** Names in order of place; where two overlap the longer one stands. */
function namesIn(text: string, index: Index<Name>, symbolIndex: Index<Name>): Found<Name>[] {
  const found = findWords(index, lower(text));
  if (/\d/.test(text)) {
    // A word of one language alone, such as "fer", where a number and a unit leave no doubt.
    const held = covered(text.length, found);
    found.push(...bareBuffers(text).filter((f) => !held(f)), ...findWords(doubtfulIndex(), lower(text), (start, end) => (start === 0 || /[,;|(] ?$| {2}$|^ *$/.test(text.slice(0, start))) && SURE.test(text.slice(end, end + 40)) && findUnits(text.slice(end, end + 40)).length > 0).filter((f) => !held(f)));
  }
  const taken = covered(text.length, found);
  const symbol = findWords(symbolIndex, text, (start, end) => isSymbol(text, start, end)).filter((f) => !taken(f));
  return [...found, ...symbol].sort((a, b) => a.start - b.start);
}

/** Names good in every language. */
export const findNames = (text: string): Found<Name>[] => wordsOf(null).names(text);

/** German and Austrian classes A to E (some add F above it), and the letters of American labs that follow a value. */
const CLASS_LETTER = /\b(?:gehaltsklasse|gehaltsstufe|versorgungsstufe|versorgungsklasse|stufe|klasse|class)[\s:]+([a-f])\b/gi;

const VALUE_LETTER = /[\d%)]([\s|]{1,24})(vl|vh|[lmh]|VL|VH|[LMH])[+-]?(?=\s*(?:$|[|,;)])|\s{2}|\s[A-Z])/g;
const LETTERS: Readonly<Record<string, Rating>> = { a: 'very-low', b: 'low', c: 'optimum', d: 'high', e: 'very-high', f: 'very-high', vl: 'very-low', l: 'low', m: 'medium', h: 'high', vh: 'very-high' };

/** A class by its letter alone, "38 mg/100 g D" or "hoch (D)": the end of a piece, and a value between the name and it ("Bor (B)" is a symbol). */
const LONE_LETTER = /(?:[([]([A-F])[)\]]|(?<![\w(./-])([A-F]))(?=\s{0,24}(?:$|[|;,](?!\s{0,24}[<>]?\s?\d)|\(|  (?!\s{0,24}[<>]?\s?\d)))/g;

export function findClasses(text: string, words: Words): Found<Rating>[] {
  // A row of values with a letter behind each: "6,3 C   24 D   11 B".
  const row = [...text.matchAll(/\d([ |]{1,24})([A-F])(?![\w(./-])/g)];
  if (row.length > 2) return row.map((m) => ({ start: m.index + 1 + m[1]!.length, end: m.index + m[0].length, is: LETTERS[m[2]!.toLowerCase()]! }));
  const found = [...text.matchAll(LONE_LETTER)];
  if (found.length === 0) return [];
  const names = words.names(text);
  const methods = findMethods(text);
  const numbers = blank(blank(blank(text, names), methods), findUnits(blank(text, methods)));
  return found
    .map((m) => ({ start: m.index, end: m.index + m[0].length, is: LETTERS[(m[1] ?? m[2])!.toLowerCase()]! }))
    .filter(({ start }) => /\d/.test(numbers.slice(names.filter((n) => n.end <= start).at(-1)?.end ?? start, start)));
}

function ratingsIn(text: string, index: Index<Rating>): Found<Rating>[] {
  const found: Found<Rating>[] = [];
  for (const m of text.matchAll(CLASS_LETTER)) found.push({ start: m.index, end: m.index + m[0].length, is: LETTERS[m[1]!.toLowerCase()]! });
  for (const m of text.matchAll(VALUE_LETTER)) found.push({ start: m.index + 1 + m[1]!.length, end: m.index + m[0].length, is: LETTERS[m[2]!.toLowerCase()]! });
  return [...found, ...findWords(index, lower(text))];
}

/** The text with the spans turned to blanks, so that what they hold is not read twice. */
export function blank(text: string, spans: readonly Span[]): string {
  if (spans.length === 0) return text;
  const parts: string[] = [];
  let at = 0;
  for (const { start, end } of [...spans].sort((a, b) => a.start - b.start)) {
    if (end <= at) continue;
    const from = Math.max(at, start);
    parts.push(text.slice(at, from), ' '.repeat(end - from));
    at = end;
  }
  return parts.join('') + text.slice(at);
}

/** Whether a span overlaps any of those given, or with `whole` lies in them. */
export function covered(length: number, spans: readonly Span[], whole = false): (at: Span) => boolean {
  const marks = new Uint8Array(length + 1);
  for (const { start, end } of spans) marks.fill(1, start, end);
  return ({ start, end }) => (whole ? !marks.subarray(start, end).includes(0) : marks.subarray(start, end).includes(1));
}

/** "Unknown", "I don't know", "?" as an answer. */
export const isUnknown = (text: string): boolean => /^\s*(?:unknown|(?:i )?(?:don.?t|do not) know|not known|\?)\.?\s*$/i.test(text);

/** The unit or method that a whole text names, for answers such as `calcium unit: ppm`. */
export const unitCalled = (text: string): ReportUnit | null => findUnits(text)[0]?.is ?? (/^\s*index\s*$/i.test(text) ? 'index' : null);

export const methodCalled = (text: string): Method | null =>
  isUnknown(text) ? 'unknown' : /^\s*cal\s*$/i.test(text) ? 'cal' : METHODS.find((m) => m === text.trim().toLowerCase()) ?? findMethods(text)[0]?.is ?? null;

const SUGGESTED = new Map<Language | null, readonly string[]>();

/** Names worth suggesting for a mistyped word: no known slip, none of four letters or less. */
export function knownNames(language: Language | null): readonly string[] {
  const made = SUGGESTED.get(language) ?? suggestible(language);
  SUGGESTED.set(language, made);
  return made;
}

const suggestible = (language: Language | null): string[] =>
  [...NAMES, ...NAMES_BY_LANGUAGE].filter((n) => !n.exact && !n.slip && n.item !== 'ratio' && n.name.length > 4 && (n.languages.length === 0 || n.languages.includes(language ?? 'en') || n.languages.includes('en'))).map((n) => unaccented(n.name));
