// University of Illinois Extension, "Raspberries, caring page". The figures were typed a second time, from a stored text of the page.
import { OZ, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'illinois-raspberry',
  title: 'Raspberries, caring page',
  publisher: 'University of Illinois Extension',
  url: 'https://web.extension.illinois.edu/raspberries/caring.cfm',
  mark: 'read',
} as const;

published(source, () => {
  // Established: 2 to 4 oz of ammonium nitrate for each original plant, every spring.
  expectFigures(source.id, [
    ['raspberry, planted 2020, bearing, shoots 1 in', [2 * 0.34 * OZ, 4 * 0.34 * OZ], { where: 'Illinois, US' }],
  ]);
});
