// University of California Cooperative Extension, Ventura County, "Avocados, by Ben Faber (blog)". The figures were typed a second time, from a stored text of the page.
import { OZ, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'ucce-ventura-avocado',
  title: 'Avocados, by Ben Faber (blog)',
  publisher: 'University of California Cooperative Extension, Ventura County',
  url: 'https://ceventura.ucanr.edu/index.cfm/*file161551*?blogasset=109383&blogpost=1732',
  mark: 'read',
} as const;

published(source, () => {
  // An ounce of N in the first year, doubled in the next and so in each year after it, for five years.
  expectFigures(source.id, [
    ['avocado, planted 2026, shoots 1 in', [1 * OZ], { where: 'California, US' }],
    ['avocado, planted 2025, shoots 1 in', [2 * OZ], { where: 'California, US' }],
  ]);
});
