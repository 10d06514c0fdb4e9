/**
 * How much of each bag meets a need. Where several mixes do: the cheapest, then the lightest, then the one that takes most
 * of the bags named first. Where none does: the nearest, by least squares in grams, with what is over and short. A nutrient
 * wanted at 0 weighs more than nearness: bags that carry it stay out as long as the others bring anything wanted.
 */
import type { Bag } from '../orchard/bag.ts';
import type { Nutrient } from '../units/substance.ts';
import { NUTRIENTS } from '../units/substance.ts';
import { volumeOf } from './round.ts';

/** x with a·x = b; null where there is no one answer. Passed in, so that its library is loaded only when wanted. */
export type Solve = (a: number[][], b: number[]) => number[] | null;

/** Grams wanted of the nutrients named: 0 is unwanted, one left out is free and never over. */
export type Goal = Readonly<Partial<Record<Nutrient, number>>>;
export type Grams = Readonly<Record<Nutrient, number>>;

export type Weighed = {
  /** In the order given; g may be 0. */
  readonly bags: readonly { readonly bag: Bag; readonly g: number; readonly mL: number | null }[];
  readonly supplied: Grams;
  readonly over: Grams;
  readonly short: Grams;
  /** Of a single bag: the most that exceeds nothing named, and the least that meets everything named. Null where no amount does. */
  readonly limiting?: { readonly nutrient: Nutrient; readonly g: number } | null;
  readonly covering?: { readonly nutrient: Nutrient; readonly g: number } | null;
};

/** More bags than these would make too many mixes to try. */
export const MOST_BAGS = 12;

const NEAR = 1e-9;
export const grams = (of: (n: Nutrient) => number): Grams => ({ N: of('N'), P2O5: of('P2O5'), K2O: of('K2O') });
export const namedIn = (goal: Goal): Nutrient[] => NUTRIENTS.filter((n) => goal[n] !== undefined);
export const overOf = (goal: Goal, supplied: Grams): Grams => grams((n) => gap(supplied[n] - (goal[n] ?? Infinity), goal));
export const shortOf = (goal: Goal, supplied: Grams): Grams => grams((n) => gap((goal[n] ?? 0) - supplied[n], goal));
/** What the arithmetic itself leaves is nothing. */
const gap = (g: number, goal: Goal): number => (g <= 10 * NEAR * Math.max(...Object.values(goal)) ? 0 : g);

export function weigh(goal: Goal, bags: readonly Bag[], solve: Solve): Weighed {
  const named = namedIn(goal);
  const clean = cleanOf(goal, bags);
  // A column of zeros takes no part: no mix gains by it.
  const columns = bags.map((b) => named.map((n) => (clean.includes(b) ? b.grade[n] : 0)));
  const target = named.map((n) => goal[n]!);
  const mixes = mixesAt(columns, nearest(columns, target, solve), solve);
  const w = mixes.sort((a, b) => compare(a, b, bags))[0] ?? bags.map(() => 0);
  const supplied = grams((n) => w.reduce((sum, g, i) => sum + g * bags[i]!.grade[n], 0));
  return {
    bags: bags.map((bag, i) => ({ bag, g: w[i]!, mL: volumeOf(w[i]!, bag) })),
    supplied, over: overOf(goal, supplied), short: shortOf(goal, supplied),
    ...(bags.length === 1 ? { limiting: limitOf(goal, bags[0]!), covering: coverOf(goal, bags[0]!) } : {}),
  };
}

/** The bags without what is unwanted, nutrient by nutrient, unless the others bring nothing that is wanted. */
function cleanOf(goal: Goal, bags: readonly Bag[]): readonly Bag[] {
  const wanted = NUTRIENTS.filter((n) => (goal[n] ?? 0) > 0);
  const unwanted = NUTRIENTS.filter((n) => goal[n] === 0);
  return unwanted.reduce((left, n) => {
    const without = left.filter((b) => b.grade[n] === 0);
    return without.some((b) => wanted.some((w) => b.grade[w] > 0)) ? without : left;
  }, bags);
}

function limitOf(goal: Goal, bag: Bag): Weighed['limiting'] {
  const limits = namedIn(goal).filter((n) => bag.grade[n] > 0).map((nutrient) => ({ nutrient, g: goal[nutrient]! / bag.grade[nutrient] }));
  return limits.length > 0 ? limits.reduce((a, b) => (b.g < a.g ? b : a)) : null;
}

function coverOf(goal: Goal, bag: Bag): Weighed['covering'] {
  const wanted = namedIn(goal).filter((n) => goal[n]! > 0);
  if (wanted.length === 0 || wanted.some((n) => bag.grade[n] === 0)) return null;
  return wanted.map((nutrient) => ({ nutrient, g: goal[nutrient]! / bag.grade[nutrient] })).reduce((a, b) => (b.g > a.g ? b : a));
}

/** All sets of at most `most` of n things, as rising indices; the empty one first. */
function subsets(n: number, most: number): number[][] {
  const found: number[][] = [[]];
  for (const set of found) if (set.length < most) for (let i = (set.at(-1) ?? -1) + 1; i < n; i++) found.push([...set, i]);
  return found;
}

const dot = (a: readonly number[], b: readonly number[]): number => a.reduce((sum, x, i) => sum + x * b[i]!, 0);
const sumOf = (columns: readonly number[][], x: readonly number[], rows: number): number[] =>
  Array.from({ length: rows }, (_, r) => x.reduce((sum, g, i) => sum + g * columns[i]![r]!, 0));
const distance = (a: readonly number[], b: readonly number[]): number => Math.sqrt(a.reduce((sum, x, i) => sum + (x - b[i]!) ** 2, 0));

/** Amounts of the chosen columns that come nearest to the target; null where there is no one answer. One below zero is none, and the others then stand for what they bring. */
function fit(columns: readonly number[][], chosen: readonly number[], target: readonly number[], solve: Solve): number[] | null {
  const mine = chosen.map((i) => columns[i]!);
  const x = chosen.length === target.length
    ? solve(target.map((_, r) => mine.map((c) => c[r]!)), [...target])
    : solve(mine.map((a) => mine.map((b) => dot(a, b))), mine.map((a) => dot(a, target)));
  if (!x) return null;
  const all = columns.map(() => 0);
  chosen.forEach((i, k) => (all[i] = Math.max(0, x[k]!)));
  return all;
}

/** The point nearest to the target that these columns reach; the target itself where they reach it. */
function nearest(columns: readonly number[][], target: readonly number[], solve: Solve): number[] {
  let best = target.map(() => 0);
  for (const chosen of subsets(columns.length, target.length).slice(1)) {
    const x = fit(columns, chosen, target, solve);
    const point = x && sumOf(columns, x, target.length);
    if (point && distance(point, target) < distance(best, target)) best = point;
  }
  return distance(best, target) <= NEAR * Math.hypot(...target) ? [...target] : best;
}

/** Every mix that reaches a point with no more bags than it needs; the best of all mixes, by any price, is among them. */
function mixesAt(columns: readonly number[][], point: readonly number[], solve: Solve): number[][] {
  const size = Math.hypot(...point);
  if (size === 0) return [columns.map(() => 0)];
  return subsets(columns.length, point.length).slice(1).flatMap((chosen) => {
    const x = fit(columns, chosen, point, solve);
    return x && distance(sumOf(columns, x, point.length), point) <= 10 * NEAR * size ? [x] : [];
  });
}

/** How far a sum of bags lies from what is wanted, and in which direction: the nutrient that is most out, and whether it is over. */
export function mostOut(goal: Goal, bags: readonly Bag[], solve: Solve): { nutrient: Nutrient; over: boolean } | null {
  const { over, short } = weigh(goal, bags, solve);
  const out = namedIn(goal).map((nutrient) => ({ nutrient, by: over[nutrient] - short[nutrient] })).reduce((a, b) => (Math.abs(b.by) > Math.abs(a.by) * (1 + NEAR) ? b : a));
  return out.by === 0 ? null : { nutrient: out.nutrient, over: out.by > 0 };
}

const differs = (x: number, y: number): number => (Math.abs(x - y) <= NEAR * Math.max(Math.abs(x), Math.abs(y)) ? 0 : x - y);

/** What stands in the shed costs nothing. A bag without a price comes after those with one. */
function compare(a: readonly number[], b: readonly number[], bags: readonly Bag[]): number {
  const priced = (bag: Bag): boolean => bag.left !== null || (bag.price !== null && bag.g !== null && bag.g > 0);
  const unpriced = (w: readonly number[]): number => w.reduce((sum, g, i) => sum + (priced(bags[i]!) ? 0 : g), 0);
  const cost = (w: readonly number[]): number => w.reduce((sum, g, i) => sum + (priced(bags[i]!) && bags[i]!.left === null ? (g / bags[i]!.g!) * bags[i]!.price!.amount : 0), 0);
  const weight = (w: readonly number[]): number => w.reduce((sum, g) => sum + g, 0);
  const first = a.map((g, i) => differs(b[i]!, g)).find((d) => d !== 0) ?? 0;
  return differs(unpriced(a), unpriced(b)) || differs(cost(a), cost(b)) || differs(weight(a), weight(b)) || first;
}
