// Makes soil reports whose truth is known: layouts × units × languages × noise, from a seed. Shares no code and no data with the reader.

import { dice } from '../dice.ts';
import { ADVICE, CATIONS_ONLY, CHATTER, HEADS, INDEX_NAMES, LANGUAGES, LETTERS, METHOD_TEXTS, NAMES, NOT_ASKED, OLD, OTHERS, P_ONLY, PLOTS, RANGE_TO, RANGE_WORDS, RATING_WORDS, SAMPLE_HEADS, SATURATION_HEADS, SLIPS, TEXTURES, TRACE, UNIT_TEXTS } from './lab-words.ts';
import type { Language, Name, Word } from './lab-words.ts';

/** One true reading; lists hold what a careful reader may take, `lines` where it stands (from 1). `ratings` is null where the lab gave none, 'any' where it gave an index. */
export type Truth = {
  readonly sample: number;
  readonly item: string;
  readonly lines: number[];
  readonly values: readonly (number | null)[];
  readonly units: readonly (string | null)[];
  readonly form: string | null;
  readonly methods: readonly (string | null)[];
  readonly ratings: readonly (string | null)[] | 'any' | null;
  readonly range: readonly [number | null, number | null] | null;
  readonly limit: 'below' | 'above' | null;
  /** A known slip of the pen: a reading or a question, both are right. */
  readonly slip: boolean;
  /** What stood on the paper, for counting which words are not understood. */
  readonly printed: readonly string[];
};
export type Report = { readonly text: string; readonly layout: string; readonly language: Language; readonly noise: readonly string[]; readonly samples: number; readonly truths: readonly Truth[]; /** Lines of advice, where a reading of advice or lime is no invention. */ readonly advice: readonly number[] };

/** Plausible mg/kg of the element, lowest and highest. */
const CONTENT: Readonly<Record<string, readonly [number, number]>> = { 'nitrate-n': [2, 60], phosphorus: [4, 260], potassium: [30, 500], calcium: [250, 4500], magnesium: [25, 520], sulphur: [3, 80], sodium: [6, 160], boron: [0.1, 2.5], zinc: [0.3, 14], manganese: [1, 60], copper: [0.2, 9], iron: [4, 190], aluminium: [8, 300], lead: [1, 40] };
const CHARGE_MASS: Readonly<Record<string, number>> = { calcium: 200.4, magnesium: 121.5, potassium: 391, sodium: 230, aluminium: 89.9 };
const OXIDE: Readonly<Record<string, number>> = { P2O5: 2.291, K2O: 1.205, CaO: 1.399, MgO: 1.658, Na2O: 1.348 };
/** Plausible values in the unit printed, for what is no content. */
const OTHER: Readonly<Record<string, readonly [number, number]>> = { ph: [4.4, 8.2], 'ph-salt': [4, 7.4], 'buffer-ph': [5.6, 7.4], 'organic-matter': [0.9, 9.5], cec: [3, 32], acidity: [0.4, 7], carbonate: [0.3, 28], density: [0.8, 1.4], 'saturation-k': [1, 8], 'saturation-ca': [40, 85], 'saturation-mg': [6, 30], 'lime-requirement': [0.5, 5] };
const UNIT_OF: Readonly<Record<string, string>> = { 'organic-matter': '%', carbonate: '%', density: 'g/cm3', sand: '%', silt: '%', clay: '%', 'saturation-k': '%', 'saturation-ca': '%', 'saturation-mg': '%' };
const MACRO = ['phosphorus', 'potassium', 'magnesium', 'calcium'];
const MICRO = ['sulphur', 'boron', 'zinc', 'manganese', 'copper', 'iron', 'aluminium', 'lead'];
const CATIONS = ['potassium', 'magnesium', 'calcium', 'sodium', 'aluminium'];
const PH = ['ph', 'ph-salt', 'buffer-ph'];
const isContent = (item: string): boolean => item in CONTENT;

/** How one lab prints: the unit of P, of cations and of trace elements, of charge. */
type House = { readonly p: string; readonly cations: string; readonly micro: string; readonly charge: string; readonly oxides?: boolean; readonly index?: boolean };
const HOUSES: Readonly<Record<Language, readonly House[]>> = {
  en: [...Array.from({ length: 4 }, () => ({ p: 'ppm', cations: 'ppm', micro: 'ppm', charge: 'meq/100g' })), { p: 'lb/acre', cations: 'lb/acre', micro: 'ppm', charge: 'meq/100g' }, { p: 'lb/acre', cations: 'lb/acre', micro: 'lb/acre', charge: 'meq/100g' }, { p: 'mg/kg', cations: 'mg/kg', micro: 'mg/kg', charge: 'cmol/kg' }, { p: 'ppm', cations: 'meq/100g', micro: 'ppm', charge: 'meq/100g' }, { p: 'mg/L', cations: 'mg/L', micro: 'mg/L', charge: 'meq/100g' }, { p: 'mg/kg', cations: 'cmol/kg', micro: 'mg/kg', charge: 'cmol/kg' }, { p: 'kg/ha', cations: 'kg/ha', micro: 'ppm', charge: 'cmol/kg' }, { p: '', cations: '', micro: '', charge: 'meq/100g' }, { p: '', cations: '', micro: '', charge: 'meq/100g', index: true }],
  es: [{ p: 'mg/kg', cations: 'mg/kg', micro: 'mg/kg', charge: 'meq/100g' }, { p: 'ppm', cations: 'meq/100g', micro: 'ppm', charge: 'meq/100g' }, { p: 'mg/kg', cations: 'cmol/kg', micro: 'mg/kg', charge: 'cmol/kg' }, { p: 'ppm', cations: 'ppm', micro: 'ppm', charge: 'meq/100g' }, { p: '', cations: '', micro: '', charge: 'meq/100g' }],
  fr: [{ p: 'mg/kg', cations: 'mg/kg', micro: 'mg/kg', charge: 'meq/100g', oxides: true }, { p: 'g/kg', cations: 'g/kg', micro: 'mg/kg', charge: 'cmol/kg', oxides: true }, { p: 'ppm', cations: 'ppm', micro: 'ppm', charge: 'meq/100g', oxides: true }],
  de: [{ p: 'mg/100g', cations: 'mg/100g', micro: 'mg/kg', charge: 'cmol/kg', oxides: true }, { p: 'mg/100g', cations: 'mg/100g', micro: 'mg/kg', charge: 'meq/100g', oxides: true }, { p: 'mg/kg', cations: 'mg/kg', micro: 'mg/kg', charge: 'cmol/kg' }],
  pt: [{ p: 'mg/L', cations: 'mmolc/dm3', micro: 'mg/L', charge: 'mmolc/dm3' }, { p: 'mg/L', cations: 'cmol/dm3', micro: 'mg/L', charge: 'cmol/dm3' }],
  it: [{ p: 'mg/kg', cations: 'mg/kg', micro: 'mg/kg', charge: 'meq/100g' }, { p: 'ppm', cations: 'ppm', micro: 'ppm', charge: 'meq/100g' }, { p: 'mg/kg', cations: 'meq/100g', micro: 'mg/kg', charge: 'meq/100g' }],
};

/** A reading as it shall be printed, piece by piece; empty where it is not printed. */
type Row = { name: string; value: string; unit: string; method: string; rating: string; range: string; before: string; truth: Truth | null };
type Line = { text: string; rows: Row[]; fixed?: boolean; advice?: boolean };
type Maker = {
  readonly language: Language;
  readonly rnd: () => number;
  readonly int: (to: number) => number;
  readonly one: <T>(list: readonly T[]) => T;
  readonly chance: (p: number) => boolean;
  readonly comma: boolean;
  readonly heads: (typeof HEADS)[Language];
};
const line = (text: string, ...rows: Row[]): Line => ({ text, rows });
const join = (...parts: string[]): string => parts.filter((p) => p !== '').join(' ');

/** A printed table: its cells, and how they are parted. */
type Cells = readonly (readonly [cells: readonly string[], rows: Row[]])[];
const COLUMN_ORDERS: readonly (readonly (keyof Row)[])[] = [['name', 'value', 'unit', 'range', 'rating'], ['name', 'method', 'value', 'unit', 'range', 'rating'], ['name', 'unit', 'value', 'rating', 'range'], ['name', 'range', 'value', 'unit', 'rating'], ['name', 'value', 'unit', 'method', 'rating', 'range'], ['name', 'before', 'value', 'unit', 'rating', 'range'], ['name', 'value', 'before', 'unit', 'rating', 'range']];

const quoted = (cell: string, sep: string): string => (cell.includes(sep) || cell.includes('"') ? `"${cell}"` : cell);
const separated = (sep: string) => (cells: Cells): Line[] => cells.map(([c, rows]) => line(c.map((x) => quoted(x, sep)).join(sep), ...rows));
const tabbed = (cells: Cells): Line[] => cells.map(([c, rows]) => line(c.join('\t'), ...rows));
const piped = (cells: Cells): Line[] => cells.map(([c, rows]) => line(c.join(' | '), ...rows));
function markdown(cells: Cells): Line[] {
  const [head, ...body] = cells.map(([c, rows]) => line(`| ${c.join(' | ')} |`, ...rows));
  return [head!, line(`|${cells[0]![0].map(() => ' --- ').join('|')}|`), ...body];
}
/** Columns kept by blanks, as a printed page is copied; an empty cell shows a dash, so that nothing rests on counting blanks. */
function aligned(cells: Cells): Line[] {
  const widths = cells[0]![0].map((_, i) => Math.max(...cells.map(([c]) => [...(c[i] ?? '')].length)) + 3);
  return cells.map(([c, rows]) => line(c.map((x, i) => (x === '' ? '-' : x).padEnd(i === c.length - 1 ? 0 : widths[i]!)).join('').trimEnd(), ...rows));
}

/** The rows as a table with a head, in one of the usual orders; columns that nothing fills are left out. */
function columns(rows: Row[], m: Maker): Cells {
  const order = m.one(COLUMN_ORDERS).filter((key) => rows.some((r) => r[key] !== ''));
  const missing = (['unit', 'method', 'rating', 'range', 'before'] as const).filter((key) => rows.some((r) => r[key] !== '') && !order.includes(key));
  const keys = [...order, ...missing];
  const letters = rows.some((r) => /^[A-E]$/.test(r.rating));
  const british = rows.some((r) => /^\d[+-]?$/.test(r.rating));
  const head = keys.map((key) => (key === 'rating' && british ? m.one(['Index', 'UK index']) : key === 'rating' && letters && m.language === 'de' ? 'Gehaltsklasse' : m.one(m.heads[key as 'name'])));
  return [[head, []], ...rows.map((r) => [keys.map((key) => r[key] as string), [r]] satisfies Cells[number])];
}

/** One sample a row: the names and units in the head. */
function across(samples: Row[][], m: Maker): Cells {
  const first = samples[0]!;
  const style = m.int(3);
  const names = first.map((r) => (r.unit === '' ? r.name : style === 0 ? `${r.name} ${r.unit}` : style === 1 ? `${r.name} (${r.unit})` : r.name));
  const units: Cells = style === 2 && first.some((r) => r.unit !== '') ? [[['', ...first.map((r) => r.unit)], []]] : [];
  return [[[m.one(m.heads.sample), ...names], []], ...units, ...samples.map((rows, i) => [[plot(i, m), ...rows.map((r) => r.value)], rows] as const)];
}
/** Items down, samples across. */
function down(samples: Row[][], m: Maker): Cells {
  const withUnit = samples[0]!.some((r) => r.unit !== '');
  return [[[m.one(m.heads.name), ...(withUnit ? [m.one(m.heads.unit)] : []), ...samples.map((_, i) => plot(i, m))], []], ...samples[0]!.map((r, i) => [[r.name, ...(withUnit ? [r.unit] : []), ...samples.map((s) => s[i]!.value)], samples.map((s) => s[i]!)] as const)];
}
const plot = (i: number, m: Maker): string => PLOTS[m.language][i % 4]!;

type Can = { readonly rating?: boolean; readonly range?: boolean; readonly method?: boolean; readonly before?: boolean; readonly many?: 'blocks' | 'table'; readonly short?: boolean; readonly noThousands?: boolean };
type Layout = { readonly name: string; readonly can: Can; readonly make: (samples: Row[][], m: Maker) => Line[]; readonly only?: readonly Language[] };

/** The rating after the value, in one manner for the whole report. */
const after = (m: Maker): ((r: Row) => string) => {
  const manner = m.int(5);
  return (r) => (r.rating === '' ? '' : manner === 0 ? `= ${r.rating}` : manner === 1 ? `(${r.rating})` : manner === 2 ? `- ${r.rating}` : r.rating);
};
const ranged = (m: Maker): ((r: Row) => string) => {
  const word = m.one(RANGE_WORDS[m.language]);
  const square = word === '' && m.chance(0.3);
  return (r) => (r.range === '' ? '' : square ? `[${r.range}]` : `(${word}${r.range})`);
};
const blocks = (one: (rows: Row[], m: Maker) => Line[]) => (samples: Row[][], m: Maker): Line[] => {
  if (samples.length === 1) return one(samples[0]!, m);
  const head = m.one(SAMPLE_HEADS[m.language]);
  return samples.flatMap((rows, i) => [{ ...line(head.replace('#', String(i + 1)).replace('@', plot(i, m))), fixed: true }, ...one(rows, m), line('')]);
};

const glued = (r: Row, m: Maker): string => (r.unit === '%' && m.chance(0.6) ? `${r.value}%` : join(r.value, r.unit));
/** Name, colon, value, unit and what follows. */
function plainLines(rows: Row[], m: Maker): Line[] {
  const sep = m.one([': ', ': ', ' ', ' - ', ' = ', ' : ', '; ']);
  const [rate, range, perLine] = [after(m), ranged(m), m.int(2)];
  const rangeFirst = m.chance(0.3);
  return rows.map((r) => {
    const name = perLine === 0 && r.method !== '' ? `${r.name} (${r.method})` : r.name;
    const method = perLine === 0 ? '' : r.method;
    const before = r.before === '' ? '' : m.one(OLD[m.language]).replace('#', r.before);
    return line(`${name}${sep}${join(glued(r, m), method, before, ...(rangeFirst ? [range(r), rate(r)] : [rate(r), range(r)]))}`, r);
  });
}

const LAYOUTS: readonly Layout[] = [
  { name: 'name: value unit', can: { before: true, method: true }, make: blocks(plainLines) },
  { name: 'name value unit rating', can: { rating: true, method: true, range: true, before: true }, make: blocks(plainLines) },
  { name: 'value (range)', can: { range: true, method: true, before: true }, make: blocks(plainLines) },
  { name: 'range before value', can: { range: true, rating: true }, make: blocks((rows, m) => { const [range, rate] = [ranged(m), after(m)]; return rows.map((r) => line(join(r.name, range(r), glued(r, m), rate(r)), r)); }) },
  { name: 'rating before value', can: { rating: true }, make: blocks((rows, m) => { const colon = m.one([': ', ' - ', ', ']); return rows.map((r) => line(join(r.name + (r.rating === '' ? ':' : `${colon === ', ' ? ', ' : ': '}${r.rating}${colon === ' - ' ? ' -' : ','}`), glued(r, m)), r)); }) },
  { name: 'rating before name', can: { rating: true }, only: ['en'], make: blocks((rows, m) => rows.map((r) => line(r.rating === '' ? `${r.name} ${glued(r, m)}` : `${r.rating} ${r.name} (${join(r.value, r.unit)})`, r))) },
  { name: 'unit in name', can: { rating: true, range: true }, make: blocks((rows, m) => { const [rate, range, manner] = [after(m), ranged(m), m.int(2)]; return rows.map((r) => line(join(`${r.name}${r.unit === '' ? '' : manner === 0 && !r.name.includes('(') ? ` (${r.unit})` : `, ${r.unit}`}:`, r.value, range(r), rate(r)), r)); }) },
  { name: 'dotted leaders', can: { rating: true }, make: blocks((rows, m) => { const spaced = m.chance(0.3); const rate = after(m); return rows.map((r) => line(join(r.name, spaced ? '. '.repeat(12 + m.int(4)).trim() : '.'.repeat(Math.max(4, 34 - r.name.length)), glued(r, m), rate(r)), r)); }) },
  { name: 'tabs with head', can: { rating: true, range: true, method: true, before: true, many: 'blocks' }, make: blocks((rows, m) => tabbed(columns(rows, m))) },
  { name: 'tabs without head', can: { rating: true, many: 'blocks' }, make: blocks((rows) => tabbed(rows.map((r) => [[r.name, r.value, r.unit, r.rating], [r]]))) },
  { name: 'CSV', can: { rating: true, range: true, method: true, before: true }, make: blocks((rows, m) => separated(m.comma ? ';' : ',')(columns(rows, m))) },
  { name: 'Markdown', can: { rating: true, range: true, method: true, before: true }, make: blocks((rows, m) => markdown(columns(rows, m))) },
  { name: 'pipes', can: { rating: true }, make: blocks((rows) => piped(rows.map((r) => [[r.name, r.value, r.unit, r.rating].filter((x) => x !== ''), [r]]))) },
  { name: 'aligned columns', can: { rating: true, range: true, method: true, before: true }, make: blocks((rows, m) => aligned(columns(rows, m))) },
  { name: 'two side by side', can: { rating: true }, make: blocks((rows, m) => {
    const half = Math.ceil(rows.length / 2);
    const rate = after(m);
    const cell = (r: Row): string => join(r.name.padEnd(m.chance(0.5) ? 0 : 3), glued(r, m), rate(r));
    const width = Math.max(...rows.slice(0, half).map((r) => cell(r).length)) + 6;
    return rows.slice(0, half).map((r, i) => { const other = rows[half + i]; return other ? line(`${cell(r).padEnd(width)}${cell(other)}`, r, other) : line(cell(r), r); });
  }) },
  { name: 'several a line', can: { many: 'blocks' }, make: blocks((rows, m) => {
    const out: Line[] = [];
    const sep = m.comma ? m.one(['; ', ', ']) : m.one([', ', ', ', '; ']);
    const colon = m.one([' ', ': ']);
    for (let at = 0; at < rows.length;) {
      const part = rows.slice(at, at + 2 + m.int(4));
      out.push(line(`${at === 0 && m.language === 'en' && m.chance(0.4) ? 'Result: ' : ''}${part.map((r) => `${r.name}${colon}${glued(r, m)}`).join(sep)}${m.chance(0.3) ? '.' : ''}`, ...part));
      at += part.length;
    }
    return out;
  }) },
  { name: 'one row a sample, tabs', can: { many: 'table', short: true }, make: (samples, m) => tabbed(across(samples, m)) },
  { name: 'one row a sample, CSV', can: { many: 'table', short: true, noThousands: true }, make: (samples, m) => separated(m.comma ? ';' : ',')(across(samples, m)) },
  { name: 'one row a sample, Markdown', can: { many: 'table', short: true }, make: (samples, m) => markdown(across(samples, m)) },
  { name: 'samples across, tabs', can: { many: 'table' }, make: (samples, m) => tabbed(down(samples, m)) },
  { name: 'samples across, aligned', can: { many: 'table' }, make: (samples, m) => aligned(down(samples, m)) },
  { name: 'samples across, CSV', can: { many: 'table' }, make: (samples, m) => separated(m.comma ? ';' : ',')(down(samples, m)) },
  { name: 'name, next line value', can: { rating: true }, make: blocks((rows, m) => { const rate = after(m); const colon = m.one(['', ':']); return rows.flatMap((r) => [{ ...line(`${r.name}${colon}`, r), fixed: true }, line(join(glued(r, m), rate(r)), r)]); }) },
];

/** Makes the report of a seed. */
export function makeReport(seed: number): Report {
  const rnd = dice(Math.imul(seed, 2654435761) ^ 0x5bd1e995);
  const int = (to: number): number => Math.floor(rnd() * to);
  const one = <T>(list: readonly T[]): T => list[int(list.length)]!;
  const chance = (p: number): boolean => rnd() < p;
  const language = chance(0.4) ? 'en' : one(LANGUAGES);
  const comma = language !== 'en' && !chance(0.08);
  const m: Maker = { language, rnd, int, one, chance, comma, heads: HEADS[language] };
  // Tables of several samples hold many readings, so they come half as often.
  const layout = one(LAYOUTS.flatMap((l) => (!(l.only?.includes(language) ?? true) ? [] : l.can.many === 'table' ? [l] : [l, l])));
  const noise: string[] = [];
  const noisy = (name: string, p: number): boolean => { const yes = chance(p); if (yes) noise.push(name); return yes; };
  const house = one(HOUSES[language]);
  const samples = layout.can.many === 'table' ? 2 + int(3) : chance(0.08) ? 2 + int(2) : 1;
  const unitText = new Map<string, string>();
  const printedUnit = (unit: string): string => { if (unit === '') return ''; if (!unitText.has(unit)) unitText.set(unit, one(UNIT_TEXTS[unit]!)); return unitText.get(unit)!; };
  const thousands = !layout.can.noThousands && language === 'en' && noisy('thousands comma', 0.2);
  const thin = language === 'fr' && noisy('thousands blank', 0.15);
  // Behind a row of dots nobody could tell a leader from a decimal point.
  const bareZero = language === 'en' && layout.name !== 'dotted leaders' && noisy('no leading zero', 0.06);
  const slips = noisy('slips', 0.07);
  const show = { rating: layout.can.rating === true && chance(0.85), range: layout.can.range === true && chance(layout.name.includes('range') ? 1 : 0.4) };
  const letters = show.rating && LETTERS[language] !== undefined && !['name, next line value', 'rating before name', 'rating before value'].includes(layout.name) && chance(/tabs|CSV|Markdown|aligned/.test(layout.name) ? 0.25 : 0);

  const inTable = /tabs|CSV|Markdown|aligned/.test(layout.name);
  const british = language === 'en' && house.p === 'mg/L' && show.rating && !/before|without head|pipes/.test(layout.name) && chance(0.5);

  /** A number with its decimals as this lab prints it, and what it is. */
  const number = (raw: number, digits?: number): { text: string; value: number } => {
    const d = digits ?? (raw >= 100 ? 0 : raw >= 10 ? int(2) : raw >= 1 ? 1 : 2);
    const fixed = Math.max(raw, 10 ** -d).toFixed(d);
    let text = fixed;
    if (thousands && Number(fixed) >= 1000) text = fixed.replace(/\B(?=(\d{3})+$)/, ',');
    if (thin && Number(fixed) >= 1000) text = fixed.replace(/\B(?=(\d{3})+$)/, one(['\u00a0', '\u202f', ' ']));
    if (comma) text = text.replace('.', ',');
    if (bareZero && text.startsWith('0.')) text = text.slice(1);
    return { text, value: Number(fixed) };
  };
  const between = ([low, high]: readonly [number, number]): number => low * (high / low) ** rnd();

  // What the lab tests, in a usual order.
  const has = house.index === true ? INDEX_NAMES : NAMES[language];
  const some = (list: readonly string[], p: number): string[] => list.filter((item) => has[item] !== undefined && chance(p));
  const texturePart = chance(0.08) && samples === 1 && has['sand'] ? ['sand', 'silt', 'clay'] : [];
  let items = [...(chance(0.9) ? [chance(language === 'de' || language === 'pt' ? 0.6 : 0.12) && has['ph-salt'] ? 'ph-salt' : 'ph'] : []), ...some(['buffer-ph'], 0.25), ...some(['organic-matter'], 0.7), ...some(['nitrate-n'], 0.15), ...some(['phosphorus', 'potassium'], 0.95), ...some(['magnesium', 'calcium'], 0.8), ...some(['sodium'], 0.2), ...some(MICRO, 0.3), ...some(['cec'], 0.4), ...some(['acidity', 'carbonate'], 0.1), ...some(['salts'], 0.3), ...some(['density'], 0.05), ...some(['saturation-k', 'saturation-mg', 'saturation-ca'], language === 'en' ? 0.12 : 0), ...texturePart];
  if (layout.can.short) items = items.filter((_, i) => i < 8);
  if (items.length < 2) items = ['ph', 'phosphorus', 'potassium'];
  if (chance(0.25)) items = items.map((item) => [rnd(), item] as const).sort((a, b) => a[0] - b[0]).map(([, item]) => item);

  // The extractant: in each name, each line, a heading, or nowhere.
  const methodKeys = Object.keys(METHOD_TEXTS[language]).filter((key) => house.oxides !== true || language !== 'pt' || key !== 'resin');
  const method = one(methodKeys);
  const methodText = one(METHOD_TEXTS[language][method]!);
  const fits = (item: string): boolean => (P_ONLY.includes(method) ? item === 'phosphorus' : CATIONS_ONLY.includes(method) ? CATIONS.includes(item) && item !== 'aluminium' : ['cal', 'dl', 'resin'].includes(method) ? ['phosphorus', 'potassium'].includes(item) && (method !== 'resin' || item === 'phosphorus') : [...MACRO].includes(item));
  const methodOnLine = layout.can.method === true && chance(0.35);
  const methodHeading = !methodOnLine && language === 'en' && ['mehlich-3', 'mehlich-1', 'modified-morgan', 'morgan'].includes(method) && samples === 1 && ['name: value unit', 'name value unit rating', 'dotted leaders', 'two side by side', 'value (range)'].includes(layout.name) && chance(0.4);
  if (methodHeading) items = [...items.filter((item) => !isContent(item)), ...items.filter((item) => isContent(item) && item !== 'nitrate-n')];

  const nameChoice = new Map<string, Name>();
  const nameOf = (item: string): Name => {
    if (!nameChoice.has(item)) {
      let list = has[item]!;
      if (layout.can.short && samples > 1) list = list.filter((x) => x.text.length < 16 && !x.text.includes(',')).length > 0 ? list.filter((x) => x.text.length < 16 && !x.text.includes(',')) : list;
      if (layout.name === 'rating before name') list = list.filter((x) => x.text.length > 3 && !x.text.includes('%'));
      if (layout.name === 'several a line') list = list.filter((x) => !x.text.includes(',') && !/1:\d|:$/.test(x.text));
      if (methodHeading || methodOnLine) list = list.filter((x) => !isContent(item) || x.methods === undefined);
      // A symbol of one letter with neither unit nor compound beside it is printed by no lab.
      if (house.p === '' && isContent(item)) list = list.filter((x) => x.text.length > 1);
      nameChoice.set(item, list.length > 0 ? one(list) : has[item]![0]!);
    }
    return nameChoice.get(item)!;
  };
  const saltUnit = language === 'en' ? one(['dS/m', 'dS/m', 'mS/cm', 'mmho/cm', 'uS/cm']) : one(['dS/m', 'mS/cm', 'uS/cm', 'mS/m']);
  const omUnit = language === 'pt' && chance(0.4) ? 'g/dm3' : chance(language === 'fr' || language === 'es' ? 0.25 : 0.03) ? 'g/kg' : '%';
  const unitless = noisy('a unit missing', 0.06);
  const missing = new Set(unitless ? items.filter(() => chance(0.2)) : []);

  /** The unit the lab prints for an item; empty where it prints none. */
  const unitOf = (item: string, name: Name): string => {
    if (PH.includes(item) || name.unit !== undefined || missing.has(item)) return '';
    if (item === 'organic-matter') return omUnit;
    if (item === 'cec' || item === 'acidity') return house.charge;
    if (item === 'salts') return saltUnit;
    if (!isContent(item)) return UNIT_OF[item] ?? '';
    if (name.form !== undefined && ['meq/100g', 'cmol/kg', 'mmolc/dm3', 'cmol/dm3'].includes(house.cations) && item !== 'phosphorus') return language === 'en' ? 'ppm' : 'mg/kg';
    if (item === 'phosphorus' || (item === 'nitrate-n' && house.p !== 'g/kg' && house.p !== 'mg/100g')) return house.p;
    if (CATIONS.includes(item)) return item === 'aluminium' && !house.cations.includes('mol') ? house.micro : house.cations;
    return item === 'nitrate-n' ? 'mg/kg' : house.micro;
  };
  const inUnit = (item: string, mgPerKg: number, unit: string, form: string | null): number => {
    const ofForm = mgPerKg * (form ? OXIDE[form]! : 1);
    if (unit === 'meq/100g' || unit.startsWith('cmol')) return mgPerKg / CHARGE_MASS[item]!;
    if (unit === 'mmolc/dm3') return (mgPerKg / CHARGE_MASS[item]!) * 10;
    return ofForm * ({ 'lb/acre': 2, 'kg/ha': 2.24, 'mg/100g': 0.1, 'g/kg': 0.001 }[unit] ?? 1);
  };
  const closed = (unit: string): string | null => (unit === '' ? null : unit);

  const rowOf = (item: string, sample: number): Row => {
    const name = nameOf(item);
    const unit = unitOf(item, name);
    const form = name.form ?? null;
    const printed = name.unit !== undefined || PH.includes(item) ? '' : printedUnit(unit);
    let raw: number;
    let digits: number | undefined;
    const index = house.index === true && isContent(item);
    if (index) raw = 5 + int(150);
    else if (isContent(item)) raw = inUnit(item, between(CONTENT[item]!), unit, form);
    else if (item === 'salts') raw = between([0.08, 2.4]) * ({ 'uS/cm': 1000, 'mS/m': 100 }[unit] ?? 1);
    else if (['sand', 'silt', 'clay'].includes(item)) raw = { sand: 42, silt: 38, clay: 20 }[item]! + 0;
    else raw = between(OTHER[item]!) * (unit === 'g/kg' || unit === 'g/dm3' ? 10 : 1) * (unit === 'mmolc/dm3' ? 10 : 1);
    if (index) digits = 0;
    if (PH.includes(item)) digits = chance(0.2) ? 2 : 1;
    if (item === 'sand' || item === 'silt' || item === 'clay') digits = 0;
    if (unit === 'g/kg' && isContent(item)) digits = raw < 1 ? 3 : 2;
    if (item === 'density') digits = 2;
    const { text, value } = number(raw, digits);
    const row: Row = { name: name.text, value: text, unit: printed, method: '', rating: '', range: '', before: '', truth: null };

    // Ranges and words agree with one another, as a lab's do.
    const where = one(['below', 'in', 'above'] as const);
    let ratings: readonly string[] | 'any' | null = null;
    let range: [number | null, number | null] | null = null;
    const rated = isContent(item) || ['organic-matter', 'cec', 'salts', 'ph', 'ph-salt'].includes(item);
    if (show.range && rated && item !== 'cec' && chance(0.8)) {
      const decimals = text.split(/[.,]/)[1]?.length ?? 0;
      const d = thousands || thin ? (value >= 100 ? 0 : decimals) : Math.min(decimals, 2);
      const narrow = PH.includes(item) ? [0.1, 0.15] : [0.5, 0.6];
      let [low, high] = where === 'below' ? [value * (1 + narrow[0]!), value * (1 + narrow[0]! + narrow[1]!)] : where === 'above' ? [value * (1 - narrow[1]!), value * (1 - narrow[1]! / 3)] : [value * (1 - narrow[0]!), value * (1 + narrow[1]!)];
      low = Number(low.toFixed(d)); high = Number(high.toFixed(d));
      if (low > 0 && high > low) {
        const open = inTable && chance(0.12);
        if (open) { range = where === 'above' ? [null, high] : [low, null]; row.range = where === 'above' ? `<${number(high, d).text}` : `>${number(low, d).text}`; }
        else { range = [low, high]; row.range = `${number(low, d).text}${rangeTo}${number(high, d).text}`; }
      }
    }
    if (show.rating && rated && chance(0.85)) {
      if (british) {
        if (['phosphorus', 'potassium', 'magnesium'].includes(item)) { row.rating = `${inTable ? '' : 'Index '}${item === 'potassium' ? one(['0', '1', '2-', '2+', '3', '4']) : int(5)}`; ratings = 'any'; }
      } else {
      const list: readonly Word[] = (letters ? LETTERS[language]! : RATING_WORDS[language])[where];
      const word = one(list);
      row.rating = word[0];
      ratings = word[1];
      }
    }
    const methods = name.methods ?? (methodOnLine && fits(item) ? [method] : methodHeading && isContent(item) ? (item === 'phosphorus' || item === 'potassium' ? [method] : [method, null]) : [null]);
    if (methodOnLine && fits(item) && name.methods === undefined) row.method = methodText;
    let values: (number | null)[] = [value];
    let limit: Truth['limit'] = null;
    const units: (string | null)[] = index ? ['index'] : PH.includes(item) ? ['pH', null] : name.unit !== undefined ? [name.unit] : ['%', 'dS/m'].includes(unit) ? [unit] : [closed(unit)];
    if (unit === '' && (item.startsWith('saturation') || item === 'organic-matter' || ['sand', 'silt', 'clay'].includes(item))) units.push('%');
    if (unit === '' && (item === 'density')) units.push('g/cm3');
    const special = !index && row.range === '' && row.rating === '' && isContent(item) && !methodOnLine && samples === 1 ? rnd() : 1;
    let absent = false;
    if (special < 0.03) { row.value = `<${one(['', ' '])}${row.value}`; limit = 'below'; noise.push('<'); }
    else if (special < 0.04) { row.value = `>${one(['', ' '])}${row.value}`; limit = 'above'; noise.push('>'); }
    else if (special < 0.055) { row.value = one(TRACE[language]); row.unit = ''; values = [null, 0]; units.splice(0, 9, null, closed(unit)); limit = 'below'; noise.push('trace'); }
    else if (special < 0.075) { row.value = one(NOT_ASKED[language]); row.unit = ''; absent = true; noise.push('not asked'); }
    else if (layout.can.before === true && (beforeColumn || chance(0.06)) && samples === 1 && (!PH.includes(item) || true)) { row.before = number(raw * (PH.includes(item) ? 0.95 : 0.8), digits).text; if (!beforeColumn) noise.push('old value'); }
    if (/tabs with head|CSV|Markdown|aligned/.test(layout.name) && !beforeColumn) row.before = '';
    let slip = false;
    if (slips) for (const [right, wrong] of Object.entries(SLIPS)) {
      if (slip || !row.name.includes(right) || !chance(0.5)) continue;
      row.name = row.name.replace(right, one(wrong));
      slip = true;
    }
    const heading = methodHeading && isContent(item) && name.methods === undefined ? [`method ${methodText}`] : [];
    const printedWords = [`name ${row.name}`, ...(row.unit === '' ? [] : [`unit ${row.unit}`]), ...(row.rating === '' ? [] : [`rating ${row.rating.toLowerCase()}`]), ...(row.method === '' ? [] : [`method ${row.method}`]), ...heading];
    row.truth = absent ? null : { sample, item, lines: [], values, units, form, methods, ratings, range, limit, slip, printed: printedWords };
    return row;
  };
  const rangeTo = one(RANGE_TO[language]);
  const beforeColumn = layout.can.before === true && /tabs with head|CSV|Markdown|aligned/.test(layout.name) && samples === 1 && noisy('older column', 0.12);

  // In a table of several samples a slip or a missing unit stands once, in the head, so names are made once.
  const rows: Row[][] = Array.from({ length: samples }, (_, sample) => items.map((item) => rowOf(item, sample)));
  if (layout.can.many === 'table') for (const sample of rows.slice(1)) for (const [i, row] of sample.entries()) {
    row.name = rows[0]![i]!.name;
    if (rows[0]![i]!.truth && row.truth) row.truth = { ...row.truth, slip: rows[0]![i]!.truth.slip };
  }
  if (layout.can.many !== 'table') for (const list of rows) {
    for (const [text, unit, low, high, item] of OTHERS[language]) {
      if (!chance(0.04) || house.index === true) continue;
      const found = number(between([low, high]), high < 1 ? 2 : 1);
      const truth: Truth | null = item === undefined ? null : { sample: rows.indexOf(list), item, lines: [], values: [found.value], units: unit === '' ? [null, '%'] : [unit], form: null, methods: [null], ratings: null, range: null, limit: null, slip: false, printed: [`name ${text}`] };
      list.splice(int(list.length + 1), 0, { name: text, value: found.text, unit: printedUnit(unit), method: '', rating: '', range: '', before: '', truth });
      noise.push('other test');
    }
    if (has['texture'] && chance(0.06) && !/rating before/.test(layout.name)) list.unshift({ name: one(has['texture']).text, value: one(TEXTURES[language]), unit: '', method: '', rating: '', range: '', before: '', truth: { sample: rows.indexOf(list), item: 'texture', lines: [], values: [null], units: [null], form: null, methods: [null], ratings: null, range: null, limit: null, slip: false, printed: ['name texture'] } });
  }

  let lines = layout.make(rows, m);
  if (methodHeading) {
    const at = lines.findIndex((l) => l.rows.some((r) => r.truth !== null && isContent(r.truth.item)));
    const clean = lines.slice(0, at).every((l) => l.rows.every((r) => r.truth === null || !isContent(r.truth.item)));
    if (at >= 0 && clean) lines.splice(at, 0, line(''), { ...line(one([`${methodText} extractable`, `${methodText} extraction`, `Extractant: ${methodText}`, `Method: ${methodText}`])), fixed: true });
  }

  if (language === 'en' && samples === 1 && !items.some((item) => item.startsWith('saturation')) && ['name: value unit', 'name value unit rating', 'value (range)', 'dotted leaders', 'several a line'].includes(layout.name) && noisy('shares of the sites', 0.15)) {
    const head = one(SATURATION_HEADS);
    const long = chance(0.5);
    const percent = chance(0.6);
    const shares = [['saturation-k', 'Potassium', 'K'], ['saturation-mg', 'Magnesium', 'Mg'], ['saturation-ca', 'Calcium', 'Ca']].map(([item, whole, symbol]): Row => {
      const found = number(between(OTHER[item!]!), 1);
      return { name: long ? whole! : symbol!, value: found.text, unit: percent || !head.includes('%') ? '%' : '', method: '', rating: '', range: '', before: '', truth: { sample: 0, item: item!, lines: [], values: [found.value], units: ['%', null], form: null, methods: [null], ratings: null, range: null, limit: null, slip: false, printed: [`name ${head}: ${long ? whole! : symbol!}`] } };
    });
    lines.push(line(''), ...(chance(0.3) ? [line(`${head}: ${shares.map((r) => `${r.name}: ${r.value}${r.unit}`).join(', ')}`, ...shares)] : [{ ...line(head), fixed: true }, ...shares.map((r) => ({ ...line(`${r.name} ${r.value}${r.unit}`, r), fixed: true }))]));
  }

  // Letter lines before, after and between; never inside a table or a pair of lines.
  const intact = /tabs|CSV|Markdown|aligned|sample|pipes/.test(layout.name);
  const put = (text: string, also: Partial<Line> = {}): void => {
    const spots = lines.map((_, i) => i).filter((i) => i === 0 || (!intact && !(lines[i - 1]!.fixed ?? false)));
    const end = chance(0.5) || spots.length === 0;
    if (end) lines.push({ ...line(text), ...also });
    else lines.splice(samples > 1 ? 0 : one(spots), 0, { ...line(text), ...also });
  };
  if (noisy('letter', 0.6)) for (let i = 1 + int(5); i > 0; i -= 1) put(one(CHATTER[language]));
  if (noisy('advice', 0.15)) { lines.push(line('')); for (let i = 1 + int(2); i > 0; i -= 1) lines.push({ ...line(one(ADVICE[language])), advice: true }); }
  if (noisy('blank lines', 0.15)) lines = lines.flatMap((l) => (!intact && !(l.fixed ?? false) && chance(0.3) ? [l, line('')] : [l]));
  if (noisy('capitals', language === 'en' ? 0.1 : 0.04) && !letters) for (const l of lines) l.text = l.text.replaceAll(/[µμ]S/g, 'uS').toUpperCase();
  if (language !== 'en' && noisy('no accents', 0.12)) for (const l of lines) l.text = (language === 'de' ? l.text.replaceAll('ä', 'ae').replaceAll('ö', 'oe').replaceAll('ü', 'ue') : l.text).normalize('NFD').replaceAll(/[\u0300-\u0302\u0303\u0308\u0327]/g, '').normalize('NFC');
  if (language !== 'en' && noisy('loose accents', 0.05)) for (const l of lines) l.text = l.text.normalize('NFD');
  if (layout.name === 'name: value unit' && noisy('bold', 0.2)) for (const l of lines) if (l.rows.length === 1 && l.text.includes(': ')) l.text = chance(0.5) ? `**${l.text}**` : l.text.replace(/^(.*?): /, '**$1:** ');
  if (noisy('non-breaking blanks', 0.08)) for (const l of lines) l.text = l.text.replaceAll(' ', () => (chance(0.4) ? '\u00a0' : ' '));
  if (noisy('other dashes', 0.08)) for (const l of lines) if (!l.text.includes('kg-1') && !l.text.startsWith('|')) l.text = l.text.replaceAll(' - ', ` ${one(['–', '—', '−'])} `);
  if (noisy('trailing blanks', 0.1)) for (const l of lines) l.text += chance(0.5) ? '  ' : '';
  if (noisy('indent', 0.08)) for (const l of lines) l.text = `   ${l.text}`;
  const truths: Truth[] = [];
  const advice: number[] = [];
  for (const [i, l] of lines.entries()) {
    if (l.advice) advice.push(i + 1);
    for (const r of l.rows) if (r.truth) { if (r.truth.lines.length === 0) truths.push(r.truth); r.truth.lines.push(i + 1); }
  }
  return { text: lines.map((l) => l.text).join(noisy('CRLF', 0.1) ? '\r\n' : '\n') + '\n', layout: layout.name, language, noise: [...new Set(noise)], samples, truths, advice };
}
