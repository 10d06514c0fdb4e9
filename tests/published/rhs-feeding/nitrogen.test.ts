// Royal Horticultural Society, "Fruit trees: feeding and mulching".
// The rates were typed a second time, from a stored text of the page itself;
// the grade of the feed it names, 7-7-7, from research notes on trade pages.
import { crown, expectFigures, expectNeeds, published } from '../helpers.ts';

const source = {
  id: 'rhs-feeding',
  title: 'Fruit trees: feeding and mulching',
  publisher: 'Royal Horticultural Society',
  url: 'https://www.rhs.org.uk/fruit/fruit-trees/feeding-and-mulching',
  mark: 'derived',
} as const;

const bare = 100 * 0.07;
const grass = 140 * 0.07;

published(source, () => {
  // 100 g/m² for dessert apple on bare soil, 140 in grass; young pear with the apples;
  // 140 for established pear and for stone fruit.
  expectFigures(source.id, [
    ['apple, semi-dwarf, planted 2014, 12 ft across, bare, shoots 4 in', [bare * crown(12)]],
    ['apple, semi-dwarf, planted 2014, 12 ft across, grass, shoots 4 in', [grass * crown(12)]],
    ['pear, semi-dwarf, planted 2023, not bearing, 10 ft across, bare, shoots 4 in', [bare * crown(10)]],
    ['pear, semi-dwarf, planted 2014, 10 ft across, bare, shoots 4 in', [grass * crown(10)]],
    ['plum, planted 2014, 10 ft across, bare, shoots 4 in', [grass * crown(10)]],
    ['peach, planted 2014, 10 ft across, bare, shoots 4 in', [grass * crown(10)]],
    ['sweet cherry, planted 2014, 15 ft across, bare, shoots 4 in', [grass * crown(15)]],
  ]);

  // Under a small crown the area rate is the smallest figure.
  expectNeeds([
    ['apple, semi-dwarf, planted 2014, 12 ft across, bare, shoots 4 in', { N: bare * crown(12) }],
    ['apple, semi-dwarf, planted 2014, 12 ft across, mulch, shoots 4 in', { N: bare * crown(12) }],
    ['apple, semi-dwarf, planted 2014, 12 ft across, grass, shoots 4 in', { N: grass * crown(12) }],
    ['pear, semi-dwarf, planted 2023, not bearing, 10 ft across, bare, shoots 4 in', { N: bare * crown(10) }],
    ['pear, semi-dwarf, planted 2014, 10 ft across, bare, shoots 4 in', { N: grass * crown(10) }],
    ['plum, planted 2014, 10 ft across, bare, shoots 4 in', { N: grass * crown(10) }],
  ]);
});
