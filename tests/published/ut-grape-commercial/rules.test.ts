// University of Tennessee, "Grapes (commercial fruit and nut production, soil fertility)" (undated). The figures were typed a second time, from a stored text of the page.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'ut-grape-commercial',
  title: 'Grapes (commercial fruit and nut production, soil fertility)',
  publisher: 'University of Tennessee',
  url: 'https://utcrops.com/soil/commercial-fruit-and-nut-production/grapes/',
  mark: 'read',
} as const;

published(source, () => {
  // Actual nitrogen a vine: 0.1 lb at medium vigour, 0.2 lb for weaker vines.
  expectFigures(source.id, [
    ['grape, planted 2018, bearing, shoots 1 in', [0.1 * LB, 0.2 * LB], { where: 'Tennessee, US' }],
  ]);
});
