// What a lab recommends, as its sheets print it (practice): amounts by their own arithmetic, a pound being 16 oz, a kilo 1,000 g.
import { expect, test } from 'vitest';
import { adviceOf, amountsIn } from '../../src/soil/advice.ts';

const said = (text: string): string => amountsIn(text, 7).map((a) => `${Number(a.value.toFixed(4))} ${a.unit} ${a.of}${a.per === 'tree' ? ' a tree' : ''}${a.product ? ` in ${a.product}` : ''}`).join('; ');

test.each([
  // Amount, nutrient, area in their orders.
  ['2 lb of actual N per 1000 sq ft', '2 lb/1000 sq ft N'], ['Apply 60 lbs nitrogen per acre', '60 lb/acre N'], ['2 lb/1,000 sq. ft. of N', '2 lb/1000 sq ft N'], ['N: 60 lb/acre', '60 lb/acre N'], ['Phosphate 40 pounds/ac', '40 lb/acre P2O5'], ['Potash (K2O) 80 lb/a', '80 lb/acre K2O'], ['5 g N/m2, 8 g K2O/m2', '5 g/m2 N; 8 g/m2 K2O'], ['N 60 lb/acre, P2O5 40 lb/acre, K2O 80 lb/acre', '60 lb/acre N; 40 lb/acre P2O5; 80 lb/acre K2O'],
  ['30 lb P per acre', '30 lb/acre P'], ['30 lb phosphorus per acre', '30 lb/acre P'], ['30 lb K per acre', '30 lb/acre K'], ['30 lb potassium per acre', '30 lb/acre K'], ['30 lb P2O5 per acre', '30 lb/acre P2O5'],
  // Weights and areas.
  ['0.5 lb N per 100 sq ft', '0.5 lb/100 sq ft N'], ['0.5 lb N per 100 square feet', '0.5 lb/100 sq ft N'], ['0.02 lb N per square foot', '2 lb/100 sq ft N'], ['8 oz N per 1000 ft2', '0.5 lb/1000 sq ft N'], ['4 ounces N per tree', '0.25 lb N a tree'], ['2 lb N per plant', '2 lb N a tree'], ['50 g N je m2', '50 g/m2 N'], ['60 kg N/ha', '60 kg/ha N'], ['60 kilos N per hectare', '60 kg/ha N'], ['60000 g N per ha', '60 kg/ha N'], ['0.05 kg N per square metre', '50 g/m2 N'], ['50 grams N per bush', '50 g N a tree'], ['0.5 kg N for each tree', '500 g N a tree'],
  // Fractions and spans: the lower end.
  ['1/2 lb N per tree', '0.5 lb N a tree'], ['1 1/2 lb N per tree', '1.5 lb N a tree'], ['1-2 lb N per tree', '1 lb N a tree'], ['1 to 2 lb N per tree', '1 lb N a tree'], ['0,5 kg N pro Baum', ''], ['4,5 g N/m2', '4.5 g/m2 N'],
  // Products: each of its nutrients, none of what is none.
  ['10-10-10 at 10 lb per 1000 sq ft', '1 lb/1000 sq ft N in 10-10-10; 1 lb/1000 sq ft P2O5 in 10-10-10; 1 lb/1000 sq ft K2O in 10-10-10'], ['5 lb of 21-0-0 per 1000 sq ft', '1.05 lb/1000 sq ft N in 21-0-0'], ['10 lb 0-46-0 per acre', '4.6 lb/acre P2O5 in 0-46-0'], ['10 lb 0-0-60.5 per acre', '6.05 lb/acre K2O in 0-0-60.5'], ['10 lb 50-50-50 per acre', ''],
  // Pounds go with acres and feet, grams with metres; what goes with neither is left.
  ['5 lb N per m2', ''], ['5 lb N per ha', ''], ['5 g N per acre', ''], ['5 g N per 1000 sq ft', ''], ['5 g N per 100 sq ft', ''],
  // What is forbidden, bounded, past, or of something else; no amount, no area, no nutrient.
  ...['Do not apply 60 lb N per acre', 'Never more than 60 lb N per acre', 'No more than 60 lb N per acre', 'At most 60 lb N per acre', 'Up to 60 lb N per acre', 'Lawns: 2 lb N per 1000 sq ft', 'Corn 60 lb N per acre', 'Last year 60 lb N per acre', 'Applied 60 lb N per acre', 'The crop removes 60 lb N per acre', 'Compost brings 60 lb N per acre', '60 lb per acre', '60 lb N', 'N per acre', '60 lb lime per acre', '-60 lb N per acre', '1e2 lb N per acre', `60 lb N per acre ${'x'.repeat(400)}`].map((t): [string, string] => [t, '']),
])('%s: %s', (text, expected) => { expect(said(text)).toBe(expected); });

test('of a sample\'s lines in their order, each with its line', () => {
  const sample = { name: 'A', readings: [], unread: [{ line: 3, text: 'Dear grower' }, { line: 5, text: 'N 60 lb/acre' }, { line: 9, text: 'K2O 80 lb/acre' }] };
  expect(adviceOf(sample).map((a) => [a.line, a.of, a.value])).toEqual([[5, 'N', 60], [9, 'K2O', 80]]);
  expect(said('K2O: 80 lb/acre and 60 lb N per acre')).toBe('80 lb/acre K2O; 60 lb/acre N');
});
