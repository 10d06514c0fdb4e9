// The grade of a mix is the mean of the grades, weighted by parts (definition); a balanced mix has as much of each nutrient.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { balance, blend } from '../../src/bags/blend.ts';
import { solve } from '../../src/bags/solve.ts';
import type { Bag } from '../../src/orchard/bag.ts';
import { both } from '../hostile/hold.ts';
import { medlar } from '../medlar.ts';
import { anyBag, bagOf, NUTRIENTS } from './sums.ts';

const grade = async (...argv: string[]): Promise<number[]> => Object.values((await medlar(['blend', ...argv, '--json'])).json.result.grade);
const close = (...g: number[]): unknown[] => g.map((x) => expect.closeTo(x, 9));

describe('a mix', () => {
  test('equal parts, told parts, one bag', async () => {
    expect(await grade('46-0-0', '0-46-0', '0-0-60')).toEqual(close(46 / 3, 46 / 3, 20));
    // (2 × 46 + 0) ÷ 3 and 60 ÷ 3.
    expect(await grade('2x46-0-0', '0-0-60')).toEqual(close(92 / 3, 0, 20));
    for (const twice of [['2 x 46-0-0', '0-0-60'], ['2', 'x', '46-0-0', '0-0-60'], ['2x', '46-0-0', '0-0-60'], ['2×46-0-0', '0-0-60'], ['1 x 46-0-0', '0.5x0-0-60'], ['1x46-0-0', '1/2 x 0-0-60'], ['1x46-0-0', '0,5x0-0-60'], ['46-0-0', '46-0-0', '0-0-60']]) expect(await grade(...twice), twice.join(' ')).toEqual(close(92 / 3, 0, 20));
    expect(await grade('10-5-10')).toEqual(close(10, 5, 10));
  });
  test('shares in the order given', async () => {
    const { json } = await medlar(['blend', '3xUrea, 46-0-0', '10-10-10, 40 lb, $20', '--json']);
    expect(json.result.parts).toEqual([{ label: 'Urea', share: 0.75 }, { label: '10-10-10', share: 0.25 }]);
  });
  const mix = fc.array(fc.record({ bag: anyBag, parts: fc.double({ min: 0.01, max: 100, noNaN: true }) }), { minLength: 1, maxLength: 8 });
  test('any parts: between the least and the greatest of them, in any order', () => {
    fc.assert(fc.property(mix, (parts) => {
      const made = blend(parts);
      const turned = blend([...parts].reverse());
      expect(made.parts.reduce((sum, p) => sum + p.share, 0)).toBeCloseTo(1, 9);
      for (const n of NUTRIENTS) {
        const all = parts.map((p) => 100 * p.bag.grade[n]);
        expect(made.grade[n]).toBeGreaterThanOrEqual(Math.min(...all) - 1e-9);
        expect(made.grade[n]).toBeLessThanOrEqual(Math.max(...all) + 1e-9);
        expect(turned.grade[n]).toBeCloseTo(made.grade[n], 9);
      }
    }));
  });
});

describe('balanced', () => {
  const made = (...labels: string[]): ReturnType<typeof balance> => balance(labels.map(bagOf), solve);
  test('three straights: parts as one over their grades', () => {
    // T ÷ the sum of weights, each weight T ÷ its grade.
    const g = 1 / (1 / 46 + 1 / 46 + 1 / 60);
    expect(made('46-0-0', '0-46-0', '0-0-60')).toMatchObject({ grade: { N: expect.closeTo(g, 9), P2O5: expect.closeTo(g, 9), K2O: expect.closeTo(g, 9) } });
  });
  test('of several the richest', () => {
    expect(made('10-10-10', '20-20-20')).toMatchObject({ grade: { N: expect.closeTo(20, 9) }, parts: [{ share: 0 }, { share: expect.closeTo(1, 9) }] });
    // The price decides nothing here.
    expect(made('20-20-20, 4 lb, $99', '10-10-10, 40 lb, $1')).toMatchObject({ parts: [{ share: expect.closeTo(1, 9) }, { share: 0 }] });
  });
  test('a bag that is balanced by itself; of two alike the first', () => {
    expect(made('10-10-10')).toMatchObject({ grade: { N: expect.closeTo(10, 9) }, parts: [{ share: 1 }] });
    expect(made('10-10-10', '10-10-10')).toMatchObject({ parts: [{ share: 1 }, { share: 0 }] });
  });
  test.each([
    [['46-0-0'], 'missing', 'P2O5'], [['46-0-0', '0-46-0'], 'missing', 'K2O'], [['0-46-0', '0-0-60'], 'missing', 'N'],
    // N is at least twice P2O5 and K2O in both, so in every mix of them.
    [['46-0-0', '10-5-5'], 'over', 'N'], [['10-5-5'], 'over', 'N'], [['5-10-10', '0-46-0', '0-0-60'], 'under', 'N'],
  ] as const)('%j: %s %s', (labels, unbalanced, nutrient) => { expect(made(...labels)).toEqual({ unbalanced, nutrient }); });
  test('a mix is balanced, or no random mix is', () => {
    fc.assert(fc.property(fc.array(anyBag, { minLength: 1, maxLength: 6 }), fc.array(fc.array(fc.integer({ min: 0, max: 1000 }), { minLength: 6, maxLength: 6 }), { minLength: 20, maxLength: 20 }), (bags: Bag[], trials) => {
      const got = balance(bags, solve);
      if ('grade' in got) {
        expect(got.parts.every((p) => p.share >= 0)).toBe(true);
        expect(got.parts.reduce((sum, p) => sum + p.share, 0)).toBeCloseTo(1, 9);
        expect(Math.max(...Object.values(got.grade)) - Math.min(...Object.values(got.grade))).toBeLessThanOrEqual(1e-9 * 100);
        return;
      }
      for (const t of trials) {
        const mix = NUTRIENTS.map((n) => bags.reduce((sum, b, i) => sum + t[i]! * b.grade[n], 0));
        const most = Math.max(...mix);
        if (most > 0) expect(Math.min(...mix) / most).toBeLessThan(1 - 1e-9);
      }
    }));
  });
  test('a balanced mix is found wherever one was hidden, and is no poorer', () => {
    // A bag and its counterpart, so that so much of both is balanced.
    fc.assert(fc.property(anyBag, fc.array(anyBag, { maxLength: 4 }), fc.nat(4), (bag, others, at) => {
      const most = Math.max(...Object.values(bag.grade));
      const counter: Bag = { ...bag, grade: { N: most - bag.grade.N, P2O5: most - bag.grade.P2O5, K2O: most - bag.grade.K2O } };
      const bags = [...others.slice(0, at), bag, ...others.slice(at), counter];
      const got = balance(bags, solve);
      expect('grade' in got && got.grade.N).toBeGreaterThanOrEqual(50 * most * (1 - 1e-6));
    }));
  });
});

describe('at the command line', () => {
  test('impossible is 4, with the nutrient', async () => {
    for (const [argv, nutrient] of [[['46-0-0'], 'P2O5'], [['46-0-0', '0-46-0'], 'K2O'], [['10-5-5'], 'N']] as const) {
      const { text, json } = await both(['blend', '--balanced', ...argv], {});
      expect(text.code).toBe(4);
      expect(json.json.result).toBeNull();
      expect(text.stderr).toContain(nutrient);
    }
  });
  test.each([
    [['blend'], 2], [['blend', '0x46-0-0'], 3], [['blend', '0x46-0-0', '1x0-0-60'], 3], [['blend', '-1x46-0-0'], 2], [['blend', '1,000x46-0-0'], 3], [['blend', '2x'], 3], [['blend', '2'], 3], [['blend', '2x0-0-0'], 3], [['blend', '9999999x46-0-0'], 3], [['blend', '50-50-50'], 3],
    [['blend', '--balanced', '2x46-0-0', '0-46-0'], 2], [['blend', '-'], 2], [['blend', '--balanced', ...Array.from({ length: 13 }, () => '10-10-10')], 2], [['blend', 'Weed and feed 21-0-0', '10-10-10'], 0], [['blend', ...Array.from({ length: 40 }, () => '10-10-10')], 0],
  ] as const)('%j: exit %i', async (argv, code) => { expect((await both(argv, {})).text.code).toBe(code); });
});

// IPNI and the notes on mixing: urea and superphosphate must never meet, nor urea and calcium ammonium nitrate.
describe('pairs that must never meet', () => {
  const made = async (...args: string[]) => (await medlar(['blend', ...args, '--json'])).json;
  test('another bag takes the place of one', async () => {
    const { result } = await made('46-0-0 urea', '21-0-0', '0-46-0', '0-0-60', '--balanced');
    const parts = result.parts.filter((p: { share: number }) => p.share > 0).map((p: { label: string }) => p.label);
    expect(parts).not.toContain('urea');
    // By hand: a gram of each takes 1/0.21 + 1/0.46 + 1/0.6 = 8.6025 g: 11.62 % of each.
    expect(result.grade.N).toBeCloseTo(100 / (1 / 0.21 + 1 / 0.46 + 1 / 0.6), 6);
  });
  test('a batch is refused where every mix needs both; parts are told, with the warning, since each can be spread by itself', async () => {
    const batch = await made('46-0-0 urea', '0-46-0', '--to', '10-10-0');
    expect(batch).toMatchObject({ ok: false, result: null });
    expect(batch.notices[0]?.code).toBe('mix-apart');
    const parts = await made('46-0-0 urea', '0-46-0', '0-0-50', '--balanced');
    expect(parts.result.parts).toHaveLength(3);
    expect(parts.notices.map((n) => [n.code, n.severity])).toContainEqual(['mix-slush', 'warning']);
  });
});
