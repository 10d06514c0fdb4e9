// British Columbia Ministry of Agriculture, "Berries Production Guide: Blueberries, Established Plantings" (2020). The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'bc-berry-blueberry',
  title: 'Berries Production Guide: Blueberries, Established Plantings',
  publisher: 'British Columbia Ministry of Agriculture',
  url: 'https://www.agrifoodbc.ca/productionguide_subdomain/guides/14/section/16/chapter/30/',
  mark: 'read',
} as const;

published(source, () => {
  // Table 2, the adequate column, leaves of July; the stored text ends at magnesium.
  expectTissue(source.id, {
    leaf: [
      ['blueberry', 'N', 1.75, 2, '%'],
      ['blueberry', 'P', 0.08, 0.1, '%'],
      ['blueberry', 'K', 0.2, 0.4, '%'],
    ],
  });
});
