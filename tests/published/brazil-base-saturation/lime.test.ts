// Brazil, lime by base saturation: T x (V2 - V1) / PRNT, t/ha, 0 to 20 cm; T is the exchange capacity at pH 7 in
// cmolc/dm3 and V2 70 % for fruit. Typed from research notes of the page (read, in teaching pages).
import { expect, test } from 'vitest';
import { published } from '../helpers.ts';
import { type Case, expectPrinted, G_PER_M2, near, ph } from '../ph.ts';

const source = {
  id: 'brazil-base-saturation',
  title: 'Calagem pelo método da saturação por bases',
  publisher: 'Brazilian base-saturation method',
  url: null,
  mark: 'read',
} as const;

const flags = (cec: number, saturation: number) => ({ where: 'Rio Grande do Sul, Brazil', now: 4.8, goal: 6.5, cec, 'base-saturation': saturation });

const toSeventy = (capacity: number, saturation: number): number => (capacity * (70 - saturation)) / 100;

// Exchange capacity and saturation now.
const points = [[4.5, 40], [6, 20], [8, 35], [10, 25], [10, 60], [12, 50], [15, 25], [18, 45], [20, 30]] as const;

published(source, () => {
  expectPrinted(source.id, 't/ha', points.map(([capacity, saturation]): Case => [flags(capacity, saturation), Number(toSeventy(capacity, saturation).toFixed(3))]));

  // The warning's own example: 50 mmolc/dm3 is 5.0 cmolc/dm3, and 40 to 70 % takes 1.5 t/ha, not 15.
  expectPrinted(source.id, 't/ha', [[flags(5, 40), 1.5]]);

  test('capacity 5, saturation 40 %: 1.5 t/ha of pure lime, 20 cm deep', async () => {
    const { row } = await ph({ ...flags(5, 40), material: 'Garden lime, CCE 100' });
    expect(row.verdict).toBe('lime');
    near(row.dugIn?.gPerM2, 1.5 * G_PER_M2['t/ha']);
    expect(row.dugIn?.depthM).toBeCloseTo(0.2, 3);
  });
});
