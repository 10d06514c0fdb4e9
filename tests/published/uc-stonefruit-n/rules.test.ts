// University of California Agriculture and Natural Resources, "Nitrogen (Fruit Report)". The figures were typed a second time, from a stored text of the page.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'uc-stonefruit-n',
  title: 'Nitrogen (Fruit Report)',
  publisher: 'University of California Agriculture and Natural Resources',
  url: 'https://ucanr.edu/sites/fruitreport/Nutrition_-_Fertilization/Individual_Nutrients/Nitrogen',
  mark: 'read',
} as const;

published(source, () => {
  // Peach, nectarine and plum: 25 to 75 lb of N per acre a year.
  expectFigures(source.id, [
    [
      'peach, planted 2014, bearing, spacing 15 x 18 ft, shoots 1 in',
      [((15 * 18) / 43560) * 25 * LB, ((15 * 18) / 43560) * 75 * LB],
      { where: 'California, US' },
    ],
    [
      'nectarine, planted 2014, bearing, spacing 15 x 18 ft, shoots 1 in',
      [((15 * 18) / 43560) * 25 * LB, ((15 * 18) / 43560) * 75 * LB],
      { where: 'California, US' },
    ],
    [
      'plum, planted 2014, bearing, spacing 15 x 18 ft, shoots 1 in',
      [((15 * 18) / 43560) * 25 * LB, ((15 * 18) / 43560) * 75 * LB],
      { where: 'California, US' },
    ],
  ]);
});
