// Bragantia (Instituto Agronômico, Campinas), "Mineral nutrient removal by the harvest of citrus fruit" (1977). The figures were typed a second time, from a stored text of the abstract.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'bragantia-citrus',
  title: 'Mineral nutrient removal by the harvest of citrus fruit',
  publisher: 'Bragantia',
  url: 'https://www.scielo.br/j/brag/a/Ckryrw4qpHWK3pX34HkQJNt/abstract/?lang=en',
  mark: 'read',
} as const;

published(source, () => {
  // The mean of nine kinds, grams of element a tonne of fresh fruit: N 1,906, P 173, K 1,513.
  expectTissue(source.id, {
    removal: [
      ['citrus', 'N', 1.906, 1.906, 'kg/t'],
      ['citrus', 'P', 0.173, 0.173, 'kg/t'],
      ['citrus', 'K', 1.513, 1.513, 'kg/t'],
    ],
  });
});
