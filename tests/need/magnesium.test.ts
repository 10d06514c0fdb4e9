// Magnesium by Baden-Wuerttemberg's classes (Weinsberg, table 1: MgO 50, 30 and 0 kg/ha), micronutrients told and never dosed, and the potash of Germany and Poland by their own classes.
import { describe, expect, test } from 'vitest';
import { medlar } from '../medlar.ts';
import { crown } from '../published/helpers.ts';

const ask = async (report: string, where = 'Ohio, US', facts = 'apple, semi-dwarf, planted 2012, 12 ft across, shoots 3 in 2025') => {
  const yaml = `where: ${where}\nbud-break: 12 April\nfirst-frost: 12 October\nsoil:\n  bank: a.txt\ntrees:\n  A: ${facts}, bank\nstore:\n  - Sulphate of ammonia, 21-0-0, 10 lb, $20\n`;
  const { code, json, stdout } = await medlar(['plan', '--json'], { 'orchard.yaml': yaml, 'a.txt': report });
  expect(code, stdout).toBe(0);
  return { tree: json.result.trees[0], notices: json.notices, codes: json.notices.map((n) => n.code), result: json.result };
};
const BASE = 'pH 6.4\nPhosphorus 164 ppm = very high\nPotassium 400 ppm = very high\n';

describe('magnesia', () => {
  test.each([['very low', 5], ['low', 5], ['optimum', 3], ['high', 0], ['very high', 0]] as const)('%s: %d g/m2', async (word, rate) => {
    const { tree, notices, result } = await ask(`${BASE}Magnesium 60 ppm = ${word}\n`);
    expect(tree.MgO).toBeCloseTo(crown(12) * rate, 3);
    const short = notices.find((n) => n.code === 'magnesium-short');
    expect(short !== undefined).toBe(rate === 5);
    if (short) expect(short.text).toContain('Epsom salts');
    // Told, never bought.
    expect(JSON.stringify(result.buy)).not.toMatch(/epsom/i);
  });
  test('untested: null', async () => { expect((await ask(BASE)).tree.MgO).toBeNull(); });
  test('a printed range: below, within, above', async () => {
    for (const [value, rate] of [[40, 5], [100, 3], [300, 0]] as const) expect((await ask(`${BASE}Magnesium ${value} ppm (60-200)\n`)).tree.MgO).toBeCloseTo(crown(12) * rate, 3);
  });
  test('Epsom salts of the notice hold what it says: MgSO4.7H2O is 16.4 % MgO (molar masses 40.30 of 246.47)', async () => {
    const { notices } = await ask(`${BASE}Magnesium 20 ppm = low\n`);
    const text = notices.find((n) => n.code === 'magnesium-short')!.text;
    const weight = (s: string): number => { const m = /(\d+)?\s*(\d)\/(\d)|(\d+)/.exec(s)!; return m[4] ? Number(m[4]) : Number(m[1] ?? 0) + Number(m[2]) / Number(m[3]); };
    const [mgo, salts] = [/about ([\d /]+) oz of MgO/.exec(text)?.[1], /about ([\d /]+) oz of Epsom/.exec(text)?.[1]];
    expect(mgo && salts, text).toBeTruthy();
    expect(weight(mgo!) / weight(salts!)).toBeGreaterThan(0.14);
    expect(weight(mgo!) / weight(salts!)).toBeLessThan(0.19);
    // 5 g/m2 on 100 sq ft (9.29 m2) is 46.5 g, 1.64 oz.
    expect(Math.abs(weight(mgo!) - 1.64)).toBeLessThan(0.15);
  });
});

describe('micronutrients', () => {
  test.each(['Zinc 0.2 ppm = low', 'Boron 0.1 ppm = low', 'Manganese 1 ppm = very low', 'Copper 0.1 ppm = low', 'Iron 1 ppm = low'])('%s: told, never dosed', async (line) => {
    const { codes, result, tree } = await ask(`${BASE}${line}\n`);
    expect(codes).toContain('minor-short');
    expect(JSON.stringify([result.buy, tree.feeds])).not.toMatch(/zinc|boron|borax|manganese|copper|iron/i);
  });
  test.each(['Zinc 3.4 ppm = high', 'Boron 1 ppm = optimum', 'Zinc 3 ppm'])('%s: nothing to tell', async (line) => { expect((await ask(`${BASE}${line}\n`)).codes).not.toContain('minor-short'); });
});

describe('Germany and Poland by their own classes, the low end, g/m2', () => {
  const rates = async (where: string, word: string, facts?: string): Promise<[number, number]> => {
    const { tree } = await ask(`pH 6.4\nPhosphorus 60 mg/kg = ${word}\nPotassium 80 mg/kg = ${word}\n`, where, facts ?? 'apple, standard, planted 2012, 4 m across, shoots 5 cm 2025');
    return [tree.need.P2O5 / (Math.PI * 4), tree.need.K2O / (Math.PI * 4)];
  };
  // Weinsberg, table 1, bearing: P2O5 40, 20, 0; K2O 150, 80, 0 kg/ha.
  test.each([['low', 4, 15], ['very low', 4, 15], ['optimum', 2, 8], ['high', 0, 0], ['very high', 0, 0]] as const)('Bavaria, %s', async (word, p, k) => {
    const [gotP, gotK] = await rates('Bavaria, Germany', word);
    expect([gotP, gotK]).toEqual([expect.closeTo(p, 4), expect.closeTo(k, 4)]);
  });
  // Skierniewice: K2O 80 to 120 where low, 50 to 80 where middle; high only on heavy soil.
  test.each([['low', 8], ['optimum', 5], ['very high', 0]] as const)('Poland, potash, %s', async (word, k) => {
    expect((await rates('Poland', word))[1]).toBeCloseTo(k, 4);
  });
  test('a grown pear in Germany too', async () => {
    expect((await rates('Bavaria, Germany', 'low', 'pear, standard, planted 2012, 4 m across, shoots 5 cm 2025'))[1]).toBeCloseTo(15, 4);
  });
});
