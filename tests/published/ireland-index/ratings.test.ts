// Fertilizer Association of Ireland, "Soil Index System", Morgan's extract, milligrams a litre;
// phosphorus by the tillage column. Typed a second time, from a stored text of the page itself.
// Index 3 is the target; values between bands fall on the side away from it.
// Magnesium 50 stands in two bands on the page and is left out.
import { expectTargets, published } from '../helpers.ts';

const source = {
  id: 'ireland-index',
  title: 'Soil Index System',
  publisher: 'Fertilizer Association of Ireland',
  url: 'https://www.fertilizer-assoc.ie/soil-index-system/',
  mark: 'read',
} as const;

published(source, () => {
  expectTargets([
    {
      // 0-3.0, 3.1-6.0, 6.1-10.0, >10.0
      item: 'phosphorus',
      line: 'Phosphorus # mg/L Morgan',
      bands: [
        [3, 'far-below'],
        [3.05, 'far-below'],
        [3.1, 'below'],
        [6, 'below'],
        [6.05, 'below'],
        [6.1, 'at'],
        [10, 'at'],
        [10.1, 'above'],
      ],
    },
    {
      // 0-50, 51-100, 101-150, >150
      item: 'potassium',
      line: 'Potassium # mg/L Morgan',
      bands: [
        [50, 'far-below'],
        [50.5, 'far-below'],
        [51, 'below'],
        [100, 'below'],
        [100.5, 'below'],
        [101, 'at'],
        [150, 'at'],
        [151, 'above'],
      ],
    },
    {
      // 0-25, 26-50, 50-100, >100
      item: 'magnesium',
      line: 'Magnesium # mg/L Morgan',
      bands: [
        [25, 'far-below'],
        [25.5, 'far-below'],
        [26, 'below'],
        [49, 'below'],
        [51, 'at'],
        [100, 'at'],
        [101, 'above'],
      ],
    },
  ]);

  // An index printed by the laboratory is taken as it stands.
  expectTargets(
    [
      {
        item: 'phosphorus',
        line: 'Phosphorus index #',
        bands: [
          [1, 'far-below'],
          [2, 'below'],
          [3, 'at'],
          [4, 'above'],
        ],
      },
    ],
    '',
    {
      'orchard.yaml':
        'orchard: Cross\nwhere: Ireland\nbud-break: 12 April\nfirst-frost: 12 October\n' +
        'trees:\n  Gate apple: apple, semi-dwarf, planted 2015, 4 m across\n',
    },
  );
});
