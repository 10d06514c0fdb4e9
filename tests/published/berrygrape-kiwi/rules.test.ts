// Northwest Berry & Grape Information Network (Oregon State University), "Fertilization of Established Kiwifruit Vines". The figures were typed a second time, from a stored text of the page.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'berrygrape-kiwi',
  title: 'Fertilization of Established Kiwifruit Vines',
  publisher: 'Northwest Berry & Grape Information Network (Oregon State University)',
  url: 'http://berrygrape.org/fertilization-of-established-kiwifruit-vines/',
  mark: 'read',
} as const;

published(source, () => {
  // Mature vines: about a pound of N a year, or 190 lb per acre at 15 x 15 ft.
  expectFigures(source.id, [
    ['kiwifruit, planted 2014, bearing, shoots 1 in', [1 * LB], { where: 'Oregon, US' }],
    [
      'kiwifruit, planted 2014, bearing, spacing 15 x 15 ft, shoots 1 in',
      [[1 * LB, ((15 * 15) / 43560) * 190 * LB]],
      { where: 'Oregon, US' },
    ],
  ]);
});
