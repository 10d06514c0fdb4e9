/** The tokens of a line, cut into pieces at its names; then each piece judged: value, unit, method, range, word. */
import type { Item, Method, ReportUnit } from '../tables/items.ts';
import { SATURATION_OF } from '../tables/items.ts';
import type { Name } from '../tables/names.ts';
import type { Rating } from '../tables/ratings.ts';
import type { Oxide } from '../units/substance.ts';
import type { Between, Group, Label, Number_, Token } from './token.ts';
import { valueOf } from './token.ts';

export type Piece = {
  readonly item: Item | 'ratio' | 'lime';
  /** The first name as the tables have it. */
  readonly name: string;
  /** The name says that its number is an index. */
  readonly index: boolean;
  readonly form: Oxide | null;
  readonly method: Method | null;
  /** Where its first name starts, and where what belongs to it ends. */
  readonly start: number;
  readonly end: number;
  /** What stands right before the name: a word of rating, a method, a number. */
  readonly prefix: readonly Token[];
  readonly tokens: readonly Token[];
};

type Draft = { names: Name[]; start: number; end: number; inside: Token[]; gap: Token[] };

const has = (tokens: readonly Token[], ...kinds: Token['kind'][]): boolean => tokens.some((t) => kinds.includes(t.kind));
const isNumber = (t: Token): boolean => t.kind === 'number' || t.kind === 'between';

/** Two names of one thing side by side: "Phosphorus (P)", "Potash | K2O"; "Nitrogen (NO3-N)" is nitrate. */
function isAlias(a: Name, b: Name, gap: readonly Token[], inGroup: boolean): boolean {
  if (!gap.every((t) => t.kind === 'filler' || t.kind === 'separator' || t.kind === 'method')) return false;
  if (a.item === b.item) return gap.length < 4;
  return inGroup && ((a.item === 'nitrogen' && b.item === 'nitrate-n') || (a.item === 'lime' && (b.item === 'carbonate' || b.item === 'ph')));
}

/** "44.3 ppm NO3": the form in which the value before it is told. */
function isTrailingForm(draft: Draft, name: Name, after: readonly Token[]): boolean {
  const own = after.find((t) => t.kind === 'name' || isNumber(t));
  if (own && isNumber(own)) return false;
  const solid = draft.gap.filter((t) => t.kind !== 'filler');
  return (name.form ?? name.method) !== undefined && name.item === draft.names[0]!.item && (solid.at(-1)?.kind === 'unit' ? isNumber(solid.at(-2) ?? solid.at(-1)!) : name.method !== undefined && solid.length > 0 && isNumber(solid.at(-1)!));
}

/** "Texture: sand" names no sand; "sand 40 %" does. */
const isTexture = (last: Draft | undefined, name: Name, tokens: readonly Token[], i: number): boolean =>
  last?.names[0]!.item === 'texture' && /^(?:sand|silt|clay)$/.test(name.item) && !numberNext(tokens, i);

/** A number before the next name. */
function numberNext(tokens: readonly Token[], i: number): boolean {
  const next = tokens.slice(i + 1, i + 5).find((t) => isNumber(t) || t.kind === 'name' || t.kind === 'word');
  return next !== undefined && isNumber(next);
}

/** Cuts the tokens of a line at its names. */
export function cut(tokens: readonly Token[], length: number): Piece[] {
  const drafts: Draft[] = [];
  const before: Token[] = [];
  tokens.forEach((token, i) => {
    const last = drafts.at(-1);
    const ofCec = token.kind === 'name' && token.is.item === 'cec' && last !== undefined && SATURATION_OF[last.names[0]!.item as Item] !== undefined && last.gap.some((t) => t.kind === 'unit' && t.is === '%') && !last.gap.some((t) => t.kind === 'separator') && last.gap.at(-1)?.kind === 'filler';
    if (ofCec) return;
    if (token.kind === 'name' && !isTexture(last, token.is, tokens, i)) {
      const share = last && token.is.item === 'base-saturation' && last.gap.length === 0 && last.names.length === 1 ? SATURATION_OF[last.names[0]!.item as Item] : undefined;
      if (last && share) {
        // "Pottasium base saturation", whose first word is a known slip.
        last.names = [{ ...last.names[0]!, item: share }];
        last.end = token.end;
      } else if (last && isTrailingForm(last, token.is, tokens.slice(i + 1, i + 8))) last.names.push(token.is);
      else if (last && isAlias(last.names.at(-1)!, token.is, last.gap, false)) {
        last.names.push(token.is);
        last.inside.push(...last.gap.filter((t) => t.kind === 'method'));
        last.gap = [];
        last.end = token.end;
      } else drafts.push({ names: [token.is], start: token.start, end: token.end, inside: [], gap: [] });
    } else if (last && token.kind === 'group' && isAliasGroup(last, token)) {
      for (const inner of token.tokens) if (inner.kind === 'name') last.names.push(inner.is); else last.inside.push(inner);
      last.end = token.end;
    } else if (token.kind === 'group' && isNamedByGroup((last?.gap ?? before).at(-1), token)) {
      drafts.push({ names: token.tokens.flatMap((t) => (t.kind === 'name' ? [t.is] : [])), start: token.start, end: token.end, inside: token.tokens.filter((t) => t.kind !== 'name'), gap: [] });
    } else (last?.gap ?? before).push(token);
  });
  let prefix: Token[] = before;
  const turned = turnedFrom(drafts, before);
  return drafts.map((draft, i) => {
    const next = drafts[i + 1];
    const own = !next ? draft.gap.length : i + 1 >= turned ? draft.gap.map((t) => t.kind).lastIndexOf('number') : ownCount(draft.gap, prefix);
    const mine = draft.gap.slice(0, own);
    const theirs = draft.gap.slice(own);
    const piece: Piece = {
      item: (draft.names.find((n) => n.item === 'nitrate-n') ?? draft.names[0]!).item,
      name: draft.names[0]!.name, index: draft.names.some((n) => n.index),
      form: draft.names.find((n) => n.form)?.form ?? null,
      method: draft.names.find((n) => n.method)?.method ?? null,
      start: draft.start, end: next ? theirs[0]?.start ?? next.start : length,
      prefix, tokens: [...draft.inside, ...mine],
    };
    prefix = theirs;
    return piece;
  });
}

/** From which name on numbers stand before their names: "62 % sand, 25 % silt, 13 % clay"; Infinity where they stand behind. */
function turnedFrom(drafts: readonly Draft[], before: readonly Token[]): number {
  if (drafts.length < 2 || has(drafts.at(-1)!.gap, 'number', 'between', 'group', 'trace')) return Infinity;
  const at = drafts.findIndex((_, i) => leadsName(cellEnd(i === 0 ? before : drafts[i - 1]!.gap)));
  const rest = drafts.slice(Math.max(0, at), -1);
  return at >= 0 && at < drafts.length - 1 && rest.every((d) => d.gap.filter((t) => t.kind === 'number').length === 1 && leadsName(cellEnd(d.gap))) ? at : Infinity;
}

const cellEnd = (tokens: readonly Token[]): readonly Token[] => tokens.slice(tokens.map((t) => t.kind).lastIndexOf('separator') + 1);

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
  const valued = has(gap.slice(0, Math.max(0, cutAt)), 'number', 'between', 'trace') || gap.slice(0, Math.max(0, cutAt)).some((t) => t.kind === 'group' && t.tokens.some(isNumber));
  const share = tail.filter((t) => t.kind !== 'filler');
  if (cutAt >= 0 && share.length === 1 && share[0]!.kind === 'unit' && share[0]!.is === '%') return cutAt;
  if (cutAt >= 0 && !has(tail, 'number', 'between', 'group', 'unit')) return cutAt;
  if (cutAt >= 0 && valued && leadsName(tail)) return cutAt;
  // "low P 8 ppm high K 96 ppm", "low in N and low in P": the word before the second name is its own where the first has one already.
  const words = gap.map((t, i) => (t.kind === 'rating' ? i : -1)).filter((i) => i >= 0);
  const last = words.at(-1);
  if (last !== undefined && (words.length > 1 || has(prefix, 'rating')) && gap.slice(last + 1).every((t) => t.kind === 'filler')) return last;
  return gap.length;
}

/** "4.1 organic matter", "23 ppm P": a number and perhaps its unit right before a name. */
export const leadsName = (tail: readonly Token[]): boolean => {
  const solid = tail.filter((t) => t.kind !== 'filler');
  return solid.length > 0 && solid.length < 3 && solid[0]!.kind === 'number' && (solid.length === 1 || solid[1]!.kind === 'unit');
};

export type Judged = {
  /** The number, span or trace that is the value; null where words alone stand. */
  readonly value: Number_ | Between | (Token & { kind: 'trace' }) | null;
  readonly unit: ReportUnit | null;
  readonly unitAt: Token | null;
  readonly methods: readonly Method[];
  readonly rating: Rating | null;
  /** A class by its letter, which the word outranks. */
  readonly letter: Rating | null;
  readonly range: Between | Number_ | null;
  readonly index: Number_ | null;
  readonly absent: boolean;
  /** An unknown word before the value, a second value that nothing explains, or any word where no value is. */
  readonly odd: Token | null;
  readonly second: Number_ | null;
  /** A lone word in brackets right behind the name, such as "(AAE10)". */
  readonly tag: string | null;
  /** A word right behind a value without a unit: perhaps a unit misspelt. */
  readonly behind: (Token & { kind: 'word' }) | null;
};

/** What a piece says. `indexBeside`: a lone number in brackets is the index of the value before it. */
export function judge(piece: Piece, indexBeside: boolean): Judged {
  const state = {
    value: null as Judged['value'], unit: null as (Token & { kind: 'unit' }) | null, methods: [] as Method[], rating: null as Rating | null, letter: null as Rating | null,
    range: null as Judged['range'], index: null as Number_ | null, absent: false, odd: null as Token | null, second: null as Number_ | null,
    spare: null as Between | null, carrier: null as { value: Judged['value']; unit: (Token & { kind: 'unit' }) | null } | null, word: false, behind: null as Judged['behind'],
  };
  let label: Label | null = null;
  const tokens = piece.tokens;
  const next = (i: number): Token | undefined => tokens.slice(i + 1).find((t) => t.kind !== 'filler');
  tokens.forEach((t, i) => {
    if (t.kind === 'method') state.methods.push(t.is);
    else if (t.kind === 'absent') state.absent ||= state.value === null;
    else if (t.kind === 'class') state.letter ??= t.is;
    else if (t.kind === 'unit') {
      if (state.value === null || !state.word) state.unit ??= t;
    } else if (t.kind === 'rating') {
      const after = next(i);
      const labels = t.is === 'optimum' && (after?.kind === 'between' || (after?.kind === 'number' && after.sign !== null) || (after?.kind === 'label' && after.is === 'range'));
      if (t.is === 'optimum' && state.spare && state.value === null && after?.kind === 'number') label = null;
      else if (labels) label = 'range';
      else state.rating ??= t.is;
    } else if (t.kind === 'label') {
      if (t.is === 'other' && state.value?.kind === 'number' && isOlder(tokens, i, state.value)) {
        // "120 ppm last year, 146 ppm this year".
        state.value = null;
        label = null;
      } else if (t.is === 'past') label = state.value === null ? null : 'other';
      else if (!(t.is === 'index' && label === 'range')) label = t.is;
    } else if (t.kind === 'trace') state.value ??= { ...t, kind: 'trace' };
    else if (t.kind === 'between') {
      if (label === 'range' || state.value !== null) state.range ??= label === 'other' ? null : t;
      else if (label !== 'other') state.spare ??= t;
      label = null;
    } else if (t.kind === 'number') {
      if (label === 'range') {
        // "target >10" is a limit; "range 30" alone is none.
        state.range ??= t.sign ? t : null;
      } else if (label === 'other') {
        // An older value, or what follows a plus-minus sign.
      } else if (label === 'index' && state.value !== null) state.index ??= t;
      else if (label === 'index') {
        // "Index 3" alone, or before the value it belongs to: the first number stands until a second comes.
        state.index = t;
        state.value = t;
      } else if (state.value === null || state.value === state.index) {
        state.value = t;
      } else if (t.sign !== null) state.range ??= t;
      else if (!state.word && !explained(tokens, i, state.unit)) state.second ??= t;
      label = null;
    } else if (t.kind === 'group') {
      inBrackets(t, state, indexBeside);
      if (label !== 'index') label = null;
    } else if (t.kind === 'word') {
      if (state.value === null && state.rating === null) state.odd ??= t;
      else if (state.value !== null && state.unit === null && !state.word && state.rating === null) state.behind ??= { ...t, kind: 'word' };
      state.word = true;
    }
  });
  // Several words in a row are the heads of a scale.
  const solid = tokens.filter((t) => t.kind !== 'filler');
  const row = solid.some((t, i) => {
    const after = solid[i + 1];
    return t.kind === 'rating' && after?.kind === 'rating' && after.is !== t.is;
  });
  if (row || new Set(tokens.flatMap((t) => (t.kind === 'rating' ? [t.is] : []))).size > 2) state.rating = null;
  if (state.value === null && state.carrier) {
    state.value = state.carrier.value;
    state.unit ??= state.carrier.unit;
  } else if (state.value === null && state.spare && !state.range) state.value = state.spare;
  else if (state.spare) state.range ??= state.spare;
  return {
    value: state.value, unit: state.unit?.is ?? null, unitAt: state.unit, methods: state.methods, rating: state.rating, letter: state.letter, range: state.range,
    index: state.index, absent: state.absent, odd: state.odd ?? (state.value === null ? tokens.find((t) => t.kind === 'word') ?? null : null), second: state.second, behind: state.behind,
    tag: tagOf(tokens),
  };
}

function tagOf(tokens: readonly Token[]): string | null {
  const first = tokens.find((t) => t.kind !== 'filler');
  const words = first?.kind === 'group' ? first.tokens : [];
  return words.length === 1 && words[0]!.kind === 'word' && /\d/.test(words[0]!.text) ? words[0]!.text : null;
}

/** A label right behind a number and its unit, with a separator and another number to come. */
function isOlder(tokens: readonly Token[], i: number, value: Number_): boolean {
  const between = tokens.slice(tokens.indexOf(value) + 1, i);
  const rest = tokens.slice(i + 1).filter((t) => t.kind !== 'filler');
  return between.every((t) => t.kind === 'unit' || t.kind === 'filler') && rest[0]?.kind === 'separator' && rest[1]?.kind === 'number';
}

type State = { value: Judged['value']; unit: (Token & { kind: 'unit' }) | null; methods: Method[]; rating: Rating | null; letter: Rating | null; range: Judged['range']; index: Number_ | null; second: Number_ | null; carrier: { value: Judged['value']; unit: (Token & { kind: 'unit' }) | null } | null };

/** Brackets hold a unit, a method, a range, a word, an index, or the value itself; older values and chatter are passed over. */
function inBrackets(group: Group, state: State, indexBeside: boolean): void {
  const { tokens } = group;
  const numbers = tokens.filter((t): t is Number_ => t.kind === 'number');
  const spans = tokens.filter((t): t is Between => t.kind === 'between');
  const unit = tokens.find((t): t is Token & { kind: 'unit' } => t.kind === 'unit') ?? null;
  const labelled = tokens.find((t) => t.kind === 'label');
  const worded = has(tokens, 'word');
  for (const t of tokens) {
    if (t.kind === 'method' && !(state.value !== null && numbers.length > 0)) state.methods.push(t.is);
    else if (t.kind === 'class') state.letter ??= t.is;
  }
  if (numbers.length === 0 && spans.length === 0) {
    state.unit ??= unit;
    if (!worded) state.rating ??= tokens.find((t) => t.kind === 'rating')?.is ?? null;
    if (state.value === null && has(tokens, 'trace')) state.carrier ??= { value: { ...tokens.find((t) => t.kind === 'trace')!, kind: 'trace' }, unit };
    return;
  }
  const classes = classOf(tokens, state.value);
  if (classes) {
    state.rating ??= classes;
    return;
  }
  if (labelled?.kind === 'label' && (labelled.is === 'other' || labelled.is === 'past')) return;
  if (spans.length > 0) {
    // "(normal range 0.08 - 0.50)", "(120-200)"; "(30-50 last year)" is chatter.
    if (!worded || labelled?.kind === 'label' || tokens.some((t) => t.kind === 'rating' && t.is === 'optimum')) state.range ??= spans[0]!;
    return;
  }
  const first = numbers[0]!;
  if (labelled?.kind === 'label' && labelled.is === 'index') state.index ??= first;
  else if (first.sign !== null && (state.value !== null || labelled || tokens.some((t) => t.kind === 'rating' && t.is === 'optimum'))) state.range ??= first;
  else if (!worded && state.value === null && (unit !== null || tokens.every((t) => t === first || t.kind === 'filler' || t.kind === 'rating'))) {
    state.carrier ??= { value: first, unit };
    state.rating ??= tokens.find((t) => t.kind === 'rating')?.is ?? null;
  } else if (state.value !== null && indexBeside && tokens.length === 1) state.index ??= first;
  else if (state.value !== null && unit !== null && state.unit?.is === '%' && unit.is !== '%') state.second ??= first;
}

/** "(low 0-20, medium 21-40, high over 40)": the class in which the value falls; null where the brackets hold no classes. */
function classOf(tokens: readonly Token[], value: Judged['value']): Rating | null {
  const words = tokens.filter((t): t is Token & { kind: 'rating' } => t.kind === 'rating');
  const size = value?.kind === 'number' ? valueOf(value.is) : null;
  if (words.length < 2 || size === null || tokens.filter(isNumber).length < words.length) return null;
  let word: Rating | null = null;
  for (const t of tokens) {
    if (t.kind === 'rating') word = t.is;
    else if (t.kind === 'between' && (valueOf(t.low) ?? Infinity) <= size && size <= (valueOf(t.high) ?? -Infinity)) return word;
    else if (t.kind === 'number' && t.sign === '>' && size > (valueOf(t.is) ?? Infinity)) return word;
    else if (t.kind === 'number' && t.sign === '<' && size < (valueOf(t.is) ?? -Infinity)) return word;
  }
  return null;
}

/** A second number that says what it is: another unit, a share. */
function explained(tokens: readonly Token[], i: number, unit: Token | null): boolean {
  const after = tokens[i + 1];
  return unit !== null && after?.kind === 'unit' && unit.kind === 'unit' && after.is !== unit.is;
}
