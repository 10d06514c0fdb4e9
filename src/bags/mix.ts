/**
 * Two or three bags for one plant's need, where one bag for each nutrient would leave something short or bring too much:
 * every pair and trio that meets as many wants exactly is weighed, and the best kept. The small systems are solved by Cramer's rule.
 */
import type { Bag } from '../orchard/bag.ts';
import type { Nutrient } from '../units/substance.ts';
import { NUTRIENTS } from '../units/substance.ts';

export type Wants = Readonly<Record<Nutrient, number>>;
export type Weighed = { readonly bag: Bag; readonly g: number };

/** Less is better, in this order: unwanted phosphate and potash, what stays unmet, surplus phosphate and potash. */
export function faultsOf(mix: readonly Weighed[], wants: Wants): readonly number[] {
  const brought = (n: Nutrient): number => mix.reduce((sum, w) => sum + w.g * w.bag.grade[n], 0);
  const over = (n: Nutrient): number => Math.max(0, brought(n) - wants[n]);
  const unmet = NUTRIENTS.reduce((sum, n) => sum + Math.max(0, wants[n] - brought(n)), 0);
  const unwanted = (n: Nutrient): number => (wants[n] <= 1e-9 ? over(n) : 0);
  return [over('N'), unwanted('P2O5'), unwanted('K2O'), unmet, over('P2O5'), over('K2O')];
}

/** Below zero where `a` has the lesser faults; nothing under a hundredth of a gram counts. */
export function compareFaults(a: readonly number[], b: readonly number[]): number {
  for (const [i, x] of a.entries()) {
    const difference = x - b[i]!;
    if (Math.abs(difference) > Math.max(0.01, 1e-6 * x)) return difference;
  }
  return 0;
}

/** Every non-negative mix of two or three bags that meets as many wants exactly. */
export function mixesOf(bags: readonly Bag[], wants: Wants): Weighed[][] {
  const wanted = NUTRIENTS.filter((n) => wants[n] > 1e-9);
  const mixes: Weighed[][] = [];
  const tryMix = (some: readonly Bag[], of: readonly Nutrient[]): void => {
    const amounts = cramer(of.map((n) => some.map((b) => b.grade[n])), of.map((n) => wants[n]));
    if (amounts?.every((g) => g > 1e-6)) mixes.push(some.map((bag, i) => ({ bag, g: amounts[i]! })));
  };
  bags.forEach((a, i) => bags.slice(i + 1).forEach((b, j) => {
    for (const [k, n] of wanted.entries()) for (const m of wanted.slice(k + 1)) tryMix([a, b], [n, m]);
    if (wanted.length === 3) for (const c of bags.slice(i + j + 2)) tryMix([a, b, c], wanted);
  }));
  return mixes;
}

/** The solution of two or three equations; null where they depend on each other. */
function cramer(a: readonly (readonly number[])[], b: readonly number[]): number[] | null {
  const det = determinant(a);
  if (Math.abs(det) < 1e-9) return null;
  return b.map((_, k) => determinant(a.map((row, i) => row.map((x, j) => (j === k ? b[i]! : x)))) / det);
}

function determinant(m: readonly (readonly number[])[]): number {
  if (m.length === 1) return m[0]![0]!;
  return m[0]!.reduce((sum, x, j) => sum + (j % 2 === 0 ? x : -x) * determinant(m.slice(1).map((row) => row.filter((_, k) => k !== j))), 0);
}
