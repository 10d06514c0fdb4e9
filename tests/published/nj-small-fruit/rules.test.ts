// Rutgers Cooperative Extension, "Growing Small Fruit in the Home Garden" (undated). The figures were typed a second time, from a stored text of the page.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'nj-small-fruit',
  title: 'Growing Small Fruit in the Home Garden',
  publisher: 'Rutgers Cooperative Extension',
  url: null,
  mark: 'read',
} as const;

published(source, () => {
  // Grapes: a third of a pound of 10-10-10 in year 1, then half to three quarters of a pound.
  expectFigures(source.id, [
    ['grape, planted 2026, shoots 1 in', [(0.1 * LB) / 3], { where: 'New Jersey, US' }],
    ['grape, planted 2025, shoots 1 in', [0.5 * 0.1 * LB, 0.75 * 0.1 * LB], { where: 'New Jersey, US' }],
    ['grape, planted 2015, bearing, shoots 1 in', [0.5 * 0.1 * LB, 0.75 * 0.1 * LB], { where: 'New Jersey, US' }],
  ]);
});
