// What is told of odd readings at its edges: every unit that a bound may be met in, limits and spans as they were printed, what is left untold.
// Factors by definition: 10 mmolc are one meq, 10 g/kg are one percent, 1 in is 2.54 cm, 1 ft is 12 in. Bounds: tables/sense.ts, and the notes of sense.test.ts.
import { describe, expect, test } from 'vitest';
import { rateSample } from '../../src/rating/rate.ts';
import { senseOf } from '../../src/rating/sense.ts';
import type { Notice } from '../../src/reason/notice.ts';
import type { Reading, Sample } from '../../src/soil/reading.ts';
import { made } from '../rating-units/made.ts';

const told = (readings: readonly Reading[], more: Partial<Sample> = {}): Notice[] => {
  const sample: Sample = { name: 's', readings, unread: [], ...more };
  return senseOf(sample, rateSample(sample, { country: null, state: null }), { today: '2026-03-14' });
};
const codes = (...readings: Reading[]): string[] => told(readings).map((n) => n.code);
const facts = (...readings: Reading[]): Notice['facts'] | undefined => told(readings)[0]?.facts;
const ph = (value: number): Reading => made('ph', value, 'pH');

describe('a value is repeated as it was printed', () => {
  test.each<[string, Reading, string]>([
    ['more than', made('potassium', 900, 'ppm', { above: true }), '>900 ppm'], ['a span', made('potassium', 10, 'ppm', { to: 12 }), '10-12 ppm'], ['an oxide', made('potassium', 1200, 'ppm', { form: 'K2O' }), '1200 K2O ppm'], ['an element', made('potassium', 900, 'ppm'), '900 ppm'],
  ])('%s', (_, r, read) => { expect(facts(r)?.read).toBe(read); });
});

describe('the same bound in each unit', () => {
  test.each<[Reading['unit'], number]>([['meq/100g', 50], ['cmol/kg', 50], ['cmol/dm3', 50], ['mmolc/dm3', 500]])('a CEC of 50 meq in %s', (unit, value) => {
    expect([codes(made('cec', value, unit)), codes(made('cec', value * 1.01, unit))]).toEqual([[], ['value-high']]);
    expect(facts(made('cec', value * 1.01, unit))).toMatchObject({ high: value, unit });
    // Of a CEC of ten meq, four of calcium and of magnesium each, and twice as much.
    const cations = (times: number): Reading[] => [made('calcium', (times * 4 * value) / 50, unit), made('magnesium', (times * 4 * value) / 50, unit)];
    expect([codes(made('cec', value / 5, unit), ...cations(1)), codes(made('cec', value / 5, unit), ...cations(2))]).toEqual([[], ['cec-sum']]);
  });
  test('a CEC in another unit says nothing', () => { expect(codes(made('cec', 5000, 'ppm'), made('calcium', 1, 'meq/100g'))).toEqual([]); });
  test('organic matter and lime in g/kg', () => {
    expect([codes(made('organic-matter', 3, 'g/kg')), codes(made('organic-matter', 2.9, 'g/kg'))]).toEqual([[], ['value-low']]);
    expect([codes(made('carbonate', 5, 'g/kg'), ph(6.4)), codes(made('carbonate', 6, 'g/kg'), ph(6.4))]).toEqual([[], ['carbonate-acid']]);
    expect(facts(made('carbonate', 6, 'g/kg'), ph(6.4))).toMatchObject({ read: '6 g/kg', ph: 6.4 });
  });
  test('sand, silt and clay in g/kg: 1000 ± 10', () => {
    const s = (sand: number): Reading[] => [made('sand', sand, 'g/kg'), made('silt', 400, 'g/kg'), made('clay', 200, 'g/kg')];
    expect([codes(...s(410)), codes(...s(412))]).toEqual([[], ['shares-sum']]);
    expect(facts(...s(412))).toMatchObject({ sum: 101 });
    expect(codes(...s(800).slice(0, 2))).toEqual([]);
  });
  test('aluminium by charge, or by potassium chloride, is exchangeable; 9 mg/100 g by charge are one meq (26.982 / 3)', () => {
    for (const unit of ['meq/100g', 'cmol/kg', 'cmol/dm3'] as const) expect([codes(ph(5.7), made('aluminium', 0.1, unit)), codes(ph(5.7), made('aluminium', 0.2, unit))]).toEqual([[], ['aluminium-high-ph']]);
    expect([codes(ph(5.7), made('aluminium', 1, 'mmolc/dm3')), codes(ph(5.7), made('aluminium', 2, 'mmolc/dm3'))]).toEqual([[], ['aluminium-high-ph']]);
    expect([codes(ph(5.7), made('aluminium', 8.9, 'ppm', { method: 'kcl' })), codes(ph(5.7), made('aluminium', 9.1, 'ppm', { method: 'kcl' })), codes(ph(5.7), made('aluminium', 90, 'ppm')), codes(ph(5.7), made('aluminium', 90, null))]).toEqual([[], ['aluminium-high-ph'], [], []]);
    expect(facts(ph(5.7), made('aluminium', 2, 'mmolc/dm3'))).toEqual({ read: '2 mmolc/dm3', ph: 5.7, limit: 5.6 });
  });
  test('by volume a litre counts as a kilogram, near enough for a doubt', () => { expect([codes(made('potassium', 800, 'mg/L')), codes(made('potassium', 810, 'mg/L'))]).toEqual([[], ['value-high']]); });
});

// What stands in pounds or as an oxide has its unit for a cause already; sprays and lime are causes in any unit; near nothing, only a weight may be a charge.
test.each<[string, Reading, string]>([
  ['pounds of potassium', made('potassium', 1700, 'lb/acre'), 'perhaps-unit'], ['potash', made('potassium', 1000, 'ppm', { form: 'K2O' }), 'perhaps-unit'], ['ppm', made('potassium', 900, 'mg/kg'), 'perhaps-k2o'], ['a litre', made('potassium', 900, 'mg/L'), 'perhaps-k2o'],
  ['pounds of copper', made('copper', 120, 'lb/acre'), 'perhaps-sprays'], ['pounds of calcium', made('calcium', 13_000, 'lb/acre'), 'perhaps-limy'], ['a CEC', made('cec', 60, 'cmol/kg'), 'perhaps-mmolc'],
  ['hardly any potassium', made('potassium', 1.2, 'mg/kg'), 'perhaps-meq'], ['in a litre', made('potassium', 1.2, 'mg/L'), 'perhaps-meq'], ['in pounds', made('potassium', 2.4, 'lb/acre'), 'perhaps-unit'], ['two ppm', made('potassium', 2, 'ppm'), 'perhaps-unit'],
])('why: %s', (_, r, why) => { expect(facts(r)?.why).toBe(why); });

describe('pH', () => {
  test('told by its item, its bounds and its value', () => {
    expect(told([ph(9.1)])[0]).toMatchObject({ code: 'ph-odd', severity: 'warning', facts: { item: 'ph', read: 9.1, low: 3.5, high: 9 }, place: { line: 7 } });
    expect(facts(made('ph-salt', 8.1, 'pH'))).toEqual({ item: 'ph-salt', read: 8.1, low: 3.5, high: 8 });
  });
  // New South Wales: calcium chloride reads 0.6 under water, so 5.8 there is 6.4 in water and 5.9 is 6.5.
  test('in a salt solution it counts as in water', () => {
    const lime = (value: number, ...more: Reading[]): string[] => codes(made('carbonate', 2, '%'), made('ph-salt', value, 'pH', { method: 'cacl2' }), ...more);
    expect([lime(5.8), lime(5.9), lime(5.8, ph(6.5))]).toEqual([['carbonate-acid'], [], []]);
  });
  test('the gap between the two is told with both', () => {
    expect(facts(ph(6), made('ph-salt', 6.1, 'pH', { method: 'cacl2' }))).toEqual({ water: 6, salt: 6.1 });
    expect(facts(ph(6), made('ph-salt', 4.7, 'pH', { method: 'cacl2' }))).toEqual({ water: 6, salt: 4.7, gap: 1.3, most: 1.2 });
    expect(codes(ph(6), made('ph-salt', 6.1, 'pH', { method: 'kcl' }))).toEqual(['salt-ph-above']);
  });
  test('a buffer is told with its own start, or with the highest of all', () => {
    expect(facts(made('buffer-ph', 76, 'pH', { method: 'smp' }))).toEqual({ read: 7.6, start: 7.5, known: 'smp' });
    expect(facts(made('buffer-ph', 8.1, 'pH'))).toEqual({ read: 8.1, start: 8, known: '' });
    expect(facts(ph(5.8), made('buffer-ph', 5.7, 'pH'))).toEqual({ read: 5.7, ph: 5.8 });
    // Mehlich's buffer begins at 6.6: what stands between it and a higher soil pH is no mistake.
    expect([codes(ph(7), made('buffer-ph', 6.6, 'pH', { method: 'mehlich-buffer' })), codes(ph(7), made('buffer-ph', 6.5, 'pH', { method: 'mehlich-buffer' }))]).toEqual([[], ['buffer-below-ph']]);
    expect(codes(made('buffer-ph', 5, 'pH'))).toEqual([]);
  });
});

describe('salts', () => {
  test('told with the limit of its own extract; 1:5 with the paste it stands for', () => {
    expect(facts(made('salts', 1.5, 'dS/m', { method: '1:1' }))).toEqual({ read: '1.5 dS/m', limit: 1, paste: '' });
    expect(facts(made('salts', 5, 'dS/m', { method: 'paste' }))).toEqual({ read: '5 dS/m', limit: 4, paste: '' });
    expect(facts(made('salts', 1, 'dS/m', { method: '1:5' }))).toEqual({ read: '1 dS/m', limit: 4, paste: 7.5 });
  });
  test('less than a number stops nothing; 20 dS/m is salt, more a unit misread', () => {
    expect(codes(made('salts', 2, 'dS/m', { below: true }))).toEqual([]);
    expect([codes(made('salts', 20, 'dS/m')), codes(made('salts', 21, 'dS/m'))]).toEqual([['salts-first'], ['value-high']]);
  });
});

describe('exchange', () => {
  const meq = (item: Reading['item'], value: number): Reading => made(item, value, 'meq/100g');
  const bases = (ca: number, mg: number, k: number): Reading[] => [meq('calcium', ca), meq('magnesium', mg), meq('potassium', k)];
  test('the sum is told with what was summed', () => {
    expect(facts(ph(7), meq('cec', 10), ...bases(9, 2, 1))).toEqual({ sum: 12, cec: 10, ions: 'Ca, Mg, K', acidity: '' });
    expect(facts(ph(5.5), meq('cec', 10), ...bases(5, 1, 0.3), meq('acidity', 2))).toEqual({ sum: 8.3, cec: 10, ions: 'Ca, Mg, K', acidity: 2 });
    expect(facts(ph(5.5), meq('cec', 10), ...bases(5, 1, 0.3), made('saturation-h', 10, '%'))).toEqual({ sum: 7.3, cec: 10, ions: 'Ca, Mg, K', acidity: 1 });
  });
  test('40 % off is a note, more a warning, either way', () => {
    const severity = (ca: number): string | undefined => told([ph(7), meq('cec', 10), ...bases(ca, 2, 1)])[0]?.severity;
    expect([severity(11), severity(11.1), severity(3), severity(2.9)]).toEqual(['note', 'warning', 'note', 'warning']);
  });
  test('an acidity that is only worked out from a buffer does not make the sum whole', () => {
    expect(codes(ph(5.5), meq('cec', 20), ...bases(5, 1, 0.3), made('buffer-ph', 6.6, 'pH', { method: 'smp' }))).toEqual([]);
  });
  test('without potassium the sum is not whole', () => { expect([codes(ph(7), meq('cec', 10), meq('calcium', 5), meq('magnesium', 1)), codes(ph(7), meq('cec', 10), meq('calcium', 5), meq('magnesium', 1), meq('potassium', 0.1))]).toEqual([[], ['cec-sum']]); });
  test('no CEC, or none of it, is summed against nothing', () => { expect([codes(ph(7), ...bases(9, 2, 1)), codes(ph(7), meq('cec', 0), ...bases(9, 2, 1))]).toEqual([[], []]); });
  test('one cation over the CEC is told with both', () => {
    for (const item of ['calcium', 'magnesium', 'potassium', 'sodium'] as const) {
      expect(told([meq('cec', 1), meq(item, 1.2)]).find((n) => n.code === 'cation-over-cec')).toMatchObject({ severity: 'warning', facts: { item, read: '1.2 meq/100g', meq: 1.2, cec: 1 } });
    }
  });
  test('saturations: what was expected, with hydrogen and without', () => {
    const s = (ca: number, ...more: Reading[]): Notice['facts'] | undefined => facts(made('saturation-ca', ca, '%'), made('saturation-mg', 12, '%'), made('saturation-k', 4, '%'), ...more);
    expect(s(86, made('saturation-na', 1, '%'))).toEqual({ sum: 103, expected: '<= 102' });
    expect([s(85, made('saturation-na', 1, '%')), s(60)]).toEqual([undefined, undefined]);
    expect(s(60, made('saturation-h', 10, '%'))).toEqual({ sum: 86, expected: '98-102' });
    expect(s(60, ph(7))).toEqual({ sum: 76, expected: '98-102' });
    expect([s(60, ph(6.9)), s(82, made('saturation-na', 2, '%'), made('saturation-h', 0, '%'))]).toEqual([undefined, undefined]);
  });
  test('two of three saturations are no sum', () => { expect(codes(made('saturation-ca', 90, '%'), made('saturation-mg', 20, '%'))).toEqual([]); });
  test('the order of charges is told with both', () => {
    expect(facts(...bases(5, 6, 1))).toEqual({ mg: '6 meq/100g', ca: '5 meq/100g' });
    expect(told(bases(5, 1, 1.2))[0]).toMatchObject({ code: 'potassium-over-magnesium', severity: 'note', facts: { k: '1.2 meq/100g', mg: '1 meq/100g' } });
    // The contents lead; shares count only where magnesium has no content.
    expect(codes(...bases(5, 1, 0.3), made('saturation-ca', 30, '%'), made('saturation-mg', 40, '%'))).toEqual([]);
    expect(codes(made('saturation-mg', 10, '%'), made('saturation-k', 12, '%'))).toEqual(['potassium-over-magnesium']);
  });
  test('calcium and magnesium confirmed by their own saturations', () => {
    // 8000 ppm are 39.9 meq, 80 % of 49.9; 1100 ppm of magnesium 9.05 meq, 18 % of 50.3; 310 ppm of sodium 1.35 meq, 2.7 % of 50.
    for (const [item, ppm, share, saturation] of [['calcium', 8000, 80, 'saturation-ca'], ['magnesium', 1100, 18, 'saturation-mg'], ['sodium', 310, 2.7, 'saturation-na']] as const) {
      const found = (...more: Reading[]): string[] => codes(made(item, ppm, 'ppm'), meq('cec', 50), ...more).filter((c) => c.startsWith('value'));
      expect([item, found(), found(made(saturation, share, '%')), found(made(saturation, share * 1.2, '%')), found(made(saturation, share * 0.8, '%'))]).toEqual([item, ['value-high'], [], ['value-high'], ['value-high']]);
    }
  });
});

describe('limy soil and peat', () => {
  test('free lime excuses calcium, a trace of peat does not excuse a CEC', () => {
    const ca = (...more: Reading[]): string[] => codes(made('calcium', 9000, 'ppm'), ...more);
    expect([ca(), ca(made('carbonate', 0, '%')), ca(made('carbonate', 1, '%'))]).toEqual([['value-high'], ['value-high'], []]);
    const cec = (matter: number, unit: Reading['unit'] = '%'): string[] => codes(made('cec', 80, 'meq/100g'), made('organic-matter', matter, unit)).filter((c) => c === 'value-high');
    expect([cec(20), cec(21), cec(200, 'g/kg'), cec(210, 'g/kg'), cec(21, null)]).toEqual([['value-high'], [], ['value-high'], [], ['value-high']]);
  });
  test('organic carbon counts 1.724 times where no matter is printed: 8.7 % is 15.0, 8.8 % is 15.2', () => {
    expect([codes(made('organic-carbon', 8.7, '%')), codes(made('organic-carbon', 8.8, '%'))]).toEqual([[], ['organic-matter-high']]);
    expect(codes(made('organic-carbon', 8.8, '%'), made('organic-matter', 10, '%'))).toEqual([]);
    expect(codes(made('organic-matter', 16, '%', { below: true }))).toEqual([]);
    expect(facts(made('organic-matter', 16, '%'))).toEqual({ read: '16 %', high: 15, why: 'perhaps-potting' });
  });
});

describe('how deep, how old', () => {
  test.each([
    ['2 inches', 'depth-shallow'], ['2 inch', 'depth-shallow'], ['2"', 'depth-shallow'], ['70 mm', 'depth-shallow'], ['0.07 m', 'depth-shallow'], ['0.25 foot', 'depth-shallow'], ['7,5 cm', 'depth-shallow'], ['0-7.5 CM', 'depth-shallow'],
    ['2 feet', 'depth-deep'], ['1.1 ft', 'depth-deep'], ['0.4 m', 'depth-deep'], ['310 mm', 'depth-deep'], ['30,6 cm', 'depth-deep'],
    ['80 mm', undefined], ['0.3 m', undefined], ['1 foot', undefined], ['12"', undefined], ['2 minutes', undefined], ['2 cmx', undefined],
  ])('%s', (depth, code) => {
    const found = told([ph(6.4)], { depth });
    expect(found.map((n) => n.code)).toEqual(code === undefined ? [] : [code]);
    for (const n of found) expect(n).toMatchObject({ severity: 'note', facts: { depth }, place: { line: 7, column: 1, length: 1 } });
  });
  // 1 January 2022 to 14 March 2026 are 1,533 days, 4.2 years of 365.25 days.
  test('an old test is told with its day and its years', () => {
    expect(told([ph(6.4)], { taken: '2022-01-01' })).toMatchObject([{ code: 'test-old', severity: 'note', facts: { taken: '2022-01-01', years: 4.2 }, place: { line: 7 } }]);
    expect(told([ph(6.4)], { taken: '2020-01-01' })).toMatchObject([{ code: 'test-too-old', severity: 'warning', facts: { years: 6.2 } }]);
  });
});

test('a leaf is no soil; a number beyond any soil\'s is the reader\'s to tell', () => {
  expect(told([made('potassium', 900, 'ppm'), ph(12)], { kind: 'leaf' })).toEqual([]);
  expect([codes(made('potassium', 1e9, 'ppm')), codes(made('potassium', 1e8, 'ppm')), codes(made('potassium', -1e9, 'ppm'))]).toEqual([[], ['value-high'], []]);
});
