/** Entries of the diary in words. */
import type { Entry, What } from '../orchard/diary.ts';
import type { Orchard } from '../orchard/load.ts';
import type { Language } from '../words/words.ts';
import { say } from '../words/words.ts';

const DID = { fed: 'did-fed', limed: 'did-limed', sulphured: 'did-sulphured', shoots: 'did-shoots', crop: 'did-crop', note: 'did-note', withdrawn: 'did-note' } as const satisfies Record<What, string>;

/** "Gate apple, fed 12 oz Sulphate of ammonia". */
export function entryText(e: Entry, orchard: Orchard, L: Language): string {
  const single = e.trees.length === 1 && orchard.trees.some((t) => t.name === e.trees[0] && t.count === 1);
  const amount = e.amount ?? '';
  const weighed = amount !== '' && !single && e.what !== 'shoots' && /\d/.test(amount);
  return say(L, 'say', DID[e.what], { trees: e.trees.join(', '), amount: weighed ? say(L, 'say', 'amount-each', { amount }) : amount, bag: e.bag ?? '', note: e.note });
}
