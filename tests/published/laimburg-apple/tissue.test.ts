// DLR Rheinpfalz / Laimburg, "Frühe Blattanalyse im Obstbau" (1999). The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'laimburg-apple',
  title: 'Frühe Blattanalyse im Obstbau',
  publisher: 'DLR Rheinpfalz / Laimburg',
  url: 'https://www.dlr-rheinpfalz.rlp.de/Internet/global/Themen.nsf/(Web_P_Obstbau_Obst_Kat_XP)/65A06A0742B81D93C1256F57003290B6?OpenDocument',
  mark: 'read',
} as const;

published(source, () => {
  // Table 1, the best range; the stored text ends after nitrogen.
  expectTissue(source.id, {
    leaf: [
      ['apple', 'N', 2.3, 2.6, '%'],
    ],
  });
});
