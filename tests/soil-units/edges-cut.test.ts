// What of a line belongs to which name, asked of the cutter itself (practice): each piece as "what stands before it > item form method: its own text".
import { describe, expect, test } from 'vitest';
import { cellEnd, cut, has, isNumber, leadsName } from '../../src/soil/cut.ts';
import { lookFor } from '../../src/soil/token.ts';
import { wordsOf } from '../../src/soil/vocabulary.ts';

const [look, german] = [lookFor(wordsOf(null), 'point'), lookFor(wordsOf('de'), 'point')];
const trim = (text: string): string => text.replace(/^[\s,;|]+|[\s,;|]+$/g, '');
const pieces = (text: string, by = look): string => cut(by(text), text).map((p) => {
  const lead = trim(p.prefix.flatMap((t) => (t.kind === 'separator' ? [] : [text.slice(t.start, t.end)])).join(' '));
  return `${lead ? `${lead} > ` : ''}${[p.item, p.form, p.method, p.index ? 'index' : null, p.loose ? 'meant' : null].filter(Boolean).join(' ')}: ${trim(text.slice(p.start, p.end))}`;
}).join(' / ');
const each = (texts: Readonly<Record<string, string>>, by = look): void => { expect(Object.keys(texts).map((t) => [t, pieces(t, by)])).toEqual(Object.entries(texts)); };

test('each name with what stands behind it', () => {
  each({
    '': '', 'no name 42': '', 'P 42 ppm': 'phosphorus: P 42 ppm', 'P 42 ppm, K 180 ppm': 'phosphorus: P 42 ppm / potassium: K 180 ppm', 'P 42 ppm K 180 ppm': 'phosphorus: P 42 ppm / potassium: K 180 ppm', 'P | 42 | ppm | K | 180': 'phosphorus: P | 42 | ppm / potassium: K | 180', 'soil x P 42': 'soil x > phosphorus: P 42', 'Mn-AI 40': 'manganese index: Mn-AI 40',
    'P, 42 ppm organic matter': 'phosphorus: P, 42 ppm / organic-matter: organic matter', 'P 42 ppm, 3.4 % organic matter': 'phosphorus: P 42 ppm / 3.4 % > organic-matter: organic matter', 'P 42 ppm; 3.4 organic matter': 'phosphorus: P 42 ppm / 3.4 > organic-matter: organic matter', 'Zinc, % organic matter 3.7': 'zinc: Zinc / % > organic-matter: organic matter 3.7', 'Zinc 2-3 ppm, 3.4 % organic matter': 'zinc: Zinc 2-3 ppm / 3.4 % > organic-matter: organic matter', 'Potassium 180 ppm CEC': 'potassium: Potassium 180 ppm / cec: CEC', 'Sulfatos (S-SO4 Olsen) 3.7': 'Sulfatos > sulphur: (S-SO4 Olsen) 3.7', 'Zinc trace, 3.4 % organic matter': 'zinc: Zinc trace / 3.4 % > organic-matter: organic matter', 'P (42 ppm), 3.4 % organic matter': 'phosphorus: P (42 ppm) / 3.4 % > organic-matter: organic matter',
  });
});

test('numbers before their names', () => {
  each({
    '62 % sand, 25 % silt, 13 % clay': '62 % > sand: sand / 25 % > silt: silt / 13 % > clay: clay', '62 % sand 25 % silt 13 % clay': '62 % > sand: sand / 25 % > silt: silt / 13 % > clay: clay', '4.1 % organic matter, 23 ppm phosphorus, K 180 ppm': '4.1 % > organic-matter: organic matter / 23 ppm > phosphorus: phosphorus / potassium: K 180 ppm', 'pH 6.4, 62 % sand, 25 % silt': 'ph: pH 6.4 / 62 % > sand: sand / 25 % > silt: silt', '62 % sand, 25 % silt, zinc 2 ppm': '62 % > sand: sand / 25 % > silt: silt / zinc: zinc 2 ppm', '5-6 % clay, 60 % sand': '5-6 % > clay: clay / 60 % > sand: sand',
    'pH 6.4 sand 62 % silt 25 %': 'ph: pH 6.4 / sand: sand 62 % / silt: silt 25 %',
  });
});

test('two names of one thing', () => {
  each({
    'Phosphorus (P) 42': 'phosphorus: Phosphorus (P) 42', 'Phosphorus Olsen (P) 42': 'phosphorus: Phosphorus Olsen (P) 42', 'Phosphorus - P 42': 'phosphorus: Phosphorus - P 42', 'Phosphorus | P | 42': 'phosphorus: Phosphorus | P | 42', 'Phosphorus, , , P 42': 'phosphorus: Phosphorus, , , P 42', 'Phosphorus, , , , P 42': 'phosphorus: Phosphorus / phosphorus: P 42', 'Phosphorus 4 P 42': 'phosphorus: Phosphorus 4 / phosphorus: P 42', 'Phosphorus low P 42': 'phosphorus: Phosphorus low / phosphorus: P 42', 'Phosphorus, Olsen, zinc 18': 'phosphorus: Phosphorus, Olsen / zinc: zinc 18',
    'Nitrate-nitrogen - N 9.4': 'nitrate-n: Nitrate-nitrogen - N 9.4', 'Nitrate-nitrogen as N 9.4': 'nitrate-n: Nitrate-nitrogen as N 9.4', 'Nitrate-nitrogen, N 9.4': 'nitrate-n: Nitrate-nitrogen / nitrogen: N 9.4', 'Ammonium nitrogen - N 3': 'ammonium-n: Ammonium nitrogen - N 3', 'Nitrogen (NO3-N) 10': 'nitrate-n: Nitrogen (NO3-N) 10', 'Nitrogen, NO3-N 10': 'nitrogen: Nitrogen / nitrate-n: NO3-N 10', 'Nitrate nitrogen, nitrogen 9': 'nitrate-n: Nitrate nitrogen / nitrogen: nitrogen 9', 'Nitrate nitrogen nitrogen 9': 'nitrate-n: Nitrate nitrogen / nitrogen: nitrogen 9',
    'Lime (pH) 6.4': 'ph: Lime (pH) 6.4', 'Lime (pH) 2 t/ha': 'lime: Lime (pH) 2 t/ha', 'Lime (caco3) 2': 'lime: Lime (caco3) 2', 'Acidity (pH) 5.8': 'ph: Acidity (pH) 5.8', 'Acidity (buffer pH) 5.8': 'buffer-ph: Acidity (buffer pH) 5.8', 'Lime (zinc) 2': 'lime: Lime (zinc) 2', 'Zinc (pH) 2': 'zinc: Zinc (pH) 2', 'Phosphorus (P, K) 42': 'phosphorus: Phosphorus (P, K) 42', 'Phosphorus (P 42)': 'phosphorus: Phosphorus (P 42)', 'Phosphorus x (P) 42': 'phosphorus: Phosphorus x (P) 42',
  });
  each({ 'Kalkbedarf CaO 20': 'lime-requirement CaO: Kalkbedarf CaO 20', 'Kalkbedarf, CaO 20': 'lime-requirement: Kalkbedarf / calcium CaO: CaO 20', 'Kalkbedarf (CaO) 20': 'lime-requirement: Kalkbedarf (CaO) 20', 'Kali 12': 'potassium K2O meant: Kali 12', 'Kali (K) 12': 'potassium: Kali (K) 12', 'Kali (K2O) 12': 'potassium K2O: Kali (K2O) 12' }, german);
});

test('the form behind its value', () => {
  each({
    'Phosphorus 42 ppm P2O5': 'phosphorus P2O5: Phosphorus 42 ppm P2O5', 'Phosphorus 42 P2O5': 'phosphorus P2O5: Phosphorus 42 P2O5', 'Phosphorus 42, P2O5': 'phosphorus P2O5: Phosphorus 42, P2O5', 'Phosphorus | 42 | ppm P2O5 | K 180': 'phosphorus P2O5: Phosphorus | 42 | ppm P2O5 / potassium: K 180', 'Phosphorus 42 ppm (P2O5)': 'phosphorus P2O5: Phosphorus 42 ppm (P2O5)', 'Phosphorus 40-50 ppm P2O5': 'phosphorus P2O5: Phosphorus 40-50 ppm P2O5', 'Phosphorus 42 ppm M3-P': 'phosphorus mehlich-3: Phosphorus 42 ppm M3-P',
    'Phosphorus 42, P2O5 96': 'phosphorus: Phosphorus 42 / phosphorus P2O5: P2O5 96', 'Phosphorus 42 P2O5 96': 'phosphorus: Phosphorus 42 / phosphorus P2O5: P2O5 96', 'Phosphorus 42, P2O5, K 180': 'phosphorus: Phosphorus 42 / phosphorus P2O5: P2O5 / potassium: K 180', 'Phosphorus 42 ppm phosphorus': 'phosphorus: Phosphorus 42 ppm / phosphorus: phosphorus', 'Phosphorus 42 ppm K2O': 'phosphorus: Phosphorus 42 ppm / potassium K2O: K2O', 'Phosphorus ppm P2O5': 'phosphorus: Phosphorus ppm / phosphorus P2O5: P2O5', 'Phosphorus low P2O5': 'phosphorus: Phosphorus low / phosphorus P2O5: P2O5', 'Phosphorus 42 ppm low P2O5': 'phosphorus: Phosphorus 42 ppm low / phosphorus P2O5: P2O5', 'Phosphorus 42 ppm (P2O5, K2O)': 'phosphorus: Phosphorus 42 ppm (P2O5, K2O)', 'Phosphorus 42 ppm (P2O5 96)': 'phosphorus: Phosphorus 42 ppm (P2O5 96)',
  });
});

test('a buffer behind the pH that was read in it', () => {
  each({
    'pH 6.8 buffer pH': 'buffer-ph: pH 6.8 buffer pH', 'pH 6.8 buffer pH low': 'buffer-ph: pH 6.8 buffer pH low', 'pH 6.8 buffer pH, zinc 2': 'buffer-ph: pH 6.8 buffer pH / zinc: zinc 2', 'pH 6.8 buffer pH (x)': 'buffer-ph: pH 6.8 buffer pH (x)',
    'pH 6.8 buffer pH 7.0': 'ph: pH 6.8 / buffer-ph: buffer pH 7.0', 'pH 6.8 buffer pH (7.0)': 'ph: pH 6.8 / buffer-ph: buffer pH (7.0)', 'pH 6.8, buffer pH': 'ph: pH 6.8 / buffer-ph: buffer pH', 'pH 6.8 | buffer pH': 'ph: pH 6.8 / buffer-ph: buffer pH', 'pH 6.8 - buffer pH': 'ph: pH 6.8 - / buffer-ph: buffer pH', 'pH 6.8  buffer pH': 'ph: pH 6.8 / buffer-ph: buffer pH', 'pH 6.8 buffer pH not needed': 'ph: pH 6.8 / buffer-ph: buffer pH not needed', 'pH 6.8 buffer pH, n/a': 'ph: pH 6.8 / buffer-ph: buffer pH, n/a', 'pH low buffer pH': 'ph: pH low / buffer-ph: buffer pH', 'zinc 6.8 buffer pH': 'zinc: zinc 6.8 / buffer-ph: buffer pH', 'pH 6-7 buffer pH': 'ph: pH 6-7 / buffer-ph: buffer pH',
  });
});

test('shares of the exchange sites, and parts of a texture', () => {
  each({
    'Potassium 4.5 % of CEC': 'potassium: Potassium 4.5 % of CEC', 'Potassium 4.5 % CEC 12': 'potassium: Potassium 4.5 % / cec: CEC 12', 'Potassium, % of CEC: 4.5': 'potassium: Potassium, % of CEC: 4.5', 'Potassium 180 ppm, 4.5 % of CEC': 'potassium: Potassium 180 ppm / saturation-k: 4.5 % of CEC', 'Potassium, 180 ppm, 4.5 % of CEC': 'potassium: Potassium, 180 ppm / saturation-k: 4.5 % of CEC', 'Potassium low, 4.5 % of CEC': 'potassium: Potassium low, 4.5 % of CEC', 'Potassium 180 ppm CEC 12': 'potassium: Potassium 180 ppm / cec: CEC 12', 'Phosphorus 4 % CEC': 'phosphorus: Phosphorus 4 % / cec: CEC', 'Potassium 180 ppm, low % of CEC': 'potassium: Potassium 180 ppm, low % of CEC',
    'Potassium, base saturation 4.5': 'saturation-k: Potassium, base saturation 4.5', 'Potassium 180, base saturation 70': 'potassium: Potassium 180 / base-saturation: base saturation 70', 'low potassium, base saturation 70': 'low > potassium: potassium / base-saturation: base saturation 70', 'Potassium (K) base saturation 70': 'potassium: Potassium (K) / base-saturation: base saturation 70', 'Zinc base saturation 70': 'zinc: Zinc / base-saturation: base saturation 70',
    'Texture: sand': 'texture: Texture: sand', 'Texture: sandy clay loam': 'texture: Texture: sandy clay loam', 'Texture: clay 20 %': 'texture: Texture: / clay: clay 20 %', 'Texture: sand, clay foo 20': 'texture: Texture: sand, clay foo 20', 'Texture: silt - - - - 20 %': 'texture: Texture: / silt: silt - - - - 20 %', 'Texture loam, zinc 2': 'texture: Texture loam / zinc: zinc 2',
  });
});

test('brackets with values of their own, and those that name an unknown word', () => {
  each({
    '(sand 55 %, silt 20 %)': 'sand: sand 55 % / silt: silt 20 %)', '(sand 55 %)': '', 'x (potassium 180 ppm and magnesium)': '', 'Zinc 2 (potassium 180, magnesium 90) iron 4': 'zinc: Zinc 2 / potassium: potassium 180 / magnesium: magnesium 90 / iron: iron 4',
    'Sulfatos (SO4-S) 3.7': 'Sulfatos > sulphur: (SO4-S) 3.7', 'Sulfatos  (SO4-S) 3.7': 'Sulfatos > sulphur: (SO4-S) 3.7', 'Sulfatos   (SO4-S) 3.7': '', 'Sulfatos2 (SO4-S) 3.7': '', 'Sulfatos (SO4-S 3.7)': '', 'Sulfatos (Olsen) 3.7': '', 'Sulfatos, (SO4-S) 3.7': '', 'Zinc 2 ppm Foo (P) 4': 'zinc: Zinc 2 ppm Foo / phosphorus: (P) 4',
  });
});

test('a rate of lime that only its unit names', () => {
  expect(['2 t CaO/ha', ', 2 t CaO/ha', '2-3 t CaO/ha', 'of 2 t CaO/ha (x)'].map((t) => cut(look(t), t).map((p) => [p.item, p.name, t.slice(p.start, p.end)]))).toEqual([[['lime-requirement', '', '2 t CaO/ha']], [['lime-requirement', '', '2 t CaO/ha']], [['lime-requirement', '', '2-3 t CaO/ha']], [['lime-requirement', '', '2 t CaO/ha (x)']]]);
  each({ '2 t/ha': '', 'foo 2 t CaO/ha': '', 't CaO/ha': '', '2 foo t CaO/ha': '', 'low t CaO/ha': '', 'low': '' });
});

test('words of rating between two names', () => {
  each({
    'low P 8 ppm, high K 96 ppm': 'low > phosphorus: P 8 ppm / high > potassium: K 96 ppm', 'low P 8 ppm high K 96 ppm': 'low > phosphorus: P 8 ppm / high > potassium: K 96 ppm', 'P 8 ppm low K 96 ppm': 'phosphorus: P 8 ppm low / potassium: K 96 ppm', 'P low, high K': 'phosphorus: P low / high > potassium: K', 'zinc low high copper': 'zinc: zinc low / high > copper: copper', 'zinc 2 low (x) high copper 3': 'zinc: zinc 2 low (x) / high > copper: copper 3', 'low zinc 2 low foo copper 3': 'low > zinc: zinc 2 low foo / copper: copper 3', 'low zinc 2 low in copper 3': 'low > zinc: zinc 2 / low in > copper: copper 3',
    'zinc 2; % copper 4': 'zinc: zinc 2 / % > copper: copper 4', 'zinc 2; % low copper 4': 'zinc: zinc 2; % low / copper: copper 4', 'zinc 2; ppm copper 4': 'zinc: zinc 2; ppm / copper: copper 4', 'zinc 2; (x) copper 4': 'zinc: zinc 2; (x) / copper: copper 4', 'zinc; Olsen copper 4': 'zinc: zinc / Olsen > copper: copper 4',
  });
});

describe('small questions of tokens', () => {
  test('a number, perhaps with its unit, leads a name', () => {
    expect(['42', '42 ppm', 'of 42 ppm', '42 low', '42 ppm low', 'ppm', '', '4-5 ppm', 'low 42', '42 43'].map((t) => [leadsName(look(t)), leadsName(look(t), true)])).toEqual([[true, true], [true, true], [true, true], [false, false], [false, false], [false, false], [false, false], [false, true], [false, false], [false, false]]);
  });
  test('kinds, numbers and the last cell', () => {
    expect([has(look('42 ppm'), 'unit'), has(look('42 ppm'), 'rating', 'number'), has(look('42'), 'unit'), has([], 'unit'), has(look('42'))]).toEqual([true, true, false, false, false]);
    expect([look('42'), look('4-5'), look('low')].map((t) => isNumber(t[0]!))).toEqual([true, true, false]);
    expect(['low, 42 ppm', '42 ppm', 'low,', ''].map((t) => cellEnd(look(t)).map((x) => x.kind).join(' '))).toEqual(['number unit', 'number unit', '', '']);
  });
});
