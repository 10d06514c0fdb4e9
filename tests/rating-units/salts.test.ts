// Conductivity by dilution: PLoS ONE 13(6): e0198290, table 2 (read), typed again here; Washington's limits (EM119E) 4 in a paste and 1 at 1:1 and 1:2.5.
import { describe, expect, test } from 'vitest';
import { reasonOf } from '../../src/json/reason.ts';
import { dilutionOf, dsPerM, pasteOf, saltYield } from '../../src/rating/salts.ts';
import type { Reading } from '../../src/soil/reading.ts';
import { onePlant, only } from '../published/helpers.ts';
import { expectSourced, made } from './made.ts';

const ec = (value: number, method: Reading['method'], unit: Reading['unit'] = 'dS/m'): Reading => made('salts', value, unit, { method });

describe('to the saturated paste', () => {
  test.each([
    ['1:1', 'light', 2.95], ['1:1', 'medium', 2.24], ['1:1', 'heavy', 1.69], ['1:1', null, 1.85],
    ['1:2', 'light', 3.5], ['1:2', 'medium', 1.99], ['1:2', 'heavy', 2.19], ['paste', null, 1],
    // Method 14B1, table 14.2: 6.4 × the value at 1:5; a Korean study: 7.5 on average, 9.9 at most, on the sandiest.
    ['1:5', 'heavy', 6.4], ['1:5', 'medium', 7.5], ['1:5', null, 7.5], ['1:5', 'light', 9.9],
  ] as const)('1.0 at %s, %s soil: %d', (method, soil, paste) => {
    expect(pasteOf(ec(1, method), soil)?.value).toBeCloseTo(paste, 9);
  });

  test('a weak extract never leads under nothing, and says that the lines mean little there', () => {
    // 2.66 × 0.1 − 0.97 is below zero.
    expect(pasteOf(ec(0.1, '1:1'), 'heavy')).toMatchObject({ value: 0, step: 'salts-faint' });
    expect(pasteOf(ec(0.5, '1:1'), 'heavy')).toMatchObject({ step: 'salts-to-paste' });
    expect(reasonOf(pasteOf(ec(0.1, '1:1'), 'heavy')!, 'en-US', 'us')).toContain('0.1 dS/m');
  });

  test('1:2 on a soil nobody named takes the line that gives most', () => {
    expect(pasteOf(ec(1, '1:2'), null)?.value).toBeCloseTo(Math.max(2.79 + 0.71, 2.35 - 0.36, 2.16 + 0.03), 9);
  });

  test('each step says whose it is, and holds what was printed', () => {
    for (const method of ['1:1', '1:2', '1:5', 'paste'] as const) {
      const f = pasteOf(ec(1500, method, 'uS/cm'), 'medium')!;
      expectSourced(f);
      const printed = method === 'paste' ? f : f.from[0]!;
      expect([f.unit, f.of, printed]).toEqual(['dS/m', 'salts', expect.objectContaining({ value: 1.5, unit: 'dS/m', of: 'salts', step: 'printed-by-lab' })]);
    }
  });
  test('salts by weight, words alone, and numbers no soil has are no conductivity', () => {
    expect([dsPerM(ec(1, '1:1', 'ppm')), dsPerM(ec(1, '1:1', 'g/cm3')), dsPerM(ec(1e13, '1:1')), dsPerM(made('salts', null, 'dS/m')), dsPerM(ec(1, '1:1', null))]).toEqual([null, null, null, null, null]);
  });

  test('an unknown dilution, or no unit, leads nowhere', () => {
    expect(dilutionOf(ec(1, null))).toBeNull();
    expect(dilutionOf(ec(1, 'water'))).toBeNull();
    expect(pasteOf(ec(1, null), 'light')).toBeNull();
    expect(pasteOf(ec(1, '1:1', null), 'light')).toBeNull();
    expect(pasteOf(ec(1, '1:1', 'ppm'), 'light')).toBeNull();
  });

  // 1 dS/m = 1 mmho/cm = 1 mS/cm = 1,000 µS/cm = 100 mS/m, by definition.
  test.each([['dS/m', 1], ['mmho/cm', 1], ['mS/cm', 1], ['uS/cm', 1000], ['mS/m', 100]] as const)('1 dS/m in %s', (unit, value) => {
    expect(dsPerM(ec(value, 'paste', unit))).toBeCloseTo(1, 12);
  });
});

test('plums at 3.0 in a paste bring 87.6 % (threshold 2.6, then 31 % a dS/m; Irrigation Science)', () => {
  expect(saltYield('plum', 3)).toBeCloseTo(87.6, 9);
  expect([saltYield('plum', 2), saltYield('plum', 9), saltYield('apple', 3)]).toEqual([100, 0, null]);
});

describe('what stops the feeding', () => {
  const facts = 'apple, semi-dwarf, planted 2014, 12 ft across, shoots 4 in';
  test.each([
    // At 1:5 clay's 6.4 times 0.62 is 3.97, times 0.63 is 4.03; sand's 9.9 times 0.4 is 3.96, times 0.41 is 4.06.
    ['Texture: clay', 'Soluble salts (1:5) 0.62 dS/m', false], ['Texture: clay', 'Soluble salts (1:5) 0.63 dS/m', true],
    ['Texture: sand', 'Soluble salts (1:5) 0.40 dS/m', false], ['Texture: sand', 'Soluble salts (1:5) 0.41 dS/m', true],
    // Each of the others against its own limit, whatever the texture says.
    ['Texture: sand', 'Soluble salts (1:1) 0.9 dS/m', false], ['Texture: sand', 'Soluble salts (1:2) 0.9 dS/m', false],
    ['Texture: clay', 'Soluble salts (saturated paste) 3.9 dS/m', false],
  ] as const)('%s, %s: %s', async (texture, line, stops) => {
    const tree = only(await onePlant(facts, { soil: `pH 6.4\n${texture}\n${line}\n` }));
    expect(tree.verdict === 'wait').toBe(stops);
  });
});
