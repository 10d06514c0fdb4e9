// What a line is of (practice): a class, a form, a share, an index, a goal, a texture beside other things, or nothing sure.
import { expect, test } from 'vitest';
import { told } from './told.ts';

const zinc = 'sample 1: zinc 2.1 ppm';
const one = (...readings: string[]): string[] => readings.map((r) => `sample 1: ${r}`);
test.each<[string, string, readonly string[]]>([
  // A letter is a class by a German method, of a nutrient, of pH and of lime alone.
  ['CAL', 'P2O5 CAL 12 mg/100 g B\npH-Wert 6.4 C', one('phosphorus 12 mg/100g cal P2O5 low', 'ph 6.4 pH optimum')], ['DL', 'Phosphor DL 12 mg/100 g B', one('phosphorus 12 mg/100g dl low')], ['CaCl2', 'Magnesium CaCl2 12 mg/100 g D', one('magnesium 12 mg/100g cacl2 high')], ['not of humus', 'Humus 3.4 % C\nK2O 12 mg/100g CAL', one('organic-matter 3.4 %', 'potassium 12 mg/100g cal K2O')],
  // The oxide within the unit.
  ['P2O5', 'Phosphorus 12 mg P2O5/100 g', one('phosphorus 12 mg/100g P2O5')], ['all others', 'Potassium 12 mg K2O/100 g, Magnesium 12 mg MgO/100 g, Calcium 12 mg CaO/100 g', one('potassium 12 mg/100g K2O', 'magnesium 12 mg/100g MgO', 'calcium 12 mg/100g CaO')],
  // Thousands with a point, of what comes in thousands and in weights.
  ['a thousand or one', 'Magnesium 1.234 mg/kg\npH 6.4', ['sample 1: ph 6.4 pH', 'number-unclear 1']], ['charges come in ones', 'Magnesium 1.234 meq/100g\npH 6.4', one('magnesium 1.234 meq/100g', 'ph 6.4 pH')], ['zinc comes in ones', 'Zinc 1.234 ppm\npH 6.4', one('zinc 1.234 ppm', 'ph 6.4 pH')],
  // What stands before the first name is of the whole line.
  ['unit and method', 'Micronutrients in ppm (DTPA): Zn 2.1, Mn 14.8', one('zinc 2.1 ppm dtpa', 'manganese 14.8 ppm dtpa')],
  // A texture that nothing announces.
  ['before', 'Silt loam, pH 6.4, P 42 ppm', one('ph 6.4 pH', 'phosphorus 42 ppm', 'texture')], ['in German', 'Lehm; pH 6.4; P 42 ppm', one('ph 6.4 pH', 'phosphorus 42 ppm', 'texture')], ['once is enough', 'Texture: loam, pH 6.4, sandy loam', one('texture', 'ph 6.4 pH')], ['with a number it is a place', 'Loam 3, pH 6.4', one('ph 6.4 pH')],
  // Indices and quick tests.
  ['quick-test units are of all cations', 'K 12 MAF, Ca 8, Mg 20, P 18 mg/L', [...one('potassium 12 MAF', 'calcium 8 MAF', 'magnesium 20 MAF', 'phosphorus 18 mg/L'), 'quick-test 1']], ['named in the name', 'P-index 25, K-I 60', one('phosphorus 25 index', 'potassium 60 index')],
  ['below the scale of Ireland', 'Irish soil index system\nPhosphorus (Morgan) index 0', ['sample 1: phosphorus 0 index morgan', 'unread 1']], ['above that of the UK', 'RB209 index\nPhosphorus index 12', ['sample 1: phosphorus 12 index', 'unread 1']], ['Roman figures', 'Potassium index VI 200', ['unread 1', 'line-unclear 1', 'nothing-read']],
  // Contents, rates and shares by their units.
  ['pounds an acre', 'Sulphur 12 lb/acre', one('sulphur 12 lb/acre')], ['a rate is no content', 'Phosphorus 12 g/m2', ['unread 1', 'nothing-read']], ['lime by either', 'Lime 2 t/ha, lime 2 %', one('lime-requirement 2 t/ha', 'carbonate 2 %')], ['a buffer', 'buffer pH 6.8 (SMP)', one('buffer-ph 6.8 pH smp')], ['pH in water and in salt', 'pH 6.4 (1:1), salt pH 5.8', one('ph 6.4 pH water', 'ph-salt 5.8 pH')],
  ['hydrogen in %', 'Hydrogen 12 %', one('saturation-h 12 %')], ['acidity as charge', 'Exchangeable acidity 1.2 meq/100g', one('acidity 1.2 meq/100g')], ['a share without its sign', 'Exchangeable sodium percentage 2', one('saturation-na 2 %')], ['sodium may fall below zero', 'Sodium -0.5 %', one('saturation-na -0.5 %')],
  // Goals, conditions, footnotes.
  ['a goal of pH', 'Optimum pH 6.0 to 6.8\nZinc 2.1 ppm', [zinc, 'unread 1']], ['a goal of a nutrient', 'optimum P 30-50 ppm\nZinc 2.1 ppm', [zinc, 'unread 1']], ['a pH to come to', 'Raise pH to 6.5\nZinc 2.1 ppm', [zinc, 'unread 1']], ['a condition', 'If pH 5.5 add lime\nZinc 2.1 ppm', [zinc, 'unread 1']], ['footnotes', '3 Mehlich buffer pH, 4 Summation of cations\nZinc 2.1 ppm', [zinc, 'unread 1']],
  // Words before the name.
  ['a word of rating', 'very high magnesium, very low K', one('magnesium very-high', 'potassium very-low')], ['a method', 'Colwell P 42 mg/kg', one('phosphorus 42 mg/kg colwell')], ['a value, its word behind', '4.1 % organic matter (high)', one('organic-matter 4.1 % high')], ['a rate is advice', 'Apply 40 lb/acre N, P 42 ppm', one('phosphorus 42 ppm')], ['whose saturation nobody knows', 'Zork base saturation 4.5', ['unread 1', 'line-unclear 1', 'nothing-read']],
  // A word for a value, its unit in the head of its row or column.
  ['a word in a cell', 'P ppm | very high', one('phosphorus ppm very-high')], ['one for the goal', 'P ppm | adequate', one('phosphorus ppm optimum')], ['among rows of values', 'Test | Result\nP ppm | very high\nK ppm | 180', one('phosphorus ppm very-high', 'potassium 180 ppm')], ['in a row of values', 'Sample | P ppm | K ppm\nFront | very high | 180\nBack | 42 | 90', ['Front: phosphorus ppm very-high', 'Front: potassium 180 ppm', 'Back: phosphorus 42 ppm', 'Back: potassium 90 ppm']], ['heads of goals are no values', 'P ppm    Optimum    K ppm    Optimum\nZinc 2.1 ppm', [zinc, 'unread 1']],
  // The salt of a pH as a note above or below its value.
  ['below', 'pH 5.8\nP 42 ppm\n* pH in CaCl2', one('ph-salt 5.8 pH cacl2', 'phosphorus 42 ppm')], ['right below', 'pH 5.8\npH in KCl', one('ph-salt 5.8 pH kcl')], ['above', 'pH in CaCl2\n\npH 5.8\nP 42 ppm', [...one('ph-salt 5.8 pH cacl2', 'phosphorus 42 ppm'), 'unread 1']], ['of the salt one of two', 'pH 6.4\nSalt pH 5.8\npH in CaCl2', one('ph 6.4 pH', 'ph-salt 5.8 pH cacl2')], ['of water, above', 'pH 1:1 water\npH 5.8\nP 42 ppm', [...one('ph 5.8 pH water', 'phosphorus 42 ppm'), 'unread 1']],
  ['a name in a block is no note', 'Zinc 2.1 ppm\npH in CaCl2\nPhosphorus (ppm)\nPotassium (ppm)\n5.8\n42\n180', [zinc, ...one('ph-salt 5.8 pH cacl2', 'phosphorus 42 ppm', 'potassium 180 ppm')]],
  // One value behind two names.
  ['two names', 'Phosphorus and potassium 42 ppm\nZinc 2.1 ppm', [zinc, 'unread 1', 'line-shared 1']], ['two symbols', 'P & K 42 ppm\nZinc 2.1 ppm', [zinc, 'unread 1', 'line-shared 1']], ['one word for two', 'Calcium and magnesium low\nZinc 2.1 ppm', [zinc, 'unread 1', 'line-shared 1']], ['each its own', 'P 42 ppm and K 180 ppm', one('phosphorus 42 ppm', 'potassium 180 ppm')], ['one thing twice', 'Potash and K 180 ppm', one('potassium 180 ppm')],
  // What is unclear is told, a long sentence is none.
  ['a number in brackets that is none of the value', 'Phosphorus high (see 12)\nZinc 2.1 ppm', [zinc, 'unread 1', 'line-unclear 1']], ['an unknown unit', 'CEC 12 zork', ['unread 1', 'line-unclear 1', 'nothing-read']], ['a slip of a unit', 'Phosphorus 42 pmm', ['unit-unknown 1']], ['a sentence', 'Phosphorus 42 of the best that we have seen', ['unread 1', 'nothing-read']], ['bold marks', 'Zinc 2.1 ppm *, **Boron** 0.5 ppm', one('zinc 2.1 ppm', 'boron 0.5 ppm')],
])('%s', (_, text, expected) => { expect(told(`${text}\n`)).toEqual(expected); });
