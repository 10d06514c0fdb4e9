// UC Statewide IPM Program, "Fertilizing walnuts" (2017). The figures were typed a second time, from a stored text of the page.
import { LB, OZ, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'uc-ipm-walnut-home',
  title: 'Fertilizing walnuts',
  publisher: 'UC Statewide IPM Program',
  url: 'https://ipm.ucanr.edu/PMG/GARDEN/FRUIT/ENVIRON/depbrkcanfert.html',
  mark: 'read',
} as const;

published(source, () => {
  // Actual N by age and trunk: 1 to 2 oz; then 0.33 to 0.5, 0.5 to 0.75, 0.75 to 1.5 and 1.5 to 3 lb.
  expectFigures(source.id, [
    ['walnut, planted 2025, trunk 0.8 in across, shoots 1 in', [1 * OZ, 2 * OZ], { where: 'California, US' }],
    [
      'walnut, planted 2022, trunk 3 in across, shoots 1 in',
      [0.33 * LB, 0.5 * LB],
      { where: 'California, US' },
    ],
    [
      'walnut, planted 2020, trunk 5 in across, shoots 1 in',
      [0.5 * LB, 0.75 * LB],
      { where: 'California, US' },
    ],
    [
      'walnut, planted 2019, trunk 6 in across, shoots 1 in',
      [0.5 * LB, 0.75 * LB],
      { where: 'California, US' },
    ],
    [
      'walnut, planted 2017, trunk 8 in across, shoots 1 in',
      [0.75 * LB, 1.5 * LB],
      { where: 'California, US' },
    ],
    [
      'walnut, planted 1996, trunk 18 in across, shoots 1 in',
      [1.5 * LB, 3 * LB],
      { where: 'California, US' },
    ],
  ]);
});
