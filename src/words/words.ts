/** Sentences by key and language. `{fact}` is filled in; `[fact| text]` is said only where the fact is told. */
import { enGB } from './en-GB.ts';
import type { Words } from './en-US.ts';
import { enUS } from './en-US.ts';

export type Language = 'en-US' | 'en-GB';
export type NoticeId = keyof Words['notice'];
export type AskId = keyof Words['ask'];
export type StepId = keyof Words['step'];
/** How a publication puts the time of feeding. */
export type SaidId = keyof Words['timing'];
export type Group = keyof Words;

const textOf = <G extends Group>(language: Language, group: G, key: keyof Words[G]): string => (language === 'en-GB' ? enGB(group, key) : (enUS as Words)[group][key]);

/** Says a sentence. An unknown fact is a fault of ours and throws. */
export function say<G extends Group>(language: Language, group: G, key: keyof Words[G] & string, facts: Readonly<Record<string, string | number>> = {}): string {
  return textOf(language, group, key)
    .replace(/\[(\w+)\|([^\]]*)\]/g, (_, fact: string, part: string) => (facts[fact] === undefined || facts[fact] === '' ? '' : part))
    .replace(/\{(\w+)\}/g, (_, fact: string) => {
      const value = facts[fact];
      if (value === undefined) throw new RangeError(`${group}.${key} wants the fact ${fact}`);
      return String(value);
    });
}

/** A key that data holds as plain text, such as the reason of a judgement; the text itself where there is no such key. */
export function sayIfKnown(language: Language, group: Group, key: string): string {
  return Object.hasOwn(enUS[group], key) ? textOf(language, group, key as keyof Words[typeof group]) : key;
}

export const keysOf = (group: Group): string[] => Object.keys(enUS[group]);
