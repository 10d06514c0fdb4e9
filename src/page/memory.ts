/** What stays: an orchard inside the page itself, and what was changed since, in this browser if it allows that. */
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

export function recall({ key }: Inside): State | null {
  try {
    return stateOf(localStorage.getItem(key));
  } catch {
    return null;
  }
}

/** Whether it could be kept. On trial only whether it can is found out. */
export function remember({ key, state: first }: Inside, state: State, trial = false): boolean {
  try {
    if (trial) {
      localStorage.setItem(`${key} trial`, '1');
      localStorage.removeItem(`${key} trial`);
    } else if (state === EMPTY && first === null) localStorage.removeItem(key);
    else localStorage.setItem(key, written(state));
    return true;
  } catch {
    return false;
  }
}
