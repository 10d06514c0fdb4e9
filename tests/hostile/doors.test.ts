// What people type at the doors of pH, store and diary, and what must come of it. Limits and rules: deciding.md; the lime index is ten times an SMP buffer pH (Tri-State bulletin E-2567).
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { medlar } from '../medlar.ts';

const ORCHARD = 'where: Ohio, US\nbud-break: 12 April\nfirst-frost: 12 October\nsoil:\n  bank: a.txt\ntrees:\n  Apple: apple, semi-dwarf, planted 2018, 12 ft across, shoots 6 in 2025\n  Blueberries: 3 blueberry, planted 2022, 3 ft across\nstore:\n  - Sulphate of ammonia, 21-0-0, 4 lb, $9\n';
const folder = (report: string, more = ''): Record<string, string> => ({ 'orchard.yaml': ORCHARD + more, 'a.txt': report });
const SOUR = 'taken: 3 Nov 2025\npH 5.2\n';

describe('lime index 64 in a buffer field', () => {
  test('by flag: refused, and how to write it', async () => {
    const run = await medlar(['ph', '--now', '5.2', '--buffer', '64', '--method', 'smp']);
    expect([run.code, /6\.4/.test(run.stderr), /lime index/.test(run.stderr)]).toEqual([2, true, true]);
  });
  test('in a report: the same lime as a buffer pH of 6.4', async () => {
    const dose = async (line: string): Promise<unknown> => (await medlar(['ph', '--json'], folder(`${SOUR}${line}\n`))).json.result.ph[0].dugIn;
    const expected = await dose('SMP buffer pH 6.4');
    expect(expected).not.toBeNull();
    expect([await dose('buffer pH 64'), await dose('Lime test index 64'), await dose('lime index: 64')]).toEqual([expected, expected, expected]);
  });
  test('a buffer without a name is asked for, and the careful figure taken', async () => {
    const { json } = await medlar(['plan', '--json'], folder(`${SOUR}buffer pH 6.4\n`));
    expect(json.questions.map((q) => q.code)).toContain('buffer-method');
    expect(json.result.ph[0].reason).toBe('texture');
  });
});

describe('blueberry at pH 8.4', () => {
  test.each([[['ph', '--now', '8.4', '--crop', 'blueberry', '--json'], {}], [['ph', '--json'], folder('pH 8.4\n')]] as const)('%j: cannot, with its numbers, and nothing to spread', async (argv, files) => {
    const { json, code } = await medlar([...argv], { ...files });
    expect(code).toBe(0);
    const row = json.result.ph.at(-1);
    expect([row.verdict, row.gPerM2, row.doses]).toEqual(['cannot', 0, []]);
    // 1 % of lime takes 6,400 lb an acre (717 g/m2), at most 34.2 g/m2 a year: 21 years.
    expect(row.freeLime).toEqual({ percent: 1, years: 21 });
    expect(json.notices.find((n) => n.code === 'ph-too-high')!.text).toMatch(/21 years/);
  });
});

describe('a goal below now', () => {
  test('for lime: refused with a reason', async () => {
    const run = await medlar(['ph', '--now', '6.5', '--goal', '5.5', '--texture', 'loam', '--material', 'Garden lime, CCE 90']);
    expect([run.code, /raises/.test(run.stderr), run.stdout]).toEqual([2, true, '']);
  });
  test('for sulphur above now: refused too', async () => {
    const run = await medlar(['ph', '--now', '5.5', '--goal', '6.5', '--texture', 'loam', '--material', 'Sulphur, 90 %']);
    expect([run.code, /lowers/.test(run.stderr)]).toEqual([2, true]);
  });
});

test('every wrong flag is told at once', async () => {
  const run = await medlar(['ph', '--now', 'sour', '--goal', '99', '--texture', 'mud', '--method', 'magic', '--area', 'big', '--depth', 'deep', '--material', 'hope', '--crop', 'dragon', '--json']);
  expect([run.code, run.json.result]).toEqual([2, null]);
  for (const flag of ['--now', '--goal', '--texture', '--method', '--area', '--depth', '--material', '--crop']) expect(run.json.notices.some((n) => n.text.includes(flag))).toBe(true);
});

describe('numbers of a bag as people type them', () => {
  test.each(['10-10-10', '10 - 10 - 10', '10/10/10', '10:10:10', 'NPK 10-10-10', '10–10–10'])('%s', async (label) => {
    const { json, code } = await medlar(['weigh', '1 lb N', label, '--json']);
    expect([code, json.result.bags[0].grade]).toEqual([0, { N: 10, P2O5: 10, K2O: 10 }]);
  });
  test('no weight: planned, and no number of bags told', async () => {
    const { json } = await medlar(['shop', '--need', '1 lb N', '21-0-0, $9', '--json']);
    expect([json.result.bags[0].bags, json.result.bags[0].leftG]).toEqual([null, null]);
  });
  test.each([['$1,299.00', 1299], ['12,50 €', 12.5], ['€12.50', 12.5], ['£7.20', 7.2]] as const)('price %s', async (price, amount) => {
    const { json, code } = await medlar(['shop', '--need', '1 lb N', `Feed, 21-0-0, 10 lb, ${price}`, '--json']);
    expect([code, json.result.bags[0].cost]).toEqual([0, amount]);
  });
});

test('a diary with a broken line: named, kept byte for byte, and the rest counts', async () => {
  const text = 'date,trees,what,bag,amount,note\n2026-04-12,Apple,fed,Sulphate of ammonia,12 1/2 oz,\n"2026-04-13,Apple,fed\n2026-04-14,Blueberries,note,,,mulched\n';
  let kept = '';
  const run = await medlar(['diary', 'note Apple buds swell', '--today', '2026-04-20', '--json'], { ...folder('pH 6.4\n'), 'diary.csv': text }, '', (at) => { kept = readFileSync(`${at}/diary.csv`, 'utf8'); });
  expect(run.code).toBe(0);
  expect(kept.startsWith(text)).toBe(true);
  expect(run.json.result.entries.map((e: { what: string }) => e.what)).toEqual(['fed', 'note', 'note']);
  const plan = await medlar(['plan', '--json', '--today', '2026-05-01'], { ...folder('pH 6.4\nPhosphorus 60 ppm = high\nPotassium 200 ppm = high\n'), 'diary.csv': text });
  expect(plan.json.notices.some((n) => n.file === 'diary.csv' && n.line === 3)).toBe(true);
  expect(plan.json.result.trees[0].feeds).toEqual([]);
});

test.each([['pH (SMP) 6.4', 'smp'], ['SMP buffer pH 6.4', 'smp'], ['Sikora Buffer pH: 6.4', 'sikora'], ['Mehlich Buffer pH 6.4', 'mehlich-buffer'], ['Buffer pH (Woodruff) 6.4', 'woodruff']])('%s is a buffer pH, never the soil\'s', async (line, method) => {
  const { json } = await medlar(['read', '-', '--json'], {}, `pH 5.2\n${line}\n`);
  expect(json.result.samples[0].readings.map((r: { item: string; value: number; method: string | null }) => [r.item, r.value, r.method])).toEqual([['ph', 5.2, null], ['buffer-ph', 6.4, method]]);
});
