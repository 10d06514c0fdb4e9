// Ratings adapted from Tandon (2005), table 9 of a paper in the Journal of Ecology and Environment. Typed a second time
// from a stored text of the table itself. Bands share their edges for P2O5 and the cations, so those are tried just
// inside; potassium's "high 0.6-1.5" and "very high >1.2" overlap in print, so 1.2 to 1.5 is left out. The words do not
// say which class is the target: the word alone is tested. No extractant is printed; ammonium acetate is the usual one.
import { type Class, expectClasses } from '../classes.ts';
import { published } from '../helpers.ts';

const source = {
  id: 'india-tandon', title: 'Soil fertility ratings, table 9', publisher: 'Journal of Ecology and Environment',
  url: 'https://preview-jecoenv.biomedcentral.com/articles/10.1186/s41610-019-0104-9/tables/9', mark: 'read',
} as const;
const where = 'India';

const five = (veryLow: string, low: string, medium: string, high: string, veryHigh: string): Class[] =>
  [[veryLow, 'very-low', null], [low, 'low', null], [medium, 'medium', null], [high, 'high', null], [veryHigh, 'very-high', null]];

published(source, () => {
  expectClasses([
    { where, item: 'organic-carbon', line: 'Organic carbon # %', classes: five('<0.20', '0.21-0.60', '0.61-0.80', '0.81-1.00', '>1.00') },
    { where, item: 'nitrogen', line: 'Available N # kg/ha', classes: five('<140', '141-420', '421-560', '561-700', '>700') },
    { where, item: 'potassium', line: 'K2O # kg/ha ammonium acetate', classes: five('<120', '121-240', '241-300', '301-360', '>360') },
    { where, item: 'calcium', line: 'Calcium # me/100 g ammonium acetate', classes: five('<2', '2.1-4.9', '5.1-9.9', '10.1-19.9', '>20') },
    { where, item: 'magnesium', line: 'Magnesium # me/100 g ammonium acetate', classes: five('<0.5', '0.51-1.49', '1.51-2.9', '3.1-7.9', '>8') },
    { where, item: 'potassium', line: 'Potassium # me/100 g ammonium acetate', classes: five('<0.12', '0.13-0.29', '0.31-0.59', '0.61-1.19', '>1.5') },
    { where, item: 'cec', line: 'CEC # me/100 g', classes: five('<5', '5.1-14.9', '15.1-24.9', '25.1-39.9', '>40') },
  ]);
  // P2O5, where the table of the Indian manuals (Olsen, as the element) gives the same word.
  expectClasses([
    { where, item: 'phosphorus', line: 'P2O5 # kg/ha Olsen', classes: [['17-22', 'low', null], ['49-56', 'medium', null], ['65-79', 'high', null]] },
  ]);
});
