// Files near their limits, of one sign over and over, and of very many names. Each took minutes to hours once, by a pattern or by comparing each with every other; here it must end within the time of a test.
import { expect, test } from 'vitest';
import { loadOrchard } from '../../src/orchard/load.ts';
import { loadRules } from '../../src/orchard/own-rules.ts';
import { readReport } from '../../src/soil/read.ts';

const TREES = 'trees:\n  Gate: apple\n';
const RULE = '- id: mine\n  crops: [apple]\n  by: plant\n  gives: { of: N, unit: oz }\n  low: 3\n  from: my notebook\n';
const read = (text: string) => loadOrchard(text, 'orchard.yaml');
const told = (text: string) => read(text).notices.map(({ code, severity, place }) => [code, severity, place?.line, place?.column, place && [...place.source].slice(place.column - 1, place.column - 1 + place.length).join('')]);

test('a million signs are read, one more is not', () => {
  const filled = (n: number): string => `${`${'#'.padEnd(49_999)}\n`.repeat(20).slice(TREES.length)}${TREES}${' '.repeat(n - 1_000_000)}`;
  expect(filled(1_000_000)).toHaveLength(1_000_000);
  expect(read(filled(1_000_000)).notices).toEqual([]);
  expect(read(filled(1_000_001)).notices).toMatchObject([{ code: 'report-too-large', severity: 'error', facts: { file: 'orchard.yaml', size: 1_000_001, most: 1_000_000 } }]);
});
test('a hundred thousand signs in a line are read, one more is not', () => {
  expect(read(`${TREES}#${' '.repeat(99_999)}\n`).notices).toEqual([]);
  expect(told(`${TREES}#${' '.repeat(100_000)}\n`)).toEqual([['line-too-long', 'error', 3, 1, '#']]);
  expect(read(`${TREES}#${' '.repeat(100_000)}\n`).notices[0]!.facts).toEqual({ length: 100_001, most: 100_000 });
});
// Each took minutes to hours once, by a pattern or by YAML's own comparing of every key with every other.
test.each([['blanks', `${' '.repeat(99_000)}\n`.repeat(9), undefined], ['quotation marks', `"${'"'.repeat(99_000)}`, 'yaml-broken'], ['colons', ': '.repeat(49_000), 'yaml-broken']])('%s in mass are answered within the time of a test', (_, text, code) => expect(read(TREES + text).notices[0]?.code).toBe(code));
test('forty thousand names are compared by what they are, not each with each', () => {
  const all = `trees:\n${Array.from({ length: 40_000 }, (_, i) => `  k${i}: fig\n`).join('')}`;
  expect(read(all).orchard!.trees).toHaveLength(40_000);
  expect(told(`${all}  k7: fig\n`)).toEqual([['name-twice', 'error', 40_002, 3, 'k7']]);
});
test('own rules of 200,000 signs are read, one more is not', () => {
  const filled = (n: number): string => `${'#'.padEnd(99_999)}\n${RULE}${'#'.padEnd(n - 100_000 - RULE.length)}`;
  expect(loadRules(filled(200_000)).rules).toHaveLength(1);
  expect(loadRules(filled(200_001))).toEqual({ rules: [], notices: [{ code: 'report-too-large', severity: 'error', facts: { file: 'rules.yaml', size: 200_001, most: 200_000 } }] });
});
// More than the machine hands over in one call.
test('a table of 200,000 values is read to its end', () => {
  const { samples } = readReport(`Bed\tpH\tP ppm\n${Array.from({ length: 100_000 }, (_, i) => `B${i}\t6\t9\n`).join('')}`, 'r.txt');
  expect([samples.length, samples.reduce((sum, s) => sum + s.readings.length, 0), samples.at(-1)!.name]).toEqual([100_000, 200_000, 'B99999']);
});
