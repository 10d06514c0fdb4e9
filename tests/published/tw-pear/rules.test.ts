// Taiwan, quoting the Crop Fertilisation Handbook, "梨樹合理化施肥 (Sustainable Fertilization of Pear)" (2005). The figures were typed a second time, from a stored text of the page.
import { expectFigures, published } from '../helpers.ts';

const source = {
  id: 'tw-pear',
  title: '梨樹合理化施肥 (Sustainable Fertilization of Pear)',
  publisher: 'Taiwan, quoting the Crop Fertilisation Handbook',
  url: 'https://www.airitilibrary.com/Article/Detail/P20131108002-200512-201404290015-201404290015-403-425',
  mark: 'read',
} as const;

published(source, () => {
  // A pear tree of 15 years: 830 g N a year.
  expectFigures(source.id, [
    ['asian pear, planted 2011, bearing, shoots 1 in', [830], { where: 'Taiwan' }],
  ]);
});
