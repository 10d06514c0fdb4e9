// Ontario Ministry of Agriculture, Food and Rural Affairs, "Foliar Nutrient Sufficiency Range of Apple". The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'ontario-apple-leaf',
  title: 'Foliar Nutrient Sufficiency Range of Apple',
  publisher: 'Ontario Ministry of Agriculture, Food and Rural Affairs',
  url: 'http://www.omafra.gov.on.ca/IPM/english/apples/plant-nutrition/nutrient-sufficiency-range.html',
  mark: 'read',
} as const;

published(source, () => {
  // Three groups of kinds differ in N, K and Ca: Delicious and Crispin, Empire and Spy, McIntosh and others.
  expectTissue(source.id, {
    leaf: [
      ['apple', 'N', 2.2, 2.7, '%'],
      ['apple', 'N', 2.1, 2.6, '%'],
      ['apple', 'N', 2, 2.5, '%'],
      ['apple', 'K', 1.4, 2.2, '%'],
      ['apple', 'K', 1.3, 2.1, '%'],
      ['apple', 'K', 1.2, 2, '%'],
      ['apple', 'Ca', 0.8, 1.5, '%'],
      ['apple', 'Ca', 0.7, 1.5, '%'],
      ['apple', 'P', 0.15, 0.4, '%'],
      ['apple', 'Mg', 0.25, 0.4, '%'],
      ['apple', 'Fe', 25, 200, 'ppm'],
      ['apple', 'B', 20, 60, 'ppm'],
      ['apple', 'Zn', 15, 100, 'ppm'],
      ['apple', 'Mn', 20, 200, 'ppm'],
    ],
  });
});
