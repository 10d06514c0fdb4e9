// University of California Agriculture and Natural Resources, "Avocados: fertilizing (blog post 18546)". The figures were typed a second time, from a stored text of the page.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'uc-avocado-care',
  title: 'Avocados: fertilizing (blog post 18546)',
  publisher: 'University of California Agriculture and Natural Resources',
  url: 'https://ucanr.edu/blogs/blogcore/postdetail.cfm?postnum=18546',
  mark: 'read',
} as const;

published(source, () => {
  // A quarter pound of N for young trees, 1.5 to 2 lb for mature ones, a year.
  expectFigures(source.id, [
    ['avocado, planted 2025, not bearing, shoots 1 in', [0.25 * LB], { where: 'California, US' }],
    ['avocado, planted 2006, bearing, shoots 1 in', [1.5 * LB, 2 * LB], { where: 'California, US' }],
  ]);
});
