/** Doses as a kitchen scale and a cup can show them. */
import type { Bag } from '../orchard/bag.ts';
import { convert, OUNCE } from '../units/units.ts';

export type System = 'us' | 'metric';

/** Half an ounce, or 10 g. */
export const stepOf = (system: System): number => (system === 'us' ? OUNCE / 2 : 10);

/** The nearest step; downward where the nearest would pass `most` grams. Under one step, a finer one serves. */
export function roundDose(g: number, system: System, most: number): number {
  for (const step of [stepOf(system), stepOf(system) / 5, stepOf(system) / 50]) {
    const near = Math.round(g / step) * step;
    const fitting = near <= most * (1 + 1e-9) ? near : Math.floor((Math.min(g, most) * (1 + 1e-9)) / step) * step;
    if (fitting > 0) return fitting;
  }
  return 0;
}

export type Doses = { readonly g: number; readonly most: number; readonly count: number; readonly share: number };

/**
 * Rounds an orchard's doses together: its total of the nutrient stays within 3 % of the plan by moving
 * the largest doses a step, never past their limits. `share` is the nutrient's share of the product.
 */
export function roundTogether(doses: readonly Doses[], system: System): number[] {
  const rounded = doses.map((d) => roundDose(d.g, system, d.most));
  const step = stepOf(system);
  const weight = (i: number): number => doses[i]!.count * doses[i]!.share;
  const plan = doses.reduce((sum, d, i) => sum + d.g * weight(i), 0);
  const order = doses.map((_, i) => i).sort((a, b) => doses[b]!.g - doses[a]!.g);
  for (const i of order) {
    const off = rounded.reduce((sum, g, k) => sum + g * weight(k), 0) - plan;
    if (Math.abs(off) <= 0.03 * plan) break;
    const moved = rounded[i]! - Math.sign(off) * step;
    if (moved < step || moved > doses[i]!.most * (1 + 1e-9)) continue;
    if (Math.abs(off - Math.sign(off) * step * weight(i)) < Math.abs(off)) rounded[i] = moved;
  }
  return rounded;
}

/** Rounds down what all together would take more than there is: the largest doses by a step, and by less where a dose is no more than that, until it is enough. */
export function withinStock(rounded: readonly number[], counts: readonly number[], stock: number, system: System): number[] {
  const grams = [...rounded];
  const step = stepOf(system);
  const total = (): number => grams.reduce((sum, g, i) => sum + g * counts[i]!, 0);
  for (const i of grams.map((_, k) => k).sort((a, b) => grams[b]! - grams[a]!)) {
    const off = total() - stock;
    if (off <= 1e-6 * stock) break;
    grams[i] = grams[i]! > step ? grams[i]! - step : roundDose(grams[i]!, system, grams[i]! - off / counts[i]!);
  }
  return grams;
}

/** Millilitres of a dose: by a level cup that the grower weighed, by what the label of a liquid says, else by the denser end of the product's printed spread. Null where none is known. */
export function volumeOf(g: number, { cupG, density, material }: Pick<Bag, 'cupG' | 'density' | 'material'>): number | null {
  if (cupG !== undefined) return (g / cupG) * convert(1, 'cup', 'mL');
  if (density !== undefined) return g / density;
  return material?.ozPerCup ? g / convert(material.ozPerCup[1], 'oz/cup', 'g/mL') : null;
}

/** Lime and sulphur, downward so that a limit holds: half ounces or 10 g, quarter pounds or 50 g from a kilogram on. */
export function roundAmendment(g: number, system: System): number {
  const step = system === 'us' ? (g < 32 * OUNCE ? OUNCE / 2 : 4 * OUNCE) : g < 1000 ? 10 : 50;
  const rounded = Math.floor(g / step + 1e-9) * step;
  return rounded > 0 ? rounded : Math.floor(g);
}

/** A shortfall or surplus under this share of the need is rounding. */
export const ROUNDING = 0.08;
