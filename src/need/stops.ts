/** What must be settled before anything is fed. */
import type { Cite } from '../reason/figure.ts';
import { LEAD_STOP, SALT_STOP, SODIUM_STOP } from '../tables/limits.ts';
import type { ReportUnit } from '../tables/items.ts';
import type { Facts } from './facts.ts';
import { has, ratedOf } from './facts.ts';

export type StopId = 'salts' | 'sodium' | 'standing-water' | 'herbicide' | 'drought' | 'fire-blight' | 'lead' | 'not-soil' | 'no-figures';
export type Stop = { readonly id: StopId; readonly cite: Cite; readonly value?: number };

const told: Cite = { source: 'grower', at: 'flag', mark: 'read' };
const TO_DS_PER_M: Partial<Record<ReportUnit, number>> = { 'dS/m': 1, 'mS/cm': 1, 'mmho/cm': 1, 'uS/cm': 0.001, 'mS/m': 0.01 };

/** Every stop that holds for the tree; a tub stands in its own mix, whatever the ground. */
export function stopsOf(f: Facts): Stop[] {
  const stops: Stop[] = [];
  if (f.tree.crop === 'other') stops.push({ id: 'no-figures', cite: { source: 'medlar', at: 'no-figures', mark: 'judgement' } });
  for (const [flag, id] of [['standing water', 'standing-water'], ['herbicide', 'herbicide'], ['drought', 'drought'], ['fire blight', 'fire-blight']] as const) {
    if (has(f, flag)) stops.push({ id, cite: told });
  }
  if (f.tree.tub !== undefined) return stops;
  const salts = ratedOf(f, 'salts')?.reading;
  const factor = salts?.unit ? TO_DS_PER_M[salts.unit] : undefined;
  if (salts?.value != null && factor !== undefined) {
    const ds = salts.value * factor;
    if (ds > (salts.method === 'paste' ? SALT_STOP.paste : SALT_STOP.dilute)) stops.push({ id: 'salts', cite: SALT_STOP.cite, value: ds });
  }
  const sodium = ratedOf(f, 'saturation-na')?.reading.value ?? 0;
  const sar = ratedOf(f, 'sar')?.reading.value ?? 0;
  if (sodium > SODIUM_STOP.percent || sar > SODIUM_STOP.sar) stops.push({ id: 'sodium', cite: SODIUM_STOP.cite, value: Math.max(sodium, sar) });
  const lead = ratedOf(f, 'lead');
  if ((lead?.mgPerKg?.value ?? 0) > LEAD_STOP.ppm || lead?.reading.lab.rating === 'high' || lead?.reading.lab.rating === 'very-high') {
    stops.push({ id: 'lead', cite: LEAD_STOP.cite, ...(lead?.mgPerKg ? { value: lead.mgPerKg.value } : {}) });
  }
  return stops;
}
