// Clark and Zheng, HortScience 55(3):304-309 (2020): in a 5-gallon pot controlled-release feed of 4.4 to 7.3 g of N grew healthy plants; more did harm.
// A US gallon is 231 in³, 3.785411784 L.
import { expectNeeds, published } from '../helpers.ts';

const source = { id: 'potted-blueberry-clark-zheng', title: 'Fertilization Methods for Organic and Conventional Potted Blueberry Plants', publisher: 'HortScience', url: 'https://doi.org/10.21273/HORTSCI14416-19', mark: 'read' } as const;

published(source, () => {
  expectNeeds([
    ['blueberry, tub 5 gal', { N: 4.4 }],
    ['blueberry, tub 10 L', { N: (4.4 * 10) / (5 * 3.785411784) }],
  ]);
});
