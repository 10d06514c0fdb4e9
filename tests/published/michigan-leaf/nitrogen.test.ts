// Michigan State University, "Leaf Analysis Interpretation: Apples and Pears".
// The figures were typed a second time, from a copy of the sheet; no publisher's page was found.
import { LB, expectNeeds, published } from '../helpers.ts';

const source = {
  id: 'michigan-leaf',
  title: 'Leaf Analysis Interpretation: Apples and Pears',
  publisher: 'Michigan State University',
  url: null,
  mark: 'read',
} as const;

published(source, () => {
  // Normal 1.9 to 2.7 % nitrogen; a tenth more for every 0.1 % short of 1.9.
  const base = 0.4 * LB;
  const tree = 'apple, standard, planted 2018, 40 ft across';
  expectNeeds([
    [`${tree}, leaf N 1.5 %`, { N: 1.4 * base }],
    [`${tree}, leaf N 1.8 %`, { N: 1.1 * base }],
    [`${tree}, leaf N 1.9 %`, { N: 0 }],
    [`${tree}, leaf N 2.7 %`, { N: 0 }],
    [`${tree}, leaf N 2.8 %`, { N: 0 }],
  ]);

  // A leaf test outranks growth.
  expectNeeds([
    [`${tree}, shoots 4 in, leaf N 2.3 %`, { N: 0 }],
    [`${tree}, shoots 20 in, leaf N 1.7 %`, { N: 1.2 * base }],
  ]);
});
