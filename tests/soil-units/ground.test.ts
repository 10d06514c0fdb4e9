// Recommendations that a heading tells the ground of. Amounts as a lab prints them below "per 1,000 sq ft"; what each comes to by the line itself.
import { describe, expect, test } from 'vitest';
import { adviceOf } from '../../src/soil/advice.ts';
import { groundIn, rateUnit } from '../../src/soil/ground.ts';
import { readReport } from '../../src/soil/read.ts';

describe('the heading', () => {
  test.each([
    ['Recommendation, per 1,000 sq ft:', '1,000 sq ft'], ['Fertilizer to apply (per acre)', 'acre'], ['Amounts per 100 square feet', '100 square feet'], ['Empfehlung je ha:', 'ha'], ['Recommended rates per m2', 'm2'],
  ])('%s', (text, ground) => { expect(groundIn(text)).toBe(ground); });
  // A unit of contents, an amount of its own, a sentence: no such heading.
  test.each(['Results, lb per acre', 'Mehlich-1 extractable, lb/A', 'Apply 2 lb N per 1,000 sq ft', 'Limestone per acre is cheap', 'Phosphorus 42 lb per acre'])('%s is none', (text) => { expect(groundIn(text)).toBeNull(); });
  test.each([['lb', '1,000 sq ft', 'lb/1000sqft'], ['pounds', '100 sq ft', 'lb/100sqft'], ['lbs', 'acre', 'lb/acre'], ['tons', 'acre', 'ton/acre'], ['t', 'ha', 't/ha'], ['kg', 'ha', 'kg/ha'], ['g', 'm2', 'g/m2'], ['kg', 'acre', null], ['ounces', 'acre', null]])('%s and %s: %s', (weight, ground, unit) => { expect(rateUnit(weight, ground)).toBe(unit); });
});

const sample = (text: string) => readReport(text, 'r.txt').samples[0]!;
const lime = (text: string) => sample(text).readings.filter((r) => r.item === 'lime-requirement').map((r) => [r.value, r.unit]);
const feed = (text: string) => adviceOf(sample(text)).map((a) => `${a.value} ${a.unit} ${a.of}`);
const HEAD = 'Soil pH 5.2\nRecommendation, per 1,000 sq ft:\n';

describe('what stands below it', () => {
  test.each(['Ground limestone: 46 lb', 'Limestone 46 lbs', 'Lime: 46 pounds', 'Dolomitic lime 46 lb'])('%s is the lab\'s own lime rate', (line) => { expect(lime(`${HEAD}${line}\n`)).toEqual([[46, 'lb/1000sqft']]); });
  test('without the heading a weight alone is no rate', () => { expect(lime('Soil pH 5.2\nGround limestone: 46 lb\n')).toEqual([]); });
  test('an amount with its own ground keeps it', () => { expect(lime(`${HEAD}Limestone 2 tons/acre\n`)).toEqual([[2, 'ton/acre']]); });
  test.each(['N 2 lb    P2O5 1 lb    K2O 3 lb', '2 lb N, 1 lb P2O5, 3 lb K2O', 'Nitrogen: 2 lb; Phosphate: 1 lb; Potash: 3 lb'])('%s', (line) => {
    expect(feed(`${HEAD}${line}\n`)).toEqual(['2 lb/1000 sq ft N', '1 lb/1000 sq ft P2O5', '3 lb/1000 sq ft K2O']);
  });
  test('lime between the heading and the feed', () => { expect(feed(`${HEAD}Ground limestone: 46 lb\nN 2 lb\n`)).toEqual(['2 lb/1000 sq ft N']); });
  test('none of it is a content of the soil', () => { expect(sample(`Phosphorus 38 lb/A\n${HEAD}N 2 lb    P2O5 1 lb    K2O 3 lb\n`).readings.map((r) => r.item)).toEqual(['phosphorus', 'ph']); });
  test('far below it is forgotten', () => { expect(feed(`${HEAD}Comments follow.\n\n\n\nN 2 lb\n`)).toEqual([]); });
});
