/**
 * A report typed by hand, one line at a time: the text so far and a typed line → the next text and what was understood.
 * A line is judged by reading the whole report with and without it, so that it means here what it will mean in the file.
 * Only a line that is understood goes into the text.
 */
import type { Notice, Question } from '../reason/notice.ts';
import type { Item, Method } from '../tables/items.ts';
import { labMethods, labsNamed, methodName } from '../tables/labs.ts';
import type { DateOrder } from '../units/date.ts';
import { metaOf } from './meta.ts';
import { readReport } from './read.ts';
import type { Report } from './read.ts';
import type { Reading } from './reading.ts';
import { linesOf } from './text.ts';
import { finish } from './unfinished.ts';
import { findMethods } from './patterns.ts';
import { blank, findNames, isUnknown, methodCalled } from './vocabulary.ts';
import { withinLine } from './within.ts';

export type Hand = {
  /** Names the file in notices. */
  readonly file: string;
  /** How 3/11/2025 is meant, where the country says. */
  readonly dates: DateOrder;
  readonly text: string;
  /** Which of the text's sample headings the lines go under, from 0; counts only where there are several. */
  readonly sample: number;
  /** What `undo` goes back to, the latest last. */
  readonly past: readonly { readonly text: string; readonly sample: number; readonly typed: string }[];
};

export type Reply =
  /** Values, new or changed by this line. `notices` are what there is to say of them. */
  | { readonly is: 'read'; readonly readings: readonly Reading[]; readonly notices: readonly Notice[] }
  /** A line about the report that holds no value: a day, a depth, a method. */
  | { readonly is: 'kept' }
  /** A sample's heading: what follows belongs to it. */
  | { readonly is: 'sample'; readonly name: string }
  /** A laboratory, and the method lines written for what stands there so far. */
  | { readonly is: 'lab'; readonly named: string; readonly lines: readonly string[] }
  | { readonly is: 'same'; readonly line: number }
  | { readonly is: 'unread' }
  | { readonly is: 'wrong'; readonly notices: readonly Notice[] }
  /** The item stands there with another value: `line` says it now, `either` is the report with the typed line in its place; null where that line must be changed by hand. */
  | { readonly is: 'twice'; readonly line: number; readonly there: string; readonly typed: string; readonly either: Hand | null };

export type Turn = { readonly hand: Hand; readonly reply: Reply };

const LAB_LINE = /^\s*(?:lab|laboratory)\s*[:=]\s*(\S.*)/i;
const SAMPLE_LINE = /^sample\b[^:=#]*[:=#]?\s*(.*)/i;
const ANSWER_LINE = /\s(?:method|unit)\s*[:=]/i;

/** Starts, or goes on with what is there. */
export function openHand(file: string, text: string, dates: DateOrder = null): Hand {
  const begun = finish(text);
  const open = { file, dates, text: begun, sample: 0, past: [] };
  const blocks = blocksOf(begun.split('\n'));
  const empty = blocks.findIndex((b) => begun.split('\n').slice(b.from + 1, b.to).every((l) => /^\s*(?:#.*|[^:]+:\s*)?$/.test(l)));
  return { ...open, sample: Math.max(0, empty < 0 ? blocks.length - 1 : empty) };
}

/** The report as it stands. What `lab:` means is worked out here, so its line is left out. */
export const reportOf = (hand: Pick<Hand, 'file' | 'text' | 'dates'>): Report => readReport(hand.text.split('\n').map((l) => (LAB_LINE.test(l) ? '' : l)).join('\n'), hand.file, hand.dates);

/** The laboratory that the report names; 'unknown' where the grower does not know, null where nothing is said. */
export function labOf(hand: Pick<Hand, 'text'>): string | null {
  const said = hand.text.split('\n').flatMap((l) => LAB_LINE.exec(l)?.[1]!.trim() ?? []).at(-1);
  return said === undefined ? null : isUnknown(said) ? 'unknown' : said;
}

/** Judges a typed line and puts it where it belongs if it is understood. */
export function typeLine(hand: Hand, typed: string): Turn {
  const line = typed.replace(/[\u0000-\u0008\u000a-\u001f\u007f-\u009f\u2028\u2029]+/g, ' ').trim();
  const stays = (reply: Reply): Turn => ({ hand, reply });
  if (line === '') return stays({ is: 'unread' });
  const lab = LAB_LINE.exec(line)?.[1];
  if (lab) return typeLab(hand, lab);
  const heading = sampleOf(hand, line);
  if (heading) return heading;

  const before = reportOf(hand);
  const [next, number] = insert(hand, line);
  const after = reportOf(next);
  const found = compare(before, after, number);
  const twice = found.notices.find((n) => n.code === 'reading-twice' && (n.facts.line === number) !== (n.place!.line === number));
  // Where the other stands below, the typed line has moved it down.
  if (twice) return stays(twiceOf(hand, line, twice.facts.line === number ? twice.place!.line - 1 : Number(twice.facts.line), String(twice.facts.item), before));
  const plain = linesOf(line)[0]!;
  const block = blockOf(hand, hand.text.split('\n'));
  const here = before.samples.flatMap((s) => s.readings).filter((r) => holds(block, r.place.line - 1));
  // Several values that all stand there already would open a sample that nobody named.
  const again = after.samples.length > before.samples.length && findNames(plain.text).length > 0 && metaOf(plain, null) === null ? here.find((r) => found.readings.some((a) => a.item === r.item)) : undefined;
  if (again) return stays({ is: 'twice', line: again.place.line, there: again.asPrinted, typed: line, either: null });
  if (found.errors || found.lost) return stays({ is: 'wrong', notices: found.notices });
  if (found.readings.length > 0) {
    const [best, at] = ANSWER_LINE.test(line) ? [put(hand, line), number] as const : fill(next, number, line, found.readings, before);
    return withMethods({ ...best, past: [...hand.past, memory(hand, line)] }, { is: 'read', readings: renumbered(found.readings, number, at), notices: found.notices.map((n) => (n.place ? { ...n, place: { ...n.place, line: at } } : n)) });
  }
  if (found.notices.length > 0) return stays({ is: 'wrong', notices: found.notices });
  const alone = readReport(line, hand.file, hand.dates).samples.flatMap((s) => s.readings);
  const there = here.find((r) => alone.some((a) => a.item === r.item && a.value === r.value));
  if (there) return stays({ is: 'same', line: there.place.line });
  if (after.samples.some((s) => s.unread.some((u) => u.line === number))) return stays({ is: 'unread' });
  return { hand: { ...put(hand, line), past: [...hand.past, memory(hand, line)] }, reply: { is: 'kept' } };
}

/** Takes the last line back that was typed or answered. */
export function undo(hand: Hand): { readonly hand: Hand; readonly typed: string } | null {
  const last = hand.past.at(-1);
  return last ? { hand: { ...hand, text: last.text, sample: last.sample, past: hand.past.slice(0, -1) }, typed: last.typed } : null;
}

/** What is still open. */
export const questionsOf = (hand: Hand): readonly Question[] => reportOf(hand).questions;

/** The line that answers a question of a report: "calcium unit: ppm"; null where no line can. */
export function answerLine(q: Question, choice: string): string | null {
  const kind = q.code === 'unit-missing' ? 'unit' : q.code === 'method-missing' ? 'method' : null;
  return kind === null ? null : `${calledItem(q.about)} ${kind}: ${calledMethod(choice)}`;
}

/** Puts the answer to a question into the report. Null where no line can. */
export function answer(hand: Hand, q: Question, choice: string): Hand | null {
  const line = answerLine(q, choice);
  return line === null ? null : { ...put(hand, line), past: [...hand.past, memory(hand, line)] };
}

/** What a grower may say to "Which lab, or which state?": a laboratory or one of several, a method itself, nothing, or somebody whose methods nobody here knows. */
export type LabAnswer =
  | { readonly is: 'labs'; readonly names: readonly string[] }
  | { readonly is: 'method'; readonly method: Method }
  | { readonly is: 'unknown' }
  | { readonly is: 'other'; readonly named: string };

export function labAnswer(typed: string): LabAnswer {
  const text = typed.replace(/[\u0000-\u001f\u007f-\u009f]+/g, ' ').trim();
  if (text === '' || isUnknown(text) || /^(?:no idea|none|no)\.?$/i.test(text)) return { is: 'unknown' };
  const labs = labsNamed(text);
  if (labs.length > 0) return { is: 'labs', names: labs.map((l) => l.name) };
  const plain = linesOf(text)[0]!.text;
  const method = /^[\s.'-]*$/.test(blank(plain, findMethods(plain))) || /^cal$/i.test(text) ? methodCalled(text) : null;
  return method ? { is: 'method', method } : { is: 'other', named: text };
}

/** Writes a `lab:` line, and the methods that follow from it for every value that names none; `unknown` answers what is asked with unknown. */
export function typeLab(hand: Hand, named: string): Turn {
  const line = `lab: ${named}`;
  const next = { ...put(hand, line), past: [...hand.past, memory(hand, line)] };
  const lines = methodLines(next);
  return { hand: lines.reduce(put, next), reply: { is: 'lab', named, lines } };
}

const memory = (hand: Hand, typed: string): Hand['past'][number] => ({ text: hand.text, sample: hand.sample, typed });

/** A value's methods are those of the laboratory named before it. */
function withMethods(hand: Hand, reply: Reply): Turn {
  return { hand: methodLines(hand).reduce(put, hand), reply };
}

/** Items whose value a method changes, where the paper leaves it to its reader. */
const BY_METHOD: readonly Item[] = ['phosphorus', 'potassium', 'buffer-ph'];

function methodLines(hand: Hand): string[] {
  const lab = labOf(hand);
  if (lab === null) return [];
  const known = labMethods(lab);
  const report = reportOf(hand);
  const readings = report.samples.flatMap((s) => s.readings).filter((r) => r.value !== null && r.method === null);
  return [...new Set(readings.map((r) => r.item))].flatMap((item): string[] => {
    const method = known?.[item];
    if (method && (BY_METHOD.includes(item) || (item === 'ph' && (method === 'cacl2' || method === 'kcl')))) return [`${calledItem(item)} method: ${calledMethod(method)}`];
    return !known && report.questions.some((q) => q.code === 'method-missing' && q.about === item) ? [`${calledItem(item)} method: unknown`] : [];
  });
}

/** "buffer pH", as answers to it are written. */
const calledItem = (item: string): string => (item === 'buffer-ph' ? 'buffer pH' : item === 'ph' ? 'pH' : item);
const calledMethod = (choice: string): string => methodName(choice as Method);

type Block = { readonly from: number; readonly to: number; readonly name: string };

/** The samples' headings, each with the lines below it. */
function blocksOf(lines: readonly string[]): Block[] {
  const heads = lines.flatMap((l, i) => { const name = headed(l); return name === null ? [] : [{ from: i, name }]; });
  return heads.map((h, i) => ({ ...h, to: heads[i + 1]?.from ?? lines.length }));
}

/** The name in a sample's heading; null for other lines, "Sample depth: 6 in" among them. */
function headed(line: string): string | null {
  const text = line.trim();
  const m = SAMPLE_LINE.exec(text);
  if (!m) return null;
  const meta = metaOf(linesOf(text)[0]!, null);
  return (meta ? meta.sample !== undefined : !/[:=]/.test(text) && !withinLine(text, null)) ? m[1] || text : null;
}

/** "2: top strip" of "Sample #2: top strip". */
const bare = (line: string): string => line.trim().replace(/sample\b[\s:=#]*/i, '').toLowerCase();

/** A sample's heading: one that is there is gone to, a new one is added at the end. */
function sampleOf(hand: Hand, line: string): Turn | null {
  const name = headed(line);
  if (name === null || findNames(linesOf(line)[0]!.text).length > 0) return null;
  const wanted = bare(line);
  const lines = hand.text.split('\n');
  const blocks = blocksOf(lines);
  const at = blocks.findIndex((b) => bare(lines[b.from]!) === wanted || bare(lines[b.from]!).startsWith(`${wanted}:`) || b.name.toLowerCase() === wanted);
  if (at >= 0) return { hand: { ...hand, sample: at }, reply: { is: 'sample', name: blocks[at]!.name } };
  const next = { ...hand, text: joined([...trimmed(lines), line]), sample: blocks.length, past: [...hand.past, memory(hand, line)] };
  return { hand: next, reply: { is: 'sample', name } };
}

const trimmed = (lines: readonly string[]): string[] => lines.slice(0, lines.findLastIndex((l) => l.trim() !== '') + 1);
const joined = (lines: readonly string[]): string => `${lines.join('\n')}\n`;

/** Where the lines of the hand's sample stand, if there are several. */
function blockOf(hand: Hand, lines: readonly string[]): Block | undefined {
  const blocks = blocksOf(lines);
  return blocks.length > 1 ? blocks[hand.sample] : undefined;
}
const holds = (block: Block | undefined, i: number): boolean => !block || (i > block.from && i < block.to);

/** The text with a line at the end of its sample; and its number there. */
function insert(hand: Hand, line: string): [Hand, number] {
  const lines = trimmed(hand.text.split('\n'));
  const block = blockOf(hand, lines);
  let at = block ? block.from + 1 : lines.length;
  while (block && at < block.to && lines[at]!.trim() !== '') at++;
  return [{ ...hand, text: joined([...lines.slice(0, at), line, ...lines.slice(at)]) }, at + 1];
}

const keyOf = (line: string): string | null => /^\s*([^\s:=#][^:=#]*)[:=]/.exec(line)?.[1]!.trim().toLowerCase() ?? null;

/** A line about the report: in the place of the one that says the same of it, else at the end of its sample. */
function put(hand: Hand, line: string): Hand {
  const key = keyOf(line);
  const lines = hand.text.split('\n');
  const ofAll = ANSWER_LINE.test(line) || LAB_LINE.test(line);
  const block = ofAll ? undefined : blockOf(hand, lines);
  const at = key === null ? -1 : lines.findIndex((l, i) => keyOf(l) === key && holds(block, i));
  if (at >= 0) return { ...hand, text: joined(trimmed(lines.with(at, line))) };
  // What holds for the whole report stands at its end.
  return ofAll ? { ...hand, text: joined([...trimmed(lines), line]) } : insert(hand, line)[0];
}

/** A value takes the place of its empty line in the form, if it is understood there as well. */
function fill(next: Hand, number: number, line: string, readings: readonly Reading[], before: Report): [Hand, number] {
  const lines = trimmed(next.text.split('\n'));
  if (readings.length !== 1) return [next, number];
  const block = blockOf(next, lines);
  const empty = lines.findIndex((l, i) => /^[^#:]+:\s*$/.test(l) && holds(block, i) && findNames(linesOf(l)[0]!.text)[0]?.is.item === readings[0]!.item);
  if (empty < 0) return [next, number];
  const filled = { ...next, text: joined(trimmed(lines.with(empty, line).filter((_, i) => i !== number - 1))) };
  const at = empty < number - 1 ? empty + 1 : empty;
  const found = compare(before, reportOf(filled), at);
  return !found.errors && !found.lost && found.readings.map(told).join() === readings.map(told).join() ? [filled, at] : [next, number];
}

const renumbered = (readings: readonly Reading[], from: number, to: number): Reading[] => readings.map((r) => (r.place.line === from ? { ...r, place: { ...r.place, line: to } } : r));

/** All that a reading says, without its place. */
const told = (r: Reading): string => JSON.stringify([r.item, r.value, r.unit, r.form, r.method, r.lab, r.index, r.to, r.below, r.above]);

type Change = { readonly readings: readonly Reading[]; readonly notices: readonly Notice[]; readonly errors: boolean; readonly lost: boolean };

/** What a line at `number` adds to a report or changes in it. */
function compare(before: Report, after: Report, number: number): Change {
  const mark = (n: Notice): string => JSON.stringify([n.code, n.facts, n.place?.source, n.place?.column]);
  const old = before.notices.map(mark);
  // An empty report is none before its first line, and one of other things is none still.
  const notices = after.notices.filter((n) => n.code !== 'nothing-read' && n.code !== 'form-blank' && (n.place?.line === number || !old.includes(mark(n))));
  const readings: Reading[] = [];
  after.samples.forEach((s, i) => {
    const was = (before.samples[i]?.readings ?? []).map(told);
    readings.push(...s.readings.filter((r) => !was.includes(told(r))));
  });
  const lost = before.samples.some((s, i) => s.readings.some((r) => !after.samples[i]?.readings.some((a) => a.item === r.item)));
  return { readings, notices, lost, errors: notices.some((n) => n.severity === 'error') };
}

/** The typed line in the place of the value that stands there. */
function twiceOf(hand: Hand, line: string, number: number, item: string, before: Report): Reply {
  const lines = hand.text.split('\n');
  const all = before.samples.flatMap((s) => s.readings).filter((r) => r.place.line === number);
  const there = all.find((r) => r.item === item);
  const reply = { is: 'twice' as const, line: number, there: there?.asPrinted ?? '', typed: line };
  if (!there) return { ...reply, either: null };
  const letters = [...lines[number - 1]!];
  const from = there.place.column - 1;
  // A word before the name may be its rating, which the new value need not have.
  const changed = all.length === 1 ? line : letters.slice(0, from).join('') + line + letters.slice(from + there.place.length).join('');
  const next = { ...hand, text: joined(trimmed(lines.with(number - 1, changed))), past: [...hand.past, memory(hand, line)] };
  const found = compare(before, reportOf(next), number);
  const only = found.readings.every((r) => r.item === there.item);
  return { ...reply, either: found.errors || found.lost || !only ? null : next };
}
