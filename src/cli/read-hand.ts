/**
 * `medlar read` at a terminal: a report typed in from the paper, one line at a time, and open questions asked in place.
 * Every accepted line is in the file before the next is asked for, so that leaving, or a closed terminal, loses nothing.
 */
import { existsSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { cropsOf } from '../gather.ts';
import { noticeText } from '../json/notices.ts';
import { ratingText, takenAs } from '../json/read-words.ts';
import { NOWHERE } from '../orchard/where.ts';
import { rateSample } from '../rating/rate.ts';
import { byFeel } from '../rating/texture.ts';
import { notice } from '../reason/notice.ts';
import type { Hand, Reply } from '../soil/hand.ts';
import { answerLine, openHand, reportOf, typeLine, undo } from '../soil/hand.ts';
import { readReport } from '../soil/read.ts';
import { isUnfinished } from '../soil/unfinished.ts';
import { dateOrderIn } from '../units/date.ts';
import { say } from '../words/words.ts';
import { give } from './answer.ts';
import { leadsOut, readReportFile } from './files.ts';
import { folderOf, openFolder } from './folder.ts';
import { answering, keyOf, labText, questions, readingText } from './hand-questions.ts';
import type { Common, Io } from './io.ts';
import { EXIT } from './io.ts';
import type { Ask, Home, Sitting, Target } from './sitting.ts';
import { asked, barrier, choose, keep, Left, refresh, slipOf, tell, Unwritable, write } from './sitting.ts';

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

/** What is to do at a file: typing where it is not there, empty, a blank form or not finished; questions where some are open; null for nothing. */
function sit(target: Target, home: Home, io: Io, ask: Ask): { readonly is: 'typing' | 'questions'; readonly sitting: Sitting } | null {
  const found = readReportFile(target.path, target.shown);
  if ('refused' in found && found.refused.facts.why !== 'absent') return null;
  const raw = 'text' in found ? found.text : null;
  // Letters that were guessed would be written back as guessed.
  if (raw !== null && 'notices' in found && found.notices.length > 0) return null;
  const text = (raw ?? '').replace(/\r\n?/g, '\n');
  const base = { target, home, language: home.language, io, ask, written: raw === null ? null : text, end: raw?.includes('\r\n') ? '\r\n' as const : '\n' as const, typing: false, asked: new Set<string>() };
  const plain: Hand = { file: target.shown, text, dates: dateOrderIn(home.country), sample: 0, past: [] };
  const report = reportOf(plain);
  const blank = text.trim() === '' || report.notices.some((n) => n.code === 'form-blank' || n.code === 'report-empty');
  if (raw === null || blank || isUnfinished(text)) return { is: 'typing', sitting: { ...base, typing: true, hand: openHand(target.shown, text, plain.dates) } };
  // A lab that stands in the file already has answered for what it measures by.
  const open = readReport(text, target.shown, plain.dates).questions.filter((q) => answerLine(q, '') !== null).map(keyOf);
  const answered = report.questions.map(keyOf).filter((key) => !open.includes(key));
  return open.length > 0 ? { is: 'questions', sitting: { ...base, hand: plain, asked: new Set(answered) } } : null;
}

/** How the command ends where the grower left. */
export function left(s: Sitting): number {
  tell(s.io, '');
  const n = reportOf(s.hand).samples.flatMap((x) => x.readings).length;
  if (s.written === null) return give({ command: 'read', result: null, notices: [notice('hand-ended', 'error')], language: s.language, code: EXIT.answer }, false, s.io);
  tell(s.io, say(s.language, 'hand', 'left-file', { n, file: s.target.shown }));
  return EXIT.fine;
}

export async function typing(s: Sitting): Promise<void> {
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
