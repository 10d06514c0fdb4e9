// Iowa State University Extension and Outreach, "Fertilizing Tree and Small Fruits in the Home Garden".
// The figures were typed a second time, from a stored text of the page.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'iowa-fertilizing-tree-small-fruits', title: 'Fertilizing Tree and Small Fruits in the Home Garden', publisher: 'Iowa State University Extension and Outreach, Yard and Garden',
  url: 'https://yardandgarden.extension.iastate.edu/how-to/fertilizing-tree-and-small-fruits-home-garden', mark: 'read',
} as const;

published(source, () => {
  // June-bearing strawberries after the last harvest: 5 lb of 10-10-10 a 100 ft of row; a foot apart, a hundredth of it each.
  // Raspberries without woody mulch: 4 to 5 lb a 100 ft; two feet apart.
  expectFigures(source.id, [
    ['strawberry, planted 2024, bearing, spacing 1 x 3 ft, shoots 1 in', [(5 * 0.1 * LB) / 100], { where: 'Iowa, US' }],
    ['raspberry, planted 2022, spacing 2 x 8 ft, shoots 1 in', [(4 * 0.1 * LB * 2) / 100, (5 * 0.1 * LB * 2) / 100], { where: 'Iowa, US' }],
  ]);
});
