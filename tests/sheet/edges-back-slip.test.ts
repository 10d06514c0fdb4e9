// The back of the sheet: what is assumed, what to measure, the slip for the store.
import { describe, expect, test } from 'vitest';
import type { Plan, TreePlan } from '../../src/plan.ts';
import { backOf } from '../../src/sheet/back.ts';
import { dollars, feed } from '../bags/parts.ts';
import { dose, fig, plan, tree, w, zone } from './parts.ts';

type More = Parameters<typeof plan>[1];
const SULPHATE = feed('Sulfate of ammonia', [21, 0, 0], { g: 2000, price: dollars(9) });
const FEEDS = { feeds: [dose(SULPHATE, 350)] };
const back = (trees: readonly TreePlan[], more: More = {}) => backOf(plan(trees, more), w);

describe('what is assumed', () => {
  const FROST = 'First frost about 12 October.';
  const assumed = (trees: readonly TreePlan[], more: More = {}): string[] => back(trees, more).assumed;
  test('a crown that was guessed, where it is fed by it', () => {
    const guessed = { crown: { diameter: fig(4), guessed: true } };
    const of = (more: Parameters<typeof tree>[1], rest: object, facts: object = guessed): string[] => assumed([tree('A', more, { ...FEEDS, ...rest, facts })]);
    expect([of({}, {}), of({}, {}, {}), of({}, { feeds: [] }), of({ tub: 40 }, {}), of({}, {}, { ...guessed, bed: fig(2) })]).toEqual([['A: crown 4 m across. †', FROST], [FROST], [FROST], [FROST], [FROST]]);
  });
  test('shoots whose year nobody wrote are those of last year', () => {
    expect([assumed([tree('A', { shoots: { m: 0.2 } })]), assumed([tree('A', { shoots: { m: 0.2, year: 2025 } })])]).toEqual([['A: shoots of 2025.', FROST], [FROST]]);
  });
  test('the dates of the year, with a dagger where nobody told them', () => {
    const dates = (...told: string[]): string[] => assumed([tree('A')], { season: { assumed: told } });
    expect([dates(), dates('bud-break'), dates('first-frost'), dates('bud-break', 'first-frost')]).toEqual([[FROST], ['Buds break about 14 April. †', FROST], [`${FROST} †`], ['Buds break about 14 April. †', `${FROST} †`]]);
  });
  test('the lawn', () => { expect(assumed([tree('A', { flags: ['grass'] }), tree('B', { flags: ['grass', 'fed lawn'] })])).toEqual([FROST, 'Lawn fed yearly.']); expect(assumed([tree('A', { flags: ['grass'] })])).toEqual([FROST]); });
  test('what the dagger means, and who has not lent a name', () => { expect(back([]).foot).toBe('† rests on memory or on our judgement. Not endorsed by the publishers cited.'); });
});

test('shoots are measured on what stands in the ground and grows', () => {
  const waits = tree('W', {}, { need: { verdict: 'wait', stops: [{ id: 'salts' }] } });
  expect(back([tree('A'), waits, tree('B'), tree('Fig', { tub: 40 }), tree('Bed', {}, { facts: { bed: fig(2) } })]).measure).toBe('In fall, new shoots: A ______  B ______');
  expect(back([waits]).measure).toBe('');
  // Growth is printed for apples and peaches (Iowa), for strawberries, grapes, brambles and citrus by nobody here.
  expect(back([tree('A'), tree('Peach', { crop: 'peach' }), tree('Berries', { crop: 'strawberry' }), tree('Vine', { crop: 'grape' }), tree('Canes', { crop: 'raspberry' }), tree('Lemon', { crop: 'citrus' })]).measure).toBe('In fall, new shoots: A ______  Peach ______');
});

describe('the slip for the store', () => {
  type Purchase = Plan['buy'][number];
  const buy = (bag: Purchase['bag'], more: Partial<Purchase> = {}): Purchase => ({ bag, needG: 500, bags: 1, cost: 9, leftG: 1500, ...more });
  const slip = (list: readonly Purchase[], more: More = {}): string[] => back([], { buy: list, ...more }).slip;
  const KEEPS = 'Kept dry, leftovers keep.';
  const OTHER = 'Another grade? No weed killer; ask Medlar.';
  const shed = feed('Sulfate of ammonia', [21, 0, 0], { left: 800 });
  test('how many of which, what they cost, what is needed and left', () => {
    expect(slip([buy(SULPHATE)])).toEqual(['1 bag Sulfate of ammonia 21-0-0, 2 kg, about $9. Need 500 g; 1.5 kg left over.', `${KEEPS} ${OTHER}`]);
    expect(slip([buy(SULPHATE, { bags: 2, cost: 18, needG: 4000, leftG: 0 })])).toEqual(['2 bags Sulfate of ammonia 21-0-0, 2 kg, about $18. Need 4 kg; 0 g left over.', OTHER]);
    expect(slip([buy(feed('Potash', [0, 0, 50], { g: 2000 }), { cost: null })])[0]).toBe('1 bag Potash 0-0-50, 2 kg. Need 500 g; 1.5 kg left over.');
  });
  test('a label without a weight', () => { expect(slip([buy(feed('Potash', [0, 0, 50]), { bags: null, cost: null, leftG: null })])).toEqual(['Potash 0-0-50, 500 g.', OTHER]); });
  test('what stands in the shed is not bought, nor does it keep the slip from being empty', () => {
    expect(slip([buy(shed, { bags: 0, cost: 0, leftG: 300 })])).toEqual(['Sulfate of ammonia: enough in the shed.', OTHER]);
    expect(slip([])).toEqual(['Nothing to buy.']);
  });
  test('the shed holds not enough of what is to be bought as well', () => {
    const bought = '1 bag Sulfate of ammonia 21-0-0, 2 kg, about $9. Need 500 g; 1.5 kg left over.';
    expect(slip([buy(shed, { needG: 800, bags: 0, cost: 0, leftG: 0 }), buy(SULPHATE)])).toEqual([bought, `${KEEPS} ${OTHER}`]);
    expect(slip([buy(feed('Potash', [0, 0, 50], { left: 800 }), { bags: 0, cost: 0, leftG: 300 }), buy(SULPHATE)])).toEqual(['Potash: enough in the shed.', bought, `${KEEPS} ${OTHER}`]);
  });
  test('another grade, by what the soil has enough of', () => { expect(slip([buy(SULPHATE, { leftG: 0 })], { zones: [zone('low'), zone('hill', { phosphorus: 'above' })] })[1]).toBe('Another grade? Middle number 0, no weed killer; ask Medlar.'); });
});
