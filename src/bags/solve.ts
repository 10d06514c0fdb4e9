/** Linear systems for blends and purchases, by mathjs. Heavy to load: only ever imported when it is asked for. */
import { create, lusolveDependencies } from 'mathjs';

type Decomposed = { readonly L: number[][]; readonly U: number[][]; readonly p: number[] };
type Algebra = { readonly lup: (a: number[][]) => Decomposed; readonly lusolve: (a: Decomposed, b: number[]) => { readonly toArray: () => number[][] } };

const algebra = create(lusolveDependencies ?? {}) as unknown as Algebra;

/** A pivot smaller than this, with rows and columns scaled to one, is none. */
const LEAST_PIVOT = 1e-12;

/** x with a·x = b for a square a; null where a is singular, or too near it for x to mean anything. */
export function solve(a: number[][], b: number[]): number[] | null {
  if (a.length === 0) return null;
  const row = a.map((r) => Math.max(...r.map(Math.abs)));
  const column = a.map((_, j) => Math.max(...a.map((r, i) => Math.abs(r[j]!) / row[i]!)));
  const parts = algebra.lup(a.map((r, i) => r.map((x, j) => x / row[i]! / column[j]!)));
  // A row or column of noughts, and what is no number, leave a pivot that is no number either.
  if (parts.U.some((r, i) => !(Math.abs(r[i]!) > LEAST_PIVOT))) return null;
  const x = algebra.lusolve(parts, b.map((y, i) => y / row[i]!)).toArray().map((r, j) => r[0]! / column[j]!);
  return x.every(Number.isFinite) ? x : null;
}
