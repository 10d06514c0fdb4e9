/** The plan → the view of the sheet: by working day in walking order; zero is printed, never left out. */
import type { Dilute } from '../bags/dilute.ts';
import type { Feed } from '../bags/doses.ts';
import { volumeOf } from '../bags/round.ts';
import { bagName } from '../orchard/bag.ts';
import { printedStops } from '../plan-notices.ts';
import type { Plan, TreePlan } from '../plan.ts';
import { weighedOut } from '../planned.ts';
import { isWeak } from '../reason/figure.ts';
import { EVERGREEN } from '../tables/crops.ts';
import { STEP } from '../tables/limits.ts';
import type { Day } from '../units/date.ts';
import { addDays } from '../units/date.ts';
import { OUNCE } from '../units/units.ts';
import { showDay, showDose, showGround, showLength, showMonth, showShort, showSpan, showVolume, showWindow } from '../words/show.ts';
import type { Language } from '../words/words.ts';
import { say } from '../words/words.ts';
import type { Words } from './back.ts';
import { backOf, idleReason, richZones, usedBags } from './back.ts';
import { diluteAmount, diluteWhere } from './can.ts';
import { drawRing, drawStrip } from './drawings.ts';
import type { Row, View } from './view.ts';

export type SheetOptions = { readonly paper: 'a4' | 'letter'; readonly large: boolean };

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
    idle: days.length === 0 ? plan.trees.map((t) => rowOf(plan, t, [], 0, products.length > 1, w)) : [],
    stop: stopOf(plan, w), lost: plan.days.length > 1 ? w('lost') : '', how: plan.days.length > 0 ? [w('how-text'), ...(plan.trees.some((t) => (t.feeds[0]?.ring?.to.value ?? 0) > STEP.m) ? [w('how-step', { length: showLength(STEP.m, system, language) })] : [])].join(' ') : '', back: backOf(plan, w),
    words: headings(w),
  };
}

const headings = (w: Words): View['words'] => ({
  use: w('use'), not: w('not'), stop: w('stop'), how: w('how'), back: w('back'), overleaf: w('overleaf'), limeSulphur: w('lime-sulphur'), whySoLittle: w('why-so-little'), short: w('short'), assumed: w('assumed'), measure: w('measure'),
  test2: w('test2'), slip: w('slip'), cut: w('cut'), caution: w('caution'), year: w('year'), tick: w('tick'), tree: w('tree'), dose: w('dose'), where: w('where'), fromTrunk: w('from-trunk'),
});

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
  return { number, name, fed: true, doses, where, ring, lines: linesOf(`[ ] ${number} ${name}`, doses, plain) };
}

/** The row in plain text: who and where beside the first dose, product and cups below each. */
const linesOf = (who: string, doses: Row['doses'], where: string): string[] => doses.flatMap((d, k) => {
  const below = [d.product, d.cups].filter(Boolean).join(', ');
  return [...column(k === 0 ? who : '', [d.amount, d.plants].filter(Boolean).join(' '), k === 0 ? where : ''), ...[below, d.only].filter(Boolean).map((text) => `        ${text}`)];
});

/** A tub that is fed in its water. */
function waterRow(t: TreePlan, d: Dilute, number: string, name: string, several: boolean, language: Language, system: 'us' | 'metric', w: Words): Row {
  const mL = volumeOf(d.g.value, d.bag);
  const where = diluteWhere(d, language, system);
  const dose = {
    amount: `${diluteAmount(d, language)} †`, plants: t.tree.count > 1 ? w('each', { count: t.tree.count }) : '', product: several ? d.bag.label : '', only: '',
    cups: mL === null ? '' : w('about', { cups: showVolume(mL, system, language) }),
  };
  return { number, name, fed: true, doses: [dose], where, ring: '', lines: linesOf(`[ ] ${number} ${name}`, [dose], where) };
}

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
  const green = plan.trees.filter((t) => EVERGREEN.includes(t.facts.crop));
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
  const stop = stopDays(plan).day;
  const label = w('drawing-year', { a: showDay(start, language), b: showDay(end, language), windows: plan.days.map((d) => showWindow(d.from, d.until, language)).join('; '), stop: showDay(stop, language) });
  return drawStrip({ start, end, windows, stop, stopText: w('stop'), months, label });
}
