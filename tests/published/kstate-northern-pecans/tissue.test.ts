// Northern Pecans, Kansas State University, "Interpreting pecan leaf analysis results" (2013). The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'kstate-northern-pecans',
  title: 'Interpreting pecan leaf analysis results',
  publisher: 'Northern Pecans, Kansas State University',
  url: 'http://northernpecans.blogspot.com/2013/08/interpreting-pecan-leaf-analysis-results.html',
  mark: 'read',
} as const;

published(source, () => {
  // Table 1; the nutrients with a low end only are left out.
  expectTissue(source.id, {
    leaf: [
      ['pecan', 'N', 2.4, 3, '%'],
      ['pecan', 'K', 0.75, 1, '%'],
      ['pecan', 'Mg', 0.3, 0.6, '%'],
      ['pecan', 'B', 20, 45, 'ppm'],
    ],
  });
});
