/** What a plan holds: each tree with its need, its feeds and its lime, the working days, what to buy, and what there is to say and to ask. */
import type { AmendmentBag } from './bags/amend.ts';
import type { Purchase } from './bags/buy.ts';
import type { Dilute } from './bags/dilute.ts';
import type { Feed } from './bags/doses.ts';
import type { ZoneSoil } from './gather.ts';
import type { Facts } from './need/facts.ts';
import type { Need } from './need/need.ts';
import type { Ring } from './orchard/geometry.ts';
import type { Amounts, Fed, History } from './orchard/history.ts';
import type { Orchard } from './orchard/load.ts';
import type { Tree } from './orchard/tree.ts';
import type { CurvePoint } from './ph/curve.ts';
import type { PhPlan } from './ph/ph.ts';
import type { Figure } from './reason/figure.ts';
import type { Notice, Question } from './reason/notice.ts';
import type { Phase } from './tables/windows.ts';
import type { Day } from './units/date.ts';
import type { LastDay, Season, Window } from './when/season.ts';

/** Lime or sulphur of one plant: g rounded, for one plant; no dose where the answer is to leave it or a no. */
export type Amended = {
  readonly zone: string | null;
  readonly plan: PhPlan;
  /** Empty where nothing goes on. */
  readonly curve: readonly CurvePoint[];
  /** Null where none is listed: any ground limestone, or sulphur, will do. */
  readonly bag: AmendmentBag | null;
  readonly g: number;
  readonly ring: Ring;
  /** One plant's part of the bed that lime is dug into before planting; null where nobody told how large, absent where it stays on the surface. */
  readonly bed?: Figure<'m2', 'crown'> | null;
  readonly window: Window | null;
  /** When lime or sulphur last went on. */
  readonly last: Day | null;
};

/** A tree before anything is chosen for it. */
export type Draft = { readonly facts: Facts; readonly need: Need; readonly last: LastDay; readonly zone: ZoneSoil | null; readonly history: History };

export type TreePlan = {
  readonly tree: Tree;
  readonly facts: Facts;
  readonly need: Need;
  readonly ring: Ring | null;
  /** The last day for its nitrogen. */
  readonly last: LastDay;
  readonly feeds: readonly Feed[];
  /** Nitrogen of the largest dose that was planned before anything was fed, g a plant. */
  readonly mostPlanned: number;
  /** Of a tub without coated feed: what goes into its water. */
  readonly dilute: Dilute | null;
  /** A tub whose can would hold too little to weigh. */
  readonly tooLittle: boolean;
  /** What the diary has for this season. */
  readonly fed: readonly Fed[];
  /** With what was fed already. */
  readonly supplied: Amounts;
  readonly over: Amounts;
  readonly short: Amounts;
  readonly ph: Amended | null;
};

/** `number` stays that of the first sheet, also when earlier days are done; `phase` is what all its trees do then, null where they differ or its time has passed. */
export type WorkingDay = { readonly number: number; readonly from: Day; readonly until: Day; readonly phase: Phase | null; readonly doses: readonly { readonly plan: TreePlan; readonly feed: Feed }[] };

/** Grams that a working day takes of what one label names, all plants together. */
export function weighedOut({ doses }: WorkingDay): Map<string, number> {
  const sums = new Map<string, number>();
  for (const { plan, feed } of doses) sums.set(feed.bag.label, (sums.get(feed.bag.label) ?? 0) + feed.g * plan.tree.count);
  return sums;
}

export type Plan = {
  readonly orchard: Orchard;
  readonly season: Season;
  /** Whether no cheaper bags serve as well; false where a limit was reached in looking for them. */
  readonly sure: boolean;
  readonly zones: readonly ZoneSoil[];
  readonly trees: readonly TreePlan[];
  readonly days: readonly WorkingDay[];
  readonly buy: readonly Purchase[];
  readonly notices: readonly Notice[];
  readonly questions: readonly Question[];
};

/** The dose of lime or sulphur, else what stands against it; the rates of every publication that fits. */
export function phFigures(t: TreePlan): Figure[] {
  if (!t.ph) return [];
  const { dose, goal, swallowed, rates } = t.ph.plan;
  return [...(dose ? [dose] : []), ...(swallowed ? [swallowed.sulphur] : []), ...(dose || swallowed ? [] : [goal]), ...rates];
}
