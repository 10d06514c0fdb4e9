// Lime without a test, the lab's own rate, on the surface and dug in, up to its limits: asked of the parts themselves, by hand.
// A pound to 100 sq ft is 453.59237 ÷ 9.290304 = 48.8243 g/m², a short ton to the acre 224.170.
import { describe, expect, test } from 'vitest';
import type { LimeNeed } from '../../src/ph/lime.ts';
import { limeDose, limeNeed, limeRates } from '../../src/ph/lime.ts';
import type { PhSoil } from '../../src/ph/soil.ts';
import { bufferTest, isLimeIndex, phSoilOf } from '../../src/ph/soil.ts';
import type { Rated } from '../../src/rating/rate.ts';
import { told } from '../../src/reason/figure.ts';

const soil = (ph: number, more: Partial<PhSoil> = {}): PhSoil => ({ now: told(ph, 'pH', 'soil', 'test'), buffer: null, acidity: null, aluminium: null, baseSaturation: null, calcium: null, exchangeableMagnesium: null, ecec: null, bufferCapacity: null, lime: null, depthM: null, texture: null, cec: null, carbonate: null, organic: null, magnesium: null, ...more });
const wide = { low: 6, high: 7 };
const need = (ground: PhSoil, goal: number, region: string | null = null): LimeNeed => {
  const found = limeNeed(ground, told(goal, 'pH', 'soil', 'test'), region, wide);
  if (typeof found === 'string') throw new Error(found);
  return found;
};
const refused = (ground: PhSoil, region: string | null = null): unknown => limeNeed(ground, told(6.5, 'pH', 'soil', 'test'), region, wide);

describe('by texture alone', () => {
  // lb of limestone to 100 sq ft up to 6.5: light, medium and heavy 8, 10.5 and 15 from 5.0; 3, 4 and 5.5 from 6.0; between rows a straight line. An unknown texture takes least.
  test.each([['sand', 5, 6.5, 8], ['sandy loam', 5, 6.5, 8], ['loam', 5, 6.5, 10.5], ['clay', 5, 6.5, 15], [null, 5, 6.5, 8], ['loam', 5.25, 6.5, 9.25], ['loam', 5, 6, 6.5], ['clay', 6, 6.5, 5.5], ['sand', 4, 6.5, 11.5], ['loam', 6.5, 6, 0]] as const)('%s from %f to %f', (texture, now, goal, pounds) => {
    const found = need(soil(now, { texture }), goal);
    expect([found.by, found.goal.value, found.dugIn.value / 48.8243, found.depthM / 0.0254].map((x) => (typeof x === 'number' ? Number(x.toFixed(3)) : x))).toEqual(['texture', goal, pounds, 6]);
    expect(found.dugIn.from[0]!.from.map((f) => f.value)).toEqual([now, goal]);
  });
  // Another page: a full unit 35, 50 or 70 lb to 1,000 sq ft, on the surface.
  test.each([['sand', 35], [null, 35], ['loam', 50], ['clay', 70]] as const)('%s by the unit of pH', (texture, pounds) => {
    const { others, dugIn } = need(soil(5, { texture }), 6.5);
    expect(others.map((o) => [o.surface === true, o.depthM])).toEqual([[false, expect.closeTo(0.1524, 9)], [true, 0]]);
    expect([others[0]!.rate.value / dugIn.value, others[1]!.rate.value / 4.88243]).toEqual([1, expect.closeTo(pounds * 1.5, 3)]);
  });
  test('over the goal neither asks for any', () => { expect(need(soil(6.5, { texture: 'loam' }), 6).others.map((o) => o.rate.value)).toEqual([0, 0]); });
  // A rate of six inches reaches two from the top: a third. What is told for the surface is dug in by nobody.
  test('as it goes on', () => {
    const found = need(soil(5, { texture: 'loam' }), 6.5);
    expect(limeRates(found, false).map((r) => Number(r.value.toFixed(1)))).toEqual([170.9, 366.2]);
    expect(limeRates(found, true).map((r) => Number(r.value.toFixed(1)))).toEqual([512.7]);
  });
});

describe('the lab says how much', () => {
  test('in six inches, or as deep as it tells', () => {
    const lime = told(2, 'ton/acre', 'lime', 'test');
    const found = need(soil(5.5, { lime, buffer: { value: 4, test: 'smp' }, organic: 40 }), 6.5, 'US-KS');
    expect([found.by, found.dugIn.value, found.depthM, found.others, found.goal.value]).toEqual(['lab', expect.closeTo(448.34, 2), expect.closeTo(0.1524, 9), [], 6.5]);
    expect(need(soil(5.5, { lime, depthM: 0.2 }), 6.5).depthM).toBe(0.2);
    expect(limeRates(found, true)).toEqual([]);
  });
  const of = (value: number, unit: string): PhSoil['lime'] => phSoilOf([['ph', 5.5, 'pH'], ['lime-requirement', value, unit]].map(([item, v, u]) => ({ reading: { item, value: v, unit: u, method: null, lab: { rating: null }, place: { line: 7 } }, mgPerKg: null }) as unknown as Rated), undefined)!.lime;
  test.each([['lb/100sqft', 'lb/100 sq ft'], ['lb/1000sqft', 'lb/1000 sq ft'], ['ton/acre', 'ton/acre'], ['t/ha', 't/ha'], ['lb/acre', 'lb/acre'], ['kg/ha', 'kg/ha'], ['g/m2', 'g/m2'], ['dt/ha', 'dt/ha']])('in %s', (unit, as) => {
    expect(of(2, unit)).toMatchObject({ value: 2, unit: as, of: 'lime', step: 'printed-by-lab', from: [], cite: { source: 'lab', at: 'line 7' } });
  });
  // CaCO3 weighs 100.087 for 56.077 of CaO: 1.7848 times. A ton of pure fine lime has 800 lb of ENM (Missouri) or 2,000 lb of ENP (Ohio).
  test.each([['t CaO/ha', 't/ha', 3.5696, 'lime-from-oxide', [2]], ['dt CaO/ha', 'dt/ha', 3.5696, 'lime-from-oxide', [2]], ['kg CaO/ha', 'kg/ha', 3.5696, 'lime-from-oxide', [2]], ['lb ENM/acre', 'lb/acre', 5, 'lime-from-enm', [2, 800]], ['lb ENP/acre', 'lb/acre', 2, 'lime-from-enp', [2, 2000]]])('in %s', (unit, as, value, step, from) => {
    const lime = of(2, unit)!;
    expect([lime.unit, Number(lime.value.toFixed(3)), lime.of, lime.step, lime.from.map((f) => f.value)]).toEqual([as, Number(value.toFixed(3)), 'lime', step, from]);
  });
  test.each(['ppm', 'index'])('%s is no rate of lime', (unit) => { expect(of(2, unit)).toBeNull(); });
});

describe('buffers that tell nothing', () => {
  // A buffer half a unit or more under the soil is none; Mehlich's starts so low that it may be.
  test('so far under the soil', () => {
    expect(refused(soil(6, { buffer: { value: 5.5, test: 'smp' } }), 'US-OH')).toBe('buffer-under');
    expect(refused(soil(6, { buffer: { value: 5.6, test: 'smp' } }), 'US-OH')).not.toBe('buffer-under');
    expect(refused(soil(6, { buffer: { value: 5.5, test: 'mehlich-buffer' } }), 'US-NC')).not.toBe('buffer-under');
  });
  test('of which no table is held', () => {
    expect(refused(soil(6, { buffer: { value: 6.5, test: 'woodruff' } }))).toBe('woodruff');
    expect(refused(soil(6, { buffer: { value: 6.5, test: 'modified-mehlich' } }))).toBe('modified-mehlich');
    expect(refused(soil(6, { buffer: { value: 6.5, test: null } }))).toMatchObject({ by: 'texture' });
  });
  test('peat without its organic matter', () => { expect(refused(soil(5, { peat: true }), 'US-KS')).toBe('organic-soil'); });
  // A lime test index is ten times an SMP buffer pH (Ohio).
  test.each([[65, null, { value: 6.5, test: 'smp' }], [40, null, { value: 4, test: 'smp' }], [80, 'smp', { value: 8, test: 'smp' }], [65, 'woodruff', { value: 6.5, test: 'woodruff' }], [6.5, null, { value: 6.5, test: null }], [6.5, 'sikora', { value: 6.5, test: 'sikora' }], [6.5, 'olsen', { value: 6.5, test: null }]])('%f by %j', (value, method, expected) => {
    expect(phSoilOf([['ph', 5.5, null], ['buffer-ph', value, method]].map(([item, v, m]) => ({ reading: { item, value: v, unit: 'pH', method: m, lab: { rating: null }, place: { line: 1 } }, mgPerKg: null }) as unknown as Rated), undefined)!.buffer).toEqual(expected);
  });
  test('an index by its size', () => {
    expect([39.9, 40, 80, 80.1].map(isLimeIndex)).toEqual([false, true, true, false]);
    expect([bufferTest('smp'), bufferTest('olsen'), bufferTest(null)]).toEqual(['smp', null, null]);
  });
});

describe('this year, up to the limit', () => {
  const of = (grams: number, inches: number): LimeNeed => ({ goal: told(6.5, 'pH', 'soil', 'test'), by: 'lab', dugIn: told(grams, 'g/m2', 'lime', 'test'), depthM: inches * 0.0254, others: [] });
  const dose = (grams: number, inches: number, strength: number, ground: PhSoil, digIn = false) => limeDose(of(grams, inches), strength, ground, digIn);
  // Whatcom's report: 44 dug in 8 in deep is 11 on the surface; a rate for one inch is not raised.
  test('on the surface', () => {
    expect(dose(44, 8, 1, soil(5, { texture: 'loam' })).value).toBeCloseTo(11, 9);
    expect(dose(44, 1, 1, soil(5, { texture: 'loam' })).value).toBe(44);
    expect(dose(44, 8, 1, soil(5, { texture: 'loam' }), true).value).toBe(44);
  });
  // North Carolina: a ton to the acre a year, 224.17 g; on light soil 200 g under pH 5.3, else 180 (North Rhine-Westphalia). Of hydrated lime (135 %) less, of a weak one no more.
  test.each([['loam', 5, 1, 224.17], ['clay', 5, 1, 224.17], [null, 5, 1, 224.17], ['sand', 5.2, 1, 200], ['sand', 5.3, 1, 180], ['sandy loam', 5.2, 1, 200], ['loam', 5, 1.35, 166.052], ['loam', 5, 0.5, 224.17]] as const)('%s at %f, strength %f', (texture, ph, strength, most) => {
    const found = dose(3000, 6, strength, soil(ph, { texture }));
    expect(found.value).toBeCloseTo(most, 2);
    expect([found.step, found.from.map((f) => f.step)]).toEqual(['lime-limited', [strength === 1 ? 'lime-surface' : 'lime-strength', 'lime-limit']]);
    // What others allow: 50 lb to 1,000 sq ft, 2 tons to the acre, 10 lb to 100 sq ft; on light soil also the orchard's ton.
    expect(found.from[1]!.from.map((f) => Math.round(f.value)).sort((a, b) => a - b)).toEqual(texture === 'sand' || texture === 'sandy loam' ? [224, 244, 448, 488] : [244, 448, 488]);
  });
  test('just as much is no more than the limit', () => { expect(dose(180, 2, 1, soil(6, { texture: 'sand' })).step).toBe('lime-surface'); });
  // 200 lb to 1,000 sq ft dug in, 976.49 g of pure lime: of one half as strong twice that.
  test.each([[1, 976.486], [0.5, 1952.971], [1.35, 723.323]])('dug in, strength %f', (strength, most) => {
    const found = dose(3000, 6, strength, soil(5, { texture: 'sand' }), true);
    expect(found.value).toBeCloseTo(most, 2);
    expect(found.step).toBe('lime-dug-limited');
  });
});
