// A leaf analysis is no soil: shown beside the published leaf ranges of the grower's crops, never rated as soil, never taken for one.
// Ranges: Michigan, apple N 1.9 to 2.7 %; Washington EM119E, apple K 1.2 to 1.9 %, P 0.15 to 0.3 %; cherry N 2.0 to 3.03 %.
import { expect, test } from 'vitest';
import { medlar } from '../medlar.ts';

const LEAF = 'Leaf analysis report\nNitrogen 1.7 %\nPhosphorus 0.2 %\nPotassium 2.4 %\nCalcium 1.4 %\nBoron 30 ppm\n';
const orchard = (trees: string, soil = ''): string => `where: Ohio, US\nbud-break: 12 April\nfirst-frost: 12 October\n${soil}trees:\n${trees}`;

test('each beside its range; no summary of a soil', async () => {
  const files = { 'orchard.yaml': orchard('  A: apple, planted 2015, 12 ft across\n') };
  const { json } = await medlar(['read', '-', '--json'], files, LEAF);
  expect(json.result.samples[0]).toMatchObject({ kind: 'leaf' });
  for (const r of json.result.samples[0].readings) expect([r.item, r.rating, r.mgPerKg, r.ours]).toEqual([r.item, null, null, undefined]);
  const { stdout } = await medlar(['read', '-'], files, LEAF);
  for (const said of ['apple 1.9-2.7 % (short)', 'apple 0.15-0.3 % (enough)', 'apple 1.2-1.9 % (plenty)']) expect(stdout).toContain(said);
  expect(stdout).toContain('leaf N 1.7 %');
  expect(stdout).not.toMatch(/phosphate|potash|no lime/);
});
test('of several crops each its own; none where no range is held', async () => {
  const { stdout } = await medlar(['read', '-'], { 'orchard.yaml': orchard('  A: apple, planted 2015\n  B: cherry, planted 2015\n  C: fig, planted 2015\n') }, LEAF);
  expect(stdout).toContain('apple 1.9-2.7 % (short), cherry 2-3.03 % (short)');
  expect(stdout).not.toContain('fig');
});
test('the lab’s own range is used where there is no other', async () => {
  const { json } = await medlar(['read', '-', '--json'], {}, 'Leaf analysis report\nNitrogen 2.2 %\nPotassium 1.5 %\nCalcium 0.4 % (0.8-1.6)\n');
  expect(json.result.samples[0].readings.find((r: { item: string }) => r.item === 'calcium')).toMatchObject({ target: 'below', rating: 'low' });
});
test('under soil it is a mistake at its place, and no soil', async () => {
  const files = { 'orchard.yaml': orchard('  A: apple, planted 2015, 12 ft across, bank\n', 'soil:\n  bank: leaf.txt\n'), 'leaf.txt': LEAF };
  const { json, code } = await medlar(['plan', '--json'], files);
  expect(code).not.toBe(0);
  expect(json.notices.filter((n) => n.code === 'leaf-as-soil')).toMatchObject([{ severity: 'error', file: 'orchard.yaml', line: 5 }]);
  expect(json.notices.find((n) => n.code === 'leaf-as-soil')!.text).toContain('leaf N 1.7 %');
});
