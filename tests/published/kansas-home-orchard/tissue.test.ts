// Kansas State University Research and Extension, "Fertilizing the Home Orchard" (2021). The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'kansas-home-orchard',
  title: 'Fertilizing the Home Orchard',
  publisher: 'Kansas State University Research and Extension',
  url: 'https://www.ksuhortnewsletter.org/newsletters/previous/2',
  mark: 'read',
} as const;

published(source, () => {
  // Last year's growth, without an age.
  expectTissue(source.id, {
    growth: [
      ['apple', 'bearing', 8, 10, 'in'],
      ['cherry', 'bearing', 10, 12, 'in'],
      ['peach', 'bearing', 12, 15, 'in'],
    ],
  });
});
