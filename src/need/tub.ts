/** What a litre of mix gets in a season: measured for the crop, else recalled nursery practice. */
import type { Cite } from '../reason/figure.ts';
import type { Crop } from '../tables/crops.ts';
import { TUB, TUB_MEASURED } from '../tables/limits.ts';
import { convert } from '../units/units.ts';

/** g of N a litre of mix and season. */
export function tubRate(crop: Crop): { readonly gPerL: number; readonly cite: Cite } {
  const measured = TUB_MEASURED.find((t) => t.crops.includes(crop));
  return measured ? { gPerL: measured.gN / convert(measured.pot, measured.unit, 'L'), cite: measured.cite } : TUB;
}
