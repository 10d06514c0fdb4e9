/**
 * Nitrogen for one tree. One procedure: none where none is wanted; leaf before growth; growth before rules;
 * then the smallest of one publication's rule by age, the crown's area rate and a size cap. Never an average.
 */
import type { Cite, Figure } from '../reason/figure.ts';
import { figure, told } from '../reason/figure.ts';
import { POME, STONE } from '../tables/crops.ts';
import { LEAF_STEP } from '../tables/leaf.ts';
import { DOSE_REFUSED } from '../tables/limits.ts';
import { SIZE_CAP } from '../tables/rules.ts';
import type { Rule } from '../tables/rule.ts';
import { convert } from '../units/units.ts';
import { isTooMuch } from './advice.ts';
import type { Credited } from './credits.ts';
import { credited } from './credits.ts';
import type { Facts } from './facts.ts';
import { groundOf, growthOf, has, isToCome } from './facts.ts';
import { growthRange, leafVerdict } from './growth.ts';
import type { Lead } from './lead.ts';
import { leadOf, wantedFact } from './lead.ts';
import type { Nitrogen } from './rules.ts';
import { applyRule, capOf } from './rules.ts';
import { dosesAYear } from './timing.ts';
import { tubRate } from './tub.ts';

export type NoneId =
  | 'planting-year' | 'before-planting' | 'fed-lawn' | 'pruned-hard' | 'leaf-sufficient' | 'leaf-above' | 'growth-above' | 'growth-within' | 'growth-repeat' | 'table-none' | 'size-unknown' | 'fact-missing' | 'compost-enough' | 'carried-enough';

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
  /** Whose rule leads, and why; null where none was asked. */
  readonly lead: Lead | null;
  /** What halved it. */
  readonly half: Credited['half'];
  /** What feeds of earlier seasons still bring, g, which is off the need; absent where they bring nothing. */
  readonly carried?: number;
};

const zero = (cite: Cite, from: readonly Figure[]): Nitrogen => figure(0, 'g', 'N', 'none', cite, from);
const untold: Cite = { source: 'medlar', at: 'fact-missing', mark: 'judgement' };
const later: Cite = { source: 'medlar', at: 'table-later', mark: 'judgement' };
const virginia: Cite = { source: 'virginia-note-21', at: 'no fertiliser at planting', mark: 'read' };

/** In the planting year a plant is fed only by a table that begins with it and is the crop's own, or by the grower's own publisher; never by an orchard's rate of ground. */
function fedAtPlanting(f: Facts): boolean {
  const lead = leadOf(f, (r) => r.label === undefined && r.years !== undefined);
  return lead !== null && lead.rule.low > 0 && (lead.rule.first === 1 || lead.why === 'own' || lead.why === 'here');
}

export function nitrogenOf(f: Facts): NitrogenNeed {
  const none = (id: NoneId, cite: Cite, from: readonly Figure[] = []): NitrogenNeed =>
    ({ need: zero(cite, from), none: id, ifBelow: null, cap: 0, doses: 0, followed: cite, lead: null, half: null });

  if (f.tree.tub !== undefined) return tub(f);
  if (isToCome(f)) return none('before-planting', virginia);
  if (f.years === 0 && !fedAtPlanting(f)) return none('planting-year', virginia);
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
      const last = f.lastN ?? 0;
      if (last <= 0) return none(f.lastN === null ? 'growth-within' : 'growth-repeat', range.low.cite, edges);
      return repeated(f, last, edges) ?? none('fact-missing', untold);
    }
  }
  const dose = byRule(f);
  if (!dose) return wantedFact(f) ? none('fact-missing', untold) : none('table-none', later);
  if (!leaf && growth !== null && range) {
    const need = figure(dose.need.value, 'g', 'N', 'growth-short', range.low.cite, [dose.need, told(growth, 'm', 'growth', f.tree.name), range.low]);
    return { ...adjusted(f, { ...dose, need }, 0, dose.need.cite), ifBelow: null };
  }
  const conditional = !leaf && range !== null && !f.young;
  const short = leaf ? leaf.short : 0;
  return { ...adjusted(f, dose, short, dose.need.cite), ifBelow: conditional ? range.low : null };
}

/** Growth as it should be: what the diary has for last year, within the rules. */
function repeated(f: Facts, lastN: number, edges: readonly Figure[]): NitrogenNeed | null {
  const dose = byRule(f);
  if (!dose) return null;
  const last = figure(lastN, 'g', 'N', 'fed-last-year', { source: 'grower', at: 'diary', mark: 'read' });
  const cite: Cite = { source: 'medlar', at: 'repeat', mark: 'judgement' };
  const need = figure(Math.min(lastN, dose.need.value), 'g', 'N', 'repeat', cite, [last, dose.need, ...edges]);
  return { ...adjusted(f, { ...dose, need }, 0, dose.need.cite), ifBelow: null };
}

type Dose = { need: Nitrogen; cap: number; doses: number; lead: Lead | null };

/** Fruit trees go by age or trunk and by their crown, whichever is less; every other crop by its own table. */
const hasAreaRate = (f: Facts): boolean => POME.includes(f.crop) || STONE.includes(f.crop);
const byGround = (rule: Rule): boolean => rule.by === 'area';

/** The smallest of what applies; null where the crop's table begins at a later age, or goes by a fact that nobody told. */
function byRule(f: Facts): Dose | null {
  // What leads can be applied.
  const applied = ({ rule }: Lead, g: Facts): Nitrogen => applyRule(rule, g, rule.low, rule.base?.[0] ?? 0)!;
  if (!hasAreaRate(f)) {
    // Nobody is fed as an old plant by a guess: one year in the ground, until the age is told.
    const g = f.years === null && leadOf(f) === null ? { ...f, years: 1 } : f;
    const lead = leadOf(g);
    if (!lead) return null;
    const need = applied(lead, g);
    if (lead.rule.label === 'orchard' && isTooMuch(need, f)) {
      const most = figure(convert(DOSE_REFUSED.value, DOSE_REFUSED.unit, 'g/m2') * groundOf(f).value, 'g', 'N', 'bounded', DOSE_REFUSED.cite, [need, groundOf(f)]);
      return { need: most, cap: most.value, doses: dosesAYear(g, lead.rule), lead };
    }
    return { need, cap: capOf(lead.rule), doses: dosesAYear(g, lead.rule), lead };
  }
  const [tree, ground] = [leadOf(f, (r) => !byGround(r)), leadOf(f, byGround, false)];
  // A place whose own publisher goes by ground alone needs no stranger's rule by age beside it.
  const lead = ground && tree && (ground.why === 'own' ? tree.why !== 'own' : ground.why === 'here' && tree.why !== 'own' && tree.why !== 'here') ? null : tree;
  const candidates = [lead && applied(lead, f), ground && applied(ground, f), sizeCap(f)].filter((x): x is Nitrogen => x !== null);
  if (candidates.length === 0) return null;
  const least = candidates.reduce((a, b) => (b.value < a.value ? b : a));
  const caps = [lead ? capOf(lead.rule) : Infinity, sizeCap(f)?.value ?? Infinity];
  return { need: figure(least.value, 'g', 'N', 'smallest', least.cite, candidates), cap: Math.min(...caps), doses: dosesAYear(f, lead?.rule ?? null), lead: lead ?? ground };
}

/** Maryland's caps, printed for pear; on apple and stone fruit they are our judgement. */
function sizeCap(f: Facts): Nitrogen | null {
  if (!f.tree.size) return null;
  const { lb, percentN } = SIZE_CAP[f.tree.size];
  const cite: Cite = f.crop === 'pear' ? { source: 'maryland-pear', at: f.tree.size, mark: 'read' } : { source: 'maryland-pear', at: `${f.tree.size}, printed for pear`, mark: 'judgement' };
  return figure((convert(lb, 'lb', 'g') * percentN) / 100, 'g', 'N', 'size-cap', cite);
}

/** What feeds it already is taken off, a lost crop halves the dose; a leaf short of nitrogen raises it, within the caps. */
function adjusted(f: Facts, dose: Dose, leafShort: number, followed: Cite): Omit<NitrogenNeed, 'ifBelow'> {
  const { need: rest, half, enough, carried } = credited(f, dose.need);
  let need = rest;
  if (f.tree.fruit?.said === 'none' && f.tree.fruit.year === f.season) {
    need = figure(need.value / 2, 'g', 'N', 'lost-crop', { source: 'oklahoma-hla6232', at: 'crop lost', mark: 'read' }, [need]);
  }
  // An off year carries little fruit: nothing extra.
  if (leafShort > 0 && POME.includes(f.crop) && !has(f, 'off year')) {
    const raised = Math.min(dose.cap, need.value * (1 + (leafShort / LEAF_STEP.per) * (LEAF_STEP.share / 100)));
    need = figure(raised, 'g', 'N', 'leaf-raise', LEAF_STEP.cite, [need, told(leafShort, '%', 'leaf', f.tree.name)]);
  }
  return { need, none: need.value > 0 ? null : enough ?? 'table-none', cap: dose.cap, doses: dose.doses, followed, lead: dose.lead, half, ...(carried > 0 ? { carried } : {}) };
}

function tub(f: Facts): NitrogenNeed {
  const litres = told(f.tree.tub!, 'L', 'tub', f.tree.name);
  const { gPerL, cite } = tubRate(f.crop);
  const need = figure(f.tree.tub! * gPerL, 'g', 'N', 'tub', cite, [litres]);
  return { need, none: null, ifBelow: null, cap: Infinity, doses: 1, followed: cite, lead: null, half: null };
}
