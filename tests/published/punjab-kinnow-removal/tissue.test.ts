// International Society for Horticultural Science, "Removal of NPK by Kinnow mandarin and Umran ber" (1992). The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'punjab-kinnow-removal',
  title: 'Removal of NPK by Kinnow mandarin and Umran ber',
  publisher: 'International Society for Horticultural Science',
  url: 'https://www.ishs.org/ishs-article/321_61',
  mark: 'read',
} as const;

published(source, () => {
  // The nitrogen of one tonne is misprinted by a factor of ten; the hectare of 40 t and the percentage agree on 2.4.
  expectTissue(source.id, {
    removal: [
      ['mandarin', 'N', 96 / 40, 96 / 40, 'kg/t'],
      ['mandarin', 'P', 0.27, 0.27, 'kg/t'],
      ['mandarin', 'K', 1.97, 1.97, 'kg/t'],
    ],
  });
});
