// The Almond Doctor, UC Cooperative Extension, "Estimating Nitrogen Needs = Estimating Your Crop". The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'uc-almond-demand',
  title: 'Estimating Nitrogen Needs = Estimating Your Crop',
  publisher: 'The Almond Doctor, UC Cooperative Extension',
  url: 'https://thealmonddoctor.com/blog/estimating-nitrogen-needs-estimating-your-crop',
  mark: 'read',
} as const;

published(source, () => {
  // With 1,000 lb of kernels; the ton is of kernels. The figure of 84 lb is what must be given, not what leaves.
  expectTissue(source.id, {
    removal: [
      ['almond', 'N', 2 * 60, 2 * 65, 'lb/ton'],
    ],
  });
});
