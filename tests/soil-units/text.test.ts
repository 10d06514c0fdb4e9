// Lines made ready: what each sign stands for by Unicode (sub- and superscripts, dashes, quotes, full-width letters), each at its place.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LONGEST_LINE, linesOf, spot } from '../../src/soil/text.ts';

const ready = (raw: string): string => linesOf(`${raw}\nabc`)[0]!.text;

// Letters, digits, marks that join them, signs of more than one unit, ends of lines.
const sign = fc.constantFrom(...'aPß6 \t\n\r*_.,–²⁺₂µéＺ６'.split(''), '\u0308', '\u00ad', '\u200b', '\u00a0', '\u202f', '\u001b[1m', '\u001b]', '\u0007', '😀', '\ud83d', 'mol(+)', 'cmol(c)', ' . . .', '1\u00a0234', '한', 'ﬁ', 'İ');
test('any line keeps its length, so that a place found is a place in it', () => {
  fc.assert(fc.property(fc.array(sign, { maxLength: 60 }), (signs) => {
    for (const line of linesOf(signs.join(''))) expect([line.raw, line.text.length]).toEqual([line.raw, line.raw.length]);
  }));
});

test.each([
  ['P₂O₅', 'P2O5'], ['NO₃-N', 'NO3-N'], ['₀₁₂₃₄₅₆₇₈₉', '0123456789'], ['K⁺', 'K+'], ['m²', 'm2'], ['dm³', 'dm3'], ['cm¹', 'cm1'],
  ['5–10', '5-10'], ['5—10', '5-10'], ['5‐10', '5-10'], ['5‑10', '5-10'], ['5‒10', '5-10'], ['−5', '-5'], ['kg⁻¹', 'kg-1'],
  ['pH：6，4．5', 'pH:6,4.5'], ['μg', 'ug'], ['µg', 'ug'], ['2×3', '2x3'], ['“a”', '"a"'], ['‘a’', '\'a\''], ['l´S', 'l\'S'],
  ['*P* _42_', ' P   42 '], ['• P', '  P'], ['a·b', 'a b'], ['ＰＨ', 'PH'], ['６４', '64'], ['Ｚｎ', 'Zn'], ['０９ＡＺａｚ', '09AZaz'], ['（％）', '(%)'], ['！～', '!~'], ['｟', '｟'], ['\uff00', '\uff00'], ['Ω', 'Ω'],
  ['für é à ñ ç', 'fur e a n c'], ['Größe', 'Große'], ['P\t42', 'P|42'], ['P........42', 'P        42'], ['P . . . 42', 'P       42'], ['P..42', 'P..42'],
  ['1\u00a0234', '1\'234'], ['1\u2009234', '1\'234'], ['1\u202f234', '1\'234'], ['1\u00a02345', '1 2345'], ['1\u00a023', '1 23'], ['P\u00a042', 'P 42'],
  // A footnote's number behind a value is none of it.
  ['42²', '42¤'], ['42⁺', '42¤'], ['mmol(+)/kg', 'mmolccc/kg'], ['cmol(c)/kg', 'cmolccc/kg'], ['cmol(x)/kg', 'cmol(x)/kg'],
  ['\u001b[1mP\u001b[0m 42', '    P     42'], ['\u001b]0;t\u0007P', '      P'],
  ['\u001b[1;31mP\u001b[?25h 42', '       P       42'], ['P \u001b]0;t', 'P      '], ['P \u001b]0;t\u001b\\ 42', 'P         42'],
  // A bar of strokes is drawn, cells' edges are not.
  ['P 42 |||| ppm', 'P 42      ppm'], ['||| P', '    P'], ['P |||', 'P    '], ['P || 42', 'P || 42'], ['P|||42', 'P|||42'], ['P |||42', 'P |||42'], ['P||| 42', 'P||| 42'],
  ['Phos\u00adphor und Ka\u00adlium', 'Phosphor  und Kalium '], ['Phos\u00adphor\u00adus 42', 'Phosphorus   42'], ['Phos\u00adphor ppm', 'Phosphor  ppm'], ['o\u0302\u0323b 1', 'ob   1'],
  // Marks within a word go behind it; alone they are blanks.
  ['Pho\u00adsphor 42', 'Phosphor  42'], ['u\u0308ber', 'uber '], ['\u200bP', ' P'], ['\ufeffP', ' P'],
])('%j is %j', (raw, text) => { expect(ready(raw)).toBe(text); });

test('lines end as they do on any machine', () => {
  expect(linesOf('a\r\nb\nc\rd').map((l) => [l.number, l.raw])).toEqual([[1, 'a'], [2, 'b'], [3, 'c'], [4, 'd']]);
  expect([linesOf('a'.repeat(LONGEST_LINE))[0]!.text.length, linesOf('a'.repeat(LONGEST_LINE + 1))[0]!.text]).toEqual([LONGEST_LINE, '']);
});

describe('symbols in a report all in capitals', () => {
  test.each([
    ['MG 120', 'Mg 120'], ['CA++ 900', 'Ca++ 900'], ['ZN 2.1', 'Zn 2.1'], ['MN: 14', 'Mn: 14'], ['CU 1', 'Cu 1'], ['FE 9', 'Fe 9'], ['PB 11', 'Pb 11'], ['AL 83', 'Al 83'], ['NA 12', 'Na 12'], ['NA PPM', 'Na PPM'], ['AC <1', 'Ac <1'],
    ['AL3+ 83', 'Al3+ 83'], ['AL+ 83', 'Al+ 83'], ['NA: 12', 'Na: 12'], ['NA   | 12', 'Na   | 12'], ['NA (PPM)', 'Na (PPM)'], ['AL   83', 'Al   83'], ['NA83', 'Na83'], ['NA > 12', 'Na > 12'], ['AL INDEX 12', 'Al INDEX 12'], ['AC HOMES', 'AC HOMES'], ['NA, 12', 'Na, 12'],
    // An address, an answer that is none, a unit, a longer word.
    ['FRESNO, CA 93722', 'FRESNO, CA 93722'], ['ZINC NA', 'ZINC NA'], ['MAGNESIUM', 'MAGNESIUM'], ['P 40 MG/KG', 'P 40 Mg/KG'],
  ])('%s', (raw, text) => { expect(linesOf(raw)[0]!.text).toBe(text); });
  test('small letters anywhere leave them', () => { expect(linesOf('MG 120\nsoil')[0]!.text).toBe('MG 120'); });
});

test('a place in a line put together is in the line that was printed', () => {
  const [a, b] = linesOf('Electrical\n  Conductivity 0.1');
  const whole = { number: 1, raw: 'Electrical Conductivity 0.1', text: 'Electrical Conductivity 0.1', parts: [{ at: 0, line: a! }, { at: 9, line: b! }] };
  // Column of "Conductivity" on its own line: the third.
  expect(spot(whole, 'r.txt', 11, 23)).toMatchObject({ file: 'r.txt', line: 2, column: 3, length: 12 });
  expect(spot(whole, 'r.txt', 0, 10)).toMatchObject({ line: 1, column: 1, length: 10 });
  expect(spot(whole, 'r.txt', 0, 27)).toMatchObject({ line: 1, column: 1, length: 10 });
  expect(spot(a!, 'r.txt', 0, 5)).toMatchObject({ line: 1, column: 1, length: 5 });
});
