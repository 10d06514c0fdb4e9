/** What would do the work of sulphur, never better than it; and the iron chelate that holds at a pH. */
import type { Figure } from '../reason/figure.ts';
import { figure } from '../reason/figure.ts';
import type { AcidifierId } from '../tables/acidifiers.ts';
import { ACIDIFIERS, ALUMINIUM_HARMS, CHELATES, EDDHA_ABOVE, IRON_SULPHATE_LIMIT } from '../tables/acidifiers.ts';
import type { Crop } from '../tables/crops.ts';
import { convert } from '../units/units.ts';

/** `atOnce` is the most in one go, where one is printed; `nitrogen` what the amount brings, g/m². */
export type Instead = { readonly id: AcidifierId; readonly rate: Figure<'g/m2', 'sulphur'>; readonly atOnce: Figure<'g/m2', 'sulphur'> | null; readonly nitrogen: number | null };

/** Of the products that shops sell, what is as acid as an amount of pure sulphur. Aluminium harms roots in soil that is kept acid. */
export function insteadOf(pure: Figure<'g/m2', 'sulphur'>, crop: Crop | null, goal: number): Instead[] {
  const harmed = crop === 'blueberry' || goal <= ALUMINIUM_HARMS.ph;
  return ACIDIFIERS.filter((a) => a.garden && !(a.aluminium && harmed)).map((a) => {
    const rate = figure(pure.value * a.perSulphur, 'g/m2', 'sulphur', 'sulphur-instead', a.cite, [pure]);
    const most = IRON_SULPHATE_LIMIT;
    return {
      id: a.id, rate, nitrogen: a.nitrogen === undefined ? null : (rate.value * a.nitrogen) / 100,
      atOnce: a.id === 'iron-sulphate' ? figure(convert(most.value, most.unit, 'g/m2'), 'g/m2', 'sulphur', 'at-once', most.cite) : null,
    };
  });
}

/** The least chelate that still holds its iron at a pH, by its letters. */
export const chelateFor = (ph: number): string => CHELATES[ph > EDDHA_ABOVE.ph ? 2 : ph > CHELATES[0].mostPh ? 1 : 0].id;
