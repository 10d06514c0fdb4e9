/** Names first and all values after: paired only where there is one way to pair them, else asked. */
import type { Line } from './text.ts';
import type { Look, Token } from './token.ts';

export type Pairs = {
  readonly length: number;
  /** Each name with its value, in order; null where the structure does not prove which belongs to which. */
  readonly pairs: readonly { readonly name: Line; readonly value: Line }[] | null;
  /** Lines of the block that carry a method or unit for all. */
  readonly headings: readonly Line[];
  readonly first: Line;
  readonly lines: readonly Line[];
};

const LEAST = 3;

const solidOf = (line: Line, find: Look): Token[] => find(line.text).filter((t) => t.kind !== 'filler' && t.kind !== 'separator');
const numbersOf = (tokens: readonly Token[]): number => tokens.filter((t) => t.kind === 'number' || t.kind === 'between').length;
const isValue = (tokens: readonly Token[]): boolean => numbersOf(tokens) > 0 && tokens.every((t) => t.kind === 'number' || t.kind === 'between' || t.kind === 'unit' || t.kind === 'rating' || t.kind === 'trace');
const isName = (tokens: readonly Token[]): boolean => tokens.filter((t) => t.kind === 'name').length > 0 && numbersOf(tokens) === 0 && !tokens.some((t) => t.kind === 'rating' || t.kind === 'trace' || t.kind === 'absent') && tokens.filter((t) => t.kind === 'word').length < 2;

/** "Phosphorus, potassium" over one value is two things; "Potassium, base saturation" is one. */
const isOne = (tokens: readonly Token[]): boolean => new Set(tokens.flatMap((t) => (t.kind === 'name' && t.is.item !== 'base-saturation' && t.is.item !== 'cec' ? [t.is.item] : []))).size < 2;

/** A block of names and the block of values below it, from line `at`; null where the lines are something else. */
export function pairsAt(lines: readonly Line[], at: number, find: Look): Pairs | null {
  const solid = (line: Line): Token[] => solidOf(line, find);
  if (!isName(solid(lines[at]!))) return null;
  const names: Line[] = [];
  const others: Line[] = [];
  let i = at;
  for (; i < lines.length; i++) {
    const tokens = solid(lines[i]!);
    if (tokens.length === 0) continue;
    if (isName(tokens)) names.push(lines[i]!);
    else if (!/\d/.test(lines[i]!.text.replace(/(?<![\d.])1:\d|mehlich ?\d|100 ?g|m-?3/gi, ''))) others.push(lines[i]!);
    else break;
  }
  if (names.length < LEAST || !lines[i] || !isValue(solid(lines[i]!))) return null;
  const values: Line[] = [];
  let broken = false;
  let last = i;
  for (; i < lines.length; i++) {
    const tokens = solid(lines[i]!);
    if (tokens.length === 0) continue;
    if (!isValue(tokens)) break;
    if (values.length > 0 && i > last + 1) broken = true;
    last = i;
    values.push(lines[i]!);
  }
  if (values.length < 2) return null;
  const single = values.every((v) => solid(v).filter((t) => t.kind === 'number').length === 1 && numbersOf(solid(v)) === 1);
  const proven = values.length === names.length && names.every((name) => isOne(solid(name))) && single && !broken && others.every((o) => solid(o).every((t) => t.kind === 'unit' || t.kind === 'method' || t.kind === 'word' && /extract/.test(t.text)));
  return {
    length: last + 1 - at, headings: others, first: names[0]!, lines: [...names, ...others, ...values],
    pairs: proven ? names.map((name, k) => ({ name, value: values[k]! })) : null,
  };
}
