// What `medlar read` says of a rating: near, whose table, where lab and table differ; as text and as data.
import { expect, test } from 'vitest';
import { ANSWERS } from '../../src/json/schemas.ts';
import type { Answer } from '../medlar.ts';
import { medlar } from '../medlar.ts';

const folder = (where: string): Record<string, string> =>
  ({ 'orchard.yaml': `orchard: Cross\nwhere: ${where}\nbud-break: 12 April\nfirst-frost: 12 October\ntrees:\n  Gate plum: plum, planted 2015, 4 m across\n` });
type Readings = NonNullable<ReturnType<typeof ANSWERS.read.parse>['result']>['samples'][number]['readings'];
const read = async (where: string, report: string): Promise<{ text: string; readings: Readings; notices: Answer['notices'] }> => {
  const [plain, data] = [await medlar(['read', '-'], folder(where), report), await medlar(['read', '-', '--json'], folder(where), report)];
  expect([plain.code, data.code]).toEqual([0, 0]);
  return { text: plain.stdout + plain.stderr, readings: ANSWERS.read.parse(data.json).result!.samples[0]!.readings, notices: data.json.notices };
};

// Washington EM119E: potassium optimal from 150 to 250 ppm; a lab repeats K within 10 % (memory).
test('near: 145 ppm of potassium is within the lab’s scatter of enough', async () => {
  const { text, readings } = await read('Washington, US', 'Potassium 145 ppm ammonium acetate\n');
  expect(readings[0]).toMatchObject({ rating: 'medium', target: 'below', near: 'optimum', ours: { rating: 'medium', target: 'below', scale: 'washington.potassium' } });
  expect(text).toContain('medium, within the lab\'s scatter of enough (Washington State University)');
});

test('the lab’s word is used, and the table beside it named', async () => {
  const { text, readings, notices } = await read('Washington, US', 'Potassium 200 ppm ammonium acetate High\n');
  expect(readings[0]).toMatchObject({ rating: 'high', target: 'above', ours: { rating: 'optimum', target: 'at' } });
  expect(notices.filter((n) => n.code === 'rating-differs')).toMatchObject([{ severity: 'warning', line: 1 }]);
  expect(notices[0]!.text).toBe('K: the lab says high; the table of Washington State University for this method says enough (its target is 150-250 ppm). The lab\'s word is used.');
  expect(text).toContain('The lab\'s word is used.');
});

// An index printed beside a value, and North Carolina's own, which no other lab writes so (practice).
test('an index and whose it is stand in the data', async () => {
  const { readings } = await read('Kent, UK', 'Phosphorus 18 mg/L Olsen Index: 2\nPotassium 150 mg/L\n');
  expect(readings[0]).toMatchObject({ value: 18, index: 2 });
  expect(readings[1]).not.toHaveProperty('index');
  expect((await read('Ohio, US', 'P-I 40\n')).readings[0]).toMatchObject({ value: 40, unit: 'index', scheme: 'north-carolina.index' });
});

// Brazil's labs measure by volume (mmolc/dm3); without a density there is no ppm (by definition).
test('values by volume without a density: one note a sample, shown and counted', async () => {
  const { text, notices } = await read('Ohio, US', 'Calcium 20 mmolc/dm3\nMagnesium 8 mmolc/dm3\n');
  expect(notices.filter((n) => n.code === 'density-missing')).toHaveLength(1);
  expect(text.match(/printed no density/g)).toHaveLength(1);
  const dense = await read('Ohio, US', 'Calcium 20 mmolc/dm3\nMagnesium 8 mmolc/dm3\nDensity 1.2 g/cm3\n');
  expect(dense.notices.filter((n) => n.code === 'density-missing')).toEqual([]);
  // 20 mmolc of calcium are 20 × 20.04 mg in a litre, which weighs 1.2 kg.
  expect(dense.readings[0]!.mgPerKg).toBeCloseTo((20 * 20.04) / 1.2, 0);
});

test('a field table and a recalled one say so', async () => {
  const ohio = await read('Ohio, US', 'Phosphorus 40 ppm Mehlich 3\n');
  expect(ohio.readings[0]!.ours).toMatchObject({ scale: 'tri-state.phosphorus', field: true, cite: { source: 'tri-state-2020', mark: 'read' } });
  expect(ohio.text).toContain(', for field crops)');
  const iowa = await read('Iowa, US', 'Phosphorus 18 ppm Bray 1\n');
  expect(iowa.readings[0]).toMatchObject({ rating: 'optimum', ratingCite: { source: 'iowa-pm1688', mark: 'memory' } });
  expect(iowa.text).toContain(', for field crops, recalled)');
});

test('the grower’s crops reach the tables: avocado in New Zealand', async () => {
  const files = { 'orchard.yaml': folder('New Zealand')['orchard.yaml']!.replace(': plum', ': avocado') };
  const run = await medlar(['read', '-', '--json'], files, 'Phosphorus 30 mg/L Olsen\n');
  expect(run.json.result.samples[0].readings[0].target).toBe('below');
});
