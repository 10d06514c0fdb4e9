/** Amounts, lengths and days as a grower reads them, in the marks of the language. */
import { FOOT, INCH, OUNCE, POUND } from '../units/units.ts';
import type { Day } from '../units/date.ts';
import { cupsOf } from '../units/cups.ts';
import type { Language } from './words.ts';
import { numeral, ownMarks, say } from './words.ts';

export type System = 'us' | 'metric';

/** Whole and quarters: 12 1/2, 1/4, 3. */
function showFraction(value: number): string {
  const quarters = Math.round(value * 4);
  const whole = Math.floor(quarters / 4);
  const part = ['', '1/4', '1/2', '3/4'][quarters % 4]!;
  return whole === 0 && part ? part : part ? `${whole} ${part}` : `${whole}`;
}

const rounded = (value: number, digits: number, language: Language): string => numeral(Number(value.toPrecision(digits)), language);

/** A dose or a weight to buy: ounces under 2 lb and pounds above, or grams and kilograms. */
export function showMass(g: number, system: System, language: Language): string {
  if (system === 'us') {
    if (g < OUNCE / 4) return `${rounded(g / OUNCE, 1, language)} oz`;
    return g < 2 * POUND ? `${showFraction(g / OUNCE)} oz` : `${showFraction(g / POUND)} lb`;
  }
  return g < 10 ? `${rounded(g, 1, language)} g` : g < 1000 ? `${Math.round(g)} g` : `${rounded(g / 1000, 3, language)} kg`;
}

/** A weight to weigh out, to the half ounce also above 2 lb: "2 lb 2 1/2 oz". */
export function showDose(g: number, system: System, language: Language): string {
  const ounces = Math.round((g / OUNCE) * 2) / 2;
  if (system === 'metric' || ounces < 32) return showMass(g, system, language);
  const over = ounces % 16;
  return `${Math.floor(ounces / 16)} lb${over > 0 ? ` ${showFraction(over)} oz` : ''}`;
}

/** A nutrient's weight for the back of the sheet: one decimal under ten, else whole. */
export function showNutrient(g: number, system: System, language: Language): string {
  const value = system === 'us' ? g / OUNCE : g;
  const said = value >= 9.95 ? Math.round(value) : value >= 0.05 ? Math.round(value * 10) / 10 : Number(value.toPrecision(1));
  return `${numeral(said, language)} ${system === 'us' ? 'oz' : 'g'}`;
}

/** "2 to 7 1/2 ft", "15 cm to 1.6 m": the unit once where it is the same. */
export function showSpan(from: string, to: string): readonly [string, string] {
  const unit = / \p{L}.*$/u.exec(to)![0];
  return [from.endsWith(unit) ? from.slice(0, -unit.length) : from, to];
}

/** Quarter feet, inches under a foot where they are whole; or tenths of a metre. */
export function showLength(m: number, system: System, language: Language): string {
  if (system === 'metric') return m < 1 ? `${Math.round(m * 20) * 5} cm` : `${rounded(m, 2, language)} m`;
  return `${showFraction(m / FOOT)} ft`;
}

/** Shoots and trunks: whole inches, or centimetres. */
export const showShort = (m: number, system: System, language: Language): string => (system === 'us' ? `${numeral(Math.round((10 * m) / INCH) / 10, language)} in` : `${Math.round(m * 100)} cm`);

/** "1 1/2 cups", "2 tablespoons", "1/2 teaspoon"; metric in millilitres, two figures at most and fives from 20 on. Nothing where it is too little to measure. */
export function showVolume(mL: number, system: System, language: Language): string {
  const measure = cupsOf(mL);
  if (!measure) return '';
  if (system === 'metric') return `${mL < 20 ? Math.round(mL) : mL < 100 ? Math.round(mL / 5) * 5 : rounded(mL, 2, language)} mL`;
  const [n, one, more] = 'cups' in measure ? [measure.cups, 'cup', 'cups'] as const : 'spoons' in measure ? [measure.spoons, 'tablespoon', 'tablespoons'] as const : [measure.teaspoons, 'teaspoon', 'teaspoons'] as const;
  return `${showFraction(n)} ${say(language, 'unit', n > 1 ? more : one)}`;
}

/** Water for the can: quarter gallons, or litres. */
export const showWater = (litres: number, system: System, language: Language): string => (system === 'us' ? `${showFraction(litres / 3.785411784)} gal` : `${numeral(Math.round(litres * 2) / 2, language)} L`);

/** Two decimals at most. */
export const showPh = (value: number, language: Language): string => numeral(Math.round(value * 100) / 100, language);

const MONTHS = ['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October', 'November', 'December'];
export const monthNames = (language: Language): readonly string[] => ownMarks(language)?.months ?? MONTHS;

/** "25 April", "25. April", "25 de abril". */
export function showDay(d: Day, language: Language, withYear = false): string {
  const [y, m, date] = d.split('-').map(Number) as [number, number, number];
  return ownMarks(language)?.day(d, withYear) ?? `${date} ${MONTHS[m - 1]!}${withYear ? ` ${y}` : ''}`;
}

export const showMonth = (d: Day, language: Language): string => ownMarks(language)?.month(d) ?? `${MONTHS[Number(d.slice(5, 7)) - 1]!.slice(0, 3)} ${d.slice(0, 4)}`;

/** "10-25 April", "29 March-26 April"; with the year "15 October-14 December 2027". */
export function showWindow(from: Day, until: Day, language: Language, withYear = false): string {
  const end = showDay(until, language, withYear);
  if (from === until) return end;
  return ownMarks(language)?.window(from, until, withYear) ?? (from.slice(0, 7) === until.slice(0, 7) ? `${Number(from.slice(8))}-${end}` : `${showDay(from, language, withYear && from.slice(0, 4) !== until.slice(0, 4))}-${end}`);
}

export function showPrice(amount: number, currency: string, language: Language): string {
  const said = Number.isInteger(amount) ? String(amount) : amount.toFixed(2);
  return ownMarks(language)?.price(said, currency) ?? `${/^[A-Z]{3}$/.test(currency) ? `${currency} ` : currency}${said}`;
}

/** A figure's value with its unit, four figures at most. */
export const showValue = (value: number, unit: string, language: Language): string => `${rounded(value, 4, language)} ${unit === 'm2' ? 'm²' : unit === 'g/m2' ? 'g/m²' : unit}`;

/** A rate on the ground: lb a 1,000 sq ft, ounces a 100 sq ft where that is little, or g/m². */
export function showRate(gPerM2: number, system: System, language: Language): string {
  if (system === 'metric') return `${gPerM2 < 10 ? rounded(gPerM2, 2, language) : Math.round(gPerM2)} g/m²`;
  return `${rounded((gPerM2 / POUND) * 1000 * FOOT * FOOT, 3, language)} lb/${ownMarks(language) ? 1000 : '1,000'} sq ft`;
}

/** Square feet, or square metres. */
export const showGround = (m2: number, system: System, language: Language): string => (system === 'us' ? `${Math.round(m2 / FOOT ** 2)} sq ft` : `${rounded(m2, 2, language)} m²`);
