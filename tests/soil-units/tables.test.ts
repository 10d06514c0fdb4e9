// Tables as labs lay them out (practice): every value under its head, in its unit, by its method, of its sample, at its cell; what has no known head is told.
import { describe, expect, test } from 'vitest';
import { readReport } from '../../src/soil/read.ts';
import type { Reading } from '../../src/soil/reading.ts';

const P = 'phosphorus';
const K = 'potassium';
type Row = readonly [sample: string, ...readings: readonly (readonly [item: string, value: number | null, unit: string | null, ...rest: readonly unknown[]])[]];
const told = (r: Reading): readonly [string, number | null, string | null, ...unknown[]] => [r.item, r.value, r.unit, ...[r.method, r.form, r.lab.rating, r.lab.range, r.index].filter((x) => x !== null && x !== undefined)];
const read = (text: string): readonly Row[] => readReport(text, 'r.txt').samples.map((s) => [s.name, ...s.readings.map(told)]);
/** The same table parted by bars, tabs, semicolons, commas and wide gaps. */
const parted = (rows: readonly (readonly string[])[]): readonly (readonly [string, string])[] => [
  ['bars', rows.map((r) => r.join(' | ')).join('\n')], ['Markdown', rows.map((r) => `| ${r.join(' | ')} |`).flatMap((r, i) => (i === 0 ? [r, `|${'---|'.repeat(rows[0]!.length)}`] : [r])).join('\n')],
  ['tabs', rows.map((r) => r.join('\t')).join('\n')], ['semicolons', rows.map((r) => r.join(';')).join('\n')], ['commas', rows.map((r) => r.join(',')).join('\n')],
  ['wide gaps', rows.map((r) => r.map((c) => c.padEnd(18)).join('  ').trimEnd()).join('\n')],
];

describe('items down the page, with unit, method and class', () => {
  const rows = [['Test', 'Result', 'Unit', 'Method', 'Rating'], ['pH', '6.4', '', '', ''], ['Phosphorus', '42', 'ppm', 'Mehlich 3', 'high'], ['Potassium', '180', 'ppm', 'Mehlich 3', 'low']];
  test.each(parted(rows))('%s', (_, text) => { expect(read(`${text}\n`)).toEqual([['sample 1', ['ph', 6.4, 'pH'], [P, 42, 'ppm', 'mehlich-3', 'high'], [K, 180, 'ppm', 'mehlich-3', 'low']]]); });
  test('each at its cell', () => {
    const places = readReport('Test | Result | Unit\npH | 6.4 |\nPhosphorus | 42 | ppm\n', 'r.txt').samples[0]!.readings.map((r) => [r.place.line, r.place.column, r.place.length]);
    expect(places).toEqual([[2, 6, 3], [3, 14, 2]]);
  });
});

describe('ranges and limits in columns of their own', () => {
  test.each<[string, readonly (readonly string[])[], readonly unknown[]]>([
    ['a range', [['Nutrient', 'Result', 'Units', 'Optimum range'], ['Phosphorus', '42', 'ppm', '30-50'], ['Potassium', '180', 'ppm', '120-200']], [[P, 42, 'ppm', [30, 50]], [K, 180, 'ppm', [120, 200]]]],
    ['its two ends', [['Nutrient', 'Result', 'Units', 'Low', 'High'], ['Phosphorus', '42', 'ppm', '30', '50'], ['Potassium', '180', 'ppm', '120', '200']], [[P, 42, 'ppm', [30, 50]], [K, 180, 'ppm', [120, 200]]]],
    ['a unit in the head', [['Nutrient', 'Result (ppm)', 'Rating'], ['Phosphorus', '42', 'high'], ['Potassium', '180', 'low']], [[P, 42, 'ppm', 'high'], [K, 180, 'ppm', 'low']]],
    ['an index beside the value', [['Nutrient', 'Result', 'Unit', 'Index'], ['Phosphorus', '18', 'mg/l', '2'], ['Potassium', '150', 'mg/l', '1']], [[P, 18, 'mg/L', 2], [K, 150, 'mg/L', 1]]],
    ['result and level', [['Nutrient', 'Result', 'Level'], ['Phosphorus', '42 ppm', 'High'], ['Potassium', '180 ppm', 'Low']], [[P, 42, 'ppm', 'high'], [K, 180, 'ppm', 'low']]],
  ])('%s', (_, rows, readings) => {
    for (const [by, text] of parted(rows)) expect([by, read(`${text}\n`)]).toEqual([by, [['sample 1', ...readings]]]);
  });
});

describe('a mark under its word', () => {
  test('a cross in one of several columns', () => {
    expect(read('Nutrient | Result | Low | Medium | High\nPhosphorus | 42 ppm | | | x\nPotassium | 180 ppm | x | |\n')).toEqual([['sample 1', [P, 42, 'ppm', 'high'], [K, 180, 'ppm', 'low']]]);
  });
  test('a bar that ends under it', () => {
    expect(read('                        Low       Medium    High\nPhosphorus 42 ppm       XXXXXXXXXXXXXXXXXXXXXXX\nPotassium 90 ppm        XXXX\n')).toEqual([['sample 1', [P, 42, 'ppm', 'high'], [K, 90, 'ppm', 'low']]]);
  });
});

describe('samples', () => {
  const two = [['Front', [P, 42, 'ppm'], [K, 180, 'ppm']], ['Back', [P, 12, 'ppm'], [K, 90, 'ppm']]];
  test.each(parted([['Sample', 'P ppm', 'K ppm'], ['Front', '42', '180'], ['Back', '12', '90']]))('a row each, %s', (_, text) => { expect(read(`${text}\n`)).toEqual(two); });
  test.each(parted([['Nutrient', 'Front', 'Back'], ['P ppm', '42', '12'], ['K ppm', '180', '90']]).filter(([by]) => by !== 'wide gaps'))('a column each, %s', (_, text) => { expect(read(`${text}\n`)).toEqual(two); });
  test.each(parted([['Sample', 'Front', 'Back'], ['P ppm', '42', '12'], ['K ppm', '180', '90']]))('a column each under the word for samples, %s', (_, text) => { expect(read(`${text}\n`)).toEqual(two); });
  test('in French, in wide gaps; what names no item below its heads is no such table', () => {
    expect(read('Échantillon           Verger      Petits fruits\npH                    6,3         5,9\nP (ppm)               96          212\n')).toEqual([['Verger', ['ph', 6.3, 'pH'], [P, 96, 'ppm']], ['Petits fruits', ['ph', 5.9, 'pH'], [P, 212, 'ppm']]]);
    expect(read('Sample   Depth    Date\nFront    6 in     12 May\nBack     6 in     12 May\npH 6.4\n')).toEqual([['sample 1', ['ph', 6.4, 'pH']]]);
  });
  test('by number', () => { expect(read('Sample | P ppm | K ppm\n1 | 42 | 180\n2 | 12 | 90\n').map((s) => s[0])).toEqual(['sample 1', 'sample 2']); });
  test('a row of units below the heads', () => {
    expect(read('Sample | P | K\n | ppm | ppm\nFront | 42 | 180\nBack | 12 | 90\n')).toEqual(two);
    expect(read('Sample | P | K\n | ppm | meq/100g\nFront | 42 | 0.5\n')).toEqual([['Front', [P, 42, 'ppm'], [K, 0.5, 'meq/100g']]]);
    expect(read('| Sample | P | K |\n|---|---|---|\n| | ppm | meq/100g |\n| Front | 42 | 0.5 |\n')).toEqual([['Front', [P, 42, 'ppm'], [K, 0.5, 'meq/100g']]]);
    expect(read('Sample    P       K\n          ppm     ppm\nFront     42      180\nBack      12      90\n')).toEqual(two);
  });
  test('a unit over several columns', () => {
    expect(read('Sample    P        Ca       Mg\n          mg/L     ---- mmolc/dm3 ----\nFront     20       30       10\nBack      25       40       12\n')).toEqual([['Front', [P, 20, 'mg/L'], ['calcium', 30, 'mmolc/dm3'], ['magnesium', 10, 'mmolc/dm3']], ['Back', [P, 25, 'mg/L'], ['calcium', 40, 'mmolc/dm3'], ['magnesium', 12, 'mmolc/dm3']]]);
  });
  test('an empty cell holds nothing; nor does a dash, or "n/a"', () => {
    expect(read('Sample | P ppm | K ppm | Zn ppm\nFront | 42 | | 2\nBack | - | 90 | n/a\n')).toEqual([['Front', [P, 42, 'ppm'], ['zinc', 2, 'ppm']], ['Back', [K, 90, 'ppm']]]);
  });
  test('a lone row is of the sample it names', () => { expect(read('Sample | P ppm | K ppm\nFront | 42 | 180\n')).toEqual([two[0]]); });
});

describe('what is no table', () => {
  test('a line of values heads none', () => { expect(read('P 42 ppm, K 180 ppm\nCa 900 ppm, Mg 90 ppm\n')).toEqual([['sample 1', [P, 42, 'ppm'], [K, 180, 'ppm'], ['calcium', 900, 'ppm'], ['magnesium', 90, 'ppm']]]); });
  test('a table ends where a line is none of its rows', () => {
    expect(read('Sample | P ppm | K ppm\nFront | 42 | 180\nThank you for your custom\nZinc 2.1 ppm\n')).toEqual([['Front', [P, 42, 'ppm'], [K, 180, 'ppm'], ['zinc', 2.1, 'ppm']]]);
    expect(read('Test    Result    Unit\nPhosphorus    42    ppm\n\nZinc 2.1 ppm\n')).toEqual([['sample 1', [P, 42, 'ppm'], ['zinc', 2.1, 'ppm']]]);
  });
});

describe('a column without a known head', () => {
  test('is told where it holds numbers', () => {
    const report = readReport('Sample | P ppm | K ppm | Zork\nFront | 42 | 180 | 7\n', 'r.txt');
    expect(report.notices).toMatchObject([{ code: 'column-unknown', severity: 'warning', facts: { read: 'Zork' }, place: { line: 1, column: 26, length: 4 } }]);
    expect(readReport('Sample | P ppm | K ppm | Remark\nFront | 42 | 180 | wet\n', 'r.txt').notices).toEqual([]);
  });
});

test('single blanks with bare numbers', () => {
  expect(read('Area pH N P K\nBed 6.7 1 4 2\nHerbs 7 2 3 3\n')).toEqual([['Bed', ['ph', 6.7, 'pH'], ['nitrogen', 1, null], [P, 4, null], [K, 2, null]], ['Herbs', ['ph', 7, 'pH'], ['nitrogen', 2, null], [P, 3, null], [K, 3, null]]]);
});
// A home kit tells steps and words, no contents.
test('a kit\'s table with single blanks', () => {
  expect(read('Area pH N P K\nSE border 6.7/good 0/depleted 4/surplus 2/adequate\nHerbs 7.0/good 1/deficient 3/sufficient 3/sufficient\n')).toEqual([
    ['SE border', ['ph', 6.7, 'pH', expect.anything()], ['nitrogen', 0, 'index', expect.anything()], [P, 4, 'index', expect.anything()], [K, 2, 'index', expect.anything()]],
    ['Herbs', ['ph', 7, 'pH', expect.anything()], ['nitrogen', 1, 'index', expect.anything()], [P, 3, 'index', expect.anything()], [K, 3, 'index', expect.anything()]],
  ]);
});
