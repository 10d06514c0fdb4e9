// Texas Plant & Soil Lab, "Olives – Nutritional and Sampling Notes". The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'tpsl-olive',
  title: 'Olives – Nutritional and Sampling Notes',
  publisher: 'Texas Plant & Soil Lab',
  url: 'http://asktheplant.com/olives-nutritional-and-sampling-notes/',
  mark: 'read',
} as const;

published(source, () => {
  // Pounds in an acre of 9 tons.
  expectTissue(source.id, {
    removal: [
      ['olive', 'N', 130 / 9, 130 / 9, 'lb/ton'],
      ['olive', 'P2O5', 31 / 9, 31 / 9, 'lb/ton'],
      ['olive', 'K2O', 157 / 9, 157 / 9, 'lb/ton'],
    ],
  });
});
