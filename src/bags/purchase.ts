/**
 * The cheapest whole bags for a total need that was typed, which may leave a nutrient free: nothing of what is unwanted,
 * then nothing short that some bag brings, then least over; then least cost, fewest bags, first labels. A linear program as that of an orchard (`allot-model.ts`).
 */
import type { Bag } from '../orchard/bag.ts';
import type { Aim, Program, Row, Solver } from './program.ts';
import { inOrder } from './program.ts';
import type { Goal, Grams } from './weigh.ts';
import { grams, namedIn, overOf, shortOf } from './weigh.ts';

export type Purchase = { readonly bags: readonly { readonly bag: Bag; readonly bags: number }[]; readonly cost: number; readonly over: Grams; readonly short: Grams };
/** The solver gave up. */
export type TooLarge = { readonly tooLarge: true };

/** Null where nothing is to be bought: no bag with weight and price brings what is wanted. */
export function cheapest(goal: Goal, offers: readonly Bag[], solver: Solver): Purchase | TooLarge | null {
  const named = namedIn(goal);
  const unwanted = named.filter((n) => goal[n] === 0);
  const kinds = offers
    .filter((b) => b.price !== null && b.g !== null && b.g > 0 && !b.weedKiller && unwanted.every((n) => b.grade[n] === 0) && named.some((n) => b.grade[n] > 0))
    .sort((a, b) => (a.label < b.label ? -1 : 1));
  if (kinds.length === 0) return null;
  const met = named.filter((n) => kinds.some((b) => b.grade[n] > 0));
  // Shares of the need, so that no column is much larger than another. Columns: used of each kind, bags of each kind, over in each nutrient.
  const scale = Math.max(...met.map((n) => goal[n]!));
  const [used, bags, over] = [(k: number): number => k, (k: number): number => kinds.length + k, (i: number): number => 2 * kinds.length + i];
  const rows: Row[] = [
    ...met.map((n, i): Row => ({ of: new Map([...kinds.map((b, k): [number, number] => [used(k), b.grade[n]]), [over(i), -1]]), least: goal[n]! / scale, most: goal[n]! / scale })),
    ...kinds.map((b, k): Row => ({ of: new Map([[used(k), 1], [bags(k), -b.g! / scale]]), most: 0 })),
  ];
  const program: Program = { columns: 2 * kinds.length + met.length, whole: new Set(kinds.map((_, k) => bags(k))), rows };
  const aims: Aim[] = [
    { of: new Map(met.map((_, i) => [over(i), 1])), within: 1e-6, parts: true },
    { of: new Map(kinds.map((b, k) => [bags(k), b.price!.amount])), within: 1e-4 },
    { of: new Map(kinds.map((_, k) => [bags(k), 1])), within: 0.01 },
    ...kinds.slice(0, -1).map((_, k): Aim => ({ of: new Map([[bags(k), -1]]), within: 0.01 })),
  ];
  const found = inOrder(program, aims, solver);
  if (found.status !== 'best') return { tooLarge: true };
  const bought = kinds.map((bag, k) => ({ bag, bags: Math.round(found.x[bags(k)]!) })).filter((x) => x.bags > 0);
  const supplied = grams((n) => kinds.reduce((sum, b, k) => sum + found.x[used(k)]! * scale * b.grade[n], 0));
  const rounding = 1e-6 * scale;
  const told = (of: Grams): Grams => grams((n) => (of[n] <= rounding ? 0 : of[n]));
  return { bags: bought, cost: bought.reduce((sum, { bag, bags: n }) => sum + n * bag.price!.amount, 0), over: told(overOf(goal, supplied)), short: told(shortOf(goal, supplied)) };
}
