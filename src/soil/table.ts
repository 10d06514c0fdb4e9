/**
 * Tables that run across the page: a row of names, perhaps a row that says what each column holds,
 * then a row of values. They are turned into one line for each name, in their own words, so that one reader serves all.
 */
import type { Line } from './text.ts';
import { blank, findNames, findRatings, findUnits } from './vocabulary.ts';

type Cell = { readonly text: string; readonly start: number };

/** Cells of a line, parted by bars, or by two or more blanks. */
function cellsOf(text: string): Cell[] {
  const cells: Cell[] = [];
  const parted = text.includes('|') ? /[^|]+/g : /\S(?:\S| (?! ))*/g;
  for (const m of text.matchAll(parted)) {
    const lead = m[0].length - m[0].trimStart().length;
    if (m[0].trim()) cells.push({ text: m[0].trim(), start: m.index + lead });
  }
  return cells;
}

/** A name with its value, and where the value stands in the row. */
type Piece = { readonly text: string; readonly start: number; readonly end: number };

type Crosswise = {
  /** How many lines the table takes, its header included. */
  readonly length: number;
  readonly rows: readonly { readonly sample: string | null; readonly line: Line; readonly pieces: readonly Piece[] }[];
};

const hasNumber = (text: string): boolean => /\d/.test(text);
const nameless = (text: string): string => blank(blank(text, findNames(text)), findUnits(text));
const isRule = (text: string): boolean => /^[\s|:+=-]+$/.test(text) && text.includes('-');

/** Reads a crosswise table that starts at `at`, or null where the lines are something else. */
export function readCrosswise(lines: readonly Line[], at: number): Crosswise | null {
  const header = lines[at]!;
  // A number that belongs to no name, unit or depth: not a row of names.
  if (/(?<![a-z\d])\d/i.test(header.text.replace(/100 ?g\b|\d+ ?(?:-|to) ?\d+ ?(?:cm|in)\b|\d+ ?(?:cm|in)\b/gi, ''))) return null;
  const heads = cellsOf(header.text);
  const named = heads.map((c) => findNames(c.text)[0]?.is ?? null);
  const count = named.filter(Boolean).length;
  if (count < 2 || hasNumber(nameless(header.text).replace(/\d+ ?(?:cm|in)\b/g, ''))) return null;
  let next = at + 1;
  if (lines[next] && isRule(lines[next]!.text)) next++;
  let kinds: Cell[] | null = null;
  const second = lines[next] ? cellsOf(lines[next]!.text) : [];
  if (second.length >= count && !hasNumber(nameless(lines[next]!.text)) && second.some((c) => findUnits(c.text).length > 0)) {
    kinds = second;
    next++;
  }
  const rows: Crosswise['rows'][number][] = [];
  for (; next < lines.length; next++) {
    const line = lines[next]!;
    const cells = cellsOf(line.text);
    if (!hasNumber(line.text) || cells.length < count || findNames(line.text).length > 0) break;
    const row = kinds ? byKind(heads.filter((_, i) => named[i]), kinds, cells) : cells.length === heads.length ? byPlace(heads, named, cells) : null;
    if (!row) break;
    const first = kinds || named[0] ? null : cells[0]!.text;
    rows.push({ sample: first, line, pieces: row });
  }
  return rows.length > 0 ? { length: next - at, rows } : null;
}

const byPlace = (heads: readonly Cell[], named: readonly unknown[], cells: readonly Cell[]): Piece[] =>
  heads.flatMap((head, i) => (named[i] ? [{ text: `${head.text} | ${cells[i]!.text}`, start: cells[i]!.start, end: cells[i]!.start + cells[i]!.text.length }] : []));

/** Columns told apart by the row below the names: a value column (unit or the name itself), then perhaps its class. */
function byKind(heads: readonly Cell[], kinds: readonly Cell[], cells: readonly Cell[]): Piece[] | null {
  const isValue = (c: Cell): boolean => findUnits(c.text).length > 0 || findNames(c.text).length > 0;
  if (kinds.filter(isValue).length !== heads.length || cells.length !== kinds.length) return null;
  const pieces: Piece[] = [];
  let name = -1;
  kinds.forEach((kind, i) => {
    const cell = cells[i]!;
    if (isValue(kind)) {
      name++;
      const unit = findUnits(kind.text)[0];
      pieces.push({ text: `${heads[name]!.text} | ${cell.text}${unit ? ` ${kind.text.slice(unit.start, unit.end)}` : ''}`, start: cell.start, end: cell.start + cell.text.length });
    } else if (pieces.length > 0 && findRatings(cell.text).length > 0) {
      const last = pieces.at(-1)!;
      pieces[pieces.length - 1] = { text: `${last.text} | ${cell.text}`, start: last.start, end: cell.start + cell.text.length };
    }
  });
  return pieces;
}

type Role = 'name' | 'value' | 'previous' | 'unit' | 'method' | 'low' | 'high' | 'range' | 'rating' | 'index';
const ROLES: readonly (readonly [Role, RegExp])[] = [
  ['previous', /^(?:previous|last|before|old)\b/i],
  ['index', /\bindex$/i],
  ['name', /^(?:test|nutrient|element|analysis|analyte|item|parameter|determinand|measurement|parametro|symbol)s?$/i],
  ['value', /^(?:result|value|found|level|wert|resultado|your soil)s?\b/i],
  ['unit', /^(?:unit|units|einheit|unidad)$/i],
  ['method', /^(?:method|extractant)$/i],
  ['low', /^(?:low|min|minimum|from)$/i],
  ['high', /^(?:high|max|maximum|to)$/i],
  ['range', /\b(?:range|optimum|optimal|target|guideline|sufficiency)\b/i],
  ['rating', /^(?:rating|status|interpretation|comment|class|stufe)s?$/i],
];

/** What each column of a table holds, told by a row of headings such as "Test, Result, Unit, Rating". */
export type Columns = { readonly parted: ',' | '|'; readonly roles: readonly (Role | null)[]; readonly unit: string };

export function columnsOf(text: string): Columns | null {
  for (const parted of [',', '|'] as const) {
    const cells = split(text, parted);
    const roles = cells.map((c) => ROLES.find(([, p]) => p.test(c.text))?.[0] ?? null);
    const blanks = cells.filter((c) => c.text === '').length;
    if (cells.length - blanks < 2 || !roles.includes('name') || !roles.includes('value') || roles.filter((r) => r === null).length - blanks > 1) continue;
    const head = cells[roles.indexOf('value')]!.text;
    const unit = findUnits(head)[0];
    return { parted, roles, unit: unit ? head.slice(unit.start, unit.end) : '' };
  }
  return null;
}

/** A row under headings as one line in reading order, and where its value stands; null where the cells do not fit. */
export function rowOf(text: string, columns: Columns): { readonly text: string; readonly start: number; readonly end: number } | null {
  const cells = split(text, columns.parted);
  if (cells.length < 2 || cells.length > columns.roles.length + 1) return null;
  const cell = (role: Role): string => cells[columns.roles.indexOf(role)]?.text ?? '';
  if (findNames(cell('name')).length === 0) return null;
  const range = cell('range') || (cell('low') && cell('high') ? `${cell('low')}-${cell('high')}` : cell('low') ? `>${cell('low')}` : cell('high') ? `<${cell('high')}` : '');
  const parts = [
    cell('name'), `${cell('value')} ${cell('unit') || columns.unit}`.trim(), cell('method'), range && `(${range.replace(/[()]/g, ' ')})`, cell('index') && `index ${cell('index')}`, cell('rating'),
  ];
  const at = cells[columns.roles.indexOf('value')]!;
  return { text: parts.filter(Boolean).join(' | '), start: at.start, end: at.start + Math.max(1, at.text.length) };
}

/** Cells with the empty ones kept, so that each stays under its heading; quotation marks hold a comma. */
function split(text: string, by: ',' | '|'): Cell[] {
  const edged = by === '|' ? text.replace(/^(\s*)\|/, '$1 ').replace(/\|(\s*)$/, ' $1') : text;
  const cells: Cell[] = [];
  let start = 0;
  let quoted = false;
  for (let i = 0; i <= edged.length; i++) {
    if (edged[i] === '"') quoted = !quoted;
    if (i < edged.length && (edged[i] !== by || (quoted && by === ','))) continue;
    const raw = edged.slice(start, i);
    const lead = raw.length - raw.trimStart().length;
    cells.push({ text: raw.trim().replace(/^"|"$/g, ''), start: start + lead });
    start = i + 1;
  }
  return cells;
}

export const isTableRule = isRule;
