// Ohio, Indiana and Michigan, revised field-crop recommendations, Mehlich-3, ppm. Typed a second time from notes of an
// account of the release (proves typing, not the reading). Potassium: below the critical level low, from it to the end of
// the maintenance range the target, over it high. Phosphorus has a critical level alone (corn and soybean 20).
import { expectClasses, words } from '../classes.ts';
import { published } from '../helpers.ts';

const source = {
  id: 'tri-state-2020', title: 'Tri-State fertilizer recommendations, revised', publisher: 'Ohio State, Purdue and Michigan State Universities',
  url: 'https://algreatlakes.com/blogs/news/release-of-new-tri-state-recommendations', mark: 'read',
} as const;

published(source, () => {
  for (const where of ['Ohio, US', 'Indiana, US', 'Michigan, US']) {
    expectClasses([
      { where, beside: 'CEC 4 meq/100 g', item: 'potassium', line: 'Potassium # ppm Mehlich 3', classes: words(['60-99', 'low'], ['100-130', 'optimum'], ['>130', 'high']) },
      { where, beside: 'CEC 5 meq/100 g', item: 'potassium', line: 'Potassium # ppm Mehlich 3', classes: words(['99', 'low'], ['101-130', 'optimum'], ['131', 'high']) },
      { where, beside: 'CEC 5.1 meq/100 g', item: 'potassium', line: 'Potassium # ppm Mehlich 3', classes: words(['119', 'low'], ['121-170', 'optimum'], ['171', 'high']) },
      { where, beside: 'CEC 12 meq/100 g', item: 'potassium', line: 'Potassium # ppm Mehlich 3', classes: words(['70-119', 'low'], ['120-170', 'optimum'], ['>170', 'high']) },
      // The worked row: 110 ppm is within the range at CEC 4, below the critical level at CEC 12.
      { where, beside: 'CEC 4 meq/100 g', item: 'potassium', line: 'Potassium # ppm Mehlich 3', classes: words(['110', 'optimum']) },
      { where, beside: 'CEC 12 meq/100 g', item: 'potassium', line: 'Potassium # ppm Mehlich 3', classes: words(['110', 'low']) },
      { where, item: 'phosphorus', line: 'Phosphorus # ppm Mehlich 3', classes: [['12-19', null, 'below'], ['21', null, 'at']] },
    ]);
  }
});
