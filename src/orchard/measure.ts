/** Measures as growers write them: "12 ft", "5 ft 6 in", "1 1/2 m", "60 L", "40 lb", "2,5 m". */
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
  l: litres, litre: litres, litres: litres, liter: litres, liters: litres, gal: gallons, gallon: gallons, gallons: gallons,
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
export const massOf = (text: string): Measured => measured(text, MASSES);
