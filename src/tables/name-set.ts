/** The form in which the words of a report are kept: each set with its language and how its words are known. */
import type { Mark } from '../reason/figure.ts';
import type { Oxide } from '../units/substance.ts';
import type { Item, Method } from './items.ts';
import type { Page } from './vocabulary-pages.ts';

export const LANGUAGES = ['en', 'es', 'fr', 'de', 'pt', 'it'] as const;
export type Language = (typeof LANGUAGES)[number];

/** `read` on a page, which `at` then names; `practice`: as labs and growers of that language write; `memory`: recalled, not seen. */
export type WordMark = Extract<Mark, 'read' | 'practice' | 'memory'>;

/** Said of every set of words. `any` is a symbol or spelling common to all languages. */
export type WordSet = {
  readonly language: Language | 'any';
  readonly mark: WordMark;
  /** The page, for words that were read. */
  readonly at?: Page;
  /** A word that means something else in another language or in plain prose: good only in reports of this one. */
  readonly in?: Language;
};

/** What a name stands for. `ratio` is a name that is known so that its number is never taken for something else; `lime` is a need where a rate follows, free carbonate where a word does. */
export type Named = Item | 'ratio' | 'lime';

/** Printed names of one thing. `exact` keeps the case ("K" is potassium, "k" is not); `slip` marks a known misspelling; `index` says that the number behind is an index; `loose` that the form is what labs mean by the word alone, where neither another name nor the unit tells it. */
export type NameSet = WordSet & {
  readonly of: Named;
  readonly form?: Oxide;
  readonly method?: Method;
  readonly exact?: true;
  readonly slip?: true;
  readonly index?: true;
  readonly loose?: true;
  readonly names: readonly string[];
};

/** Without its accents, as a report is matched. */
export const unaccented = (text: string): string => (/[^ -~]/.test(text) ? text.normalize('NFD').replace(/\p{M}/gu, '') : text);
