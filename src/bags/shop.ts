/** Bags compared for one need: which to buy, which would do, which to leave, and why. */
import type { Bag } from '../orchard/bag.ts';
import type { Nutrient } from '../units/substance.ts';
import { NUTRIENTS } from '../units/substance.ts';
import type { Goal, Grams } from './weigh.ts';
import { ROUNDING } from './round.ts';
import { grams, namedIn, overOf, shortOf } from './weigh.ts';

/** One bag alone for the whole need. `unwanted` is what it brings to plants that want none of that nutrient, `tubG` what tubs would take of it. */
export type Offer = { readonly bag: Bag; readonly usedG: number; readonly tubG?: number; readonly supplied: Grams; readonly over: Grams; readonly short: Grams; readonly wanted: Grams; readonly unwanted: Grams; readonly untested?: readonly Nutrient[] };

export type Verdict = 'buy' | 'fine' | 'leave';
export const VERDICTS: readonly Verdict[] = ['buy', 'fine', 'leave'];
export const WHYS = ['best', 'dearer', 'no-price', 'surplus', 'alike', 'weed-killer', 'phosphate-unwanted', 'potash-unwanted', 'phosphate-untested', 'potash-untested', 'nitrogen-unwanted', 'amends', 'feeds-nothing', 'short', 'together', 'tubs'] as const;
export type Why = (typeof WHYS)[number];

export type Ranked = {
  readonly offer: Offer;
  readonly verdict: Verdict;
  readonly why: Why;
  /** Whole bags for the use; null where the label gives no weight. */
  readonly bags: number | null;
  readonly cost: number | null;
  /** What a kilogram of nutrient that was needed costs; surplus is worth nothing. */
  readonly costPerNeededKg: number | null;
  readonly leftG: number | null;
};

/** Under a gram, too, it is rounding. */
const beyond = (g: number, need: number): number => (g > ROUNDING * need && g > 1 ? g : 0);

/** One bag for a typed need: the first of N, P2O5, K2O that is wanted and that it brings is met in full. */
export function offerFor(goal: Goal, bag: Bag): Offer {
  const first = bag.weedKiller ? undefined : namedIn(goal).find((n) => goal[n]! > 0 && bag.grade[n] > 0);
  const usedG = first ? goal[first]! / bag.grade[first] : 0;
  const supplied = grams((n) => usedG * bag.grade[n]);
  const over = overOf(goal, supplied);
  return { bag, usedG, supplied, over, short: shortOf(goal, supplied), wanted: grams((n) => goal[n] ?? 0), unwanted: grams((n) => (goal[n] === 0 ? over[n] : 0)) };
}

/** Faults that a bag has for open ground; mix in a tub holds nothing of its own. One that tubs alone take leaves only the ground short. */
const OF_GROUND: readonly Why[] = ['phosphate-unwanted', 'potash-unwanted', 'phosphate-untested', 'potash-untested', 'feeds-nothing'];

type Judged = Omit<Ranked, 'verdict' | 'why'> & { readonly fit: readonly number[] };

/** Best first: least unwanted P2O5, then K2O; least short of N, then of P2O5 and K2O; least over; then the cost. */
export function rank(offers: readonly Offer[]): Ranked[] {
  const judged = offers.map(judge).sort((a, b) => byFit(a, b) || order(a.cost, b.cost) || order(a.costPerNeededKg, b.costPerNeededKg) || (a.offer.bag.label < b.offer.bag.label ? -1 : 1));
  return judged.map(({ fit, ...mine }, i): Ranked => {
    const { usedG, tubG = 0 } = mine.offer;
    const fault = faultOf(mine.offer);
    const ofGround = fault && (OF_GROUND.includes(fault) || (fault === 'short' && usedG <= tubG));
    if (tubG > 0 && ofGround) return { ...judge({ ...mine.offer, usedG: tubG }), verdict: 'fine', why: 'tubs' };
    if (fault && (fault !== 'short' || i > 0)) return { ...mine, verdict: 'leave', why: fault };
    if (i === 0) return { ...mine, verdict: 'buy', why: 'best' };
    const first = judged[0]!;
    const same = fit.every((x, k) => x === first.fit[k]);
    const why: Why = !same ? 'surplus' : mine.cost === null && first.cost !== null ? 'no-price' : order(mine.cost, first.cost) > 0 || order(mine.costPerNeededKg, first.costPerNeededKg) > 0 ? 'dearer' : 'alike';
    return { ...mine, verdict: 'fine', why };
  });
}

function faultOf({ bag, usedG, short, wanted, unwanted, untested = [] }: Offer): Why | null {
  if (bag.weedKiller) return 'weed-killer';
  if (bag.amends) return 'amends';
  if (usedG === 0) return 'feeds-nothing';
  if (beyond(unwanted.P2O5, 0)) return untested.includes('P2O5') ? 'phosphate-untested' : 'phosphate-unwanted';
  if (beyond(unwanted.K2O, 0)) return untested.includes('K2O') ? 'potash-untested' : 'potash-unwanted';
  if (beyond(unwanted.N, 0)) return 'nitrogen-unwanted';
  return NUTRIENTS.some((n) => beyond(short[n], wanted[n])) ? 'short' : null;
}

/** Whole grams, so that what differs by a rounding does not outweigh the price. */
const byFit = (a: Judged, b: Judged): number => a.fit.map((x, i) => x - b.fit[i]!).find((d) => d !== 0) ?? 0;
/** What is not known comes last. */
const order = (a: number | null, b: number | null): number => (a === b ? 0 : a === null ? 1 : b === null ? -1 : Math.abs(a - b) <= 1e-9 * Math.max(a, b) ? 0 : a - b);

function judge(offer: Offer): Judged {
  const { bag, usedG, supplied, over, short, wanted, unwanted } = offer;
  const weight = (bag.g ?? 0) > 0 ? bag.g : null;
  const bags = usedG === 0 ? 0 : weight === null ? null : Math.ceil(usedG / weight - 1e-9);
  const needed = NUTRIENTS.reduce((sum, n) => sum + Math.min(supplied[n], wanted[n]), 0);
  const missed = (n: Nutrient): number => beyond(short[n], wanted[n]);
  return {
    offer, bags,
    cost: bags === null || !bag.price ? null : bags * bag.price.amount,
    costPerNeededKg: weight === null || !bag.price || needed <= 0 ? null : (bag.price.amount * (usedG / weight)) / (needed / 1000),
    leftG: weight === null ? null : Math.max(0, bags! * weight - usedG),
    fit: [
      beyond(unwanted.P2O5, 0), beyond(unwanted.K2O, 0), beyond(unwanted.N, 0), missed('N'), missed('P2O5') + missed('K2O'),
      NUTRIENTS.reduce((sum, n) => sum + beyond(over[n] - unwanted[n], wanted[n]), 0),
    ].map(Math.round),
  };
}

/** A bag that is too little alone, but that the whole purchase takes. */
export const asBought = (r: Ranked, bought: readonly Bag[]): Ranked => (r.why === 'short' && bought.includes(r.offer.bag) ? { ...r, verdict: 'fine', why: 'together' } : r);

/** The currencies of the prices, each once. */
export const currenciesOf = (bags: readonly Bag[]): string[] => [...new Set(bags.flatMap((b) => (b.price ? [b.price.currency] : [])))];
