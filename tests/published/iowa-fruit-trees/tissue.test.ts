// Iowa State University Extension and Outreach, "Should I fertilize my fruit trees?". The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'iowa-fruit-trees',
  title: 'Should I fertilize my fruit trees?',
  publisher: 'Iowa State University Extension and Outreach',
  url: 'https://hortnews.extension.iastate.edu/faq/should-i-fertilize-my-fruit-trees',
  mark: 'read',
} as const;

published(source, () => {
  // Fruit trees of every kind, before and after they bear.
  expectTissue(source.id, {
    growth: [
      ['apple', 'not bearing', 15, 30, 'in'],
      ['pear', 'not bearing', 15, 30, 'in'],
      ['peach', 'not bearing', 15, 30, 'in'],
      ['plum', 'not bearing', 15, 30, 'in'],
      ['apple', 'bearing', 8, 15, 'in'],
      ['pear', 'bearing', 8, 15, 'in'],
      ['peach', 'bearing', 8, 15, 'in'],
      ['plum', 'bearing', 8, 15, 'in'],
    ],
  });
});
