// University of Connecticut, Soil Test Results for Agronomic Crops, Modified Morgan, pounds an acre.
// Typed a second time from a stored text of the page itself. Plums, for apples alone have a New England table.
// Under half of the optimum's low end is far below (the rule for a printed range).
import { type Class, expectClasses } from '../classes.ts';
import { published } from '../helpers.ts';

const source = {
  id: 'connecticut-agronomic', title: 'Soil Test Results for Agronomic Crops', publisher: 'University of Connecticut Soil Nutrient Analysis Laboratory',
  url: 'https://soiltesting.cahnr.uconn.edu/soil-test-results-for-agronomic-crops', mark: 'read',
} as const;
const at = { where: 'Connecticut, US', tree: 'plum, planted 2015, 4 m across' } as const;

const three = (far: string, below: string, optimum: string, above: string): Class[] => [[far, null, 'far-below'], [below, 'low', 'below'], [optimum, 'optimum', 'at'], [above, 'high', 'above']];

published(source, () => {
  expectClasses([
    { ...at, item: 'calcium', line: 'Calcium # lb/acre Modified Morgan', classes: three('700-899', '900-1799', '1800-2399', '>=2400') },
    { ...at, item: 'magnesium', line: 'Magnesium # lb/acre Modified Morgan', classes: three('70-87', '88-174', '175-249', '>=250') },
    { ...at, item: 'phosphorus', line: 'Phosphorus # lb/acre Modified Morgan', classes: three('5-6.9', '7-13', '14-20', '>=21') },
    { ...at, item: 'potassium', line: 'Potassium # lb/acre Modified Morgan', classes: three('100-124', '125-249', '250-349', '>=350') },
  ]);
});
