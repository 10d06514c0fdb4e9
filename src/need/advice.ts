/** The lab's own recommendation for one plant: what it comes to on its crown; the plan where the grower says so, else told beside it. */
import type { Figure } from '../reason/figure.ts';
import { figure } from '../reason/figure.ts';
import type { Advice } from '../soil/advice.ts';
import { DOSE_REFUSED, MOST_DUG_IN } from '../tables/limits.ts';
import type { Nutrient } from '../units/substance.ts';
import { convert } from '../units/units.ts';
import type { Facts } from './facts.ts';
import { groundOf } from './facts.ts';

/** Element names count as the oxide, which is the lesser amount, until the grower says which the lab means. */
const meant = (a: Advice): Nutrient => (a.of === 'P' ? 'P2O5' : a.of === 'K' ? 'K2O' : a.of);

/** The lines that count: where nutrients are named themselves, a product beside them is the way to bring them and not more. */
export function counted(advice: readonly Advice[]): readonly Advice[] {
  const straight = advice.filter((a) => a.product === null);
  return straight.length > 0 ? straight : advice;
}

/** Whether the lab may mean the element where the oxide is taken. */
export const isUnclear = (a: Advice): boolean => a.of === 'P' || a.of === 'K';

/** Grams a plant and year of one nutrient by the lab's lines, several products added up; null where they name none. */
export function advised<S extends Nutrient>(f: Facts, of: S): Figure<'g', S> | null {
  const mine = counted(f.advice).filter((a) => meant(a) === of);
  if (mine.length === 0) return null;
  const cite = { source: 'lab', at: `line ${mine.map((a) => a.line).join(', ')}`, mark: 'read' } as const;
  const said = mine.map((a) => figure(a.value, a.unit, of, 'lab-says', cite));
  const grams = mine.reduce((sum, a) => sum + (a.per === 'tree' ? convert(a.value, a.unit, 'g') : convert(a.value, a.unit, 'g/m2') * groundOf(f).value), 0);
  return figure(grams, 'g', of, 'lab-advice', cite, mine.some((a) => a.per === 'area') ? [...said, groundOf(f)] : said);
}

/** Whether the lab's lines for this plant are within what may be put out; if one nutrient is not, none of them is followed. */
export function isFollowed(f: Facts): boolean {
  if (!f.byLab || f.years === 0 || f.bed !== undefined || f.advice.length === 0) return false;
  const n = advised(f, 'N');
  const most = MOST_DUG_IN.gPerM2 * groundOf(f).value;
  return !(n && isTooMuch(n, f)) && (['P2O5', 'K2O'] as const).every((of) => (advised(f, of)?.value ?? 0) <= most);
}

/** Nitrogen beyond this on the crown is not put out, whoever says it. */
export const isTooMuch = (n: Figure, f: Facts): boolean => n.value > convert(DOSE_REFUSED.value, DOSE_REFUSED.unit, 'g/m2') * groundOf(f).value * (1 + 1e-9);
