// What a bag weighs and brings, by the sources named: weights of a ton, of a gallon, of a heap.
import { describe, expect, test } from 'vitest';
import { bagOf, codes, LB, read } from './labels.ts';

/** Pounds of N, P2O5, K2O in the bag. */
const pounds = (text: string, country: string | null = 'US'): number[] => {
  const { grade, g } = bagOf(text, country);
  return Object.values(grade).map((x) => (x * g!) / LB);
};

describe('pounds of nutrient in a bag, published', () => {
  test.each([
    // materials.md 8.2: 3, 6 (Arkansas), 16 (Noble), 18 (Ohio State); growers.md 4 (Kitsap).
    ['35-0-0, 50 lb', [17.5, 0, 0]], ['6-6-18, 50 lb', [3, 3, 9]], ['27-0-0, 1 ton, $300', [540, 0, 0]], ['MAP, 1 ton, $700', [220, 1040, 0]], ['DAP, 1 ton, $700', [360, 920, 0]], ['10-20-20, 50 lb, $11', [5, 10, 10]], ['Blood meal 13-1-1, 50 lb, $22', [6.5, 0.5, 0.5]],
  ])('%s', (text, expected) => { pounds(text).forEach((x, i) => expect(x).toBeCloseTo(expected[i]!, 6)); });
});

describe('weight and price as typed', () => {
  test.each([
    ['10-10-10 40lb$21.50', 40 * LB, 21.5, '$'], ['10-10-10, 40 lb. bag @ $21.50 each', 40 * LB, 21.5, '$'], ['6-5-5, 3 kg, £7.20', 3000, 7.2, '£'], ['10-10-10, 2000 lb, $1,299.00', 2000 * LB, 1299, '$'], ['10-10-10, 2,5 kg, 12,50 €', 2500, 12.5, '€'], ['10-10-10, 50 lb, $0', 50 * LB, 0, '$'],
    ['10-10-10, 50 lb ($0)', 50 * LB, 0, '$'], ['10-10-10, 1000 kg bulk bag, $900', 1e6, 900, '$'], ['CAN 27% N, 25 kg, €19', 25_000, 19, '€'],
  ])('%s', (text, g, amount, currency) => {
    expect(bagOf(text).g).toBeCloseTo(g, 6);
    expect(bagOf(text).price).toEqual({ amount, currency });
  });
  test('no weight is no mistake', () => { expect(bagOf('10-10-10, $9').g).toBeNull(); });
});

describe('heaps', () => {
  test.each([
    // NOFA, READ: horse manure 800 lb a cubic yard, compost 1,000 (950 on the other page), other manures 1,700.
    ['Horse manure, 1 cubic yard, $30', 800 * LB], ['Horse manure, $30 per yard', 800 * LB], ['Horse manure 2 cu yd', 1600 * LB], ['Cow manure, 1 yard', 1700 * LB], ['Compost, 1 cu yd, $30', 975 * LB], ['Compost, 27 cu ft', 975 * LB],
  ])('%s', (text, g) => {
    expect(bagOf(text).g! / g).toBeCloseTo(1, 3);
    expect(codes(text)).toContain('weight-by-volume');
  });
  test('two cubic feet of compost are two of the 27 in a yard', () => { expect(bagOf('Compost, 2 cu ft, $8').g! / LB).toBeCloseTo((2 * 975) / 27, 1); });
  test('mushroom compost: the pounds of a cubic yard as HortTechnology prints them', () => {
    // READ: 6.40 lb N, 1.67 lb P, 5.89 lb K a cubic yard; P × 2.29132 = 3.83, K × 1.20460 = 7.10. Averages of thirty samples do not multiply exactly.
    const [n, p, k] = pounds('Mushroom compost, 1 cubic yard');
    for (const [x, printed] of [[n, 6.4], [p, 3.83], [k, 7.1]]) expect(Math.abs(x! / printed! - 1)).toBeLessThan(0.02);
  });
  test('litres and a gallon bucket of a heap', () => {
    // 575 lb a cubic yard of 764.555 L: 40 L are 30.08 lb.
    expect(bagOf('Mushroom compost 40 L £5', 'GB').g! / LB).toBeCloseTo(30.08, 2);
    // 5 of 201.974 gallons in a cubic yard.
    expect(bagOf('Horse manure, 5-gallon bucket, $3').g! / LB).toBeCloseTo((800 * 5) / 201.974, 2);
    expect(bagOf('Horse manure, 5-gallon bucket, $3').label).toBe('Horse manure');
  });
  test('a price by the yard for several', () => { expect(bagOf('Compost, 3 cubic yards, $30 a yard').price!.amount).toBeCloseTo(90, 9); });
  test('the weight on the label holds, and then nothing is assumed', () => {
    expect(bagOf('Mushroom compost, 40 L, 18 kg', 'GB').g).toBe(18_000);
    expect(codes('Mushroom compost, 40 L, 18 kg', 'GB')).not.toContain('weight-by-volume');
  });
  test.each(['Horse manure, 1 bale', 'Horse manure $5 a bucket', 'Manure, a load, $40', 'Compost, 3 wheelbarrows', 'Chicken manure, 2 scoops'])('a measure of no size: %s', (text) => {
    expect(codes(text)).toContain('bag-measure-vague');
    expect(read(text).bag).toBeNull();
  });
  test('what has no known weight is asked for it', () => { expect(codes('10-4-3, 2 cu ft')).toEqual(['density-needed']); });
});

describe('liquids', () => {
  test.each([
    // Cornell NRCCA and a handout, READ: 28-0-0 weighs 10.67 to 10.7 lb a gallon, 32-0-0 11.06, 10-34-0 11.65 to 11.7.
    ['UAN 28, 1 gal', 10.68], ['UAN 32, 1 gal', 11.06], ['10-34-0, 1 gal', 11.68], ['Liquid 9-18-9, 1 gal', 11.7],
  ])('%s', (text, lb) => { expect(Math.abs(bagOf(text).g! / LB - lb)).toBeLessThan(0.015); });
  test('the label tells its density', () => {
    expect(bagOf('12-4-8, 1 gal, 10.7 lb/gal, $20').g! / LB).toBeCloseTo(10.7, 9);
    expect(bagOf('12-4-8, 2 gal, 10.7 lbs per gallon').g! / LB).toBeCloseTo(21.4, 9);
    // Specific gravity × 8.345 is pounds a gallon: 1.28 is 10.68 (materials.md 8.2, 24).
    expect(bagOf('12-4-8, 1 gal, specific gravity 1.28').g! / LB).toBeCloseTo(10.68, 2);
    expect(bagOf('Feed 6-4-4, density 1.2 kg/L, 5 L', 'GB').g).toBeCloseTo(6000, 6);
    expect(bagOf('Feed 6-4-4, density 1.2 kg/L, 5 L', 'GB').density).toBe(1.2);
    expect(bagOf('Feed 6-4-4, 5 L, 6 kg', 'GB').density).toBeCloseTo(1.2, 9);
  });
  test('grams in 100 mL', () => {
    // 12 g N, 4 g P2O5, 8 g K2O in 100 mL: a litre brings 120, 40, 80 g.
    const { grade, g, density, liquid } = bagOf('12-4-8 w/v, 1 L');
    expect([grade.N * g!, grade.P2O5 * g!, grade.K2O * g!].map((x) => Math.round(x * 1e6) / 1e6)).toEqual([120, 40, 80]);
    expect([density, liquid]).toEqual([1, true]);
    // The same with its weight: a litre still brings 120 g of N.
    const heavy = bagOf('12-4-8 w/v, 1 L, density 1.25 kg/L');
    expect(heavy.g).toBeCloseTo(1250, 9);
    expect(heavy.grade.N * heavy.g!).toBeCloseTo(120, 9);
    // 80 g K in a litre of an Australian label: 80 × 1.20460 g K2O.
    const potash = bagOf('Potash liquid, 80 g/L K, 5 L', 'AU');
    expect(potash.grade.K2O * potash.g!).toBeCloseTo(5 * 96.368, 2);
  });
  test.each(['12-4-8, 1 gal, $20', '12-4-8, 1 L', 'Tomato food 4-3-8, 2 l', '12-4-8 w/v, 5 kg'])('asked: %s', (text) => {
    expect(codes(text)).toEqual(['density-needed']);
    expect(read(text).bag).toBeNull();
  });
  test('an imperial gallon where gallons are', () => {
    expect(bagOf('Horse manure, 1 gal', 'GB').g! / bagOf('Horse manure, 1 gal').g!).toBeCloseTo(4.54609 / 3.785411784, 9);
  });
  test('fish emulsion is heavier than water, and counted so with a word', () => {
    const { g } = bagOf('fish emulsion 5-1-1, 1 gal, $20');
    expect(g! / LB).toBeGreaterThan(8.35 * 1.05);
    expect(g! / LB).toBeLessThan(8.35 * 1.25);
    expect(codes('fish emulsion 5-1-1, 1 gal, $20')).toEqual(['weight-by-volume']);
  });
});

// NOFA's appendix: wood ash weighs 22 to 24 lb a cubic foot; a US gallon is 231 cubic inches.
test('ash by the pail, by its printed weight', () => {
  const lb = (5 * 231) / 1728 * 23;
  expect(bagOf('Wood ash, 5 gal').g! / LB).toBeCloseTo(lb, 6);
  expect(codes('Wood ash, 5 gal')).toEqual(['weight-by-volume']);
  expect(codes('Wood ash, a bucket')).toEqual(['bag-measure-vague']);
  // No weight of such a measure is held.
  expect(codes('Garden lime, 5 gal')).toEqual(['bag-part-unknown']);
});
