/** A row of pH: what is there, what is aimed at, what goes on this year, and every rate behind it. */
import type { CurvePoint } from '../ph/curve.ts';
import type { PhPlan } from '../ph/ph.ts';
import type { Collector } from './figures.ts';

export type PhRow = { readonly zone: string | null; readonly tree: string | null; readonly material: string | null; readonly g: number | null; readonly window: { readonly from: string; readonly until: string } | null; readonly curve: readonly CurvePoint[]; readonly digIn?: boolean };

export function phJson(plan: PhPlan, row: PhRow, figures: Collector): unknown {
  const { dose, dugIn, range, swallowed } = plan;
  const spread = dose && row.window ? dose : null;
  return {
    zone: row.zone, tree: row.tree, verdict: plan.verdict, reason: plan.reason,
    now: plan.now.value, nowWhy: figures.id(plan.now), goal: plan.goal.value, goalWhy: figures.id(plan.goal), suits: [plan.suits.low, plan.suits.high],
    ranges: plan.suits.ranges.map(([low, high]) => ({ source: low.cite.source, low: low.value, high: high.value })), rangesWhy: plan.suits.ranges.map(([low, high]) => [figures.id(low), figures.id(high)]),
    material: row.material, gPerM2: spread?.value ?? 0, ...(spread ? { gPerM2Why: figures.id(spread) } : {}), g: spread ? row.g : row.g === null ? null : 0,
    range: range && [range[0].value, range[1].value], ...(range ? { rangeWhy: [figures.id(range[0]), figures.id(range[1])] } : {}), ratesWhy: plan.rates.map((r) => figures.id(r)),
    dugIn: dugIn && { gPerM2: dugIn.dugIn.value, depthM: dugIn.depthM }, ...(dugIn ? { dugInWhy: { gPerM2: figures.id(dugIn.dugIn) } } : {}),
    ...(swallowed ? { freeLime: { percent: swallowed.percent, years: swallowed.years }, freeLimeWhy: figures.id(swallowed.sulphur) } : {}),
    ...(row.curve.length > 0 ? { curve: row.curve.map((p) => ({ ph: p.ph, gPerM2: [p.low, p.high] })) } : {}),
    ...(row.digIn ? { digIn: true } : {}),
    ...(plan.instead.length > 0 ? { instead: plan.instead.map((i) => ({ material: i.id, gPerM2: i.rate.value, gPerM2Why: figures.id(i.rate), ...(i.atOnce ? { atOnceGPerM2: i.atOnce.value } : {}), ...(i.nitrogen === null ? {} : { nitrogenGPerM2: i.nitrogen }) })) } : {}),
    doses: spread && row.window ? [{ g: row.g, gPerM2: spread.value, from: row.window.from, until: row.window.until }] : [],
  };
}
