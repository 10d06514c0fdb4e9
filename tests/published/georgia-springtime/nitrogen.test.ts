// University of Georgia, "Landscape trees ready for springtime snack", 10 April 2008.
// The figures were typed a second time, from a stored text of the page itself; a cup of 10-10-10 is half a pound.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'georgia-springtime',
  title: 'Landscape trees ready for springtime snack',
  publisher: 'University of Georgia',
  url: 'https://newswire.caes.uga.edu/story/3126/springtime-snack.html',
  mark: 'derived',
} as const;

published(source, () => {
  // A cup of 10-10-10 a year of age, twelve at the most.
  expectFigures(source.id, [
    ['pear, standard, planted 2020, 12 ft across, shoots 4 in', [0.3 * LB]],
    ['pear, standard, planted 2011, 20 ft across, shoots 4 in', [0.6 * LB]],
    ['peach, planted 2021, 12 ft across, shoots 4 in', [0.25 * LB]],
    ['plum, planted 2012, 12 ft across, shoots 4 in', [0.6 * LB]],
  ]);
});
