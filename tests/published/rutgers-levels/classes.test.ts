// Rutgers NJAES Soil Testing Laboratory, Relative Levels of Nutrients: the words of the macronutrients, and the
// micronutrients (critical level, high). Typed a second time from a stored text of the page itself, which says that
// below the critical level is deficient and above High a warning, and that High is the optimum for macronutrients.
import { type Class, expectClasses } from '../classes.ts';
import { published } from '../helpers.ts';

const source = {
  id: 'rutgers-levels', title: 'Relative Levels of Nutrients', publisher: 'Rutgers New Jersey Agricultural Experiment Station',
  url: 'https://njaes.rutgers.edu/soil-testing-lab/relative-levels-of-nutrients.php', mark: 'read',
} as const;
const where = 'New Jersey, US';

const five = (veryLow: string, low: string, medium: string, high: string, veryHigh: string): Class[] =>
  [[veryLow, 'very-low', 'far-below'], [low, 'low', 'below'], [medium, 'medium', 'below'], [high, 'high', 'at'], [veryHigh, 'very-high', 'above']];
const critical = (deficient: string, enough: string, warning: string): Class[] => [[deficient, 'low', 'below'], [enough, null, 'at'], [warning, null, 'above']];

published(source, () => {
  expectClasses([
    { where, item: 'phosphorus', line: 'Phosphorus # lb/acre Mehlich 3', classes: five('0-24', '25-45', '46-71', '72-137', '>137') },
    { where, item: 'potassium', line: 'Potassium # lb/acre Mehlich 3', classes: five('0-40', '41-81', '82-145', '146-277', '>277') },
    { where, item: 'magnesium', line: 'Magnesium # lb/acre Mehlich 3', classes: five('0-45', '46-83', '84-143', '144-295', '>295') },
    { where, item: 'calcium', line: 'Calcium # lb/acre Mehlich 3', classes: five('0-615', '616-1007', '1008-1400', '1401-1790', '>1790') },
    { where, item: 'zinc', line: 'Zinc # ppm Mehlich 3', classes: critical('<1.0', '1.0-50', '>50') },
    { where, item: 'copper', line: 'Copper # ppm Mehlich 3', classes: critical('<0.5', '0.5-20', '>20') },
    { where, item: 'boron', line: 'Boron # ppm Mehlich 3', classes: critical('<0.5', '0.5-20', '>20') },
    { where, item: 'iron', line: 'Iron # ppm Mehlich 3', classes: critical('<50', '50-100', '>100') },
    // Activity index 101.7 + 3.75 Mn - 15.2 pH, critical 25, high 100: at pH 6.5, 25 is 5.89 ppm and 100 is 25.89;
    // at pH 5.5, 1.84 and 21.84; at pH 7, 7.92 and 27.92. (Manganese 10 at pH 6.5 is 40.4.)
    { where, beside: 'pH 6.5', item: 'manganese', line: 'Manganese # ppm Mehlich 3', classes: critical('5-5.8', '5.9-25.8', '>25.9') },
    { where, beside: 'pH 6.5', item: 'manganese', line: 'Manganese # ppm Mehlich 3', classes: [['10', null, 'at']] },
    { where, beside: 'pH 5.5', item: 'manganese', line: 'Manganese # ppm Mehlich 3', classes: critical('1-1.8', '1.9-21.8', '>21.9') },
    { where, beside: 'pH 7', item: 'manganese', line: 'Manganese # ppm Mehlich 3', classes: critical('6-7.9', '8-27.9', '>28') },
  ]);
});
