// Michigan State University Extension - Oakland County, "Fertilizing Fruit Trees, OC414". The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'michigan-oc414',
  title: 'Fertilizing Fruit Trees, OC414',
  publisher: 'Michigan State University Extension - Oakland County',
  url: null,
  mark: 'read',
} as const;

published(source, () => {
  // A rule of thumb for peach and apple, without an age.
  expectTissue(source.id, {
    growth: [
      ['peach', 'bearing', 12, 18, 'in'],
      ['apple', 'bearing', 8, 12, 'in'],
    ],
  });
});
