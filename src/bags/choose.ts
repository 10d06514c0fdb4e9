/** Which bags may feed a plant at all. A bag with weed killer is never tree feed. */
import type { Bag } from '../orchard/bag.ts';
import { CHLORIDE_SENSITIVE } from '../tables/crops.ts';
import type { Ban } from '../orchard/bans.ts';
import { isBanned } from '../orchard/bans.ts';
import type { Tree } from '../orchard/tree.ts';

/** Blueberries take no nitrate (New York prints: no nitrates). */
export function mayFeed(bag: Bag, { crop, tub }: Pick<Tree, 'crop' | 'tub'>, never: readonly Ban[]): boolean {
  if (bag.weedKiller || bag.amends || isBanned(bag, never)) return false;
  if (crop === 'blueberry' && bag.nitrate) return false;
  if (tub !== undefined) return bag.slow;
  return !bag.liquid && !(bag.chloride && CHLORIDE_SENSITIVE.includes(crop) && bag.grade.N === 0);
}

/** Nitrogen that acts at once, of which only so much may fall on a square metre. */
export const isQuick = (bag: Bag): boolean => bag.grade.N > 0 && !bag.slow;
