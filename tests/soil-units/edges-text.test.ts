// Day and depth of sampling, headings, and signs of a line, asked of the functions themselves. Days by the calendar; how labs print them is practice; signs by Unicode.
import { describe, expect, test } from 'vitest';
import type { Context } from '../../src/soil/context.ts';
import { headingOf } from '../../src/soil/heading.ts';
import { findMethods, findUnits, lower } from '../../src/soil/patterns.ts';
import { LONGEST_LINE, linesOf } from '../../src/soil/text.ts';
import { wordsOf } from '../../src/soil/vocabulary.ts';
import { withinLine } from '../../src/soil/within.ts';

describe('day and depth within a line', () => {
  const said = (text: string, order: Parameters<typeof withinLine>[1] = null): unknown => {
    const w = withinLine(text, order);
    return w && [w.taken, w.unsure && text.slice(w.unsure.start, w.unsure.end), w.depth && `${text.slice(w.depth.start, w.depth.end)} ${w.depth.unit}`.trim(), w.whole];
  };
  test.each<[string, unknown]>([
    ['We sampled on 2025-11-03 here', ['2025-11-03', null, null, true]], ['We received it on 2025-11-03 here', null], ['2025-11-03, sampled by us', ['2025-11-03', null, null, true]], ['2025-11-03, Sampled by us', ['2025-11-03', null, null, true]], ['2025-11-03 and a long walk, sampled by us', null], ['sampled 2025-11-03, received 2025-11-05', ['2025-11-03', null, null, true]], ['received 2025-11-05, sampled 2025-11-03', ['2025-11-03', null, null, true]], ['sampled 3rd of Nov 2025', ['2025-11-03', null, null, true]], ['sampled Nov 3rd, 2025', ['2025-11-03', null, null, true]], ['sampled 13/11/2025', ['2025-11-13', null, null, true]], ['sampled 3/11/2025', [null, '3/11/2025', null, true]], ['muestreo 3/11/2025', ['2025-11-03', null, null, true]], ['nothing of either', null], ['sampled 2025-13-45', null],
    ['depth 0-6 in, dry', [null, null, '0-6 in', true]], ['depth (cm): 15 here', [null, null, '15 cm', true]], ['20 cm deep here', [null, null, '20 cm', true]], ['sampled to 6 inches', [null, null, '6 inches', true]], ['we dug to 6 inches', null], ['sampled 0-15 cm', [null, null, '0-15 cm', true]], ['sampled 15 cm apart', null], ['received 2025-11-05, depth 6 in', [null, null, '6 in', false]],
  ])('%s', (text, expected) => { expect(said(text)).toEqual(expected); });
  test('the order of day and month where it is settled', () => { expect([said('sampled 3/11/2025', 'day first'), said('sampled 3/11/2025', 'month first'), said('muestreo 3/11/2025', 'month first')]).toEqual([['2025-11-03', null, null, true], ['2025-03-11', null, null, true], ['2025-11-03', null, null, true]]); });
  test('three hundred signs are the most', () => { expect([said(`sampled 2025-11-03${' '.repeat(282)}`), said(`sampled 2025-11-03${' '.repeat(283)}`)]).toEqual([['2025-11-03', null, null, true], null]); });
});

test('a heading of a method, a unit or shares', () => {
  const context = { words: wordsOf(null), method: 'olsen', unit: 'ppm', saturation: true } as Context;
  const head = (text: string): unknown => {
    const c = headingOf(linesOf(`${text}\nabc`)[0]!, context);
    return c && [c.method, c.unit, c.saturation];
  };
  expect(['Results in mg/kg', 'Extractant: Mehlich 3', 'Mehlich 3 (mg/kg)', 'Base saturation', 'Base saturation (calculated)', 'Cation saturation %'].map(head)).toEqual([['olsen', 'mg/kg', false], ['mehlich-3', 'ppm', false], ['mehlich-3', 'mg/kg', false], ['olsen', 'ppm', true], ['olsen', 'ppm', true], ['olsen', 'ppm', true]]);
  expect(['Results', 'Results in mg/kg 4', 'Olsen P', 'Phosphorus ppm', 'We like Mehlich 3', 'Base saturation shows whether lime helps here', ''].map(head)).toEqual(Array(7).fill(null));
});

test('units and methods at their places', () => {
  const at = (found: readonly { readonly is: unknown; readonly start: number; readonly end: number }[], text: string): unknown[] => found.map((f) => [f.is, text.slice(f.start, f.end)]);
  const units = (text: string): unknown[] => at(findUnits(text), text);
  const methods = (text: string): unknown[] => at(findMethods(text), text);
  expect(['42PPM', 'appm', 'zppm', '{ppm', '/ppm', 'Mg mg/kg', '42 ppm ppm', '4%'].map(units)).toEqual([[['ppm', 'PPM']], [], [], [['ppm', 'ppm']], [], [['mg/kg', 'mg/kg']], [['ppm', 'ppm'], ['ppm', 'ppm']], [['%', '%']]]);
  expect(['Olsen', 'aOlsen', 'zOlsen', '0Olsen', '9Olsen', '/Olsen', ':Olsen', '0.5 M NaHCO3', '1 N NH4OAc', '12 M NaHCO3', 'x 0.5 M Olsen'].map((t) => methods(t).map((m) => (m as string[])[1]))).toEqual([['Olsen'], [], [], [], [], ['Olsen'], ['Olsen'], ['0.5 M NaHCO3'], ['1 N NH4OAc'], ['NaHCO3'], ['Olsen']]);
  expect([lower('AZ az Ä'), lower('İAZ')]).toEqual(['az az ä', 'İaz']);
});

test('signs of a line', () => {
  const ready = (raw: string): string => linesOf(`${raw}\nabc`)[0]!.text;
  expect(['K⁺', '4²', '1\u00a0234', '1\u00a02345', 'P\u00a042', 'a*b_c', '！ａ～', 'é', 'Ω', '☃', 'mol(+)/kg', '....x', '..x', 'a\tb', '42 ||| x', 'P|||4', 'u\u0308ber x', 'ab\u00adcd x', '\u00adx'].map(ready)).toEqual(['K+', '4¤', '1\'234', '1 2345', 'P 42', 'a b c', '!a~', 'e', 'Ω', '☃', 'molccc/kg', '    x', '..x', 'a|b', '42     x', 'P|||4', 'uber  x', 'abcd  x', ' x']);
});

test('a line of the most signs is read, a longer one is not', () => { expect([LONGEST_LINE, LONGEST_LINE + 1].map((n) => linesOf('a'.repeat(n))[0]!.text.length)).toEqual([LONGEST_LINE, 0]); });
