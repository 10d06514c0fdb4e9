// A method of phosphorus or potassium without a scale: Colwell, the usual one of Australian labs (practice), has none among the tables. That nothing is given is said, not left to look like plenty.
import { describe, expect, test } from 'vitest';
import { medlar } from '../medlar.ts';

const orchard = (tree: string): string => `where: Victoria, Australia\nsoil: soil.txt\nbud-break: 10 September\nfirst-frost: 1 May\ntrees:\n  Gate: ${tree}\nstore:\n  - Superphosphate, 0-20-0, 20 kg\n  - Sulphate of potash, 0-0-50, 20 kg\n`;
const APPLE = 'apple, planted 2018, 4 m across, shoots 15 cm 2025';
const told = async (report: string, tree = APPLE): Promise<string[]> => {
  const { json } = await medlar(['plan', '--json', '--today', '2026-08-01'], { 'orchard.yaml': orchard(tree), 'soil.txt': report });
  return json.notices.filter((n) => n.code === 'soil-unrated').map((n) => n.text);
};

describe('soil-unrated', () => {
  test('names what no scale rates, with its line as the lab would finish it', async () => {
    expect(await told('pH 6.2\nColwell P 18 mg/kg\nColwell K 90 mg/kg\n')).toEqual([expect.stringContaining('rates P, K, so')]);
    expect((await told('pH 6.2\nColwell P 18 mg/kg\nColwell K 90 mg/kg\n'))[0]).toContain('Colwell P 18 mg/kg = low');
  });
  test('what the lab rates is left out', async () => {
    expect(await told('pH 6.2\nColwell P 18 mg/kg = low\nColwell K 90 mg/kg\n')).toEqual([expect.stringContaining('rates K, so')]);
    expect(await told('pH 6.2\nColwell P 18 mg/kg = low\nColwell K 90 mg/kg = high\n')).toEqual([]);
  });
  test('a second test of the same that is rated serves', async () => { expect(await told('pH 6.2\nColwell P 18 mg/kg\nOlsen P 9 mg/kg\n')).toEqual([]); });
  // Of these a question is asked, and a tub's mix is not the ground.
  test('not where the method is asked for, nor for a tub', async () => {
    expect(await told('pH 6.2\nP 18 mg/kg\n')).toEqual([]);
    expect(await told('pH 6.2\nColwell P 18 mg/kg\n', 'lemon, planted 2018, tub 60 L')).toEqual([]);
  });
});
