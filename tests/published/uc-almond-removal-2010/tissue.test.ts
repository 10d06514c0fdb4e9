// The Almond Doctor, University of California Cooperative Extension, "Almond N, P, K crop use and variety" (2010). The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'uc-almond-removal-2010',
  title: 'Almond N, P, K crop use and variety',
  publisher: 'The Almond Doctor, University of California Cooperative Extension',
  url: 'http://www.thealmonddoctor.com/2010/05/almond-n-p-k-crop-use-and-variety.html',
  mark: 'read',
} as const;

published(source, () => {
  // With 1,000 lb of kernels, as elements; the ton is of kernels.
  expectTissue(source.id, {
    removal: [
      ['almond', 'N', 2 * 58, 2 * 58, 'lb/ton'],
      ['almond', 'P', 2 * 7, 2 * 7, 'lb/ton'],
      ['almond', 'K', 2 * 51, 2 * 51, 'lb/ton'],
    ],
  });
});
