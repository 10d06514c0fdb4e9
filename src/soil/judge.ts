/** One piece of a line judged part by part: value, unit, method, rating, range, and what is odd about it. */
import type { Method, ReportUnit } from '../tables/items.ts';
import type { Rating } from '../tables/ratings.ts';
import type { Label } from '../tables/report-words.ts';
import type { Piece } from './cut.ts';
import { has, isNumber } from './cut.ts';
import type { Between, Group, Numeral, Token } from './token.ts';
import { valueOf } from './token.ts';

export type Judged = {
  /** The number, span or trace that is the value; null where words alone stand. */
  readonly value: Numeral | Between | (Token & { kind: 'trace' }) | null;
  readonly unit: ReportUnit | null;
  readonly unitAt: Token | null;
  readonly methods: readonly Method[];
  readonly rating: Rating | null;
  /** A class by its letter, which the word outranks. */
  readonly letter: Rating | null;
  readonly range: Between | Numeral | null;
  readonly index: Numeral | null;
  readonly absent: boolean;
  /** An unknown word before the value, a second value that nothing explains, or any word where no value is. */
  readonly odd: Token | null;
  readonly second: Numeral | null;
  /** A lone word in brackets right behind the name, such as "(AAE10)". */
  readonly tag: string | null;
  /** A word right behind a value without a unit: perhaps a unit misspelt. */
  readonly behind: (Token & { kind: 'word' }) | null;
};

type UnitToken = Token & { kind: 'unit' };
/** What is known of a piece so far. */
type State = {
  value: Judged['value']; unit: UnitToken | null; methods: Method[]; rating: Rating | null; letter: Rating | null; range: Judged['range'];
  index: Numeral | null; absent: boolean; odd: Token | null; second: Numeral | null; behind: Judged['behind'];
  /** A span before any value: the value if no number comes, else its range. */
  spare: Between | null;
  /** A number in brackets before any value: the value if no number comes. */
  carrier: { value: Judged['value']; unit: UnitToken | null } | null;
  /** An unknown word has been passed. */
  word: boolean;
};

/** What a piece says. `indexBeside`: a lone number in brackets is the index of the value before it. */
export function judge(piece: Piece, indexBeside: boolean): Judged {
  const state: State = {
    value: null, unit: null, methods: [], rating: null, letter: null, range: null, index: null, absent: false, odd: null, second: null, behind: null,
    spare: null, carrier: null, word: false,
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
      const labels = t.is === 'optimum' && (after?.kind === 'between' || (after?.kind === 'number' && after.sign !== null) || (after?.kind === 'label' && (after.is === 'range' || after.is === 'index')));
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
function isOlder(tokens: readonly Token[], i: number, value: Numeral): boolean {
  const between = tokens.slice(tokens.indexOf(value) + 1, i);
  const rest = tokens.slice(i + 1).filter((t) => t.kind !== 'filler');
  return between.every((t) => t.kind === 'unit' || t.kind === 'filler') && rest[0]?.kind === 'separator' && rest[1]?.kind === 'number';
}

/** Brackets hold a unit, a method, a range, a word, an index, or the value itself; older values and chatter are passed over. */
function inBrackets(group: Group, state: State, indexBeside: boolean): void {
  const { tokens } = group;
  const numbers = tokens.filter((t): t is Numeral => t.kind === 'number');
  const spans = tokens.filter((t): t is Between => t.kind === 'between');
  const unit = tokens.find((t): t is UnitToken => t.kind === 'unit') ?? null;
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
  const goal = tokens.some((t) => t.kind === 'rating' && t.is === 'optimum');
  // "(target index 2)" is the index to come to.
  if (labelled?.kind === 'label' && labelled.is === 'index') state.index ??= goal ? null : first;
  else if (first.sign !== null && (state.value !== null || labelled || goal)) state.range ??= first;
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
