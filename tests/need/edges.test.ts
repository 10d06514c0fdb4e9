// What one tree needs, decision by decision, on ten square metres of crown, asked of the parts themselves. Sources beside each; arithmetic by hand.
import { describe, expect, test } from 'vitest';
import { advised, counted, isFollowed, isTooMuch, isUnclear } from '../../src/need/advice.ts';
import { credited, isMuchCompost } from '../../src/need/credits.ts';
import type { Facts } from '../../src/need/facts.ts';
import { groundOf, growthOf } from '../../src/need/facts.ts';
import { magnesiumOf } from '../../src/need/magnesium.ts';
import { phosphateOf, potashOf } from '../../src/need/potash.ts';
import { stopsOf } from '../../src/need/stops.ts';
import { told } from '../../src/reason/figure.ts';
import type { Advice } from '../../src/soil/advice.ts';
import type { Value } from './parts.ts';
import { facts } from './parts.ts';

const OLD = 'apple, planted 2016, bearing';
const grams = (f: { readonly need: { readonly value: number } }): number => Number(f.need.value.toFixed(1));

// Weinsberg, bearing, kg/ha: below target 40 P2O5, 150 K2O, 50 MgO; at target 30 MgO; above none. RB209 (recalled): 80 kg of phosphate at index 0.
describe('phosphate', () => {
  const of = (target: string | undefined, line = OLD, more: readonly Value[] = [], how: Partial<Value> = {}): number => grams(phosphateOf(facts(line, [{ item: 'phosphorus', ...(target ? { target } : {}), ...how }, ...more])));
  test.each([['far-below', 40], ['below', 40], ['at', 0], ['above', 0], [undefined, 0]])('%s: %f g', (target, wanted) => { expect(of(target)).toBe(wanted); });
  test('untested', () => { expect(grams(phosphateOf(facts(OLD)))).toBe(0); });
  // Arizona: none in the planting year. Iowa: none in a fed lawn, but where it is very low.
  test('planting year and fed lawn', () => {
    expect(of('far-below', 'apple, planted 2026')).toBe(0);
    expect(of('below', 'apple, planted 2025')).toBe(40);
    expect(of('below', `${OLD}, fed lawn`)).toBe(0);
    expect(of('far-below', `${OLD}, fed lawn`)).toBe(40);
  });
  test('soil and leaf both very low: twice as much, but not in soil with free lime', () => {
    const low = `${OLD}, leaf P 0.05 %`;
    expect(of('far-below', low)).toBe(80);
    expect(of('below', low)).toBe(40);
    for (const [word, wanted] of [['low', 80], ['medium', 40], ['high', 40], ['very-high', 40]] as const) expect(of('far-below', low, [{ item: 'carbonate', word }])).toBe(wanted);
  });
  // An acid extract overreads phosphorus in limy soil: the scale is not believed there, the lab's word and Olsen's are.
  test('free lime and an acid extract', () => {
    const limy: Value[] = [{ item: 'carbonate', word: 'high' }];
    expect(of('below', OLD, limy, { by: 'scale', method: 'mehlich-3' })).toBe(0);
    expect(of('below', OLD, limy, { by: 'scale', method: 'olsen' })).toBe(40);
    expect(of('below', OLD, limy, { by: 'word', method: 'mehlich-3' })).toBe(40);
    expect(of('below', OLD, [], { by: 'scale', method: 'mehlich-3' })).toBe(40);
  });
});

// Poland, bearing and low: 80 kg/ha K2O. Weinsberg's 150 is the most. British Columbia, soil and leaf both low: 200 kg K, ÷ 0.8301 = 240.9 kg K2O.
describe('potash', () => {
  const need = (target: string | undefined, line = OLD, more: readonly Value[] = [], how: Partial<Value> = {}): ReturnType<typeof potashOf> => potashOf(facts(line, [{ item: 'potassium', ...(target ? { target } : {}), ...how }, ...more]));
  const of = (...args: Parameters<typeof need>): number => grams(need(...args));
  test.each([['far-below', 150], ['below', 80], ['at', 0], ['above', 0], [undefined, 0]])('%s: %f g', (target, wanted) => { expect(of(target)).toBe(wanted); });
  test('planting year, fed lawn, a young tree', () => {
    expect(of('far-below', 'apple, planted 2026')).toBe(0);
    expect(of('below', `${OLD}, fed lawn`)).toBe(0);
    expect(of('far-below', `${OLD}, fed lawn`)).toBe(150);
    // Our judgement: young trees carry no crop to replace, so half below target and none at it.
    expect(of('below', 'apple, planted 2024')).toBe(40);
    expect(of('far-below', 'apple, planted 2024')).toBe(75);
    expect(need('at', 'apple, planted 2024').ask).toBeNull();
  });
  test('soil and leaf both low', () => {
    expect(of('far-below', `${OLD}, leaf K 0.3 %`)).toBeCloseTo(240.9, 1);
    expect(of('below', `${OLD}, leaf K 0.3 %`)).toBe(80);
  });
  test('what the crop took: never more than is given below target', () => {
    expect(of('at', `${OLD}, fruit 2000 kg 2025`)).toBe(150);
    expect(of('below', `${OLD}, fruit 2000 kg 2025`)).toBe(150);
    expect(of('above', `${OLD}, fruit 2000 kg 2025`)).toBe(0);
    // Twice what a small crop took is less than Poland's least.
    expect(of('below', `${OLD}, fruit 1 kg 2025`)).toBe(80);
    expect([need('at').ask, need('below').ask, need('at', `${OLD}, fruit 20 kg 2025`).ask]).toEqual(['fruit-weight', null, null]);
  });
  // Potash takes calcium and magnesium from the fruit: none on a kind with bitter pit, none while magnesium is low; Austria holds it back over 5 K to 1 Mg by CAL.
  test('held back', () => {
    expect(of('below', `${OLD}, pit-prone`)).toBe(0);
    for (const [rating, wanted] of [['very-low', 0], ['low', 0], ['medium', 80]] as const) expect(of('below', OLD, [{ item: 'magnesium', rating }])).toBe(wanted);
    const cal = { value: 300, method: 'cal' };
    expect(of('below', OLD, [{ item: 'magnesium', value: 59 }], cal)).toBe(0);
    expect(of('below', OLD, [{ item: 'magnesium', value: 60 }], cal)).toBe(80);
    expect(of('below', OLD, [{ item: 'magnesium', value: 59 }], { value: 300, method: 'mehlich-3' })).toBe(80);
    expect(of('below', OLD, [{ item: 'magnesium', value: 0 }], cal)).toBe(80);
  });
});

describe('magnesia', () => {
  const of = (target: string | undefined, line = OLD): number | null => { const m = magnesiumOf(facts(line, [{ item: 'magnesium', ...(target ? { target } : {}) }])); return m && Number(m.value.toFixed(1)); };
  test.each([['far-below', 50], ['below', 50], ['at', 30], ['above', 0], [undefined, null]])('%s: %s g', (target, wanted) => { expect(of(target)).toBe(wanted); });
  test('fed lawn, planting year', () => {
    expect(of('below', `${OLD}, fed lawn`)).toBe(0);
    expect(of('below', 'apple, planted 2026')).toBeNull();
  });
});

describe('stops', () => {
  const ids = (line: string, ...soil: Value[]): string[] => stopsOf(facts(line, soil)).map((s) => s.id);
  // Washington EM119E: nothing over 4 dS/m of the paste, or 1 of a thinner mix; very sensitive crops lose from 2 on.
  test.each([
    [OLD, 4, 'paste', []], [OLD, 4.1, 'paste', ['salts']], [OLD, 1, '1:1', []], [OLD, 1.1, '1:1', ['salts']], [OLD, 1.1, '1:2', ['salts']], [OLD, 1.1, undefined, ['salts']],
    ['10 strawberry, planted 2024', 2, 'paste', []], ['10 strawberry, planted 2024', 2.1, 'paste', ['salts']],
  ] as const)('%s: %f dS/m in %s', (line, value, method, wanted) => { expect(ids(line, { item: 'salts', value, unit: 'dS/m', ...(method ? { method } : {}) })).toEqual(wanted); });
  // memory: sodium on 15 % of the exchange sites, SAR 13, 400 mg/kg of lead.
  test.each([
    ['saturation-na', 15, []], ['saturation-na', 15.1, ['sodium']], ['sar', 13, []], ['sar', 13.1, ['sodium']], ['lead', 400, []], ['lead', 401, ['lead']],
  ] as const)('%s %f', (item, value, wanted) => { expect(ids(OLD, { item, value, ...(item === 'lead' ? {} : { unit: '%' }) })).toEqual(wanted); });
  test('the worse of the two sodium values is told; lead by the lab\'s word', () => {
    expect(stopsOf(facts(OLD, [{ item: 'saturation-na', value: 16 }, { item: 'sar', value: 20 }]))[0]!.value).toBe(20);
    expect(ids(OLD, { item: 'lead', word: 'medium' })).toEqual([]);
    for (const word of ['high', 'very-high']) expect(ids(OLD, { item: 'lead', word })).toEqual(['lead']);
  });
  test('what the grower says', () => { expect(ids(`${OLD}, standing water, herbicide, drought, fire blight`)).toEqual(['standing-water', 'herbicide', 'drought', 'fire-blight']); });
});

describe('young or not', () => {
  // practice: a strawberry bears the year after planting, canes and bushes in their third year, trees after four.
  test.each([
    ['apple, planted 2022', true], ['apple, planted 2021', false], ['raspberry, planted 2024', true], ['raspberry, planted 2023', false], ['strawberry, planted 2026', true], ['strawberry, planted 2025', false], ['apple', false],
    ['apple, planted 2025, bearing', false], ['apple, planted 2001, not bearing', true], ['apple, planted 2025, fruit heavy', false], ['apple, planted 2025, fruit light', false], ['apple, planted 2025, fruit 4 kg 2025', false], ['apple, planted 2025, fruit none 2025', true],
  ])('%s: %s', (line, young) => { expect(facts(line).young).toBe(young); });
  test.each([['shoots 20 cm', 0.2], ['shoots 20 cm 2025', 0.2], ['shoots 20 cm 2026', 0.2], ['shoots 20 cm 2024', null]])('growth of last season: %s', (said, m) => { expect(growthOf(facts(`${OLD}, ${said}`))).toBe(m); });
  test('bushes are fed on their part of the row, trees on what their crown covers', () => {
    expect(groundOf(facts('blueberry, planted 2016, spacing 2 x 3 m')).value).toBeCloseTo(6, 9);
    expect(groundOf(facts('apple, planted 2016, spacing 2 x 3 m')).value).toBeCloseTo(10, 9);
    expect(groundOf(facts('blueberry, planted 2016')).value).toBeCloseTo(10, 9);
  });
});

describe('what the lab itself recommends', () => {
  const says = (of: string, value: number, unit = 'lb/1000 sq ft', more: Partial<Advice> = {}): Advice => ({ of, value, unit, per: 'area', product: null, line: 7, ...more }) as unknown as Advice;
  const G = 453.59237 / (1000 * 0.3048 ** 2);
  const with_ = (advice: Advice[], more: Partial<Facts> = {}): Facts => facts(OLD, [], { advice, byLab: true, ...more });
  test('on the crown, by the tree, several products together', () => {
    expect(advised(with_([says('N', 1)]), 'N')!.value).toBeCloseTo(10 * G, 6);
    expect(advised(with_([says('N', 0.1, 'lb', { per: 'tree' })]), 'N')!.value).toBeCloseTo(45.359, 3);
    expect(advised(with_([says('N', 1), says('N', 0.5)]), 'N')!.value).toBeCloseTo(15 * G, 6);
    expect(advised(with_([says('N', 1)]), 'K2O')).toBeNull();
    // A symbol of the element is taken as the oxide, the lesser amount, until the grower says.
    expect(advised(with_([says('K', 1)]), 'K2O')!.value).toBeCloseTo(10 * G, 6);
    expect(advised(with_([says('P', 1)]), 'P2O5')!.value).toBeCloseTo(10 * G, 6);
    expect([says('P', 1), says('K', 1), says('N', 1), says('K2O', 1)].map(isUnclear)).toEqual([true, true, false, false]);
  });
  test('a product beside the nutrients is the way to bring them', () => {
    const product = says('N', 3, 'lb/1000 sq ft', { product: '10-10-10' });
    expect(counted([says('N', 1), product])).toEqual([says('N', 1)]);
    expect(counted([product])).toEqual([product]);
  });
  // Our judgement: over twice what turf gets at once (2 lb of N to 1000 sq ft), or 30 g/m² of phosphate or potash (Poland, before planting), nothing of it is followed.
  test('followed where it is asked for and not too much', () => {
    expect(isFollowed(with_([says('N', 2)]))).toBe(true);
    expect(isTooMuch(told(20 * G, 'g', 'N', 'test'), with_([]))).toBe(false);
    expect(isFollowed(with_([says('N', 2.01)]))).toBe(false);
    expect(isFollowed(with_([says('K2O', 30, 'g/m2')]))).toBe(true);
    expect(isFollowed(with_([says('N', 1), says('K2O', 30.1, 'g/m2')]))).toBe(false);
    expect(isFollowed(with_([says('N', 1), says('P2O5', 30.1, 'g/m2')]))).toBe(false);
    expect(isFollowed(with_([]))).toBe(false);
    for (const not of [{ byLab: false }, { years: 0 }, { bed: null }]) expect(isFollowed(with_([says('N', 1)], not))).toBe(false);
  });
});

describe('what is taken off the nitrogen', () => {
  const whole = told(100, 'g', 'N', 'test');
  const off = (line: string, soil: readonly Value[] = [], carried?: Facts['tree']['carried']): ReturnType<typeof credited> => { const f = facts(line, soil); return credited(carried ? { ...f, tree: { ...f.tree, carried } } : f, whole); };
  // Our judgement: a half, once, over 5 % organic matter, over clover, or on a kind that fire blight takes.
  test('halved once', () => {
    expect(off(OLD)).toMatchObject({ half: null, enough: null, carried: 0, need: { value: 100 } });
    expect(off(OLD, [{ item: 'organic-matter', value: 5, unit: '%' }]).half).toBeNull();
    expect(off(OLD, [{ item: 'organic-matter', value: 5.1, unit: '%' }])).toMatchObject({ half: 'organic', need: { value: 50 } });
    expect(off(`${OLD}, clover`)).toMatchObject({ half: 'clover', need: { value: 50 } });
    expect(off(`${OLD}, blight-prone`)).toMatchObject({ half: 'blight', need: { value: 50 } });
    expect(off(`${OLD}, clover, blight-prone`, [{ item: 'organic-matter', value: 9, unit: '%' }]).need.value).toBe(50);
  });
  const feed = (frees: number, n: number | null = 50) => ({ bag: 'Hen manure', date: '2025-04-01', n, frees, cite: whole.cite }) as unknown as NonNullable<Facts['tree']['carried']>[number];
  test('earlier feeds: each in turn, never under nothing', () => {
    expect(off(OLD, [], [feed(30), feed(20)])).toMatchObject({ enough: null, carried: 50, need: { value: 50, unit: 'g', of: 'N' } });
    expect(off(OLD, [], [feed(70), feed(40)])).toMatchObject({ enough: 'carried-enough', carried: 110, need: { value: 0 } });
    // Of unknown weight, nothing is taken off; what is already nothing stays so.
    expect(off(OLD, [], [feed(30, null)]).need.value).toBe(100);
    expect(off(OLD, [], [feed(100), feed(1)]).need.from[1]!.value).toBe(100);
  });
  // Bavaria: at most 1.5 litres of compost to the square metre: 15 litres here.
  test('too much compost', () => {
    expect(isMuchCompost(facts(`${OLD}, compost 15 L`))).toBe(false);
    expect(isMuchCompost(facts(`${OLD}, compost 15.1 L`))).toBe(true);
    expect(isMuchCompost(facts(OLD))).toBe(false);
  });
});
