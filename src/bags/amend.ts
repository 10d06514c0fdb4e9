/** Which bag of lime or sulphur: what stands in the shed, else the cheapest for what it does; with magnesium where the soil is short of it. */
import type { Amendment } from '../orchard/amendment.ts';
import type { Bag } from '../orchard/bag.ts';

export type AmendmentBag = Bag & { readonly amends: Amendment };

/** Null where none is listed. Lime that burns is never chosen. */
export function amendmentBagOf(kind: Amendment['kind'], bags: readonly Bag[], wantsMagnesium: boolean): AmendmentBag | null {
  const fitting = bags.filter((b): b is AmendmentBag => b.amends?.kind === kind && !b.amends.burns);
  const cost = (b: AmendmentBag): number => (b.left !== null ? 0 : b.price && b.g ? b.price.amount / (b.g * b.amends.strength) : Infinity);
  const unsuited = (b: AmendmentBag): number => (kind === 'lime' && b.amends.dolomitic !== wantsMagnesium ? 1 : 0);
  return [...fitting].sort((a, b) => unsuited(a) - unsuited(b) || cost(a) - cost(b) || (a.label < b.label ? -1 : 1))[0] ?? null;
}
