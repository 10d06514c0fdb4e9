// The record of every crop and region: `complete` where each age, class or main nutrient is printed, else `partial`. Judged from the printed tables, not from the program.
import { beforeAll, describe, expect, test } from 'vitest';
import { medlar } from '../medlar.ts';

let record: Record<string, Record<string, Record<string, string>>>;
beforeAll(async () => { record = (await medlar(['sources', '--coverage', '--json'])).json.result.coverage.record; });

describe('nitrogen', () => {
  test.each([
    // Michigan by year with a ceiling; Louisiana fig likewise; Pennsylvania's blueberry from the second year on; Georgia's fig by age, then by height.
    ['apple', 'US-MI', 'complete'], ['pear', 'US-MI', 'complete'], ['peach', 'US-PA', 'complete'], ['apple', 'US-IA', 'complete'], ['fig', 'US-LA', 'complete'], ['fig', 'US-GA', 'complete'], ['blueberry', 'US-PA', 'complete'], ['citrus', 'US-FL', 'complete'], ['apple', 'US-UT', 'complete'], ['apple', 'GB', 'complete'], ['medlar', 'GB', 'complete'],
    // India's fig misses years 3 and 4; Kenya's avocado ends with the tenth year; Missouri's chestnut with the third; orchard rates are partial.
    ['fig', 'IN', 'partial'], ['avocado', 'KE', 'partial'], ['chestnut', 'US-MO', 'partial'], ['kiwifruit', 'US-OR', 'partial'], ['hazelnut', 'IT', 'partial'], ['apple', 'US-OR', 'partial'], ['pomegranate', 'IN', 'partial'], ['apple', 'US-NM', 'partial'], ['pecan', 'US-SC', 'partial'],
    // Muscadines alone.
    ['grape', 'US-GA', 'partial'], ['grape', 'US-NJ', 'complete'], ['walnut', 'IN', 'complete'], ['mango', 'BD', 'complete'], ['persimmon', 'US-FL', 'complete'],
  ])('%s, %s: %s', (crop, region, worth) => { expect(record[crop]?.[region]?.N).toBe(worth); });
});

describe('phosphate and potash', () => {
  test.each([
    ['apple', 'DE', 'P2O5', 'complete'], ['apple', 'DE', 'K2O', 'complete'], ['quince', 'DE', 'K2O', 'complete'], ['apple', 'PL', 'K2O', 'complete'],
    // By leaf alone: Massachusetts, Michigan, Kansas.
    ['apple', 'US-MA', 'K2O', 'partial'], ['pecan', 'US-KS', 'P2O5', 'partial'],
  ])('%s, %s, %s: %s', (crop, region, what, worth) => { expect(record[crop]?.[region]?.[what]).toBe(worth); });
  test('Poland prints no phosphate for bearing trees', () => { expect(record.apple?.PL?.P2O5).not.toBe('complete'); });
});

describe('leaf and growth', () => {
  test.each([
    ['apple', 'US-WA', 'complete'], ['cherry', 'US-WA', 'complete'], ['peach', 'US-FL', 'complete'], ['hazelnut', 'US-OR', 'complete'], ['strawberry', 'US-NY', 'complete'], ['grape', 'CA-ON', 'complete'], ['citrus', 'TW', 'complete'],
    // N and boron; N alone; N and P.
    ['avocado', 'NZ', 'partial'], ['olive', 'US-CA', 'partial'], ['almond', 'US-CA', 'partial'], ['pecan', 'US-GA', 'partial'], ['apple', 'IT', 'partial'],
  ])('leaf of %s, %s: %s', (crop, region, worth) => { expect(record[crop]?.[region]?.leaf).toBe(worth); });
  test.each([
    ['apple', 'US-IA', 'complete'], ['fig', 'US-LA', 'complete'], ['apple', 'US-CO', 'complete'], ['peach', 'US-UT', 'complete'],
    ['fig', 'US-GA', 'partial'], ['blueberry', 'US-NC', 'partial'], ['apple', 'US-KS', 'partial'], ['apple', 'US-TN', 'partial'], ['apple', 'DK', 'partial'],
  ])('growth of %s, %s: %s', (crop, region, worth) => { expect(record[crop]?.[region]?.growth).toBe(worth); });
});

test('nothing but the two words, known regions and the five records', () => {
  expect(Object.keys(record).length).toBeGreaterThan(25);
  for (const [crop, regions] of Object.entries(record)) {
    for (const [region, cell] of Object.entries(regions)) {
      expect(region, crop).toMatch(/^[A-Z]{2}(-[A-Z]{2,3})?$/);
      expect(Object.keys(cell).length, `${crop} ${region}`).toBeGreaterThan(0);
      for (const [of, worth] of Object.entries(cell)) {
        expect(['N', 'P2O5', 'K2O', 'leaf', 'growth']).toContain(of);
        expect(['complete', 'partial']).toContain(worth);
      }
    }
  }
});

test('a crop of which no region prints nitrogen that may lead is not complete anywhere', () => {
  for (const crop of ['hazelnut', 'pomegranate', 'mulberry', 'elderberry']) {
    for (const cell of Object.values(record[crop] ?? {})) expect(cell.N ?? 'none', crop).not.toBe('complete');
  }
});
