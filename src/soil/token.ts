/**
 * One prepared line → its parts, left to right: names, numbers, units, methods, rating words, labels, brackets.
 * Each part says where it stands, so that a fault is named there. What is none of these is a word.
 */
import { FILLERS } from '../tables/fillers.ts';
import type { Method, ReportUnit } from '../tables/items.ts';
import type { Name } from '../tables/names.ts';
import type { Rating } from '../tables/ratings.ts';
import type { Label } from '../tables/report-words.ts';
import { ABSENT, LABELS, NEGATED, SIGNS, TRACE } from '../tables/report-words.ts';
import type { Parsed, Style } from './number.ts';
import { NUMBER, parseNumber } from './number.ts';
import type { Span } from './patterns.ts';
import type { Words } from './vocabulary.ts';
import { findMethods, findUnits, lower } from './patterns.ts';
import { blank, covered, findClasses } from './vocabulary.ts';

export type Numeral = Span & { readonly kind: 'number'; readonly printed: string; readonly is: Parsed; readonly sign: '<' | '>' | null; readonly minus: boolean };
export type Between = Span & { readonly kind: 'between'; readonly printed: string; readonly low: Parsed; readonly high: Parsed };
export type Group = Span & { readonly kind: 'group'; readonly tokens: readonly Token[] };
export type Token =
  | (Span & { readonly kind: 'name'; readonly is: Name })
  | (Span & { readonly kind: 'unit'; readonly is: ReportUnit })
  | (Span & { readonly kind: 'method'; readonly is: Method })
  | (Span & { readonly kind: 'rating'; readonly is: Rating })
  /** A letter A to E of a German report. */
  | (Span & { readonly kind: 'class'; readonly is: Rating })
  /** What the next number is: a range of the lab, something else than the value, an index; "was" says older only behind a value. */
  | (Span & { readonly kind: 'label'; readonly is: Label })
  | (Span & { readonly kind: 'trace' | 'absent' | 'separator' | 'filler' })
  | (Span & { readonly kind: 'word'; readonly text: string })
  | Numeral | Between | Group;

const DATE = /(?<![\d.,])\b(?:\d{1,4}([/.-])\d{1,2}\1\d{2,4}|\d{1,2}:\d{2})\b/g;
const LONE = new RegExp(`(?<![a-z\\d.]|\\d[,/:'])(?<![a-z\\d]-)(?<minus>-(?=\\.?\\d))?(?<printed>${NUMBER})(?!\\d|[:/-]\\d|[.,']\\d)`, 'g');
const PAIR = new RegExp(`(?<![\\d.,a-z-])(${NUMBER}) {0,3}(?:-|to|bis|\\.\\.|a\\b|ate) {0,3}(${NUMBER})(?!\\d|[:/-]\\d|[.,']\\d)`, 'g');
const GROUPS = /\(([^()]*)\)|\[([^\][]*)\]/g;
/** A full stop before a word parts sentences, unless it cuts a word short. */
const STOP = /(?<=[a-z\d%)])(?<!\b(?:exch|avail|sat|org|ext|no|nr|cond|amm|est|tot))\.(?= +[a-z])/gi;
const PIECES = /[\p{L}\p{N}#%&@$€£'./\\-]*[\p{L}\p{N}#%&@$€£]|[,;|]/gu;

/** The end of what stands before a place. */
const before = (text: string, at: number): string => text.slice(Math.max(0, at - 16), at);
const matches = (text: string, pattern: RegExp): Span[] => [...text.matchAll(pattern)].map((m) => ({ start: m.index, end: m.index + m[0].length }));

/** Finds the tokens of a line, each line once. `german`: a lone letter A to E is a class. */
export type Look = (text: string, german?: boolean) => readonly Token[];

/** A look-up for one report, which remembers the lines it has seen. */
export function lookFor(words: Words, style: Style): Look {
  const seen = new Map<string, readonly Token[]>();
  return (text, german = false) => {
    const key = german ? `${text}\n` : text;
    const known = seen.get(key);
    if (known) return known;
    // A very long report repeats little: what was seen long ago is let go.
    if (seen.size > 2000) seen.clear();
    const tokens = tokensOf(text, words, style, german);
    seen.set(key, tokens);
    return tokens;
  };
}

function tokensOf(text: string, words: Words, style: Style, german: boolean): Token[] {
  const dates = matches(text, DATE);
  const dateless = blank(text, dates);
  const classes = german ? findClasses(dateless, words) : [];
  const bare = blank(dateless, classes);
  const methods = findMethods(bare);
  const units = findUnits(blank(bare, methods));
  const named = words.names(bare);
  const inUnit = covered(text.length, units, true);
  const inLonger = covered(text.length, methods.filter((m) => !named.some((n) => n.start <= m.start && m.end <= n.end)));
  const names = named.filter((n) => !inUnit(n) && !inLonger(n));
  const inName = covered(text.length, names);
  const kept = methods.filter((m) => !inName(m));
  const tokens: Token[] = [
    ...classes.map((c) => ({ ...c, kind: 'class' as const })),
    ...kept.map((m) => ({ ...m, kind: 'method' as const })),
    ...units.filter((u) => !inName(u)).map((u) => ({ ...u, kind: 'unit' as const })),
    ...names.map((n) => ({ ...n, kind: 'name' as const })),
  ];
  let rest = lower(blank(bare, tokens));
  const take = (kind: 'trace' | 'absent', pattern: RegExp): void => {
    const found = matches(rest, pattern);
    tokens.push(...found.map((f) => ({ ...f, kind })));
    rest = blank(rest, found);
  };
  take('absent', ABSENT);
  take('trace', TRACE);
  // "not deficient", "neither low nor high" say nothing of a class; "below 5 ppm" is a limit.
  const ratings = words.ratings(rest).filter((r) => !NEGATED.test(before(rest, r.start)) && !/^(?:below|above) \d/.test(rest.slice(r.start))).sort((a, b) => a.start - b.start);
  tokens.push(...ratings.filter((r, i) => i === 0 || ratings[i - 1]!.end <= r.start).map((r) => ({ ...r, kind: 'rating' as const })));
  rest = blank(rest, ratings);
  const taken = covered(text.length, tokens);
  for (const [is, pattern] of LABELS) {
    const found = matches(rest, pattern).filter((f) => !taken(f));
    tokens.push(...found.map((f) => ({ ...f, kind: 'label' as const, is })));
    rest = blank(rest, found);
  }
  numbers(rest, style, tokens, words.language !== null && words.language !== 'en');
  return grouped(text, tokens, rest);
}

/** Adds spans and numbers. A number with letters hard behind it that are no unit is a word. */
function numbers(rest: string, style: Style, tokens: Token[], blankThousands: boolean): void {
  const startsAt = new Set(tokens.map((t) => t.start));
  const free = (end: number): boolean => (!/[a-z]/.test(rest.charAt(end)) || startsAt.has(end)) && !/^(?:[.,][a-z](?![a-z]{2})|[^\x00-\x7f]| \d+\/\d| [½¼¾])/.test(rest.slice(end, end + 5));
  const add = (start: number, end: number, is: Parsed, sign: ReturnType<typeof signBefore>, minus: boolean): void => {
    tokens.push({ kind: 'number', start, end, printed: rest.slice(start, end), is, sign: sign.is, minus });
    if (sign.is) tokens.push({ kind: 'filler', start: sign.start, end: start });
  };
  let text = rest;
  if (blankThousands) {
    for (const m of text.matchAll(/(?<![a-z]|[\d.,-] ?)(\d{1,3}(?:[ ']\d{3})?) {0,2}(?:-|a\b|bis\b) {0,2}(\d{1,3}[ ']\d{3})(?![\d.,'])/g)) {
      const [low, high] = [m[1]!, m[2]!].map((n) => ({ value: Number(n.replace(/[ ']/, '')) })) as [Parsed, Parsed];
      tokens.push({ kind: 'between', start: m.index, end: m.index + m[0].length, printed: m[0], low, high });
    }
    text = blank(text, tokens);
    // "2 242 mg/kg", "2 242,5 mg/kg", where a unit follows.
    for (const m of text.matchAll(/(?<![a-z]|[\d.,-] ?)\d{1,3}(?: \d{3})+(?:,\d+)?(?![\d.,])/g)) {
      const end = m.index + m[0].length;
      const sign = signBefore(text, m.index);
      if (!startsAt.has(end) && !startsAt.has(end + 1) && !sign.is) continue;
      add(m.index, end, { value: Number(m[0].replaceAll(' ', '').replace(',', '.')) }, sign, false);
    }
    text = blank(text, tokens);
  }
  for (const m of text.matchAll(PAIR)) {
    const end = m.index + m[0].length;
    // A sampling depth is no range.
    const length = /^ ?(?:in(?:ch(?:es)?)?\b|cm\b|"|''|feet\b|ft\b)/.exec(text.slice(end));
    if (length) tokens.push({ kind: 'filler', start: m.index, end: end + length[0].length });
    else if (free(end)) tokens.push({ kind: 'between', start: m.index, end, printed: m[0], low: parseNumber(m[1]!, style), high: parseNumber(m[2]!, style) });
  }
  text = blank(text, tokens);
  for (const m of text.matchAll(LONE)) {
    const end = m.index + m[0].length;
    if (!free(end)) continue;
    const printed = m.groups!['printed']!;
    add(end - printed.length, end, parseNumber(printed, style), signBefore(text, m.index), m.groups!['minus'] !== undefined);
  }
}

/** A limit's sign or word right before a number, and where it starts. */
function signBefore(text: string, at: number): { readonly is: Numeral['sign']; readonly start: number } {
  for (const [is, pattern] of SIGNS) {
    const printed = pattern.exec(before(text, at))?.[0];
    if (printed !== undefined) return { is, start: at - printed.length };
  }
  return { is: null, start: at };
}

/** Words and separators between the tokens found, and brackets as groups. */
function grouped(text: string, found: Token[], rest: string): Token[] {
  const open = blank(rest, found);
  const tokens = [...found];
  const held = covered(text.length, found);
  for (const m of text.matchAll(STOP)) if (!held({ start: m.index, end: m.index + 1 })) tokens.push({ start: m.index, end: m.index + 1, kind: 'separator' });
  for (const m of open.matchAll(PIECES)) {
    const at = { start: m.index, end: m.index + m[0].length };
    if (/[,;|]/.test(m[0])) tokens.push({ ...at, kind: 'separator' });
    else {
      const word = m[0].replace(/^['./\\-]+/, '');
      tokens.push(FILLERS.has(word) || /^x+$/.test(word) ? { ...at, kind: 'filler' } : { ...at, kind: 'word', text: word });
    }
  }
  tokens.sort((a, b) => a.start - b.start);
  const groups = matches(text, GROUPS);
  const out: Token[] = [];
  let at = 0;
  for (const token of tokens) {
    while (at < groups.length && groups[at]!.end <= token.start) at++;
    const group = groups[at];
    if (!group || token.start < group.start) {
      out.push(token);
      continue;
    }
    const last = out.at(-1);
    if (last?.kind === 'group' && last.start === group.start) out[out.length - 1] = { ...last, tokens: [...last.tokens, token] };
    else out.push({ kind: 'group', ...group, tokens: [token] });
  }
  return out;
}

/** The value of a number as printed; null where it can be read two ways. */
export const valueOf = (parsed: Parsed): number | null => ('value' in parsed ? parsed.value : null);
