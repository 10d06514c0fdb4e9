// What is told of readings that cannot be right or are rare: each code just inside and just outside its bound.
// Bounds: soil-tests.md 8.1 (PROPOSED, so our judgement), 8.2 and 6; where the source is another, it stands beside the check.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { noticeText } from '../../src/json/notices.ts';
import { rateSample } from '../../src/rating/rate.ts';
import { inOrder, SAID_BY_STOPS, senseOf } from '../../src/rating/sense.ts';
import type { Notice, Question } from '../../src/reason/notice.ts';
import type { Reading, Sample } from '../../src/soil/reading.ts';
import type { Item, Method, ReportUnit } from '../../src/tables/items.ts';
import { ITEMS, METHODS } from '../../src/tables/items.ts';
import { QUIET } from '../../src/tables/sense.ts';
import { medlar } from '../medlar.ts';

const TODAY = '2026-03-14';
type More = { method?: Method | null; form?: Reading['form']; to?: number; below?: true; above?: true; line?: number; asPrinted?: string };
const is = (item: Item, value: number | null, unit: ReportUnit | null, { line = 1, method = null, form = null, asPrinted = `${item} ${value}`, ...rest }: More = {}): Reading =>
  ({ item, value, unit, asPrinted, place: { file: 'r.txt', line, column: 1, length: 1, source: asPrinted }, method, form, lab: { rating: null, range: null }, ...rest });
const told = (readings: readonly Reading[], more: Partial<Sample> = {}, country: string | null = null): Notice[] => {
  const sample: Sample = { name: 's', readings, unread: [], ...more };
  return senseOf(sample, rateSample(sample, { country, state: null }), { today: TODAY });
};
const codes = (...readings: Reading[]): string[] => told(readings).map((n) => n.code);
const text = (n: Notice): string => noticeText(n, 'en-US');

describe('salts', () => {
  // Washington EM119E: over 1 dS/m at 1:1 to 1:2.5 and over 4 in paste is excessive; the plan's stop uses the same.
  test.each([[1, '1:1', false], [1.01, '1:1', true], [4, 'paste', false], [4.01, 'paste', true], [1.01, undefined, true]] as const)('%d dS/m by %s', (value, method, odd) => {
    expect(codes(is('salts', value, 'dS/m', method ? { method } : {}))).toEqual(odd ? ['salts-first'] : []);
  });
  test('1:5 has no limit of its own: it is taken to the paste, 7.5 times for any soil (Korea, read)', () => {
    expect(codes(is('salts', 0.53, 'dS/m', { method: '1:5' }))).toEqual([]);
    expect(codes(is('salts', 0.54, 'dS/m', { method: '1:5' }))).toEqual(['salts-first']);
  });
  test('in other units', () => {
    expect(codes(is('salts', 1100, 'uS/cm'))).toEqual(['salts-first']);
    expect(codes(is('salts', 900, 'uS/cm'))).toEqual([]);
  });
  test('what no soil has is a unit misread, and said once', () => {
    const [only, ...rest] = told([is('salts', 140, 'dS/m')]);
    expect(rest).toEqual([]);
    expect(only).toMatchObject({ code: 'value-high', facts: { why: 'perhaps-us-cm' } });
    expect(text(only!)).toContain('µS/cm');
  });
});

describe('pH', () => {
  // Below 3.5 or above 9 in water; 3.5 to 8.0 in calcium chloride.
  test.each([[3.4, true], [3.5, false], [9, false], [9.1, true]])('%d in water', (value, odd) => { expect(codes(is('ph', value, 'pH'))).toEqual(odd ? ['ph-odd'] : []); });
  test.each([[3.4, true], [3.5, false], [8, false], [8.1, true]])('%d in salt', (value, odd) => { expect(codes(is('ph-salt', value, 'pH', { method: 'cacl2' }))).toEqual(odd ? ['ph-odd'] : []); });
  // Water reads above calcium chloride, by 0.1 to 1.2; potassium chloride lower still.
  test.each([[6, 6, []], [6, 6.1, ['salt-ph-above']], [6, 4.8, []], [6, 4.7, ['salt-ph-far']]])('water %d, salt %d', (water, salt, expected) => {
    expect(codes(is('ph', water, 'pH'), is('ph-salt', salt, 'pH', { method: 'cacl2' }))).toEqual(expected);
  });
  test('potassium chloride may be further below', () => { expect(codes(is('ph', 6, 'pH'), is('ph-salt', 4.6, 'pH', { method: 'kcl' }))).toEqual([]); });

  // Starting pH: SMP 7.5 and Adams-Evans 8.0 read, Sikora 7.5, Mehlich 6.6, Woodruff 7.0 from memory; unknown: the highest of them.
  test.each([['smp', 7.5], ['adams-evans', 8], ['sikora', 7.5], ['mehlich-buffer', 6.6], ['woodruff', 7], [undefined, 8]] as const)('buffer %s starts at %d', (method, start) => {
    const more = method ? { method } : {};
    expect(codes(is('buffer-ph', start, 'pH', more))).toEqual([]);
    expect(codes(is('buffer-ph', Number((start + 0.1).toFixed(1)), 'pH', more))).toEqual(['buffer-above-start']);
  });
  test('a lime index is ten times the buffer pH', () => {
    expect(codes(is('buffer-ph', 68, 'pH', { method: 'smp' }))).toEqual([]);
    expect(codes(is('buffer-ph', 78, 'pH', { method: 'smp' }))).toEqual(['buffer-above-start']);
  });
  test('a buffer below the soil', () => {
    expect(codes(is('ph', 5.8, 'pH'), is('buffer-ph', 5.8, 'pH'))).toEqual([]);
    expect(codes(is('ph', 5.8, 'pH'), is('buffer-ph', 5.7, 'pH'))).toEqual(['buffer-below-ph']);
    // U9: the soil is above some buffers' own start, which then lowers it.
    expect(codes(is('ph', 7.2, 'pH'), is('buffer-ph', 7.1, 'pH'))).toEqual([]);
  });

  // Brazilian notes: no exchangeable aluminium above pH 5.6.
  test('exchangeable aluminium', () => {
    expect(codes(is('ph', 5.6, 'pH'), is('aluminium', 1, 'meq/100g'))).toEqual([]);
    expect(codes(is('ph', 5.7, 'pH'), is('aluminium', 1, 'meq/100g'))).toEqual(['aluminium-high-ph']);
    expect(codes(is('ph', 5.7, 'pH'), is('aluminium', 0.1, 'meq/100g'))).toEqual([]);
    expect(codes(is('ph', 6.5, 'pH'), is('aluminium', 90, 'ppm', { method: 'kcl' }))).toEqual(['aluminium-high-ph']);
    // U5, U9: Morgan's extract dissolves it at any pH.
    expect(codes(is('ph', 7.2, 'pH'), is('aluminium', 83, 'ppm', { method: 'modified-morgan' }))).toEqual([]);
  });
});

describe('values that soils seldom hold', () => {
  // soil-tests.md 8.1, retyped.
  test.each<[Item, Method | undefined, ReportUnit, number, number]>([
    ['phosphorus', 'mehlich-3', 'ppm', 1, 300], ['phosphorus', 'bray-1', 'ppm', 1, 300], ['phosphorus', 'olsen', 'ppm', 1, 150], ['phosphorus', 'morgan', 'ppm', 0.3, 50], ['phosphorus', 'modified-morgan', 'ppm', 0.3, 50], ['phosphorus', 'mehlich-1', 'lb/acre', 1, 400],
    ['potassium', undefined, 'ppm', 15, 800], ['calcium', undefined, 'ppm', 100, 6000], ['magnesium', undefined, 'ppm', 10, 1000], ['boron', undefined, 'ppm', 0.05, 5], ['zinc', undefined, 'ppm', 0.1, 50], ['copper', undefined, 'ppm', 0.1, 50], ['manganese', undefined, 'ppm', 0.5, 200],
    ['cec', undefined, 'meq/100g', 1, 50], ['salts', undefined, 'dS/m', 0.02, 20],
  ])('%s by %s, %s: %d to %d', (item, method, unit, low, high) => {
    const found = (value: number): string[] => codes(is(item, value, unit, method ? { method } : {})).filter((c) => c.startsWith('value'));
    expect([found(low), found(high)]).toEqual([[], []]);
    expect([found(low * 0.99), found(high * 1.01)]).toEqual([['value-low'], ['value-high']]);
  });
  test.each<[Item, ReportUnit, number]>([['sodium', 'ppm', 300], ['nitrate-n', 'ppm', 100]])('%s %s to %d', (item, unit, high) => {
    expect(codes(is(item, high, unit))).toEqual([]);
    expect(codes(is(item, high + 1, unit))).toEqual(['value-high']);
  });
  test('organic matter under 0.3 %; none at all is rounding (U11)', () => {
    expect(codes(is('organic-matter', 0.3, '%'))).toEqual([]);
    expect(codes(is('organic-matter', 0.2, '%'))).toEqual(['value-low']);
    expect(codes(is('organic-matter', 0, '%'))).toEqual([]);
  });

  test.each<[Item, number, string]>([['potassium', 1.2, 'perhaps-meq'], ['potassium', 2, 'perhaps-unit'], ['potassium', 900, 'perhaps-k2o'], ['calcium', 12, 'perhaps-meq'], ['calcium', 40, 'perhaps-unit'], ['magnesium', 2, 'perhaps-meq'], ['phosphorus', 380, 'perhaps-p2o5'], ['copper', 80, 'perhaps-sprays'], ['nitrate-n', 180, 'perhaps-no3']])('%s %d ppm: %s', (item, value, why) => {
    expect(told([is(item, value, 'ppm')]).find((n) => n.code.startsWith('value'))!.facts.why).toBe(why);
  });
  test('the text names the line, the bound and the cause', () => {
    const [k] = told([is('potassium', 1.2, 'ppm', { line: 7 })]);
    expect(k!.place!.line).toBe(7);
    expect(text(k!)).toMatch(/K 1\.2 ppm.*15 ppm.*meq\/100 g/);
    const [p] = told([is('phosphorus', 380, 'ppm', { method: 'mehlich-3' })]);
    expect(text(p!)).toMatch(/380 ppm.*300 ppm.*lb\/acre or as P2O5/);
  });
  test('bounds stand in the printed unit and form', () => {
    // 800 ppm K is 1600 lb/acre, and 963.7 ppm K2O.
    expect(told([is('potassium', 1700, 'lb/acre')])[0]!.facts).toMatchObject({ high: 1600, unit: 'lb/acre' });
    expect(codes(is('potassium', 960, 'ppm', { form: 'K2O' }))).toEqual([]);
    expect(told([is('potassium', 970, 'ppm', { form: 'K2O' })])[0]!.facts).toMatchObject({ high: 964, unit: 'K2O ppm' });
  });
  test('limy soil holds any amount of calcium; peat has any CEC', () => {
    expect(codes(is('calcium', 9000, 'ppm'), is('ph', 7.3, 'pH'))).toEqual(['value-high']);
    expect(codes(is('calcium', 9000, 'ppm'), is('ph', 7.4, 'pH'))).toEqual([]);
    expect(codes(is('cec', 80, 'meq/100g'), is('organic-matter', 30, '%'))).toEqual(['organic-matter-high']);
  });
  test('limits: "less than" is never too little, "more than" may be too much; a span counts by its ends', () => {
    expect(codes(is('potassium', 10, 'ppm', { below: true }))).toEqual([]);
    expect(codes(is('potassium', 10, 'ppm', { above: true }))).toEqual([]);
    expect(codes(is('potassium', 900, 'ppm', { above: true }))).toEqual(['value-high']);
    expect(codes(is('potassium', 10, 'ppm', { to: 20 }))).toEqual([]);
    expect(codes(is('potassium', 10, 'ppm', { to: 12 }))).toEqual(['value-low']);
  });
  test('no unit, an index, words alone: nothing to say', () => {
    expect(codes(is('potassium', 1.2, null), is('phosphorus', 900, 'index'), is('magnesium', null, null))).toEqual([]);
  });
});

describe('exchange', () => {
  const at = (ca: number, mg: number, k: number): Reading[] => [is('calcium', ca, 'meq/100g'), is('magnesium', mg, 'meq/100g'), is('potassium', k, 'meq/100g')];
  const cec = (value: number): Reading => is('cec', value, 'meq/100g');
  test('the sum against the CEC, 10 % either way', () => {
    const neutral = is('ph', 7, 'pH');
    expect(codes(neutral, cec(10), ...at(8, 2, 1))).toEqual([]);
    expect(codes(neutral, cec(10), ...at(8, 2, 1.1))).toEqual(['cec-sum']);
    expect(codes(neutral, cec(10), ...at(7, 1.7, 0.3))).toEqual([]);
    expect(codes(neutral, cec(10), ...at(7, 1.6, 0.3))).toEqual(['cec-sum']);
  });
  test('where acidity is not told an acid soil may hold more; where it is, it counts', () => {
    expect(codes(is('ph', 6.9, 'pH'), cec(10), ...at(5, 1, 0.3))).toEqual([]);
    expect(codes(is('ph', 5.5, 'pH'), cec(10), ...at(5, 1, 0.3), is('acidity', 3.5, 'meq/100g'))).toEqual([]);
    expect(codes(is('ph', 5.5, 'pH'), cec(10), ...at(5, 1, 0.3), is('acidity', 2, 'meq/100g'))).toEqual(['cec-sum']);
    expect(codes(is('ph', 5.5, 'pH'), cec(10), ...at(5, 1, 0.3), is('saturation-h', 36, '%'))).toEqual([]);
  });
  test('softly; a wide gap is a warning', () => {
    expect(told([is('ph', 7, 'pH'), cec(10), ...at(10, 2, 1)])[0]).toMatchObject({ code: 'cec-sum', severity: 'note' });
    expect(told([is('ph', 7, 'pH'), cec(10), ...at(18, 3, 1)])[0]).toMatchObject({ code: 'cec-sum', severity: 'warning' });
  });
  // growers.md: U5 8.28 against 8.3, U6 22.76 against 22.8, U9 18.9 against 15.9, U13 14.02 against 14.1; U7 has no unit.
  test('the posted reports', () => {
    const ppm = (ca: number, mg: number, k: number): Reading[] => [is('calcium', ca, 'ppm'), is('magnesium', mg, 'ppm'), is('potassium', k, 'ppm')];
    expect(codes(is('ph', 6.2, 'pH'), ...ppm(1096, 162, 107), is('acidity', 1.2, 'meq/100g'), cec(8.3))).toEqual([]);
    const u6 = [is('ph', 7.5, 'pH'), ...ppm(3118, 499, 911), is('sodium', 176, 'ppm'), cec(22.8), is('saturation-k', 10.2, '%'), is('saturation-mg', 18, '%'), is('saturation-ca', 68.4, '%'), is('saturation-na', 3.4, '%')];
    expect(codes(...u6)).toEqual([]);
    const [u9, ...none] = told([is('ph', 7.2, 'pH'), ...ppm(3185, 269, 321), cec(15.9), is('saturation-k', 4.4, '%'), is('saturation-mg', 11.7, '%'), is('saturation-ca', 84.1, '%')]);
    expect(none).toEqual([]);
    expect(u9).toMatchObject({ code: 'cec-sum', severity: 'note', facts: { sum: 18.9, cec: 15.9 } });
    expect(codes(is('ph', 7.6, 'pH'), ...ppm(2443, 202, 67), cec(14.1))).toEqual([]);
    expect(codes(is('ph', 7.5, 'pH'), is('calcium', 5114, null), is('magnesium', 463, null), is('potassium', 193, null), cec(18.8))).toEqual([]);
  });
  test('a printed saturation that gives the content back confirms its unit', () => {
    const k = (saturation: number): string[] => codes(is('potassium', 911, 'ppm'), cec(22.8), is('saturation-k', saturation, '%'));
    expect(k(10.2)).toEqual([]);
    expect(k(5)).toEqual(['value-high']);
  });
  test('one cation over the CEC, where they cannot be summed', () => {
    expect(codes(cec(10), is('calcium', 11, 'meq/100g'))).toEqual([]);
    expect(codes(cec(10), is('calcium', 11.1, 'meq/100g'))).toEqual(['cation-over-cec']);
  });
  test('saturations against 100 ± 2', () => {
    const s = (ca: number, ...more: Reading[]): string[] => codes(is('saturation-ca', ca, '%'), is('saturation-mg', 12, '%'), is('saturation-k', 4, '%'), ...more);
    const neutral = is('ph', 7, 'pH');
    expect([s(86, neutral), s(82, neutral)]).toEqual([[], []]);
    expect([s(86.1, neutral), s(81.9, neutral)]).toEqual([['base-sum'], ['base-sum']]);
    // U5: no hydrogen printed in an acid soil.
    expect(s(66, is('ph', 6.2, 'pH'))).toEqual([]);
    expect(s(66, is('saturation-h', 18, '%'))).toEqual([]);
    expect(s(66, is('saturation-h', 10, '%'))).toEqual(['base-sum']);
  });
  test('magnesium over calcium; potassium over magnesium', () => {
    expect(codes(...at(5, 5, 1))).toEqual([]);
    expect(codes(...at(5, 5.1, 1))).toEqual(['magnesium-over-calcium']);
    expect(codes(...at(5, 1, 1))).toEqual([]);
    expect(codes(...at(5, 1, 1.1))).toEqual(['potassium-over-magnesium']);
    expect(codes(is('saturation-ca', 30, '%'), is('saturation-mg', 40, '%'))).toEqual(['magnesium-over-calcium']);
    // Clemson's sample, lb/acre: K 221, Mg 28, Ca 400: K 0.28 meq over Mg 0.12 (read).
    expect(codes(is('calcium', 400, 'lb/acre'), is('magnesium', 28, 'lb/acre'), is('potassium', 221, 'lb/acre'))).toEqual(['potassium-over-magnesium']);
  });
});

describe('organic matter, lime, texture', () => {
  test('a potting mix over 15 %, g/kg over 20 %', () => {
    expect(codes(is('organic-matter', 15, '%'))).toEqual([]);
    // U16
    expect(told([is('organic-matter', 17.96, '%')])[0]).toMatchObject({ code: 'organic-matter-high', facts: { why: 'perhaps-potting' } });
    expect(told([is('organic-matter', 20, '%')])[0]!.facts.why).toBe('perhaps-potting');
    expect(told([is('organic-matter', 20.1, '%')])[0]!.facts.why).toBe('perhaps-per-kg');
    expect(codes(is('organic-matter', 45, 'g/kg'))).toEqual([]);
    expect(told([is('organic-matter', 250, 'g/kg')])[0]!.facts.why).toBe('perhaps-potting');
  });
  test('free lime in acid soil (memory)', () => {
    expect(codes(is('carbonate', 2, '%'), is('ph', 6.5, 'pH'))).toEqual([]);
    expect(codes(is('carbonate', 2, '%'), is('ph', 6.4, 'pH'))).toEqual(['carbonate-acid']);
    expect(codes(is('carbonate', 0.5, '%'), is('ph', 6.4, 'pH'))).toEqual([]);
    // U2: "Lime: Low" is a word.
    expect(codes({ ...is('carbonate', null, null), lab: { rating: 'low', range: null } }, is('ph', 6.1, 'pH'))).toEqual([]);
  });
  test('sand, silt and clay: 100 ± 1', () => {
    const s = (sand: number): string[] => codes(is('sand', sand, '%'), is('silt', 40, '%'), is('clay', 20, '%'));
    expect([s(41), s(39)]).toEqual([[], []]);
    expect([s(41.1), s(38.9)]).toEqual([['shares-sum'], ['shares-sum']]);
  });
  test('a texture guessed for a scale says so; one that is told, or that no scale asks for, does not', () => {
    const k = is('potassium', 100, 'mg/kg', { method: 'cal' });
    const base = [is('ph', 6.2, 'pH'), is('cec', 9, 'meq/100g')];
    const [guess, ...rest] = told([k, ...base], {}, 'AT');
    expect(rest).toEqual([]);
    expect(guess).toMatchObject({ code: 'texture-guessed', severity: 'note', facts: { heaviness: 'light', cec: 9, ph: 6.2, items: 'K, pH' } });
    expect(told([k, ...base, is('texture', null, null, { asPrinted: 'Bodenart: Sand' })], {}, 'AT')).toEqual([]);
    expect(told([is('potassium', 100, 'ppm', { method: 'ammonium-acetate' }), ...base])).toEqual([]);
  });
});

describe('depth and age', () => {
  const ph = [is('ph', 6.4, 'pH')];
  // Colorado: turf 2-3 in, gardens 6-8 in; Washington: a foot before planting; Australia samples 10 cm.
  test.each([['3 in', ['depth-shallow']], ['4 in', []], ['10 cm', []], ['7 cm', ['depth-shallow']], ['0-6 in', []], ['12 in', []], ['30 cm', []], ['1 ft', []], ['13 in', ['depth-deep']], ['6-18 in', ['depth-deep']], ['0-60 cm', ['depth-deep']], ['20', []], ['deep', []]])('%s', (depth, expected) => {
    expect(told(ph, { depth }).map((n) => n.code)).toEqual(expected);
  });
  test.each([['2023-03-15', []], ['2023-03-12', ['test-old']], ['2021-03-15', ['test-old']], ['2021-03-12', ['test-too-old']], ['2026-12-01', []], ['no day', []]])('taken %s', (taken, expected) => {
    const found = told(ph, { taken });
    expect(found.map((n) => n.code)).toEqual(expected);
    for (const n of found) expect(text(n)).toContain(taken);
  });
  test('a report without a reading', () => { expect(told([], { taken: '2001-01-01', depth: '2 in' }).map((n) => n.code)).toEqual(['depth-shallow', 'test-too-old']); });
});

test('the order that matters: salts, pH, P and K, the rest', () => {
  expect(codes(is('zinc', 90, 'ppm'), is('organic-matter', 30, '%'), is('potassium', 1000, 'ppm'), is('phosphorus', 400, 'ppm'), is('ph', 9.5, 'pH'), is('salts', 3, 'dS/m'))).toEqual(['salts-first', 'ph-odd', 'value-high', 'value-high', 'value-high', 'organic-matter-high']);
  expect(told([is('zinc', 90, 'ppm'), is('potassium', 1000, 'ppm'), is('phosphorus', 400, 'ppm')]).map((n) => n.facts.item)).toEqual(['phosphorus', 'potassium', 'zinc']);
});

test('questions in the order that matters, the rest as they stand', () => {
  const ask = (about: string, line: number): Question => ({ code: 'unit-missing', about, facts: { line }, choices: [], changes: 'changes-salts' });
  expect(inOrder([ask('zinc', 1), ask('calcium', 2), ask('potassium', 3), ask('phosphorus', 4), ask('salts', 5)]).map((q) => q.about)).toEqual(['salts', 'phosphorus', 'potassium', 'zinc', 'calcium']);
});

describe('any readings', () => {
  const UNITS: readonly (ReportUnit | null)[] = [null, 'ppm', 'mg/kg', 'mg/L', 'mg/100g', 'lb/acre', 'kg/ha', 'meq/100g', 'cmol/kg', 'mmolc/dm3', '%', 'g/kg', 'dS/m', 'mS/cm', 'uS/cm', 'mS/m', 'pH', 'index', 'g/cm3'];
  const value = fc.oneof(fc.constant(null), fc.double({ min: -1e6, max: 1e6, noNaN: true }), fc.double({ min: 0, max: 100, noNaN: true }), fc.constantFrom(0, -5, 1e8, 1e12, 0.001));
  const one = fc.record({ item: fc.constantFrom(...ITEMS), value, unit: fc.constantFrom(...UNITS), method: fc.option(fc.constantFrom(...METHODS)), form: fc.option(fc.constantFrom('P2O5' as const, 'K2O' as const, 'MgO' as const, 'CaO' as const)), to: fc.option(fc.double({ min: 0, max: 1e6, noNaN: true })), limit: fc.constantFrom('below', 'above', null) });
  test('no exception, no NaN, every notice in words', () => {
    fc.assert(fc.property(fc.array(one, { maxLength: 14 }), fc.option(fc.string()), fc.option(fc.constantFrom('2020-01-01', '2026-01-01', 'x', '9999-12-31')), (drawn, depth, taken) => {
      const readings = drawn.map(({ limit, to, ...d }, i) => is(d.item, d.value, d.unit, { line: i + 1, ...(d.method ? { method: d.method } : {}), form: d.form, ...(to === null || d.value === null ? {} : { to }), ...(limit ? { [limit]: true } : {}) })).filter((r) => r.item !== 'density');
      for (const n of told(readings, { ...(depth === null ? {} : { depth }), ...(taken === null ? {} : { taken }) })) {
        expect(text(n)).not.toMatch(/NaN|undefined|Infinity|null/);
        expect(n.severity).not.toBe('error');
      }
    }));
  });
  test('each quiet middle is quiet', () => {
    for (const q of QUIET.rows) {
      const unit: ReportUnit = q.item === 'cec' ? 'meq/100g' : q.item === 'salts' ? 'dS/m' : q.item === 'organic-matter' ? '%' : 'ppm';
      expect([q.item, codes(is(q.item, q.item === 'salts' ? 0.5 : q.item === 'organic-matter' ? 3 : ((q.low || 1) * (q.high ?? 10)) ** 0.5, unit, q.methods ? { method: q.methods[0]! } : {}))]).toEqual([q.item, []]);
    }
  });
});

describe('at the doors', () => {
  const REPORT = 'taken: 3 Nov 2020\npH 6.4\nPhosphorus 40 ppm Mehlich 3 (30-50)\nPotassium 1.2 ppm (120-200)\n';
  test('read tells warnings with their line and notes below the table', async () => {
    const { stdout, stderr, code } = await medlar(['read', '-', '--today', '2025-01-10'], {}, REPORT);
    expect(code).toBe(0);
    expect(stdout).toContain('4.2 years ago');
    expect(stderr).toMatch(/line 4.*K 1\.2 ppm/);
  });
  test('plan and check tell them of the samples in use, once, and go on', async () => {
    const files = { 'orchard.yaml': 'where: Ohio, US\nbud-break: 12 April\nfirst-frost: 12 October\nsoil:\n  bank: soil.txt\n  strip: soil.txt\ntrees:\n  A: apple, planted 2019, 12 ft across, bank\n  B: apple, planted 2019, 12 ft across, strip\nstore:\n  - Sulphate of ammonia, 21-0-0, 4 lb, $9\n', 'soil.txt': `${REPORT}EC 2.5 dS/m\nOrganic matter 30 %\n` };
    for (const command of ['plan', 'check']) {
      const { json, code } = await medlar([command, '--json', '--today', '2026-03-14'], files);
      expect([command, code]).toEqual([command, 0]);
      const found = json.notices.map((n) => n.code);
      expect(found.filter((c) => c === 'value-low')).toHaveLength(1);
      expect(found.filter((c) => c === 'test-too-old')).toHaveLength(1);
      // The plan's stops say these of each tree.
      expect(found.filter((c) => (SAID_BY_STOPS as readonly string[]).includes(c))).toEqual([]);
    }
  });
  test('the samples say nothing odd', async () => {
    const { json } = await medlar(['read', '-', '--json', '--today', '2026-10-25'], {}, 'taken: 3 Nov 2025\ndepth: 6 in\npH 6.4\nPhosphorus 164 ppm = very high\nPotassium 180 ppm (120-200)\nOrganic matter 4.1%\nMagnesium 231\nZinc 3.4 ppm = high\n');
    expect(json.notices).toEqual([]);
  });
});
