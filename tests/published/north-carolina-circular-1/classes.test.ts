// North Carolina Department of Agriculture, Circular 1: index 0-10 very low, 11-25 low, 26-50 medium, 51-100 high, above
// 100 very high. Memory; typed a second time from notes. Index 100 is 120 mg/dm3 of phosphorus and 195.5 of potassium;
// one step of the index of manganese is 0.16, of zinc 0.04, of copper 0.02, of sulphur 0.48 mg/dm3. Edges in mg/dm3 are those
// of the index, rounded inward. Whether high is the level to keep the words do not say: its word alone is tested.
import { type Class, expectClasses } from '../classes.ts';
import { published } from '../helpers.ts';

const source = { id: 'north-carolina-circular-1', title: 'Crop Fertilization Based on North Carolina Soil Tests, Circular 1', publisher: 'North Carolina Department of Agriculture', url: null, mark: 'memory' } as const;
const where = 'North Carolina, US';

type Edges = readonly [veryLow: string, low: string, medium: string, high: string, veryHigh: string];
const five = ([veryLow, low, medium, high, veryHigh]: Edges): Class[] =>
  [[veryLow, 'very-low', 'far-below'], [low, 'low', 'below'], [medium, 'medium', 'below'], [high, 'high', null], [veryHigh, 'very-high', 'above']];

const index = five(['0-10', '11-25', '26-50', '51-100', '>=101']);

published(source, () => {
  expectClasses([
    { where, item: 'phosphorus', line: 'P-I #', classes: index },
    { where, item: 'potassium', line: 'K-I #', classes: index },
    { where, item: 'manganese', line: 'Mn-I #', classes: index },
    { where, item: 'zinc', line: 'Zn-I #', classes: index },
    { where, item: 'copper', line: 'Cu-I #', classes: index },
    { where, item: 'sulphur', line: 'S-I #', classes: index },
    { where, item: 'phosphorus', line: 'Phosphorus # mg/dm3 Mehlich 3', classes: five(['6-12', '13.2-30', '31.2-60', '61.2-120', '>=121.2']) },
    { where, item: 'potassium', line: 'Potassium # mg/dm3 Mehlich 3', classes: five(['9.7-19.5', '21.6-48.8', '50.9-97.7', '99.8-195.5', '>=197.5']) },
    { where, item: 'manganese', line: 'Manganese # mg/dm3 Mehlich 3', classes: five(['0.8-1.6', '1.76-4', '4.16-8', '8.16-16', '>=16.2']) },
    { where, item: 'zinc', line: 'Zinc # mg/dm3 Mehlich 3', classes: five(['0.2-0.4', '0.44-1', '1.04-2', '2.04-4', '>=4.1']) },
    { where, item: 'copper', line: 'Copper # mg/dm3 Mehlich 3', classes: five(['0.1-0.2', '0.22-0.5', '0.52-1', '1.02-2', '>=2.1']) },
    { where, item: 'sulphur', line: 'Sulfur # mg/dm3 Mehlich 3', classes: five(['2.4-4.8', '5.28-12', '12.48-24', '24.48-48', '>=48.5']) },
  ]);
});
