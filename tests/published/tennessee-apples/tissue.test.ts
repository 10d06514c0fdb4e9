// University of Tennessee (UTcrops), "Apples (commercial fruit and nut production)". The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'tennessee-apples',
  title: 'Apples (commercial fruit and nut production)',
  publisher: 'University of Tennessee (UTcrops)',
  url: 'https://utcrops.com/soil/commercial-fruit-and-nut-production/apples/',
  mark: 'read',
} as const;

published(source, () => {
  // Before bearing; grown trees without spurs; grown trees of spur kinds.
  expectTissue(source.id, {
    growth: [
      ['apple', 'not bearing', 15, 30, 'in'],
      ['apple', 'bearing', 12, 14, 'in'],
      ['apple', 'bearing', 6, 10, 'in'],
    ],
  });
});
