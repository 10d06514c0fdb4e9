/** Numbers, days and prices as a language writes them, by the locale data of Intl (CLDR). */
import type { Language, Marks } from './words.ts';

const LONG = { day: 'numeric', month: 'long', timeZone: 'UTC' } as const;
const at = (day: string): Date => new Date(`${day}T00:00Z`);

export function marksOf(language: Language): Marks {
  // Without groups: many numbers are years, and a grower may copy what is printed into a file that Medlar reads.
  const numbers = new Intl.NumberFormat(language, { useGrouping: false, maximumFractionDigits: 12 });
  const point = numbers.format(0.5)[1]!;
  const long = new Intl.DateTimeFormat(language, LONG);
  const dated = new Intl.DateTimeFormat(language, { ...LONG, year: 'numeric' });
  const month = new Intl.DateTimeFormat(language, { month: 'long', timeZone: 'UTC' });
  const short = new Intl.DateTimeFormat(language, { month: 'short', year: 'numeric', timeZone: 'UTC' });
  return {
    months: Array.from({ length: 12 }, (_, m) => month.format(Date.UTC(2026, m))),
    number: (value) => numbers.format(value),
    day: (d, withYear) => (withYear ? dated : long).format(at(d)),
    month: (d) => short.format(at(d)),
    // With our hyphen for the dash of the locale.
    window: (from, until, withYear) => (withYear ? dated : long).formatRange(at(from), at(until)).replace(/\s*–\s*/, from.slice(0, 7) === until.slice(0, 7) ? '-' : ' - '),
    price: (said, currency) => (currency === '€' || /^[A-Z]{3}$/.test(currency) ? `${said.replace('.', point)} ${currency}` : `${currency}${said.replace('.', point)}`),
  };
}
