// Teagasc, calculating lime advice, April 2023, by the SMP buffer: t/ha of ground limestone, 10 cm deep,
// (target SMP pH - measured SMP pH) x 12.5. Typed from research notes of the page (formula read, depth memory).
import { expect, test } from 'vitest';
import { published } from '../helpers.ts';
import { type Case, expectPrinted, ph } from '../ph.ts';

const source = {
  id: 'teagasc-lime',
  title: 'Calculating Lime Advice',
  publisher: 'Teagasc',
  url: 'https://www.teagasc.ie/about/farm-advisory/advisory-regions/cork-east/farm-advice/calculating-lime-advice/',
  mark: 'read',
} as const;

// The goal given is taken for the target SMP pH where it is above that of the example's grass, 6.7: of fruit no target was seen.
const flags = (buffer: number, goal: number) => ({ where: 'Ireland', now: 4.8, method: 'smp', buffer, goal });

const limestone = (target: number, measured: number): number => (target - measured) * 12.5;

// Target and measured SMP pH.
const points = [
  [6.7, 6.6], [6.7, 6.5], [6.7, 6.4], [6.7, 6.2], [6.7, 6.1], [6.7, 6.0], [6.7, 5.9], [7.0, 6.3], [7.0, 6.1], [7.0, 5.8],
] as const;

published(source, () => {
  expectPrinted(source.id, 't/ha', points.map(([target, measured]): Case => [flags(measured, target), Number(limestone(target, measured).toFixed(3))]));

  // The page's own example, grass on mineral soil.
  expectPrinted(source.id, 't/ha', [[flags(6.3, 6.7), 5.0]]);

  // An apple's goal of 6.5 is no target of the buffer: the example's 6.7 holds.
  expectPrinted(source.id, 't/ha', [[flags(6.3, 6.5), 5.0]]);

  test('measured 6.3, target 6.7: reckoned for 10 cm', async () => {
    const { row } = await ph({ ...flags(6.3, 6.7), material: 'Garden lime, CCE 100' });
    expect(row.verdict).toBe('lime');
    expect(row.dugIn?.depthM).toBeCloseTo(0.1, 3);
  });
});
