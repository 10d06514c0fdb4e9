// Lines that say by which method and in which unit others were measured, as labs write them above and below their values (practice).
import { describe, expect, test } from 'vitest';
import { readReport } from '../../src/soil/read.ts';

/** Each reading with its unit and method. */
const read = (text: string): string => readReport(text, 'r.txt').samples.flatMap((s) => s.readings).map((r) => [r.item, r.value, r.unit, r.method].filter((x) => x !== null).join(' ')).join('; ');
const P = 'Phosphorus 42 ppm\n';
const PK = `${P}Potassium 180 ppm\n`;
const told = (p: string, k: string): string => [`phosphorus 42 ppm ${p}`, `potassium 180 ppm ${k}`].map((s) => s.trim()).join('; ');

test.each<[string, string, string]>([
  // Below the values: item by item, in lists, with either first; for all.
  ['each its own', `${PK}P by Olsen, K by ammonium acetate\n`, told('olsen', 'ammonium-acetate')], ['two of one', `${PK}P and K Mehlich-3\n`, told('mehlich-3', 'mehlich-3')], ['with a stroke', `${PK}P/K: Mehlich 3\n`, told('mehlich-3', 'mehlich-3')], ['with a plus', `${PK}P+K Mehlich 3\n`, told('mehlich-3', 'mehlich-3')], ['names in full', `${PK}Phosphorus and potassium were determined by Mehlich 3\n`, told('mehlich-3', 'mehlich-3')], ['method first', `${PK}Olsen was used for P; ammonium acetate for K\n`, told('olsen', 'ammonium-acetate')], ['two sentences', `${PK}P by Olsen. K by ammonium acetate.\n`, told('olsen', 'ammonium-acetate')],
  ['for all', `${PK}Extractant: Mehlich 3\n`, told('mehlich-3', 'mehlich-3')], ['for all, behind a gap', `${PK}\nMethod: Mehlich 3\n`, told('mehlich-3', 'mehlich-3')], ['two for all, each for what it extracts', `${PK}Methods: Olsen; ammonium acetate\n`, told('olsen', 'ammonium-acetate')],
  ['cations as a group', `${PK}Cations by ammonium acetate\n`, told('', 'ammonium-acetate')], ['bases as a group', `${PK}Exchangeable bases: ammonium acetate\n`, told('', 'ammonium-acetate')], ['micronutrients as a group', `Zinc 2.1 ppm\n${P}Micronutrients by DTPA\n`, 'zinc 2.1 ppm dtpa; phosphorus 42 ppm'],
  ['what stands beside a value stays', `Phosphorus 42 ppm Bray 1\nPotassium 180 ppm\nP and K Mehlich-3\n`, told('bray-1', 'mehlich-3')], ['a salt of pH', 'pH 5.8\nPhosphorus 42 ppm\npH by CaCl2\n', 'ph-salt 5.8 pH cacl2; phosphorus 42 ppm'], ['the water of a ratio', 'pH 6.4\nPhosphorus 42 ppm\npH 1:1 water\n', 'ph 6.4 pH water; phosphorus 42 ppm'], ['a buffer', `Buffer pH 6.8\n${P}Buffer pH by SMP\n`, 'buffer-ph 6.8 pH smp; phosphorus 42 ppm'], ['a buffer told of pH', `Buffer pH 6.8\n${P}pH by SMP\n`, 'buffer-ph 6.8 pH smp; phosphorus 42 ppm'],
  ['either way round', `${PK}P by Olsen; ammonium acetate for K\n`, told('olsen', 'ammonium-acetate')], ['a list of symbols', `${PK}Calcium 900 ppm\nCa, Mg and K by ammonium acetate\n`, `${told('', 'ammonium-acetate')}; calcium 900 ppm ammonium-acetate`], ['a list with strokes', `${PK}Zinc 2.1 ppm\nP/K/Zn: Mehlich 3\n`, `${told('mehlich-3', 'mehlich-3')}; zinc 2.1 ppm mehlich-3`],
  ['a span is a value', `Zinc 2.1 ppm\nOlsen phosphorus 10-20 ppm\n`, 'zinc 2.1 ppm; phosphorus 10 ppm olsen'], ['so is a trace', `Zinc 2.1 ppm\nOlsen phosphorus trace\n`, 'zinc 2.1 ppm; phosphorus olsen'], ['and none', `${P}Potassium Mehlich 3 not tested\n`, 'phosphorus 42 ppm'],
  // Above the values.
  ['above', `P by Olsen, K by ammonium acetate\n${PK}`, told('olsen', 'ammonium-acetate')], ['above, for all, with a unit', 'All results in ppm, Mehlich 3\nPhosphorus 42\nPotassium 180\n', told('mehlich-3', 'mehlich-3')], ['a unit alone', 'All values are in ppm\nPhosphorus 42\n', 'phosphorus 42 ppm'], ['a unit below', 'Phosphorus 42\nPotassium 180\nAll results in ppm\n', told('', '')],
  ['the next line for all takes over', `Olsen\n${P}Ammonium acetate\nPotassium 180 ppm\n`, told('olsen', 'ammonium-acetate')], ['a line for all behind each', `${P}Method: Olsen\nPotassium 180 ppm\nMethod: ammonium acetate\n`, told('olsen', 'ammonium-acetate')],
  ['of its own sample', `sample: A\n${P}Method: Olsen\nsample: B\n${P}Method: Bray 1\n`, 'phosphorus 42 ppm olsen; phosphorus 42 ppm bray-1'], ['in a table', 'Sample,P,K\n1,42,180\nP and K Mehlich-3\n', 'phosphorus 42 mehlich-3; potassium 180 mehlich-3'],
  // Sentences that deny, compare or praise tell nothing; a line with a number is a value.
  ['denied', `${PK}P was not measured by Olsen\n`, told('', '')], ['of other labs', `${PK}Many labs prefer Olsen for P\n`, told('', '')], ['a value', `${P}Olsen P 18 ppm\n`, 'phosphorus 42 ppm'], ['a word', `${P}Olsen K low\n`, 'phosphorus 42 ppm; potassium olsen'], ['a name that lost its value', `${P}Potassium Mehlich 3 ppm\n`, 'phosphorus 42 ppm'], ['a ratio', `${PK}Ca:Mg ratio by Mehlich 3\n`, told('', '')],
])('%s', (_, text, expected) => { expect(read(text)).toBe(expected); });

// What tells nothing is listed as unread, with its line; what tells a part of a list tells it of no other.
const unread = (text: string): readonly number[] => readReport(text, 'r.txt').samples.flatMap((s) => s.unread).map((u) => u.line);
test.each<[string, string, string, readonly number[]]>([
  ['a name that lost its value', `${P}Potassium Mehlich 3 ppm\n`, 'phosphorus 42 ppm', [2]], ['the same name again', `${P}Phosphorus Mehlich 3 ppm\n`, 'phosphorus 42 ppm', [2]], ['a ratio', `${PK}Ca:Mg ratio by Mehlich 3\n`, told('', ''), [3]], ['a ratio with others', `${PK}P and Ca:Mg ratio by Mehlich 3\n`, told('', ''), [3]],
  ['a strange word', `${PK}P beats Olsen\n`, told('', ''), [3]], ['a symbol of no test', `${PK}X/P by Olsen\n`, told('', ''), [3]], ['told', `${PK}P by Olsen\n`, told('olsen', ''), []],
  ['a sentence about nothing', `${PK}P by Olsen. Thank you. K by ammonium acetate\n`, told('', ''), [3]], ['names alone', `${PK}Olsen was used for P. K was tested\n`, told('olsen', ''), []],
])('%s', (_, text, expected, lines) => { expect([read(text), unread(text)]).toEqual([expected, lines]); });

test.each<[string, string, string]>([
  // A unit beside named items is for these alone, of all values for all.
  ['a unit of some', 'Zinc 2\nPotassium 180 ppm\nP and K by Mehlich 3, ppm\n', 'zinc 2; potassium 180 ppm'], ['of all beside them', 'Zinc 2\nPotassium 180\nAll results in ppm, K by Mehlich 3\n', 'zinc 2 ppm; potassium 180 ppm mehlich-3'], ['two units of all', 'All results in ppm or mg/kg\nZinc 2\n', 'zinc 2'], ['a sentence with a unit', 'All our customers like ppm\nZinc 2\n', 'zinc 2'],
  // Behind a gap, under its own sample, under values it does not serve.
  ['before any value it tells what is below', `Method: Olsen\n${P}`, 'phosphorus 42 ppm olsen'],
  ['of the sample above', `sample: A\n${P}P by Olsen\nsample: B\n${P}`, 'phosphorus 42 ppm olsen; phosphorus 42 ppm olsen'],
  ['below a table', 'Sample;P;K\nFront; 42 ; 180\nMethod: Mehlich 3\n', 'phosphorus 42 mehlich-3; potassium 180 mehlich-3'], ['a lime need has none', `Lime requirement 2 ton/acre\n${P}P by Olsen\n`, 'lime-requirement 2 ton/acre; phosphorus 42 ppm olsen'],
  // Each line of a method behind its own values, told by the values right above it that it serves.
  ['behind two values each', `${P}Zinc 2 ppm\nMethod: Mehlich 3\nPotassium 180 ppm\nMagnesium 90 ppm\nMethod: ammonium acetate\n`, 'phosphorus 42 ppm mehlich-3; zinc 2 ppm mehlich-3; potassium 180 ppm ammonium-acetate; magnesium 90 ppm ammonium-acetate'], ['over a value that it does not serve', `${P}pH 6.4\nMethod: Olsen\nPotassium 180 ppm\nMagnesium 90 ppm\nMethod: ammonium acetate\n`, 'phosphorus 42 ppm olsen; ph 6.4 pH; potassium 180 ppm ammonium-acetate; magnesium 90 ppm ammonium-acetate'],
  ['the salt of a pH as one name', `pH 5.8\n${P}pH (CaCl2)\n`, 'ph-salt 5.8 pH cacl2; phosphorus 42 ppm'], ['below a row of values without names', `Front; 42 ; 180\n${P}Method: Olsen\n`, 'phosphorus 42 ppm olsen'],
  ['all of a heading, above', 'All results by Mehlich 3\nPhosphorus 42 ppm\nZinc 2 ppm\n', 'phosphorus 42 ppm mehlich-3; zinc 2 ppm mehlich-3'], ['what an extractant does not extract', `${P}pH 6.4\nOrganic matter 4 %\nMethod: Mehlich 3\n`, 'phosphorus 42 ppm mehlich-3; ph 6.4 pH; organic-matter 4 %'], ['two that would both do', `${P}Methods: Olsen; Bray 1\n`, 'phosphorus 42 ppm'],
  ['across a blank line and another sample', `sample: A\n${P}\nMethod: Olsen\n\nsample: B\n${P}`, 'phosphorus 42 ppm olsen; phosphorus 42 ppm olsen'],
  // A line with a value is that value.
  ['a number', 'pH 6.4\npH CaCl2 5.8\n', 'ph 6.4 pH; ph-salt 5.8 pH cacl2'], ['a span', 'Zinc 2.1 ppm\nPhosphorus (Olsen) 10-20\n', 'zinc 2.1 ppm; phosphorus 10 olsen'], ['a trace', 'Zinc 2.1 ppm\nPhosphorus (Olsen) trace\n', 'zinc 2.1 ppm; phosphorus olsen'],
  ['the second of two methods is the water\'s alone', `pH 6.4\n${P}pH, P 1:1 water\n`, 'ph 6.4 pH water; phosphorus 42 ppm water'],
])('%s', (_, text, expected) => { expect(read(text)).toBe(expected); });

test('decimal commas of several values part no cells', () => {
  const values = (text: string): unknown => readReport(text, 'r.txt').samples.map((s) => s.readings.map((r) => [r.item, r.value]));
  expect(values('Kalium 15 mg/100g,Magnesium 2,4 mg/100g\nPhosphor 3,5 mg/100g\n')).toEqual([[['potassium', 15], ['magnesium', 2.4], ['phosphorus', 3.5]]]);
  expect(values('Kalium 1,5 mg/100g,Magnesium 2,4 mg/100g\nPhosphor 3,5 mg/100g\n')).toEqual([[['potassium', 1.5], ['magnesium', 2.4], ['phosphorus', 3.5]]]);
});

describe('a method below its values', () => {
  const methods = (text: string): unknown => readReport(text, 'r.txt').samples.map((s) => s.readings.map((r) => [r.item, r.method]));
  test('is that of those in its line that it serves', () => { expect(methods('pH 6.4, phosphorus 42\nMehlich 3\nzinc 2\nDTPA\n')).toEqual([[['ph', null], ['phosphorus', 'mehlich-3'], ['zinc', 'dtpa']]]); });
  test('a list that ends without its method tells none', () => { expect(methods('Phosphorus by Olsen and potassium\nPhosphorus 12\npotassium 40\n')).toEqual([[['phosphorus', null], ['potassium', null]]]); });
  test('of a span too', () => { expect(methods('Zinc 2-3 ppm\nDTPA\n')).toEqual([[['zinc', 'dtpa']]]); });
});
