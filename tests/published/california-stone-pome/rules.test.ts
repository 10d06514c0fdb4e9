// University of California Statewide IPM Program, "Fertilizing stone fruit and pome fruit" (2017). The figures were typed a second time, from research notes on the page.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'california-stone-pome',
  title: 'Fertilizing stone fruit and pome fruit',
  publisher: 'University of California Statewide IPM Program',
  url: 'https://ipm.ucanr.edu/PMG/GARDEN/FRUIT/CULTURAL/apricotfert.html',
  mark: 'read',
} as const;

published(source, () => {
  // Mature trees: 3 to 5 lb of ammonium sulphate, or 2 lb of urea, a year.
  for (const crop of ['apple', 'pear', 'peach', 'nectarine', 'plum', 'apricot', 'cherry']) {
    expectFigures(source.id, [
      [`${crop}, standard, planted 2006, bearing, 40 ft across, shoots 1 in`, [3 * 0.21 * LB, 5 * 0.21 * LB, 2 * 0.46 * LB], { where: 'California, US' }],
    ]);
  }
});
