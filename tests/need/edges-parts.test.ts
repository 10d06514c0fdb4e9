// The small parts of a need: wanted growth and leaf, rates by class, what is credited, the lab's lines, magnesia, salts. Ten square metres of crown; figures of the pages named, sums by hand.
import { describe, expect, test } from 'vitest';
import { advised } from '../../src/need/advice.ts';
import { credited, isMuchCompost } from '../../src/need/credits.ts';
import type { Facts } from '../../src/need/facts.ts';
import { groundOf, organicMatter, yearsOf } from '../../src/need/facts.ts';
import { growthRange, leafVerdict } from '../../src/need/growth.ts';
import { magnesiumOf } from '../../src/need/magnesium.ts';
import { classRate, ownRate, soilFigures } from '../../src/need/soil-rate.ts';
import { stopsOf } from '../../src/need/stops.ts';
import type { Cite } from '../../src/reason/figure.ts';
import { told } from '../../src/reason/figure.ts';
import type { Advice } from '../../src/soil/advice.ts';
import type { LeafNutrient } from '../../src/tables/leaf.ts';
import type { Heaviness } from '../../src/rating/texture.ts';
import type { Value } from './parts.ts';
import { facts } from './parts.ts';

const OLD = 'apple, planted 2016, bearing';
const YOUNG = 'apple, planted 2024';

describe('wanted growth', () => {
  const inches = (line: string, where = 'Ohio, US'): readonly number[] | null => { const r = growthRange(facts(line, [], {}, where)); return r && [r.low, r.high].map((x) => Number((x.value / 0.0254).toFixed(6))); };
  test.each<[string, string, readonly number[] | null]>([
    // Iowa's is the first in the table; Colorado, Utah and New York print their own; Massachusetts' and New Mexico's are of orchards and never lead.
    [OLD, 'Ohio, US', [8, 15]], [YOUNG, 'Ohio, US', [15, 30]], [OLD, 'Colorado, US', [12, 24]], [YOUNG, 'Colorado, US', [24, 36]], ['pear, planted 2016, bearing', 'Colorado, US', [6, 12]], ['peach, planted 2016, bearing', 'Utah, US', [12, 18]],
    [OLD, 'New York, US', [10, 12]], [YOUNG, 'Massachusetts, US', [15, 30]], [OLD, 'New Mexico, US', [8, 15]], [OLD, 'Denmark', [8, 15]],
    // Tennessee: spur types 6 to 10 in, once they bear; of apples alone.
    [`${OLD}, spur-type`, 'Ohio, US', [6, 10]], [`${YOUNG}, spur-type`, 'Ohio, US', [15, 30]], ['pear, planted 2016, bearing, spur-type', 'Ohio, US', [8, 15]],
    ['lemon, planted 2016', 'Ohio, US', null],
  ])('%s in %s: %j in', (line, where, wanted) => { expect(inches(line, where)).toEqual(wanted); });
  test('told in metres', () => { expect(growthRange(facts(OLD))!.low).toMatchObject({ unit: 'm', of: 'growth', step: 'growth-range', cite: { source: 'iowa-fruit-trees' } }); });
});

describe('a leaf', () => {
  const verdict = (line: string, nutrient: LeafNutrient = 'N', where = 'Ohio, US') => { const v = leafVerdict(facts(line, [], {}, where), nutrient); return v && [v.verdict, Number(v.short.toFixed(6)), v.range.cite.source]; };
  test.each<[string, LeafNutrient, string, readonly [string, number, string] | null]>([
    // Michigan: 1.9 to 2.7 % N in apples. Washington: 1.2 to 1.9 % K.
    [`${OLD}, leaf N 1.8 %`, 'N', 'Ohio, US', ['below', 0.1, 'michigan-leaf']], [`${OLD}, leaf N 1.9 %`, 'N', 'Ohio, US', ['sufficient', 0, 'michigan-leaf']], [`${OLD}, leaf N 2.7 %`, 'N', 'Ohio, US', ['sufficient', 0, 'michigan-leaf']], [`${OLD}, leaf N 2.71 %`, 'N', 'Ohio, US', ['above', 0, 'michigan-leaf']],
    [`${OLD}, leaf K 1.1 %`, 'K', 'Ohio, US', ['below', 0.1, 'washington-em119e']], [`${OLD}, leaf K 1.1 %`, 'N', 'Ohio, US', null], [`${OLD}, leaf K 1.1 %, leaf N 2.0 %`, 'N', 'Ohio, US', ['sufficient', 0, 'michigan-leaf']],
    [`${OLD}, leaf N 300 ppm`, 'N', 'Ohio, US', null], ['mulberry, planted 2016, leaf N 2 %', 'N', 'Ohio, US', null],
    // Ontario: 2.0 to 2.5 %, 0.2 more before bearing.
    [`${OLD}, leaf N 2.1 %`, 'N', 'Ontario, Canada', ['sufficient', 0, 'ontario-apple-leaf']], [`${YOUNG}, leaf N 2.1 %`, 'N', 'Ontario, Canada', ['below', 0.1, 'ontario-apple-leaf']], [`${YOUNG}, leaf N 2.1 %`, 'N', 'Ohio, US', ['sufficient', 0, 'michigan-leaf']],
    // Sacramento Valley: prunes 1.3 to 2.0 % K; other plums 1.0 to 3.0 (Washington's older page).
    ['prune, planted 2016, bearing, leaf K 1.2 %', 'K', 'California, US', ['below', 0.1, 'sacvalley-prune-potassium']], ['plum, planted 2016, bearing, leaf K 1.2 %', 'K', 'California, US', ['sufficient', 0, 'washington-old-leaf']],
  ])('%s, %s in %s: %j', (line, nutrient, where, wanted) => { expect(verdict(line, nutrient, where)).toEqual(wanted); });
});

describe('rates by class, g/m²', () => {
  test('one table', () => {
    expect(['far-below', 'below', 'at', 'above'].map((t) => classRate('weinsberg.k2o', t as 'at').low)).toEqual([15, 15, 8, 0].map((x) => expect.closeTo(x, 9) as number));
    expect(classRate('poland.bearing.k2o', 'below')).toMatchObject({ low: expect.closeTo(8, 9) as number, high: expect.closeTo(12, 9) as number, cite: { source: 'poland-skierniewice' } });
    expect(() => classRate('aragon.planting.k2o', 'above')).toThrow(/no class above in aragon\.planting\.k2o/);
    expect(() => classRate('nowhere', 'at')).toThrow(RangeError);
  });
  test('the country\'s own, for the crop, the nutrient and the stage; not one by leaf', () => {
    const own = (line: string, where: string, ...rest: ['P2O5' | 'K2O', 'planting' | 'bearing', 'below' | 'at' | 'above']) => ownRate(facts(line, [], {}, where), ...rest)?.low ?? null;
    expect(own(OLD, 'Germany', 'P2O5', 'bearing', 'below')).toBeCloseTo(4, 9);
    expect(own(OLD, 'Germany', 'K2O', 'bearing', 'below')).toBeCloseTo(15, 9);
    expect(own(OLD, 'Poland', 'K2O', 'bearing', 'below')).toBeCloseTo(8, 9);
    expect(own(OLD, 'Poland', 'K2O', 'planting', 'below')).toBeCloseTo(15, 9);
    expect(own(OLD, 'Poland', 'P2O5', 'planting', 'below')).toBeCloseTo(30, 9);
    for (const [line, where, of, stage] of [[OLD, 'Germany', 'K2O', 'planting'], ['peach, planted 2016', 'Germany', 'K2O', 'bearing'], [OLD, 'Massachusetts, US', 'K2O', 'bearing'], [OLD, 'Ohio, US', 'K2O', 'bearing'], [OLD, 'Poland', 'P2O5', 'bearing']] as const) expect(own(line, where, of, stage, 'below'), `${line} ${where}`).toBeNull();
    expect(own(OLD, 'Spain', 'K2O', 'planting', 'above')).toBeNull();
  });
  test('the soil as a figure: its value, how it rates and by whom', () => {
    const f = facts(OLD, [{ item: 'potassium', target: 'at', value: 120 }, { item: 'phosphorus', value: 9 }, { item: 'magnesium', target: 'at' }]);
    expect(soilFigures(f, 'potassium')).toMatchObject([{ value: 120, unit: 'mg/kg', of: 'soil', step: 'soil-at', cite: { source: 'grower' }, from: [{ value: 120 }] }]);
    const cite: Cite = { source: 'ontario-soil', at: 'made', mark: 'read' };
    expect(soilFigures({ ...f, soil: { ...f.soil!, rated: f.soil!.rated.map((r) => ({ ...r, cite })) } }, 'potassium')[0]!.cite).toEqual(cite);
    expect([soilFigures(f, 'phosphorus'), soilFigures(f, 'magnesium'), soilFigures(f, 'calcium')]).toEqual([[], [], []]);
    expect((['far-below', 'below', 'above'] as const).map((target) => soilFigures(facts(OLD, [{ item: 'potassium', target, value: 1 }]), 'potassium')[0]!.step)).toEqual(['soil-far-below', 'soil-below', 'soil-above']);
  });
});

describe('what is taken off', () => {
  const whole = told(100, 'g', 'N', 'test');
  const off = (line: string, soil: readonly Value[] = [], from = whole) => credited(facts(line, soil), from);
  test('a half, by whom and of what', () => {
    expect(off(OLD, [{ item: 'organic-matter', value: 6, unit: '%' }]).need).toMatchObject({ unit: 'g', of: 'N', step: 'organic-half', cite: { source: 'medlar', at: 'organic-matter' }, from: [{ value: 100 }, { value: 6 }] });
    expect(off(`${OLD}, clover`).need).toMatchObject({ unit: 'g', of: 'N', step: 'clover-half', cite: { source: 'medlar', at: 'clover' }, from: [{ value: 100 }] });
    expect(off(`${OLD}, blight-prone`).need).toMatchObject({ unit: 'g', of: 'N', step: 'blight-half', cite: { source: 'medlar', at: 'blight-prone' }, from: [{ value: 100 }] });
  });
  // A cubic yard of 27 cubic feet weighs 950 lb; 1 % of it is nitrogen, of which a tenth is freed in a year: 0.56 g a litre.
  test('what compost frees', () => {
    const litre = ((950 * 453.59237) / (27 * 28.316846592)) * 0.01 * 0.1;
    const some = off(`${OLD}, compost 10 L`);
    expect(some).toMatchObject({ half: null, enough: null, carried: 0, need: { unit: 'g', of: 'N', step: 'less-compost', cite: { source: 'uc-almond-compost' } } });
    expect(some.need.value).toBeCloseTo(100 - 10 * litre, 6);
    expect(some.need.from.map((x) => [x.step, x.unit, x.of])).toEqual([['told', 'g', 'N'], ['compost-brings', 'g', 'N']]);
    expect(some.need.from[1]).toMatchObject({ value: expect.closeTo(10 * litre, 6) as number, from: [{ value: 10, unit: 'L', of: 'compost' }] });
    expect(off(`${OLD}, compost 1000 L`)).toMatchObject({ enough: 'compost-enough', need: { value: 0 } });
    // Where nothing was wanted, compost is not what made it so.
    expect(off(`${OLD}, compost 1000 L`, [], told(0, 'g', 'N', 'test')).enough).toBeNull();
    expect(off(OLD, [], told(0, 'g', 'N', 'test')).enough).toBeNull();
    expect(isMuchCompost(facts(`${OLD}, compost 10 L`))).toBe(false);
  });
  test('what earlier feeds still bring', () => {
    const f = facts(OLD);
    const carried = [{ bag: 'Hen manure', date: '2025-04-01', n: 50, frees: 30, cite: whole.cite }] as unknown as NonNullable<Facts['tree']['carried']>;
    expect(credited({ ...f, tree: { ...f.tree, carried } }, whole).need).toMatchObject({ value: 70, unit: 'g', of: 'N', step: 'less-carried', from: [{ value: 100 }, { value: 30, unit: 'g', of: 'N', step: 'carried-brings', from: [{ value: 50, unit: 'g', of: 'N', cite: { at: 'diary, 2025-04-01: Hen manure' } }] }] });
  });
});

describe('facts as figures', () => {
  test('age and ground', () => {
    expect(yearsOf(facts(OLD))).toMatchObject([{ value: 10, unit: 'year', of: 'tree', step: 'age', cite: { source: 'grower', at: 'A', mark: 'read' } }]);
    expect(yearsOf(facts('apple'))).toEqual([]);
    expect(groundOf(facts('grape, planted 2016, spacing 2 x 3 m'))).toMatchObject({ unit: 'm2', of: 'crown', step: 'spacing-share' });
  });
  test('no soil, no organic matter', () => { expect(organicMatter(facts(OLD))).toBeNull(); });
  test('the lab\'s lines', () => {
    const says = (of: string, value: number, more: Partial<Advice> = {}): Advice => ({ of, value, unit: 'g/m2', per: 'area', product: null, line: 7, ...more }) as unknown as Advice;
    const of = (...advice: Advice[]) => advised(facts(OLD, [], { advice }), 'N');
    expect(of(says('N', 1), says('N', 2, { line: 9 }))).toMatchObject({ value: expect.closeTo(30, 9) as number, unit: 'g', of: 'N', step: 'lab-advice', cite: { source: 'lab', at: 'line 7, 9', mark: 'read' }, from: [{ value: 1, unit: 'g/m2', step: 'lab-says' }, { value: 2 }, { unit: 'm2', of: 'crown' }] });
    // By the tree its ground does not count; of both, it does.
    expect(of(says('N', 5, { unit: 'g', per: 'tree' }))!.from.map((x) => x.unit)).toEqual(['g']);
    expect(of(says('N', 5, { unit: 'g', per: 'tree' }), says('N', 1))!.from.map((x) => x.unit)).toEqual(['g', 'g/m2', 'm2']);
  });
});

// Weinsberg: 50 kg/ha of magnesia where it is low, none above.
test('magnesia, step by step', () => {
  const of = (target: string) => magnesiumOf(facts(OLD, [{ item: 'magnesium', target, value: 40 }]));
  expect(of('below')).toMatchObject({ unit: 'g', of: 'MgO', step: 'per-area', cite: { source: 'weinsberg' }, from: [{ unit: 'm2', of: 'crown' }, { value: 40, step: 'soil-below' }] });
  expect(of('above')).toMatchObject({ value: 0, step: 'none' });
});

describe('stops', () => {
  const one = (soil: Value, heaviness: Heaviness | null = null) => { const f = facts(OLD, [soil]); return stopsOf({ ...f, soil: { ...f.soil!, heaviness } }); };
  // At 1:5 a paste reads 7.5 times as much, on sand 9.9 (tidelands of Korea); nothing is fed over 4 dS/m of the paste (Washington).
  test('salts in five parts of water are taken to the paste', () => {
    const salts = (value: number): Value => ({ item: 'salts', value, unit: 'dS/m', method: '1:5' });
    expect([one(salts(0.53)), one(salts(0.54)), one(salts(0.41), 'light')].map((s) => s.map((x) => [x.id, Number(x.value!.toFixed(3)), x.from?.unit]))).toEqual([[], [['salts', 4.05, 'dS/m']], [['salts', 4.059, 'dS/m']]]);
    // Exactly 4 is not over it: 0.625 × 6.4 on heavy soil.
    expect(one(salts(0.625), 'heavy')).toEqual([]);
    expect(one(salts(0.54))[0]!.cite.source).toBe('washington-em119e');
  });
  test('by words or by weight nothing can be said of salts', () => {
    expect(one({ item: 'salts', word: 'high' })).toEqual([]);
    expect(one({ item: 'salts', value: 900, unit: 'mg/kg' })).toEqual([]);
  });
  test('lead by its number, or by the lab\'s word without one', () => {
    expect(one({ item: 'lead', value: 500 })).toMatchObject([{ id: 'lead', value: 500 }]);
    expect(one({ item: 'lead', word: 'high' })[0]).not.toHaveProperty('value');
  });
});
