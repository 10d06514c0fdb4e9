// University of Georgia Agricultural and Environmental Services Laboratories, "Muscadine - Home Garden (Code #103), Soil Test Handbook for Georgia" (undated). The figures were typed a second time, from a stored text of the page.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'ga-code-103-muscadine',
  title: 'Muscadine - Home Garden (Code #103), Soil Test Handbook for Georgia',
  publisher: 'University of Georgia Agricultural and Environmental Services Laboratories',
  url: 'http://aesl.ces.uga.edu/scripts/crop.prg?103',
  mark: 'read',
} as const;

published(source, () => {
  // First year: half a pound of 10-10-10, then twice 1/8 lb of 34-0-0 or 1/10 lb of 46-0-0. Second year: double.
  expectFigures(source.id, [
    ['muscadine grape, planted 2026, shoots 1 in', [[(0.05 + (2 / 8) * 0.34) * LB, (0.05 + (2 / 10) * 0.46) * LB]], { where: 'Georgia, US' }],
    ['muscadine grape, planted 2025, shoots 1 in', [[2 * (0.05 + (2 / 8) * 0.34) * LB, 2 * (0.05 + (2 / 10) * 0.46) * LB]], { where: 'Georgia, US' }],
  ]);

  // Third year: 2 lb and 1 lb of 10-10-10 if grown well, else as in the second year.
  expectFigures(source.id, [
    ['muscadine grape, planted 2024, shoots 1 in', [[3 * 0.1 * LB, 2 * (0.05 + (2 / 8) * 0.34) * LB, 2 * (0.05 + (2 / 10) * 0.46) * LB]], { where: 'Georgia, US' }],
  ]);
});
