// Regione Campania, Assessorato Agricoltura, "Guida alla concimazione". The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'it-campania-guida',
  title: 'Guida alla concimazione',
  publisher: 'Regione Campania, Assessorato Agricoltura',
  url: null,
  mark: 'read',
} as const;

published(source, () => {
  // What the fruit alone takes away; for olive two works are quoted, the one without phosphate.
  expectTissue(source.id, {
    removal: [
      ['hazelnut', 'N', 28.2, 28.2, 'kg/t'],
      ['hazelnut', 'P2O5', 4.3, 4.3, 'kg/t'],
      ['hazelnut', 'K2O', 12.5, 12.5, 'kg/t'],
      ['olive', 'N', 8, 10, 'kg/t'],
      ['olive', 'P2O5', 2.3, 2.3, 'kg/t'],
      ['olive', 'K2O', 4.4, 9.5, 'kg/t'],
    ],
  });
});
