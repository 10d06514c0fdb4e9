/**
 * `medlar read` at a terminal: a report typed in from the paper, one line at a time, and open questions asked in place.
 * Every accepted line is in the file before the next is asked for, so that leaving, or a closed terminal, loses nothing.
 */
import { accessSync, constants, existsSync, readdirSync, realpathSync } from 'node:fs';
import { basename, dirname, isAbsolute, join, relative, resolve } from 'node:path';
import { cropsOf } from '../gather.ts';
import { noticeText, questionText } from '../json/notices.ts';
import { ratingText, takenAs } from '../json/read-words.ts';
import { NOWHERE } from '../orchard/where.ts';
import { rateSample } from '../rating/rate.ts';
import { byFeel } from '../rating/texture.ts';
import type { Notice, Question } from '../reason/notice.ts';
import { notice } from '../reason/notice.ts';
import { suggest } from '../reason/suggest.ts';
import type { Hand, Reply } from '../soil/hand.ts';
import { answer, answerLine, finish, isUnfinished, labAnswer, labOf, openHand, questionsOf, reportOf, typeLab, typeLine, undo, unfinished } from '../soil/hand.ts';
import type { Reading } from '../soil/reading.ts';
import type { Lab } from '../tables/labs.ts';
import { labNamed, LAB_WORDS, labMethods, methodName } from '../tables/labs.ts';
import type { Language } from '../words/words.ts';
import { say, sayIfKnown } from '../words/words.ts';
import { give } from './answer.ts';
import { readReportFile, reason } from './files.ts';
import { folderOf, openFolder } from './folder.ts';
import type { Common, Io } from './io.ts';
import { EXIT, tame } from './io.ts';
import { writeWhole } from './write.ts';

type Target = { readonly path: string; readonly shown: string };
type Home = Parameters<typeof rateSample>[1] & Parameters<typeof takenAs>[1];
type Ask = NonNullable<Io['ask']>;

/** A person at work on one report. */
type Sitting = {
  readonly target: Target; readonly home: Home; readonly language: Language; readonly io: Io; readonly ask: Ask;
  hand: Hand;
  /** The file as it was last written or read; null before the first line. */
  written: string | null;
  /** Lines are typed, and "done" was not said yet. */
  typing: boolean;
  /** Line ends of the file. */
  readonly end: '\n' | '\r\n';
  /** Questions that were asked and left open, so that none is asked twice in one sitting. */
  readonly asked: Set<string>;
};

/** The grower left: by an empty line, ctrl-C or a closed terminal. */
class Left extends Error {}
/** The file cannot be written. */
class Unwritable extends Error { constructor(readonly notice: Notice) { super(notice.code); } }

/** Where a person sits at the terminal: types in the reports that are not there yet and answers what is open. Null where nothing was to do, a file to read after it, or how the command ends. */
export async function readByHand(file: string | undefined, options: Common, io: Io): Promise<number | { readonly file: string | undefined } | null> {
  if (!io.ask || options.json === true || file === '-') return null;
  const folder = await openFolder(options, io, options.today ?? io.today);
  const home: Home = { ...(folder.orchard?.where ?? NOWHERE), crops: cropsOf(folder.orchard?.trees ?? []) };
  const root = folderOf(options, io);
  const orchardless = folder.orchard === null && folder.notices.some((n) => n.code === 'no-orchard');
  const aloud = file === undefined && orchardless;
  const names = file !== undefined ? [] : folder.orchard ? [...new Set(folder.orchard.zones.map((z) => z.file))] : aloud ? [join('soil', `${(options.today ?? io.today).slice(0, 4)}.txt`)] : [];
  // A fault of orchard.yaml comes first, save that a report it names is not there.
  if (file === undefined && folder.notices.some((n) => n.severity === 'error' && n.code !== 'no-orchard' && n.place?.file === 'orchard.yaml' && n.facts.why !== 'absent')) return null;
  const targets: Target[] = file !== undefined ? [{ path: resolve(io.cwd, file), shown: file }]
    : names.map((name) => ({ path: resolve(root, name), shown: relative(io.cwd, resolve(root, name)) || name })).filter((t) => aloud || !leadsOut(root, t.path));
  let typed = false;
  for (const target of targets) {
    const sitting = sit(target, home, io, io.ask);
    if (!sitting) continue;
    try {
      if (sitting.is === 'typing') await typing(sitting.sitting);
      else await answering(sitting.sitting);
      typed = true;
    } catch (e) {
      if (e instanceof Unwritable) return give({ command: 'read', result: null, notices: [e.notice], language: home.language }, false, io);
      if (!(e instanceof Left)) throw e;
      if (sitting.is === 'questions') return { file: aloud ? target.shown : file };
      return left(sitting.sitting);
    }
  }
  if (aloud && typed) tell(io, say(home.language, 'hand', 'no-orchard', { file: targets[0]!.shown }));
  return aloud && existsSync(targets[0]!.path) ? { file: targets[0]!.shown } : null;
}

/** A path that leads out of the orchard's folder is never written. */
function leadsOut(root: string, path: string): boolean {
  let there = path;
  while (!existsSync(there) && dirname(there) !== there) there = dirname(there);
  const out = relative(realpathSync(root), realpathSync(there));
  return out.startsWith('..') || isAbsolute(out);
}

/** What is to do at a file: typing where it is not there, empty, a blank form or not finished; questions where some are open; null for nothing. */
function sit(target: Target, home: Home, io: Io, ask: Ask): { readonly is: 'typing' | 'questions'; readonly sitting: Sitting } | null {
  const found = readReportFile(target.path, target.shown);
  if ('refused' in found && found.refused.facts.why !== 'absent') return null;
  const raw = 'text' in found ? found.text : null;
  // Letters that were guessed would be written back as guessed.
  if (raw !== null && 'notices' in found && found.notices.length > 0) return null;
  const text = (raw ?? '').replace(/\r\n?/g, '\n');
  const base = { target, home, language: home.language, io, ask, written: raw === null ? null : text, end: raw?.includes('\r\n') ? '\r\n' as const : '\n' as const, typing: false, asked: new Set<string>() };
  const plain: Hand = { file: target.shown, text, sample: 0, past: [] };
  const report = reportOf(plain);
  const blank = text.trim() === '' || report.notices.some((n) => n.code === 'form-blank' || n.code === 'report-empty');
  if (raw === null || blank || isUnfinished(text)) return { is: 'typing', sitting: { ...base, typing: true, hand: openHand(target.shown, text) } };
  return report.questions.some((q) => answerLine(q, '') !== null) ? { is: 'questions', sitting: { ...base, hand: plain } } : null;
}

const tell = (io: Io, text: string): void => io.err(tame(`${text}\n`));

/** How the command ends where the grower left. */
function left(s: Sitting): number {
  tell(s.io, '');
  const n = reportOf(s.hand).samples.flatMap((x) => x.readings).length;
  if (s.written === null) return give({ command: 'read', result: null, notices: [notice('hand-ended', 'error')], language: s.language, code: EXIT.answer }, false, s.io);
  tell(s.io, say(s.language, 'hand', 'left-file', { n, file: s.target.shown }));
  return EXIT.fine;
}

/** Asks, or leaves with the grower. */
async function asked(s: Sitting, question: string): Promise<string> {
  try {
    return await s.ask(tame(question));
  } catch {
    throw new Left();
  }
}

/** One of several; the last is what Enter alone means where no arrows are drawn. */
async function choose(s: Sitting, question: string, choices: readonly string[]): Promise<number> {
  if (s.io.choose) {
    try {
      return await s.io.choose(tame(question), choices.map(tame));
    } catch {
      throw new Left();
    }
  }
  const letters = choices.map((c, i) => `   ${String.fromCharCode(97 + i)}) ${c}`).join('\n');
  for (;;) {
    const said = (await asked(s, say(s.language, 'hand', 'choose', { question, choices: letters }))).trim().toLowerCase();
    if (said === '') return choices.length - 1;
    const at = /^[a-z]\)?$/.test(said) ? said.charCodeAt(0) - 97 : choices.findIndex((c) => c.toLowerCase() === said);
    if (at >= 0 && at < choices.length) return at;
    tell(s.io, say(s.language, 'hand', 'choose-again'));
  }
}

/** Writes at once and whole; what changed in the file meanwhile is gone on with instead. */
function keep(s: Sitting, next: Hand): void {
  if (next.text !== s.hand.text) write(s, s.typing ? unfinished(next.text) : next.text);
  s.hand = next;
}

function write(s: Sitting, text: string): void {
  const path = existsSync(s.target.path) ? realpathSync(s.target.path) : s.target.path;
  const failed = writeWhole(path, s.target.shown, text.replaceAll('\n', s.end));
  if (failed) throw new Unwritable(failed);
  s.written = text;
}

/** Takes up what another program wrote into the file. */
function refresh(s: Sitting): void {
  if (s.written === null) return;
  const found = readReportFile(s.target.path, s.target.shown);
  const text = 'text' in found ? found.text.replace(/\r\n?/g, '\n') : null;
  if (text === null || text === s.written) return;
  tell(s.io, say(s.language, 'hand', 'file-changed', { file: s.target.shown }));
  s.hand = { ...s.hand, text: finish(text), past: [] };
  s.written = text;
}

/** A name close to the one that is not there. */
function slipOf(target: Target): string {
  try {
    return suggest(basename(target.path), readdirSync(dirname(target.path)))[0] ?? '';
  } catch {
    return '';
  }
}

/** What keeps a file from being written, before anything is typed in vain. */
function barrier(target: Target): Notice | null {
  let there = target.path;
  while (!existsSync(there) && dirname(there) !== there) there = dirname(there);
  try {
    accessSync(there === target.path ? dirname(there) : there, constants.W_OK);
    return null;
  } catch (e) {
    return notice('file-unwritable', 'error', { file: target.shown, why: reason(e) });
  }
}

async function typing(s: Sitting): Promise<void> {
  const L = s.language;
  const stop = barrier(s.target);
  if (stop) throw new Unwritable(stop);
  const guess = s.written === null ? slipOf(s.target) : '';
  const n = reportOf(s.hand).samples.flatMap((x) => x.readings).length;
  if (guess) tell(s.io, say(L, 'hand', 'did-you-mean', { file: s.target.shown, guess: join(dirname(s.target.shown), guess) }));
  tell(s.io, say(L, 'hand', 'hello', { file: s.target.shown }));
  if (n > 0) tell(s.io, say(L, 'hand', 'goes-on', { file: s.target.shown, n }));
  for (;;) {
    const names = sampleNames(s.hand);
    const typed = (await asked(s, names.length > 1 ? say(L, 'hand', 'prompt-sample', { sample: names[s.hand.sample] ?? '' }) : say(L, 'hand', 'prompt'))).trim();
    refresh(s);
    const waiting = s.io.waiting?.() === true;
    const said = typed.toLowerCase();
    if (typed === '') {
      // An empty line within a pasted report parts it, and ends nothing.
      if (waiting) continue;
      throw new Left();
    }
    if (said === 'done') break;
    else if (said === 'undo') takeBack(s);
    else if (said === 'list') list(s);
    else if (said === 'help' || said === '?') tell(s.io, say(L, 'hand', 'help', { next: names.length > 1 ? 1 : '' }));
    else if (said === 'next' && names.length > 1) {
      s.hand = { ...s.hand, sample: (s.hand.sample + 1) % names.length };
      tell(s.io, say(L, 'hand', 'sample', { name: names[s.hand.sample]! }));
    } else if (said === 'texture') await feel(s);
    else {
      await take(s, typed);
      if (!waiting) await questions(s);
    }
  }
  await questions(s);
  if (s.written === null) throw new Left();
  if (s.written !== s.hand.text) write(s, s.hand.text);
}

const sampleNames = (hand: Hand): string[] => {
  const heads = hand.text.split('\n').filter((l) => /^\s*sample\b/i.test(l));
  return heads.map((h) => h.replace(/^[^:]*:\s*(?=\S)/, '').trim());
};

function takeBack(s: Sitting): void {
  const back = undo(s.hand);
  if (back) keep(s, back.hand);
  tell(s.io, back ? say(s.language, 'hand', 'undone', { read: back.typed }) : say(s.language, 'hand', 'nothing-to-undo'));
}

/** Each line of the file that says something, as it is understood. */
function list(s: Sitting): void {
  const samples = reportOf(s.hand).samples;
  const rated = samples.flatMap((sample) => rateSample(sample, s.home));
  const rows = s.hand.text.split('\n').flatMap((text, i): string[] => {
    if (/^\s*(?:#.*)?$|^[^:]*:\s*$/.test(text)) return [];
    const own = rated.filter((r) => r.reading.place.line === i + 1).map((r) => say(s.language, 'hand', 'read', { taken: takenAs(r, s.home), rating: ratingText(r, s.home) }));
    return [say(s.language, 'hand', 'list-line', { line: String(i + 1).padStart(4), text: own.length > 0 ? `${text.trim().padEnd(36)}  ${own.join('; ')}` : text.trim() })];
  });
  tell(s.io, rows.length > 0 ? rows.join('\n') : say(s.language, 'hand', 'list-empty'));
}

/** A typed line is judged, written, and answered. */
async function take(s: Sitting, typed: string): Promise<void> {
  const { hand, reply } = typeLine(s.hand, typed);
  if (reply.is === 'twice') {
    const { either } = reply;
    if (either === null) return tell(s.io, say(s.language, 'hand', 'twice-held', { line: reply.line, there: reply.there, file: s.target.shown }));
    if (s.io.waiting?.() === true) return tell(s.io, say(s.language, 'hand', 'twice-passed', { line: reply.line, there: reply.there, read: reply.typed }));
    if ((await choose(s, say(s.language, 'hand', 'twice', { line: reply.line, there: reply.there }), [reply.typed, reply.there])) !== 0) return;
    keep(s, either);
    return tell(s.io, say(s.language, 'hand', 'replaced', { line: reply.line }));
  }
  keep(s, hand);
  tell(s.io, replyText(s, reply, typed));
}

function replyText(s: Sitting, reply: Exclude<Reply, { readonly is: 'twice' }>, typed: string): string {
  const L = s.language;
  switch (reply.is) {
    case 'read': return [...reply.readings.map((r) => readingText(s, r, s.io.waiting?.() !== true)), ...reply.notices.map((n) => noticeText(n, L))].join('\n');
    case 'kept': return say(L, 'hand', 'kept');
    case 'sample': return say(L, 'hand', 'sample', { name: reply.name });
    case 'lab': return labText(s, reply.named);
    case 'same': return say(L, 'hand', 'same', { line: reply.line });
    case 'unread': return say(L, 'hand', 'unread', { read: typed, number: /\d+(?:[.,]\d+)?/.exec(typed)?.[0] ?? '180' });
    case 'wrong': return reply.notices.length > 0 ? reply.notices.map((n) => noticeText(n, L)).join('\n') : say(L, 'hand', 'unread', { read: typed, number: /\d+(?:[.,]\d+)?/.exec(typed)?.[0] ?? '180' });
  }
}

/** As it stands in the report now: the method of a lab named before is known of it. */
function readingText(s: Sitting, reading: Pick<Reading, 'item' | 'value' | 'place'>, beforeQuestions: boolean): string {
  const rated = reportOf(s.hand).samples.flatMap((sample) => rateSample(sample, s.home));
  const r = rated.find((x) => x.reading.item === reading.item && x.reading.place.line === reading.place.line) ?? rated.find((x) => x.reading.item === reading.item && x.reading.value === reading.value);
  if (!r) return say(s.language, 'hand', 'kept');
  const open = beforeQuestions && questionsOf(s.hand).some((q) => q.about === r.reading.item && isAsked(s, q));
  return open ? say(s.language, 'hand', 'read-asked', { taken: takenAs(r, s.home) }) : say(s.language, 'hand', 'read', { taken: takenAs(r, s.home), rating: ratingText(r, s.home) });
}

/** Whether a question waits that a line of the report can answer. */
const isAsked = (s: Sitting, q: Question): boolean => answerLine(q, '') !== null && !s.asked.has(`${q.code} ${q.about}`);

function labText(s: Sitting, named: string): string {
  const L = s.language;
  if (labOf(s.hand) === 'unknown') return say(L, 'hand', 'lab-unknown');
  const known = labMethods(named);
  if (!known) return say(L, 'hand', 'lab-other', { named, guess: suggest(named, LAB_WORDS)[0] ?? '' });
  const lab: Lab | null = labNamed(named);
  const shown = (['phosphorus', 'potassium', 'buffer-ph'] as const).filter((i) => known[i]);
  if (shown.length === 0) return say(L, 'hand', 'lab-silent', { named });
  const methods = shown.map((i) => `${sayIfKnown(L, 'item', i)} ${methodName(known[i]!)}`).join(', ');
  return say(L, 'hand', shown.some((i) => lab?.methods[i] === undefined) ? 'lab-memory' : 'lab-taken', { named, methods });
}

/** What is open in the report is asked once, the lab in place of the method. */
async function questions(s: Sitting): Promise<void> {
  for (;;) {
    const q = questionsOf(s.hand).find((x) => isAsked(s, x));
    if (!q) return;
    s.asked.add(`${q.code} ${q.about}`);
    if (q.code === 'method-missing' && labOf(s.hand) === null) await askLab(s, q);
    else await askChoice(s, q);
    const about = reportOf(s.hand).samples.flatMap((x) => x.readings).find((r) => r.item === q.about);
    if (about && !questionsOf(s.hand).some((x) => x.about === q.about && isAsked(s, x))) tell(s.io, readingText(s, about, false));
  }
}

async function askChoice(s: Sitting, q: Question): Promise<void> {
  const L = s.language;
  const usual = q.code === 'unit-missing' ? labNamed(labOf(s.hand) ?? '')?.unit : undefined;
  const choices = usual !== undefined && q.choices.includes(usual) ? [usual, ...q.choices.filter((c) => c !== usual)] : q.choices;
  const shown = q.code === 'method-missing' ? choices.map((c) => methodName(c as Parameters<typeof methodName>[0])) : choices;
  const at = await choose(s, `${questionText(q, L)}\n${say(L, 'ask', q.changes)}`, [...shown, say(L, 'ask', 'dont-know')]);
  const next = answer(s.hand, q, choices[at] ?? 'unknown');
  if (next) keep(s, next);
}

async function askLab(s: Sitting, q: Question): Promise<void> {
  const L = s.language;
  let question = say(L, 'hand', 'lab-question', { question: questionText(q, L), changes: say(L, 'ask', q.changes) });
  let other: string | null = null;
  for (;;) {
    const said = labAnswer(await asked(s, question));
    if (said.is === 'other' && other !== said.named) {
      other = said.named;
      question = `${labText(s, said.named)}\n${say(L, 'hand', 'prompt')}`;
      continue;
    }
    if (said.is === 'method') {
      const next = answer(s.hand, q, said.method);
      if (next) keep(s, next);
      return;
    }
    let named = said.is === 'labs' ? said.names[0]! : other ?? 'unknown';
    if (said.is === 'labs' && said.names.length > 1) {
      const at = await choose(s, say(L, 'hand', 'lab-which', { named: said.names.join(', ') }), [...said.names, say(L, 'ask', 'dont-know')]);
      named = said.names[at] ?? 'unknown';
    }
    keep(s, typeLab(s.hand, named).hand);
    tell(s.io, said.is === 'labs' && named !== 'unknown' ? labText(s, named) : say(L, 'hand', 'lab-unknown'));
    // Where the method goes by the soil, the paper is asked.
    if (questionsOf(s.hand).some((x) => x.code === q.code && x.about === q.about)) await askChoice(s, q);
    return;
  }
}

/** The questions of a report that stands there already. */
async function answering(s: Sitting): Promise<void> {
  const n = questionsOf(s.hand).filter((q) => isAsked(s, q)).length;
  tell(s.io, say(s.language, 'hand', n === 1 ? 'asks1' : 'asks', { n, file: s.target.shown }));
  await questions(s);
}

/** The test by feel; its end is a line of the report. */
async function feel(s: Sitting): Promise<void> {
  const L = s.language;
  tell(s.io, say(L, 'feel', 'how'));
  const answers: string[] = [];
  for (;;) {
    const step = byFeel(answers);
    if (!step) return;
    if ('line' in step) {
      tell(s.io, say(L, 'feel', 'found', { name: say(L, 'feel', step.name), heaviness: say(L, 'feel', step.heaviness), line: step.line }));
      return take(s, `texture: ${step.line}`);
    }
    const at = await choose(s, say(L, 'feel', step.ask), [...step.answers.map((a) => say(L, 'feel', a)), say(L, 'ask', 'dont-know')]);
    const said = step.answers[at];
    if (said === undefined) return;
    answers.push(said);
  }
}
