// University of Tennessee, commercial fruit and nut production, "Apples".
// The figures were typed a second time, from a stored text of the page itself.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'tennessee-apples',
  title: 'Apples',
  publisher: 'University of Tennessee',
  url: 'https://utcrops.com/soil/commercial-fruit-and-nut-production/apples/',
  mark: 'read',
} as const;

published(source, () => {
  // A tenth of a pound an inch of trunk, measured a foot above the ground.
  expectFigures(source.id, [
    ['apple, standard, planted 2021, trunk 3 in across, 12 ft across, shoots 4 in', [0.3 * LB]],
    ['apple, standard, planted 2019, trunk 5 in across, 15 ft across, shoots 4 in', [0.5 * LB]],
  ]);
});
