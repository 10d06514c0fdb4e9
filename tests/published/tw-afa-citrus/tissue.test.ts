// Agriculture and Food Agency, Taiwan, "國產優良品牌蔬果生產管理技術作業標準: 桶柑". The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'tw-afa-citrus',
  title: '國產優良品牌蔬果生產管理技術作業標準: 桶柑',
  publisher: 'Agriculture and Food Agency, Taiwan',
  url: 'https://www.afa.gov.tw/ebook/afa/ebook12_4/files/basic-html/page51.html',
  mark: 'read',
} as const;

published(source, () => {
  // Table 2, tankan; each figure is broken over two lines of the stored text and was joined column by column.
  expectTissue(source.id, {
    leaf: [
      ['mandarin', 'N', 3, 3.2, '%'],
      ['mandarin', 'P', 0.12, 0.18, '%'],
      ['mandarin', 'K', 1.4, 1.8, '%'],
      ['mandarin', 'Ca', 2.5, 4.5, '%'],
      ['mandarin', 'Mg', 0.26, 0.5, '%'],
      ['mandarin', 'Fe', 60, 120, 'ppm'],
      ['mandarin', 'Mn', 25, 200, 'ppm'],
      ['mandarin', 'Cu', 5, 16, 'ppm'],
      ['mandarin', 'Zn', 25, 100, 'ppm'],
      ['mandarin', 'B', 25, 125, 'ppm'],
    ],
  });
});
