// Iowa State University Extension, "Should I fertilize my fruit trees?".
// The figures were typed a second time, from a stored text of the page itself.
import { expect, test } from 'vitest';
import { LB, expectFigures, expectNeeds, onePlant, only, published } from '../helpers.ts';

const source = {
  id: 'iowa-fruit-trees',
  title: 'Should I fertilize my fruit trees?',
  publisher: 'Iowa State University Extension',
  url: 'https://hortnews.extension.iastate.edu/faq/should-i-fertilize-my-fruit-trees',
  mark: 'read',
} as const;

published(source, () => {
  // A tenth of a pound for each year since planting; one pound from ten years on.
  expectFigures(source.id, [
    ['plum, planted 2023, 10 ft across, shoots 4 in', [0.3 * LB]],
    ['apple, standard, planted 2021, 20 ft across, shoots 4 in', [0.5 * LB]],
    ['pear, standard, planted 2019, 20 ft across, shoots 4 in', [0.7 * LB]],
    ['apple, standard, planted 2016, 20 ft across, shoots 4 in', [1 * LB]],
    ['apple, standard, planted 2006, 20 ft across, shoots 4 in', [1 * LB]],
  ]);

  // In Iowa its own page leads; a wide standard crown leaves the age rule the smallest.
  expectNeeds([
    ['apple, standard, planted 2021, 40 ft across, shoots 4 in', { N: 0.5 * LB }, { where: 'Iowa, US' }],
    ['apple, standard, planted 2014, 40 ft across, shoots 4 in', { N: 1 * LB }, { where: 'Iowa, US' }],
  ]);

  // Wanted growth: 8 to 15 in bearing, 15 to 30 in not yet bearing; no record of last year's feed.
  const growth = [
    ['apple, semi-dwarf, planted 2014, 12 ft across, shoots 7 in', true],
    ['apple, semi-dwarf, planted 2014, 12 ft across, shoots 8 in', false],
    ['apple, semi-dwarf, planted 2014, 12 ft across, shoots 15 in', false],
    ['apple, semi-dwarf, planted 2014, 12 ft across, shoots 16 in', false],
    ['apple, semi-dwarf, planted 2023, not bearing, 6 ft across, shoots 14 in', true],
    ['apple, semi-dwarf, planted 2023, not bearing, 6 ft across, shoots 15 in', false],
    ['apple, semi-dwarf, planted 2023, not bearing, 6 ft across, shoots 30 in', false],
    ['apple, semi-dwarf, planted 2023, not bearing, 6 ft across, shoots 31 in', false],
  ] as const;
  for (const [facts, fed] of growth) {
    test(`${facts}: ${fed ? 'nitrogen' : 'no nitrogen'}`, async () => {
      expect(only(await onePlant(facts)).need.N > 0).toBe(fed);
    });
  }

  test('a bearing tree not measured is fed only if growth was under 8 in', async () => {
    const tree = only(await onePlant('apple, semi-dwarf, planted 2014, 12 ft across'));
    expect(tree.need.N).toBeGreaterThan(0);
    expect(tree.if?.belowM).toBeCloseTo(8 * 0.0254, 4);
  });

  test('a tree in a lawn that is fed gets nothing', async () => {
    const tree = only(await onePlant('apple, standard, planted 2014, 20 ft across, shoots 4 in, fed lawn'));
    expect(tree.need.N).toBe(0);
    expect(tree.verdict).toBe('none');
    expect(tree.feeds).toEqual([]);
  });
});
