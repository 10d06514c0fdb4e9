/** Whole bags to buy for the orchard, and what is left of each; of one product in several sizes, the cheapest that hold what is needed. */
import type { Bag } from '../orchard/bag.ts';

export type Purchase = {
  readonly bag: Bag;
  readonly needG: number;
  /** Null where the label gives no weight, so that no number of bags can be told. */
  readonly bags: number | null;
  readonly cost: number | null;
  readonly leftG: number | null;
};

/** `store` is where other sizes of a used product may stand, `shed` where some of it may be left: that goes first. */
export function purchasesOf(used: ReadonlyMap<Bag, number>, store: readonly Bag[], shed: readonly Bag[] = []): Purchase[] {
  const taken = new Map<Bag, number>();
  const inHand = (bag: Bag): number => Math.max(0, bag.left! - (taken.get(bag) ?? 0));
  const take = (bag: Bag, g: number): Purchase => {
    taken.set(bag, (taken.get(bag) ?? 0) + g);
    return { bag, needG: g, bags: 0, cost: 0, leftG: inHand(bag) };
  };
  return [...used].filter(([, needG]) => needG > 0).flatMap(([bag, all]): Purchase[] => {
    if (bag.left !== null) return [take(bag, all)];
    const mine = shed.filter((b) => isSameProduct(b, bag) && !used.has(b));
    let needG = all;
    const before = mine.flatMap((b) => {
      const g = Math.min(needG, inHand(b));
      needG -= g;
      return g > 0 ? [take(b, g)] : [];
    });
    if (needG <= 1e-6) return before;
    return [...before, ...bought(bag, needG, store)];
  });
}

function bought(bag: Bag, needG: number, store: readonly Bag[]): Purchase[] {
  if ((bag.g ?? 0) <= 0) return [{ bag, needG, bags: null, cost: null, leftG: null }];
  const sizes = [...new Set([bag, ...store.filter((b) => isSameProduct(b, bag))])].filter((b) => (b.g ?? 0) > 0 && (b.price !== null || bag.price === null));
  let open = needG;
  return cheapestSizes(needG, sizes).map(({ bag: b, bags }) => {
    const mine = Math.min(open, bags * b.g!);
    open -= mine;
    return { bag: b, needG: mine, bags, cost: b.price ? bags * b.price.amount : null, leftG: bags * b.g! - mine };
  });
}

/** The same in another size, or in the shed. */
export const isSameProduct = (a: Bag, b: Bag): boolean =>
  a.label.toLowerCase() === b.label.toLowerCase() && a.printed === b.printed && a.slow === b.slow && a.amends?.strength === b.amends?.strength && (a.price === null || b.price === null || a.price.currency === b.price.currency);

/** More combinations than this are not tried; one size then serves. */
const MOST_TRIES = 20_000;

/** Every number of each size up to what it alone would take: least cost, then least left over, then fewest bags. */
function cheapestSizes(needG: number, sizes: readonly Bag[]): { bag: Bag; bags: number }[] {
  const alone = sizes.map((b) => Math.ceil(needG / b.g! - 1e-9));
  const single = sizes.map((_, i) => sizes.map((__, k) => (k === i ? alone[i]! : 0)));
  const tries = alone.reduce((n, most) => n * (most + 1), 1) > MOST_TRIES ? single : combinations(alone);
  const weight = (counts: readonly number[]): number => counts.reduce((sum, n, i) => sum + n * sizes[i]!.g!, 0);
  const cost = (counts: readonly number[]): number => counts.reduce((sum, n, i) => sum + n * (sizes[i]!.price?.amount ?? 0), 0);
  const bags = (counts: readonly number[]): number => counts.reduce((a, b) => a + b, 0);
  const best = tries.filter((c) => weight(c) >= needG * (1 - 1e-9)).sort((a, b) => cost(a) - cost(b) || weight(a) - weight(b) || bags(a) - bags(b))[0]!;
  return sizes.map((bag, i) => ({ bag, bags: best[i]! })).filter((x) => x.bags > 0).sort((a, b) => b.bag.g! - a.bag.g!);
}

const combinations = (most: readonly number[]): number[][] => most.reduce<number[][]>((all, n) => all.flatMap((c) => Array.from({ length: n + 1 }, (_, k) => [...c, k])), [[]]);
