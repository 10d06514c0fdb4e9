// South African Table Grape Industry, "Fertilisation Guidelines for the Table Grape Industry". The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'za-table-grape-uptake',
  title: 'Fertilisation Guidelines for the Table Grape Industry',
  publisher: 'South African Table Grape Industry',
  url: 'https://user-hpa96tt.cld.bz/FERTILISATION-GUIDELINES-FOR-THE-TABLE-GRAPE-INDUSTRY/38',
  mark: 'read',
} as const;

published(source, () => {
  // Table 8, the line for a ton, as elements.
  expectTissue(source.id, {
    removal: [
      ['grape', 'N', 3.93, 3.93, 'kg/t'],
      ['grape', 'P', 0.7, 0.7, 'kg/t'],
      ['grape', 'K', 3.2, 3.2, 'kg/t'],
    ],
  });
});
