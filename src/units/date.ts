/** Calendar days as ISO strings (YYYY-MM-DD): no clock, no time zone. */

const MONTHS = ['january', 'february', 'march', 'april', 'may', 'june', 'july', 'august', 'september', 'october', 'november', 'december'];
export type Day = string;

const pad = (n: number): string => String(n).padStart(2, '0');
/** A day that its month lacks falls into another month, a month that there is not into another year; years under 100 are none. */
const isReal = (y: number, m: number, d: number): boolean => {
  const date = new Date(Date.UTC(y, m - 1, d));
  return date.getUTCFullYear() === y && date.getUTCMonth() === m - 1;
};

export const day = (year: number, month: number, date: number): Day => `${year}-${pad(month)}-${pad(date)}`;
export const yearOf = (d: Day): number => Number(d.slice(0, 4));

/** The month a word names, 1 to 12; three letters are enough. */
export function monthOf(word: string): number | null {
  const w = word.toLowerCase().replace(/\.$/, '');
  if (w.length < 3) return null;
  const at = MONTHS.findIndex((m) => m.startsWith(w));
  return at < 0 ? null : at + 1;
}

/** Which number of 3/11/2025 is the day; null where nobody can say. */
export type DateOrder = 'month first' | 'day first' | null;
/** How a country writes it, by the Unicode CLDR's short dates; Canada and the Philippines use both. */
export const dateOrderIn = (country: string | null): DateOrder => (country === null || country === 'CA' || country === 'PH' ? null : country === 'US' ? 'month first' : 'day first');

/** As one date of the text says that can be read but one way, else as told: a lab and a spreadsheet write all dates alike. */
export function dateOrderOf(text: string, told: DateOrder): DateOrder {
  const all = [...text.matchAll(/(?<![\d/])(\d{1,2})\/(\d{1,2})\/\d{4}(?![\d/])/g)];
  const [days, months] = [all.some((m) => Number(m[1]) > 12), all.some((m) => Number(m[2]) > 12)];
  return days === months ? (days ? null : told) : days ? 'day first' : 'month first';
}

/** "3 Nov 2025", "November 3, 2025", "2025-11-03", "3.11.2025" → ISO; null for anything else, and for 3/11/2025, which has two readings. */
export function isoDate(text: string): Day | null {
  const iso = /^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(text);
  const words = /^(\d{1,2})\.? +(\p{L}{3,})\.?,? +(\d{4})$/u.exec(text);
  const american = /^(\p{L}{3,})\.? +(\d{1,2}),? +(\d{4})$/u.exec(text);
  const dotted = /^(\d{1,2})\.(\d{1,2})\.(\d{4})$/.exec(text);
  const month = /^(\p{L}{3,})\.? +(\d{4})$/u.exec(text);
  const parts = iso ? [iso[1], iso[2], iso[3]]
    : words ? [words[3], monthOf(words[2]!), words[1]]
      : american ? [american[3], monthOf(american[1]!), american[2]]
        : dotted ? [dotted[3], dotted[2], dotted[1]]
          : month ? [month[2], monthOf(month[1]!), 1] : null;
  if (!parts) return null;
  const [y, m, d] = parts.map(Number) as [number, number, number];
  return isReal(y, m, d) ? day(y, m, d) : null;
}

/** "12 April" → month and day; null where it is no date of any year. */
export function monthDay(text: string): { month: number; date: number } | null {
  const found = (/^(?<date>\d{1,2})\.? +(?<word>\p{L}{3,})\.?$/u.exec(text) ?? /^(?<word>\p{L}{3,})\.? +(?<date>\d{1,2})$/u.exec(text))?.groups;
  if (!found) return null;
  const [month, date] = [monthOf(found.word!), Number(found.date)];
  return month && isReal(2025, month, date) ? { month, date } : null;
}

const DAY_MS = 86_400_000;
/** Days since 1970 of an ISO day. Planning asks for the same few days thousands of times. */
const numbers = new Map<Day, number>();
function numberOf(d: Day): number {
  const known = numbers.get(d);
  if (known !== undefined) return known;
  const n = Math.round(Date.parse(d) / DAY_MS);
  if (numbers.size > 5000) numbers.clear();
  numbers.set(d, n);
  return n;
}

/** A season is reckoned about a day; at the ends of the calendar there is no day before or after. */
export const canBeToday = (d: Day): boolean => d >= '1900-01-01' && d < '2300-01-01';

export const addDays = (d: Day, days: number): Day => new Date((numberOf(d) + days) * DAY_MS).toISOString().slice(0, 10);

export const daysBetween = (a: Day, b: Day): number => numberOf(b) - numberOf(a);
