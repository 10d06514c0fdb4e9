// The season's plan of one or two plants, asked for what the plan itself decides: which soil a plant stands in, whether it has come, what the diary takes off, what is to buy. Bud break 12 April, first frost 12 October; days and sums by hand.
import { describe, expect, test } from 'vitest';
import type { ZoneSoil } from '../../src/gather.ts';
import type { Entry } from '../../src/orchard/diary.ts';
import { loadOrchard } from '../../src/orchard/load.ts';
import { planSeason } from '../../src/plan.ts';
import type { Plan, TreePlan } from '../../src/planned.ts';
import { zoneOf } from './parts.ts';

const zone = (name: string): ZoneSoil => zoneOf(name, null, { sample: { name, taken: '2025-11-01', readings: [] } });
const APPLE = 'apple, planted 2010, 12 ft across, shoots 4 in 2025';
function plan(trees: string, { today = '2026-03-14', soil = '', zones = [] as ZoneSoil[], diary = [] as Entry[], only = undefined as string | undefined, bag = 'Sulphate of ammonia, 21-0-0, 20 lb, $9' } = {}): Plan {
  const { orchard } = loadOrchard(`where: Ohio, US\nbud-break: 12 April\nfirst-frost: 12 October\n${soil}trees:\n${trees}store:\n  - ${bag}\n`, 'orchard.yaml');
  return planSeason(orchard!, zones, today, { diary, only });
}
const first = (p: Plan): TreePlan => p.trees[0]!;
const grams = (t: TreePlan): number => t.feeds.reduce((sum, f) => sum + f.g, 0);
const entry = (date: string, g: number | null, bag = 'Sulphate of ammonia'): Entry => ({ date, trees: ['A'], what: 'fed', bag, g, m: null, amount: null, note: '', line: 2 });

describe('which soil', () => {
  const two = 'soil:\n  bank: a.txt\n  hill: b.txt\n';
  const soilOf = (line: string, zones: ZoneSoil[]): unknown => first(plan(`  A: ${APPLE}${line}\n`, { soil: two, zones })).facts.soil;
  test('the zone it names, else the only one; of several none; a tub none', () => {
    const [bank, hill] = [zone('bank'), zone('hill')];
    expect([soilOf(', hill', [bank, hill]) === hill.soil, soilOf('', [bank]) === bank.soil, soilOf('', [bank, hill]), soilOf(', hill', [bank]), soilOf(', tub 40 l', [bank])]).toEqual([true, true, null, null, null]);
  });
  test('with its lab\'s advice, which the plan follows where the grower says so', () => {
    const bank = { ...zone('bank'), advice: [{ of: 'N', value: 5, unit: 'g/m2', per: 'area', product: null, line: 3 }], byLab: true } as ZoneSoil;
    const { facts } = first(plan(`  A: ${APPLE}\n`, { zones: [bank] }));
    expect([facts.advice, facts.byLab]).toEqual([bank.advice, true]);
    expect([first(plan(`  A: ${APPLE}\n`)).facts.advice, first(plan(`  A: ${APPLE}\n`)).facts.byLab]).toEqual([[], false]);
  });
});

describe('whether it has come', () => {
  const facts = (line: string, today = '2026-03-14') => { const { facts: f } = first(plan(`  A: ${line}\n`, { today })); return ['bed' in f, f.years]; };
  test('from the first of its month, without a month from December', () => {
    expect([facts('apple, planting April 2026, bed 3 m x 3 m', '2026-03-31'), facts('apple, planting April 2026, bed 3 m x 3 m', '2026-04-01'), facts('apple, planting 2025, bed 3 m x 3 m', '2025-11-30'), facts('apple, planting 2025, bed 3 m x 3 m', '2025-12-01')]).toEqual([[true, null], [false, 0], [true, null], [false, 1]]);
    expect([facts('apple, planted 2010'), facts('apple, 12 ft across'), facts('lemon, planting October 2026, tub 40 l')]).toEqual([[false, 16], [false, null], [false, null]]);
  });
  test('a borrowed crop feeds it', () => { expect([first(plan('  A: crab apple, fed as apple, planted 2010\n')).facts.crop, first(plan(`  A: ${APPLE}\n`)).facts.crop]).toEqual(['apple', 'apple']); });
});

describe('the diary', () => {
  const whole = first(plan(`  A: ${APPLE}\n`));
  test('a dose that was planned is ticked off', () => {
    const after = first(plan(`  A: ${APPLE}\n`, { today: '2026-04-20', diary: [entry('2026-04-12', grams(whole))] }));
    expect([grams(whole) > 0, after.feeds, after.fed.length, after.short.N < 3]).toEqual([true, [], 1, true]);
  });
  test('without a weight it is the planned one', () => { expect(first(plan(`  A: ${APPLE}\n`, { today: '2026-04-20', diary: [entry('2026-04-12', null)] })).feeds).toEqual([]); });
  test('another amount leaves the rest of the need', () => {
    const after = first(plan(`  A: ${APPLE}\n`, { today: '2026-04-20', diary: [entry('2026-04-12', grams(whole) / 2)] }));
    // To half an ounce, 14.2 g.
    expect(Math.abs(grams(after) - grams(whole) / 2)).toBeLessThan(15);
    expect(after.feeds[0]!.window.from).toBe('2026-05-20');
  });
  test('what an unfed tree was to have stays its own, and its day keeps its number', () => {
    const both = plan(`  A: ${APPLE}\n  B: apple, planted 2024, 6 ft across\n`, { today: '2026-04-20', diary: [entry('2026-04-12', grams(first(plan(`  A: ${APPLE}\n  B: apple, planted 2024, 6 ft across\n`))))] });
    expect([both.trees[0]!.feeds.length, both.trees[1]!.feeds.length > 0, both.days[0]?.number]).toEqual([0, true, 1]);
  });
  test('last season\'s feeds are summed for the rules that go by them', () => {
    const lastN = (...diary: Entry[]): number | null => first(plan(`  A: ${APPLE}\n`, { diary })).facts.lastN;
    // A hundred grams of 21 % are 21 g.
    expect([lastN(), lastN(entry('2025-04-12', 100), entry('2025-05-30', 100)), lastN(entry('2025-04-12', null))]).toEqual([null, expect.closeTo(42, 9), null]);
  });
});

describe('the plan as a whole', () => {
  test('of one tree alone, however its name is written; what is to buy is its part', () => {
    const trees = `  Gate: ${APPLE}\n  Wall: ${APPLE}\n`;
    expect([plan(trees).trees.length, plan(trees, { only: 'gAtE' }).trees.map((t) => t.tree.name), plan(trees, { only: 'x' }).trees]).toEqual([2, ['Gate'], []]);
    expect(plan(trees, { only: 'wall' }).buy[0]!.needG).toBeCloseTo(grams(plan(trees).trees[1]!), 6);
    expect(plan(trees).buy[0]!.needG).toBeCloseTo(grams(plan(trees).trees[0]!) + grams(plan(trees).trees[1]!), 6);
  });
  test('each plant of a row is bought for', () => { const row = plan(`  Row: 3 apples${APPLE.slice(5)}\n`); expect(row.buy[0]!.needG).toBeCloseTo(3 * grams(first(row)), 6); });
  test('what a tub gets in its water is bought too', () => {
    const p = plan('  L: lemon, planted 2016, tub 60 l\n', { bag: 'Soluble feed, 20-20-20, water soluble, 2 lb, $9' });
    const { dilute } = first(p);
    expect(p.buy.map((b) => b.needG)).toEqual([expect.closeTo(dilute!.times * dilute!.g.value, 6)]);
  });
  test('questions of the plants, and no doubt of the bags', () => {
    const p = plan('  A: apple, 12 ft across\n');
    expect([p.sure, p.questions.some((q) => q.code === 'planted-missing'), p.notices.some((n) => n.code === 'mix-unsure')]).toEqual([true, true, false]);
  });
  test('a bag that may not feed a plant is not for it', () => {
    expect([first(plan('  B: blueberry, planted 2016, 4 ft across\n', { bag: 'Calcium nitrate, 15-0-0, 20 lb, $9' })).feeds, first(plan(`  A: ${APPLE}\n`, { bag: 'Calcium nitrate, 15-0-0, 20 lb, $9' })).feeds.length > 0]).toEqual([[], true]);
  });
});
