// Germany's two schemes for phosphorus by CAL (soil-tests.md 3.1, memory): since 2018 class C is 3.1 to 6.0 mg P in 100 g, before that 10 to 20 mg P2O5.
// P is 43.64 % of P2O5 (atomic weights).
import { expect, test } from 'vitest';
import type { Answer } from '../medlar.ts';
import { medlar } from '../medlar.ts';

const read = async (where: string, report: string): Promise<Answer> => (await medlar(['read', '-', '--json'], { 'orchard.yaml': `where: ${where}\nlanguage: en\ntrees:\n  A: apple\n` }, report)).json;
const told = (json: Answer): Answer['notices'] => json.notices.filter((n) => n.code === 'german-phosphorus');

test.each([['Phosphor (P2O5) CAL 10 mg/100 g', '4.36'], ['Phosphor (P) CAL 5 mg/100 g', '5']])('%s: rated by the scheme of 2018, and said so', async (line, p) => {
  const json = await read('Germany', `${line}\n`);
  expect(json.result.samples[0].readings[0]).toMatchObject({ rating: 'optimum', ours: { scale: 'vdlufa.phosphorus' } });
  expect(told(json)).toMatchObject([{ severity: 'note', line: 1 }]);
  for (const part of ['3 to 6 mg/100 g', '10 to 20 mg/100 g', `${p} mg P/100 g`]) expect(told(json)[0]!.text).toContain(part);
});
test('the text says it too', async () => {
  const { stdout } = await medlar(['read', '-'], { 'orchard.yaml': 'where: Germany\nlanguage: en\ntrees:\n  A: apple\n' }, 'Phosphor (P2O5) CAL 10 mg/100 g\n');
  expect(stdout.match(/two schemes for phosphorus/g)).toHaveLength(1);
});
test('the lab’s own class counts, and nothing is said', async () => {
  const json = await read('Germany', 'Phosphor (P2O5) CAL 10 mg/100 g C\n');
  expect(json.result.samples[0].readings[0].lab.rating).not.toBeNull();
  expect(told(json)).toEqual([]);
});
test('only in Germany', async () => {
  for (const where of ['Austria', 'Ohio, US', 'Kent, UK']) expect(told(await read(where, 'Phosphor (P2O5) CAL 10 mg/100 g\n'))).toEqual([]);
});
test('one a sample, and none without phosphorus', async () => {
  expect(told(await read('Germany', 'Phosphor (P) CAL 5 mg/100 g\nKalium (K2O) CAL 10 mg/100 g\nPhosphor (P2O5) CAL 12 mg/100 g\n')).length).toBe(1);
  expect(told(await read('Germany', 'Kalium (K2O) CAL 10 mg/100 g\n'))).toEqual([]);
});
