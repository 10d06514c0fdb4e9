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

// Letters that a scan or a hand puts for figures: the number that was perhaps meant stands as an example.
test.each([['4l', '41'], ['4I', '41'], ['4i', '41'], ['4o', '40'], ['4O', '40'], ['4B', '48'], ['4S', '45'], ['4s', '45'], ['4Z', '42'], ['4z', '42'], ['l2', '12'], ['1O.5', '10.5'], ['1e3', ''], ['4x7', ''], ['four', ''], ['l.2.O', '']])('%s was perhaps %s', (read, number) => {
  expect(readReport(`Zinc 2.1 ppm\nPhosphorus ${read} ppm\n`, 'r.txt').notices.map((n) => [n.code, n.facts.read, n.facts.number, n.place?.line, n.place?.column, n.place?.length])).toEqual([['not-a-number', read, number, 2, 12, read.length]]);
});
test.each([['infinity', 8], ['Inf', 3], ['-inf', 4], ['NaN', 3]])('%s is no number', (read, length) => { expect(told(`Phosphorus ${read} ppm`)).toEqual([['not-a-number', read, 12, length]]); });

describe('names misspelt, elsewhere in their lines', () => {
  test.each([['  Phosphours 42 ppm', 3, 10], ['    Phosphours 42 ppm', 5, 10], ['pH 6.4, Phosphours 42 ppm high', 9, 10], ['pH 6.4, Phosphours 42 ppm (high)', 9, 10], ['pH 6.4, Phosphours >42', 9, 10], ['Phosphours | 42 | ppm', 1, 10]])('%s', (line, column, length) => {
    expect(told(line)).toEqual([['name-unknown', 'Phosphours', column, length]]);
  });
  test.each(['Phosphours it seems to us here is about 42 ppm', 'pH 6.4, Phosphours 42 ppm (see page 3)', 'pH 6.4, Phosphours 42 ppm bags', 'Phosphours', 'pH 6.4, Phosphours ppm'])('%s is none', (line) => { expect((told(line) as unknown[][]).filter(([code]) => code === 'name-unknown')).toEqual([]); });
  test('a guess in the report\'s language', () => {
    const guess = (text: string): unknown => readReport(text, 'r.txt').notices[0]?.facts.guess;
    expect(guess('Kaliun 18 mg/100 g\nBodenart: Lehm\nMagnesium 9 mg/100 g hoch\n')).toBe('kalium');
  });
});

describe('a value behind an unknown word', () => {
  test.each([['Phosphorus 88 ppm (low) mag 97 ppm', [['line-unclear', '97', 25, 10]]], ['Phosphorus 88 ppm mag 97 ppm', [['line-unclear', '97', 19, 10]]]])('%s', (line, notices) => { expect(told(line)).toEqual(notices); });
  test.each(['Phosphorus 88 ppm high, lawn 4 lb/1000 sq ft', 'Phosphorus 88 ppm high, about 20 %', 'Phosphorus 88 ppm high, see 97'])('%s is none', (line) => { expect(told(line)).toEqual([]); });
});

describe('a name and a number of which nothing was made', () => {
  test.each([['Phosphorus: see 42.5 ppm', 'Phosphorus', '42.5'], ['Mehlich 3 phosphorus xx reads 42 ppm', 'Mehlich 3 phosphorus', '42'], ['Phosphorus = in beds 42', 'Phosphorus', '42'], ['Phosphorus in beds 40-50 ppm', 'Phosphorus', '40-50'], ['Phosphorus (of beds 42 ppm)', 'Phosphorus', '42']])('%s', (line, name, read) => {
    expect(readReport(`${line}\nZinc 2.1 ppm\n`, 'r.txt').notices.map((n) => [n.code, n.facts.name, n.facts.read])).toEqual([['line-unclear', name, read]]);
  });
  test.each(['Ca:Mg ratio in beds 6', 'Lime in beds 2', 'Lime requirement in beds 2', 'Our phosphorus in beds 42', 'Phosphorus in our beds here 42', 'Phosphorus in beds (lb/1000 sq ft) 42'])('%s is prose or advice', (line) => { expect(told(line)).toEqual([]); });
});

// Where the slip stands, behind a sign, a unit, a method or brackets; how much of it is read; and what only looks like one.
test.each<[string, readonly (readonly [code: string, severity: string, read: string, column: number, length: number])[]]>([
  ['Phosphorus | 4l | ppm', [['not-a-number', 'error', '4l', 14, 2]]], ['Phosphorus ppm 4l', [['not-a-number', 'error', '4l', 16, 2]]], ['Phosphorus Olsen 4l ppm', [['not-a-number', 'error', '4l', 18, 2]]], ['Phosphorus (Olsen) 4l ppm', [['not-a-number', 'error', '4l', 20, 2]]],
  ['Phosphorus 42l ppm', [['not-a-number', 'error', '42l', 12, 3]]], ['Phosphorus fo4ur ppm', [['not-a-number', 'error', 'fo4ur', 12, 5]]], ['Phosphorus inf', [['not-a-number', 'error', 'inf', 12, 3]]], ['Phosphorus nan', [['not-a-number', 'error', 'nan', 12, 3]]],
  ['Phosphorus 75ozs ppm', [['line-unclear', 'warning', '75', 1, 13]]], ['Phosphorus information', []], ['Phosphorus banan', []], ['Ca:Mg ratio 6.4l', []], ['Ca:Mg four ppm', []], ['Lime 4l ppm', []], ['Lime four tons', []],
  // The figure of a method may be a value whose name of a method was cut off.
  ['Potassium Mehlich 3 ppm', [['line-unclear', 'warning', '3', 1, 19]]], ['pH 6.4, Potassium Mehlich 3 ppm', [['line-unclear', 'warning', '3', 9, 19]]], ['Phosphorus 1:1 ppm', []], ['Phosphorus M3 ppm', []],
  ['The phosphorus in the topsoil 42 ppm', [['line-unclear', 'warning', '42', 5, 28]]], ['- Phosphorus in topsoil 42 ppm', [['line-unclear', 'warning', '42', 3, 24]]], ['ppm phosphorus in topsoil 42', [['line-unclear', 'warning', '42', 5, 24]]], ['Olsen: phosphorus xx reads 42 ppm', [['line-unclear', 'warning', '42', 8, 22]]], ['Phosphorus x y reads 42', [['line-unclear', 'warning', '42', 1, 23]]],
  // A colon tells a value of a slip, and so does a word between; a rating is no slip of sodium, three letters are none of boron.
  ['Organc  mattre: 4 %', [['name-unknown', 'error', 'Organc mattre', 1, 13]]], ['Phosphours:42', [['name-unknown', 'error', 'Phosphours', 1, 10]]], ['Phosphours: about 42', [['name-unknown', 'error', 'Phosphours', 1, 10]]], ['Bron 2 ppm', [['name-unknown', 'error', 'Bron', 1, 4]]], ['Bro 2 ppm', []], ['Medium: 42 ppm', []], ['Medium 42 ppm', []], ['Order: Phosphours 42', []],
  ['pH 6.4, Phosphours about 42 ppm', [['name-unknown', 'error', 'Phosphours', 9, 10]]], ['pH 6.4, Phosphours 42 ppm of', [['name-unknown', 'error', 'Phosphours', 9, 10]]], ['pH 6.4, Phosphours 42 ppm (high, see page 3)', [['line-unclear', 'warning', '42', 9, 17]]], ['Boron Phosphours 42 ppm', [['line-unclear', 'warning', '42', 1, 19]]],
  ['Phosphorus 88 ppm high, mulch 20 %', []], ['Phosphorus 88 ppm mulch 20 %', []], ['Phosphorus 88 ppm ab 97 ppm', []], ['Phosphorus 88 ppm mag trace ppm', []],
])('%s', (line, expected) => { expect(readReport(`${line}\nZinc 2.1 ppm\n`, 'r.txt').notices.map((n) => [n.code, n.severity, n.facts.read, n.place?.column, n.place?.length])).toEqual(expected); });
test('what may be meant, in letters and figures as typed', () => {
  const first = (line: string): Record<string, unknown> => readReport(`${line}\nZinc 2.1 ppm\n`, 'r.txt').notices[0]!.facts;
  expect([first('Phosphorus 1O.55 ppm').number, first('Phosphorus four ppm').number, first('Phosphorus 88 ppm Möhre 97 ppm').name]).toEqual(['10.55', '', 'Möhre']);
});
