/** How much lime: the lab's own rate, else its test by the place's own method or a general one, else the texture. First dug in, then as a surface dose under standing trees. */
import type { Cite, Figure } from '../reason/figure.ts';
import { figure } from '../reason/figure.ts';
import { BUFFER_UNDER, LIME_BY_TEXTURE, LIME_LIMIT, LIME_LIMIT_DUG, LIME_LIMIT_LIGHT, LIME_LIMITS_ELSEWHERE, LIME_PER_UNIT, SURFACE_DEPTH } from '../tables/lime.ts';
import type { LimeFormula } from '../tables/lime-equations.ts';
import { LIME_EQUATIONS, LIME_FORMULAS } from '../tables/lime-equations.ts';
import type { LimeTest } from '../tables/lime-tests.ts';
import { LIME_GRIDS, ORGANIC_SOIL } from '../tables/lime-tests.ts';
import type { StepId } from '../words/words.ts';
import { convert, INCH } from '../units/units.ts';
import type { LimeRule } from './lime-formulas.ts';
import { between, byFormula, columnsOf, depthOf, saidFor, testValue } from './lime-formulas.ts';
import type { PhSoil } from './soil.ts';

type Ph = Figure<'pH', 'soil'>;
type Rate = Figure<'g/m2', 'lime'>;
/** `dugIn` is pure calcium carbonate for a layer `depthM` deep. */
export type LimeNeed = {
  /** Raised to the lowest that the test's table serves, where that still suits. */
  readonly goal: Ph;
  readonly by: 'lab' | LimeTest | 'texture';
  readonly dugIn: Rate;
  readonly depthM: number;
  /** What other publications of this test or of this texture ask for, each for its own layer; this one among them. */
  readonly others: readonly { readonly rate: Rate; readonly depthM: number; readonly surface?: true }[];
  /** The table's, where it is another place's than the grower's. */
  readonly elsewhere?: Cite;
};

type Span = { readonly low: number; readonly high: number };
const arithmetic = { source: 'definition', at: 'units of area rate', mark: 'derived' } as const;
/** A lab that says no depth means its six inches. */
const LAB_DEPTH = 6 * INCH;

/** A table's lowest goal serves one that lies at most so far under it; its highest one above it where that still suits. */
const RAISED_AT_MOST = 0.5;

const RULES: readonly LimeRule[] = [...LIME_GRIDS, ...LIME_EQUATIONS, ...LIME_FORMULAS];
const TESTS: readonly LimeTest[] = ['sikora', 'smp', 'mehlich-buffer', 'adams-evans', 'moore-sikora', 'acidity', 'lime-buffer-capacity', 'base-saturation', 'aluminium', 'ecec'];

/** Why there is no rate: it lies beyond what was printed, the buffer is one of which no table is held, or the soil is organic and no table for such is held. */
export type NoLime = 'no-rate' | 'buffer-under' | 'woodruff' | 'modified-mehlich' | 'organic-soil';

/** Organic matter where a country takes a soil for an organic one, %; a soil that is called peat without it counts as nothing else. */
function organicIn(soil: PhSoil, region: string | null): number | null {
  const matter = soil.organic ?? (soil.peat ? 100 : 0);
  const limit = ORGANIC_SOIL.find(({ countries }) => countries.length === 0 || (region !== null && countries.includes(region.slice(0, 2))))!;
  return matter > limit.above ? matter : null;
}

/** What it takes from now to the goal, which a table may move within what suits. */
export function limeNeed(soil: PhSoil, wanted: Ph, region: string | null, suits: Span): LimeNeed | NoLime {
  if (soil.lime) {
    const rate = figure(convert(soil.lime.value, soil.lime.unit, 'g/m2'), 'g/m2', 'lime', 'lime-lab', soil.lime.cite, [soil.lime]);
    return { goal: wanted, by: 'lab', dugIn: rate, depthM: soil.depthM ?? LAB_DEPTH, others: [] };
  }
  // Mehlich's buffer starts so low that its salts alone may take it under the soil.
  if (soil.buffer && soil.buffer.test !== 'mehlich-buffer' && soil.now.value - soil.buffer.value >= BUFFER_UNDER.value - 1e-9) return 'buffer-under';
  const matter = organicIn(soil, region);
  const suited = RULES.filter(({ organic }) => (matter === null ? organic === undefined : organic !== undefined && matter > organic.span[0] && matter <= organic.span[1]));
  const isOwn = (r: LimeRule): boolean => region !== null && r.region.some((home) => region === home || region.startsWith(`${home}-`));
  const isAbroad = (r: LimeRule): boolean => r.abroad === true;
  // Saturations come last, and only where there is no buffer whose name or table could be asked for.
  const general = TESTS.filter((t) => t !== 'base-saturation');
  const last: readonly LimeTest[] = soil.buffer === null ? ['base-saturation'] : [];
  for (const [tests, serves] of [[TESTS, isOwn], [general, isAbroad], [['place'] as const, isOwn], [last, isAbroad]] as const) {
    for (const test of tests) {
      const value = testValue(soil, test);
      if (value === null) continue;
      const rules = suited.filter((r) => r.test.includes(test) && (serves(r) || isOwn(r)));
      const tried = rules.filter((r) => r.label === undefined && serves(r)).map((rule) => ({ rule, found: rated(rule, rules, test, value, wanted, suits, soil) })).find((x) => x.found !== 'lacks');
      if (!tried || tried.found === 'lacks') continue;
      const { rule, found: lead } = tried;
      if (lead === 'beyond') return 'no-rate';
      const spans = rules.filter((r) => r.label === 'span').map((r) => rated(r, [r], test, value, lead.goal, suits, soil)).filter((x) => typeof x === 'object');
      const others = spans.length === 0 ? [] : [lead, ...spans].map((x) => ({ rate: x.dugIn, depthM: x.depthM }));
      return { ...lead, by: test, others, ...(region !== null && !isOwn(rule) ? { elsewhere: rule.cite } : {}) };
    }
  }
  if (matter !== null) return 'organic-soil';
  const test = soil.buffer?.test;
  if (test === 'woodruff' || test === 'modified-mehlich') return test;
  return test ? 'no-rate' : byTexture(soil, wanted);
}

const STEPS: Partial<Record<LimeFormula['formula'], StepId>> = {
  'buffer-capacity': 'lime-capacity', 'saturation-goal': 'lime-fill', 'saturation-line': 'lime-saturation', aluminium: 'lime-aluminium', 'per-unit': 'lime-by-ph', 'ph-rows': 'lime-by-ph', 'ph-line': 'lime-by-ph', 'texture-step': 'lime-texture', 'texture-factor': 'lime-texture', 'kcl-classes': 'lime-class', 'garden-classes': 'lime-garden',
};

/** One method's rate in its printed unit, then as pure lime for the layer. A publication's table and its equation are read together. */
function rated(rule: LimeRule, beside: readonly LimeRule[], test: LimeTest, value: number, asked: Ph, suits: Span, soil: PhSoil): Pick<LimeNeed, 'goal' | 'dugIn' | 'depthM'> | 'beyond' | 'lacks' {
  const target = rule.organic?.target;
  const wanted = target && target.ph < asked.value ? figure(target.ph, 'pH', 'soil', 'ph-goal', target.cite, [asked]) : asked;
  const said = saidFor(test, value, soil);
  const from = (goal: Ph): Figure[] => [said[0]!, goal, ...said.slice(1)];
  if ('formula' in rule) {
    const rate = byFormula(rule, test, value, wanted.value, soil);
    if (typeof rate !== 'number') return rate;
    const full = rule.formula === 'saturation-goal' ? [figure(rule.saturation, '%', 'acidity', 'fruit-saturation', rule.cite)] : [];
    const of = rule.formula === 'kcl-classes' ? 'CaO' : 'lime';
    return dug(rule, figure(rate, rule.unit, of, STEPS[rule.formula] ?? 'lime-table', rule.cite, [...from(wanted), ...full]), wanted, soil);
  }
  const found = beside.filter((r) => !('formula' in r) && r.cite.source === rule.cite.source).map((r) => columnsOf(r as Exclude<LimeRule, LimeFormula>, test, value, soil));
  const columns = found.flat().sort((a, b) => a.goal - b.goal);
  const [lowest, top] = [columns[0]!.goal, columns.at(-1)!.goal];
  const moved = wanted.value < lowest && lowest - wanted.value <= RAISED_AT_MOST && lowest <= suits.high ? lowest : wanted.value > top && top >= suits.low ? top : null;
  const goal = moved === null ? wanted : figure(moved, 'pH', 'soil', 'ph-goal', rule.cite, [wanted]);
  if (goal.value < lowest || goal.value > top) return 'beyond';
  // The columns that it is read from: the printed goal itself, or those on either side.
  const used = columns.filter((c, i) => c.goal === goal.value || (goal.value > c.goal && goal.value < (columns[i + 1]?.goal ?? 0)) || (goal.value < c.goal && goal.value > (columns[i - 1]?.goal ?? 15)));
  const cite = used.find((c) => c.cite.mark === 'memory')?.cite ?? used[0]!.cite;
  const ends = 'goals' in rule ? test !== 'acidity' && value < Math.min(...rule.rows.map((r) => r[0])) : value < rule.span[0];
  return dug(rule, figure(between(columns.map((c) => [c.goal, c.rate]), goal.value), rule.unit, 'lime', ends ? 'lime-table-end' : 'lime-table', cite, from(goal)), goal, soil);
}

/** As pure lime for the layer that was sampled, or that the method is for. */
function dug(rule: LimeRule, printed: Figure, goal: Ph, soil: PhSoil): Pick<LimeNeed, 'goal' | 'dugIn' | 'depthM'> {
  const depthM = depthOf(rule, soil);
  const printedM = convert(rule.depth[0], rule.depth[1], 'm');
  const layers = 'perInch' in rule ? 1 : depthM / printedM;
  const pure = (convert(printed.value, rule.unit, 'g/m2') * rule.reference * layers) / 100;
  const dugIn = figure(pure, 'g/m2', 'lime', 'lime-dug-in', rule.reference === 100 ? arithmetic : rule.cite, [
    printed, figure(depthM, 'm', 'soil', 'depth', depthM === printedM ? rule.cite : { source: 'lab', at: 'depth', mark: 'read' }),
    ...(layers === 1 ? [] : [figure(printedM, 'm', 'soil', 'depth', rule.cite)]),
  ]);
  return { goal, dugIn, depthM };
}

/** Without a test: two weak pages, one of lime dug in, one of lime on the surface. An unknown texture is taken as sandy, which needs least. */
function byTexture(soil: PhSoil, goal: Figure<'pH', 'soil'>): LimeNeed {
  const heaviness = soil.texture === 'clay' ? 'heavy' : soil.texture === 'loam' ? 'medium' : 'light';
  const column = { light: 1, medium: 2, heavy: 3 }[heaviness];
  const to65 = (ph: number): number => between(LIME_BY_TEXTURE.rows.map((r) => [r[0], r[column]!]), ph);
  const printed = figure(Math.max(0, to65(soil.now.value) - to65(goal.value)), LIME_BY_TEXTURE.unit, 'lime', 'lime-texture', LIME_BY_TEXTURE.cite, [soil.now, goal]);
  const depthM = LIME_BY_TEXTURE.depthIn * INCH;
  const dugIn = figure(convert(printed.value, LIME_BY_TEXTURE.unit, 'g/m2'), 'g/m2', 'lime', 'lime-dug-in', arithmetic, [printed, figure(depthM, 'm', 'soil', 'depth', LIME_BY_TEXTURE.cite)]);
  const steps = Math.max(0, goal.value - soil.now.value);
  const perUnit = figure(LIME_PER_UNIT[heaviness] * steps, LIME_PER_UNIT.unit, 'lime', 'lime-per-unit', LIME_PER_UNIT.cite, [soil.now, goal]);
  const other = figure(convert(perUnit.value, LIME_PER_UNIT.unit, 'g/m2'), 'g/m2', 'lime', 'lime-on-top', arithmetic, [perUnit]);
  return { goal, by: 'texture', dugIn, depthM, others: [{ rate: dugIn, depthM }, { rate: other, depthM: 0, surface: true }] };
}

/** Lime reaches two inches from the top; a rate for no more than that is not cut again. */
function onSurface(dugIn: Rate, depthM: number): Rate {
  const reach = convert(SURFACE_DEPTH.value, SURFACE_DEPTH.unit, 'm');
  return figure(dugIn.value * Math.min(1, reach / depthM), 'g/m2', 'lime', 'lime-surface', SURFACE_DEPTH.cite, [dugIn, figure(depthM, 'm', 'soil', 'depth', dugIn.cite)]);
}

/** Every rate behind a need, as it would go on: on the surface, or dug in, which a page of surface lime does not tell. */
export function limeRates(need: LimeNeed, digIn: boolean): Rate[] {
  if (digIn) return need.others.filter((o) => !o.surface).map((o) => o.rate);
  return need.others.map((o) => (o.surface ? o.rate : onSurface(o.rate, o.depthM)));
}

/** This year's dose of a product, on the surface or dug in before planting: `strength` is its calcium carbonate equivalent as a share of one. */
export function limeDose(need: LimeNeed, strength: number, soil: PhSoil, digIn: boolean): Rate {
  const pure = digIn ? need.dugIn : onSurface(need.dugIn, need.depthM);
  const product = strength === 1 ? pure : figure(pure.value / strength, 'g/m2', 'lime', 'lime-strength', { source: 'definition', at: 'rate × 100 / CCE', mark: 'derived' }, [pure, figure(strength * 100, '%', 'lime', 'strength', { source: 'grower', at: 'label', mark: 'read' })]);
  const limit = digIn ? figure(convert(LIME_LIMIT_DUG.value, LIME_LIMIT_DUG.unit, 'g/m2'), 'g/m2', 'lime', 'lime-dug-limit', LIME_LIMIT_DUG.cite) : limeLimit(soil);
  // On the surface so much of any product; what is dug in may be more of a weak one.
  const most = limit.value / (digIn ? strength : Math.max(1, strength));
  if (product.value <= most) return product;
  return figure(most, 'g/m2', 'lime', digIn ? 'lime-dug-limited' : 'lime-limited', limit.cite, [product, limit]);
}

/** The most lime on the surface in a year: the strictest orchard rule, and less on light soil. */
function limeLimit(soil: PhSoil): Rate {
  const toRate = (r: { value: number; unit: Figure['unit']; cite: Figure['cite'] }): Rate => figure(convert(r.value, r.unit, 'g/m2'), 'g/m2', 'lime', 'lime-limit', r.cite);
  const elsewhere = LIME_LIMITS_ELSEWHERE.map(toRate);
  const orchard = toRate(LIME_LIMIT);
  if (soil.texture !== 'sand' && soil.texture !== 'sandy loam') return figure(orchard.value, 'g/m2', 'lime', 'lime-limit', LIME_LIMIT.cite, elsewhere);
  const light = LIME_LIMIT_LIGHT.bands.find((b) => soil.now.value < b.under)!.most;
  return figure(light, 'g/m2', 'lime', 'lime-limit', LIME_LIMIT_LIGHT.cite, [orchard, ...elsewhere]);
}
