// ICAR e-Courses, "Kiwifruit: orchard floor management" (2012). The figures were typed a second time, from a stored text of the page.
import { expectFigures, published } from '../helpers.ts';

const source = {
  id: 'in-icar-ecourse-kiwifruit',
  title: 'Kiwifruit: orchard floor management',
  publisher: 'ICAR e-Courses',
  url: 'http://ecoursesonline.iasri.res.in/mod/page/view.php?id=79073',
  mark: 'read',
} as const;

published(source, () => {
  // 0.5 kg of a 15 % mixture per year of age; from 8 years on 800 g N.
  expectFigures(source.id, [
    ['kiwifruit, planted 2025, shoots 1 in', [1 * 500 * 0.15], { where: 'India' }],
    ['kiwifruit, planted 2023, shoots 1 in', [3 * 500 * 0.15], { where: 'India' }],
    ['kiwifruit, planted 2021, shoots 1 in', [5 * 500 * 0.15], { where: 'India' }],
    ['kiwifruit, planted 2019, shoots 1 in', [7 * 500 * 0.15], { where: 'India' }],
    ['kiwifruit, planted 2018, shoots 1 in', [800], { where: 'India' }],
    ['kiwifruit, planted 2011, shoots 1 in', [800], { where: 'India' }],
  ]);
});
