// University of Maryland Extension, "Watering, Fertilizing, and Harvesting Raspberries and Blackberries". The figures were typed a second time, from a stored text of the page.
import { OZ, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'maryland-brambles',
  title: 'Watering, Fertilizing, and Harvesting Raspberries and Blackberries',
  publisher: 'University of Maryland Extension',
  url: 'https://extension.umd.edu/resource/watering-fertilizing-harvesting-raspberries-and-blackberries',
  mark: 'read',
} as const;

published(source, () => {
  // Years 1 and 2: 0.80 oz of N for 10 ft of row.
  expectFigures(source.id, [
    ['raspberry, planted 2026, spacing 2 x 8 ft, shoots 1 in', [0.8 * (2 / 10) * OZ], { where: 'Maryland, US' }],
    ['raspberry, planted 2025, spacing 2 x 8 ft, shoots 1 in', [0.8 * (2 / 10) * OZ], { where: 'Maryland, US' }],
    ['blackberry, planted 2026, spacing 4 x 10 ft, shoots 1 in', [0.8 * (4 / 10) * OZ], { where: 'Maryland, US' }],
    ['blackberry, planted 2025, spacing 4 x 10 ft, shoots 1 in', [0.8 * (4 / 10) * OZ], { where: 'Maryland, US' }],
  ]);

  // Year 3 and older: 1.6 oz of N for 10 ft of row.
  expectFigures(source.id, [
    ['raspberry, planted 2024, spacing 2 x 8 ft, shoots 1 in', [1.6 * (2 / 10) * OZ], { where: 'Maryland, US' }],
    ['raspberry, planted 2018, spacing 2 x 8 ft, bearing, shoots 1 in', [1.6 * (2 / 10) * OZ], { where: 'Maryland, US' }],
    ['blackberry, planted 2024, spacing 4 x 10 ft, shoots 1 in', [1.6 * (4 / 10) * OZ], { where: 'Maryland, US' }],
    ['blackberry, planted 2018, spacing 4 x 10 ft, bearing, shoots 1 in', [1.6 * (4 / 10) * OZ], { where: 'Maryland, US' }],
  ]);
});
