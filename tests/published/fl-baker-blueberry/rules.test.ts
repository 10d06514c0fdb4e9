// UF/IFAS Extension Baker County, "Fruit and Nut Crops: Blueberry" (undated). The figures were typed a second time, from a stored text of the page.
import { OZ, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'fl-baker-blueberry',
  title: 'Fruit and Nut Crops: Blueberry',
  publisher: 'UF/IFAS Extension Baker County',
  url: 'http://baker.ifas.ufl.edu/Horticulture/Blueberry.html',
  mark: 'read',
} as const;

published(source, () => {
  // Year 1, no mulch: 1 oz of 12-4-8 after planting, then in April, June, August and October.
  expectFigures(source.id, [
    ['blueberry, planted 2026, bare, shoots 1 in', [5 * 0.12 * OZ], { where: 'Florida, US' }],
  ]);
});
