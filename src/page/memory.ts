/** What stays: an orchard inside the page itself, and what was changed since, in this browser if it allows that. */
import { createStore, del, get, update } from 'idb-keyval';
import type { UseStore } from 'idb-keyval';
import type { State } from './state.ts';
import { EMPTY, stateOf, written } from './state.ts';

/** An orchard that the page was given; each page with another orchard inside has its own memory. */
export type Inside = { readonly state: State | null; readonly key: string };

const BLOCK = /(<script type="application\/json" id="orchard">)[^<]*(<\/script>)/;

/** A short number for a text: enough to tell one orchard from another on one phone. */
function digest(text: string): string {
  let hash = 5381;
  for (let i = 0; i < text.length; i += 1) hash = ((hash * 33) ^ text.charCodeAt(i)) >>> 0;
  return hash.toString(36);
}

export function insideOf(page: Document): Inside {
  const text = page.getElementById('orchard')?.textContent ?? '';
  const state = stateOf(text);
  return { state, key: state ? `medlar ${digest(written(state))}` : 'medlar' };
}

/** The page's text with an orchard inside; no part of a text can end the block. */
export const withInside = (html: string, state: State): string => html.replace(BLOCK, (_, open: string, close: string) => `${open}${written(state).replaceAll('<', '\\u003c')}${close}`);

/** How the browser holds it. `revision` counts what was written, so that two windows notice each other. */
type Kept = { readonly version: number; readonly revision: number; readonly state: string };
const VERSION = 1;

/** `refused`: the browser keeps nothing, or is full; `newer`: a later Medlar wrote it. `revision` is that of what was found or written. */
export type Recalled = { readonly state: State | null; readonly revision: number } | 'refused' | 'newer';
/** `other`: a second window wrote meanwhile; nothing was written over it. */
export type Remembered = { readonly revision: number } | { readonly other: State; readonly revision: number } | 'refused' | 'newer';

let opened: UseStore | undefined;
const store = (): UseStore => (opened ??= createStore('medlar', 'orchards'));

/** Some browsers never answer where storage is forbidden. */
const PATIENCE_MS = 2000;
const inTime = <T>(work: Promise<T>): Promise<T | 'refused'> => Promise.race([work, new Promise<'refused'>((resolve) => { setTimeout(() => { resolve('refused'); }, PATIENCE_MS); })]);

const isKept = (kept: unknown): kept is Kept => typeof kept === 'object' && kept !== null && 'version' in kept && typeof kept.version === 'number' && 'revision' in kept && typeof kept.revision === 'number' && 'state' in kept && typeof kept.state === 'string';

export async function recall({ key }: Inside): Promise<Recalled> {
  try {
    const kept = await inTime(get<unknown>(key, store()));
    if (kept === 'refused') return kept;
    if (!isKept(kept)) return { state: stateOf(earlier(key)), revision: 0 };
    return kept.version > VERSION ? 'newer' : { state: stateOf(kept.state), revision: kept.revision };
  } catch {
    return 'refused';
  }
}

/** What a page of the first version kept, before there was a revision. */
function earlier(key: string): string | null {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
}

/** Writes the state unless another window has written since `revision`. */
export async function remember({ key, state: first }: Inside, state: State, revision: number): Promise<Remembered> {
  try {
    if (state === EMPTY && first === null) {
      await del(key, store());
      localStorage.removeItem(key);
      return { revision: 0 };
    }
    let found: unknown;
    await update<unknown>(key, (old) => {
      found = old;
      return isKept(old) && (old.version > VERSION || old.revision !== revision) ? old : { version: VERSION, revision: revision + 1, state: written(state) };
    }, store());
    if (!isKept(found) || (found.version <= VERSION && found.revision === revision)) return { revision: revision + 1 };
    return found.version > VERSION ? 'newer' : { other: stateOf(found.state) ?? EMPTY, revision: found.revision };
  } catch {
    return 'refused';
  }
}
