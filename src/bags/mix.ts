/**
 * The best that some bags can do for one plant, whatever they cost: every single bag, pair and trio that meets as many wants
 * exactly is weighed, and what the best of them brings is kept. The small systems are solved by Cramer's rule.
 */
import type { Grade } from '../orchard/bag.ts';
import type { Nutrient } from '../units/substance.ts';
import { NUTRIENTS } from '../units/substance.ts';

export type Wants = Readonly<Record<Nutrient, number>>;
/** What one plant gets, in grams. */
export type Brought = Readonly<Record<Nutrient, number>>;

const NOTHING: Brought = { N: 0, P2O5: 0, K2O: 0 };

/**
 * Less is better, in this order: nitrogen that stays unmet, phosphate and potash that are not wanted at all, those that stay
 * unmet, those over. Nitrogen is never over. Of what is brought this tells all, so two mixes without a difference bring the same.
 */
export function faultsOf(brought: Brought, wants: Wants): readonly number[] {
  const over = (n: Nutrient): number => Math.max(0, brought[n] - wants[n]);
  const unmet = (n: Nutrient): number => Math.max(0, wants[n] - brought[n]);
  const unwanted = (n: Nutrient): number => (wants[n] <= 1e-9 ? over(n) : 0);
  return [unmet('N'), unwanted('P2O5'), unwanted('K2O'), unmet('P2O5'), unmet('K2O'), over('P2O5'), over('K2O')];
}

/** The faults that are too much of something. */
export const surplusOf = (faults: readonly number[]): readonly number[] => [faults[1]!, faults[2]!, faults[5]!, faults[6]!];

/** Below zero where `a` has the lesser faults; nothing under a thousandth of a gram counts. */
export function compareFaults(a: readonly number[], b: readonly number[]): number {
  for (const [i, x] of a.entries()) {
    const difference = x - b[i]!;
    if (Math.abs(difference) > Math.max(1e-3, 1e-6 * x)) return difference;
  }
  return 0;
}

/** What the best mix brings to one plant. Grades that are alike need to be given once. */
export function bestBrought(grades: readonly Grade[], wants: Wants): Brought {
  const wanted = NUTRIENTS.filter((n) => wants[n] > 1e-9);
  let best = NOTHING;
  let faults = faultsOf(NOTHING, wants);
  const tryMix = (some: readonly Grade[], of: readonly Nutrient[]): void => {
    const amounts = cramer(of.map((n) => some.map((g) => g[n])), of.map((n) => wants[n]));
    if (!amounts?.every((g) => g > 1e-6)) return;
    const brings = (n: Nutrient): number => amounts.reduce((sum, g, i) => sum + g * some[i]![n], 0);
    const brought = { N: brings('N'), P2O5: brings('P2O5'), K2O: brings('K2O') };
    if (brought.N > wants.N * (1 + 1e-9) + 1e-9) return;
    const found = faultsOf(brought, wants);
    if (compareFaults(found, faults) < 0) [best, faults] = [brought, found];
  };
  grades.forEach((a, i) => {
    for (const n of wanted) tryMix([a], [n]);
    grades.slice(i + 1).forEach((b, j) => {
      for (const [k, n] of wanted.entries()) for (const m of wanted.slice(k + 1)) tryMix([a, b], [n, m]);
      if (wanted.length === 3) for (const c of grades.slice(i + j + 2)) tryMix([a, b, c], wanted);
    });
  });
  return best;
}

/** Grams of each bag that bring just this, where bags and nutrients leave but one answer; else null. */
export function exactly(grades: readonly Grade[], brought: Brought): number[] | null {
  const rows = NUTRIENTS.filter((n) => grades.some((g) => g[n] > 0));
  if (grades.length === 0 || grades.length > rows.length) return null;
  const used = grades.length === rows.length ? rows : grades.length === 1 ? [rows[0]!] : rows.filter((n) => n !== rows[2]);
  return cramer(used.map((n) => grades.map((g) => g[n])), used.map((n) => brought[n]));
}

/** The solution of one to three equations; null where they depend on each other. */
function cramer(a: readonly (readonly number[])[], b: readonly number[]): number[] | null {
  const det = determinant(a);
  if (Math.abs(det) < 1e-9) return null;
  return b.map((_, k) => determinant(a.map((row, i) => row.map((x, j) => (j === k ? b[i]! : x)))) / det);
}

function determinant(m: readonly (readonly number[])[]): number {
  const [a, b, c] = m;
  if (!b) return a![0]!;
  if (!c) return a![0]! * b[1]! - a![1]! * b[0]!;
  return a![0]! * (b[1]! * c[2]! - b[2]! * c[1]!) - a![1]! * (b[0]! * c[2]! - b[2]! * c[0]!) + a![2]! * (b[0]! * c[1]! - b[1]! * c[0]!);
}
