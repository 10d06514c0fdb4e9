// University of Georgia Cooperative Extension, Colquitt County, "How do I fertilize my muscadines?" (2021). The figures were typed a second time, from a stored text of the page.
import { LB, OZ, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'uga-colquitt-muscadine',
  title: 'How do I fertilize my muscadines?',
  publisher: 'University of Georgia Cooperative Extension, Colquitt County',
  url: 'https://site.extension.uga.edu/colquittag/2021/02/how-do-i-fertilize-my-muscadines/',
  mark: 'read',
} as const;

published(source, () => {
  // First year: half a pound of 10-10-10, then 2 oz of ammonium nitrate twice. Second year: double.
  expectFigures(source.id, [
    ['muscadine grape, planted 2026, shoots 1 in', [0.5 * 0.1 * LB + 2 * 2 * 0.34 * OZ], { where: 'Georgia, US' }],
    ['muscadine grape, planted 2025, shoots 1 in', [2 * (0.5 * 0.1 * LB + 2 * 2 * 0.34 * OZ)], { where: 'Georgia, US' }],
  ]);

  // Third year: 2 lb and 1 lb of 10-10-10 if grown well, else as in the second year.
  expectFigures(source.id, [
    ['muscadine grape, planted 2024, shoots 1 in', [[3 * 0.1 * LB, 2 * (0.5 * 0.1 * LB + 2 * 2 * 0.34 * OZ)]], { where: 'Georgia, US' }],
  ]);

  // Established: 3 to 5 lb of 10-10-10, then half a pound of ammonium nitrate.
  expectFigures(source.id, [
    ['muscadine grape, planted 2014, bearing, shoots 1 in', [(3 * 0.1 + 0.5 * 0.34) * LB, (5 * 0.1 + 0.5 * 0.34) * LB], { where: 'Georgia, US' }],
  ]);
});
