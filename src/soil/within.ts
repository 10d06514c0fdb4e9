/** Day and depth of sampling within a line that says other things too: "Sampled 3 Nov 2025 to 6 inches, received 5 Nov 2025". */
import { DEPTH_WORDS, OTHER_DAYS, SAMPLED } from '../tables/report-words.ts';
import type { DateOrder } from '../units/date.ts';
import { daysOf } from './meta.ts';
import type { Span } from './patterns.ts';
import { blank } from './vocabulary.ts';

export type Within = {
  readonly taken: string | null;
  /** A day of sampling that reads two ways. */
  readonly unsure: (Span & { readonly days: readonly string[] }) | null;
  readonly depth: Span & { readonly unit: string } | null;
  /** Whether every day of the line is understood: a line with another is still listed. */
  readonly whole: boolean;
};

const DAY = /(?<![\d.,/-])(?:\d{4}-\d{1,2}-\d{1,2}|\d{1,2}([./-])\d{1,2}\1(?:\d{4}|\d{2})|\d{1,2}(?:st|nd|rd|th|er|\.)?[ -](?:de |of )?[a-z]{3,12}\.?,?[ -](?:del? )?\d{4}|[a-z]{3,9}\.? \d{1,2}(?:st|nd|rd|th)?,? \d{4})(?![\d/-])/gi;
const LENGTH = '(?:in(?:ch(?:es)?)?\\b\\.?|"|\'\'|cm\\b|mm\\b|zoll\\b|pulgadas?\\b|pouces?\\b|pollici\\b|polegadas?\\b)';
const SPAN = `\\d+(?:[.,]\\d+)?(?: ?(?:in|cm|mm|") ?)?(?: ?(?:-|to|bis|au?|ate) ?\\d+(?:[.,]\\d+)?)? ?${LENGTH}`;
const TWO = `\\d+(?:[.,]\\d+)?(?: ?(?:in|cm|mm|") ?)? ?(?:-|to|bis|au?|ate) ?\\d+(?:[.,]\\d+)? ?${LENGTH}`;
/** "depth (cm): 15", "depth 0-6 in", "20 cm deep"; where the line speaks of sampling also "to 6 in" and "0-15 cm". */
const DEPTHS: readonly RegExp[] = [
  new RegExp(`(?:${DEPTH_WORDS}) ?\\((?<unit>cm|mm|in|inches)\\) ?[:=]? ?(?<depth>\\d+(?:[.,]\\d+)?(?: ?(?:-|to|bis) ?\\d+(?:[.,]\\d+)?)?)`, 'i'),
  new RegExp(`(?:${DEPTH_WORDS})(?: (?:of|is|was|von|di|de|from))? ?[:=]? ?(?<depth>${SPAN})`, 'i'),
  new RegExp(`(?<![\\d.,])(?<depth>${SPAN}) ?(?:in |de |di )?(?:${DEPTH_WORDS}|deep\\b|tief\\b)`, 'i'),
];
const LOOSE: readonly RegExp[] = [new RegExp(`(?<![\\d.,/-])(?<depth>${TWO})`, 'i'), new RegExp(`\\b(?:to|down to|bis|hasta|jusqu'a|fino a|ate) (?<depth>${SPAN})`, 'i')];

/** What a line says within it; null where it says neither. `order` where the report's language or country settles that of day and month. */
export function withinLine(text: string, order: DateOrder): Within | null {
  if (text.length > 300) return null;
  const found = [...text.matchAll(DAY)].map((m) => ({ start: m.index, end: m.index + m[0].length, days: daysOf(m[0].replace(/(?<=\d)(?:st|nd|rd|th)\b/i, '').replace(/\bof\b/i, '').replace(/ {2,}/g, ' ')) })).filter((d) => d.days.length > 0);
  const sampled = found.find((d, i) => isSampling(text.slice(found[i - 1]?.end ?? 0, d.start), text.slice(d.end, d.end + 24)));
  const depth = depthOf(blank(text, found));
  if (!sampled && !depth) return null;
  // Only English puts the month first, and not everywhere.
  const foreign = [...text.matchAll(SAMPLED)].some((m) => !/^(?:sampl|collected|taken|drawn|pulled)/i.test(m[0]));
  const settled = order !== null || foreign;
  const sure = sampled && (sampled.days.length === 1 || settled) ? (order === 'month first' && !foreign ? sampled.days[0]! : sampled.days.at(-1)!) : null;
  return { taken: sure, unsure: sampled && sure === null ? sampled : null, depth, whole: sampled !== undefined || found.length === 0 };
}

/** The last word before a day says whose it is; without one, a word right behind it. */
function isSampling(before: string, after: string): boolean {
  const last = (pattern: RegExp): number => [...before.matchAll(pattern)].at(-1)?.index ?? -1;
  const [own, other] = [last(SAMPLED), last(OTHER_DAYS)];
  return own < 0 && other < 0 ? new RegExp(`^[ ,;:(-]{0,3}(?:${SAMPLED.source})`, 'i').test(after) : own > other;
}

/** What every depth holds; most lines do not, and are spared the larger patterns. */
const LONG = /\d ?(?:in|"|''|cm|mm|zoll|pulg|pouc|poll|poleg)|\((?:cm|mm|in)/i;

function depthOf(text: string): Within['depth'] {
  if (!LONG.test(text)) return null;
  const says = new RegExp(SAMPLED.source, 'i').test(text);
  for (const pattern of [...DEPTHS, ...(says ? LOOSE : [])]) {
    const m = pattern.exec(text);
    if (!m) continue;
    const printed = m.groups!['depth']!;
    const start = m.index + m[0].indexOf(printed);
    return { start, end: start + printed.length, unit: m.groups!['unit'] ?? '' };
  }
  return null;
}
