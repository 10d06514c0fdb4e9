// Tokai-Kinki Agricultural Experiment Station, "Amounts of nutrient elements absorbed by Japanese persimmon trees". The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'persimmon-japan-uptake',
  title: 'Amounts of nutrient elements absorbed by Japanese persimmon trees',
  publisher: 'Tokai-Kinki Agricultural Experiment Station',
  url: 'https://www.jstage.jst.go.jp/browse/jjshs/22/1/_contents/-char/en',
  mark: 'read',
} as const;

published(source, () => {
  // What forty trees take up with a crop of 1,425 kg.
  expectTissue(source.id, {
    removal: [
      ['persimmon', 'N', 8.55 / 1.425, 8.55 / 1.425, 'kg/t'],
      ['persimmon', 'P2O5', 2.3 / 1.425, 2.3 / 1.425, 'kg/t'],
      ['persimmon', 'K2O', 7.33 / 1.425, 7.33 / 1.425, 'kg/t'],
    ],
  });
});
