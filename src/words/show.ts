/** Amounts, lengths and days as a grower reads them. */
import { FOOT, INCH, OUNCE, POUND } from '../units/units.ts';
import type { Day } from '../units/date.ts';
import { cupsOf } from '../units/cups.ts';

export type System = 'us' | 'metric';

/** Whole and quarters: 12 1/2, 1/4, 3. */
export function showFraction(value: number): string {
  const quarters = Math.round(value * 4);
  const whole = Math.floor(quarters / 4);
  const part = ['', '1/4', '1/2', '3/4'][quarters % 4]!;
  return whole === 0 && part ? part : part ? `${whole} ${part}` : `${whole}`;
}

const rounded = (value: number, digits: number): string => String(Number(value.toPrecision(digits)));

/** A dose or a weight to buy: ounces under 2 lb and pounds above, or grams and kilograms. */
export function showMass(g: number, system: System): string {
  if (system === 'us') {
    if (g < OUNCE / 4) return `${rounded(g / OUNCE, 1)} oz`;
    return g < 2 * POUND ? `${showFraction(g / OUNCE)} oz` : `${showFraction(g / POUND)} lb`;
  }
  return g < 10 ? `${rounded(g, 1)} g` : g < 1000 ? `${Math.round(g)} g` : `${rounded(g / 1000, 3)} kg`;
}

/** A weight to weigh out, to the half ounce also above 2 lb: "2 lb 2 1/2 oz". */
export function showDose(g: number, system: System): string {
  const ounces = Math.round((g / OUNCE) * 2) / 2;
  if (system === 'metric' || ounces < 32) return showMass(g, system);
  const over = ounces % 16;
  return `${Math.floor(ounces / 16)} lb${over > 0 ? ` ${showFraction(over)} oz` : ''}`;
}

/** A nutrient's weight for the back of the sheet: one decimal under ten, else whole. */
export function showNutrient(g: number, system: System): string {
  const value = system === 'us' ? g / OUNCE : g;
  const said = value >= 9.95 ? Math.round(value) : value >= 0.05 ? Math.round(value * 10) / 10 : Number(value.toPrecision(1));
  return `${said} ${system === 'us' ? 'oz' : 'g'}`;
}

/** "2 to 7 1/2 ft", "15 cm to 1.6 m": the unit once where it is the same. */
export function showSpan(from: string, to: string): readonly [string, string] {
  const unit = / \p{L}.*$/u.exec(to)![0];
  return [from.endsWith(unit) ? from.slice(0, -unit.length) : from, to];
}

/** Quarter feet, inches under a foot where they are whole; or tenths of a metre. */
export function showLength(m: number, system: System): string {
  if (system === 'metric') return m < 1 ? `${Math.round(m * 20) * 5} cm` : `${rounded(m, 2)} m`;
  return `${showFraction(m / FOOT)} ft`;
}

/** Shoots and trunks: whole inches, or centimetres. */
export const showShort = (m: number, system: System): string => (system === 'us' ? `${Math.round((10 * m) / INCH) / 10} in` : `${Math.round(m * 100)} cm`);

/** "1 1/2 cups", "2 tablespoons", "1/2 teaspoon"; metric in millilitres, two figures at most and fives from 20 on. Nothing where it is too little to measure. */
export function showVolume(mL: number, system: System): string {
  const measure = cupsOf(mL);
  if (!measure) return '';
  if (system === 'metric') return `${mL < 20 ? Math.round(mL) : mL < 100 ? Math.round(mL / 5) * 5 : rounded(mL, 2)} mL`;
  if ('cups' in measure) return `${showFraction(measure.cups)} ${measure.cups > 1 ? 'cups' : 'cup'}`;
  if ('spoons' in measure) return `${showFraction(measure.spoons)} ${measure.spoons > 1 ? 'tablespoons' : 'tablespoon'}`;
  return `${showFraction(measure.teaspoons)} ${measure.teaspoons > 1 ? 'teaspoons' : 'teaspoon'}`;
}

/** Two decimals at most. */
export const showPh = (value: number): string => String(Math.round(value * 100) / 100);

const MONTHS = ['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October', 'November', 'December'];

export const showDay = (d: Day, withYear = false): string => {
  const [y, m, date] = d.split('-').map(Number) as [number, number, number];
  return `${date} ${MONTHS[m - 1]!}${withYear ? ` ${y}` : ''}`;
};
export const showMonth = (d: Day): string => `${MONTHS[Number(d.slice(5, 7)) - 1]!.slice(0, 3)} ${d.slice(0, 4)}`;

/** "10-25 April", "29 March-26 April"; with the year "15 October-14 December 2027". */
export function showWindow(from: Day, until: Day, withYear = false): string {
  const end = showDay(until, withYear);
  return from === until ? end : from.slice(0, 7) === until.slice(0, 7) ? `${Number(from.slice(8))}-${end}` : `${showDay(from, withYear && from.slice(0, 4) !== until.slice(0, 4))}-${end}`;
}

export const showPrice = (amount: number, currency: string): string =>
  `${/^[A-Z]{3}$/.test(currency) ? `${currency} ` : currency}${Number.isInteger(amount) ? amount : amount.toFixed(2)}`;

/** A figure's value with its unit, four figures at most. */
export const showValue = (value: number, unit: string): string => `${rounded(value, 4)} ${unit === 'm2' ? 'm²' : unit === 'g/m2' ? 'g/m²' : unit}`;

/** A rate on the ground: lb a 1,000 sq ft, ounces a 100 sq ft where that is little, or g/m². */
export function showRate(gPerM2: number, system: System): string {
  if (system === 'metric') return `${gPerM2 < 10 ? rounded(gPerM2, 2) : Math.round(gPerM2)} g/m²`;
  return `${rounded((gPerM2 / POUND) * 1000 * FOOT * FOOT, 3)} lb/1,000 sq ft`;
}

/** Square feet, or square metres. */
export const showGround = (m2: number, system: System): string => (system === 'us' ? `${Math.round(m2 / FOOT ** 2)} sq ft` : `${rounded(m2, 2)} m²`);
