// Feeds in water. A milligram in a litre is a part in a million; a US gallon is 3.785 L, an imperial one 4.546.
import { describe, expect, test } from 'vitest';
import { medlar } from '../medlar.ts';

const weigh = async (...args: string[]) => (await medlar(['weigh', ...args, '--json'])).json;
const gOf = async (need: string, ...bags: string[]): Promise<number[]> => (await weigh(need, ...bags)).result.bags.map((b: { g: number }) => b.g);
const codes = async (...args: string[]): Promise<string[]> => (await weigh(...args)).notices.map((n: { code: string }) => n.code);

describe('how much makes a strength', () => {
  // A greenhouse bulletin (materials.md 8.2, 22): 200 ppm of N from a feed of 20 % are 13.5 oz in 100 US gallons; exactly 13.35.
  test('the bulletin, to its rounding', async () => {
    const [g] = await gOf('200 ppm N in 100 gal', '20-20-20 water soluble');
    expect(g! / 28.349523125).toBeCloseTo(13.35, 2);
    expect(Math.abs(g! / 28.349523125 - 13.5)).toBeLessThan(0.2);
  });
  // UMass: a gram of 20-20-20 in a litre holds 200 mg of each (arithmetic).
  test.each([
    ['200 ppm N', ['20-20-20 water soluble'], [1]], ['150 mg/L N in 10 L', ['15-0-0 soluble'], [10]], ['100ppm nitrogen in 1 gal', ['20-20-20 soluble'], [0.5 * 3.785411784]],
    // 100 mg K are 120.46 mg K2O (atomic weights), at 46 % K2O.
    ['100 ppm K, 0 N', ['0-0-46 soluble'], [0.12046 / 0.46]],
    // 150 mg of K as 180.7 mg K2O take 410.7 mg of 13-0-44 with 53.4 mg of N; the other 46.6 mg at 15.5 % are 300.7 mg.
    ['100 mg/L N, 150 mg/L K', ['Calcium nitrate 15.5-0-0', 'Potassium nitrate 13-0-44'], [0.3007, 0.4107]],
  ])('%s of %j', async (need, bags, expected) => { (await gOf(need, ...bags)).forEach((g, i) => expect(g).toBeCloseTo(expected[i]!, 3)); });
  test('the gallon is that of the orchard', async () => {
    const run = await medlar(['weigh', '100 ppm N in 1 gal', '20-20-20 soluble', '--json'], { 'orchard.yaml': 'where: England\ntrees:\n  A: apple\n' });
    expect(run.json.result.waterL).toBeCloseTo(4.54609, 5);
  });
});

describe('what does not belong into the can', () => {
  test.each([
    // The notes on mixing and the chemistry of gypsum and calcium phosphate.
    [['100 ppm N, 50 ppm P', 'calcium nitrate', 'MAP'], 'mix-precipitates'], [['100 ppm N, 100 ppm K', 'calcium nitrate', 'sulfate of potash'], 'mix-precipitates'],
    // The page prints 90 g of sulphate of potash a litre at 10 degrees; 60,000 mg K2O take 120 g.
    [['60000 ppm K2O', 'sulfate of potash 0-0-50'], 'solution-limit'],
    [['100 ppm N', '14-14-14 slow release'], 'solution-slow'], [['100 ppm N', 'blood meal'], 'solution-organic'],
  ])('%j: %s', async (args, code) => {
    const answer = await weigh(...args);
    expect(answer.ok).toBe(false);
    expect(answer.notices.map((n: { code: string }) => n.code)).toContain(code);
  });
  test('below the limit it is weighed', async () => { expect((await weigh('40000 ppm K2O', 'sulfate of potash 0-0-50')).ok).toBe(true); });
  test('told: too strong for pots, grains for spreading', async () => {
    expect(await codes('400 ppm N', 'urea')).toEqual(['solution-strong']);
    expect(await codes('200 ppm N', 'urea')).toEqual([]);
    expect(await codes('100 ppm N', '10-10-10, 40 lb')).toEqual(['solution-grains']);
    expect(await codes('100 ppm N', '10-10-10 water soluble, 4 lb')).toEqual([]);
  });
});

test.each([['100 ppm N in a can', 'need-water'], ['100 ppm N in 0 L', 'need-water'], ['100 ppm N, 3 g K', 'need-mixed'], ['ppm N', 'need-wrong'], ['100 ppm', 'need-wrong'], ['N -5 ppm', 'need-negative']])('%s: %s', async (need, code) => {
  expect(await codes(need, 'urea')).toContain(code);
});

test('what is over and short is said', async () => {
  const { stdout } = await medlar(['weigh', '100 ppm N, 60 ppm P2O5', 'urea']);
  expect(stdout).toContain('60 ppm P2O5 short');
});
