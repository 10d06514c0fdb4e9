// Michigan State University, "Leaf Analysis Interpretation: Apples and Pears". The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'michigan-leaf',
  title: 'Leaf Analysis Interpretation: Apples and Pears',
  publisher: 'Michigan State University',
  url: null,
  mark: 'read',
} as const;

published(source, () => {
  // The normal column. The second range of nitrogen is for Golden Delicious and McIntosh kinds of apple.
  expectTissue(source.id, {
    leaf: [
      ['apple', 'N', 1.9, 2.7, '%'],
      ['apple', 'N', 1.7, 2.4, '%'],
      ['apple', 'P', 0.15, 0.3, '%'],
      ['apple', 'K', 1.3, 1.9, '%'],
      ['apple', 'Ca', 1.2, 2, '%'],
      ['apple', 'Mg', 0.3, 0.6, '%'],
      ['apple', 'B', 25, 50, 'ppm'],
      ['apple', 'Cu', 10, 20, 'ppm'],
      ['apple', 'Fe', 60, 250, 'ppm'],
      ['apple', 'Mn', 30, 100, 'ppm'],
      ['apple', 'Zn', 20, 50, 'ppm'],
      ['pear', 'N', 1.9, 2.7, '%'],
      ['pear', 'P', 0.15, 0.3, '%'],
      ['pear', 'K', 1.3, 1.9, '%'],
      ['pear', 'Ca', 1.2, 2, '%'],
      ['pear', 'Mg', 0.3, 0.6, '%'],
      ['pear', 'B', 25, 50, 'ppm'],
      ['pear', 'Cu', 10, 20, 'ppm'],
      ['pear', 'Fe', 60, 250, 'ppm'],
      ['pear', 'Mn', 30, 100, 'ppm'],
      ['pear', 'Zn', 20, 50, 'ppm'],
    ],
    growth: [
      ['apple', 'not bearing', 12, 24, 'in'],
      ['pear', 'not bearing', 12, 24, 'in'],
      ['apple', 'bearing', 8, 12, 'in'],
      ['pear', 'bearing', 8, 12, 'in'],
    ],
  });
});
