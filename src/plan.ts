/** The season's plan: calls the rooms in order. Plain data in, plain data out; files, clock and terminal are elsewhere. */
import { choose } from './bags/choose.ts';
import type { Portion } from './bags/choose.ts';
import type { Purchase } from './bags/buy.ts';
import { purchasesOf } from './bags/buy.ts';
import { roundTogether, stepOf, volumeOf } from './bags/round.ts';
import type { Spread } from './bags/spread.ts';
import { spread } from './bags/spread.ts';
import type { Facts, Soil } from './need/facts.ts';
import { growthOf, isYoung } from './need/facts.ts';
import type { Need } from './need/need.ts';
import { needOf } from './need/need.ts';
import type { Bag } from './orchard/bag.ts';
import type { Ring } from './orchard/geometry.ts';
import { crownOf, ringOf } from './orchard/geometry.ts';
import type { Orchard } from './orchard/load.ts';
import type { Tree } from './orchard/tree.ts';
import type { PhVerdict } from './ph/ph.ts';
import { phVerdict } from './ph/ph.ts';
import { heavinessOf, rateSample } from './rating/rate.ts';
import type { Figure } from './reason/figure.ts';
import { figure } from './reason/figure.ts';
import type { Notice, Question } from './reason/notice.ts';
import { notice } from './reason/notice.ts';
import { suggest } from './reason/suggest.ts';
import type { Report } from './soil/read.ts';
import type { Sample } from './soil/reading.ts';
import { CHLORIDE_SENSITIVE, EVERGREEN } from './tables/crops.ts';
import type { Day } from './units/date.ts';
import { daysBetween } from './units/date.ts';
import type { Nutrient } from './units/substance.ts';
import { NUTRIENTS } from './units/substance.ts';
import { OUNCE } from './units/units.ts';
import type { Season, Window } from './when/season.ts';
import { seasonOf, windowsOf } from './when/season.ts';

export type ZoneSoil = { readonly zone: string; readonly sample: Sample; readonly soil: Soil };

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

export type Amounts = Readonly<Record<Nutrient, number>>;

export type TreePlan = {
  readonly tree: Tree;
  readonly facts: Facts;
  readonly need: Need;
  readonly ring: Ring | null;
  readonly feeds: readonly Feed[];
  readonly supplied: Amounts;
  readonly over: Amounts;
  readonly short: Amounts;
  readonly ph: PhVerdict | null;
};

export type WorkingDay = { readonly from: Day; readonly until: Day; readonly doses: readonly { readonly plan: TreePlan; readonly feed: Feed }[] };

export type Plan = {
  readonly orchard: Orchard;
  readonly season: Season;
  readonly zones: readonly ZoneSoil[];
  readonly trees: readonly TreePlan[];
  readonly days: readonly WorkingDay[];
  readonly buy: readonly Purchase[];
  readonly notices: readonly Notice[];
  readonly questions: readonly Question[];
};

/** The soil of each zone out of the reports; a sample that a report does not hold is a mistake. */
export function zonesOf(orchard: Orchard, reports: ReadonlyMap<string, Report>): { zones: ZoneSoil[]; notices: Notice[] } {
  const notices: Notice[] = [];
  const zones = orchard.zones.flatMap((zone): ZoneSoil[] => {
    const samples = reports.get(zone.file)?.samples ?? [];
    // A report that cannot be read has said so already.
    if (samples.length === 0) return [];
    const sample = zone.sample === null ? samples[0] : samples.find((s) => s.name.toLowerCase() === zone.sample!.toLowerCase()) ?? numbered(zone.sample, samples);
    if (!sample) {
      const names = samples.map((s) => s.name);
      notices.push(notice('sample-unknown', 'error', { read: zone.sample ?? zone.file, file: zone.file, guess: suggest(zone.sample ?? '', names).join(', '), known: names.join(', ') }, zone.place));
      return [];
    }
    if (zone.sample === null && samples.length > 1) notices.push(notice('sample-unnamed', 'error', { file: zone.file, known: samples.map((s) => s.name).join(', ') }, zone.place));
    return [{ zone: zone.name, sample, soil: { rated: rateSample(sample, orchard.where.country), heaviness: heavinessOf(sample) } }];
  });
  return { zones, notices };
}

/** "sample 2" finds the second sample of a report that names its samples otherwise. */
function numbered(said: string, samples: readonly Sample[]): Sample | undefined {
  const m = /^sample (\d+)$/i.exec(said);
  return m ? samples[Number(m[1]) - 1] : undefined;
}

/** Mistakes that only the season shows. */
export function seasonMistakes(orchard: Orchard, season: Season): Notice[] {
  return orchard.trees.flatMap((tree) => {
    const found: Notice[] = [];
    if (tree.planted && tree.planted.year > season.year) found.push(notice('planted-future', 'error', { tree: tree.name, read: tree.planted.year, season: season.year }, tree.place));
    if (tree.planted && tree.planted.year < season.year - 300) found.push(notice('planted-long-ago', 'error', { tree: tree.name, read: tree.planted.year }, tree.place));
    if (tree.across !== undefined && tree.across > 40) found.push(notice('crown-impossible', 'error', { tree: tree.name }, tree.place));
    return found;
  });
}

export function planSeason(orchard: Orchard, zones: readonly ZoneSoil[], today: Day, only?: string): Plan {
  const season = seasonOf(orchard, today);
  const trees = only === undefined ? orchard.trees : orchard.trees.filter((t) => t.name.toLowerCase() === only.toLowerCase());
  const soils = new Map(zones.map((z) => [z.zone, z.soil]));
  const system = orchard.where.units;
  let bags: readonly Bag[] = [...orchard.shed, ...orchard.store];
  const drafts = trees.map((tree) => draftOf(tree, season, soils, orchard));
  const notices: Notice[] = [];

  // A bag in the shed that runs out under the whole need is set aside, one at a time, and the rest planned again.
  for (;;) {
    const chosen = drafts.map((d) => feedsOf(d, season, bags, system));
    const rounded = roundFeeds(chosen.flat(), system);
    const used = new Map<Bag, number>();
    for (const feed of rounded) used.set(feed.bag, (used.get(feed.bag) ?? 0) + feed.g * feed.draft.facts.tree.count);
    const empty = [...used].find(([bag, g]) => bag.left !== null && g > bag.left * (1 + 1e-9));
    if (empty) {
      bags = bags.filter((b) => b !== empty[0]);
      notices.push(notice('shed-not-enough', 'note', { bag: empty[0].label }));
      continue;
    }
    const plans = drafts.map((d) => finished(d, rounded.filter((f) => f.draft === d)));
    return {
      orchard, season, zones, trees: plans, days: daysOf(plans), buy: purchasesOf(used),
      notices: [...notices, ...noticesOf(plans, season, orchard)],
      questions: plans.flatMap((p) => p.need.questions),
    };
  }
}

type Draft = { readonly facts: Facts; readonly need: Need; readonly ph: PhVerdict | null };
type DraftFeed = { readonly draft: Draft; readonly portion: Portion; readonly planned: Figure<'g', 'product'>; readonly most: number; readonly window: Window; readonly ring: Ring | null };
type RoundedFeed = Feed & { readonly draft: Draft };

function draftOf(tree: Tree, season: Season, soils: ReadonlyMap<string, Soil>, orchard: Orchard): Draft {
  const years = tree.planted ? season.year - tree.planted.year : null;
  const zone = tree.zone ?? (soils.size === 1 ? [...soils.keys()][0] : undefined);
  const soil = tree.tub === undefined && zone !== undefined ? soils.get(zone) ?? null : null;
  const facts: Facts = { tree, season: season.year, years, young: isYoung(tree, years), crown: crownOf(tree, years), soil, where: orchard.where };
  const ph = soil?.rated.find((r) => r.reading.item === 'ph')?.reading.value;
  return { facts, need: needOf(facts), ph: ph == null ? null : phVerdict(tree.crop, ph) };
}

/** The doses of one plant: which bag, how much, in which window, on which ring. */
function feedsOf(draft: Draft, season: Season, bags: readonly Bag[], orchardUnits: 'us' | 'metric'): DraftFeed[] {
  const { facts, need } = draft;
  if (need.verdict !== 'feed') return [];
  const { tree } = facts;
  const sandy = facts.soil?.heaviness === 'light';
  const windows = windowsOf(season, 6, { sandy, evergreen: EVERGREEN.includes(tree.crop) });
  if (windows.length === 0) return [];
  const inTub = tree.tub !== undefined;
  const wants: Amounts = { N: need.N.value, P2O5: need.P2O5.value, K2O: need.K2O.value };
  // All products of a plant go on one ring: the one its nitrogen needs.
  let shared: Ring | null = null;
  return choose(wants, bags, tree.crop, inTub).flatMap((portion) => {
    const share = portion.bag.grade.N;
    const n = portion.g * share;
    const quick = n > 0 && !portion.bag.slow && !inTub;
    const plain: Spread = { doses: 1, ring: shared ?? ringOf(tree, facts.crown), n, cut: false, mostPerDose: Infinity };
    const how = quick ? spread(n, need.nitrogen.doses || 1, windows.length, (s) => ringOf(tree, facts.crown, s)) : plain;
    shared ??= how.ring;
    // Potash on sand goes in halves, unless half would be too little to weigh.
    const halves = !quick && portion.serves === 'K2O' && sandy && portion.g / 2 >= stepOf(orchardUnits);
    const doses = halves ? Math.min(2, windows.length) : how.doses;
    const g = (how.cut && share > 0 ? how.n / share : portion.g) / doses;
    const most = share > 0 ? Math.min(how.mostPerDose, need.nitrogen.cap / doses) / share : Infinity;
    const from: Figure[] = [need[portion.serves], ...(inTub ? [] : [how.ring.area])];
    return windows.slice(0, doses).map((window): DraftFeed => ({
      draft, portion, window, most, ring: inTub ? null : how.ring,
      planned: figure(g, 'g', 'product', how.cut ? 'dose-cut' : doses > 1 ? 'dose-split' : 'dose', { source: 'definition', at: `grade ${portion.bag.printed}`, mark: 'derived' }, from),
    }));
  });
}

/** Rounds the doses of each product together, so that the orchard's total stays true. */
function roundFeeds(feeds: readonly DraftFeed[], system: 'us' | 'metric'): RoundedFeed[] {
  const groups = new Map<string, DraftFeed[]>();
  const bagsSeen: Bag[] = [];
  for (const feed of feeds) {
    if (!bagsSeen.includes(feed.portion.bag)) bagsSeen.push(feed.portion.bag);
    const key = `${bagsSeen.indexOf(feed.portion.bag)} ${feed.portion.serves}`;
    groups.set(key, [...(groups.get(key) ?? []), feed]);
  }
  const grams = new Map<DraftFeed, number>();
  for (const group of groups.values()) {
    const rounded = roundTogether(group.map((f) => ({ g: f.planned.value, most: f.most, count: f.draft.facts.tree.count, share: f.portion.bag.grade[f.portion.serves] })), system);
    group.forEach((f, i) => grams.set(f, rounded[i]!));
  }
  return feeds.filter((f) => grams.get(f)! > 0).map((f) => {
    const g = grams.get(f)!;
    return { draft: f.draft, bag: f.portion.bag, serves: f.portion.serves, g, planned: f.planned, mL: volumeOf(g, f.portion.bag.material), window: f.window, ring: f.ring };
  });
}

function finished(draft: Draft, feeds: readonly RoundedFeed[]): TreePlan {
  const { facts, need, ph } = draft;
  const each = (of: (n: Nutrient) => number): Amounts => ({ N: of('N'), P2O5: of('P2O5'), K2O: of('K2O') });
  const supplied = each((n) => feeds.reduce((sum, f) => sum + f.g * f.bag.grade[n], 0));
  const over = each((n) => Math.max(0, supplied[n] - need[n].value));
  const short = each((n) => Math.max(0, need[n].value - supplied[n]));
  const ring = facts.tree.tub === undefined ? feeds[0]?.ring ?? ringOf(facts.tree, facts.crown) : null;
  return { tree: facts.tree, facts, need, ring, feeds: feeds.map(({ draft: _, ...feed }) => feed), supplied, over, short, ph };
}

/** Windows are done on one day only where they leave a week to choose from. */
const SHARED_DAYS = 6;
const overlap = (a: { from: Day; until: Day }, b: { from: Day; until: Day }): number => daysBetween(a.from > b.from ? a.from : b.from, a.until < b.until ? a.until : b.until);

/** Few working days: feeds whose windows overlap are done on one day, in walking order. */
function daysOf(plans: readonly TreePlan[]): WorkingDay[] {
  const doses = plans.flatMap((plan) => plan.feeds.map((feed) => ({ plan, feed })));
  const sorted = [...doses].sort((a, b) => (a.feed.window.from < b.feed.window.from ? -1 : a.feed.window.from > b.feed.window.from ? 1 : 0));
  const days: { from: Day; until: Day; doses: typeof doses }[] = [];
  for (const dose of sorted) {
    const { from, until } = dose.feed.window;
    const open = days.find((d) => overlap(d, dose.feed.window) >= SHARED_DAYS && !d.doses.some((x) => x.plan === dose.plan && x.feed.window !== dose.feed.window && x.feed.serves === dose.feed.serves));
    if (open) {
      open.from = open.from > from ? open.from : from;
      open.until = open.until < until ? open.until : until;
      open.doses.push(dose);
    } else days.push({ from, until, doses: [dose] });
  }
  const walking = new Map(plans.map((p, i) => [p, i]));
  return days.map((d) => ({ ...d, doses: d.doses.sort((a, b) => walking.get(a.plan)! - walking.get(b.plan)!) }));
}

/** One notice for all trees of one pH and one wish. */
function phNotices(plans: readonly TreePlan[]): Notice[] {
  const groups = new Map<string, { code: 'ph-low' | 'ph-high'; ph: PhVerdict; trees: string[] }>();
  for (const { ph, tree } of plans) {
    if (!ph || ph.verdict === 'leave') continue;
    const key = `${ph.now} ${ph.low} ${ph.high}`;
    const group = groups.get(key) ?? { code: ph.verdict === 'too-low' ? 'ph-low' : 'ph-high', ph, trees: [] };
    group.trees.push(tree.name);
    groups.set(key, group);
  }
  return [...groups.values()].map(({ code, ph, trees }) => notice(code, 'warning', { tree: trees.join(', '), now: ph.now, low: ph.low, high: ph.high }));
}

/** A shortfall or surplus under this share of the need is rounding. */
const ROUNDING = 0.08;

function noticesOf(plans: readonly TreePlan[], season: Season, orchard: Orchard): Notice[] {
  const notices: Notice[] = [];
  const fed = plans.filter((p) => p.need.verdict === 'feed');
  if (fed.length > 0 && orchard.shed.length + orchard.store.length === 0) notices.push(notice('no-bags', 'warning'));
  for (const assumed of season.assumed) notices.push(notice(assumed === 'bud-break' ? 'bud-break-assumed' : 'first-frost-assumed', 'note'));
  for (const plan of plans) {
    const { tree, need, short, over } = plan;
    const name = tree.name;
    for (const stop of need.stops) notices.push(notice(`stop-${stop.id}`, 'warning', { tree: name, word: tree.word, ...(stop.value === undefined ? {} : { value: Math.round(stop.value * 100) / 100 }) }));
    if (need.verdict !== 'feed') continue;
    const cut = plan.feeds.some((f) => f.planned.step === 'dose-cut');
    for (const n of NUTRIENTS) {
      if (!(cut && n === 'N') && short[n] > ROUNDING * need[n].value && short[n] > OUNCE / 20) notices.push(notice('short', 'warning', { tree: name, nutrient: n, g: Math.round(short[n] * 10) / 10 }));
      if (n !== 'N' && over[n] > ROUNDING * need[n].value && over[n] > 1) notices.push(notice('over', need[n].value === 0 ? 'warning' : 'note', { tree: name, nutrient: n, g: Math.round(over[n] * 10) / 10 }));
    }
    if (cut) notices.push(notice('dose-cut', 'warning', { tree: name }));
    const chloride = CHLORIDE_SENSITIVE.includes(tree.crop) ? plan.feeds.find((f) => f.bag.chloride) : undefined;
    if (chloride) notices.push(notice('chloride', 'warning', { tree: name, bag: chloride.bag.label, word: tree.word }));
    if (need.nitrogen.organicHalf) notices.push(notice('organic-half', 'note', { tree: name }));
    if (tree.shoots && tree.shoots.year === undefined) notices.push(notice('fact-last-season', 'note', { tree: name, year: season.year - 1 }));
    if (tree.shoots && growthOf(plan.facts) === null) notices.push(notice('growth-old', 'note', { tree: name, year: tree.shoots.year ?? 0 }));
    if (plan.facts.soil === null && tree.tub === undefined) notices.push(notice('no-soil', 'note', { tree: name }));
    if (plan.feeds.some((f) => f.serves === 'P2O5')) notices.push(notice('phosphate-slow', 'note', { tree: name }));
  }
  return [...notices, ...phNotices(plans)];
}
