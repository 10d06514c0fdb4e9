// LSU AgCenter Soil Testing and Plant Analysis Lab, "Blueberries (Rabbiteye), recommendation sheet F-520" (undated). The figures were typed a second time, from a stored text of the page.
import { OZ, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'lsu-f520-blueberry',
  title: 'Blueberries (Rabbiteye), recommendation sheet F-520',
  publisher: 'LSU AgCenter Soil Testing and Plant Analysis Lab',
  url: 'http://www.stpal.lsu.edu/RecSheets/Mod%20Rec%20Sheets/F-520.htm',
  mark: 'read',
} as const;

published(source, () => {
  // Ounces a plant by year: 13-13-13 in March and ammonium sulphate three times after,
  // or ammonium nitrate or 15-5-10 alone four times.
  expectFigures(source.id, [
    ['rabbiteye blueberry, planted 2026, shoots 1 in', [[(1 * 0.13 + 3 * 0.21) * OZ, 4 * 0.34 * OZ, 4 * 0.15 * OZ]], { where: 'Louisiana, US' }],
    ['rabbiteye blueberry, planted 2025, shoots 1 in', [[(2 * 0.13 + 3 * 0.21) * OZ, 6 * 0.34 * OZ, 6 * 0.15 * OZ]], { where: 'Louisiana, US' }],
    ['rabbiteye blueberry, planted 2024, shoots 1 in', [[(3 * 0.13 + 3 * 0.21) * OZ, 7 * 0.34 * OZ, 7 * 0.15 * OZ]], { where: 'Louisiana, US' }],
    ['rabbiteye blueberry, planted 2023, shoots 1 in', [[(4 * 0.13 + 6 * 0.21) * OZ, 10 * 0.34 * OZ, 10 * 0.15 * OZ]], { where: 'Louisiana, US' }],
    ['rabbiteye blueberry, planted 2022, shoots 1 in', [[(5 * 0.13 + 6 * 0.21) * OZ, 12 * 0.34 * OZ, 12 * 0.15 * OZ]], { where: 'Louisiana, US' }],
    ['rabbiteye blueberry, planted 2012, bearing, shoots 1 in', [[(5 * 0.13 + 6 * 0.21) * OZ, 12 * 0.34 * OZ, 12 * 0.15 * OZ]], { where: 'Louisiana, US' }],
  ]);
});
