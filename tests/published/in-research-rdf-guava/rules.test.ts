// International Journal of Agricultural Sciences; Vegetos, "Guava, recommended doses" (2013). The figures were typed a second time, from a stored text of the page.
import { expectFigures, published } from '../helpers.ts';

const source = {
  id: 'in-research-rdf-guava',
  title: 'Guava, recommended doses',
  publisher: 'International Journal of Agricultural Sciences; Vegetos',
  url: null,
  mark: 'read',
} as const;

published(source, () => {
  // Trees of seven years: 600 g N (the full dose).
  expectFigures(source.id, [
    ['guava, planted 2019, shoots 1 in', [600], { where: 'Madhya Pradesh, India' }],
  ]);
  // An orchard of more than 25 years: 500 g N.
  expectFigures(source.id, [
  ]);
});
