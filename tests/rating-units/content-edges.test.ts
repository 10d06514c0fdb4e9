// Contents at their edges: what stands as it is, what is not made for want of a fact, and what each step says it holds.
// Factors by definition: 10 mmol of charge are one cmol, 1 cmol of K+ is 390.98 mg (IUPAC 39.098), of Ca2+ 200.39 mg (40.078 / 2).
import { describe, expect, test } from 'vitest';
import { contentOf, densityOf, depthCmOf, inUnit, lacks, volumeOf } from '../../src/rating/content.ts';
import type { Reading } from '../../src/soil/reading.ts';
import type { Scale } from '../../src/tables/ratings.ts';
import { expectSourced, made } from './made.ts';

const scale = (item: Scale['item'], unit: string): Scale => ({ id: 'x', item, method: 'any', serves: 'general', unit: unit as Scale['unit'], bands: [], cite: { source: 'definition', at: 'x', mark: 'derived' } });
const nc = { state: 'north carolina' };

describe('what was not measured has no content', () => {
  test('a word without a number is no zero', () => {
    const word = made('phosphorus', null, 'mg/kg');
    expect([contentOf(word, 1.2), volumeOf(made('phosphorus', null, 'mg/L')), inUnit(word, scale('phosphorus', 'mg/kg'))]).toEqual([null, null, null]);
    expect([lacks(made('phosphorus', null, null), null), lacks(made('ph', 6.5, 'pH'), null)]).toEqual([null, null]);
  });
  test('a number without a unit lacks its unit', () => { expect([contentOf(made('potassium', 100, null), 1.2), lacks(made('potassium', 100, null), 1.2)]).toEqual([null, 'unit']); });
  test('a content by weight lacks nothing', () => { expect(lacks(made('potassium', 100, 'ppm'), null)).toBeNull(); });
});

describe('in the unit of a scale', () => {
  test.each<[string, Reading, string, number | null]>([
    // The lab's own unit stands as printed, whatever depth it was summed over.
    ['nitrate in kg/ha', made('nitrate-n', 90, 'kg/ha'), 'kg/ha', 90],
    // 78.196 of 94.195: 2 × 39.098 of 2 × 39.098 + 15.999.
    ['an oxide in its own unit is an element', made('potassium', 100, 'mg/L', { form: 'K2O' }), 'mg/L', 83.015],
    ['by charge the ion is meant', made('potassium', 1, 'meq/100g', { form: 'K2O' }), 'meq/100g', 1],
    ['a mass in a litre, grams', made('sulphur', 0.02, 'g/dm3'), 'mg/L', 20],
    ['charge in a litre', made('calcium', 40, 'mmolc/dm3'), 'cmol/dm3', 4],
    // 2,000,000 lb an acre, the layer behind lb/acre = 2 × ppm, are 2,241,702 kg a hectare.
    ['kg/ha of the layer that lb/acre means', made('potassium', 100, 'mg/kg'), 'kg/ha', 224.17],
    ['phosphorus has no charge, in a litre', made('phosphorus', 25, 'mg/L'), 'mmolc/dm3', null],
    ['nor by weight', made('phosphorus', 25, 'mg/kg'), 'meq/100g', null],
    ['no volume is made of a weight', made('potassium', 100, 'mg/kg'), 'mmolc/dm3', null],
    ['a content is no share', made('phosphorus', 25, 'mg/kg'), '%', null],
    ['nor an index', made('phosphorus', 25, 'mg/kg'), 'index', null],
    ['nor an index of availability', made('manganese', 25, 'mg/kg'), 'MnAI', null],
    ['organic matter holds no one element', made('organic-matter', 3, '%'), 'g/kg', null],
  ])('%s', (_, reading, unit, value) => {
    const found = inUnit(reading, scale(reading.item, unit));
    if (value === null) expect(found).toBeNull();
    else expect(found).toBeCloseTo(value, 2);
  });
});

describe('by charge the ion is meant in every such unit', () => {
  test.each([['meq/100g', 390.98], ['cmol/kg', 390.98], ['mmol/kg', 39.098]] as const)('%s by weight', (unit, mg) => {
    expect(contentOf(made('potassium', 1, unit, { form: 'K2O' }), null)).toMatchObject({ value: expect.closeTo(mg, 9), of: 'K', from: [{ of: 'K', unit }] });
  });
  test.each([['cmol/dm3', 390.98], ['mmolc/dm3', 39.098]] as const)('%s by volume', (unit, mg) => {
    expect(volumeOf(made('potassium', 1, unit, { form: 'K2O' }))).toMatchObject({ value: expect.closeTo(mg, 9), of: 'K', step: 'charge-to-mass', from: [{ value: 1, unit, of: 'K', step: 'printed-by-lab' }] });
  });
});

describe('what a step holds', () => {
  test('the lab\'s own oxide, then the element', () => {
    // 100 P2O5 hold 43.64 P: 2 × 30.974 of 2 × 30.974 + 5 × 15.999.
    expect(volumeOf(made('phosphorus', 100, 'mg/L', { form: 'P2O5' }))).toMatchObject({ value: expect.closeTo(43.64, 2), of: 'P', from: [{ value: 100, unit: 'mg/L', of: 'P2O5', step: 'printed-by-lab' }] });
    expect(volumeOf(made('phosphorus', 0.1, 'g/dm3', { form: 'P2O5' }))).toMatchObject({ value: expect.closeTo(43.64, 2), of: 'P', from: [{ value: 100, unit: 'mg/L', of: 'P2O5', step: 'content-unit', from: [{ value: 0.1, unit: 'g/dm3', of: 'P2O5' }] }] });
    expect(contentOf(made('phosphorus', 10, 'mg/100g', { form: 'P2O5' }), null)).toMatchObject({ of: 'P', from: [{ value: 100, unit: 'mg/kg', of: 'P2O5', from: [{ value: 10, unit: 'mg/100g', of: 'P2O5' }] }] });
  });
  test('an element stays one', () => {
    expect(volumeOf(made('phosphorus', 25, 'mg/L'))).toMatchObject({ value: 25, of: 'P', step: 'printed-by-lab' });
    expect(volumeOf(made('sulphur', 0.02, 'g/dm3'))).toMatchObject({ of: 'S', from: [{ of: 'S' }] });
    expect(contentOf(made('phosphorus', 25, 'mg/kg'), null)).toMatchObject({ value: 25, of: 'P', step: 'printed-by-lab', from: [] });
    expect(contentOf(made('phosphorus', 25, 'mg/L'), 1.25)).toMatchObject({ value: 20, of: 'P', step: 'volume-to-weight', from: [{ value: 25, unit: 'mg/L', of: 'P' }] });
  });
});

describe('North Carolina\'s index', () => {
  // NCDA&CS Circular 1, recalled: P-I 100 is 120 mg/dm3.
  test('holds of indices alone: ppm stay ppm there', () => {
    expect(volumeOf(made('phosphorus', 100, 'mg/kg'), nc)).toBeNull();
    expect(contentOf(made('phosphorus', 100, 'ppm'), 1.2, nc)?.value).toBe(100);
    expect(volumeOf(made('phosphorus', 100, 'index'), nc)).toMatchObject({ of: 'P', from: [{ value: 100, unit: 'index', of: 'P', step: 'printed-by-lab' }] });
  });
});

describe('density', () => {
  const sample = (...values: (number | null)[]): { readings: Reading[] } => ({ readings: [made('phosphorus', 25, 'ppm'), ...values.map((v) => made('density', v, 'g/cm3'))] });
  // No soil weighs nothing.
  test('nothing, or none, is not printed', () => {
    expect([densityOf(sample()), densityOf(sample(0)), densityOf(sample(null)), densityOf(sample(0, 1.2)), densityOf(sample(1.1))]).toEqual([null, null, null, 1.2, 1.1]);
    for (const none of [0, -1]) expect(contentOf(made('phosphorus', 25, 'mg/L'), none)).toBeNull();
    for (const none of [0, -1]) expect(contentOf(made('phosphorus', 25, 'mg/kg'), none)?.value).toBe(25);
    // A litre of no soil weighs a billion kilograms, nor a billionth of a gram.
    for (const absurd of [1e13, 1e-13]) expect(contentOf(made('phosphorus', 25, 'mg/L'), absurd)).toBeNull();
    for (const none of [null, 0, -1]) expect(contentOf(made('phosphorus', 270.1, 'kg/ha'), none, { depthCm: 20 })?.from[2]?.step).toBe('density-assumed');
  });
  // Definition: 10 cm of a hectare are 1,000 m³, at 1 g/cm³ a million kg, so that 100 kg are 100 mg/kg; at 0.5 they are 200.
  test.each([[1, 10, 100], [0.5, 10, 200], [1.25, 20, 40]])('100 kg/ha at %d g/cm3 over %d cm are %d mg/kg', (density, depthCm, mg) => {
    const found = contentOf(made('potassium', 100, 'kg/ha'), density, { depthCm })!;
    expect(found.value).toBeCloseTo(mg, 9);
    expect(found.from).toMatchObject([{ value: 100, unit: 'kg/ha', of: 'K' }, { value: depthCm / 100, unit: 'm', of: 'soil', step: 'depth' }, { value: density, unit: 'g/mL', of: 'soil', step: 'printed-by-lab' }]);
  });
  test('the layer assumed keeps what was printed', () => { expect(contentOf(made('potassium', 100, 'kg/ha'), null)).toMatchObject({ step: 'layer-assumed', of: 'K', from: [{ value: 100, unit: 'kg/ha' }] }); });
});

// 1 in is 2.54 cm, 1 ft is 30.48 cm, by definition.
describe('depth of the layer, in cm, broken numbers', () => {
  test.each([['7.25 in', 18.415], ['0-7.75 in', 19.685], ['2.5-10.75 cm', 8.25], ['7,5 cm', 7.5], ['0-22,5 cm', 22.5], ['12.25-22.5 cm', 10.25], ['0.25 m', 25], ['6 inch', 15.24], ['0 to 12 Inches', 30.48]])('%s', (text, cm) => {
    expect(depthCmOf(text)).toBeCloseTo(cm, 9);
  });
  test.each(['6-6 in', '0 cm', '30-0 cm'])('%s is no layer', (text) => { expect(depthCmOf(text)).toBeNull(); });
});

test('every step of every content names its source', () => {
  const readings: readonly [Reading, number | null, object][] = [
    ...(['mg/kg', 'ppm', 'mg/100g', 'g/kg', '%', 'lb/acre', 'kg/ha', 'mg/L', 'g/dm3'] as const).map((unit): [Reading, number, object] => [made('phosphorus', 1, unit, { form: 'P2O5' }), 1.2, {}]),
    ...(['meq/100g', 'cmol/kg', 'mmol/kg', 'cmol/dm3', 'mmolc/dm3'] as const).map((unit): [Reading, number, object] => [made('potassium', 1, unit), 1.2, {}]),
    [made('phosphorus', 50, 'index'), 1.2, nc], [made('phosphorus', 50, 'kg/ha'), 1.2, { depthCm: 20 }], [made('phosphorus', 50, 'kg/ha'), null, { depthCm: 20 }],
  ];
  for (const [reading, density, ground] of readings) {
    const content = contentOf(reading, density, ground);
    expect(content, String(reading.unit)).not.toBeNull();
    expectSourced(content!);
  }
});
