// University of Georgia Agricultural and Environmental Services Laboratories, "Strawberries - Home Garden (Code #110), Soil Test Handbook for Georgia" (undated). The figures were typed a second time, from a stored text of the page.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'ga-code-110-strawberry',
  title: 'Strawberries - Home Garden (Code #110), Soil Test Handbook for Georgia',
  publisher: 'University of Georgia Agricultural and Environmental Services Laboratories',
  url: 'http://aesl.ces.uga.edu/scripts/crop.prg?110',
  mark: 'read',
} as const;

published(source, () => {
  // Matted rows planted in spring, first year: 2 lb, 1 lb and 1 lb of 10-10-10 to 100 sq ft.
  expectFigures(source.id, [
    ['strawberry, planted 2026, spacing 2 x 4 ft, shoots 1 in', [(2 * 4 * (2 + 1 + 1) * 0.1 * LB) / 100], { where: 'Georgia, US' }],
  ]);
});
