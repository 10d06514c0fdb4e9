// University of California ANR, quoted by Blue Diamond Growers, "Almond Production Manual: critical nutrient levels for July leaf analysis" (2023). The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'uc-almond-leaf',
  title: 'Almond Production Manual: critical nutrient levels for July leaf analysis',
  publisher: 'University of California ANR, quoted by Blue Diamond Growers',
  url: null,
  mark: 'read',
} as const;

published(source, () => {
  // The adequate column; potassium has a low end only.
  expectTissue(source.id, {
    leaf: [
      ['almond', 'N', 2.2, 2.5, '%'],
      ['almond', 'P', 0.1, 0.3, '%'],
    ],
  });
});
