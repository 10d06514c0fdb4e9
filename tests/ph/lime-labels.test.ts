// What the label of a lime says of its strength. Values: lime.md, its tables of schemes (2.2) and worked examples (5), with their marks there; sums by hand beside each.
// Chemistry by its own weights: Ca 40.078, C 12.011, O 15.999, Mg 24.305, H 1.008.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { amendmentBagOf, isWelcome, magnesiumRule, withinOwnLimit } from '../../src/bags/amend.ts';
import { parseBag } from '../../src/orchard/bag.ts';
import type { PhSoil } from '../../src/ph/soil.ts';
import { figure } from '../../src/reason/figure.ts';
import { CACO3_PER } from '../../src/units/substance.ts';
import { medlar } from '../medlar.ts';

const NOWHERE = { file: 'orchard.yaml', line: 1, column: 1, length: 1, source: '' };
const read = (label: string, country: string | null = 'US', state: string | null = null) => parseBag(label, country, false, NOWHERE, state);
const bagOf = (label: string, country: string | null = 'US', state: string | null = null) => {
  const { bag, notices } = read(label, country, state);
  expect(notices, label).toEqual([]);
  expect(bag?.amends?.kind, label).toBe('lime');
  return { ...bag!, amends: bag!.amends! };
};
const limeOf = (label: string, country: string | null = 'US', state: string | null = null) => bagOf(label, country, state).amends;
const percent = (label: string, country: string | null = 'US', state: string | null = null): number => 100 * limeOf(label, country, state).strength;
const notes = (label: string, country: string | null = 'US', state: string | null = null): string[] => limeOf(label, country, state).lime!.notes.map((n) => n.code);

test('pure materials by their atomic weights, against the published values', () => {
  const [Ca, C, O, Mg, H] = [40.078, 12.011, 15.999, 24.305, 1.008];
  const calcite = Ca + C + 3 * O;
  // lime.md 2.1: from an analysis 2.497 Ca + 4.118 Mg, 1.785 CaO + 2.483 MgO; magnesite 118.7.
  for (const [factor, weight, printed] of [[CACO3_PER.Ca, Ca, 2.497], [CACO3_PER.Mg, Mg, 4.118], [CACO3_PER.CaO, Ca + O, 1.785], [CACO3_PER.MgO, Mg + O, 2.483], [CACO3_PER.MgCO3, Mg + C + 3 * O, 1.187]] as const) {
    expect(factor).toBeCloseTo(calcite / weight, 9);
    expect(Math.abs(factor - printed)).toBeLessThan(0.0006);
  }
  // L17 and L18, READ S9 and S17: hydrated lime 135; of it 1,480 lb stand for a ton of carbonate, of MgCO3 1,680, of MgO 800.
  const hydrated = Ca + 2 * (O + H);
  expect(Math.abs((100 * calcite) / hydrated - percent('Hydrated lime'))).toBeLessThan(0.2);
  expect(Math.abs(2000 / limeOf('Hydrated lime').strength - 1480)).toBeLessThan(5);
  expect(Math.abs(2000 / CACO3_PER.MgCO3 - 1680)).toBeLessThan(10);
  expect(Math.abs(2000 / CACO3_PER.MgO - 800)).toBeLessThan(10);
  // Pure dolomite, two charges on each metal: 2 × 100.09 / 184.40 = 108.6.
  expect(percent('Dolomitic lime')).toBeCloseTo((200 * calcite) / (Ca + Mg + 2 * C + 6 * O), 1);
});

describe('worked examples', () => {
  // L6, READ S8: 5 lb for 100 sq ft of a lime of CCE 70 is 7.14, told as 7.
  test('CCE 70', () => { expect(5 / limeOf('Garden lime, CCE 70').strength).toBeCloseTo(7.14, 2); });
  // L7, READ S26: CCE 50, one ton is two.
  test('CCE 50', () => { expect(1 / limeOf('By-product lime, CCE 50 %').strength).toBe(2); });
  // L8, READ S10: a rate of lime of value 90, times 0.90 / 0.80 for a material of 80: 1.125.
  test('value 80', () => { expect(limeOf('Limestone, NV 90', 'US', 'indiana').strength / limeOf('Limestone, NV 80', 'US', 'indiana').strength).toBeCloseTo(1.125, 9); });
  // L9, READ S25: 1,600 lb ENM an acre of a lime with 400 lb ENM a ton: 4 tons. Pure lime has 800 (MEMORY).
  test.each(['Aglime, ENM 400 lb/ton', 'Aglime, 400 lb ENM per ton', 'Aglime, ENM 400'])('%s', (label) => { expect(1600 / 800 / limeOf(label, 'US', 'missouri').strength).toBeCloseTo(4, 9); });
  // L10, COMPUTED from READ S20: 3 tons for ENP 2,000 are 4.0 of ENP 1,500.
  test.each(['Aglime, ENP 1500 lb/ton', 'Aglime, ENP: 1,500 lb per ton', 'Aglime, 1,500 lb/ton ENP', 'Aglime, 1500 lb ENP/ton', 'Aglime, ENP (lb/ton) 1500', 'Aglime, effective neutralizing power 1500 lb a ton'])('%s', (label) => { expect(3 / limeOf(label, 'US', 'ohio').strength).toBeCloseTo(4, 9); });
  // L15, READ S39: PN 90 and RE 80 make PRNT 72.
  test('PN and RE', () => {
    expect(percent('Calcário dolomítico, PN 90 %, RE 80 %', 'BR')).toBeCloseTo(72, 9);
    expect(percent('Calcário, PRNT 72 %', 'BR')).toBeCloseTo(72, 9);
    expect(percent('Calcário, PN 90, PRNT 72', 'BR')).toBeCloseTo(72, 9);
  });
  // L16, READ S15: 4 years of 250 kg CaO/ha are 33.3 dt/ha of a product with 30 % CaO.
  test('30 % CaO', () => { expect((4 * 250) / ((limeOf('Carbokalk, 30 % CaO', 'DE').strength * 56.077) / 100.086) / 100).toBeCloseTo(33.3, 1); });
  // L19, READ, LOW: 7 lb of carbonate are 5 lb of hydrated lime at 140 %; we refuse it, but count it right.
  test('hydrated lime at 140', () => { expect([7 / limeOf('Hydrated lime, CCE 140').strength, limeOf('Hydrated lime, CCE 140').burns]).toEqual([expect.closeTo(5, 9), true]); });
  // L20, READ, industry review: TNV 85, one tonne counts as 0.85.
  test.each([['IE'], ['US'], ['AU'], [null]] as const)('TNV 85, %s', (country) => { expect(percent('Ground limestone, TNV 85 %', country)).toBeCloseTo(85, 9); });
  // L26, COMPUTED from READ S18: 95 % through 20, 70 through 60, 50 through 100: 25 × 0.4 + 20 × 0.8 + 50 = 76; CCE 92: 69.9.
  test.each([
    'Lime, CCE 92, 95 % through 20 mesh, 70 % through 60, 50 % through 100', 'Lime, CCE 92, pass 20 = 95, 60 = 70, 100 = 50', 'Lime, 95% passing #20, 70% passing #60, 50% passing #100, 92 % CCE, 40 lb, $6',
    'Lime, CCE 92, 5 % retained on 20 mesh, 70 % through 60 mesh, 50 % passes a 100 mesh sieve', 'Lime, CCE 92, 20 mesh: 95 %, 60 mesh: 70 %, 100 mesh: 50 %', 'Lime, CCE 92, 95 % < 0.84 mm, 70 % < 0.25 mm, 50 % < 150 micron',
  ])('%s', (label) => {
    expect(percent(label, 'US', 'new york')).toBeCloseTo(69.92, 6);
    expect(limeOf(label, 'US', 'new york').lime!.scheme).toBe('env');
    expect(notes(label, 'US', 'new york')).toEqual(['lime-by-sieves']);
  });
  // L28, COMPUTED from READ factors: 90 % through 10, 35 % through 50, CCE 80: 0.35 + 0.55 / 2 = 0.625, RNV 50.
  test.each(['kentucky', 'mississippi'])('RNV, %s', (state) => { expect(percent('Aglime, 90 % through 10, 35 % through 50, CCE 80', 'US', state)).toBeCloseTo(50, 9); });
});

describe('each scheme by its own sieves', () => {
  // Sieves 4 100, 8 90, 10 85, 20 70, 30 60, 40 55, 50 50, 60 45, CCE 100. Shares: READ for Iowa (S9) and Brazil (S40), MEMORY for the rest (lime.md 2.2).
  const all = 'pass 4 = 100, 8 = 90, 10 = 85, 20 = 70, 30 = 60, 40 = 55, 50 = 50, 60 = 45, CCE 100';
  test.each([
    ['US', 'iowa', 10 + 27 + 27], // 0.1 × 100 + 0.3 × 90 + 0.6 × 45
    ['US', 'minnesota', 0.2 * 20 + 0.6 * 25 + 45], ['US', 'wisconsin', 64], ['US', 'ohio', 64], ['US', 'texas', 64],
    ['US', 'illinois', 0.15 * 10 + 0.45 * 30 + 60], // four years: 15, 45, 100, 100
    ['US', 'michigan', 0.5 * 45 + 45], ['US', 'indiana', 67.5], ['US', 'kansas', (90 + 45) / 2], ['US', 'oklahoma', 67.5],
    ['US', 'missouri', 0.25 * 35 + 0.6 * 10 + 45], ['US', 'oregon', 0.3 * 15 + 0.6 * 15 + 55], ['US', 'washington', 68.5],
    ['CA', 'ontario', 0.4 * 40 + 45], ['BR', null, 0.2 * 15 + 0.6 * 20 + 50], ['AU', 'victoria', 0.1 * 30 + 0.6 * 20 + 50],
  ] as const)('%s %s: %d', (country, state, expected) => { expect(percent(`Aglime, ${all}`, country, state)).toBeCloseTo(expected, 6); });

  test('a sieve left out: what the next ones allow, the higher taken, the lower told', () => {
    // Ohio, 98 % through 20, 60 % through 100; 60 mesh lies between: 0.2 × 2 + 0.6 × (98 − x) + x with x from 60 to 98, through 8 mesh from 98 to 100.
    const { lime } = limeOf('Dolomitic lime, 98 % through 20, 60 % through 100, CCE 100', 'US', 'ohio');
    expect(lime!.strength.value).toBeCloseTo(0.2 * 2 + 98, 6);
    expect(lime!.notes[0]!.facts.low).toBeCloseTo(0.6 * 38 + 60, 1);
  });
  test('a state without a scheme: the highest that its sieves answer, and said so', () => {
    expect(notes('Aglime, 95 % through 20, 70 % through 60, 50 % through 100, CCE 92', 'US', 'pennsylvania')).toEqual(['lime-by-sieves-abroad']);
    // New York makes it 76, the north-central factors 0.6 × 25 + 70 = 85 and up to 1 more for what passes 8 mesh.
    expect(percent('Aglime, 95 % through 20, 70 % through 60, 50 % through 100, CCE 100', 'US', 'pennsylvania')).toBeCloseTo(86, 6);
  });
  test('a country without a scheme counts the whole, and says that coarse lime is slow', () => {
    expect(percent('Kalk, 90 % CaCO3, 97 % < 1 mm', 'DE')).toBeCloseTo(90, 9);
    expect(notes('Kalk, 90 % CaCO3, 97 % < 1 mm', 'DE')).toEqual(['lime-coarse']);
  });
  test('water: by schemes that do not count it already', () => {
    // Iowa's formula, READ S9: FE / 100 × CCE / 100 × (100 − moisture) / 100; 67 × 95 % × 97 %.
    expect(percent('Aglime, pass 4 = 100, 8 = 90, 60 = 50, CCE 95, moisture 3 %', 'US', 'iowa')).toBeCloseTo(67 * 0.95 * 0.97, 6);
    expect(percent('Aglime, ECCE 60 %, moisture 10 %', 'US', 'iowa')).toBeCloseTo(60, 9);
    expect(percent('Aglime, ENP 1200 lb/ton, 10 % moisture', 'US', 'ohio')).toBeCloseTo(60, 9);
    expect(percent('Aglime, RNV 60, moisture 10 %', 'US', 'kentucky')).toBeCloseTo(54, 9);
    expect(percent('Marl, CCE 80, moisture 25 %')).toBeCloseTo(60, 9);
  });
  test('an effective value counts fineness in already: sieves beside it change nothing', () => {
    expect(percent('Lime, ENV 69.9 %, CCE 92, 95 % through 20 mesh, 70 % through 60, 50 % through 100', 'US', 'new york')).toBeCloseTo(69.9, 9);
    expect(percent('Lime, ECCE 85, CCE 98, fineness 87', 'US', 'iowa')).toBeCloseTo(85, 9);
  });
  test('a fineness without its scheme: that of the state, or none', () => {
    expect([percent('Lime, CCE 92, fineness 76', 'US', 'new york'), notes('Lime, CCE 92, fineness 76', 'US', 'new york')]).toEqual([expect.closeTo(69.92, 6), ['lime-fineness-here']]);
    expect([percent('Lime, CCE 92, fineness factor 76', 'US', 'maine'), notes('Lime, CCE 92, fineness factor 76', 'US', 'maine')]).toEqual([expect.closeTo(92, 9), ['lime-fineness-nowhere', 'lime-coarse']]);
  });
});

describe('the words of labels', () => {
  test.each([
    ['Pelletized lime, 90 % CCE, 40 lb', 'US', 90], ['Garden lime CCE: 90%', 'US', 90], ['Garden lime, calcium carbonate equivalent (CCE) 90', 'US', 90], ['Garden lime, Calcium Carbonate Equivalence 90 %', 'US', 90], ['Limestone, total neutralizing power 97', 'US', 97],
    ['Limestone 97 % calcium carbonate, 40 lb', 'US', 97], ['Lime, ECCE 1,700 lb/ton', 'US', 85], ['Lime, effective calcium carbonate equivalent 85 %', 'US', 85], ['Lime, ECC 60 %', 'US', 60], ['Lime, lime score 96', 'US', 96], ['Lime, Agricultural Index 75', 'CA', 75],
    ['Lime, neutralizing index 80-89', 'US', 85], ['Lime, 60-69 grade', 'US', 65], ['Lime, neutralizing index 84', 'US', 84],
    // UK, READ S33: limestone 50 to 55 as CaO; 54 / 56 = 96.4. Germany, READ S15: burnt 90, carbonate 50, slag 45.
    ['Ground limestone, NV 54', 'GB', 96.43], ['Ground limestone, NV 50', 'IE', 89.29], ['Kalk, neutralising value 50', 'DE', 89.29], ['Hüttenkalk, NV 45', 'DE', 80.36],
    // Australia, READ S45a, and New Zealand: as CaCO3.
    ['Garden lime, NV 98', 'AU', 98], ['Ag lime, neutralising value 98 %', 'NZ', 98], ['Lime, NV 54 % CaO', 'AU', 96.43], ['Lime, NV 96 (% CaCO3)', 'GB', 96], ['Lime, NV 96 as CaCO3', 'DE', 96], ['Limestone, neutralizing value 90', 'CA', 90],
    // Analysis: 2.497 × 36 + 4.118 × 1; 1.785 × 30 + 2.483 × 20; CaCO3 and MgCO3 by weight 85 + 1.187 × 10.
    ['Oyster shell flour, calcium 36 %, magnesium 1 %', 'US', 94.01], ['Oyster shell flour, 36 % Ca', 'US', 89.89], ['Lime, CaO 30 %, MgO 20 %', 'PL', 103.21], ['Kalk, 85 % CaCO3, 10 % MgCO3', 'DE', 96.87],
  ] as const)('%s, %s', (label, country, expected) => {
    expect(percent(label, country)).toBeCloseTo(expected, 1);
  });

  test('name, weight and price stay', () => {
    const bag = bagOf('Pelletized lime, CCE 92, 95 % through 20 mesh, 40 lb, $6', 'US', 'ohio');
    expect([bag.label, bag.g, bag.price]).toEqual(['Pelletized lime', expect.closeTo(18143.69, 1), { amount: 6, currency: '$' }]);
    expect(bagOf('Lime, 40 lb CCE 92').g).toBeCloseTo(18143.69, 1);
    expect(bagOf('Lime CCE 92 40 lb').g).toBeCloseTo(18143.69, 1);
  });
  test('what the label leaves open is told', () => {
    expect(notes('Garden lime')).toEqual(['lime-assumed']);
    expect(notes('Garden lime, CCE 90')).toEqual(['lime-coarse']);
    expect(notes('Garden lime, ENP 75', 'US', 'ohio')).toEqual(['lime-unit']);
    expect(notes('Garden lime, ENP 1500', 'US', 'ohio')).toEqual([]);
    expect([notes('Garden lime, NV 54', null), percent('Garden lime, NV 54', null)]).toEqual([['lime-basis', 'lime-coarse'], expect.closeTo(96.43, 2)]);
    expect([notes('Garden lime, NV 98', null), percent('Garden lime, NV 98', null)]).toEqual([['lime-coarse'], expect.closeTo(98, 9)]);
  });
  test('magnesium by name or by analysis: 6 % Mg (READ S4), in Brazil over 12 % MgO (READ S40)', () => {
    for (const [label, country, expected] of [['Dolomitic lime, CCE 100', 'US', true], ['Lime, CCE 100, 6 % Mg', 'US', true], ['Lime, CCE 100, 5.9 % Mg', 'US', false], ['Lime, CCE 100, 10 % MgO', 'US', true], ['Lime, CCE 100', 'US', false], ['Calcário, PN 90, MgO 12 %', 'BR', false], ['Calcário, PN 90, MgO 13 %', 'BR', true]] as const) {
      expect([label, limeOf(label, country).dolomitic]).toEqual([label, expected]);
    }
  });
});

describe('what cannot be', () => {
  test.each([
    ['Garden lime, CCE 5', 'lime-strength-odd'], ['Garden lime, CCE 250', 'lime-strength-odd'], ['Garden lime, CCE 0', 'lime-strength-odd'], ['Garden lime, NV 0', 'lime-strength-odd'], ['Garden lime, ENP 0', 'lime-strength-odd'], ['Garden lime, ENP 4000 lb/ton', 'lime-strength-odd'], ['Garden lime, ENP 20 lb/ton', 'lime-strength-odd'],
    ['Garden lime, CCE 90, moisture 100 %', 'lime-strength-odd'], ['Garden lime, CCE 90, fineness 120', 'lime-strength-odd'], ['Garden lime, CCE 90, CCE 80', 'lime-two-values'], ['Garden lime, CCE 80, ECCE 95', 'lime-two-values'],
    ['Garden lime, CCE 90, 50 % through 20, 95 % through 100', 'lime-two-values'], ['Garden lime, CCE 90, 120 % through 20', 'lime-two-values'], ['Garden lime, CCE 90, 50 % through 20, 60 % through 20', 'lime-two-values'],
    ['lime 3 tons', 'bag-part-unknown'], ['Garden lime, 3 tons', 'bag-part-unknown'], ['Garden lime, 95 %', 'bag-part-unknown'], ['Garden lime, CCE 90, 45 % through 333 mesh', 'bag-part-unknown'], ['Garden lime, CCE 90 or so, 12', 'bag-part-unknown'],
  ] as const)('%s: %s', (label, code) => {
    const { bag, notices } = read(label, 'US', 'ohio');
    expect([bag, notices.map((n) => n.code)]).toEqual([null, [code]]);
  });
  test.each(['Gypsum, 40 lb, $8', 'Epsom salts, 4 lb', 'Land plaster', 'Kieserite, 25 kg'])('%s is no lime, and no mistake', (label) => {
    const { bag, notices } = read(label);
    expect([bag, notices.map((n) => [n.code, n.severity])]).toEqual([null, [['not-lime', 'warning']]]);
  });
  test.each(['Nitrate of lime 15.5-0-0', 'Calcium nitrate'])('%s is a feed', (label) => { expect(read(label).bag?.amends).toBeUndefined(); });
  test('what burns is told from any label', () => {
    for (const label of ['Hydrated lime', 'Hydrated dolomitic lime', 'Quicklime, CCE 170', 'Garden lime, CCE 135', 'Lime, NV 70 % CaO', 'Burnt lime']) expect([label, limeOf(label, 'GB').burns]).toEqual([label, true]);
    for (const label of ['Garden lime, CCE 108', 'Ground chalk, NV 55', 'Dolomite']) expect([label, limeOf(label, 'GB').burns]).toEqual([label, false]);
  });
});

test('any claims: a strength from 10 to 180 that is finite, or a reason; an effective value never above the whole', () => {
  const claim = fc.oneof(
    fc.tuple(fc.constantFrom('CCE', 'NV', 'TNV', 'ENV', 'ECCE', 'ENP', 'ENM', 'RNV', 'PRNT', 'moisture', 'fineness', 'Ca', 'Mg', 'CaO', 'MgO', 'score'), fc.integer({ min: 0, max: 3000 }), fc.constantFrom('', ' %', ' lb/ton', ' lb')).map(([n, v, u]) => `${n} ${String(v)}${u}`),
    fc.tuple(fc.integer({ min: 0, max: 130 }), fc.constantFrom(4, 8, 10, 20, 40, 50, 60, 100, 333)).map(([p, m]) => `${String(p)} % through ${String(m)} mesh`),
  );
  fc.assert(fc.property(fc.array(claim, { maxLength: 4 }), fc.constantFrom('US', 'GB', 'BR', 'AU', null), fc.constantFrom('ohio', 'iowa', 'maine', null), (claims, country, state) => {
    const label = ['Lime', ...claims].join(', ');
    const { bag, notices } = read(label, country, state);
    if (!bag) expect(notices.some((n) => n.severity === 'error')).toBe(true);
    else {
      expect(bag.amends!.strength).toBeGreaterThanOrEqual(0.1);
      expect(bag.amends!.strength).toBeLessThanOrEqual(1.8);
    }
  }));
});

describe('which lime', () => {
  const soil = (over: Partial<PhSoil>): PhSoil => ({ now: figure(5.2, 'pH', 'soil', 'told', { source: 'grower', at: '', mark: 'read' }), buffer: null, acidity: null, aluminium: null, baseSaturation: null, calcium: null, exchangeableMagnesium: null, ecec: null, bufferCapacity: null, lime: null, depthM: null, texture: 'loam', cec: 10, carbonate: null, organic: null, magnesium: null, ...over });
  test('magnesium: Ohio under 50 ppm, Ontario under 100 (READ S20, S46), North Carolina on sand, and not on clay where it holds over 20 % (READ S4, S5)', () => {
    const wants = (over: Partial<PhSoil>, country: string | null, state: string | null): boolean => magnesiumRule(soil(over), { country, state }).wants;
    expect([wants({ magnesium: 49 }, 'US', 'ohio'), wants({ magnesium: 50 }, 'US', 'ohio'), wants({}, 'US', 'ohio'), wants({ magnesium: 49 }, null, null)]).toEqual([true, false, false, true]);
    expect([wants({ magnesium: 99 }, 'CA', 'ontario'), wants({ magnesium: 100 }, 'CA', 'ontario'), wants({ magnesium: 99 }, 'CA', 'quebec')]).toEqual([true, false, false]);
    expect([wants({ texture: 'sand', magnesium: 90 }, 'US', 'north carolina'), wants({ texture: 'sand', magnesium: 90 }, 'US', 'south carolina')]).toEqual([true, false]);
    // 24.305 / 2 × 10 = 121.5 ppm are 1 meq/100 g. CEC 1.5: 20 % is 36.5 ppm.
    expect([wants({ texture: 'clay', magnesium: 36, cec: 1.5 }, 'US', 'north carolina'), wants({ texture: 'clay', magnesium: 37, cec: 1.5 }, 'US', 'north carolina')]).toEqual([true, false]);
  });
  test('the cheapest for what it does: a dearer bag of a stronger lime', () => {
    // 40 lb at $5 of ENP 1,000 are 20 lb of lime; at $6 of ENP 1,800 they are 36.
    const bags = [bagOf('Coarse aglime, ENP 1000 lb/ton, 40 lb, $5', 'US', 'ohio'), bagOf('Fine lime, ENP 1800 lb/ton, 40 lb, $6', 'US', 'ohio')];
    expect(amendmentBagOf('lime', bags, { magnesium: false, potash: false, ph: 5.2 })?.label).toBe('Fine lime');
  });
  test('ash: only where potash is wanted, not above pH 6.5 (MEMORY), at most 5 lb to 100 sq ft a year (READ S37b)', () => {
    const ash = bagOf('Wood ash, 20 lb');
    expect([isWelcome(ash, { potash: true, ph: 5.5 }), isWelcome(ash, { potash: false, ph: 5.5 }), isWelcome(ash, { potash: true, ph: 6.6 })]).toEqual([true, false, false]);
    const dose = (g: number) => figure(g, 'g/m2', 'lime', 'lime-strength', { source: 'grower', at: '', mark: 'read' });
    // 5 × 453.592 g on 9.2903 m².
    expect([withinOwnLimit(dose(500), ash.amends).value, withinOwnLimit(dose(200), ash.amends).value, withinOwnLimit(dose(500), limeOf('Garden lime')).value]).toEqual([expect.closeTo(244.12, 1), 200, 500]);
  });
});

describe('at the doors', () => {
  const ph = (...more: string[]) => medlar(['ph', '--now', '5.4', '--goal', '6', '--lime', '1 lb/100 sq ft', '--depth', '2 in', ...more]);
  test('the product of a lime by its sieves, and how its label was read', async () => {
    const run = await ph('--material', 'Aglime, ENP 1,500 lb/ton', '--json');
    // 1 lb on 100 sq ft is 48.82 g/m²; of a lime of 75 % 65.1.
    expect(run.json.result.ph[0].gPerM2).toBeCloseTo(65.1, 1);
    const told = await ph('--material', 'Garden lime, CCE 90');
    expect([told.code, /coarse lime acts slower/i.test(told.stdout)]).toEqual([0, true]);
  });
  test.each([['Gypsum', /does not change the pH/], ['Garden lime, CCE 250', /no lime has "CCE 250"/], ['Garden lime, 95 %', /95 %/], ['Hydrated lime, 40 lb', /burns/], ['10-10-10', /no lime or sulphur/]] as const)('%s is refused', async (material, why) => {
    const run = await ph('--material', material);
    expect([run.code, why.test(run.stderr)]).toEqual([2, true]);
  });
  test('no ash above pH 6.5', async () => {
    const run = await medlar(['ph', '--now', '6.6', '--goal', '7', '--texture', 'loam', '--material', 'Wood ash']);
    expect([run.code, /no wood ash above pH 6.5/.test(run.stderr)]).toEqual([2, true]);
  });
  test('in a plan: gypsum is left out, hydrated lime refused, the label of what is used told, and magnesium asked for', async () => {
    const orchard = 'where: Ohio, US\nbud-break: 12 April\nfirst-frost: 12 October\nsoil:\n  bank: soil.txt\ntrees:\n  Gate apple: apple, planted 2019, 12 ft across, bank\nshed:\n  - Gypsum, 40 lb\n  - Wood ash, 10 lb\n  - Hydrated lime, 20 lb\nstore:\n  - Garden lime, CCE 80, 40 lb, $6\n';
    const run = await medlar(['plan', '--json', '--today', '2026-03-14'], { 'orchard.yaml': orchard, 'soil.txt': 'pH 5.2\nbuffer pH 6.2 Sikora\nPhosphorus 164 ppm = very high\nPotassium 280 ppm = very high\nMagnesium 40 ppm = low\ntexture: loam\n' });
    const codes = run.json.notices.map((n: { code: string }) => n.code);
    expect(run.code).toBe(0);
    for (const code of ['not-lime', 'lime-burns', 'lime-ash-left', 'lime-coarse', 'lime-dolomitic']) expect(codes.filter((c: string) => c === code), code).toHaveLength(1);
    expect(run.json.result.ph[0].material).toBe('Garden lime');
  });
  // Dolomite is half magnesium carbonate by its formula, CaMg(CO3)2; what a lab calls high needs no more.
  test.each([['high', 'Dolomitic lime, CCE 100, 40 lb', 1], ['adequate', 'Dolomitic lime, CCE 100, 40 lb', 0], ['high', 'Garden lime, CCE 80, 40 lb', 0]])('magnesium %s, %s: told %i times that it brings more', async (word, lime, times) => {
    const orchard = `where: Ohio, US\nbud-break: 12 April\nfirst-frost: 12 October\nsoil:\n  bank: soil.txt\ntrees:\n  Gate apple: apple, planted 2019, 12 ft across, bank\nstore:\n  - ${lime}\n`;
    const run = await medlar(['plan', '--json', '--today', '2026-03-14'], { 'orchard.yaml': orchard, 'soil.txt': `pH 5.2\nbuffer pH 6.2 Sikora\nPhosphorus 164 ppm = very high\nPotassium 280 ppm = very high\nMagnesium 300 ppm = ${word}\ntexture: loam\n` });
    expect(run.json.notices.filter((n) => n.code === 'lime-calcitic')).toHaveLength(times);
  });
});

describe('bulk lime', () => {
  const TON = 2000 * 453.59237;
  test.each([
    ['Bulk ag lime, CCE 92, 1 ton, $60', 'US', TON, 60], ['Quarry lime, CCE 90, 2 tons, $90', 'US', 2 * TON, 90], ['Aglime, ENP 1500, $42 a ton', 'US', TON, 42], ['Aglime CCE 90 $42/ton', 'US', TON, 42],
    ['Aglime, CCE 90, 1/2 ton, $30', 'US', TON / 2, 30], ['Ground limestone, NV 54, £38 per tonne', 'GB', 1e6, 38], ['Ground limestone, NV 54, 1 ton, £38', 'GB', 1e6, 38], ['Kohlensaurer Kalk, 1 t, 45 €', 'DE', 1e6, 45],
    ['Aglime, CCE 90, 1 short ton, $40', 'CA', TON, 40], ['Aglime, CCE 90, 1 metric ton, $40', 'US', 1e6, 40],
    // 40 lb at 15 cents a pound: 6 dollars.
    ['Garden lime, CCE 90, 40 lb, $0.15 a lb', 'US', 40 * 453.59237, 6], ['Garden lime, CCE 90, $0.15 a lb', 'US', 453.59237, 0.15],
  ])('%s in %s', (label, country, g, price) => {
    const bag = bagOf(label, country);
    expect(bag.g).toBeCloseTo(g, 3);
    expect(bag.price!.amount).toBeCloseTo(price, 9);
  });

  test.each(['Lime, CCE 90, 3 tons an acre', 'Garden lime, 2 tons per acre, $40', 'Aglime, CCE 90, 2 t/ha', 'Scoop lime, CCE 90, $30 per yard', 'Lime, CCE 90, $5 a bucket', 'Lime, $12 per cu ft'])('a measure that says no weight: %s', (label) => {
    expect(read(label).notices.map((n) => n.code)).toEqual(['bag-part-unknown']);
  });

  // lime.md 2.3, READ S4: North Carolina's labels print the amount that equals 1 ton of standard lime; rate × that amount / 2,000.
  test.each([
    ['Garden lime, 2,500 lb equal to 1 ton of standard lime, 40 lb, $6', 80], ['Garden lime, ACE 2,500 lb, 40 lb, $6', 80], ['Garden lime (one ton of standard agricultural lime equals 2500 lbs), 40 lb', 80],
    ['Pelletized lime, 2,000 pounds equivalent to one ton of standard lime', 100],
  ])('%s', (label, strength) => {
    expect(percent(label, 'US', 'north carolina')).toBeCloseTo(strength, 9);
    expect(notes(label, 'US', 'north carolina')).toEqual([]);
  });
  test('a sum of pounds that no lime has', () => {
    expect(read('Garden lime, ACE 250 lb, 40 lb, $6').notices.map((n) => n.code)).toEqual(['lime-strength-odd']);
    expect(read('Garden lime, ACE 90000 lb, 40 lb, $6').notices.map((n) => n.code)).toEqual(['lime-strength-odd']);
  });
});
