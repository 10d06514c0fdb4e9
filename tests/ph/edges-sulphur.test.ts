// Which published rates of sulphur serve a soil, where each of them ends, and how much goes on at a time, asked of the parts themselves.
// Figures as the pages print them, typed again; a pound to 100 sq ft is 453.59237 ÷ 9.290304 = 48.824 g/m², to an acre 0.11209, a kilogram to the hectare 0.1.
import { describe, expect, test } from 'vitest';
import type { PhSoil } from '../../src/ph/soil.ts';
import { freeLime, sulphurDose, sulphurLimit, sulphurRates } from '../../src/ph/sulphur.ts';
import { told } from '../../src/reason/figure.ts';
import type { Crop } from '../../src/tables/crops.ts';

const soil = (ph: number, more: Partial<PhSoil> = {}): PhSoil => ({ now: told(ph, 'pH', 'soil', 'test'), buffer: null, acidity: null, aluminium: null, baseSaturation: null, calcium: null, exchangeableMagnesium: null, ecec: null, bufferCapacity: null, lime: null, depthM: null, texture: null, cec: null, carbonate: null, organic: null, magnesium: null, ...more });
const rates = (ground: PhSoil, goal: number, crop: Crop | null = 'apple') => sulphurRates(ground, told(goal, 'pH', 'soil', 'test'), crop);
/** As printed, of one publication. */
const printed = (source: string, ground: PhSoil, goal: number, crop: Crop | null = 'apple'): string[] =>
  rates(ground, goal, crop).all.map((r) => r.from[0]!).filter((f) => f.cite.source === source).map((f) => `${Number(f.value.toFixed(3))} ${f.unit}`);

describe('every rate that fits, in its own unit and the least first', () => {
  test('sand from 6 to 5, for blueberries', () => {
    const { all, followed } = rates(soil(6, { texture: 'sand' }), 5, 'blueberry');
    expect(all.map((r) => [r.from[0]!.cite.source, Number(r.value.toFixed(2))]).sort()).toEqual([
      ['extension-blueberry-ph', 48.82], ['guides-sulphur-page', 36.62], ['maine-254', 112.09], ['michigan-sulphur', 39.79], ['minnesota-sulphur', 48.82], ['minnesota-sulphur', 97.65], ['minnesota-sulphur-answer', 39.06],
      ['old-house-sulphur-page', 73.24], ['ontario-blueberry-ph', 35], ['purdue-sulphur', 34.18],
    ]);
    expect(all.map((r) => r.value)).toEqual(all.map((r) => r.value).toSorted((a, b) => a - b));
    expect(followed?.from[0]!.cite.source).toBe('purdue-sulphur');
  });
  // Any soil by the old-house page 15 lb to 1,000 sq ft, clay by Purdue 17: a page without a publisher is shown and not followed.
  test('the least that no weak page gives', () => {
    const { all, followed } = rates(soil(6, { texture: 'clay' }), 5);
    expect([all[0]!, followed!].map((r) => [r.from[0]!.cite.source, Number(r.value.toFixed(1))])).toEqual([['old-house-sulphur-page', 73.2], ['purdue-sulphur', 83]]);
  });
  test.each<[string, string, PhSoil, number, readonly string[]]>([
    ['ontario-blueberry-ph', 'up to 6.5', soil(6.5, { texture: 'loam' }), 5.5, ['1100 kg/ha']], ['ontario-blueberry-ph', 'from 6.6 none', soil(6.6, { texture: 'loam' }), 5.5, []], ['ontario-blueberry-ph', 'none for clay', soil(6, { texture: 'clay' }), 5.5, []],
    // Silt loam 2 lb a tenth, a third more on clay, a third less on sand.
    ['tennessee-blueberry-ph', 'to 5.5', soil(6, { texture: 'loam' }), 5.5, ['10 lb/1000 sq ft']], ['tennessee-blueberry-ph', 'no further', soil(6, { texture: 'loam' }), 5.4, []], ['tennessee-blueberry-ph', 'clay', soil(6, { texture: 'clay' }), 5.7, ['8 lb/1000 sq ft']], ['tennessee-blueberry-ph', 'sand', soil(6, { texture: 'sand' }), 5.7, ['4 lb/1000 sq ft']],
    ['minnesota-sulphur', 'from 7', soil(7, { texture: 'loam' }), 6, ['3 lb/100 sq ft', '6 lb/100 sq ft']], ['minnesota-sulphur', 'from 7.1 none', soil(7.1, { texture: 'loam' }), 6, []], ['minnesota-sulphur', 'from 5.5', soil(5.5, { texture: 'loam' }), 5, ['1.5 lb/100 sq ft', '3 lb/100 sq ft']], ['minnesota-sulphur', 'from 5.4 none', soil(5.4, { texture: 'loam' }), 5, []],
    ['guides-sulphur-page', 'to 4.5', soil(5.5, { texture: 'loam' }), 4.5, ['1.5 lb/100 sq ft', '2 lb/100 sq ft']], ['guides-sulphur-page', 'no further', soil(5.5, { texture: 'loam' }), 4.4, []],
    ['extension-blueberry-ph', '2 % of organic matter', soil(6, { texture: 'sand', organic: 2 }), 5, ['1 lb/100 sq ft']], ['extension-blueberry-ph', 'over it', soil(6, { texture: 'sand', organic: 2.1 }), 5, ['2 lb/100 sq ft']], ['purdue-sulphur', 'which organic matter does not change', soil(6, { texture: 'sand', organic: 9 }), 5, ['7 lb/1000 sq ft']],
    // Michigan, to 4.5: from 6 on loam 1,540, from 5 530; half way from 5 to 5.5 780; none for sandy loam, none from over 7.
    ['michigan-sulphur', 'to 4.5', soil(6, { texture: 'loam' }), 4.5, ['1540 lb/acre']], ['michigan-sulphur', 'to 5', soil(6, { texture: 'loam' }), 5, ['1010 lb/acre']], ['michigan-sulphur', 'between rows', soil(5.25, { texture: 'loam' }), 4.5, ['780 lb/acre']], ['michigan-sulphur', 'under 4.5', soil(6, { texture: 'loam' }), 4.4, []], ['michigan-sulphur', 'from 7', soil(7, { texture: 'clay' }), 4.5, ['3830 lb/acre']], ['michigan-sulphur', 'from 7.1', soil(7.1, { texture: 'clay' }), 4.5, []], ['michigan-sulphur', 'sandy loam', soil(6, { texture: 'sandy loam' }), 4.5, []],
    // Ohio, to 6.5 alone, for 5 to 20 meq: at 7.0 and 10 meq 360, half way to 20 meq 540; at 7.25 and 5 meq 240.
    ['ohio-agf507', 'at 10 meq', soil(7, { cec: 10 }), 6.5, ['360 lb/acre']], ['ohio-agf507', 'at 15 meq', soil(7, { cec: 15 }), 6.5, ['540 lb/acre']], ['ohio-agf507', 'at 5 meq', soil(7.25, { cec: 5 }), 6.5, ['240 lb/acre']], ['ohio-agf507', 'at 20 meq', soil(8.5, { cec: 20 }), 6.5, ['1460 lb/acre']],
    ['ohio-agf507', 'under 5 meq', soil(7, { cec: 4.9 }), 6.5, []], ['ohio-agf507', 'over 20 meq', soil(7, { cec: 20.1 }), 6.5, []], ['ohio-agf507', 'over 8.5', soil(8.6, { cec: 10 }), 6.5, []], ['ohio-agf507', 'another goal', soil(7, { cec: 10 }), 6.4, []], ['ohio-agf507', 'no capacity told', soil(7), 6.5, []],
    // RHS: from 7.0 or 7.5 to 6.0 or 6.5, 135 g on sand, 270 g on clay; loam lies between.
    ['rhs-acidifying', 'sand', soil(7, { texture: 'sand' }), 6.5, ['135 g/m2']], ['rhs-acidifying', 'sandy loam', soil(7.5, { texture: 'sandy loam' }), 6, ['135 g/m2']], ['rhs-acidifying', 'loam', soil(7, { texture: 'loam' }), 6.5, ['135 g/m2', '270 g/m2']], ['rhs-acidifying', 'clay', soil(7, { texture: 'clay' }), 6.5, ['270 g/m2']],
    ['rhs-acidifying', 'from 6.9', soil(6.9, { texture: 'sand' }), 6.5, []], ['rhs-acidifying', 'from 7.6', soil(7.6, { texture: 'sand' }), 6.5, []], ['rhs-acidifying', 'to 5.9', soil(7, { texture: 'sand' }), 5.9, []], ['rhs-acidifying', 'to 6.6', soil(7, { texture: 'sand' }), 6.6, []],
  ])('%s, %s', (source, _, ground, goal, expected) => { expect(printed(source, ground, goal)).toEqual(expected); });
  // Maine: wild-blueberry land.
  test('a rate for blueberries is none for a tree', () => {
    const ground = soil(6, { texture: 'sand' });
    expect([printed('maine-254', ground, 5, 'blueberry'), printed('maine-254', ground, 5, 'apple'), printed('maine-254', ground, 5, null)]).toEqual([['1000 lb/acre'], [], []]);
  });
  // Michigan: up to 5 meq sand, to 8 sandy loam, to 12 loam, over that clay. Ontario a tenth 3.5, 7.5, 11 g on the first three; Purdue 17 lb on clay.
  test.each([[null, 35], [5, 35], [5.1, 75], [8, 75], [8.1, 110], [12, 110], [12.1, null]])('texture by an exchange capacity of %j', (cec, grams) => {
    expect(rates(soil(6, { cec }), 5).all.filter((r) => r.from[0]!.cite.source === 'ontario-blueberry-ph').map((r) => Number(r.value.toFixed(6)))).toEqual(grams === null ? [] : [grams]);
    if (grams === null) expect(printed('purdue-sulphur', soil(6, { cec }), 5)).toEqual(['17 lb/1000 sq ft']);
  });
  test('the texture told counts before it', () => { expect(printed('purdue-sulphur', soil(6, { cec: 20, texture: 'sand' }), 5)).toEqual(['7 lb/1000 sq ft']); });
  // Tennessee 3 in deep, Minnesota 6 in, the RHS 15 cm; others name no depth. Ohio's goes back to the capacity.
  test.each([['tennessee-blueberry-ph', soil(7, { texture: 'loam' }), 6.5, [7, 6.5, 0.0762]], ['minnesota-sulphur', soil(7, { texture: 'loam' }), 6.5, [7, 6.5, 0.1524]], ['rhs-acidifying', soil(7, { texture: 'sand' }), 6.5, [7, 6.5, 0.15]], ['purdue-sulphur', soil(7, { texture: 'loam' }), 6.5, [7, 6.5]], ['ohio-agf507', soil(7, { cec: 10 }), 6.5, [7, 6.5, 10]], ['michigan-sulphur', soil(7, { texture: 'loam' }), 6.5, [7, 6.5]]] as const)('what a rate of %s goes back to', (source, ground, goal, expected) => {
    const figure = rates(ground, goal).all.map((r) => r.from[0]!).find((f) => f.cite.source === source)!;
    expect(figure.from.map((f) => Number(f.value.toFixed(4)))).toEqual(expected);
    expect(figure).toMatchObject({ of: 'sulphur', step: 'sulphur-rule' });
  });
});

describe('how much at a time', () => {
  const pure = (grams: number) => told(grams, 'g/m2', 'sulphur', 'test');
  // eXtension: at most 0.7 lb to 100 sq ft a year on established bushes, 34.18 g; Maine 1,000 lb to the acre, 112.1 g.
  test('a year, on the surface', () => {
    expect(sulphurLimit().value).toBeCloseTo(34.177, 3);
    expect(sulphurLimit().from.map((f) => Number(f.value.toFixed(2)))).toEqual([112.09]);
    expect(sulphurDose(pure(34), 1).value).toBe(34);
    expect(sulphurDose(pure(35), 1)).toMatchObject({ step: 'sulphur-limited', of: 'sulphur' });
    expect(sulphurDose(pure(35), 1).value).toBeCloseTo(34.177, 3);
    expect(sulphurDose(pure(35), 1).from.map((f) => Number(f.value.toFixed(1)))).toEqual([35, 34.2]);
  });
  // Tennessee, before planting: over 30 lb to 1,000 sq ft (146.5 g) two thirds first, the rest after a test.
  test('mixed in before planting', () => {
    expect(sulphurDose(pure(146), 1, true).value).toBe(146);
    const first = sulphurDose(pure(150), 1, true);
    expect(first.value).toBeCloseTo(100, 9);
    expect([first.step, first.from.map((f) => Number(f.value.toFixed(1)))]).toEqual(['sulphur-first', [150, 146.5]]);
  });
  // 27 g of pure sulphur is 30 g of a product of 90 %.
  test('of a product', () => {
    const dose = sulphurDose(pure(27), 0.9);
    expect(dose.value).toBeCloseTo(30, 9);
    expect([dose.step, dose.from.map((f) => [f.value, f.unit])]).toEqual(['sulphur-strength', [[27, 'g/m2'], [90, '%']]]);
    expect(sulphurDose(pure(180), 0.8, true).value).toBeCloseTo(150, 9);
  });
  // AGVISE: 6,400 lb to the acre for each per cent of carbonate.
  test('what free lime swallows', () => {
    expect(freeLime(2)).toMatchObject({ value: 12_800, unit: 'lb/acre', of: 'sulphur', step: 'free-lime' });
    expect(freeLime(0.5).from.map((f) => [f.value, f.unit, f.of])).toEqual([[0.5, '%', 'lime']]);
  });
});
