// Washington State University Extension, "Table 2. Nutrient extraction in pounds of element per ton of fruit harvested (EM119E)" (2022). The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'washington-removal',
  title: 'Table 2. Nutrient extraction in pounds of element per ton of fruit harvested (EM119E)',
  publisher: 'Washington State University Extension',
  url: 'https://treefruit.wsu.edu/orchard-management/soils-nutrition/table-2-nutrient-extraction-in-pounds-of-element-per-ton-of-fruit-harvested',
  mark: 'read',
} as const;

published(source, () => {
  // As elements. The row for green apple is left out.
  expectTissue(source.id, {
    removal: [
      ['apple', 'N', 0.9, 2.1, 'lb/ton'],
      ['apple', 'P', 0.2, 0.4, 'lb/ton'],
      ['apple', 'K', 2, 3.9, 'lb/ton'],
      ['apricot', 'N', 8.3, 11, 'lb/ton'],
      ['apricot', 'P', 1.3, 1.3, 'lb/ton'],
      ['apricot', 'K', 6.6, 6.6, 'lb/ton'],
      ['cherry', 'N', 1.9, 5, 'lb/ton'],
      ['cherry', 'P', 0.5, 0.9, 'lb/ton'],
      ['cherry', 'K', 2.9, 6.3, 'lb/ton'],
      ['peach', 'N', 4.5, 12, 'lb/ton'],
      ['peach', 'P', 1.2, 1.2, 'lb/ton'],
      ['peach', 'K', 8.1, 8.1, 'lb/ton'],
      ['pear', 'N', 1.3, 2.7, 'lb/ton'],
      ['pear', 'P', 0.6, 0.6, 'lb/ton'],
      ['pear', 'K', 3, 3, 'lb/ton'],
    ],
  });
});
