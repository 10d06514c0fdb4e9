// American Society for Horticultural Science, "Relationships between Leaflet Nitrogen:Potassium Ratio and Yield of Pecan" (2007). The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'pecan-leaf-wells',
  title: 'Relationships between Leaflet Nitrogen:Potassium Ratio and Yield of Pecan',
  publisher: 'American Society for Horticultural Science',
  url: 'https://journals.ashs.org/horttech/view/journals/horttech/17/4/article-p473.xml',
  mark: 'read',
} as const;

published(source, () => {
  // The range that is suggested for the best yields.
  expectTissue(source.id, {
    leaf: [
      ['pecan', 'N', 2.5, 2.9, '%'],
      ['pecan', 'K', 1.3, 1.5, '%'],
    ],
  });
});
