// New Zealand avocado industry slides, "Soil and leaf testing: why". Typed a second time from notes of the slides
// (proves typing, not the reading). Ranges without words: inside is at, outside is below or above.
import { type Class, expectClasses } from '../classes.ts';
import { published } from '../helpers.ts';

const source = { id: 'avocado-new-zealand', title: 'Soil and leaf testing: why', publisher: 'New Zealand avocado industry', url: 'https://slideserve.com/manju/soil-and-leaf-testing-why', mark: 'read' } as const;
const at = { where: 'New Zealand', tree: 'avocado, planted 2015, 4 m across' } as const;

const range = (under: string, inside: string, over: string): Class[] => [[under, null, 'below'], [inside, null, 'at'], [over, null, 'above']];

published(source, () => {
  expectClasses([
    { ...at, item: 'ph', line: 'pH #', classes: range('5.5-5.7', '5.8-6.4', '6.5-6.8') },
    { ...at, item: 'phosphorus', line: 'Phosphorus # mg/L Olsen', classes: [['<50', null, 'below'], ['>50', null, 'at']] },
    { ...at, item: 'cec', line: 'CEC # me/100 g', classes: [['<20', null, 'below'], ['>=20', null, 'at']] },
    { ...at, item: 'base-saturation', line: 'Base saturation # %', classes: range('60-69', '70-90', '91-95') },
    { ...at, item: 'saturation-k', line: 'K saturation # %', classes: range('4-5', '6-10', '11-12') },
    { ...at, item: 'saturation-ca', line: 'Ca saturation # %', classes: range('50-54', '55-65', '66-70') },
    { ...at, item: 'saturation-mg', line: 'Mg saturation # %', classes: range('10-11', '12-15', '16-18') },
    { ...at, item: 'zinc', line: 'Zinc # mg/L Mehlich 3', classes: range('3-4.9', '5-15', '16-18') },
    { ...at, item: 'boron', line: 'Boron # mg/L Mehlich 3', classes: range('1.2-1.9', '2-6', '6.1-7') },
  ]);
});
