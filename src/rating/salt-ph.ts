/** pH in water from a pH measured in a salt solution: calcium chloride and potassium chloride each by its own rule. */
import type { Figure } from '../reason/figure.ts';
import { figure } from '../reason/figure.ts';
import type { Reading } from '../soil/reading.ts';
import { SALT_PH } from '../tables/lime.ts';
import { CACL2_LINE, KCL_LINE, KCL_PH_ERROR, SALT_PH_ERROR } from '../tables/ph-scales.ts';
import { isPossible, lab } from './content.ts';

type Ph = Figure<'pH', 'soil'>;
const hundredths = (x: number): number => Math.round(x * 100) / 100;

/**
 * The pH in water, with what it may lie between; `from` holds the printed value, the low and the high end, and for
 * calcium chloride what the published line gives. A salt that is not named is taken as calcium chloride. Null without a value.
 */
export function waterPhOf(reading: Reading): Ph | null {
  const { value } = reading;
  if (value === null || value <= 0 || !isPossible(value)) return null;
  const printed: Ph = figure(value, 'pH', 'soil', 'printed-by-lab', lab(reading));
  const kcl = reading.method === 'kcl';
  const water = hundredths(kcl ? KCL_LINE.intercept + KCL_LINE.slope * Math.log10(value) : value + SALT_PH.value);
  const error = kcl ? KCL_PH_ERROR : SALT_PH_ERROR;
  const end = (x: number): Ph => figure(hundredths(x), 'pH', 'soil', 'ph-end', error.cite, [printed]);
  const ends = [end(water - error.value), end(water + error.value)];
  if (kcl) return figure(water, 'pH', 'soil', 'kcl-to-water', KCL_LINE.cite, [printed, ...ends]);
  const line = figure(hundredths((value - CACL2_LINE.intercept) / CACL2_LINE.slope), 'pH', 'soil', 'ph-line', CACL2_LINE.cite, [printed]);
  return figure(water, 'pH', 'soil', 'cacl2-to-water', SALT_PH.cite, [printed, ...ends, line]);
}

/** The pH that the soil would have in calcium chloride, and in potassium chloride: as printed where it was printed so, else back from water by the same rules. */
export const cacl2PhOf = (water: number): number => hundredths(water - SALT_PH.value);
export function kclPhOf(water: Ph): number {
  return water.step === 'kcl-to-water' ? water.from[0]!.value : hundredths(10 ** ((water.value - KCL_LINE.intercept) / KCL_LINE.slope));
}
