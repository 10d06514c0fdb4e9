// Pacific Northwest Extension (Oregon State University), "Growing Kiwifruit (PNW 507)" (2000). The figures were typed a second time, from a stored text of the page.
import { OZ, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'pnw507-kiwifruit',
  title: 'Growing Kiwifruit (PNW 507)',
  publisher: 'Pacific Northwest Extension (Oregon State University)',
  url: null,
  mark: 'read',
} as const;

published(source, () => {
  // First year 0.4 oz of N in each of three months, second 0.8 oz in each of four,
  // third and fourth 2 to 3 oz in March, May and July.
  expectFigures(source.id, [
    ['kiwifruit, planted 2026, shoots 1 in', [3 * 0.4 * OZ], { where: 'Oregon, US' }],
    ['kiwifruit, planted 2025, shoots 1 in', [4 * 0.8 * OZ], { where: 'Oregon, US' }],
    ['kiwifruit, planted 2024, shoots 1 in', [3 * 2 * OZ, 3 * 3 * OZ], { where: 'Oregon, US' }],
    ['kiwifruit, planted 2023, shoots 1 in', [3 * 2 * OZ, 3 * 3 * OZ], { where: 'Oregon, US' }],
  ]);

  // Mature vines: about a pound of N a year.
  expectFigures(source.id, [
  ]);
});
