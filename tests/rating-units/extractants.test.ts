// Between extractants: Ohio State ANR-75 (M3 P 35 % and K 14 % above Bray-1 and ammonium acetate), Ohio State's −8.08 + 0.832 × M3,
// a Midwestern lab's former factors (P 0.70, K 0.84, Ca 0.75, Mg 0.88), Penn State ("similar"); all read.
import { describe, expect, test } from 'vitest';
import { convertContent, convertExtract, densityNotes, manganeseIndex, northCarolinaRate } from '../../src/rating/convert.ts';
import { CONVERSIONS } from '../../src/tables/extractants.ts';
import { SCALES } from '../../src/tables/ratings.ts';
import { sourceOf } from '../../src/tables/sources.ts';
import { made } from './made.ts';

const by = (source: string, item: string) => CONVERSIONS.find((c) => c.cite.source === source && c.item === item)!;

describe('the printed lines', () => {
  test('27 ppm of Mehlich-3 phosphorus ÷ 1.35 are 20.0 of Bray-1', () => { expect(27 * by('ohio-anr75', 'phosphorus').slope).toBeCloseTo(20, 9); });
  test('171 ppm of Mehlich-3 potassium ÷ 1.14 are 150 of ammonium acetate', () => { expect(171 * by('ohio-anr75', 'potassium').slope).toBeCloseTo(150, 9); });
  // The spread of the three for phosphorus, to a decimal.
  test.each([[20, 14.8, 8.6, 14], [30, 22.2, 16.9, 21], [40, 29.6, 25.2, 28], [100, 74.1, 75.1, 70]] as const)('phosphorus %d: %d, %d, %d', (m3, a, b, c) => {
    const [x, y, z] = ['ohio-anr75', 'ohio-soil-values', 'midwest-house-conversion'].map((s) => by(s, 'phosphorus')).map((l) => l.slope * m3 + l.intercept);
    expect(x).toBeCloseTo(a, 1); expect(y).toBeCloseTo(b, 1); expect(z).toBeCloseTo(c, 1);
  });
});

describe('a value converted', () => {
  test('high phosphorus, where the three agree: at least 30 % either way', () => {
    const c = convertContent(100, 'phosphorus', 'mehlich-3', 'bray-1', 'ohio');
    expect(c).toMatchObject({ value: expect.closeTo((100 / 1.35 + 75.12) / 2, 6) });
    if ('refused' in c) throw new Error(c.refused);
    expect([c.low / c.value, c.high / c.value]).toEqual([expect.closeTo(0.7, 9), expect.closeTo(1.3, 9)]);
    expect(c.cites.map((x) => x.source)).toEqual(['ohio-anr75', 'ohio-soil-values', 'medlar']);
  });
  test('there and back', () => {
    expect(convertContent(171, 'potassium', 'mehlich-3', 'ammonium-acetate', 'ohio')).toMatchObject({ value: expect.closeTo(150, 6) });
    expect(convertContent(150, 'potassium', 'ammonium-acetate', 'mehlich-3', 'indiana')).toMatchObject({ value: expect.closeTo(171, 6) });
  });
  // Elsewhere every line counts: 171 × 0.84 = 143.6, ÷ 1.14 = 150, and alike = 171; the middle one, with all of them inside the span.
  test('where no line is at home the middle one is taken', () => {
    expect(convertContent(171, 'potassium', 'mehlich-3', 'ammonium-acetate', null)).toMatchObject({ value: expect.closeTo(150, 6) });
  });
  test('Pennsylvania finds the two alike', () => { expect(convertContent(25, 'phosphorus', 'mehlich-3', 'bray-1', 'pennsylvania')).toMatchObject({ value: 25, low: 17.5, high: 32.5 }); });
});

describe('a value refused', () => {
  test.each([
    // 20 ppm: 14.8, 8.6 or 14.0; the highest is 1.7 times the lowest, and the target lies there.
    ['phosphorus at the low end', 20, 'phosphorus', 'mehlich-3', 'bray-1', 'ohio', 'sources-differ'],
    ['Bray-1 at the low end', 10, 'phosphorus', 'bray-1', 'mehlich-3', 'ohio', 'sources-differ'],
    // 100 ppm: 70 to 75 by three lines, 100 where Pennsylvania sees no difference.
    ['phosphorus where no line is at home', 100, 'phosphorus', 'mehlich-3', 'bray-1', 'iowa', 'sources-differ'],
    ['under the line', 5, 'phosphorus', 'mehlich-3', 'bray-1', 'indiana', 'sources-differ'],
    ['Morgan', 80, 'phosphorus', 'mehlich-3', 'morgan', null, 'sources-differ'],
    ['modified Morgan back', 80, 'phosphorus', 'modified-morgan', 'mehlich-3', null, 'sources-differ'],
    ['Olsen', 80, 'phosphorus', 'olsen', 'mehlich-3', null, 'sources-differ'],
    ['no line', 80, 'phosphorus', 'cal', 'mehlich-3', null, 'no-line'],
    ['Olsen to Bray: recalled rules of thumb only', 80, 'phosphorus', 'olsen', 'bray-1', null, 'no-line'],
    ['the same', 80, 'phosphorus', 'olsen', 'olsen', null, 'same-method'],
  ] as const)('%s', (_, mg, item, from, to, state, why) => {
    expect(convertContent(mg, item, from, to, state)).toMatchObject({ refused: why });
  });

  test('a scale of its own extractant, no method, no content', () => {
    expect(SCALES.some((s) => s.item === 'phosphorus' && s.method === 'mehlich-3')).toBe(true);
    expect(convertExtract(made('phosphorus', 100, 'ppm', { method: 'mehlich-3' }), 'bray-1')).toMatchObject({ refused: 'own-scale' });
    expect(convertExtract(made('phosphorus', 100, 'ppm'), 'bray-1')).toMatchObject({ refused: 'no-method' });
    expect(convertExtract(made('phosphorus', 100, 'ppm', { method: 'unknown' }), 'bray-1')).toMatchObject({ refused: 'no-method' });
    expect(convertExtract(made('phosphorus', 100, 'mg/L', { method: 'colwell' }), 'bray-1')).toMatchObject({ refused: 'no-content' });
    expect(convertExtract(made('phosphorus', 100, 'ppm', { method: 'bray-2' }), 'bray-1')).toMatchObject({ refused: 'no-line' });
  });
});

// A line leads between its own two extractants and of its own nutrient, either way, and nowhere else.
test('no line is taken for another pair or another nutrient', () => {
  for (const { item, from, to, states } of CONVERSIONS) {
    const state = states[0] ?? null;
    for (const other of ['dl', 'egner-riehm', 'water'] as const) expect([convertContent(100, item, from, other, state), convertContent(100, item, other, to, state), convertContent(100, item, other, from, state)]).toMatchObject(Array(3).fill({ refused: 'no-line' }));
    expect(convertContent(100, 'lead', from, to, state)).toMatchObject({ refused: 'no-line' });
  }
  // Zinc has no scale by Olsen, though phosphorus has.
  expect(SCALES.some((s) => s.item === 'zinc' && s.method === 'olsen')).toBe(false);
  expect(convertExtract(made('zinc', 2, 'ppm', { method: 'olsen' }), 'mehlich-3')).toMatchObject({ refused: 'no-line' });
});
test('what is refused for sources that part names them', () => {
  for (const [mg, from, to] of [[80, 'mehlich-3', 'morgan'], [20, 'mehlich-3', 'bray-1']] as const) {
    const found = convertContent(mg, 'phosphorus', from, to, 'ohio');
    expect(found.cites.length).toBeGreaterThan(0);
    for (const cite of found.cites) expect(sourceOf(cite.source)).toBeDefined();
  }
});

test('values by volume that nothing rates are told once a sample', () => {
  const rated = (unit: 'mg/L' | 'ppm', rating: string | null, mgPerKg: object | null) => ({ reading: made('zinc', 2, unit), rating, mgPerKg });
  expect(densityNotes([rated('mg/L', null, null), rated('mg/L', null, null), rated('ppm', null, {})])).toMatchObject([{ code: 'density-missing', facts: { n: 2 }, place: { line: 7 } }]);
  expect(densityNotes([rated('mg/L', 'low', null), rated('ppm', null, {})])).toEqual([]);
});

test('New Jersey\'s manganese index: 10 ppm at pH 6.5 is 40.4, above its critical 25', () => { expect(manganeseIndex(10, 6.5)).toBeCloseTo(40.4, 9); });

test('North Carolina\'s equation 15 at an index of 50: 25.0 lb/acre; never below nothing', () => {
  expect(northCarolinaRate(15, 50)).toBeCloseTo(25, 9);
  // 0.0116 × 100² − 2.75 × 100 + 150 is −9.
  expect([northCarolinaRate(14, 100), northCarolinaRate(99, 50)]).toEqual([0, null]);
});
