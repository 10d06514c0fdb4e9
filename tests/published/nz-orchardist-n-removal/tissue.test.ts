// The Orchardist, HortNZ, "Nitrogen cycling in permanent fruit crops, Part Two" (2022). The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'nz-orchardist-n-removal',
  title: 'Nitrogen cycling in permanent fruit crops, Part Two',
  publisher: 'The Orchardist, HortNZ',
  url: 'https://issuu.com/hortnz/docs/the_orchardist_may_2022/s/15730688',
  mark: 'read',
} as const;

published(source, () => {
  // Table 1, nitrogen in a tonne of fruit; apple and pear stand as pipfruit.
  expectTissue(source.id, {
    removal: [
      ['apple', 'N', 0.6, 1.1, 'kg/t'],
      ['pear', 'N', 0.6, 1.1, 'kg/t'],
      ['peach', 'N', 1.2, 1.2, 'kg/t'],
      ['nectarine', 'N', 1.2, 1.2, 'kg/t'],
      ['kiwifruit', 'N', 0.93, 1.63, 'kg/t'],
      ['avocado', 'N', 1.13, 2.2, 'kg/t'],
      ['orange', 'N', 2.9, 2.9, 'kg/t'],
    ],
  });
});
