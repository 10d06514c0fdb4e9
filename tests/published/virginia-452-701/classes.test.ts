// Virginia Cooperative Extension, 452-701, Mehlich-1, pounds an acre. The figures are memory (typed a second time from
// notes); the words were read on a stored text of the page: low almost always responds, medium sometimes, high and very
// high usually not. It does not say whether high is the level to keep, so high is tested for its word alone.
import { type Class, expectClasses } from '../classes.ts';
import { published } from '../helpers.ts';

const source = { id: 'virginia-452-701', title: 'Explanation of Soil Tests', publisher: 'Virginia Cooperative Extension', url: 'https://pubs.ext.vt.edu/452/452-701/452-701.html', mark: 'memory' } as const;
const where = 'Virginia, US';

const four = (low: string, medium: string, high: string, veryHigh: string): Class[] => [[low, 'low', 'below'], [medium, 'medium', 'below'], [high, 'high', null], [veryHigh, 'very-high', 'above']];

published(source, () => {
  expectClasses([
    { where, item: 'phosphorus', line: 'P # lb/A Mehlich 1', classes: four('0-11', '12-35', '36-110', '>=111') },
    { where, item: 'potassium', line: 'K # lb/A Mehlich 1', classes: four('0-75', '76-175', '176-310', '>=311') },
    { where, item: 'calcium', line: 'Ca # lb/A Mehlich 1', classes: four('0-720', '721-1440', '1441-2160', '>=2161') },
    { where, item: 'magnesium', line: 'Mg # lb/A Mehlich 1', classes: four('0-72', '73-144', '145-216', '>=217') },
  ]);
});
