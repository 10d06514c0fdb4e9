// Oregon State University, EC 1478. Memory; typed a second time from notes. Olsen phosphorus of eastern Oregon differs
// between editions (medium to 20 and high to 40 in 1999, to 25 and 50 later): only what both give the same word is tried.
// High is followed by excessive, so excessive is very high.
import { expectClasses, words } from '../classes.ts';
import { published } from '../helpers.ts';

const source = { id: 'oregon-ec1478', title: 'EC 1478, Soil Test Interpretation Guide', publisher: 'Oregon State University Extension', url: null, mark: 'memory' } as const;
const where = 'Oregon, US';

published(source, () => {
  expectClasses([
    { where, item: 'phosphorus', line: 'Phosphorus # ppm Bray-1', classes: words(['<20', 'low'], ['21-40', 'medium'], ['41-100', 'high'], ['>100', 'very-high']) },
    { where, item: 'phosphorus', line: 'Phosphorus # ppm Olsen', classes: words(['<10', 'low'], ['11-20', 'medium'], ['26-40', 'high'], ['>50', 'very-high']) },
    { where, item: 'potassium', line: 'Potassium # ppm ammonium acetate', classes: words(['<150', 'low'], ['151-250', 'medium'], ['251-800', 'high'], ['>800', 'very-high']) },
    { where, item: 'calcium', line: 'Calcium # meq/100 g ammonium acetate', classes: words(['<5', 'low'], ['5.1-10', 'medium'], ['>10', 'high']) },
    { where, item: 'magnesium', line: 'Magnesium # meq/100 g ammonium acetate', classes: words(['<0.5', 'low'], ['0.6-1.5', 'medium'], ['>1.5', 'high']) },
    { where, item: 'boron', line: 'Boron # ppm hot water', classes: words(['<0.2', 'very-low'], ['0.3-0.5', 'low'], ['0.6-1.0', 'medium'], ['1.1-2.0', 'high'], ['>2.0', 'very-high']) },
  ]);
});
