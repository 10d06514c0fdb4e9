/**
 * Feed for a tub in its water, once a week or less often while it grows, where no coated feed is listed. The strength is that of POT_STRENGTH;
 * no more water at a time than a mix takes up and lets a little run, so a season that is nearly over gets less than the whole need.
 */
import type { Bag } from '../orchard/bag.ts';
import type { Ban } from '../orchard/bans.ts';
import { isBanned } from '../orchard/bans.ts';
import type { Tree } from '../orchard/tree.ts';
import type { Figure } from '../reason/figure.ts';
import { figure, told } from '../reason/figure.ts';
import { POT_STRENGTH, POT_WATER } from '../tables/solubility.ts';
import type { Day } from '../units/date.ts';
import { addDays, daysBetween } from '../units/date.ts';
import type { Wants } from './mix.ts';
import { undissolved } from './strength.ts';

/** `g` of the bag for one tub each time, in `waterL` litres, every so many `weeks`. */
export type Dilute = { readonly bag: Bag; readonly g: Figure<'g', 'product'>; readonly waterL: number; readonly weeks: number; readonly times: number; readonly from: Day; readonly until: Day };

/** The time in which it is fed, and the need that it serves. */
type Weeks = { readonly from: Day; readonly until: Day; readonly why?: readonly Figure[] };

const WEEK = 7;

/** `wants` in grams for one tub, what is still to be given. Null where no bag dissolves or nothing is left to give. */
export function diluteOf(tree: Tree, wants: Wants, bags: readonly Bag[], never: readonly Ban[], season: Weeks): Dilute | null {
  const { from, until } = season;
  const bag = best(bags.filter((b) => mayDissolve(b, tree, never)), wants);
  if (!bag || tree.tub === undefined || until < from) return null;
  // Where a week's part is too little to weigh, the can comes less often.
  return EVERY.map((weeks) => everyWeeks(weeks, tree, wants.N, bag, season)).find((d) => d !== null) ?? null;
}

const EVERY = [1, 2, 4];
/** A letter scale shows half grams; below two of them the half is too coarse. */
const LEAST_G = 1;

function everyWeeks(weeks: number, { tub, name }: Tree, need: number, bag: Bag, { from, until, why = [] }: Weeks): Dilute | null {
  const most = figure(POT_WATER.share * tub!, 'L', 'tub', 'pot-water', POT_WATER.cite, [told(tub!, 'L', 'tub', name)]);
  const times = Math.floor(daysBetween(from, until) / (WEEK * weeks)) + 1;
  const middle = (POT_STRENGTH.low + POT_STRENGTH.high) / 2000;
  const asked = need / times;
  const waterL = Math.min(most.value, asked / middle);
  const n = Math.min(asked, (waterL * POT_STRENGTH.high) / 1000);
  // Rounded down, so that it never gets stronger than that.
  const step = n / bag.grade.N < 10 ? 0.5 : 1;
  const g = Math.floor(n / bag.grade.N / step + 1e-9) * step;
  if (g < LEAST_G) return null;
  return { bag, g: figure(g, 'g', 'product', 'dilute', POT_STRENGTH.cite, [...why, most]), waterL: Math.max(0.5, Math.ceil(waterL * 2) / 2), weeks, times, from, until: addDays(from, WEEK * weeks * (times - 1)) };
}

/** Whether a bag would do for the can of this tub, though too little of it may be wanted to be weighed. */
export const hasCan = (tree: Tree, bags: readonly Bag[], never: readonly Ban[]): boolean => bags.some((b) => mayDissolve(b, tree, never));

/** Sold for the can; a salt for the ground may dissolve too, and is no feed for a pot by itself. */
function mayDissolve(bag: Bag, { crop }: Tree, never: readonly Ban[]): boolean {
  return bag.grade.N > 0 && (bag.soluble === true || bag.liquid) && undissolved(bag) === null && !bag.weedKiller && !bag.amends && !isBanned(bag, never) && !(crop === 'blueberry' && bag.nitrate);
}

/** What brings most of the nutrients wanted, then what stands in the shed, then the cheapest nitrogen, then by name. */
function best(bags: readonly Bag[], wants: Wants): Bag | undefined {
  const missing = (b: Bag): number => (['P2O5', 'K2O'] as const).filter((n) => wants[n] > 0 && b.grade[n] === 0).length;
  const price = (b: Bag): number => (b.left !== null ? -1 : b.price && b.g ? b.price.amount / (b.g * b.grade.N) : Infinity);
  return bags.toSorted((a, b) => missing(a) - missing(b) || price(a) - price(b) || (a.label < b.label ? -1 : 1))[0];
}
