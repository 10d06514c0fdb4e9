// Royal Horticultural Society, "Quince (Cydonia oblonga), advice profile". The figures were typed a second time, from a stored text of the page.
import { crown, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'rhs-quince',
  title: 'Quince (Cydonia oblonga), advice profile',
  publisher: 'Royal Horticultural Society',
  url: 'https://www.rhs.org.uk/advice/profile?pid=298',
  mark: 'read',
} as const;

published(source, () => {
  // February: Growmore (7 % N), 100 g a square metre; late March: sulphate of ammonia (21 % N), 35 g more.
  expectFigures(source.id, [
    ['quince, planted 2016, 12 ft across, bearing, shoots 1 in', [crown(12) * (100 * 0.07 + 35 * 0.21)], { where: 'England, UK' }],
    ['quince, planted 2016, 15 ft across, bearing, shoots 1 in', [crown(15) * (100 * 0.07 + 35 * 0.21)], { where: 'England, UK' }],
  ]);
});
