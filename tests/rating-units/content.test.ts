// Units of soil readings. Factors follow from definitions and from standard atomic weights, typed here independently of the code
// (IUPAC abridged: P 30.974, K 39.098, Mg 24.305, Ca 40.078, S 32.06, N 14.007, O 15.999, Na 22.990, Al 26.982).
import { describe, expect, test } from 'vitest';
import { contentOf, depthCmOf, inUnit, lacks, volumeOf } from '../../src/rating/content.ts';
import type { Reading } from '../../src/soil/reading.ts';
import type { Scale } from '../../src/tables/ratings.ts';
import { isWeak } from '../../src/reason/figure.ts';
import { reasonOf } from '../../src/json/reason.ts';
import { made } from './made.ts';

const mg = (r: Reading, density: number | null = null, depthCm: number | null = null): number | null => contentOf(r, density, { depthCm })?.value ?? null;
const scale = (item: Scale['item'], unit: string): Scale => ({ id: 'x', item, method: 'any', serves: 'general', unit: unit as Scale['unit'], bands: [], cite: { source: 'definition', at: 'x', mark: 'derived' } });

// What one of each is in mg/kg, and what 1 mg/kg is in it: the two multiply to one.
const FACTORS: readonly (readonly [Reading['unit'], Reading['item'], number, number])[] = [
  ['ppm', 'phosphorus', 1, 1], ['mg/kg', 'phosphorus', 1, 1], ['mg/100g', 'phosphorus', 10, 0.1], ['g/kg', 'phosphorus', 1000, 0.001],
  ['%', 'phosphorus', 10_000, 0.0001], ['lb/acre', 'phosphorus', 0.5, 2],
  ['meq/100g', 'calcium', (40.078 / 2) * 10, 2 / 400.78], ['cmol/kg', 'calcium', (40.078 / 2) * 10, 2 / 400.78],
  ['meq/100g', 'magnesium', (24.305 / 2) * 10, 2 / 243.05], ['cmol/kg', 'potassium', 390.98, 1 / 390.98],
  ['meq/100g', 'sodium', 229.9, 1 / 229.9], ['mmol/kg', 'potassium', 39.098, 1 / 39.098], ['meq/100g', 'aluminium', 269.82 / 3, 3 / 269.82],
];

describe('content by weight', () => {
  test.each(FACTORS)('%s of %s', (unit, item, factor, inverse) => {
    expect(factor * inverse).toBeCloseTo(1, 12);
    expect(mg(made(item, 1, unit))).toBeCloseTo(factor, 9);
    expect(mg(made(item, 37 * inverse, unit))).toBeCloseTo(37, 9);
  });

  // There and back through a scale in the same unit, and from mg/kg to it.
  test.each(FACTORS.filter(([unit]) => unit !== '%'))('a scale in %s of %s', (unit, item, factor) => {
    expect(inUnit(made(item, 12.5, unit), scale(item, unit!))).toBeCloseTo(12.5, 9);
    expect(inUnit(made(item, factor, 'mg/kg'), scale(item, unit!))).toBeCloseTo(1, 9);
  });
});

test('a percentage of a cation may be its share of the exchange sites: no content is made of it', () => {
  for (const item of ['potassium', 'calcium', 'magnesium', 'sodium'] as const) expect([mg(made(item, 2.7, '%')), lacks(made(item, 2.7, '%'), null)]).toEqual([null, null]);
});

const [P, K, Mg, Ca, S, N, O] = [30.974, 39.098, 24.305, 40.078, 32.06, 14.007, 15.999];
describe('oxides and ions', () => {
  // Rounded factors as printed by Penn State: P × 2.3, K × 1.2, Mg × 1.6, to the figures given.
  test.each([
    ['phosphorus', 'P2O5', (2 * P) / (2 * P + 5 * O), 2.3], ['potassium', 'K2O', (2 * K) / (2 * K + O), 1.2], ['magnesium', 'MgO', Mg / (Mg + O), 1.66],
    ['calcium', 'CaO', Ca / (Ca + O), 1.4], ['sulphur', 'SO3', S / (S + 3 * O), 2.5], ['sulphur', 'SO4', S / (S + 4 * O), 3.0],
    ['nitrate-n', 'NO3', N / (N + 3 * O), 4.43], ['phosphorus', 'PO4', P / (P + 4 * O), 3.07],
  ] as const)('%s as %s', (item, form, share, rounded) => {
    expect(mg(made(item, 100, 'mg/kg', { form }))).toBeCloseTo(100 * share, 9);
    expect(1 / share / rounded).toBeCloseTo(1, 2);
    expect(mg(made(item, 10, 'mg/100g', { form }))).toBeCloseTo(100 * share, 9);
  });

  test('by charge the ion is meant, whatever form its name has', () => {
    expect(mg(made('potassium', 1, 'meq/100g', { form: 'K2O' }))).toBeCloseTo(390.98, 9);
  });
});

describe('by volume', () => {
  test('mg/L stands as it is, and needs the density to become mg/kg', () => {
    const r = made('phosphorus', 25, 'mg/L');
    expect(volumeOf(r)?.value).toBe(25);
    expect([mg(r), lacks(r, null)]).toEqual([null, 'density']);
    expect([mg(r, 1.25), lacks(r, 1.25)]).toEqual([20, null]);
  });
  // Definition: 10 mmol of charge are one cmol; potassium carries one charge.
  test('mmol and cmol of charge in a litre', () => {
    expect(volumeOf(made('potassium', 3, 'mmolc/dm3'))?.value).toBeCloseTo(117.294, 3);
    expect(volumeOf(made('calcium', 2, 'cmol/dm3'))?.value).toBeCloseTo(400.78, 3);
    expect(mg(made('potassium', 3, 'mmolc/dm3'))).toBeNull();
    expect(volumeOf(made('sulphur', 0.02, 'g/dm3'))?.value).toBeCloseTo(20, 9);
    expect(inUnit(made('potassium', 0.3, 'cmol/dm3'), scale('potassium', 'mmolc/dm3'))).toBeCloseTo(3, 9);
  });
  test('a litre of the water of a saturated paste is no litre of soil', () => {
    for (const unit of ['mg/L', 'mmolc/dm3'] as const) expect(contentOf(made('sodium', 12, unit, { method: 'paste' }), 1.2)).toBeNull();
  });
  test('a scale by volume never takes a value by weight', () => {
    expect(inUnit(made('phosphorus', 25, 'mg/kg'), scale('phosphorus', 'mg/L'))).toBeNull();
    expect(inUnit(made('phosphorus', 25, 'mg/L'), scale('phosphorus', 'mg/kg'))).toBeNull();
    expect(inUnit(made('phosphorus', 25, 'mg/L'), scale('phosphorus', 'mg/kg'), 1.25)).toBe(20);
  });
});

describe('mmol/kg', () => {
  // Definition: one mmol of calcium carries two charges, so that 20.04 mg or 40.08 mg may be meant.
  test('of calcium only where charge is said', () => {
    expect(mg(made('calcium', 1, 'mmol/kg', { asPrinted: 'Ca 1 mmol/kg' }))).toBeNull();
    for (const asPrinted of ['Ca 1 mmolc/kg', 'Ca 1 mmol(+)/kg', 'Ca 1 mmol+/kg', 'Ca 1 meq/kg']) expect(mg(made('calcium', 1, 'mmol/kg', { asPrinted }))).toBeCloseTo(20.039, 9);
  });
});

describe('kg/ha', () => {
  // Arithmetic: 100 ppm over 8 in at 1.33 g/cm3 are 241 lb/acre, which is 270.1 kg/ha (1 lb/acre = 1.12085 kg/ha).
  test('with depth and density', () => {
    const r = made('phosphorus', 241 * 1.12085, 'kg/ha');
    expect(mg(r, 1.33, 8 * 2.54)).toBeCloseTo(100, 0);
    expect(isWeak(contentOf(r, 1.33, { depthCm: 20.32 })!)).toBe(false);
  });
  test('without density that of a silt loam stands as a step', () => {
    const f = contentOf(made('phosphorus', 270.1, 'kg/ha'), null, { depthCm: 20.32 })!;
    expect(f.value).toBeCloseTo(99.9, 1);
    expect(f.from.map((x) => x.step)).toEqual(['printed-by-lab', 'depth', 'density-assumed']);
  });
  // 2,000,000 lb an acre, the layer behind lb/acre = 2 × ppm, are 2,241,702 kg a hectare.
  test('with neither, the layer that lb/acre means, marked as ours', () => {
    const f = contentOf(made('potassium', 224.17, 'kg/ha'), null)!;
    expect(f.value).toBeCloseTo(100, 2);
    expect([f.step, isWeak(f)]).toEqual(['layer-assumed', true]);
  });
  test('nitrate is summed over any depth: asked for', () => {
    const r = made('nitrate-n', 90, 'kg/ha');
    expect([mg(r), lacks(r, null)]).toEqual([null, 'depth']);
    // 90 kg over 90 cm at 1.33: 90 / (90 × 1.33 × 0.1).
    expect(mg(r, null, 90)).toBeCloseTo(7.519, 3);
  });
});

describe('depth of the layer, cm', () => {
  test.each([['0-6 in', 15.24], ['6 inches', 15.24], ['8"', 20.32], ['0 to 30 cm', 30], ['15cm', 15], ['6-18 in', 30.48], ['0–300 mm', 30], ['1 ft', 30.48], ['0-30', null], ['topsoil', null], [undefined, null]] as const)('%s', (text, cm) => {
    const found = depthCmOf(text);
    if (cm === null) expect(found).toBeNull();
    else expect(found).toBeCloseTo(cm, 6);
  });
});

describe('indices', () => {
  const nc = { state: 'north carolina' };
  // NCDA&CS Circular 1, recalled: P-I 100 is 120 mg/dm3, K-I 100 is 195.5 mg/dm3, which is half a meq in 100 cm3.
  test.each([['phosphorus', 120], ['potassium', 195.5], ['manganese', 16], ['zinc', 4], ['copper', 2], ['sulphur', 48]] as const)('North Carolina, %s at 100', (item, mgPerL) => {
    expect(volumeOf(made(item, 100, 'index'), nc)?.value).toBeCloseTo(mgPerL, 9);
  });
  test('half a meq of potassium in 100 cm3, by its atomic weight', () => {
    expect(volumeOf(made('potassium', 100, 'index'), nc)!.value / 390.98).toBeCloseTo(0.5, 3);
  });
  test('the state by its letters', () => { expect(volumeOf(made('phosphorus', 100, 'index'), { state: 'nc' })?.value).toBeCloseTo(120, 9); });
  test('by weight only with the density on the report', () => {
    expect(contentOf(made('phosphorus', 50, 'index'), null, nc)).toBeNull();
    expect(contentOf(made('phosphorus', 50, 'index'), 1.2, nc)?.value).toBeCloseTo(50, 9);
  });
  test('elsewhere an index is a class: no content', () => {
    for (const state of [null, 'maryland', 'ireland', 'england']) expect(volumeOf(made('phosphorus', 2, 'index'), { state })).toBeNull();
    expect(volumeOf(made('calcium', 50, 'index'), nc)).toBeNull();
  });
});

// No soil holds 10^308 of anything, or weighs 10^-300; the largest double is 1.8 × 10^308 (definition).
test('absurd numbers make no content, and no mistake', () => {
  for (const unit of ['g/kg', 'ppm', '%', 'g/dm3', 'mg/L', 'lb/acre', 'kg/ha', 'meq/100g', 'mmolc/dm3', 'cmol/dm3'] as const) {
    for (const density of [null, 1.2, 1e-300, 1e300]) expect([unit, density, contentOf(made('phosphorus', 1e308, unit), density, { depthCm: 20 })]).toEqual([unit, density, null]);
  }
  expect(contentOf(made('potassium', 100, 'mg/L'), 1e-300)).toBeNull();
  expect(contentOf(made('potassium', 100, 'kg/ha'), 1e-300, { depthCm: 20 })).toBeNull();
  expect(contentOf(made('potassium', 100, 'kg/ha'), null, { depthCm: 1e-320 })).toBeNull();
  expect(volumeOf(made('potassium', 1e308, 'g/dm3'))).toBeNull();
  expect(contentOf(made('potassium', 100, 'mg/L'), 1.25)?.value).toBeCloseTo(80, 9);
});

test('every step can be said, with its numbers', () => {
  const said = [
    contentOf(made('phosphorus', 60, 'lb/acre'), null), contentOf(made('phosphorus', 23, 'mg/100g', { form: 'P2O5' }), null), contentOf(made('phosphorus', 50, 'index'), 1.2, { state: 'north carolina' }),
    contentOf(made('potassium', 270, 'kg/ha'), null, { depthCm: 20 }), contentOf(made('potassium', 270, 'kg/ha'), null), contentOf(made('potassium', 3, 'mmolc/dm3'), 1.1),
  ].flatMap((f) => [f!, ...f!.from]).map((f) => reasonOf(f, 'en-US', 'us'));
  expect(said).toContain('The lab doubles ppm to get lb/acre, so 60 lb/acre is 30 mg/kg.');
  expect(said.filter((s) => /[{}]|NaN|undefined/.test(s))).toEqual([]);
});
