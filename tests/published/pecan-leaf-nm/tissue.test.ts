// New Mexico State University, "Diagnosing Nutrient Disorders of New Mexico Pecan Trees, Guide H-658". The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'pecan-leaf-nm',
  title: 'Diagnosing Nutrient Disorders of New Mexico Pecan Trees, Guide H-658',
  publisher: 'New Mexico State University',
  url: 'http://pubs.nmsu.edu/_h/H658',
  mark: 'read',
} as const;

published(source, () => {
  // Table 1, the adequate range, late July to early August.
  expectTissue(source.id, {
    leaf: [
      ['pecan', 'N', 2.5, 3, '%'],
      ['pecan', 'P', 0.14, 0.19, '%'],
      ['pecan', 'K', 1.2, 2.5, '%'],
      ['pecan', 'Ca', 0.9, 1.8, '%'],
      ['pecan', 'Mg', 0.3, 0.6, '%'],
    ],
  });
});
