// What kind of bag may go where: which plants, which can, how long it keeps, what to ask a clerk for. Rules and figures with their source; sums by hand.
import { describe, expect, test } from 'vitest';
import { isQuick, mayFeed } from '../../src/bags/choose.ts';
import { clerkList } from '../../src/bags/clerk.ts';
import { keepsOf } from '../../src/bags/keeps.ts';
import { dissolves, inOneCan, isSoluble, undissolved } from '../../src/bags/strength.ts';
import type { Bag } from '../../src/orchard/bag.ts';
import type { Ban } from '../../src/orchard/bans.ts';
import { MATERIALS } from '../../src/tables/materials.ts';
import { feed } from './parts.ts';

const of = (id: string): NonNullable<Bag['material']> => MATERIALS.find((m) => m.id === id)!;
const plain = feed('Plain', [20, 0, 0]);
const coated = feed('Coated', [15, 5, 10], { slow: true });

describe('may feed', () => {
  const may = (bag: Bag, crop: Parameters<typeof mayFeed>[1]['crop'] = 'apple', tub?: number, never: readonly Ban[] = []): boolean => mayFeed(bag, tub === undefined ? { crop } : { crop, tub }, never);
  const muriate = feed('Muriate', [0, 0, 60], { chloride: true });
  test('open ground', () => {
    expect([may(plain), may(coated), may(feed('Seaweed', [5, 0, 0], { liquid: true }))]).toEqual([true, true, false]);
    expect(may(feed('Weed and feed', [20, 0, 0], { weedKiller: true }))).toBe(false);
    expect(may(feed('Lime', [0, 0, 0], { amends: { kind: 'lime', strength: 1, dolomitic: false, burns: false } }))).toBe(false);
    expect([may(plain, 'apple', undefined, ['mineral']), may(plain, 'apple', undefined, ['chloride'])]).toEqual([false, true]);
  });
  // New York: no nitrates for blueberries.
  test('no nitrate for a blueberry', () => {
    const nitrate = feed('Nitrate', [15, 0, 0], { nitrate: true });
    expect([may(nitrate, 'blueberry'), may(nitrate), may(plain, 'blueberry')]).toEqual([false, true, true]);
  });
  test('muriate not for what takes chloride badly; in a mix with nitrogen there is little of it', () => {
    expect([may(muriate), may(muriate, 'peach'), may(feed('Mix', [10, 10, 10], { chloride: true }), 'peach'), may(feed('Sulphate', [0, 0, 50]), 'peach')]).toEqual([true, false, true, true]);
  });
  test('in a tub coated feed alone', () => { expect([may(coated, 'fig', 60), may(plain, 'fig', 60), may({ ...coated, nitrate: true }, 'blueberry', 60)]).toEqual([true, false, false]); });
  test('quick nitrogen', () => { expect([isQuick(plain), isQuick(coated), isQuick(muriate)]).toEqual([true, false, false]); });
});

describe('keeps', () => {
  const base = { organic: null, liquid: false, slow: false, material: null } as const;
  test.each<[string, Parameters<typeof keepsOf>[0], ReturnType<typeof keepsOf>]>([
    // Common practice: what is wet or lived a season, meals and coated grains two years, minerals as long as they are dry.
    ['fresh manure', { ...base, fresh: true }, 'keeps-season'], ['manure', { ...base, organic: 'manure' }, 'keeps-season'], ['compost', { ...base, organic: 'compost' }, 'keeps-season'], ['fish emulsion', { ...base, organic: 'meal', liquid: true }, 'keeps-season'],
    ['meal', { ...base, organic: 'meal' }, 'keeps-two-years'], ['coated', { ...base, slow: true }, 'keeps-two-years'], ['liquid', { ...base, liquid: true }, 'keeps-two-years'], ['ash', { ...base, organic: 'ash' }, 'keeps'], ['mineral', base, 'keeps'],
    // Draws water from the air at 47, 59 and 72 % of damp; at 79, 84 and 94 % no shed is so damp.
    ['calcium nitrate', { ...base, material: of('calcium-nitrate') }, 'keeps-sealed'], ['ammonium nitrate', { ...base, material: of('ammonium-nitrate') }, 'keeps-sealed'], ['urea', { ...base, material: of('urea') }, 'keeps-sealed'],
    ['ammonium sulphate', { ...base, material: of('ammonium-sulphate') }, 'keeps'], ['muriate', { ...base, material: of('potassium-chloride') }, 'keeps'], ['rock', { ...base, material: of('rock-phosphate') }, 'keeps'],
  ])('%s', (_, bag, wanted) => { expect(keepsOf(bag)).toBe(wanted); });
});

describe('in the can', () => {
  test('what a litre of cold tap water takes, as printed at 10 degrees', () => {
    expect([['urea', 850], ['potassium-sulphate', 90], ['ammonium-sulphate', 730]].map(([id, g]) => dissolves({ material: of(id as string) }) === g)).toEqual([true, true, true]);
    expect([dissolves({ material: null }), dissolves({ material: of('rock-phosphate') })]).toEqual([null, null]);
  });
  test('coated grains and what lived do not dissolve, unless they are liquid', () => {
    expect([undissolved(plain), undissolved(coated), undissolved(feed('Meal', [5, 0, 0], { organic: 'meal' })), undissolved(feed('Fish', [5, 0, 0], { organic: 'meal', liquid: true })), undissolved(feed('Slow', [5, 0, 0], { slow: true, liquid: true }))]).toEqual([null, 'slow', 'organic', null, null]);
  });
  test('sold for it, liquid, or of a salt that is known', () => {
    expect([isSoluble(plain), isSoluble(feed('L', [5, 0, 0], { liquid: true })), isSoluble(feed('S', [20, 20, 20], { soluble: true })), isSoluble(feed('Urea', [46, 0, 0], { material: of('urea') })), isSoluble(feed('Rock', [0, 3, 0], { material: of('rock-phosphate') }))]).toEqual([false, true, true, true, false]);
  });
  test('lime of calcium nitrate with a phosphate clouds it; fresh manure is no matter of the can', () => {
    const [calcium, map] = [feed('Calcium nitrate', [15, 0, 0], { material: of('calcium-nitrate') }), feed('MAP', [11, 52, 0], { material: of('map') })];
    expect(inOneCan([calcium, map]).map((f) => [f.a.label, f.b.label])).toEqual([['Calcium nitrate', 'MAP']]);
    expect(inOneCan([calcium])).toEqual([]);
    for (const fault of inOneCan([calcium, map, feed('Urea', [46, 0, 0], { material: of('urea') }), feed('Lime', [0, 0, 0], { amends: { kind: 'lime', strength: 1, dolomitic: false, burns: false } })])) expect(fault.rule).not.toBe('fresh');
  });
});

describe('what to ask for at the store', () => {
  const list = (n: number, p: number, k: number, chloride = false) => clerkList({ N: n, P2O5: p, K2O: k }, chloride, ['P2O5']);
  const told = (l: ReturnType<typeof list>): unknown => l.wishes.map((w) => [w.nutrient, ...w.feeds.map((f) => `${f.material.id} ${Math.round(f.g)}`)]);
  test('grams of each plain feed that bring it', () => {
    // 21 g of N are 100 g of 21-0-0 or 45.7 g of 46-0-0; 46 g of P2O5 100 g of 0-46-0; 50 g of K2O 100 g of 0-0-50 or 83 g of 0-0-60.
    expect(told(list(21, 0, 0))).toEqual([['N', 'ammonium-sulphate 100', 'urea 46']]);
    expect((told(list(0, 46, 0)) as string[][])[0]!.slice(0, 2)).toEqual(['P2O5', 'triple-superphosphate 100']);
    expect(told(list(0, 0, 50))).toEqual([['K2O', 'potassium-sulphate 100', 'potassium-chloride 83']]);
    expect(list(21, 0, 0).leave).toEqual(['P2O5']);
  });
  test('no muriate where chloride hurts; nothing for a gram', () => {
    expect(told(list(0, 0, 50, true))).toEqual([['K2O', 'potassium-sulphate 100']]);
    expect(told(list(1, 1, 1.1))).toEqual([['K2O', 'potassium-sulphate 2', 'potassium-chloride 2']]);
    expect(told(list(21, 0, 0, true))).toEqual([['N', 'ammonium-sulphate 100', 'urea 46']]);
  });
});
