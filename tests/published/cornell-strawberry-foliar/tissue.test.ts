// Cornell University, "Berry Soil and Nutrient Management guide: Foliar Testing and Sampling in Berry Crops". The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'cornell-strawberry-foliar',
  title: 'Berry Soil and Nutrient Management guide: Foliar Testing and Sampling in Berry Crops',
  publisher: 'Cornell University',
  url: null,
  mark: 'read',
} as const;

published(source, () => {
  // Table 14; the first five are per cent by their size, whatever the heading says.
  expectTissue(source.id, {
    leaf: [
      ['strawberry', 'N', 2, 2.8, '%'],
      ['strawberry', 'K', 1.5, 2.5, '%'],
      ['strawberry', 'P', 0.25, 0.4, '%'],
      ['strawberry', 'Ca', 0.7, 1.7, '%'],
      ['strawberry', 'Mg', 0.3, 0.5, '%'],
      ['strawberry', 'Mn', 50, 200, 'ppm'],
      ['strawberry', 'Fe', 60, 250, 'ppm'],
      ['strawberry', 'Cu', 6, 20, 'ppm'],
      ['strawberry', 'B', 30, 70, 'ppm'],
      ['strawberry', 'Zn', 20, 50, 'ppm'],
    ],
  });
});
