// What the diary changes in the plan. Amounts: deciding.md's orchard worked by hand; its procedure for growth within the range; its rule of one dose of lime and then a retest.
import { describe, expect, test } from 'vitest';
import type { Answer } from '../medlar.ts';
import { medlar } from '../medlar.ts';

const OZ = 28.349523125;
const orchard = (trees: string, report = 'soil/2025.txt'): string => `where: Ohio, US\nbud-break: 12 April\nfirst-frost: 12 October\nsoil:\n  bank: ${report}\ntrees:\n${trees}store:\n  - Sulphate of ammonia, 21-0-0, 4 lb, $9\n`;
const TWO = '  Gate apple: apple, semi-dwarf, planted 2019, trunk 11 in round, 12 ft across, shoots 6 in 2025, mulch\n  Wall plum: plum, planted 2024, 6 ft across, mulch\n';
const REPORT = 'taken: 3 Nov 2025\npH 6.4\nPhosphorus 164 ppm = very high\nPotassium 180 ppm (120-200)\n';
const HEAD = 'date,trees,what,bag,amount,note\n';

async function plan(diary: string, today = '2026-05-01', trees = TWO, report = REPORT): Promise<Answer> {
  const run = await medlar(['plan', '--json', '--today', today], { 'orchard.yaml': orchard(trees), 'soil/2025.txt': report, 'diary.csv': HEAD + diary });
  expect(run.code).toBe(0);
  return run.json;
}
const tree = (json: Answer, name: string): any => json.result.trees.find((t: { name: string }) => t.name === name);

describe('never a dose twice', () => {
  test('the apple fed as planned gets nothing more', async () => {
    const json = await plan('2026-04-12,Gate apple,fed,Sulphate of ammonia,12 1/2 oz,\n');
    expect(tree(json, 'Gate apple').feeds).toEqual([]);
    expect(tree(json, 'Gate apple').fed).toEqual([{ date: '2026-04-12', bag: 'Sulphate of ammonia', g: expect.closeTo(12.5 * OZ, 6) }]);
    expect(tree(json, 'Gate apple').short.N).toBeLessThan(0.5);
  });
  test('day 1 done: day 2 is left as it was, 2 oz for the plum from 20 May, and still called day 2', async () => {
    const json = await plan('2026-04-12,Gate apple,fed,Sulphate of ammonia,12 1/2 oz,day 1\n2026-04-12,Wall plum,fed,Sulphate of ammonia,2 oz,day 1\n');
    expect(json.result.days).toEqual([{ number: 2, from: '2026-05-20', until: '2026-06-01', phase: 'later', doses: [{ tree: 'Wall plum', count: 1, bag: 'Sulphate of ammonia', g: expect.closeTo(2 * OZ, 6), mL: expect.any(Number) }] }]);
  });
  test('both days done: nothing is left, nothing to buy', async () => {
    const json = await plan('2026-04-12,Gate apple; Wall plum,fed,21-0-0,,day 1\n2026-05-21,Wall plum,fed,Sulphate of ammonia,2 oz,day 2\n', '2026-06-01');
    expect([json.result.days, json.result.buy]).toEqual([[], []]);
  });
  test('another feed than the one planned: the rest of the need', async () => {
    // 5 oz of 21-0-0 hold 29.8 g of the 73.6 g of nitrogen: 43.8 g are left, 7.4 oz.
    const json = await plan('2026-04-12,Gate apple,fed,Sulphate of ammonia,5 oz,\n');
    const given = tree(json, 'Gate apple').feeds.reduce((sum: number, f: { g: number }) => sum + f.g, 0);
    expect(Math.abs(given - (73.6 / 0.21 - 5 * OZ))).toBeLessThan(0.5 * OZ);
    // At least 24 days after the feed, as far apart as two planned doses.
    expect(tree(json, 'Gate apple').feeds[0].until >= '2026-05-06').toBe(true);
  });
  test('a feed of which nobody knows what counts as all of it, and says so', async () => {
    const json = await plan('2026-04-12,Gate apple,fed,something from the shed,a handful,\n');
    expect(tree(json, 'Gate apple').feeds).toEqual([]);
    expect(json.notices.map((n) => n.code)).toContain('fed-unknown');
  });
  test('more than the need is told', async () => {
    const json = await plan('2026-04-12,Gate apple,fed,Sulphate of ammonia,17 oz,\n');
    expect(tree(json, 'Gate apple').feeds).toEqual([]);
    expect(json.notices.map((n) => n.code)).toContain('fed-over');
  });
  test('last year\'s feed takes nothing from this year\'s', async () => {
    const json = await plan('2025-04-12,Gate apple,fed,Sulphate of ammonia,12 1/2 oz,\n', '2026-03-14');
    expect(tree(json, 'Gate apple').feeds).toHaveLength(1);
  });
});

describe('after a first feed', () => {
  test('a day that was missed opens again from today, and keeps its number', async () => {
    // Day 2 of the plum was 20 May to 1 June; its last nitrogen is 20 July.
    const json = await plan('2026-04-12,Gate apple,fed,Sulphate of ammonia,12 1/2 oz,day 1\n2026-04-12,Wall plum,fed,Sulphate of ammonia,2 oz,day 1\n', '2026-06-10');
    expect(json.result.days.map((d: { number: number; from: string; until: string }) => [d.number, d.from, d.until])).toEqual([[2, '2026-06-10', '2026-06-24']]);
  });
  test('of two doses both missed, the second keeps its distance from the first', async () => {
    const json = await plan('2026-04-12,Gate apple,fed,Sulphate of ammonia,12 1/2 oz,\n', '2026-06-10');
    const [first, second] = tree(json, 'Wall plum').feeds;
    expect([first.from, Date.parse(second.from) - Date.parse(first.until) >= 24 * 86_400_000]).toEqual(['2026-06-10', true]);
  });
  test('after the last day for nitrogen nothing opens again this season', async () => {
    const json = await plan('2026-04-12,Gate apple,fed,Sulphate of ammonia,12 1/2 oz,\n', '2026-07-19');
    // The first dose may still go on in the last two days; there is no time left for the second.
    expect(tree(json, 'Wall plum').feeds.map((f: { from: string; until: string }) => [f.from, f.until])).toEqual([['2026-07-19', '2026-07-20']]);
  });
});

describe('last year in this year\'s plan', () => {
  const GROWN = '  Gate apple: apple, semi-dwarf, planted 2019, 12 ft across, shoots 10 in 2025, mulch\n';
  test('growth within the range repeats last year\'s feed', async () => {
    // Iowa: 8-15 in is right for a bearing apple. 6 oz of 21-0-0 are 35.7 g of nitrogen.
    const json = await plan('2025-04-12,Gate apple,fed,Sulphate of ammonia,6 oz,\n', '2026-03-14', GROWN);
    expect(tree(json, 'Gate apple').need.N).toBeCloseTo(6 * OZ * 0.21, 3);
  });
  test('nothing if it was nothing', async () => {
    const json = await plan('2025-04-12,Wall plum,fed,Sulphate of ammonia,2 oz,\n', '2026-03-14', GROWN);
    expect([tree(json, 'Gate apple').verdict, tree(json, 'Gate apple').none, json.questions.map((q) => q.code).includes('fed-last-year')]).toEqual(['none', 'growth-repeat', false]);
  });
  test('without a diary of last year: none, and asked', async () => {
    const json = await plan('', '2026-03-14', GROWN);
    expect([tree(json, 'Gate apple').none, json.questions.map((q) => q.code).includes('fed-last-year')]).toEqual(['growth-within', true]);
  });
  test('shoots in the diary win over an older fact', async () => {
    // 20 in is above Iowa's 15: none.
    const json = await plan('2025-11-20,Gate apple,shoots,,20 in,\n', '2026-03-14');
    expect(tree(json, 'Gate apple').none).toBe('growth-above');
  });
  test('a crop in the diary brings its potash', async () => {
    const weighed = await plan('2025-09-20,Gate apple,crop,,60 lb,\n', '2026-03-14');
    expect(tree(weighed, 'Gate apple').need.K2O).toBeGreaterThan(0);
    expect(tree(await plan('', '2026-03-14'), 'Gate apple').need.K2O).toBe(0);
  });
});

describe('lime waits for a retest', () => {
  const SOUR = (taken: string): string => `taken: ${taken}\npH 5.2\nbuffer pH 6.2 Sikora\n${REPORT.split('\n').slice(2).join('\n')}`;
  const verdict = async (diary: string, taken: string, today = '2026-03-14'): Promise<string> => (await plan(diary, today, TWO, SOUR(taken))).result.ph[0].verdict;
  test('none in the diary: lime', async () => expect(await verdict('', '3 Nov 2025')).toBe('lime'));
  test('limed after the sample: nothing more', async () => {
    const json = await plan('2025-11-20,Gate apple,limed,garden lime,7 lb,\n', '2026-03-14', TWO, SOUR('3 Nov 2025'));
    expect(json.result.ph.map((r: { tree: string; verdict: string; reason: string; g: number }) => [r.tree, r.verdict, r.reason === 'retest', r.g === 0])).toEqual([['Gate apple', 'leave', true, true], ['Wall plum', 'lime', false, false]]);
  });
  test('the zone limed holds for its trees', async () => {
    const json = await plan('2025-11-20,bank,limed,garden lime,7 lb,\n', '2026-03-14', TWO, SOUR('3 Nov 2025'));
    expect(json.result.ph.every((r: { reason: string }) => r.reason === 'retest')).toBe(true);
  });
  test('a sample a year later frees it', async () => expect(await verdict('2024-10-20,Gate apple,limed,garden lime,7 lb,\n', '3 Nov 2025')).toBe('lime'));
  // Twelve months are meant (North Carolina); a fall sample ten days short of them is as good.
  test('a sample ten days short of a year frees it as well', async () => expect(await verdict('2024-10-20,Gate apple,limed,garden lime,7 lb,\n', '10 Oct 2025')).toBe('lime'));
  test('the sheet asks for a sample that the next plan takes', async () => {
    const soil = SOUR('3 Nov 2025');
    const text = async (today: string): Promise<string> => (await medlar(['sheet', '--as', 'text', '--today', today], { 'orchard.yaml': orchard(TWO), 'soil/2025.txt': soil })).stdout;
    // Lime from mid October to December 2026: November 2027 is eleven months on. Lime in March 2026: fall 2027 is the first.
    for (const [today, due] of [['2026-06-01', '2027'], ['2026-02-01', '2027']] as const) expect(/TEST AGAIN {2}fall (\d{4})/.exec(await text(today))?.[1], today).toBe(due);
  });
  test('a sample too soon does not', async () => expect(await verdict('2025-06-20,Gate apple,limed,garden lime,7 lb,\n', '3 Nov 2025')).toBe('leave'));
});

test('a broken line is told and the rest holds', async () => {
  const json = await plan('yesterday,Gate apple,fed,Sulphate of ammonia,12 1/2 oz,\n2026-04-12,Gate apple,fed,Sulphate of ammonia,12 1/2 oz,\n');
  expect(tree(json, 'Gate apple').feeds).toEqual([]);
  expect(json.notices.some((n) => n.file === 'diary.csv' && n.line === 2)).toBe(true);
});
