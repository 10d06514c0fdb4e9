// ICAR e-Courses, "Fig: irrigation and nutrition" (2012). The figures were typed a second time, from a stored text of the page.
import { expectFigures, published } from '../helpers.ts';

const source = {
  id: 'in-icar-ecourse-fig',
  title: 'Fig: irrigation and nutrition',
  publisher: 'ICAR e-Courses',
  url: 'http://ecoursesonline.iasri.res.in/mod/page/view.php?id=97774',
  mark: 'read',
} as const;

published(source, () => {
  // 75 g N at 1 to 2 years, 300 g from the fifth year on.
  expectFigures(source.id, [
    ['fig, planted 2025, shoots 1 in', [75], { where: 'India' }],
    ['fig, planted 2024, shoots 1 in', [75], { where: 'India' }],
    ['fig, planted 2021, shoots 1 in', [300], { where: 'India' }],
    ['fig, planted 2014, bearing, shoots 1 in', [300], { where: 'India' }],
  ]);
});
