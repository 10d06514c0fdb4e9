// A tree to come: no nitrogen, phosphate and potash dug into its bed. 10 and 20 g/m2: within RB209's 100 and 200 kg/ha before planting (memory); Poland: 300 kg P2O5 and 150 kg K2O a hectare at the low end of its low class.
import { describe, expect, test } from 'vitest';
import { medlar } from '../medlar.ts';

const SQFT = 0.09290304;
const soil = (p: string, k: string): string => `pH 6.4\nPhosphorus 20 ppm = ${p}\nPotassium 60 ppm = ${k}\n`;
const ask = async (facts: string, report: string | null = soil('low', 'low'), where = 'Ohio, US', today = '2026-03-14') => {
  const yaml = `where: ${where}\nbud-break: 12 April\nfirst-frost: 12 October\n${report === null ? '' : 'soil:\n  bank: a.txt\n'}trees:\n  A: ${facts}${report === null ? '' : ', bank'}\nstore:\n  - Triple super, 0-46-0, 10 lb, $20\n  - Sulphate of potash, 0-0-50, 10 lb, $20\n  - Sulphate of ammonia, 21-0-0, 10 lb, $20\n`;
  const { code, json, stdout } = await medlar(['plan', '--json', '--today', today], { 'orchard.yaml': yaml, ...(report === null ? {} : { 'a.txt': report }) });
  expect(code, stdout).toBe(0);
  return { tree: json.result.trees[0], asked: json.questions.map((q) => q.code), codes: json.notices.map((n) => n.code), json };
};

describe('phosphate and potash by soil class, on the bed\'s ground', () => {
  test.each([['very low', 20], ['low', 10], ['optimum', 0], ['high', 0], ['very high', 0]] as const)('%s: %d g/m2', async (word, rate) => {
    const { tree } = await ask('peach, planting March 2027, bed 30 x 6 ft', soil(word, word));
    expect(tree.need.N).toBe(0);
    expect(tree.need.P2O5).toBeCloseTo(180 * SQFT * rate, 3);
    expect(tree.need.K2O).toBeCloseTo(180 * SQFT * rate, 3);
    expect(tree.verdict).toBe(rate > 0 ? 'feed' : 'none');
  });
  test('each of the two by its own class', async () => {
    const { tree } = await ask('apple, planting March 2027, bed 30 x 6 ft', soil('very low', 'high'));
    expect([tree.need.P2O5, tree.need.K2O]).toEqual([expect.closeTo(180 * SQFT * 20, 3), 0]);
  });
  test('spacing tells the ground where no bed is told', async () => {
    expect((await ask('apple, planting March 2027, spacing 10 x 12 ft')).tree.need.P2O5).toBeCloseTo(120 * SQFT * 10, 3);
    expect((await ask('apple, planting March 2027, spacing 3 x 4 m')).tree.need.P2O5).toBeCloseTo(120, 6);
  });
  test('metres and feet give the same bed', async () => {
    const [ft, m] = [await ask('apple, planting March 2027, bed 30 x 6 ft'), await ask('apple, planting March 2027, bed 9.144 x 1.8288 m')];
    expect(m.tree.need.P2O5).toBeCloseTo(ft.tree.need.P2O5, 6);
  });
  test('several plants share one bed', async () => {
    const { tree } = await ask('4 apple, planting March 2027, bed 30 x 6 ft');
    expect(tree.need.P2O5).toBeCloseTo((180 * SQFT * 10) / 4, 3);
  });
  test('the dose is bought: twice 167 g of oxide', async () => {
    const { json } = await ask('peach, planting March 2027, bed 30 x 6 ft');
    const { supplied } = json.result.trees[0];
    expect(Math.abs(supplied.P2O5 - 167.2)).toBeLessThan(17);
    expect(Math.abs(supplied.K2O - 167.2)).toBeLessThan(17);
    expect(supplied.N).toBe(0);
  });
  test('Poland: 30 and 15 g/m2 where low', async () => {
    const { tree } = await ask('apple, planting March 2027, bed 5 x 2 m', soil('low', 'low'), 'Poland');
    expect([tree.need.N, tree.need.P2O5, tree.need.K2O]).toEqual([0, expect.closeTo(300, 6), expect.closeTo(150, 6)]);
  });
  test('untested soil: neither', async () => {
    expect((await ask('apple, planting March 2027, bed 30 x 6 ft', null)).tree).toMatchObject({ verdict: 'none', need: { N: 0, P2O5: 0, K2O: 0 } });
    expect((await ask('apple, planting March 2027, bed 30 x 6 ft', 'pH 6.4\n')).tree.need).toEqual({ N: 0, P2O5: 0, K2O: 0 });
  });
  test.each(['apple', 'fig', 'blueberry', 'grape', 'avocado', 'raspberry', 'walnut'])('%s: no nitrogen', async (crop) => { expect((await ask(`${crop}, planting March 2027, bed 30 x 6 ft`)).tree.need.N).toBe(0); });
});

describe('neither bed nor spacing', () => {
  test('asked, and nothing dug in', async () => {
    const { tree, asked } = await ask('apple, planting March 2027');
    expect(asked).toContain('bed-missing');
    expect(tree).toMatchObject({ verdict: 'none', need: { N: 0, P2O5: 0, K2O: 0 }, feeds: [] });
  });
  test('not asked where one is told', async () => {
    expect((await ask('apple, planting March 2027, bed 30 x 6 ft')).asked).not.toContain('bed-missing');
    expect((await ask('apple, planting March 2027, spacing 10 x 12 ft')).asked).not.toContain('bed-missing');
  });
});

describe('the month', () => {
  test('once it has come the tree counts as planted: nothing on top in its planting year', async () => {
    const { tree } = await ask('apple, planting March 2027, bed 30 x 6 ft', soil('low', 'low'), 'Ohio, US', '2027-03-20');
    expect(tree).toMatchObject({ verdict: 'none', none: 'planting-year', need: { N: 0, P2O5: 0, K2O: 0 } });
  });
  test('the day before it has not', async () => {
    expect((await ask('apple, planting March 2027, bed 30 x 6 ft', soil('low', 'low'), 'Ohio, US', '2027-02-28')).tree.need.P2O5).toBeCloseTo(180 * SQFT * 10, 3);
  });
  test('a year on it is fed as a tree planted then', async () => {
    const [later, plain] = [await ask('apple, standard, planting March 2027, 12 ft across', soil('high', 'high'), 'Michigan, US', '2028-03-20'), await ask('apple, standard, planted 2027, 12 ft across', soil('high', 'high'), 'Michigan, US', '2028-03-20')];
    // Michigan: 0.05 lb a year of age.
    expect(later.tree.need.N).toBeCloseTo(22.68, 1);
    expect(later.tree.need).toEqual(plain.tree.need);
  });
  test.each(['planting 2027', 'planting Marchember 2027', 'planting March', 'planting March 27', 'planting 2027-13'])('"%s": read rightly or refused at its line, never a crash', async (when) => {
    const yaml = `where: Ohio, US\ntrees:\n  A: apple, ${when}, bed 30 x 6 ft\n`;
    const { code, json } = await medlar(['plan', '--json'], { 'orchard.yaml': yaml });
    expect([0, 3]).toContain(code);
    if (code === 3) expect(json.notices.some((n) => n.file === 'orchard.yaml' && n.line === 3)).toBe(true);
    else expect(json.result.trees[0].need.N).toBe(0);
  });
  test.each(['bed 0 x 6 ft', 'bed -3 x 6 ft', 'bed 30 ft', 'bed 30 x 6', 'bed 30000 x 6000 ft', 'bed 1e309 x 6 ft'])('"%s": refused at its line, or asked', async (bed) => {
    const yaml = `where: Ohio, US\nsoil:\n  bank: a.txt\ntrees:\n  A: apple, planting March 2027, ${bed}, bank\n`;
    const { code, json } = await medlar(['plan', '--json'], { 'orchard.yaml': yaml, 'a.txt': soil('low', 'low') });
    expect(code, JSON.stringify(json.result?.trees?.[0]?.need)).toBe(3);
    expect(json.notices.some((n) => n.file === 'orchard.yaml' && n.line === 5)).toBe(true);
  });
});
