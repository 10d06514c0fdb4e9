// The Almond Doctor, University of California Cooperative Extension, "Nutrient Removal for Almond". The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'uc-almond-removal',
  title: 'Nutrient Removal for Almond',
  publisher: 'The Almond Doctor, University of California Cooperative Extension',
  url: 'https://thealmonddoctor.info/blog/nutrient-removal-for-almond',
  mark: 'read',
} as const;

published(source, () => {
  // All that leaves the orchard with 1,000 lb of kernels, as elements; the ton is of kernels.
  expectTissue(source.id, {
    removal: [
      ['almond', 'N', 2 * 65, 2 * 65, 'lb/ton'],
      ['almond', 'P', 2 * 8, 2 * 8, 'lb/ton'],
      ['almond', 'K', 2 * 76, 2 * 76, 'lb/ton'],
    ],
  });
});
