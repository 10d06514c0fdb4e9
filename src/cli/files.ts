/** Text files, and why one cannot be had. */
import { closeSync, existsSync, openSync, readFileSync, readSync, realpathSync, statSync } from 'node:fs';
import { basename, dirname, isAbsolute, join, relative, sep } from 'node:path';
import type { Notice } from '../reason/notice.ts';
import { notice } from '../reason/notice.ts';
import { decodeReport, guessNotice } from '../soil/decode.ts';
import { LARGEST_REPORT } from '../soil/text.ts';

/** The text of a file, or the cause why it cannot be had: a key of words, or what the system said. */
export function readText(path: string): { text: string } | { why: string } {
  try {
    const why = unreadable(path);
    if (why) return { why };
    const bytes = readFileSync(path);
    if (bytes[0] === 0xff && bytes[1] === 0xfe) return { text: bytes.toString('utf16le') };
    return { text: bytes.toString('utf8') };
  } catch (e) {
    return { why: reason(e) };
  }
}

/** Why what lies there is no file to read: a folder, or a pipe or device, which would never end. */
export function unreadable(path: string): 'folder' | 'not-a-file' | null {
  const stat = statSync(path);
  return stat.isDirectory() ? 'folder' : stat.isFile() ? null : 'not-a-file';
}

/** The text of a report, however it was saved, with a notice where letters were taken by a guess; `refused` where it is no text. */
export type ReportFile = { readonly text: string; readonly notices: readonly Notice[] } | { readonly refused: Notice };

/** A report's text has at most four bytes a letter; a larger file is judged by its beginning. */
const MOST_BYTES = 4 * LARGEST_REPORT;

/** Reads a report; `file` is its name in notices. */
export function readReportFile(path: string, file: string): ReportFile {
  try {
    const stat = statSync(path);
    if (stat.isDirectory()) return { refused: notice('file-missing', 'error', { file, why: 'folder' }) };
    if (stat.size <= MOST_BYTES) return reportOf(readFileSync(path), file);
    const begun = decodeReport(beginning(path));
    return { refused: 'refused' in begun ? notice('not-text', 'error', { file, why: begun.refused }) : notice('report-too-large', 'error', { file, size: stat.size, most: LARGEST_REPORT }) };
  } catch (e) {
    return { refused: notice('file-missing', 'error', { file, why: reason(e) }) };
  }
}

/** The bytes of a report, from a file or from stdin. */
export function reportOf(bytes: Uint8Array, file: string): ReportFile {
  const found = decodeReport(bytes);
  if ('refused' in found) return { refused: notice('not-text', 'error', { file, why: found.refused }) };
  const guess = guessNotice(found, file);
  return { text: found.text, notices: guess ? [guess] : [] };
}

function beginning(path: string): Uint8Array {
  const handle = openSync(path, 'r');
  try {
    const bytes = new Uint8Array(65_536);
    return bytes.subarray(0, readSync(handle, bytes));
  } finally {
    closeSync(handle);
  }
}

export function reason(e: unknown): string {
  const code = e instanceof Error && 'code' in e ? String(e.code) : '';
  const known: Readonly<Record<string, string>> = { ENOENT: 'absent', EACCES: 'denied', EPERM: 'denied', ENOSPC: 'full', EROFS: 'read-only', EISDIR: 'folder', ENOTDIR: 'no-folder', ELOOP: 'link-loop', ENAMETOOLONG: 'absent', ERR_INVALID_ARG_VALUE: 'absent' };
  return known[code] ?? (e instanceof Error ? e.message : String(e));
}

/** Whether a path leads out of a folder, by itself or by a link; of one that is not there yet, whether it would. */
export function leadsOut(folder: string, path: string): boolean {
  const real = (at: string): string => (existsSync(at) || dirname(at) === at ? realpathSync(at) : join(real(dirname(at)), basename(at)));
  const out = relative(real(folder), real(path));
  return out === '..' || out.startsWith(`..${sep}`) || isAbsolute(out);
}
