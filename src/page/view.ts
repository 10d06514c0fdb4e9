/** What a part of the page is given, and what it gives back. */
import type { Where } from '../orchard/where.ts';
import type { Day } from '../units/date.ts';
import type { Language } from '../words/words.ts';
import { say } from '../words/words.ts';
import type { Seen } from './seen.ts';
import type { State } from './state.ts';

export const PARTS = ['home', 'report', 'trees', 'bags', 'plan', 'store', 'sheet'] as const;
export type Part = (typeof PARTS)[number];

export type Context = {
  readonly language: Language;
  readonly system: 'us' | 'metric';
  /** As the orchard's own line says it. */
  readonly where: Where;
  readonly today: () => Day;
  readonly state: () => State;
  /** The files as they stand; and, while there is no tree yet, as if one stood there. */
  readonly seen: () => Seen;
  readonly early: () => Seen;
  readonly kept: () => boolean;
  /** Takes a new state as it is, mistakes included. */
  readonly take: (state: State) => void;
  /** Takes an edited `orchard.yaml` unless that brings new mistakes; gives these back as sentences. */
  readonly edit: (change: (orchard: string) => string | null) => string[];
  readonly go: (part: Part) => void;
  /** The page itself with this orchard inside. */
  readonly copy: () => string;
};

/** Built once for a language; `refresh` brings it up to the state. */
export type View = { readonly root: HTMLElement; readonly refresh: () => void };

type PageKey = Parameters<typeof say<'page'>>[2];
export type PageWords = (key: PageKey, facts?: Readonly<Record<string, string | number>>) => string;
export const wordsOf = ({ language }: Context): PageWords => (key, facts) => say(language, 'page', key, facts);
