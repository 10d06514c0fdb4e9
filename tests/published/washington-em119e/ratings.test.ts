// Washington State University, EM119E, table 1, "Soil Recommended Ranges for Washington Tree Fruit
// Production", December 2022. The figures were typed a second time, from a stored text of the page itself.
// Values between the printed columns fall on the side away from the target.
import { expectTargets, published } from '../helpers.ts';

const source = {
  id: 'washington-em119e',
  title: 'Soil Recommended Ranges for Washington Tree Fruit Production',
  publisher: 'Washington State University Extension',
  url: 'https://treefruit.wsu.edu/?p=40864',
  mark: 'read',
} as const;

published(source, () => {
  expectTargets([
    {
      // low <10, optimal 15-40, excessive >50
      item: 'phosphorus',
      line: 'Phosphorus # ppm Olsen',
      bands: [
        [9.9, 'below'],
        [10, 'below'],
        [14.9, 'below'],
        [15, 'at'],
        [40, 'at'],
        [40.1, 'above'],
        [50, 'above'],
        [50.1, 'above'],
      ],
    },
    {
      // low <120, optimal 150-250, excessive >300
      item: 'potassium',
      line: 'Potassium # ppm ammonium acetate',
      bands: [
        [119, 'below'],
        [120, 'below'],
        [149, 'below'],
        [150, 'at'],
        [250, 'at'],
        [251, 'above'],
        [300, 'above'],
        [301, 'above'],
      ],
    },
    {
      // low <3.0, optimal 4.1-20; no upper class
      item: 'calcium',
      line: 'Calcium # meq/100 g ammonium acetate',
      bands: [
        [2.9, 'below'],
        [3, 'below'],
        [4, 'below'],
        [4.1, 'at'],
        [20, 'at'],
      ],
    },
    {
      // low <0.5, optimal 0.5-2.5, excessive >2.5
      item: 'magnesium',
      line: 'Magnesium # meq/100 g ammonium acetate',
      bands: [
        [0.49, 'below'],
        [0.5, 'at'],
        [2.5, 'at'],
        [2.6, 'above'],
      ],
    },
    {
      // low <5.0, optimal 6.0-7.5, excessive >8.0
      item: 'ph',
      line: 'pH #',
      bands: [
        [4.9, 'below'],
        [5, 'below'],
        [5.9, 'below'],
        [6, 'at'],
        [7.5, 'at'],
        [7.6, 'above'],
        [8, 'above'],
        [8.1, 'above'],
      ],
    },
  ]);

  // The same table's potassium in milliequivalents: low <0.3, optimal 0.4-0.6, excessive >0.7.
  expectTargets([
    {
      item: 'potassium',
      line: 'Potassium # meq/100 g ammonium acetate',
      bands: [
        [0.25, 'below'],
        [0.4, 'at'],
        [0.5, 'at'],
        [0.6, 'at'],
        [0.8, 'above'],
      ],
    },
  ]);
});
