// What a report leaves open and is asked: the unit of what means nothing without one, the method where neither word, range nor index decides (practice).
import { describe, expect, test } from 'vitest';
import { readReport } from '../../src/soil/read.ts';

const asks = (text: string): string[] => readReport(`${text}\n`, 'r.txt').questions.map((q) => `${q.code} ${q.about} ${q.changes}`);
const choices = (text: string): readonly string[] | undefined => readReport(`${text}\n`, 'r.txt').questions[0]?.choices;

test.each<[string, ...string[]]>([
  ['Calcium 900', 'unit-missing calcium changes-nothing-bought'], ['Calcium 900 high', 'unit-missing calcium changes-nothing-bought'], ['Phosphorus (Olsen) 42', 'unit-missing phosphorus changes-p-and-k'], ['Potassium (ammonium acetate) 180', 'unit-missing potassium changes-p-and-k'], ['Phosphorus (Olsen) 42 high', 'unit-missing phosphorus changes-nothing-bought'], ['Phosphorus 42', 'unit-missing phosphorus changes-p-and-k', 'method-missing phosphorus changes-p-and-k'],
  ['CEC 12', 'unit-missing cec changes-nothing-bought'], ['Organic matter 4', 'unit-missing organic-matter changes-organic'], ['Organic carbon 2', 'unit-missing organic-carbon changes-organic'], ['Electrical conductivity 0.4', 'unit-missing salts changes-salts'],
  // What has no unit, has one, has no value, or whose unit the grower does not know.
  ['pH 6.4'], ['Calcium 900 ppm'], ['Calcium high'], ['Calcium 900\ncalcium unit: unknown'], ['Calcium 900\ncalcium unit: ppm'], ['Texture: loam'], ['Free lime 2'],
  // The method.
  ['Phosphorus 42 ppm', 'method-missing phosphorus changes-p-and-k'], ['Potassium 180 ppm', 'method-missing potassium changes-p-and-k'], ['Magnesium 90 ppm'], ['Phosphorus (Olsen) 42 ppm'], ['Phosphorus 42 ppm high'], ['Phosphorus 42 ppm (30-50)'], ['Phosphorus index 2'], ['Potassium 7 MAF'], ['Phosphorus 18 mg/L (index 2)'], ['Phosphorus low'], ['Phosphorus 42 ppm\nphosphorus method: unknown'], ['Phosphorus 42 ppm\nphosphorus method: Olsen'], ['Nitrogen 2.2 %\nPhosphorus 0.2 %\nPotassium 1.5 %\nCalcium 1.4 %'],
])('%s', (text, ...expected) => { expect(asks(text)).toEqual(expected); });

describe('what may be answered', () => {
  const contents = ['ppm', 'mg/kg', 'lb/acre', 'meq/100g', 'mg/100g', 'mg/L', 'kg/ha'];
  test.each<[string, string[]]>([['Calcium 900', contents], ['CEC 12', ['meq/100g', 'cmol/kg', 'mmolc/dm3']], ['Organic matter 4', ['%', 'g/kg']], ['Organic carbon 2', ['%', 'g/kg']], ['Electrical conductivity 0.4', ['dS/m', 'mS/cm', 'uS/cm']], ['Phosphorus 42 ppm', ['mehlich-3', 'mehlich-1', 'olsen', 'bray-1', 'modified-morgan', 'morgan', 'cal', 'colwell']], ['Potassium 180 ppm', ['ammonium-acetate', 'mehlich-3', 'mehlich-1', 'ammonium-nitrate', 'modified-morgan', 'morgan', 'cal', 'colwell']]])('%s', (text, expected) => { expect(choices(text)).toEqual(expected); });
});

test('each names its line, its reading and its sample', () => {
  const { questions } = readReport('sample: A\nPhosphorus: 42\nsample: B\nPhosphorus (Olsen) 12 ppm\n', 'r.txt');
  const facts = { item: 'phosphorus', line: 2, sample: 'A', read: 'Phosphorus: 42' };
  expect(questions).toMatchObject([{ code: 'unit-missing', facts, place: { line: 2 } }, { code: 'method-missing', facts, place: { line: 2 } }]);
});
