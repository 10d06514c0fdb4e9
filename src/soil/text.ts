/**
 * A report as lines ready for matching. Every replacement keeps the length, so an offset in the
 * prepared text is the same offset in the line as the grower has it.
 */
export type Line = { readonly number: number; readonly raw: string; readonly text: string };

/** Longer lines are no report of a soil test; they are named and left unread. */
export const LONGEST_LINE = 4000;
export const LARGEST_REPORT = 2_000_000;

const SINGLE: Readonly<Record<string, string>> = {
  '₀': '0', '₁': '1', '₂': '2', '₃': '3', '₄': '4', '₅': '5', '₆': '6', '₇': '7', '₈': '8', '₉': '9', '²': '2', '³': '3', '⁺': '+',
  '–': '-', '—': '-', '‐': '-', '‑': '-', '‒': '-', '−': '-', '⁻': '-', '：': ':', '，': ',', '．': '.', 'μ': 'u', 'µ': 'u', '×': 'x',
  '“': '"', '”': '"', '’': "'", '‘': "'", '´': "'", '*': ' ', '_': ' ', '•': ' ', '·': ' ', '\u200b': ' ', '\u200e': ' ', '\u200f': ' ', '\ufeff': ' ',
};

function prepare(raw: string): string {
  return raw
    .replace(/(\d)[\u00a0\u2009\u202f](?=\d{3}(?!\d))/g, "$1'")
    .replace(/[^\x20-\x7e]|[*_]/g, (c) => SINGLE[c] ?? (c === '\t' ? '\t' : /\s/.test(c) ? ' ' : plainLetter(c)))
    .replace(/mol\([+c]\)/gi, (unit) => `${unit.slice(0, 3)}   `)
    .replace(/\t/g, '|');
}

/** A full-width digit as a plain one, a letter without its accent; always one character for one. */
function plainLetter(c: string): string {
  const code = c.charCodeAt(0);
  const base = /\p{L}/u.test(c) ? c.normalize('NFD').charAt(0) : c;
  if (base !== c) return base;
  return code >= 0xff10 && code <= 0xff19 ? String.fromCharCode(code - 0xff10 + 48) : c;
}

export function linesOf(text: string): Line[] {
  return text.split(/\r\n|\n|\r/).map((raw, i) => ({ number: i + 1, raw, text: raw.length > LONGEST_LINE ? '' : prepare(raw) }));
}

/** True for a PDF, a picture or any other file that is not text. */
export function isBinary(text: string): boolean {
  const head = text.slice(0, 4096);
  let odd = 0;
  for (let i = 0; i < head.length; i++) {
    const code = head.charCodeAt(i);
    if (code === 0) return true;
    if (code < 9 || (code > 13 && code < 32) || code === 0xfffd) odd++;
  }
  return head.length > 0 && odd / head.length > 0.05;
}
