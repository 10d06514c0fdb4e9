// Hill Laboratories, "Autumnal Avocado Orchard Testing" (2022). The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'nz-hill-avocado-leaf',
  title: 'Autumnal Avocado Orchard Testing',
  publisher: 'Hill Laboratories',
  url: 'https://www.hill-laboratories.com/about-us/news/autumnal-avocado-orchard-testing/',
  mark: 'read',
} as const;

published(source, () => {
  // The accepted ranges for autumn leaves.
  expectTissue(source.id, {
    leaf: [
      ['avocado', 'N', 2.4, 2.9, '%'],
      ['avocado', 'B', 30, 50, 'ppm'],
    ],
  });
});
