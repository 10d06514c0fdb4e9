/** Measures as growers write them: "12 ft", "5 ft 6 in", "1 1/2 m", "60 L", "40 lb", "2,5 m". */
import type { CountedLime } from '../units/substance.ts';
import { COUNTED_LIMES } from '../units/substance.ts';
import type { Unit } from '../units/units.ts';
import { convert } from '../units/units.ts';

/** Why a text is no measure: an unclear comma is asked about, anything else is simply not one. */
export type Unclear = { readonly unclear: string };
export type Measured = number | Unclear | null;

const NUM = '(\\d+ +\\d+/\\d+|\\d+/\\d+|\\d+(?:[.,]\\d+)?)';

/** A number, plain, decimal or as a fraction. One comma before exactly three digits can be read two ways. */
export function numberOf(text: string): Measured {
  const t = text.trim();
  if (/^\d+,\d{3}$/.test(t)) return { unclear: t };
  const fraction = /^(?:(\d+) +)?(\d+)\/(\d+)$/.exec(t);
  if (fraction) return Number(fraction[3]) === 0 ? null : Number(fraction[1] ?? 0) + Number(fraction[2]) / Number(fraction[3]);
  return /^\d+(?:[.,]\d+)?$/.test(t) ? Number(t.replace(',', '.')) : null;
}

function measured(text: string, units: Readonly<Record<string, (n: number) => number>>): Measured {
  const m = new RegExp(`^${NUM} *([\\p{L}'"]+)\\.?$`, 'u').exec(text.trim());
  const to = m && Object.hasOwn(units, m[2]!.toLowerCase()) ? units[m[2]!.toLowerCase()] : undefined;
  if (!m || !to) return null;
  const n = numberOf(m[1]!);
  return typeof n === 'number' ? to(n) : n;
}

const inches = (n: number): number => convert(n, 'in', 'm');
const feet = (n: number): number => convert(n, 'ft', 'm');
const LENGTHS: Readonly<Record<string, (n: number) => number>> = {
  in: inches, inch: inches, inches: inches, '"': inches, ft: feet, foot: feet, feet: feet, "'": feet,
  m: (n) => n, metre: (n) => n, metres: (n) => n, meter: (n) => n, meters: (n) => n, cm: (n) => n / 100, mm: (n) => n / 1000,
};
const litres = (n: number): number => n;
const gallons = (n: number): number => convert(n, 'gal', 'L');
const VOLUMES: Readonly<Record<string, (n: number) => number>> = {
  l: litres, litre: litres, litres: litres, liter: litres, liters: litres, litro: litres, litros: litres, gal: gallons, gallon: gallons, gallons: gallons,
};
const MASSES: Readonly<Record<string, (n: number) => number>> = Object.fromEntries(
  ([['g', 'g'], ['gram', 'g'], ['grams', 'g'], ['kg', 'kg'], ['kilo', 'kg'], ['kilos', 'kg'], ['oz', 'oz'], ['ounce', 'oz'], ['ounces', 'oz'], ['lb', 'lb'], ['lbs', 'lb'], ['pound', 'lb'], ['pounds', 'lb']] as const)
    .map(([word, unit]) => [word, (n: number): number => convert(n, unit, 'g')]),
);

/** Metres. */
export function lengthOf(text: string): Measured {
  const both = /^(\d+) *(?:ft|feet|foot|') +(.+)$/i.exec(text.trim());
  if (!both) return measured(text, LENGTHS);
  const rest = measured(both[2]!, { in: inches, inch: inches, inches: inches, '"': inches });
  return typeof rest === 'number' ? feet(Number(both[1])) + rest : rest;
}
/** Litres. */
export const volumeOf = (text: string): Measured => measured(text, VOLUMES);
/** Grams. */
export function massOf(text: string): Measured {
  const both = /^(\d+) *(?:lbs?|pounds?) +(.+)$/i.exec(text.trim());
  if (!both) return measured(text, MASSES);
  const rest = measured(both[2]!, { oz: MASSES.oz!, ounce: MASSES.oz!, ounces: MASSES.oz! });
  return typeof rest === 'number' ? convert(Number(both[1]), 'lb', 'g') + rest : rest;
}

const AREAS: readonly (readonly [RegExp, 'sq ft' | 'm2' | 'acre' | 'ha'])[] = [[/^(?:sq\.? ?ft\.?|square feet|ft2|ft²)$/i, 'sq ft'], [/^(?:m2|m²|sq\.? ?m|square met(?:re|er)s?)$/i, 'm2'], [/^acres?$/i, 'acre'], [/^ha$/i, 'ha']];
/** A comma before exactly three digits can only part thousands in an area or a rate with so many. */
const plainNumber = (text: string): number | null => {
  const n = numberOf(/^\d{1,3}(?:,\d{3})+$/.test(text) ? text.replace(/,/g, '') : text);
  return typeof n === 'number' ? n : null;
};

/** Square metres; null for what is no area. */
export function areaOf(text: string): number | null {
  const m = /^([\d.,/ ]*\d) *(\D.*)$/.exec(text.trim());
  const unit = m ? AREAS.find(([p]) => p.test(m[2]!.trim()))?.[1] : undefined;
  const n = m ? plainNumber(m[1]!.trim()) : null;
  return unit && n !== null && n > 0 ? convert(n, unit, 'm2') : null;
}

const RATES: readonly (readonly [RegExp, Unit])[] = [
  [/^lbs?\.? ?(?:\/|per) ?1,?000 ?(?:sq\.? ?(?:ft|feet)\.?|square feet|ft2)$/i, 'lb/1000 sq ft'], [/^lbs?\.? ?(?:\/|per) ?100 ?(?:sq\.? ?(?:ft|feet)\.?|square feet|ft2)$/i, 'lb/100 sq ft'],
  [/^lbs?\.? ?(?:\/|per|an) ?ac(?:re)?$/i, 'lb/acre'], [/^tons? ?(?:\/|per|an) ?ac(?:re)?$/i, 'ton/acre'], [/^t(?:onnes?)? ?(?:\/|per) ?ha$/i, 't/ha'], [/^kg ?(?:\/|per) ?ha$/i, 'kg/ha'], [/^dt ?(?:\/|per) ?ha$/i, 'dt/ha'], [/^g ?(?:\/|per) ?m(?:2|²)$/i, 'g/m2'],
];

/** "44 lb/1000 sq ft", "2 tons/acre", "2,5 t/ha", "1600 lb ENM/acre", "20 dt CaO/ha", as printed; null for what is no rate. */
export function rateOf(text: string): { readonly value: number; readonly unit: Unit; readonly of: 'lime' | CountedLime } | null {
  const counted = / *\b(?:of )?(cao|enm|enp)\b/i.exec(text);
  const of = COUNTED_LIMES.find((c) => c.toLowerCase() === counted?.[1]!.toLowerCase()) ?? 'lime';
  const m = /^(\d[\d.,]*) *(\D.*)$/.exec((counted ? text.replace(counted[0], '') : text).trim());
  const unit = m ? RATES.find(([p]) => p.test(m[2]!.trim()))?.[1] : undefined;
  const n = m ? plainNumber(m[1]!) : null;
  // What acts is told in pounds to the acre alone.
  if ((of === 'ENM' || of === 'ENP') && unit !== 'lb/acre') return null;
  return unit && n !== null && n >= 0 ? { value: n, unit, of } : null;
}
