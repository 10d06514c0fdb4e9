// UC Statewide IPM Program, "Fertilizing almonds" (2017). The figures were typed a second time, from a stored text of the page.
import { LB, OZ, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'uc-ipm-almond-home',
  title: 'Fertilizing almonds',
  publisher: 'UC Statewide IPM Program',
  url: 'http://ipm.ucanr.edu/PMG/GARDEN/FRUIT/CULTURAL/fertilizing.html',
  mark: 'read',
} as const;

published(source, () => {
  // Young trees: 1 to 2 oz of actual N; mature trees up to a pound.
  expectFigures(source.id, [
    ['almond, planted 2025, not bearing, shoots 1 in', [1 * OZ, 2 * OZ], { where: 'California, US' }],
    ['almond, planted 2008, bearing, shoots 1 in', [1 * LB], { where: 'California, US' }],
  ]);
});
