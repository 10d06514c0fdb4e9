/** How much lime: the lab's own rate, else its test by that test's own table, else the texture. First dug in, then as a surface dose under standing trees. */
import type { Figure } from '../reason/figure.ts';
import { figure } from '../reason/figure.ts';
import type { LimeTable } from '../tables/lime.ts';
import {
  LIME_BY_TEXTURE, LIME_LIMIT, LIME_LIMIT_LIGHT, LIME_LIMITS_ELSEWHERE, LIME_PER_UNIT, LIME_TABLES, SURFACE_DEPTH,
} from '../tables/lime.ts';
import { convert, INCH } from '../units/units.ts';
import type { PhSoil } from './soil.ts';

type Rate = Figure<'g/m2', 'lime'>;
/** `dugIn` is pure calcium carbonate for a layer `depthM` deep. */
export type LimeNeed = {
  /** Raised to the lowest that the test's table serves, where that still suits. */
  readonly goal: Figure<'pH', 'soil'>;
  readonly by: 'lab' | 'sikora' | 'smp' | 'acidity' | 'texture';
  readonly dugIn: Rate;
  readonly depthM: number;
  /** Lowest and highest of the pages that know the texture alone, on the surface. */
  readonly range: readonly [Rate, Rate] | null;
};

const arithmetic = { source: 'definition', at: 'units of area rate', mark: 'derived' } as const;
/** A lab that says no depth means its six inches. */
const LAB_DEPTH = 6 * INCH;

/** A table's lowest goal serves one that lies at most so far under it. */
const RAISED_AT_MOST = 0.5;

/** What it takes from now to the goal; null where the test or the goal lies outside its table. `highest` is the most that a goal may be raised to. */
export function limeNeed(soil: PhSoil, wanted: Figure<'pH', 'soil'>, state: string | null, highest: number): LimeNeed | null {
  if (soil.lime) {
    const rate = figure(convert(soil.lime.value, soil.lime.unit, 'g/m2'), 'g/m2', 'lime', 'lime-lab', soil.lime.cite, [soil.lime]);
    return { goal: wanted, by: 'lab', dugIn: rate, depthM: soil.depthM ?? LAB_DEPTH, range: null };
  }
  const test = soil.buffer?.test ? { id: soil.buffer.test, value: soil.buffer.value } : soil.acidity === null ? null : { id: 'acidity' as const, value: soil.acidity };
  const tables = test ? LIME_TABLES.filter((t) => t.test === test.id) : [];
  const table = tables.find((t) => state !== null && t.states?.includes(state)) ?? tables.find((t) => !t.states);
  if (!test || !table) return byTexture(soil, wanted);
  const [lowest, top] = [table.goals[0]!, table.goals.at(-1)!];
  const raised = wanted.value < lowest && lowest - wanted.value <= RAISED_AT_MOST && lowest <= highest;
  const goal = raised ? figure(lowest, 'pH', 'soil', 'ph-goal', table.cite, [wanted]) : wanted;
  const values = table.rows.map((r) => r[0]);
  // A buffer under the table, or an acidity over it, asks for more than anybody printed.
  if (goal.value < lowest || goal.value > top || (table.test === 'acidity' ? test.value > Math.max(...values) : test.value < Math.min(...values))) return null;
  const said = figure(test.value, test.id === 'acidity' ? 'meq/100g' : 'pH', test.id === 'acidity' ? 'acidity' : 'soil', 'printed-by-lab', soil.now.cite);
  const printed = figure(inTable(table, test.value, goal.value), table.unit, 'lime', 'lime-table', table.cite, [said, goal]);
  const depthM = soil.depthM ?? table.depthIn * INCH;
  const pure = (convert(printed.value, table.unit, 'g/m2') * table.reference) / 100;
  const dugIn = figure((pure * depthM) / (table.depthIn * INCH), 'g/m2', 'lime', 'lime-dug-in', table.reference === 100 ? arithmetic : table.cite, [printed, figure(depthM, 'm', 'soil', 'depth', table.cite)]);
  return { goal, by: test.id, dugIn, depthM, range: null };
}

/** Between printed cells in a straight line; outside the printed span its edge. An acidity of nothing needs nothing. */
function inTable(table: LimeTable, value: number, goal: number): number {
  if (table.test === 'acidity' && value <= 0) return 0;
  const rows = [...table.rows].sort((a, b) => a[0] - b[0]);
  // A buffer above the table needs little or no lime; none is the careful answer.
  if (table.test !== 'acidity' && value > rows.at(-1)![0]) return 0;
  const column = (k: number): number => between(rows.map((r) => [r[0], r[k + 1]!]), value);
  return between(table.goals.map((g, k) => [g, column(k)]), goal);
}

/** Straight lines through points sorted by x; beyond the ends their value. */
export function between(points: readonly (readonly [number, number])[], x: number): number {
  const next = points.findIndex(([px]) => px >= x);
  if (next === 0) return points[0]![1];
  if (next < 0) return points.at(-1)![1];
  const [[x0, y0], [x1, y1]] = [points[next - 1]!, points[next]!];
  return y0 + ((x - x0) / (x1 - x0)) * (y1 - y0);
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
  const surface = onSurface(dugIn, depthM);
  return { goal, by: 'texture', dugIn, depthM, range: surface.value <= other.value ? [surface, other] : [other, surface] };
}

/** Lime reaches two inches from the top; a rate for no more than that is not cut again. */
function onSurface(dugIn: Rate, depthM: number): Rate {
  const reach = convert(SURFACE_DEPTH.value, SURFACE_DEPTH.unit, 'm');
  return figure(dugIn.value * Math.min(1, reach / depthM), 'g/m2', 'lime', 'lime-surface', SURFACE_DEPTH.cite, [dugIn, figure(depthM, 'm', 'soil', 'depth', dugIn.cite)]);
}

/** This year's surface dose of a product: `strength` is its calcium carbonate equivalent as a share of one. */
export function limeDose(need: LimeNeed, strength: number, soil: PhSoil): Rate {
  const surface = onSurface(need.dugIn, need.depthM);
  const product = figure(surface.value / strength, 'g/m2', 'lime', 'lime-strength', { source: 'definition', at: 'rate × 100 / CCE', mark: 'derived' }, [surface, figure(strength * 100, '%', 'lime', 'strength', { source: 'grower', at: 'label', mark: 'read' })]);
  const limit = limeLimit(soil);
  const most = limit.value / Math.max(1, strength);
  if (product.value <= most) return product;
  return figure(most, 'g/m2', 'lime', 'lime-limited', limit.cite, [product, limit]);
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
