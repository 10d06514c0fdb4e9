// What every room stands on, asked directly: near words by edits counted by hand, notices said together, places counted in signs, what decided a figure.
import { describe, expect, test } from 'vitest';
import type { Cite, Figure, Mark } from '../../src/reason/figure.ts';
import { figure, isWeak, MARKS, told } from '../../src/reason/figure.ts';
import { notice, placeIn, together } from '../../src/reason/notice.ts';
import { suggest } from '../../src/reason/suggest.ts';

describe('near words', () => {
  test.each<[string, string[], string[]]>([
    ['pear', ['pear'], ['pear']],
    // One sign changed, put in, left out, two swapped: one edit each.
    ['pear', ['peas'], ['peas']], ['pear', ['peaar'], ['peaar']], ['pear', ['per'], ['per']], ['pear', ['pera'], ['pera']], ['pear', ['epar'], ['epar']],
    // Ties, all of one edit, sorted; what takes more is not named beside what takes fewer, whichever comes first.
    ['pear', ['peas', 'bear', 'pea'], ['bear', 'pea', 'peas']], ['pear', ['boar', 'bear'], ['bear']], ['pear', ['bear', 'boar'], ['bear']],
    // A single letter names nothing and is not named: half of "ab" would be alike.
    ['a', ['ab'], []], ['ab', ['a'], []], ['ab', ['ac'], ['ac']], ['ab', ['ba'], ['ba']], ['ab', ['cd'], []],
    // Two of five alike is 0.4 and too few, three of six half and enough; three edits at most.
    ['abcde', ['abxyz'], []], ['abcdef', ['abcxyz'], ['abcxyz']], ['abcdefgh', ['abcdwxyz'], []],
    // Three signs more, or fewer, are three edits; four too many.
    ['abcdefgh', ['abcdefghijk'], ['abcdefghijk']], ['abcdefgh', ['abcdefghijkl'], []], ['abcdefghijk', ['abcdefgh'], ['abcdefgh']], ['abcdefghijkl', ['abcdefgh'], []],
    // Of words of unlike length the longer counts: six of nine are alike, three of seven are (0.43), two of five are not.
    ['abcdef', ['abcdefxyz'], ['abcdefxyz']], ['abcd', ['abcdxyz'], ['abcdxyz']], ['ab', ['abxyz'], []], ['abxyz', ['ab'], []],
    // Letters large or small are the same; the known word is given as it stands.
    ['PEAR', ['pear'], ['pear']], ['pear', ['PEAR'], ['PEAR']],
    ['pear', [], []],
  ])('%s among %j: %j', (word, known, wanted) => { expect(suggest(word, known)).toEqual(wanted); });
  test('at most two edits where that is asked', () => {
    expect([suggest('abcdefgh', ['abcdefxy'], 2), suggest('abcdefgh', ['abcdewxy'], 2), suggest('abcdefgh', ['abcdewxy'], 3)]).toEqual([['abcdefxy'], [], ['abcdewxy']]);
    expect([suggest('abcdefgh', ['abcdefghij'], 2), suggest('abcdefgh', ['abcdefghijk'], 2)]).toEqual([['abcdefghij'], []]);
  });
  test('a swapped pair is not edited again: CA to ABC takes three, the textbook case of optimal string alignment', () => {
    expect([suggest('wwwwwca', ['wwwwwabc'], 2), suggest('wwwwwca', ['wwwwwabc'], 3)]).toEqual([[], ['wwwwwabc']]);
    // Two pairs are two edits; a pair whose signs stand apart is two.
    expect([suggest('badcefgh', ['abcdefgh'], 2), suggest('cbadefgh', ['abcdefgh'], 2)]).toEqual([['abcdefgh'], ['abcdefgh']]);
    expect(suggest('badcefgh', ['abcdefgh', 'abdcefgh'])).toEqual(['abdcefgh']);
  });
  test('sixty signs are a word, more are not', () => {
    const long = 'a'.repeat(60);
    expect([suggest(long, [long]), suggest(`${long}a`, [`${long}a`])]).toEqual([[long], []]);
  });
});

describe('notices', () => {
  const place = placeIn('orchard.yaml', 3, 'A: aple', 3, 7);
  test('with a place and without', () => {
    expect(notice('value-low', 'note')).toEqual({ code: 'value-low', severity: 'note', facts: {} });
    expect(notice('value-low', 'note', { n: 1 }, place)).toEqual({ code: 'value-low', severity: 'note', facts: { n: 1 }, place });
    expect('place' in notice('value-low', 'note', { n: 1 })).toBe(false);
  });
  test('a place is told in signs: an emoji, two units of JavaScript, is one', () => {
    expect(place).toEqual({ file: 'orchard.yaml', line: 3, column: 4, length: 4, source: 'A: aple' });
    // 🍎 at 0 and 1, a space, then "pH" at 3 and 4: the third sign, two long.
    expect(placeIn('r', 1, '🍎 pH', 3, 5)).toEqual({ file: 'r', line: 1, column: 3, length: 2, source: '🍎 pH' });
    expect([placeIn('r', 1, '🍎 pH', 0, 2).length, placeIn('r', 1, '🍎 pH', 0, 2).column]).toEqual([1, 1]);
    // An empty stretch still shows one sign.
    expect(placeIn('r', 1, 'pH', 2, 2)).toMatchObject({ column: 3, length: 1 });
  });
  const of = (code: string, facts: Record<string, string | number>): { code: string; facts: Record<string, string | number> } => ({ code, facts });
  const said = (...all: { code: string; facts: Record<string, string | number> }[]): string[] => together(all).map((n) => `${n.code} ${JSON.stringify(n.facts)}`);
  test('trees of the same sentence are named in one, where the first stood', () => {
    expect(said(of('a', { tree: 'X', n: 1 }), of('b', { tree: 'X' }), of('a', { tree: 'Y', n: 1 }), of('a', { tree: 'Z', n: 1 }))).toEqual(['a {"tree":"X, Y, Z","n":1}', 'b {"tree":"X"}']);
  });
  test('other facts, another sentence: apart; another crop: together', () => {
    expect(said(of('a', { tree: 'X', n: 1 }), of('a', { tree: 'Y', n: 2 }))).toEqual(['a {"tree":"X","n":1}', 'a {"tree":"Y","n":2}']);
    expect(said(of('a', { tree: 'X' }), of('b', { tree: 'Y' }))).toEqual(['a {"tree":"X"}', 'b {"tree":"Y"}']);
    expect(said(of('a', { tree: 'X', crop: 'apple' }), of('a', { tree: 'Y', crop: 'pear' }))).toEqual(['a {"tree":"X, Y","crop":"apple"}']);
  });
  test('what names no tree stays as it is, each by itself', () => {
    expect(said(of('a', { n: 1 }), of('a', { n: 1 }), of('a', { tree: 'X', n: 1 }), of('a', { n: 1 }))).toEqual(['a {"n":1}', 'a {"n":1}', 'a {"tree":"X","n":1}', 'a {"n":1}']);
  });
});

describe('what decided a figure', () => {
  const by = (mark: Mark, value = 1, from: Figure[] = [], step: Figure['step'] = 'dose'): Figure => figure(value, 'g', 'N', step, { source: 'made', at: 'made', mark } satisfies Cite, from);
  test('memory and judgement are weak, at any depth', () => {
    expect(MARKS.filter((m) => isWeak(by(m)))).toEqual(['memory', 'judgement']);
    expect([by('read', 1, [by('memory')]), by('read', 1, [by('read', 1, [by('read'), by('judgement')])]), by('read', 1, [by('derived', 1, [by('practice')])])].map(isWeak)).toEqual([true, true, false]);
    const shared = by('judgement');
    expect(isWeak(by('read', 1, [shared, shared]))).toBe(true);
  });
  test('of several candidates only the smallest, which was taken', () => {
    const weak = by('memory', 2);
    expect([isWeak(by('read', 1, [by('read', 1), weak], 'smallest')), isWeak(by('read', 2, [by('read', 3), weak], 'smallest')), isWeak(by('read', 1, [by('read', 1), weak]))]).toEqual([false, true, true]);
  });
  test('no number, no figure', () => {
    for (const x of [NaN, Infinity, -Infinity]) expect(() => by('read', x)).toThrow(new RangeError(`dose gave ${x} g of N`));
    expect(told(3, 'm', 'growth', 'A')).toEqual({ value: 3, unit: 'm', of: 'growth', step: 'told', from: [], cite: { source: 'grower', at: 'A', mark: 'read' } });
  });
});
