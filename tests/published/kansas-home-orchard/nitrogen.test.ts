// Kansas State University (W. Upham), "Fertilizing the Home Orchard", printed 5 April 2017.
// The figures were typed a second time, from a copy of the column; no publisher's page was found.
// Nitrogen by the column's own exchange: three cups of 10-10-10, half a pound each, for one of 27-3-3.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'kansas-home-orchard',
  title: 'Fertilizing the Home Orchard',
  publisher: 'Kansas State University',
  url: null,
  mark: 'derived',
} as const;

const cup = 3 * 0.5 * 0.1 * LB;

published(source, () => {
  // Years 1 and 2 a quarter cup, 3 and 4 a half, 5 to 10 one to two, after that two to three.
  expectFigures(source.id, [
    ['apple, semi-dwarf, planted 2024, 6 ft across, shoots 4 in', [0.25 * cup]],
    ['apple, semi-dwarf, planted 2022, 8 ft across, shoots 4 in', [0.5 * cup]],
    ['apple, semi-dwarf, planted 2019, 12 ft across, shoots 4 in', [1 * cup, 2 * cup]],
    ['peach, planted 2014, 12 ft across, shoots 4 in', [2 * cup, 3 * cup]],
  ]);
});
