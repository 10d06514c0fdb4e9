// BC Tree Fruit Production Guide, "Leaf tissue analysis and interpretation". The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'bc-tfpg-leaf',
  title: 'Leaf tissue analysis and interpretation',
  publisher: 'BC Tree Fruit Production Guide',
  url: 'https://bctfpg.ca/horticulture/fruit-tree-nutrition/assessing-nutrient-requirements-in-fruit-trees-sampling-testing-and-interpretation/leaf-tissue-analysis-and-interpretation',
  mark: 'read',
} as const;

published(source, () => {
  // Table 1, apple, British Columbia's own column; the columns beside it belong to other publishers.
  expectTissue(source.id, {
    leaf: [
      ['apple', 'N', 1.9, 2.3, '%'],
    ],
  });
});
