// Oregon State University Extension, fertilizer guide FG 23, "Apples", revised May 1989 (archival).
// The figures were typed a second time, from a copy of the guide; no publisher's page was found.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'oregon-fg23',
  title: 'FG 23, Apples',
  publisher: 'Oregon State University Extension',
  url: null,
  mark: 'read',
} as const;

published(source, () => {
  // Pounds a tree by age; ages that fall in one row however the planting year is counted.
  expectFigures(source.id, [
    ['apple, standard, planted 2022, 12 ft across, shoots 4 in', [LB / 4, LB / 3]],
    ['apple, standard, planted 2020, 15 ft across, shoots 4 in', [LB / 3, LB / 2]],
  ]);
});
