// Austria, "Richtlinien für die sachgerechte Düngung im Obstbau", tables 5 and 6: potassium (ÖNORM L 1087, CAL)
// and magnesium, mg/kg, by weight of soil. Typed a second time, from a copy of page 15; no publisher's page was found.
// A is far below, B below, C the target, D and E above; between bands, the side away from C.
import { expectTargets, published } from '../helpers.ts';

const source = {
  id: 'austria-orchard',
  title: 'Richtlinien für die sachgerechte Düngung im Obstbau',
  publisher: 'Federal ministry of agriculture, Austria',
  url: null,
  mark: 'read',
} as const;

published(source, () => {
  // Light soil. Potassium <50, 50-87, 88-178, 179-291, >291; magnesium <50 (B), 50-75, 76-150, >150.
  expectTargets(
    [
      {
        item: 'potassium',
        line: 'Potassium # mg/kg CAL',
        bands: [
          [49, 'far-below'],
          [50, 'below'],
          [87, 'below'],
          [87.5, 'below'],
          [88, 'at'],
          [178, 'at'],
          [178.5, 'above'],
          [179, 'above'],
          [292, 'above'],
        ],
      },
      {
        item: 'magnesium',
        line: 'Magnesium # mg/kg CAL',
        bands: [
          [49, 'below'],
          [50, 'at'],
          [75, 'at'],
          [76, 'above'],
          [151, 'above'],
        ],
      },
    ],
    'Clay 5 %',
  );

  // Medium soil. Potassium <66, 66-112, 113-212, 213-332, >332; magnesium <30, 30-55, 56-105, 106-190, >190.
  expectTargets(
    [
      {
        item: 'potassium',
        line: 'Potassium # mg/kg CAL',
        bands: [
          [65, 'far-below'],
          [66, 'below'],
          [112, 'below'],
          [112.5, 'below'],
          [113, 'at'],
          [212, 'at'],
          [213, 'above'],
          [333, 'above'],
        ],
      },
      {
        item: 'magnesium',
        line: 'Magnesium # mg/kg CAL',
        bands: [
          [29, 'far-below'],
          [30, 'below'],
          [55, 'below'],
          [56, 'at'],
          [105, 'at'],
          [106, 'above'],
          [191, 'above'],
        ],
      },
    ],
    'Clay 20 %',
  );

  // Heavy soil. Potassium <83, 83-137, 138-245, 246-374, >374; magnesium <40, 40-75, 76-135, 136-220, >220.
  expectTargets(
    [
      {
        item: 'potassium',
        line: 'Potassium # mg/kg CAL',
        bands: [
          [82, 'far-below'],
          [83, 'below'],
          [137, 'below'],
          [137.5, 'below'],
          [138, 'at'],
          [140, 'at'],
          [245, 'at'],
          [246, 'above'],
          [375, 'above'],
        ],
      },
      {
        item: 'magnesium',
        line: 'Magnesium # mg/kg CAL',
        bands: [
          [39, 'far-below'],
          [40, 'below'],
          [75, 'below'],
          [76, 'at'],
          [135, 'at'],
          [136, 'above'],
          [221, 'above'],
        ],
      },
    ],
    'Clay 40 %',
  );
});
