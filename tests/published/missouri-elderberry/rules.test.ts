// University of Missouri, "Elderberry Agronomy Guide". The figures were typed a second time, from a stored text of the page.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'missouri-elderberry',
  title: 'Elderberry Agronomy Guide',
  publisher: 'University of Missouri',
  url: 'https://agintel.missouri.edu/resource-guide/crop-home/agronomy?cid=124',
  mark: 'read',
} as const;

/** Square feet. */
const ACRE = 43_560;

published(source, () => {
  // Planting year: none at planting, then no more than 10 lb of N an acre at 4 to 8 weeks.
  expectFigures(source.id, [
    ['elderberry, planted 2026, spacing 4 x 10 ft, shoots 1 in', [(4 * 10 * 10 * LB) / ACRE], { where: 'Missouri, US' }],
  ]);

  // Mature and bearing: 60 to 80 lb of N an acre a year.
  expectFigures(source.id, [
    ['elderberry, planted 2018, spacing 4 x 10 ft, bearing, shoots 1 in', [(4 * 10 * 60 * LB) / ACRE, (4 * 10 * 80 * LB) / ACRE], { where: 'Missouri, US' }],
  ]);
});
