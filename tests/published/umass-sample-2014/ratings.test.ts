// University of Massachusetts Soil and Plant Tissue Testing Laboratory, sample report of 2014:
// optimum ranges, Modified Morgan, parts per million. Typed a second time, from a copy of the report;
// no publisher's page was found. Under the range is below; under half of its low end far below.
import { expectTargets, published } from '../helpers.ts';

const source = {
  id: 'umass-sample-2014',
  title: 'Soil test report (sample, deciduous trees, shrubs and vines)',
  publisher: 'University of Massachusetts Soil and Plant Tissue Testing Laboratory',
  url: null,
  mark: 'read',
} as const;

published(source, () => {
  expectTargets([
    {
      // 4-14
      item: 'phosphorus',
      line: 'Phosphorus # ppm Modified Morgan',
      bands: [
        [1.9, 'far-below'],
        [2, 'below'],
        [3.9, 'below'],
        [4, 'at'],
        [14, 'at'],
        [14.1, 'above'],
      ],
    },
    {
      // 100-160
      item: 'potassium',
      line: 'Potassium # ppm Modified Morgan',
      bands: [
        [49, 'far-below'],
        [50, 'below'],
        [99, 'below'],
        [100, 'at'],
        [160, 'at'],
        [161, 'above'],
      ],
    },
    {
      // 1000-1500
      item: 'calcium',
      line: 'Calcium # ppm Modified Morgan',
      bands: [
        [499, 'far-below'],
        [500, 'below'],
        [999, 'below'],
        [1000, 'at'],
        [1500, 'at'],
        [1501, 'above'],
      ],
    },
    {
      // 50-120
      item: 'magnesium',
      line: 'Magnesium # ppm Modified Morgan',
      bands: [
        [24, 'far-below'],
        [25, 'below'],
        [49, 'below'],
        [50, 'at'],
        [120, 'at'],
        [121, 'above'],
      ],
    },
  ]);
});
