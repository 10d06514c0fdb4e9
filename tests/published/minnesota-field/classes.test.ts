// University of Minnesota, field-crop guidelines, ppm, and organic matter without texture. Memory; typed a second time
// from notes. Organic matter: the word alone, for no level is named as the target.
import { type Class, expectClasses, words } from '../classes.ts';
import { published } from '../helpers.ts';

const source = { id: 'minnesota-field', title: 'Fertilizer guidelines for agronomic crops', publisher: 'University of Minnesota Extension', url: null, mark: 'memory' } as const;
const where = 'Minnesota, US';

const five = (veryLow: string, low: string, medium: string, high: string, veryHigh: string): Class[] => words([veryLow, 'very-low'], [low, 'low'], [medium, 'medium'], [high, 'high'], [veryHigh, 'very-high']);

published(source, () => {
  expectClasses([
    { where, item: 'phosphorus', line: 'Phosphorus # ppm Bray-1', classes: five('0-5', '6-10', '11-15', '16-20', '>=21') },
    { where, item: 'phosphorus', line: 'Phosphorus # ppm Olsen', classes: five('0-3', '4-7', '8-11', '12-15', '>=16') },
    { where, item: 'potassium', line: 'Potassium # ppm ammonium acetate', classes: five('0-40', '41-80', '81-120', '121-160', '>=161') },
    { where, item: 'organic-matter', line: 'Organic matter # %', classes: [['<=3.0', 'low', null], ['3.1-4.5', 'medium', null], ['>4.5', 'high', null]] },
  ]);
});
