// Where each rule of lime, sulphur and pH begins and ends, asked of the parts themselves. Sources beside each; arithmetic by hand.
import { describe, expect, test } from 'vitest';
import { chelateFor, insteadOf } from '../../src/ph/acidifiers.ts';
import { between, byFormula, columnsOf } from '../../src/ph/lime-formulas.ts';
import type { LimeNeed } from '../../src/ph/lime.ts';
import { limeDose, limeNeed } from '../../src/ph/lime.ts';
import type { PhAsk } from '../../src/ph/ph.ts';
import { phPlan } from '../../src/ph/ph.ts';
import type { PhSoil } from '../../src/ph/soil.ts';
import { phSoilOf } from '../../src/ph/soil.ts';
import { goalOf, suitsOf } from '../../src/ph/suits.ts';
import type { Rated } from '../../src/rating/rate.ts';
import { figure, told } from '../../src/reason/figure.ts';
import type { LimeFormula } from '../../src/tables/lime-equations.ts';
import { LIME_FORMULAS } from '../../src/tables/lime-equations.ts';
import { LIME_GRIDS } from '../../src/tables/lime-tests.ts';

const soil = (ph: number, more: Partial<PhSoil> = {}): PhSoil => ({ now: told(ph, 'pH', 'soil', 'test'), buffer: null, acidity: null, aluminium: null, baseSaturation: null, calcium: null, exchangeableMagnesium: null, ecec: null, bufferCapacity: null, lime: null, depthM: null, texture: null, cec: null, carbonate: null, organic: null, magnesium: null, ...more });
const by = <K extends LimeFormula['formula']>(formula: K): LimeFormula => LIME_FORMULAS.find((f) => f.formula === formula)!;
const pH = (value: number) => told(value, 'pH', 'soil', 'test');

describe('formulas, inside and outside of what is printed', () => {
  const found = (formula: LimeFormula['formula'], value: number, goal: number, ground: PhSoil): ReturnType<typeof byFormula> => byFormula(by(formula), by(formula).test[0]!, value, goal, ground);
  // Alabama, Adams-Evans: 8000 × (8 − buffer) ÷ H-sat now × (H-sat now − H-sat at the goal) × 1.5; pH = 7.79 − 5.55 H + 2.27 H².
  // At pH 5.0 H is 0.70735 and at 6.5 0.26010, so a buffer of 7.5 asks for 8000 × 0.5 × (0.44725 ÷ 0.70735) × 1.5 = 3793.7 lb.
  test('Adams-Evans', () => {
    expect(found('adams-evans', 7.5, 6.5, soil(5))).toBeCloseTo(3793.7, 0);
    // The curve has no pH under 4.40, none without acidity over 7.79; from 13 meq on another buffer is used.
    expect(found('adams-evans', 7.5, 6.5, soil(4.2))).toBe('beyond');
    expect(found('adams-evans', 7.5, 7.9, soil(5))).toBe('beyond');
    expect(found('adams-evans', 7.5, 7.9, soil(7.79))).toBe('beyond');
    expect(found('adams-evans', 7.5, 6.5, soil(5, { cec: 13 }))).toBe('beyond');
    expect(found('adams-evans', 7.5, 6.5, soil(5, { cec: 12.9 }))).toBeCloseTo(3793.7, 0);
  });
  // NSW AC19: ECEC 5, from 4.3 to 5.2 in calcium chloride 2.5 t/ha, from 5.2 to 5.5 0.7 t/ha; water reads 0.6 higher.
  test('ECEC', () => {
    expect(found('ecec', 5, 5.8, soil(4.9))).toBeCloseTo(2.5, 6);
    expect(found('ecec', 5, 6.1, soil(5.8))).toBeCloseTo(0.7, 6);
    for (const [ecec, now, goal] of [[16, 4.9, 5.8], [5, 4.5, 5.8], [5, 4.9, 6.2]] as const) expect(found('ecec', ecec, goal, soil(now))).toBe('beyond');
    expect(found('ecec', 15, 5.8, soil(4.9))).toBeCloseTo(6.7, 6);
  });
  // Midwest: 1,000 lb to a milliequivalent, bases full at pH 7. 10 meq, 60 % full, a unit of the 1.5 from 5.5: 10 × 40 % × 1,000 ÷ 1.5.
  test('base saturation', () => {
    expect(found('saturation-line', 60, 6.5, soil(5.5, { cec: 10 }))).toBeCloseTo(4000 / 1.5, 6);
    expect(found('saturation-line', 60, 7, soil(5.5, { cec: 10 }))).toBeCloseTo(4000, 6);
    expect(found('saturation-line', 60, 7.1, soil(5.5, { cec: 10 }))).toBe('beyond');
    expect(found('saturation-line', 60, 6.5, soil(5.5))).toBe('lacks');
    // Brazil: T × (70 − V) ÷ 100. 8 × 30 % = 2.4 t/ha; over 70 % none.
    expect(found('saturation-goal', 40, 6.5, soil(5.5, { cec: 8 }))).toBeCloseTo(2.4, 6);
    expect(found('saturation-goal', 75, 6.5, soil(5.5, { cec: 8 }))).toBe(0);
    expect(found('saturation-goal', 40, 6.5, soil(5.5))).toBe('lacks');
  });
  // Brazil: on clay 2 Al + 2 − (Ca + Mg), else 1.5 Al.
  test('aluminium', () => {
    expect(found('aluminium', 1, 6.5, soil(5, { texture: 'clay', calcium: 1, exchangeableMagnesium: 0.5 }))).toBeCloseTo(2.5, 6);
    expect(found('aluminium', 1, 6.5, soil(5, { texture: 'clay', calcium: 4, exchangeableMagnesium: 1 }))).toBe(0);
    expect(found('aluminium', 1, 6.5, soil(5, { texture: 'clay', calcium: 1 }))).toBe('lacks');
    expect(found('aluminium', 1, 6.5, soil(5, { texture: 'clay', exchangeableMagnesium: 1 }))).toBe('lacks');
    expect(found('aluminium', 1, 6.5, soil(5, { texture: 'loam' }))).toBeCloseTo(1.5, 6);
  });
  // Penn State's fields: over 4 meq 840 lb each to 6.5, 1,000 to 7.0; at 4 or less 2,000 lb, and none where the pH is 6.5 already.
  test('exchangeable acidity', () => {
    expect(found('acidity-rule', 6, 6.5, soil(5.5))).toBeCloseTo(5040, 6);
    expect(found('acidity-rule', 6, 7, soil(5.5))).toBeCloseTo(6000, 6);
    expect(found('acidity-rule', 4, 6.5, soil(5.5))).toBe(2000);
    expect(found('acidity-rule', 4, 6.5, soil(6.5))).toBe(0);
    for (const goal of [6.4, 7.1]) expect(found('acidity-rule', 6, goal, soil(5.5))).toBe('beyond');
  });
  test('a buffer above the last printed row asks for nothing, and so does no acidity', () => {
    for (const grid of LIME_GRIDS) {
      for (const test of grid.test) expect(columnsOf(grid, test, test === 'acidity' ? 0 : 9, soil(5)).map((c) => c.rate), grid.cite.source).toEqual(grid.goals.map(() => 0));
    }
  });
  test('straight lines, and the ends beyond them', () => {
    for (const [x, y] of [[0, 10], [1, 10], [1.5, 15], [2, 20], [4, 30], [9, 40]] as const) expect(between([[1, 10], [2, 20], [6, 40]], x)).toBe(y);
  });
});

describe('whose soil is organic', () => {
  // RB209, recalled: Britain counts a soil as organic over 10 %, pH 5.0 takes 14 t/ha in 20 cm, to 6.2; Scotland is Britain. Elsewhere over 20 % (Tri-State).
  test('Scotland at 12 %', () => {
    const need = limeNeed(soil(5, { organic: 12 }), pH(6.5), 'GB-SCT', { low: 6, high: 7 }) as LimeNeed;
    expect([need.goal.value, need.dugIn.value]).toEqual([6.2, 1400]);
    expect((limeNeed(soil(5, { organic: 10 }), pH(6.5), 'GB-SCT', { low: 6, high: 7 }) as LimeNeed).goal.value).toBe(6.5);
  });
  test('no table for it: the lab is asked', () => {
    expect(limeNeed(soil(5, { organic: 21 }), pH(6.5), 'US-KS', { low: 6, high: 7 })).toBe('organic-soil');
    expect(limeNeed(soil(5, { organic: 20 }), pH(6.5), 'US-KS', { low: 6, high: 7 })).not.toBe('organic-soil');
  });
});

// Kansas MF-2586 (recalled), to pH 6.0 for each inch: 12,810 − 3,180 × buffer + 196 × buffer². At 6.0 that is 786 lb an acre, so 2,358 for three inches and 4,716 for six.
test.each([[3, 2358], [6, 4716]])('a rate for each inch is not cut by the depth once more: %i in', (inches, pounds) => {
  const need = limeNeed(soil(5, { buffer: { value: 6, test: 'smp' }, depthM: inches * 0.0254 }), pH(6), 'US-KS', { low: 6, high: 7 }) as LimeNeed;
  expect(need.dugIn.value).toBeCloseTo((pounds * 453.59237) / 4046.8564224, 4);
});

describe('the dose of a product', () => {
  // By definition rate × 100 ÷ CCE: 20 g of pure lime in a layer of two inches is 25 g of one of 80 %.
  test('weaker than carbonate', () => {
    const need: LimeNeed = { goal: pH(6.5), by: 'lab', dugIn: told(20, 'g/m2', 'lime', 'test'), depthM: 0.0508, others: [] };
    const dose = limeDose(need, 0.8, soil(6), false);
    expect(dose.value).toBeCloseTo(25, 9);
    expect(dose.from.at(-1)).toMatchObject({ value: 80, unit: '%', of: 'lime', cite: { source: 'grower' } });
    expect(limeDose(need, 1, soil(6), false).value).toBeCloseTo(20, 9);
  });
  // Aluminium harms roots in soil at 5.5 or under, and blueberries anywhere; Minnesota: at most 7 lb of iron sulphate to 100 sq ft in one go.
  test('what does the work of sulphur', () => {
    const ids = (crop: 'blueberry' | 'apple', goal: number): string[] => insteadOf(figure(10, 'g/m2', 'sulphur', 'told', pH(5).cite), crop, goal).map((a) => a.id);
    expect(ids('apple', 5.6)).toContain('aluminium-sulphate');
    expect(ids('apple', 5.5)).not.toContain('aluminium-sulphate');
    expect(ids('blueberry', 6)).not.toContain('aluminium-sulphate');
    const iron = insteadOf(figure(10, 'g/m2', 'sulphur', 'told', pH(5).cite), 'apple', 6);
    expect(iron.filter((a) => a.atOnce).map((a) => [a.id, Math.round(a.atOnce!.value)])).toEqual([['iron-sulphate', 342]]);
    // (NH4)2SO4 weighs 132.14 for two of sulphuric acid, sulphur 32.06 for one: 2.061 times as much, with 21.2 % of nitrogen.
    const ammonium = iron.find((a) => a.id === 'ammonium-sulphate')!;
    expect([ammonium.rate.value, ammonium.nitrogen!].map((x) => Number(x.toFixed(2)))).toEqual([20.61, 4.37]);
    expect(iron[0]!.rate).toMatchObject({ unit: 'g/m2', of: 'sulphur', step: 'sulphur-instead' });
  });
  // EDTA holds its iron up to 6.5, DTPA up to 7, and above 7.2 (Colorado) the advice is EDDHA alone.
  test.each([[6.5, 'EDTA'], [6.6, 'DTPA'], [7.2, 'DTPA'], [7.3, 'EDDHA']])('iron at pH %f: %s', (ph, id) => { expect(chelateFor(ph)).toBe(id); });
});

describe('what suits, and what to aim at', () => {
  const lead = (crop: PhAsk['crop'], word: string | null, region: string | null): unknown => {
    const s = suitsOf({ crop, word, region });
    return s && [s.low, s.high, s.cite.source];
  };
  test.each([
    // Nebraska: apples and pears 5.6 to 7. Florida: peach 6 to 6.5, most fruit 5.8 to 7; its single number for citrus leads nowhere. Georgia: figs 5.5 to 6.5. A weak page does not lead.
    ['apple', 'apple', 'US-NE', [5.6, 7, 'nebraska-fruit-column']], ['peach', 'peach', 'US-FL', [6, 6.5, 'florida-nassau-fruit']], ['apple', 'apple', 'US-FL', [5.8, 7, 'florida-hs1234']], ['citrus', 'orange', 'US-FL', [6, 6.5, 'florida-sl253']],
    ['fig', 'fig', 'US-GA', [5.5, 6.5, 'georgia-fig-column']], [null, null, 'US-NE', [5.6, 7, 'nebraska-fruit-column']], [null, null, null, [6, 7.5, 'washington-em119e']],
    // A country's own serves its states. EcoCrop where nobody prints one.
    ['other', 'cranberry', 'US-WI', [4, 5.5, 'purdue-cranberry']], ['other', 'pistachio', null, [7, 8, 'fao-ecocrop']], ['other', 'a plant that nobody has heard of', null, null],
  ] as const)('%s, %s in %s: %j', (crop, word, region, wanted) => { expect(lead(crop, word, region)).toEqual(wanted); });
  // EcoCrop: avocado (the species) 5 to 5.8, pistachio 7 to 8, pomegranate 6.5 to 7.5. Half a unit above the low edge, no higher than its middle, not over 6.5 where the plant itself starts lower.
  test.each([['avocado', 'avocado (species)', 4.5, 5.4], ['other', 'pistachio', 6, 7], ['pomegranate', 'pomegranate', 6, 6.5], ['guava', 'guava', 5, 6]] as const)('%s, %s at %f: aim at %f', (crop, word, now, goal) => {
    expect(goalOf(suitsOf({ crop, word, region: null })!, now).value).toBeCloseTo(goal, 9);
  });
  test('the goal comes from both edges', () => {
    const suits = suitsOf({ crop: 'avocado', word: 'avocado (species)', region: null })!;
    for (const now of [4.5, 5.4, 7]) expect(goalOf(suits, now).from.map((f) => f.value)).toEqual([5, 5.8]);
    expect(goalOf(suits, 7).value).toBe(5.8);
  });
  test('a blueberry is limed only where a goal is asked for', () => {
    const ask: PhAsk = { crop: 'blueberry', word: 'blueberry', soil: soil(3.9, { texture: 'sand' }), strength: { lime: 1, sulphur: 1 }, region: null, stopped: false, awaitsRetest: false };
    expect(phPlan(ask)).toMatchObject({ verdict: 'leave', reason: 'over-acid' });
    expect(phPlan({ ...ask, goal: 4.8 })!.verdict).toBe('lime');
  });
});

describe('what a report tells of the soil', () => {
  type Read = { item: string; value?: number | null; unit?: string; rating?: string | null };
  const of = (...rows: Read[]): PhSoil => phSoilOf([{ item: 'ph', value: 5.5 }, ...rows].map(({ item, value = null, unit = '%', rating = null }: Read) => ({ reading: { item, value, unit, method: null, lab: { rating }, place: { line: 1 } }, mgPerKg: null }) as unknown as Rated), undefined)!;
  // By definition the bases are Ca, Mg, K and Na, and what they leave of 100 % is acidity.
  test('base saturation from its parts', () => {
    const saturation = (...parts: [string, number][]): number | null => of(...parts.map(([item, value]) => ({ item, value }))).baseSaturation;
    expect(saturation(['saturation-ca', 60], ['saturation-mg', 12], ['saturation-k', 4])).toBe(76);
    expect(saturation(['saturation-ca', 60], ['saturation-mg', 12], ['saturation-k', 4], ['saturation-na', 1])).toBe(77);
    expect(saturation(['saturation-ca', 60], ['saturation-mg', 12])).toBeNull();
    expect(saturation(['saturation-ca', 60], ['saturation-k', 4])).toBeNull();
    expect(saturation(['saturation-mg', 12], ['saturation-k', 4])).toBeNull();
    expect(saturation(['saturation-h', 20])).toBe(80);
    expect(saturation(['base-saturation', 55], ['saturation-h', 20])).toBe(55);
    expect(saturation(['base-saturation', 100])).toBe(100);
    expect(saturation(['base-saturation', 101])).toBeNull();
    expect(saturation()).toBeNull();
  });
  // practice: a word for free lime is taken as the least a lab can measure, 0.1 %; "low" is none. 10 g/kg is 1 %.
  test('carbonate by number or by word', () => {
    expect(of({ item: 'carbonate', value: 2 }).carbonate).toBe(2);
    expect(of({ item: 'carbonate', value: 10, unit: 'g/kg' }).carbonate).toBe(1);
    for (const rating of ['medium', 'high', 'very-high']) expect(of({ item: 'carbonate', rating }).carbonate).toBe(0.1);
    for (const rating of ['low', 'very-low']) expect(of({ item: 'carbonate', rating }).carbonate).toBeNull();
    expect(of({ item: 'carbonate' }).carbonate).toBeNull();
    expect(of().carbonate).toBeNull();
  });
  // 10 mmolc/dm³ is one meq/100 g; aluminium in mg/kg is of a strong extract and not what is exchanged.
  test('charge', () => {
    expect(of({ item: 'acidity', value: 25, unit: 'mmolc/dm3' }).acidity).toBe(2.5);
    expect(of({ item: 'acidity', value: 2.5, unit: 'meq/100g' }).acidity).toBe(2.5);
    expect(of({ item: 'aluminium', value: 12, unit: 'mmolc/dm3' }).aluminium).toBeCloseTo(1.2, 9);
    expect(of({ item: 'aluminium', value: 120, unit: 'mg/kg' }).aluminium).toBeNull();
  });
});
