/**
 * One line of a report → its readings. The line is cut at the names it holds; each piece is then judged
 * part by part (value, unit, method, range, word), so that a fault is named where it stands.
 * Between a name and its value only filler may stand; anything else is chatter and makes no reading.
 */
import type { Notice, Place } from '../reason/notice.ts';
import { notice } from '../reason/notice.ts';
import { suggest } from '../reason/suggest.ts';
import type { Item, Method, ReportUnit } from '../tables/items.ts';
import { CATION_ITEMS, ELEMENT_OF } from '../tables/items.ts';
import { CONDITION, GOAL, SATURATION } from '../tables/report-words.ts';
import { TEXTURE_WORDS } from '../tables/texture.ts';
import type { Context } from './context.ts';
import type { Piece } from './cut.ts';
import { cellEnd, cut, has, isNumber, isPh, leadsName } from './cut.ts';
import { countedUnit, FORMS, indexWord, shape } from './form.ts';
import { AMOUNTS, rateUnit } from './ground.ts';
import type { Judged } from './judge.ts';
import { judge } from './judge.ts';
import type { Parsed } from './number.ts';
import { findMethods, KNOWN_UNITS, lower } from './patterns.ts';
import type { Range, Reading } from './reading.ts';
import { misspelt, slipOf, slipsBeside, unclear, unnamed } from './slip.ts';
import type { Line } from './text.ts';
import { spot } from './text.ts';
import type { Between, Numeral, Token } from './token.ts';

export type LineResult = { readonly readings: readonly Reading[]; readonly notices: readonly Notice[] };
const GERMAN: readonly (Method | null)[] = ['cal', 'dl', 'cacl2'];

/** Items of hundreds and thousands of ppm: "2.405" of them is perhaps a thousand with a point, as in these units or none. */
const BULK: readonly string[] = ['calcium', 'magnesium', 'potassium'];

const BULK_UNITS: readonly (ReportUnit | null)[] = ['ppm', 'mg/kg', 'mg/L', 'lb/acre', 'kg/ha', null];

/** What a German class may stand behind. */
const takesClass = (item: string): boolean => item in ELEMENT_OF || item === 'ph' || item === 'ph-salt' || item === 'lime';

export function readLine(line: Line, context: Context): LineResult {
  const notices: Notice[] = [];
  const readings: Reading[] = [];
  const german = context.german || [context.method, ...findMethods(line.text).map((m) => m.is)].some((m) => GERMAN.includes(m));
  const tokens = context.look(line.text, german);
  const pieces = cut(tokens, line.text);
  const labelled = SATURATION.exec(line.text);
  const lead = leadOf(pieces, context);
  const lost: Piece[] = [];
  pieces.forEach((piece, i) => {
    if (sharesValue(pieces, i, line)) {
      const from = pieces[i - 1]?.start ?? 0;
      notices.push(notice('line-shared', 'warning', { name: line.raw.slice(from, piece.end).trim() }, spot(line, context.file, from, piece.end)));
      return;
    }
    const below = labelled !== null && labelled.index < piece.start ? { ...lead, saturation: true } : lead;
    const told = notices.length;
    const reading = readPiece(piece, line, below, notices, pieces.length === 1);
    if (reading) readings.push(reading);
    else if (notices.length === told) lost.push(piece);
  });
  if (pieces.length === 0) {
    const slip = misspelt(tokens, line, context);
    if (slip) notices.push(slip);
  } else if (readings.length === 0 && notices.length === 0) {
    const lost = unclear(pieces[0]!, line, context.file);
    if (lost) notices.push(lost);
  }
  if (readings.length > 0) {
    readings.push(...bareTexture(line, context.file));
    const slips = slipsBeside(pieces, line, context);
    // One mistake is told once.
    const fresh = unnamed(pieces, line, context).filter((n) => !slips.some((slip) => slip.place!.column === n.place!.column));
    notices.push(...lost.flatMap((p) => unclear(p, line, context.file) ?? []), ...slips, ...fresh);
  }
  return { readings: readings.map((r) => (r.unit === null && CATION_ITEMS.includes(r.item) && readings.some((o) => o.unit === 'MAF') ? { ...r, unit: 'MAF' as const } : r)), notices };
}

const AND = /(?:\b(?:and|und|y|et|e)|[&+])\s*$/i;

/** A lone comma between words: "Phosphorus, , potassium" and "Phosphorus: , potassium" are cells, of which the first is empty. */
const COMMA = /[a-z)\]] ?, ?$/i;

/** A symbol that nothing follows is no name by itself. */
const SYMBOL = /(?:^|[\s,;|])(?:N|P|K|Ca|Mg|Na|S|B|Zn|Mn|Mo|Cu|Cl|Fe|Al)\s*$/;

const isValued = (tokens: readonly Token[]): boolean => has(tokens, 'number', 'between', 'trace', 'rating') || tokens.some((t) => t.kind === 'group' && isValued(t.tokens));

/** "Phosphorus and potassium 42 ppm", "Phosphorus, potassium 42 ppm": nobody can tell whose the value is. "Nitrogen, nitrate 12" is one thing. */
function sharesValue(pieces: readonly Piece[], i: number, line: Line): boolean {
  const [before, piece] = [pieces[i - 1], pieces[i]!];
  if (!isValued(piece.tokens)) return false;
  const and = AND.exec(line.text.slice(0, piece.start));
  if (!and) {
    const [first, second] = [before, piece].map((p) => ELEMENT_OF[(p?.item ?? '') as Item]);
    if (!before || first === undefined || second === undefined || first === second || !COMMA.test(line.text.slice(0, piece.start))) return false;
    // "23 ppm phosphorus, potassium 180 ppm": the first has its own.
    return !isValued(before.tokens) && !has(before.tokens, 'absent', 'unit', 'word') && !isValued(lastCell(before.prefix));
  }
  if (SYMBOL.test(line.text.slice(0, and.index))) return true;
  return before !== undefined && before.item !== 'texture' && before.item !== piece.item && !isValued(before.tokens) && !has(before.tokens, 'absent');
}

/** "Micronutrients (DTPA, ppm): Zn 2.1; Mn 14.8": what stands before the first name holds for the whole line. */
function leadOf(pieces: readonly Piece[], context: Context): Context {
  const [first] = pieces;
  if (!first) return context;
  const lead = first.prefix.flatMap((t) => (t.kind === 'group' ? t.tokens : [t]));
  const unit = lead.find((t): t is Token & { kind: 'unit' } => t.kind === 'unit' && t.is !== '%');
  const method = lead.find((t) => t.kind === 'method');
  // "23 ppm P, ..." and "Olsen P, ..." are of the first alone.
  if (has(lead, 'number', 'between') || !has(first.prefix, 'group', 'word', 'unit')) return context;
  return { ...context, unit: unit?.is ?? context.unit, method: method?.is ?? context.method };
}

/** "pH (buffer) 6.8", "pH 6.8 (Mehlich buffer)", "pH 6.8 (lime index)", "pH 5.8 (salt)": brackets that say of what. */
const OF_WHAT = /(?:^\D+|\d ?)[([](?:(?!no |not |low |high )[a-z-]+ )?(buffer|lime(?: test)? index|salt)(?: ph| index| value)?[)\]]/i;

function readPiece(piece: Piece, line: Line, context: Context, notices: Notice[], alone: boolean): Reading | null {
  const text = line.text.slice(piece.start, piece.end);
  const of = piece.item === 'ph' ? OF_WHAT.exec(text)?.[1]!.toLowerCase() : undefined;
  const item = of === 'salt' ? 'ph-salt' : of === undefined ? piece.item : 'buffer-ph';
  if (item === 'ratio') return null;
  const place = (at: { start: number; end: number }): Place => spot(line, context.file, at.start, at.end);
  if (piece.item === 'texture') return textureOf(piece, line, place(piece));
  const judged = judge(piece, context.indexBeside);
  if (judged.absent) return null;
  const said = withPrefix(piece.prefix, judged, !piece.tokens.some((t) => t.kind === 'word' || t.kind === 'unit'));
  const { value } = said;
  const rating = said.rating ?? (takesClass(piece.item) ? said.letter : null);
  if (said.second && value) {
    notices.push(notice('two-values', 'warning', { item: piece.item, a: printed(value, line), b: said.second.printed }, place(said.second)));
    return null;
  }
  if (said.odd !== null && (value === null || said.odd.start < value.start)) {
    const slip = value !== null || said.unit !== null || piece.tokens.some((t) => t.kind === 'word' && /^(?:[\d.]|(?:nan|inf(?:inity)?)$)/i.test(t.text)) ? slipOf(piece, said, line, context.file) : null;
    if (slip) notices.push(slip);
    return null;
  }
  // "P ppm | very high" has a word for its value; in "P ppm, optimum, K ppm, optimum" are heads, and a number that could not be taken says more than the word.
  if (value === null && (rating === null || (said.unit !== null && rating === 'optimum' && !alone) || piece.tokens.some((t) => t.kind === 'number' || (t.kind === 'group' && has(t.tokens, 'number'))) || (said.start !== null && !lastCell(piece.prefix).every((t) => t.kind === 'rating')))) return null;

  if (isNoReading(piece, said)) return null;
  // "Pottasium base saturation": the unknown word says whose.
  const before = piece.prefix.filter((t) => t.kind !== 'filler').at(-1);
  if (piece.item === 'base-saturation' && before?.kind === 'word' && piece.start - before.end < 2) {
    notices.push(notice('line-unclear', 'warning', { name: line.raw.slice(before.start, piece.start).trim(), read: value ? printed(value, line) : '' }, place({ start: before.start, end: piece.end })));
    return null;
  }
  for (const part of value?.kind === 'between' ? [value.low, value.high] : value?.kind === 'number' ? [value.is] : []) {
    if (!('unclear' in part)) continue;
    notices.push(notice('number-unclear', 'error', { read: printed(value!, line), a: part.unclear[0], b: part.unclear[1] }, place(value!)));
    return null;
  }
  if (value?.kind === 'number' && context.style === 'point' && /^[1-9]\d{0,2}\.\d{3}$/.test(value.printed) && BULK.includes(item) && BULK_UNITS.includes(said.unit)) {
    notices.push(notice('number-unclear', 'error', { read: value.printed, a: numberOf(value.is), b: Number(value.printed.replace('.', '')) }, place(value)));
    return null;
  }
  const number = value?.kind === 'number' ? numberOf(value.is) * (value.minus ? -1 : 1) : value?.kind === 'between' ? numberOf(value.low) : null;
  // "Ground limestone: 46 lb", below "per 1,000 sq ft:".
  const rate = (item === 'lime' || item === 'lime-requirement') && context.ground !== null && said.behind ? rateUnit(said.behind.text, context.ground) : null;
  const unit = (said.index !== null && said.index === value) || (piece.index && said.unit === null) ? 'index' : rate ?? said.unit;
  const inUnit = said.unitAt ? /p2o5|k2o|mgo|cao|(?<=mg ?)[pk]\b/i.exec(line.text.slice(said.unitAt.start, said.unitAt.end))?.[0] : undefined;
  const ownForm = inUnit ? FORMS[inUnit.toLowerCase()] ?? null : null;
  const counted = item === 'lime' || item === 'lime-requirement' ? countedUnit(unit, text) : unit;
  if (counted === 'unknown') {
    notices.push(notice('line-unclear', 'warning', { name: line.raw.slice(piece.start, piece.start + piece.name.length), read: value ? printed(value, line) : '' }, place(piece)));
    return null;
  }
  const shaped = shape({ ...piece, item, form: piece.loose && inUnit ? ownForm : piece.form ?? ownForm }, counted, context, item === 'buffer-ph' && of !== undefined ? findMethods(text).map((m) => m.is) : said.methods);
  if (!shaped) return null;
  if (number !== null && shaped.unit === null && said.behind) {
    const guess = suggest(said.behind.text, KNOWN_UNITS);
    if (guess.length > 0 && needsUnit(shaped.item)) notices.push(notice('unit-unknown', 'error', { read: said.behind.text, guess: guess.join(', ') }, place(said.behind)));
    else if (piece.tokens.filter((t) => t.kind === 'word').length < 3) notices.push(notice('line-unclear', 'warning', { name: line.raw.slice(piece.start, value!.start).replace(/[\s:=|-]+$/, ''), read: printed(value!, line) }, place({ start: piece.start, end: value!.end })));
    return null;
  }
  const fault = number === null ? null : implausible(shaped.item, number, shaped.unit);
  if (fault) {
    const from = value?.kind === 'number' && value.minus ? value.start - 1 : value!.start;
    notices.push(notice(fault, 'error', { item: shaped.item, read: printed(value!, line) }, place({ start: from, end: value!.end })));
    return null;
  }
  if (piece.loose && !inUnit && number !== null && shaped.form && shaped.unit !== 'index') notices.push(notice('form-meant', 'warning', { item: shaped.item, form: shaped.form, read: line.raw.slice(piece.start, piece.start + piece.name.length) }, place(piece)));
  const index = said.index !== null && said.index !== value ? numberOf(said.index.is) : null;
  const range = rangeOf(said.range);
  const isReversed = range !== null && range[0] !== null && range[1] !== null && range[0] > range[1];
  // No limit of a soil; of a pH it is mostly the value of a name that was lost, which is told by itself.
  const wild = range?.find((n) => n !== null && (n > MILLION || (isPh(shaped) && n > PH_SCALE))) ?? null;
  if (wild !== null && wild > MILLION) notices.push(notice(isPh(shaped) ? 'ph-impossible' : 'value-impossible', 'warning', { item: shaped.item, read: String(wild) }, place(piece)));
  if (isReversed) notices.push(notice('range-reversed', 'warning', { item: shaped.item, read: `${range[0]}-${range[1]}` }, place(piece)));
  return {
    item: shaped.item, value: number, unit: shaped.unit, form: shaped.form, method: shaped.method,
    asPrinted: asStands(line.raw.slice(said.start ?? piece.start, piece.end)),
    place: place({ start: piece.start, end: piece.end }),
    lab: {
      rating: rating ?? indexWord(unit === 'index' ? number : index, shaped.method ?? context.method, context),
      range: isReversed || wild !== null ? null : range,
    },
    ...(said.tag !== null && shaped.method === null ? { tag: said.tag } : {}),
    ...(piece.index && shaped.unit === 'index' ? { scheme: 'north-carolina.index' as const } : {}),
    ...(index !== null ? { index } : {}),
    ...(value?.kind === 'between' ? { to: numberOf(value.high) } : {}),
    ...(value?.kind === 'trace' || (value?.kind === 'number' && value.sign === '<') ? { below: true as const } : {}),
    ...(value?.kind === 'number' && value.sign === '>' ? { above: true as const } : {}),
  };
}

/** As printed, without bold marks, what parts it from its neighbour, or the end of brackets that began before it. */
function asStands(raw: string): string {
  const text = raw.replaceAll('*', '').replace(/(?:[\s,;|]| -)+$/, '');
  return text.includes('(') ? text : text.replace(/\)$/, '');
}

/** Goals, conditions and footnotes, which look like readings. */
function isNoReading(piece: Piece, said: Judged & { readonly start: number | null }): boolean {
  const { value } = said;
  const prefixed = (words: RegExp): boolean => piece.prefix.some((t) => t.kind === 'word' && words.test(t.text));
  // "Optimum pH 6.0 to 6.8".
  if (said.start !== null && said.rating === 'optimum' && (value?.kind === 'between' || piece.item === 'ph')) return true;
  if (prefixed(CONDITION) || (piece.item === 'ph' && prefixed(GOAL))) return true;
  // "3 Mehlich buffer pH, 4 Summation of cations".
  return isPh(piece) && said.behind !== null && value?.kind === 'number' && /^\d$/.test(value.printed) && has(piece.prefix, 'number');
}

const printed = (at: { start: number; end: number }, line: Line): string => line.text.slice(at.start, at.end);
const numberOf = (parsed: Parsed): number => ('value' in parsed ? parsed.value : parsed.unclear[0]);

/** What stands right before the name is the piece's own where nothing behind it says so: "very high magnesium", "Colwell P", "4.1 % organic matter". */
function withPrefix(prefix: readonly Token[], said: Judged, bare: boolean): Judged & { readonly start: number | null } {
  const lead = lastCell(prefix);
  const last = lead.at(-1);
  const methods = [...said.methods, ...prefix.flatMap((t) => (t.kind === 'method' ? [t.is] : []))];
  const own = { ...said, methods, start: null };
  if (last?.kind === 'rating' && said.rating === null) return { ...own, rating: last.is, start: last.start };
  // "% Organic matter 3.7".
  if (last?.kind === 'unit' && said.unit === null && lead.length === 1) return { ...own, unit: last.is, unitAt: null };
  const number = lead.find(isNumber);
  if (!bare || said.value !== null || !number || !leadsName(lead, true)) return own;
  const unit = lead.find((t): t is Token & { kind: 'unit' } => t.kind === 'unit') ?? null;
  // "Apply 40 lb/acre N" is advice.
  if (unit && AMOUNTS.includes(unit.is)) return own;
  return { ...own, value: number, unit: unit?.is ?? null, unitAt: unit, odd: null, start: number.start };
}

const lastCell = (tokens: readonly Token[]): readonly Token[] => cellEnd(tokens).filter((t) => t.kind !== 'filler');

/** Items that mean nothing without a unit. */
export const needsUnit = (item: Item): boolean => ELEMENT_OF[item] !== undefined || item === 'organic-matter' || item === 'organic-carbon' || item === 'salts' || item === 'cec';

/** More than the whole soil: a million parts in a million. */
const MILLION = 1e6;
/** The end of the scale of pH. */
const PH_SCALE = 14;

function implausible(item: Item, value: number, unit: ReportUnit | null): 'ph-impossible' | 'value-negative' | 'value-impossible' | 'share-impossible' | null {
  if ((item === 'ph' || item === 'ph-salt') && (value < 2.5 || value > 11)) return 'ph-impossible';
  if (value < 0 && item !== 'saturation-na') return 'value-negative';
  if (unit === '%' && value > 100) return 'share-impossible';
  if (value > MILLION) return 'value-impossible';
  return null;
}

/** A texture is told in words alone. */
function textureOf(piece: Piece, line: Line, place: Place): Reading | null {
  if (!piece.tokens.some((t) => t.kind === 'word' || t.kind === 'name' || t.kind === 'rating')) return null;
  return { item: 'texture', value: null, unit: null, form: null, method: null, asPrinted: asStands(line.raw.slice(piece.start, piece.end)), place, lab: { rating: null, range: null } };
}

/** Textures that mean nothing else where they stand alone between commas. */
const BARE_TEXTURES: ReadonlySet<string> = new Set(TEXTURE_WORDS.flatMap(({ words }) => words.filter((w) => w.includes(' ') || w === 'loam' || w === 'lehm')));

/** "Silt loam, pH 6.4, ...": a texture beside other items that nothing announces. */
function bareTexture(line: Line, file: string): Reading[] {
  const found = [...line.text.matchAll(/[^,;|()\s]+(?: [^,;|()\s]+)*/g)].find((m) => BARE_TEXTURES.has(lower(m[0])));
  if (!found) return [];
  const [start, end] = [found.index, found.index + found[0].length];
  return [{ item: 'texture', value: null, unit: null, form: null, method: null, asPrinted: line.raw.slice(start, end), place: spot(line, file, start, end), lab: { rating: null, range: null } }];
}

/** The lab's range: a printed span beside the value, or a limit such as ">10" after it. */
function rangeOf(range: Between | Numeral | null): Range | null {
  if (!range) return null;
  if (range.kind === 'between') return [numberOf(range.low), numberOf(range.high)];
  return range.sign === '<' ? [null, numberOf(range.is)] : [numberOf(range.is), null];
}
