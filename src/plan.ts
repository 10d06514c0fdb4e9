/** The season's plan: calls the rooms in order. Plain data in, plain data out; files, clock and terminal are elsewhere. */
import type { Plant } from './bags/allot.ts';
import { allot } from './bags/allot.ts';
import { purchasesOf } from './bags/buy.ts';
import { byYalps } from './bags/by-yalps.ts';
import { mayFeed } from './bags/choose.ts';
import type { Feed } from './bags/doses.ts';
import { dosesOf, roundDoses } from './bags/doses.ts';
import type { Solver } from './bags/program.ts';
import type { Remaining } from './bags/remaining.ts';
import { remainingOf } from './bags/remaining.ts';
import type { ZoneSoil } from './gather.ts';
import type { Facts } from './need/facts.ts';
import { isYoung } from './need/facts.ts';
import { needOf } from './need/need.ts';
import type { Bag } from './orchard/bag.ts';
import type { Entry } from './orchard/diary.ts';
import { bedOf, crownOf } from './orchard/geometry.ts';
import type { Amounts, Fed } from './orchard/history.ts';
import { historyOf, withHistory } from './orchard/history.ts';
import type { Orchard } from './orchard/load.ts';
import type { Tree } from './orchard/tree.ts';
import { daysOf, withNumbers } from './plan-days.ts';
import { dilutedFor, finished, reopened, sumOf, treeWants } from './plan-left.ts';
import { allAmended, amendmentPurchases } from './plan-lime.ts';
import { phQuestions } from './ph-notices.ts';
import { noticesOf, shedRunsOut } from './plan-notices.ts';
import type { Draft, Plan } from './planned.ts';
import type { Notice } from './reason/notice.ts';
import { notice } from './reason/notice.ts';
import type { Day } from './units/date.ts';
import { day } from './units/date.ts';
import type { Season } from './when/season.ts';
import { lastDayOf, seasonOf } from './when/season.ts';

export type { Plan, TreePlan, WorkingDay } from './planned.ts';

/** `only`: one tree, by its name. `known`: the bags that the diary speaks of, where they are not those of the orchard. `solver` chooses the bags. */
export type PlanOptions = { readonly only?: string | undefined; readonly diary?: readonly Entry[]; readonly known?: readonly Bag[]; readonly solver?: Solver };

export function planSeason(orchard: Orchard, zones: readonly ZoneSoil[], today: Day, options: PlanOptions = {}): Plan {
  const { only, diary = [], known = [...orchard.shed, ...orchard.store], solver = byYalps } = options;
  const season = seasonOf(orchard, today);
  const drafts = orchard.trees.map((tree) => draftOf(tree, season, zones, orchard, diary, known));
  const amended = allAmended(drafts, season, orchard);

  // The plan as it stood when the first feed went on; what the diary has is ticked off from it.
  const firstFed = drafts.flatMap((d) => d.history.thisSeason.map((f) => f.date)).sort()[0];
  const then = firstFed !== undefined && firstFed < today ? seasonOf(orchard, firstFed) : season;
  const { feeds: planned, notices, sure } = plannedFeeds(drafts, then.year === season.year ? then : season, orchard, () => [], solver);
  const atFirst = drafts.map((d, i) => finished(d, { feeds: planned[i]!, fed: [] }, null, planned[i]!));
  const numbers = new Map(daysOf(atFirst, season).flatMap((day, i) => day.doses.map((x) => [x.feed.planned, i + 1] as const)));
  const left = drafts.map((d, i) => (firstFed === undefined ? { feeds: planned[i]!, fed: [] } : afterDiary(d, planned[i]!, season, orchard, solver)));
  // The bags serve the whole orchard, so one tree's plan is its part of that of all.
  const plans = drafts.map((d, i) => finished(d, left[i]!, amended[i]!, planned[i]!, dilutedFor(d, left[i]!, season, orchard))).filter((p) => only === undefined || p.tree.name.toLowerCase() === only.toLowerCase());
  const used = new Map<Bag, number>();
  for (const p of plans) for (const { bag, g } of [...p.feeds, ...(p.dilute ? [{ bag: p.dilute.bag, g: p.dilute.times * p.dilute.g.value }] : [])]) used.set(bag, (used.get(bag) ?? 0) + g * p.tree.count);
  return {
    orchard, season, zones, trees: plans, days: withNumbers(daysOf(plans, season), numbers), buy: [...purchasesOf(used, orchard.store, orchard.shed), ...amendmentPurchases(plans, orchard)], sure,
    notices: [...notices, ...noticesOf(plans, zones, season, orchard)], questions: [...plans.flatMap((p) => p.need.questions), ...phQuestions(plans, zones)],
  };
}

type Planned = { readonly feeds: readonly Feed[][]; readonly notices: readonly Notice[]; readonly sure: boolean };

/** The doses of every plant, out of the bags that serve them all best and then cost least. */
function plannedFeeds(drafts: readonly Draft[], season: Season, orchard: Orchard, fedOf: (d: Draft) => readonly Fed[], solver: Solver): Planned {
  const bags = [...orchard.shed, ...orchard.store];
  const system = orchard.where.units;
  const wanted = drafts.map((d) => treeWants(d, season, fedOf(d)));
  const plants = drafts.map(({ facts: { tree } }, i): Plant => ({
    wants: wanted[i]?.wants ?? NOTHING_WANTED, mostQuick: wanted[i]?.mostQuick ?? Infinity, count: tree.count, acid: tree.crop === 'blueberry', usable: bags.filter((b) => mayFeed(b, tree, orchard.never)),
  }));
  const { shares, stock, dearerAtMost } = allot(plants, orchard.shed, orchard.store, solver);
  const doses = drafts.flatMap(({ facts, need }, i) => (wanted[i] ? dosesOf(facts, need, wanted[i], shares[i]!, system).map((dose) => ({ dose, i })) : []));
  const feeds = roundDoses(doses.map((x) => x.dose), system, stock).flatMap((feed, k) => (feed ? [{ feed, i: doses[k]!.i }] : []));
  const mine = drafts.map((): Feed[] => []);
  for (const { feed, i } of feeds) mine[i]!.push(feed);
  return { feeds: mine, notices: [...shedRunsOut(plants, shares, drafts.map((d) => d.facts.tree.name), orchard.shed), ...(dearerAtMost > 0.005 ? [notice('mix-unsure', 'note', { amount: dearerAtMost.toFixed(2) })] : [])], sure: dearerAtMost <= 0.005 };
}

const NOTHING_WANTED: Amounts = { N: 0, P2O5: 0, K2O: 0 };

/** The planned doses less those in the diary; where the diary has something else, the rest of the need is planned afresh. */
function afterDiary(draft: Draft, planned: readonly Feed[], season: Season, orchard: Orchard, solver: Solver): Remaining {
  const ticked = remainingOf(planned, draft.history.thisSeason);
  if (ticked) return { fed: ticked.fed, feeds: reopened(ticked.feeds, season, draft) };
  return { fed: draft.history.thisSeason, feeds: plannedFeeds([draft], season, orchard, (d) => d.history.thisSeason, solver).feeds[0]! };
}

function draftOf(told: Tree, season: Season, zones: readonly ZoneSoil[], orchard: Orchard, diary: readonly Entry[], known: readonly Bag[]): Draft {
  const name = told.zone ?? (zones.length === 1 ? zones[0]!.zone : undefined);
  const history = historyOf(told, name, diary, season, known, orchard.where.country);
  const tree = withHistory(told, history, season.year);
  const come = hasCome(tree, season.today);
  const planted = tree.planted ?? (come ? tree.planting : undefined);
  const years = planted ? season.year - planted.year : null;
  const zone = tree.tub === undefined ? zones.find((z) => z.zone === name) ?? null : null;
  const lastN = history.lastSeason && sumOf(history.lastSeason, 'N');
  const facts: Facts = { tree, crop: tree.fedAs ?? tree.crop, rules: orchard.rules, season: season.year, years, young: isYoung(tree, years), crown: crownOf(tree, years), soil: zone?.soil ?? null, where: orchard.where, advice: zone?.advice ?? [], byLab: zone?.byLab ?? false, lastN, ...(come || tree.tub !== undefined ? {} : { bed: bedOf(tree) }) };
  return { facts, need: needOf(facts), last: lastDayOf(season, facts.crop, orchard.where.region), zone, history };
}

/** A tree to be planted stands from its month on; without a month from the end of its year. */
const hasCome = ({ planting }: Tree, today: Day): boolean => planting === undefined || day(planting.year, planting.month ?? 12, 1) <= today;
