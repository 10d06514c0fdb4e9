// Utah State University, "Fertilizing Backyard Fruit Trees", T. Roper, 18 April 2017.
// The figures were typed from research notes on the column; the column itself was not opened.
import { expect, test } from 'vitest';
import { onePlant, only, published } from '../helpers.ts';

const source = {
  id: 'utah-backyard',
  title: 'Fertilizing Backyard Fruit Trees',
  publisher: 'Utah State University',
  url: 'https://pestadvisories.usu.edu/2017/04/18/fertilizing/',
  mark: 'read',
} as const;

published(source, () => {
  // Bearing peach: 12 to 18 in of growth is enough.
  const growth = [
    ['peach, planted 2014, 12 ft across, shoots 11 in', true],
    ['peach, planted 2014, 12 ft across, shoots 12 in', false],
    ['peach, planted 2014, 12 ft across, shoots 18 in', false],
    ['peach, planted 2014, 12 ft across, shoots 19 in', false],
  ] as const;
  for (const [facts, fed] of growth) {
    test(`${facts}: ${fed ? 'nitrogen' : 'no nitrogen'}`, async () => {
      expect(only(await onePlant(facts)).need.N > 0).toBe(fed);
    });
  }

  test('a bearing peach not measured is fed only if growth was under 12 in', async () => {
    const tree = only(await onePlant('peach, planted 2014, 12 ft across'));
    expect(tree.if?.belowM).toBeCloseTo(12 * 0.0254, 4);
  });
});
