// Agriculture and Food Agency, Taiwan, "國產優良品牌蔬果生產管理技術作業標準: 桶柑". The figures were typed a second time, from a stored text of the page.
import { expectFigures, published } from '../helpers.ts';

const source = {
  id: 'tw-afa-citrus',
  title: '國產優良品牌蔬果生產管理技術作業標準: 桶柑',
  publisher: 'Agriculture and Food Agency, Taiwan',
  url: 'https://www.afa.gov.tw/ebook/afa/ebook12_4/files/basic-html/page51.html',
  mark: 'read',
} as const;

published(source, () => {
  // Young trees of 1 to 3 years and of 5 years, grams of N a year. (Mature trees go by yield.)
  expectFigures(source.id, [
    ['mandarin, planted 2025, shoots 1 in', [75], { where: 'Taiwan' }],
    ['mandarin, planted 2023, shoots 1 in', [75], { where: 'Taiwan' }],
    ['mandarin, planted 2021, shoots 1 in', [150], { where: 'Taiwan' }],
  ]);
});
