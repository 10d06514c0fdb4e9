// Summed cations: Clemson's own example (its page read), and a lab's handout (inputs read, scribd 255165692).
import { describe, expect, test } from 'vitest';
import { cationSum, clemsonAcidity, midwestAcidity } from '../../src/rating/cations.ts';
import { expectSourced, made } from './made.ts';

const clemson = [made('ph', 5.1, 'pH'), made('buffer-ph', 7.7, 'pH'), made('potassium', 221, 'lb/acre'), made('magnesium', 28, 'lb/acre'), made('calcium', 400, 'lb/acre'), made('sodium', 12, 'lb/acre')];

describe('Clemson, pH 5.1, buffer pH 7.70', () => {
  const sum = cationSum({ readings: clemson })!;
  // Printed to two places; its divisors 400, 240, 782 and 460 are rounded by up to 1.3 %.
  test.each([['K', 0.28], ['Mg', 0.12], ['Ca', 1.0], ['Na', 0.03]] as const)('%s %d', (ion, meq) => { expect(sum.ions[ion]).toBeCloseTo(meq, 2); });
  test('acidity 2.40, in all 3.83, bases 37 %', () => {
    expect(sum.acidity?.value).toBeCloseTo(2.4, 9);
    expect(sum.acidity?.cite.source).toBe('clemson-cec');
    // The page adds its rounded meq; the bases alone, 1.43, may differ by the 1.3 % of its divisors.
    expect(Math.abs(sum.sum! - 3.83)).toBeLessThan(1.43 * 0.013);
    expect(Math.round((100 * sum.bases) / sum.sum!)).toBe(37);
  });
});

test('a lab\'s handout, pH 8.0: its CEC of 10.18 and its shares, within the rounding of its divisors', () => {
  const sum = cationSum({ readings: [made('ph', 8, 'pH'), made('potassium', 379, 'ppm'), made('magnesium', 133, 'ppm'), made('calcium', 1600, 'ppm'), made('sodium', 22, 'ppm')] })!;
  // Divisors 390, 120, 200, 230 against 390.98, 121.53, 200.39, 229.90: 1.3 % at most.
  for (const [ion, meq, share] of [['K', 0.972, 9.6], ['Mg', 1.108, 10.9], ['Ca', 8, 78.6], ['Na', 0.096, 0.9]] as const) {
    expect(Math.abs(sum.ions[ion]! / meq - 1)).toBeLessThan(0.013);
    expect(Math.abs((100 * sum.ions[ion]!) / sum.sum! - share)).toBeLessThan(0.2);
  }
  expect(sum.acidity?.value).toBe(0);
  expect(Math.abs(sum.sum! / 10.18 - 1)).toBeLessThan(0.005);
});

test('acidity from a buffer: 8 × (8 − pH), Clemson; 12 × (7 − pH) and none from 7.0, a Midwestern lab', () => {
  expect(clemsonAcidity(7.7)).toBeCloseTo(2.4, 9);
  expect(midwestAcidity(6.6)).toBeCloseTo(4.8, 9);
  expect([midwestAcidity(7.1), clemsonAcidity(8.1)]).toEqual([0, 0]);
});

describe('what is not known is not summed', () => {
  const bases = [made('calcium', 5, 'meq/100g'), made('magnesium', 1, 'meq/100g')];
  test('an acid soil without a word on acidity', () => { expect(cationSum({ readings: [made('ph', 5.5, 'pH'), ...bases] })).toMatchObject({ bases: 6, acidity: null, sum: null }); });
  test('a buffer of unknown name', () => { expect(cationSum({ readings: [made('ph', 5.5, 'pH'), made('buffer-ph', 6.6, 'pH'), ...bases] })?.sum).toBeNull(); });
  test('SMP, and no acidity above a soil pH of 6.4', () => {
    expect(cationSum({ readings: [made('ph', 5.5, 'pH'), made('buffer-ph', 6.6, 'pH', { method: 'smp' }), ...bases] })?.sum).toBeCloseTo(10.8, 9);
    expect(cationSum({ readings: [made('ph', 6.6, 'pH'), made('buffer-ph', 6.9, 'pH', { method: 'smp' }), ...bases] })?.sum).toBeCloseTo(6, 9);
  });
  test('a lime index is ten times its buffer pH', () => { expect(cationSum({ readings: [made('ph', 5.5, 'pH'), made('buffer-ph', 66, 'index', { method: 'smp' }), ...bases] })?.acidity?.value).toBeCloseTo(4.8, 9); });
  test('Moore-Sikora starts at 8.00 as well', () => { expect(cationSum({ readings: [made('ph', 5.5, 'pH'), made('buffer-ph', 7.4, 'pH', { method: 'moore-sikora' }), ...bases] })?.acidity?.value).toBeCloseTo(4.8, 9); });
  // SMP begins at pH 7.5 (its method's own definition), so what a nameless buffer reads up to there may be either kind.
  test('a nameless buffer over 7.5 is one that starts at 8.00', () => {
    const sum = (buffer: number, more: Partial<Parameters<typeof made>[3]> = {}) => cationSum({ readings: [made('ph', 5.5, 'pH'), made('buffer-ph', buffer, 'pH', more), ...bases] })?.sum;
    expect([sum(7.6), sum(7.5), sum(7.5, { method: 'adams-evans' }), sum(7.6, { method: 'mehlich-buffer' })]).toEqual([expect.closeTo(6 + 3.2, 9), null, expect.closeTo(10, 9), null]);
  });
  test('at 6.4 itself the Midwestern lab still counts acidity; at 7 no soil has any, buffer or none', () => {
    expect(cationSum({ readings: [made('ph', 6.4, 'pH'), made('buffer-ph', 6.9, 'pH', { method: 'smp' }), ...bases] })?.acidity?.value).toBeCloseTo(1.2, 9);
    expect(cationSum({ readings: [made('buffer-ph', 6.9, 'pH', { method: 'smp' }), ...bases] })?.acidity?.value).toBeCloseTo(1.2, 9);
    expect(cationSum({ readings: [made('ph', 7, 'pH'), made('buffer-ph', 6.9, 'pH', { method: 'smp' }), ...bases] })?.acidity?.value).toBe(0);
  });
  // Definition: ten millimoles of charge are a centimole.
  test.each([['mmolc/dm3', 34, 3.4], ['mmol/kg', 34, 3.4], ['cmol/dm3', 3.4, 3.4], ['meq/100g', 3.4, 3.4]] as const)('acidity printed in %s', (unit, value, meq) => {
    expect(cationSum({ readings: [made('acidity', value, unit), ...bases] })?.acidity?.value).toBeCloseTo(meq, 9);
  });
  test('less than the lab can measure adds nothing, and is no ion of the sum', () => {
    expect(Object.keys(cationSum({ readings: [...bases, made('sodium', 5, 'ppm', { below: true })] })!.ions)).toEqual(['Ca', 'Mg']);
  });
  test('each acidity says whose it is', () => {
    const of = (...readings: Parameters<typeof cationSum>[0]['readings']) => cationSum({ readings: [...readings, ...bases] })!.acidity!;
    const each = [of(made('acidity', 3, 'meq/100g')), of(made('ph', 7.2, 'pH')), of(made('buffer-ph', 7.8, 'pH')), of(made('buffer-ph', 6.6, 'pH', { method: 'smp' })), of(made('ph', 6.6, 'pH'), made('buffer-ph', 6.6, 'pH', { method: 'smp' }))];
    each.forEach(expectSourced);
    expect(each.map((f) => [f.unit, f.of, f.from.map((x) => [x.value, x.of])])).toEqual([[], [], [[7.8, 'soil']], [[6.6, 'soil']], [[6.6, 'soil']]].map((from) => ['meq/100g', 'acidity', from]));
  });
  test('printed acidity leads', () => { expect(cationSum({ readings: [made('ph', 5.5, 'pH'), made('acidity', 3, 'meq/100g'), made('buffer-ph', 6.6, 'pH', { method: 'smp' }), ...bases] })?.sum).toBeCloseTo(9, 9); });
  test('calcium alone, or weights beside volumes', () => {
    expect([cationSum({ readings: [bases[0]!] }), cationSum({ readings: [bases[1]!] }), cationSum({ readings: [made('potassium', 1, 'meq/100g'), bases[1]!] })]).toEqual([null, null, null]);
    expect(cationSum({ readings: [bases[0]!, made('magnesium', 120, 'mg/L')] })).toBeNull();
  });
  test('by volume all through, as in Brazil', () => {
    expect(cationSum({ readings: [made('ph', 7.1, 'pH'), made('calcium', 40, 'mmolc/dm3'), made('magnesium', 10, 'mmolc/dm3'), made('potassium', 3, 'mmolc/dm3')] })).toMatchObject({ by: 'volume', sum: expect.closeTo(5.3, 9) });
  });
});
