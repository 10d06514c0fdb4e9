// Worked sums of what a crop takes off, from the rates that `sources` lists: a rate times a crop, to the print's last decimal.
// Typed from research notes (targets, section 14, W14, W15 and W22); P x 2.2914 is P2O5, K x 1.2046 is K2O.
import { describe, expect, test } from 'vitest';
import { answer } from '../helpers.ts';

interface Row {
  readonly table: string;
  readonly what: string;
  readonly value: number;
  readonly at: string;
}

// Washington prints a second row for green apples.
async function rate(source: string, crop: string, what: string, end: 'low' | 'high'): Promise<number> {
  const { result } = await answer(['sources', source, '--json']);
  const rows = (result.sources as { id: string; rows: Row[] }[]).find((one) => one.id === source)?.rows ?? [];
  const found = rows.filter((row) => row.table === 'removal' && row.what === `removal ${what} (${crop}) ${end}` && !row.at.includes('green'));
  expect(found).toHaveLength(1);
  return found[0]!.value;
}

// Source, crop, element, end, tons or tonnes, oxide factor, printed, half of its last step.
const sums = [
  ['W14, UC: 15 tons of peaches', 'california-peach-removal', 'peach', 'N', 'low', 15, 1, 68, 0.001],
  ['W14, UC: 15 tons of peaches', 'california-peach-removal', 'peach', 'P', 'low', 15, 1, 11, 0.001],
  ['W14, UC: 15 tons of peaches', 'california-peach-removal', 'peach', 'K', 'low', 15, 1, 86, 0.001],
  ['W14, UC: as P2O5', 'california-peach-removal', 'peach', 'P', 'low', 15, 2.2914, 25.2, 0.05],
  ['W14, UC: as K2O', 'california-peach-removal', 'peach', 'K', 'low', 15, 1.2046, 103.6, 0.05],
  ['W15, New Zealand: 10 t of avocados', 'nz-avocado-removal', 'avocado', 'N', 'low', 10, 1, 32.7, 0.001],
  ['W15, New Zealand: 10 t of avocados', 'nz-avocado-removal', 'avocado', 'P', 'low', 10, 1, 4.8, 0.001],
  ['W15, New Zealand: 10 t of avocados', 'nz-avocado-removal', 'avocado', 'K', 'low', 10, 1, 51.1, 0.001],
  ['W22, Washington: 40 lb of apples', 'washington-removal', 'apple', 'N', 'low', 40 / 2000, 1, 0.018, 0.0005],
  ['W22, Washington: 40 lb of apples', 'washington-removal', 'apple', 'N', 'high', 40 / 2000, 1, 0.042, 0.0005],
  ['W22, Washington: 40 lb of apples, P2O5', 'washington-removal', 'apple', 'P', 'low', 40 / 2000, 2.2914, 0.009, 0.0005],
  ['W22, Washington: 40 lb of apples, P2O5', 'washington-removal', 'apple', 'P', 'high', 40 / 2000, 2.2914, 0.018, 0.0005],
  ['W22, Washington: 40 lb of apples, K2O', 'washington-removal', 'apple', 'K', 'low', 40 / 2000, 1.2046, 0.048, 0.0005],
  ['W22, Washington: 40 lb of apples, K2O', 'washington-removal', 'apple', 'K', 'high', 40 / 2000, 1.2046, 0.094, 0.0005],
] as const;

describe('worked sums of removal', () => {
  for (const [by, source, crop, what, end, tons, factor, printed, within] of sums) {
    test(`${by}, ${what} ${end}: ${String(printed)}`, async () => {
      expect(Math.abs((await rate(source, crop, what, end)) * tons * factor - printed)).toBeLessThanOrEqual(within);
    });
  }
});
