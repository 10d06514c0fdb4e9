// A name, its value and its unit on lines below one another (practice), and names in a block over values in a block.
import { expect, test } from 'vitest';
import { readReport } from '../../src/soil/read.ts';
import { told } from './told.ts';

const zinc = 'sample 1: zinc 2.1 ppm';
test.each<[string, string, readonly string[]]>([
  ['a method beside the name', 'Phosphorus (Olsen)\n42 ppm', ['sample 1: phosphorus 42 ppm olsen', zinc]], ['"index" beside the name', 'Phosphorus index\n2', ['sample 1: phosphorus 2 index', zinc]], ['a unit beside the name', 'Potassium ppm\n180', ['sample 1: potassium 180 ppm', zinc]], ['a span', 'Phosphorus\n40-50 ppm', ['sample 1: phosphorus 40 50 ppm', zinc]],
  ['a unit of shares', 'Organic matter: 3.4\n%', ['sample 1: organic-matter 3.4 %', zinc]], ['a unit of charge', 'CEC 12\nmeq/100g', ['sample 1: cec 12 meq/100g', zinc]], ['a unit of salts', 'Soluble salts: 0.4\ndS/m', ['sample 1: salts 0.4 dS/m', zinc]], ['a unit that cannot be its own', 'Organic matter: 3.4\ndS/m', ['sample 1: organic-matter 3.4', zinc]], ['no more can this', 'Phosphorus 42\ndS/m', ['sample 1: phosphorus 42', zinc]], ['a word more is no unit', 'Soluble salts: 0.4\nppm lead', ['sample 1: salts 0.4', zinc, 'unread 2']],
  ['a texture broken in two', 'Texture: sandy clay\nloam', ['sample 1: texture', zinc]], ['a texture announced over shares', 'Texture:\nsand 40 %', ['sample 1: sand 40 %', zinc]], ['a name broken in two', 'Organic\nmatter 3.4 %', ['sample 1: organic-matter 3.4 %', zinc]],
  ['two values leave a doubt', 'Potassium\n180 ppm\n170 ppm', [zinc, 'unread 1', 'unread 2', 'unread 3']], ['a remark behind the value', 'Phosphorus\n42 ppm in the topsoil', [zinc, 'unread 1', 'unread 2']],
  ['a list that runs over the line', 'Zinc 2.1 ppm, boron 0.5 ppm, copper 1.2 ppm and then also potassium\n180 ppm, sodium 12 ppm', [zinc, 'sample 1: boron 0.5 ppm', 'sample 1: copper 1.2 ppm', 'sample 1: potassium 180 ppm', 'sample 1: sodium 12 ppm']],
])('%s', (_, text, expected) => { expect(told(`${text}\n${text.startsWith('Zinc') ? '' : 'Zinc 2.1 ppm\n'}`)).toEqual(expected); });

test('the texture is the whole of both lines, at its place', () => {
  const [texture] = readReport('Texture: sandy clay\nloam\nZinc 2.1 ppm\n', 'r.txt').samples[0]!.readings;
  expect([texture!.asPrinted, texture!.place.line]).toEqual(['Texture: sandy clay loam', 1]);
});

const names = 'Phosphorus\nPotassium\nMagnesium\n';
const all = (rest = ''): string[] => ['phosphorus 42', 'potassium 180', 'magnesium 90'].map((r) => `sample 1: ${r}${rest}`);
const doubt = (lines: readonly number[]): string[] => [...lines.map((n) => `unread ${n}`), 'layout-unclear 1'];
test.each<[string, string, readonly string[]]>([
  ['the method of all between', `${names}Mehlich 3 extractable\n42 ppm\n180 ppm\n90 ppm\nZinc 2.1 ppm\n`, [...all(' ppm mehlich-3'), zinc]], ['a remark between', `${names}See our leaflet\n42 ppm\n180 ppm\n90 ppm\n`, doubt([1, 2, 3, 4, 5, 6, 7])],
  ['spans for values', `${names}40-50\n180-190\n90-95\n`, doubt([1, 2, 3, 4, 5, 6])], ['a trace among them', `${names}<5 ppm\n180 ppm low\ntrace\n`, doubt([1, 2, 3, 4, 5, 6])],
  ['two names in a line', 'Phosphorus, potassium\nMagnesium\nCalcium\n42\n180\n900\n', doubt([1, 2, 3, 4, 5, 6])], ['a share of two names', 'pH\nCEC\nPotassium base saturation\n6.4\n12\n4.5\n', ['ph 6.4 pH', 'cec 12', 'saturation-k 4.5 %'].map((r) => `sample 1: ${r}`)],
  ['a value that cannot be', `${names}42 ppm\n180 ppm\n-5 ppm\n`, doubt([1, 2, 3, 4, 5, 6])], ['a method within a name', 'Olsen P\nPotassium\nMagnesium\n18\n150\n90\n', ['phosphorus 18 olsen', 'potassium 150', 'magnesium 90'].map((r) => `sample 1: ${r}`)],
  ['two names are too few', 'Phosphorus\nPotassium\n42\n180\n', ['unread 1', 'unread 2', 'unread 3', 'unread 4', 'nothing-read']], ['a name with its own answer', 'pH\nPhosphorus n/a\nPotassium\nMagnesium\n6.4\n180\n90\n', doubt([1, 2, 3, 4, 5, 6, 7])],
  ['blank lines throughout', 'Phosphorus (Olsen) ppm\n\nPotassium ppm\n\nMagnesium ppm\n\n42\n\n180\n\n90\n', doubt([1, 3, 5, 7, 9, 11])],
])('names over values: %s', (_, text, expected) => { expect(told(text)).toEqual(expected); });

test.each<[string, string, readonly string[]]>([
  ['shares until a unit of contents', 'Base saturation (%)\nK 4.5\nMg 12\nResults in ppm\nPhosphorus 42\n', ['sample 1: saturation-k 4.5 %', 'sample 1: saturation-mg 12 %', 'sample 1: phosphorus 42 ppm']],
  ['shares by name', 'Base saturation of K and Mg\nK 4.5\nMg 12\n', ['sample 1: saturation-k 4.5 %', 'sample 1: saturation-mg 12 %']], ['shares of cations', 'Cation saturation\nK 4.5\n', ['sample 1: saturation-k 4.5 %']], ['a share is no heading', 'Base saturation of 70 % K\nK 180 ppm\n', ['sample 1: base-saturation 70 %', 'sample 1: potassium 180 ppm']],
  ['a method and a unit in one', 'Extractable nutrients in mg/kg by Mehlich 3\nPhosphorus 42\n', ['sample 1: phosphorus 42 mg/kg mehlich-3']], ['a year is none', 'Mehlich 3 method 2024\nPhosphorus 42 ppm\n', ['sample 1: phosphorus 42 ppm', 'unread 1']], ['a method below its label', 'Extractant:\nMehlich 3\nPhosphorus 42 ppm\n', ['sample 1: phosphorus 42 ppm mehlich-3', 'unread 1']],
])('headings: %s', (_, text, expected) => { expect(told(text)).toEqual(expected); });
