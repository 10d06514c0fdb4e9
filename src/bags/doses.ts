/** The doses of one plant: which bag, how much, in which window, on which ring; rounded together with those of the whole orchard. */
import type { Facts } from '../need/facts.ts';
import type { Need } from '../need/need.ts';
import type { Bag } from '../orchard/bag.ts';
import type { Ring } from '../orchard/geometry.ts';
import { ringOf } from '../orchard/geometry.ts';
import type { Figure } from '../reason/figure.ts';
import { figure } from '../reason/figure.ts';
import type { Nutrient } from '../units/substance.ts';
import { NUTRIENTS } from '../units/substance.ts';
import { LATE_SINGLE } from '../tables/timing.ts';
import type { Window } from '../when/season.ts';
import type { Share } from './allot.ts';
import { isQuick } from './choose.ts';
import type { Wants } from './mix.ts';
import type { System } from './round.ts';
import { roundDose, roundTogether, stepOf, volumeOf, withinStock } from './round.ts';
import { spread } from './spread.ts';

export type Feed = {
  readonly bag: Bag;
  readonly serves: Nutrient;
  /** Rounded, as weighed out, and as planned; grams of product for one plant. */
  readonly g: number;
  readonly planned: Figure<'g', 'product'>;
  readonly mL: number | null;
  readonly window: Window;
  readonly ring: Ring | null;
};

export type PlannedDose = { readonly portion: Portion; readonly planned: Figure<'g', 'product'>; readonly most: number; readonly count: number; readonly window: Window; readonly ring: Ring | null };

/** When the doses may go on: the windows still open, how many doses the diary has, whether a year's one dose opens late in the season, and the printed shares of the year where they are not equal. */
export type Open = { readonly windows: readonly Window[]; readonly done: number; readonly late: boolean; readonly shares?: readonly number[] };
export type Portion = { readonly bag: Bag; readonly g: number; readonly serves: Nutrient };

/** What one plant may be given in the windows that are open: `share` of its nitrogen, and of that no more than `mostQuick` grams that act at once. */
export type Wanted = { readonly wants: Wants; readonly open: Open; readonly asked: number; readonly missed: boolean; readonly half: boolean; readonly mostQuick: number };

/** `left` is what is left of the need. Null where no window is open. */
export function wantedOf(facts: Facts, need: Need, left: Wants, open: Open): Wanted | null {
  const { windows, done, late } = open;
  if (windows.length === 0) return null;
  const inTub = facts.tree.tub !== undefined;
  // A table of several doses opened late is not made up in the few that are left.
  const asked = Math.max(1, need.nitrogen.doses - done);
  const missed = windows.length < asked && !inTub;
  const half = !missed && asked === 1 && late;
  const share = missed ? windows.length / asked : half ? LATE_SINGLE.share : 1;
  const mostQuick = inTub ? Infinity : spread(Infinity, asked, windows.length, (s) => ringOf(facts.tree, facts.crown, s)).n;
  return { wants: { ...left, N: left.N * share }, open, asked, missed, half, mostQuick };
}

export function dosesOf(facts: Facts, need: Need, { wants, open: { windows, done, shares: printed }, asked, missed, half, mostQuick }: Wanted, shares: readonly Share[], system: System): PlannedDose[] {
  const { tree } = facts;
  const inTub = tree.tub !== undefined;
  const inBed = facts.bed !== undefined;
  const quick = (bag: Bag): boolean => isQuick(bag) && !inTub;
  const portions = shares.map(({ bag, g }): Portion => ({ bag, g, serves: NUTRIENTS.find((n) => wants[n] > 1e-9 && bag.grade[n] > 0) ?? 'N' }))
    .sort((a, b) => NUTRIENTS.indexOf(a.serves) - NUTRIENTS.indexOf(b.serves));
  // Quick nitrogen of several bags falls on the same roots: the limit holds for their sum.
  const quickN = portions.filter((p) => quick(p.bag)).reduce((sum, p) => sum + p.g * p.bag.grade.N, 0);
  const how = spread(quickN, asked, windows.length, (s) => ringOf(tree, facts.crown, s));
  const cut = wants.N > mostQuick * (1 + 1e-9) && quickN >= mostQuick * (1 - 1e-6);
  const sandy = facts.soil?.heaviness === 'light';
  return portions.flatMap((portion) => {
    const isNow = quick(portion.bag);
    const part = isNow ? (portion.g * portion.bag.grade.N) / quickN : 0;
    // Potash on sand goes in halves, unless half would be too little to weigh.
    const halves = !isNow && portion.serves === 'K2O' && sandy && portion.g / 2 >= stepOf(system);
    const doses = halves ? Math.min(2, windows.length) : isNow ? how.doses : 1;
    // Printed shares hold for a whole year's doses, and where the greatest of them does not burn the ring.
    const parts = isNow && printed?.length === doses && done === 0 && !missed && Math.max(...printed) * quickN <= how.mostPerDose ? printed : Array.from({ length: doses }, () => 1 / doses);
    const mostOf = (share: number): number => (portion.bag.grade.N > 0 ? Math.min(isNow ? how.mostPerDose * part : Infinity, need.nitrogen.cap * (isNow ? part : 1) * share) / portion.bag.grade.N : Infinity);
    const from: Figure[] = [need[portion.serves], ...(inTub || inBed ? [] : [how.ring.area])];
    return windows.slice(0, doses).map((window, k): PlannedDose => ({
      portion, window, most: mostOf(parts[k]!), count: tree.count, ring: inTub || inBed ? null : how.ring,
      planned: figure(portion.g * parts[k]!, 'g', 'product', isNow && cut ? 'dose-cut' : isNow && missed ? 'dose-late' : half && (isNow || inTub) ? 'dose-half' : doses > 1 ? 'dose-split' : 'dose', half && (isNow || inTub) ? LATE_SINGLE.cite : { source: 'definition', at: `grade ${portion.bag.printed}`, mark: 'derived' }, from),
    }));
  });
}

/** Rounds the doses: those of a product that serve nitrogen together, so that the orchard's nitrogen stays true, every other by itself; no more is used than there is. A dose that rounds to nothing is null. */
export function roundDoses(doses: readonly PlannedDose[], system: System, stock: ReadonlyMap<Bag, number>): (Feed | null)[] {
  const groups = new Map<string, number[]>();
  const bags = [...new Set(doses.map((dose) => dose.portion.bag))];
  doses.forEach((dose, i) => {
    const key = `${bags.indexOf(dose.portion.bag)} ${dose.portion.serves}`;
    const group = groups.get(key);
    if (group) group.push(i);
    else groups.set(key, [i]);
  });
  const grams: number[] = [];
  for (const group of groups.values()) {
    const mine = group.map((i) => doses[i]!);
    const rounded = mine[0]!.portion.serves === 'N'
      ? roundTogether(mine.map((d) => ({ g: d.planned.value, most: d.most, count: d.count, share: d.portion.bag.grade.N })), system)
      : mine.map((d) => roundDose(d.planned.value, system, d.most));
    group.forEach((i, k) => (grams[i] = rounded[k]!));
  }
  for (const bag of bags) {
    const mine = doses.map((_, i) => i).filter((i) => doses[i]!.portion.bag === bag);
    withinStock(mine.map((i) => grams[i]!), mine.map((i) => doses[i]!.count), stock.get(bag) ?? Infinity, system).forEach((g, k) => (grams[mine[k]!] = g));
  }
  return doses.map((d, i) => {
    const g = grams[i]!;
    return g > 0 ? { bag: d.portion.bag, serves: d.portion.serves, g, planned: d.planned, mL: volumeOf(g, d.portion.bag), window: d.window, ring: d.ring } : null;
  });
}
