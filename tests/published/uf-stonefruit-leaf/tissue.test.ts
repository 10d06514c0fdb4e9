// UF/IFAS Horticultural Sciences, "Stone Fruit: Nutrition". The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'uf-stonefruit-leaf',
  title: 'Stone Fruit: Nutrition',
  publisher: 'UF/IFAS Horticultural Sciences',
  url: 'https://hos.ifas.ufl.edu/stonefruit/production/nutrition',
  mark: 'read',
} as const;

published(source, () => {
  // Table 1, the sufficient range for peach.
  expectTissue(source.id, {
    leaf: [
      ['peach', 'N', 2.75, 3.5, '%'],
      ['peach', 'P', 0.12, 0.5, '%'],
      ['peach', 'K', 1.5, 2.5, '%'],
      ['peach', 'Ca', 1.25, 2.5, '%'],
      ['peach', 'Mg', 0.25, 0.5, '%'],
    ],
  });
});
