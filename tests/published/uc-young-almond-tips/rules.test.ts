// The Almond Doctor, UC Cooperative Extension, "Fertilizing Young Almond Trees - A Few Tips" (2011). The figures were typed a second time, from a stored text of the page.
import { OZ, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'uc-young-almond-tips',
  title: 'Fertilizing Young Almond Trees - A Few Tips',
  publisher: 'The Almond Doctor, UC Cooperative Extension',
  url: 'http://thealmonddoctor.com/2011/03/25/fertilizing-young-almond-trees-a-few-tips/',
  mark: 'read',
} as const;

published(source, () => {
  // First leaf: no more than an ounce of N a dose, three to four doses.
  expectFigures(source.id, [
    ['almond, planted 2026, shoots 1 in', [3 * 1 * OZ, 4 * 1 * OZ], { where: 'California, US' }],
  ]);
});
