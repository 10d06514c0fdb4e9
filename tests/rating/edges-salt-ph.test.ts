// From a pH in water back to one in a salt: Poland 2016, −1.95 + 11.58 log10 of the pH in potassium chloride; calcium chloride 0.6 lower (New South Wales AC.19).
import { expect, test } from 'vitest';
import { cacl2PhOf, kclPhOf, waterPhOf } from '../../src/rating/salt-ph.ts';
import { figure } from '../../src/reason/figure.ts';
import { made } from '../rating-units/made.ts';

const water = (value: number) => figure(value, 'pH', 'soil', 'printed-by-lab', { source: 'lab', at: 'line 7', mark: 'read' });

// (6.14 + 1.95) / 11.58 = 0.69862, and ten to that power is 4.996.
test('potassium chloride from water, by the line the other way', () => {
  expect(kclPhOf(water(6.14))).toBe(5);
  // (7 + 1.95) / 11.58 = 0.77288: 5.928.
  expect(kclPhOf(water(7))).toBe(5.93);
});
test('where it was printed so, as it was printed', () => { expect(kclPhOf(waterPhOf(made('ph-salt', 5.123, 'pH', { method: 'kcl' }))!)).toBe(5.123); });
test('calcium chloride', () => { expect([cacl2PhOf(6.5), cacl2PhOf(5)]).toEqual([5.9, 4.4]); });
