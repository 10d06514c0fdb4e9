// gardeningknowhow.com, naming the California Rare Fruit Growers, "Loquat tree (question and answer)". The figures were typed a second time, from a stored text of the page.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'crfg-loquat',
  title: 'Loquat tree (question and answer)',
  publisher: 'gardeningknowhow.com, naming the California Rare Fruit Growers',
  url: 'https://questions.gardeningknowhow.com/loquat-tree-8/',
  mark: 'read',
} as const;

published(source, () => {
  // A tree 8 to 10 ft tall: 1 lb of 6-6-6, three times a year.
  expectFigures(source.id, [
    ['loquat, planted 2016, 9 ft high, bearing, shoots 1 in', [3 * 1 * 0.06 * LB], { where: 'California, US' }],
  ]);
});
