/**
 * A report as lines ready for matching. Every replacement keeps the length, so an offset in the
 * prepared text is the same offset in the line as the grower has it.
 */
import type { Place } from '../reason/notice.ts';
import { placeIn } from '../reason/notice.ts';

export type Line = {
  readonly number: number;
  readonly raw: string;
  readonly text: string;
  /** A line put together out of several: where each begins in it. */
  readonly parts?: readonly { readonly at: number; readonly line: Line }[];
};

/** The place of `[start, end)` of a line, in the printed line that holds its start. */
export function spot(line: Line, file: string, start: number, end: number): Place {
  const part = line.parts?.filter((p) => p.at <= start).at(-1);
  if (!part) return placeIn(file, line.number, line.raw, start, end);
  return placeIn(file, part.line.number, part.line.raw, start - part.at, Math.min(end - part.at, part.line.raw.length));
}

/** Longer lines are no report of a soil test; they are named and left unread. */
export const LONGEST_LINE = 4000;
export const LARGEST_REPORT = 2_000_000;

const SINGLE: Readonly<Record<string, string>> = {
  '₀': '0', '₁': '1', '₂': '2', '₃': '3', '₄': '4', '₅': '5', '₆': '6', '₇': '7', '₈': '8', '₉': '9', '²': '2', '³': '3', '¹': '1', '⁺': '+',
  '–': '-', '—': '-', '‐': '-', '‑': '-', '‒': '-', '−': '-', '⁻': '-', 'μ': 'u', 'µ': 'u', '×': 'x',
  '“': '"', '”': '"', '’': "'", '‘': "'", '´': "'", '*': ' ', '_': ' ', '•': ' ', '·': ' ',
};

function prepare(raw: string): string {
  return raw
    .replace(/(\d)[\u00a0\u2009\u202f](?=\d{3}(?!\d))/g, "$1'")
    .replace(/\u001b(?:\[[0-9;?]*[ -/]*[@-~]|\][^\u0007\u001b]*(?:\u0007|\u001b\\)?)/g, (code) => ' '.repeat(code.length))
    // Marks that nobody sees within a word go behind it, so that what follows stays where it is.
    .replace(/(?<![\p{L}\p{N}])[\p{L}\p{N}]+(?:[\p{M}\p{Cf}][\p{L}\p{N}]*)+/gu, (word) => word.replace(/[\p{M}\p{Cf}]/gu, '').padEnd(word.length))
    .replace(/\p{Cf}/gu, (c) => ' '.repeat(c.length))
    // A bar of strokes draws how much there is; cells have no three edges in a row with blanks about them.
    .replace(/(?<!\S)\|{3,}(?!\S)/g, (bar) => ' '.repeat(bar.length))
    .replace(/(?<=\d)[²³⁺]/g, '\u00a4')
    .replace(/\.{3,}|(?: \.){3,}/g, (dots) => ' '.repeat(dots.length))
    .replace(/[^\x20-\x7e]|[*_]/g, (c) => SINGLE[c] ?? (c === '\t' ? '\t' : /\s/.test(c) ? ' ' : plainLetter(c)))
    .replace(/mol\([+c]\)/gi, (unit) => `${unit.slice(0, 3)}ccc`)
    .replace(/\t/g, '|');
}

/** A full-width sign as a plain one, a letter without its accent; always one character for one. */
function plainLetter(c: string): string {
  const code = c.charCodeAt(0);
  if (code >= 0xff01 && code <= 0xff5e) return String.fromCharCode(code - 0xfee0);
  return /\p{L}/u.test(c) ? c.normalize('NFD').charAt(0) : c;
}

/** Symbols of two letters in a report all in capitals; "FRESNO, CA 93722" is an address, "NA" alone is "not available". */
const CAPITAL_SYMBOL = /\b(?:(?:MG|CA|ZN|MN|CU|FE|PB)(?![A-Z013-9]| \d{5}\b)(?=2?\+{0,3}(?![A-Z]))|(?:AL|NA|AC)(?=3?\+| INDEX| {0,3}[|,;(:-]| {0,3}(?:[<>] ?)?\d| (?:PPM|P\.P|MG|MEQ|ME\/|CMOL|MMOL|%|LB|KG)))/g;
const inCapitals = (text: string): boolean => !/[a-z]/.test(text.slice(0, 20_000));

export function linesOf(text: string): Line[] {
  const capitals = inCapitals(text);
  return text.split(/\r\n|\n|\r/).map((raw, i) => {
    const prepared = raw.length > LONGEST_LINE ? '' : prepare(raw);
    return { number: i + 1, raw, text: capitals ? prepared.replace(CAPITAL_SYMBOL, (s) => s.charAt(0) + s.charAt(1).toLowerCase()) : prepared };
  });
}

