/** A person at work on one report at a terminal: what is asked and said, and the file, which holds every accepted line at once. */
import { accessSync, constants, existsSync, readdirSync, realpathSync } from 'node:fs';
import { basename, dirname } from 'node:path';
import type { takenAs } from '../json/read-words.ts';
import type { rateSample } from '../rating/rate.ts';
import type { Notice } from '../reason/notice.ts';
import { notice } from '../reason/notice.ts';
import { suggest } from '../reason/suggest.ts';
import type { Hand } from '../soil/hand.ts';
import { finish, unfinished } from '../soil/unfinished.ts';
import type { Language } from '../words/words.ts';
import { say } from '../words/words.ts';
import { readReportFile, reason } from './files.ts';
import type { Io } from './io.ts';
import { tame } from './io.ts';
import { writeWhole } from './write.ts';

export type Target = { readonly path: string; readonly shown: string };
export type Home = Parameters<typeof rateSample>[1] & Parameters<typeof takenAs>[1];
export type Ask = NonNullable<Io['ask']>;

/** A person at work on one report. */
export type Sitting = {
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
export class Left extends Error {}

/** The file cannot be written. */
export class Unwritable extends Error { constructor(readonly notice: Notice) { super(notice.code); } }

export const tell = (io: Io, text: string): void => io.err(tame(`${text}\n`));

/** Asks, or leaves with the grower. */
export async function asked(s: Sitting, question: string): Promise<string> {
  try {
    return await s.ask(tame(question));
  } catch {
    throw new Left();
  }
}

/** One of several; the last is what Enter alone means where no arrows are drawn. */
export async function choose(s: Sitting, question: string, choices: readonly string[]): Promise<number> {
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
export function keep(s: Sitting, next: Hand): void {
  if (next.text !== s.hand.text) write(s, s.typing ? unfinished(next.text) : next.text);
  s.hand = next;
}

export function write(s: Sitting, text: string): void {
  const path = existsSync(s.target.path) ? realpathSync(s.target.path) : s.target.path;
  const failed = writeWhole(path, s.target.shown, text.replaceAll('\n', s.end));
  if (failed) throw new Unwritable(failed);
  s.written = text;
}

/** Takes up what another program wrote into the file. */
export function refresh(s: Sitting): void {
  if (s.written === null) return;
  const found = readReportFile(s.target.path, s.target.shown);
  const text = 'text' in found ? found.text.replace(/\r\n?/g, '\n') : null;
  if (text === null || text === s.written) return;
  tell(s.io, say(s.language, 'hand', 'file-changed', { file: s.target.shown }));
  s.hand = { ...s.hand, text: finish(text), past: [] };
  s.written = text;
}

/** A name close to the one that is not there. */
export function slipOf(target: Target): string {
  try {
    return suggest(basename(target.path), readdirSync(dirname(target.path)))[0] ?? '';
  } catch {
    return '';
  }
}

/** What keeps a file from being written, before anything is typed in vain. */
export function barrier(target: Target): Notice | null {
  let there = target.path;
  while (!existsSync(there) && dirname(there) !== there) there = dirname(there);
  try {
    accessSync(there === target.path ? dirname(there) : there, constants.W_OK);
    return null;
  } catch (e) {
    return notice('file-unwritable', 'error', { file: target.shown, why: reason(e) });
  }
}
