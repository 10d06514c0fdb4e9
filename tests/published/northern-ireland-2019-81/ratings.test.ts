// Statutory Rules of Northern Ireland 2019 No. 81, schedule 5, paragraph 10: index of Olsen phosphorus,
// milligrams a litre. Typed a second time, from a stored text of the paragraph itself.
// Index 0 is far below, 1 below, 2 the target, 3 and up above; between bands, the side away from 2.
import { expectTargets, published } from '../helpers.ts';

const source = {
  id: 'northern-ireland-2019-81',
  title: 'NISR 2019/81, schedule 5, paragraph 10',
  publisher: 'legislation.gov.uk',
  url: 'https://www.legislation.gov.uk/nisr/2019/81/schedule/5/paragraph/10/made',
  mark: 'read',
} as const;

const files = {
  'orchard.yaml':
    'orchard: Lane end\nwhere: UK\nbud-break: 12 April\nfirst-frost: 12 October\n' +
    'trees:\n  Gate apple: apple, semi-dwarf, planted 2015, 4 m across\n',
};

published(source, () => {
  expectTargets(
    [
      {
        // 0-9, 10-15, 16-20 (2-), 21-25 (2+), 26-45, 46-70
        item: 'phosphorus',
        line: 'Phosphorus # mg/L Olsen',
        bands: [
          [9, 'far-below'],
          [9.5, 'far-below'],
          [10, 'below'],
          [15, 'below'],
          [15.5, 'below'],
          [16, 'at'],
          [20, 'at'],
          [21, 'at'],
          [25, 'at'],
          [25.5, 'above'],
          [26, 'above'],
          [45, 'above'],
          [46, 'above'],
          [70, 'above'],
        ],
      },
    ],
    '',
    files,
  );

  // An index printed by the laboratory is taken as it stands.
  expectTargets(
    [
      {
        item: 'phosphorus',
        line: 'Phosphorus index #',
        bands: [
          [0, 'far-below'],
          [1, 'below'],
          [2, 'at'],
          [3, 'above'],
          [4, 'above'],
        ],
      },
    ],
    '',
    files,
  );
});
