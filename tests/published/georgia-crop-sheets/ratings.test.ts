// University of Georgia Agricultural and Environmental Services Laboratories, crop sheets, Mehlich-1,
// pounds an acre, coastal plain. Phosphorus and magnesium were typed a second time from a stored text of
// sheet 119; general potassium from research notes on sheets 073 and 074, which were not opened.
// The sheets name no target: low and medium are below it, high and very high above.
import { expectTargets, published } from '../helpers.ts';

const source = {
  id: 'georgia-crop-sheets',
  title: 'Crop sheets 119, 073, 074',
  publisher: 'University of Georgia Agricultural and Environmental Services Laboratories',
  url: 'http://aesl.ces.uga.edu/scripts/crop.prg?119',
  mark: 'read',
} as const;

published(source, () => {
  expectTargets([
    {
      // low 0-30, medium 31-60, high 61-100, very high over 100
      item: 'phosphorus',
      line: 'Phosphorus # lb/acre Mehlich 1',
      bands: [
        [30, 'below'],
        [31, 'below'],
        [60, 'below'],
        [61, 'above'],
        [100, 'above'],
        [101, 'above'],
      ],
    },
    {
      // low to 60, medium to 150, high to 250, very high over 250
      item: 'potassium',
      line: 'Potassium # lb/acre Mehlich 1',
      bands: [
        [60, 'below'],
        [61, 'below'],
        [150, 'below'],
        [151, 'above'],
        [250, 'above'],
        [251, 'above'],
      ],
    },
    {
      // low 0-60, medium 61-120, high over 120
      item: 'magnesium',
      line: 'Magnesium # lb/acre Mehlich 1',
      bands: [
        [60, 'below'],
        [61, 'below'],
        [120, 'below'],
        [121, 'above'],
      ],
    },
  ]);
});
