// Davis Enterprise (column by UC Davis gardeners), "Garden Doctor: Reducing olive production, caring for citrus" (2012). The figures were typed a second time, from a stored text of the page.
import { expectFigures, published } from '../helpers.ts';

const source = {
  id: 'uc-davis-olive',
  title: 'Garden Doctor: Reducing olive production, caring for citrus',
  publisher: 'Davis Enterprise (column by UC Davis gardeners)',
  url: 'http://www.davisenterprise.com/local-news/news-columns/garden-doctor-reducing-olive-production-caring-for-citrus/',
  mark: 'read',
} as const;

published(source, () => {
  // Olives generally need no fertiliser, the less so where fruit is not wanted.
  expectFigures(source.id, [
    ['olive, planted 2016, bearing, shoots 1 in', [0], { where: 'California, US' }],
    ['olive, planted 2016, not bearing, shoots 1 in', [0], { where: 'California, US' }],
  ]);
});
