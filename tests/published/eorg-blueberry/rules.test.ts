// eXtension (US Cooperative Extension), "When and with what do I fertilize blueberries?" (undated). The figures were typed a second time, from a stored text of the page.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'eorg-blueberry',
  title: 'When and with what do I fertilize blueberries?',
  publisher: 'eXtension (US Cooperative Extension)',
  url: 'https://blueberries.extension.org/when-and-with-what-do-i-fertilize-blueberries/',
  mark: 'read',
} as const;

published(source, () => {
  // Ammonium sulphate twice a year: 0.1 lb a time at first, 0.1 lb more each year up to 0.3 lb.
  expectFigures(source.id, [
    ['highbush blueberry, planted 2026, bare, shoots 1 in', [2 * 0.1 * 0.21 * LB], { where: 'North Carolina, US' }],
    ['highbush blueberry, planted 2025, bare, shoots 1 in', [2 * 0.2 * 0.21 * LB], { where: 'North Carolina, US' }],
    ['highbush blueberry, planted 2024, bare, shoots 1 in', [2 * 0.3 * 0.21 * LB], { where: 'North Carolina, US' }],
    ['highbush blueberry, planted 2015, bare, bearing, shoots 1 in', [2 * 0.3 * 0.21 * LB], { where: 'North Carolina, US' }],
  ]);
});
