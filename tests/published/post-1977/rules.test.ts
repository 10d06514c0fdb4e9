// Washington Post, "Fertilizing Apple, Peach, Pear, Plum and Cherry Trees" (2 December 1977). The figures were typed a second time, from a stored text of the column.
import { expect, test } from 'vitest';
import { LB, expectFigures, nitrogenBy, onePlant, published } from '../helpers.ts';

const source = {
  id: 'post-1977',
  title: 'Fertilizing Apple, Peach, Pear, Plum and Cherry Trees',
  publisher: 'Washington Post',
  url: 'https://www.washingtonpost.com/archive/local/1977/12/02/fertilizing-apple-peach-pear-plum-and-cherry-trees/5f545904-a8e2-44f8-a090-4cbfad00acd3/',
  mark: 'read',
} as const;

const where = 'Virginia, US';

published(source, () => {
  // Pounds of 10-10-10 a bearing tree: dwarf apple 5 to 10, dwarf peach, cherry and plum 4 to 8; large apple 15, the others large 10.
  expectFigures(source.id, [
    ['apple, dwarf, planted 2010, bearing, 8 ft across, shoots 1 in', [0.5 * LB, LB], { where }],
    ['peach, dwarf, planted 2010, bearing, 8 ft across, shoots 1 in', [0.4 * LB, 0.8 * LB], { where }],
    ['cherry, dwarf, planted 2010, bearing, 8 ft across, shoots 1 in', [0.4 * LB, 0.8 * LB], { where }],
    ['plum, dwarf, planted 2010, bearing, 8 ft across, shoots 1 in', [0.4 * LB, 0.8 * LB], { where }],
    ['apple, standard, planted 2000, bearing, 30 ft across, shoots 1 in', [1.5 * LB], { where }],
    ['peach, standard, planted 2000, bearing, 20 ft across, shoots 1 in', [LB], { where }],
    ['plum, standard, planted 2000, bearing, 20 ft across, shoots 1 in', [LB], { where }],
    ['cherry, standard, planted 2000, bearing, 30 ft across, shoots 1 in', [LB], { where }],
  ]);

  // No apricot in the column; no rate for a dwarf pear, which it bids go easy on; nothing for a tree not yet bearing.
  for (const facts of [
    'apricot, dwarf, planted 2010, bearing, 8 ft across, shoots 1 in',
    'pear, dwarf, planted 2010, bearing, 8 ft across, shoots 1 in',
    'apple, dwarf, planted 2024, not bearing, 4 ft across, shoots 1 in',
  ]) {
    test(`${facts}: no figure of the column`, async () => {
      expect(nitrogenBy(await onePlant(facts, { where }), source.id)).toEqual([]);
    });
  }
});
