/** Lines of a table parted into cells, and cells put under their heads. */

/** `sample`: whose column it heads, where several samples have columns of their own. */
export type Cell = { readonly text: string; readonly start: number; readonly end: number; readonly sample?: string };
/** Tabs are bars in a prepared line; a tab at the edge is an empty cell, a bar there is decoration where the header has one. */
export type Parting = ',' | ';' | '|' | '\t' | ' ';

export const isRule = (text: string): boolean => /^[\s|:+=-]+$/.test(text) && /[-=]/.test(text);
export const hasNumber = (text: string): boolean => /\d/.test(text);

/** Cells of a line. Empty ones are kept between bars and commas; wide gaps have none. */
export function cellsOf(text: string, by: Parting): Cell[] {
  if (by === ' ') return [...text.matchAll(/\S+(?: \S+)*/g)].map((m) => ({ text: m[0], start: m.index, end: m.index + m[0].length }));
  const edged = by === '|' ? text.replace(/^(\s*)\|/, '$1 ').replace(/\|(\s*)$/, ' $1') : text;
  const sign = by === '\t' ? '|' : by;
  const cells: Cell[] = [];
  let start = 0;
  let quoted = false;
  for (let i = 0; i <= edged.length; i++) {
    if (edged[i] === '"') quoted = !quoted;
    if (i < edged.length && (edged[i] !== sign || (quoted && sign !== '|'))) continue;
    const raw = edged.slice(start, i);
    const lead = raw.length - raw.trimStart().length;
    const cell = raw.trim().replace(/^"|"$/g, '').trim();
    cells.push({ text: cell, start: start + lead, end: start + lead + Math.max(1, raw.trim().length) });
    start = i + 1;
  }
  return cells;
}

/** A table of wide gaps may have bars in its rows. */
export const partedLike = (text: string, by: Parting): Parting => (by === ' ' && text.includes('|') ? '|' : by);

/** The head that a cell stands under, or is nearest to. */
export function nearest(heads: readonly Cell[], cell: Cell): number {
  let best = 0;
  let reach = -Infinity;
  heads.forEach((h, i) => {
    const shared = Math.min(h.end, cell.end) - Math.max(h.start, cell.start);
    if (shared > reach) [best, reach] = [i, shared];
  });
  return best;
}

/** Whether the gap between each two cells is as wide as any other. */
const evenly = (cells: readonly Cell[]): boolean => new Set(cells.slice(1).map((c, i) => c.start - cells[i]!.end)).size === 1;

/** A row's cells under the heads: by count where it fits, by place in a table of blanks. */
export function under(heads: readonly Cell[], cells: readonly Cell[], by: Parting): (Cell | undefined)[] | null {
  if (by !== ' ') return cells.length > heads.length + 1 || cells.length < 2 ? null : heads.map((_, i) => cells[i]);
  if (cells.length === heads.length) {
    // A cell right under another head than its turn gives: the row has a cell that no head stands over.
    const over = (h: Cell, c: Cell): boolean => Math.min(h.end, c.end) > Math.max(h.start, c.start);
    // Gaps all alike part cells and place none.
    if (evenly(heads) && evenly(cells)) return [...cells];
    return cells.some((c, i) => !over(heads[i]!, c) && heads.some((h, k) => k !== i && over(h, c) && !over(h, cells[k]!))) ? null : [...cells];
  }
  const out: (Cell | undefined)[] = heads.map(() => undefined);
  for (const cell of cells) {
    const best = nearest(heads, cell);
    if (out[best]) return null;
    out[best] = cell;
  }
  return out;
}

