// Chambre d’Agriculture de Tarn-et-Garonne, "Guide fertilisation raisonnée" (2010). The figures were typed a second time, from research notes on a copy.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'tarn-et-garonne',
  title: 'Guide fertilisation raisonnée',
  publisher: 'Chambre d’Agriculture de Tarn-et-Garonne',
  url: null,
  mark: 'read',
} as const;

// kg a tonne of fruit: N, P2O5, K2O, each from and to. The column of MgO is not held.
const table = [
  ['apple', [1, 2], [0.4, 0.8], [1.5, 3]],
  ['pear', [1, 2], [0.5, 1], [1.5, 3]],
  ['peach', [2, 4], [0.6, 1.2], [2.5, 5]],
  ['plum', [2.4, 4.8], [0.2, 0.4], [2.3, 4.6]],
  ['cherry', [2.4, 4.8], [0.6, 1.2], [2, 4]],
  ['prune', [1.2, 1.2], [0.6, 0.6], [3, 3]],
  ['kiwifruit', [2, 3], [1, 2], [3, 4]],
  ['hazelnut', [13.5, 13.5], [3.5, 3.5], [7.5, 7.5]],
] as const;

published(source, () => {
  for (const [crop, N, P2O5, K2O] of table) {
    expectTissue(source.id, {
      removal: [
        [crop, 'N', ...N, 'kg/t'],
        [crop, 'P2O5', ...P2O5, 'kg/t'],
        [crop, 'K2O', ...K2O, 'kg/t'],
      ],
    });
  }
});
