/** Published nitrogen rules applied to one tree: each gives grams of N with its own cite. */
import type { Figure } from '../reason/figure.ts';
import { figure, told } from '../reason/figure.ts';
import { trunkDiameter } from '../orchard/geometry.ts';
import type { CitrusRow, Rule } from '../tables/nitrogen.ts';
import { CALIFORNIA_CITRUS, FLORIDA_CITRUS, NEW_YORK_BLUEBERRY, NEW_YORK_BLUEBERRY_SULPHATE, NITROGEN_RULES, PENN_BLUEBERRY } from '../tables/nitrogen.ts';
import { convert, FOOT, INCH } from '../units/units.ts';
import type { Facts } from './facts.ts';
import { growthOf, has, yearsOf } from './facts.ts';
import { growthRange } from './growth.ts';

export type Nitrogen = Figure<'g', 'N'>;

/** Grams of N of one rule for this tree; null where the rule needs a fact that nobody gave. */
export function applyRule(rule: Rule, f: Facts, rate: number, base = 0): Nitrogen | null {
  const measured = measureOf(rule, f);
  if (!measured) return null;
  const amount = base + rate * measured.times;
  const capped = rule.cap === undefined ? amount : Math.min(amount, rule.cap);
  const { unit, percentN, ozPerCup } = rule.gives;
  const grams = unit === 'cup' ? convert(capped * (ozPerCup ?? 0), 'oz', 'g') : unit === 'g/m2' ? capped : convert(capped, unit, 'g');
  const n = rule.gives.of === 'product' ? (grams * (percentN ?? 0)) / 100 : grams;
  return figure(n, 'g', 'N', capped < amount ? 'rule-capped' : 'rule', rule.cite, measured.from);
}

function measureOf(rule: Rule, f: Facts): { times: number; from: Figure[] } | null {
  switch (rule.by) {
    case 'plant': return { times: 1, from: yearsOf(f) };
    case 'years': return f.years === null ? null : { times: f.years, from: yearsOf(f) };
    case 'area': return { times: f.crown.area.value, from: [f.crown.area] };
    case 'trunk': {
      const trunk = trunkDiameter(f.tree);
      return trunk ? { times: trunk.value / INCH, from: [trunk] } : null;
    }
    case 'height': return f.tree.high === undefined ? null : { times: f.tree.high / FOOT, from: [told(f.tree.high, 'm', 'tree', f.tree.name)] };
  }
}

/** Whether a rule is meant for this tree: crop, kind, size, age, ground, climate and its own condition. */
export function fits(rule: Rule, f: Facts): boolean {
  const { tree } = f;
  if (!rule.crops.includes(tree.crop) || tree.tub !== undefined) return false;
  if (rule.kind !== undefined && rule.kind !== tree.word) return false;
  if (rule.size !== undefined && rule.size !== tree.size) return false;
  if (rule.climate === 'warm' && f.where.mildWinters === false) return false;
  if (rule.bearing !== undefined && rule.bearing === f.young) return false;
  if (rule.ground === 'grass' && !has(f, 'grass') && !has(f, 'fed lawn')) return false;
  if (rule.ground === 'bare' && (has(f, 'grass') || has(f, 'fed lawn'))) return false;
  if (rule.years && (f.years === null ? rule.by !== 'trunk' : f.years < rule.years[0] || f.years > rule.years[1])) return false;
  if (rule.spacingFt !== undefined && !(tree.spacing && Math.min(...tree.spacing) >= rule.spacingFt * FOOT * (1 - 1e-9))) return false;
  if (rule.if === 'no-soil-test' && f.soil) return false;
  if (rule.if === 'growth-short') {
    const growth = growthOf(f);
    const range = growthRange(f);
    if (growth !== null && range && growth >= range.low.value) return false;
  }
  return true;
}

/** Every published rule that fits the tree, low and high. */
export function span(f: Facts): Nitrogen[] {
  const found = NITROGEN_RULES.filter((rule) => fits(rule, f)).flatMap((rule) => {
    const low = applyRule(rule, f, rule.low, rule.base?.[0] ?? 0);
    const wide = rule.high !== undefined || rule.base !== undefined;
    const high = wide ? applyRule(rule, f, rule.high ?? rule.low, rule.base?.[1] ?? 0) : null;
    return [low, high].filter((x): x is Nitrogen => x !== null);
  });
  if (f.tree.tub !== undefined) return [];
  if (f.tree.crop === 'citrus') found.push(...citrusSpan(f));
  if (f.tree.crop === 'blueberry') found.push(blueberry(PENN_BLUEBERRY, f), blueberry(NEW_YORK_BLUEBERRY_SULPHATE, f), blueberry(NEW_YORK_BLUEBERRY, f));
  return found;
}

/** A table's year counts the planting year as 1. Untold age takes the first year that is fed. */
const tableYear = (f: Facts, first: number): number => (f.years === null ? first : f.years + 1);

/** California's table in California and Arizona, from its second year; Florida's elsewhere. The low end. */
export function citrusRow(f: Facts): { row: CitrusRow; figure: Nitrogen } {
  const dry = f.where.state === 'california' || f.where.state === 'arizona';
  const year = Math.min(5, tableYear(f, 1));
  const table = dry && year > 1 ? CALIFORNIA_CITRUS : FLORIDA_CITRUS;
  const row = table.rows.find((r) => r.year === year)!;
  return { row, figure: figure(convert(row.low, 'lb', 'g'), 'g', 'N', 'table-year', table.cite, yearsOf(f)) };
}

function citrusSpan(f: Facts): Nitrogen[] {
  const year = Math.min(5, tableYear(f, 1));
  return [FLORIDA_CITRUS, CALIFORNIA_CITRUS].flatMap((table) => {
    const row = table.rows.find((r) => r.year === year);
    return row ? [row.low, row.high].map((lb) => figure(convert(lb, 'lb', 'g'), 'g', 'N', 'table-year', table.cite, yearsOf(f))) : [];
  });
}

export function blueberry(table: typeof PENN_BLUEBERRY, f: Facts): Nitrogen {
  const year = tableYear(f, 2);
  const ounces = table.ounces[Math.min(year, table.ounces.length) - 1] ?? 0;
  return figure((convert(ounces, 'oz', 'g') * table.percentN) / 100, 'g', 'N', 'table-year', table.cite, yearsOf(f));
}
