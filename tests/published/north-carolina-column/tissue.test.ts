// North Carolina Cooperative Extension, new-year column in the Sylva Herald. The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'north-carolina-column',
  title: 'Cooperative Extension corner, Sylva',
  publisher: 'North Carolina Cooperative Extension',
  url: 'http://www.thesylvaherald.com/columns/cooperative_extension_corner/article_6d0c5462-0117-11e8-bd8d-b3266255854c.html',
  mark: 'read',
} as const;

published(source, () => {
  // Around 6 to 12 in of new growth in a season.
  expectTissue(source.id, { growth: [['blueberry', 'bearing', 6, 12, 'in']] });
});
