// Florida Agricultural Experiment Station, "Fertilizing constituents removed in an orange crop" (1910). The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'florida-1910-orange',
  title: 'Fertilizing constituents removed in an orange crop',
  publisher: 'Florida Agricultural Experiment Station',
  url: 'http://ufdc.ufl.edu/UF00090355/00001',
  mark: 'read',
} as const;

published(source, () => {
  // 300 boxes of 80 lb are 12 tons; phosphoric acid and potash are the oxides.
  expectTissue(source.id, {
    removal: [
      ['orange', 'N', (28.3 * 2000) / (300 * 80), (28.3 * 2000) / (300 * 80), 'lb/ton'],
      ['orange', 'P2O5', (12.7 * 2000) / (300 * 80), (12.7 * 2000) / (300 * 80), 'lb/ton'],
      ['orange', 'K2O', (70.3 * 2000) / (300 * 80), (70.3 * 2000) / (300 * 80), 'lb/ton'],
    ],
  });
});
