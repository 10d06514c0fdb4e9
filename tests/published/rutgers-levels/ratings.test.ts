// Rutgers NJAES Soil Testing Laboratory, "Relative Levels of Nutrients", Mehlich-3, pounds an acre.
// The figures were typed a second time, from a stored text of the page itself.
// The page calls High the optimum. Values between bands fall on the side away from it.
import { expectTargets, published } from '../helpers.ts';

const source = {
  id: 'rutgers-levels',
  title: 'Relative Levels of Nutrients',
  publisher: 'Rutgers New Jersey Agricultural Experiment Station',
  url: 'https://njaes.rutgers.edu/soil-testing-lab/relative-levels-of-nutrients.php',
  mark: 'read',
} as const;

published(source, () => {
  expectTargets([
    {
      // 0-24, 25-45, 46-71, 72-137, >137
      item: 'phosphorus',
      line: 'Phosphorus # lb/acre Mehlich 3',
      bands: [
        [24, 'far-below'],
        [24.5, 'far-below'],
        [25, 'below'],
        [45, 'below'],
        [46, 'below'],
        [71, 'below'],
        [71.5, 'below'],
        [72, 'at'],
        [137, 'at'],
        [138, 'above'],
      ],
    },
    {
      // 0-40, 41-81, 82-145, 146-277, >277
      item: 'potassium',
      line: 'Potassium # lb/acre Mehlich 3',
      bands: [
        [40, 'far-below'],
        [40.5, 'far-below'],
        [41, 'below'],
        [81, 'below'],
        [82, 'below'],
        [145, 'below'],
        [145.5, 'below'],
        [146, 'at'],
        [277, 'at'],
        [278, 'above'],
      ],
    },
    {
      // 0-45, 46-83, 84-143, 144-295, >295
      item: 'magnesium',
      line: 'Magnesium # lb/acre Mehlich 3',
      bands: [
        [45, 'far-below'],
        [45.5, 'far-below'],
        [46, 'below'],
        [83, 'below'],
        [84, 'below'],
        [143, 'below'],
        [143.5, 'below'],
        [144, 'at'],
        [295, 'at'],
        [296, 'above'],
      ],
    },
    {
      // 0-615, 616-1007, 1008-1400, 1401-1790, >1790
      item: 'calcium',
      line: 'Calcium # lb/acre Mehlich 3',
      bands: [
        [615, 'far-below'],
        [615.5, 'far-below'],
        [616, 'below'],
        [1007, 'below'],
        [1008, 'below'],
        [1400, 'below'],
        [1400.5, 'below'],
        [1401, 'at'],
        [1790, 'at'],
        [1791, 'above'],
      ],
    },
  ]);

  // The same scale for a report in parts per million: half the pounds an acre.
  expectTargets([
    {
      item: 'phosphorus',
      line: 'Phosphorus # ppm Mehlich 3',
      bands: [
        [12, 'far-below'],
        [30, 'below'],
        [35.5, 'below'],
        [36, 'at'],
        [68.5, 'at'],
        [69, 'above'],
      ],
    },
    {
      item: 'potassium',
      line: 'Potassium # ppm Mehlich 3',
      bands: [
        [20, 'far-below'],
        [72.5, 'below'],
        [73, 'at'],
        [138.5, 'at'],
        [139, 'above'],
        [150, 'above'],
      ],
    },
  ]);
});
