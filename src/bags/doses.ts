/** The doses of one plant: which bag, how much, in which window, on which ring; rounded together with those of the whole orchard. */
import type { Facts } from '../need/facts.ts';
import type { Need } from '../need/need.ts';
import type { Bag } from '../orchard/bag.ts';
import type { Ring } from '../orchard/geometry.ts';
import { ringOf } from '../orchard/geometry.ts';
import type { Figure } from '../reason/figure.ts';
import { figure } from '../reason/figure.ts';
import type { Nutrient } from '../units/substance.ts';
import { LATE_SINGLE } from '../tables/timing.ts';
import type { Window } from '../when/season.ts';
import type { Portion } from './choose.ts';
import { choose } from './choose.ts';
import type { Wants } from './mix.ts';
import type { System } from './round.ts';
import { roundTogether, stepOf, volumeOf } from './round.ts';
import type { Spread } from './spread.ts';
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

/** When the doses may go on: the windows still open, how many doses the diary has, and whether a year's one dose opens late in the season. */
export type Open = { readonly windows: readonly Window[]; readonly done: number; readonly late: boolean };

/** `wants` is what is left of the need. */
export function dosesOf(facts: Facts, need: Need, wants: Wants, bags: readonly Bag[], { windows, done, late }: Open, system: System): PlannedDose[] {
  const { tree } = facts;
  if (windows.length === 0) return [];
  // A table of several doses opened late is not made up in the few that are left.
  const asked = Math.max(1, need.nitrogen.doses - done);
  const missed = windows.length < asked && tree.tub === undefined;
  const half = !missed && asked === 1 && late && tree.tub === undefined;
  const share = missed ? windows.length / asked : half ? LATE_SINGLE.share : 1;
  const inTub = tree.tub !== undefined;
  const inBed = facts.bed !== undefined;
  const portions = choose({ ...wants, N: wants.N * share }, bags, tree.crop, inTub);
  const isQuick = (p: Portion): boolean => p.bag.grade.N > 0 && !p.bag.slow && !inTub;
  // Quick nitrogen of several bags falls on the same roots: the limit holds for their sum.
  const quickN = portions.filter(isQuick).reduce((sum, p) => sum + p.g * p.bag.grade.N, 0);
  const once: Spread = { doses: 1, ring: ringOf(tree, facts.crown), n: 0, cut: false, mostPerDose: Infinity };
  const how = quickN > 0 ? spread(quickN, asked, windows.length, (s) => ringOf(tree, facts.crown, s)) : once;
  const sandy = facts.soil?.heaviness === 'light';
  return portions.flatMap((portion) => {
    const quick = isQuick(portion);
    const part = quick ? (portion.g * portion.bag.grade.N) / quickN : 0;
    // Potash on sand goes in halves, unless half would be too little to weigh.
    const halves = !quick && portion.serves === 'K2O' && sandy && portion.g / 2 >= stepOf(system);
    const doses = halves ? Math.min(2, windows.length) : quick ? how.doses : 1;
    const cut = quick && how.cut;
    const g = (cut ? (portion.g * how.n) / quickN : portion.g) / doses;
    const most = portion.bag.grade.N > 0 ? Math.min(quick ? how.mostPerDose * part : Infinity, (need.nitrogen.cap * (quick ? part : 1)) / doses) / portion.bag.grade.N : Infinity;
    const from: Figure[] = [need[portion.serves], ...(inTub || inBed ? [] : [how.ring.area])];
    return windows.slice(0, doses).map((window): PlannedDose => ({
      portion, window, most, count: tree.count, ring: inTub || inBed ? null : how.ring,
      planned: figure(g, 'g', 'product', cut ? 'dose-cut' : quick && missed ? 'dose-late' : quick && half ? 'dose-half' : doses > 1 ? 'dose-split' : 'dose', quick && half ? LATE_SINGLE.cite : { source: 'definition', at: `grade ${portion.bag.printed}`, mark: 'derived' }, from),
    }));
  });
}

/** Rounds the doses of each product together, so that the orchard's total stays true; a dose that rounds to nothing is null. */
export function roundDoses(doses: readonly PlannedDose[], system: System): (Feed | null)[] {
  const groups = new Map<string, number[]>();
  const bagsSeen: Bag[] = [];
  doses.forEach((dose, i) => {
    if (!bagsSeen.includes(dose.portion.bag)) bagsSeen.push(dose.portion.bag);
    const key = `${bagsSeen.indexOf(dose.portion.bag)} ${dose.portion.serves}`;
    groups.set(key, [...(groups.get(key) ?? []), i]);
  });
  const grams: number[] = [];
  for (const group of groups.values()) {
    const rounded = roundTogether(group.map((i) => doses[i]!).map((d) => ({ g: d.planned.value, most: d.most, count: d.count, share: d.portion.bag.grade[d.portion.serves] })), system);
    group.forEach((i, k) => (grams[i] = rounded[k]!));
  }
  return doses.map((d, i) => {
    const g = grams[i]!;
    return g > 0 ? { bag: d.portion.bag, serves: d.portion.serves, g, planned: d.planned, mL: volumeOf(g, d.portion.bag.material), window: d.window, ring: d.ring } : null;
  });
}
