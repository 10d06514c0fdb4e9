// What growers type, by the forms that design.md 5 and 6 show. Amounts: exact factors (pound 453.59237 g, ounce a sixteenth of it, inch 0.0254 m).
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readDiary, writeEntry } from '../../src/orchard/diary.ts';
import type { Entry } from '../../src/orchard/diary.ts';
import type { Known } from '../../src/orchard/sentence-names.ts';
import { readSentence } from '../../src/orchard/sentence.ts';

const OZ = 28.349523125;
const KNOWN: Known = {
  trees: [['Gate apple', 1], ['Gate apple old', 1], ['Wall plum', 1], ['Plum', 1], ['Plum 2', 1], ['Blueberries', 6], ['The Don', 1], ['Crème pear', 1]].map(([name, count]) => ({ name: name as string, count: count as number })),
  zones: [{ name: 'lower terrace', count: 2 }, { name: 'top strip', count: 8 }],
  bags: [{ label: 'Sulphate of ammonia', printed: '21-0-0' }, { label: 'Balanced', printed: '10-10-10' }, { label: 'Orchard mix', printed: '10-10-10' }, { label: 'Bone meal', printed: '3-15-0' }],
  today: '2026-05-20',
};
const read = (text: string, facts: Partial<Known> = {}) => readSentence(text, { ...KNOWN, ...facts });
const one = (text: string): Entry => {
  const said = read(text);
  expect(said).toHaveProperty('entries');
  const { entries } = said as { entries: readonly Entry[] };
  expect(entries).toHaveLength(1);
  return entries[0]!;
};
const codes = (text: string, facts: Partial<Known> = {}): string[] => {
  const said = read(text, facts);
  expect(said).toHaveProperty('notices');
  return (said as unknown as { notices: { code: string }[] }).notices.map((n) => n.code);
};

describe('what was done', () => {
  test.each([
    ['fed Gate apple 12 oz sulphate of ammonia', { trees: ['Gate apple'], what: 'fed', bag: 'Sulphate of ammonia', amount: '12 oz' }, 12 * OZ],
    ['FED the gate APPLE with 12 oz of Sulfate of Ammonia.', { trees: ['Gate apple'], what: 'fed', bag: 'Sulphate of ammonia', amount: '12 oz' }, 12 * OZ],
    ['fed Gate apple sulphate of ammonia 12 oz', { bag: 'Sulphate of ammonia', amount: '12 oz' }, 12 * OZ],
    ['fed 12 oz sulphate of ammonia to Gate apple', { trees: ['Gate apple'], bag: 'Sulphate of ammonia', amount: '12 oz' }, 12 * OZ],
    ['Gate apple was fed 12 oz 21-0-0', { trees: ['Gate apple'], bag: 'Sulphate of ammonia' }, 12 * OZ],
    ['fed Gate apple and Wall plum 2 oz each of 21-0-0', { trees: ['Gate apple', 'Wall plum'], bag: 'Sulphate of ammonia', amount: '2 oz' }, 2 * OZ],
    ['fed Gate apple, Wall plum & Plum 6 oz in all of 21-0-0', { trees: ['Gate apple', 'Wall plum', 'Plum'], amount: '2 oz' }, 2 * OZ],
    ['fed all trees 1 oz each', { trees: KNOWN.trees.map((t) => t.name), bag: null, amount: '1 oz' }, OZ],
    ['fed Gate apple', { trees: ['Gate apple'], bag: null, amount: null }, null],
    ['fed Gate apple bone meal', { bag: 'Bone meal', amount: null }, null],
    ['fed Gate apple nothing', { amount: 'nothing' }, 0],
    ['fed Gate apple 2 cups Bone meal', { bag: 'Bone meal', amount: '2 cups' }, null],
    ['fed Gate apple 12 1/2 oz 21-0-0', { amount: '12 1/2 oz' }, 12.5 * OZ],
    ['fed Gate apple 1 lb 4 oz 21-0-0', { amount: '1 lb 4 oz' }, 20 * OZ],
    ['top strip fed 1/2 lb each ;', { amount: '1/2 lb' }, 8 * OZ],
    ['fed Gate apple 2,5 kg compost', { amount: '2,5 kg', bag: 'compost' }, 2500],
    ['fed Gate apple 350g 5-10-5', { amount: '350g', bag: '5-10-5' }, 350],
    ['fed Gate apple 1/2 lb 10-10-10', { amount: '1/2 lb', bag: '10-10-10' }, 8 * OZ],
    ['fed Gate apple 12 oz Sulphate of ammonia 21-0-0', { bag: 'Sulphate of ammonia' }, 12 * OZ],
    ['fed Gate apple 12 oz blood meal', { bag: 'blood meal' }, 12 * OZ],
    ['fed Blueberries 2 oz each sulphate of ammonia', { trees: ['Blueberries'], amount: '2 oz' }, 2 * OZ],
    ['fed Blueberries 12 oz in all of sulphate of ammonia', { trees: ['Blueberries'], amount: '2 oz' }, 2 * OZ],
    ['fed Blueberries 600 g balanced altogether', { amount: '100 g', bag: 'Balanced' }, 100],
    ['limed top strip 5 lb each garden lime', { trees: ['top strip'], what: 'limed', bag: 'garden lime', amount: '5 lb' }, 80 * OZ],
    ['limed top strip 8 lb garden lime in total', { amount: '1 lb' }, 16 * OZ],
    ['sulphured Blueberries 4 oz each', { what: 'sulphured', trees: ['Blueberries'], bag: null }, 4 * OZ],
    ['sulfured Blueberries 4 oz each', { what: 'sulphured' }, 4 * OZ],
    ['crop Gate apple 40 lb', { what: 'crop', trees: ['Gate apple'], amount: '40 lb' }, 640 * OZ],
    ['Gate apple gave 40 lb', { what: 'crop', trees: ['Gate apple'], amount: '40 lb' }, 640 * OZ],
    ['Gate apple crop none', { what: 'crop', amount: 'none' }, 0],
    ['Gate apple crop light', { what: 'crop', amount: 'light' }, null],
    ['harvested Gate apple 40 lb', { what: 'crop', trees: ['Gate apple'], amount: '40 lb' }, 640 * OZ],
    ['Gate apple picked 40 lb', { what: 'crop', amount: '40 lb' }, 640 * OZ],
    ['crop Gate apple 0', { what: 'crop', amount: 'none' }, 0],
    ['Blueberries 2 oz each Sulphate of ammonia', { what: 'fed', trees: ['Blueberries'], bag: 'Sulphate of ammonia', amount: '2 oz' }, 2 * OZ],
    ['Gate apple 12 oz 5-10-5', { what: 'fed', trees: ['Gate apple'], bag: '5-10-5', amount: '12 oz' }, 12 * OZ],
    ['limed all trees', { what: 'limed', trees: KNOWN.trees.map((t) => t.name), amount: null }, null],
    ['fed Gate apple 44 lb compost', { amount: '44 lb' }, 704 * OZ],
    ['crop Gate apple heavy', { what: 'crop', amount: 'heavy' }, null],
    ['Blueberries gave 12 lb in all', { what: 'crop', amount: '2 lb' }, 32 * OZ],
    ['crop Blueberries 2 lb each', { what: 'crop', amount: '2 lb' }, 32 * OZ],
    ['note Gate apple scab on the leaves', { what: 'note', trees: ['Gate apple'], note: 'scab on the leaves' }, null],
    ['note Gate apple: scab, on 3 leaves', { what: 'note', note: 'scab, on 3 leaves' }, null],
    ['note frost last night', { what: 'note', trees: [], note: 'frost last night' }, null],
    ['fed Gate apple old 1 oz', { trees: ['Gate apple old'] }, OZ],
    ['fed Plum 2 oz bone meal', { trees: ['Plum'], amount: '2 oz' }, 2 * OZ],
    ['fed Plum 2 2 oz bone meal', { trees: ['Plum 2'], amount: '2 oz' }, 2 * OZ],
    ['fed The Don 2 oz bone meal', { trees: ['The Don'] }, 2 * OZ],
    ['fed cre\u0300me pear 2 oz bone meal', { trees: ['Crème pear'] }, 2 * OZ],
  ] as const)('%s', (text, expected, g) => {
    const entry = one(text);
    expect(entry).toMatchObject({ date: '2026-05-20', note: '', ...expected });
    if (g === null) expect(entry.g).toBeNull();
    else expect(entry.g).toBeCloseTo(g, 6);
    // What is answered is what the file will say.
    const { entries } = readDiary(`date,trees,what,bag,amount,note\n${writeEntry(entry)}`, 'd');
    expect(entries).toEqual([{ ...entry, line: 2 }]);
  });

  test.each([['shoots Gate apple 7 in', 0.1778], ['Gate apple shoots 7 in', 0.1778], ['shoots Gate apple 18 cm', 0.18], ['shoots Gate apple 1 ft 2 in', 0.3556], ['shoots Blueberries 7 1/2 in', 0.1905], ['shoots Gate apple none', 0]] as const)('%s', (text, m) => {
    expect(one(text)).toMatchObject({ what: 'shoots', g: null, bag: null });
    expect(one(text).m).toBeCloseTo(m, 10);
  });
});

describe('when', () => {
  test.each([
    ['fed Gate apple 12 oz on 14 April', '2026-04-14'], ['fed Gate apple 12 oz 14 April 2026', '2026-04-14'], ['on 14 April, fed Gate apple 12 oz', '2026-04-14'], ['2026-04-14 fed Gate apple 12 oz', '2026-04-14'],
    ['14.04.2026: fed Gate apple 12 oz', '2026-04-14'], ['April 14 fed Gate apple 12 oz', '2026-04-14'], ['fed Gate apple 12 oz, April 14, 2025', '2025-04-14'], ['fed Gate apple 12 oz on the 14th of April', '2026-04-14'],
    ['yesterday fed Gate apple 12 oz', '2026-05-19'], ['fed Gate apple 12 oz today', '2026-05-20'],
    // A day without a year is the latest one up to today.
    ['fed Gate apple 12 oz on 20 May', '2026-05-20'], ['fed Gate apple 12 oz on 21 May', '2025-05-21'], ['crop Gate apple 40 lb 3 Oct', '2025-10-03'], ['fed Gate apple 12 oz on 29 February', '2024-02-29'],
  ] as const)('%s', (text, date) => {
    const entry = one(text);
    expect([entry.date, entry.amount]).toEqual([date, text.startsWith('crop') ? '40 lb' : '12 oz']);
  });
  test('a note keeps the days that stand in it', () => {
    expect(one('note Gate apple look again on Sunday')).toMatchObject({ date: '2026-05-20', note: 'look again on Sunday' });
    expect(one('note Gate apple no spray until 14 April')).toMatchObject({ date: '2026-05-20', note: 'no spray until 14 April' });
    expect(one('note Gate apple scab on 14 April')).toMatchObject({ date: '2026-04-14', note: 'scab' });
    expect(one('14 April note Gate apple scab')).toMatchObject({ date: '2026-04-14', note: 'scab' });
  });
  test.each([['day 1 done', 1, '2026-05-20'], ['did day 2', 2, '2026-05-20'], ['Day 1 done on 12 April', 1, '2026-04-12'], ['yesterday did day 3', 3, '2026-05-19'], ['day 1 is done 2026-04-12', 1, '2026-04-12']] as const)('%s', (text, day, date) => {
    expect(read(text)).toEqual({ day, date });
  });
  test.each([
    ['day 1 done except Gate apple, Wall plum', ['Gate apple', 'Wall plum']], ['day 1 done without Blueberries', ['Blueberries']], ['did day 1 except for the Gate apple and top strip', ['Gate apple', 'top strip']],
  ] as const)('%s', (text, without) => { expect(read(text)).toEqual({ day: 1, date: '2026-05-20', without }); });
});

describe('asked back, never guessed', () => {
  test.each([
    ['fed Gate aple 12 oz', 'tree-unknown'], ['fed Gate apple and Wal plum 2 oz each', 'tree-unknown'], ['fed Gate apple, Wal plum 2 oz each', 'tree-unknown'], ['fed Nobody 12 oz', 'tree-unknown'], ['fed 12 oz bone meal', 'tree-unknown'],
    ['shoots Gate aple 7 in', 'tree-unknown'], ['Gate aple gave 40 lb', 'tree-unknown'], ['note Gate aple scab', 'tree-unknown'], ['limed top stripp 5 lb', 'tree-unknown'],
    ['fed Gate apple 12 oz sulphate of amonia', 'diary-bag'], ['fed Gate apple 12 oz balansed', 'diary-bag'],
    ['fed Gate apple 12', 'diary-amount'], ['fed Gate apple 12 ozz bone meal', 'diary-amount'], ['fed Gate apple 1,250 g', 'number-two-ways'], ['fed Gate apple 1/0 oz', 'diary-amount'],
    ['shoots Gate apple 7', 'diary-amount'], ['shoots Gate apple', 'diary-sentence'], ['shoots Gate apple 7 oz', 'diary-amount'], ['crop Gate apple', 'diary-sentence'], ['crop Gate apple 40 lb bone meal', 'diary-sentence'], ['crop Gate apple plenty', 'diary-amount'],
    ['fed Gate apple 12 oz on 21 May 2026', 'diary-future'], ['fed Gate apple 12 oz on 2027-01-01', 'diary-future'], ['fed Gate apple 12 oz 4/14/2026', 'diary-date'], ['fed Gate apple 12 oz 3/4/2026', 'diary-date'], ['fed Gate apple 12 oz on 31 April', 'diary-date'], ['fed Gate apple 12 oz on 2026-02-29', 'diary-date'],
    ['fed Gate apple and Wall plum 4 oz', 'diary-each-or-all'], ['fed all trees 4 oz', 'diary-each-or-all'], ['Blueberries gave 12 lb', 'diary-each-or-all'], ['crop lower terrace 90 lb', 'diary-each-or-all'],
    ['fed Blueberries 2 oz 21-0-0', 'diary-each-or-all'], ['limed top strip 5 lb', 'diary-each-or-all'], ['fed Blueberries 2 cups compost', 'diary-each-or-all'],
    ['fed Gate apple -5 g bone meal', 'diary-negative'], ['fed Gate apple −5 g bone meal', 'diary-negative'], ['fed Gate apple bone meal -5 g', 'diary-negative'], ['fed Gate apple 0 g bone meal', 'diary-negative'], ['limed top strip 0 lb', 'diary-negative'],
    ['fed Gate apple 1500 kg 10-10-10', 'diary-too-much'], ['fed Gate apple 45 lb compost', 'diary-too-much'], ['limed Gate apple 61 kg', 'diary-too-much'], ['shoots Gate apple 50 ft', 'diary-too-much'], ['crop Gate apple 5000 lb', 'diary-too-much'], ['limed top strip 500 kg in all', 'diary-too-much'],
    ['fed Gate apple 12 oz last week', 'diary-date'], ['last Sunday fed Gate apple 12 oz', 'diary-date'], ['fed Gate apple 12 oz 3 days ago', 'diary-date'],
    ['Gate apple 40 lb', 'diary-sentence'], ['Gate apple 40 lb fruit', 'diary-sentence'], ['day 1 done except Gate aple', 'tree-unknown'], ['day 1 done except Gate apple in the rain', 'tree-unknown'],
    ['gave Gate apple 12 oz', 'diary-sentence'], ['fde Gate apple 12 oz', 'diary-sentence'], ['Gate apple', 'diary-sentence'], ['', 'diary-sentence'], ['fed', 'diary-sentence'], ['day 1', 'diary-sentence'], ['day one done', 'diary-sentence'], ['note Gate apple', 'diary-sentence'], ['hello there', 'diary-sentence'],
  ] as const)('%s', (text, code) => { expect(codes(text)).toEqual([code]); });

  test('a suggestion where there is one', () => {
    const guess = (text: string) => (read(text) as unknown as { notices: { facts: { guess: string } }[] }).notices[0]!.facts.guess;
    expect(guess('fed Wal plum 12 oz')).toBe('Wall plum');
    expect(guess('fed Gate apple 12 oz bon meal')).toBe('Bone meal');
    expect(guess('limd top strip 5 lb')).toBe('limed');
    expect(guess('fed Gate apple and Bluberries 1 oz each')).toBe('Blueberries');
  });
  test('each or in all: both are worked out', () => {
    // 6 plants: 240 g each are 1440 g; 240 g in all are 40 g each.
    expect((read('fed Blueberries 240 g bone meal') as unknown as { notices: { facts: object }[] }).notices[0]!.facts).toEqual({ read: '240 g', n: 6, trees: 'Blueberries', sum: '1440 g', part: '40 g' });
  });
  test('two mistakes are told at once', () => { expect(codes('fed Gate aple 12 oz on 31 April')).toEqual(['diary-date', 'tree-unknown']); });
});

test('any words: never an exception, and what is taken can be written and read back', () => {
  const words = fc.constantFrom('fed', 'limed', 'shoots', 'crop', 'note', 'gave', 'Gate apple', 'Blueberries', 'top strip', 'and', ',', '12 oz', '7 in', '1/2 lb', '2,5 kg', 'each', 'in all', 'of', 'the', '21-0-0', 'bone meal', 'on', '14 April', '2026-04-14', 'yesterday', 'day 1', 'done', 'none', '=1+1', '"', ';', '💧', '\n', '31 April', 'to', 'all trees');
  fc.assert(fc.property(fc.oneof(fc.array(words, { maxLength: 12 }).map((w) => w.join(' ')), fc.string({ maxLength: 60 })), (text) => {
    const said = read(text);
    if ('notices' in said) expect(said.notices.length).toBeGreaterThan(0);
    if (!('entries' in said)) return;
    for (const entry of said.entries) {
      expect(entry.date <= KNOWN.today).toBe(true);
      const { entries } = readDiary(`date,trees,what,bag,amount,note\n${writeEntry(entry)}`, 'd');
      expect(entries).toEqual([{ ...entry, line: 2 }]);
    }
  }), { numRuns: 3000 });
});
