/** What a line holds that could not be read, told at its place: a number misread, a name misspelt, a value lost. */
import type { Notice } from '../reason/notice.ts';
import { notice } from '../reason/notice.ts';
import { suggest } from '../reason/suggest.ts';
import { RATES } from '../tables/items.ts';
import type { Piece } from './cut.ts';
import type { Judged } from './judge.ts';
import type { Line } from './text.ts';
import { spot } from './text.ts';
import type { Numeral, Token } from './token.ts';
import type { Words } from './vocabulary.ts';
import { knownNames } from './vocabulary.ts';

/** What a fault needs of the context: the file, and the words of its language. */
type Told = { readonly file: string; readonly words: Words };

/** A name with a unit but no number that can be read: the odd word is pointed at. */
export function slipOf(piece: Piece, said: Judged, line: Line, file: string): Notice | null {
  const odd = piece.tokens.find((t) => !['filler', 'separator', 'unit', 'method', 'group'].includes(t.kind));
  if (odd?.kind !== 'word' || piece.item === 'lime') return null;
  const text = line.text.slice(odd.start, odd.end);
  // "7.5ozs" is a number and a unit of advice; "4l" is a number misread.
  const mixed = /\d/.test(text) && (!/^[\d.,]+\p{L}+$/u.test(text) || /[\d.,][lIioOBSsZzeE]$/.test(line.raw.slice(odd.start, odd.end)));
  const spelt = /^\p{L}/u.test(text) && piece.tokens[piece.tokens.indexOf(odd) + 1] === said.unitAt;
  const none = /^-?(?:inf(?:inity)?|nan)$/i.test(text);
  return mixed || spelt || none ? notice('not-a-number', 'error', { item: piece.item, read: text, number: likeNumber(line.raw.slice(odd.start, odd.end)) }, spot(line, file, odd.start, odd.end)) : null;
}

/** Letters that a scan or a hand puts for figures. */
const LIKE: Readonly<Record<string, string>> = { l: '1', I: '1', i: '1', o: '0', O: '0', B: '8', S: '5', s: '5', Z: '2', z: '2' };
/** The number that was perhaps meant, as an example to write; empty where the letters are none of these. */
function likeNumber(read: string): string {
  const figures = read.replace(/[lIioOBSsZz]/g, (c) => LIKE[c]!);
  return /\d/.test(read) && /^\d+(?:\.\d+)?$/.test(figures) ? figures : '';
}

/** More unknown words than these beside name and number are prose. */
const ODD_WORDS = { withUnit: 3, bare: 1 } as const;

/** A line that begins with a known name and holds a number, yet gave no reading: said, so that nothing is lost in silence. Advice and prose are not meant. */
export function unclear(piece: Piece, line: Line, file: string): Notice | null {
  if (piece.item === 'ratio' || piece.item === 'lime' || piece.item === 'texture' || piece.item === 'lime-requirement') return null;
  const flat = piece.tokens.flatMap((t) => (t.kind === 'group' ? t.tokens : [t]));
  if (flat.some((t) => t.kind === 'absent' || (t.kind === 'unit' && RATES.includes(t.is)))) return null;
  const units = flat.filter((t) => t.kind === 'unit');
  const methodDigit = units.length > 0 ? [...line.text.slice(piece.start, piece.end).matchAll(/(?<![\p{L}\d.,:])\d+(?:\.\d+)?(?!:)/gu)][0] : undefined;
  const number = flat.find((t) => t.kind === 'number' || t.kind === 'between') ?? (methodDigit ? { start: piece.start + methodDigit.index, end: piece.start + methodDigit.index + methodDigit[0].length } : undefined);
  if (!number || !piece.prefix.every((t) => t.kind === 'filler' || t.kind === 'separator' || t.kind === 'method' || t.kind === 'unit')) return null;
  const odd = flat.filter((t) => t.kind === 'word' && /\p{L}{2,}/u.test(t.text));
  if (odd.length > (units.length > 0 ? ODD_WORDS.withUnit : ODD_WORDS.bare)) return null;
  const nameEnd = piece.tokens[0]!.start;
  return notice('line-unclear', 'warning', { name: line.raw.slice(piece.start, nameEnd).replace(/[\s:=|-]+$/, ''), read: line.text.slice(number.start, number.end) }, spot(line, file, piece.start, number.end));
}

/** A line such as "Phosphorous 42 ppm": an unknown word where a name belongs. */
export function misspelt(tokens: readonly Token[], line: Line, told: Told): Notice | null {
  const at = tokens.findIndex((t) => t.kind === 'number');
  const words = tokens.slice(0, Math.max(0, at)).filter((t) => t.kind !== 'separator' && t.kind !== 'filler');
  if (words.length === 0 || !words.every((t) => t.kind === 'word')) return null;
  const read = line.text.slice(words[0]!.start, words.at(-1)!.end).replace(/\s+/g, ' ');
  // Chatter with a number is no reading: a unit, a word of rating or a colon must say that one is meant.
  if (!(tokens.some((t) => t.kind === 'unit' || t.kind === 'rating') || /[:=]/.test(line.text.slice(0, tokens[at]!.start)))) return null;
  return nameUnknown(read, words[0]!.start, line, told);
}

/** A word of four letters or more that is nearly a known name; null where none is near. */
function nameUnknown(read: string, start: number, line: Line, { file, words: { language } }: Told): Notice | null {
  const guess = read.length < 4 ? [] : suggest(read, knownNames(language), 2).slice(0, 3);
  return guess.length === 0 ? null : notice('name-unknown', 'error', { read, guess: guess.join(', ') }, spot(line, file, start, start + read.length));
}

/** "..., Zinko: 0.39 mg/kg" behind a reading: an unknown word with a number and a unit, near enough to a known name. */
export function slipsBeside(pieces: readonly Piece[], line: Line, told: Told): Notice[] {
  return [chunks(pieces[0]!.prefix, [[]]), ...pieces.map((p) => chunks(p.tokens, []))].flatMap((parts) => parts.flatMap((chunk): Notice[] => {
    const number = chunk.find((t): t is Numeral => t.kind === 'number');
    const at = number ? chunk.indexOf(number) : 0;
    const words = chunk.slice(0, at).filter((t) => t.kind !== 'filler');
    if (!number || words.length === 0 || !words.every((t) => t.kind === 'word') || !chunk.slice(at + 1).every((t) => t.kind === 'unit' || t.kind === 'rating' || t.kind === 'class' || t.kind === 'filler' || (t.kind === 'group' && t.tokens.every((u) => u.kind === 'rating'))) || (chunk.length === at + 1 && number.sign === null)) return [];
    const read = line.text.slice(words[0]!.start, words.at(-1)!.end);
    const slip = nameUnknown(read, words[0]!.start, line, told);
    return slip ? [slip] : [];
  }));
}

/** "... 88 (low) mag 97 ppm": behind a value an unknown word with a number and a unit of content. */
export function unnamed(pieces: readonly Piece[], line: Line, told: Told): Notice[] {
  return pieces.flatMap((p) => p.tokens.flatMap((t, i): Notice[] => {
    const [number, unit] = [p.tokens[i + 1], p.tokens[i + 2]];
    if (t.kind !== 'word' || !/^\p{L}{3,}$/u.test(t.text) || number?.kind !== 'number' || unit?.kind !== 'unit' || RATES.includes(unit.is) || unit.is === '%' || !p.tokens.slice(0, i).some((u) => u.kind === 'number')) return [];
    return [notice('line-unclear', 'warning', { name: line.raw.slice(t.start, t.end), read: number.printed }, spot(line, told.file, t.start, unit.end))];
  }));
}

/** What stands behind each separator or wide gap of a piece. */
function chunks(tokens: readonly Token[], out: Token[][]): Token[][] {
  let last = 0;
  tokens.forEach((t) => {
    if (t.kind === 'separator') out.push([]);
    else if (t.start - last > 2 && last > 0) out.push([t]);
    else out.at(-1)?.push(t);
    last = t.end;
  });
  return out;
}
