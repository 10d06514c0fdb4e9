// University of Georgia Agricultural and Environmental Services Laboratories, "Grapes (muscadine) (Code #128), Soil Test Handbook for Georgia" (undated). The figures were typed a second time, from a stored text of the page.
import { OZ, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'ga-code-128-muscadine',
  title: 'Grapes (muscadine) (Code #128), Soil Test Handbook for Georgia',
  publisher: 'University of Georgia Agricultural and Environmental Services Laboratories',
  url: 'http://aesl.ces.uga.edu/scripts/crop.prg?128',
  mark: 'read',
} as const;

published(source, () => {
  // First year: 1 oz of 10-10-10 a time; three or four times in the north of the state, four or five in the south.
  expectFigures(source.id, [
    ['muscadine grape, planted 2026, shoots 1 in', [3 * 0.1 * OZ, 5 * 0.1 * OZ], { where: 'Georgia, US' }],
  ]);
});
