// Scientia Agricola, "Nutrient content of biomass components of Hamlin sweet orange trees". The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'brazil-florida-hamlin',
  title: 'Nutrient content of biomass components of Hamlin sweet orange trees',
  publisher: 'Scientia Agricola',
  url: null,
  mark: 'read',
} as const;

published(source, () => {
  // In a tonne of fruit, as elements.
  expectTissue(source.id, {
    removal: [
      ['orange', 'N', 1.2, 1.2, 'kg/t'],
      ['orange', 'P', 0.18, 0.18, 'kg/t'],
      ['orange', 'K', 1.54, 1.54, 'kg/t'],
    ],
  });
});
