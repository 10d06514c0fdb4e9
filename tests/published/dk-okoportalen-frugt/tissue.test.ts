// Økoportalen, SEGES, "Gødningsbehov og gødskning i frugt- og bærplantager". The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'dk-okoportalen-frugt',
  title: 'Gødningsbehov og gødskning i frugt- og bærplantager',
  publisher: 'Økoportalen, SEGES',
  url: 'https://okoportalen.lf.dk/jord-og-planter/frugt-og-baer/goedningsbehov-og-goedskning/',
  mark: 'read',
} as const;

published(source, () => {
  // What a tonne of apples holds, as elements; a fitting growth for pome fruit, without an age.
  expectTissue(source.id, {
    growth: [
      ['apple', 'bearing', 30, 50, 'cm'],
      ['pear', 'bearing', 30, 50, 'cm'],
    ],
    removal: [
      ['apple', 'N', 0.44, 0.44, 'kg/t'],
      ['apple', 'P', 0.1, 0.1, 'kg/t'],
      ['apple', 'K', 1.19, 1.19, 'kg/t'],
    ],
  });
});
