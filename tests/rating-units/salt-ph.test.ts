// pH in salt solutions: New South Wales 1988 (pHCa = 1.05 pHw − 0.9, abstract read), Poland 2016 (−1.95 + 11.58 log10 pHKCl, read),
// 0.6 between water and calcium chloride (New South Wales AC.19).
import { expect, test } from 'vitest';
import { reasonOf } from '../../src/json/reason.ts';
import { waterPhOf } from '../../src/rating/salt-ph.ts';
import { expectSourced, made } from './made.ts';

const water = (value: number, method: 'cacl2' | 'kcl' | null) => waterPhOf(made('ph-salt', value, 'pH', { method }))!;

test('calcium chloride 5.0: 5.6 by the difference, 5.62 by the line of 1988', () => {
  const f = water(5, 'cacl2');
  expect(f.value).toBe(5.6);
  expect(f.from.find((x) => x.step === 'ph-line')?.value).toBe(5.62);
  expect(reasonOf(f, 'en-US', 'us')).toContain('between 5.3 and 5.9');
});

// The line the other way: water 6.0 is 1.05 × 6 − 0.9 = 5.40.
test('calcium chloride 5.40 comes from water 6.0', () => {
  expect(water(5.4, 'cacl2').from.find((x) => x.step === 'ph-line')?.value).toBe(6);
});

test('potassium chloride 5.0: 6.14 in water, not 5.6', () => {
  const f = water(5, 'kcl');
  expect(f.value).toBe(6.14);
  expect(f.cite.source).toBe('poland-ph');
  expect(reasonOf(f, 'en-US', 'us')).toContain('potassium chloride');
});

test('a salt nobody names counts as calcium chloride; no value, no pH', () => {
  expect(water(5, null).value).toBe(5.6);
  expect(waterPhOf(made('ph-salt', null, 'pH'))).toBeNull();
});

test('nothing, or less, or a number no soil has, is no pH', () => { for (const v of [0, -1, 1e13]) expect(waterPhOf(made('ph-salt', v, 'pH'))).toBeNull(); });
test('each step says whose it is: the printed value, its low and its high end', () => {
  for (const [f, sources] of [[water(5, 'cacl2'), 4], [water(5, 'kcl'), 3]] as const) {
    expectSourced(f);
    expect([f.unit, f.of, f.from.length]).toEqual(['pH', 'soil', sources]);
    expect(f.from[0]).toMatchObject({ value: 5, step: 'printed-by-lab', of: 'soil', cite: { source: 'lab' } });
    for (const end of f.from.slice(1)) expect(end).toMatchObject({ of: 'soil', unit: 'pH', from: [f.from[0]] });
    expect((f.from[1]!.value + f.from[2]!.value) / 2).toBeCloseTo(f.value, 9);
    expect(f.from[1]!.value).toBeLessThan(f.value);
  }
});

// Florida's soils lab and a study of 2,500 European soils: water reads highest, then CaCl2, then KCl.
test('for the same reading KCl leads higher than CaCl2, up to pH 7.3', () => {
  for (let ph = 3.5; ph <= 7.3; ph += 0.1) expect(water(ph, 'kcl').value).toBeGreaterThan(water(ph, 'cacl2').value);
});
