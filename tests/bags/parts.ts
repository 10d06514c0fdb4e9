/** Shared by the tests that ask the parts of a purchase themselves: bags as plain data, no label read. */
import type { Bag } from '../../src/orchard/bag.ts';

export const OZ = 453.59237 / 16;
export const dollars = (amount: number): NonNullable<Bag['price']> => ({ amount, currency: '$' });
/** A bag of so many percent of N, P2O5 and K2O. */
export const feed = (label: string, [n, p, k]: readonly [number, number, number], more: Partial<Bag> = {}): Bag => ({
  label, printed: `${n}-${p}-${k}`, grade: { N: n / 100, P2O5: p / 100, K2O: k / 100 }, others: {}, g: null, price: null, left: null, material: null, organic: null,
  nitrate: false, slowShare: 0, slow: false, liquid: false, chloride: false, weedKiller: false, place: { file: 'orchard.yaml', line: 1, column: 1, length: 1, source: '' }, ...more,
});
