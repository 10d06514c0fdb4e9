/** Which bag of lime or sulphur: what stands in the shed, else the cheapest for what it does; with magnesium where the soil is short of it. */
import type { Amendment } from '../orchard/amendment.ts';
import type { Bag } from '../orchard/bag.ts';
import type { Where } from '../orchard/where.ts';
import type { PhSoil } from '../ph/soil.ts';
import type { Figure } from '../reason/figure.ts';
import { figure } from '../reason/figure.ts';
import { CALCITIC_OVER_NORTH_CAROLINA, DOLOMITIC_BELOW, DOLOMITIC_BELOW_ONTARIO } from '../tables/lime-materials.ts';
import { MG_PER_CMOL } from '../units/substance.ts';
import { convert } from '../units/units.ts';

export type AmendmentBag = Bag & { readonly amends: Amendment };
/** `potash` is false where the soil wants none, or none is known to be wanted. */
export type SoilWants = { readonly magnesium: boolean; readonly potash: boolean; readonly ph: number };

/** Null where none is listed. Lime that burns is never chosen; ash only where its potash is wanted too, and behind every other lime, since no need counts what it brings. */
export function amendmentBagOf(kind: Amendment['kind'], bags: readonly Bag[], wants: SoilWants): AmendmentBag | null {
  const fitting = bags.filter((b): b is AmendmentBag => b.amends?.kind === kind && !b.amends.burns && isWelcome(b, wants));
  const cost = (b: AmendmentBag): number => (b.left !== null ? 0 : b.price && b.g ? b.price.amount / (b.g * b.amends.strength) : Infinity);
  const ash = (b: AmendmentBag): number => (b.amends.lime?.material.potash === undefined ? 0 : 1);
  const unsuited = (b: AmendmentBag): number => (b.amends.dolomitic !== wants.magnesium ? 1 : 0);
  return [...fitting].sort((a, b) => ash(a) - ash(b) || unsuited(a) - unsuited(b) || cost(a) - cost(b) || (a.label < b.label ? -1 : 1))[0] ?? null;
}

export function isWelcome({ amends }: Bag, { potash, ph }: Pick<SoilWants, 'potash' | 'ph'>): boolean {
  const material = amends?.lime?.material;
  return (potash || material?.potash === undefined) && ph <= (material?.mostPh?.ph ?? Infinity);
}

/** Some limes have a limit of their own beside that of all lime. */
export function withinOwnLimit(dose: Figure<'g/m2', 'lime'>, { lime }: Amendment): Figure<'g/m2', 'lime'> {
  const most = lime?.material.most;
  if (!most) return dose;
  const limit = figure(convert(most.value, most.unit, 'g/m2'), 'g/m2', 'lime', 'lime-limit', most.cite);
  return dose.value <= limit.value ? dose : figure(limit.value, 'g/m2', 'lime', 'lime-limited', most.cite, [dose, limit]);
}

/** Whether lime with magnesium is the one to take, by the rule of the place, and by whose; `under` is the edge in ppm, none for sand. */
export type MagnesiumRule = { readonly wants: boolean; readonly source: string; readonly under: number | null };
export function magnesiumRule({ magnesium, cec, texture }: PhSoil, { country, state }: Pick<Where, 'country' | 'state'>): MagnesiumRule {
  if (country === 'US' && state === 'north carolina') {
    const source = CALCITIC_OVER_NORTH_CAROLINA.cite.source;
    if (texture === 'sand') return { wants: true, source, under: null };
    if (texture === 'clay' && magnesium !== null && cec !== null && (100 * magnesium) / MG_PER_CMOL.Mg! > CALCITIC_OVER_NORTH_CAROLINA.value * cec) return { wants: false, source, under: null };
  }
  const { value, cite } = country === 'CA' && state === 'ontario' ? DOLOMITIC_BELOW_ONTARIO : DOLOMITIC_BELOW;
  return { wants: magnesium !== null && magnesium < value, source: cite.source, under: value };
}
