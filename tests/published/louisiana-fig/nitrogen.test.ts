// LSU AgCenter (J. Pyzner), care of fig trees, August 2005.
// The figures were typed a second time, from a copy of the release; no publisher's page was found.
import { LB, expectFigures, expectNeeds, published } from '../helpers.ts';

const source = {
  id: 'louisiana-fig',
  title: 'How to take care of fig trees',
  publisher: 'LSU AgCenter',
  url: null,
  mark: 'read',
} as const;

// A pound of 8-8-8 a year of age, ten at the most; 12 to 18 in of growth is enough.
const table = [
  ['fig, planted 2020, 8 ft across, shoots 6 in', 6 * 0.08 * LB],
  ['fig, planted 2016, 10 ft across, shoots 6 in', 10 * 0.08 * LB],
  ['fig, planted 2010, 12 ft across, shoots 11 in', 10 * 0.08 * LB],
] as const;

published(source, () => {
  for (const [facts, grams] of table) {
    expectFigures(source.id, [[facts, [grams]]]);
    expectNeeds([[facts, { N: grams }]]);
  }
  expectNeeds([
    ['fig, planted 2016, 10 ft across, shoots 12 in', { N: 0 }],
    ['fig, planted 2016, 10 ft across, shoots 18 in', { N: 0 }],
    ['fig, planted 2016, 10 ft across, shoots 20 in', { N: 0 }],
  ]);
});
