// How far an answer would move, asked of the part itself. A medlar goes by one rule alone (RHS, 70 g/m² of 7 %), so on ten square metres it needs 49 g of nitrogen, and every other answer can be worked by hand.
import { describe, expect, test } from 'vitest';
import type { Facts } from '../../src/need/facts.ts';
import { needOf } from '../../src/need/need.ts';
import type { Uncertain } from '../../src/need/uncertain.ts';
import { uncertaintyOf } from '../../src/need/uncertain.ts';
import type { Value } from './parts.ts';
import { facts } from './parts.ts';

const MEDLAR = 'medlar, planted 2010, bearing';
const APPLE = 'apple, planted 2016, bearing';
const how = (f: Facts): Uncertain => uncertaintyOf(f, needOf(f));
const of = (line: string, soil: readonly Value[] = [], more: Partial<Facts> = {}, where = 'Ohio, US'): Uncertain => how(facts(line, soil, more, where));
const guess = (f: Facts): Facts => ({ ...f, crown: { ...f.crown, guessed: true } });
const near = (f: Facts, rating: string): Facts => ({ ...f, soil: { ...f.soil!, rated: f.soil!.rated.map((r) => ({ ...r, near: rating as typeof r.near })) } });
const about = (...wanted: readonly number[]): readonly number[] => wanted.map((x) => expect.closeTo(x, 6) as number);
const nothing = about(0, 0);

describe('the range', () => {
  test('a crown is known to a tenth of its width: 0.81 to 1.21 of its ground', () => { expect(of(MEDLAR)).toEqual({ range: { N: about(49 * 0.81, 49 * 1.21), P2O5: nothing, K2O: nothing }, narrow: null }); });
  test('a guessed one to a half: 0.25 to 2.25', () => { expect(how(guess(facts(MEDLAR))).range.N).toEqual(about(49 * 0.25, 49 * 2.25)); });
  // Bearing, below target: Weinsberg 40 kg/ha of phosphate; Poland 80 of potash, above target none.
  test('a value near another class might lie in it', () => {
    const f = facts(MEDLAR, [{ item: 'phosphorus', target: 'at' }]);
    expect(how(f).range.P2O5).toEqual(nothing);
    expect(how(near(f, 'low')).range).toEqual({ N: about(49 * 0.81, 49 * 1.21), P2O5: about(0, 40), K2O: nothing });
    expect(how(near(facts(MEDLAR, [{ item: 'phosphorus', target: 'below' }]), 'high')).range.P2O5).toEqual(about(0, 40 * 1.21));
    // Each by itself: two values near another class are never both taken in it, so that magnesium does not hold potash back that it does not hold back now.
    const two = facts(MEDLAR, [{ item: 'potassium', target: 'below' }, { item: 'phosphorus', target: 'at' }]);
    const one = { ...two, soil: { ...two.soil!, rated: two.soil!.rated.map((r, i) => (i === 1 ? { ...r, near: 'low' as const } : r)) } };
    expect(how(one).range).toEqual({ N: about(49 * 0.81, 49 * 1.21), P2O5: about(0, 40), K2O: about(80 * 0.81, 80 * 1.21) });
  });
  test('magnesium near low holds the potash back', () => {
    const f = facts(MEDLAR, [{ item: 'potassium', target: 'below' }, { item: 'magnesium', target: 'at', rating: 'medium' }]);
    const soil = { ...f.soil!, rated: f.soil!.rated.map((r, i) => (i === 1 ? { ...r, near: 'low' as const } : r)) };
    expect(how({ ...f, soil }).range.K2O).toEqual(about(0, 80 * 1.21));
  });
  // Quinces: RHS 100 g/m² of 7 % and 35 of 21 %, 14.35 g/m²; nobody else prints them.
  test('each publication that could lead', () => {
    expect(of('quince, planted 2010, bearing').range.N).toEqual(about(143.5 * 0.81, 143.5 * 1.21));
    // Currants: Pennsylvania 6 oz of 10 % at the least, Iowa a cup (8 oz), Bavaria 70 and 100 g of 14 and of 8 %; the crown does not count.
    const OZ = 28.349523125;
    expect(of('currant, planted 2010').range.N).toEqual(about(8, 0.8 * OZ));
  });
  test('what is fed on a condition may be nothing', () => {
    expect(of(APPLE).range.N[0]).toBe(0);
    expect(of(`${APPLE}, shoots 7 in 2025`).range.N[0]).toBeGreaterThan(0);
  });
  test('what waits, stands in a tub, is to come, or is neither measured nor of known age, is as it is told', () => {
    expect(of(`${MEDLAR}, drought`)).toEqual({ range: { N: [0, 0], P2O5: [0, 0], K2O: [0, 0] }, narrow: null });
    expect(of('medlar, planted 2010, tub 60 L')).toEqual({ range: { N: about(30, 30), P2O5: about(10, 10), K2O: about(20, 20) }, narrow: null });
    expect(how({ ...facts(MEDLAR, [{ item: 'phosphorus', target: 'below' }]), bed: facts(MEDLAR).crown.area })).toMatchObject({ range: { N: [0, 0], P2O5: about(100, 100) }, narrow: null });
    expect(how(guess(facts('apple')))).toEqual({ range: { N: [0, 0], P2O5: [0, 0], K2O: [0, 0] }, narrow: null });
  });
});

// RHS for apples: 7 g/m² on bare ground, 70 g here; Michigan 0.05 lb a year.
describe('the question that would move it most', () => {
  const asked = (u: Uncertain): readonly unknown[] | null => u.narrow && [u.narrow.question.code, u.narrow.of, u.narrow.range];
  test('the shoots: fed or not', () => {
    expect(asked(of(APPLE))).toEqual(['shoots-missing', 'N', about(0, 70)]);
    // Iowa's 8 to 15 in: half of the least is short and fed, the middle is not.
    expect(asked(of(`${APPLE}, shoots 7 in 2025`))).toBeNull();
  });
  test('the age: two years are 0.1 lb of nitrogen, five and ten more than its ground takes', () => { expect(asked(of('apple, bearing, shoots 7 in 2025'))).toEqual(['planted-missing', 'N', about(45.359237, 70)]); });
  test('the crown', () => {
    expect(asked(how(guess(facts(`${APPLE}, shoots 7 in 2025`))))).toEqual(['crown-missing', 'N', about(70 * 0.25, 70 * 2.25)]);
    expect(asked(how(guess(facts(MEDLAR))))).toEqual(['crown-missing', 'N', about(49 * 0.25, 49 * 2.25)]);
  });
  test('what it was fed', () => {
    expect(asked(of(`${APPLE}, shoots 9 in 2025`))).toEqual(['fed-last-year', 'N', about(0, 70)]);
  });
  // Switzerland's norm: 4 kg of apples to the square metre, so 40 kg here, with 3.9 lb of K a short ton (Washington) and 1.2046 K2O in 1 K: 94 g.
  test('the crop, where it moves potash further than the shoots move nitrogen', () => {
    const K = (2 * 39.0983 + 15.999) / (2 * 39.0983);
    const u = of(APPLE, [{ item: 'potassium', target: 'at' }]);
    expect(u.narrow).toMatchObject({ question: { code: 'fruit-weight' }, of: 'K2O' });
    expect(u.narrow!.range[0]).toBe(0);
    expect(u.narrow!.range[1] / ((40_000 * 3.9 * K) / 2000)).toBeCloseTo(1, 4);
    // Nobody prints what medlars take: the answer would move nothing.
    expect(of(MEDLAR, [{ item: 'potassium', target: 'at' }]).narrow).toBeNull();
  });
  test('one that moves nothing is not named', () => { expect(of(`${APPLE}, shoots 7 in 2025`, [], {}, 'Colorado, US').narrow).toBeNull(); });
});
