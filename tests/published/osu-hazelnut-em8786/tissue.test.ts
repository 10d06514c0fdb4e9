// Oregon State University Extension Service, "Nutrient Management: Hazelnuts, EM 8786" (2001). The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'osu-hazelnut-em8786',
  title: 'Nutrient Management: Hazelnuts, EM 8786',
  publisher: 'Oregon State University Extension Service',
  url: null,
  mark: 'read',
} as const;

published(source, () => {
  // Table 1, the normal column; the stored text ends at boron.
  expectTissue(source.id, {
    leaf: [
      ['hazelnut', 'N', 2.21, 2.5, '%'],
      ['hazelnut', 'P', 0.14, 0.45, '%'],
      ['hazelnut', 'K', 0.81, 2, '%'],
      ['hazelnut', 'S', 0.13, 0.2, '%'],
      ['hazelnut', 'Ca', 1.01, 2.5, '%'],
      ['hazelnut', 'Mg', 0.25, 0.5, '%'],
      ['hazelnut', 'Mn', 26, 650, 'ppm'],
      ['hazelnut', 'Fe', 51, 400, 'ppm'],
      ['hazelnut', 'Cu', 5, 15, 'ppm'],
    ],
  });
});
