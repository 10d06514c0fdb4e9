// University of Missouri IPM (M. Warmund), "Nitrogen Rate Enhances Chestnut Yield and Tree Growth" (2015). The figures were typed a second time, from a stored text of the page.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'missouri-chestnut',
  title: 'Nitrogen Rate Enhances Chestnut Yield and Tree Growth',
  publisher: 'University of Missouri IPM (M. Warmund)',
  url: 'https://ipm.missouri.edu/MEG/index.cfm?ID=358',
  mark: 'read',
} as const;

published(source, () => {
  // Actual N in the first three seasons: 0.1, 0.2 and 0.3 lb; a tenth more after a year of short growth.
  expectFigures(source.id, [
    ['chestnut, planted 2026, shoots 1 in', [0.1 * LB], { where: 'Missouri, US' }],
    ['chestnut, planted 2025, shoots 1 in', [[0.2 * LB, 1.1 * 0.2 * LB]], { where: 'Missouri, US' }],
    ['chestnut, planted 2024, shoots 1 in', [[0.3 * LB, 1.1 * 0.3 * LB]], { where: 'Missouri, US' }],
  ]);
});
