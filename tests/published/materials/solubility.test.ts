import { describe, expect, test } from 'vitest';
import { SOLUBILITIES } from '../../../src/tables/solubility.ts';
import { MATERIALS } from '../../../src/tables/materials.ts';
import { DEGREES, PRINTED } from './solubility.ts';

describe('solubility as printed', () => {
  test.each(Object.entries(PRINTED))('%s', (material, row) => {
    const expected = DEGREES.flatMap((d, i) => (row[i] === null ? [] : [[d, row[i]]]));
    expect(SOLUBILITIES.find((s) => s.material === material)?.at).toEqual(expected);
  });
  test('every row is of a material, and more dissolves in warmer water (practice)', () => {
    for (const { material, at } of SOLUBILITIES) {
      expect(MATERIALS.map((m) => m.id)).toContain(material);
      expect(at.every(([, g], i) => i === 0 || g > at[i - 1]![1])).toBe(true);
    }
  });
});
