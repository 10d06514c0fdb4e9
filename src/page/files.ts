/** The files of an orchard folder, in and out: single ones, or all in a zip. */
import { unzipSync, Zip, ZipPassThrough } from 'fflate';
import { ORCHARD_FILE } from '../gather.ts';
import { DIARY_FILE } from '../orchard/diary.ts';
import type { Notice } from '../reason/notice.ts';
import { notice } from '../reason/notice.ts';
import { decodeReport, guessNotice } from '../soil/decode.ts';
import type { State } from './state.ts';
import { EMPTY, RULES_FILE, zoneFiles } from './state.ts';

export const baseName = (path: string): string => path.split('/').pop()!;

/** No name leads out of the folder or to another place of a disk. */
const isSafe = (path: string): boolean => path !== '' && !/^\/|\\|:|\0/.test(path) && !path.split('/').some((part) => part === '..' || part === '');
const isKnown = (path: string): boolean => /\.(?:ya?ml|txt|csv)$/i.test(path) && !path.startsWith('__MACOSX/');

/** The folder's files with their texts. */
export const folderOf = (state: State): [path: string, text: string][] =>
  [[ORCHARD_FILE, state.orchard] as [string, string], ...Object.entries(state.reports), ...Object.entries(state.others ?? {}), [DIARY_FILE, state.diary] as [string, string]].filter(([path, text]) => text !== '' && isSafe(path));

/** All of them in a zip, as an orchard folder holds them; not packed smaller, for they are short. */
export function packed(state: State): Uint8Array<ArrayBuffer> {
  const chunks: Uint8Array[] = [];
  const zip = new Zip((_, chunk) => { chunks.push(chunk); });
  for (const [path, text] of folderOf(state)) {
    const entry = new ZipPassThrough(path);
    zip.add(entry);
    entry.push(new TextEncoder().encode(text), true);
  }
  zip.end();
  const all = new Uint8Array(chunks.reduce((sum, c) => sum + c.length, 0));
  chunks.reduce((at, c) => (all.set(c, at), at + c.length), 0);
  return all;
}

type Found = { readonly path: string; readonly bytes: Uint8Array };
const MOST_FILES = 200;
const MOST_BYTES = 20_000_000;

/** The files of a zip that an orchard may hold, by their path from where its `orchard.yaml` lies; null where it cannot be unpacked. */
function unpacked(bytes: Uint8Array): Found[] | null {
  let [count, size] = [0, 0];
  try {
    const all = Object.entries(unzipSync(bytes, { filter: ({ name, originalSize }) => {
      if (!isSafe(name) || !isKnown(name)) return false;
      [count, size] = [count + 1, size + originalSize];
      if (count > MOST_FILES || size > MOST_BYTES) throw new Error('too large');
      return true;
    } }));
    const top = all.map(([path]) => path).filter((p) => baseName(p).toLowerCase() === ORCHARD_FILE).sort((a, b) => a.split('/').length - b.split('/').length)[0];
    const base = top === undefined ? '' : top.slice(0, -baseName(top).length);
    return all.filter(([path]) => path.startsWith(base)).map(([path, data]) => ({ path: path.slice(base.length), bytes: data }));
  } catch {
    return null;
  }
}

const isZip = (bytes: Uint8Array): boolean => bytes[0] === 0x50 && bytes[1] === 0x4b && (bytes[2] === 3 || bytes[2] === 5);

export type OpenedFiles = { readonly state: State; readonly names: readonly string[]; readonly notices: readonly Notice[] };

/**
 * Takes files into the state. `orchard.yaml` is known by its ending and begins a new orchard; all else is a report, under the name that
 * the orchard gives it. A file that is no text is left out and named; of a zip that cannot be unpacked nothing is taken.
 */
export function opened(chosen: readonly Found[], before: State): OpenedFiles {
  const notices: Notice[] = [];
  const files = chosen.flatMap((file): Found[] => {
    if (!isZip(file.bytes) || !/\.zip$/i.test(file.path)) return [file];
    const inside = unpacked(file.bytes);
    if (!inside) notices.push(notice('zip-broken', 'error', { file: file.path }));
    else if (inside.length === 0) notices.push(notice('zip-empty', 'error', { file: file.path }));
    return inside ?? [];
  });
  const texts = files.flatMap(({ path, bytes }) => {
    const found = decodeReport(bytes);
    if ('refused' in found) {
      notices.push(notice('not-text', 'error', { file: path, why: found.refused }));
      return [];
    }
    notices.push(...[guessNotice(found, path) ?? []].flat());
    return [{ path, name: baseName(path).toLowerCase(), text: found.text }];
  });
  const isOrchard = ({ name }: { name: string }): boolean => /\.ya?ml$/.test(name) && name !== RULES_FILE;
  const orchard = texts.filter(isOrchard).at(-1);
  let state: State = orchard ? { ...EMPTY, orchard: orchard.text, reports: before.reports, diary: before.diary } : before;
  for (const { name, path, text } of texts) {
    if (name === DIARY_FILE) state = { ...state, diary: text };
    else if (name === RULES_FILE) {
      state = { ...state, others: { ...state.others, [RULES_FILE]: text } };
      delete (state as { rules?: unknown }).rules;
    } else if (!isOrchard({ name })) {
      const said = zoneFiles(state.orchard);
      const known = said.find((p) => p === path) ?? said.find((p) => baseName(p).toLowerCase() === name);
      state = { ...state, reports: { ...state.reports, [known ?? `soil/${baseName(path)}`]: text } };
    }
  }
  // Reports that the orchard does not name would only be carried along.
  const named = zoneFiles(state.orchard);
  if (named.length > 0) state = { ...state, reports: Object.fromEntries(Object.entries(state.reports).filter(([name]) => named.includes(name))) };
  return { state, names: texts.map((t) => baseName(t.path)), notices };
}
