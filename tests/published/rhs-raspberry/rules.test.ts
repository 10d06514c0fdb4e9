// Royal Horticultural Society, "Raspberry (Rubus idaeus), advice profile". The figures were typed a second time, from a stored text of the page.
import { expectFigures, published } from '../helpers.ts';

const source = {
  id: 'rhs-raspberry',
  title: 'Raspberry (Rubus idaeus), advice profile',
  publisher: 'Royal Horticultural Society',
  url: 'https://www.rhs.org.uk/advice/profile?pid=148',
  mark: 'read',
} as const;

published(source, () => {
  // Early March: Growmore (7 % N), 30 g a square metre.
  expectFigures(source.id, [
    ['raspberry, planted 2020, spacing 0.45 x 1.8 m, bearing, shoots 1 in', [0.45 * 1.8 * 30 * 0.07], { where: 'England, UK' }],
    ['raspberry, planted 2020, spacing 0.6 x 1.8 m, bearing, shoots 1 in', [0.6 * 1.8 * 30 * 0.07], { where: 'England, UK' }],
  ]);

  // Weak growth: sulphate of ammonia (21 % N), 30 g a square metre; alone or with March's feed.
  expectFigures(source.id, [
    ['raspberry, planted 2019, spacing 0.6 x 1.8 m, bearing, shoots 1 in', [[0.6 * 1.8 * 30 * 0.21, 0.6 * 1.8 * (30 * 0.07 + 30 * 0.21)]], { where: 'England, UK' }],
  ]);

  // Before planting: Growmore forked in, 90 g a square metre.
  expectFigures(source.id, [
    ['raspberry, planted 2026, spacing 0.6 x 1.8 m, shoots 1 in', [0.6 * 1.8 * 90 * 0.07], { where: 'England, UK' }],
  ]);
});
