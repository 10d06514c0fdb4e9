// Printed numbers by the customs of their countries (practice): 1,234.5 in English, 1.234,5 and 1 234 on the continent, 1'234 in Switzerland.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Style } from '../../src/soil/number.ts';
import { NUMBER, parseNumber, styleOf } from '../../src/soil/number.ts';

const value = (printed: string, style: Style): unknown => {
  const is = parseNumber(printed, style);
  return 'value' in is ? is.value : is.unclear;
};

describe('a number', () => {
  test.each<[string, number, number | [number, number]]>([
    // printed, in a text with points, in a text with commas
    ['42', 42, 42], ['6.4', 6.4, 6.4], ['.5', 0.5, 0.5], ['6,4', 6.4, 6.4], ['12,25', 12.25, 12.25], ['0,125', 0.125, 0.125], ['0.125', 0.125, 0.125],
    ['1,234', 1234, [1.234, 1234]], ['12,345', 12_345, [12.345, 12_345]], ['1,234,567', 1_234_567, 1_234_567], ['1,234.5', 1234.5, 1234.5], ['12,345,678.25', 12_345_678.25, 12_345_678.25],
    ['1.234', 1.234, 1234], ['123.456', 123.456, 123_456], ['1.2345', 1.2345, 1.2345], ['1234,5', 1234.5, 1234.5], ['1234,567', 1234.567, 1234.567],
    ['1\'234', 1234, 1234], ['1\'234\'567', 1_234_567, 1_234_567], ['1\'234.5', 1234.5, 1234.5],
  ])('%s', (printed, point, comma) => { expect([value(printed, 'point'), value(printed, 'comma')]).toEqual([point, comma]); });

  test('any number with two decimals is itself, either way it is written', () => {
    fc.assert(fc.property(fc.integer({ min: 0, max: 999_999 }), (n) => {
      const [whole, cents] = [String(Math.floor(n / 100)), String(n % 100).padStart(2, '0')];
      expect(value(`${whole}.${cents}`, 'point')).toBeCloseTo(n / 100, 9);
      expect(value(`${whole},${cents}`, 'comma')).toBeCloseTo(n / 100, 9);
      expect(value((n / 100).toLocaleString('en-US', { minimumFractionDigits: 2 }), 'point')).toBeCloseTo(n / 100, 9);
    }));
  });
  test('the pattern takes the whole of each', () => {
    const whole = new RegExp(`^${NUMBER}$`);
    for (const n of ['42', '6.4', '6,4', '.5', '1,234', '12,345,678', '1,234.5', '1\'234', '1\'234.25']) expect([n, whole.test(n)]).toEqual([n, true]);
    for (const n of ['', '1.', '.', ',5', '1.2.3', '1 234', 'x1', '-1', '1,23,4']) expect([n, whole.test(n)]).toEqual([n, false]);
  });
});

describe('the style of a text', () => {
  test.each<[string, Style]>([
    ['pH 6,4', 'comma'], ['P 12,25 mg', 'comma'], ['Bor 0,125', 'comma'], ['Bor 0,1255', 'comma'], ['pH 6.4', 'point'], ['', 'point'], ['Ca 1,234', 'point'], ['Ca 1,234,567', 'point'],
    // A single decimal point says that the commas are none.
    ['pH 6.4\nP 12,5', 'point'], ['K 12.5\nP 12,5', 'point'], ['pH 6,4\nCa 1.234', 'comma'], ['pH 6,4 am 3.11.2025', 'comma'], ['12,34,56', 'point'], ['1.2,5', 'point'],
  ])('%j', (text, style) => { expect(styleOf(text)).toBe(style); });
});
