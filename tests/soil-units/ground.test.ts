// Recommendations that a heading tells the ground of. Amounts as a lab prints them below "per 1,000 sq ft"; what each comes to by the line itself.
import { describe, expect, test } from 'vitest';
import { adviceOf } from '../../src/soil/advice.ts';
import { groundIn, rateUnit } from '../../src/soil/ground.ts';
import { readReport } from '../../src/soil/read.ts';

describe('the heading', () => {
  test.each([
    ['Recommendation, per 1,000 sq ft:', '1,000 sq ft'], ['Fertilizer to apply (per acre)', 'acre'], ['Amounts per 100 square feet', '100 square feet'], ['Empfehlung je ha:', 'ha'], ['Recommended rates per m2', 'm2'],
    // Each word of "per", each ground as labs print it (practice).
    ['Per acre', 'acre'], ['per1,000 sq ft', '1,000 sq ft'], ['For each acre:', 'acre'], ['Dünger pro ha', 'ha'], ['Abonado por ha', 'ha'], ['Apports par ha', 'ha'], ['JE HECTARE', 'HECTARE'], ['Rates,per m²', 'm²'], ['Amounts per tree:', 'tree'],
    ['Per 1000 sq ft', '1000 sq ft'], ['Per 1000sq.ft.', '1000sq.ft.'], ['Per 1000 sqft', '1000 sqft'], ['Per 1,000 sq. feet', '1,000 sq. feet'], ['Per 1000square feet', '1000square feet'], ['Per 100sq.ft.', '100sq.ft.'], ['Per 100 sqft', '100 sqft'], ['Per 100 sq feet', '100 sq feet'], ['(per acre  )  :  ', 'acre'],
  ])('%s', (text, ground) => { expect(groundIn(text)).toBe(ground); });
  // A unit of contents, an amount of its own, a sentence: no such heading.
  test.each(['Results, lb per acre', 'Mehlich-1 extractable, lb/A', 'Apply 2 lb N per 1,000 sq ft', 'Limestone per acre is cheap', 'Phosphorus 42 lb per acre', 'Super acre', 'Per acres', 'Per acre and year', 'In 2025 per acre', ...['Lb', 'lbs', 'lbs.', 'pound', 'Pounds', 'oz', 'ounce', 'ounces', 'kg', 'kgs', 'kilo', 'kilos', 'kilogram', 'kilograms', 'kilogrammes', 't', 'ton', 'tons', 'tonnes', 'g', 'gram', 'grams', 'Gramm', 'grammes'].flatMap((w) => [`${w} per ha`, `Results,${w} per ha`, `Results (${w} per ha)`])])('%s is none', (text) => { expect(groundIn(text)).toBeNull(); });
  // A word that only ends like a weight is none.
  test.each(['Wet per acre', 'Feeding per acre', 'Fertilizer needed per acre', 'Pounds of feed per acre'])('%s is one', (text) => { expect(groundIn(text)).toBe('acre'); });
  test.each([['lb', '1,000 sq ft', 'lb/1000sqft'], ['pounds', '100 sq ft', 'lb/100sqft'], ['lbs', 'acre', 'lb/acre'], ['tons', 'acre', 'ton/acre'], ['t', 'ha', 't/ha'], ['kg', 'ha', 'kg/ha'], ['g', 'm2', 'g/m2'], ['kg', 'acre', null], ['ounces', 'acre', null], ['LB', '1000 SQ FT', 'lb/1000sqft'], ['pound', '100 square feet', 'lb/100sqft'], ['ton', 'Acre', 'ton/acre'], ['T', 'HA', 't/ha'], ['g', 'M2', 'g/m2'], ['g', 'm²', 'g/m2'], ['lb', 'tree', null], ['bulbs', 'acre', null], ['lbsx', 'acre', null], ['pounded', 'acre', null], ['tonsil', 'acre', null], ['buttons', 'acre', null]])('%s and %s: %s', (weight, ground, unit) => { expect(rateUnit(weight, ground)).toBe(unit); });
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
  test.each(['Recommendation, per 1,000 sq ft: N 2 lb, P2O5 1 lb, K2O 3 lb', 'Apply per 1,000 sq ft: 2 lb N, 1 lb P2O5, 3 lb K2O', 'Recommended per 1,000 sq ft: N 2 lb    P2O5 1 lb    K2O 3 lb'])('at the head of the line itself: %s', (line) => {
    expect(feed(`Soil pH 5.2\n${line}\n`)).toEqual(['2 lb/1000 sq ft N', '1 lb/1000 sq ft P2O5', '3 lb/1000 sq ft K2O']);
    expect(readReport(`Soil pH 5.2\n${line}\n`, 'r.txt').notices.map((n) => n.code)).not.toContain('line-unclear');
  });
  test('lime between the heading and the feed', () => { expect(feed(`${HEAD}Ground limestone: 46 lb\nN 2 lb\n`)).toEqual(['2 lb/1000 sq ft N']); });
  test('none of it is a content of the soil', () => { expect(sample(`Phosphorus 38 lb/A\n${HEAD}N 2 lb    P2O5 1 lb    K2O 3 lb\n`).readings.map((r) => r.item)).toEqual(['phosphorus', 'ph']); });
  test.each([['per tree', 'N 0.5 lb, K2O 1 lb', ['0.5 lb N', '1 lb K2O']], ['per m²', 'N 5 g, K2O 8 g', ['5 g/m2 N', '8 g/m2 K2O']]])('%s', (ground, line, expected) => { expect(feed(`Soil pH 5.2\nRecommended ${ground}:\n${line}\n`)).toEqual(expected); });
  test.each<[string, string[]]>([
    // Which number belongs to which name: what closes the line tells, a name or an amount.
    ['Apply N: 2 lb, K2O: 3 lb', ['2 lb/1000 sq ft N', '3 lb/1000 sq ft K2O']], ['Potassium is low: 2 lb N, 3 lb K2O', ['2 lb/1000 sq ft N', '3 lb/1000 sq ft K2O']], ['2 lb of N and 3 lb of K2O', ['2 lb/1000 sq ft N', '3 lb/1000 sq ft K2O']], ['N 2 lb    Potash none', ['2 lb/1000 sq ft N']], ['10 lb of 10-10-10', ['1 lb/1000 sq ft N', '1 lb/1000 sq ft P2O5', '1 lb/1000 sq ft K2O']], ['5-10-10 10 lb', ['0.5 lb/1000 sq ft N', '1 lb/1000 sq ft P2O5', '1 lb/1000 sq ft K2O']], ['N 8 oz', ['0.5 lb/1000 sq ft N']],
    // Its own ground leads.
    ['N 60 lb/acre, K2O 3 lb', ['60 lb/acre N', '3 lb/1000 sq ft K2O']], ['60 lb N per acre and 3 lb K2O', ['60 lb/acre N', '3 lb/1000 sq ft K2O']],
  ])('%s', (line, expected) => { expect(feed(`${HEAD}${line}\n`)).toEqual(expected); });
  test('the next heading takes over', () => { expect(feed(`${HEAD}N 2 lb\nPer acre:\nN 60 lb\n`)).toEqual(['2 lb/1000 sq ft N', '60 lb/acre N']); });
  test.each<[string, number]>([['two lines below the last it still holds', 2], ['three lines below it is forgotten', 3]])('%s', (_, lines) => { expect(feed(`${HEAD}N 2 lb${'\n'.repeat(lines)}K2O 3 lb\n`)).toEqual(['2 lb/1000 sq ft N', ...(lines < 3 ? ['3 lb/1000 sq ft K2O'] : [])]); });
  test('nor does it come back', () => { expect(feed(`${HEAD}\n\n\nComments follow.\nN 2 lb\n`)).toEqual([]); });
  test('a weight in the head is the unit of contents', () => { expect(sample('Results in kilograms per ha\nPhosphorus 42\n').readings.map((r) => [r.item, r.value])).toEqual([['phosphorus', 42]]); });
  test('far below it is forgotten', () => { expect(feed(`${HEAD}Comments follow.\n\n\n\nN 2 lb\n`)).toEqual([]); });
});
