/** Whole bags to buy for the orchard, and what is left of each. */
import type { Bag } from '../orchard/bag.ts';

export type Purchase = {
  readonly bag: Bag;
  readonly needG: number;
  /** Null where the label gives no weight, so that no number of bags can be told. */
  readonly bags: number | null;
  readonly cost: number | null;
  readonly leftG: number | null;
};

export function purchasesOf(used: ReadonlyMap<Bag, number>): Purchase[] {
  return [...used].filter(([, needG]) => needG > 0).map(([bag, needG]) => {
    if (bag.left !== null) return { bag, needG, bags: 0, cost: 0, leftG: Math.max(0, bag.left - needG) };
    if (bag.g === null || bag.g <= 0) return { bag, needG, bags: null, cost: null, leftG: null };
    const bags = Math.ceil(needG / bag.g - 1e-9);
    return { bag, needG, bags, cost: bag.price ? bags * bag.price.amount : null, leftG: bags * bag.g - needG };
  });
}
