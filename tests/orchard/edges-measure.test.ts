// Measures as growers write them, by exact factors (inch 0.0254 m, foot 0.3048 m, pound 453.59237 g, ounce a sixteenth, US gallon 3.785411784 L, acre 4046.8564224 m²), and what hangs on them: crown, ring, water.
import { describe, expect, test } from 'vitest';
import type { Bag } from '../../src/orchard/bag.ts';
import { amendmentBag, parseBag } from '../../src/orchard/bag.ts';
import { BANS, bansOf, isBanned } from '../../src/orchard/bans.ts';
import { bedOf, crownOf, ringOf, trunkDiameter } from '../../src/orchard/geometry.ts';
import { areaOf, lengthOf, massOf, numberOf, rateOf, volumeOf } from '../../src/orchard/measure.ts';
import type { Tree } from '../../src/orchard/tree.ts';
import { waterOf } from '../../src/orchard/water.ts';

const PLACE = { file: 'orchard.yaml', line: 1, column: 1, length: 1, source: '' };
const OZ = 453.59237 / 16;
const close = (got: unknown, expected: unknown): void => (typeof expected === 'number' ? expect(got).toBeCloseTo(expected, 9) : expect(got).toEqual(expected));

describe('numbers', () => {
  test.each<[string, unknown]>([['12', 12], [' 12 ', 12], ['2.5', 2.5], ['2,5', 2.5], ['2,50', 2.5], ['1,500', { unclear: '1,500' }], [' 12,500 ', { unclear: '12,500' }], ['1,5000', 1.5], ['1/2', 0.5], ['1 1/2', 1.5], ['10  3/4', 10.75], ['1/0', null], ['1 1/0', null], ['', null], ['a', null], ['1a', null], ['a1', null], ['1.', null], ['.5', null], ['1.2.3', null], ['-1', null], ['1/2/3', null], ['1 2', null], ['x1/2', null], ['1/2x', null], ['x1,500', null]])('%s', (text, n) => close(numberOf(text), n));
});

describe('lengths, volumes, weights', () => {
  test.each<[string, unknown]>([['12 ft', 3.6576], ['12ft', 3.6576], ['12 FT.', 3.6576], ["12'", 3.6576], ['1 foot', 0.3048], ['3 feet', 0.9144], ['7 in', 0.1778], ['7 inches', 0.1778], ['1 inch', 0.0254], ['7"', 0.1778], ['2 m', 2], ['2 metres', 2], ['1 metre', 1], ['1 meter', 1], ['2,5 meters', 2.5], ['80 cm', 0.8], ['80 mm', 0.08], ['1 1/2 m', 1.5], ['5 ft 6 in', 1.6764], ["5' 6\"", 1.6764], ['5 feet 6 inches', 1.6764], ['5 foot 1 inch', 1.5494], ['1,500 mm', { unclear: '1,500' }], ['5 ft 1,500 in', { unclear: '1,500' }], ['5 ft 6 cm', null], ['5 ft   6 in', 1.6764], ['5 m 6 in', null], ['12', null], ['ft', null], ['12 stone', null], ['12 constructor', null], ['x 12 ft', null], ['12 ft x', null], ['5 ftx 6 in', null]])('%s', (text, m) => close(lengthOf(text), m));
  test.each<[string, unknown]>([['60 L', 60], ['60 litres', 60], ['1 litre', 1], ['1 liter', 1], ['2 liters', 2], ['40 litro', 40], ['40 litros', 40], ['15 gal', 56.78117676], ['1 gallon', 3.785411784], ['2 gallons', 7.570823568], ['60 kg', null], ['60', null]])('%s', (text, L) => close(volumeOf(text), L));
  test.each<[string, unknown]>([['40 lb', 40 * 16 * OZ], ['1 pound', 16 * OZ], ['2 pounds', 32 * OZ], ['2 lbs.', 32 * OZ], ['12 oz', 12 * OZ], ['1 ounce', OZ], ['3 ounces', 3 * OZ], ['250 g', 250], ['1 gram', 1], ['5 grams', 5], ['2 kg', 2000], ['1 kilo', 1000], ['2 kilos', 2000], ['1 lb 4 oz', 20 * OZ], ['2 pounds 1 ounce', 33 * OZ], ['3 lbs 2 ounces', 50 * OZ], ['1 lb 4 g', null], ['1 lb x', null], ['1 pound 4 oz', 20 * OZ], ['x 1 lb 4 oz', null], ['1 lbx 4 oz', null], ['1 lb 1,500 oz', { unclear: '1,500' }], ['40 ft', null]])('%s', (text, g) => close(massOf(text), g));
  test.each<[string, unknown]>([['1000 sq ft', 92.90304], ['1,000 sq. ft.', 92.90304], ['1,000,000 square feet', 92903.04], ['5 ft2', 0.4645152], ['5 ft²', 0.4645152], ['12 m2', 12], ['12 m²', 12], ['12 sq m', 12], ['12 sq. m', 12], ['12 square metres', 12], ['1 square meter', 1], ['1 1/2 m2', 1.5], ['2,5 m2', 2.5], ['1/4 acre', 1011.7141056], ['2 acres', 8093.7128448], ['0,5 ha', 5000], ['0 m2', null], ['m2', null], ['12', null], ['12 feet', null], ['12 m2 x', null], ['x 12 m2', null], ['1/0 m2', null], ['12 haha', null], ['12 macres', null], ['12 xsq ft', null], ['12 sq ftx', null]])('the area %s', (text, m2) => close(areaOf(text), m2));
  test.each<[string, unknown]>([
    ['44 lb/1000 sq ft', { value: 44, unit: 'lb/1000 sq ft', of: 'lime' }], ['44 lbs. per 1,000 square feet', { value: 44, unit: 'lb/1000 sq ft', of: 'lime' }], ['44 lb/1000 ft2', { value: 44, unit: 'lb/1000 sq ft', of: 'lime' }], ['4 lb / 100 sq ft', { value: 4, unit: 'lb/100 sq ft', of: 'lime' }], ['4 lb per 100 sq. feet', { value: 4, unit: 'lb/100 sq ft', of: 'lime' }], ['4 lb per 100 ft2', { value: 4, unit: 'lb/100 sq ft', of: 'lime' }],
    ['2,000 lb/acre', { value: 2000, unit: 'lb/acre', of: 'lime' }], ['2000 lbs an acre', { value: 2000, unit: 'lb/acre', of: 'lime' }], ['2000 lb per ac', { value: 2000, unit: 'lb/acre', of: 'lime' }], ['2 tons/acre', { value: 2, unit: 'ton/acre', of: 'lime' }], ['1 ton an acre', { value: 1, unit: 'ton/acre', of: 'lime' }], ['2 tons per ac', { value: 2, unit: 'ton/acre', of: 'lime' }], ['2,5 t/ha', { value: 2.5, unit: 't/ha', of: 'lime' }], ['2 tonnes per ha', { value: 2, unit: 't/ha', of: 'lime' }], ['1 tonne/ha', { value: 1, unit: 't/ha', of: 'lime' }], ['500 kg/ha', { value: 500, unit: 'kg/ha', of: 'lime' }], ['500 kg per ha', { value: 500, unit: 'kg/ha', of: 'lime' }], ['200 g/m2', { value: 200, unit: 'g/m2', of: 'lime' }], ['200 g per m²', { value: 200, unit: 'g/m2', of: 'lime' }],
    ['20 dt CaO/ha', { value: 20, unit: 'dt/ha', of: 'CaO' }], ['20 dt of CaO per ha', { value: 20, unit: 'dt/ha', of: 'CaO' }], ['1600 lb ENM/acre', { value: 1600, unit: 'lb/acre', of: 'ENM' }], ['1600 lb enp per acre', { value: 1600, unit: 'lb/acre', of: 'ENP' }], ['16 kg ENM/ha', null], ['1600 kg ENP/ha', null], ['0 t/ha', { value: 0, unit: 't/ha', of: 'lime' }],
    ['t/ha', null], ['2 t', null], ['two t/ha', null], ['2 t/ha x', null], ['2 xt/ha', null], ['2 t/ha\nx', null], ['a2,000 lb/acre', null], ['x 2,000 lb/acre', null], ['2 lb', null], ['2/3 t/ha', null], ['2 lb/1000 acre', null], ['2 lb/100 acres', null], ['2 cacao/ha', null], ['', null],
  ])('the rate %s', (text, rate) => expect(rateOf(text)).toEqual(rate));
});

describe('crown, bed, trunk and ring', () => {
  const tree = (more: Partial<Tree> = {}): Tree => ({ name: 'Gate', count: 1, word: 'apple', crop: 'apple', leaf: [], flags: [], place: PLACE, ...more });
  test.each<[string, Partial<Tree>, number | null, number, boolean]>([
    ['as measured', { across: 4, spacing: [2, 3] }, 5, 4, false], ['as wide as the nearer side of its spacing', { spacing: [5, 3] }, 5, 3, false],
    // Guessed: a foot a year, at most 8 for a dwarf, 12, 18, and what the kind of plant comes to.
    ['a dwarf of five', { size: 'dwarf' }, 5, 5 * 0.3048, true], ['an old dwarf', { size: 'dwarf' }, 30, 8 * 0.3048, true], ['an old semi-dwarf', { size: 'semi-dwarf' }, 30, 12 * 0.3048, true], ['an old standard', { size: 'standard' }, 30, 18 * 0.3048, true], ['of no size that is told: a dwarf', {}, 30, 8 * 0.3048, true], ['of no age that is told: the first year', {}, null, 0.3048, true], ['planted this year', {}, 0, 0.3048, true], ['an old blueberry', { crop: 'blueberry', word: 'blueberry', size: 'standard' }, 30, 4 * 0.3048, true], ['an old walnut', { crop: 'walnut', word: 'walnut' }, 40, 30 * 0.3048, true],
  ])('%s', (_, more, years, diameter, guessed) => {
    const crown = crownOf(tree(more), years);
    expect(crown.diameter.value).toBeCloseTo(diameter, 9);
    expect(crown.area.value).toBeCloseTo((Math.PI * diameter * diameter) / 4, 9);
    expect(crown.guessed).toBe(guessed);
  });
  test('where a figure comes from', () => {
    expect(crownOf(tree({ across: 4 }), null).diameter).toMatchObject({ step: 'told', unit: 'm', of: 'crown', cite: { source: 'grower', at: 'Gate' } });
    expect(crownOf(tree({ spacing: [5, 3] }), null).diameter).toMatchObject({ step: 'crown-from-spacing', cite: { source: 'medlar', mark: 'judgement' }, from: [{ value: 3, of: 'tree' }] });
    expect(crownOf(tree(), 5).diameter).toMatchObject({ step: 'crown-guess', cite: { mark: 'judgement' }, from: [{ value: 5, unit: 'year', cite: { source: 'grower', at: 'Gate', mark: 'read' } }] });
    expect(crownOf(tree(), null).diameter.from).toEqual([]);
    expect(crownOf(tree({ across: 4 }), null).area).toMatchObject({ step: 'crown-area', unit: 'm2', cite: { source: 'definition', mark: 'derived' } });
  });
  test('ground of its own by the spacing', () => {
    expect(crownOf(tree({ spacing: [5, 3] }), null).share).toMatchObject({ value: 15, unit: 'm2', step: 'spacing-share', from: [{ value: 5 }, { value: 3 }] });
    expect(crownOf(tree(), null).share).toBeNull();
  });
  test('ground dug over: its part of the bed, else of the spacing', () => {
    expect(bedOf(tree({ bed: [1, 6], count: 4, spacing: [5, 3] }))).toMatchObject({ value: 1.5, unit: 'm2', step: 'bed-share', from: [{ value: 1 }, { value: 6 }] });
    expect(bedOf(tree({ spacing: [5, 3] }))!.value).toBe(15);
    expect(bedOf(tree())).toBeNull();
  });
  test('a trunk: girth by pi, across as it is, else nobody knows', () => {
    expect(trunkDiameter(tree({ trunk: { m: 0.314159265, measured: 'round' } }))).toMatchObject({ value: expect.closeTo(0.1, 9), step: 'girth-to-diameter', unit: 'm', from: [{ of: 'trunk' }] });
    expect(trunkDiameter(tree({ trunk: { m: 0.1, measured: 'across' } }))).toMatchObject({ value: 0.1, step: 'told' });
    expect(trunkDiameter(tree({ trunk: { m: 0.1, measured: null } }))).toBeNull();
    expect(trunkDiameter(tree())).toBeNull();
  });
  // Our own rule (tables/limits.ts): half a foot from a trunk under an inch, a foot up to three, else two; out to a quarter beyond the crown's edge, at least 1.5 ft, and a foot wide.
  test.each<[number | null, number, number, number]>([[null, 4, 0.1524, 2.5], [0.02, 4, 0.1524, 2.5], [0.0254, 4, 0.3048, 2.5], [0.0762, 4, 0.3048, 2.5], [0.08, 4, 0.6096, 2.5], [0.02, 0.4, 0.1524, 0.4572], [0.08, 1.2, 0.6096, 0.9144], [0.08, 1.5, 0.6096, 0.9375]])('a trunk of %s m under %d m of crown: from %d to %d', (trunk, across, from, to) => {
    const one = tree({ across, ...(trunk === null ? {} : { trunk: { m: trunk, measured: 'across' as const } }) });
    const ring = ringOf(one, crownOf(one, null));
    expect([ring.from.value, ring.to.value]).toEqual([expect.closeTo(from, 9), expect.closeTo(to, 9)]);
    expect(ring.area.value).toBeCloseTo(Math.PI * (to * to - from * from), 9);
    expect([ring.from.unit, ring.to.unit, ring.area.unit, ring.from.step, ring.to.step, ring.area.step]).toEqual(['m', 'm', 'm2', 'ring-inner', 'ring-outer', 'ring-area']);
    expect(ring.from.from).toHaveLength(trunk === null ? 0 : 1);
  });
  test('twice as far where so much must go on', () => {
    const one = tree({ across: 4 });
    expect(ringOf(one, crownOf(one, null), 2).to.value).toBeCloseTo(4, 9);
  });
});

describe('water', () => {
  // A meq of alkalinity is 50.04 mg of calcium carbonate and 61.02 mg of bicarbonate (atomic weights).
  test.each<[string, number]>([['alkalinity 200 ppm', 200], ['200 ppm alkalinity', 200], ['Total alkalinity: 200 mg/L', 200], ['alk. 200 ppm', 200], ['alk 200 mg/l', 200], ['200 mg/L as CaCO3', 200], ['200 mg/L of alkalinity', 200], ['bicarbonate 244 mg/L', 200.1], ['HCO3- 244 mg/L', 200.1], ['244 ppm bicarbonate', 200.1], ['bicarbonate 200 ppm as CaCO3', 200], ['4 meq/L', 200.2], ['alkalinity 4 mmolc/L', 200.2], ['bicarbonate 4 mmol/L', 200.2], ['hco3 4 mmol/l', 200.2], ['0 meq/L', 0], ['2,5 meq/L', 125.1], ['39 meq/L', 1951.6]])('%s', (text, mg) => expect((waterOf(text) as { mgPerL: number }).mgPerL).toBeCloseTo(mg, 0));
  test.each(['200 ppm', '200 mg/L', '4 mmol/L', 'alkalinity 4 mmol/L', 'alkalinity 2,500 ppm', 'alkalinity 2001 ppm', '41 meq/L', 'wet', '', 'alkalinity', 'alkalinity -5 ppm', 'x alkalinity 200 ppm', 'alkalinity 200 ppm x'])('%s: nothing', (text) => expect(waterOf(text)).toBeNull());
  test('at the most', () => expect(waterOf('alkalinity 2000 ppm')).toEqual({ mgPerL: 2000 }));
  test.each(['hardness 200 ppm', '12 °dH', '12 dGH', '12 gh', 'hard', '10 grains', '1 grain'])('%s tells of something else', (text) => expect(waterOf(text)).toBe('hardness'));
});

describe('what is never fed', () => {
  test.each<[string, readonly string[] | null]>([['chloride', ['chloride']], ['Chlorides, ammonium nitrate; urea', ['chloride', 'ammonium nitrate', 'urea']], ['nitrates and urea', ['nitrate', 'urea']], ['organic only', ['mineral']], ['only organic', ['mineral']], ['synthetic', ['mineral']], ['synthetics', ['mineral']], ['artificials', ['mineral']], ['artificial', ['mineral']], ['minerals', ['mineral']], ['sand', null], ['', null], [',', null], ['chloride, sand', null], ['not organic only', null], ['organic only please', null]])('%s', (text, bans) => expect(bansOf(text)).toEqual(bans));
  const bag = (label: string): Bag => parseBag(label, 'US', false, PLACE).bag!;
  test.each<[string, readonly string[]]>([['Urea, 46-0-0', ['mineral', 'urea']], ['Ammonium nitrate, 34-0-0', ['mineral', 'nitrate', 'ammonium nitrate']], ['Ammonium sulphate nitrate, 26-0-0', ['mineral', 'nitrate', 'ammonium nitrate']], ['Blood meal, 12-0-0', []], ['Organic lawn 5-0-0 mineral', []], ['Potassium chloride, 0-0-60', ['mineral', 'chloride']], ['Potassium nitrate, 13-0-44', ['mineral', 'nitrate']], ['Sulphate of ammonia, 21-0-0', ['mineral']]])('%s is kept out by %j', (label, bans) => {
    expect(BANS.filter((b) => isBanned(bag(label), [b]))).toEqual(bans);
  });
  test('one of several is enough, none keeps nothing out', () => {
    expect(isBanned(bag('Urea, 46-0-0'), ['chloride', 'urea'])).toBe(true);
    expect(isBanned(bag('Urea, 46-0-0'), [])).toBe(false);
  });
  test('lime and sulphur are no feed', () => expect(isBanned(amendmentBag('Lime', { kind: 'lime', strength: 1, dolomitic: false, burns: false }, { g: 1, price: null, left: null, place: PLACE }), ['mineral'])).toBe(false));
});
