// Virginia Cooperative Extension, "Soil Test Note No. 22: Small Fruits for Home Use (SPES-363NP)" (undated). The figures were typed a second time, from a stored text of the page.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'va-soil-test-note-22',
  title: 'Soil Test Note No. 22: Small Fruits for Home Use (SPES-363NP)',
  publisher: 'Virginia Cooperative Extension',
  url: 'https://pubs.ext.vt.edu/content/pubs_ext_vt_edu/en/SPES/SPES-363/SPES-363.html',
  mark: 'read',
} as const;

published(source, () => {
  // Strawberries before planting, to 100 sq ft: 1.5 lb of 10-10-10, or 1 lb of calcium nitrate.
  expectFigures(source.id, [
    ['strawberry, planted 2026, spacing 2 x 4 ft, shoots 1 in', [[(2 * 4 * 1.5 * 0.1 * LB) / 100, (2 * 4 * 0.155 * LB) / 100]], { where: 'Virginia, US' }],
  ]);
});
