// Washington State University, Tree Fruit Research and Extension Center, standard adequacy ranges after Shear and Faust 1980 (page of 2004). The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'washington-old-leaf',
  title: 'Leaf nutrient values',
  publisher: 'Washington State University',
  url: 'http://soils.tfrec.wsu.edu/webnutritiongood/TreeFruitStuff/leafnutrientvalues.htm',
  mark: 'read',
} as const;

// Printed for stone fruit as a whole.
const stone = [
  ['P', 0.12, 0.4, '%'],
  ['K', 1.0, 3.0, '%'],
  ['Ca', 0.7, 3.7, '%'],
  ['Mg', 0.25, 1.0, '%'],
  ['Mn', 20, 300, 'ppm'],
  ['B', 20, 80, 'ppm'],
  ['Zn', 12, 75, 'ppm'],
  ['Cu', 6, 25, 'ppm'],
  ['Fe', 20, 800, 'ppm'],
] as const;

published(source, () => {
  expectTissue(source.id, {
    leaf: [
      // Young and not bearing; young and bearing; mature soft kinds.
      ['apple', 'N', 2.4, 2.6, '%'],
      ['pear', 'N', 2.4, 2.6, '%'],
      ['apple', 'N', 2.2, 2.4, '%'],
      ['pear', 'N', 2.2, 2.4, '%'],
      ['apple', 'N', 1.8, 2.2, '%'],
      ['pear', 'N', 1.8, 2.2, '%'],
      ['cherry', 'N', 2.4, 3.4, '%'],
      ['plum', 'N', 2.4, 3.4, '%'],
      ['peach', 'N', 3.0, 4.0, '%'],
      // Apple magnesium, printed 0.2-3.5, is plainly a slip and is left out.
      ['apple', 'P', 0.11, 0.3, '%'],
      ['apple', 'K', 1.2, 2.0, '%'],
      ['apple', 'Ca', 1.5, 2.0, '%'],
      ['apple', 'Mn', 25, 150, 'ppm'],
      ['apple', 'B', 20, 50, 'ppm'],
      ['pear', 'B', 20, 50, 'ppm'],
      ['apple', 'Zn', 15, 200, 'ppm'],
      ['apple', 'Cu', 5, 20, 'ppm'],
      ['apple', 'Fe', 40, 400, 'ppm'],
      ...['peach', 'apricot', 'cherry', 'plum'].flatMap((crop) => stone.map(([what, low, high, unit]) => [crop, what, low, high, unit] as const)),
    ],
  });
});
