/** Text files, and why one cannot be had. */
import { readFileSync, statSync } from 'node:fs';

/** The text of a file, or the cause why it cannot be had: a key of words, or what the system said. */
export function readText(path: string): { text: string } | { why: string } {
  try {
    if (statSync(path).isDirectory()) return { why: 'folder' };
    const bytes = readFileSync(path);
    if (bytes[0] === 0xff && bytes[1] === 0xfe) return { text: bytes.toString('utf16le') };
    return { text: bytes.toString('utf8') };
  } catch (e) {
    return { why: reason(e) };
  }
}

export function reason(e: unknown): string {
  const code = e instanceof Error && 'code' in e ? String(e.code) : '';
  const known: Readonly<Record<string, string>> = { ENOENT: 'absent', EACCES: 'denied', EPERM: 'denied', ENOSPC: 'full', EROFS: 'read-only', EISDIR: 'folder', ENOTDIR: 'no-folder' };
  return known[code] ?? (e instanceof Error ? e.message : String(e));
}
