// University of Tennessee, commercial fruit and nut production, "Tart Cherries and Plums".
// The figures were typed a second time, from a stored text of the page itself.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'tennessee-cherries',
  title: 'Tart Cherries and Plums',
  publisher: 'University of Tennessee',
  url: 'https://utcrops.com/soil/commercial-fruit-and-nut-production/tart-cherries-and-plums/',
  mark: 'read',
} as const;

published(source, () => {
  // Tart cherry: a tenth of a pound a year of age, no rise from ten years on.
  expectFigures(source.id, [
    ['tart cherry, planted 2023, 8 ft across, shoots 4 in', [0.3 * LB]],
    ['tart cherry, planted 2019, 12 ft across, shoots 4 in', [0.7 * LB]],
    ['tart cherry, planted 2012, 15 ft across, shoots 4 in', [1 * LB]],
  ]);

  // Plum: the page prints a third and, in brackets, 0.3 lb before bearing; one pound when bearing.
  expectFigures(source.id, [
    ['plum, planted 2023, not bearing, 8 ft across, shoots 4 in', [[0.3 * LB, LB / 3]]],
    ['plum, planted 2014, bearing, 12 ft across, shoots 4 in', [1 * LB]],
  ]);
});
