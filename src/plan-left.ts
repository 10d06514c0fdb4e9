/** What each plant may still be given after what the diary has, and the plan of a plant that comes of it. */
import { diluteOf, hasCan } from './bags/dilute.ts';
import type { Feed, Wanted } from './bags/doses.ts';
import { wantedOf } from './bags/doses.ts';
import type { Remaining } from './bags/remaining.ts';
import { ROUNDING } from './bags/round.ts';
import type { Need } from './need/need.ts';
import type { Bag } from './orchard/bag.ts';
import { ringOf } from './orchard/geometry.ts';
import type { Amounts, Fed } from './orchard/history.ts';
import type { Orchard } from './orchard/load.ts';
import { windowOptionsOf } from './plan-days.ts';
import type { Amended, Draft, TreePlan } from './planned.ts';
import { FIRST_DOSE } from './tables/timing.ts';
import type { Day } from './units/date.ts';
import { addDays, daysBetween } from './units/date.ts';
import type { Nutrient } from './units/substance.ts';
import type { Season, Window } from './when/season.ts';
import { lastDayOf, plantingWindow } from './when/season.ts';
import { APART, isLate, partsOf, windowsOf } from './when/windows.ts';

/** A dose whose window has passed opens again for two weeks while the season lasts; the next of the same bag keeps its distance. */
export function reopened(feeds: readonly Feed[], season: Season, draft: Draft): Feed[] {
  const closed = new Map<Bag, Day>();
  return feeds.flatMap((feed) => {
    const { window, bag } = feed;
    const last = (bag.grade.N > 0 ? draft.last : lastDayOf(season, draft.facts.crop, null)).day;
    const before = closed.get(bag);
    const soonest = before === undefined ? season.today : addDays(before, APART);
    const holds = window.until >= season.today && (before === undefined || window.from >= soonest);
    const from = holds ? window.from : soonest > season.today ? soonest : season.today;
    const until = holds ? window.until : addDays(from, FIRST_DOSE.until);
    // What holds keeps the distance that it was planned with.
    if (!holds) closed.set(bag, until);
    return from > last ? [] : [{ ...feed, window: { ...window, from, until: until < last ? until : last, phase: holds ? window.phase : null } }];
  });
}

/** Null where one of the feeds is not known. */
export function sumOf(fed: readonly Fed[], n: Nutrient): number | null {
  return fed.some((f) => f.brought === null) ? null : fed.reduce((sum, f) => sum + f.brought![n], 0);
}

/** What was fed; a feed of unknown bag or weight counts as all that was needed, so that nothing is given twice. */
function sumsOf(fed: readonly Fed[], need: Need): Amounts {
  const of = (n: Nutrient): number => sumOf(fed, n) ?? need[n].value;
  return { N: of('N'), P2O5: of('P2O5'), K2O: of('K2O') };
}

/** What may still be given: the need less what was fed, in the windows after the last feed. */
export function treeWants({ facts, need, last: stop }: Draft, season: Season, fed: readonly Fed[]): Wanted | null {
  if (need.verdict !== 'feed') return null;
  const dates = [...new Set(fed.map((f) => f.date))].sort();
  const latest = dates.at(-1);
  if (facts.bed !== undefined) return wantedOf(facts, need, { N: 0, P2O5: need.P2O5.value, K2O: need.K2O.value }, { windows: [plantingWindow(season, facts.tree.planting!)], done: 0, late: false });
  const afterHarvest = need.nitrogen.lead?.rule.when === 'after-harvest';
  const windowOptions = windowOptionsOf(facts, need);
  const { timing } = windowOptions;
  const doses = need.nitrogen.lead?.rule.doses === undefined ? partsOf(season, need.nitrogen.doses, { ...windowOptions, last: stop.day }) : need.nitrogen.doses;
  const until = (last: Day): Window[] => windowsOf(season, 6, { ...windowOptions, last }, latest === undefined ? undefined : { days: dates.length, latest })
    .filter((w) => latest === undefined || daysBetween(latest, w.until) > APART);
  const forN = until(stop.day);
  // A printed last day holds for nitrogen alone.
  const over = forN.length === 0 && stop.printed;
  const windows = over ? until(lastDayOf(season, facts.crop, null).day) : forN;
  const had = sumsOf(fed, need);
  const left = (n: Nutrient): number => (need[n].value - had[n] <= ROUNDING * need[n].value ? 0 : need[n].value - had[n]);
  return wantedOf(facts, { ...need, nitrogen: { ...need.nitrogen, doses } }, { N: over ? 0 : left('N'), P2O5: left('P2O5'), K2O: left('K2O') }, { windows, done: dates.length, late: dates.length === 0 && !afterHarvest && isLate(season, windows[0]), ...(timing?.shares ? { shares: timing.shares } : {}) });
}

export function finished({ facts, need, last }: Draft, { feeds, fed }: Remaining, ph: Amended | null, asPlanned: readonly Feed[], { dilute, tooLittle }: Can = NO_CAN): TreePlan {
  const each = (of: (n: Nutrient) => number): Amounts => ({ N: of('N'), P2O5: of('P2O5'), K2O: of('K2O') });
  const had = sumsOf(fed, need);
  const supplied = each((n) => had[n] + feeds.reduce((sum, f) => sum + f.g * f.bag.grade[n], 0) + (dilute ? dilute.times * dilute.g.value * dilute.bag.grade[n] : 0));
  const over = each((n) => Math.max(0, supplied[n] - need[n].value));
  const short = each((n) => Math.max(0, need[n].value - supplied[n]));
  const ring = facts.tree.tub === undefined && facts.bed === undefined ? feeds[0]?.ring ?? ringOf(facts.tree, facts.crown) : null;
  return { tree: facts.tree, facts, need, last, ring, feeds, mostPlanned: mostOnADay(asPlanned), dilute, tooLittle, fed, supplied, over, short, ph };
}

/** Nitrogen of the feeds that go on in one window, the most of all. */
function mostOnADay(feeds: readonly Feed[]): number {
  const days = new Map<Day, number>();
  for (const f of feeds) days.set(f.window.from, (days.get(f.window.from) ?? 0) + f.g * f.bag.grade.N);
  return Math.max(0, ...days.values());
}

/** A tub that no coated feed serves is fed in its water, from bud break or today on to its last day for nitrogen. */
type Can = Pick<TreePlan, 'dilute' | 'tooLittle'>;
const NO_CAN: Can = { dilute: null, tooLittle: false };

export function dilutedFor({ facts, need, last }: Draft, { feeds, fed }: Remaining, season: Season, orchard: Orchard): Can {
  if (facts.tree.tub === undefined || need.verdict !== 'feed' || feeds.length > 0) return NO_CAN;
  const had = sumsOf(fed, need);
  const left = (n: Nutrient): number => Math.max(0, need[n].value - had[n]);
  // A week after the last can.
  const latest = fed.map((f) => f.date).sort().at(-1);
  const from = [season.today, season.budBreak, ...(latest === undefined ? [] : [addDays(latest, 7)])].sort().at(-1)!;
  const bags = [...orchard.shed, ...orchard.store];
  const dilute = diluteOf(facts.tree, { N: left('N'), P2O5: left('P2O5'), K2O: left('K2O') }, bags, orchard.never, { from, until: last.day, why: [need.N] });
  return { dilute, tooLittle: !dilute && left('N') > 0 && hasCan(facts.tree, bags, orchard.never) };
}
