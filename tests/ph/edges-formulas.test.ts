// What each formula and table of lime asks for, and how a need is read from them: inside, between, beyond. By hand from the figures that the publications named print.
// 1 t/ha is 100 g/m², a short ton to the acre 224.170, a pound to the acre 0.112085, to 1,000 sq ft 4.88243.
import { describe, expect, test } from 'vitest';
import { byFormula, columnsOf, testValue } from '../../src/ph/lime-formulas.ts';
import type { LimeNeed } from '../../src/ph/lime.ts';
import { limeNeed } from '../../src/ph/lime.ts';
import type { PhSoil } from '../../src/ph/soil.ts';
import { figure, told } from '../../src/reason/figure.ts';
import type { LimeFormula } from '../../src/tables/lime-equations.ts';
import { LIME_EQUATIONS, LIME_FORMULAS } from '../../src/tables/lime-equations.ts';
import { LIME_GRIDS } from '../../src/tables/lime-tests.ts';

const pH = (value: number) => told(value, 'pH', 'soil', 'test');
const soil = (ph: number, more: Partial<PhSoil> = {}): PhSoil => ({ now: pH(ph), buffer: null, acidity: null, aluminium: null, baseSaturation: null, calcium: null, exchangeableMagnesium: null, ecec: null, bufferCapacity: null, lime: null, depthM: null, texture: null, cec: null, carbonate: null, organic: null, magnesium: null, ...more });
/** A formula by its publication. */
const of = (source: string, test: Parameters<typeof byFormula>[1], value: number, goal: number, ground: PhSoil, plain = true): ReturnType<typeof byFormula> =>
  byFormula(LIME_FORMULAS.find((f): f is LimeFormula => f.cite.source === source && (f.organic === undefined) === plain)!, test, value, goal, ground);
const close = (found: unknown, wanted: number | string): void => { if (typeof wanted === 'number') expect(found).toBeCloseTo(wanted, 6); else expect(found).toBe(wanted); };

describe('formulas', () => {
  // Teagasc: (6.7 − SMP) × 12.5 t/ha, for a goal above 6.7 up to that.
  test.each([[6.2, 6.5, 6.25], [6.2, 6.9, 8.75], [7, 6.5, 0]])('Ireland, SMP %f to %f', (buffer, goal, rate) => { close(of('teagasc-lime', 'smp', buffer, goal, soil(5.5)), rate); });
  // North Carolina: acidity × (goal − pH) ÷ (6.6 − pH), of a Mehlich buffer four times what it lies under 6.6; no more than all of it, none at 6.5.
  test.each<[Parameters<typeof byFormula>[1], number, number, number, number | string]>([['acidity', 2, 5.6, 6.1, 1], ['mehlich-buffer', 6.1, 5.6, 6.1, 1], ['acidity', 2, 5.6, 6.8, 2], ['acidity', 2, 6.4, 6.5, 1], ['acidity', 2, 6.5, 6.5, 'beyond'], ['mehlich-buffer', 6.7, 5.6, 6.1, 0]])('North Carolina, %s %f from %f to %f', (test, value, now, goal, rate) => {
    close(of('north-carolina-bufftab', test, value, goal, soil(now)), rate);
  });
  // Georgia: two pounds to a ppm and unit of pH; a reading after 30 minutes is 1.4742 + 0.0023 × itself times as large at equilibrium.
  test.each([['equilibrium', 600], ['30 minutes', 1298.52]] as const)('Georgia, after %s', (after, rate) => { close(of('georgia-lbc', 'lime-buffer-capacity', 300, 6.5, soil(5.5, { bufferCapacity: { value: 300, after } })), rate); });
  test.each([['sand', 6], ['sandy loam', 7], ['loam', 7], ['clay', 8]] as const)('British factors, %s', (texture, factor) => { close(of('uk-lime-factors', 'place', 5.5, 6.5, soil(5.5, { texture })), factor); close(of('uk-lime-factors', 'place', 5.5, 6, soil(5.5, { texture })), factor / 2); });
  test('British factors without a texture', () => { close(of('uk-lime-factors', 'place', 5.5, 6.5, soil(5.5)), 'lacks'); });
  test('0.6 t/ha for each tenth', () => { close(of('uk-lime-rule', 'place', 5.5, 6.2, soil(5.5)), 4.2); });
  // Alabama: 1 and 4 tons from 5.0 to 6.5, sandy and clay; nothing is said of loam.
  test.each([['sand', 6.5, 1], ['sandy loam', 6.5, 1], ['clay', 6.5, 4], ['clay', 5.75, 2], ['loam', 6.5, 'lacks'], [null, 6.5, 'lacks']] as const)('Alabama, %s to %f', (texture, goal, rate) => { close(of('alabama-texture', 'place', 5, goal, soil(5, { texture })), rate); });
  // RB209, recalled: arable land to 6.7 on sands, loams and clays; between rows a straight line, from one to another goal their difference.
  test.each([['sand', 5, 6.7, 10], ['sandy loam', 5, 6.7, 12], ['loam', 5.5, 6.7, 8], ['clay', 5, 6.7, 14], ['sand', 5.25, 6.7, 8.5], ['clay', 6, 6.2, 2], ['loam', 6.7, 6.2, 0], ['loam', 4.9, 6.7, 'beyond'], ['loam', 5, 6.8, 'beyond'], [null, 5, 6.7, 'lacks']] as const)('RB209, %s from %f to %f', (texture, now, goal, rate) => {
    close(of('uk-rb209-lime', 'place', now, goal, soil(now, { texture })), rate);
  });
  test('RB209, organic soil, whatever its texture', () => { for (const texture of [null, 'sand', 'clay'] as const) close(of('uk-rb209-lime', 'place', 5.5, 6.2, soil(5.5, { texture }), false), 9); });
  // Tri-State, organic soils: 32.9 − 6.31 × pH tons, to 5.3.
  test.each([[5, 5.3, 1.35], [5, 5.2, 'beyond'], [5.3, 5.3, 0]] as const)('Tri-State, organic, from %f to %f', (now, goal, rate) => { close(of('tri-state-1995', 'place', now, goal, soil(now), false), rate); });
  // IUNG, recalled, t CaO/ha by pH in KCl: very light 3 up to 4.0, 2 up to 4.5, 1 up to 5.0; what lies between two classes belongs to the lower.
  test.each([['sand', 4, 3], ['sand', 4.05, 3], ['sand', 4.1, 2], ['sand', 5, 1], ['sand', 5.1, 0], ['sandy loam', 4.5, 3.5], ['loam', 5, 4.5], ['clay', 5.5, 6], ['clay', 7.1, 0], [null, 4, 'lacks']] as const)('Poland, %s at %f', (texture, kcl, rate) => {
    const now = figure(5.5, 'pH', 'soil', 'kcl-to-water', pH(1).cite, [pH(kcl)]);
    close(of('iung-lime', 'place', 5.5, 6.5, soil(5.5, { texture, now })), rate);
  });
  // 8 − 6.375 = 1.625, eight meq to the unit: 13 meq, from which another buffer is used.
  test('Adams-Evans ends where its own acidity fills the soil', () => {
    expect(of('alabama-adams-evans', 'adams-evans', 6.375, 6.5, soil(5))).toBe('beyond');
    expect(typeof of('alabama-adams-evans', 'adams-evans', 6.38, 6.5, soil(5))).toBe('number');
    expect(of('alabama-adams-evans', 'adams-evans', 7.5, 5, soil(6))).toBe(0);
  });
  // Penn State: at 4 meq 2,000 lb to 6.5 and 4,000 to 7.0, half way 3,000.
  test('between the two goals of exchangeable acidity', () => { close(of('penn-agronomy-guide', 'acidity', 4, 6.75, soil(5.5)), 3000); });
});

describe('equations and tables', () => {
  const columns = (source: string, test: Parameters<typeof columnsOf>[1], value: number, ground: PhSoil) => columnsOf([...LIME_EQUATIONS, ...LIME_GRIDS].find((r) => r.cite.source === source)!, test, value, ground).map((c) => [c.goal, Number(c.rate.toFixed(3))]);
  // Tri-State by index: 49.3 − 0.71 × 65 = 3.15, 60.4 − 0.87 × 65 = 3.85, 71.4 − 1.03 × 65 = 4.45; under 60 as at 60, over 68 nothing.
  test('Tri-State', () => {
    expect(columns('tri-state-1995', 'smp', 6.5, soil(5.5))).toEqual([[6, 3.15], [6.5, 3.85], [6.8, 4.45]]);
    expect(columns('tri-state-1995', 'smp', 5.5, soil(5.5))).toEqual([[6, 6.7], [6.5, 8.2], [6.8, 9.6]]);
    expect(columns('tri-state-1995', 'smp', 6.8, soil(5.5))[0]).toEqual([6, 1.02]);
    expect(columns('tri-state-1995', 'smp', 6.9, soil(5.5))).toEqual([[6, 0], [6.5, 0], [6.8, 0]]);
  });
  // Wisconsin: 72.7 − 7.59 × 6.5 − 3.78 × 5.5 = 2.575 to 6.0.
  test('Wisconsin goes by the pH too', () => { expect(columns('wisconsin-a2809', 'sikora', 6.5, soil(5.5)).find(([goal]) => goal === 6)).toEqual([6, 2.575]); });
  // Oregon, SIKORA 6.4: 0.9, 1.5, 2.1, 2.9, 3.8; at 6.45 half way to 6.5; at 4.7 as at 4.8; over 6.9 nothing.
  test('Oregon', () => {
    expect(columns('oregon-em9585', 'sikora', 6.4, soil(5.5))).toEqual([[5.6, 0.9], [6, 1.5], [6.4, 2.1], [6.8, 2.9], [7.2, 3.8]]);
    expect(columns('oregon-em9585', 'sikora', 6.45, soil(5.5)).map(([, rate]) => rate)).toEqual([0.8, 1.35, 1.95, 2.7, 3.55]);
    expect(columns('oregon-em9585', 'sikora', 4.7, soil(5.5)).map(([, rate]) => rate)).toEqual([6.1, 8.9, 12.2, 16.3, 23.2]);
    expect(columns('oregon-em9585', 'sikora', 6.9, soil(5.5)).map(([, rate]) => rate)).toEqual([0, 0, 0.5, 0.8, 1]);
  });
  test('the value of each test', () => {
    const ground = soil(5.5, { acidity: 1, aluminium: 2, ecec: 3, baseSaturation: 4, bufferCapacity: { value: 5, after: 'equilibrium' }, buffer: { value: 6, test: 'smp' } });
    expect((['acidity', 'aluminium', 'ecec', 'base-saturation', 'lime-buffer-capacity', 'smp', 'place', 'sikora'] as const).map((t) => testValue(ground, t))).toEqual([1, 2, 3, 4, 5, 6, 5.5, null]);
    expect((['lime-buffer-capacity', 'smp'] as const).map((t) => testValue(soil(5), t))).toEqual([null, null]);
  });
});

describe('a need', () => {
  const need = (ground: PhSoil, goal: number, region: string | null, suits = { low: 6, high: 7 }) => limeNeed(ground, pH(goal), region, suits);
  const read = (...given: Parameters<typeof need>): unknown => { const n = need(...given); return typeof n === 'string' ? n : [n.by, n.goal.value, Number((n.dugIn.value / 224.17).toFixed(3)), Number((n.depthM / 0.0254).toFixed(2)), n.elsewhere?.source ?? null]; };
  const smp = (value: number, more: Partial<PhSoil> = {}) => soil(5.2, { buffer: { value, test: 'smp' }, ...more });
  // NCR-221, SMP 6.5, tons of limestone of 90 in 8 in: 3.1 to 6.0, 3.8 to 6.5, 4.5 to 7.0. A goal under 6.0 is raised by half a unit at most, one over 7.0 lowered, where that still suits.
  test.each<[string, Parameters<typeof need>, unknown]>([
    ['as printed', [smp(6.5), 6.5, null], ['smp', 6.5, 3.42, 8, null]], ['between two goals', [smp(6.5), 6.25, null], ['smp', 6.25, 3.105, 8, null]], ['elsewhere', [smp(6.5), 6.5, 'FR'], ['smp', 6.5, 3.42, 8, 'ncr-221']], ['in four inches half as much', [smp(6.5, { depthM: 0.1016 }), 6.5, null], ['smp', 6.5, 1.71, 4, null]],
    ['raised', [smp(6.5), 5.8, null], ['smp', 6, 2.79, 8, null]], ['by half a unit', [smp(6.5), 5.5, null], ['smp', 6, 2.79, 8, null]], ['not by more', [smp(6.5), 5.4, null], 'no-rate'], ['nor to what does not suit', [smp(6.5), 5.8, null, { low: 5, high: 5.9 }], 'no-rate'], ['up to the edge', [smp(6.5), 5.8, null, { low: 5, high: 6 }], ['smp', 6, 2.79, 8, null]],
    ['lowered', [smp(6.5), 7.3, null], ['smp', 7, 4.05, 8, null]], ['not under what suits', [smp(6.5), 7.3, null, { low: 7.1, high: 8 }], 'no-rate'], ['down to the edge', [smp(6.5), 7.3, null, { low: 7, high: 8 }], ['smp', 7, 4.05, 8, null]],
    // Oregon's own SMP table, to 6.4 at 6.4: 2.2 tons in 6 in; a sub-region is served by its own.
    ['at home', [smp(6.4), 6.4, 'US-OR'], ['smp', 6.4, 2.2, 6, null]],
    // Its Sikora table elsewhere: to 6.2 at 6.4 1.8 tons.
    ['another buffer', [soil(5.5, { buffer: { value: 6.4, test: 'sikora' } }), 6.2, null], ['sikora', 6.2, 1.8, 6, null]],
    // Midwest, 10 meq, 60 % full, from 5.5 to 6.5: 2,667 lb, 1.333 tons; never where a buffer is told that has no table.
    ['by what fills the soil', [soil(5.5, { baseSaturation: 60, cec: 10 }), 6.5, 'US-KS'], ['base-saturation', 6.5, 1.333, expect.any(Number), 'midwest-base-saturation']], ['not beside a buffer', [soil(5.5, { baseSaturation: 60, cec: 10, buffer: { value: 6.5, test: 'woodruff' } }), 6.5, 'US-KS'], 'woodruff'], ['without a capacity', [soil(5.5, { baseSaturation: 60 }), 6.5, 'US-KS'], ['texture', 6.5, expect.any(Number), 6, null]],
    // Ohio, organic: 1.35 tons of 90 in 8 in, to 5.3.
    ['on muck', [soil(5, { organic: 25 }), 6.5, 'US-OH'], ['place', 5.3, 1.215, 8, null]],
  ])('%s', (_, given, expected) => { expect(read(...given)).toEqual(expected); });
  test('the acid end of a table is told', () => {
    const step = (value: number) => (need(soil(5.4, { buffer: { value, test: 'smp' } }), 6.5, null) as LimeNeed).dugIn.from[0]!.step;
    expect([step(5), step(4.95)]).toEqual(['lime-table', 'lime-table-end']);
  });
  test('the layers that it goes back to', () => {
    const depths = (depthM: number | null) => (need(smp(6.5, { depthM }), 6.5, null) as LimeNeed).dugIn.from.slice(1).map((f) => `${Number(f.value.toFixed(4))} ${f.of} ${f.step} ${f.cite.source}`);
    expect(depths(null)).toEqual(['0.2032 soil depth ncr-221']);
    expect(depths(0.1016)).toEqual(['0.1016 soil depth lab', '0.2032 soil depth ncr-221']);
  });
  // Britain, loam from 5.5 to 6.5: 0.6 t a tenth is 6; by factors 7; by rows 8 − 1.6. Penn State, 6 meq to 6.5: 90 + 20 × 0.2 ÷ 0.7 lb to 1,000 sq ft; its fields 6 × 840 lb to the acre.
  test('what other pages of the same test ask for', () => {
    const others = (...given: Parameters<typeof need>): number[] => (need(...given) as LimeNeed).others.map((o) => Number(o.rate.value.toFixed(1)));
    expect(others(soil(5.5, { texture: 'loam' }), 6.5, 'GB')).toEqual([600, 700, 640]);
    expect(others(soil(5.5), 6.5, 'GB')).toEqual([]);
    expect(others(soil(5.5, { acidity: 6 }), 6.5, 'US-PA')).toEqual([467.3, 564.9]);
    expect((need(soil(5.5, { acidity: 6 }), 6.5, 'US-PA') as LimeNeed).others.map((o) => Number((o.depthM / 0.0254).toFixed(6)))).toEqual([7, 7]);
  });
});
