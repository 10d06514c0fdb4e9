// University of Georgia Extension, Colquitt County, "Let’s talk about home pecan production" (2023). The figures were typed a second time, from a stored text of the page.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'uga-colquitt-pecan',
  title: 'Let’s talk about home pecan production',
  publisher: 'University of Georgia Extension, Colquitt County',
  url: 'https://viewer.joomag.com/moultrie-scene-march-2023/0699238001674844623/p80',
  mark: 'read',
} as const;

published(source, () => {
  // Bearing age: 4 lb of 10-10-10 for each inch of trunk, 25 lb at most.
  expectFigures(source.id, [
    ['pecan, planted 2012, trunk 5 in across, bearing, shoots 1 in', [4 * 5 * 0.1 * LB], { where: 'Georgia, US' }],
    ['pecan, planted 2006, trunk 12 in across, bearing, shoots 1 in', [25 * 0.1 * LB], { where: 'Georgia, US' }],
  ]);

  // Or 1 lb of ammonium nitrate for each inch of trunk, 8 lb at most.
  expectFigures(source.id, [
    ['pecan, planted 2012, trunk 6 in across, bearing, shoots 1 in', [1 * 6 * 0.34 * LB], { where: 'Georgia, US' }],
    ['pecan, planted 2004, trunk 14 in across, bearing, shoots 1 in', [8 * 0.34 * LB], { where: 'Georgia, US' }],
  ]);

  // Planting year: 1 lb of 5-10-15 in June. The year after: 1 lb of 10-10-10 in March and in June.
  expectFigures(source.id, [
    ['pecan, planted 2026, shoots 1 in', [1 * 0.05 * LB], { where: 'Georgia, US' }],
    ['pecan, planted 2025, shoots 1 in', [2 * 1 * 0.1 * LB], { where: 'Georgia, US' }],
  ]);

  // Young, with less than 2 to 4 ft of growth: 1 lb of ammonium nitrate for each inch of trunk in June or
  // July; alone, or on top of the spring's 10-10-10.
  expectFigures(source.id, [
    ['pecan, planted 2022, trunk 3 in across, not bearing, shoots 1 in', [[1 * 3 * 0.34 * LB, (4 * 3 * 0.1 + 1 * 3 * 0.34) * LB]], { where: 'Georgia, US' }],
  ]);
});
