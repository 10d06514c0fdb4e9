/**
 * A soil report as the lab printed it or as copied by hand → its samples.
 * Any text gives a result; nothing is corrected silently; a line that makes no reading is listed as unread.
 */
import type { Notice, Question } from '../reason/notice.ts';
import { notice, placeIn } from '../reason/notice.ts';
import type { Item, Method, ReportUnit } from '../tables/items.ts';
import { ELEMENT_OF, ITEMS } from '../tables/items.ts';
import { isoDate } from '../units/date.ts';
import type { Context } from './line.ts';
import { needsUnit, readLine } from './line.ts';
import { styleOf } from './number.ts';
import type { Reading, Sample, Unread } from './reading.ts';
import type { Columns } from './table.ts';
import { columnsOf, isTableRule, readCrosswise, rowOf } from './table.ts';
import type { Line } from './text.ts';
import { isBinary, LARGEST_REPORT, linesOf, LONGEST_LINE } from './text.ts';
import { blank, findMethods, findNames, findUnits, isUnknown, methodCalled, unitCalled } from './vocabulary.ts';

export type Report = {
  readonly samples: readonly Sample[];
  readonly notices: readonly Notice[];
  readonly questions: readonly Question[];
};

type Answer = { method?: Method; unit?: ReportUnit | 'unknown' };
type Draft = { name: string; named: boolean; taken?: string; depth?: string; readings: Reading[]; unread: Unread[] };

const HEADING_WORDS = /^(?:[\s:;,.()/|&-]|\b(?:extract(?:able|ion|ant|ed)?|method|methods|results?|in|units?|by|using|with|methode|verfahren|nach|all|values?|nutrients?|soil|test|analysis|available|exchangeable|major|minor|macronutrients|micronutrients|are|given|as|for|the|cations?|anions?|base|saturation|percent|%)\b)*$/i;
const SATURATION_HEADING = /\b(?:cation|base)\s+saturation\b|\bsaturation\s*%|%\s*saturation|basensattigung/i;
const SAMPLE = /^\s*(?:sample(?:\s+(?:id|name|no\.?|number|description))?|probe(?:n?[ -]?(?:bezeichnung|nummer|name|nr\.?))?|muestra)\s*(?:[:=#|-]\s*|\s+(?=\d))(.*)$/i;
const TAKEN = /^\s*(?:taken|sampled|date sampled|sample date|date taken|probenahme(?:datum)?|entnahme(?:datum)?|entnommen|datum(?: der (?:probenahme|entnahme))?)(?:\s+am\b)?\s*[:=|-]?\s*(.+)$/i;
const DEPTH = /^\s*(?:depth|sample depth|sampling depth|probenahmetiefe|entnahmetiefe|tiefe)\s*[:=|-]?\s*(\d.*)$/i;
/** Words of a German report, in which a lone letter A to E is a class. */
const GERMAN = /\b(?:phosphat|phosphor|kali|kalium|ph-wert|gehaltsklassen?|gehaltsstufen?|versorgungsstufen?|bodenart|bodenuntersuchung|bodenprobe|entnahmetiefe|probenahme)\b/i;
/** Of a line whose runs of blanks are one. */
const ANSWER = /^(\S.*?) (method|unit) ?[:=] ?(\S.*)$/i;

/** Reads a report. `file` names it in notices. Never throws on any text. */
export function readReport(text: string, file: string): Report {
  const refused = refuse(text, file);
  if (refused) return { samples: [], notices: [refused], questions: [] };

  const notices: Notice[] = [];
  const answers = new Map<Item, Answer>();
  const lines = linesOf(text);
  let context: Context = { file, style: styleOf(lines.map((l) => l.text).join('\n')), method: null, unit: null, saturation: false, german: GERMAN.test(text), indexFrom: /\b(?:uk|rb209)\b/i.test(text) ? 0 : null };
  let columns: Columns | null = null;
  let draft: Draft = { name: 'sample 1', named: false, readings: [], unread: [] };
  const drafts = [draft];
  const next = (name: string): void => {
    if (!draft.named && draft.readings.every((r) => r.value === null)) [draft.name, draft.named] = [name, true];
    else drafts.push((draft = { name, named: true, readings: [], unread: [] }));
  };

  for (let i = 0; i < lines.length; i++) {
    let line = lines[i]!;
    if (line.raw.length > LONGEST_LINE) {
      notices.push(notice('line-too-long', 'error', { length: line.raw.length, most: LONGEST_LINE }, placeIn(file, line.number, line.raw.slice(0, 60), 0, 1)));
      continue;
    }
    if (!line.text.trim() || isTableRule(line.text)) continue;
    const headings = columnsOf(line.text);
    if (headings) {
      columns = headings;
      continue;
    }
    const row = columns ? rowOf(line.text, columns) : null;
    if (row) {
      const found = readLine({ ...line, text: row.text }, columns!.parted === ',' ? { ...context, style: 'point' } : context);
      const place = placeIn(file, line.number, line.raw, row.start, row.end);
      notices.push(...found.notices.map((n) => ({ ...n, place })));
      for (const reading of found.readings) keep(draft, { ...reading, asPrinted: line.raw.trim(), place }, notices);
      if (found.readings.length === 0 && found.notices.every((n) => n.severity === 'warning')) draft.unread.push({ line: line.number, text: line.raw.trim() });
      continue;
    }

    const unsure = dateTwoWays(line, file);
    if (unsure) {
      notices.push(unsure);
      continue;
    }
    const meta = metaOf(line);
    if (meta) {
      if (meta.sample) next(meta.sample);
      // A bare "Datum" may be that of the letter: it never displaces a day of sampling.
      if (meta.taken && !(draft.taken && /^\s*datum\s*[:=|-]?\s*\d/i.test(line.text))) draft.taken = meta.taken;
      if (meta.depth) draft.depth = meta.depth;
      if (!meta.rest) continue;
      line = { ...line, text: meta.rest };
    }
    const answer = answerOf(line, file, notices);
    if (answer) {
      answers.set(answer.item, { ...answers.get(answer.item), ...answer.says });
      continue;
    }
    const heading = headingOf(line, context);
    if (heading) {
      context = heading;
      continue;
    }
    const table = readCrosswise(lines, i);
    if (table) {
      for (const row of table.rows) {
        if (row.sample && table.rows.length > 1) next(row.sample);
        for (const piece of row.pieces) {
          const found = readLine({ number: row.line.number, raw: row.line.raw, text: piece.text }, context);
          notices.push(...found.notices.map((n) => ({ ...n, place: placeIn(file, row.line.number, row.line.raw, piece.start, piece.end) })));
          draft.readings.push(...found.readings.map((r) => ({ ...r, asPrinted: row.line.raw.slice(piece.start, piece.end), place: placeIn(file, row.line.number, row.line.raw, piece.start, piece.end) })));
        }
      }
      i += table.length - 1;
      continue;
    }
    const found = readLine(line, context);
    notices.push(...found.notices);
    context = { ...context, saturation: context.saturation && !found.readings.some((r) => ELEMENT_OF[r.item]) };
    if (found.readings.length === 0 && found.notices.every((n) => n.severity === 'warning')) draft.unread.push({ line: line.number, text: line.raw.trim() });
    for (const reading of found.readings) keep(draft, reading, notices);
  }

  const samples = drafts
    .filter((d) => d.readings.length > 0 || d.named || drafts.length === 1)
    .map((d, i) => finish(d, i, answers));
  if (samples.every((s) => s.readings.length === 0) && !notices.some((n) => n.severity === 'error')) {
    const blank = blankOf(lines, drafts.flatMap((d) => d.unread));
    notices.push(blank ? notice('form-blank', 'warning', { file }, placeIn(file, blank.number, blank.raw, 0, blank.raw.length)) : notice('nothing-read', 'error', { file }));
  }
  return { samples, notices, questions: samples.flatMap((s) => s.readings.flatMap((r) => asked(r, answers, samples.length > 1 ? s.name : ''))) };
}

function refuse(text: string, file: string): Notice | null {
  if (text.trim() === '') return notice('report-empty', 'error', { file });
  if (isBinary(text)) return notice('not-text', 'error', { file });
  if (text.length > LARGEST_REPORT && text.split('\n').length < 10) return notice('line-too-long', 'error', { length: text.length, most: LONGEST_LINE }, placeIn(file, 1, text.slice(0, 60), 0, 1));
  if (text.length > LARGEST_REPORT) return notice('report-too-large', 'error', { file, size: text.length, most: LARGEST_REPORT });
  return null;
}

/** The first name without a value of a form that nobody has filled in; null where any other line stands there. */
function blankOf(lines: readonly Line[], unread: readonly Unread[]): Line | null {
  if (unread.some((u) => !/^#|:$/.test(u.text))) return null;
  return lines.find((l) => /:\s*$/.test(l.text) && findNames(l.text).length > 0) ?? null;
}

/** A comment, or a line of the form that nobody filled in. */
const isFormLine = (text: string): boolean => /^#\s/.test(text) || (/^[^:]*:$/.test(text) && (findNames(text).length > 0 || /^(?:taken|depth|sample)\b/i.test(text)));

const GERMAN_MONTHS: Readonly<Record<string, string>> = { marz: 'March', mai: 'May', juni: 'June', juli: 'July', oktober: 'October', dezember: 'December' };

/** A day of sampling as ISO; "5/11/2026" gives both its days, another text none. */
function daysOf(text: string): string[] {
  const m = /^(\d{1,2})\/(\d{1,2})\/((?:20)?\d{2})$/.exec(text);
  const year = m?.[3]!.padStart(4, '20');
  const days = m ? [isoDate(`${year!}-${m[1]!}-${m[2]!}`), isoDate(`${year!}-${m[2]!}-${m[1]!}`)]
    : [isoDate(text.replace(/[a-z]+/i, (w) => GERMAN_MONTHS[w.toLowerCase()] ?? w).replace(/(?<=^\d{1,2}\.\d{1,2}\.)(?=\d{2}$)/, '20'))];
  return [...new Set(days.filter((d) => d !== null))];
}

/** A day of sampling that America and Europe read differently. */
function dateTwoWays(line: Line, file: string): Notice | null {
  const said = TAKEN.exec(line.text)?.[1]!.replace(/\|/g, ' ').trim();
  const days = said ? daysOf(said) : [];
  if (!said || days.length < 2) return null;
  const start = Math.max(0, line.text.lastIndexOf(said));
  return notice('taken-two-ways', 'warning', { read: said, a: days[0]!, b: days[1]! }, placeIn(file, line.number, line.raw, start, start + said.length));
}

/** A piece of a prepared line with its letters as typed, accents and all. */
function asTyped(piece: string, line: Line): string {
  const at = line.text.indexOf(piece);
  return at >= 0 ? piece.replace(/[\s\S]/g, (c, i: number) => (/\p{L}/u.test(line.raw[at + i]!) ? line.raw[at + i]! : c)) : piece;
}

function metaOf(line: Line): { sample?: string; taken?: string; depth?: string; rest?: string } | null {
  const { text } = line;
  const taken = TAKEN.exec(text);
  const date = taken ? daysOf(taken[1]!.replace(/\|/g, ' ').trim())[0] : null;
  if (date) return { taken: date };
  const depth = DEPTH.exec(text);
  if (depth) return { depth: depth[1]!.replace(/\|/g, ' ').trim() };
  const cells = text.split('|');
  const at = cells.findIndex((c) => SAMPLE.test(c));
  if (at < 0) return null;
  const name = SAMPLE.exec(cells[at]!)![1]!.replace(/[|*]/g, ' ').trim() || (cells[at + 1] ?? '').trim();
  const numbered = /^(\d+)\s*[:.-]\s*(.+)$/.exec(name);
  const sample = numbered ? numbered[2]! : /^\d+$/.test(name) ? `sample ${name}` : name;
  if (!sample || findNames(text).some((n) => n.is.item === 'ph' && /\d/.test(text.slice(n.end)))) return null;
  const rest = cells.filter((_, i) => i !== at).join('|');
  const named = asTyped(sample, line);
  return rest.trim() ? { sample: named, rest } : { sample: named };
}

/** `phosphorus method: Mehlich 3`, `calcium unit: ppm`, `phosphorus method: unknown`. */
function answerOf(line: Line, file: string, notices: Notice[]): { item: Item; says: Answer } | null {
  const m = ANSWER.exec(line.text.trim().replace(/\s+/g, ' '));
  // A question names its item as the closed list does: "organic-matter unit: %".
  const own = m ? ITEMS.find((i) => i === m[1]!.trim().toLowerCase()) : undefined;
  const name = m ? findNames(m[1]!)[0] : undefined;
  if (!m || (!own && (!name || name.is.item === 'ratio' || name.is.item === 'lime' || blank(m[1]!, [name]).trim()))) return null;
  const said = m[3]!.trim();
  const item = own ?? (name!.is.item as Item);
  if (m[2]!.toLowerCase() === 'method') {
    const method = methodCalled(said);
    if (method) return { item, says: { method } };
  } else {
    const unit = isUnknown(said) ? 'unknown' : unitCalled(said);
    if (unit) return { item, says: { unit } };
  }
  const start = line.text.lastIndexOf(said);
  notices.push(notice('answer-unknown', 'error', { read: said, item }, placeIn(file, line.number, line.raw, start, start + said.length)));
  return { item, says: {} };
}

/** A line that only says by which method, in which unit or of what the lines below it are. */
function headingOf(line: Line, context: Context): Context | null {
  const text = line.text;
  if (findNames(text).some((n) => !n.is.name.startsWith('saturation'))) return SATURATION_HEADING.test(text) && !/\d/.test(text) ? { ...context, saturation: true } : null;
  const methods = findMethods(text);
  const units = findUnits(blank(text, methods));
  const rest = blank(blank(text, methods), units);
  if (/\d/.test(rest) || !HEADING_WORDS.test(rest)) return null;
  if (SATURATION_HEADING.test(text)) return { ...context, saturation: true };
  if (methods.length === 0 && units.length === 0) return null;
  return { ...context, saturation: false, method: methods[0]?.is ?? context.method, unit: units[0]?.is ?? context.unit };
}

/** Adds a reading; a later line that gives only a word for an item already read is that item's word. */
function keep(draft: Draft, reading: Reading, notices: Notice[]): void {
  const same = draft.readings.findIndex((r) => r.item === reading.item && (r.method === reading.method || reading.method === null || r.method === null));
  const earlier = draft.readings[same];
  if (!earlier) {
    draft.readings.push(reading);
  } else if (reading.value === null && !reading.below) {
    if (earlier.lab.rating === null) draft.readings[same] = { ...earlier, lab: { ...earlier.lab, rating: reading.lab.rating } };
  } else if (earlier.value === null && !earlier.below) {
    draft.readings[same] = { ...reading, lab: { rating: reading.lab.rating ?? earlier.lab.rating, range: reading.lab.range } };
  } else if (earlier.value !== reading.value || earlier.unit !== reading.unit) {
    notices.push(notice('reading-twice', 'error', { item: reading.item, first: earlier.asPrinted, line: earlier.place.line, second: reading.asPrinted }, reading.place));
  }
}

function finish(draft: Draft, i: number, answers: ReadonlyMap<Item, Answer>): Sample {
  const readings = draft.readings.map((r): Reading => {
    const says = answers.get(r.item);
    return { ...r, method: r.method ?? says?.method ?? null, unit: r.unit ?? (says?.unit === 'unknown' ? null : says?.unit ?? null) };
  });
  const name = draft.named ? draft.name : `sample ${i + 1}`;
  return { name, ...(draft.taken ? { taken: draft.taken } : {}), ...(draft.depth ? { depth: draft.depth } : {}), readings, unread: draft.unread.filter((u) => !isFormLine(u.text)) };
}

const UNIT_CHOICES: readonly ReportUnit[] = ['ppm', 'mg/kg', 'lb/acre', 'meq/100g', 'mg/100g', 'mg/L', 'kg/ha'];
const METHOD_CHOICES: Partial<Record<Item, readonly Method[]>> = {
  phosphorus: ['mehlich-3', 'mehlich-1', 'olsen', 'bray-1', 'modified-morgan', 'morgan', 'cal', 'colwell'],
  potassium: ['ammonium-acetate', 'mehlich-3', 'mehlich-1', 'ammonium-nitrate', 'modified-morgan', 'morgan', 'cal', 'colwell'],
};

/** What must be asked of one reading: a missing unit always; a missing method where neither word nor range decides. */
function asked(reading: Reading, answers: ReadonlyMap<Item, Answer>, sample: string): Question[] {
  const questions: Question[] = [];
  const facts = { item: reading.item, line: reading.place.line, sample, read: reading.asPrinted };
  const says = answers.get(reading.item);
  const decides = reading.item === 'phosphorus' || reading.item === 'potassium';
  if (reading.value !== null && reading.unit === null && needsUnit(reading.item) && says?.unit !== 'unknown') {
    const choices = reading.item === 'cec' ? ['meq/100g', 'cmol/kg', 'mmolc/dm3'] : reading.item === 'organic-matter' ? ['%', 'g/kg'] : reading.item === 'salts' ? ['dS/m', 'mS/cm', 'uS/cm'] : UNIT_CHOICES;
    const changes = reading.lab.rating === null && decides ? 'changes-p-and-k' : reading.item === 'salts' ? 'changes-salts' : reading.item === 'organic-matter' ? 'changes-organic' : 'changes-nothing-bought';
    questions.push({ code: 'unit-missing', about: reading.item, facts, choices, changes, place: reading.place });
  }
  if (decides && reading.value !== null && reading.method === null && reading.lab.rating === null && reading.lab.range === null && reading.unit !== 'index' && reading.index === undefined && says?.method === undefined) {
    questions.push({ code: 'method-missing', about: reading.item, facts, choices: METHOD_CHOICES[reading.item] ?? [], changes: 'changes-p-and-k', place: reading.place });
  }
  return questions;
}

