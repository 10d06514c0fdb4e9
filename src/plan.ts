/** The season's plan: calls the rooms in order. Plain data in, plain data out; files, clock and terminal are elsewhere. */
import type { Plant, Share } from './bags/allot.ts';
import { allot } from './bags/allot.ts';
import { isSameProduct, purchasesOf } from './bags/buy.ts';
import { byYalps } from './bags/by-yalps.ts';
import { mayFeed } from './bags/choose.ts';
import { diluteOf, hasCan } from './bags/dilute.ts';
import type { Feed, Wanted } from './bags/doses.ts';
import { dosesOf, roundDoses, wantedOf } from './bags/doses.ts';
import type { Solver } from './bags/program.ts';
import type { Remaining } from './bags/remaining.ts';
import { remainingOf } from './bags/remaining.ts';
import { ROUNDING } from './bags/round.ts';
import type { ZoneSoil } from './gather.ts';
import type { Facts } from './need/facts.ts';
import { isYoung } from './need/facts.ts';
import type { Need } from './need/need.ts';
import { needOf } from './need/need.ts';
import type { Bag } from './orchard/bag.ts';
import type { Entry } from './orchard/diary.ts';
import { bedOf, crownOf, ringOf } from './orchard/geometry.ts';
import type { Amounts, Fed } from './orchard/history.ts';
import { historyOf, withHistory } from './orchard/history.ts';
import type { Orchard } from './orchard/load.ts';
import type { Tree } from './orchard/tree.ts';
import { daysOf, windowOptionsOf, withNumbers } from './plan-days.ts';
import { allAmended, amendmentPurchases } from './plan-lime.ts';
import { phQuestions } from './ph-notices.ts';
import { noticesOf } from './plan-notices.ts';
import type { Amended, Draft, Plan, TreePlan } from './planned.ts';
import type { Notice } from './reason/notice.ts';
import { notice } from './reason/notice.ts';
import { FIRST_DOSE, SECOND_DOSE } from './tables/timing.ts';
import type { Day } from './units/date.ts';
import { addDays, day, daysBetween } from './units/date.ts';
import type { Nutrient } from './units/substance.ts';
import { NUTRIENTS } from './units/substance.ts';
import type { Season, Window } from './when/season.ts';
import { lastDayOf, plantingWindow, seasonOf } from './when/season.ts';
import { isLate, partsOf, windowsOf } from './when/windows.ts';

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
  const { feeds: planned, notices, sure } = plannedFeeds(drafts, then.year === season.year ? then : season, orchard, () => NOTHING_FED, solver);
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
  return { feeds: mine, notices: [...emptied(plants, shares, drafts, orchard), ...(dearerAtMost > 0.005 ? [notice('mix-unsure', 'note', { amount: dearerAtMost.toFixed(2) })] : [])], sure: dearerAtMost <= 0.005 };
}

const NOTHING_WANTED: Amounts = { N: 0, P2O5: 0, K2O: 0 };

/** Bags in the shed that are used up before every plant that could take them has had its share. */
function emptied(plants: readonly Plant[], shares: readonly (readonly Share[])[], drafts: readonly Draft[], orchard: Orchard): Notice[] {
  return orchard.shed.flatMap((bag) => {
    const ofBag = (b: Bag): boolean => b === bag || isSameProduct(b, bag);
    const used = shares.reduce((sum, mine, i) => sum + plants[i]!.count * mine.filter((s) => ofBag(s.bag)).reduce((g, s) => g + s.g, 0), 0);
    if (bag.left === null || used < bag.left - 1) return [];
    const brings = (b: Bag): Nutrient[] => NUTRIENTS.filter((n) => b.grade[n] > 0);
    const lacking = drafts.filter((_, i) => plants[i]!.usable.includes(bag) && shares[i]!.some((s) => !(ofBag(s.bag) && used <= bag.left! + 1) && brings(s.bag).join() === brings(bag).join()));
    return lacking.length === 0 ? [] : [notice('shed-runs-out', 'note', { bag: bag.label, trees: lacking.map((d) => d.facts.tree.name).join(', ') })];
  });
}

/** The planned doses less those in the diary; where the diary has something else, the rest of the need is planned afresh. */
function afterDiary(draft: Draft, planned: readonly Feed[], season: Season, orchard: Orchard, solver: Solver): Remaining {
  const ticked = remainingOf(planned, draft.history.thisSeason);
  if (ticked) return { fed: ticked.fed, feeds: reopened(ticked.feeds, season, draft) };
  return { fed: draft.history.thisSeason, feeds: plannedFeeds([draft], season, orchard, (d) => d.history.thisSeason, solver).feeds[0]! };
}

/** A dose whose window has passed opens again for two weeks while the season lasts; the next of the same bag keeps its distance. */
function reopened(feeds: readonly Feed[], season: Season, draft: Draft): Feed[] {
  const closed = new Map<Bag, Day>();
  return feeds.flatMap((feed) => {
    const { window, bag } = feed;
    const last = (bag.grade.N > 0 ? draft.last : lastDayOf(season, draft.facts.tree.crop, null)).day;
    const before = closed.get(bag);
    const soonest = before === undefined ? season.today : addDays(before, SECOND_DOSE.from - FIRST_DOSE.until);
    const holds = window.until >= season.today && (before === undefined || window.from >= soonest);
    const from = holds ? window.from : soonest > season.today ? soonest : season.today;
    const until = holds ? window.until : addDays(from, FIRST_DOSE.until);
    // What holds keeps the distance that it was planned with.
    if (!holds) closed.set(bag, until);
    return from > last ? [] : [{ ...feed, window: { ...window, from, until: until < last ? until : last, phase: holds ? window.phase : null } }];
  });
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

/** Null where one of the feeds is not known. */
function sumOf(fed: readonly Fed[], n: Nutrient): number | null {
  return fed.some((f) => f.brought === null) ? null : fed.reduce((sum, f) => sum + f.brought![n], 0);
}

/** What was fed; a feed of unknown bag or weight counts as all that was needed, so that nothing is given twice. */
function sumsOf(fed: readonly Fed[], need: Need): Amounts {
  const of = (n: Nutrient): number => sumOf(fed, n) ?? need[n].value;
  return { N: of('N'), P2O5: of('P2O5'), K2O: of('K2O') };
}

const NOTHING_FED: readonly Fed[] = [];

/** What may still be given: the need less what was fed, in the windows after the last feed. */
function treeWants({ facts, need, last: stop }: Draft, season: Season, fed: readonly Fed[]): Wanted | null {
  if (need.verdict !== 'feed') return null;
  const dates = [...new Set(fed.map((f) => f.date))].sort();
  const latest = dates.at(-1);
  if (facts.bed !== undefined) return wantedOf(facts, need, { N: 0, P2O5: need.P2O5.value, K2O: need.K2O.value }, { windows: [plantingWindow(season, facts.tree.planting!)], done: 0, late: false });
  const afterHarvest = need.nitrogen.lead?.rule.when === 'after-harvest';
  const windowOptions = windowOptionsOf(facts, need);
  const { timing } = windowOptions;
  const doses = need.nitrogen.lead?.rule.doses === undefined ? partsOf(season, need.nitrogen.doses, { ...windowOptions, last: stop.day }) : need.nitrogen.doses;
  const until = (last: Day): Window[] => windowsOf(season, 6 + dates.length, { ...windowOptions, last }).slice(dates.length)
    .filter((w) => latest === undefined || daysBetween(latest, w.until) > SECOND_DOSE.from - FIRST_DOSE.until);
  const forN = until(stop.day);
  // A printed last day holds for nitrogen alone.
  const over = forN.length === 0 && stop.printed;
  const windows = over ? until(lastDayOf(season, facts.crop, null).day) : forN;
  const had = sumsOf(fed, need);
  const left = (n: Nutrient): number => (need[n].value - had[n] <= ROUNDING * need[n].value ? 0 : need[n].value - had[n]);
  return wantedOf(facts, { ...need, nitrogen: { ...need.nitrogen, doses } }, { N: over ? 0 : left('N'), P2O5: left('P2O5'), K2O: left('K2O') }, { windows, done: dates.length, late: dates.length === 0 && !afterHarvest && isLate(season, windows[0]), ...(timing?.shares ? { shares: timing.shares } : {}) });
}

function finished({ facts, need, last }: Draft, { feeds, fed }: Remaining, ph: Amended | null, asPlanned: readonly Feed[], { dilute, tooLittle }: Can = NO_CAN): TreePlan {
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

function dilutedFor({ facts, need, last }: Draft, { feeds, fed }: Remaining, season: Season, orchard: Orchard): Can {
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
