/** What must be settled before anything is fed. */
import { dilutionOf, dsPerM, pasteOf } from '../rating/salts.ts';
import type { Cite, Figure } from '../reason/figure.ts';
import { LEAD_STOP, SALT_STOP, SALT_STOP_TENDER, SODIUM_STOP } from '../tables/limits.ts';
import type { Facts } from './facts.ts';
import { has, ratedOf } from './facts.ts';
import { mayLead } from './lead.ts';

export type StopId = 'salts' | 'sodium' | 'standing-water' | 'herbicide' | 'drought' | 'fire-blight' | 'lead' | 'not-soil' | 'no-figures';
/** `from` is what the value was converted from, where it is not what the report prints. */
export type Stop = { readonly id: StopId; readonly cite: Cite; readonly value?: number; readonly from?: Figure<'dS/m', 'salts'> };

const told: Cite = { source: 'grower', at: 'flag', mark: 'read' };

/** Every stop that holds for the tree. */
export function stopsOf(f: Facts): Stop[] {
  const stops: Stop[] = [];
  if (f.tree.tub === undefined && !mayLead(f)) stops.push({ id: 'no-figures', cite: { source: 'medlar', at: 'no-figures', mark: 'judgement' } });
  for (const [flag, id] of [['standing water', 'standing-water'], ['herbicide', 'herbicide'], ['drought', 'drought'], ['fire blight', 'fire-blight']] as const) {
    if (has(f, flag)) stops.push({ id, cite: told });
  }
  const salts = saltStop(f);
  if (salts) stops.push(salts);
  const sodium = ratedOf(f, 'saturation-na')?.reading.value ?? 0;
  const sar = ratedOf(f, 'sar')?.reading.value ?? 0;
  if (sodium > SODIUM_STOP.percent || sar > SODIUM_STOP.sar) stops.push({ id: 'sodium', cite: SODIUM_STOP.cite, value: Math.max(sodium, sar) });
  const lead = ratedOf(f, 'lead');
  if ((lead?.mgPerKg?.value ?? 0) > LEAD_STOP.ppm || lead?.reading.lab.rating === 'high' || lead?.reading.lab.rating === 'very-high') {
    stops.push({ id: 'lead', cite: LEAD_STOP.cite, ...(lead?.mgPerKg ? { value: lead.mgPerKg.value } : {}) });
  }
  return stops;
}

/**
 * Paste, 1:1 and 1:2 have a limit of their own; 1:5 has none and is taken to the paste first.
 * An unknown dilution is held to the stricter limit: to wait and ask costs less than burnt roots.
 */
function saltStop(f: Facts): Stop | null {
  const reading = ratedOf(f, 'salts')?.reading;
  const ds = reading ? dsPerM(reading) : null;
  if (!reading || ds === null) return null;
  const dilution = dilutionOf(reading);
  const most = SALT_STOP_TENDER.crops.includes(f.crop) ? SALT_STOP_TENDER : SALT_STOP;
  if (dilution === '1:5') {
    const paste = pasteOf(reading, f.soil?.heaviness ?? null);
    return paste && paste.value > most.paste ? { id: 'salts', cite: most.cite, value: paste.value, from: paste } : null;
  }
  if (dilution === 'paste') return ds > most.paste ? { id: 'salts', cite: most.cite, value: ds } : null;
  return ds > SALT_STOP.dilute ? { id: 'salts', cite: SALT_STOP.cite, value: ds } : null;
}
