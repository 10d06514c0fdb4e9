// Oregon State University Extension, fertilizer guide FG 24, "Prunes", revised February 1982 (archival).
// The figures were typed a second time, from a copy of the guide; no publisher's page was found.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'oregon-fg24',
  title: 'FG 24, Prunes',
  publisher: 'Oregon State University Extension',
  url: null,
  mark: 'read',
} as const;

published(source, () => {
  // Pounds a tree by age; ages that fall in one row however the planting year is counted.
  expectFigures(source.id, [
    ['prune, planted 2022, 10 ft across, shoots 4 in', [LB / 4, LB / 3]],
    ['prune, planted 2020, 12 ft across, shoots 4 in', [LB / 3, LB / 2]],
    ['prune, planted 2017, 15 ft across, shoots 4 in', [LB / 2, (LB * 3) / 4]],
  ]);
});
