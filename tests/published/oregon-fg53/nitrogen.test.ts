// Oregon State University Extension, fertilizer guide FG 53, peaches, reprinted January 2000 (archival).
// The figures were typed a second time, from a copy of the guide; no publisher's page was found.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'oregon-fg53',
  title: 'FG 53, Peaches',
  publisher: 'Oregon State University Extension',
  url: null,
  mark: 'read',
} as const;

published(source, () => {
  // Pounds a tree by age; ages that fall in one row however the planting year is counted.
  expectFigures(source.id, [
    ['peach, planted 2022, 10 ft across, mulch, shoots 4 in', [0.5 * LB, 0.75 * LB]],
    ['peach, planted 2020, 12 ft across, mulch, shoots 4 in', [0.75 * LB, 1 * LB]],
    ['peach, planted 2017, 15 ft across, mulch, shoots 4 in', [1.5 * LB, 2 * LB]],
  ]);
});
