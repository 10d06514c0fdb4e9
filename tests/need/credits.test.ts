// Compost and clover beside the bag. 950 lb a cubic yard (norganics), 1 % N (Ohio ANR-34), a tenth set free in a year (the upper end of California's 5 to 10 %): sums by hand.
import { describe, expect, test } from 'vitest';
import { medlar } from '../medlar.ts';
import { LB, crown } from '../published/helpers.ts';

const plan = async (facts: string, diary = '', soil = 'pH 6.4\nPhosphorus 164 ppm = very high\nPotassium 400 ppm = very high\n', where = 'Ohio, US') => {
  const yaml = `where: ${where}\nbud-break: 12 April\nfirst-frost: 12 October\nsoil:\n  bank: a.txt\ntrees:\n  A: ${facts}, bank\nstore:\n  - Sulphate of ammonia, 21-0-0, 10 lb, $20\n`;
  const run = await medlar(['plan', '--json', '--today', '2026-04-20'], { 'orchard.yaml': yaml, 'a.txt': soil, ...(diary ? { 'diary.csv': `date,trees,what,bag,amount,note\n${diary}` } : {}) });
  expect(run.code, run.stdout + run.stderr).toBe(0);
  return { tree: run.json.result.trees[0], notices: run.json.notices, codes: run.json.notices.map((n) => n.code), figures: Object.values(run.json.figures) };
};
const OLD = 'apple, semi-dwarf, planted 2015, 12 ft across, shoots 3 in 2025';
const FED = crown(12) * 7;
/** Grams of N that a litre of compost sets free in a year. */
const PER_LITRE = ((950 * LB) / (27 * 30.48 ** 3)) * 1000 * 0.01 * 0.1;

describe('compost', () => {
  test('a litre sets free a little over half a gram', () => { expect(PER_LITRE).toBeCloseTo(0.56, 2); });
  test.each([['12 L', 12], ['3 gal', 3 * 3.785411784]])('%s a year is taken off the nitrogen', async (said, litres) => {
    const { tree, codes } = await plan(`${OLD}, compost ${said}`);
    expect(tree.need.N).toBeCloseTo(FED - litres * PER_LITRE, 2);
    expect(codes).not.toContain('compost-untold');
    expect(codes).not.toContain('compost-much');
  });
  test('without an amount nothing is counted, and it is asked for', async () => {
    const { tree, notices } = await plan(`${OLD}, compost`);
    expect(tree.need.N).toBeCloseTo(FED, 2);
    expect(notices.find((n) => n.code === 'compost-untold')?.text).toContain('compost 10 gal');
  });
  // Bavaria: at most 1.5 L a square metre and year under fruit trees; a crown of 12 ft is 10.5 m².
  test('more than Bavaria allows is told, and enough of it leaves nothing to feed', async () => {
    const { tree, codes } = await plan(`${OLD}, compost 200 L`);
    expect(codes).toContain('compost-much');
    expect(tree).toMatchObject({ verdict: 'none', none: 'compost-enough', need: { N: 0 }, feeds: [] });
    expect((await plan(`${OLD}, compost 15 L`)).codes).not.toContain('compost-much');
    expect((await plan(`${OLD}, compost 17 L`)).codes).toContain('compost-much');
  });
  test('what is no volume is a mistake at its place', async () => {
    const run = await medlar(['plan', '--json'], { 'orchard.yaml': `where: Ohio, US\ntrees:\n  A: ${OLD}, compost lots\n` });
    expect(run.code).toBe(3);
    expect(run.json.notices[0]).toMatchObject({ code: 'measure-wrong', line: 3 });
  });
});

describe('clover below the tree', () => {
  test('half the nitrogen, said', async () => {
    const { tree, codes } = await plan(`${OLD}, clover`);
    expect(tree.need.N).toBeCloseTo(FED / 2, 2);
    expect(codes).toContain('clover-half');
  });
  test('on a soil rich in organic matter it is halved once, not twice', async () => {
    const { tree } = await plan(`${OLD}, clover`, '', 'pH 6.4\nOrganic matter 7 %\nPhosphorus 164 ppm = very high\nPotassium 400 ppm = very high\n');
    expect(tree.need.N).toBeCloseTo(FED / 2, 2);
  });
});

// Twice the turf limit of 1 lb N/1000 sq ft is 9.8 g/m²: on 10.5 m² 103 g of N, 490 g (17 oz) of a 21 % feed.
describe('what was fed already and was too much', () => {
  test('fifteen pounds of 10-10-10 on a dwarf: burn is spoken of, whatever the plan says', async () => {
    for (const facts of ['apple, dwarf, planted 2015, 8 ft across, shoots 3 in 2025', 'apple, dwarf, planted 2015, 8 ft across, shoots 30 in 2025', 'apple, dwarf, planted 2026, 4 ft across']) {
      const { tree, notices } = await plan(facts, '2026-04-10,A,fed,10-10-10,15 lb,\n');
      expect(tree.feeds).toEqual([]);
      const burn = notices.find((n) => n.code === 'fed-burn');
      expect(burn?.severity).toBe('warning');
      expect(burn?.text).toMatch(/10 April.*24 oz.*Water it deeply.*extension office/);
    }
  });
  test('more than the need but within what the ground takes: no burn, only that it is enough', async () => {
    const { codes } = await plan(OLD, '2026-04-10,A,fed,21-0-0,16 oz,\n');
    expect(codes).toContain('fed-over');
    expect(codes).not.toContain('fed-burn');
    const over = await plan(OLD, '2026-04-10,A,fed,21-0-0,19 oz,\n');
    expect(over.codes).toContain('fed-burn');
    expect(over.codes).not.toContain('fed-over');
  });
  test('fed though nothing was wanted: told', async () => { expect((await plan('apple, semi-dwarf, planted 2015, 12 ft across, shoots 20 in 2025', '2026-04-10,A,fed,21-0-0,12 oz,\n')).codes).toContain('fed-over'); });
});

// A paste of 2 dS/m is where salts begin to hurt very sensitive crops (Bulletin of the NRC, table 5); Washington's orchards wait at 4.
describe('salts in a saturated paste', () => {
  test.each([['avocado, planted 2015, 12 ft across', 'California, US', true], ['10 strawberry, planted 2024, bearing', 'Ohio, US', true], ['blueberry, planted 2018', 'Ohio, US', true], [OLD, 'Ohio, US', false]])('%s in %s at 2.5: stopped %s', async (facts, where, stopped) => {
    const soil = 'pH 6.4\nPhosphorus 164 ppm = very high\nPotassium 400 ppm = very high\nEC (saturated paste) 2.5 dS/m\n';
    expect((await plan(facts, '', soil, where)).tree.stops.includes('salts')).toBe(stopped);
    expect((await plan(facts, '', soil.replace('2.5 dS', '1.9 dS'), where)).tree.stops).not.toContain('salts');
  });
});

// Utah finds that pears often do best with little or none; half is the judgement of the table.
test('a kind that fire blight takes gets half, and hears why', async () => {
  const [plain, prone] = [await plan('pear, semi-dwarf, planted 2015, 12 ft across, shoots 3 in 2025'), await plan('pear, semi-dwarf, planted 2015, 12 ft across, shoots 3 in 2025, blight-prone')];
  expect(prone.tree.need.N).toBeCloseTo(plain.tree.need.N / 2, 6);
  expect(prone.notices.find((n) => n.code === 'blight-half')?.text).toContain('fire blight');
});
