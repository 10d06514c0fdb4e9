/** What one method asks for, in its own unit: a grid read in straight lines, an equation for each goal, or a formula of its own. */
import { cacl2PhOf, kclPhOf } from '../rating/salt-ph.ts';
import type { Cite, Figure } from '../reason/figure.ts';
import { figure } from '../reason/figure.ts';
import type { LimeEquations, LimeFormula } from '../tables/lime-equations.ts';
import type { LimeGrid, LimeTest } from '../tables/lime-tests.ts';
import { convert, INCH } from '../units/units.ts';
import type { PhSoil } from './soil.ts';

export type LimeRule = LimeGrid | LimeEquations | LimeFormula;

/** `beyond` what was printed it is refused; a method that `lacks` a fact does not apply. */
export type Found = number | 'beyond' | 'lacks';

/** The value of a test on this soil; null where nobody told it. */
export function testValue(soil: PhSoil, test: LimeTest): number | null {
  switch (test) {
    case 'acidity': return soil.acidity;
    case 'lime-buffer-capacity': return soil.bufferCapacity?.value ?? null;
    case 'base-saturation': return soil.baseSaturation;
    case 'aluminium': return soil.aluminium;
    case 'ecec': return soil.ecec;
    case 'place': return soil.now.value;
    default: return soil.buffer?.test === test ? soil.buffer.value : null;
  }
}

/** Straight lines through points sorted by x; beyond the ends their value. */
export function between(points: readonly (readonly [number, number])[], x: number): number {
  const next = points.findIndex(([px]) => px >= x);
  if (next === 0) return points[0]![1];
  if (next < 0) return points.at(-1)![1];
  const [[x0, y0], [x1, y1]] = [points[next - 1]!, points[next]!];
  return y0 + ((x - x0) / (x1 - x0)) * (y1 - y0);
}

/** A goal that was printed, and what it asks for at the test's value. */
export type Column = { readonly goal: number; readonly rate: number; readonly cite: Cite };

/** Every goal of a grid or of equations at the test's value: above the printed span of a buffer nothing, at its acid end no more than the last that was printed. */
export function columnsOf(rule: LimeGrid | LimeEquations, test: LimeTest, value: number, soil: PhSoil): readonly Column[] {
  const { cite } = rule;
  if ('goals' in rule) {
    const rows = [...rule.rows].sort((a, b) => a[0] - b[0]);
    const none = test === 'acidity' ? value <= 0 : value > rows.at(-1)![0];
    return rule.goals.map((goal, k) => ({ goal, cite, rate: none ? 0 : between(rows.map((r) => [r[0], r[k + 1]!]), value) }));
  }
  const [least, most] = rule.span;
  const b = Math.max(value, least) * (rule.index ? 10 : 1);
  const layers = rule.perInch ? depthOf(rule, soil) / INCH : 1;
  return rule.rows.map(([goal, constant, line, curve = 0, byPh = 0]) => {
    const rate = (constant + line * b + curve * b * b + byPh * soil.now.value) * layers;
    return { goal, cite, rate: value > most ? 0 : Math.min(Math.max(0, rate), rule.most ?? Infinity) };
  });
}

/** The layer in metres: as told, else the method's own; a dose as it is spread knows none but that. */
export const depthOf = (rule: LimeRule, soil: PhSoil): number => (rule.asSpread ? null : soil.depthM) ?? convert(rule.depth[0], rule.depth[1], 'm');

const atLeastNone = (rate: number): number => Math.max(0, rate);

/** What a formula asks for from now to the goal. */
export function byFormula(rule: LimeFormula, test: LimeTest, value: number, goal: number, soil: PhSoil): Found {
  const now = soil.now.value;
  switch (rule.formula) {
    case 'target-buffer': return atLeastNone((Math.max(goal, rule.target) - value) * rule.perUnit);
    case 'mehlich': {
      // Near the buffer's own pH the share grows without bound.
      if (now >= rule.nearEnd) return 'beyond';
      const acidity = test === 'acidity' ? value : rule.acidityFactor * (rule.bufferEnd - value);
      return atLeastNone(acidity * Math.min(1, (goal - now) / (rule.bufferEnd - now)));
    }
    case 'adams-evans': {
      // The acidity that the buffer shows is part of the exchange capacity.
      if (Math.max(soil.cec ?? 0, (rule.acidityFactor * (rule.bufferStart - value)) / 1000) >= rule.cecUnder) return 'beyond';
      const [from, to] = [unsaturated(rule.curve, now), unsaturated(rule.curve, goal)];
      if (from === null || to === null || from <= 0) return 'beyond';
      return atLeastNone(((rule.acidityFactor * (rule.bufferStart - value)) / from) * (from - to) * rule.inefficiency);
    }
    case 'acidity-rule': {
      if (goal < rule.goal || goal > rule.neutralPh) return 'beyond';
      const toGoal = value > rule.acidityOver ? value * rule.toGoal : now < rule.goal ? rule.least : 0;
      return between([[rule.goal, toGoal], [rule.neutralPh, value * rule.toNeutral]], goal);
    }
    case 'buffer-capacity': {
      const { plain, square } = rule.toEquilibrium;
      const capacity = soil.bufferCapacity!.after === 'equilibrium' ? value : value * (plain + square * value);
      return capacity * (goal - now) * rule.poundsPerPpm;
    }
    case 'saturation-goal': return soil.cec === null ? 'lacks' : atLeastNone((soil.cec * (rule.saturation - value) * rule.perCharge) / 100);
    case 'saturation-line': {
      if (soil.cec === null) return 'lacks';
      if (goal > rule.neutralPh) return 'beyond';
      return (soil.cec * (100 - value) * rule.perCharge * (goal - now)) / (rule.neutralPh - now) / 100;
    }
    case 'aluminium': {
      if (soil.texture !== 'clay') return value * rule.otherTimes;
      if (soil.calcium === null || soil.exchangeableMagnesium === null) return 'lacks';
      return atLeastNone(rule.clay.times * value + rule.clay.plus - (soil.calcium + soil.exchangeableMagnesium));
    }
    case 'ecec': return byEcec(rule, value, cacl2PhOf(now), cacl2PhOf(goal));
    case 'per-unit': return (goal - now) * rule.perUnit;
    case 'texture-factor': {
      const { texture } = soil;
      return texture === null ? 'lacks' : (texture === 'clay' ? rule.heavy : texture === 'sand' ? rule.light : rule.medium) * (goal - now);
    }
    case 'texture-step': {
      const step = soil.texture === 'clay' ? rule.heavy : soil.texture === 'sand' || soil.texture === 'sandy loam' ? rule.light : null;
      return step === null ? 'lacks' : (step * (goal - now)) / rule.step;
    }
    case 'ph-rows': {
      const column = rule.classes.length === 1 ? 1 : soil.texture && { sand: 1, 'sandy loam': 2, loam: 2, clay: 3 }[soil.texture];
      if (column === null) return 'lacks';
      if (now < rule.rows[0]![0] || goal > rule.end) return 'beyond';
      const toEnd = (ph: number): number => between([...rule.rows.map((r) => [r[0], r[column]!] as const), [rule.end, 0]], ph);
      return atLeastNone(toEnd(now) - toEnd(goal));
    }
    case 'ph-line': return goal < rule.organic!.target.ph ? 'beyond' : atLeastNone(rule.constant + rule.perPh * now);
    case 'garden-classes': {
      if (soil.texture === null) return 'lacks';
      const { rows } = rule.rates[({ sand: 'light', 'sandy loam': 'light', loam: 'medium', clay: 'heavy' } as const)[soil.texture]];
      const salt = cacl2PhOf(now);
      // "Under 5.3" leaves 5.3 out, "5.3 to 5.7" holds both.
      return rows.find(([edge], i) => (i === 0 ? salt < edge : salt <= edge))?.[1] ?? 0;
    }
    case 'kcl-classes': {
      if (soil.texture === null) return 'lacks';
      const classes = rule.rates[({ sand: 'very light', 'sandy loam': 'light', loam: 'medium', clay: 'heavy' } as const)[soil.texture]];
      // Printed to tenths: what lies between two classes belongs to the lower.
      return classes.rows.find(([upTo]) => kclPhOf(soil.now) < upTo + 0.1 - 1e-9)?.[1] ?? 0;
    }
  }
}

/** The share of exchange sites without a base at a pH; null where the curve gives none between nothing and all. */
function unsaturated([constant, slope, square]: readonly [number, number, number], ph: number): number | null {
  const root = slope ** 2 - 4 * square * (constant - ph);
  const share = root < 0 ? NaN : (slope - Math.sqrt(root)) / (2 * square);
  return share >= 0 && share <= 1 ? share : null;
}

/** Each column is printed from its start to the first goal, the last from there to the second; in between in a straight line. */
function byEcec(rule: Extract<LimeFormula, { formula: 'ecec' }>, ecec: number, now: number, goal: number): Found {
  const [first, last] = [rule.toPh[0]!, rule.toPh[1]!];
  if (ecec > rule.rows.at(-1)![0] || now < rule.fromPh[0]! || goal > last) return 'beyond';
  const column = (k: number): number => between(rule.rows.map((r) => [r[0], r[k]!]), ecec);
  const toFirst = (ph: number): number => between([...rule.fromPh.map((s, k) => [s, column(k + 1)] as const), [first, 0], [last, -column(4)]], ph);
  return atLeastNone(toFirst(now) - toFirst(goal));
}

/** What was told, as the figures that a rate goes back to. */
export function saidFor(test: LimeTest, value: number, soil: PhSoil): Figure[] {
  const { cite } = soil.now;
  const charge = (n: number): Figure => figure(n, 'meq/100g', 'acidity', 'printed-by-lab', cite);
  switch (test) {
    case 'place': return [soil.now];
    case 'base-saturation': return [figure(value, '%', 'acidity', 'printed-by-lab', cite), ...(soil.cec === null ? [] : [charge(soil.cec)])];
    case 'lime-buffer-capacity': return [figure(value, 'mg/kg', 'lime', 'printed-by-lab', cite), soil.now];
    case 'acidity': case 'aluminium': case 'ecec': return [charge(value), soil.now];
    default: return [figure(value, 'pH', 'soil', 'printed-by-lab', cite), soil.now];
  }
}
