// New Mexico State University Cooperative Extension Service, "Fertilization Programs for Apple Orchards, Guide H-319". The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'nmsu-h319-apple',
  title: 'Fertilization Programs for Apple Orchards, Guide H-319',
  publisher: 'New Mexico State University Cooperative Extension Service',
  url: 'https://aces.nmsu.edu/pubs/_h/H319/welcome.html',
  mark: 'read',
} as const;

published(source, () => {
  // Young trees that do not bear yet, then mature trees with a heavy crop.
  expectTissue(source.id, {
    growth: [
      ['apple', 'not bearing', 24, 36, 'in'],
      ['apple', 'bearing', 6, 10, 'in'],
    ],
  });
});
