// American Society for Horticultural Science, "Nutrient Removal from Olive Trees by Fruit Yield and Pruning". The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'olive-removal-cordoba',
  title: 'Nutrient Removal from Olive Trees by Fruit Yield and Pruning',
  publisher: 'American Society for Horticultural Science',
  url: null,
  mark: 'read',
} as const;

published(source, () => {
  // Grams in a kilogram of fresh fruit, as elements; phosphorus is given for a hectare only.
  expectTissue(source.id, {
    removal: [
      ['olive', 'N', 2.87, 2.87, 'kg/t'],
      ['olive', 'K', 4.42, 4.42, 'kg/t'],
    ],
  });
});
