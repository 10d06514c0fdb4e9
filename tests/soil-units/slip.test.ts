// Slips of the pen and of the copier (practice): told where they stand, with what may be meant; chatter with a number is not.
import { describe, expect, test } from 'vitest';
import { readReport } from '../../src/soil/read.ts';

const told = (line: string): unknown => readReport(`${line}\nZinc 2.1 ppm\n`, 'r.txt').notices.map((n) => [n.code, n.facts.read, n.place?.column, n.place?.length]);

describe('a name misspelt', () => {
  test.each([['Phosphours 42 ppm', 1], ['Phosphours: 42', 1], ['Phosphours = 42', 1], ['Phosphours 42 high', 1], ['pH 6.4, Phosphours: 42 mg/kg', 9], ['pH 6.4; Phosphours 42 mg/kg', 9], ['pH 6.4   Phosphours 42 ppm', 10], ['Phosphours 42 ppm, pH 6.4', 1], ['pH 6.4, Phosphours <42', 9]])('%s', (line, column) => {
    expect(told(line)).toEqual([['name-unknown', 'Phosphours', column, 10]]);
  });
  test('with what may be meant', () => { expect(readReport('Phosphours 42 ppm\n', 'r.txt').notices[0]!.facts.guess).toBe('phosphorus'); });
  // A bare number behind a word is an order or a page; three letters are nobody's name; a word among others is prose.
  test.each(['Phosphours 42', 'Znk 4 ppm', 'pH 6.4, Phosphours 42', 'pH 6.4, my own Phosphours for now 42 ppm', 'Our order 42 ppm', 'The level we saw was 42 ppm'])('%s is none', (line) => { expect(told(line)).toEqual([]); });
  test.each([['Magnesum 120 ppm', 'magnesium'], ['Potasium 120 ppm', 'potassium']])('%s is a known slip', (line, item) => { expect(readReport(`${line}\n`, 'r.txt')).toMatchObject({ notices: [], samples: [{ readings: [{ item, value: 120 }] }] }); });
});

describe('a number that is none', () => {
  test.each([['Phosphorus 4l ppm', '4l', 12], ['Phosphorus 4O ppm', '4O', 12], ['Phosphorus four ppm', 'four', 12], ['Phosphorus about four ppm', 'four', 18], ['Phosphorus inf ppm', 'inf', 12], ['Phosphorus nan ppm', 'nan', 12]])('%s', (line, read, column) => { expect(told(line)).toEqual([['not-a-number', read, column, read.length]]); });
  test.each(['Phosphorus 7.5ozs', 'Phosphorus four', 'Phosphorus is 42', 'Phosphorus is at 42 ppm', 'The phosphorus was 42 ppm'])('%s is advice, prose or a value', (line) => { expect(told(line)).toEqual([]); });
});

describe('a unit misspelt', () => {
  test.each([['Organic matter 4 precent', 'percent'], ['Phosphorus 42 pmm', 'ppm'], ['Phosphorus 42 mg/gk', 'mg/kg'], ['Phosphorus 42 mg/Lt', 'mg/L'], ['Phosphorus 42 mg/100q', 'mg/100g'], ['Phosphorus 42 lb/arce', 'lb/acre'], ['Phosphorus 42 lbs/arce', 'lbs/acre'], ['Phosphorus 42 kg/hs', 'kg/ha'], ['CEC 12 meq/10g', 'meq/100g'], ['CEC 12 cmol/gk', 'cmol/kg']])('%s: %s', (line, unit) => {
    expect(readReport(`${line}\nZinc 2.1 ppm\n`, 'r.txt').notices).toMatchObject([{ code: 'unit-unknown', severity: 'error', facts: { guess: unit } }]);
  });
});

describe('a value lost', () => {
  test.each([['Phosphorus in the topsoil 42 ppm', '42', 1, 28], ['Phosphorus 42 parts', '42', 1, 13], ['pH 6.4, Phosphorus in topsoil 42 ppm', '42', 9, 24]])('%s', (line, read, column, length) => { expect(told(line)).toEqual([['line-unclear', read, column, length]]); });
  test.each(['Phosphorus 42 lb/1000 sq ft', 'Phosphorus n/a 42', 'Phosphorus makes roots and is needed by young trees in cold soil of 42 ppm', 'Texture class 3'])('%s is not one', (line) => { expect(told(line)).toEqual([]); });
});
