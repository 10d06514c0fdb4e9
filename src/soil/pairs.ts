/** Names first and all values after: paired only where there is one way to pair them, else asked. */
import { has } from './cut.ts';
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

const valuesOf = (tokens: readonly Token[]): Token[] => tokens.filter((t) => t.kind === 'number' || t.kind === 'between' || t.kind === 'trace');
const isValue = (tokens: readonly Token[]): boolean => tokens.every((t) => valuesOf([t]).length > 0 || t.kind === 'unit' || t.kind === 'rating');
const isName = (tokens: readonly Token[]): boolean => has(tokens, 'name') && !has(tokens, 'number', 'between', 'rating', 'trace', 'absent') && tokens.filter((t) => t.kind === 'word').length < 2;

/** A block of names and the block of values below it, from line `at`; null where the lines are something else. */
export function pairsAt(lines: readonly Line[], at: number, find: Look): Pairs | null {
  const solid = (line: Line): Token[] => find(line.text).filter((t) => t.kind !== 'filler' && t.kind !== 'separator');
  if (!isName(solid(lines[at]!))) return null;
  const names: Line[] = [];
  const others: Line[] = [];
  let i = at;
  for (; i < lines.length; i++) {
    const tokens = solid(lines[i]!);
    if (tokens.length === 0) continue;
    if (isName(tokens)) names.push(lines[i]!);
    else if (valuesOf(tokens).length === 0) others.push(lines[i]!);
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
    if (i > last + 1) broken = true;
    last = i;
    values.push(lines[i]!);
  }
  if (values.length < 2) return null;
  const single = values.map((v) => valuesOf(solid(v))).every((told) => told.length === 1 && told[0]!.kind !== 'between');
  const proven = values.length === names.length && single && !broken && others.every((o) => solid(o).every((t) => t.kind === 'unit' || t.kind === 'method' || (t.kind === 'word' && t.text.startsWith('extract'))));
  return {
    length: last + 1 - at, headings: others, first: names[0]!, lines: [...names, ...others, ...values],
    pairs: proven ? names.map((name, k) => ({ name, value: values[k]! })) : null,
  };
}
