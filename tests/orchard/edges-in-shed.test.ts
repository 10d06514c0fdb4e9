// What a grower says is left of a 50 lb bag (practice): shares of fifty pounds by hand, pound 453.59237 g.
import { describe, expect, test } from 'vitest';
import { parseBag } from '../../src/orchard/bag.ts';

const PLACE = { file: 'orchard.yaml', line: 1, column: 1, length: 1, source: '' };
const read = (said: string) => parseBag(`Ammonium sulfate, 21-0-0, 50 lb, ${said}`, 'US', true, PLACE);

describe('what is left', () => {
  test.each<[string, number]>([
    ['half left', 25], ['a half left', 25], ['half of it left', 25], ['half a bag left', 25], ['half the bag left', 25], ['half bag left', 25], ['half of the bag left', 25], ['Half Full', 25], ['half remaining', 25], ['half used', 25], ['about half left', 25], ['1/2 left', 25], ['50 % left', 25], ['50% remaining', 25],
    ['a third left', 50 / 3], ['one third left', 50 / 3], ['1/3 left', 50 / 3], ['two thirds left', 100 / 3], ['two-thirds left', 100 / 3], ['2/3 left', 100 / 3], ['2/3 full', 100 / 3], ['a third used', 100 / 3], ['a quarter left', 12.5], ['quarter full', 12.5], ['three quarters left', 37.5], ['three-quarters left', 37.5], ['3/4 left', 37.5], ['12,5 % left', 6.25], ['25% used', 37.5],
    ['all left', 50], ['none left', 0], ['all used', 0], ['20 lb left', 20], ['20 lb remaining', 20], ['about 20 lb left', 20], ['ca. 20 lb left', 20], ['~20 lb left', 20], ['1/2 lb left', 0.5], ['20 lb of it left', 20], ['8 oz left', 0.5],
    ['full', 50], ['nearly full', 50], ['unopened', 50], ['empty', 0], ['almost empty', 0],
  ])('%s: %d lb, and the name stays as it is', (said, pounds) => {
    const { bag, notices } = read(said);
    expect(notices.map((n) => n.code)).toEqual([]);
    expect(bag!.left! / 453.59237).toBeCloseTo(pounds, 6);
    expect(bag!.label).toBe('Ammonium sulfate');
  });
  test.each(['3/2 left', '150 % left', '1/0 left', '20 lb used', 'most of it left', '1 bag left', 'left: 20 lb', '20 lb or so left'])('%s is told, never guessed', (said) => {
    expect(read(said).bag).toBeNull();
    expect(read(said).notices.map((n) => n.code)).toContain('bag-part-unknown');
  });
  test('words of a name are none of it', () => {
    expect(parseBag('Half hardy feed, 21-0-0, 50 lb', 'US', true, PLACE).bag).toMatchObject({ label: 'Half hardy feed', left: expect.closeTo(50 * 453.59237, 6) });
    expect(parseBag('Full spectrum feed, 21-0-0, 50 lb', 'US', true, PLACE).bag!.label).toBe('Full spectrum feed');
    expect(parseBag('Feed, 21-0-0, 50 % slow release', 'US', true, PLACE).bag).toMatchObject({ slowShare: 0.5, left: null });
  });
});
