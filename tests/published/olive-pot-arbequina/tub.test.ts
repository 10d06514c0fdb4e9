// HortScience, Arbequina olives in 15-litre pots: 2.8 g of N a tree was enough, 5.6 g no better.
import { expectNeeds, published } from '../helpers.ts';

const source = { id: 'olive-pot-arbequina', title: 'Nitrogen Management for Improving Root and Shoot Components of Young Arbequina Olives', publisher: 'HortScience', url: 'https://vivo.library.tamu.edu/vivo/display/n397166SE', mark: 'read' } as const;

published(source, () => {
  expectNeeds([['olive, tub 15 L', { N: 2.8 }], ['olive, tub 30 L', { N: 5.6 }]]);
});
