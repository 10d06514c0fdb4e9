/**
 * Tables: items down or across the page, samples down or across, parted by tabs, bars, commas or wide gaps.
 * Each row becomes one line for each value, in its own words, so that one reader serves all.
 */
import type { Cell, Parting } from './grid-cells.ts';
import { cellsOf, hasNumber, isRule, nearest, partedLike, under } from './grid-cells.ts';
import type { Column } from './grid-heads.ts';
import { besideOf, besides, isIgnored, isItem, itemOf, labelled, lettersOf, namesIn, namesSamples, ratingOnly, roleOf, rolesOf, sampleColumn, twoRows } from './grid-heads.ts';
import { ELEMENT_OF } from '../tables/items.ts';
import type { Line } from './text.ts';
import type { Words } from './vocabulary.ts';
import { findMethods, findUnits } from './patterns.ts';
import { blank } from './vocabulary.ts';

/** A value of a table in words of its own, and where it stands. */
export type GridLine = { readonly line: Line; readonly text: string; readonly start: number; readonly end: number };
export type Grid = {
  /** Heads of columns that hold numbers nobody knows the name of. */
  readonly strange: readonly Cell[];
  /** Parted by commas: no number in it has a decimal comma. */
  readonly commas: boolean;
  /** How many lines it takes, its header included. */
  readonly length: number;
  /** In order; `sample` is null in a table of one sample. A row without a known name has no lines. */
  readonly rows: readonly { readonly sample: string | null; readonly line: Line; readonly lines: readonly GridLine[] }[];
};

const YEAR = /\b(?:19|20)\d\d\b/;

/** Reads a table that starts at `at`, or null where the lines are something else. */
export function readGrid(lines: readonly Line[], at: number, w: Words): Grid | null {
  const header = lines[at]!.text;
  // Where no bar stands before the heads, one before a row is an empty cell, as a tab is.
  const open = lines[at]!.raw.includes('\t') || !/^\s*\|/.test(header);
  for (const by of [open ? '\t' : '|', ',', ';', ' '] as const) {
    const heads = cellsOf(header, by);
    if (heads.filter((c) => c.text).length < 2) continue;
    const second = lines[at + 1] && isRule(lines[at + 1]!.text) ? at + 2 : at + 1;
    const both = lines[second] ? twoRows(heads, cellsOf(lines[second].text, by), by, w) : null;
    const grid = both ? tableOf(lines, second, both, by, w) : tableOf(lines, at, numbered(heads) ?? labelled(heads, w) ?? heads, by, w);
    if (grid) return both ? { ...grid, length: grid.length + second - at } : grid;
  }
  return singleBlanks(lines, at, w);
}

/** "Sample   1   2   3": the heads of samples that have numbers for names. */
const numbered = (heads: readonly Cell[]): Cell[] | null =>
  (heads.every((h, i) => (i === 0 ? namesSamples(h.text) : /^\d{0,2}$/.test(h.text))) ? heads.map((h, i) => ({ ...h, text: i === 0 ? 'item' : h.text && `sample ${h.text}` })) : null);

const tableOf = (lines: readonly Line[], at: number, heads: readonly Cell[], by: Parting, w: Words): Grid | null => itemsAcross(lines, at, heads, by, w) ?? itemsDown(lines, at, heads, by, w);

/** Names across the page, a row a sample; perhaps rows of units, methods or kinds between. */
function itemsAcross(lines: readonly Line[], at: number, heads: readonly Cell[], by: Parting, w: Words): Grid | null {
  const beside = besideOf(heads, w);
  const items = heads.map((c, i) => beside[i] === null && isItem(c.text, w));
  const count = items.filter(Boolean).length;
  const named = sampleColumn(heads.map((c, i) => (items[i] || beside[i] || isIgnored(c.text, w) ? null : c.text)));
  const strange = heads.filter((c, i) => i > 0 && i !== named && c.text && !items[i] && !beside[i] && !isIgnored(c.text, w) && roleOf(c.text) !== 'skip');
  if (count < (namesSamples(heads[named]?.text ?? '') ? 1 : 2) || strange.some((c) => hasNumber(blank(c.text, findUnits(c.text)).replace(YEAR, '')))) return null;
  let next = at + 1;
  const extra: string[] = heads.map(() => '');
  let kinds: Cell[] | null = null;
  for (; lines[next]; next++) {
    const text = lines[next]!.text;
    if (!text.trim() || isRule(text)) continue;
    const bare = blank(blank(text, findUnits(text)), findMethods(text));
    // "ppm CaCO3/pH" holds no number.
    if (hasNumber(blank(bare, w.names(bare)).replace(/CaCO3/gi, '')) || findUnits(text).length + findMethods(text).length === 0) break;
    const all = cellsOf(text, partedLike(text, by));
    // "lbs/acre lbs/acre lbs/acre": a single blank between units, one for each head that is no pH, or for each element.
    const units = findUnits(text);
    const takers = [(item: string) => !/\bph\b/.test(item), (item: string) => Object.hasOwn(ELEMENT_OF, item)].map((takes) => heads.flatMap((h, i) => (items[i] && takes(itemOf(h.text, w)!) ? [i] : []))).find((list) => list.length === units.length);
    if (by === ' ' && takers && all.length < units.length) {
      takers.forEach((i, k) => { extra[i] += ` ${text.slice(units[k]!.start, units[k]!.end)}`; });
      continue;
    }
    // "----- mmolc/dm3 -----" stands over several columns.
    const wide = all.filter(({ text: t }) => t.length > 3 && t.startsWith('--') && t.endsWith('--'));
    for (const c of wide) heads.forEach((h, i) => { if (Math.min(h.end, c.end) > Math.max(h.start, c.start)) extra[i] += ` ${c.text.replace(/-{2,}/g, '')}`; });
    const cells = all.filter((c) => !wide.includes(c));
    // A short row that begins at the edge does not say under which heads it stands.
    const placed = by !== ' ' && cells.length < heads.length && cells[0]?.text ? null : under(heads, cells, by);
    if ((cells.length > heads.length + 1 || (cells.length === heads.length + 1 && cells.length === 2 * count)) && findUnits(text).length > 0) kinds = cells;
    else if (placed) placed.forEach((c, i) => {
      // The same unit twice under one head belongs to others too.
      const own = c ? findUnits(c.text).map((u) => u.is) : [];
      if (c && new Set(own).size === own.length) extra[i] += ` ${c.text}`;
    });
  }
  const rows: Grid['rows'][number][] = [];
  const unplaced = new Set<Cell>();
  for (; lines[next]; next++) {
    const line = lines[next]!;
    if (isRule(line.text)) continue;
    const parted = cellsOf(line.text, partedLike(line.text, by));
    const cells = by === ' ' && parted.length > heads.length ? withClasses(parted, w) : parted;
    if (!hasNumber(line.text) || cells.length < (by === ' ' ? 2 : heads.length - 2)) break;
    if (kinds) {
      const made = byKind(heads.filter((_, i) => items[i]), kinds, named < 0 ? parted : parted.slice(1), line, w);
      if (!made) break;
      rows.push({ sample: named < 0 ? null : parted[0]!.text, line, lines: made });
      continue;
    }
    const placed = under(heads, cells, by);
    if (!placed) break;
    const fits = heads.flatMap((h, i) => (items[i] ? [isValueCell(placed[i]?.text ?? '', h.text, w)] : []));
    if (fits.filter((f) => !f).length > (fits.length > 3 ? 1 : 0) || heads.some((h, i) => items[i] && !/texture/.test(w.names(h.text)[0]!.is.item) && w.names(placed[i]?.text ?? '').length > 0)) break;
    const made = heads.flatMap((head, i): GridLine[] => {
      const cell = placed[i];
      const said = beside.flatMap((b, k) => (b?.of === i && placed[k]?.text ? [{ cell: placed[k], says: besides(placed[k].text, b.role, heads[k]!.text, w) ?? '' }] : []));
      const where = cell?.text ? cell : said[0]?.cell;
      return items[i] && where ? [{ line, text: `${head.text} | ${cell?.text ?? ''}${extra[i]}${said.map((d) => d.says).join('')}`, start: where.start, end: where.end }] : [];
    });
    heads.forEach((h, i) => {
      const cell = placed[i]?.text ?? '';
      if (beside[i] ? besides(cell, beside[i].role, h.text, w) === null : strange.includes(h) && hasNumber(cell)) unplaced.add(h);
    });
    rows.push({ sample: named < 0 ? null : placed[named]?.text ?? null, line, lines: made });
  }
  return rows.length > 0 ? { strange: [...unplaced], commas: by === ',', length: next - at, rows } : null;
}

/** A class behind each value, "6,3  C  24  D", is part of its cell. */
function withClasses(cells: readonly Cell[], w: Words): Cell[] {
  const letter = w.language === 'de' ? /^[A-F]$/ : /^(?:V?[LH]|M)[+-]?$/;
  const out: Cell[] = [];
  for (const cell of cells) {
    const last = out.at(-1);
    if (last && /^[<>]?[\d.,]+$/.test(last.text) && letter.test(cell.text)) out[out.length - 1] = { text: `${last.text} | ${lettersOf(cell.text, 'klasse')} | `, start: last.start, end: cell.end };
    else out.push(cell);
  }
  return out;
}

/** A cell under an item: a number, nothing, or a word for nothing found; a texture has words. */
function isValueCell(text: string, head: string, w: Words): boolean {
  return text === '' || /^[<>=~ ]*[-+]?[.\d]/.test(text) || /^(?:n\/a$|(?:not|nicht|no|non|nao) |index \d)/i.test(text) || (w.names(head).some((n) => n.is.item === 'texture') && w.names(text).every((n) => /^(?:sand|silt|clay|texture)$/.test(n.is.item))) || w.ratings(text).length > 0 || (/^[-+\w.]{1,14}$/.test(text) && w.names(text).length === 0);
}

/** Columns told apart by a row below the names: a value column (unit or the name itself), then perhaps its class. */
function byKind(heads: readonly Cell[], kinds: readonly Cell[], cells: readonly Cell[], line: Line, w: Words): GridLine[] | null {
  const isValue = (c: Cell): boolean => findUnits(c.text).length > 0 || w.names(c.text).length > 0;
  if (kinds.filter(isValue).length !== heads.length || cells.length !== kinds.length) return null;
  const made: GridLine[] = [];
  let name = -1;
  kinds.forEach((kind, i) => {
    const cell = cells[i]!;
    if (isValue(kind)) {
      name++;
      const unit = findUnits(kind.text)[0];
      made.push({ line, text: `${heads[name]!.text} | ${cell.text}${unit ? ` ${kind.text.slice(unit.start, unit.end)}` : ''}`, start: cell.start, end: cell.end });
    } else if (made.length > 0 && !hasNumber(cell.text)) {
      const last = made.at(-1)!;
      made[made.length - 1] = { ...last, text: `${last.text} | ${lettersOf(cell.text, kind.text)} | `, end: cell.end };
    }
  });
  return made;
}

/** Items down the page: columns of results, or a column a sample, or a column a rating word. */
function itemsDown(lines: readonly Line[], at: number, heads: readonly Cell[], by: Parting, w: Words): Grid | null {
  if (heads.some((c) => c.text && isItem(c.text, w) && roleOf(c.text) === null && !ratingOnly(c.text, w))) return null;
  // One year may stand over the results; of two nobody knows which counts.
  const text = heads.map((c) => c.text).join(' | ').replace(YEAR, '');
  const bare = blank(text, findMethods(text));
  if (hasNumber(blank(bare, findUnits(bare)).replace(/(?:[a-z]{3,}|no\.?|#) ?\d{1,2}\b/gi, ''))) return null;
  const below = lines.slice(at + 1, at + 4).find((l) => l.text.trim() && !isRule(l.text));
  const columns = rolesOf(heads, by, w, below ? cellsOf(below.text, by) : []);
  if (!columns) return null;
  let next = at + 1;
  const rows: Grid['rows'][number][] = [];
  for (; lines[next]; next++) {
    const line = lines[next]!;
    if (isRule(line.text)) continue;
    if (!line.text.trim()) {
      if (by === ' ' && rows.length > 0) break;
      continue;
    }
    const cells = cellsOf(line.text, by);
    const row = rowOf(columns, cells, by, line, w);
    if (!row) break;
    rows.push(...row);
  }
  const named = rows.filter((r) => r.lines.length > 0).length;
  if (named === 0 || named * 2 < rows.length) return null;
  const strange = by === ' ' ? [] : columns.filter((c, i) => c.role === null && c.head.text && rows.some((r) => /^[<>]?\d[\d.,]*$/.test(under(heads, cellsOf(r.line.text, by), by)?.[i - columns.length + heads.length]?.text ?? ''))).map((c) => c.head);
  return { strange, commas: by === ',', length: next - at, rows };
}

/** One row of items down; null where the line is no row. */
function rowOf(columns: readonly Column[], cells: readonly Cell[], by: Parting, line: Line, w: Words): Grid['rows'] | null {
  const heads = columns.map((c) => c.head);
  const marked = columns.some((c) => c.role === 'mark') && by === ' ';
  const placed = marked ? barRow(columns, line) : under(heads, cells, by);
  if (!placed) return null;
  const samples = [...new Set(heads.flatMap((h) => h.sample ?? []))];
  if (samples.length === 0) return rowUnder(columns, placed, by, line, w);
  // A line of one cell is none of a table of samples.
  if (cells.length < 2) return null;
  const rows = samples.map((sample) => {
    const own = columns.map((c, i) => (c.head.sample ?? sample) === sample ? i : -1).filter((i) => i >= 0);
    const row = rowUnder(own.map((i) => columns[i]!), own.map((i) => placed[i]), by, line, w);
    return row?.map((r) => ({ ...r, sample, lines: own.some((i) => columns[i]!.head.sample && placed[i]?.text) ? r.lines : [] })) ?? null;
  });
  return rows.some((r) => r === null) ? null : rows.flatMap((r) => r!);
}

function rowUnder(columns: readonly Column[], placed: readonly (Cell | undefined)[], by: Parting, line: Line, w: Words): Grid['rows'] | null {
  const at = (role: Column['role']): Cell | undefined => placed[columns.findIndex((c) => c.role === role)];
  const name = at('name');
  if (!name?.text) return by === ' ' ? null : [{ sample: null, line, lines: [] }];
  const across = columns.some((c) => c.role === 'sample');
  if (namesIn(name.text, w) === 0 && !across) return hasNumber(line.text) || by !== ' ' ? [{ sample: null, line, lines: [] }] : null;
  const text = (role: Column['role']): string => (at(role)?.text ?? '').replace(/^\(?[-.]+\)?$/, '');
  const samples = columns.flatMap((c, i) => (c.role === 'sample' ? [{ head: c.head, cell: placed[i] }] : []));
  if (samples.length > 0) {
    return samples.map(({ head, cell }) => ({
      sample: head.text, line, lines: cell && (hasNumber(cell.text) || namesIn(name.text, w) > 0) ? [{ line, text: [name.text, text('method'), `${cell.text} ${text('unit')}`.trim(), text('range') && `(range ${text('range').replace(/[()]/g, ' ')})`].filter(Boolean).join(' | '), start: cell.start, end: cell.end }] : [],
    }));
  }
  // Limits of the classes stand in all these columns, a mark in one.
  const marks = columns.filter((c, i) => c.role === 'mark' && placed[i]?.text && placed[i].text !== '-').length;
  const mark = marks > 1 ? -1 : columns.findIndex((c, i) => c.role === 'mark' && placed[i]?.text && /[x#\d✓■█]/i.test(placed[i].text));
  const value = at('value') ?? (mark >= 0 && hasNumber(placed[mark]!.text) ? placed[mark] : undefined);
  const unit = columns.map((c) => c.head).filter((_, i) => columns[i]!.role === 'value' || i === 0).flatMap((h) => findUnits(h.text).slice(0, 1).map((u) => h.text.slice(u.start, u.end)))[0] ?? '';
  const [low, high] = [text('low'), text('high')].map((limit) => limit.replace(/[()]/g, ''));
  const range = text('range') || (low && high ? `${low}-${high}` : low ? `>${low}` : high ? `<${high}` : '');
  const method = columns.filter((c) => c.role === 'name' || c.role === 'value').flatMap((c) => findMethods(c.head.text).slice(0, 1).map((m) => c.head.text.slice(m.start, m.end)))[0] ?? '';
  const told = text('method') || method;
  // A method stands before the value, where no unknown word comes with it.
  const plainMethod = !/[a-z]/i.test(blank(told, findMethods(told)));
  const parts = [
    name.text, plainMethod ? told : '', `${value?.text ?? ''} ${text('unit') || unit}`.trim(), plainMethod ? '' : told, range && `(range ${range.replace(/[()]/g, ' ')})`,
    text('index') && `index ${text('index').replace(/[()]/g, '')}`, mark >= 0 ? columns[mark]!.head.text : text('rating'),
  ];
  const where = value?.text ? value : name;
  return [{ sample: null, line, lines: [{ line, text: parts.filter(Boolean).join(' | '), start: where.start, end: where.end }] }];
}

/** A bar of signs that ends under a rating word: the rest of the line is the reading. */
function barRow(columns: readonly Column[], line: Line): (Cell | undefined)[] | null {
  if (columns.some((c) => c.role === 'value')) return besideMarks(columns, line);
  const whole = line.text.trimEnd();
  const bar = /([xX#=█■])\1{0,60}$/.exec(whole);
  const text = whole.slice(0, bar?.index).trimEnd();
  const start = text.length - text.trimStart().length;
  if (!hasNumber(text)) return null;
  const reached = bar ? columns.findLastIndex((c) => c.role === 'mark' && c.head.start < whole.length) : -1;
  return columns.map((_, i) => (i === 0 ? { text: text.trim(), start, end: text.length } : i === reached ? { text: 'x', start, end: whole.length } : undefined));
}

/** Columns of results before those of marks. A bar or advice under the marks is none of them; a lone mark is. */
function besideMarks(columns: readonly Column[], line: Line): (Cell | undefined)[] | null {
  const first = columns.find((c) => c.role === 'mark')!.head.start;
  const own = columns.filter((c) => c.head.start < first);
  const cells = cellsOf(line.text, ' ');
  const placed = under(own.map((c) => c.head), cells.filter((c) => c.start < first), ' ');
  if (!placed?.slice(1).some((c) => c && hasNumber(c.text))) return null;
  const mark = cells.filter((c) => c.start >= first && /^[xX#✓■█]$/.test(c.text));
  const under1 = mark.length === 1 ? nearest(columns.map((c) => c.head), mark[0]!) : -1;
  return columns.map((c, i) => (i === under1 ? mark[0] : placed[own.indexOf(c)]));
}

/** "Area pH N P K" over "SE border 6.7/good 0/depleted ...": a kit's table, one blank between. */
function singleBlanks(lines: readonly Line[], at: number, w: Words): Grid | null {
  if (hasNumber(lines[at]!.text)) return null;
  const words = cellsByBlank(lines[at]!.text);
  if (words.length > 40) return null;
  const first = words.findIndex((word) => isItem(word.text, w));
  const heads = words.slice(first);
  if (heads.length < 3 || !heads.every((word) => isItem(word.text, w))) return null;
  const rows: Grid['rows'][number][] = [];
  let next = at + 1;
  for (; lines[next]; next++) {
    const line = lines[next]!;
    const cells = cellsByBlank(line.text);
    const values = cells.slice(-heads.length);
    if (cells.length < heads.length || !values.every((c) => /^[<>]?\d/.test(c.text))) break;
    const name = cells.slice(0, -heads.length);
    if (name.some((c) => /^\d/.test(c.text))) break;
    rows.push({
      sample: name.length > 0 ? name.map((c) => c.text).join(' ') : null, line,
      lines: heads.map((h, i) => ({ line, text: `${h.text} | ${kitScore(h.text, values[i]!.text)}`, start: values[i]!.start, end: values[i]!.end })),
    });
  }
  return rows.length > 0 ? { strange: [], commas: false, length: next - at, rows } : null;
}

const cellsByBlank = (text: string): Cell[] => [...text.matchAll(/[^\s|]+/g)].map((m) => ({ text: m[0], start: m.index, end: m.index + m[0].length }));

/** "5/surplus": a kit's step and its word; the step is no content. */
function kitScore(name: string, cell: string): string {
  const m = /^([\d.,<>]+)\/([a-z ]+)$/i.exec(cell);
  if (!m) return cell;
  return /^ph$/i.test(name) ? `${m[1]!} | ${m[2]!}` : `index ${m[1]!} | ${m[2]!}`;
}
