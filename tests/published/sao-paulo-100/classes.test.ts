// Instituto Agronômico de Campinas, Boletim 100, perennial crops. Memory; typed a second time from notes. The words do
// not say which class is the target (medium and high are both fed less, very high not): the word alone is tested.
import { type Class, expectClasses } from '../classes.ts';
import { published } from '../helpers.ts';

const source = { id: 'sao-paulo-100', title: 'Boletim 100', publisher: 'Instituto Agronômico de Campinas, São Paulo', url: null, mark: 'memory' } as const;
const at = { where: 'São Paulo, Brazil', tree: 'orange, planted 2015, 4 m across' } as const;

const five = (veryLow: string, low: string, medium: string, high: string, veryHigh: string): Class[] =>
  [[veryLow, 'very-low', null], [low, 'low', null], [medium, 'medium', null], [high, 'high', null], [veryHigh, 'very-high', null]];
const three = (low: string, medium: string, high: string): Class[] => [[low, 'low', null], [medium, 'medium', null], [high, 'high', null]];

published(source, () => {
  expectClasses([
    { ...at, item: 'phosphorus', line: 'Fósforo # mg/dm3 resina', classes: five('0-5', '6-12', '13-30', '31-60', '>60') },
    { ...at, item: 'potassium', line: 'Potássio # mmolc/dm3 resina', classes: five('0-0.7', '0.8-1.5', '1.6-3.0', '3.1-6.0', '>6.0') },
    { ...at, item: 'magnesium', line: 'Magnésio # mmolc/dm3 resina', classes: three('0-4', '5-8', '>8') },
    { ...at, item: 'boron', line: 'Boro # mg/dm3 água quente', classes: three('0-0.20', '0.21-0.60', '>0.60') },
    { ...at, item: 'zinc', line: 'Zinco # mg/dm3 DTPA', classes: three('0-0.5', '0.6-1.2', '>1.2') },
  ]);
});
