/** Conductivity: in dS/m, by its dilution, and as a saturated paste would read. */
import type { Figure } from '../reason/figure.ts';
import { figure } from '../reason/figure.ts';
import type { Reading } from '../soil/reading.ts';
import type { Dilution } from '../tables/salts.ts';
import { DILUTIONS, FAINT, PASTE_LINES, SALT_LOSS } from '../tables/salts.ts';
import { convert, UNITS } from '../units/units.ts';
import { isPossible, lab } from './content.ts';
import type { Heaviness } from './texture.ts';

/** dS/m; null for words alone, for no unit, for a number beyond any soil's, and for salts by weight, which depend on the lab's own factor. */
export function dsPerM({ value, unit }: Reading): number | null {
  return value === null || !isPossible(value) || unit === null || !Object.hasOwn(UNITS, unit) || UNITS[unit as keyof typeof UNITS].kind !== 'conductivity' ? null : convert(value, unit as keyof typeof UNITS, 'dS/m');
}

/** How much water the lab added; null where the report does not say. */
export const dilutionOf = (reading: Reading): Dilution | null => DILUTIONS.find((d) => d === reading.method) ?? null;

/**
 * What a saturated paste would read, dS/m, from the published line of the dilution and the soil; never under nothing.
 * Null where value, unit or dilution is missing.
 */
export function pasteOf(reading: Reading, heaviness: Heaviness | null): Figure<'dS/m', 'salts'> | null {
  const ds = dsPerM(reading);
  const dilution = dilutionOf(reading);
  if (ds === null || dilution === null) return null;
  const printed = figure(ds, 'dS/m', 'salts', 'printed-by-lab', lab(reading));
  if (dilution === 'paste') return printed;
  const lines = PASTE_LINES.filter((l) => l.dilution === dilution);
  // 1:2 has no line without a texture: the steepest of the three, so that salt is not missed.
  const line = lines.find((l) => l.soil === heaviness) ?? lines.find((l) => l.soil === null) ?? lines[0]!;
  const faint = ds < FAINT.value && FAINT.dilutions.includes(dilution);
  return figure(Math.max(0, line.slope * ds + line.intercept), 'dS/m', 'salts', faint ? 'salts-faint' : 'salts-to-paste', line.cite, [printed]);
}

/** Percent of the full yield that a crop brings at this paste reading, 0 to 100; null for a crop nobody measured. */
export function saltYield(crop: string, paste: number): number | null {
  const row = SALT_LOSS.find((r) => r.crop === crop);
  return row ? Math.min(100, Math.max(0, 100 - row.slope * (paste - row.threshold))) : null;
}
