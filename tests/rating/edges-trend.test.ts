// Soil tests of one zone beside each other. How far a lab strays: a tenth of phosphorus and potassium, a tenth of a unit of pH (manuals, from memory);
// a change is one that two such spans cannot both hold; a jump is over twice, or over a whole unit of pH (our judgement).
import { describe, expect, test } from 'vitest';
import { rateSample } from '../../src/rating/rate.ts';
import type { Series } from '../../src/rating/trend.ts';
import { trendsOf } from '../../src/rating/trend.ts';
import type { Reading } from '../../src/soil/reading.ts';
import { made } from '../rating-units/made.ts';

const tests = (...each: Reading[][]): Series[] => trendsOf(each.map((readings, i) => ({ taken: `${2020 + i}-11-04`, rated: rateSample({ name: 's', readings, unread: [] }, { country: null, state: null }) })));
const ph = (value: number): Reading[] => [made('ph', value, 'pH')];
const k = (value: number, more: Partial<Reading> = {}): Reading[] => [made('potassium', value, 'ppm', { method: 'mehlich-3', ...more })];

describe('up, down or the same', () => {
  test.each<[string, Reading[][], string | null, boolean]>([
    ['pH 6.0, 6.15', [ph(6), ph(6.15)], 'same', false], ['pH 6.0, 6.3', [ph(6), ph(6.3)], 'up', false], ['pH 6.3, 6.0', [ph(6.3), ph(6)], 'down', false], ['pH once', [ph(6)], null, false],
    ['the first and the last count, not what lies between', [ph(6), ph(6.9), ph(6.05)], 'same', false],
    ['a whole unit is no jump', [ph(5), ph(6)], 'up', false], ['over it is', [ph(5), ph(6.1)], 'up', true], ['downwards as well', [ph(6.1), ph(5)], 'down', true], ['in salt alike', [[made('ph-salt', 4, 'pH')], [made('ph-salt', 5.1, 'pH')]], 'up', true],
    // 100 ± 10 and 121 ± 12.1 meet; 125 ± 12.5 begins at 112.5.
    ['potassium 100, 121', [k(100), k(121)], 'same', false], ['100, 125', [k(100), k(125)], 'up', false], ['125, 100', [k(125), k(100)], 'down', false], ['twice', [k(100), k(200)], 'up', false], ['over twice', [k(100), k(201)], 'up', true], ['under half', [k(201), k(100)], 'down', true],
    ['a jump there and back', [k(100), k(201), k(100)], 'same', true], ['one of three', [k(100), k(110), k(230)], 'up', true],
  ])('%s', (_, each, trend, jump) => { expect(tests(...each)).toMatchObject([{ trend, jump }]); });
});

describe('what stands beside what', () => {
  test('each point with its span, in mg/kg', () => {
    const [s] = tests(k(100), k(125));
    expect(s).toMatchObject({ item: 'potassium', method: 'mehlich-3', unit: 'mg/kg', elsewhere: [], points: [{ taken: '2020-11-04', value: 100, low: 90, high: 110 }, { taken: '2021-11-04', value: 125, low: 112.5, high: 137.5 }] });
    expect(tests(ph(6))[0]).toMatchObject({ unit: 'pH', method: null, points: [{ value: 6, low: 5.9, high: 6.1 }] });
    // A lab prints K2O: 83.015 % of it is potassium (IUPAC weights).
    expect(tests(k(100, { form: 'K2O' }))[0]!.points[0]!.value).toBeCloseTo((100 * 2 * 39.0983) / (2 * 39.0983 + 15.999), 2);
  });
  test('by whom it strays so far', () => { expect([tests(k(1))[0]!.cite.mark, tests(ph(6))[0]!.cite.source]).toEqual([expect.stringMatching(/./), expect.stringMatching(/./)]); });
  test('the newest decides the method; what was tested otherwise, or only as less or more than a number, stands elsewhere', () => {
    expect(tests(k(100), k(90, { method: 'bray-1' }), k(120))[0]).toMatchObject({ method: 'mehlich-3', points: [{ value: 100 }, { value: 120 }], elsewhere: ['2021-11-04'] });
    expect(tests(k(100), k(90, { method: 'bray-1' }))[0]).toMatchObject({ method: 'bray-1', points: [{ value: 90 }], elsewhere: ['2020-11-04'], trend: null });
    expect(tests(k(100, { below: true }), k(110, { above: true }), k(120))[0]).toMatchObject({ points: [{ value: 120 }], elsewhere: ['2020-11-04', '2021-11-04'] });
    expect(tests(k(100, { tag: 'dry' }), k(120))[0]).toMatchObject({ points: [{ value: 120 }], elsewhere: ['2020-11-04'] });
    expect(tests(k(100), k(120, { below: true }))[0]).toMatchObject({ points: [{ value: 100 }], elsewhere: ['2021-11-04'], trend: null, jump: false });
  });
  test('by volume beside by volume of the same form, never beside mg/kg', () => {
    const litre = (value: number, more: Partial<Reading> = {}): Reading[] => [made('potassium', value, 'mg/L', { method: 'mehlich-3', ...more })];
    expect(tests(litre(100), litre(120))[0]).toMatchObject({ unit: 'mg/L', points: [{ value: 100 }, { value: 120 }] });
    expect(tests(k(100), litre(120))[0]).toMatchObject({ unit: 'mg/L', points: [{ value: 120 }], elsewhere: ['2020-11-04'] });
    expect(tests(litre(100, { form: 'K2O' }), litre(120))[0]).toMatchObject({ points: [{ value: 120 }], elsewhere: ['2020-11-04'] });
    expect(tests([made('potassium', 100, null)], [made('potassium', 110, null)])[0]).toMatchObject({ unit: '', method: null, points: [{ value: 100 }, { value: 110 }] });
    expect(tests([made('potassium', 100, null)], [made('potassium', 110, 'index')])[0]).toMatchObject({ unit: 'index', points: [{ value: 110 }] });
  });
  test('in their order, and nothing else', () => {
    const all = [made('zinc', 2, 'ppm'), made('organic-matter', 4, '%'), made('calcium', 900, 'ppm'), made('magnesium', 90, 'ppm'), ...k(100), made('phosphorus', 30, 'ppm'), ...ph(6), made('ph-salt', 5.5, 'pH')];
    expect(tests(all).map((s) => s.item)).toEqual(['ph', 'ph-salt', 'phosphorus', 'potassium', 'magnesium', 'calcium', 'organic-matter']);
    expect(tests([made('potassium', null, null), made('zinc', 2, 'ppm')])).toEqual([]);
    // The first with a value is the one that counts.
    expect(tests([made('potassium', null, 'ppm'), ...k(100), ...k(300)])[0]!.points).toMatchObject([{ value: 100 }]);
    expect(trendsOf([])).toEqual([]);
  });
});
