// Colorado State University Extension, "Fertilizing fruit trees (Planttalk Colorado 1216)". The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'colorado-1216',
  title: 'Fertilizing fruit trees (Planttalk Colorado 1216)',
  publisher: 'Colorado State University Extension',
  url: 'http://www.ext.colostate.edu/ptlk/1216.html',
  mark: 'read',
} as const;

published(source, () => {
  // Three kinds, before and after they bear.
  expectTissue(source.id, {
    growth: [
      ['apple', 'not bearing', 24, 36, 'in'],
      ['pear', 'not bearing', 12, 26, 'in'],
      ['peach', 'not bearing', 16, 24, 'in'],
      ['apple', 'bearing', 12, 24, 'in'],
      ['pear', 'bearing', 6, 12, 'in'],
      ['peach', 'bearing', 10, 18, 'in'],
    ],
  });
});
