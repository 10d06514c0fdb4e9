// University of Maryland Extension, care of stone fruit, 2020.
// The figures were typed a second time, from a stored text of the page itself.
import { LB, OZ, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'maryland-stone',
  title: 'Care (fertilizing, fruit thinning, harvesting, spray schedule): Stone Fruit',
  publisher: 'University of Maryland Extension',
  url: 'https://extension.umd.edu/hgic/topics/care-fertilizing-fruit-thinning-harvesting-spray-schedule-stone-fruit',
  mark: 'read',
} as const;

published(source, () => {
  // 10-10-10: half a pound, half a pound more each year, five pounds at the most.
  expectFigures(source.id, [
    ['plum, planted 2025, 6 ft across, shoots 4 in', [0.05 * LB]],
    ['plum, planted 2021, 10 ft across, shoots 4 in', [0.25 * LB]],
    ['peach, planted 2012, 15 ft across, shoots 4 in', [0.5 * LB]],
    ['peach, planted 2026, 3 ft across', [0.8 * OZ]],
  ]);
});
