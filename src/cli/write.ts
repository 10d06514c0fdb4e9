/** Files that Medlar makes carry a mark, so that one changed by hand is never written over. */
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { notice } from '../reason/notice.ts';
import type { Notice } from '../reason/notice.ts';
import { reason, unreadable } from './files.ts';
import { finishFirst } from './finish.ts';

/** How each kind of file carries the mark on its last line. */
const MARKS = { html: ['<!-- medlar ', ' -->'], svg: ['<!-- medlar ', ' -->'], text: ['# medlar ', ''], js: ['// medlar ', ''], json: [', "medlar": "', '" }'], ics: ['X-MEDLAR:', '\r\nEND:VCALENDAR'] } as const;
export type OwnForm = keyof typeof MARKS;

const MARK = /\n?(?:<!-- medlar ([0-9a-f]{16}) -->|(?:#|\/\/) medlar ([0-9a-f]{16})|, "medlar": "([0-9a-f]{16})" \}|X-MEDLAR:([0-9a-f]{16})\r\nEND:VCALENDAR\r)\n?$/;
const digest = (text: string): string => createHash('sha256').update(text).digest('hex').slice(0, 16);

/** Whether a file carries our mark and stands as it was made. */
function isOwn(text: string): boolean {
  const mark = MARK.exec(text);
  return mark !== null && (mark[1] ?? mark[2] ?? mark[3] ?? mark[4]) === digest(text.slice(0, mark.index));
}

/** Why a file may not be written over: it is not ours, or was edited. Null where it may. */
export function refusal(path: string, shown: string): Notice | null {
  try {
    if (!existsSync(path)) return null;
    const why = unreadable(path);
    if (why) return notice('file-unwritable', 'error', { file: shown, why });
    return !isOwn(readFileSync(path, 'utf8')) ? notice('file-edited', 'error', { file: shown }) : null;
  } catch (e) {
    return notice('file-unwritable', 'error', { file: shown, why: reason(e) });
  }
}

/** Writes through a temporary file and a rename; a file that is not ours, or was edited, stays unless forced. */
export function writeOwn(path: string, shown: string, text: string, form: OwnForm, force: boolean): Notice | null {
  const refused = force ? null : refusal(path, shown);
  if (refused) return refused;
  // In JSON and in a calendar the mark is the last member.
  const body = form === 'json' ? text.replace(/\s*\}\s*$/, '') : form === 'ics' ? text.replace(/\r\nEND:VCALENDAR\r\n$/, '\r') : text.replace(/\n$/, '');
  const [before, after] = MARKS[form];
  return writeWhole(path, shown, `${body}\n${before}${digest(body)}${after}${form === 'ics' ? '\r' : ''}\n`);
}

/** Writes through a temporary file and a rename, so that a half-written file is never seen. */
export function writeWhole(path: string, shown: string, text: string): Notice | null {
  finishFirst();
  try {
    makeFolder(dirname(path));
    clearLeft(path);
    const temporary = `${path}.${process.pid}.tmp`;
    rmSync(temporary, { force: true });
    try {
      // Only as a new file: a link that waits under this name would lead the text elsewhere.
      writeFileSync(temporary, text, { flag: 'wx' });
      renameSync(temporary, path);
    } catch (e) {
      rmSync(temporary, { force: true });
      throw e;
    }
    return null;
  } catch (e) {
    return notice('file-unwritable', 'error', { file: shown, why: reason(e) });
  }
}

/** One by one: all at once, Node calls a read-only disk one that is not there. */
function makeFolder(path: string): void {
  if (existsSync(path)) return;
  makeFolder(dirname(path));
  try {
    mkdirSync(path);
  } catch (e) {
    if (!(e instanceof Error && 'code' in e && e.code === 'EEXIST')) throw e;
  }
}

const LEFT_MS = 60_000;

/** What a run that was killed left half-written is taken away by the next, once nobody can still be writing it. */
function clearLeft(path: string): void {
  const [folder, name] = [dirname(path), basename(path)];
  for (const file of readdirSync(folder).filter((f) => f.startsWith(`${name}.`) && /^\d+\.tmp$/.test(f.slice(name.length + 1)))) {
    const since = statSync(join(folder, file), { throwIfNoEntry: false })?.mtimeMs ?? Date.now();
    if (Date.now() - since > LEFT_MS) rmSync(join(folder, file), { force: true });
  }
}
