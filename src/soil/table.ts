/**
 * Tables that run across the page: a row of names, perhaps a row that says what each column holds,
 * then a row of values. They are turned into one line for each name, in their own words, so that one reader serves all.
 */
import type { Line } from './text.ts';
import { blank, findNames, findRatings, findUnits } from './vocabulary.ts';

export type Cell = { readonly text: string; readonly start: number };

/** Cells of a line, parted by bars, or by two or more blanks. */
export function cellsOf(text: string): Cell[] {
  const cells: Cell[] = [];
  const parted = text.includes('|') ? /[^|]+/g : /\S(?:\S| (?! ))*/g;
  for (const m of text.matchAll(parted)) {
    const lead = m[0].length - m[0].trimStart().length;
    if (m[0].trim()) cells.push({ text: m[0].trim(), start: m.index + lead });
  }
  return cells;
}

export type Crosswise = {
  /** How many lines the table takes, its header included. */
  readonly length: number;
  readonly rows: readonly { readonly sample: string | null; readonly line: Line; readonly pieces: readonly { readonly text: string; readonly start: number }[] }[];
};

const hasNumber = (text: string): boolean => /\d/.test(text);
const nameless = (text: string): string => blank(blank(text, findNames(text)), findUnits(text));
const isRule = (text: string): boolean => /^[\s|:+=-]+$/.test(text) && text.includes('-');

/** Reads a crosswise table that starts at `at`, or null where the lines are something else. */
export function readCrosswise(lines: readonly Line[], at: number): Crosswise | null {
  const header = lines[at]!;
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

const byPlace = (heads: readonly Cell[], named: readonly unknown[], cells: readonly Cell[]): { text: string; start: number }[] =>
  heads.flatMap((head, i) => (named[i] ? [{ text: `${head.text} | ${cells[i]!.text}`, start: cells[i]!.start }] : []));

/** Columns told apart by the row below the names: a value column (unit or the name itself), then perhaps its class. */
function byKind(heads: readonly Cell[], kinds: readonly Cell[], cells: readonly Cell[]): { text: string; start: number }[] | null {
  const isValue = (c: Cell): boolean => findUnits(c.text).length > 0 || findNames(c.text).length > 0;
  if (kinds.filter(isValue).length !== heads.length || cells.length !== kinds.length) return null;
  const pieces: { text: string; start: number }[] = [];
  let name = -1;
  kinds.forEach((kind, i) => {
    const cell = cells[i]!;
    if (isValue(kind)) {
      name++;
      const unit = findUnits(kind.text)[0];
      pieces.push({ text: `${heads[name]!.text} | ${cell.text}${unit ? ` ${kind.text.slice(unit.start, unit.end)}` : ''}`, start: cell.start });
    } else if (pieces.length > 0 && findRatings(cell.text).length > 0) {
      const last = pieces.at(-1)!;
      pieces[pieces.length - 1] = { text: `${last.text} | ${cell.text}`, start: last.start };
    }
  });
  return pieces;
}

const COLUMN = /^(?:test|nutrient|element|analysis|analyte|item|parameter|result|results|value|level|found|units?|method|optimum(?: range)?|optimal(?: range)?|range|target(?: range)?|rating|status|interpretation|guideline|class|stufe|wert|einheit|parametro|resultado|unidad|symbol)$/i;

/** A row of column headings ("Test, Result, Unit, Rating"); says whether commas part its columns. */
export function columnHeadings(text: string): 'commas' | 'cells' | null {
  const commas = text.split(',').map((c) => c.trim().replace(/^"|"$/g, ''));
  if (commas.length >= 3 && commas.filter((c) => COLUMN.test(c)).length >= Math.max(2, commas.length - 1)) return 'commas';
  const cells = cellsOf(text).map((c) => c.text);
  if (cells.length >= 2 && cells.filter((c) => COLUMN.test(c)).length >= Math.max(2, cells.length - 1)) return 'cells';
  return null;
}

/** Turns the commas of a comma-separated row into bars, length kept. */
export const barred = (text: string): string => text.replace(/"[^"]*"|,/g, (part) => (part === ',' ? '|' : part.replace(/"/g, ' ')));
export const isTableRule = isRule;
