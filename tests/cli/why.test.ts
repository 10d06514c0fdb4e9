// `why`: no lime where nothing is known of the pH (by the report, not by the bags); each rule of others once.
import { describe, expect, test } from 'vitest';
import { medlar } from '../medlar.ts';

const FILES = { 'orchard.yaml': 'where: Ohio, US\ntrees:\n  Apple: apple, planted 2012, 14 ft across\n  Fig: fig, planted 2020, tub 15 gal\nstore:\n  - Sulfate of ammonia, 21-0-0, 4 lb\n  - 20-20-20 water soluble, 1 lb\n' };

describe('why TREE lime', () => {
  test.each(['Apple', 'Fig'])('of %s, which no report speaks of', async (tree) => {
    expect((await medlar(['why', tree, 'lime'], FILES)).stdout.trim()).toBe('No pH on the report.');
  });
  test('of a kind that no range is printed for', async () => {
    const files = { 'orchard.yaml': `${FILES['orchard.yaml']}soil: a.txt\n`.replace('apple,', 'medlar,'), 'a.txt': 'Soil pH 6.2\n' };
    const said = (await medlar(['why', 'Apple', 'lime'], files)).stdout;
    const { ph } = (await medlar(['plan', '--json'], files)).json.result;
    expect([ph, said]).toEqual([[], expect.stringMatching(/^Apple: the soil has pH 6\.2\. No publication held here/)]);
  });
});

test('a rule stands once where both ends of its span round to the same', async () => {
  // Iowa's span for raspberries is narrower than a tenth of an ounce on so little ground.
  const { stdout } = await medlar(['why', 'Canes', 'N', '--today', '2027-02-20'], { 'orchard.yaml': 'where: Washington, US\ntrees:\n  Canes: 20 raspberries, planted 2022, spacing 2.5 x 9 ft\n' });
  const lines = stdout.split('\n').filter((l) => / oz N {2,}/.test(l));
  expect(lines.length).toBeGreaterThan(5);
  expect(new Set(lines).size).toBe(lines.length);
});
