// University of Arizona (Thompson, White, Kusakabe), "Nitrogen and Phosphorus Fertilizer Management for Young, Bearing Microsprinkler-Irrigated Citrus". The figures were typed a second time, from a stored text of the page.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'arizona-young-navel-trial',
  title: 'Nitrogen and Phosphorus Fertilizer Management for Young, Bearing Microsprinkler-Irrigated Citrus',
  publisher: 'University of Arizona (Thompson, White, Kusakabe)',
  url: null,
  mark: 'read',
} as const;

published(source, () => {
  // Young bearing navels yielded best at 0.4 to 0.55 lb of N per tree and year.
  expectFigures(source.id, [
    ['orange, planted 2021, bearing, shoots 1 in', [0.4 * LB, 0.55 * LB], { where: 'Arizona, US' }],
  ]);
});
