/** The season's plan: calls the rooms in order. Plain data in, plain data out; files, clock and terminal are elsewhere. */
import type { Plant, Share } from './bags/allot.ts';
import { allot } from './bags/allot.ts';
import { amendmentBagOf, magnesiumRule, withinOwnLimit } from './bags/amend.ts';
import type { Purchase } from './bags/buy.ts';
import { isSameProduct, purchasesOf } from './bags/buy.ts';
import { byYalps } from './bags/by-yalps.ts';
import { mayFeed } from './bags/choose.ts';
import { diluteOf, hasCan } from './bags/dilute.ts';
import type { Feed, Wanted } from './bags/doses.ts';
import { dosesOf, roundDoses, wantedOf } from './bags/doses.ts';
import type { Solver } from './bags/program.ts';
import type { Remaining } from './bags/remaining.ts';
import { remainingOf } from './bags/remaining.ts';
import { roundAmendment, ROUNDING } from './bags/round.ts';
import type { ZoneSoil } from './gather.ts';
import type { Facts } from './need/facts.ts';
import { isYoung } from './need/facts.ts';
import type { Need } from './need/need.ts';
import { needOf } from './need/need.ts';
import { othersOf, printedDoses, timingOf } from './need/timing.ts';
import type { Bag } from './orchard/bag.ts';
import { amendmentBag } from './orchard/bag.ts';
import type { Entry } from './orchard/diary.ts';
import { bedOf, crownOf, ringOf } from './orchard/geometry.ts';
import type { Amounts, Fed, History } from './orchard/history.ts';
import { historyOf, withHistory } from './orchard/history.ts';
import type { Orchard } from './orchard/load.ts';
import type { Tree } from './orchard/tree.ts';
import { curveOf } from './ph/curve.ts';
import type { PhAsk } from './ph/ph.ts';
import { phPlan } from './ph/ph.ts';
import { noticesOf, phQuestions } from './plan-notices.ts';
import type { Amended, Plan, TreePlan, WorkingDay } from './planned.ts';
import type { Figure } from './reason/figure.ts';
import type { Notice } from './reason/notice.ts';
import { notice } from './reason/notice.ts';
import { AMENDMENT_RETEST, FIRST_DOSE, SECOND_DOSE } from './tables/timing.ts';
import type { Day } from './units/date.ts';
import { addDays, day, daysBetween } from './units/date.ts';
import type { Nutrient } from './units/substance.ts';
import { NUTRIENTS } from './units/substance.ts';
import type { LastDay, Season, Window } from './when/season.ts';
import { isTold, lastDayOf, limeWindow, plantingWindow, seasonOf, sulphurBedWindow, sulphurWindow } from './when/season.ts';
import type { WindowOptions } from './when/windows.ts';
import { firstDay, isLate, partsOf, phaseOf, windowsOf } from './when/windows.ts';
import type { Language } from './words/words.ts';
import { say } from './words/words.ts';

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
  return { feeds: drafts.map((_, i) => feeds.filter((x) => x.i === i).map((x) => x.feed)), notices: [...emptied(plants, shares, drafts, orchard), ...(dearerAtMost > 0.005 ? [notice('mix-unsure', 'note', { amount: dearerAtMost.toFixed(2) })] : [])], sure: dearerAtMost <= 0.005 };
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

/** Days keep the number that they had before anything was fed; what is planned afresh gets a number of its own. */
function withNumbers(days: readonly Omit<WorkingDay, 'number'>[], numbers: ReadonlyMap<Figure, number>): WorkingDay[] {
  const taken = new Set<number>();
  return days.map((d) => {
    const known = d.doses.map((x) => numbers.get(x.feed.planned)).find((n) => n !== undefined && !taken.has(n));
    const number = known ?? Math.max(0, ...taken, ...numbers.values()) + 1;
    taken.add(number);
    return { ...d, number };
  });
}

type Draft = { readonly facts: Facts; readonly need: Need; readonly last: LastDay; readonly zone: ZoneSoil | null; readonly history: History };

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

/** Whose time of feeding leads for this tree, and how others differ. */
function windowOptionsOf(facts: Facts, need: Need): Omit<WindowOptions, 'last'> {
  const { tree, where, soil } = facts;
  const tub = tree.tub !== undefined;
  const timing = timingOf(facts, need.nitrogen.lead?.rule ?? null);
  return { sandy: soil?.heaviness === 'light', south: where.south, region: where.region, tub, timing, printed: timing ? printedDoses(timing, facts) : [], parts: need.nitrogen.doses, others: tub ? [] : othersOf(facts, timing) };
}

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

/** Lime or sulphur of every plant, in walking order: out of the shed while that holds a plant's whole dose. */
function allAmended(drafts: readonly Draft[], season: Season, orchard: Orchard): (Amended | null)[] {
  const left = new Map(orchard.shed.map((b) => [b, b.left ?? Infinity]));
  return drafts.map((draft) => {
    let bags: readonly Bag[] = [...orchard.shed, ...orchard.store];
    for (;;) {
      const found = amendedOf(draft, season, orchard, bags);
      const [bag, g] = [found?.bag ?? null, (found?.g ?? 0) * draft.facts.tree.count];
      const open = bag ? left.get(bag) : undefined;
      if (bag === null || open === undefined) return found;
      if (g <= open * (1 + 1e-9)) {
        left.set(bag, open - g);
        return found;
      }
      bags = bags.filter((b) => b !== bag);
    }
  });
}

/** Lime or sulphur over the ring of one plant, or lime dug into the bed of one to come; a tub stands in its own mix and has no zone here. */
function amendedOf({ facts, need, last, zone, history }: Draft, season: Season, orchard: Orchard, bags: readonly Bag[]): Amended | null {
  if (!zone?.ph) return null;
  const stopped = need.stops.some((s) => s.id === 'salts' || s.id === 'sodium');
  const wants = { magnesium: magnesiumRule(zone.ph, orchard.where).wants, potash: need.K2O.value > 0, ph: zone.ph.now.value };
  const [lime, sulphur] = [amendmentBagOf('lime', bags, wants), amendmentBagOf('sulphur', bags, wants)];
  const strength = { lime: lime?.amends.strength ?? 1, sulphur: sulphur?.amends.strength ?? 1 };
  const digIn = facts.bed !== undefined;
  const ask: PhAsk = { crop: facts.tree.crop, word: facts.tree.word, soil: zone.ph, strength, region: orchard.where.region, digIn, stopped, awaitsRetest: awaitsRetest(history.amended, zone.sample.taken ?? null, season.today) };
  const asked = phPlan(ask);
  if (!asked) return null;
  const plan = asked.dose?.of === 'lime' && lime ? { ...asked, dose: withinOwnLimit(asked.dose, lime.amends) } : asked;
  const dug = digIn && (plan.verdict === 'lime' || plan.verdict === 'sulphur');
  const planting = facts.bed ? plantingWindow(season, facts.tree.planting!) : null;
  const window = dug ? planting && (plan.verdict === 'lime' ? planting : sulphurBedWindow(season, planting)) : plan.verdict === 'lime' ? limeWindow(season, firstDay(season, { ...windowOptionsOf(facts, need), last: last.day }), last.day) : plan.verdict === 'sulphur' ? sulphurWindow(season) : null;
  // Lime and sulphur go on the plain ring: a wider one only thins nitrogen.
  const ring = ringOf(facts.tree, facts.crown);
  const area = dug ? facts.bed?.value ?? 0 : ring.area.value;
  return {
    zone: zone.zone, plan, curve: curveOf(ask, plan), ring, ...(dug ? { bed: facts.bed ?? null } : {}), last: [...history.amended].sort().at(-1) ?? null, bag: plan.verdict === 'lime' ? lime : plan.verdict === 'sulphur' ? sulphur : null, window,
    g: plan.dose && window ? roundAmendment(plan.dose.value * area, orchard.where.units) : 0,
  };
}

/** Whether lime or sulphur went on and no sample a year later tells what it did. Without a date of the sample, three years are waited. */
function awaitsRetest(amended: readonly Day[], taken: Day | null, today: Day): boolean {
  return amended.some((d) => (taken === null ? addDays(d, Math.round(AMENDMENT_RETEST.longest * 30.44)) > today : !isTold(d, taken)));
}

function amendmentPurchases(plans: readonly TreePlan[], orchard: Orchard): Purchase[] {
  const bags = new Map<string, Bag>();
  const used = new Map<Bag, number>();
  for (const { ph, tree } of plans) {
    if (!ph || ph.g <= 0) continue;
    const kind = ph.plan.verdict === 'lime' ? 'lime' : 'sulphur';
    const bag: Bag = ph.bag ?? bags.get(kind) ?? unlisted(kind, tree, orchard.where.language);
    bags.set(kind, bag);
    used.set(bag, (used.get(bag) ?? 0) + ph.g * tree.count);
  }
  return purchasesOf(used, orchard.store);
}

/** Where no bag is listed, the plain material. */
const unlisted = (kind: 'lime' | 'sulphur', tree: Tree, language: Language): Bag =>
  amendmentBag(say(language, 'plan', `any-${kind}`), { kind, strength: 1, dolomitic: false, burns: false }, { g: null, price: null, left: null, place: tree.place, unlisted: true });

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

/** Windows are done on one day only where they leave a week to choose from. */
const SHARED_DAYS = 6;
const overlap = (a: { from: Day; until: Day }, b: { from: Day; until: Day }): number => daysBetween(a.from > b.from ? a.from : b.from, a.until < b.until ? a.until : b.until);

/** Few working days: feeds whose windows overlap are done on one day, in walking order. */
function daysOf(plans: readonly TreePlan[], season: Season): Omit<WorkingDay, 'number'>[] {
  const doses = plans.flatMap((plan) => plan.feeds.map((feed) => ({ plan, feed })));
  const sorted = [...doses].sort((a, b) => (a.feed.window.from < b.feed.window.from ? -1 : a.feed.window.from > b.feed.window.from ? 1 : 0));
  const days: { from: Day; until: Day; doses: typeof doses }[] = [];
  for (const dose of sorted) {
    const { from, until } = dose.feed.window;
    const open = days.find((d) => overlap(d, dose.feed.window) >= Math.min(SHARED_DAYS, daysBetween(d.from, d.until), daysBetween(from, until)) && !d.doses.some((x) => x.plan === dose.plan && x.feed.window !== dose.feed.window && x.feed.serves === dose.feed.serves));
    if (open) {
      open.from = open.from > from ? open.from : from;
      open.until = open.until < until ? open.until : until;
      open.doses.push(dose);
    } else days.push({ from, until, doses: [dose] });
  }
  const walking = new Map(plans.map((p, i) => [p, i]));
  return days.map((d) => ({ ...d, phase: phaseOf(d.from, d.doses.map((x) => x.feed.window), season), doses: d.doses.sort((a, b) => walking.get(a.plan)! - walking.get(b.plan)!) }));
}
