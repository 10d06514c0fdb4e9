/** The tokens of a line, cut into pieces at its names: what belongs to which name. */
import type { Item, Method } from '../tables/items.ts';
import { COUNTED_RATES, SATURATION_OF } from '../tables/items.ts';
import type { Name } from '../tables/names.ts';
import type { Oxide } from '../units/substance.ts';
import type { Between, Group, Numeral, Token } from './token.ts';

export type Piece = {
  readonly item: Item | 'ratio' | 'lime';
  /** The first name as the tables have it. */
  readonly name: string;
  /** The name says that its number is an index. */
  readonly index: boolean;
  readonly form: Oxide | null;
  /** The form is only what labs mean by the word. */
  readonly loose: boolean;
  readonly method: Method | null;
  /** Where its first name starts, and where what belongs to it ends. */
  readonly start: number;
  readonly end: number;
  /** What stands right before the name: a word of rating, a method, a number. */
  readonly prefix: readonly Token[];
  readonly tokens: readonly Token[];
};

type Draft = { names: Name[]; start: number; end: number; inside: Token[]; gap: Token[] };

export const has = (tokens: readonly Token[], ...kinds: Token['kind'][]): boolean => tokens.some((t) => kinds.includes(t.kind));
export const isNumber = (t: Token): t is Numeral | Between => t.kind === 'number' || t.kind === 'between';
const isValued = (tokens: readonly Token[]): boolean => has(tokens, 'number', 'between', 'trace') || tokens.some((t) => t.kind === 'group' && t.tokens.some(isNumber));

/** Two names of one thing side by side: "Phosphorus (P)", "Phosphorus - P", "Potash | K2O"; "Nitrogen (NO3-N)" is nitrate. */
function isAlias(a: Name, b: Name, gap: readonly Token[], inGroup: boolean): boolean {
  if (!gap.every((t) => t.kind === 'filler' || t.kind === 'separator' || t.kind === 'method')) return false;
  if (a.item === b.item) return gap.length < 4;
  // "Nitrate-Nitrogen - N 9.4": the letter of what is named in full.
  if ((a.item === 'nitrate-n' || a.item === 'ammonium-n') && b.item === 'nitrogen' && b.name.length === 1) return gap.every((t) => t.kind === 'filler');
  // "Kalkbedarf CaO 20 dt/ha".
  if (a.item === 'lime-requirement' && b.form === 'CaO') return !inGroup && gap.every((t) => t.kind === 'filler');
  return inGroup && ((a.item === 'nitrogen' && b.item === 'nitrate-n') || (a.item === 'lime' && b.item === 'carbonate') || ((a.item === 'lime' || a.item === 'acidity') && isPh(b)));
}

export const isPh = ({ item }: { readonly item: Name['item'] }): boolean => item === 'ph' || item === 'ph-salt' || item === 'buffer-ph';
/** "pH 6.8 buffer" is a buffer's; "Nitrogen (NO3-N)" is nitrate; "Lime (pH) 6.4" and "Acidity (pH) 5.8" are a pH, which no unit follows. */
const itemOf = (names: readonly Name[], tokens: readonly Token[]): Piece['item'] => (names.find((n) => names[0]!.item === 'ph' && n.item === 'buffer-ph') ?? names.find((n) => n.item === 'nitrate-n' || (isPh(n) && !has(tokens, 'unit'))) ?? names[0]!).item;

/** "44.3 ppm NO3", "42 | ppm P2O5", "42 ppm (P2O5)", or ", P2O5" at the end: the form in which the value before it is told. */
function isTrailingForm(draft: Draft, name: Name, after: readonly Token[]): boolean {
  const own = after.find((t) => t.kind === 'name' || isNumber(t));
  if (own && isNumber(own)) return false;
  const gap = draft.gap.filter((t) => t.kind !== 'filler');
  const ends = after.every((t) => t.kind === 'filler' || t.kind === 'separator');
  const solid = gap.filter((t, i) => t.kind !== 'separator' || (i === gap.length - 1 && !ends));
  const value = solid.at(solid.at(-1)?.kind === 'unit' ? -2 : -1);
  return (name.form ?? name.method) !== undefined && name.item === draft.names[0]!.item && value !== undefined && isNumber(value);
}

/** All that may follow a buffer's name behind its value: of "pH 6.2 buffer: n/a" and "pH 6.2 buffer not needed" the number is the soil's. */
const AFTER_BUFFER = /^(?: (?:solution|method|test|reading|value))?(?: *$| *[,;|()]|  | (?:very )?(?:low|medium|high|optimum|adequate)\b)/i;

/** "pH 6.8 buffer", "pH 6.8 Mehlich buffer": what the pH before it was read in, where it has no value of its own. */
function isBufferBehind(draft: Draft, token: Token & { kind: 'name' }, after: readonly Token[], text: string): boolean {
  const value = draft.gap.findLast((t) => t.kind !== 'filler');
  if (token.is.item !== 'buffer-ph' || draft.names.at(-1)!.item !== 'ph' || value?.kind !== 'number') return false;
  const next = after.flatMap((t) => (t.kind === 'group' ? t.tokens : [t])).find((t) => t.kind === 'name' || t.kind === 'absent' || t.kind === 'trace' || isNumber(t));
  return !/[:=,;|-]| {2}/.test(text.slice(value.end, token.start)) && (next === undefined || next.kind === 'name') && AFTER_BUFFER.test(text.slice(token.end));
}

/** "Potassium 4.5 % of CEC", "Potassium, % of CEC: 4.5": the sites that the share before it is of; "Potassium 4.5 % CEC 12" tells two things. */
function isOfCec(draft: Draft, valued: boolean): boolean {
  const gap = draft.gap.filter((t) => t.kind !== 'filler');
  const unit = gap.at(-1);
  return SATURATION_OF[draft.names[0]!.item as Item] !== undefined && unit?.kind === 'unit' && unit.is === '%'
    && (!valued || !gap.some(isNumber) || draft.gap.at(-1)!.kind === 'filler');
}

/** "Texture: sand" names no sand; "sand 40 %" does. */
const isTexture = (last: Draft | undefined, name: Name, tokens: readonly Token[], i: number): boolean =>
  last?.names[0]!.item === 'texture' && /^(?:sand|silt|clay)$/.test(name.item) && !numberNext(tokens, i);

/** A number before the next name. */
function numberNext(tokens: readonly Token[], i: number): boolean {
  const next = tokens.slice(i + 1, i + 5).find((t) => isNumber(t) || t.kind === 'name' || t.kind === 'word');
  return next !== undefined && isNumber(next);
}

/** Where "3,000 lb/acre ENP" and "2 t CaO/ha" begin: their unit says that they are a rate of lime. */
function bareLime(tokens: readonly Token[]): number {
  const at = tokens.findIndex((t) => t.kind !== 'filler' && t.kind !== 'separator');
  const unit = tokens.slice(at + 1).find((t) => t.kind !== 'filler');
  return at >= 0 && isNumber(tokens[at]!) && unit?.kind === 'unit' && COUNTED_RATES.includes(unit.is) ? at : -1;
}

/** Cuts the tokens of a line, whose text is given, at its names. */
export function cut(line: readonly Token[], text: string): Piece[] {
  const tokens = line.flatMap(opened);
  const drafts: Draft[] = [];
  const before: Token[] = [];
  tokens.forEach((token, i) => {
    const last = drafts.at(-1);
    if (token.kind === 'name' && token.is.item === 'cec' && last && isOfCec(last, numberNext(tokens, i))) {
      // "Potassium 180 ppm, 4.5 % of CEC": the share is a second thing.
      const own = last.gap.map((t) => t.kind).lastIndexOf('separator') + 1;
      if (!last.gap.slice(0, own).some(isNumber) || !last.gap.slice(own).some(isNumber)) return;
      const gap = last.gap.splice(own);
      drafts.push({ names: [{ ...last.names[0]!, item: SATURATION_OF[last.names[0]!.item as Item]! }], start: gap[0]!.start, end: gap[0]!.start, inside: [], gap });
      return;
    }
    if (token.kind === 'name' && !isTexture(last, token.is, tokens, i)) {
      const share = last && token.is.item === 'base-saturation' && !last.gap.some((t) => t.kind !== 'separator') && last.names.length === 1 && !has(before, 'rating') ? SATURATION_OF[last.names[0]!.item as Item] : undefined;
      if (last && share) {
        // "Potassium, base saturation"; "Pottasium base saturation", whose first word is a known slip.
        last.names = [{ ...last.names[0]!, item: share }];
        last.end = token.end;
      } else if (last && (isTrailingForm(last, token.is, tokens.slice(i + 1, i + 8)) || isBufferBehind(last, token, tokens.slice(i + 1), text))) last.names.push(token.is);
      else if (last && isAlias(last.names.at(-1)!, token.is, last.gap, false)) {
        last.names.push(token.is);
        last.inside.push(...last.gap.filter((t) => t.kind === 'method'));
        last.gap = [];
        last.end = token.end;
      } else drafts.push({ names: [token.is], start: token.start, end: token.end, inside: [], gap: [] });
    } else if (last && token.kind === 'group' && isAliasGroup(last, token)) {
      for (const inner of token.tokens) if (inner.kind === 'name') last.names.push(inner.is); else last.inside.push(inner);
      last.end = token.end;
    } else if (last && token.kind === 'group' && token.tokens.every((t) => t.kind === 'name' && isTrailingForm(last, t.is, tokens.slice(i + 1, i + 8)))) {
      for (const inner of token.tokens) if (inner.kind === 'name') last.names.push(inner.is);
    } else if (token.kind === 'group' && isNamedByGroup((last?.gap ?? before).at(-1), token)) {
      drafts.push({ names: token.tokens.flatMap((t) => (t.kind === 'name' ? [t.is] : [])), start: token.start, end: token.end, inside: token.tokens.filter((t) => t.kind !== 'name'), gap: [] });
    } else (last?.gap ?? before).push(token);
  });
  const bare = drafts.length === 0 ? bareLime(tokens) : -1;
  if (bare >= 0) drafts.push({ names: [{ name: '', item: 'lime-requirement', languages: [] }], start: tokens[bare]!.start, end: tokens[bare]!.start, inside: [], gap: tokens.slice(bare) });
  let prefix: Token[] = before;
  const turned = turnedOf(drafts, before);
  return drafts.map((draft, i) => {
    const next = drafts[i + 1];
    const own = !next ? draft.gap.length : i + 1 >= turned.from && i + 1 < turned.to ? draft.gap.findLastIndex(isNumber) : ownCount(draft.gap, prefix);
    const mine = draft.gap.slice(0, own);
    const theirs = draft.gap.slice(own);
    const piece: Piece = {
      item: itemOf(draft.names, mine),
      name: draft.names[0]!.name, index: draft.names.some((n) => n.index),
      form: draft.names.find((n) => n.form && (!n.loose || draft.names.length === 1))?.form ?? null,
      loose: draft.names.length === 1 && draft.names[0]!.loose === true,
      method: draft.names.find((n) => n.method)?.method ?? null,
      start: draft.start, end: next ? theirs[0]?.start ?? next.start : text.length,
      prefix, tokens: [...draft.inside, ...mine],
    };
    prefix = theirs;
    return piece;
  });
}

/** "(sand 55 %, silt 20 %, clay 25 %)" holds values of its own: its parts stand as outside of brackets. */
function opened(token: Token): readonly Token[] {
  if (token.kind !== 'group') return [token];
  const names = token.tokens.filter((t) => t.kind === 'name').length;
  if (names < 2 || token.tokens.filter((t) => t.kind === 'number').length < names) return [token];
  const edge = (at: number): Token => ({ kind: 'separator', start: at, end: at + 1 });
  return [edge(token.start), ...token.tokens, edge(token.end - 1)];
}

/** The names whose numbers stand before them: "pH 6.4, 62 % sand, 25 % silt, 13 % clay, P 42 ppm"; of length 0 where none do. */
function turnedOf(drafts: readonly Draft[], before: readonly Token[]): { readonly from: number; readonly to: number } {
  const numbers = (i: number): number => drafts[i]!.gap.filter(isNumber).length;
  const leads = (i: number): boolean => leadsName(cellEnd(i === 0 ? before : drafts[i - 1]!.gap), true);
  // The name before the first of them has a number of its own.
  const from = drafts.findIndex((_, i) => leads(i) && (i === 0 || numbers(i - 1) > 1));
  let to = Math.max(0, from);
  while (to < drafts.length && leads(to) && (to === from || numbers(to - 1) === 1)) to++;
  return to > 0 && !has(drafts[to - 1]!.gap, 'number', 'between', 'trace') ? { from, to } : { from: 0, to: 0 };
}

/** What stands behind the last separator. */
export const cellEnd = (tokens: readonly Token[]): readonly Token[] => tokens.slice(tokens.map((t) => t.kind).lastIndexOf('separator') + 1);

/** "(P)" after "Phosphorus": every name in the brackets is one of the same thing, and no number stands there. */
function isAliasGroup(draft: Draft, group: Group): boolean {
  const names = group.tokens.filter((t) => t.kind === 'name');
  return names.length > 0 && !has(group.tokens, 'number', 'between') && draft.gap.every((t) => t.kind === 'filler' || t.kind === 'method')
    && names.every((n) => isAlias(draft.names.at(-1)!, n.is, [], true));
}

/** "Sulfatos (S-SO4) 3.7": an unknown word whose brackets name the item. */
const isNamedByGroup = (before: Token | undefined, group: Group): boolean =>
  before?.kind === 'word' && !/\d/.test(before.text) && group.start - before.end < 3 && has(group.tokens, 'name') && group.tokens.every((t) => t.kind === 'name' || t.kind === 'method' || t.kind === 'filler');

/** How many of the tokens between two names belong to the first; the rest stands before the second. */
function ownCount(gap: readonly Token[], prefix: readonly Token[]): number {
  const cutAt = gap.map((t) => t.kind).lastIndexOf('separator');
  const tail = gap.slice(cutAt + 1);
  const share = tail.filter((t) => t.kind !== 'filler');
  if (cutAt >= 0 && share.length === 1 && share[0]!.kind === 'unit' && share[0]!.is === '%') return cutAt;
  if (cutAt >= 0 && !has(tail, 'number', 'between', 'group', 'unit')) return cutAt;
  if (cutAt >= 0 && isValued(gap.slice(0, cutAt)) && leadsName(tail)) return cutAt;
  // "low P 8 ppm high K 96 ppm", "low in N and low in P": the word before the second name is its own where the first has one already.
  const words = gap.map((t, i) => (t.kind === 'rating' ? i : -1)).filter((i) => i >= 0);
  const last = words.at(-1);
  if (last !== undefined && (words.length > 1 || has(prefix, 'rating')) && gap.slice(last + 1).every((t) => t.kind === 'filler')) return last;
  return gap.length;
}

/** "4.1 organic matter", "23 ppm P": a number, with `spans` a span too, and perhaps its unit right before a name. */
export const leadsName = (tail: readonly Token[], spans = false): boolean => {
  const [number, unit, ...more] = tail.filter((t) => t.kind !== 'filler');
  return number !== undefined && (spans ? isNumber(number) : number.kind === 'number') && (!unit || unit.kind === 'unit') && more.length === 0;
};
