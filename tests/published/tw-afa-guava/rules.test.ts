// Agriculture and Food Agency, Taiwan, "作物施肥手冊: 番石榴". The figures were typed a second time, from a stored text of the page.
import { expectFigures, published } from '../helpers.ts';

const source = {
  id: 'tw-afa-guava',
  title: '作物施肥手冊: 番石榴',
  publisher: 'Agriculture and Food Agency, Taiwan',
  url: 'https://ebook.afa.gov.tw/afa/ebook12_2/files/basic-html/page47.html',
  mark: 'read',
} as const;

published(source, () => {
  // Grams of N a plant and crop season, two seasons a year.
  expectFigures(source.id, [
    ['guava, planted 2025, shoots 1 in', [2 * 60], { where: 'Taiwan' }],
    ['guava, planted 2024, shoots 1 in', [2 * 60], { where: 'Taiwan' }],
    ['guava, planted 2023, shoots 1 in', [2 * 120], { where: 'Taiwan' }],
    ['guava, planted 2022, shoots 1 in', [2 * 120], { where: 'Taiwan' }],
    ['guava, planted 2021, shoots 1 in', [2 * 200], { where: 'Taiwan' }],
    ['guava, planted 2020, shoots 1 in', [2 * 200], { where: 'Taiwan' }],
    ['guava, planted 2019, shoots 1 in', [2 * 250], { where: 'Taiwan' }],
    ['guava, planted 2018, shoots 1 in', [2 * 250], { where: 'Taiwan' }],
    ['guava, planted 2017, shoots 1 in', [2 * 300], { where: 'Taiwan' }],
    ['guava, planted 2016, shoots 1 in', [2 * 300], { where: 'Taiwan' }],
    ['guava, planted 2015, shoots 1 in', [2 * 400], { where: 'Taiwan' }],
    ['guava, planted 2008, shoots 1 in', [2 * 400], { where: 'Taiwan' }],
  ]);
});
