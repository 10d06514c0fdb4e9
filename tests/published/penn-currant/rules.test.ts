// Penn State Extension, "Gooseberries and Currants: Planting and Nutritional Requirements". The figures were typed a second time, from a stored text of the page.
import { OZ, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'penn-currant',
  title: 'Gooseberries and Currants: Planting and Nutritional Requirements',
  publisher: 'Penn State Extension',
  url: 'http://extension.psu.edu/plants/gardening/fphg/gooseberries-currants/planting-nutrition',
  mark: 'read',
} as const;

published(source, () => {
  // 6 to 8 oz of 10-10-10 a year around each plant.
  expectFigures(source.id, [
    ['redcurrant, planted 2021, shoots 1 in', [6 * 0.1 * OZ, 8 * 0.1 * OZ], { where: 'Pennsylvania, US' }],
    ['gooseberry, planted 2021, shoots 1 in', [6 * 0.1 * OZ, 8 * 0.1 * OZ], { where: 'Pennsylvania, US' }],
  ]);
});
