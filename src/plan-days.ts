/** Whose time of feeding leads for a tree, and the working days that come of all feeds. */
import type { Feed } from './bags/doses.ts';
import type { Facts } from './need/facts.ts';
import type { Need } from './need/need.ts';
import { othersOf, printedDoses, timingOf } from './need/timing.ts';
import type { TreePlan, WorkingDay } from './planned.ts';
import type { Figure } from './reason/figure.ts';
import type { Day } from './units/date.ts';
import { daysBetween } from './units/date.ts';
import type { Season } from './when/season.ts';
import type { WindowOptions } from './when/windows.ts';
import { phaseOf } from './when/windows.ts';

/** Whose time of feeding leads for this tree, and how others differ. */
export function windowOptionsOf(facts: Facts, need: Need): Omit<WindowOptions, 'last'> {
  const { tree, where, soil } = facts;
  const tub = tree.tub !== undefined;
  const timing = timingOf(facts, need.nitrogen.lead?.rule ?? null);
  return { sandy: soil?.heaviness === 'light', south: where.south, region: where.region, tub, timing, printed: timing ? printedDoses(timing, facts) : [], parts: need.nitrogen.doses, others: tub ? [] : othersOf(facts, timing) };
}

/** Windows are done on one day only where they leave a week to choose from. */
const SHARED_DAYS = 6;
const overlap = (a: { from: Day; until: Day }, b: { from: Day; until: Day }): number => daysBetween(a.from > b.from ? a.from : b.from, a.until < b.until ? a.until : b.until);

/** Few working days: feeds whose windows overlap are done on one day, in walking order. */
export function daysOf(plans: readonly TreePlan[], season: Season): Omit<WorkingDay, 'number'>[] {
  const doses = plans.flatMap((plan) => plan.feeds.map((feed) => ({ plan, feed })));
  const sorted = [...doses].sort((a, b) => (a.feed.window.from < b.feed.window.from ? -1 : a.feed.window.from > b.feed.window.from ? 1 : 0));
  // What each plant has on a day, apart, so that a day of many plants is no slower to ask.
  const days: { from: Day; until: Day; doses: typeof doses; of: Map<TreePlan, Feed[]> }[] = [];
  for (const dose of sorted) {
    const { from, until } = dose.feed.window;
    const open = days.find((d) => overlap(d, dose.feed.window) >= Math.min(SHARED_DAYS, daysBetween(d.from, d.until), daysBetween(from, until)) && !d.of.get(dose.plan)?.some((f) => f.window !== dose.feed.window && f.serves === dose.feed.serves));
    if (open) {
      open.from = open.from > from ? open.from : from;
      open.until = open.until < until ? open.until : until;
      open.doses.push(dose);
      open.of.set(dose.plan, [...(open.of.get(dose.plan) ?? []), dose.feed]);
    } else days.push({ from, until, doses: [dose], of: new Map([[dose.plan, [dose.feed]]]) });
  }
  const walking = new Map(plans.map((p, i) => [p, i]));
  return days.map(({ from, until, doses: all }) => ({ from, until, phase: phaseOf(from, all.map((x) => x.feed.window), season), doses: all.sort((a, b) => walking.get(a.plan)! - walking.get(b.plan)!) }));
}

/** Days keep the number that they had before anything was fed; what is planned afresh gets a number of its own. */
export function withNumbers(days: readonly Omit<WorkingDay, 'number'>[], numbers: ReadonlyMap<Figure, number>): WorkingDay[] {
  const taken = new Set<number>();
  let highest = 0;
  for (const number of numbers.values()) highest = Math.max(highest, number);
  return days.map((d) => {
    const known = d.doses.map((x) => numbers.get(x.feed.planned)).find((n) => n !== undefined && !taken.has(n));
    const number = known ?? ++highest;
    taken.add(number);
    return { ...d, number };
  });
}
