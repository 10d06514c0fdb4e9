// UC Cooperative Extension, Tulare County, "What values should olive growers use for estimating crop nitrogen removal at harvest?". The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'uc-olive-removal',
  title: 'What values should olive growers use for estimating crop nitrogen removal at harvest?',
  publisher: 'UC Cooperative Extension, Tulare County',
  url: 'https://www.sjvtandv.com/blog/strongwhat-values-should-olive-growers-use-for-estimating-crop-nitrogen-removal-at-harveststrong',
  mark: 'read',
} as const;

published(source, () => {
  // From the lowest of three Californian kinds (6.30, 6.81, 7.45) to the Portuguese orchard.
  expectTissue(source.id, {
    removal: [
      ['olive', 'N', 6.3, 8.23, 'lb/ton'],
    ],
  });
});
