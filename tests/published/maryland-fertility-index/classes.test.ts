// Maryland and Delaware fertility index value: 0-25 low, 26-50 medium, 51-100 optimum, above 100 excessive. Memory;
// typed a second time from notes. Excessive stands over optimum with no high between; its word is not tested.
import { type Class, expectClasses } from '../classes.ts';
import { published } from '../helpers.ts';

const source = { id: 'maryland-fertility-index', title: 'Fertility index value, categories', publisher: 'Universities of Maryland and Delaware', url: null, mark: 'memory' } as const;

const classes: readonly Class[] = [['0-25', 'low', 'below'], ['26-50', 'medium', 'below'], ['51-100', 'optimum', 'at'], ['>=101', null, 'above']];

published(source, () => {
  for (const where of ['Maryland, US', 'Delaware, US']) {
    expectClasses([
      { where, item: 'phosphorus', line: 'Phosphorus index #', classes },
      { where, item: 'potassium', line: 'Potassium index #', classes },
    ]);
  }
  // The value under its own name.
  expectClasses([{ where: 'Maryland, US', item: 'phosphorus', line: 'P FIV #', classes: [['12', 'low', 'below'], ['38', 'medium', 'below'], ['75', 'optimum', 'at'], ['110', null, 'above']] }]);
});
