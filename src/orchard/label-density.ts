/** What a bag weighs that is sold by volume: by the density on the label, by what the material mostly weighs, or by percent of volume. */
import type { Facts } from '../reason/notice.ts';
import type { Material } from '../tables/materials.ts';
import { DENSITY_ODD, LIQUID_DENSITIES } from '../tables/materials.ts';
import { convert } from '../units/units.ts';
import type { NoticeId } from '../words/words.ts';
import { showMass, type System } from '../words/show.ts';

export type Weighed = {
  readonly g: number | null;
  /** g/mL of what is measured by volume. */
  readonly density: number | null;
  readonly fault?: { readonly code: NoticeId; readonly facts: Facts };
  readonly note?: { readonly code: NoticeId; readonly facts: Facts };
};
type Sold = {
  readonly g: number | null;
  readonly mL: number | null;
  readonly ofLiquid: boolean;
  /** Told on the label. */
  readonly density: number | null;
  readonly byVolume: boolean;
  readonly material: Material | null;
  /** As printed, where the numbers are oxides by weight. */
  readonly printed: readonly number[] | null;
  readonly system: System;
};

const POUND_A_GALLON = 453.59237 / 3785.411784;

/** The least and most g/mL of such a thing. */
function usual({ material, printed, ofLiquid }: Sold): readonly [number, number] | null {
  const { bulk, ozPerCup } = material ?? {};
  if (bulk) return [convert(bulk.low, bulk.unit, 'g/mL'), convert(bulk.high, bulk.unit, 'g/mL')];
  const known = ofLiquid || material?.liquid ? LIQUID_DENSITIES.find((d) => d.grade.every((x, i) => x === printed?.[i])) : undefined;
  if (known) return [known.low * POUND_A_GALLON, known.high * POUND_A_GALLON];
  return ozPerCup && !ofLiquid ? [convert(ozPerCup[0], 'oz/cup', 'g/mL'), convert(ozPerCup[1], 'oz/cup', 'g/mL')] : null;
}

export function weighed(sold: Sold): Weighed {
  const { g, mL, density, byVolume } = sold;
  if (density !== null && (density < DENSITY_ODD.low || density > DENSITY_ODD.high)) return { g, density: null, fault: { code: 'density-odd', facts: { read: round(density), low: DENSITY_ODD.low, high: DENSITY_ODD.high } } };
  // Weight and volume both told: so heavy it is.
  const own = density ?? (g !== null && mL !== null && mL > 0 ? g / mL : null);
  if (own !== null && byVolume && (own < DENSITY_ODD.low || own > DENSITY_ODD.high)) return { g, density: null, fault: { code: 'density-odd', facts: { read: round(own), low: DENSITY_ODD.low, high: DENSITY_ODD.high } } };
  if (own !== null) return { g: g ?? (mL === null ? null : mL * own), density: own };
  // Grams in 100 mL: what a millilitre weighs does not matter, and it counts as one gram.
  if (byVolume) return g === null ? { g: mL, density: 1 } : { g, density: null, fault: { code: 'density-needed', facts: {} } };
  if (mL === null) return { g, density: null };
  const span = usual(sold);
  if (!span) return { g, density: null, fault: { code: 'density-needed', facts: {} } };
  const [low, high] = span;
  const middle = (mL * (low + high)) / 2;
  // A label is read before it is known in which language the orchard is spoken of.
  const show = (x: number): string => showMass(x, sold.system, 'en-GB');
  return { g: middle, density: (low + high) / 2, note: { code: 'weight-by-volume', facts: { weight: show(middle), low: high > 1.02 * low ? show(mL * low) : '', high: show(mL * high) } } };
}

const round = (x: number): number => Math.round(x * 100) / 100;
