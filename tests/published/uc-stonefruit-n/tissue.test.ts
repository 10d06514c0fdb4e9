// University of California Agriculture and Natural Resources, "Nitrogen (Fruit Report: Nutrition and Fertilization)". The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'uc-stonefruit-n',
  title: 'Nitrogen (Fruit Report: Nutrition and Fertilization)',
  publisher: 'University of California Agriculture and Natural Resources',
  url: 'https://ucanr.edu/sites/fruitreport/Nutrition_-_Fertilization/Individual_Nutrients/Nitrogen',
  mark: 'read',
} as const;

published(source, () => {
  // Leaf N in midsummer.
  expectTissue(source.id, {
    leaf: [
      ['peach', 'N', 2.6, 3, '%'],
      ['nectarine', 'N', 2.6, 3, '%'],
      ['plum', 'N', 2.3, 2.8, '%'],
    ],
  });
});
