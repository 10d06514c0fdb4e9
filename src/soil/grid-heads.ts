/** Heads of a table's columns: which names an item, which says something of the value beside it, what each column holds. */
import { RATING_LETTERS } from '../tables/rating-words.ts';
import type { Role } from '../tables/report-words.ts';
import { ROLES } from '../tables/report-words.ts';
import type { Cell, Parting } from './grid-cells.ts';
import { hasNumber } from './grid-cells.ts';
import type { Words } from './vocabulary.ts';
import { findMethods, findUnits } from './patterns.ts';
import { blank } from './vocabulary.ts';

const inner = (text: string): string => text.toLowerCase().replace(/[*"]/g, '').trim();

export const namesIn = (text: string, w: Words): number => new Set(w.names(text).filter((n) => n.is.item !== 'ratio').map((n) => n.is.item)).size;
/** A head that names one item, perhaps with its unit and method, and holds no value. */
export const isItem = (text: string, w: Words): boolean => {
  if (!text || namesIn(text, w) !== 1) return false;
  const rest = blank(blank(blank(text, w.names(text)), findMethods(text)), findUnits(blank(text, findMethods(text))));
  return !hasNumber(rest.replace(/(?:\d+ ?(?:-|to) ?)?\d+ ?(?:cm|in)\b/gi, ''));
};
export const isIgnored = (text: string, w: Words): boolean => w.names(text).some((n) => n.is.item === 'ratio');
export const itemOf = (text: string, w: Words): string | null => (isItem(text, w) ? w.names(text).find((n) => n.is.item !== 'ratio')!.is.item : null);

/** A column that says something of the value in another: "K rating" of "K (ppm)". */
type Beside = { readonly of: number; readonly role: Role };
const SAYS: readonly Role[] = ['rating', 'index', 'range', 'method', 'unit', 'skip', 'value'];

/** What the head of a column holds beside its item: its role by one or two words at either end, and the item of the rest. */
function saysOf(text: string, w: Words): { readonly item: string; readonly role: Role } | null {
  const words = text.split(/[\s_]+/);
  for (const n of [2, 1]) {
    for (const [said, rest] of [[words.slice(-n), words.slice(0, -n)], [words.slice(0, n), words.slice(n)]] as const) {
      const role = roleOf(said.join(' ').replace(/^[(:-]+|[):-]+$/g, ''));
      const item = itemOf(rest.join(' ').replace(/^(?:of|for|de|del|du|da|di|von|der)\b|[:(-]+$/gi, '').trim(), w);
      if (item && role && SAYS.includes(role)) return { item, role };
    }
  }
  return null;
}

/** Heads over the names of samples, the plainest first; without one the first column names them. */
const NAMES_SAMPLES: readonly RegExp[] = [/\b(?:name|bezeichnung|nom|nombre|nome|description)\b/i, /\b(?:field|plot|block|bed|schlag|parzelle|parcelle|parcela|appezzamento|lote)s?\b/i, /\b(?:sample|probe|muestra|echantillon|amostra|campione)s?\b/i];
export const namesSamples = (head: string): boolean => NAMES_SAMPLES.some((p) => p.test(head));
export function sampleColumn(heads: readonly (string | null)[]): number {
  const at = NAMES_SAMPLES.map((p) => heads.findIndex((h) => h !== null && p.test(h))).find((i) => i >= 0);
  return at ?? (heads[0] === null ? -1 : 0);
}

/** Columns that belong to the value column of their item, the nearest before it; a bare "Rating", repeated, belongs to the item before it. */
export function besideOf(heads: readonly Cell[], w: Words): (Beside | null)[] {
  const says = heads.map((c) => saysOf(c.text, w));
  const bare = heads.map((c) => (namesIn(c.text, w) === 0 ? roleOf(c.text) : null)).map((r) => (r === 'rating' || r === 'index' || r === 'range' ? r : null));
  const several = bare.filter(Boolean).length > 1;
  // The head of a value may hold a word for it: "Phosphorus level (ppm)".
  const owners = heads.map((c, i) => (!says[i] || (says[i].role === 'value' && isItem(c.text, w)) ? itemOf(c.text, w) : null));
  const found: (Beside | null)[] = [];
  heads.forEach((_, i) => {
    const said = says[i] ?? null;
    if (owners[i] !== null || (!said && !(several && bare[i]))) return found.push(null);
    // "P, Index, Rating": the second bare word is of the same value as the first.
    const before = said ? owners.lastIndexOf(said.item, i) : owners[i - 1] ? i - 1 : found[i - 1]?.of ?? -1;
    const of = before >= 0 || !said ? before : owners.indexOf(said.item);
    return found.push(of < 0 ? null : { of, role: said?.role ?? bare[i]! });
  });
  return found;
}

/** Heads under which a letter A to E is a German class; elsewhere D is American, "deficient". */
const CLASS_HEAD = /klasse|stufe|bewertung|einstufung|beurteilung|\b(?:class|kl)\b/i;
export const lettersOf = (cell: string, head: string): string =>
  CLASS_HEAD.test(head) && /^[A-F]$/i.test(cell) ? `klasse ${cell}` : RATING_LETTERS.map(({ letters }) => letters[cell.toUpperCase().replace(/[+-]$/, '')]).find(Boolean)?.replace('-', ' ') ?? cell;

/** What such a cell adds to its value, in words of the one reader; null for a number that nobody can place. */
export function besides(cell: string, role: Role, head: string, w: Words): string | null {
  if (!cell || /^[-.]+$/.test(cell) || role === 'skip') return '';
  if (role === 'range') return ` | (range ${cell.replace(/[()]/g, ' ')})`;
  if (role === 'index') return ` | index ${cell.replace(/[()]/g, '')}`;
  if (role === 'method' || role === 'unit') return ` ${cell}`;
  if (hasNumber(cell)) return null;
  return ` | ${w.language === null || w.language === 'en' || CLASS_HEAD.test(head) ? lettersOf(cell, head) : cell} | `;
}

export const roleOf = (text: string): Role | null => ROLES.find(([, p]) => p.test(inner(text)))?.[0] ?? null;
export const ratingOnly = (text: string, w: Words): boolean => /^[a-z ]+$/i.test(text.trim()) && w.ratings(text).length === 1 && blank(text, w.ratings(text)).trim() === '';
/** "mg/l", "Olsen (mg/l)". */
const unitOnly = (text: string): boolean => {
  const bare = blank(text, findMethods(text));
  const units = findUnits(bare);
  return units.length === 1 && /^[\s():]*$/.test(blank(bare, units));
};

export type Column = { readonly head: Cell; readonly role: Role | 'mark' | 'sample' | null };

/** What the columns of a sample may hold under its name. */
const OF_SAMPLE: readonly (Role | null)[] = ['value', 'index', 'rating', 'range', 'unit'];
const isKind = (text: string): boolean => findUnits(text).length > 0 || OF_SAMPLE.includes(roleOf(text));
const isLabel = (text: string, w: Words): boolean => /[\p{L}\d]/u.test(text) && roleOf(text) === null && (namesIn(text, w) === 0 || /^[A-D]$/.test(text)) && findUnits(text).length === 0 && w.ratings(text).length === 0;

/**
 * A second row of heads that repeats, with as many heads over it as repeats: samples over "mg/l Index mg/l Index",
 * or "Index" and "mg/l" over "P K Mg P K Mg". Null where the rows are something else.
 */
export function twoRows(top: readonly Cell[], low: readonly Cell[], by: Parting, w: Words): Cell[] | null {
  const texts = low.map((c) => inner(c.text));
  for (let period = 1; period * 2 <= texts.length; period++) {
    let from = texts.length - period;
    while (texts[from - 1] !== '' && texts[from - 1] === texts[from - 1 + period]) from--;
    const times = Math.floor((texts.length - from) / period);
    const over = top.filter((c) => c.text).slice(-times);
    if (times < 2 || over.length < times || texts.at(-1) === '') continue;
    from = texts.length - times * period;
    const own = low.slice(from);
    // Where each row has a cell a column, each head above stands over its own.
    if (by !== ' ' && top.length === low.length && over.some((c, k) => Math.floor((top.indexOf(c) - from) / period) !== k)) continue;
    const ofSamples = own.every((c) => isKind(c.text)) && over.every((c) => isLabel(c.text, w)) && new Set(over.map((c) => c.text)).size === times;
    if (!ofSamples && !(period > 1 && own.every((c) => isItem(c.text, w)) && over.every((c) => isKind(c.text)))) continue;
    const taken = own.map((c, i): Cell => (ofSamples ? { ...c, sample: over[Math.floor(i / period)]!.text } : { ...c, text: `${c.text} ${over[Math.floor(i / period)]!.text}` }));
    // Heads that stand in the upper row alone.
    const rest = by === ' ' ? [...low.slice(0, from), ...top.filter((t) => !over.includes(t) && !low.slice(0, from).some((l) => l.start < t.end && t.start < l.end))].sort((a, b) => a.start - b.start)
      : low.slice(0, from).map((c, i) => (c.text ? c : { ...c, text: top[i]?.text ?? '' }));
    return [...rest, ...taken];
  }
  return null;
}

/** "Top mg/l, Top index, Bottom mg/l, Bottom index": heads that begin or end with the name of a sample; null where they do not. */
export function labelled(heads: readonly Cell[], w: Words): Cell[] | null {
  const parted = heads.map((c, i): Cell => {
    const words = c.text.split(/\s+/);
    // A head of so many words is none; taking it apart at each would last.
    for (let n = words.length > 20 ? 0 : words.length - 1; i > 0 && n > 0; n--) {
      for (const [label, kind] of [[words.slice(0, n), words.slice(n)], [words.slice(-n), words.slice(0, -n)]] as const) {
        const name = label.join(' ').replace(/^[(:,-]+|[),:-]+$/g, '').trim();
        // "9 mg/l" is a value.
        if (/\p{L}/u.test(name) && isLabel(name, w) && isKind(kind.join(' ').replace(/[:,-]+$/, ''))) return { ...c, text: kind.join(' '), sample: name };
      }
    }
    return c;
  });
  const labels = [...new Set(parted.flatMap((c) => c.sample ?? []))];
  const even = labels.every((l) => parted.filter((c) => c.sample === l).length * labels.length === parted.filter((c) => c.sample).length);
  return labels.length > 1 && even && parted.every((c, i) => i === 0 || c.sample !== undefined || /^(?:unit|method|range|skip|name)$/.test(roleOf(c.text) ?? '')) ? parted : null;
}

/** The columns of a header; null where it heads no table of results. A column of names without a head stands first. */
export function rolesOf(heads: readonly Cell[], by: Parting, w: Words, below: readonly Cell[]): readonly Column[] | null {
  const words = heads.filter((c) => ratingOnly(c.text, w)).length;
  let columns: Column[] = heads.map((head) => {
    if (words > 1 && ratingOnly(head.text, w)) {
      // "Low, High" are ends of a range; three words or more are columns of marks.
      return { head, role: words > 2 ? 'mark' : roleOf(head.text) ?? 'mark' };
    }
    return { head, role: unitOnly(head.text) ? 'value' : roleOf(head.text) };
  });
  // A head that nobody knows: what stands below it may tell.
  if (by !== ' ' && below.length === heads.length) columns = columns.map((c, i) => (c.role === null && i > 0 ? { ...c, role: unitOnly(below[i]!.text) ? 'unit' : ratingOnly(below[i]!.text, w) ? 'rating' : null } : c));
  if (heads[0]!.text === '') columns[0] = { ...columns[0]!, role: 'name' };
  if (columns[0]!.role !== 'name') {
    const overValues = (columns.length > 2 || by !== ' ') && columns.slice(1).some((c) => c.role === 'value' || c.role === 'mark');
    // "Sample, Front, Back" over rows of items.
    const besideSamples = columns.length > 2 && namesSamples(heads[0]!.text) && isItem(below[0]?.text ?? '', w) && columns.slice(1).every((c) => c.role === null && isLabel(c.head.text, w));
    if (columns[0]!.role === null && (overValues || besideSamples)) columns[0] = { ...columns[0]!, role: 'name' };
    else columns = [{ head: { text: '', start: -1, end: Math.max(1, columns[0]!.head.start - 2) }, role: 'name' }, ...columns];
  }
  // "Result, Level": the second is a word of rating; of two results nobody knows which counts, and the second is told.
  const first = columns.findIndex((c) => c.role === 'value');
  columns = columns.map((c, i) => (c.role === 'value' && i !== first ? { ...c, role: /^level/.test(inner(c.head.text)) && !unitOnly(c.head.text) ? 'rating' : c.head.sample ? 'value' : null } : c));
  const roles = columns.map((c) => c.role);
  if (roles.includes('value') || roles.filter((r) => r === 'mark').length > 1) return by === ' ' && roles.filter((r) => r === null).length - heads.filter((h) => !h.text).length > 1 ? null : columns;
  const unknown = columns.slice(1).filter((c) => c.role === null && c.head.text);
  if (unknown.some((c) => namesIn(c.head.text, w) > 0)) return null;
  if (unknown.length < 2 || unknown.length !== columns.length - 1 - columns.filter((c) => c.role === 'unit' || c.role === 'method' || c.role === 'range').length || columns[0]!.head.start < 0 || (columns[0]!.head.text === '' && by === ' ')) return null;
  return columns.map((c) => (unknown.includes(c) ? { ...c, role: 'sample' } : c));
}

