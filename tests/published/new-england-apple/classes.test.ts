// New England Tree Fruit Management Guide, apples: nutrient management, Modified Morgan, pounds an acre.
// Typed a second time from a stored text of the page itself, which calls the figures optimum levels: pH 6.5 to 7.0
// non-bearing, 6.0 to 6.5 established; established phosphorus 9, potassium 240. One level, not classes: under it is
// below, and it itself is at; what lies over it, or under half of it, is not tried.
import { expectClasses } from '../classes.ts';
import { published } from '../helpers.ts';

const source = {
  id: 'new-england-apple', title: 'Apples: nutrient management', publisher: 'New England Tree Fruit Management Guide', url: 'https://netreefruit.org/apples/nutrient-management', mark: 'read',
} as const;
const bearing = 'apple, planted 2015, 4 m across';

published(source, () => {
  // In Massachusetts the state lab's own ranges for woody plants lead. The row for trees that do not bear yet is not
  // used: a sample may serve trees of any age.
  for (const where of ['Connecticut, US', 'Vermont, US']) {
    expectClasses([
      { where, tree: bearing, item: 'phosphorus', line: 'Phosphorus # lb/acre Modified Morgan', classes: [['<9', null, 'below'], ['9', null, 'at']] },
      { where, tree: bearing, item: 'potassium', line: 'Potassium # lb/acre Modified Morgan', classes: [['<240', null, 'below'], ['240', null, 'at']] },
      { where, tree: bearing, item: 'ph', line: 'pH #', classes: [['5.8-5.9', null, 'below'], ['6.0-6.5', null, 'at'], ['6.6-6.9', null, 'above']] },
    ]);
  }
});
