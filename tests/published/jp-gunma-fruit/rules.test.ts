// Gunma Prefecture, "果樹 作物別施肥基準". The figures were typed a second time, from a stored text of the page.
import { expectFigures, published } from '../helpers.ts';

const source = {
  id: 'jp-gunma-fruit',
  title: '果樹 作物別施肥基準',
  publisher: 'Gunma Prefecture',
  url: null,
  mark: 'read',
} as const;

published(source, () => {
  // Apple, ordinary planting, kg N on 1000 square metres and trees on it: 5 (30), 8 (30), 15 (15).
  expectFigures(source.id, [
    ['apple, standard, planted 2022, spacing 5 x 6 m, shoots 1 in', [[5 * 6 * 5, 5000 / 30]], { where: 'Gunma, Japan' }],
    ['apple, standard, planted 2018, spacing 5 x 6 m, shoots 1 in', [[5 * 6 * 8, 8000 / 30]], { where: 'Gunma, Japan' }],
    ['apple, standard, planted 2008, spacing 8 x 8 m, shoots 1 in', [[8 * 8 * 15, 15000 / 15]], { where: 'Gunma, Japan' }],
  ]);
  // Apple on dwarfing stock, 100 to 130 trees: 5, 10, 10.
  expectFigures(source.id, [
    ['apple, dwarf, planted 2022, spacing 2 x 4.5 m, shoots 1 in', [[2 * 4.5 * 5, 5000 / 100, 5000 / 130]], { where: 'Gunma, Japan' }],
    ['apple, dwarf, planted 2020, spacing 2 x 4.5 m, shoots 1 in', [[2 * 4.5 * 10, 10000 / 100, 10000 / 130]], { where: 'Gunma, Japan' }],
    ['apple, dwarf, planted 2012, spacing 2 x 4.5 m, shoots 1 in', [[2 * 4.5 * 10, 10000 / 100, 10000 / 130]], { where: 'Gunma, Japan' }],
  ]);
  // Pear (Kosui): 5 (33), 10 (33), 22 (20).
  expectFigures(source.id, [
    ['asian pear, planted 2018, spacing 5 x 6 m, shoots 1 in', [[5 * 6 * 10, 10000 / 33]], { where: 'Gunma, Japan' }],
    ['asian pear, planted 2010, spacing 7 x 7 m, shoots 1 in', [[7 * 7 * 22, 22000 / 20]], { where: 'Gunma, Japan' }],
  ]);
  // Peach: 3 (33), 9 (33), 12 (33), 15 (20).
  expectFigures(source.id, [
    ['peach, planted 2023, spacing 5 x 6 m, shoots 1 in', [[5 * 6 * 3, 3000 / 33]], { where: 'Gunma, Japan' }],
    ['peach, planted 2021, spacing 5 x 6 m, shoots 1 in', [[5 * 6 * 9, 9000 / 33]], { where: 'Gunma, Japan' }],
    ['peach, planted 2018, spacing 5 x 6 m, shoots 1 in', [[5 * 6 * 12, 12000 / 33]], { where: 'Gunma, Japan' }],
    ['peach, planted 2011, spacing 7 x 7 m, shoots 1 in', [[7 * 7 * 15, 15000 / 20]], { where: 'Gunma, Japan' }],
  ]);
});
