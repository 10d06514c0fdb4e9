// Rounding: deciding.md, Rounding. Half an ounce or 10 g, downward where the nearest would pass a limit, orchard total within 3 %.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { roundDose, roundTogether, stepOf, volumeOf } from '../../src/bags/round.ts';
import { MATERIALS } from '../../src/tables/materials.ts';

const OZ = 453.59237 / 16;
const whole = (g: number, step: number): boolean => Math.abs(g / step - Math.round(g / step)) < 1e-6;

describe('one dose', () => {
  test.each([
    // Worked by hand in deciding.md: 350 g is 12.4 oz, so 12 1/2; 61.3 g is 2.2 oz, so 2.
    [350.2, 'us', 12.5 * OZ], [61.3, 'us', 2 * OZ], [354, 'metric', 350], [356, 'metric', 360], [10, 'metric', 10], [94.9, 'metric', 90],
  ] as const)('%f g, %s', (g, system, to) => { expect(roundDose(g, system, Infinity)).toBeCloseTo(to, 6); });
  test('downward where the nearest passes the limit', () => {
    expect(roundDose(356, 'metric', 357)).toBe(350);
    expect(roundDose(350.2, 'us', 351)).toBeCloseTo(12 * OZ, 6);
    expect(roundDose(360, 'metric', 360)).toBe(360);
  });
  test('a small dose is not lost and not rounded up to a whole step', () => {
    const g = roundDose(3, 'metric', Infinity);
    expect(g).toBeGreaterThan(0);
    expect(Math.abs(g - 3)).toBeLessThanOrEqual(1);
  });
  test('any dose: never past its limit, near, on the scale', () => {
    fc.assert(fc.property(fc.double({ min: 0.5, max: 5000, noNaN: true }), fc.double({ min: 1, max: 2, noNaN: true }), fc.constantFrom('us', 'metric'), (g, room, system) => {
      const most = g * room;
      const r = roundDose(g, system, most);
      expect(r).toBeLessThanOrEqual(most * (1 + 1e-6));
      expect(r).toBeGreaterThan(0);
      expect(whole(r, stepOf(system) / 50)).toBe(true);
      if (g >= stepOf(system)) {
        expect(whole(r, stepOf(system))).toBe(true);
        expect(Math.abs(r - g)).toBeLessThan(stepOf(system) * (room > 1.6 ? 0.5 + 1e-9 : 1));
      }
    }));
  });
});

describe('an orchard\'s doses together', () => {
  const dose = fc.record({ g: fc.double({ min: 100, max: 2000, noNaN: true }), most: fc.constant(Infinity), count: fc.constant(1), share: fc.constant(0.21) });
  test.each(['us', 'metric'] as const)('total within 3 %%, %s', (system) => {
    // On a scale of steps no total can be met better than to half a step; where that is under 3 % of the plan, 3 % holds.
    fc.assert(fc.property(fc.array(dose, { minLength: 2, maxLength: 40 }), (doses) => {
      const rounded = roundTogether(doses, system);
      const [plan, got] = [doses, rounded.map((g) => ({ g }))].map((l) => l.reduce((s, d) => s + d.g, 0)) as [number, number];
      expect(Math.abs(got - plan)).toBeLessThanOrEqual(Math.max(0.03 * plan, stepOf(system) / 2) + 1e-6);
      rounded.forEach((g, i) => expect(Math.abs(g - doses[i]!.g)).toBeLessThanOrEqual(1.5 * stepOf(system) + 1e-6));
    }));
  });
  test('limits hold whatever the counts and shares', () => {
    fc.assert(fc.property(fc.array(fc.record({ g: fc.double({ min: 1, max: 900, noNaN: true }), room: fc.double({ min: 1, max: 1.1, noNaN: true }), count: fc.integer({ min: 1, max: 60 }), share: fc.double({ min: 0.01, max: 0.6, noNaN: true }) }), { minLength: 1, maxLength: 20 }), fc.constantFrom('us', 'metric'), (list, system) => {
      const doses = list.map(({ room, ...d }) => ({ ...d, most: d.g * room }));
      roundTogether(doses, system).forEach((g, i) => expect(g).toBeLessThanOrEqual(doses[i]!.most * (1 + 1e-6)));
    }));
  });
  test('nothing to round is nothing', () => { expect(roundTogether([], 'us')).toEqual([]); });
});

test('a volume is taken at the denser end of the printed spread (deciding.md, Rounding)', () => {
  // Sulphate of ammonia weighs up to 8.8 oz a cup of 236.6 mL: 8.8 oz fill one cup.
  const material = MATERIALS.find((m) => m.id === 'ammonium-sulphate')!;
  expect(volumeOf(8.8 * OZ, { material })).toBeCloseTo(236.588, 0);
  expect(volumeOf(100, { material: null })).toBeNull();
  // A level cup that was weighed comes first; a liquid by its label's density.
  expect(volumeOf(210, { material, cupG: 210 })).toBeCloseTo(236.588, 3);
  expect(volumeOf(120, { material: null, density: 1.2 })).toBeCloseTo(100, 9);
});
