// Ohio State University, "Understanding Soil Test Reports for Phosphorus Values".
// The figures were typed a second time, from a stored text of the page itself.
import { expect, test } from 'vitest';
import { published, reading, readReport } from '../helpers.ts';

const source = {
  id: 'ohio-phosphorus',
  title: 'Understanding Soil Test Reports for Phosphorus Values',
  publisher: 'Ohio State University',
  url: 'https://agbmps.osu.edu/faq/understanding-soil-test-reports-phosphorus-values',
  mark: 'read',
} as const;

published(source, () => {
  test('60 pounds an acre are 30 parts per million', async () => {
    const phosphorus = reading(await readReport('Phosphorus 60 lb/acre Mehlich 3\n'), 'phosphorus');
    expect(phosphorus).toMatchObject({ value: 60, unit: 'lb/acre', method: 'mehlich-3', basis: 'element' });
    expect(phosphorus.mgPerKg).toBeCloseTo(30, 6);
  });

  test('30 parts per million rate as 60 pounds an acre', async () => {
    const ppm = reading(await readReport('Phosphorus 30 ppm Mehlich 3\n'), 'phosphorus');
    const pounds = reading(await readReport('Phosphorus 60 lb/acre Mehlich 3\n'), 'phosphorus');
    expect(ppm.mgPerKg).toBeCloseTo(30, 6);
    expect(ppm.target).toBe(pounds.target);
  });

  // The three ways in which the page says that pounds an acre are written.
  for (const unit of ['lb/A', 'lbs/A', 'pounds/A']) {
    test(`60 ${unit}`, async () => {
      const phosphorus = reading(await readReport(`Phosphorus 60 ${unit} Mehlich 3\n`), 'phosphorus');
      expect(phosphorus.unit).toBe('lb/acre');
      expect(phosphorus.mgPerKg).toBeCloseTo(30, 6);
    });
  }
});
