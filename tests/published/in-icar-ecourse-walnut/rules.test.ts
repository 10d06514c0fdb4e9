// ICAR e-Courses, "Walnut: cultural practices" (2012). The figures were typed a second time, from a stored text of the page.
import { expectFigures, published } from '../helpers.ts';

const source = {
  id: 'in-icar-ecourse-walnut',
  title: 'Walnut: cultural practices',
  publisher: 'ICAR e-Courses',
  url: 'http://ecoursesonline.iasri.res.in/mod/page/view.php?id=79088',
  mark: 'read',
} as const;

published(source, () => {
  // 0.5 kg of 15:15:15 per year of age up to 16 years, then 8 kg.
  expectFigures(source.id, [
    ['walnut, planted 2025, shoots 1 in', [1 * 500 * 0.15], { where: 'India' }],
    ['walnut, planted 2021, shoots 1 in', [5 * 500 * 0.15], { where: 'India' }],
    ['walnut, planted 2016, shoots 1 in', [10 * 500 * 0.15], { where: 'India' }],
    ['walnut, planted 2010, shoots 1 in', [16 * 500 * 0.15], { where: 'India' }],
    ['walnut, planted 2000, bearing, shoots 1 in', [8000 * 0.15], { where: 'India' }],
  ]);
});
