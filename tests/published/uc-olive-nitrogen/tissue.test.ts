// UC Cooperative Extension, "Developing a nitrogen fertilizer plan for olive orchards" (2021). The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'uc-olive-nitrogen',
  title: 'Developing a nitrogen fertilizer plan for olive orchards',
  publisher: 'UC Cooperative Extension',
  url: 'http://ceventura.ucanr.edu/?blogpost=46267&blogasset=109383',
  mark: 'read',
} as const;

published(source, () => {
  // Leaf N in July and August for a healthy tree.
  expectTissue(source.id, {
    leaf: [
      ['olive', 'N', 1.3, 1.7, '%'],
    ],
  });
});
