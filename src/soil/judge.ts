/** One piece of a line judged part by part: value, unit, method, rating, range, and what is odd about it. */
import type { Method, ReportUnit } from '../tables/items.ts';
import type { Rating } from '../tables/ratings.ts';
import type { Label } from '../tables/report-words.ts';
import type { Piece } from './cut.ts';
import { has, isNumber } from './cut.ts';
import type { Parsed } from './number.ts';
import type { Between, Numeral, Token } from './token.ts';
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
  /** Classes with their numbers, in brackets. */
  classes: readonly Token[] | null;
  /** An unknown word has been passed, behind the value where there is one. */
  word: boolean;
};

/** What a piece says. `indexBeside`: a lone number in brackets is the index of the value before it. */
export function judge(piece: Piece, indexBeside: boolean): Judged {
  const state: State = {
    value: null, unit: null, methods: [], rating: null, letter: null, range: null, index: null, absent: false, odd: null, second: null, behind: null,
    spare: null, carrier: null, classes: null, word: false,
  };
  let label: Label | null = null;
  const tokens = solid(piece.tokens);
  tokens.forEach((t, i) => {
    const after = tokens[i + 1];
    if (t.kind === 'method') state.methods.push(t.is);
    else if (t.kind === 'absent') state.absent ||= state.value === null;
    else if (t.kind === 'class') state.letter ??= t.is;
    else if (t.kind === 'unit') {
      if (state.value === null || !state.word) state.unit ??= t;
    } else if (t.kind === 'rating') {
      if (isGoal(t) && (isLimit(after) || (after?.kind === 'group' && after.tokens.some((u) => isLimit(u) && !holds(u, state.value))) || (after?.kind === 'label' && (after.is === 'range' || after.is === 'index')))) label = 'range';
      // "30-50 optimum 42 ppm".
      else if (!(isGoal(t) && state.spare && after?.kind === 'number')) state.rating ??= t.is;
    } else if (t.kind === 'label') {
      if (t.is === 'other' && isOlder(tokens, i, state.value)) {
        // "120 ppm last year, 146 ppm this year".
        state.value = null;
        label = null;
      } else if (t.is === 'past') label = state.value === null ? null : 'other';
      // "target index 2" is an index, and none of the value's.
      else if (label !== 'range') label = t.is;
      else if (t.is === 'index' && state.value !== state.index) label = 'other';
    } else if (t.kind === 'trace') state.value ??= { ...t, kind: 'trace' };
    else if (t.kind === 'between') {
      if (label === 'range' || (label !== 'other' && state.value !== null)) state.range ??= t;
      else if (label !== 'other') state.spare ??= t;
      label = null;
    } else if (t.kind === 'number') {
      if (label === 'range') {
        // "target >10" is a limit; "range 30" alone is none.
        if (t.sign) state.range ??= t;
      } else if (label === 'other') {
        // An older value, or what follows a plus-minus sign.
      } else if (label === 'index' && state.value !== null) state.index ??= t;
      else if (label === 'index') {
        // "Index 3" alone, or before the value it belongs to: the first number stands until a second comes.
        state.index = t;
        state.value = t;
      } else if (state.value === null || state.value === state.index) {
        state.value = t;
        state.word = false;
      } else if (t.sign !== null) state.range ??= t;
      else if (!state.word && !explained(after, state.unit)) state.second ??= t;
      label = null;
    } else if (t.kind === 'group') {
      inBrackets(solid(t.tokens), state, indexBeside);
      // "Index (RB209) 2", "(index) 2".
      if (label !== 'index') label = saysIndex(t) ? 'index' : null;
    } else if (t.kind === 'word') {
      if (state.value === null && state.rating === null) state.odd ??= t;
      else if (state.unit === null && state.rating === null) state.behind ??= { ...t, kind: 'word' };
      state.word = true;
    }
  });
  // "2 index", and no value of an index to come.
  const last = tokens.at(-1)?.kind === 'rating' ? tokens.slice(0, -1) : tokens;
  if (state.unit === null && state.value?.kind === 'number' && last.at(-2) === state.value && saysIndex(last.at(-1))) state.index = state.value;
  // Several words in a row are the heads of a scale.
  const row = tokens.some((t, i) => {
    const after = tokens[i + 1];
    return t.kind === 'rating' && after?.kind === 'rating' && after.is !== t.is;
  });
  if (row || new Set(tokens.map((t) => (t.kind === 'rating' ? t.is : null))).size > 3) state.rating = null;
  if (state.value === null && state.carrier) {
    state.value = state.carrier.value;
    state.unit ??= state.carrier.unit;
  } else if (state.value === null && state.spare && !state.range) state.value = state.spare;
  else state.range ??= state.spare;
  if (state.classes && state.value?.kind === 'number') state.rating ??= classOf(state.classes, state.value);
  return {
    value: state.value, unit: state.unit?.is ?? null, unitAt: state.unit, methods: state.methods, rating: state.rating, letter: state.letter, range: state.range,
    index: state.index, absent: state.absent, odd: state.odd ?? (state.value === null ? tokens.find((t) => t.kind === 'word') ?? null : null), second: state.second, behind: state.behind,
    tag: tagOf(tokens[0]),
  };
}

/** Fillers say nothing. */
const solid = (tokens: readonly Token[]): readonly Token[] => tokens.filter((t) => t.kind !== 'filler');
/** A span, or a number with a sign of a limit. */
const isLimit = (t: Token | undefined): boolean => t?.kind === 'between' || (t?.kind === 'number' && t.sign !== null);
/** "index", "(index)". */
const saysIndex = (t: Token | undefined): boolean => (t?.kind === 'group' ? t.tokens.length === 1 && saysIndex(t.tokens[0]) : t?.kind === 'label' && t.is === 'index');
const isGoal = (t: Token | undefined): boolean => t?.kind === 'rating' && t.is === 'optimum';

function tagOf(first: Token | undefined): string | null {
  const word = first?.kind === 'group' && first.tokens.length === 1 ? first.tokens[0] : undefined;
  return word?.kind === 'word' && /\d/.test(word.text) ? word.text : null;
}

/** A label right behind a number and its unit, with a separator and another number to come. */
function isOlder(tokens: readonly Token[], i: number, value: Judged['value']): boolean {
  return value?.kind === 'number' && tokens.slice(tokens.indexOf(value) + 1, i).every((t) => t.kind === 'unit') && tokens[i + 1]?.kind === 'separator' && tokens[i + 2]?.kind === 'number';
}

/** Brackets hold a unit, a method, a range, a word, an index, or the value itself; older values and chatter are passed over. */
function inBrackets(tokens: readonly Token[], state: State, indexBeside: boolean): void {
  const number = tokens.find((t): t is Numeral => t.kind === 'number');
  const span = tokens.find((t): t is Between => t.kind === 'between');
  const unit = tokens.find((t): t is UnitToken => t.kind === 'unit') ?? null;
  const rating = tokens.find((t) => t.kind === 'rating')?.is ?? null;
  const labels = tokens.flatMap((t) => (t.kind === 'label' ? [t.is] : []));
  const worded = has(tokens, 'word');
  for (const t of tokens) {
    if (t.kind === 'method' && !(state.value !== null && number)) state.methods.push(t.is);
    else if (t.kind === 'class') state.letter ??= t.is;
    else if (t.kind === 'trace') state.carrier ??= { value: { ...t, kind: 'trace' }, unit };
  }
  if (!number && !span) {
    state.unit ??= unit;
    if (!worded) state.rating ??= rating;
    return;
  }
  if (tokens.filter((t) => t.kind === 'rating').length > 1) {
    state.classes ??= tokens;
    return;
  }
  if (labels[0] === 'other' || labels[0] === 'past') return;
  if (span) {
    // "(normal range 0.08 - 0.50)", "(120-200)"; "(30-50 last year)" is chatter, "(target index 2-3)" is of another scale.
    if (!labels.includes('index') && (!worded || labels.length > 0 || tokens.some(isGoal))) state.range ??= span;
  } else if (number && labels[0] === 'index') {
    // "(optimum index 2)" is the index to come to, "(index 2, optimum)" is that of the value.
    if (isGoal(tokens[0])) return;
    state.index ??= number;
    state.rating ??= rating;
  } else if (number?.sign && (state.value !== null || labels.length > 0 || tokens.some(isGoal))) state.range ??= number;
  else if (number && !worded && state.value === null && (unit !== null || tokens.every((t) => t === number || t.kind === 'rating'))) {
    state.carrier ??= { value: number, unit };
    state.rating ??= rating;
  } else if (number && indexBeside && tokens.length === 1) state.index ??= number;
  else if (number && unit && state.unit?.is === '%' && unit.is !== '%') state.second ??= number;
}

/** "(low 0-20, medium 21-40, high over 40)", or each word behind its numbers: the class in which the value falls. */
function classOf(tokens: readonly Token[], value: Numeral): Rating | null {
  let word: Rating | null = null;
  for (const t of isNumber(tokens[0]!) ? tokens.toReversed() : tokens) {
    if (t.kind === 'rating') word = t.is;
    else if (holds(t, value)) return word;
  }
  return null;
}

/** Whether a value lies within a span or limit. "12 ppm optimum (30-50)" is no optimum. */
function holds(limit: Token, value: Judged['value']): boolean {
  const size = value?.kind === 'number' ? sizeOf(value.is) : NaN;
  if (limit.kind === 'between') return sizeOf(limit.low) <= size && size <= sizeOf(limit.high);
  return limit.kind === 'number' && (limit.sign === '>' ? size > sizeOf(limit.is) : limit.sign === '<' && size < sizeOf(limit.is));
}

/** A number that can be read two ways compares with none. */
const sizeOf = (printed: Parsed): number => valueOf(printed) ?? NaN;

/** A second number that says what it is: another unit, a share. */
const explained = (after: Token | undefined, unit: UnitToken | null): boolean => unit !== null && after?.kind === 'unit' && after.is !== unit.is;
