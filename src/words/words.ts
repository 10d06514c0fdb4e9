/** Sentences by key and language. `{fact}` is filled in; `[fact| text]` is said only where the fact is told. */
import { enGB } from './en-GB.ts';
import type { Words } from './en-US.ts';
import { enUS } from './en-US.ts';

export const LANGUAGES = ['en', 'en-GB', 'en-US', 'de', 'es'] as const;
export type Language = Exclude<(typeof LANGUAGES)[number], 'en'>;
export type NoticeId = keyof Words['notice'];
export type AskId = keyof Words['ask'];
export type StepId = keyof Words['step'];
/** How a publication puts the time of feeding. */
export type SaidId = keyof Words['timing'];
export type Group = keyof Words;

/** How a language writes numbers, days and prices; `said` has the point of English. */
export type Marks = {
  readonly months: readonly string[];
  readonly number: (value: number) => string;
  readonly day: (d: string, withYear: boolean) => string;
  readonly month: (d: string) => string;
  readonly window: (from: string, until: string, withYear: boolean) => string;
  readonly price: (said: string, currency: string) => string;
};

/** What was loaded of other languages than English (`load.ts`). */
const learned: { [L in Language]?: readonly [Words, Marks] } = {};
export const learn = (language: Language, words: Words, marks: Marks): void => { learned[language] = [words, marks]; };
/** Those of another language than English, where it was loaded. */
export const ownMarks = (language: Language): Marks | undefined => learned[language]?.[1];

/** The language itself where it is English or was loaded, else English. */
export const spoken = (language: Language): Language => (language === 'en-US' || learned[language] ? language : 'en-GB');

const textOf = <G extends Group>(language: Language, group: G, key: keyof Words[G]): string => (language === 'en-US' ? (enUS as Words)[group][key] : learned[language]?.[0][group][key] ?? enGB(group, key));

/** A number in the marks of the language. */
export const numeral = (value: number, language: Language): string => ownMarks(language)?.number(value) ?? String(value);

/** Says a sentence. An unknown fact is a fault of ours and throws. */
export function say<G extends Group>(language: Language, group: G, key: keyof Words[G] & string, facts: Readonly<Record<string, string | number>> = {}): string {
  return textOf(language, group, key)
    .replace(/\[(\w+)\|([^\]]*)\]/g, (_, fact: string, part: string) => (facts[fact] === undefined || facts[fact] === '' ? '' : part))
    .replace(/\{(\w+)\}/g, (_, fact: string) => {
      const value = facts[fact];
      if (value === undefined) throw new RangeError(`${group}.${key} wants the fact ${fact}`);
      return typeof value === 'number' ? numeral(value, language) : value;
    });
}

/** A key that data holds as plain text, such as the reason of a judgement; the text itself where there is no such key. */
export function sayIfKnown(language: Language, group: Group, key: string): string {
  return Object.hasOwn(enUS[group], key) ? textOf(language, group, key as keyof Words[typeof group]) : key;
}

export const keysOf = (group: Group): string[] => Object.keys(enUS[group]);
