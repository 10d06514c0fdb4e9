// How much of each bag meets a need. Sums by hand: weight = need ÷ share; the pound and ounce by definition.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseNeed } from '../../src/bags/need-text.ts';
import { solve } from '../../src/bags/solve.ts';
import { weigh } from '../../src/bags/weigh.ts';
import { both } from '../hostile/hold.ts';
import { medlar } from '../medlar.ts';
import { anyBag, bagOf, brings, costOf, LB, mass, named, NUTRIENTS } from './sums.ts';

const OZ = LB / 16;
const amounts = (goal: Parameters<typeof weigh>[0], labels: readonly string[]): number[] => weigh(goal, labels.map(bagOf), solve).bags.map((b) => b.g);

describe('linear systems', () => {
  test('two and three by hand; none where there is no one answer', () => {
    // x + 2y = 5, 3x + 4y = 11: x = 1, y = 2.
    expect(solve([[1, 2], [3, 4]], [5, 11])!.map((x) => Math.round(x * 1e9) / 1e9)).toEqual([1, 2]);
    expect(solve([[0, 2, 0], [1, 0, 0], [0, 0, 4]], [6, 5, 4])!.map((x) => Math.round(x * 1e9) / 1e9)).toEqual([5, 3, 1]);
    expect(solve([[1, 2], [2, 4]], [1, 2])).toBeNull();
    expect(solve([[1, 1], [1, 1 + 1e-15]], [1, 2])).toBeNull();
    expect(solve([[0, 0], [0, 1]], [1, 2])).toBeNull();
    expect(solve([[1e-6, 0], [0, 1e6]], [1e-6, 1e6])!.map((x) => Math.round(x * 1e9) / 1e9)).toEqual([1, 1]);
  });
});

describe('exact', () => {
  test('one bag, one nutrient: 100 g of N at 20 % are 500 g', () => { expect(amounts({ N: 100 }, ['20-5-5'])[0]).toBeCloseTo(500, 9); });
  test('what is not named is free, what is named 0 is unwanted', () => {
    expect(weigh({ N: 100 }, [bagOf('20-5-5')], solve)).toMatchObject({ over: { N: 0, P2O5: 0, K2O: 0 }, supplied: { P2O5: expect.closeTo(25, 9) } });
    expect(amounts({ N: 100, P2O5: 0 }, ['20-5-5', '25-0-0'])).toEqual([0, expect.closeTo(400, 9)]);
  });
  test('two bags that share a nutrient', () => {
    // 46 g of P2O5 from 100 g of 18-46-0 bring 18 g of N; 82 g more at 41 % are 200 g.
    expect(amounts({ N: 100, P2O5: 46 }, ['18-46-0', '41-0-0']).map((g) => Math.round(g * 1e6) / 1e6)).toEqual([100, 200]);
  });
  test('more bags than needs: the cheapest, then the lightest, then the one named first', () => {
    // A kilogram of N costs $9 ÷ (4 lb × 21 %) against $20 ÷ (10 lb × 46 %): $10.71 and $4.35 a pound.
    expect(amounts({ N: 100 }, ['21-0-0, 4 lb, $9', '46-0-0, 10 lb, $20'])).toEqual([0, expect.closeTo(100 / 0.46, 9)]);
    expect(amounts({ N: 100 }, ['21-0-0', '46-0-0'])).toEqual([0, expect.closeTo(100 / 0.46, 9)]);
    expect(amounts({ N: 100 }, ['21-0-0', '21-0-0'])).toEqual([expect.closeTo(100 / 0.21, 9), 0]);
    // One price is known, the other is not.
    expect(amounts({ N: 100 }, ['46-0-0', '21-0-0, 4 lb, $99'])).toEqual([0, expect.closeTo(100 / 0.21, 9)]);
  });
});

describe('nearest', () => {
  test('one bag, two nutrients: least squares lie between the limiting and the covering amount', () => {
    // 10-10 for 20 and 10 g: (20 + 10) ÷ (2 × 10 %) = 150 g brings 15 and 15.
    const w = weigh({ P2O5: 20, K2O: 10 }, [bagOf('10-10-10')], solve);
    expect(w.bags[0]!.g).toBeCloseTo(150, 9);
    expect(w.short.P2O5).toBeCloseTo(5, 9);
    expect(w.over.K2O).toBeCloseTo(5, 9);
    expect(w.limiting).toEqual({ nutrient: 'K2O', g: expect.closeTo(100, 9) });
    expect(w.covering).toEqual({ nutrient: 'P2O5', g: expect.closeTo(200, 9) });
  });
  test('a bag without what is wanted is left alone', () => {
    const w = weigh({ N: 50 }, [bagOf('0-46-0')], solve);
    expect(w).toMatchObject({ bags: [{ g: 0 }], short: { N: 50, P2O5: 0, K2O: 0 }, limiting: null, covering: null });
  });
  test('what is unwanted weighs more than nearness', () => {
    // 12-8-16 carries P2O5; of 0-0-30, 15 g K2O are 50 g, and all 20 g of N stay short.
    const w = weigh({ N: 20, P2O5: 0, K2O: 15 }, [bagOf('12-8-16'), bagOf('0-0-30')], solve);
    expect(w.bags.map((b) => b.g)).toEqual([0, expect.closeTo(50, 9)]);
    expect(w).toMatchObject({ short: { N: expect.closeTo(20, 9), P2O5: 0, K2O: 0 }, over: { N: 0, P2O5: 0, K2O: 0 } });
    // Nothing else is left: 10-10 for 20 and 0 g is nearest at (20 × 10 %) ÷ (2 × 1 %) = 100 g.
    expect(amounts({ N: 20, P2O5: 0 }, ['10-10-0', '0-0-30'])).toEqual([expect.closeTo(100, 9), 0]);
  });
  test('an unwanted nutrient limits a single bag to nothing', () => {
    expect(weigh({ N: 50, P2O5: 0 }, [bagOf('10-10-10')], solve).limiting).toEqual({ nutrient: 'P2O5', g: 0 });
  });
});

describe('any bags', () => {
  const mix = fc.array(fc.tuple(anyBag, fc.oneof(fc.constant(0), mass)), { minLength: 1, maxLength: 7 });
  test('a need made of a mix of them is met, and never dearer than that mix', () => {
    fc.assert(fc.property(mix, named, (parts, names) => {
      const bags = parts.map(([b]) => b);
      const used = parts.map(([, g]) => g);
      const goal = Object.fromEntries(names.map((n) => [n, brings(bags, used, n)]));
      if (names.every((n) => goal[n] === 0)) return;
      const w = weigh(goal, bags, solve);
      const size = Math.max(...Object.values(goal));
      for (const n of names) expect(Math.abs(w.supplied[n] - goal[n]!)).toBeLessThanOrEqual(1e-6 * size);
      for (const n of NUTRIENTS) expect([w.over[n], w.short[n]]).toEqual([0, 0]);
      for (const b of w.bags) expect(b.g).toBeGreaterThanOrEqual(0);
      expect(costOf(bags, w.bags.map((b) => b.g))).toBeLessThanOrEqual(costOf(bags, used) * (1 + 1e-6));
    }));
  });
  const need = fc.tuple(named, fc.array(fc.oneof(fc.constant(0), mass), { minLength: 3, maxLength: 3 })).filter(([names, g]) => names.some((_, i) => g[i]! > 0)).map(([names, g]) => Object.fromEntries(names.map((n, i) => [n, g[i]!])));
  test('nothing below zero; over and short are what is supplied beside what is wanted', () => {
    fc.assert(fc.property(fc.array(anyBag, { minLength: 1, maxLength: 7 }), need, (bags, goal) => {
      const w = weigh(goal, bags, solve);
      for (const b of w.bags) expect(b.g).toBeGreaterThanOrEqual(0);
      for (const n of NUTRIENTS) {
        expect(w.supplied[n]).toBeCloseTo(brings(bags, w.bags.map((b) => b.g), n), 6);
        expect(Math.min(w.over[n], w.short[n])).toBe(0);
        if (goal[n] === undefined) expect(w.over[n] + w.short[n]).toBe(0);
        else expect(w.over[n] - w.short[n]).toBeCloseTo(w.supplied[n] - goal[n], 3);
      }
    }));
  });
  test('no other amounts come nearer', () => {
    const miss = (goal: Record<string, number>, bags: Parameters<typeof brings>[0], g: readonly number[]): number => Math.hypot(...NUTRIENTS.filter((n) => goal[n] !== undefined).map((n) => brings(bags, g, n) - goal[n]!));
    fc.assert(fc.property(fc.array(anyBag, { minLength: 1, maxLength: 4 }), need, fc.array(fc.array(fc.double({ min: 0, max: 2, noNaN: true }), { minLength: 4, maxLength: 4 }), { minLength: 20, maxLength: 20 }), (bags, goal, trials) => {
      const best = weigh(goal, bags, solve).bags.map((b) => b.g);
      const size = Math.max(...Object.values(goal));
      // Where an unwanted nutrient was kept out, only amounts that keep it out too are held against it.
      const kept = NUTRIENTS.filter((n) => goal[n] === 0 && brings(bags, best, n) === 0);
      const may = bags.map((b) => kept.every((n) => b.grade[n] === 0));
      for (const t of trials) {
        // Far from the answer and close to it.
        for (const other of [bags.map((_, i) => t[i]! * size * 5), best.map((g, i) => Math.max(0, g + (t[i]! - 1) * 0.01 * (g + size))), best.map((g, i) => g * t[i]!)].map((o) => o.map((g, i) => (may[i] ? g : 0)))) {
          expect(miss(goal, bags, best)).toBeLessThanOrEqual(miss(goal, bags, other) + 1e-7 * size);
        }
      }
    }));
  });
  test('what is unwanted stays out as long as the bags without it bring anything wanted', () => {
    fc.assert(fc.property(fc.array(anyBag, { minLength: 1, maxLength: 6 }), need, (bags, goal: Record<string, number>) => {
      const unwanted = NUTRIENTS.filter((n) => goal[n] === 0);
      const clean = bags.some((b) => unwanted.every((n) => b.grade[n] === 0) && NUTRIENTS.some((n) => (goal[n] ?? 0) > 0 && b.grade[n] > 0));
      const w = weigh(goal, bags, solve);
      if (clean) for (const n of unwanted) expect(w.supplied[n]).toBe(0);
    }));
  });
  test('the order of the bags does not change the amounts', () => {
    fc.assert(fc.property(fc.array(anyBag, { minLength: 2, maxLength: 6 }), need, fc.infiniteStream(fc.nat()), (bags, goal, keys) => {
      const turned = bags.map((_, i) => ({ i, key: keys.next().value! })).sort((a, b) => a.key - b.key || a.i - b.i).map((x) => x.i);
      const [plain, other] = [weigh(goal, bags, solve), weigh(goal, turned.map((i) => bags[i]!), solve)];
      turned.forEach((from, to) => expect(Math.abs(other.bags[to]!.g - plain.bags[from]!.g)).toBeLessThanOrEqual(1e-4 * (1 + plain.bags[from]!.g)));
    }));
  });
});

describe('a need as typed', () => {
  const P = 30.974 * 2 / (30.974 * 2 + 15.999 * 5);
  test.each([
    ['0.5 lb N, 0.2 lb P2O5', { N: 0.5 * LB, P2O5: 0.2 * LB }, 'us'], ['12 oz N', { N: 12 * OZ }, 'us'], ['500 g N, 0 P2O5', { N: 500, P2O5: 0 }, 'metric'], ['N 0.5 lb', { N: 0.5 * LB }, 'us'], ['N: 0.5 lb; P2O5: 0', { N: 0.5 * LB, P2O5: 0 }, 'us'],
    ['1 kg nitrogen and 2 kg potash', { N: 1000, K2O: 2000 }, 'metric'], ['0,5 kg N,200 g phosphate', { N: 500, P2O5: 200 }, 'metric'], ['0.2 lb P2O5,0.5 lb N', { P2O5: 0.2 * LB, N: 0.5 * LB }, 'us'], ['1 lb N,', { N: LB }, 'us'], ['1/2 lb N', { N: 0.5 * LB }, 'us'],
    ['1 1/2 oz of n', { N: 1.5 * OZ }, 'us'], ['1½ oz N', { N: 1.5 * OZ }, 'us'], ['100 g P', { P2O5: 100 / P }, 'metric'], ['100 g phosphorus', { P2O5: 100 / P }, 'metric'], ['100 g P₂O₅', { P2O5: 100 }, 'metric'], ['10 g K', { K2O: 10 * (39.098 * 2 + 15.999) / (39.098 * 2) }, 'metric'], ['0 g N, 5g K2O', { N: 0, K2O: 5 }, 'metric'],
  ] as const)('%s', (text, goal, units) => {
    const read = parseNeed(text);
    expect(read.notices).toEqual([]);
    expect(read.units).toBe(units);
    expect(Object.keys(read.goal!).sort()).toEqual(Object.keys(goal).sort());
    for (const [n, g] of Object.entries(goal)) expect(read.goal![n as 'N']).toBeCloseTo(g, 6);
  });
  test.each([
    ['', 'need-empty'], [',', 'need-empty'], ['0 N', 'need-nothing'], ['0 N, 0 P2O5', 'need-nothing'], ['5 N', 'need-wrong'], ['N', 'need-wrong'], ['1 lb', 'need-wrong'], ['1 lb Q', 'need-wrong'], ['5 % N', 'need-wrong'], ['1 lb lime', 'need-wrong'], ['-1 lb N', 'need-negative'], ['−1 lb N', 'need-negative'],
    ['1,000 g N', 'number-two-ways'], ['1,000.5 g N', 'need-wrong'], ['1 lb N, 2 lb nitrogen', 'need-twice'], ['1 lb P, 2 lb P2O5', 'need-twice'], ['99999999 kg N', 'need-absurd'], ['0.0000001 g N', 'need-absurd'], [`${'9'.repeat(400)} g N`, 'need-wrong'], ['NaN g N', 'need-wrong'], ['1/0 lb N', 'need-wrong'],
  ] as const)('%s: %s', (text, code) => {
    const read = parseNeed(text);
    expect(read.goal).toBeNull();
    expect(read.notices.map((n) => n.code)).toContain(code);
  });
  test('every mistake at once', () => { expect(parseNeed('1 lb Q, -3 g N, 5 P2O5').notices.map((n) => n.code)).toEqual(['need-wrong', 'need-negative', 'need-wrong']); });
  test('any text is a need or a reason', () => {
    fc.assert(fc.property(fc.oneof(fc.string({ maxLength: 40 }), fc.array(fc.constantFrom('1', '0.5', ' ', 'lb', 'g', 'N', 'P2O5', ',', 'and', '-', '/', '0'), { maxLength: 12 }).map((a) => a.join(''))), (text) => {
      const { goal, notices } = parseNeed(text);
      expect(goal === null).toBe(notices.length > 0);
      if (goal) for (const g of Object.values(goal)) expect(Number.isFinite(g) && g >= 0).toBe(true);
    }));
  });
});

describe('at the command line', () => {
  test('more than is wanted of what is not: exit 0, told', async () => {
    const { text, json } = await both(['weigh', '1 lb N, 0 P2O5', '10-10-10'], {});
    expect(text.code).toBe(0);
    expect(json.json.result.short.N).toBeGreaterThan(0);
    expect(text.stdout).toMatch(/oz P2O5 over/);
  });
  test('what comes along unnamed is told', async () => {
    // 100 g of N at 20 % are 500 g; 5 % of them is 25 g.
    expect((await medlar(['weigh', '100 g N', '20-5-0'])).stdout).toContain('also brings 25 g P2O5.');
    expect((await medlar(['weigh', '100 g N', '20-0-0'])).stdout).not.toContain('also');
  });
  test('in pounds where pounds were typed, in grams where grams were', async () => {
    expect((await medlar(['weigh', '2 lb N', '20-0-0'])).stdout).toContain('10 lb 20-0-0');
    expect((await medlar(['weigh', '100 g N', '20-0-0'])).stdout).toContain('500 g 20-0-0');
  });
  test('a measure where the material is known', async () => {
    // Sulphate of ammonia weighs up to 8.8 oz a cup: 8.8 oz are 236.588 mL.
    const { json } = await medlar(['weigh', `${8.8 * 0.21} oz N`, '21-0-0', '17-3-3', '--json']);
    expect(json.result.bags[0].mL).toBeCloseTo(236.588, 0);
    expect(json.result.bags[1].mL).toBeNull();
  });
  test('a bag of the folder by its name or its beginning, in the labels of its country', async () => {
    const files = { 'orchard.yaml': 'where: Tasmania, Australia\ntrees:\n  A: apple, planted 2019\nshed:\n  - Balanced, 10-5-10, 20 kg\nstore:\n  - Urea, 46-0-0, 20 kg, $30\n  - Balanced coated, 15-5-10, 5 kg\n' };
    const { json } = await medlar(['weigh', '1 kg N', 'UREA', 'balanced', 'balanced c', '5-8-0', '--json'], files);
    expect(json.result.bags.map((b: { label: string }) => b.label)).toEqual(['Urea', 'Balanced', 'Balanced coated', '5-8-0']);
    // 8 % P is 18.3 % P2O5 (P 30.974 of P2O5 141.943, twice).
    expect(json.result.bags[3].grade.P2O5).toBeCloseTo(18.33, 2);
    expect((await both(['weigh', '1 kg N', 'b'], files)).notices.map((n) => n.code)).toEqual(['bag-two']);
    const unknown = await both(['weigh', '1 kg N', 'Balansed'], files);
    expect(unknown.text.code).toBe(3);
    expect(unknown.text.stderr).toContain('Balanced');
  });
  test('weed killer is told, not refused', async () => {
    const { json, text } = await both(['weigh', '1 lb N', 'Weed and feed 21-0-0'], {});
    expect(json.json.notices.map((n) => [n.code, n.severity])).toEqual([['bag-weed-killer', 'warning']]);
    expect(text.stdout).toContain('weed killer');
  });
  test('prices in two currencies decide nothing, and that is told', async () => {
    const { json } = await both(['weigh', '1 lb N', '21-0-0, 4 lb, $1', '46-0-0, 4 lb, £99'], {});
    expect(json.json.result.bags[0].g).toBe(0);
    expect(json.json.notices.map((n) => n.code)).toEqual(['currencies-mixed']);
  });
  test('from stdin', async () => {
    expect((await medlar(['weigh', '-', '20-0-0', '--json'], {}, '100 g N\n')).json.result.bags[0].g).toBeCloseTo(500, 6);
    expect((await medlar(['weigh', '100 g N', '-', '--json'], {}, '20-0-0\n40-0-0\n')).json.result.bags.map((b: { g: number }) => b.g)).toEqual([0, expect.closeTo(250, 6)]);
  });
  test.each([
    [['weigh'], 2], [['weigh', '1 lb N'], 2], [['weigh', '', '21-0-0'], 3], [['weigh', '0 N', '21-0-0'], 3], [['weigh', '1 lb X', '21-0-0'], 3], [['weigh', '1 lb N', '0-0-0'], 3], [['weigh', '1 lb N', '60-60-60'], 3], [['weigh', '1 lb N', 'nothing'], 3], [['weigh', '1 lb N', ''], 3], [['weigh', '1 lb N', '-'], 2],
    [['weigh', '1 lb N', ...Array.from({ length: 13 }, (_, i) => `${i + 1}-0-0`)], 2], [['weigh', '1 lb N', '21-0-0', '--folder', 'nowhere'], 5],
  ] as const)('%j: exit %i', async (argv, code) => { expect((await both(argv, {})).text.code).toBe(code); });
  test('an orchard with mistakes is told, not passed over', async () => { expect((await both(['weigh', '1 lb N', '21-0-0'], { 'orchard.yaml': 'trees: 3\n' })).text.code).toBe(3); });
  test('twelve bags are weighed', async () => { expect((await both(['weigh', '1 lb N, 1 lb P2O5, 1 lb K2O', ...Array.from({ length: 12 }, (_, i) => `${i + 1}-${(i * 5) % 13}-${(i * 7) % 11}`)], {})).text.code).toBe(0); });
});
