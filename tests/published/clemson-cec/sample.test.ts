// Clemson University Agricultural Service Laboratory, "Calculations" of exchange capacity: its example sample,
// pounds an acre with the laboratory's own letters. Typed a second time, from a stored text of the page itself.
import { expect, test } from 'vitest';
import { published, reading, readReport } from '../helpers.ts';

const source = {
  id: 'clemson-cec',
  title: 'CEC calculations',
  publisher: 'Clemson University Agricultural Service Laboratory',
  url: 'https://www.clemson.edu/public/regulatory/ag-srvc-lab/soil-testing/cec-calculations.html',
  mark: 'read',
} as const;

const report = [
  'pH 5.1',
  'Buffer pH 7.70',
  'Phosphorus 168 lb/acre VH',
  'Potassium 221 lb/acre H+',
  'Magnesium 28 lb/acre L+',
  'Calcium 400 lb/acre L+',
  'Sodium 12 lb/acre',
  '',
].join('\n');

const table = [
  ['phosphorus', 168, 'very-high', 'above'],
  ['potassium', 221, 'high', 'above'],
  ['magnesium', 28, 'low', 'below'],
  ['calcium', 400, 'low', 'below'],
] as const;

published(source, () => {
  for (const [item, pounds, rating, target] of table) {
    test(`${item}: ${String(pounds)} lb/acre, ${rating}`, async () => {
      const found = reading(await readReport(report), item);
      expect(found.mgPerKg).toBeCloseTo(pounds / 2, 6);
      expect(found.lab.rating).toBe(rating);
      expect(found.target).toBe(target);
    });
  }

  test('pH, buffer pH and sodium', async () => {
    const readings = await readReport(report);
    expect(reading(readings, 'ph').value).toBe(5.1);
    expect(reading(readings, 'buffer-ph').value).toBe(7.7);
    expect(reading(readings, 'sodium').mgPerKg).toBeCloseTo(6, 6);
  });
});
