/** Published nitrogen rules applied to one tree: each gives grams of N with its own cite. */
import type { Figure } from '../reason/figure.ts';
import { figure, told } from '../reason/figure.ts';
import { trunkDiameter } from '../orchard/geometry.ts';
import type { Crop } from '../tables/crops.ts';
import { KIN } from '../tables/crops.ts';
import { RULES } from '../tables/rules.ts';
import { IN_ROW } from '../tables/limits.ts';
import type { Rule } from '../tables/rule.ts';
import { gramsOf, isRate } from '../tables/rule.ts';
import { FOOT, INCH } from '../units/units.ts';
import type { Facts } from './facts.ts';
import { groundOf, growthOf, has, yearsOf } from './facts.ts';
import { growthRange } from './growth.ts';

export type Nitrogen = Figure<'g', 'N'>;

/** Grams of N of one rule for this tree (of a rule for phosphate or potash: of that); null where the rule needs a fact that nobody gave. */
export function applyRule(rule: Rule, f: Facts, rate: number, base = 0): Nitrogen | null {
  const measured = measureOf(rule, f);
  if (!measured) return null;
  const amount = base + rate * measured.times;
  const capped = rule.cap === undefined ? amount : Math.min(amount, rule.cap);
  return figure(gramsOf(rule, capped), 'g', 'N', capped < amount ? 'rule-capped' : stepOf(rule), rule.cite, measured.from);
}

/** A table's own year is a row, not a rate. */
const stepOf = (rule: Rule): 'rule' | 'table-year' => (rule.by === 'plant' && rule.years ? 'table-year' : 'rule');

/** A rule's own ceiling in grams of N: its cap, else the high end of a row; rates of ground have none. */
export function capOf(rule: Rule): number {
  if (isRate(rule)) return Infinity;
  const most = rule.cap ?? (rule.by === 'plant' ? rule.high : undefined);
  return most === undefined ? Infinity : gramsOf(rule, most);
}

function measureOf(rule: Rule, f: Facts): { times: number; from: readonly Figure[] } | null {
  switch (rule.by) {
    case 'plant': return { times: 1, from: yearsOf(f) };
    case 'years': return f.years === null ? null : { times: f.years + (rule.first ?? 0), from: yearsOf(f) };
    case 'area': {
      // Rates of orchards and of beds are for all the ground of a plant, garden rates of trees for that under the crown.
      const whole = rule.label === 'orchard' || rule.gives.unit === 'kg/ha' || rule.gives.unit === 'lb/acre';
      const ground = whole ? f.crown.share ?? f.crown.area : groundOf(f);
      return { times: ground.value, from: [ground] };
    }
    case 'canopy': return { times: f.crown.diameter.value / FOOT, from: [f.crown.diameter] };
    case 'trunk': {
      const trunk = trunkDiameter(f.tree);
      return trunk ? { times: trunk.value / INCH, from: [trunk] } : null;
    }
    case 'height': return f.tree.high === undefined ? null : { times: f.tree.high / FOOT, from: [told(f.tree.high, 'm', 'tree', f.tree.name)] };
    case 'row': {
      const usual = IN_ROW.crops[f.crop];
      const apart = f.tree.spacing ? told(Math.min(...f.tree.spacing), 'm', 'tree', f.tree.name) : usual === undefined ? null : figure(usual * FOOT, 'm', 'tree', 'in-row', IN_ROW.cite);
      return apart && { times: apart.value / (100 * FOOT), from: [apart] };
    }
  }
}

/** Whether a rule is meant for this tree: crop, kind, size, age, ground, climate and its own condition. */
export function fits(rule: Rule, f: Facts): boolean {
  const { tree } = f;
  if (!rule.crops.includes(f.crop) || tree.tub !== undefined) return false;
  if (rule.kinds && !rule.kinds.includes(tree.word)) return false;
  if (rule.size !== undefined && rule.size !== tree.size) return false;
  if (rule.climate === 'warm' && f.where.mildWinters === false) return false;
  if (rule.bearing !== undefined && rule.bearing === f.young) return false;
  if (rule.ground === 'grass' && !has(f, 'grass') && !has(f, 'fed lawn')) return false;
  if (rule.ground === 'bare' && (has(f, 'grass') || has(f, 'fed lawn'))) return false;
  if (!fitsAge(rule, f)) return false;
  if (rule.spacingFt !== undefined && !(tree.spacing && Math.min(...tree.spacing) >= rule.spacingFt * FOOT * (1 - 1e-9))) return false;
  if (rule.if === 'no-soil-test' && f.soil) return false;
  if (rule.if === 'growth-short') {
    const growth = growthOf(f);
    const range = growthRange(f);
    if (growth !== null && range && growth >= range.low.value) return false;
  }
  return true;
}

function fitsAge(rule: Rule, f: Facts): boolean {
  if (!rule.years) return true;
  if (f.years === null) return rule.by === 'trunk';
  const year = f.years + (rule.first ?? 0);
  return year >= rule.years[0] && year <= rule.years[1];
}

type Of = 'N' | 'P2O5' | 'K2O';
const ofRule = (rule: Rule): Of => (rule.gives.of === 'product' ? 'N' : rule.gives.of);

/** All rules by what they give and the crop; asked for many times a tree. */
const BY_CROP: Readonly<Record<Of, Map<Crop, Rule[]>>> = { N: new Map(), P2O5: new Map(), K2O: new Map() };
for (const rule of RULES) for (const crop of rule.crops) BY_CROP[ofRule(rule)].set(crop, [...(BY_CROP[ofRule(rule)].get(crop) ?? []), rule]);

/** Every rule for the crop, the grower's own first. */
function rulesFor(f: Pick<Facts, 'crop' | 'rules'>, of: Of): readonly Rule[] {
  const held = BY_CROP[of].get(f.crop) ?? [];
  return f.rules.length === 0 ? held : [...f.rules.filter((r) => r.crops.includes(f.crop) && ofRule(r) === of), ...held];
}

/** The rules that may lead: those for gardens and single trees; where a crop has none, the rates of orchards by ground, which shrink with the plant. */
function leadersOf(all: readonly Rule[]): readonly Rule[] {
  const home = all.filter((r) => r.label === undefined);
  return home.length > 0 ? home : all.filter((r) => r.label === 'orchard' && r.by === 'area');
}

const LEADERS = new Map([...BY_CROP.N].map(([crop, all]) => [crop, leadersOf(all)] as const));

/** Those that may lead for a crop, the grower's own first. */
export const leadersFor = (f: Pick<Facts, 'crop' | 'rules'>): readonly Rule[] => (f.rules.length === 0 ? LEADERS.get(f.crop) ?? [] : leadersOf(rulesFor(f, 'N')));

/** The nearest kin with rules of its own, for a grower to choose; null where none is held. */
export const kinOf = (word: string): Crop | null => (KIN[word] ?? []).find((crop) => leadersFor({ crop, rules: [] }).length > 0) ?? null;

/** What the leaflets of the grower's own country give, for gardens; of all countries where fewer than three publications do. */
export function leaflets(f: Facts): Nitrogen[] {
  const { country } = f.where;
  const near = span(f, 'N', (r) => r.label === undefined && (r.region === country || r.region.startsWith(`${country}-`)));
  return new Set(near.map((r) => r.cite.source)).size >= 3 ? near : span(f, 'N', (r) => r.label === undefined);
}

/** What every published rule that fits the tree gives of a nutrient, low and high; none fits a tub. */
export function span<S extends Of>(f: Facts, of: S, suits: (rule: Rule) => boolean = (): boolean => true): Figure<'g', S>[] {
  return rulesFor(f, of).filter((rule) => suits(rule) && fits(rule, f)).flatMap((rule) => {
    const low = applyRule(rule, f, rule.low, rule.base?.[0] ?? 0);
    const wide = rule.high !== undefined || rule.base !== undefined;
    const high = wide ? applyRule(rule, f, rule.high ?? rule.low, rule.base?.[1] ?? 0) : null;
    return [low, high].filter((x) => x !== null).map((x) => (of === 'N' ? x as Figure as Figure<'g', S> : figure(x.value, 'g', of, x.step, x.cite, x.from)));
  });
}
