// North Carolina State University, "Home strawberry fertilization" (2001). The figures were typed a second time, from a stored text of the page.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'nc-poling-strawberry',
  title: 'Home strawberry fertilization',
  publisher: 'North Carolina State University',
  url: null,
  mark: 'read',
} as const;

published(source, () => {
  // To 100 ft of row: 4 lb of 10-10-10 before planting and 1 1/2 lb of ammonium nitrate in August;
  // a month after planting, where growth is poor, 1 1/2 lb of ammonium nitrate or 5 lb of 10-10-10 besides.
  expectFigures(source.id, [
    ['strawberry, planted 2026, spacing 2 x 4 ft, shoots 1 in', [
      [
        (2 * (4 * 0.1 + 1.5 * 0.34) * LB) / 100,
        (2 * (4 * 0.1 + 2 * 1.5 * 0.34) * LB) / 100,
        (2 * (4 * 0.1 + 5 * 0.1 + 1.5 * 0.34) * LB) / 100,
      ],
    ], { where: 'North Carolina, US' }],
  ]);
});
