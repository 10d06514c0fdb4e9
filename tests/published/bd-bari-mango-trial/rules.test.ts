// Bangladesh Journal of Agricultural Research, "Effect of nitrogen, phosphorus, potassium and sulphur on the yield of mango" (2014). The figures were typed a second time, from a stored text of the page.
import { expectFigures, published } from '../helpers.ts';

const source = {
  id: 'bd-bari-mango-trial',
  title: 'Effect of nitrogen, phosphorus, potassium and sulphur on the yield of mango',
  publisher: 'Bangladesh Journal of Agricultural Research',
  url: 'https://banglajol.info/index.php/BJAR/article/view/22542',
  mark: 'read',
} as const;

published(source, () => {
  // The best treatment: 960 g N a tree and year.
  expectFigures(source.id, [
    ['mango, planted 2011, bearing, shoots 1 in', [960], { where: 'Bangladesh' }],
  ]);
});
