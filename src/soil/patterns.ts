/** Units and methods in a line, by the patterns of the tables: each is tried only where its first letters stand. */
import type { Method, ReportUnit } from '../tables/items.ts';
import { METHOD_PATTERNS, UNIT_PATTERNS } from '../tables/report-patterns.ts';

export type Span = { readonly start: number; readonly end: number };
export type Found<T> = Span & { readonly is: T };

/** Lower case that keeps every offset: a letter whose small form is longer stays as it is. */
export function lower(text: string): string {
  const small = text.toLowerCase();
  return small.length === text.length ? small : text.replace(/[A-Z]/g, (c) => c.toLowerCase());
}

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

/** What the patterns find, left to right; `inside` is a letter after which none may start. */
function findPatterns<T>(patterns: Patterns<T>, text: string, inside: (code: number) => boolean): Found<T>[] {
  const small = lower(text);
  const found: Found<T>[] = [];
  for (let i = 0; i < small.length; i++) {
    const tries = patterns.get(small[i]!);
    // "Mg mg/100 g": the first is the element.
    if (!tries || (small[i] !== '%' && inside(small.charCodeAt(i - 1))) || /^Mg [Mm][Gg]/.test(text.slice(i, i + 5))) continue;
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

export const findMethods = (text: string): Found<Method>[] => findPatterns(METHODS_BY_START, text, (c) => isLetter(c) || isDigit(c)).map((m) => ({ ...m, start: m.start - strengthOf(text.slice(Math.max(0, m.start - 8), m.end)) }));

/** "0.5 M" of "0.5 M NaHCO3": how strong the salt is belongs to it and is no value. */
const STRENGTH = /(?<![\d.,])((?:0?[.,]\d{1,3}|[12]) ?[MN] )(?:nahco3|nh4|kcl|cacl2|ammon)/i;

const strengthOf = (method: string): number => STRENGTH.exec(method)?.[1]!.length ?? 0;
export const KNOWN_UNITS: readonly string[] = ['ppm', 'mg/kg', 'mg/L', 'mg/100g', 'lb/acre', 'lbs/acre', 'kg/ha', 'meq/100g', 'cmol/kg', 'dS/m', 'mS/cm', 'mmhos/cm', 'percent'];
