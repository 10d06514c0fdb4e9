// Farm Progress, reporting K. Pope, UC Cooperative Extension, "Match fertilizer rates in young orchards to growing needs" (2015). The figures were typed a second time, from a stored text of the page.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'ucce-young-walnut',
  title: 'Match fertilizer rates in young orchards to growing needs',
  publisher: 'Farm Progress, reporting K. Pope, UC Cooperative Extension',
  url: 'https://www.farmprogress.com/tree-nuts/match-fertilizer-rates-in-young-orchards-to-growing-needs',
  mark: 'read',
} as const;

published(source, () => {
  // About a quarter pound of N per tree in the first year; a pound in the fourth, fifth and sixth, before the crop is counted.
  expectFigures(source.id, [
    ['walnut, planted 2026, shoots 1 in', [0.25 * LB], { where: 'California, US' }],
    ['walnut, planted 2023, shoots 1 in', [1 * LB], { where: 'California, US' }],
    ['walnut, planted 2022, shoots 1 in', [1 * LB], { where: 'California, US' }],
    ['walnut, planted 2021, shoots 1 in', [1 * LB], { where: 'California, US' }],
  ]);
});
