// Bags of one name with other numbers: whoever weighs out, buys or writes down must be able to tell them apart.
import { describe, expect, test } from 'vitest';
import { historyOf } from '../../src/orchard/history.ts';
import { loadOrchard } from '../../src/orchard/load.ts';
import { readSentence } from '../../src/orchard/sentence.ts';

const load = (shed: readonly string[], store: readonly string[]) => loadOrchard(`where: Ohio, US\ntrees:\n  A: apple, planted 2016\nshed:\n${shed.map((b) => `  - ${b}\n`).join('')}store:\n${store.map((b) => `  - ${b}\n`).join('')}`, 'orchard.yaml').orchard!;

describe('the name of a bag', () => {
  test('is its label, with its numbers where another bag of that label has others', () => {
    const { shed, store } = load(['Orchard feed, 21-0-0, 10 lb', 'Bone meal, 3-15-0, 5 lb'], ['orchard feed, 5-10-10, 4 lb', 'Orchard feed, 21-0-0, 4 lb', 'Bone meal, 3-15-0, 10 lb']);
    expect([shed, store].map((list) => list.map((b) => b.label))).toEqual([['Orchard feed 21-0-0', 'Bone meal'], ['orchard feed 5-10-10', 'Orchard feed 21-0-0', 'Bone meal']]);
  });
  test('holds in the diary: what was fed counts as the bag that was named', () => {
    const { trees, shed, store } = load(['Orchard feed, 21-0-0, 10 lb'], ['Orchard feed, 5-10-10, 4 lb']);
    const bags = [...shed, ...store];
    const said = readSentence('fed A 1000 g Orchard feed 5-10-10 on 2026-04-10', { trees: [{ name: 'A', count: 1 }], zones: [], bags, today: '2026-04-20' }) as unknown as { entries: { bag: string }[] };
    expect(said.entries[0]!.bag).toBe('Orchard feed 5-10-10');
    const { thisSeason } = historyOf(trees[0]!, undefined, said.entries as never, { year: 2026, budBreak: '2026-04-14', firstFrost: '2026-10-12' }, bags, 'US');
    // 5, 10 and 10 % of a kilogram.
    expect(thisSeason.map((f) => f.brought)).toEqual([{ N: 50, P2O5: 100, K2O: 100 }]);
  });
});
