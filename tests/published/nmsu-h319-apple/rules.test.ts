// New Mexico State University Cooperative Extension Service (E. A. Herrera), "Fertilization Programs for Apple Orchards, Guide H-319". The figures were typed a second time, from a stored text of the page.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'nmsu-h319-apple',
  title: 'Fertilization Programs for Apple Orchards, Guide H-319',
  publisher: 'New Mexico State University Cooperative Extension Service (E. A. Herrera)',
  url: 'https://aces.nmsu.edu/pubs/_h/H319/welcome.html',
  mark: 'read',
} as const;

published(source, () => {
  // Young trees not bearing: 1/20 lb of N per year of age; or 1/5 lb per inch of trunk.
  expectFigures(source.id, [
    ['apple, planted 2022, not bearing, shoots 1 in', [(4 / 20) * LB], { where: 'New Mexico, US' }],
    [
      'apple, planted 2021, not bearing, trunk 3 in across, shoots 1 in',
      [(3 / 5) * LB],
      { where: 'New Mexico, US' },
    ],
  ]);

  // Mature, bearing trees: 150 to 200 lb of N per acre.
  expectFigures(source.id, [
    [
      'apple, planted 2006, bearing, spacing 15 x 20 ft, shoots 1 in',
      [((15 * 20) / 43560) * 150 * LB, ((15 * 20) / 43560) * 200 * LB],
      { where: 'New Mexico, US' },
    ],
  ]);
});
