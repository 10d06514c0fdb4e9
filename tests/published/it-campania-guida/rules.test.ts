// Regione Campania, "Guida alla concimazione". The figures were typed a second time, from a stored text of the page.
import { expectFigures, published } from '../helpers.ts';

const source = {
  id: 'it-campania-guida',
  title: 'Guida alla concimazione',
  publisher: 'Regione Campania',
  url: null,
  mark: 'read',
} as const;

published(source, () => {
  // Hazelnut, first to fifth year: 30, 50, 100, 120 and 150 kg N a hectare.
  expectFigures(source.id, [
    ['hazelnut, planted 2026, spacing 4 x 5 m, shoots 1 in', [4 * 5 * 3], { where: 'Campania, Italy' }],
    ['hazelnut, planted 2025, spacing 4 x 5 m, shoots 1 in', [4 * 5 * 5], { where: 'Campania, Italy' }],
    ['hazelnut, planted 2024, spacing 4 x 5 m, shoots 1 in', [4 * 5 * 10], { where: 'Campania, Italy' }],
    ['hazelnut, planted 2023, spacing 4 x 5 m, shoots 1 in', [4 * 5 * 12], { where: 'Campania, Italy' }],
    ['hazelnut, planted 2022, spacing 4 x 5 m, shoots 1 in', [4 * 5 * 15], { where: 'Campania, Italy' }],
  ]);
});
