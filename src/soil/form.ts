/** In which form, unit and method a value counts. */
import type { Item, Method, ReportUnit } from '../tables/items.ts';
import { BUFFERS, CATION_ITEMS, COUNTED_RATES, ELEMENT_OF, RATES, SATURATION_OF } from '../tables/items.ts';
import type { Rating } from '../tables/ratings.ts';
import type { Oxide } from '../units/substance.ts';
import type { Context } from './context.ts';
import type { Piece } from './cut.ts';
import { AMOUNTS } from './ground.ts';

export const FORMS: Readonly<Record<string, Oxide>> = { p2o5: 'P2O5', k2o: 'K2O', mgo: 'MgO', cao: 'CaO' };

/** An index of a scale that the report itself names: Ireland's has its target at 3, the UK's at 2. */
export function indexWord(said: number | null, method: Method | null, context: Context): Rating | null {
  const first = context.indexFrom ?? (method === 'morgan' ? 1 : null);
  // Such scales end at 9 or before; a larger number is an index of another lab.
  if (first === null || said === null || said < first || said > 9) return null;
  return (['very-low', 'low', 'optimum'] as const)[Math.floor(said) - first] ?? 'high';
}

const COUNTED: readonly (readonly [string, RegExp])[] = [['ENM', /\b(?:enm|effective neutralizing material)\b/i], ['ENP', /\b(?:enp|effective neutralizing power)\b/i], ['CaO', /\bcao\b/i]];

/** "Lime requirement (ENM) 1600 lb/acre", "Kalkbedarf (CaO) 20 dt/ha": the unit with what the name says it counts; `unknown` for a pair that nobody prints. */
export function countedUnit(unit: ReportUnit | null, text: string): ReportUnit | null | 'unknown' {
  const of = COUNTED.find(([, words]) => words.test(text))?.[0];
  if (of === undefined || unit === null || !AMOUNTS.includes(unit) || COUNTED_RATES.includes(unit)) return unit;
  return COUNTED_RATES.find((u) => u === unit.replace('/', ` ${of}/`)) ?? 'unknown';
}

/** What the item really is, given its unit and heading: cations in % are shares of the exchange sites, never contents of a soil. */
export function shape(piece: Pick<Piece, 'form' | 'loose' | 'method' | 'name'> & { readonly item: Exclude<Piece['item'], 'ratio'> }, unit: ReportUnit | null, context: Context, methods: readonly Method[]): { item: Item; unit: ReportUnit | null; form: Oxide | null; method: Method | null } | null {
  const own = [piece.method, ...methods].filter((m) => m !== null);
  const method = own[0] ?? null;
  if (piece.item === 'lime') return { item: unit !== null && AMOUNTS.includes(unit) ? 'lime-requirement' : 'carbonate', unit, form: null, method };
  if (piece.item === 'lime-requirement') return { item: piece.item, unit, form: null, method };
  const element = ELEMENT_OF[piece.item];
  if (element && unit !== null && RATES.includes(unit)) return null;
  // A share of the exchange sites does not say how many there are.
  if (piece.item === 'cec' && unit === '%') return null;
  const share = SATURATION_OF[piece.item];
  if (share && !context.leaf && (piece.form === null || piece.loose) && (unit === '%' || (context.saturation && unit === null))) return { item: share, unit: '%', form: null, method: null };
  if (piece.item === 'ph' || piece.item === 'ph-salt') {
    // A pH in a buffer's own solution is no soil pH.
    const buffer = own.find((m) => BUFFERS.includes(m));
    if (buffer) return { item: 'buffer-ph', unit: 'pH', form: null, method: buffer };
    const told = context.methods.get('ph');
    const said = own.length === 0 && told ? [told] : own;
    const salt = said.find((m) => m === 'cacl2' || m === 'kcl');
    return { item: piece.item === 'ph-salt' || salt ? 'ph-salt' : 'ph', unit: 'pH', form: null, method: salt ?? (piece.item === 'ph' ? said : own).find((m) => !m.startsWith('1:')) ?? (method ? 'water' : null) };
  }
  if (piece.item === 'buffer-ph') return { item: 'buffer-ph', unit: 'pH', form: null, method };
  // "Exchangeable sodium 0.2 cmol/kg" is a content; only a share is a saturation.
  if (piece.item === 'saturation-na' && (unit !== null ? unit !== '%' : piece.name === 'exchangeable sodium' && !context.saturation)) return { item: 'sodium', unit: unit ?? context.unit, form: null, method: method ?? context.method };
  if (piece.item === 'saturation-h' && unit !== null && unit !== '%') return { item: 'acidity', unit, form: null, method };
  // Acidity in % is hydrogen's share of the exchange sites.
  if (piece.item === 'acidity' && unit === '%') return { item: 'saturation-h', unit, form: null, method: null };
  if (piece.item.startsWith('saturation') || piece.item === 'base-saturation') return { item: piece.item, unit: '%', form: null, method: null };
  // Quick-test units are those of cations alone.
  const told = context.unit === 'MAF' && !CATION_ITEMS.includes(piece.item) ? null : context.unit;
  return {
    item: piece.item, form: piece.form, unit: unit ?? (element ? told : null),
    method: method ?? context.methods.get(piece.item) ?? (element && extracted(piece.item) ? context.method : null),
  };
}

const extracted = (item: Item): boolean => item !== 'nitrogen' && item !== 'nitrate-n' && item !== 'ammonium-n';
