// Names and symbols in a line: what is one and what only looks like one (practice; symbols of the elements by their case, ions by their charge).
import { describe, expect, test } from 'vitest';
import { readReport } from '../../src/soil/read.ts';
import { findMethods, findUnits, lower } from '../../src/soil/patterns.ts';
import { blank, covered, isUnknown, methodCalled, unitCalled } from '../../src/soil/vocabulary.ts';

const told = (line: string): string => readReport(`${line}\n\npH 6.4\n`, 'r.txt').samples.flatMap((s) => s.readings).filter((r) => r.item !== 'ph').map((r) => [r.item, r.value, r.unit, r.method, r.lab.rating, r.below ? 'below' : null].filter((x) => x !== null).join(' ')).join('; ');

test.each([
  ['P Olsen: 31 ppm', 'phosphorus 31 ppm olsen'], ['P by Olsen 31 ppm', 'phosphorus 31 ppm olsen'], ['P nach CAL 12 mg/100g', 'phosphorus 12 mg/100g cal'], ['P-M3 42 ppm', 'phosphorus 42 ppm mehlich-3'], ['P (M3) 42 ppm', 'phosphorus 42 ppm mehlich-3'], ['P1 18 ppm', 'phosphorus 18 ppm bray-1'],
  ['K: not detected', 'potassium below'], ['K low', 'potassium low'], ['K trace', 'potassium below'], ['low K 96 ppm', 'potassium 96 ppm low'], ['high Mg', 'magnesium high'], ['P index 2', 'phosphorus 2 index'],
  ['Mg mg/100 g 8', 'magnesium 8 mg/100g'], ['Mg 8 mg/100g', 'magnesium 8 mg/100g'], ['Plot P 42 ppm', 'phosphorus 42 ppm'], ['Extractable P 42 ppm', 'phosphorus 42 ppm'], ['soil P 42 ppm', 'phosphorus 42 ppm'], ['available K 180 ppm', 'potassium 180 ppm'],
  ['K+ 0.4 meq/100g', 'potassium 0.4 meq/100g'], ['Ca++ 5 meq/100g', 'calcium 5 meq/100g'], ['Ca2+ 5 meq/100g', 'calcium 5 meq/100g'], ['H 1.2 meq/100g', 'acidity 1.2 meq/100g'], ['S-SO4 10 ppm', 'sulphur 10 ppm'], ['NO3-N 10 ppm', 'nitrate-n 10 ppm'], ['NH4-N 3 ppm', 'ammonium-n 3 ppm'], ['Kupfer (Cu) 2 mg/kg', 'copper 2 mg/kg'],
  // A word of one language alone where number and unit leave no doubt; umlauts either way.
  ['Fer 42 mg/kg', 'iron 42 mg/kg'], ['Rame 1.2 mg/kg', 'copper 1.2 mg/kg'], ['Leitfähigkeit 0.3 mS/cm', 'salts 0.3 mS/cm'], ['Leitfaehigkeit 0.3 mS/cm', 'salts 0.3 mS/cm'], ['Electrical  conductivity 0.3 dS/m', 'salts 0.3 dS/m'],
  // Ratios, answers, letters of words, and names that nothing follows.
  ['P/Al ratio 3', ''], ['Ca/Mg 6.5', ''], ['N.A.', ''], ['fer 42', ''], ['the P is fine', ''], ['we like K', ''], ['K', ''], ['High', ''], ['K per acre 180 lb', ''], ['Phosphorusx 42 ppm', ''], ['xPhosphorus 42 ppm', ''],
])('%s: %s', (line, reading) => { expect(told(line)).toBe(reading); });

test('an answer that nobody knows', () => {
  expect(['unknown', ' Unknown. ', 'I don\'t know', 'don’t know', 'do not know', 'not known', '?'].map(isUnknown)).toEqual(Array(7).fill(true));
  expect(['quite unknown', 'unknown to me', 'known', 'Olsen?', '??', ''].map(isUnknown)).toEqual(Array(6).fill(false));
});
test('a unit or a method by its name alone', () => {
  expect([unitCalled('ppm'), unitCalled(' index '), unitCalled('the index'), unitCalled('index 2'), unitCalled('mg/100 g'), unitCalled('furlongs')]).toEqual(['ppm', 'index', null, null, 'mg/100g', null]);
  expect([methodCalled('Olsen'), methodCalled('cal'), methodCalled(' CAL '), methodCalled('calx'), methodCalled('modified-morgan'), methodCalled('Mehlich III'), methodCalled('unknown'), methodCalled('sorcery')]).toEqual(['olsen', 'cal', 'cal', null, 'modified-morgan', 'mehlich-3', 'unknown', null]);
});
test('a unit stands hard behind a number, never within a word; a method neither', () => {
  const units = (text: string): unknown => findUnits(text).map((u) => [u.is, text.slice(u.start, u.end)]);
  expect([units('42ppm'), units('42 ppm, 3 mg/kg'), units('xppm'), units('a/ppm'), units('42 %'), units('42%'), units('Mg mg/kg')]).toEqual([[['ppm', 'ppm']], [['ppm', 'ppm'], ['mg/kg', 'mg/kg']], [], [], [['%', '%']], [['%', '%']], [['mg/kg', 'mg/kg']]]);
  expect([findMethods('Olsen').length, findMethods('xOlsen').length, findMethods('4Olsen').length, findMethods('(Olsen)').length, findMethods('P, Olsen, Bray 1').map((m) => m.is)]).toEqual([1, 0, 0, 1, ['olsen', 'bray-1']]);
});

// By definition: what is blanked is blank, what is not stays, and nothing moves.
test('blanks and cover', () => {
  expect(blank('abcdefgh', [{ start: 5, end: 7 }, { start: 1, end: 3 }, { start: 2, end: 4 }, { start: 2, end: 3 }])).toBe('a   e  h');
  expect(blank('abc', [])).toBe('abc');
  const any = covered(6, [{ start: 1, end: 3 }]);
  expect([[0, 1], [0, 2], [2, 3], [3, 4], [2, 6]].map(([start, end]) => any({ start: start!, end: end! }))).toEqual([false, true, true, false, true]);
  const whole = covered(6, [{ start: 1, end: 3 }], true);
  expect([[1, 3], [1, 2], [0, 2], [2, 4]].map(([start, end]) => whole({ start: start!, end: end! }))).toEqual([true, true, false, false]);
});
// Unicode: İ becomes two signs in small letters; the others keep their places.
test('small letters keep every place', () => { expect([lower('ABC Ä'), lower('İABC').length, lower('İABC').endsWith('abc')]).toEqual(['abc ä', 4, true]); });

// German labs mean the oxide by these words (practice; VDLUFA's older classes are in P2O5 and K2O): carried as such and told, but where another name or the unit tells the form.
test.each<[string, number, string | null, readonly string[]]>([
  ['Phosphat 12 mg/100 g', 12, 'P2O5', ['form-meant']], ['Phosphat nach CAL: 12 mg/100 g C', 12, 'P2O5', ['form-meant']], ['Kali (CAL) 27 mg/100g D', 27, 'K2O', ['form-meant']], ['Kali 27 mg/100 g', 27, 'K2O', ['form-meant']],
  ['Phosphat (P2O5) 12 mg/100 g', 12, 'P2O5', []], ['Kali 27 mg K2O/100 g', 27, 'K2O', []], ['Phosphat (P) 12 mg/100 g', 12, null, []], ['Kali 27 mg K/100 g', 27, null, []], ['Phosphor 12 mg/100 g', 12, null, []], ['Kalium 27 mg/100 g', 27, null, []], ['Kali 4.5 %', 4.5, null, []],
])('%s', (line, value, form, codes) => {
  const { samples, notices } = readReport(`${line}\nMagnesium 9 mg/100 g\n`, 'r.txt');
  expect([samples[0]!.readings.filter((r) => r.item !== 'magnesium').map((r) => [r.value, r.form]), notices.map((n) => n.code)]).toEqual([[[value, form]], codes]);
});

describe('a symbol', () => {
  test.each(['Soil', 'Exch', 'Exch.', 'Exchangeable', 'Avail', 'Avail.', 'Available', 'Extractable', 'Soil ', 'pH 6.4:', 'pH 6.4 |', 'pH 6.4 ', 'Sulphur (ppm):', '-  '])('behind "%s"', (before) => { expect(told(`${before} K (ppm) 96`)).toBe('potassium 96 ppm'); });
  test.each([['Colwell K (mg/kg) 180', 'potassium 180 mg/kg colwell'], ['Olsen P (mg/kg) 18', 'phosphorus 18 mg/kg olsen'], ['Bray P (ppm) 18', 'phosphorus 18 ppm bray-1'], ['Morgan\'s P (ppm) 18', 'phosphorus 18 ppm morgan'], ['DTPA Zn (ppm) 18', 'zinc 18 ppm dtpa'], ['Low K (ppm) 96', 'potassium 96 ppm low'], ['Medium K (ppm) 96', 'potassium 96 ppm medium'], ['High K (ppm) 96', 'potassium 96 ppm high'], ['Optimum K (ppm) 96', 'potassium 96 ppm optimum'], ['Optimal K (ppm) 96', 'potassium 96 ppm optimum'], ['Adequate K (ppm) 96', 'potassium 96 ppm optimum'], ['Sufficient K (ppm) 96', 'potassium 96 ppm optimum'], ['Deficient K (ppm) 96', 'potassium 96 ppm low'], ['Excessive K (ppm) 96', 'potassium 96 ppm very-high'], ['Normal K (ppm) 96', 'potassium 96 ppm optimum'], ['Average K (ppm) 96', 'potassium 96 ppm medium'], ['Plot K (ppm) 96', ''], ['Unsoil K (ppm) 96', ''], ['Soil K beds 96', '']])('%s: %s', (line, reading) => { expect(told(line)).toBe(reading); });
  test.each([['P is 42 ppm', 'phosphorus 42 ppm'], ['P was 42 ppm', 'phosphorus 42 ppm'], ['P mit CAL 12 mg/100g', 'phosphorus 12 mg/100g cal'], ['P por Olsen 31 ppm', 'phosphorus 31 ppm olsen'], ['P  medium', 'phosphorus medium'], ['P. (Olsen) 31 ppm', 'phosphorus 31 ppm olsen'], ['Plot P < 5 ppm', 'phosphorus 5 ppm below'], ['Plot P: 42 ppm', 'phosphorus 42 ppm'], ['Plot P : 42 ppm', 'phosphorus 42 ppm'], ['Plot P = 42 ppm', 'phosphorus 42 ppm'], ['Plot P .5 ppm', 'phosphorus 0.5 ppm'], ['Plot P - 42', ''], ['K lower', '']])('%s: %s', (line, reading) => { expect(told(line)).toBe(reading); });
  test.each(['ppm', 'mg/kg', 'mg / kg', 'mg/l', 'mg/100 g', 'mg/100g', 'meq/100g', 'me/100 g', 'cmol/kg', 'cmolc/kg'])('between its value in %s and its word', (unit) => {
    expect([told(`18 ${unit} Ca high`), told(`18 ${unit} K: high`), told(`18 ${unit} P (high)`), told(`18 ${unit} Mg - high`), told(`18 ${unit} S high`)].map((t) => t.replace(/ (?:mg|meq|cmol|ppm)\S*/, ''))).toEqual(['calcium 18 high', 'potassium 18 high', 'phosphorus 18 high', 'magnesium 18 high', '']);
  });
  test.each(['not detected', 'nicht nachweisbar', 'non détecté', 'no detectado', 'nao detectado', 'não detectado', 'traces', 'trazas', 'Spuren', 'nd', 'n.d.', 'n.n.', 'bdl', 'below detection', 'undetected', 'undetectable'])('%s', (none) => { expect(told(`K ${none}`)).toBe('potassium below'); });
  test.each(Object.entries({ 'very-low': 'very low, sehr niedrig, muy bajo, molto basso', low: 'deficient, bajo, bas, baixo, niedrig, gering, faible', medium: 'mittel, moyen, medium', optimum: 'optimum, optimal, sufficient, adequate', high: 'alto, hoch, élevé', 'very-high': 'excessive, sehr hoch, muy alto, très élevé, molto alto, muito alto' }))('%s: %s', (rating, words) => { for (const word of words.split(', ')) expect([word, told(`K ${word}`)]).toEqual([word, `potassium ${rating}`]); });
});

test.each(['Fer (Fe) 42 mg/kg', 'Fer: 42 mg/kg', 'Fer = 42 mg/kg', 'Fer | 42 | mg/kg', 'fer 42 mg/kg', '  fer 42 mg/kg', 'Zinc 2 ppm, fer 42 mg/kg', 'Zinc 2 ppm; fer 42 mg/kg', 'Zinc 2 ppm  fer 42 mg/kg', 'Zinc 2 ppm | fer 42 mg/kg'])('a word of one language alone: %s', (line) => { expect(told(line).replace('zinc 2 ppm; ', '')).toBe('iron 42 mg/kg'); });
test.each(['of fer 42 mg/kg', 'Fer is 42 mg/kg', 'fer mg/kg', 'Zinc of fer 42'])('%s is none', (line) => { expect(told(line)).toBe(''); });

describe('a class by its letter', () => {
  const P = 'Phosphor 12 mg/100 g';
  const rated = (line: string): string => told(line).replaceAll(/phosphorus 12 mg\/100g ?/g, '');
  test.each(['Gehaltsklasse c', 'Gehaltsstufe c', 'Versorgungsstufe c', 'Versorgungsklasse c', 'Stufe c', 'Klasse c', 'Klasse  c', 'Klasse: c', 'Gehaltsklasse: C', 'class c', '(Gehaltsklasse C)', 'C', '[C]', '(C)', 'C | x'])('%s', (letter) => { expect(rated(`${P} ${letter}`)).toBe('optimum'); });
  test('from A to F', () => { expect([...'abcdef', ...'ABCDEF'].map((letter) => rated(`${P} Klasse ${letter}`))).toEqual([...Array(2)].flatMap(() => ['very-low', 'low', 'optimum', 'high', 'very-high', 'very-high'])); });
  test('that is none', () => { expect(['Klasse g', 'Klasse ca', 'Unterklasse c', '/C'].map((letter) => rated(`${P} ${letter}`))).toEqual(['', '', '', '']); });
  test.each([[';', 2], [',', 2], [' ', 2]])('each its own, behind "%s"', (sign) => { expect(told(`${P} C${sign} Kalium 14 mg/100 g D`)).toBe('phosphorus 12 mg/100g optimum; potassium 14 mg/100g high'); });
  test.each([['P 42 l', 'low'], ['P 42 L', 'low'], ['P 42 m', 'medium'], ['P 42 h', 'high'], ['P 42 vl', 'very-low'], ['P 42 VL', 'very-low'], ['P 42 vh', 'very-high'], ['P 42 VH', 'very-high'], ['P 42 VH  30-50', 'very-high'], ['P 42 M) x', 'medium'], ['P 42 M+', 'medium'], ['P 42 M-', 'medium'], ['P | 42 | M | 30-50', 'medium'], ['P (42) H', 'high']])('%s: %s', (line, rating) => { expect(told(line)).toBe(`phosphorus 42 ${rating}`); });
  test.each([['P 42 M, K 180 H', 'phosphorus 42 medium; potassium 180 high'], ['P 42 M; K 180 H', 'phosphorus 42 medium; potassium 180 high'], ['P 42 M Zinc 2', 'phosphorus 42 medium; zinc 2'], ['Organic matter 4.5% H', 'organic-matter 4.5 % high'], ['P 42 Lx', ''], ['P 42 mm', ''], ['Nitrate 42 m deep', ''], ['Nitrate 42 l per ha', '']])('%s: %s', (line, reading) => { expect(told(line)).toBe(reading); });
});

// How strong the salt of an extract is, in moles or normals, is no value (practice).
test.each([
  ['Phosphorus, 0.5 M NaHCO3: 12 ppm', 'phosphorus 12 ppm olsen'], ['Phosphorus 0.5M NaHCO3 12 ppm', 'phosphorus 12 ppm olsen'], ['Phosphorus (0.5 M NaHCO3) 12 ppm', 'phosphorus 12 ppm olsen'], ['Potassium 1 M NH4OAc 180 ppm', 'potassium 180 ppm ammonium-acetate'], ['Potassium 1N ammonium acetate 180 ppm', 'potassium 180 ppm ammonium-acetate'], ['Phosphorus 0.5 M NaHCO3 ppm', ''],
  ['Phosphorus 12 M ammonium acetate', 'phosphorus 12 ammonium-acetate medium'], ['Phosphorus 20.5 M NaHCO3', 'phosphorus 20.5 olsen medium'],
])('%s: %s', (line, reading) => { expect(told(line)).toBe(reading); });
test.each(['pH 0.01 M CaCl2 5.8', 'pH in 0.01M CaCl2: 5.8', 'pH 1 M KCl 5.8', 'pH 1N KCl 5.8', 'pH 5.8 in .01 M CaCl2', 'pH (0,01 M CaCl2) 5.8'])('%s', (line) => { expect(readReport(`${line}\nZinc 2 ppm\n`, 'r.txt')).toMatchObject({ notices: [], samples: [{ readings: [{ item: 'ph-salt', value: 5.8 }, { item: 'zinc' }] }] }); });
