// NIAB, "Nutritional guidelines that combine adequate cropping with good storage potential". The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'niab-storage-nutrition',
  title: 'Nutritional guidelines that combine adequate cropping with good storage potential',
  publisher: 'NIAB',
  url: 'https://niab.com/nutritional-guidelines-combine-adequate-cropping-good-storage-potential',
  mark: 'read',
} as const;

published(source, () => {
  // Leaf P for Cox, Gala and Braeburn, then for Bramley. Leaf N has one end only.
  expectTissue(source.id, {
    leaf: [
      ['apple', 'P', 0.2, 0.25, '%'],
      ['apple', 'P', 0.18, 0.23, '%'],
    ],
  });
});
