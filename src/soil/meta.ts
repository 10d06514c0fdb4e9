/** Lines that say something of the sample or answer a question: its name, its day, its depth, `phosphorus method: Mehlich 3`. */
import type { Notice } from '../reason/notice.ts';
import { notice } from '../reason/notice.ts';
import type { Item, Method, ReportUnit } from '../tables/items.ts';
import { ITEMS } from '../tables/items.ts';
import type { DateOrder } from '../units/date.ts';
import { isoDate } from '../units/date.ts';
import type { Line } from './text.ts';
import { spot } from './text.ts';
import type { Span } from './patterns.ts';
import { blank, findNames, isUnknown, methodCalled, unitCalled } from './vocabulary.ts';

export type Answer = { readonly method?: Method; readonly unit?: ReportUnit | 'unknown' };
export type Meta = { readonly sample?: string; readonly taken?: string; readonly depth?: string; readonly rest?: string };

const SAMPLE = /^\s*(?:sample(?: ?\/ ?[a-z]+)|sample(?:\s+(?:id|name|no\.?|number|description|reference|ref\.?|identification))?|field(?:\s+(?:id|name))?|probe(?:n?[ -]?(?:bezeichnung|nummer|name|nr\.?))?|muestra|amostra|campione|echantillon|parcelle|parcela)\s*(?:[:=#|-]+\s*|\s+(?=\d))(.*)$/i;
const TAKEN = /^\s*(?:taken|sampled|date de (?:prelevement|collecte)|date(?: (?:sampled|taken|collected|of sampling))?|(?:sample|sampling) date|probenahme(?:datum)?|entnahme(?:datum)?|entnommen|datum(?: der (?:probenahme|entnahme))?|fecha(?: de (?:muestreo|toma))?|tomada|extraida|prelevement|prelevee?|prelevato|data(?: d[aeio] (?:prelievo|campionamento|coleta|colheita|amostragem))?|coletada)(?:\s+(?:am|on|el|le|du|il|em))?[\s:=|-]*(.+)/i;
const DEPTH = /^\s*(?:(?:sampl(?:e|ing) )?depth|(?:probenahme|entnahme)?tiefe|profundidade?|profondeur|profondita)[\s:=|-]*(\d.*)/i;
const ANSWER = /\s(method|unit)\s*[:=]\s*(?=\S)/i;

const MONTHS: Readonly<Record<string, string>> = {
  marz: 'March', mai: 'May', juni: 'June', juli: 'July', oktober: 'October', dezember: 'December',
  ene: 'January', abr: 'April', ago: 'August', dic: 'December', okt: 'October', dez: 'December', gen: 'January', mag: 'May', giu: 'June', lug: 'July', set: 'September', ott: 'October', fev: 'February', out: 'October', enero: 'January', febrero: 'February', marzo: 'March', abril: 'April', mayo: 'May', junio: 'June', julio: 'July', agosto: 'August', septiembre: 'September', octubre: 'October', noviembre: 'November', diciembre: 'December',
  janvier: 'January', fevrier: 'February', mars: 'March', avril: 'April', juin: 'June', juillet: 'July', aout: 'August', septembre: 'September', octobre: 'October', novembre: 'November', decembre: 'December',
  gennaio: 'January', febbraio: 'February', aprile: 'April', maggio: 'May', giugno: 'June', luglio: 'July', settembre: 'September', ottobre: 'October', dicembre: 'December',
  janeiro: 'January', fevereiro: 'February', marco: 'March', maio: 'May', junho: 'June', julho: 'July', setembro: 'September', outubro: 'October', novembro: 'November', dezembro: 'December', januar: 'January', februar: 'February',
};

/** A day of sampling as ISO; "5/11/2026" gives both its days, another text none. */
export function daysOf(text: string): string[] {
  const m = /^(\d{1,2})\/(\d{1,2})\/((?:20)?\d{2})$/.exec(text);
  const year = m?.[3]!.padStart(4, '20');
  const plain = text.replace(/\bdel? +/gi, '').replace(/^(\d+)-([a-z]+)-/i, '$1 $2 ').replace(/^(\d\d?)-(\d+)-/, '$1.$2.').replace(/^(\d{1,2})(?:er|º|ª|\.º)\s/i, '$1 ').replace(/\p{L}+/u, (w) => MONTHS[w.toLowerCase()] ?? w);
  const days = m ? [isoDate(`${year!}-${m[1]!}-${m[2]!}`), isoDate(`${year!}-${m[2]!}-${m[1]!}`)]
    : [isoDate(plain.replace(/(?<=\.\d{1,2}\.)(?=\d{2}$)/, '20'))];
  return [...new Set(days.filter((d) => d !== null))];
}

/** "Date: 3 Nov 2025" alone may be the day of the letter. */
export const isBareDate = (text: string): boolean => /^\s*(?:datum|date|fecha|data)(?! (?:sampled|taken|collected|of |d[aeio] |der ))\b/i.test(text);
/** What stands behind the words for a day of sampling. */
const takenIn = (text: string): string => (TAKEN.exec(text)?.[1] ?? '').replace(/\|/g, ' ').trim();

/** A day of sampling that America and Europe read differently; `order` where the report's language or country settles it. */
export function dateTwoWays(line: Line, file: string, order: DateOrder): Notice | null {
  const said = takenIn(line.text);
  const days = daysOf(said);
  if (days.length < 2 || order !== null) return null;
  const start = line.text.lastIndexOf(said);
  return takenTwoWays(line, file, { start, end: start + said.length, days });
}
export const takenTwoWays = (line: Line, file: string, { start, end, days }: Span & { readonly days: readonly string[] }): Notice =>
  notice('taken-two-ways', 'warning', { read: line.text.slice(start, end), a: days[0]!, b: days[1]! }, spot(line, file, start, end));

/** A piece of a prepared line with its letters as typed, accents and all. */
export function asTyped(piece: string, line: Line): string {
  const at = line.text.indexOf(piece);
  return at >= 0 ? piece.replace(/[\s\S]/g, (c, i: number) => (/\p{L}/u.test(line.raw[at + i]!) ? line.raw[at + i]! : c)) : piece;
}

/** What a line says of its sample; null where it is another line. */
export function metaOf(line: Line, order: DateOrder): Meta | null {
  const { text } = line;
  const days = daysOf(takenIn(text));
  const day = order === 'day first' ? days.at(-1) : days[0];
  if (day) return { taken: day };
  const depth = DEPTH.exec(text);
  if (depth && !/\d{4}|\d.* {2,}\d|[a-z]{3,} ?[:=]|,\s*[a-z]{3}/i.test(depth[1]!) && findNames(depth[1]!).length === 0) return { depth: depth[1]!.replace(/\|/g, ' ').trim() };
  // "2024: pH 5.8, P 22 ppm": each year's test is a sample of its own.
  const year = /^(\s*\(?((?:19|20)\d{2})\)?\s*[:-]\s*)/.exec(text);
  if (year && findNames(text).some((n) => /\d/.test(text.slice(n.end)))) return { sample: year[2]!, rest: ' '.repeat(year[1]!.length) + text.slice(year[1]!.length) };
  const cells = (text.includes('|') ? text : text.replace(/ {3,}/g, (gap) => '|'.padEnd(gap.length))).split('|');
  const at = cells.findIndex((c) => SAMPLE.test(c));
  if (at < 0) return null;
  const own = SAMPLE.exec(cells[at]!)![1]!.replace(/:\s*$/, '').trim();
  const name = own || (cells[at + 1] ?? '').trim();
  const numbered = /^\d+\s*[:.-]\s*(.+)/.exec(name);
  const sample = numbered ? numbered[1]! : /^\d{1,2}$/.test(name) ? `sample ${name}` : name;
  if (!sample || findNames(text).some((n) => n.is.item === 'ph' && /\d/.test(text.slice(n.end)))) return null;
  // Each other cell stays at its place.
  const others = cells.map((cell, i) => (i === at || (!own && i === at + 1) ? ' '.repeat(cell.length) : cell));
  const rest = others.join('|');
  const named = asTyped(sample, line);
  if (findNames(rest).length > 0) return { sample: named, rest };
  // "Field: Backyard      Date sampled: 21 Oct 2025    Depth 6 in"
  const beside = others.flatMap((cell) => metaOf({ ...line, text: cell }, order) ?? []).filter((m) => m.sample === undefined);
  return Object.assign({}, ...beside, { sample: named }) as Meta;
}

/** `phosphorus method: Mehlich 3`, `calcium unit: ppm`, `phosphorus method: unknown`. */
export function answerOf(line: Line, file: string, notices: Notice[]): { item: Item; says: Answer } | null {
  const m = ANSWER.exec(line.text);
  if (!m) return null;
  const asked = line.text.slice(0, m.index).trim();
  // A question names its item as the closed list does: "organic-matter unit: %".
  const own = ITEMS.find((i) => i === asked.toLowerCase());
  const name = findNames(asked)[0];
  if (!own && (!name || name.is.item === 'ratio' || name.is.item === 'lime' || blank(asked, [name]).trim())) return null;
  const start = m.index + m[0].length;
  const said = line.text.slice(start).trim();
  const item = own ?? (name!.is.item as Item);
  if (m[1]!.toLowerCase() === 'method') {
    const method = methodCalled(said);
    if (method) return { item, says: { method } };
  } else {
    const unit = isUnknown(said) ? 'unknown' : unitCalled(said);
    if (unit) return { item, says: { unit } };
  }
  notices.push(notice('answer-unknown', 'error', { read: said, item }, spot(line, file, start, line.text.trimEnd().length)));
  return { item, says: {} };
}
