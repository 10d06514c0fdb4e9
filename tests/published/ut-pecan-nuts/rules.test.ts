// University of Tennessee, "Pecans and Nut Trees" (undated). The figures were typed a second time, from a stored text of the page.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'ut-pecan-nuts',
  title: 'Pecans and Nut Trees',
  publisher: 'University of Tennessee',
  url: 'https://utcrops.com/soil/commercial-fruit-and-nut-production/pecans-and-nut-trees/',
  mark: 'read',
} as const;

published(source, () => {
  // Actual nitrogen a tree: years one to three, four and five, six and over.
  expectFigures(source.id, [
    ['pecan, planted 2026, shoots 1 in', [0.1 * LB], { where: 'Tennessee, US' }],
    ['pecan, planted 2025, shoots 1 in', [0.1 * LB], { where: 'Tennessee, US' }],
    ['pecan, planted 2024, shoots 1 in', [0.1 * LB], { where: 'Tennessee, US' }],
    ['pecan, planted 2023, shoots 1 in', [1.5 * LB], { where: 'Tennessee, US' }],
    ['pecan, planted 2022, shoots 1 in', [1.5 * LB], { where: 'Tennessee, US' }],
    ['pecan, planted 2021, shoots 1 in', [2 * LB], { where: 'Tennessee, US' }],
    ['pecan, planted 2000, shoots 1 in', [2 * LB], { where: 'Tennessee, US' }],
    ['walnut, planted 2015, shoots 1 in', [2 * LB], { where: 'Tennessee, US' }],
  ]);
});
