// Lime, sulphur or a reasoned no at the edges between them, and the words and curve that go with each, asked of the planner itself.
// Figures: Michigan and others as typed in tests/published; the edges of the rules as the sources in src/tables/lime.ts and sulphur.ts print them, typed again.
import { describe, expect, test } from 'vitest';
import { curveOf } from '../../src/ph/curve.ts';
import { saidFor } from '../../src/ph/lime-formulas.ts';
import type { PhAsk, PhPlan } from '../../src/ph/ph.ts';
import { phFacts, phPlan, phSentence, plantingDepth } from '../../src/ph/ph.ts';
import type { PhSoil } from '../../src/ph/soil.ts';
import { told } from '../../src/reason/figure.ts';

const soil = (ph: number, more: Partial<PhSoil> = {}): PhSoil => ({ now: told(ph, 'pH', 'soil', 'test'), buffer: null, acidity: null, aluminium: null, baseSaturation: null, calcium: null, exchangeableMagnesium: null, ecec: null, bufferCapacity: null, lime: null, depthM: null, texture: null, cec: null, carbonate: null, organic: null, magnesium: null, ...more });
const ask = (crop: PhAsk['crop'], ground: PhSoil, more: Partial<PhAsk> = {}): PhAsk => ({ crop, word: crop, soil: ground, strength: { lime: 1, sulphur: 1 }, region: null, stopped: false, awaitsRetest: false, ...more });
const plan = (...given: Parameters<typeof ask>): PhPlan => phPlan(ask(...given))!;
const said = (...given: Parameters<typeof ask>): string => { const { verdict, reason } = plan(...given); return `${verdict}, ${reason}`; };

describe('which answer', () => {
  // Washington's tree fruit 6.0 to 7.5 with EcoCrop's apple 6 to 7; quince 6 to 6.5, at most 7; Florida citrus 6.0 to 6.5, limed under 5.5; blueberry from 4.0.
  test.each<[string, Parameters<typeof ask>, string]>([
    ['inside', ['apple', soil(6)], 'leave, inside'], ['at the upper edge', ['apple', soil(7.5)], 'leave, inside'], ['the goal told is there', ['apple', soil(6.2), { goal: 6.2 }], 'leave, goal-is-now'], ['the goal told lies higher', ['apple', soil(6.2), { goal: 6.5 }], 'lime, texture'], ['inside while a retest is due', ['apple', soil(6.5), { awaitsRetest: true }], 'leave, inside'],
    ['below', ['apple', soil(5.5)], 'lime, texture'], ['below and awaiting a retest', ['apple', soil(5.5), { awaitsRetest: true }], 'leave, retest'], ['below with salts to settle', ['apple', soil(5.5), { stopped: true }], 'leave, stopped-lime'],
    // Lime is worth while from 0.2 below what is wanted (Tri-State); a goal that was told is sought even so.
    ['nearly there', ['apple', soil(6.4), { goal: 6.5 }], 'lime, texture'],
    ['tolerated where its own place does not lime', ['citrus', soil(5.5), { word: 'orange', region: 'US-FL' }], 'leave, tolerated-low'], ['limed from there', ['citrus', soil(5.4), { word: 'orange', region: 'US-FL' }], 'lime, texture'], ['a goal is sought even so', ['citrus', soil(5.5), { word: 'orange', region: 'US-FL', goal: 6 }], 'lime, texture'],
    ['a bush, acid enough', ['blueberry', soil(4.5), { region: 'US-TN' }], 'leave, acid-enough'], ['a bush asked for more', ['blueberry', soil(4.5), { goal: 4.8 }], 'lime, texture'],
    ['above, and nobody asked', ['quince', soil(6.6)], 'leave, tolerated'], ['at what it bears at most', ['quince', soil(7)], 'leave, tolerated'], ['beyond it', ['quince', soil(7.1)], 'leave, beyond'],
    ['a tree over free lime', ['quince', soil(7.6)], 'cannot, too-high'], ['at its edge', ['quince', soil(7.5)], 'leave, beyond'], ['a tree on carbonate', ['quince', soil(7.1, { carbonate: 0.1 })], 'cannot, free-lime'], ['no carbonate', ['quince', soil(7.1, { carbonate: 0 })], 'leave, beyond'],
    ['a bush over 7', ['blueberry', soil(7.1)], 'cannot, too-high'], ['a bush at 7', ['blueberry', soil(7)], 'sulphur, sulphur'], ['a bush with salts to settle', ['blueberry', soil(6), { stopped: true }], 'leave, stopped'], ['a tree asked for less', ['apple', soil(7.2), { goal: 6.5 }], 'sulphur, sulphur'],
    ['a buffer that is none', ['apple', soil(5.5, { buffer: { value: 5, test: 'smp' } })], 'cannot, buffer-under'], ['a lab that says none', ['apple', soil(5.5, { lime: told(0, 't/ha', 'lime', 'test') })], 'leave, test-disagrees'],
    ['a lab that says none, not far under', ['apple', soil(5.75, { lime: told(0, 't/ha', 'lime', 'test') })], 'leave, none-needed'],
  ])('%s', (_, given, expected) => { expect(said(...given)).toBe(expected); });
  test('no range is held', () => { expect(phPlan(ask('other', soil(6), { word: 'a plant that nobody has heard of' }))).toBeNull(); });
  test('a dose stands only where something is spread', () => {
    const left = plan('apple', soil(5.5), { stopped: true });
    expect([left.dose, left.dugIn, left.range, left.swallowed, left.rates, left.instead]).toEqual([null, null, null, null, [], []]);
  });
});

describe('lime', () => {
  // Loam from 5.5 to 6.5 takes 8 lb to 100 sq ft in 6 in, a third of it on the surface: 2.667 lb, 130.2 g; by another page 50 lb to 1,000, 244.1 g.
  test('the lesser and the greater', () => {
    const { dose, range, rates, goal, dugIn } = plan('apple', soil(5.5, { texture: 'loam' }), { goal: 6.5 });
    expect([dose!.value, range![0].value, range![1].value, ...rates.map((r) => r.value)].map((x) => Number(x.toFixed(1)))).toEqual([130.2, 130.2, 244.1, 130.2, 244.1]);
    expect([goal.value, goal.cite.source, dugIn!.by]).toEqual([6.5, 'grower', 'texture']);
  });
  test('dug in there is one page alone', () => {
    const { dose, range, rates } = plan('apple', soil(5.5, { texture: 'loam' }), { goal: 6.5, digIn: true });
    expect([Number(dose!.value.toFixed(1)), range, rates.length]).toEqual([390.6, null, 1]);
  });
  // Penn State: dug in 6 to 8 in deep. A sample of 4 in counts as 6, one of 8 in stays; the lab's own rate is for its own layer.
  test('a hole is dug six inches at the least', () => {
    expect(plantingDepth()).toBeCloseTo(0.1524, 9);
    const smp = (depthM: number, more: Partial<PhAsk> = {}) => plan('apple', soil(5.5, { buffer: { value: 6.5, test: 'smp' }, depthM }), { goal: 6.5, region: 'US-OH', ...more }).dugIn!.depthM;
    expect([smp(0.1016, { digIn: true }), smp(0.2032, { digIn: true }), smp(0.1016)].map((x) => Number(x.toFixed(4)))).toEqual([0.1524, 0.2032, 0.1016]);
    expect(plan('apple', soil(5.5, { lime: told(2, 't/ha', 'lime', 'test'), depthM: 0.1 }), { goal: 6.5, digIn: true }).dugIn!.depthM).toBe(0.1);
  });
});

describe('sulphur', () => {
  // Sand from 6 to 5: Purdue's 7 lb to 1,000 sq ft, 34.18 g, is the least and just over a year's 34.177; Maine's 1,000 lb to the acre the most.
  test('for a bush', () => {
    const { dose, range, instead } = plan('blueberry', soil(6, { texture: 'sand' }), { goal: 5, strength: { lime: 1, sulphur: 0.9 } });
    expect([range![0].value, range![1].value].map((x) => Number(x.toFixed(2)))).toEqual([34.18, 112.09]);
    expect(dose!.value).toBeCloseTo(34.177 / 0.9, 2);
    // As strong as pure sulphur, whatever the product: 2.061 times its weight of ammonium sulphate.
    expect(instead.find((i) => i.id === 'ammonium-sulphate')!.rate.value).toBeCloseTo(34.177 * 2.061, 1);
    expect(instead.map((i) => i.id)).not.toContain('aluminium-sulphate');
  });
  // 1 % of carbonate takes 6,400 lb to the acre (AGVISE), 717.3 g/m², at 34.18 g a year 21 years; 0.5 % 10.5, so 11.
  test.each([[0.5, 0.5, 11], [1, 1, 21], [null, 1, 21]])('free lime of %j %%', (carbonate, percent, years) => {
    const { swallowed, reason } = plan('pear', soil(8, { carbonate }), { goal: 6.5 });
    expect([reason, swallowed!.percent, swallowed!.years, swallowed!.sulphur.value]).toEqual([carbonate === null ? 'too-high' : 'free-lime', percent, years, 6400 * percent]);
  });
});

describe('what is said', () => {
  const sentence = (crop: PhAsk['crop'], given: Parameters<typeof ask>, bed?: boolean): string => phSentence(plan(...given), crop, bed);
  test('by crop, by bed and by how far', () => {
    expect(sentence('pear', ['pear', soil(8)])).toBe('ph-too-high-tree');
    expect(sentence('pear', ['pear', soil(8, { carbonate: 1 })])).toBe('ph-free-lime-tree');
    expect(sentence('blueberry', ['blueberry', soil(8)])).toBe('ph-too-high');
    expect(sentence('blueberry', ['blueberry', soil(8, { carbonate: 1 })])).toBe('ph-free-lime');
    // Ontario: above 6 it is hard.
    expect(sentence('blueberry', ['blueberry', soil(6)])).toBe('ph-sulphur');
    expect(sentence('blueberry', ['blueberry', soil(6.1)])).toBe('ph-sulphur-hard');
    expect(sentence('blueberry', ['blueberry', soil(6.1)], true)).toBe('ph-sulphur-bed');
    expect(sentence('apple', ['apple', soil(6.5)], true)).toBe('ph-inside');
    expect(sentence('apple', ['apple', soil(6.5)])).toBe('ph-inside');
  });
  // Quince: EcoCrop 5.5, 6, 6.5, 7. Sulphur takes 3 to 12 months in soil over 55 °F, 13 °C.
  test('with its numbers', () => {
    expect(phFacts(plan('quince', soil(6.601)), 'A')).toMatchObject({ tree: 'A', now: 6.6, goal: 6.5, low: 6, high: 6.5, years: expect.any(Number), percent: 0, least: 5.5, most: 7, below: '', chelate: 'DTPA', soonest: 3, latest: 12, warm: 55, celsius: 13 });
    expect(phFacts(plan('citrus', soil(5.7), { word: 'orange', region: 'US-FL' }), 'A').below).toBe(5.5);
    expect(phFacts(plan('pear', soil(8, { carbonate: 0.5 })), 'A')).toMatchObject({ years: 11, percent: 0.5 });
    // Hundreds of years are told in tens, fewer as they are.
    const lasting = (percent: number): [number, number] => [phFacts(plan('pear', soil(8, { carbonate: percent })), 'A')['years'] as number, plan('pear', soil(8, { carbonate: percent })).swallowed!.years];
    expect([lasting(12)[0] % 10, Math.abs(lasting(12)[0] - lasting(12)[1]) <= 5, lasting(4)[0] === lasting(4)[1]]).toEqual([0, true, true]);
    expect(phFacts(plan('apple', soil(6.5)), 'A')).toMatchObject({ years: 0, percent: 0 });
    // Clay from 6 to 4.5, the least: 15 lb to 1,000 sq ft a unit (no publisher), 109.9 g: four years of 34.18.
    expect(phFacts(plan('blueberry', soil(6, { texture: 'clay' }), { goal: 4.5 }), 'A').years).toBe(4);
  });
});

describe('amount against pH', () => {
  const curve = (given: Parameters<typeof ask>) => curveOf(ask(...given), plan(...given));
  // Loam up from 6.0, 4 lb to 6.5 in a straight line: 0.8 lb to 100 sq ft a tenth, 39.06 g; the goal itself 195.3.
  test('lime by tenths', () => {
    const points = curve(['apple', soil(6, { texture: 'loam' }), { goal: 6.5 }]);
    expect(points.map((p) => p.ph)).toEqual([6, 6.1, 6.2, 6.3, 6.4, 6.5]);
    expect(points.map((p) => Number(p.low.toFixed(1)))).toEqual([0, 39.1, 78.1, 117.2, 156.2, 195.3]);
    expect(points.map((p) => p.high)).toEqual(points.map((p) => p.low));
  });
  // Sand down from 6: Purdue 7 lb to 1,000 sq ft a unit, 3.42 g a tenth. Maine 11.21 g.
  test('sulphur by tenths', () => {
    const points = curve(['blueberry', soil(6, { texture: 'sand' }), { goal: 5.75 }]);
    expect(points.map((p) => p.ph)).toEqual([6, 5.95, 5.85, 5.75]);
    expect(points.map((p) => Number(p.high.toFixed(2)))).toEqual([0, 5.6, 16.81, 28.02]);
    expect(points[0]).toEqual({ ph: 6, low: 0, high: 0 });
    // Less than a tenth away there is still a way.
    expect(curve(['blueberry', soil(5.35, { texture: 'sand' }), { goal: 5.3 }]).map((p) => p.ph)).toEqual([5.35, 5.3]);
  });
  test('no way, no curve', () => {
    expect(curve(['apple', soil(6.5)])).toEqual([]);
    expect(curve(['apple', soil(5.5, { lime: told(2, 't/ha', 'lime', 'test') })])).toEqual([]);
    expect(curve(['pear', soil(8, { carbonate: 1 })])).toEqual([]);
  });
});

test('what a rate goes back to, by its test', () => {
  const ground = soil(5.5, { cec: 12 });
  const of = (...given: Parameters<typeof saidFor>) => saidFor(...given).map((f) => `${f.value} ${f.unit} ${f.of}`);
  expect(of('place', 5.5, ground)).toEqual(['5.5 pH soil']);
  expect(of('base-saturation', 60, ground)).toEqual(['60 % acidity', '12 meq/100g acidity']);
  expect(of('base-saturation', 60, soil(5.5))).toEqual(['60 % acidity']);
  expect(of('lime-buffer-capacity', 300, ground)).toEqual(['300 mg/kg lime', '5.5 pH soil']);
  for (const t of ['acidity', 'aluminium', 'ecec'] as const) expect(of(t, 2, ground)).toEqual(['2 meq/100g acidity', '5.5 pH soil']);
  expect(of('smp', 6.5, ground)).toEqual(['6.5 pH soil', '5.5 pH soil']);
});
