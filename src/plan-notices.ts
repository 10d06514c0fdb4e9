/** What a plan has to say beside its doses, and what it asks of a zone's soil. */
import type { Plant, Share } from './bags/allot.ts';
import { isSameProduct } from './bags/buy.ts';
import { mayFeed } from './bags/choose.ts';
import { ROUNDING } from './bags/round.ts';
import type { ZoneSoil } from './gather.ts';
import { advised, counted, isFollowed } from './need/advice.ts';
import { isMuchCompost } from './need/credits.ts';
import { groundOf, growthOf } from './need/facts.ts';
import type { Lead } from './need/lead.ts';
import { kinOf } from './need/rules.ts';
import type { Stop } from './need/stops.ts';
import { tubRate } from './need/tub.ts';
import type { Bag } from './orchard/bag.ts';
import { isBanned } from './orchard/bans.ts';
import type { Orchard } from './orchard/load.ts';
import type { Tree } from './orchard/tree.ts';
import { acidityNotices, labLimeLeft, limeElsewhere, limeNotices, phNotices, twoWants, withoutRange } from './ph-notices.ts';
import type { Plan, TreePlan } from './planned.ts';
import type { Notice } from './reason/notice.ts';
import { notice } from './reason/notice.ts';
import { COMPOST_MOST } from './tables/credits.ts';
import { CHLORIDE_SENSITIVE } from './tables/crops.ts';
import type { Item } from './tables/items.ts';
import { DOSE_REFUSED } from './tables/limits.ts';
import type { Target } from './tables/ratings.ts';
import { sourceOf } from './tables/sources.ts';
import { WATER_UNDOES } from './tables/sulphur.ts';
import type { Day } from './units/date.ts';
import { addDays, daysBetween } from './units/date.ts';
import type { Nutrient } from './units/substance.ts';
import { CACO3_PER_SULPHUR, NUTRIENTS } from './units/substance.ts';
import { convert, FOOT, OUNCE } from './units/units.ts';
import type { Season } from './when/season.ts';
import { SHORTEST } from './when/season.ts';
import { APART } from './when/windows.ts';
import { showDay, showGround, showMass, showNutrient } from './words/show.ts';
import type { Language } from './words/words.ts';
import { numeral, say } from './words/words.ts';

/** Why a nutrient stays short: the ring holds no more, the season is too far on, a tub takes coated feed alone, what may hold chloride is kept from what takes it badly, or no bag brings it. */
export function shortReason({ tree, need, feeds, fed, dilute, tooLittle, last }: TreePlan, n: Nutrient, { orchard, season }: Pick<Plan, 'orchard' | 'season'>): 'short' | 'short-ring' | 'short-tub' | 'short-chloride' | 'short-late' | 'short-weeks' | 'short-half' | 'short-date' | 'short-limit' | 'short-kept' | 'short-small' {
  const isStep = (step: string): boolean => n === 'N' && feeds.some((f) => f.planned.step === step);
  if (isStep('dose-cut')) return 'short-ring';
  if (isStep('dose-late')) return 'short-late';
  if (isStep('dose-half')) return 'short-half';
  if (n === 'N' && last.printed && last.day < season.today) return 'short-date';
  // After the last feed there is no time for another.
  const latest = fed.map((f) => f.date).sort().at(-1);
  if (n === 'N' && tree.tub === undefined && feeds.length === 0 && latest !== undefined && daysBetween([season.today, addDays(latest, APART)].sort().at(-1)!, last.day) < SHORTEST) return 'short-late';
  if (dilute) return dilute.bag.grade[n] > 0 ? 'short-weeks' : 'short';
  if (tree.tub !== undefined && feeds.length === 0) return tooLittle ? 'short-weeks' : 'short-tub';
  const withheld = n === 'K2O' && CHLORIDE_SENSITIVE.includes(tree.crop) && [...orchard.shed, ...orchard.store].some((b) => b.chloride && b.grade.N === 0 && b.grade.K2O > 0);
  if (fittingBag({ tree, need }, n, orchard)) return 'short-small';
  if (withheld) return 'short-chloride';
  return limitOf({ tree, need }, n, orchard) ? 'short-limit' : keptBag(tree, n, orchard) ? 'short-kept' : 'short';
}

const listed = ({ shed, store }: Orchard): Bag[] => [...shed, ...store].filter((b) => !b.amends);

/** Of the bags that this plant may have and that bring the nutrient, the one that brings least of what there would be too much of, and what that is. */
function limitOf({ tree, need }: Needing, n: Nutrient, orchard: Orchard): { bag: Bag; limit: Nutrient } | null {
  const passing = listed(orchard).flatMap((bag) => {
    const limit = bag.grade[n] > 0 && mayFeed(bag, tree, orchard.never) ? passedBy(bag, n, need) : undefined;
    return limit === undefined ? [] : [{ bag, limit }];
  });
  const share = ({ bag, limit }: (typeof passing)[number]): number => bag.grade[limit] / bag.grade[n];
  return passing.reduce<(typeof passing)[number] | null>((least, one) => (least && share(least) <= share(one) ? least : one), null);
}

type Needing = Pick<TreePlan, 'tree' | 'need'>;
const passedBy = (b: Bag, n: Nutrient, need: Needing['need']): Nutrient | undefined => NUTRIENTS.find((m) => m !== n && b.grade[m] > 0 && (m === 'N' ? need.N.value * b.grade[n] < need[n].value * b.grade.N : need[m].value === 0));

/** One that would do: so little is short that it is not worth buying. */
const fittingBag = ({ tree, need }: Needing, n: Nutrient, orchard: Orchard): Bag | undefined => (n === 'N' ? undefined : listed(orchard).find((b) => b.left === null && b.grade[n] > 0 && mayFeed(b, tree, orchard.never) && passedBy(b, n, need) === undefined));

/** A bag that brings the nutrient but is kept from this plant. */
const keptBag = (tree: Tree, n: Nutrient, orchard: Orchard): Bag | null => listed(orchard).find((b) => b.grade[n] > 0 && !mayFeed(b, tree, orchard.never)) ?? null;

/** Names for the reason: the bag, and what it would pass or why it is kept away. */
function shortFacts(plan: TreePlan, n: Nutrient, code: ReturnType<typeof shortReason>, orchard: Orchard): Record<string, string> {
  const { language } = orchard.where;
  const limit = code === 'short-limit' ? limitOf(plan, n, orchard) : null;
  if (limit) return { bag: limit.bag.label, limit: say(language, 'none', `limit-${limit.limit}`) };
  const bag = code === 'short-kept' ? keptBag(plan.tree, n, orchard) : null;
  return bag ? { bag: bag.label, why: say(language, 'none', bag.weedKiller ? 'kept-weed-killer' : isBanned(bag, orchard.never) ? 'kept-banned' : plan.tree.tub !== undefined ? 'kept-tub' : bag.liquid ? 'kept-liquid' : bag.chloride && bag.grade.N === 0 ? 'kept-chloride' : 'kept-nitrate') } : {};
}

/** The last days that places print for their crops, each with its plants. */
export function printedStops(plan: Plan): { readonly day: Day; readonly trees: string }[] {
  const mine = plan.trees.filter((t) => t.last.printed && t.tree.tub === undefined && t.need.N.value > 0);
  return [...new Set(mine.map((t) => t.last.day))].map((day) => ({ day, trees: mine.filter((t) => t.last.day === day).map((t) => t.tree.name).join(', ') }));
}

/** More than a rounded dose leaves. */
export const isShort = ({ short, need }: TreePlan, n: Nutrient): boolean => short[n] > ROUNDING * need[n].value && short[n] > OUNCE / 10;

/** What the report prints of a converted conductivity, dS/m. */
const printedOf = ({ from: [printed], value }: NonNullable<Stop['from']>): number => Math.round((printed?.value ?? value) * 100) / 100;

export function noticesOf(plans: readonly TreePlan[], zones: readonly ZoneSoil[], season: Season, orchard: Orchard): Notice[] {
  const { language, units } = orchard.where;
  const notices: Notice[] = [];
  const fed = plans.filter((p) => p.need.verdict === 'feed');
  if (fed.length > 0 && orchard.shed.length + orchard.store.length === 0) notices.push(notice('no-bags', 'warning'));
  for (const assumed of season.assumed) notices.push(notice(assumed === 'bud-break' ? 'bud-break-assumed' : 'first-frost-assumed', 'note'));
  for (const plan of plans) {
    const { tree, need, short, over } = plan;
    const name = tree.name;
    for (const stop of need.stops) notices.push(notice(`stop-${stop.id}`, 'warning', { tree: name, word: tree.word, ...(stop.id === 'no-figures' ? { kin: kinOf(tree.word) ?? '' } : {}), ...(stop.value === undefined ? {} : { value: Math.round(stop.value * 100) / 100 }), ...(stop.from ? { diluted: printedOf(stop.from) } : {}) }));
    if (tree.fedAs !== undefined && tree.fedAs !== tree.crop) notices.push(notice('fed-as', 'note', { tree: name, word: tree.word, kin: tree.fedAs }));
    notices.push(...overfed(plan, orchard), ...compostNotices(plan, orchard), ...carriedNotices(plan, orchard));
    if (need.verdict !== 'feed') continue;
    const cut = plan.feeds.some((f) => f.planned.step === 'dose-cut');
    for (const n of NUTRIENTS) {
      // An unfed tub says so once.
      if (n !== 'N' && tree.tub !== undefined && plan.feeds.length === 0) continue;
      if (isShort(plan, n)) {
        const code = shortReason(plan, n, { orchard, season });
        if (code !== 'short-ring') notices.push(notice(code, 'warning', { tree: name, word: tree.word, nutrient: n, amount: showNutrient(short[n], units, language), ...shortFacts(plan, n, code, orchard), ...(code === 'short-date' ? { day: showDay(plan.last.day, orchard.where.language), source: sourceOf(plan.last.why.cite.source)?.publisher ?? '' } : {}) }));
      }
      if (n !== 'N' && over[n] > ROUNDING * need[n].value && over[n] > (need[n].value > 0 ? OUNCE / 10 : 1)) notices.push(notice('over', need[n].value === 0 ? 'warning' : 'note', { tree: name, nutrient: n, amount: showNutrient(over[n], units, language) }));
    }
    const { area, share } = plan.facts.crown;
    if (share && tree.across !== undefined && Math.abs(share.value - area.value) > AREAS_DIFFER * Math.max(share.value, area.value)) notices.push(notice('area-two-ways', 'note', { tree: name, crown: showGround(area.value, units, language), share: showGround(share.value, units, language) }));
    if (plan.fed.some((f) => f.brought === null)) notices.push(notice('fed-unknown', 'note', { tree: name }));
    if (cut) notices.push(notice('dose-cut', 'warning', { tree: name }));
    const chloride = CHLORIDE_SENSITIVE.includes(tree.crop) ? plan.feeds.find((f) => f.bag.chloride) : undefined;
    if (chloride) notices.push(notice('chloride', 'warning', { tree: name, bag: chloride.bag.label, word: tree.word }));
    if (need.nitrogen.half) notices.push(notice(`${need.nitrogen.half}-half`, 'note', { tree: name }));
    if (tree.shoots && tree.shoots.year === undefined) notices.push(notice('fact-last-season', 'note', { tree: name, year: season.year - 1 }));
    if (tree.shoots && growthOf(plan.facts) === null) notices.push(notice('growth-old', 'note', { tree: name, year: tree.shoots.year ?? 0 }));
    if (plan.facts.soil === null && tree.tub === undefined) notices.push(notice('no-soil', 'note', { tree: name }));
    if (plan.feeds.some((f) => f.serves === 'P2O5')) notices.push(notice('phosphate-slow', 'note', { tree: name }));
  }
  return [...notices, ...waterNotices(plans, orchard), ...leadNotices(plans, orchard), ...zones.flatMap((z) => adviceNotices(z, plans, orchard)), ...zones.flatMap((z) => zoneNotices(z, plans, orchard)), ...limeNotices(plans, zones, orchard), ...acidityNotices(plans, orchard), ...phNotices(plans), ...zones.flatMap((z) => [...withoutRange(plans, z, zones), ...labLimeLeft(plans, z, orchard), ...limeElsewhere(plans, z, orchard), ...twoWants(plans, z)])];
}

/** A feed of the diary that was more than the ground takes at once, else more than the year's need. */
function overfed({ tree, facts, need, fed, over, mostPlanned }: TreePlan, orchard: Orchard): Notice[] {
  // What the plan itself gave at once, on a ring as wide as it said, is no burn.
  const most = Math.max(mostPlanned, tree.tub === undefined ? convert(DOSE_REFUSED.value, DOSE_REFUSED.unit, 'g/m2') * groundOf(facts).value : tree.tub * tubRate(facts.crop).gPerL);
  const days = [...new Set(fed.map((f) => f.date))].map((date) => ({ date, n: fed.filter((f) => f.date === date).reduce((sum, f) => sum + (f.brought?.N ?? 0), 0) }));
  const worst = days.reduce<(typeof days)[number] | null>((a, b) => (a && a.n >= b.n ? a : b), null);
  const { language, units } = orchard.where;
  if (worst && worst.n > most * (1 + ROUNDING)) return [notice('fed-burn', 'warning', { tree: tree.name, day: showDay(worst.date, language), amount: showNutrient(worst.n, units, language), most: showNutrient(most, units, language) })];
  return fed.length > 0 && over.N > ROUNDING * need.N.value && over.N > 1 ? [notice('fed-over', 'warning', { tree: tree.name })] : [];
}

/** What alkaline water brings, told where something wants acid soil or the pH is to come down. An inch, or 25 mm, is a good watering. */
function waterNotices(plans: readonly TreePlan[], { water, where }: Orchard): Notice[] {
  const acid = plans.filter((p) => p.tree.crop === 'blueberry');
  if (!water || water.mgPerL === 0 || (acid.length === 0 && !plans.some((p) => p.ph?.plan.verdict === 'sulphur' || p.ph?.plan.verdict === 'cannot'))) return [];
  const us = where.units === 'us';
  // A millimetre on a square metre is a litre.
  const grams = ((us ? 25.4 : 25) * water.mgPerL) / 1000 * (us ? 100 * FOOT * FOOT : 10);
  const amount = (g: number): string => showMass(g, where.units, where.language);
  const sulphured = plans.filter((p) => p.ph?.plan.verdict === 'sulphur' && p.ph.g > 0);
  const pure = Math.max(0, ...sulphured.map((p) => p.ph!.plan.dose!.value * (p.ph!.bag?.amends.strength ?? 1)));
  const times = Math.round((pure * CACO3_PER_SULPHUR) / ((us ? 25.4 : 25) * water.mgPerL / 1000));
  const undone = sulphured.length > 0 && water.mgPerL > WATER_UNDOES.mgPerL ? [notice('ph-water-undoes', 'warning', { tree: sulphured.map((p) => p.tree.name).join(', '), mgPerL: Math.round(water.mgPerL), most: WATER_UNDOES.mgPerL, times, depth: us ? 'an inch' : '25 mm' })] : [];
  return [...undone, notice('water-limes', 'warning', { amount: amount(grams), area: us ? '100 sq ft' : '10 m²', depth: us ? 'inch' : '25 mm', share: amount(grams / CACO3_PER_SULPHUR), trees: acid.map((p) => p.tree.name).join(', ') })];
}

/** Compost whose amount nobody told is not counted; too much of it is told. */
function compostNotices({ tree, facts }: TreePlan, orchard: Orchard): Notice[] {
  if (tree.tub !== undefined) return [];
  if (isMuchCompost(facts)) {
    const volume = (litres: number): string => (orchard.where.units === 'us' ? `${Math.round(convert(litres, 'L', 'gal'))} gal` : `${Math.round(litres)} L`);
    return [notice('compost-much', 'warning', { tree: tree.name, volume: volume(tree.composted!), most: volume(COMPOST_MOST.litresPerM2 * groundOf(facts).value) })];
  }
  return tree.flags.includes('compost') && tree.composted === undefined ? [notice('compost-untold', 'note', { tree: tree.name })] : [];
}

/** What meals, manures and composts of earlier seasons still set free, where a need was there that it is taken off. */
function carriedNotices({ tree, need }: TreePlan, orchard: Orchard): Notice[] {
  const { language, units } = orchard.where;
  const earlier = tree.tub === undefined && need.verdict !== 'wait' ? tree.carried ?? [] : [];
  const named = (list: typeof earlier): string => list.map((c) => say(language, 'plan', 'bag-of-day', { bag: c.bag, day: showDay(c.date, language, true) })).join(', ');
  const [weighed, unweighed] = [earlier.filter((c) => c.n !== null), earlier.filter((c) => c.n === null)];
  return [
    ...((need.nitrogen.carried ?? 0) > 0 ? [notice('carried-nitrogen', 'note', { tree: tree.name, list: named(weighed), amount: showNutrient(need.nitrogen.carried!, units, language) })] : []),
    ...(unweighed.length > 0 && (need.N.value > 0 || need.nitrogen.carried !== undefined) ? [notice('carried-unweighed', 'note', { tree: tree.name, list: named(unweighed) })] : []),
  ];
}

/** Crown and share of the spacing are both told where they differ by more than a fifth. */
const AREAS_DIFFER = 0.2;

/** Whose figures lead where the grower's own state prints none; a publisher once for all crops that it leads. */
function leadNotices(plans: readonly TreePlan[], { where }: Orchard): Notice[] {
  const ledFrom = (why: Lead['why']): Map<string, string> => {
    const crops = new Map<string, Set<string>>();
    for (const { need: { nitrogen: { lead } }, tree } of plans) {
      if (lead?.why !== why) continue;
      const publisher = sourceOf(lead.rule.source)?.publisher ?? lead.rule.source;
      crops.set(publisher, (crops.get(publisher) ?? new Set()).add(tree.word));
    }
    return new Map([...crops].map(([publisher, words]) => [publisher, [...words].join(', ')]));
  };
  const orchards = [...new Set(plans.filter((p) => p.need.nitrogen.lead?.rule.label === 'orchard').map((p) => p.tree.word))];
  const rates = orchards.length > 0 ? [notice('lead-orchard', 'warning', { crops: orchards.join(', ') })] : [];
  const far = where.country === null ? [] : [...ledFrom('default')];
  const elsewhere = far.length > 0 ? [notice('lead-default', 'note', { where: where.text, list: far.map(([publisher, crops]) => `${crops} (${publisher})`).join('; ') })] : [];
  return [...rates, ...elsewhere, ...[...ledFrom('near')].map(([source, crops]) => notice('lead-near', 'note', { where: where.text, crops, source }))];
}

/** Epsom salts are MgSO4 with seven waters: 16.35 % MgO by their formula. */
const EPSOM_MGO = 40.304 / 246.47;

const MINOR: readonly Item[] = ['boron', 'zinc', 'manganese', 'copper', 'iron'];

/** What a zone is short of that no bag of feed brings. */
function zoneNotices({ zone, soil }: ZoneSoil, plans: readonly TreePlan[], orchard: Orchard): Notice[] {
  const mine = plans.filter((p) => p.tree.zone === zone || (p.tree.zone === undefined && p.facts.soil === soil));
  const short = (target: Target | null): boolean => target === 'below' || target === 'far-below';
  const magnesium = mine.find((p) => p.need.MgO && p.need.MgO.value > 0 && short(soil.rated.find((r) => r.reading.item === 'magnesium')?.target ?? null));
  const limed = mine.some((p) => p.ph?.plan.verdict === 'lime' && (p.ph.bag?.amends.dolomitic ?? false));
  const { language, units } = orchard.where;
  const us = units === 'us';
  const ground = us ? 100 * FOOT * FOOT : 10;
  const grams = magnesium ? (magnesium.need.MgO!.value / groundOf(magnesium.facts).value) * ground : 0;
  const minors = MINOR.filter((item) => short(soil.rated.find((r) => r.reading.item === item)?.target ?? null));
  return [
    ...(magnesium ? [notice('magnesium-short', 'note', { zone, amount: showMass(grams, units, language), area: us ? '100 sq ft' : '10 m²', epsom: limed ? '' : showMass(grams / EPSOM_MGO, units, language), lime: limed ? 'yes' : '' })] : []),
    ...unratedNotices(zone, soil, mine, language),
    ...(minors.length > 0 ? [notice('minor-short', 'note', { zone, items: minors.map((m) => say(language, 'item', m)).join(', ') })] : []),
  ];
}

/** Phosphorus and potassium that the lab measured by a method without a scale: nothing is given for them, and silence would look like plenty. */
function unratedNotices(zone: string, { rated }: ZoneSoil['soil'], mine: readonly TreePlan[], language: Language): Notice[] {
  const lost = (['phosphorus', 'potassium'] as const).map((item) => rated.filter((r) => r.reading.item === item)).filter((all) => all.some((r) => r.mgPerKg !== null && r.reading.method !== null) && all.every((r) => r.target === null));
  if (lost.length === 0 || !mine.some((p) => p.tree.tub === undefined)) return [];
  return [notice('soil-unrated', 'warning', { zone, items: lost.map(([r]) => say(language, 'item', r!.reading.item)).join(', '), example: lost[0]![0]!.reading.asPrinted })];
}

/** The lab's own recommendation: followed, refused for a tree, or told beside the plan for the first tree that is fed. */
function adviceNotices(zone: ZoneSoil, plans: readonly TreePlan[], orchard: Orchard): Notice[] {
  const { language, units } = orchard.where;
  const mine = plans.filter((p) => p.facts.advice === zone.advice && p.tree.tub === undefined && p.facts.bed === undefined);
  const lab = (p: TreePlan): number => advised(p.facts, 'N')?.value ?? 0;
  if (zone.advice.length === 0 && zone.byLab) return [notice('advice-none', 'warning', { zone: zone.zone })];
  if (zone.advice.length === 0 || mine.length === 0) return [];
  if (zone.byLab) {
    const refused = mine.filter((p) => !isFollowed(p.facts) && p.facts.years !== 0);
    return [
      ...(mine.some((p) => isFollowed(p.facts)) ? [notice('advice-followed', 'note', { zone: zone.zone })] : []),
      ...refused.map((p) => notice('advice-refused', 'warning', { tree: p.tree.name, lab: showNutrient(lab(p), units, language), limit: `${DOSE_REFUSED.value} ${DOSE_REFUSED.unit}` })),
    ];
  }
  const first = mine.find((p) => p.need.N.value > 0) ?? mine[0]!;
  const file = orchard.zones.find((z) => z.name === zone.zone);
  if (!zone.advice.some((a) => a.of === 'N')) return [];
  const list = counted(zone.advice).map((a) => `${numeral(Number(a.value.toPrecision(3)), language)} ${a.unit} ${a.of}`).join(', ');
  return [notice('advice-beside', 'note', { zone: zone.zone, list, tree: first.tree.name, lab: showNutrient(lab(first), units, language), ours: showNutrient(first.need.N.value, units, language), file: file ? [file.file, ...(file.sample === null ? [] : [file.sample])].join(', ') : '' })];
}

/** What is used up in the shed before every plant that could take it has had its share. */
export function shedRunsOut(plants: readonly Plant[], shares: readonly (readonly Share[])[], names: readonly string[], shed: readonly Bag[]): Notice[] {
  const brings = (b: Bag): string => NUTRIENTS.filter((n) => b.grade[n] > 0).join();
  return shed.flatMap((bag) => {
    const ofBag = (b: Bag): boolean => b === bag || isSameProduct(b, bag);
    const mine = shed.filter(ofBag);
    // Two bags of one product are one stock.
    if (mine[0] !== bag) return [];
    const left = mine.reduce((sum, b) => sum + (b.left ?? Infinity), 0);
    const used = shares.reduce((sum, all, i) => sum + plants[i]!.count * all.filter((s) => ofBag(s.bag)).reduce((g, s) => g + s.g, 0), 0);
    if (used < left - 1) return [];
    const lacking = names.filter((_, i) => plants[i]!.usable.includes(bag) && shares[i]!.some((s) => !(ofBag(s.bag) && used <= left + 1) && brings(s.bag) === brings(bag)));
    return lacking.length === 0 ? [] : [notice('shed-runs-out', 'note', { bag: bag.label, trees: lacking.join(', ') })];
  });
}
