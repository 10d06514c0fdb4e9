// A zone over the years. A lab strays by 0.1 of pH and by a tenth of P and K with one soil (reference methods, memory): the
// bars are that long, and a change counts where they do not meet. Sums of what was given by hand.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { medlar } from '../medlar.ts';

const OZ = 28.349523125;
const report = (taken: string, ph: number, p: string, k: number): string => `taken: ${taken}\nSoil pH ${ph}\nPhosphorus ${p} ppm\nPotassium Mehlich 3 ${k} ppm\n`;
const FILES = {
  'orchard.yaml': 'orchard: Hill House\nwhere: Ohio, US\nsoil:\n  hill:\n    - a.txt\n    - c.txt\n    - b.txt\ntrees:\n  Gate: apple, semi-dwarf, planted 2012, 14 ft across, hill\n  Plums: 2 plum, planted 2019, 9 ft across, hill\nstore:\n  - Sulfate of ammonia, 21-0-0, 4 lb, $9\n',
  'a.txt': report('4 Nov 2019', 5.4, 'Mehlich 3 22', 120), 'b.txt': report('6 Nov 2022', 6, 'Bray 1 24', 300), 'c.txt': report('2 Nov 2025', 6.3, 'Mehlich 3 40', 130),
  'diary.csv': 'date,trees,what,bag,amount,note\n2020-04-10,Gate,limed,Garden lime,20 lb,\n2023-04-10,Gate; Plums,fed,Sulfate of ammonia 21-0-0,8 oz,\n2024-04-10,Plums,fed,something,a handful,\n',
};
const yearsIn = async (files: Readonly<Record<string, string>> = FILES) => (await medlar(['years', '--json'], files)).json.result.zones[0];
type Series = { item: string; trend: string; jump: boolean; points: { taken: string; value: number; low: number; high: number }[]; elsewhere: string[] };
const series = async (item: string, files?: Readonly<Record<string, string>>): Promise<Series> => (await yearsIn(files)).series.find((s: Series) => s.item === item);

describe('tests beside each other', () => {
  test('from the oldest to the newest, whatever their order in the file', async () => {
    expect((await yearsIn()).taken).toEqual(['2019-11-04', '2022-11-06', '2025-11-02']);
    expect((await series('ph')).points.map((p) => [p.value, Math.round(100 * p.low), Math.round(100 * p.high)])).toEqual([[5.4, 530, 550], [6, 590, 610], [6.3, 620, 640]]);
    expect(await series('ph')).toMatchObject({ trend: 'up', jump: false, elsewhere: [] });
  });
  test('only one method in a row; the others are named', async () => {
    const p = await series('phosphorus');
    expect(p.points.map((x) => x.value)).toEqual([22, 40]);
    expect(p.elsewhere).toEqual(['2022-11-06']);
  });
  test('a change within the scatter is none; a doubling speaks of the sampling', async () => {
    // 120 strays to 132, 130 down to 117: they meet.
    expect(await series('potassium')).toMatchObject({ trend: 'same', jump: true });
    // 100 to 110 and 123 to 110.7: they do not.
    expect(await series('potassium', { ...FILES, 'a.txt': report('4 Nov 2019', 5.4, 'Mehlich 3 22', 100), 'b.txt': report('6 Nov 2022', 6, 'Bray 1 24', 110), 'c.txt': report('2 Nov 2025', 6.3, 'Mehlich 3 40', 123) })).toMatchObject({ trend: 'up', jump: false });
    expect(await series('potassium', { ...FILES, 'a.txt': report('4 Nov 2019', 5.4, 'Mehlich 3 22', 100), 'b.txt': report('6 Nov 2022', 6, 'Bray 1 24', 110), 'c.txt': report('2 Nov 2025', 6.3, 'Mehlich 3 40', 122) })).toMatchObject({ trend: 'same' });
  });
  test('the newest leads the plan', async () => {
    const plan = (await medlar(['plan', '--json'], FILES)).json;
    const alone = (await medlar(['plan', '--json'], { ...FILES, 'orchard.yaml': FILES['orchard.yaml'].replace(/hill:\n {4}- a\.txt\n {4}- c\.txt\n {4}- b\.txt/, 'hill: c.txt') })).json;
    expect(plan.result).toEqual(alone.result);
  });
  test('what is unclear in an earlier report is not asked', async () => {
    const files = { ...FILES, 'a.txt': `${FILES['a.txt']}Zink 3\nMagnesium 231\n` };
    expect((await medlar(['plan', '--json'], files)).json.questions).toEqual((await medlar(['plan', '--json'], FILES)).json.questions);
  });
});

describe('between the tests', () => {
  test('what the diary says', async () => {
    const [first, second, third] = (await yearsIn()).between;
    expect(first).toMatchObject({ from: '2019-11-04', until: '2022-11-06', N: 0, lime: expect.closeTo(20 * 16 * OZ, 3), unknown: 0 });
    // Eight ounces for the apple and for each of two plums, 21 % N.
    expect(second).toMatchObject({ N: expect.closeTo(24 * OZ * 0.21, 6), P2O5: 0, lime: 0, unknown: 1 });
    expect(third).toMatchObject({ from: '2025-11-02', until: '2026-03-14', N: 0, unknown: 0 });
  });
});

describe('mistakes', () => {
  test('several tests need their dates', async () => {
    const run = await medlar(['check', '--json'], { ...FILES, 'b.txt': FILES['b.txt'].replace(/^taken.*\n/, '') });
    expect(run.code).toBe(3);
    expect(run.json.notices).toEqual([expect.objectContaining({ code: 'test-undated', file: 'orchard.yaml', line: 7 })]);
  });
  test('one that is still to come is told', async () => {
    const run = await medlar(['check', '--json'], { ...FILES, 'c.txt': FILES['c.txt'].replace('2 Nov 2025', '2 Nov 2027') });
    expect([run.code, run.json.notices.map((n) => [n.code, n.severity])]).toEqual([0, [['test-future', 'warning']]]);
  });
  test('two of one day cannot both lead', async () => {
    const run = await medlar(['check', '--json'], { ...FILES, 'b.txt': FILES['b.txt'].replace('6 Nov 2022', '2 Nov 2025') });
    expect(run.json.notices).toEqual([expect.objectContaining({ code: 'test-same-day', line: 7 })]);
  });
  test('a lone test without a date is shown without one', async () => {
    const files = { ...FILES, 'orchard.yaml': FILES['orchard.yaml'].replace(/hill:\n {4}- a\.txt\n {4}- c\.txt\n {4}- b\.txt/, 'hill: c.txt'), 'c.txt': FILES['c.txt'].replace(/^taken.*\n/, '') };
    for (const form of ['text', 'html']) expect((await medlar(['years', '--as', form], files)).code).toBe(0);
  });
  test('a report that is not there is told at its line', async () => {
    const { 'b.txt': _, ...files } = FILES;
    expect((await medlar(['check', '--json'], files)).json.notices).toEqual([expect.objectContaining({ code: 'file-missing', line: 7 })]);
  });
  test('an empty list is a zone without a report', async () => {
    const run = await medlar(['check', '--json'], { 'orchard.yaml': 'where: Ohio, US\nsoil:\n  hill: []\ntrees:\n  Gate: apple, planted 2012, hill\n' });
    expect(run.json.notices.map((n) => n.code)).toContain('zone-without-report');
  });
});

test('the page asks for nothing, runs nothing and says each line', async () => {
  const name = '<img src=x onerror=alert(1)>';
  let html = '';
  const run = await medlar(['years', '--as', 'html'], { ...FILES, 'orchard.yaml': FILES['orchard.yaml'].replace('Hill House', `"${name}"`) }, '', (folder) => { html = readFileSync(join(folder, 'years.html'), 'utf8'); });
  expect(run.code).toBe(0);
  expect(html).not.toContain('<img');
  expect(html).not.toMatch(/<script|https?:|src=(?!x)/);
  expect(html.match(/<svg/g)).toHaveLength(3);
  expect(html).toContain('It rises.');
});
