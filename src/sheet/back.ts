/** The back of the sheet: what is short, lime, the why and the balance of each tree, the slip for the next test. */
import { isSameProduct } from '../bags/buy.ts';
import type { Bag } from '../orchard/bag.ts';
import { bagName } from '../orchard/bag.ts';
import { hazardNotice, hazardsOf, mixingFaults, mixingNotice } from '../orchard/mixing.ts';
import { phSentence, plantingDepth } from '../ph/ph.ts';
import { isShort, shortReason } from '../plan-notices.ts';
import type { Plan, TreePlan } from '../plan.ts';
import { isWeak } from '../reason/figure.ts';
import { GROWTH_RANGES } from '../tables/growth.ts';
import { LIME_TIME } from '../tables/lime.ts';
import type { Day } from '../units/date.ts';
import { NUTRIENTS } from '../units/substance.ts';
import { autumnEnd, retestYear, yearTold } from '../when/season.ts';
import { showDay, showGround, showLength, showMass, showNutrient, showPh, showPrice, showShort, showSpan, showWindow } from '../words/show.ts';
import type { Language } from '../words/words.ts';
import { ownMarks, say } from '../words/words.ts';
import { curvesOf } from './curves.ts';
import { drawBalance } from './drawings.ts';
import type { View } from './view.ts';

export type Words = (key: Parameters<typeof say<'sheet'>>[2], facts?: Readonly<Record<string, string | number>>) => string;
export const usedBags = (plan: Plan): Bag[] => [...new Set([...plan.days.flatMap((d) => d.doses.map((x) => x.feed.bag)), ...plan.trees.flatMap((t) => t.dilute?.bag ?? [])])];
export const richZones = (plan: Plan): Plan['zones'] => plan.zones.filter((z) => z.soil.rated.some((r) => r.reading.item === 'phosphorus' && r.target === 'above'));

/** Why a tree gets nothing, in a few words. */
export function idleReason(t: TreePlan, language: Language): string {
  if (t.need.verdict === 'wait') return say(language, 'none', `wait-${t.need.stops[0]!.id}`);
  if (t.fed.length > 0 && t.feeds.length === 0) return say(language, 'none', 'fed-already', { day: showDay(t.fed.map((f) => f.date).sort().at(-1)!, language) });
  if (t.need.verdict === 'feed') return say(language, 'none', t.tree.tub === undefined ? 'no-bag' : t.tooLittle ? 'tub-small' : 'no-coated');
  return say(language, 'none', t.need.nitrogen.none ?? 'table-none');
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
  const due = Math.min(...(plan.zones.length === 0 ? [plan.season.year] : plan.zones.map((z) => retestYear(plan.season, z.sample.taken ?? null))), ...(told.length > 0 ? [Math.max(...told)] : []));
  // South of the equator a season can begin when the autumn of its year is over.
  return `${due}-${autumnEnd(plan.orchard.where.south)}` < plan.season.today ? due + 1 : due;
}

export function backOf(plan: Plan, w: Words): View['back'] {
  const { language, units: system } = plan.orchard.where;
  const { season } = plan;
  const assumed = plan.trees.flatMap((t) => [
    ...(t.facts.crown.guessed && t.feeds.length > 0 && t.tree.tub === undefined && t.facts.bed === undefined ? [`${w('assumed-crown', { tree: t.tree.name, length: showLength(t.facts.crown.diameter.value, system, language) })} †`] : []),
    ...(t.tree.shoots && t.tree.shoots.year === undefined ? [w('assumed-shoots', { tree: t.tree.name, year: season.year - 1 })] : []),
  ]);
  if (season.assumed.includes('bud-break')) assumed.push(`${w('assumed-bud-break', { day: showDay(season.budBreak, language) })} †`);
  assumed.push(season.assumed.includes('first-frost') ? `${w('assumed-first-frost', { day: showDay(season.firstFrost, language) })} †` : w('assumed-first-frost', { day: showDay(season.firstFrost, language) }));
  if (plan.trees.some((t) => t.tree.flags.includes('fed lawn'))) assumed.push(w('assumed-lawn'));
  // Of a crop whose growth nobody prints, as strawberries, no shoots are asked for.
  const measure = plan.trees.filter((t) => t.tree.tub === undefined && t.facts.bed === undefined && t.need.verdict !== 'wait' && GROWTH_RANGES.some((r) => r.crops.includes(t.facts.crop))).map((t) => `${t.tree.name} ______`).join('  ');
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
  const fine = known.filter((t) => t.ph!.plan.reason === 'inside');
  const values = [...new Set(fine.map((t) => showPh(t.ph!.plan.now.value, language)))].join(ownMarks(language) ? '; ' : ', ');
  const doses = known.filter((t) => t.ph!.g > 0).map((t) => ({ box: true, text: amendmentLine(plan, t, w) }));
  const nos = plan.notices.filter((n) => n.code.startsWith('ph-') && !PLANNING.includes(n.code) && !known.some((t) => t.ph!.g > 0 && n.code === phSentence(t.ph!.plan, t.tree.crop, t.ph!.bed !== undefined))).map((n) => say(language, 'notice', n.code, n.facts));
  if (known.length === 0) return (nos.length > 0 ? nos : [w('lime-unknown')]).map(said);
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

/** Least and most of the other leaflets, where nitrogen is fed. */
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
  // What the shed holds of it is no enough where more is to be bought.
  const listed = plan.buy.filter((p) => p.bag.left === null || !plan.buy.some((q) => q.bag.left === null && isSameProduct(q.bag, p.bag)));
  const lines = listed.map((p) => {
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
