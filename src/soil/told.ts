/**
 * Lines that say by which method, and in which unit, other lines were measured: item by item ("P and K Mehlich-3") or for
 * all ("Extractant: Mehlich 3"). Above the values they are headings (heading.ts); here also those below them.
 */
import type { Item, Method, ReportUnit } from '../tables/items.ts';
import { BUFFERS, EXTRACTS } from '../tables/items.ts';
import type { Name } from '../tables/names.ts';
import { HEADING_WORDS, ITEM_GROUPS, OF_ALL, TOLD_WORDS } from '../tables/report-words.ts';
import type { Context } from './context.ts';
import { metaOf } from './meta.ts';
import type { Line } from './text.ts';
import type { Token } from './token.ts';
import { findMethods, findUnits } from './patterns.ts';
import { blank } from './vocabulary.ts';

export type Told = {
  readonly items: ReadonlyMap<Item, Method>;
  /** Extractants named for whatever they extract. */
  readonly all: readonly Method[];
  readonly unit: ReportUnit | null;
};

type Part = { readonly items: readonly Item[] } | { readonly method: Method } | 'stop';

const VALUES: readonly Token['kind'][] = ['number', 'between', 'trace', 'rating', 'absent'];

/** What a line without a value says of methods; null for any other line. `strict`: no unknown word may stand in it. */
export function toldBy(line: Line, context: Context, strict: boolean): Told | null {
  const { text } = line;
  const units = findUnits(text);
  if (findMethods(text).length === 0) return OF_ALL.test(text) && units.length === 1 && HEADING_WORDS.test(blank(text, units)) ? { items: new Map(), all: [], unit: units[0]!.is } : null;
  const tokens = context.look(text).flatMap((t) => (t.kind === 'group' ? t.tokens : [t]));
  if (tokens.some((t) => VALUES.includes(t.kind))) return null;
  const groups = ITEM_GROUPS.flatMap(([items, pattern]) => [...text.matchAll(pattern)].map((m) => ({ start: m.index, end: m.index + m[0].length, items })));
  const parts: Part[] = [];
  for (const t of tokens) {
    const printed = text.slice(t.start, t.end);
    const group = groups.find((g) => g.start <= t.start && t.end <= g.end);
    const items = group?.items ?? itemsOf(t, printed, context);
    // "pH in CaCl2" is one name.
    if (t.kind === 'name' && t.is.item === 'ph-salt' && t.is.method) parts.push({ items: ['ph'] }, { method: t.is.method });
    else if (items) parts.push({ items });
    // A ratio's method is none of the values'.
    else if (t.kind === 'name') return null;
    else if (t.kind === 'method') parts.push({ method: t.is });
    else if (t.kind === 'separator' && /[;.]/.test(printed)) parts.push('stop');
    else if (strict && t.kind === 'word' && !TOLD_WORDS.test(t.text)) return null;
  }
  const items = new Map<Item, Method>();
  const all: Method[] = [];
  for (const sentence of split(parts)) {
    const methods = sentence.flatMap((p) => ('method' in p ? [p.method] : []));
    if (methods.length === 0) continue;
    const [first, last] = [sentence[0]!, sentence.at(-1)!];
    if (methods.length === sentence.length) all.push(...methods);
    else if ('items' in first && 'method' in last) assign(sentence, items);
    else if ('method' in first && 'items' in last) assign([...sentence].reverse(), items);
    else return null;
  }
  // "Phosphorus Mehlich 3 ppm" has lost its value.
  if (strict && items.size > 0 && units.length > 0 && !OF_ALL.test(text)) return null;
  return items.size + all.length > 0 ? { items, all, unit: items.size === 0 || OF_ALL.test(text) ? units[0]?.is ?? null : null } : null;
}

/** The items that a token names; a symbol in a list of them, "P, K and Mg", counts as it would before a number. */
function itemsOf(t: Token, printed: string, context: Context): readonly Item[] | null {
  if (t.kind === 'name') return isItem(t.is.item) ? [t.is.item] : null;
  if (!/^[A-Z][a-z]?(?:[/+&][A-Z][a-z]?)*$/.test(printed)) return null;
  const found = printed.split(/[/+&]/).map((symbol) => context.words.names(`${symbol} 1`)[0]?.is.item);
  return found.every(isItem) ? found : null;
}

const isItem = (item: Name['item'] | undefined): item is Item => item !== undefined && item !== 'ratio' && item !== 'lime';

function split(parts: readonly Part[]): Exclude<Part, 'stop'>[][] {
  const out: Exclude<Part, 'stop'>[][] = [[]];
  for (const part of parts) {
    if (part === 'stop') out.push([]);
    else out.at(-1)!.push(part);
  }
  return out;
}

/** Names up to a method have that method; of "1:1 water" the water stays. */
function assign(sentence: readonly Exclude<Part, 'stop'>[], to: Map<Item, Method>): void {
  let waiting: Item[] = [];
  let had: readonly Item[] = [];
  for (const part of sentence) {
    if ('items' in part) {
      waiting.push(...part.items);
      continue;
    }
    if (waiting.length > 0) had = waiting;
    for (const item of had) {
      const own = item === 'ph' && BUFFERS.includes(part.method) ? 'buffer-ph' : item;
      if (waiting.length > 0 || /^1:/.test(to.get(own) ?? '')) to.set(own, part.method);
    }
    waiting = [];
  }
}

/** The method that a line told for an item; null where two of its extractants would do. */
export function methodFor(item: Item, told: Told): Method | null {
  const own = told.items.get(item);
  if (own) return own;
  const fits = [...new Set(told.all.filter((m) => EXTRACTS[m]?.includes(item)))];
  return fits.length === 1 ? fits[0]! : null;
}

/** Per line its values, with their items where no method stands beside them, or what it tells. */
type Mark = { readonly line: number } & ({ readonly is: 'values'; readonly items: readonly Item[] | null } | { readonly is: 'told'; readonly told: Told });

/**
 * Lines of methods that stand below their values, by line number: what names its items, wherever values stand above it; what is
 * for all, where no value follows in its sample, or where the sample starts with values, ends with such a line and each comes behind its own.
 */
export function toldBelow(lines: readonly Line[], context: Context): ReadonlyMap<number, Told> {
  const found = new Map<number, Told>();
  const tells = new Map(lines.flatMap((l) => {
    const told = toldBy(l, context, true);
    return told ? [[l, told] as const] : [];
  }));
  if (tells.size === 0) return found;
  let block: Mark[] = [];
  const close = (): void => {
    const lastValues = block.findLastIndex((m) => m.is === 'values');
    const behind = block[0]?.is === 'values' && isForAll(block.at(-1));
    block.forEach((m, i) => {
      if (m.is !== 'told' || !block.slice(0, i).some((v) => v.is === 'values')) return;
      if (!isForAll(m) || i > lastValues || (behind && servesAbove(block, i, m.told))) found.set(m.line, m.told);
    });
    block = [];
  };
  for (const line of lines) {
    if (metaOf(line, null)?.sample) close();
    const told = tells.get(line);
    const mark = told ? { line: line.number, is: 'told' as const, told } : valuesOf(line, context);
    if (mark) block.push(mark);
  }
  close();
  return found;
}

const isForAll = (m: Mark | undefined): boolean => m?.is === 'told' && m.told.items.size === 0;

/** Whether a value right above, without a method, is one that the line's extractant serves. */
function servesAbove(marks: readonly Mark[], at: number, told: Told): boolean {
  for (let i = at - 1; i >= 0; i--) {
    const m = marks[i]!;
    if (m.is !== 'values') return false;
    if (m.items === null || m.items.some((item) => methodFor(item, told) !== null)) return true;
  }
  return false;
}

/** The items of a line of values; a row of a table names nothing itself. */
function valuesOf(line: Line, context: Context): Mark | null {
  const tokens = context.look(line.text);
  const names = tokens.flatMap((t) => (t.kind === 'name' && isItem(t.is.item) ? [t.is.item] : []));
  const valued = names.length > 0 ? tokens.some((t) => t.kind === 'number' || t.kind === 'between') : line.text.split(/[|,;]| {2,}/).filter((c) => /^[\s<>]*[\d.]+\s*$/.test(c)).length > 1;
  return valued ? { line: line.number, is: 'values', items: names.length === 0 ? null : tokens.some((t) => t.kind === 'method') ? [] : names } : null;
}
