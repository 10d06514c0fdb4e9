// University of Georgia Extension, Colquitt County, "How do I fertilize my figs", April 2024.
// The figures were typed a second time, from a stored text of the page itself; nitrogen at 10-10-10.
import { LB, OZ, expectFigures, expectNeeds, published } from '../helpers.ts';

const source = {
  id: 'georgia-fig',
  title: 'How do I fertilize my figs',
  publisher: 'University of Georgia Extension',
  url: 'https://site.extension.uga.edu/colquitthomeowners/2024/04/how-do-i-fertilize-my-figs/',
  mark: 'read',
} as const;

const second = 'fig, planted 2025, 3 ft high, 3 ft across, shoots 6 in';
const third = 'fig, planted 2022, 6 ft high, 6 ft across, shoots 6 in';
const close = 'fig, planted 2018, 8 ft high, 10 ft across, spacing 10 ft, shoots 6 in';
const tallClose = 'fig, planted 2016, 12 ft high, 10 ft across, spacing 10 ft, shoots 6 in';
const wide = 'fig, planted 2018, 8 ft high, 12 ft across, spacing 20 ft, shoots 6 in';
const tallWide = 'fig, planted 2016, 12 ft high, 15 ft across, spacing 20 ft, shoots 6 in';

// Second year three ounces three times; years 3 to 5 a third of a pound a foot three times;
// later once: half a pound a foot to 5 lb at 10 ft, a pound a foot to 10 lb at 20 ft.
const table = [
  [second, 3 * 3 * OZ * 0.1],
  [third, 3 * 6 * (LB / 3) * 0.1],
  [close, 8 * 0.5 * LB * 0.1],
  [tallClose, 5 * LB * 0.1],
  [wide, 8 * 1 * LB * 0.1],
  [tallWide, 10 * LB * 0.1],
] as const;

published(source, () => {
  for (const [facts, grams] of table) {
    expectFigures(source.id, [[facts, [grams]]]);
    expectNeeds([[facts, { N: grams }]]);
  }
});
