/**
 * The cheapest whole bags that meet a total need as well as any mix of these bags could: nothing of a nutrient that is
 * unwanted, then nothing short that some bag brings, then least over; then least cost, fewest bags, first labels.
 *
 * How little may be over is a small linear program: least surplus with every wanted nutrient met, each bag used up to what
 * was bought. By its dual, a purchase suffices just when a fixed list of inequalities holds, one for each corner of the dual
 * and each linear in the numbers of bags (`rowsOf`). So the search over purchases only adds and compares.
 */
import type { Bag } from '../orchard/bag.ts';
import type { Nutrient } from '../units/substance.ts';
import type { Goal, Grams, Solve } from './weigh.ts';
import { differs, grams, namedIn, overOf, shortOf, subsets } from './weigh.ts';

export type Purchase = { readonly bags: readonly { readonly bag: Bag; readonly bags: number }[]; readonly cost: number; readonly over: Grams; readonly short: Grams };
/** Too many to be sure of the cheapest. */
export type TooLarge = { readonly tooLarge: true };

/** Up to these the search is complete. */
export const MOST_KINDS = 6;
export const MOST_IN_ALL = 24;

const NEAR = 1e-9;

/** Null where nothing is to be bought: no bag with weight and price brings what is wanted. */
export function cheapest(goal: Goal, offers: readonly Bag[], solve: Solve): Purchase | TooLarge | null {
  const unwanted = namedIn(goal).filter((n) => goal[n] === 0);
  const wanted = namedIn(goal).filter((n) => goal[n]! > 0);
  const kinds = offers
    .filter((b) => b.price !== null && b.g !== null && b.g > 0 && !b.weedKiller && unwanted.every((n) => b.grade[n] === 0) && wanted.some((n) => b.grade[n] > 0))
    .sort((a, b) => (a.label < b.label ? -1 : a.label > b.label ? 1 : 0));
  if (kinds.length === 0) return null;
  if (kinds.length > MOST_KINDS) return { tooLarge: true };
  const met = wanted.filter((n) => kinds.some((b) => b.grade[n] > 0));
  const counts = fewest(kinds, rowsOf(kinds, met, met.map((n) => goal[n]!), solve));
  if (!counts) return { tooLarge: true };
  const bought = kinds.map((bag, i) => ({ bag, bags: counts[i]! })).filter((x) => x.bags > 0);
  const supplied = usedOf(bought, met, met.map((n) => goal[n]!), solve);
  return { bags: bought, cost: bought.reduce((sum, { bag, bags }) => sum + bags * bag.price!.amount, 0), over: overOf(goal, supplied), short: shortOf(goal, supplied) };
}

/** Enough is bought where `each`·counts ≥ `least`. */
type Row = { readonly each: readonly number[]; readonly least: number };

/** What a bag would bring in all of the nutrients to be met: its part in the surplus. */
const bringing = (bag: Bag, met: readonly Nutrient[]): number => met.reduce((sum, n) => sum + bag.grade[n], 0);

function rowsOf(kinds: readonly Bag[], met: readonly Nutrient[], target: readonly number[], solve: Solve): Row[] {
  // Enough of each nutrient in all.
  const rows: Row[] = met.map((n, r) => ({ each: kinds.map((b) => b.grade[n] * b.g!), least: target[r]! }));
  // Corners of the dual: as many of its planes meet there as there are nutrients.
  const planes: [number[], number][] = [
    ...met.map((_, r): [number[], number] => [met.map((__, k) => (k === r ? 1 : 0)), 0]),
    ...kinds.map((b): [number[], number] => [met.map((n) => b.grade[n]), bringing(b, met)]),
  ];
  const corners = subsets(planes.length, met.length).filter((s) => s.length === met.length).flatMap((s) => {
    const y = solve(s.map((i) => [...planes[i]![0]]), s.map((i) => planes[i]![1]));
    return y && y.every((v) => v >= -NEAR) ? [y] : [];
  });
  const worth = (y: readonly number[]): number => y.reduce((sum, v, r) => sum + v * target[r]!, 0);
  const extra = (y: readonly number[], b: Bag): number => {
    const more = met.reduce((sum, n, r) => sum + y[r]! * b.grade[n], 0) - bringing(b, met);
    return more > NEAR ? more * b.g! : 0;
  };
  // The least possible use is the best corner that no bag exceeds.
  const least = Math.max(...corners.filter((y) => kinds.every((b) => extra(y, b) === 0)).map(worth));
  for (const y of corners) {
    const row = { each: kinds.map((b) => extra(y, b)), least: worth(y) - least };
    if (row.least > NEAR * least && row.each.some((x) => x > 0)) rows.push(row);
  }
  return rows;
}

/** The counts of least cost that fill every row; null where more than the limit might be needed. */
function fewest(kinds: readonly Bag[], rows: readonly Row[]): number[] | null {
  const price = kinds.map((b) => b.price!.amount);
  // More of one kind than fills every row it can fill is never needed.
  const most = kinds.map((_, i) => Math.max(0, ...rows.map((r) => (r.each[i]! > 0 ? Math.ceil(r.least / r.each[i]! - NEAR) : 0))));
  // What a unit of a row costs at least, from kind i on; endless where no such kind fills it.
  const cheapestFrom = kinds.map((_, i) => rows.map((r) => Math.min(...r.each.map((x, k) => (k >= i && x > 0 ? price[k]! / x : Infinity)))));
  const counts = kinds.map(() => 0);
  let best: { readonly counts: readonly number[]; readonly cost: number; readonly all: number } | null = null;
  const search = (i: number, open: readonly number[], cost: number, all: number): void => {
    const unfilled = open.flatMap((x, r) => (x > NEAR * rows[r]!.least ? [r] : []));
    const atLeast = unfilled.reduce((least, r) => Math.max(least, cost + (i < kinds.length ? open[r]! * cheapestFrom[i]![r]! : Infinity)), cost);
    if (atLeast === Infinity || (best && (differs(atLeast, best.cost) > 0 || (differs(atLeast, best.cost) === 0 && all + (unfilled.length > 0 ? 1 : 0) >= best.all)))) return;
    if (unfilled.length === 0) {
      best = { counts: [...counts], cost, all };
      return;
    }
    // Many of the first labels before few, so that of equal purchases theirs is kept.
    for (let n = Math.min(most[i]!, MOST_IN_ALL - all); n >= 0; n--) {
      counts[i] = n;
      search(i + 1, open.map((x, r) => x - n * rows[r]!.each[i]!), cost + n * price[i]!, all + n);
    }
    counts[i] = 0;
  };
  search(0, rows.map((r) => r.least), 0, 0);
  const found = best as { readonly counts: number[]; readonly cost: number } | null;
  const complete = most.reduce((a, b) => a + b, 0) <= MOST_IN_ALL;
  return found && (complete || differs(found.cost, (MOST_IN_ALL + 1) * Math.min(...price)) <= 0) ? found.counts : null;
}

/** What the bags bought bring in all when no more of them is used than the need asks: the linear program itself, corner by corner. */
function usedOf(bought: readonly { readonly bag: Bag; readonly bags: number }[], met: readonly Nutrient[], target: readonly number[], solve: Solve): Grams {
  const caps = bought.map(({ bag, bags }) => bag.g! * bags);
  const bring = (w: readonly number[], n: Nutrient): number => w.reduce((sum, g, i) => sum + g * bought[i]!.bag.grade[n], 0);
  let best: { readonly w: readonly number[]; readonly all: number } | null = null;
  const sets = subsets(bought.length, met.length);
  for (const free of sets) for (const tight of subsets(met.length, free.length).filter((s) => s.length === free.length)) {
    const fixed = caps.map((_, i) => i).filter((i) => !free.includes(i));
    for (const full of subsets(fixed.length, fixed.length)) {
      const w = caps.map(() => 0);
      for (const k of full) w[fixed[k]!] = caps[fixed[k]!]!;
      const x = free.length === 0 ? [] : solve(tight.map((r) => free.map((i) => bought[i]!.bag.grade[met[r]!])), tight.map((r) => target[r]! - bring(w, met[r]!)));
      if (!x) continue;
      free.forEach((i, k) => (w[i] = x[k]!));
      if (w.some((g, i) => g < -NEAR * caps[i]! || g > caps[i]! * (1 + NEAR)) || met.some((n, r) => bring(w, n) < target[r]! * (1 - NEAR))) continue;
      const all = met.reduce((sum, n) => sum + bring(w, n), 0);
      if (!best || differs(all, best.all) < 0) best = { w, all };
    }
  }
  return grams((n) => bring(best?.w ?? caps, n));
}
