// One line and its readings, asked of the reader of lines itself (practice): whose a value is, what is told of what could not be read, and what is shown of each.
import { describe, expect, test } from 'vitest';
import type { Context } from '../../src/soil/context.ts';
import { needsUnit, readLine } from '../../src/soil/line.ts';
import type { Item } from '../../src/tables/items.ts';
import { linesOf } from '../../src/soil/text.ts';
import { lookFor } from '../../src/soil/token.ts';
import { wordsOf } from '../../src/soil/vocabulary.ts';

const context = (more: Partial<Context> = {}): Context => {
  const words = more.words ?? wordsOf(null);
  const style = more.style ?? 'point';
  return { file: 'r.txt', words, dates: null, look: lookFor(words, style), style, method: null, methods: new Map(), unit: null, saturation: false, ground: null, german: false, indexFrom: null, indexBeside: false, leaf: false, ...more };
};
const lineOf = (text: string): ReturnType<typeof linesOf>[number] => linesOf(`${text}\nabc`)[0]!;
/** "phosphorus < 5 ppm olsen low 30-50 i2", each reading; then what is told. */
const read = (text: string, more: Partial<Context> = {}): string => {
  const { readings, notices } = readLine(lineOf(text), context(more));
  return [...readings.map((r) => [r.item, r.below ? '<' : r.above ? '>' : null, r.value, r.to === undefined ? null : `to ${r.to}`, r.unit, r.method, r.form, r.lab.rating, r.lab.range?.map((n) => n ?? '').join('-'), r.index === undefined ? null : `i${r.index}`, r.tag, r.scheme].filter((x) => x !== null && x !== undefined).join(' ')), ...notices.map((n) => `! ${n.code}`)].join('; ');
};
const each = (texts: Readonly<Record<string, string>>, more: Partial<Context> = {}): void => { expect(Object.keys(texts).map((t) => [t, read(t, more)])).toEqual(Object.entries(texts)); };

test('a value that two names would share is nobody\'s', () => {
  each({
    'Phosphorus and potassium 42 ppm': '! line-shared', 'Phosphorus & potassium 42 ppm': '! line-shared', 'Phosphorus + potassium 42 ppm': '! line-shared', 'Phosphor und Kalium 42 ppm': '! line-shared', 'Phosphorus, potassium 42 ppm': '! line-shared', 'Phosphorus and potassium low': '! line-shared', 'Phosphorus and potassium (42 ppm)': '! line-shared', 'P and potassium 42 ppm': '! line-shared',
    'Phosphorus 42 ppm and potassium 180 ppm': 'phosphorus 42 ppm; potassium 180 ppm', 'Phosphorus n/a and potassium 42 ppm': 'potassium 42 ppm', 'Phosphorus low, potassium 180 ppm': 'phosphorus low; potassium 180 ppm', '23 ppm phosphorus, potassium 180 ppm': 'phosphorus 23 ppm; potassium 180 ppm', 'Phosphorus: , potassium 42 ppm': 'potassium 42 ppm', 'Phosphorus ppm, potassium 42 ppm': 'potassium 42 ppm', 'Phosphorus n/a, potassium 42 ppm': 'potassium 42 ppm', 'Phosphorus foo, potassium 42 ppm': 'potassium 42 ppm', 'Phosphorus and potassium': '', 'Texture: loam and zinc 2 ppm': 'texture; zinc 2 ppm', 'Phosphorus; potassium 42 ppm': 'potassium 42 ppm',
  });
});

test('what stands before the first name holds for the line', () => {
  each({
    'Micronutrients (DTPA, ppm): Zn 2.1; Mn 14': 'zinc 2.1 ppm dtpa; manganese 14 ppm dtpa', 'Micronutrients ppm: Zn 2.1; Mn 14 mg/kg': 'zinc 2.1 ppm; manganese 14 mg/kg', 'Olsen P 18 ppm; K 180 ppm': 'phosphorus 18 ppm olsen; potassium 180 ppm', '% K 4.5; Mg 12': 'saturation-k 4.5 %; magnesium 12', 'Micronutrients (DTPA): Zn 2.1 ppm': 'zinc 2.1 ppm dtpa', 'Micronutrients (DTPA, ppm): Zn 2.1': 'zinc 2.1 ppm dtpa', '20-30 ppm phosphorus, K 120': 'phosphorus 20 to 30 ppm; potassium 120',
  });
  each({ 'Zn 2.1; Mn 14': 'zinc 2.1 ppm dtpa; manganese 14 ppm dtpa', 'pH 6.4': 'ph 6.4 pH' }, { unit: 'ppm', method: 'dtpa' });
});

test('a pH in brackets says of what', () => {
  each({
    'pH (buffer) 6.8': 'buffer-ph 6.8 pH', 'pH 6.8 (buffer)': 'buffer-ph 6.8 pH', 'pH 6.8 (Mehlich buffer)': 'buffer-ph 6.8 pH mehlich-buffer', 'pH 6.8 (SMP buffer)': 'buffer-ph 6.8 pH smp', 'pH 6.8 (lime index)': 'buffer-ph 6.8 pH', 'pH 6.8 (lime test index)': 'buffer-ph 6.8 pH', 'pH 5.8 (salt)': 'ph-salt 5.8 pH', 'pH [salt pH] 5.8': 'ph-salt 5.8 pH', 'pH 6.8 (no buffer)': 'ph 6.8 pH', 'pH 6.8 (low salt)': 'ph 6.8 pH', 'pH 6.8 (water)': 'ph 6.8 pH water', '2 of t CaO/ha': 'lime-requirement 2 t CaO/ha', 'pH 6.4, zinc 2 ppm (salt)': 'ph 6.4 pH; zinc 2 ppm',
  });
});

test('numbers that are told instead of taken', () => {
  each({
    'Phosphorus 42 ppm 43': '! two-values', 'pH 64': '! ph-impossible', 'pH 2.4': '! ph-impossible', 'pH 2.5': 'ph 2.5 pH', 'pH 11': 'ph 11 pH', 'pH 11.1': '! ph-impossible', 'Zinc -2 ppm': '! value-negative', 'Zinc 0 ppm': 'zinc 0 ppm', 'ESP -2 %': 'saturation-na -2 %', 'Sand 101 %': '! share-impossible', 'Sand 100 %': 'sand 100 %', 'Zinc 1000001 ppm': '! value-impossible', 'Zinc 1000000 ppm': 'zinc 1000000 ppm', 'Zinc 101 ppm': 'zinc 101 ppm',
    'Calcium 2.405 ppm': '! number-unclear', 'Calcium 2.405': '! number-unclear', 'Magnesium 2.405 lb/acre': '! number-unclear', 'Potassium 12.405 kg/ha': '! number-unclear', 'Calcium 2.405 meq/100g': 'calcium 2.405 meq/100g', 'Calcium 2.40 ppm': 'calcium 2.4 ppm', 'Calcium 0.405 ppm': 'calcium 0.405 ppm', 'Zinc 2.405 ppm': 'zinc 2.405 ppm', 'Calcium 2.4051 ppm': 'calcium 2.4051 ppm', 'Calcium 2405 ppm': 'calcium 2405 ppm',
    'Phosphorus 4l ppm': '! not-a-number', 'Phosphorus NaN ppm': '! not-a-number', 'Phosphorus inf': '! not-a-number', 'Phosphorus infinity': '! not-a-number', 'Phosphorus forty-two ppm': '! not-a-number', 'Phosphorus l4 42': '! not-a-number', 'Zinc trace detected': 'zinc <', 'Zinc trace ppn': 'zinc <', 'Phosphorus information': '', 'Phosphorus nanny 42': '! line-unclear', 'Zinc 42 ppn': '! unit-unknown', 'Zinc 42 furlongs': '! line-unclear', 'Zinc 42 furlongs beyond our neighbour': '', 'Phosphate 42 ppm': 'phosphorus 42 ppm',
  });
  each({ 'Calcium 2,405 ppm': '! number-unclear', 'Calcium 1,5-2,405 ppm': '! number-unclear', 'Calcium 2.405 ppm': 'calcium 2405 ppm', 'Zinc 2,4 ppm': 'zinc 2.4 ppm' }, { style: 'comma' });
});

test('goals, conditions and footnotes are no readings', () => {
  each({ 'Optimum pH 6.0 to 6.8': '', 'Optimum pH 6.5': '', 'pH 6.5 optimum': 'ph 6.5 pH optimum', 'Optimum phosphorus 30-50 ppm': '', '3 Mehlich buffer pH, 4 summation': '', 'Apply 40 lb/acre phosphorus': '', 'raise pH to 6.5': '', 'if pH 6.5': '' });
});

test('a word, a unit or a number before its name', () => {
  each({ 'very high magnesium': 'magnesium very-high', '% organic matter 3.7': 'organic-matter 3.7 %', '4.1 % organic matter': 'organic-matter 4.1 %', '4-5 % organic matter': 'organic-matter 4 to 5 %', '23 ppm phosphorus': 'phosphorus 23 ppm', '23 ppm phosphorus 40 ppm': 'phosphorus 40 ppm', 'foo 23 ppm phosphorus': '', 'low 42 ppm phosphorus': '', 'high phosphorus 42 ppm low': 'phosphorus 42 ppm low', 'Colwell phosphorus 42 ppm': 'phosphorus 42 ppm colwell' });
});

test('words alone', () => {
  each({ 'Phosphorus low': 'phosphorus low', 'Phosphorus ppm very high': 'phosphorus ppm very-high', 'Phosphorus ppm, optimum': 'phosphorus ppm optimum', 'P ppm, optimum, K ppm, optimum': '', 'P ppm, low, K ppm, high': 'phosphorus ppm low; potassium ppm high', 'Phosphorus': '', 'Phosphorus n/a': '', 'Phosphorus trace': 'phosphorus <', 'Texture: sandy loam': 'texture', 'Texture:': '', 'Texture 42': '', 'Ca:Mg 6': '' });
});

test('limits, spans, ranges, indices and tags', () => {
  each({ 'Zinc < 5 ppm': 'zinc < 5 ppm', 'Zinc > 5 ppm': 'zinc > 5 ppm', 'Zinc 4-5 ppm': 'zinc 4 to 5 ppm', 'Zinc 2 ppm (1-3)': 'zinc 2 ppm 1-3', 'Zinc 2 ppm >1000001': 'zinc 2 ppm; ! value-impossible', 'Zinc 2 ppm >1000000': 'zinc 2 ppm 1000000-', 'pH 6.9 >14.1': 'ph 6.9 pH', 'pH 6.9 (0-14)': 'ph 6.9 pH 0-14', 'pH 6.9 (6-2147483648)': 'ph 6.9 pH; ! ph-impossible', 'Zinc 2 ppm >1': 'zinc 2 ppm 1-', 'Zinc 2 ppm <3': 'zinc 2 ppm -3', 'Phosphorus 18 ppm index 2': 'phosphorus 18 ppm i2', 'Phosphorus index 2': 'phosphorus 2 index', 'Phosphorus 42 ppm optimum range 30-50': 'phosphorus 42 ppm 30-50', 'Phosphorus (AAE10) 18 ppm': 'phosphorus 18 ppm aae10', 'Phosphorus (foo) 18 ppm': 'phosphorus 18 ppm', 'Mn-AI 40': 'manganese 40 index north-carolina.index', 'Mn-AI 40 ppm': 'manganese 40 ppm' });
  each({ 'Phosphorus index 2': 'phosphorus 2 index optimum', 'Phosphorus 18 mg/l index 0': 'phosphorus 18 mg/L very-low i0', 'Phosphorus 18 mg/l index 0 high': 'phosphorus 18 mg/L high i0' }, { indexFrom: 0 });
  each({ 'Phosphorus 18 mg/l (2)': 'phosphorus 18 mg/L i2', 'Phosphorus 18 (2)': 'phosphorus 18 i2' }, { indexBeside: true });
});

test('an index that says so behind its number, or in brackets', () => {
  each({
    'Phosphorus 2 index': 'phosphorus 2 index', 'Phosphorus (index) 2': 'phosphorus 2 index', 'Phosphorus 2 (index)': 'phosphorus 2 index', 'Phosphorus 2 index low': 'phosphorus 2 index low', 'P (index) 2, K (index) 1': 'phosphorus 2 index; potassium 1 index', 'Phosphorus 18 mg/l (index) 2': 'phosphorus 18 mg/L i2',
    'Phosphorus 18 index: n/a': 'phosphorus 18', 'Phosphorus 18 | index': 'phosphorus 18', 'Phosphorus 18 ppm index': 'phosphorus 18 ppm', 'Phosphorus ppm 18 index': 'phosphorus 18 ppm', 'Phosphorus 18 previous': 'phosphorus 18', 'Phosphorus 18 range': 'phosphorus 18', 'Phosphorus 18 (index guideline)': 'phosphorus 18', 'pH 6.4 index': 'ph 6.4 pH',
  });
});

test('a German class behind its value', () => {
  const words = wordsOf('de');
  each({ 'Phosphor 12 mg/100 g C': 'phosphorus 12 mg/100g optimum', 'Phosphor 12 mg/100 g C hoch': 'phosphorus 12 mg/100g high', 'pH 6.4 C': 'ph 6.4 pH optimum', 'Humus 3 % C': 'organic-matter 3 %' }, { words, german: true });
  each({ 'Phosphor CAL 12 mg/100 g C': 'phosphorus 12 mg/100g cal optimum', 'Phosphor 12 mg/100 g C': 'phosphorus 12 mg/100g', 'Kali 12 mg/100 g': 'potassium 12 mg/100g K2O; ! form-meant', 'Kali 12 mg K/100 g': 'potassium 12 mg/100g', 'Kali 12 mg K2O/100 g': 'potassium 12 mg/100g K2O' }, { words });
  each({ 'Phosphor 12 mg/100 g C': 'phosphorus 12 mg/100g cal optimum' }, { words, method: 'cal' });
});

describe('beside a reading', () => {
  test('a texture that nothing announces', () => { each({ 'Silt loam, pH 6.4': 'ph 6.4 pH; texture', 'loam; pH 6.4': 'ph 6.4 pH; texture', 'sand, pH 6.4': 'ph 6.4 pH', 'Silt loam': '', 'the silt loam, pH 6.4': 'ph 6.4 pH' }); });
  test('slips and words that nobody knows, each told once', () => { each({ 'Zinc 2 ppm, borron: 1 ppm': 'zinc 2 ppm; boron 1 ppm', 'Zinc 2 ppm, magnezium: 97 ppm': 'zinc 2 ppm; ! name-unknown', 'Zinc 2 ppm mag 97 ppm': 'zinc 2 ppm; ! line-unclear', 'Phosphorous 42 ppm': '! name-unknown', 'Foozle 42 ppm': '', 'Zork base saturation 4.5': '! line-unclear' }); });
  test('quick-test units hold for all cations of the line', () => { each({ 'Potassium 8 MAF, magnesium 12': 'potassium 8 MAF; magnesium 12 MAF', 'Potassium 8 MAF, zinc 12': 'potassium 8 MAF; zinc 12' }); });
  test('below "base saturation" no unit is needed', () => { each({ 'Base saturation: K 4.5, Mg 12': 'saturation-k 4.5 %; saturation-mg 12 %', 'K 4.5, base saturation 70': 'potassium 4.5; base-saturation 70 %' }); });
});

test('what is shown of a reading: as printed, at its place', () => {
  const shown = (text: string): unknown => readLine(lineOf(text), context()).readings.map((r) => [r.asPrinted, r.place.column, r.place.length]);
  expect([shown('*Zinc* 2 ppm, boron 1 ppm;'), shown('low zinc 2 ppm'), shown('Zinc 2 ppm -'), shown('Zinc (DTPA) 2 ppm)'), shown('x (Zinc 2 ppm)'), shown('4 % organic matter')]).toEqual([[['Zinc 2 ppm', 2, 11], ['boron 1 ppm', 15, 12]], [['low zinc 2 ppm', 5, 10]], [['Zinc 2 ppm', 1, 12]], [['Zinc (DTPA) 2 ppm)', 1, 18]], [], [['4 % organic matter', 5, 14]]]);
});

test('what is nothing without its unit', () => { expect((['phosphorus', 'organic-matter', 'organic-carbon', 'salts', 'cec', 'ph', 'sand', 'texture'] as Item[]).map(needsUnit)).toEqual([true, true, true, true, true, false, false, false]); });
