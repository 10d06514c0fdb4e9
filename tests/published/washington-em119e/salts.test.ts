// Washington State University, EM119E, table 1: electrical conductivity, excessive above 4 in a paste
// and above 1 at 1:1 (mmho/cm). The figures were typed a second time, from a stored text of the page itself;
// the limit at 1:2 is taken over from the row printed for 1:2.5.
import { expect, test } from 'vitest';
import { onePlant, only, published } from '../helpers.ts';

const source = {
  id: 'washington-em119e',
  title: 'Soil Recommended Ranges for Washington Tree Fruit Production (salts)',
  publisher: 'Washington State University Extension',
  url: 'https://treefruit.wsu.edu/?p=40864',
  mark: 'read',
} as const;

const table = [
  ['Soluble salts (1:1) 0.9 dS/m', false],
  ['Soluble salts (1:1) 1 dS/m', false],
  ['Soluble salts (1:1) 1.1 dS/m', true],
  ['Soluble salts (1:2) 1.1 dS/m', true],
  ['Soluble salts (1:1) 1100 uS/cm', true],
  ['Soluble salts (saturated paste) 3.9 mmho/cm', false],
  ['Soluble salts (saturated paste) 4 mmho/cm', false],
  ['Soluble salts (saturated paste) 4.1 mmho/cm', true],
] as const;

published(source, () => {
  for (const [line, stops] of table) {
    test(`${line}: ${stops ? 'wait' : 'goes on'}`, async () => {
      const facts = 'apple, semi-dwarf, planted 2014, 12 ft across, shoots 4 in';
      const tree = only(await onePlant(facts, { soil: `pH 6.4\n${line}\n` }));
      expect(tree.verdict === 'wait').toBe(stops);
      expect(tree.feeds.length === 0).toBe(stops);
    });
  }
});
