/** The plan → the view of the sheet: by working day in walking order; zero is printed, never left out. */
import type { Dilute } from '../bags/dilute.ts';
import type { Feed } from '../bags/doses.ts';
import { volumeOf } from '../bags/round.ts';
import type { Bag } from '../orchard/bag.ts';
import { bagName } from '../orchard/bag.ts';
import { hazardNotice, hazardsOf, mixingFaults, mixingNotice } from '../orchard/mixing.ts';
import { phSentence, plantingDepth } from '../ph/ph.ts';
import { isShort, printedStops, shortReason } from '../plan-notices.ts';
import type { Plan, TreePlan } from '../plan.ts';
import { weighedOut } from '../planned.ts';
import { isWeak } from '../reason/figure.ts';
import { retestYear, yearTold } from '../when/season.ts';
import type { Day } from '../units/date.ts';
import { addDays } from '../units/date.ts';
import { EVERGREEN } from '../tables/crops.ts';
import { STEP } from '../tables/limits.ts';
import { LIME_TIME } from '../tables/lime.ts';
import { NUTRIENTS } from '../units/substance.ts';
import { OUNCE } from '../units/units.ts';
import { showDay, showDose, showGround, showLength, showMass, showMonth, showNutrient, showPh, showPrice, showShort, showSpan, showVolume, showWater, showWindow } from '../words/show.ts';
import type { Language } from '../words/words.ts';
import { ownMarks, say } from '../words/words.ts';
import { curvesOf } from './curves.ts';
import { drawBalance, drawRing, drawStrip } from './drawings.ts';
import type { Row, View } from './view.ts';

export type SheetOptions = { readonly paper: 'a4' | 'letter'; readonly large: boolean };
type Words = (key: Parameters<typeof say<'sheet'>>[2], facts?: Readonly<Record<string, string | number>>) => string;

export function sheetView(plan: Plan, options: SheetOptions): View {
  const { language, units: system } = plan.orchard.where;
  const w: Words = (key, facts) => say(language, 'sheet', key, facts);
  const products = [...new Set(usedBags(plan).map(bagName))];
  const tests = plan.zones.flatMap((z) => z.sample.taken ?? []).sort();
  const idleTrees = plan.trees.filter((t) => t.feeds.length === 0);
  const days = plan.days.map((day, i) => {
    const rows = plan.trees.flatMap((t) => {
      const mine = day.doses.filter((x) => x.plan === t).map((x) => x.feed);
      return mine.length > 0 || (i === 0 && idleTrees.includes(t)) ? [rowOf(plan, t, mine, day.number, products.length > 1, w)] : [];
    });
    const amounts = [...weighedOut(day)].map(([label, g]) => (products.length > 1 ? `${showDose(g, system, language)} ${label}` : showDose(g, system, language))).join(', ');
    const window = showWindow(day.from, day.until, language);
    return {
      title: w('day', { n: day.number }),
      when: w('when', { window, phase: day.phase ? say(language, 'phase', day.phase) : '' }),
      weigh: w('weigh', { amounts }), rows, done: w('done'), weighs: w('bag-weighs'),
    };
  });
  return {
    language, paper: options.paper, large: options.large, orchard: (plan.orchard.name || say(language, 'plan', 'title-unnamed', { year: '' })).toUpperCase().trim(),
    feeding: w('feeding', { year: plan.season.year }), made: w('made', { day: showDay(plan.season.today, language, true) }), test: tests.length > 0 ? w('test', { day: showMonth(tests.at(-1)!, language) }) : plan.zones.length > 0 ? '' : w('no-test'),
    use: products,
    not: notOf(plan, w), strip: stripOf(plan, w), days,
    idle: days.length === 0 ? plan.trees.map((t) => rowOf(plan, t, [], 0, false, w)) : [],
    stop: stopOf(plan, w), lost: plan.days.length > 1 ? w('lost') : '', how: plan.days.length > 0 ? [w('how-text'), ...(plan.trees.some((t) => (t.feeds[0]?.ring?.to.value ?? 0) > STEP.m) ? [w('how-step', { length: showLength(STEP.m, system, language) })] : [])].join(' ') : '', back: backOf(plan, w),
    words: headings(w),
  };
}

const usedBags = (plan: Plan): Bag[] => [...new Set([...plan.days.flatMap((d) => d.doses.map((x) => x.feed.bag)), ...plan.trees.flatMap((t) => t.dilute?.bag ?? [])])];

const headings = (w: Words): View['words'] => ({
  use: w('use'), not: w('not'), stop: w('stop'), how: w('how'), back: w('back'), overleaf: w('overleaf'), limeSulphur: w('lime-sulphur'), whySoLittle: w('why-so-little'), short: w('short'), assumed: w('assumed'), measure: w('measure'),
  test2: w('test2'), slip: w('slip'), cut: w('cut'), caution: w('caution'), year: w('year'), tick: w('tick'), tree: w('tree'), dose: w('dose'), where: w('where'), fromTrunk: w('from-trunk'),
});

const richZones = (plan: Plan): Plan['zones'] => plan.zones.filter((z) => z.soil.rated.some((r) => r.reading.item === 'phosphorus' && r.target === 'above'));

/** Where the soil has phosphate enough: the listed bags that bring it and are not used; or the truth about one that is. */
function notOf(plan: Plan, w: Words): string[] {
  const rich = richZones(plan);
  const used = new Set(plan.days.flatMap((d) => d.doses.map((x) => x.feed.bag)));
  const unwanted = plan.trees.some((t) => t.need.P2O5.value === 0 && t.feeds.some((f) => f.bag.grade.P2O5 > 0));
  const bags = [...plan.orchard.shed, ...plan.orchard.store].filter((b) => b.grade.P2O5 > 0 && !used.has(b)).map(bagName);
  const zones = rich.length < plan.zones.length || plan.trees.some((t) => t.tree.tub !== undefined) ? rich.map((z) => z.zone).join(', ') : '';
  return [
    ...(rich.length > 0 && plan.days.length > 0 ? [unwanted ? w('not-p-but') : w('not-p', { bags: [...new Set(bags)].join(', '), zones })] : []),
    ...(plan.trees.some((t) => t.tree.flags.includes('fed lawn') || t.tree.flags.includes('grass')) ? [w('not-weed')] : []),
  ];
}

/** One tree on one day: all its doses, and the ring they share. Without a dose: NOTHING or WAIT, and why. */
function rowOf(plan: Plan, t: TreePlan, feeds: readonly Feed[], day: number, several: boolean, w: Words): Row {
  const { language, units: system } = plan.orchard.where;
  const number = String(plan.trees.indexOf(t) + 1);
  const name = t.tree.name.toUpperCase();
  const [first] = feeds;
  if (!first && t.dilute) return waterRow(t, t.dilute, number, name, several, language, system, w);
  if (!first) {
    const amount = t.need.verdict === 'wait' ? w('wait') : w('nothing');
    const where = idleReason(t, language);
    return { number, name, fed: false, doses: [{ amount, plants: '', product: '', only: '', cups: '' }], where, ring: '', lines: column(` x  ${number} ${name}`, amount, where) };
  }
  const { count } = t.tree;
  const overAll = (feed: Feed): boolean => count > 1 && isTiny(feed.g);
  const doses = feeds.map((feed) => ({
    amount: `${showDose(overAll(feed) ? feed.g * count : feed.g, system, language)}${isWeak(t.need[feed.serves]) ? ' †' : ''}${overAll(feed) ? ` ${w('over-all', { count })}` : ''}`,
    plants: count > 1 && !overAll(feed) ? w('each', { count }) : '',
    product: several ? feed.bag.label : '',
    only: feed.serves === 'N' ? conditionOf(plan, t, day, w) : '',
    cups: feed.mL === null ? '' : w('about', { cups: showVolume(overAll(feed) ? feed.mL * count : feed.mL, system, language) }),
  }));
  const { where, plain, ring } = ringOn(t, first, number, system, language, w);
  const lines = doses.flatMap((d, k) => {
    const below = [d.product, d.cups].filter(Boolean).join(', ');
    return [...column(k === 0 ? `[ ] ${number} ${name}` : '', [d.amount, d.plants].filter(Boolean).join(' '), k === 0 ? plain : ''), ...[below, d.only].filter(Boolean).map((text) => `        ${text}`)];
  });
  return { number, name, fed: true, doses, where, ring, lines };
}

/** A tub that is fed in its water. */
function waterRow(t: TreePlan, d: Dilute, number: string, name: string, several: boolean, language: Language, system: 'us' | 'metric', w: Words): Row {
  const mL = volumeOf(d.g.value, d.bag);
  const where = diluteWhere(d, language, system);
  const dose = {
    amount: `${diluteAmount(d, language)} †`, plants: t.tree.count > 1 ? w('each', { count: t.tree.count }) : '', product: several ? d.bag.label : '', only: '',
    cups: mL === null ? '' : w('about', { cups: showVolume(mL, system, language) }),
  };
  return { number, name, fed: true, doses: [dose], where, ring: '', lines: [...column(`[ ] ${number} ${name}`, [dose.amount, dose.plants].filter(Boolean).join(' '), where), ...(dose.product ? [`        ${dose.product}`] : [])] };
}

/** Small weights of a salt for the can are weighed in grams everywhere. */
const diluteAmount = (d: Dilute, language: Language): string => showMass(d.g.value, 'metric', language);
function diluteWhere(d: Dilute, language: Language, system: 'us' | 'metric'): string {
  return say(language, 'sheet', 'in-water', { water: showWater(d.waterL, system, language), from: showDay(d.from, language), until: showDay(d.until, language), n: d.times, often: d.weeks === 1 ? say(language, 'sheet', 'weekly') : say(language, 'sheet', 'every-weeks', { n: d.weeks }) });
}
/** "12 g of 20-20-20 in 9 L of water once a week, 1 April to 15 July (16 times)". */
export const diluteText = (d: Dilute, language: Language, system: 'us' | 'metric'): string => say(language, 'sheet', 'dilute', { amount: diluteAmount(d, language), bag: d.bag.label, where: diluteWhere(d, language, system) });

/** The condition of a nitrogen dose: whole on the tree's first day, shortly on later ones; none once the diary has nitrogen for it. */
export function conditionOf(plan: Plan, t: TreePlan, day: number, w: Words): string {
  const { language, units } = plan.orchard.where;
  const below = t.need.nitrogen.ifBelow;
  if (!below || t.fed.some((f) => (f.brought?.N ?? 0) > 0)) return '';
  const first = plan.days.find((d) => d.doses.some((x) => x.plan === t && x.feed.serves === 'N'))!.number;
  return day === first ? w('only-if', { length: showShort(below.value, units, language) }) : w('only-again', { n: first });
}

function ringOn(t: TreePlan, feed: Feed, number: string, system: 'us' | 'metric', language: Language, w: Words): { where: string; plain: string; ring: string } {
  if (t.facts.bed) {
    const where = w('bed', { area: showGround(t.facts.bed.value * t.tree.count, system, language) });
    return { where, plain: where, ring: '' };
  }
  if (!feed.ring) return { where: w('tub'), plain: w('tub'), ring: '' };
  const [from, to] = [showLength(feed.ring.from.value, system, language), showLength(feed.ring.to.value, system, language)];
  const radius = t.facts.crown.diameter.value / 2;
  const [shortFrom, shortTo] = showSpan(from, to);
  const label = w('drawing-ring', { from, to, crown: showLength(radius, system, language) });
  const ring = drawRing({ from: feed.ring.from.value, to: feed.ring.to.value, crown: radius, label, id: `${number}${feed.window.from}` });
  // Under the head of its column it need not be named.
  return { where: w('why-span', { a: shortFrom, b: shortTo }), plain: w('ring', { from: shortFrom, to: shortTo }), ring };
}

/** A long name stands on a line of its own. */
const column = (left: string, dose: string, right: string): string[] => (left.length > 24 ? [left, ...column('', dose, right)] : [`${left.padEnd(24)} ${dose.padEnd(16)} ${right}`]);

/** Less than half an ounce is not weighed for each plant of a row, but for the row. */
export const isTiny = (g: number): boolean => g < OUNCE / 2 - 1e-9;

/** Why a tree gets nothing, in a few words. */
export function idleReason(t: TreePlan, language: Language): string {
  if (t.need.verdict === 'wait') return say(language, 'none', `wait-${t.need.stops[0]!.id}`);
  if (t.dilute) return diluteText(t.dilute, language, 'metric');
  if (t.fed.length > 0 && t.feeds.length === 0) return say(language, 'none', 'fed-already', { day: showDay(t.fed.map((f) => f.date).sort().at(-1)!, language) });
  if (t.need.verdict === 'feed') return say(language, 'none', t.tree.tub === undefined ? 'no-bag' : t.tooLittle ? 'tub-small' : 'no-coated');
  return say(language, 'none', t.need.nitrogen.none ?? 'table-none');
}

function stopOf(plan: Plan, w: Words): string {
  const { language } = plan.orchard.where;
  const { day, evergreen } = stopDays(plan);
  const printed = printedStops(plan).map((s) => ` ${w('stop-printed', { ...s, day: showDay(s.day, language) })}`).join('');
  const later = evergreen ? ` ${w('stop-evergreen', { trees: evergreen.trees, day: showDay(evergreen.day, language) })}` : '';
  return `${w('stop-text', { day: showDay(day, language) })}${later}${isWeak(plan.season.lastFigure) ? ' †' : ''}${printed}`;
}

/** The last day for nitrogen, and that of evergreens where they stand beside others. */
export function stopDays(plan: Plan): { readonly day: Day; readonly evergreen: { readonly trees: string; readonly day: Day } | null } {
  const { lastNitrogen, lastNitrogenEvergreen } = plan.season;
  const green = plan.trees.filter((t) => EVERGREEN.includes(t.tree.crop));
  if (green.length === plan.trees.length) return { day: lastNitrogenEvergreen, evergreen: null };
  return { day: lastNitrogen, evergreen: green.length > 0 ? { trees: green.map((t) => t.tree.name).join(', '), day: lastNitrogenEvergreen } : null };
}

function stripOf(plan: Plan, w: Words): string {
  const { language } = plan.orchard.where;
  if (plan.days.length === 0) return '';
  const { season } = plan;
  const first = [season.budBreak, ...plan.days.map((d) => d.from)].sort()[0]!;
  const start = `${addDays(first, -15).slice(0, 8)}01`;
  const end = addDays(season.firstFrost, 20);
  const windows = plan.days.map((d) => ({ from: d.from, until: d.until, text: String(d.number) }));
  const months = Array.from({ length: 12 }, (_, m) => showMonth(`2025-${String(m + 1).padStart(2, '0')}-01`, language).slice(0, 3));
  const label = w('drawing-year', { a: showDay(start, language), b: showDay(end, language), windows: plan.days.map((d) => showWindow(d.from, d.until, language)).join('; '), stop: showDay(season.lastNitrogen, language) });
  return drawStrip({ start, end, windows, stop: stopDays(plan).day, stopText: w('stop'), months, label });
}

/** The back is one page: so many plants, a drawing of pH counted as two, leave room on it. */
const BACK_HOLDS = 7;

/** Where lime or sulphur goes on, the first autumn whose sample tells what all of it did. */
function toldYears(plan: Plan): number[] {
  const { south } = plan.orchard.where;
  return plan.trees.flatMap(({ ph }) => (ph && ph.g > 0 ? [yearTold(ph.window!.until, south)] : ph?.plan.reason === 'retest' && ph.last ? [Math.max(yearTold(ph.last, south), plan.season.year)] : []));
}

/** The year whose autumn the next soil sample is due. */
export function nextTest(plan: Plan): number {
  const told = toldYears(plan);
  return plan.zones.length === 0 ? plan.season.year : Math.min(...plan.zones.map((z) => retestYear(plan.season, z.sample.taken ?? null)), ...(told.length > 0 ? [Math.max(...told)] : []));
}

function backOf(plan: Plan, w: Words): View['back'] {
  const { language, units: system } = plan.orchard.where;
  const { season } = plan;
  const assumed = plan.trees.flatMap((t) => [
    ...(t.facts.crown.guessed && t.feeds.length > 0 && t.tree.tub === undefined && t.facts.bed === undefined ? [`${w('assumed-crown', { tree: t.tree.name, length: showLength(t.facts.crown.diameter.value, system, language) })} †`] : []),
    ...(t.tree.shoots && t.tree.shoots.year === undefined ? [w('assumed-shoots', { tree: t.tree.name, year: season.year - 1 })] : []),
  ]);
  if (season.assumed.includes('bud-break')) assumed.push(`${w('assumed-bud-break', { day: showDay(season.budBreak, language) })} †`);
  assumed.push(season.assumed.includes('first-frost') ? `${w('assumed-first-frost', { day: showDay(season.firstFrost, language) })} †` : w('assumed-first-frost', { day: showDay(season.firstFrost, language) }));
  if (plan.trees.some((t) => t.tree.flags.includes('fed lawn'))) assumed.push(w('assumed-lawn'));
  const measure = plan.trees.filter((t) => t.tree.tub === undefined && t.facts.bed === undefined && t.need.verdict !== 'wait').map((t) => `${t.tree.name} ______`).join('  ');
  const told = toldYears(plan);
  const again = nextTest(plan);
  const used = usedBags(plan);
  const dogs = used.filter((b) => b.material?.temptsDogs).map((b) => b.label);
  const amended = plan.trees.filter((t) => (t.ph?.g ?? 0) > 0);
  const urea = used.filter((b) => b.material?.id === 'urea').map((b) => b.label);
  const risky = used.flatMap((b) => hazardsOf(b).filter((h) => h === 'oxidiser' || h === 'fresh-manure').map((h) => hazardNotice(b, h)));
  const apart = [...mixingFaults(used).filter((f) => f.rule === 'never').map(mixingNotice), ...risky].map((n) => say(language, 'notice', n.code, n.facts));
  const curves = curvesOf(plan.trees, language, system);
  return {
    lime: limeOf(plan, w), curves, crowded: plan.trees.length + 2 * curves.length > BACK_HOLDS, ...balancesOf(plan, w), whyLead: plan.trees.some((t) => spanOf(plan, t, w) !== '') ? w('why-lead') : '', why: plan.trees.map((t) => ({ name: t.tree.name, text: whyOf(plan, t, w) })), short: shortsOf(plan, w), assumed,
    measure: measure ? w('measure-text', { trees: measure }) : '', again: w(told.length > 0 ? 'test-again-layers' : 'test-again', { year: again }), slip: slipOf(plan, w),
    cautions: used.length === 0 && amended.length === 0 ? [] : [
      w('caution-label'), w('caution-poison', { line: w(plan.orchard.where.country === 'US' ? 'poison-us' : 'poison-other') }), ...dogs.map((bag) => w('caution-dogs', { bag })), ...urea.map((bag) => w('caution-urea', { bag })), ...(plan.trees.some((t) => t.tree.tub !== undefined && (t.dilute ?? t.feeds[0])) ? [w('tub-salts')] : []), ...apart, ...(amended.length > 0 ? [w('caution-lime')] : []),
    ],
    foot: `${w('dagger')} ${say(language, 'say', 'not-endorsed')}`,
  };
}

const SHORT = { short: 'short-bag', 'short-limit': 'short-bag', 'short-kept': 'short-bag', 'short-small': 'short-little', 'short-chloride': 'short-bag', 'short-tub': 'short-coated', 'short-ring': 'short-ring', 'short-late': 'short-late', 'short-weeks': 'short-weeks', 'short-half': 'short-half', 'short-date': 'short-date' } as const;

/** What stays short, a sentence for each reason; each tree stands once under it. */
function shortsOf(plan: Plan, w: Words): string[] {
  const { language, units } = plan.orchard.where;
  const groups = new Map<string, { why: keyof typeof SHORT; last: Day; trees: Map<string, string[]> }>();
  for (const t of plan.trees) {
    // What was fed already and gets no more has its reason in its row.
    if (t.need.verdict !== 'feed' || (t.fed.length > 0 && t.feeds.length === 0)) continue;
    for (const n of NUTRIENTS) {
      if (!isShort(t, n)) continue;
      const why = shortReason(t, n, plan);
      const key = why === 'short-date' ? `${why} ${t.last.day}` : why;
      const group = groups.get(key) ?? { why, last: t.last.day, trees: new Map<string, string[]>() };
      group.trees.set(t.tree.name, [...(group.trees.get(t.tree.name) ?? []), `${showNutrient(t.short[n], units, language)} ${n}`]);
      groups.set(key, group);
    }
  }
  return [...groups.values()].map(({ why, last, trees }) => w(SHORT[why], { day: showDay(last, language), trees: [...trees].map(([name, amounts]) => `${name} ${amounts.join(', ')}`).join('; ') }));
}

/** Where else to plant, whose table leads and what water does are for whoever plans, not for the day of work. */
const PLANNING: readonly string[] = ['ph-zone-two-wants', 'ph-water-undoes', 'ph-lime-elsewhere'];

/** What suits, what goes on this year and where, and each no with its reason. */
function limeOf(plan: Plan, w: Words): View['back']['lime'] {
  const { language } = plan.orchard.where;
  const said = (text: string): View['back']['lime'][number] => ({ box: false, text });
  const known = plan.trees.filter((t) => t.ph);
  if (known.length === 0) return [said(w('lime-unknown'))];
  const fine = known.filter((t) => t.ph!.plan.reason === 'inside');
  const values = [...new Set(fine.map((t) => showPh(t.ph!.plan.now.value, language)))].join(ownMarks(language) ? '; ' : ', ');
  const doses = known.filter((t) => t.ph!.g > 0).map((t) => ({ box: true, text: amendmentLine(plan, t, w) }));
  const nos = plan.notices.filter((n) => n.code.startsWith('ph-') && !PLANNING.includes(n.code) && !known.some((t) => t.ph!.g > 0 && n.code === phSentence(t.ph!.plan, t.tree.crop, t.ph!.bed !== undefined))).map((n) => say(language, 'notice', n.code, n.facts));
  const neither = fine.length === 0 ? [] : [fine.length === known.length ? w('lime-none', { values }) : w('lime-fine', { trees: fine.map((t) => t.tree.name).join(', '), values })];
  const acid = known.some((t) => t.ph!.g > 0 && t.ph!.plan.verdict === 'lime') ? plan.notices.filter((n) => n.code === 'ph-zone-two-wants').map((n) => n.facts.acid).join(', ') : '';
  return [...neither.map(said), ...doses, ...(doses.length > 0 ? [said(w('lime-once', { months: LIME_TIME.months, acid }))] : []), ...nos.map(said)];
}

function amendmentLine(plan: Plan, t: TreePlan, w: Words): string {
  const { language, units: system } = plan.orchard.where;
  const ph = t.ph!;
  const each = t.tree.count > 1 ? w('each', { count: t.tree.count }) : '';
  const [from, to] = showSpan(showLength(ph.ring.from.value, system, language), showLength(ph.ring.to.value, system, language));
  const material = ph.bag?.label ?? say(language, 'plan', ph.plan.verdict === 'lime' ? 'any-lime' : 'any-sulphur');
  const weak = ph.plan.reason === 'texture' || isWeak(ph.plan.dose!) ? ' †' : '';
  if (ph.bed) return w('lime-dug', { tree: t.tree.name, amount: `${showMass(ph.g, system, language)}${weak}`, each, material, window: showWindow(ph.window!.from, ph.window!.until, language, true), depth: showShort(ph.plan.dugIn?.depthM ?? plantingDepth(), system, language), area: showGround(ph.bed.value * t.tree.count, system, language) });
  return w('lime-dose', { tree: t.tree.name, amount: `${showMass(ph.g, system, language)}${weak}`, each, material, window: showWindow(ph.window!.from, ph.window!.until, language, true), from, to });
}

/** A small dose beside the leaflets the grower knows, and what else is fed. */
function whyOf(plan: Plan, t: TreePlan, w: Words): string {
  const { language, units: system } = plan.orchard.where;
  if (t.need.verdict !== 'feed' || (t.feeds.length === 0 && !t.dilute)) return w('why-none', { why: idleReason(t, language) });
  const others = (['P2O5', 'K2O'] as const).filter((n) => t.need[n].value > 0 && t.feeds.some((f) => f.bag.grade[n] > 0))
    .map((n) => w(n === 'K2O' ? 'why-potash' : 'why-phosphate', { amount: showNutrient(t.need[n].value, system, language) })).join(', ');
  if (t.need.nitrogen.none) return w('why-others', { why: say(language, 'none', t.need.nitrogen.none), others });
  return w('why-line', { n: showNutrient(t.need.N.value, system, language), span: spanOf(plan, t, w), others });
}

/** Least and most of the other leaflets, where nitrogen is fed. */
/** Need against supply, drawn for the screen; over this many trees nobody looks. */
const MOST_DRAWN = 60;

function balancesOf(plan: Plan, w: Words): Pick<View['back'], 'balanceLead' | 'balances'> {
  const { language, units: system } = plan.orchard.where;
  const fed = plan.trees.filter((t) => t.feeds.length > 0);
  if (fed.length === 0 || fed.length > MOST_DRAWN) return { balanceLead: '', balances: [] };
  const balances = fed.map((t, i) => {
    const rows = NUTRIENTS.filter((n) => t.need[n].value > 0 || t.supplied[n] > 0).map((n) => {
      const leaflets = n === 'N' && !t.need.nitrogen.none ? t.need.leaflets.filter((r) => r.cite !== t.need.nitrogen.followed).map((r) => r.value).sort((a, b) => a - b) : [];
      return { name: n, need: t.need[n].value, supply: t.supplied[n], span: leaflets.length > 1 ? [leaflets[0]!, leaflets.at(-1)!] as const : null };
    });
    const text = rows.map((r) => w('balance', { nutrient: r.name, need: showNutrient(r.need, system, language), supply: showNutrient(r.supply, system, language), low: r.span ? showNutrient(r.span[0], system, language) : '', high: r.span ? showNutrient(r.span[1], system, language) : '' })).join('; ');
    return { name: t.tree.name, drawing: drawBalance({ rows, label: text, id: String(i) }), text };
  });
  return { balanceLead: w('balance-lead'), balances };
}

function spanOf(plan: Plan, t: TreePlan, w: Words): string {
  const { language, units: system } = plan.orchard.where;
  const { followed, none } = t.need.nitrogen;
  if (t.feeds.length === 0 || none) return '';
  const leaflets = t.need.leaflets.filter((r) => r.cite !== followed).map((r) => r.value).sort((a, b) => a - b);
  const ends = [leaflets[0], leaflets.at(-1)].filter((x): x is number => x !== undefined).map((x) => showNutrient(x, system, language));
  return ends.length === 0 ? '' : ends[0] === ends[1] ? w('why-span-one', { a: ends[0]! }) : w('why-span', { a: showSpan(ends[0]!, ends[1]!)[0], b: ends[1]! });
}

function slipOf(plan: Plan, w: Words): string[] {
  const { language, units: system } = plan.orchard.where;
  const lines = plan.buy.map((p) => {
    if (p.bag.left !== null) return w('slip-shed', { bag: p.bag.label });
    const bag = `${bagName(p.bag)}${p.bag.g ? `, ${showMass(p.bag.g, system, language)}` : ''}`;
    if (p.bags === null) return w('slip-unknown', { bag, need: showMass(p.needG, system, language) });
    return w('slip-line', {
      bags: p.bags, unit: say(language, 'plan', p.bags === 1 ? 'bag' : 'bags'), bag, cost: p.cost === null ? '' : showPrice(p.cost, p.bag.price!.currency, language), need: showMass(p.needG, system, language), left: showMass(p.leftG!, system, language),
    });
  });
  if (lines.length === 0) return [w('slip-none')];
  const keeps = plan.buy.some((p) => p.bag.left === null && (p.leftG ?? 0) > 0) ? [w('slip-keeps')] : [];
  return [...lines, [...keeps, w(richZones(plan).length > 0 ? 'slip-other' : 'slip-other-p')].join(' ')];
}
