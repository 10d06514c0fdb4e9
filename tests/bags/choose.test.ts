// Which bag, how many. Rules: design.md 6 (hard and soft limits), deciding.md (tubs, chloride); sums by hand.
import { describe, expect, test } from 'vitest';
import { loadOrchard } from '../../src/orchard/load.ts';
import { medlar } from '../medlar.ts';

const OZ = 453.59237 / 16;
const LB = 453.59237;
const HIGH = 'pH 6.4\nPhosphorus 164 ppm = very high\nPotassium 180 ppm (120-200)\n';
const orchard = (tree: string, store: readonly string[], shed: readonly string[] = [], where = 'Ohio, US'): string =>
  `where: ${where}\nbud-break: 12 April\nfirst-frost: 12 October\nsoil:\n  bank: soil/a.txt\ntrees:\n  A: ${tree}\n${shed.length ? `shed:\n${shed.map((b) => `  - ${b}\n`).join('')}` : ''}${store.length ? `store:\n${store.map((b) => `  - ${b}\n`).join('')}` : ''}`;
const APPLE = 'apple, semi-dwarf, planted 2019, trunk 11 in round, 12 ft across, shoots 6 in 2025, mulch, bank';
const plan = async (yaml: string, soil = HIGH) => {
  const run = await medlar(['plan', '--json'], { 'orchard.yaml': yaml, 'soil/a.txt': soil });
  expect(run.code, run.stdout).toBe(0);
  return run.json;
};
const bagsOf = (json: { result: { trees: { feeds: { bag: string }[] }[] } }): string[] => [...new Set(json.result.trees.flatMap((t) => t.feeds.map((f) => f.bag)))];

describe('the bag', () => {
  test('on ground rich in phosphorus none with phosphate, however cheap', async () => {
    expect(bagsOf(await plan(orchard(APPLE, ['Cheap, 10-10-10, 40 lb, $1', 'Dear, 21-0-0, 4 lb, $99'])))).toEqual(['Dear']);
  });
  test('the cheaper of two that are alike, at the till', async () => {
    // One apple needs 73.6 g of N, a bag of either: $11 against $20.
    expect(bagsOf(await plan(orchard(APPLE, ['Urea, 46-0-0, 10 lb, $20', 'Sulphate of ammonia, 21-0-0, 10 lb, $11'])))).toEqual(['Sulphate of ammonia']);
    // 25 apples need 4.06 lb of N: one bag of urea (8.8 lb) at $20, or two of sulphate (19.3 lb) at $22.
    expect(bagsOf(await plan(orchard(`25 ${APPLE}`, ['Urea, 46-0-0, 10 lb, $20', 'Sulphate of ammonia, 21-0-0, 10 lb, $11'])))).toEqual(['Urea']);
  });
  test('of one product in two sizes, what costs least to hold the need', async () => {
    const sizes = ['Sulphate of ammonia, 21-0-0, 50 lb, $30', 'Sulphate of ammonia, 21-0-0, 4 lb, $9'];
    const bought = async (tree: string): Promise<unknown> => (await plan(orchard(tree, sizes))).result.buy.map((b: { bags: number; cost: number; leftG: number }) => [b.bags, b.cost, Math.round((b.leftG / LB) * 10) / 10]);
    // 12 1/2 oz: the small one. 62 1/2 oz (3.9 lb): still one. 125 oz (7.8 lb): two at $18. 20 trees, 15.6 lb: four would cost $36.
    expect(await bought(APPLE)).toEqual([[1, 9, 3.2]]);
    expect(await bought(`5 ${APPLE}`)).toEqual([[1, 9, 0.1]]);
    expect(await bought(`10 ${APPLE}`)).toEqual([[2, 18, 0.2]]);
    expect(await bought(`20 ${APPLE}`)).toEqual([[1, 30, 34.4]]);
  });
  test('what stands in the shed before what must be bought', async () => {
    const json = await plan(orchard(APPLE, ['Fresh, 21-0-0, 4 lb, $1'], ['Old, 21-0-0, 4 lb, half left']));
    expect(bagsOf(json)).toEqual(['Old']);
    // Half of 4 lb is 32 oz; 12 1/2 oz are used.
    expect(json.result.buy).toEqual([{ bag: 'Old', needG: expect.closeTo(12.5 * OZ, 3), bags: 0, cost: 0, leftG: expect.closeTo(19.5 * OZ, 3) }]);
  });
  test('too little in the shed: that first, the rest bought, and said', async () => {
    // 73.6 g of N is 12.36 oz of either; 8 oz are in the shed, all of which goes on. The orchard's N stays within 3 %.
    const json = await plan(orchard(APPLE, ['Fresh, 21-0-0, 4 lb, $9'], ['Old, 21-0-0, 8 oz']));
    expect(bagsOf(json)).toEqual(['Old', 'Fresh']);
    const [old, fresh] = json.result.buy;
    expect([old.bag, old.bags, fresh.bag, fresh.bags]).toEqual(['Old', 0, 'Fresh', 1]);
    expect(old.needG).toBeCloseTo(8 * OZ, 3);
    expect(Math.abs((old.needG + fresh.needG) * 0.21 - 73.6)).toBeLessThan(0.03 * 73.6);
    expect(json.notices.map((n) => n.code)).toContain('shed-runs-out');
  });
  test('only 10-10-10: a plan, exit 0, and the surplus told', async () => {
    const json = await plan(orchard(APPLE, ['Balanced, 10-10-10, 40 lb, $21.50']));
    const [tree] = json.result.trees;
    expect(bagsOf(json)).toEqual(['Balanced']);
    // As much P2O5 and K2O as N comes along; 73.6 g of each, none of it wanted.
    expect(Math.abs(tree.over.P2O5 - 73.6)).toBeLessThan(3);
    expect(Math.abs(tree.over.K2O - 73.6)).toBeLessThan(3);
    expect(json.notices.filter((n) => n.code === 'over').length).toBe(2);
  });
  test.each(['Weed and feed, 21-0-0, 10 lb, $1', 'Lawn feed with weed killer, 21-0-0, 10 lb, $1', 'Lawn food, 21-0-0, weed control, 10 lb', 'Lawn herbicide feed, 21-0-0, 10 lb'])('never: %s', async (label) => {
    const json = await plan(orchard(APPLE, [label]));
    expect(bagsOf(json)).toEqual([]);
    expect(json.result.trees[0].short.N).toBeCloseTo(73.6, 0);
    expect(json.notices.map((n) => n.code)).toContain('short-kept');
  });
  test('a tub takes coated feed alone; the ground does not need it', async () => {
    const bags = ['Plain, 21-0-0, 4 lb, $1', 'Coated, 15-5-10, 2 lb, slow release, $20'];
    expect(bagsOf(await plan(orchard('lemon, tub 60 L', bags)))).toEqual(['Coated']);
    expect(bagsOf(await plan(orchard('lemon, tub 60 L', bags.slice(0, 1))))).toEqual([]);
    // 30 g of N at 15 % is 200 g of product.
    const [tree] = (await plan(orchard('lemon, tub 60 L', bags))).result.trees;
    expect(tree.feeds.reduce((s: number, f: { gExact: number }) => s + f.gExact, 0)).toBeCloseTo(200, 6);
    expect(tree.feeds.every((f: { ring: unknown }) => f.ring === null)).toBe(true);
  });
  test('chloride: sulphate of potash for stone fruit though muriate is cheaper', async () => {
    const low = 'Phosphorus 164 ppm = very high\nPotassium 60 ppm (120-200)\n';
    const bags = ['Sulphate of ammonia, 21-0-0, 4 lb, $9', 'Muriate of potash, 0-0-60, 4 lb, $1', 'Sulphate of potash, 0-0-50, 4 lb, $30'];
    expect(bagsOf(await plan(orchard('peach, planted 2018, 10 ft across, shoots 6 in 2025, bank', bags), low))).toContain('Sulphate of potash');
    expect(bagsOf(await plan(orchard('peach, planted 2018, 10 ft across, shoots 6 in 2025, bank', bags), low))).not.toContain('Muriate of potash');
    expect(bagsOf(await plan(orchard(APPLE, bags), low))).toContain('Muriate of potash');
  });
  test('a bag that holds none of what is wanted is not bought', async () => {
    expect((await plan(orchard(APPLE, ['Potash, 0-0-50, 4 lb, $1', 'Bone meal, 3-15-0, 4 lb, $1', 'Sulphate of ammonia, 21-0-0, 4 lb, $9']))).result.buy.map((b: { bag: string }) => b.bag)).toEqual(['Sulphate of ammonia']);
  });
});

describe('how many', () => {
  test('ten trees of 12 1/2 oz: 125 oz, two bags of 4 lb, 3 oz left', async () => {
    const { result } = await plan(orchard(`10 ${APPLE}`, ['Sulphate of ammonia, 21-0-0, 4 lb, $9']));
    expect(result.buy).toEqual([{ bag: 'Sulphate of ammonia', needG: expect.closeTo(125 * OZ, 3), bags: 2, cost: 18, leftG: expect.closeTo(3 * OZ, 3) }]);
  });
  test('a bag used up to its last grain is one bag', async () => {
    const { result } = await plan(orchard(APPLE, ['Sulphate of ammonia, 21-0-0, 12.5 oz, $9']));
    expect(result.buy).toEqual([{ bag: 'Sulphate of ammonia', needG: expect.closeTo(12.5 * OZ, 3), bags: 1, cost: 9, leftG: expect.closeTo(0, 6) }]);
  });
  test('no weight, no count; no price, no cost', async () => {
    expect((await plan(orchard(APPLE, ['Feed, 21-0-0']))).result.buy).toEqual([{ bag: 'Feed', needG: expect.closeTo(12.5 * OZ, 3), bags: null, cost: null, leftG: null }]);
    expect((await plan(orchard(APPLE, ['Feed, 21-0-0, 4 lb']))).result.buy).toEqual([{ bag: 'Feed', needG: expect.closeTo(12.5 * OZ, 3), bags: 1, cost: null, leftG: expect.closeTo(4 * LB - 12.5 * OZ, 3) }]);
  });
  test('the buying list is what the days weigh out', async () => {
    const { result } = await plan(orchard(`7 ${APPLE}\n  B: 3 plum, planted 2024, 6 ft across, bank`, ['Sulphate of ammonia, 21-0-0, 4 lb, $9']));
    const used = result.days.flatMap((d: { doses: { g: number; count: number }[] }) => d.doses).reduce((s: number, d: { g: number; count: number }) => s + d.g * d.count, 0);
    const [buy] = result.buy;
    expect(buy.bags).toBe(Math.ceil(used / (4 * LB)));
    expect(buy.leftG).toBeCloseTo(buy.bags * 4 * LB - used, 6);
  });
});

describe('labels', () => {
  const grade = (where: string, label: string) => loadOrchard(`where: ${where}\ntrees:\n  A: apple\nstore:\n  - ${label}\n`, 'o').orchard!.store[0]!.grade;
  test('Australia prints the element: 9 % P is 20.6 % P2O5, 50 % K is 60.2 % K2O', () => {
    expect(grade('Tasmania, Australia', 'Mixed, 5-9-10').P2O5).toBeCloseTo(0.2062, 4);
    expect(grade('Tasmania, Australia', 'Potash, 0-0-50').K2O).toBeCloseTo(0.6023, 4);
    expect(grade('Tasmania, Australia', 'Mixed, 5-9-10').N).toBeCloseTo(0.05, 12);
  });
  test('elsewhere the oxide', () => {
    expect(grade('Ohio, US', 'Mixed, 5-9-10')).toEqual({ N: 0.05, P2O5: 0.09, K2O: 0.1 });
    expect(grade('Kent, UK', 'Mixed, 5-9-10')).toEqual({ N: 0.05, P2O5: 0.09, K2O: 0.1 });
  });
  test('more than the bag can hold as oxide is refused', () => {
    // 46 % P would be 105 % P2O5.
    const { orchard: none, notices } = loadOrchard('where: Tasmania, Australia\ntrees:\n  A: apple\nstore:\n  - Odd, 0-46-0\n', 'o');
    expect(none).toBeNull();
    expect(notices.map((n) => n.code)).toContain('grade-impossible');
  });
});
