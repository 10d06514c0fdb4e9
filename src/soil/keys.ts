/** The keys a report prints for its own signs: stars, arrows, plus and minus, classes of an index, what a number in brackets is. */
import type { Rating } from '../tables/ratings.ts';
import type { Line } from './text.ts';
import type { Words } from './vocabulary.ts';

export type Keys = {
  readonly lines: ReadonlySet<number>;
  readonly signs: ReadonlyMap<string, Rating>;
  /** Upper ends of an index's classes, rising; the last is open. */
  readonly index: readonly (readonly [upTo: number, rating: Rating])[];
  readonly indexBeside: boolean;
};

const SIGN = /(?<!\*)\*{1,6}(?!\*)|[↓↑→↘↗←↔⇓⇑▲▼]{1,3}|\((?:\+{1,3}|-{1,3}|−{1,3}|0|=)\)/gu;
const CLASS = /\d\s*(?:-|to)\s*(\d+)|(?:over|above|>)\s*\d|(?:under|below|<)\s*(\d+)/g;
const BESIDE = /\b(?:figures?|numbers?|values?)\s+in\s+(?:brackets|parentheses)\b.*\bind(?:ex|ices)\b|\(index\)/i;

/** Keys stand on one line with at least two signs, each before its word. */
export function keysOf(lines: readonly Line[], w: Words): Keys {
  const keyLines = new Set<number>();
  const signs = new Map<string, Rating>();
  let index: (readonly [number, Rating])[] = [];
  let indexBeside = false;
  for (const line of lines) {
    if (BESIDE.test(line.text)) indexBeside = true;
    const found = [...line.raw.matchAll(SIGN)];
    const pairs = found.flatMap((m, i): [string, Rating][] => {
      const said = line.text.slice(m.index + m[0].length, found[i + 1]?.index);
      const rating = w.ratings(said)[0]?.is ?? (/\bwithin\b/i.test(said) ? 'optimum' : null);
      return rating && !/\d/.test(said) ? [[m[0], rating]] : [];
    });
    if (pairs.length > 1 && pairs.length === found.length) {
      for (const [sign, rating] of pairs) signs.set(sign, rating);
      keyLines.add(line.number);
    }
    if (/\bind(?:ex|ices)\b/i.test(line.text)) {
      const classes = classesOf(line.text, w);
      if (classes.length > 2) {
        index = classes;
        keyLines.add(line.number);
      }
    }
  }
  return { lines: keyLines, signs, index, indexBeside };
}

function classesOf(text: string, w: Words): [number, Rating][] {
  const found = [...text.matchAll(CLASS)];
  // "low 0-25, medium 26-50": each word before its class; "0-25 low, 26-50 medium": behind it.
  const leads = w.ratings(text.slice(0, found[0]?.index)).length > 0;
  return found.flatMap((m, i): [number, Rating][] => {
    const [before, behind] = [found[i - 1], found[i + 1]];
    const rating = w.ratings(leads ? text.slice(before ? before.index + before[0].length : 0, m.index) : text.slice(m.index + m[0].length, behind?.index))[0]?.is;
    // "under 26" ends before 26.
    return rating ? [[m[1] ? Number(m[1]) : m[2] ? Number(m[2]) - 0.001 : Infinity, rating]] : [];
  }).sort((a, b) => a[0] - b[0]);
}

/** The rating that a line's last sign stands for. */
export function signOf(line: Line, keys: Keys): Rating | null {
  const last = [...line.raw.matchAll(SIGN)].at(-1);
  return last && /\d/.test(line.raw.slice(0, last.index)) ? keys.signs.get(last[0]) ?? null : null;
}
