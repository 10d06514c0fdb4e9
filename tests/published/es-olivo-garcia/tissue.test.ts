// Universidad Politécnica de Madrid, C. García García, "Abonado del olivar" (2010). The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'es-olivo-garcia',
  title: 'Abonado del olivar',
  publisher: 'Universidad Politécnica de Madrid, C. García García',
  url: null,
  mark: 'read',
} as const;

published(source, () => {
  // What the tree takes up in a year for 1,000 kg of olives.
  expectTissue(source.id, {
    removal: [
      ['olive', 'N', 15, 20, 'kg/t'],
      ['olive', 'P2O5', 4, 5, 'kg/t'],
      ['olive', 'K2O', 20, 25, 'kg/t'],
    ],
  });
});
