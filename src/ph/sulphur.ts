/** How much sulphur: every published rate that fits, as a range; this year's dose; or a no with its numbers. */
import type { Cite, Figure } from '../reason/figure.ts';
import { figure } from '../reason/figure.ts';
import type { Crop } from '../tables/crops.ts';
import type { TextureClass } from '../tables/sulphur.ts';
import {
  FREE_LIME, SULPHUR_BY_CEC, SULPHUR_FROM_NEUTRAL, SULPHUR_LIMIT, SULPHUR_LIMIT_DUG, SULPHUR_LIMITS_ELSEWHERE, SULPHUR_RATES, SULPHUR_TO_45, TEXTURE_BY_CEC,
} from '../tables/sulphur.ts';
import type { Unit } from '../units/units.ts';
import { convert, INCH } from '../units/units.ts';
import { between } from './lime-formulas.ts';
import type { PhSoil } from './soil.ts';

type Sulphur<U extends Unit = Unit> = Figure<U, 'sulphur'>;

/** The texture told, else the one its exchange capacity goes with, else sand, which takes least. */
function textureFor(soil: PhSoil): TextureClass {
  if (soil.texture) return soil.texture;
  const { cec } = soil;
  return cec === null ? 'sand' : TEXTURE_BY_CEC.upTo.find(([most]) => cec <= most)![1];
}

/** Every published rate for the whole way from now to the goal, each in its printed unit, inside its printed spans; sorted, least first, in g/m². `followed` is the least that no weak page gives. */
export function sulphurRates(soil: PhSoil, goal: Figure<'pH', 'soil'>, crop: Crop | null): { readonly all: Sulphur<'g/m2'>[]; readonly followed: Sulphur<'g/m2'> | null } {
  const texture = textureFor(soil);
  const way = soil.now.value - goal.value;
  const within = ([low, high]: readonly [number, number] = [-Infinity, Infinity], ph: number): boolean => ph >= low && ph <= high;
  const from = [soil.now, goal];
  const layer = (depthM: number, cite: Cite): Figure<'m', 'soil'> => figure(depthM, 'm', 'soil', 'depth', cite);
  const weak: Sulphur[] = [];
  const printed: Sulphur[] = SULPHUR_RATES.flatMap((r) => {
    const rate = r.organic && soil.organic !== null && soil.organic > r.organic.over ? r.organic.rate : r.rates[texture];
    if (rate === undefined || !within(r.from, soil.now.value) || !within(r.to, goal.value) || (r.crops && (crop === null || !r.crops.includes(crop)))) return [];
    const f = figure((rate * way) / r.per, r.unit, 'sulphur', 'sulphur-rule', r.cite, [...from, ...(r.depthIn === undefined ? [] : [layer(r.depthIn * INCH, r.cite)])]);
    if (r.label === 'weak') weak.push(f);
    return [f];
  });
  const column = SULPHUR_TO_45.classes.findIndex((c) => c === texture);
  const [least, most] = [SULPHUR_TO_45.rows[0][0], SULPHUR_TO_45.rows[5][0]];
  if (column >= 0 && goal.value >= least && soil.now.value <= most) {
    const at = (ph: number): number => between(SULPHUR_TO_45.rows.map((r) => [r[0], r[column + 1]!]), ph);
    printed.push(figure(at(soil.now.value) - at(goal.value), SULPHUR_TO_45.unit, 'sulphur', 'sulphur-rule', SULPHUR_TO_45.cite, from));
  }
  const { capacities, rows } = SULPHUR_BY_CEC;
  if (soil.cec !== null && soil.cec >= capacities[0] && soil.cec <= capacities[2] && goal.value === SULPHUR_BY_CEC.goal && soil.now.value <= rows[4][0]) {
    const at = (k: 1 | 2 | 3): number => between(rows.map((r) => [r[0], r[k]]), soil.now.value);
    const rate = between([[capacities[0], at(1)], [capacities[1], at(2)], [capacities[2], at(3)]], soil.cec);
    printed.push(figure(rate, SULPHUR_BY_CEC.unit, 'sulphur', 'sulphur-rule', SULPHUR_BY_CEC.cite, [...from, figure(soil.cec, 'meq/100g', 'soil', 'printed-by-lab', soil.now.cite)]));
  }
  const { from: starts, to: goals, depthCm, low, high, unit, cite } = SULPHUR_FROM_NEUTRAL;
  if (within(starts, soil.now.value) && within(goals, goal.value)) {
    const deep = [...from, layer(depthCm / 100, cite)];
    if (texture !== 'clay') printed.push(figure(low, unit, 'sulphur', 'sulphur-rule', cite, deep));
    if (texture === 'clay' || texture === 'loam') printed.push(figure(high, unit, 'sulphur', 'sulphur-rule', cite, deep));
  }
  const arithmetic = { source: 'definition', at: 'units of area rate', mark: 'derived' } as const;
  const all = printed.map((p): Sulphur<'g/m2'> => figure(convert(p.value, p.unit, 'g/m2'), 'g/m2', 'sulphur', 'sulphur-way', arithmetic, [p])).sort((a, b) => a.value - b.value);
  return { all, followed: all.find((f) => !weak.includes(f.from[0] as Sulphur)) ?? null };
}

/** Sulphur that the soil's own lime swallows before the pH can fall, for `percent` of carbonate. */
export const freeLime = (percent: number): Sulphur<'lb/acre'> => figure(FREE_LIME.value * percent, FREE_LIME.unit, 'sulphur', 'free-lime', FREE_LIME.cite, [figure(percent, '%', 'lime', 'carbonate', FREE_LIME.cite)]);

/** The most a year on the surface round standing plants, g/m² of pure sulphur. */
export const sulphurLimit = (): Sulphur<'g/m2'> => {
  const elsewhere = SULPHUR_LIMITS_ELSEWHERE.map((l) => figure(convert(l.value, l.unit, 'g/m2'), 'g/m2', 'sulphur', 'sulphur-limit', l.cite));
  return figure(convert(SULPHUR_LIMIT.value, SULPHUR_LIMIT.unit, 'g/m2'), 'g/m2', 'sulphur', 'sulphur-limit', SULPHUR_LIMIT.cite, elsewhere);
};

/** All of what is mixed in before planting, or so much of it as goes first. */
function dugIn(least: Sulphur<'g/m2'>): Sulphur<'g/m2'> {
  const { value, unit, over, cite } = SULPHUR_LIMIT_DUG;
  const most = figure(convert(value, unit, 'g/m2'), 'g/m2', 'sulphur', 'sulphur-limit', cite);
  return least.value <= most.value ? least : figure(least.value * over.share, 'g/m2', 'sulphur', 'sulphur-first', cite, [least, most]);
}

/** This year's dose of a product: the least that any publication gives, on the surface at most the yearly limit. */
export function sulphurDose(least: Sulphur<'g/m2'>, strength: number, digIn = false): Sulphur<'g/m2'> {
  const limit = sulphurLimit();
  const onTop = least.value <= limit.value ? least : figure(limit.value, 'g/m2', 'sulphur', 'sulphur-limited', limit.cite, [least, limit]);
  const pure = digIn ? dugIn(least) : onTop;
  if (strength === 1) return pure;
  return figure(pure.value / strength, 'g/m2', 'sulphur', 'sulphur-strength', { source: 'definition', at: 'pure sulphur ÷ its share', mark: 'derived' }, [pure, figure(strength * 100, '%', 'sulphur', 'strength', { source: 'grower', at: 'label', mark: 'read' })]);
}
