// North Carolina Department of Agriculture, Agronomic Division, lime by Mehlich-buffer acidity:
// ton/acre of the state's standard agricultural lime, about 8 in deep, before any credit for lime not yet reacted.
// Typed from research notes of the page (formula read, depth memory).
import { expect, test } from 'vitest';
import { published } from '../helpers.ts';
import { type Flags, expectPrinted, ph } from '../ph.ts';

const source = {
  id: 'north-carolina-bufftab',
  title: 'Buffer factor table',
  publisher: 'North Carolina Department of Agriculture, Agronomic Division',
  url: 'http://www.ncagr.gov/agronomi/bufftab1.htm',
  mark: 'read',
} as const;

const flags = (now: number, buffer: number) => ({ where: 'North Carolina, US', now, method: 'mehlich-buffer', buffer });

const acidity = (buffer: number): number => (6.6 - buffer) * 4;
const tons = (now: number, goal: number, ac: number): number => (ac * (goal - now)) / (6.6 - now);

// Water pH, goal and buffer pH.
const points = [
  [4.8, 6.0, 6.4], [4.8, 6.5, 6.2], [5.0, 6.0, 6.2], [5.0, 6.5, 6.0], [5.2, 5.5, 6.1], [5.4, 6.5, 6.3],
  [5.6, 6.0, 6.25], [5.8, 6.5, 6.35], [4.6, 5.0, 5.6], [4.8, 6.2, 5.8],
] as const;

published(source, () => {
  expectPrinted(source.id, 'ton/acre', points.map(([now, goal, buffer]): readonly [Flags, number] => [
    { ...flags(now, buffer), goal }, Number(tons(now, goal, acidity(buffer)).toFixed(3)),
  ]));

  // By hand: 1.6 x 1.0 / 1.6; and the acidity straight from the report, 2.0 x 1.5 / 1.6 and 1.2 x 1.2 / 1.8.
  expectPrinted(source.id, 'ton/acre', [
    [{ ...flags(5.0, 6.2), goal: 6.0 }, 1.0],
    [{ where: 'North Carolina, US', now: 5.0, acidity: 2.0, goal: 6.5 }, 1.875],
    [{ where: 'North Carolina, US', now: 4.8, acidity: 1.2, goal: 6.0 }, 0.8],
  ]);

  test('buffer pH 6.2, water pH 5.0, goal 6.0: reckoned for about 8 in', async () => {
    const { row } = await ph({ ...flags(5.0, 6.2), goal: 6.0, material: 'Garden lime, CCE 100' });
    expect(row.verdict).toBe('lime');
    expect(row.dugIn?.depthM).toBeCloseTo(0.2, 2);
  });

  test('no lime where the water pH is already at the goal', async () => {
    const { row } = await ph({ ...flags(6.5, 6.2), goal: 6.5 });
    expect(row.verdict).toBe('leave');
    expect(row.gPerM2).toBe(0);
  });
});
