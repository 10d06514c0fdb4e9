// University of Massachusetts, sample report of 2014, the rows not in ratings.test.ts. Typed a second time from notes of
// the report (proves typing, not the reading). A range has no words: under it is below, under half of its low end far
// below, over it above (the rule for a printed range). Plums, for apples alone have a New England table of their own.
import { type Class, expectClasses } from '../classes.ts';
import { published } from '../helpers.ts';

const source = {
  id: 'umass-sample-2014', title: 'Soil test report (sample, deciduous trees, shrubs and vines)', publisher: 'University of Massachusetts Soil and Plant Tissue Testing Laboratory',
  url: null, mark: 'read',
} as const;
const at = { where: 'Massachusetts, US', tree: 'plum, planted 2015, 4 m across' } as const;

const range = (under: string, inside: string, over: string, far: string): Class[] => [[far, null, 'far-below'], [under, null, 'below'], [inside, null, 'at'], [over, null, 'above']];

published(source, () => {
  expectClasses([
    { ...at, item: 'sulphur', line: 'Sulfur # ppm Modified Morgan', classes: [['>10', 'optimum', 'at'], ['<10', null, 'below']] },
    // Normal ranges, which the report does not call optimum.
    { ...at, item: 'boron', line: 'Boron # ppm Modified Morgan', classes: range('0.06-0.09', '0.1-0.5', '>0.5', '0.04') },
    { ...at, item: 'manganese', line: 'Manganese # ppm Modified Morgan', classes: range('0.6-1.0', '1.1-6.3', '>6.3', '0.5') },
    { ...at, item: 'zinc', line: 'Zinc # ppm Modified Morgan', classes: range('0.6-0.9', '1.0-7.6', '>7.6', '0.4') },
    { ...at, item: 'copper', line: 'Copper # ppm Modified Morgan', classes: range('0.16-0.29', '0.3-0.6', '>0.6', '0.14') },
    { ...at, item: 'iron', line: 'Iron # ppm Modified Morgan', classes: range('1.4-2.6', '2.7-9.4', '>9.4', '1.3') },
    { ...at, item: 'aluminium', line: 'Aluminum # ppm Modified Morgan', classes: [['<75', null, 'at'], ['>75', null, 'above']] },
    { ...at, item: 'lead', line: 'Lead # ppm Modified Morgan', classes: [['<22', null, 'at'], ['>22', null, 'above']] },
    // Shares of the exchange capacity.
    { ...at, item: 'saturation-ca', line: 'Base saturation: Ca # %', classes: range('26-49', '50-80', '>80', '24') },
    { ...at, item: 'saturation-mg', line: 'Base saturation: Mg # %', classes: range('6-9', '10-30', '>30', '4') },
    { ...at, item: 'saturation-k', line: 'Base saturation: K # %', classes: range('1.1-1.9', '2.0-7.0', '>7.0', '0.9') },
    { ...at, item: 'salts', line: 'Soluble salts 1:2 # dS/m', classes: [['<0.6', null, 'at'], ['>0.6', null, 'above']] },
    { ...at, item: 'phosphorus', line: 'Phosphorus # ppm Modified Morgan', classes: [['4-14', 'optimum', 'at']] },
  ]);
});
