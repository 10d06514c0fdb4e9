// University of Florida, Mehlich-3 as the extractant, mg/kg. Memory; typed a second time from notes.
import { expectClasses, words } from '../classes.ts';
import { published } from '../helpers.ts';

const source = { id: 'florida-ss620', title: 'Mehlich-3 as the extractant for soils of Florida, SS620', publisher: 'University of Florida IFAS Extension', url: 'https://edis.ifas.ufl.edu/SS620', mark: 'memory' } as const;
const at = { where: 'Florida, US', tree: 'peach, planted 2015, 4 m across' } as const;

published(source, () => {
  expectClasses([
    { ...at, item: 'phosphorus', line: 'Phosphorus # mg/kg Mehlich 3', classes: words(['0-25', 'low'], ['26-45', 'medium'], ['>=46', 'high']) },
    { ...at, item: 'potassium', line: 'Potassium # mg/kg Mehlich 3', classes: words(['0-35', 'low'], ['36-60', 'medium'], ['>=61', 'high']) },
    { ...at, item: 'magnesium', line: 'Magnesium # mg/kg Mehlich 3', classes: words(['0-20', 'low'], ['21-40', 'medium'], ['>=41', 'high']) },
  ]);
});
