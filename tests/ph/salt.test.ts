// pH in salt solutions as the plan takes it: calcium chloride 0.6 lower than water (New South Wales AC.19, 0.5 to 0.8);
// potassium chloride by Poland 2016: −1.95 + 11.58 log10 pHKCl, so 5.0 is 6.14 in water, and 4.0 is 5.02.
import { expect, test } from 'vitest';
import type { FigureJson } from '../medlar.ts';
import { medlar } from '../medlar.ts';

// Without a texture no table rates a salt pH.
const files = (line: string): Record<string, string> => ({ 'orchard.yaml': 'where: Poland\nsoil:\n  bed: soil.txt\ntrees:\n  A: blueberry, planted 2019, bed\n', 'soil.txt': `${line}\n` });
const planned = async (line: string): Promise<{ row: any; now: FigureJson; from: FigureJson[] }> => {
  const { json } = await medlar(['plan', '--json'], files(line));
  const row = json.result.ph[0];
  const now = json.figures[row.nowWhy]!;
  return { row, now, from: now.from.map((id) => json.figures[id]!) };
};

test.each([['pH (KCl) 5.0', 6.14], ['pH KCl 4.0', 5.02], ['pH (CaCl2) 5.0', 5.6], ['pH CaCl2 6.4', 7]])('%s is %d in water', async (line, water) => {
  expect((await planned(line)).row.now).toBeCloseTo(water, 9);
});

test('its reasons keep the source and the ends', async () => {
  const { now, from } = await planned('pH (KCl) 5.0');
  expect(now.cite).toMatchObject({ source: 'poland-ph', mark: 'read' });
  expect(from[0]).toMatchObject({ step: 'printed-by-lab', value: 5 });
  // 0.5 either way: means of 0.89 and 0.99 in two provinces, single soils further apart.
  expect(from.filter((f) => f.step === 'ph-end').map((f) => f.value)).toEqual([5.64, 6.64]);
});

test.each([['pH (KCl) 5.0', '1.1'], ['pH (KCl) 4.0', '1'], ['pH (CaCl2) 5.0', '0.6']])('read says how much higher %s is taken', async (line, n) => {
  expect((await medlar(['read', 'soil.txt'], files(line))).stdout).toContain(`rated about ${n} higher, as in water`);
});
