/** The alkalinity of what the orchard is watered with: "bicarbonate 250 mg/L", "alkalinity 200 ppm", "3.5 meq/L". */
import { CACO3_PER_MEQ, HCO3_PER_MEQ } from '../units/substance.ts';
import { numberOf } from './measure.ts';

/** As calcium carbonate, mg/L; `hardness` measures calcium and magnesium, not what limes a soil. */
export type Water = { readonly mgPerL: number };

const LINE = /^(?:((?:total )?alk(?:alinity|\.)?|bicarbonate|hco3-?) *:? *)?([\d.,]+) *(mg\/l|ppm|meq\/l|mmol\/l|mmolc\/l)(?: *(?:of |as )?(alkalinity|bicarbonate|hco3-?|caco3))?$/i;
/** Sea water holds 2.5 meq/L, the hardest wells under 20. */
const MOST = 2000;

/** Null where it cannot be read; a unit by weight must say whether it is bicarbonate or alkalinity, which is told as calcium carbonate. */
export function waterOf(text: string): Water | 'hardness' | null {
  const said = text.trim();
  if (/hardness|\bhard\b|°|\bd?gh\b|grains?/i.test(said)) return 'hardness';
  const m = LINE.exec(said);
  const value = m ? numberOf(m[2]!) : null;
  if (!m || typeof value !== 'number' || value < 0) return null;
  const [what, unit, as] = [m[1]?.toLowerCase() ?? '', m[3]!.toLowerCase(), m[4]?.toLowerCase() ?? ''];
  const isBicarbonate = /bicarb|hco3/.test(what + as) && as !== 'caco3';
  if (/^m(?:eq|mol)/.test(unit)) {
    // Bicarbonate carries one charge, so a mmol is a meq; of anything else mmol/L would be open.
    return unit === 'mmol/l' && !isBicarbonate ? null : within(value * CACO3_PER_MEQ);
  }
  return what === '' && as === '' ? null : within(isBicarbonate ? (value / HCO3_PER_MEQ) * CACO3_PER_MEQ : value);
}

const within = (mgPerL: number): Water | null => (mgPerL <= MOST ? { mgPerL } : null);
