// Colorado State University fact sheets, AB-DTPA, ppm. Memory; typed a second time from notes. Marginal is taken as
// medium; adequate is the end of the need, so at the target, whatever its word.
import { type Class, expectClasses, words } from '../classes.ts';
import { published } from '../helpers.ts';

const source = { id: 'colorado-soil-tests', title: 'Fact sheets on AB-DTPA soil tests', publisher: 'Colorado State University Extension', url: null, mark: 'memory' } as const;
const where = 'Colorado, US';

const three = (low: string, marginal: string, adequate: string): Class[] => [[low, 'low', 'below'], [marginal, 'medium', 'below'], [adequate, null, 'at']];

published(source, () => {
  expectClasses([
    { where, item: 'phosphorus', line: 'Phosphorus # ppm AB-DTPA', classes: words(['0-3', 'low'], ['4-7', 'medium'], ['8-11', 'high'], ['>=12', 'very-high']) },
    { where, item: 'potassium', line: 'Potassium # ppm AB-DTPA', classes: words(['0-60', 'low'], ['61-120', 'medium'], ['>=121', 'high']) },
    { where, item: 'zinc', line: 'Zinc # ppm AB-DTPA', classes: three('<=0.9', '1.0-1.5', '>1.5') },
    { where, item: 'iron', line: 'Iron # ppm AB-DTPA', classes: three('<=3.0', '3.1-5.0', '>5.0') },
  ]);
});
