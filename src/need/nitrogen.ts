/**
 * Nitrogen for one tree. One procedure: none where none is wanted; leaf before growth; growth before rules;
 * then the smallest of one publication's rule by age, the crown's area rate and a size cap. Never an average.
 */
import type { Cite, Figure } from '../reason/figure.ts';
import { figure, told } from '../reason/figure.ts';
import { POME, STONE } from '../tables/crops.ts';
import { LEAF_STEP } from '../tables/growth.ts';
import { ORGANIC_MATTER, TUB } from '../tables/limits.ts';
import type { Rule } from '../tables/nitrogen.ts';
import {
  GEORGIA_FIG, LOUISIANA_FIG, MICHIGAN_POME, NITROGEN_RULES, PENN_BLUEBERRY, PENN_STONE, RHS_APPLE_BARE, RHS_APPLE_GRASS, RHS_PEAR_STONE, RHS_PEAR_YOUNG, SIZE_CAP,
} from '../tables/nitrogen.ts';
import { convert } from '../units/units.ts';
import type { Facts } from './facts.ts';
import { growthOf, has, organicMatter } from './facts.ts';
import { growthRange, leafVerdict } from './growth.ts';
import type { Nitrogen } from './rules.ts';
import { applyRule, blueberry, citrusRow, fits } from './rules.ts';

export type NoneId =
  | 'planting-year' | 'fed-lawn' | 'pruned-hard' | 'leaf-sufficient' | 'leaf-above' | 'growth-above' | 'growth-within' | 'growth-repeat' | 'table-none' | 'size-unknown';

export type NitrogenNeed = {
  readonly need: Nitrogen;
  readonly none: NoneId | null;
  /** The dose holds only if last season's shoots stayed under this. */
  readonly ifBelow: Figure<'m', 'growth'> | null;
  /** A published ceiling a year, g N. */
  readonly cap: number;
  /** Doses a year that the followed table prints. */
  readonly doses: number;
  readonly followed: Cite | null;
  readonly organicHalf: boolean;
};

const zero = (cite: Cite, from: readonly Figure[] = []): Nitrogen => figure(0, 'g', 'N', 'none', cite, from);
const virginia: Cite = { source: 'virginia-note-21', at: 'no fertiliser at planting', mark: 'read' };

export function nitrogenOf(f: Facts): NitrogenNeed {
  const none = (id: NoneId, cite: Cite, from: readonly Figure[] = []): NitrogenNeed =>
    ({ need: zero(cite, from), none: id, ifBelow: null, cap: 0, doses: 0, followed: cite, organicHalf: false });

  if (f.tree.tub !== undefined) return tub(f);
  if (f.years === 0 && f.tree.crop !== 'citrus') return none('planting-year', virginia);
  if (has(f, 'fed lawn')) return none('fed-lawn', { source: 'iowa-fruit-trees', at: 'trees in a regularly fed lawn', mark: 'read' });
  if (has(f, 'pruned hard')) return none('pruned-hard', { source: 'utah-column', at: 'after heavy pruning', mark: 'read' });

  const leaf = leafVerdict(f, 'N');
  if (leaf?.verdict === 'above') return none('leaf-above', leaf.range.cite);
  if (leaf?.verdict === 'sufficient') return none('leaf-sufficient', leaf.range.cite);
  const growth = growthOf(f);
  const range = growthRange(f);
  if (!leaf && growth !== null && range) {
    const measured = told(growth, 'm', 'growth', f.tree.name);
    if (growth > range.high.value) return none('growth-above', range.high.cite, [measured, range.high]);
    if (growth >= range.low.value) {
      const edges = [measured, range.low, range.high];
      if (f.lastN === null || f.lastN <= 0) return none(f.lastN === null ? 'growth-within' : 'growth-repeat', range.low.cite, edges);
      return repeated(f, f.lastN, edges);
    }
  }
  const dose = byRule(f);
  if (!leaf && growth !== null && range) {
    const need = figure(dose.need.value, 'g', 'N', 'growth-short', range.low.cite, [dose.need, told(growth, 'm', 'growth', f.tree.name), range.low]);
    return { ...adjusted(f, { ...dose, need }, 0, dose.need.cite), ifBelow: null };
  }
  const conditional = !leaf && growth === null && range !== null && !f.young;
  const short = leaf ? leaf.short : 0;
  return { ...adjusted(f, dose, short, dose.need.cite), ifBelow: conditional ? range.low : null };
}

/** Growth as it should be: what the diary has for last year, within the rules. */
function repeated(f: Facts, lastN: number, edges: readonly Figure[]): NitrogenNeed {
  const dose = byRule(f);
  const last = figure(lastN, 'g', 'N', 'fed-last-year', { source: 'grower', at: 'diary', mark: 'read' });
  const cite: Cite = { source: 'medlar', at: 'repeat', mark: 'judgement' };
  const need = figure(Math.min(lastN, dose.need.value), 'g', 'N', 'repeat', cite, [last, dose.need, ...edges]);
  return { ...adjusted(f, { ...dose, need }, 0, dose.need.cite), ifBelow: null };
}

type Dose = { need: Nitrogen; cap: number; doses: number };

/** The smallest of what applies; a table of its own for fig, blueberry and citrus. */
function byRule(f: Facts): Dose {
  if (f.tree.crop === 'citrus') {
    const { row, figure: need } = citrusRow(f);
    return { need, cap: convert(row.high, 'lb', 'g'), doses: row.doses };
  }
  if (f.tree.crop === 'blueberry') return { need: blueberry(PENN_BLUEBERRY, f), cap: Infinity, doses: 1 };
  if (f.tree.crop === 'fig') return fig(f);
  const age = ageRule(f);
  const candidates = [applyRule(age, f, age.low, age.base?.[0] ?? 0), applyRule(areaRule(f), f, areaRule(f).low), sizeCap(f)].filter((x): x is Nitrogen => x !== null);
  const least = candidates.reduce((a, b) => (b.value < a.value ? b : a));
  const caps = [capOf(age), sizeCap(f)?.value ?? Infinity];
  return { need: figure(least.value, 'g', 'N', 'smallest', least.cite, candidates), cap: Math.min(...caps), doses: 1 };
}

const STATES: Readonly<Record<string, string>> = {
  iowa: 'US-IA', michigan: 'US-MI', utah: 'US-UT', pennsylvania: 'US-PA', maryland: 'US-MD', maine: 'US-ME', virginia: 'US-VA', colorado: 'US-CO', kansas: 'US-KS', georgia: 'US-GA',
};

/** The rule of the grower's own state where one is held and its facts are known; else the default. */
function ageRule(f: Facts): Rule {
  const region = f.where.state === null ? undefined : STATES[f.where.state];
  const own = NITROGEN_RULES.find((r) => r.region === region && !r.label && r.by !== 'area' && fits(r, f) && applyRule(r, f, r.low, r.base?.[0] ?? 0) !== null);
  return own ?? (POME.includes(f.tree.crop) ? MICHIGAN_POME : PENN_STONE);
}

/** A rule's own ceiling in grams of N. */
function capOf(rule: Rule): number {
  if (rule.cap === undefined || rule.gives.unit === 'g/m2') return Infinity;
  const grams = rule.gives.unit === 'cup' ? convert(rule.cap * (rule.gives.ozPerCup ?? 0), 'oz', 'g') : convert(rule.cap, rule.gives.unit, 'g');
  return (grams * (rule.gives.percentN ?? 100)) / 100;
}

function areaRule(f: Facts): Rule {
  if (f.tree.crop === 'apple') return has(f, 'grass') ? RHS_APPLE_GRASS : RHS_APPLE_BARE;
  return f.tree.crop === 'pear' && f.young ? RHS_PEAR_YOUNG : RHS_PEAR_STONE;
}

/** Maryland's caps, printed for pear; on apple and stone fruit they are our judgement. */
function sizeCap(f: Facts): Nitrogen | null {
  if (!f.tree.size || (!POME.includes(f.tree.crop) && !STONE.includes(f.tree.crop))) return null;
  const { lb, percentN } = SIZE_CAP[f.tree.size];
  const cite: Cite = f.tree.crop === 'pear' ? { source: 'maryland-pear', at: f.tree.size, mark: 'read' } : { source: 'maryland-pear', at: `${f.tree.size}, printed for pear`, mark: 'judgement' };
  return figure((convert(lb, 'lb', 'g') * percentN) / 100, 'g', 'N', 'size-cap', cite);
}

/** Georgia's table while young and where the height is known, else Louisiana's rule by age. */
function fig(f: Facts): Dose {
  const rule = GEORGIA_FIG.find((r) => fits(r, f));
  const need = rule ? applyRule(rule, f, rule.low) : null;
  if (rule && need) return { need, cap: capOf(rule), doses: rule.id.startsWith('georgia.fig.6') ? 1 : 3 };
  const byAge = applyRule(LOUISIANA_FIG, f, LOUISIANA_FIG.low) ?? applyRule(LOUISIANA_FIG, { ...f, years: 1 }, LOUISIANA_FIG.low)!;
  return { need: byAge, cap: capOf(LOUISIANA_FIG), doses: 1 };
}

/** Organic matter and a lost crop halve the dose; a leaf short of nitrogen raises it, within the caps. */
function adjusted(f: Facts, dose: Dose, leafShort: number, followed: Cite): Omit<NitrogenNeed, 'ifBelow'> {
  let { need } = dose;
  const matter = organicMatter(f);
  const half = matter !== null && matter.value > ORGANIC_MATTER.half;
  if (half) need = figure(need.value / 2, 'g', 'N', 'organic-half', ORGANIC_MATTER.cite, [need, matter]);
  if (f.tree.fruit?.said === 'none' && f.tree.fruit.year === f.season) {
    need = figure(need.value / 2, 'g', 'N', 'lost-crop', { source: 'oklahoma-hla6232', at: 'crop lost', mark: 'read' }, [need]);
  }
  if (leafShort > 0) {
    const raised = Math.min(dose.cap, need.value * (1 + (leafShort / LEAF_STEP.per) * (LEAF_STEP.share / 100)));
    need = figure(raised, 'g', 'N', 'leaf-raise', LEAF_STEP.cite, [need, told(leafShort, '%', 'leaf', f.tree.name)]);
  }
  return { need, none: need.value === 0 ? 'table-none' : null, cap: dose.cap, doses: dose.doses, followed, organicHalf: half };
}

function tub(f: Facts): NitrogenNeed {
  const litres = told(f.tree.tub!, 'L', 'tub', f.tree.name);
  const need = figure(f.tree.tub! * TUB.gPerL, 'g', 'N', 'tub', TUB.cite, [litres]);
  return { need, none: null, ifBelow: null, cap: Infinity, doses: 1, followed: TUB.cite, organicHalf: false };
}
