// University of Georgia crop sheets, Mehlich-1, pounds an acre, coastal plain: the words of the classes whose sides
// ratings.test.ts holds. Typed a second time from notes (proves typing); phosphorus and magnesium of sheet 119 were seen
// in a stored text, potassium is memory too. The piedmont's own classes cannot be asked for: a place names no region.
import { expectClasses, words } from '../classes.ts';
import { published } from '../helpers.ts';

const source = {
  id: 'georgia-crop-sheets', title: 'Crop sheets 119, 073, 074', publisher: 'University of Georgia Agricultural and Environmental Services Laboratories',
  url: 'http://aesl.ces.uga.edu/scripts/crop.prg?119', mark: 'read',
} as const;
const at = { where: 'Georgia, US', tree: 'peach, planted 2015, 4 m across' } as const;

published(source, () => {
  expectClasses([
    { ...at, item: 'phosphorus', line: 'Phosphorus # lb/acre Mehlich 1', classes: words(['0-30', 'low'], ['31-60', 'medium'], ['61-100', 'high'], ['>=101', 'very-high']) },
    { ...at, item: 'potassium', line: 'Potassium # lb/acre Mehlich 1', classes: words(['0-60', 'low'], ['61-150', 'medium'], ['151-250', 'high'], ['>=251', 'very-high']) },
    { ...at, item: 'magnesium', line: 'Magnesium # lb/acre Mehlich 1', classes: words(['0-60', 'low'], ['61-120', 'medium'], ['>=121', 'high']) },
  ]);
});
