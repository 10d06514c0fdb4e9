/** The files of an orchard folder, in and out: single ones, or all in a zip. */
import { iter } from 'but-unzip';
import { createZip } from 'littlezipper';
import type { Notice } from '../reason/notice.ts';
import { notice } from '../reason/notice.ts';
import { decodeReport, guessNotice } from '../soil/decode.ts';
import type { State } from './state.ts';
import { EMPTY, zoneFiles } from './state.ts';
import { DIARY_FILE, ORCHARD_FILE, RULES_FILE } from '../orchard/files.ts';

export const baseName = (path: string): string => path.split('/').pop()!;

/** No name leads out of the folder or to another place of a disk. */
const isSafe = (path: string): boolean => path !== '' && !/^\/|\\|:|\0/.test(path) && !path.split('/').some((part) => part === '..' || part === '');
const isKnown = (path: string): boolean => /\.(?:ya?ml|txt|csv)$/i.test(path) && !path.startsWith('__MACOSX/');

/** The folder's files with their texts. */
export const folderOf = (state: State): [path: string, text: string][] =>
  [[ORCHARD_FILE, state.orchard] as [string, string], ...Object.entries(state.reports), ...Object.entries(state.others ?? {}), [DIARY_FILE, state.diary] as [string, string]].filter(([path, text]) => text !== '' && isSafe(path));

/** All of them in a zip, as an orchard folder holds them; not packed smaller, for they are short. */
export const packed = (state: State): Promise<Uint8Array> => createZip(folderOf(state).map(([path, data]) => ({ path, data })), false);

type Found = { readonly path: string; readonly bytes: Uint8Array };
const MOST_FILES = 200;
const MOST_BYTES = 20_000_000;

/** Unpacks with the browser's own means, and no more than an orchard can hold, whatever the zip says of its size. */
async function inflated(raw: Uint8Array): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  let size = 0;
  const reader = new Blob([raw as Uint8Array<ArrayBuffer>]).stream().pipeThrough(new DecompressionStream('deflate-raw')).getReader();
  for (let next = await reader.read(); !next.done; next = await reader.read()) {
    chunks.push(next.value);
    size += next.value.length;
    if (size > MOST_BYTES) throw new Error('too large');
  }
  return new Uint8Array(await new Blob(chunks as Uint8Array<ArrayBuffer>[]).arrayBuffer());
}

/** Whether the mark that ends a zip stands where it may: what was cut off has none, and would be searched for without end. */
const hasEnd = (bytes: Uint8Array): boolean => bytes.subarray(-65_558, -18).some((b, i, all) => b === 0x50 && all[i + 1] === 0x4b && all[i + 2] === 5 && all[i + 3] === 6);

/** The check sums that a zip's directory gives its files, in its order (PKWARE APPNOTE 4.3.12 and 4.3.16). */
function sumsIn(bytes: Uint8Array): number[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
  let end = bytes.length - 22;
  while (view.getUint32(end, true) !== 0x06054b50) end -= 1;
  let at = view.getUint32(end + 16, true);
  return Array.from({ length: view.getUint16(end + 10, true) }, () => {
    const sum = view.getUint32(at + 16, true);
    at += 46 + view.getUint16(at + 28, true) + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
    return sum;
  });
}

/** CRC-32 as zips use it (ISO 3309), bit by bit: orchards are short. */
function sumOf(bytes: Uint8Array): number {
  let sum = -1;
  for (const byte of bytes) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit += 1) sum = (sum >>> 1) ^ (sum & 1 ? 0xedb88320 : 0);
  }
  return ~sum >>> 0;
}

/** The files of a zip that an orchard may hold, by their path from where its `orchard.yaml` lies; null where it cannot be unpacked. */
async function unpacked(bytes: Uint8Array): Promise<Found[] | null> {
  if (!hasEnd(bytes)) return null;
  try {
    const all: Found[] = [];
    const sums = sumsIn(bytes).values();
    let size = 0;
    for (const { filename, read } of iter(bytes, inflated)) {
      const sum = sums.next().value;
      if (!isSafe(filename) || !isKnown(filename)) continue;
      const data = await read();
      size += data.length;
      // A byte that changed on the way would be read as if the grower had written it.
      if (sumOf(data) !== sum) return null;
      if (all.push({ path: filename, bytes: data }) > MOST_FILES || size > MOST_BYTES) return null;
    }
    const top = all.map(({ path }) => path).filter((p) => baseName(p).toLowerCase() === ORCHARD_FILE).sort((x, y) => x.split('/').length - y.split('/').length)[0];
    const base = top === undefined ? '' : top.slice(0, -baseName(top).length);
    return all.filter(({ path }) => path.startsWith(base)).map(({ path, bytes: data }) => ({ path: path.slice(base.length), bytes: data }));
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
export async function opened(chosen: readonly Found[], before: State): Promise<OpenedFiles> {
  const notices: Notice[] = [];
  const files = (await Promise.all(chosen.map(async (file): Promise<Found[]> => {
    if (!isZip(file.bytes) || !/\.zip$/i.test(file.path)) return [file];
    const inside = await unpacked(file.bytes);
    if (!inside) notices.push(notice('zip-broken', 'error', { file: file.path }));
    else if (inside.length === 0) notices.push(notice('zip-empty', 'error', { file: file.path }));
    return inside ?? [];
  }))).flat();
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
