/** Bags and mixes for the sums of weigh, blend and shop. */
import fc from 'fast-check';
import { parseBag } from '../../src/orchard/bag.ts';
import type { Bag } from '../../src/orchard/bag.ts';

export const LB = 453.59237;
export const NUTRIENTS = ['N', 'P2O5', 'K2O'] as const;
export type Nutrient = (typeof NUTRIENTS)[number];

export function bagOf(label: string): Bag {
  const { bag, notices } = parseBag(label, 'US', false, { file: '', line: 1, column: 1, length: 1, source: '' });
  if (!bag) throw new Error(`${label}: ${notices.map((n) => n.code).join(', ')}`);
  return bag;
}

/** Grades as printed on bags, a tenth of a percent; never empty, never over 100 %. */
const share = fc.oneof({ weight: 1, arbitrary: fc.constant(0) }, { weight: 3, arbitrary: fc.integer({ min: 1, max: 330 }) });
const anyGrade = fc.tuple(share, share, share).filter((g) => g.some((x) => x > 0)).map((g) => g.map((x) => x / 10));
const price = fc.double({ min: 1, max: 100, noNaN: true });
export const anyBag = fc.tuple(anyGrade, fc.integer({ min: 1, max: 50 }), price).map(([grade, lb, cost]): Bag => ({ ...bagOf(`${grade.join('-')}, ${lb} lb`), price: { amount: cost, currency: '$' } }));
export const named = fc.subarray([...NUTRIENTS], { minLength: 1 });
/** Grams that a tree to a field could get. */
export const mass = fc.double({ min: 1, max: 50_000, noNaN: true });

export const brings = (bags: readonly Bag[], g: readonly number[], n: Nutrient): number => bags.reduce((sum, b, i) => sum + g[i]! * b.grade[n], 0);
export const costOf = (bags: readonly Bag[], g: readonly number[]): number => bags.reduce((sum, b, i) => sum + (g[i]! / b.g!) * b.price!.amount, 0);
