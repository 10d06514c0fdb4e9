/** "1 tree", "3 trees", "no zone". */
import type { Language } from '../words/words.ts';
import { say } from '../words/words.ts';

export type Counted = 'trees' | 'samples' | 'zones';

export function count(L: Language, what: Counted, n: number): string {
  const key = n === 1 ? `${what}1` as const : n === 0 && what !== 'trees' ? `${what}0` as const : `${what}N` as const;
  return say(L, 'say', key, { n });
}
