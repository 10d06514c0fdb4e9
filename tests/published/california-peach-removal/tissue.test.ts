// University of California, California Backyard Orchard, "Fertilization". The figures were typed a second time, from research notes on the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'california-peach-removal',
  title: 'California Backyard Orchard: Fertilization',
  publisher: 'University of California',
  url: 'https://homeorchard.ucanr.edu/The_Big_Picture/Fertilization',
  mark: 'derived',
} as const;

published(source, () => {
  // 15 tons of peaches from an acre take away 68 lb of N, 11 of P and 86 of K, as elements.
  expectTissue(source.id, {
    removal: [
      ['peach', 'N', 68 / 15, 68 / 15, 'lb/ton'],
      ['peach', 'P', 11 / 15, 11 / 15, 'lb/ton'],
      ['peach', 'K', 86 / 15, 86 / 15, 'lb/ton'],
    ],
  });
});
