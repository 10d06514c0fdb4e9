/**
 * One line of a report → its readings. The line is cut at the names it holds; each piece is then judged
 * part by part (value, unit, method, range, word), so that a fault is named where it stands.
 * Between a name and its value only filler may stand; anything else is chatter and makes no reading.
 */
import type { Notice, Place } from '../reason/notice.ts';
import { notice, placeIn } from '../reason/notice.ts';
import { suggest } from '../reason/suggest.ts';
import type { Item, Method, ReportUnit } from '../tables/items.ts';
import { ELEMENT_OF, SATURATION_OF } from '../tables/items.ts';
import type { Name } from '../tables/names.ts';
import type { Rating } from '../tables/ratings.ts';
import type { Oxide } from '../units/substance.ts';
import type { Style } from './number.ts';
import { NUMBER, parseNumber } from './number.ts';
import type { Range, Reading } from './reading.ts';
import type { Line } from './text.ts';
import type { Found, Span } from './vocabulary.ts';
import { blank, findClasses, findMethods, findNames, findRatings, findUnits, KNOWN_NAMES, KNOWN_UNITS } from './vocabulary.ts';

/** What headings said about the lines below them. */
export type Context = {
  readonly file: string;
  readonly style: Style;
  readonly method: Method | null;
  readonly unit: ReportUnit | null;
  readonly saturation: boolean;
  /** A German report: a letter A to E behind a value is its class. */
  readonly german: boolean;
  /** The lowest index of a scale that the report names: 0 in the UK, 1 in Ireland. */
  readonly indexFrom: 0 | 1 | null;
};

export type LineResult = { readonly readings: readonly Reading[]; readonly notices: readonly Notice[] };

type Piece = Span & { readonly nameStart: number; readonly item: Item | 'ratio' | 'lime'; readonly form: Oxide | null; readonly method: Method | null; readonly prefix: string };

const FORMS: Readonly<Record<string, Oxide>> = { p2o5: 'P2O5', k2o: 'K2O', mgo: 'MgO', cao: 'CaO' };
const GROUP = /\(([^()]*)\)|\[([^\][]*)\]/g;
const FILLER = /^(?:[\s:;=|,.!'"-]|\b(?:is|was|were|are|at|of|in|by|about|around|approx(?:imately)?|only|came|out|back|levels?|result|results|value|reading|rating|test|tests|soil|extractable|available|exchangeable|extract|total|the|a|content|range|estimated?|index|stufe|klasse|class|gehalt|gehaltsklasse|methode?|verfahren|extrakt|auszug|nach|als|verfugbar|pflanzenverfugbar|using|via|with|extraction|extractant|en|im|de|del|to|for|by)\b)*$/i;
const ABSENT = /\b(?:not requested|not tested|not determined|not analy[sz]ed|n\/a|no data)\b/i;
const TRACE = /\b(?:trace|undetectable|not detected|none detected|below detection|bdl|nd|n\.d\.)(?![\p{L}])/iu;
const RANGE_LABEL = /(?:\b(?:range|is|are|of|level|levels|between|target)\b|[\s:=])*$/i;
const DATE = /\b\d{1,4}[/.-]\d{1,2}[/.-]\d{2,4}\b/g;
const isGerman = (method: Method | null): boolean => method === 'cal' || method === 'dl' || method === 'cacl2';
const BUFFERS: readonly (Method | null)[] = ['smp', 'sikora', 'mehlich-buffer', 'adams-evans', 'woodruff'];
const takesClass = (item: Piece['item']): boolean => item === 'ph' || item === 'ph-salt' || item === 'lime' || (item !== 'ratio' && ELEMENT_OF[item] !== undefined);
const VALUE = new RegExp(`(<=?|>=?|≤|≥|less than|more than|under|over)?\\s*(?<![a-z\\d.,])(-(?=\\.?\\d))?(${NUMBER})(?![\\d:]|[.,']\\d)`, 'gi');
const SPAN = new RegExp(`(?<![\\d.,a-z])(${NUMBER})\\s*(?:-|to\\b|bis\\b|\\.\\.\\.?|a\\b(?= *\\d))\\s*(${NUMBER})(?![\\d])`, 'gi');

export function readLine(line: Line, context: Context): LineResult {
  const notices: Notice[] = [];
  const readings: Reading[] = [];
  const dateless = blank(line.text, [...line.text.matchAll(DATE)].map((m) => ({ start: m.index, end: m.index + m[0].length })));
  const classes = context.german || [context.method, ...findMethods(dateless).map((m) => m.is)].some(isGerman) ? findClasses(dateless) : [];
  const text = blank(dateless, classes);
  const pieces = cut(text);
  for (const piece of pieces) {
    const reading = readPiece(piece, text, line, context, classes, notices);
    if (reading) readings.push(reading);
  }
  if (pieces.length === 0) {
    const slip = misspelt(text, line, context.file);
    if (slip) notices.push(slip);
  } else if (readings.length === 0 && notices.length === 0) {
    const lost = unclear(pieces[0]!, text, line, context.file);
    if (lost) notices.push(lost);
  }
  return { readings, notices };
}

/** Cuts a line at its names; "(P)" after "Phosphorus" is the same name, "(P2O5)" says the form. */
function cut(text: string): Piece[] {
  const groups = [...text.matchAll(GROUP)].map((m) => ({ start: m.index, end: m.index + m[0].length }));
  const within = (at: Span): Span | undefined => groups.find((g) => g.start < at.start && at.end < g.end);
  const units = findUnits(text);
  const methodless = blank(text, findMethods(text));
  const merged: { start: number; end: number; names: Found<Name>[] }[] = [];
  for (const found of findNames(text)) {
    if (units.some((u) => u.start <= found.start && found.end <= u.end)) continue;
    const last = merged.at(-1);
    if (last?.names[0]!.is.item === 'texture' && /^(?:sand|silt|clay)$/.test(found.is.item)) continue;
    const group = within(found);
    const gap = last ? methodless.slice(last.end, found.start) : '';
    if (last && isAlias(last.names.at(-1)!.is, found.is, gap)) {
      last.names.push(found);
      last.end = group && gap.includes('(') ? group.end : found.end;
    } else if (!group) merged.push({ start: found.start, end: found.end, names: [found] });
  }
  return merged.map(({ start, end, names }, i) => {
    const next = merged[i + 1]?.start ?? text.length;
    const before = merged[i - 1]?.end ?? 0;
    const gap = text.slice(before, start);
    const stop = i === 0 ? 0 : before + Math.max(gap.lastIndexOf(','), gap.lastIndexOf(';'), gap.lastIndexOf('|')) + 1;
    const nextGap = text.slice(end, next);
    const cutAt = i === merged.length - 1 ? next : end + ownPart(nextGap);
    const items = names.map((n) => n.is);
    const item = items.find((n) => n.item === 'nitrate-n')?.item ?? items[0]!.item;
    return {
      nameStart: start, start: end, end: cutAt, item,
      form: items.find((n) => n.form)?.form ?? null,
      method: items.find((n) => n.method)?.method ?? findMethods(text.slice(start, end))[0]?.is ?? null,
      prefix: i === 0 || stop > before ? text.slice(stop, start) : '',
    };
  });
}

/** How much of the text between two names belongs to the first: up to the last separator, unless only words follow it. */
function ownPart(gap: string): number {
  const at = Math.max(gap.lastIndexOf(','), gap.lastIndexOf(';'), gap.lastIndexOf('|'));
  if (at < 0) return gap.length;
  const tail = gap.slice(at + 1);
  return /\d/.test(tail) ? gap.length : at;
}

function isAlias(a: Name, b: Name, gap: string): boolean {
  if (/\d/.test(gap) || !/^[\s,/|()=:-]*$/.test(gap)) return false;
  if (a.item === b.item) return gap.replace(/ +/g, ' ').length < 6;
  return gap.includes('(') && ((a.item === 'nitrogen' && b.item === 'nitrate-n') || (a.item === 'lime' && (b.item === 'carbonate' || b.item === 'ph')));
}

function readPiece(piece: Piece, text: string, line: Line, context: Context, classes: readonly Found<Rating>[], notices: Notice[]): Reading | null {
  if (piece.item === 'ratio') return null;
  const own = text.slice(piece.start, piece.end);
  const groups = [...own.matchAll(GROUP)].map((m) => ({ start: m.index, end: m.index + m[0].length, inside: m[1] ?? m[2] ?? '' }));
  const outside = blank(own, groups);
  const place = (from: number, to: number): Place => placeIn(context.file, line.number, line.raw, piece.start + from, piece.start + to);
  const where = placeIn(context.file, line.number, line.raw, piece.nameStart, piece.end);
  if (ABSENT.test(outside)) return null;
  if (piece.item === 'texture') return textureOf(piece, own, line, where);

  const main = judge(outside);
  const inGroups = groups.map((g) => ({ ...g, ...judge(g.inside) }));
  const carrier = main.values.length === 0 && main.spans.length === 0 && !main.trace
    ? inGroups.find((g) => (g.values.length > 0 && (g.units.length > 0 || g.bare)) || g.trace) : undefined;
  const source = carrier ?? main;
  const offset = carrier ? carrier.start + 1 : 0;

  const units = [...source.units, ...main.units, ...inGroups.filter((g) => g.bare || g.units.length > 0).flatMap((g) => g.units)];
  const methods = [...main.methods, ...inGroups.flatMap((g) => g.methods), ...findMethods(piece.prefix)];
  const ratings = [...main.ratings, ...inGroups.filter((g) => g.values.length === 0).flatMap((g) => g.ratings)];
  const prefixRatings = findRatings(piece.prefix);
  // The lab's word wins over its letter.
  const letter = takesClass(piece.item) ? classes.find((c) => c.start >= piece.start && c.end <= piece.end) : undefined;
  const rating = ratings[0]?.is ?? lastWord(piece.prefix, prefixRatings) ?? letter?.is ?? null;

  const first = source.values[0];
  const span = first ? undefined : source.spans[0];
  let filler = first ? source.rest.slice(0, first.from) : span ? source.rest.slice(0, span.start) : source.rest;
  if (carrier) filler = main.rest;
  if (first ?? span ?? source.trace) {
    if (!FILLER.test(filler)) return slipOf(piece, own, units, notices, place);
  } else if (units.length > 0 || /\d/.test(blank(outside, main.methods))) {
    return slipOf(piece, own, units, notices, place);
  } else if (!rating || !FILLER.test(main.rest) || (prefixRatings.length > 0 && !FILLER.test(blank(piece.prefix, prefixRatings)))) {
    return null;
  }

  let value: number | null = null;
  if (first ?? span) {
    const parsed = parseNumber((first ?? span)!.printed, context.style);
    if ('unclear' in parsed) {
      notices.push(notice('number-unclear', 'error', { read: (first ?? span)!.printed, a: parsed.unclear[0], b: parsed.unclear[1] }, place(offset + (first ?? span)!.start, offset + (first ?? span)!.end)));
      return null;
    }
    value = first?.minus ? -parsed.value : parsed.value;
  }

  const at = (first ?? span)?.end ?? 0;
  const isIndex = first !== undefined && /\bindex\W*$|-i\W*$/i.test(source.rest.slice(0, first.start));
  const unit = isIndex ? 'index' : nearest(source.units, at) ?? units[0]?.is ?? null;
  const printedUnit = (source.units.find((u) => u.start >= at) ?? units[0]);
  const inUnit = printedUnit ? /p2o5|k2o|mgo|cao/i.exec((carrier ? own.slice(offset) : own).slice(printedUnit.start, printedUnit.end))?.[0] : undefined;
  const shaped = shape({ ...piece, form: piece.form ?? FORMS[inUnit?.toLowerCase() ?? ''] ?? null }, unit, context, methods.map((m) => m.is));
  if (!shaped) return null;

  if (value !== null && shaped.unit === null && first) {
    const after = /^\s*([\p{L}%][\p{L}\d/%.-]*)/u.exec(source.rest.slice(first.end));
    if (after && !FILLER.test(after[1]!)) {
      const guess = suggest(after[1]!, KNOWN_UNITS);
      const begin = offset + first.end + after[0].length - after[1]!.length;
      if (guess.length > 0 && needsUnit(shaped.item)) notices.push(notice('unit-unknown', 'error', { read: after[1]!, guess: guess.join(', ') }, place(begin, begin + after[1]!.length)));
      return null;
    }
  }
  const fault = value === null ? null : implausible(shaped.item, value, shaped.unit);
  if (fault) {
    const where = first ?? span!;
    notices.push(notice(fault, 'error', { item: shaped.item, read: where.printed }, place(offset + where.start - (first?.minus ? 1 : 0), offset + where.end)));
    return null;
  }

  return {
    item: shaped.item, value, unit: shaped.unit, form: shaped.form, method: shaped.method,
    asPrinted: line.raw.slice(ratings.length === 0 && prefixRatings.length > 0 && rating !== null ? piece.nameStart - piece.prefix.length : piece.nameStart, piece.end).replace(/\*+/g, '').replace(/[\s,;|]+$/, '').trim(),
    place: where,
    lab: { rating: rating ?? indexWord(outside, isIndex ? value : null, methods[0]?.is ?? context.method, context), range: rangeOf(source, main, inGroups, span, context) },
    ...indexBeside(outside, isIndex),
    ...(span ? { to: numberOr(span.second, context) } : {}),
    ...(first?.sign === '<' || source.trace ? { below: true as const } : {}),
    ...(first?.sign === '>' ? { above: true as const } : {}),
  };
}

type Value = Span & { readonly from: number; readonly printed: string; readonly sign: '<' | '>' | null; readonly minus: boolean };
type SpanOf = Span & { readonly printed: string; readonly second: string; readonly labelled: boolean };
type Judged = {
  /** The text with units, methods and words blanked. */
  readonly rest: string;
  readonly units: Found<ReportUnit>[];
  readonly methods: Found<Method>[];
  readonly ratings: Found<Rating>[];
  readonly values: Value[];
  readonly spans: SpanOf[];
  readonly trace: boolean;
  /** Nothing but a value and its unit. */
  readonly bare: boolean;
};

function judge(text: string): Judged {
  const methods = findMethods(text);
  const masked = blank(text, methods);
  const units = findUnits(masked);
  const noUnits = blank(masked, units);
  const trace = TRACE.exec(noUnits);
  const untraced = trace ? blank(noUnits, [{ start: trace.index, end: trace.index + trace[0].length }]) : noUnits;
  const words = findRatings(untraced);
  const spans: SpanOf[] = [];
  const labels: Span[] = [];
  for (const m of untraced.matchAll(SPAN)) {
    const before = words.filter((w) => w.end <= m.index && RANGE_LABEL.test(untraced.slice(w.end, m.index)) && /^(?:[\s:=]|\b(?:range|is|are|of|level|levels|between|target)\b)*$/i.test(untraced.slice(w.end, m.index)));
    const label = before.at(-1);
    if (label && (label.is === 'optimum')) labels.push(label);
    spans.push({ start: m.index, end: m.index + m[0].length, printed: m[1]!, second: m[2]!, labelled: label?.is === 'optimum' || /\b(?:range|target|goal|sufficiency)\W*$/i.test(untraced.slice(0, m.index)) });
  }
  const ratings = words.filter((w) => !labels.includes(w));
  const wordless = blank(untraced, words);
  const single = blank(wordless, spans);
  const values: Value[] = [];
  for (const m of single.matchAll(VALUE)) {
    const lead = m[0].length - (m[2] ?? '').length - m[3]!.length;
    const start = m.index + lead + (m[2] ?? '').length;
    const before = single.slice(0, m.index + lead);
    const minus = m[2] !== undefined && /[=:]\s*$/.test(before);
    const sign = m[1] ? (/^(?:<|≤|less|under)/i.test(m[1]) ? '<' : '>') : null;
    values.push({ from: m.index, start, end: start + m[3]!.length, printed: m[3]!, sign, minus });
  }
  const rest = values.length > 0 ? single : wordless;
  const bare = values.length === 1 && /^[\s<>=≤≥:.,-]*$/.test(blank(single, values));
  return { rest, units, methods, ratings, values, spans, trace: trace !== null, bare };
}

/** "Index 2-" printed beside a value. */
function indexBeside(text: string, isIndex: boolean): { index?: number } {
  const m = isIndex ? null : /\bindex\s*:?\s*(\d)/i.exec(text);
  return m ? { index: Number(m[1]) } : {};
}

/** An index of a scale that the report itself names: Ireland's has its target at 3, the UK's at 2. */
function indexWord(text: string, value: number | null, method: Method | null, context: Context): Rating | null {
  const first = context.indexFrom ?? (method === 'morgan' ? 1 : null);
  const said = value ?? Number(/\bindex\s*:?\s*(\d)/i.exec(text)?.[1] ?? NaN);
  if (first === null || Number.isNaN(said) || said < first) return null;
  return (['very-low', 'low', 'optimum'] as const)[Math.floor(said) - first] ?? 'high';
}

/** What the item really is, given its unit and heading: "K 2.7 %" is a share of the exchange sites only where a heading says so. */
function shape(piece: Piece, unit: ReportUnit | null, context: Context, methods: readonly Method[]): { item: Item; unit: ReportUnit | null; form: Oxide | null; method: Method | null } | null {
  const method = piece.method ?? methods[0] ?? null;
  if (piece.item === 'ratio') return null;
  if (piece.item === 'lime') {
    const rate = unit === 'lb/100sqft' || unit === 'lb/1000sqft' || unit === 'ton/acre' || unit === 't/ha' || unit === 'lb/acre' || unit === 'kg/ha' || unit === 'g/m2';
    return { item: rate ? 'lime-requirement' : 'carbonate', unit, form: null, method };
  }
  const element = ELEMENT_OF[piece.item];
  if (element && context.saturation && (unit === '%' || unit === null) && SATURATION_OF[piece.item]) {
    return { item: SATURATION_OF[piece.item]!, unit: '%', form: null, method: null };
  }
  if (piece.item === 'ph' || piece.item === 'ph-salt') {
    // A pH in a buffer's own solution is no soil pH.
    if (BUFFERS.includes(method)) return { item: 'buffer-ph', unit: 'pH', form: null, method };
    const salt = piece.item === 'ph-salt' || method === 'cacl2' || method === 'kcl';
    return { item: salt ? 'ph-salt' : 'ph', unit: 'pH', form: null, method };
  }
  if (piece.item === 'buffer-ph') return { item: 'buffer-ph', unit: 'pH', form: null, method };
  // "Exchangeable sodium 0.2 cmol/kg" is a content; only a share is a saturation.
  if (piece.item === 'saturation-na' && unit !== null && unit !== '%') return { item: 'sodium', unit, form: null, method };
  if (piece.item.startsWith('saturation')) return { item: piece.item, unit: '%', form: null, method: null };
  return {
    item: piece.item, form: piece.form, unit: unit ?? (element ? context.unit : null),
    method: method ?? (element && extracted(piece.item) ? context.method : null),
  };
}

const extracted = (item: Item): boolean => item !== 'nitrogen' && item !== 'nitrate-n';

/** Items that mean nothing without a unit. */
export const needsUnit = (item: Item): boolean => ELEMENT_OF[item] !== undefined || item === 'organic-matter' || item === 'salts' || item === 'cec';

function implausible(item: Item, value: number, unit: ReportUnit | null): 'ph-impossible' | 'value-negative' | 'share-impossible' | null {
  if ((item === 'ph' || item === 'ph-salt') && (value < 2.5 || value > 11)) return 'ph-impossible';
  if (value < 0 && item !== 'saturation-na') return 'value-negative';
  if (unit === '%' && value > 100) return 'share-impossible';
  return null;
}

function nearest(units: readonly Found<ReportUnit>[], end: number): ReportUnit | null {
  return units.find((u) => u.start >= end)?.is ?? null;
}

/** A texture is told in words alone. */
function textureOf(piece: Piece, own: string, line: Line, place: Place): Reading | null {
  if (!/\p{L}{3}/u.test(own)) return null;
  const asPrinted = line.raw.slice(piece.nameStart, piece.end).trim();
  return { item: 'texture', value: null, unit: null, form: null, method: null, asPrinted, place, lab: { rating: null, range: null } };
}

/** A rating word right before a name ("very high Magnesium"), where only filler stands between. */
function lastWord(prefix: string, words: readonly Found<Rating>[]): Rating | null {
  const last = words.at(-1);
  return last && FILLER.test(prefix.slice(last.end)) ? last.is : null;
}

function numberOr(printed: string, context: Context): number {
  const parsed = parseNumber(printed, context.style);
  return 'value' in parsed ? parsed.value : parsed.unclear[0];
}

/** The lab's range: a printed span beside the value, or a limit such as ">10" after it. */
function rangeOf(source: Judged, main: Judged, groups: readonly Judged[], span: SpanOf | undefined, context: Context): Range | null {
  const found = [...source.spans, ...main.spans, ...groups.flatMap((g) => g.spans)].find((s) => s !== span);
  if (found && (found.labelled || source.values.length > 0)) return [numberOr(found.printed, context), numberOr(found.second, context)];
  const limit = [...source.values.slice(1), ...groups.filter((g) => g !== source).flatMap((g) => g.values)].find((v) => v.sign !== null);
  if (limit) return limit.sign === '<' ? [null, numberOr(limit.printed, context)] : [numberOr(limit.printed, context), null];
  return null;
}

/** A name with a unit but no number that can be read: the odd word is pointed at. */
function slipOf(piece: Piece, own: string, units: readonly Found<ReportUnit>[], notices: Notice[], place: (from: number, to: number) => Place): null {
  const word = /^[\s:;=|-]*([^\s:;=|()]+)/.exec(own);
  const item = piece.item;
  if (!word || item === 'ratio' || item === 'lime') return null;
  const odd = word[1]!.replace(/[,;.]+$/, '');
  const mixed = /\d/.test(odd) && !/^\d+[\p{L}]+$/u.test(odd);
  const spelt = units.length > 0 && /^[\p{L}]+$/u.test(odd) && /^\s*$/.test(own.slice(word[0].length, Math.max(word[0].length, units[0]!.start)));
  if (mixed || spelt) {
    const start = word[0].length - word[1]!.length;
    notices.push(notice('not-a-number', 'error', { item, read: odd }, place(start, start + odd.length)));
  }
  return null;
}

/** Units of advice: an amount to bring out, never a content of the soil. */
const RATES: readonly ReportUnit[] = ['lb/100sqft', 'lb/1000sqft', 'ton/acre', 't/ha', 'g/m2'];
const A_NUMBER = new RegExp(`(?<![\\p{L}\\d.,:])${NUMBER}(?!:)`, 'u');
/** More unknown words than these beside name and number are prose. */
const ODD_WORDS = { withUnit: 3, bare: 1 } as const;

/** A line that begins with a known name and holds a number, yet gave no reading: said, so that nothing is lost in silence. Advice and prose are not meant. */
function unclear(piece: Piece, text: string, line: Line, file: string): Notice | null {
  if (piece.item === 'ratio' || piece.item === 'lime' || piece.item === 'texture' || piece.item === 'lime-requirement' || ABSENT.test(text)) return null;
  const masked = blank(text, findMethods(text));
  const units = findUnits(masked);
  const bare = blank(masked, units);
  // "Phosphorus Mehlich 3 ppm": the digit of the method is all there is.
  const outside = blank(blank(text, units), [...text.matchAll(GROUP)].map((m) => ({ start: m.index, end: m.index + m[0].length })));
  const number = A_NUMBER.exec(bare.slice(piece.start)) ?? (units.length > 0 ? A_NUMBER.exec(outside.slice(piece.start)) : null);
  if (!number || !FILLER.test(bare.slice(0, piece.nameStart)) || units.some((u) => RATES.includes(u.is))) return null;
  const after = bare.slice(piece.start);
  const odd = (blank(after, [...findNames(after), ...findRatings(after)]).match(/\p{L}{2,}/gu) ?? []).filter((w) => !FILLER.test(w));
  if (odd.length > (units.length > 0 ? ODD_WORDS.withUnit : ODD_WORDS.bare)) return null;
  const end = piece.start + number.index + number[0].length;
  return notice('line-unclear', 'warning', { name: line.raw.slice(piece.nameStart, piece.start).trim(), read: number[0] }, placeIn(file, line.number, line.raw, piece.nameStart, end));
}

/** A line such as "Phosphorous 42 ppm": an unknown word where a name belongs. */
function misspelt(text: string, line: Line, file: string): Notice | null {
  // Runs of blanks are one here: several runs that may be empty would be tried in every way.
  const m = /^ ?([\p{L}][\p{L} .-]{2,40}?) ?[:=|(-]? ?[<>]? ?\d/u.exec(text.replace(/\s+/g, ' '));
  if (!m) return null;
  const word = m[1]!.trim();
  const guess = suggest(word, KNOWN_NAMES);
  if (guess.length === 0) return null;
  const start = Math.max(0, text.indexOf(word.split(' ')[0]!));
  return notice('name-unknown', 'error', { read: word, guess: guess.join(', ') }, placeIn(file, line.number, line.raw, start, start + word.length));
}
