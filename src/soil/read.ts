/**
 * A soil report as the lab printed it or as copied by hand → its samples, in stages: lines, lines put together (join),
 * what each says (meta, heading, grid and pairs by blocks, line), samples (samples), questions (questions).
 * Any text gives a result; nothing is corrected silently; a line that makes no reading is listed as unread.
 */
import type { Notice, Question } from '../reason/notice.ts';
import { notice, placeIn } from '../reason/notice.ts';
import type { Item, Method, ReportUnit } from '../tables/items.ts';
import { ELEMENT_OF } from '../tables/items.ts';
import { labMethods } from '../tables/labs.ts';
import { ADVICE, ELSEWHERE, GERMAN, LIMED, LIMED_WHEN, NOT_LIMED, OF_SOIL } from '../tables/report-words.ts';
import { amountsIn } from './advice.ts';
import { gridEvents, pairEvents } from './blocks.ts';
import { kindOfText, repairedText } from './decode.ts';
import { isRule } from './grid-cells.ts';
import { readGrid } from './grid.ts';
import { AMOUNTS, groundIn } from './ground.ts';
import { headingOf, toldMethods } from './heading.ts';
import { joined } from './join.ts';
import type { Keys } from './keys.ts';
import { keysOf, signOf } from './keys.ts';
import { kindOfLines, strangerNotice } from './report-kind.ts';
import type { Context } from './context.ts';
import type { LineResult } from './line.ts';
import { readLine } from './line.ts';
import type { Answer } from './meta.ts';
import { answerOf, asTyped, dateTwoWays, isBareDate, metaOf, takenTwoWays } from './meta.ts';
import { styleOf } from './number.ts';
import { pairsAt } from './pairs.ts';
import { asked } from './questions.ts';
import type { Reading, Sample, Unread } from './reading.ts';
import type { Draft, Event } from './samples.ts';
import { samplesOf } from './samples.ts';
import type { Line } from './text.ts';
import { LARGEST_REPORT, linesOf, LONGEST_LINE, spot } from './text.ts';
import type { Look } from './token.ts';
import { lookFor } from './token.ts';
import { toldBelow } from './told.ts';
import type { Words } from './vocabulary.ts';
import type { DateOrder } from '../units/date.ts';
import { dateOrderOf } from '../units/date.ts';
import { languageOf, wordsOf } from './vocabulary.ts';
import { withinLine } from './within.ts';

export type Report = {
  readonly samples: readonly Sample[];
  readonly notices: readonly Notice[];
  readonly questions: readonly Question[];
};

/** The lab or state by which a grower answered for the methods. */
const LAB = /^\s*lab(?:oratory)?\s*[:=](.+)/i;
/** Units in which advice is given, and none. */
const OF_ADVICE: readonly (ReportUnit | null)[] = [...AMOUNTS, null];

/** Reads a report. `file` names it in notices; `dates` says how 3/11/2025 is meant where the text itself does not. Never throws on any text. */
export function readReport(text: string, file: string, dates: DateOrder = null): Report {
  const refused = refuse(text, file);
  if (refused) return { samples: [], notices: [refused], questions: [] };
  const notices: Notice[] = [];
  const questions: Question[] = [];
  const answers = new Map<Item, Answer>();
  const labs = new Map<Item, Method>();
  const printed = linesOf(repairedText(text) ?? text);
  const told = kindOfLines(printed);
  const stranger = strangerNotice(told, file);
  if (stranger) return { samples: [], notices: [stranger], questions: [] };
  const words = wordsOf(languageOf(printed.slice(0, 300).map((l) => l.text)));
  const style = styleOf(printed.map((l) => l.text).join('\n'));
  const look = lookFor(words, style);
  const lines = joined(printed, look, words);
  const keys = keysOf(printed, words);
  const events = eventsOf(lines, { ...contextOf(text, file, told.kind === 'leaf'), words, look, style, indexBeside: keys.indexBeside, dates: dateOrderOf(text, words.language === null || words.language === 'en' ? dates : 'day first') }, keys, notices, questions, answers, labs);
  const samples = samplesOf(events, notices).map((d, i) => finish(d, i, answers, labs, told.kind === 'leaf'));
  const quick = samples.flatMap((s) => s.readings.filter((r) => r.unit === 'MAF' && r.lab.rating === null && r.lab.range === null));
  if (quick[0]) notices.push(notice('quick-test', 'note', { item: quick[0].item }, quick[0].place));
  if (samples.every((s) => s.readings.length === 0) && questions.length === 0 && !notices.some((n) => n.severity === 'error')) {
    const form = blankOf(lines, samples.flatMap((s) => s.unread), words);
    notices.push(form ? notice('form-blank', 'warning', { file }, placeIn(file, form.number, form.raw, 0, form.raw.length)) : notice('nothing-read', 'error', { file }));
  }
  return { samples, notices, questions: [...questions, ...samples.flatMap((s) => s.readings.flatMap((r) => asked(r, answers, samples.length > 1 ? s.name : '', told.kind === 'leaf')))] };
}

function contextOf(text: string, file: string, leaf: boolean): Omit<Context, 'words' | 'look' | 'style' | 'indexBeside' | 'dates'> {
  return {
    file, method: null, methods: new Map(), unit: null, saturation: false, ground: null, german: GERMAN.test(text),
    indexFrom: /\b(?:uk|rb209)\b/i.test(text) ? 0 : null, leaf,
  };
}

/** What each line says, in order. Headings change how the lines below are read. */
function eventsOf(lines: readonly Line[], first: Context, keys: Keys, notices: Notice[], questions: Question[], answers: Map<Item, Answer>, labs: Map<Item, Method>): Event[] {
  const { file, dates } = first;
  const events: Event[] = [];
  const ofLetter: Notice[] = [];
  const below = toldBelow(lines, first);
  let context = first;
  let advice = false;
  let elsewhere = false;
  const unread = (line: Line): void => {
    for (const part of line.parts?.map((p) => p.line) ?? [line]) events.push({ kind: 'unread', line: part.number, text: part.raw.trim() });
  };
  for (let i = 0; i < lines.length; i++) {
    let line = lines[i]!;
    if (line.raw.length > LONGEST_LINE) {
      notices.push(notice('line-too-long', 'error', { length: line.raw.length, most: LONGEST_LINE }, placeIn(file, line.number, line.raw.slice(0, 60), 0, 1)));
      continue;
    }
    if (!line.text.trim() || isRule(line.text)) {
      events.push({ kind: 'gap' });
      continue;
    }
    if (keys.lines.has(line.number)) continue;
    const unsure = dateTwoWays(line, file, dates);
    if (unsure) {
      (isBareDate(line.text) ? ofLetter : notices).push(unsure);
      continue;
    }
    elsewhere = headsElsewhere(lines, i, first.look) || (elsewhere && !OF_SOIL.test(line.text) && !metaOf(line, dates)?.sample);
    if (elsewhere || saysElsewhere(line, first.look)) {
      unread(line);
      continue;
    }
    const grid = readGrid(lines, i, first.words);
    if (grid) {
      for (const head of grid.strange) notices.push(notice('column-unknown', 'warning', { read: head.text }, spot(line, file, head.start, head.end)));
      // A large table has more than may be handed over at once.
      for (const event of gridEvents(grid, line, context, notices)) events.push(event);
      i += grid.length - 1;
      continue;
    }
    const meta = metaOf(line, dates);
    if (meta) {
      if (meta.sample) events.push({ kind: 'sample', name: meta.sample });
      if (meta.sample) advice = false;
      if (meta.taken) events.push({ kind: 'taken', is: meta.taken, weak: isBareDate(line.text) });
      if (meta.depth) events.push({ kind: 'depth', is: meta.depth, weak: false });
      if (!meta.rest) continue;
      line = { ...line, text: meta.rest };
    }
    const lab = LAB.exec(line.text)?.[1];
    if (lab !== undefined) {
      for (const [item, method] of Object.entries(labMethods(asTyped(lab, line).trim()) ?? {}) as [Item, Method][]) labs.set(item, method);
      continue;
    }
    const answer = answerOf(line, file, notices);
    if (answer) {
      answers.set(answer.item, { ...answers.get(answer.item), ...answer.says });
      continue;
    }
    const pairs = pairsAt(lines, i, first.look);
    const told = below.get(line.number);
    if (told && !pairs) {
      events.push({ kind: 'told', told });
      continue;
    }
    const ground = groundIn(line.text);
    if (ground !== null) {
      context = { ...context, ground };
      advice = true;
      unread(line);
      continue;
    }
    const heading = headingOf(line, context);
    if (heading) {
      context = heading;
      advice = false;
      continue;
    }
    if (pairs) {
      pairEvents(pairs, context, events, notices, questions);
      i += pairs.length - 1;
      continue;
    }
    line = parted(line, context.style);
    const within = withinLine(line.text, dates);
    if (within?.taken) events.push({ kind: 'taken', is: within.taken, weak: true });
    if (within?.unsure) notices.push(takenTwoWays(line, file, within.unsure));
    if (within?.depth) events.push({ kind: 'depth', is: `${line.raw.slice(within.depth.start, within.depth.end)} ${within.depth.unit}`.trim(), weak: true });
    const limed = LIMED.test(line.text) && LIMED_WHEN.test(line.text) && !NOT_LIMED.test(line.text);
    if (limed) notices.push(notice('report-limed', 'warning', { read: line.raw.trim() }, spot(line, file, 0, line.raw.length)));
    const found = limed ? besideLime(readLine(line, context)) : readLine(line, context);
    const kept = advice || ADVICE.test(line.text) ? found.readings.filter((r) => !isAdvice(r, line, advice)) : found.readings;
    if (kept.some((r) => !OF_ADVICE.includes(r.unit))) advice = false;
    // "Recommended: 5 g N/m2, 8 g K2O/m2" is amounts to bring out and nothing that was misread.
    if (kept.length === 0 && (found.readings.length > 0 || amountsIn(line.text, line.number, advice ? context.ground : null).length > 0)) {
      unread(line);
      continue;
    }
    notices.push(...found.notices);
    context = { ...context, saturation: context.saturation && !kept.some((r) => ELEMENT_OF[r.item]) };
    context = toldMethods(line, context);
    const title = kept.length === 0 ? titleOf(line, lines[i + 1]) : null;
    if (title !== null && ADVICE.test(line.text)) advice = true;
    if (kept.length === 0 && within?.whole && found.notices.length === 0 && line.text.length < 120) continue;
    if (kept.length === 0 && found.notices.every((n) => n.severity === 'warning')) {
      if (title !== null && !advice) events.push({ kind: 'heading', name: title, line: line.number, text: line.raw.trim() });
      else unread(line);
    }
    if (kept.length > 0) events.push({ kind: 'readings', readings: signed(kept, line, keys) });
  }
  // The day of the letter matters only where no day of sampling is told.
  if (!events.some((e) => e.kind === 'taken')) for (const unsure of ofLetter) notices.push(unsure);
  return events;
}

/** "Removed by 10 bushels" over values: a line of words of what is not this soil. */
function headsElsewhere(lines: readonly Line[], at: number, look: Look): boolean {
  const text = lines[at]!.text.trim();
  if (text.length > 80 || /[|.!?]| {3,}/.test(text) || !ELSEWHERE.test(text) || OF_SOIL.test(text)) return false;
  const isValued = (line: Line | undefined): boolean => line !== undefined && look(line.text).some((t) => t.kind === 'name') && look(line.text).some((t) => t.kind === 'number' || t.kind === 'between');
  return !isValued(lines[at]) && lines.slice(at + 1, at + 4).some(isValued);
}

/** "Your compost supplies: P 20 ppm, K 60 ppm". */
function saysElsewhere(line: Line, look: Look): boolean {
  const name = look(line.text).find((t) => t.kind === 'name');
  return name !== undefined && ELSEWHERE.test(line.text.slice(0, name.start)) && !OF_SOIL.test(line.text) && !line.text.includes('|');
}

/** A row of a table whose head was not understood, "Zinc,12,50,ppm": its commas part cells and are none of the numbers'; of "Kalium 1,5 mg/100g,Magnesium 2,4 mg/100g" they are. */
function parted(line: Line, style: Context['style']): Line {
  if (style === 'comma' && /\d,\d+ ?[a-z%]/i.test(line.text)) return line;
  const rowLike = /[a-z%)],\S/i.test(line.text) && line.text.split(/\S,(?=\S)/).length > 3 && !line.text.includes('"');
  return rowLike ? { ...line, text: line.text.replaceAll(',', '|') } : line;
}

/** Below a heading of advice, or behind a word of advice, a rate or a bare number is an amount to bring out; a lime need is kept. */
function isAdvice(r: Reading, line: Line, below: boolean): boolean {
  if (!OF_ADVICE.includes(r.unit) || (!ELEMENT_OF[r.item] && r.item !== 'carbonate')) return false;
  const at = ADVICE.exec(line.text)?.index;
  return below || (at !== undefined && (line.parts !== undefined || at < r.place.column));
}

/** What a line tells beside the lime that was brought out. */
function besideLime({ readings, notices }: LineResult): LineResult {
  const kept = readings.filter((r) => r.item !== 'lime-requirement' && r.item !== 'carbonate');
  return { readings: kept, notices: kept.length > 0 ? notices : [] };
}

/** The rating of a sign whose key the report prints; of an index by the classes it prints. */
function signed(readings: readonly Reading[], line: Line, keys: Keys): readonly Reading[] {
  const sign = readings.length === 1 ? signOf(line, keys) : null;
  return readings.map((r) => {
    const own = r.unit === 'index' && r.value !== null ? keys.index.find(([upTo]) => r.value! <= upTo)?.[1] : undefined;
    return { ...r, lab: { ...r.lab, rating: r.lab.rating ?? sign ?? own ?? null } };
  });
}

/** A title over the lines below: it ends with a colon or a number sign, is underlined, or is the only line of few words. */
function titleOf(line: Line, below: Line | undefined): string | null {
  const text = line.raw.replaceAll('*', '').trim();
  if (text.length > 60) return null;
  const words = text.split(/\s+/).length;
  const isTitle = (below !== undefined && isRule(below.text) && !below.text.includes('|')) || /:$|#\s?\d{1,3}$|^#+\s/.test(text) || (words <= 5 && !/[.,!?]$|\d{3}/.test(text));
  // A line of advice is a title of its own kind.
  return isTitle || (ADVICE.test(line.text) && words < 12 && !/[.!?]$/.test(text)) ? text.replace(/^#+\s+|\s*:$/g, '') : null;
}

function refuse(text: string, file: string): Notice | null {
  if (text.trim() === '') return notice('report-empty', 'error', { file });
  const why = kindOfText(text);
  if (why) return notice('not-text', 'error', { file, why });
  if (text.length > LARGEST_REPORT && text.split('\n').length < 10) return notice('line-too-long', 'error', { length: text.length, most: LONGEST_LINE }, placeIn(file, 1, text.slice(0, 60), 0, 1));
  if (text.length > LARGEST_REPORT) return notice('report-too-large', 'error', { file, size: text.length, most: LARGEST_REPORT });
  return null;
}

/** The first name without a value of a form that nobody has filled in; null where any other line stands there. */
function blankOf(lines: readonly Line[], unread: readonly Unread[], words: Words): Line | null {
  if (unread.some((u) => !/^#|:$/.test(u.text))) return null;
  return lines.find((l) => /:\s*$/.test(l.text) && words.names(l.text).length > 0) ?? null;
}

/** A comment, or a line of the form that nobody filled in. */
const isFormLine = (text: string): boolean => /^#\s/.test(text) || (/^[^:]*:$/.test(text) && (wordsOf(null).names(text).length > 0 || /^(?:taken|depth|sample)\b/i.test(text)));

function finish(draft: Draft, i: number, answers: ReadonlyMap<Item, Answer>, labs: ReadonlyMap<Item, Method>, leaf: boolean): Sample {
  const readings = draft.readings.map((r): Reading => {
    const says = answers.get(r.item);
    const method = r.method ?? says?.method ?? labs.get(r.item) ?? null;
    const salt = r.item === 'ph' && (method === 'cacl2' || method === 'kcl');
    return { ...r, item: salt ? 'ph-salt' : r.item, method, unit: r.unit ?? (says?.unit === 'unknown' ? null : says?.unit ?? null) };
  });
  const name = draft.named ? draft.name : `sample ${i + 1}`;
  return { name, ...(leaf ? { kind: 'leaf' as const } : {}), ...(draft.taken ? { taken: draft.taken } : {}), ...(draft.depth ? { depth: draft.depth } : {}), readings, unread: draft.unread.filter((u) => !isFormLine(u.text)).sort((a, b) => a.line - b.line) };
}
