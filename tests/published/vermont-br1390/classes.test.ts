// University of Vermont, BR 1390, Modified Morgan, ppm. Memory; typed a second time from notes. Plums, for apples alone
// have a New England table. High is followed by excessive, so excessive is very high.
import { expectClasses, words } from '../classes.ts';
import { published } from '../helpers.ts';

const source = { id: 'vermont-br1390', title: 'BR 1390, Nutrient Recommendations for Field Crops in Vermont', publisher: 'University of Vermont Extension', url: null, mark: 'memory' } as const;
const at = { where: 'Vermont, US', tree: 'plum, planted 2015, 4 m across' } as const;

published(source, () => {
  expectClasses([
    { ...at, item: 'phosphorus', line: 'Phosphorus # ppm Modified Morgan', classes: words(['0-2.0', 'low'], ['2.1-4.0', 'medium'], ['4.1-7.0', 'optimum'], ['7.1-20', 'high'], ['>20', 'very-high']) },
    { ...at, item: 'potassium', line: 'Potassium # ppm Modified Morgan', classes: words(['0-50', 'low'], ['51-100', 'medium'], ['101-130', 'optimum'], ['131-160', 'high'], ['>160', 'very-high']) },
    { ...at, item: 'magnesium', line: 'Magnesium # ppm Modified Morgan', classes: words(['0-35', 'low'], ['36-50', 'medium'], ['51-100', 'optimum'], ['>100', 'high']) },
  ]);
});
