// UMass Extension, "F-124: Nutrient Recommendations for Apples". The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'umass-f124',
  title: 'F-124: Nutrient Recommendations for Apples',
  publisher: 'UMass Extension',
  url: 'https://www.umass.edu/agriculture-food-environment/fruit/fact-sheets/f-124-nutrient-recommendations-for-apples',
  mark: 'read',
} as const;

published(source, () => {
  // Leaf N for hard kinds, then for soft kinds; growth of half a foot to two feet before bearing.
  // K and Mg stand in the older copy of the same sheet, for all kinds.
  expectTissue(source.id, {
    leaf: [
      ['apple', 'N', 2.2, 2.4, '%'],
      ['apple', 'N', 1.8, 2.2, '%'],
      ['apple', 'K', 1.2, 1.8, '%'],
      ['apple', 'Mg', 0.35, 0.5, '%'],
    ],
    growth: [
      ['apple', 'not bearing', 0.5 * 12, 2 * 12, 'in'],
      ['apple', 'bearing', 8, 15, 'in'],
    ],
  });
});
