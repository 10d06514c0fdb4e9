// Government of Ontario, "How to do leaf and petiole sampling". The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'ontario-leaf-sampling',
  title: 'How to do leaf and petiole sampling',
  publisher: 'Government of Ontario',
  url: 'https://ontario.ca/page/how-do-leaf-and-petiole-sampling',
  mark: 'read',
} as const;

published(source, () => {
  // Wine grapes, whole leaves in early summer; the two columns of leaf stalks are another thing.
  expectTissue(source.id, {
    leaf: [
      ['grape', 'N', 2, 3, '%'],
      ['grape', 'P', 0.3, 0.4, '%'],
      ['grape', 'K', 1.3, 1.4, '%'],
    ],
  });
});
