/** `diary.csv` on disk: read whole, and added to in one step, so that neither a full disk nor a second run loses a line. */
import { closeSync, existsSync, fchmodSync, fsyncSync, lstatSync, openSync, readdirSync, readFileSync, realpathSync, renameSync, rmSync, statSync, writeFileSync, writeSync } from 'node:fs';
import { hostname } from 'node:os';
import { basename, dirname, join } from 'node:path';
import { DIARY_FILE } from '../orchard/files.ts';
import type { Diary, Entry } from '../orchard/diary.ts';
import { addition, readDiary } from '../orchard/diary.ts';
import type { Notice } from '../reason/notice.ts';
import { notice } from '../reason/notice.ts';
import { leadsOut, readText, reason, unreadable } from './files.ts';
import { finishFirst } from './finish.ts';

/** The diary of a folder; empty where there is none yet. What stops all of it from being read is an error among the notices. */
export function openDiary(folder: string, country: string | null): Diary {
  const path = pathOf(folder);
  if (typeof path !== 'string') return { entries: [], notices: [path.notice] };
  if (!existsSync(path)) return { entries: [], notices: [] };
  const read = readText(path);
  return 'text' in read ? readDiary(read.text, DIARY_FILE, country) : { entries: [], notices: [notice('file-missing', 'error', { file: DIARY_FILE, why: read.why })] };
}

/** Where the diary lies. A link may lead to another file of the folder, but not out of it. */
function pathOf(folder: string): string | { notice: Notice } {
  const path = join(folder, DIARY_FILE);
  try {
    if (!lstatSync(path, { throwIfNoEntry: false })?.isSymbolicLink()) return path;
    const real = realpathSync(path);
    return leadsOut(folder, real) ? { notice: notice('link-outside', 'error', { file: DIARY_FILE }) } : real;
  } catch (e) {
    return { notice: notice('file-missing', 'error', { file: DIARY_FILE, why: reason(e) }) };
  }
}

/**
 * Adds entries at the end and gives the line of the first. `fits` may refuse by what the diary holds at that moment.
 * All that stood there stays byte for byte; on any failure the file is as it was.
 */
export function append(folder: string, entries: readonly Entry[], fits: (before: Diary) => Notice | null = () => null, country: string | null = null): { first: number } | { notice: Notice } {
  const path = pathOf(folder);
  if (typeof path !== 'string') return path;
  finishFirst();
  try {
    return locked(`${path}.lock`, () => {
      const stood = existsSync(path);
      const why = stood ? unreadable(path) : null;
      if (why) return { notice: notice('file-missing', 'error', { file: DIARY_FILE, why }) };
      const bytes = stood ? readFileSync(path) : Buffer.alloc(0);
      // A spreadsheet may have saved it as UTF-16.
      const encoding = bytes[0] === 0xff && bytes[1] === 0xfe ? 'utf16le' : 'utf8';
      const text = bytes.toString(encoding);
      const refused = fits(readDiary(text, DIARY_FILE, country));
      if (refused) return { notice: refused };
      const added = addition(text, entries, DIARY_FILE);
      if ('notice' in added) return added;
      replace(path, Buffer.concat([bytes, Buffer.from(added.text, encoding)]), stood ? statSync(path).mode : 0o644);
      return { first: added.first };
    });
  } catch (e) {
    return { notice: notice('file-unwritable', 'error', { file: DIARY_FILE, why: e === BUSY ? 'busy' : reason(e) }) };
  }
}

/** Writes a new file beside the old one and puts it in its place. Under the lock nobody else does, so what lies there of the kind was left by a run that died. */
function replace(path: string, bytes: Buffer, mode: number): void {
  const temporary = `${path}.${process.pid}.tmp`;
  const left = new RegExp(`^${basename(path).replaceAll('.', '\\.')}\\.\\d+\\.tmp$`);
  for (const file of readdirSync(dirname(path)).filter((f) => left.test(f))) rmSync(join(dirname(path), file), { force: true });
  const file = openSync(temporary, 'wx', mode);
  try {
    try {
      fchmodSync(file, mode);
      for (let at = 0; at < bytes.length;) at += writeSync(file, bytes, at);
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
    renameSync(temporary, path);
  } catch (e) {
    rmSync(temporary, { force: true });
    throw e;
  }
  try {
    const folder = openSync(dirname(path), 'r');
    fsyncSync(folder);
    closeSync(folder);
  } catch {
    // Not every system lets a folder be flushed; the rename is done all the same.
  }
}

const BUSY = new Error('busy');
const STALE_MS = 10_000;
const PATIENCE_MS = 30_000;
const pause = (ms: number): void => void Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, ms);

/** Who holds a lock: the machine, and the run on it. */
const OWNER = `${hostname()} ${process.pid}`;

/** One run at a time. A lock whose run is dead is taken over; where nobody can tell, after ten seconds. */
function locked<T>(lock: string, work: () => T): T {
  const since = performance.now();
  for (;;) {
    try {
      writeFileSync(lock, OWNER, { flag: 'wx' });
      break;
    } catch (e) {
      if (!(e instanceof Error && 'code' in e && e.code === 'EEXIST')) {
        // On a full disk the file is made, and only its text has no room.
        rmSync(lock, { force: true });
        throw e;
      }
      if (performance.now() - since > PATIENCE_MS) throw BUSY;
      takeStale(lock);
      pause(15);
    }
  }
  try {
    return work();
  } finally {
    rmSync(lock, { force: true });
  }
}

/** Whether nobody works under a lock any more: its run is dead, or nobody can tell and it is old. */
function isStale(lock: string): boolean {
  const [machine, pid] = readFileSync(lock, 'utf8').split(' ');
  if (machine !== hostname() || !pid) return ageOf(lock) >= STALE_MS;
  try {
    process.kill(Number(pid), 0);
    return false;
  } catch (e) {
    return e instanceof Error && 'code' in e && e.code === 'ESRCH';
  }
}

/** Removes a lock that a dead run left. Only one run at a time looks, so that none removes the lock of whoever came after. */
function takeStale(lock: string): void {
  const taking = `${lock}.taking`;
  try {
    if (!isStale(lock)) return;
    writeFileSync(taking, OWNER, { flag: 'wx' });
  } catch {
    // Freed meanwhile, or another looks; one that died while it looked is passed over.
    if (existsSync(taking) && ageOf(taking) >= STALE_MS) rmSync(taking, { force: true });
    return;
  }
  try {
    if (isStale(lock)) rmSync(lock, { force: true });
  } catch {
    // Freed meanwhile.
  } finally {
    rmSync(taking, { force: true });
  }
}

const ageOf = (path: string): number => Date.now() - (statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? Date.now());
