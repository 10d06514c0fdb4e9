// Utah State University Extension, "Fertilizing Backyard Fruit Trees" (2017). The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'utah-backyard',
  title: 'Fertilizing Backyard Fruit Trees',
  publisher: 'Utah State University Extension',
  url: 'https://pestadvisories.usu.edu/2017/04/18/fertilizing/',
  mark: 'read',
} as const;

published(source, () => {
  // Fruit trees of every kind; bearing peach more, 12 to 15 or 18.
  expectTissue(source.id, {
    growth: [
      ['apple', 'not bearing', 12, 18, 'in'],
      ['pear', 'not bearing', 12, 18, 'in'],
      ['peach', 'not bearing', 12, 18, 'in'],
      ['plum', 'not bearing', 12, 18, 'in'],
      ['apple', 'bearing', 8, 12, 'in'],
      ['pear', 'bearing', 8, 12, 'in'],
      ['plum', 'bearing', 8, 12, 'in'],
      ['peach', 'bearing', 12, 18, 'in'],
    ],
  });
});
