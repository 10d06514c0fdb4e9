// Lines that say by which method and in which unit others were measured, as labs write them above and below their values (practice).
import { expect, test } from 'vitest';
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
