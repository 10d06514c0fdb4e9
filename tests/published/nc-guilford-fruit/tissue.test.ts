// NC Cooperative Extension, Guilford County, "Fertilizing Fruit Trees and Blueberry Bushes" (2013). The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'nc-guilford-fruit',
  title: 'Fertilizing Fruit Trees and Blueberry Bushes',
  publisher: 'NC Cooperative Extension, Guilford County',
  url: 'https://guilford.ces.ncsu.edu/2013/02/fertilizing-fruit-trees-and-blueberry-bushes/',
  mark: 'read',
} as const;

published(source, () => {
  // Growth in a year for fruit trees of every kind: a wider span before they bear, a shorter one after.
  expectTissue(source.id, {
    growth: [
      ['apple', 'not bearing', 15, 30, 'in'],
      ['pear', 'not bearing', 15, 30, 'in'],
      ['peach', 'not bearing', 15, 30, 'in'],
      ['plum', 'not bearing', 15, 30, 'in'],
      ['apple', 'bearing', 8, 15, 'in'],
      ['pear', 'bearing', 8, 15, 'in'],
      ['peach', 'bearing', 8, 15, 'in'],
      ['plum', 'bearing', 8, 15, 'in'],
    ],
  });
});
