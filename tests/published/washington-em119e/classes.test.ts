// Washington State University, EM119E, the rows not in ratings.test.ts: salts, sodium, boron, sulphur, trace metals.
// Typed a second time from notes of the table (proves typing, not the reading); the notes put the one-sided entries in
// their columns by reading order. "Excessive" is the highest word of any scheme that has it, so very high here.
import { expectClasses, words } from '../classes.ts';
import { published } from '../helpers.ts';

const source = {
  id: 'washington-em119e', title: 'Soil Recommended Ranges for Washington Tree Fruit Production', publisher: 'Washington State University Extension',
  url: 'https://treefruit.wsu.edu/?p=40864', mark: 'read',
} as const;
const where = 'Washington, US';

published(source, () => {
  expectClasses([
    { where, item: 'salts', line: 'EC # mmhos/cm saturated paste', classes: words(['<2.6', 'optimum'], ['>4', 'very-high']) },
    { where, item: 'salts', line: 'EC 1:1 # mmhos/cm', classes: words(['<0.5', 'optimum'], ['>1', 'very-high']) },
    { where, item: 'salts', line: 'EC 1:2.5 # mmhos/cm', classes: words(['<0.5', 'optimum'], ['>1', 'very-high']) },
    { where, item: 'sodium', line: 'Sodium # meq/100 g ammonium acetate', classes: words(['<0.5', 'optimum'], ['>0.5', 'very-high']) },
    { where, item: 'boron', line: 'Boron # ppm hot CaCl2', classes: words(['<1.0', 'low'], ['1.0-1.5', 'optimum'], ['>1.5', 'very-high']) },
    { where, item: 'sulphur', line: 'Sulfur # ppm', classes: words(['<4', 'low'], ['9-20', 'optimum'], ['>20', 'very-high']) },
    { where, item: 'zinc', line: 'Zinc # ppm DTPA', classes: words(['<0.25', 'low'], ['0.6-1.0', 'optimum']) },
    { where, item: 'copper', line: 'Copper # ppm DTPA', classes: words(['<0.1', 'low'], ['0.6-1.0', 'optimum'], ['>20', 'very-high']) },
    { where, item: 'manganese', line: 'Manganese # ppm DTPA', classes: words(['1-5', 'optimum'], ['>50', 'very-high']) },
    { where, item: 'iron', line: 'Iron # ppm DTPA', classes: words(['>4.5', 'optimum']) },
    // The words of the columns already tested for their side.
    { where, item: 'phosphorus', line: 'Phosphorus # ppm Olsen', classes: words(['<10', 'low'], ['15-40', 'optimum'], ['>50', 'very-high']) },
    { where, item: 'potassium', line: 'Potassium # ppm ammonium acetate', classes: words(['<120', 'low'], ['150-250', 'optimum'], ['>300', 'very-high']) },
    { where, item: 'calcium', line: 'Calcium # meq/100 g ammonium acetate', classes: words(['<3.0', 'low'], ['4.1-20', 'optimum']) },
    { where, item: 'magnesium', line: 'Magnesium # meq/100 g ammonium acetate', classes: words(['<0.5', 'low'], ['0.5-2.5', 'optimum'], ['>2.5', 'very-high']) },
  ]);
});
