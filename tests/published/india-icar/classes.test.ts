// Indian soil-test manuals (ICAR): organic carbon, Olsen phosphorus and potassium, kg/ha of the element. Memory; typed a
// second time from notes. The read table adapted from Tandon leads at home for carbon, so carbon is not tried here.
import { expectClasses, type Class } from '../classes.ts';
import { published } from '../helpers.ts';

const source = { id: 'india-icar', title: 'Soil-test manuals', publisher: 'Indian Council of Agricultural Research', url: null, mark: 'memory' } as const;
const where = 'India';

const three = (low: string, medium: string, high: string): Class[] => [[low, 'low', null], [medium, 'medium', null], [high, 'high', null]];

published(source, () => {
  expectClasses([
    { where, item: 'phosphorus', line: 'Phosphorus # kg/ha Olsen', classes: three('8-10', '11-25', '26-34') },
    { where, item: 'potassium', line: 'Potassium # kg/ha ammonium acetate', classes: three('101-108', '109-280', '281-298') },
  ]);
});
