// Sacramento Valley Orchards, UC Cooperative Extension, "Potassium Nutrition – Maintaining Optimal Levels". The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'sacvalley-prune-potassium',
  title: 'Potassium Nutrition – Maintaining Optimal Levels',
  publisher: 'Sacramento Valley Orchards, UC Cooperative Extension',
  url: 'https://www.sacvalleyorchards.com/prunes/horticulture-prunes/potassium-nutrition-maintaining-optimal-levels/',
  mark: 'read',
} as const;

published(source, () => {
  // Leaf K in July that counts as adequate.
  expectTissue(source.id, {
    leaf: [
      ['prune', 'K', 1.3, 2, '%'],
    ],
  });
});
