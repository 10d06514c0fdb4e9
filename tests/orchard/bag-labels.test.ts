// How growers type a bag. Each line says what the typing means by itself; the pound, ounce and element factors are definitions.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseBag } from '../../src/orchard/bag.ts';

const LB = 453.59237;
const NOWHERE = { file: 'orchard.yaml', line: 1, column: 1, length: 1, source: '' };
const read = (text: string, country: string | null = 'US', inShed = false) => parseBag(text, country, inShed, NOWHERE);
const bag = (text: string, country: string | null = 'US', inShed = false) => {
  const { bag: found, notices } = read(text, country, inShed);
  expect(notices.map((n) => n.code), text).toEqual([]);
  return found!;
};
const codes = (text: string): string[] => read(text).notices.map((n) => n.code);
const percent = (text: string): number[] => Object.values(bag(text).grade).map((x) => Math.round(x * 1e6) / 1e4);

describe('the grade', () => {
  test.each([
    '10-10-10', '10 - 10 - 10', '10/10/10', '10:10:10', '10–10–10', '10—10—10', '10−10−10', '10‑10‑10', 'NPK 10-10-10', 'npk 10:10:10', 'N-P-K 10-10-10', 'NPK: 10-10-10', '10-10-10 NPK', 'Balanced 10-10-10', 'Balanced, 10-10-10',
    'Balanced: 10-10-10', 'Balanced (10-10-10)', '10.0-10.0-10.0', '10,0-10,0-10,0', '10-10-10 40 lb $21.50', '40 lb bag of 10-10-10', '10-10-10-5S', '10-10-10 +5S', '10-10-10 +5 S +2MgO', '10-10-10 (5S)', '10-10-10 with iron', '10-10-10 plus 2% iron',
    '10-10-10, 10-10-10, 20 lb, $9',
  ])('%s', (text) => { expect(percent(text)).toEqual([10, 10, 10]); });
  test.each(['Iron sulphate, 5 lb, $8', 'Ferrous sulfate 20 % Fe, 10 kg', 'Aluminum sulfate, 4 lb', 'Copperas, 5 lb'])('an acidifier stops no plan: %s', (text) => {
    const { bag: none, notices } = read(text);
    expect([none, notices.map((n) => [n.code, n.severity])]).toEqual([null, [['acidifier-told', 'warning']]]);
  });
  test('two grades that differ are asked about', () => expect(codes('10-10-10, 5-10-10, 20 lb')).not.toEqual([]));
  test('with decimals and with what follows it', () => {
    expect(percent('Calcium nitrate 15.5-0-0 +26CaO')).toEqual([15.5, 0, 0]);
    expect(percent('Calcium nitrate 15,5-0-0 +26CaO, 25 kg')).toEqual([15.5, 0, 0]);
    expect(percent('21-0-0-24S, 4 lb')).toEqual([21, 0, 0]);
    expect(percent('Sulphate of ammonia, 21-0-0 +24S, 4 lb, $9')).toEqual([21, 0, 0]);
  });
  test('elements where labels print them', () => {
    // P 30.974 of P2O5 141.943, K 78.196 of K2O 94.195 (IUPAC weights): 12-5-14 is 12-11.46-16.86.
    const grade = bag('12-5-14 25 kg', 'AU').grade;
    expect(grade.P2O5).toBeCloseTo(0.1146, 4);
    expect(grade.K2O).toBeCloseTo(0.1686, 4);
  });
  test.each([['0-0-0', 'grade-empty'], ['60-60-60', 'grade-impossible'], ['150-0-0', 'grade-impossible'], ['Something nice', 'grade-missing'], ['40 lb', 'grade-missing'], ['10-10', 'grade-missing'], ['', 'grade-missing']] as const)('%s: %s', (text, code) => {
    expect(read(text).bag).toBeNull();
    expect(codes(text)).toContain(code);
  });
});

describe('weight and price', () => {
  test.each([
    ['24-8-16, 5 lb, $14', 5 * LB, 14, '$'], ['24-8-16 5 lb $14', 5 * LB, 14, '$'], ['24-8-16 $14 5 lb', 5 * LB, 14, '$'], ['24-8-16, $14, 5 lb', 5 * LB, 14, '$'], ['NPK 10-10-10 40 lb $21.50', 40 * LB, 21.5, '$'],
    ['10-10-10, 40-lb bag, $21.50', 40 * LB, 21.5, '$'], ['40 lb bag of 10-10-10 for $21.50', 40 * LB, 21.5, '$'], ['40lbs 10-10-10', 40 * LB, null, null], ['10-10-10, 2.5kg, £7.20', 2500, 7.2, '£'], ['10-10-10, 2,5 kg, 12,50 €', 2500, 12.5, '€'],
    ['10-10-10 2,5 kg 12,50 €', 2500, 12.5, '€'], ['10-10-10 25 kg €12,50', 25_000, 12.5, '€'], ['10-10-10 25 kg €12.50', 25_000, 12.5, '€'], ['10-10-10, 1 1/2 lb', 1.5 * LB, null, null], ['10-10-10, 1/2 lb, $3', 0.5 * LB, 3, '$'],
    ['10-10-10, 40 lb (18.1 kg), $20', 40 * LB, 20, '$'], ['10-10-10, 2000 lb, $1,299.00', 2000 * LB, 1299, '$'], ['10-10-10, 20 kg, 18 EUR', 20_000, 18, '€'], ['10-10-10, 20 kg, GBP 18', 20_000, 18, '£'], ['10-10-10, 20 kg, US$18', 20_000, 18, '$'],
    ['10-10-10, 20 kg, A$18', 20_000, 18, 'A$'], ['10-10-10, 40 lb.', 40 * LB, null, null], ['10-10-10', null, null, null], ['10-10-10, $9', null, 9, '$'], ['10-10-10, 16 oz', LB, null, null], ['Urea 50 lb $20', 50 * LB, 20, '$'],
  ] as const)('%s', (text, g, amount, currency) => {
    const found = bag(text);
    if (g === null) expect(found.g).toBeNull();
    else expect(found.g).toBeCloseTo(g, 6);
    expect(found.price).toEqual(amount === null ? null : { amount, currency });
  });
  test.each([
    ['10-10-10, 40 lb, 1.299,00 €', 'number-unclear', '1299.00', '1.299'], ['10-10-10, 40 lb, 1.299 €', 'number-unclear', '1299', '1.299'], ['10-10-10, 40 lb, $1,299', 'number-unclear', '1299', '1.299'], ['10-10-10, 1,000 lb', 'number-two-ways', '1000', '1.000'],
  ] as const)('two readings: %s', (text, code, a, b) => {
    expect(codes(text)).toEqual([code]);
    expect(read(text).bag).toBeNull();
    expect(Object.values(read(text).notices[0]!.facts)).toEqual(expect.arrayContaining([a, b]));
  });
  test.each(['10-10-10, 40', '10-10-10 40', '10-10-10, 0 lb', '10-10-10, -40 lb', '10-10-10, $', '10-10-10, -$9', '10-10-10, $-9', '10-10-10, 40 lb, 50 lb', '10-10-10 $9 $12', '10-10-10, 1,000.5 lb', '10-10-10, 21.50', '10-10-10, $9.999.9', '10-10-10, some left'])('an amount that cannot be read: %s', (text) => {
    expect(codes(text), text).toContain('bag-part-unknown');
    expect(read(text).bag).toBeNull();
  });
});

describe('the name', () => {
  test.each([
    ['Balanced, 10-10-10, 40 lb, $21.50', 'Balanced'], ['Balanced 10-10-10 40 lb $21.50', 'Balanced'], ['10-10-10 40 lb', '10-10-10'], ['10 / 10 / 10', '10-10-10'], ['Sulphate of ammonia 4 lb $9', 'Sulphate of ammonia'], ['40 lb bag of 10-10-10', '10-10-10'],
    ['Balanced: 10-10-10', 'Balanced'], ['Food for roses, 10-10-10', 'Food for roses'], ['Coated, 15-5-10, 2 lb, slow release, $20', 'Coated'],
  ] as const)('%s', (text, label) => { expect(bag(text).label).toBe(label); });
  test('what stands in the shed', () => {
    expect(bag('Bone meal, 3-15-0, 5 lb, half left', 'US', true).left).toBeCloseTo(2.5 * LB, 6);
    expect(bag('Bone meal 3-15-0 5 lb half left', 'US', true).left).toBeCloseTo(2.5 * LB, 6);
    expect(bag('Bone meal, 3-15-0, 5 lb, 2 lb left', 'US', true).left).toBeCloseTo(2 * LB, 6);
    expect(bag('Bone meal, 3-15-0, 5 lb, two thirds left', 'US', true).left).toBeCloseTo((10 / 3) * LB, 6);
    expect(bag('Bone meal, 3-15-0, 5 lb, quarter full', 'US', true).left).toBeCloseTo(1.25 * LB, 6);
  });
  test('weed killer and slow release are seen without commas too', () => {
    expect(bag('Weed and feed 21-0-0 10 lb').weedKiller).toBe(true);
    expect(bag('15-5-10 slow release 2 lb').slow).toBe(true);
  });
});

test('any typing: a bag whose numbers are numbers, or a reason', () => {
  const piece = fc.oneof(fc.constantFrom('10-10-10', '21-0-0', '+24S', '40 lb', '2,5 kg', '$9', '12,50 €', '1.299,00 €', 'half left', 'Balanced', ',', ', ', '-', '/', 'left', '$', '(', ')'), fc.string({ maxLength: 8 }));
  fc.assert(fc.property(fc.array(piece, { maxLength: 8 }), fc.constantFrom('', ' ', ', '), (pieces, between) => {
    const { bag: found, notices } = read(pieces.join(between));
    expect(found !== null || notices.some((n) => n.severity === 'error')).toBe(true);
    if (!found) return;
    expect(found.g === null || (Number.isFinite(found.g) && found.g > 0)).toBe(true);
    expect(found.price === null || (Number.isFinite(found.price.amount) && found.price.amount >= 0)).toBe(true);
    expect(found.label).not.toBe('');
  }));
});
