// Iowa State University, PM 1688 (2013), ppm. Memory; typed a second time from notes. Mehlich-3 read by colour and by
// plasma (ICP) have different classes; a bare "Mehlich 3" does not say which, so it is not tried.
import { type Class, expectClasses, words } from '../classes.ts';
import { published } from '../helpers.ts';

const source = { id: 'iowa-pm1688', title: 'PM 1688, A General Guide for Crop Nutrient and Limestone Recommendations in Iowa', publisher: 'Iowa State University Extension', url: null, mark: 'memory' } as const;
const where = 'Iowa, US';

const five = (veryLow: string, low: string, optimum: string, high: string, veryHigh: string): Class[] => words([veryLow, 'very-low'], [low, 'low'], [optimum, 'optimum'], [high, 'high'], [veryHigh, 'very-high']);

published(source, () => {
  expectClasses([
    { where, item: 'phosphorus', line: 'Phosphorus # ppm Mehlich 3 ICP', classes: five('0-15', '16-25', '26-35', '36-45', '>=46') },
    { where, item: 'phosphorus', line: 'Phosphorus # ppm Mehlich 3 colorimetric', classes: five('0-10', '11-15', '16-20', '21-30', '>=31') },
    { where, item: 'phosphorus', line: 'Phosphorus # ppm Bray-1', classes: five('0-10', '11-15', '16-20', '21-30', '>=31') },
    { where, item: 'phosphorus', line: 'Phosphorus # ppm Olsen', classes: five('0-6', '7-10', '11-14', '15-20', '>=21') },
    { where, item: 'potassium', line: 'Potassium # ppm ammonium acetate', classes: five('0-120', '121-160', '161-200', '201-240', '>=241') },
    { where, item: 'potassium', line: 'Potassium # ppm Mehlich 3', classes: five('0-120', '121-160', '161-200', '201-240', '>=241') },
  ]);
});
