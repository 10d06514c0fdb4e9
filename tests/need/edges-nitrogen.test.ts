// Nitrogen for one tree on ten square metres of crown, step by step, asked of the part itself. Sums by hand from what the pages in tables/rules*.ts print.
import { describe, expect, test } from 'vitest';
import type { Facts } from '../../src/need/facts.ts';
import type { NitrogenNeed } from '../../src/need/nitrogen.ts';
import { nitrogenOf } from '../../src/need/nitrogen.ts';
import { told } from '../../src/reason/figure.ts';
import type { Rule } from '../../src/tables/rule.ts';
import { LB, OZ } from '../published/helpers.ts';
import { facts } from './parts.ts';

const OLD = 'apple, planted 2016, bearing';
const made = (more: Partial<Rule> = {}): Rule => ({ id: 'made', source: 'own-rules', crops: ['apple'], region: 'US-OH', by: 'plant', gives: { of: 'N', unit: 'g' }, low: 10, cite: { source: 'own-rules', at: 'made', mark: 'read' }, ...more });
const of = (line: string, where = 'Ohio, US', more: Partial<Facts> = {}): NitrogenNeed => nitrogenOf(facts(line, [], more, where));
const grams = (line: string, where = 'Ohio, US', more: Partial<Facts> = {}): number => of(line, where, more).need.value;
/** The same with a wide crown, forty square metres. */
const wide = (line: string, where = 'Ohio, US'): NitrogenNeed => { const f = facts(line, [], {}, where); return nitrogenOf({ ...f, crown: { ...f.crown, area: told(40, 'm2', 'crown', 'test') } }); };

describe('none at all', () => {
  const soil = { bed: null };
  test.each<[string, string, Partial<Facts>, string, string]>([
    [OLD, 'Ohio, US', soil, 'before-planting', 'virginia-note-21'], ['apple, planted 2026', 'Ohio, US', {}, 'planting-year', 'virginia-note-21'],
    [`${OLD}, fed lawn`, 'Ohio, US', {}, 'fed-lawn', 'iowa-fruit-trees'], [`${OLD}, pruned hard`, 'Ohio, US', {}, 'pruned-hard', 'utah-column'],
    // Michigan: apples 1.9 to 2.7 % of nitrogen in the leaf.
    [`${OLD}, leaf N 2.8 %`, 'Ohio, US', {}, 'leaf-above', 'michigan-leaf'], [`${OLD}, leaf N 2.7 %`, 'Ohio, US', {}, 'leaf-sufficient', 'michigan-leaf'], [`${OLD}, leaf N 1.9 %`, 'Ohio, US', {}, 'leaf-sufficient', 'michigan-leaf'],
    // Iowa: bearing trees should grow 8 to 15 in.
    [`${OLD}, shoots 16 in 2025`, 'Ohio, US', {}, 'growth-above', 'iowa-fruit-trees'], [`${OLD}, shoots 15 in 2025`, 'Ohio, US', {}, 'growth-within', 'iowa-fruit-trees'], [`${OLD}, shoots 8 in 2025`, 'Ohio, US', {}, 'growth-within', 'iowa-fruit-trees'],
    [`${OLD}, shoots 9 in 2025`, 'Ohio, US', { lastN: 0 }, 'growth-repeat', 'iowa-fruit-trees'],
    // Georgia's pecans go by the trunk; California's loquats are printed for trees that bear.
    ['pecan, planted 2016, bearing', 'Georgia, US', {}, 'fact-missing', 'medlar'], ['loquat, planted 2016, not bearing', 'California, US', {}, 'table-none', 'medlar'],
    ['pecan, planted 2016, bearing, shoots 10 in 2025', 'Georgia, US', { lastN: 50 }, 'fact-missing', 'medlar'],
  ])('%s in %s %j: %s by %s', (line, where, more, none, source) => {
    expect(of(line, where, more)).toMatchObject({ need: { value: 0, unit: 'g', of: 'N', step: 'none', cite: { source } }, none, ifBelow: null, cap: 0, doses: 0, lead: null, half: null, followed: { source } });
  });
  test('by which facts, and in whose words', () => {
    expect(of(`${OLD}, shoots 16 in 2025`).need.from.map((x) => [x.unit, x.of, Number((x.value / 0.0254).toFixed(6))])).toEqual([['m', 'growth', 16], ['m', 'growth', 15]]);
    expect(of(`${OLD}, shoots 9 in 2025`).need.from.map((x) => Number((x.value / 0.0254).toFixed(6)))).toEqual([9, 8, 15]);
    expect(of(`${OLD}, fed lawn`).need.from).toEqual([]);
    expect(of('pecan, planted 2016, bearing', 'Georgia, US').followed).toEqual({ source: 'medlar', at: 'fact-missing', mark: 'judgement' });
    expect(of('loquat, planted 2016, not bearing', 'California, US').followed).toEqual({ source: 'medlar', at: 'table-later', mark: 'judgement' });
    for (const line of [`${OLD}, fed lawn`, `${OLD}, pruned hard`, 'apple, planted 2026']) {
      const { at, mark } = of(line).followed!;
      expect(at, line).toMatch(/lawn|pruning|planting/);
      expect(mark).toBe('read');
    }
  });
  test('a page that gives none', () => { expect(of('olive, planted 2016', 'California, US')).toMatchObject({ need: { value: 0 }, none: 'table-none', followed: { source: 'uc-davis-olive' } }); });
});

// Michigan: 0.05 lb a year, 0.75 lb at most; RHS: 100 g/m² of 7 % on bare ground, 140 in grass and below pears and stone fruit.
describe('the smallest of what applies', () => {
  test('by age, by ground', () => {
    const need = of(OLD);
    expect(need).toMatchObject({ none: null, doses: 1, half: null, need: { unit: 'g', of: 'N', step: 'smallest', cite: { source: 'rhs-feeding' } }, followed: { source: 'rhs-feeding' }, lead: { why: 'near', rule: { source: 'michigan-garden-fruit' } } });
    expect(need).not.toHaveProperty('carried');
    expect(need.need.value).toBeCloseTo(70, 9);
    expect(need.need.from.map((x) => Number(x.value.toFixed(6)))).toEqual([Number((0.5 * LB).toFixed(6)), 70]);
    expect(need.cap).toBeCloseTo(0.75 * LB, 9);
    expect(grams(`${OLD}, grass`)).toBeCloseTo(98, 9);
    expect(grams('apple, planted 2024')).toBeCloseTo(0.1 * LB, 9);
    expect(of('apple, planted 2024').followed!.source).toBe('michigan-garden-fruit');
    expect(wide(OLD).need.value).toBeCloseTo(0.5 * LB, 9);
  });
  // Maryland: 2.5, 5 and 10 lb of 10-10-10 a year for a dwarf, semi-dwarf and standard pear.
  test.each([['dwarf', 0.25], ['semi-dwarf', 0.5], ['standard', 0.75]] as const)('%s: its cap is %f lb', (size, lb) => {
    expect(of(`${OLD}, ${size}`).cap).toBeCloseTo(lb * LB, 9);
    expect(wide(`${OLD}, ${size}`).need.value).toBeCloseTo(Math.min(lb, 0.5) * LB, 9);
  });
  test('the cap of a size is printed for pears, on others our judgement', () => {
    const cite = (crop: string) => wide(`${crop}, planted 2016, bearing, dwarf`).need.cite;
    expect(cite('pear')).toEqual({ source: 'maryland-pear', at: 'dwarf', mark: 'read' });
    expect(cite('apple')).toMatchObject({ source: 'maryland-pear', at: expect.stringMatching(/^dwarf,.*pear/) as string, mark: 'judgement' });
    const capped = wide(`${OLD}, dwarf`).need.from.find((x) => x.step === 'size-cap');
    expect(capped).toMatchObject({ unit: 'g', of: 'N' });
  });
  test('a country\'s own rate of ground stands alone where no page by age is as near', () => {
    expect(of(OLD, 'Kent, UK')).toMatchObject({ cap: Infinity, lead: { why: 'here', rule: { source: 'rhs-feeding', by: 'area' } } });
    // A young tree in Kent is fed on its ground too; Michigan's two years would be 45 g.
    expect(grams('apple, planted 2024', 'Kent, UK')).toBeCloseTo(70, 9);
    // Austria: 50 g/m² of 12 % on a meadow, for standard trees; Bavaria's ten grams by age are a neighbour's.
    expect(grams('apple, planted 2016, bearing, standard, grass', 'Austria')).toBeCloseTo(60, 9);
    // A neighbour's rate of ground bounds nothing: on one square metre Austria's would be 6 g, Bavaria's plants get 9.8, as does grass by RHS.
    const small = facts('apple, planted 2016, bearing, standard, grass', [], {}, 'Bavaria, Germany');
    expect(nitrogenOf({ ...small, crown: { ...small.crown, area: told(1, 'm2', 'crown', 'test') } }).need.value).toBeCloseTo(9.8, 9);
    // Germany has Bavaria's by age: 70 g of 14 % at the least.
    expect(grams(OLD, 'Bavaria, Germany')).toBeCloseTo(9.8, 9);
  });
  test('the grower\'s own rules', () => {
    const ground = made({ by: 'area', gives: { of: 'N', unit: 'g/m2' }, low: 9 });
    expect(grams(OLD, 'Michigan, US', { rules: [ground] })).toBeCloseTo(90, 9);
    expect(of('apple, planted 2024', 'Michigan, US', { rules: [ground] })).toMatchObject({ lead: { why: 'own', rule: { by: 'area' } } });
    expect(grams('apple, planted 2024', 'Michigan, US', { rules: [ground] })).toBeCloseTo(90, 9);
    expect(grams(OLD, 'Michigan, US', { rules: [made(), ground] })).toBeCloseTo(10, 9);
    expect(grams(OLD, 'Michigan, US', { rules: [made({ low: 95 }), ground] })).toBeCloseTo(90, 9);
    // Beside a rule of one's own by the plant the country's rate of ground still bounds it.
    expect(of(OLD, 'Kent, UK', { rules: [made()] })).toMatchObject({ need: { value: 10 }, lead: { why: 'own' } });
    expect(grams(OLD, 'Kent, UK', { rules: [made({ low: 200 })] })).toBeCloseTo(70, 9);
    expect([of(OLD, 'Ohio, US', { rules: [made({ doses: 3 })] }).doses, of(OLD, 'Kent, UK', { rules: [made({ doses: 3 })] }).doses]).toEqual([3, 3]);
    // Given at any age beside what grows with it.
    expect(grams(OLD, 'Kent, UK', { rules: [made({ base: [5, 7], low: 3 })] })).toBeCloseTo(8, 9);
  });
});

describe('other crops go by their own table', () => {
  test('an old bush and one of untold age', () => {
    // Pennsylvania: from the sixth year 8 oz of 21 %, in the second 4 oz.
    expect(of('blueberry, planted 2016')).toMatchObject({ doses: 1, cap: Infinity, need: { step: 'table-year' }, lead: { why: 'near', rule: { source: 'penn-blueberry' } } });
    expect(grams('blueberry, planted 2016')).toBeCloseTo(8 * 0.21 * OZ, 9);
    expect(grams('blueberry')).toBeCloseTo(4 * 0.21 * OZ, 9);
    // Pennsylvania's currants are fed alike at any age: nothing is guessed for them.
    expect(grams('currant')).toBeCloseTo(0.6 * OZ, 9);
    expect(of('currant').need.from).toEqual([]);
    expect(of('currant').cap).toBeCloseTo(0.8 * OZ, 9);
  });
  // Campania: hazels 150 kg/ha in the fifth year, 15 g/m²; never above 2 lb to 1000 sq ft, 9.76 g/m².
  test('an orchard\'s rate of ground is bounded', () => {
    const most = (10 * 2 * LB) / (1000 * 0.3048 ** 2);
    const need = of('hazelnut, planted 2022', 'Italy');
    expect(need).toMatchObject({ need: { unit: 'g', of: 'N', step: 'bounded', cite: { source: 'medlar', at: 'dose-refused' } }, lead: { why: 'here', rule: { source: 'it-campania-guida' } } });
    expect([need.need.value, need.cap]).toEqual([expect.closeTo(most, 9), expect.closeTo(most, 9)]);
    expect(need.need.from.map((x) => Number(x.value.toFixed(6)))).toEqual([150, 10]);
    // In the second year 50 kg/ha are within.
    expect(of('hazelnut, planted 2025', 'Italy').need).toMatchObject({ value: expect.closeTo(50, 9) as number, step: 'rule' });
    // A rule of one's own is no orchard's: it is taken as it stands.
    expect(grams('hazelnut, planted 2022', 'Italy', { rules: [made({ crops: ['hazelnut'], low: 200 })] })).toBe(200);
  });
});

describe('in the planting year', () => {
  test.each<[string, string, Partial<Facts>, number]>([
    // Pennsylvania: 8 oz of 10 % in the planting season of stone fruit; not for Ohio. Maine: half an ounce in the first few years.
    ['peach, planted 2026', 'Pennsylvania, US', {}, 0.8 * OZ], ['peach, planted 2026', 'Ohio, US', {}, 0], ['apple, planted 2026', 'Maine, US', {}, 0.5 * OZ],
    // New Jersey's vine table calls the planting year its first: a third of a pound of 10 %. Pennsylvania's bushes get none in theirs.
    ['grape, planted 2026', 'Kenya', {}, LB / 30], ['blueberry, planted 2026', 'Ohio, US', {}, 0],
    // RHS: raspberries 90 g/m² of 7 % forked in before planting. Georgia: strawberries in hills 2.5 lb of 10 % to 100 sq ft in their first year, by a page for home gardens; no neighbour's.
    ['strawberry, planted 2026', 'Georgia, US', {}, (10 * 0.25 * LB) / (100 * 0.3048 ** 2)], ['strawberry, planted 2026', 'Alabama, US', {}, 0],
    // Campania's 30 kg/ha for hazels of the first year is an orchard's.
    ['hazelnut, planted 2026', 'Italy', {}, 0],
    ['raspberry, planted 2026', 'Kent, UK', {}, 63],
    ['apple, planted 2026', 'Ohio, US', { rules: [made({ years: [0, 3] })] }, 10], ['apple, planted 2026', 'Ohio, US', { rules: [made({ years: [1, 3] })] }, 0], ['apple, planted 2026', 'Ohio, US', { rules: [made({ years: [1, 3], first: 1 })] }, 10],
    ['apple, planted 2026', 'Ohio, US', { rules: [made()] }, 0], ['apple, planted 2026', 'Ohio, US', { rules: [made({ years: [0, 3], low: 0 })] }, 0],
    ['apple, planted 2026', 'Ohio, US', { rules: [made({ years: [0, 3], by: 'area', gives: { of: 'N', unit: 'g/m2' }, low: 2 })] }, 20],
  ])('%s in %s %j: %f g', (line, where, more, wanted) => {
    const need = of(line, where, more);
    expect(need.need.value).toBeCloseTo(wanted, 9);
    expect(need.none).toBe(wanted > 0 ? null : 'planting-year');
  });
});

describe('leaf and growth', () => {
  test('fed on a condition where the shoots are unmeasured, but not a young tree nor by a leaf', () => {
    expect(of(OLD).ifBelow).toMatchObject({ unit: 'm', of: 'growth', step: 'growth-range', cite: { source: 'iowa-fruit-trees' } });
    expect(of(OLD).ifBelow!.value).toBeCloseTo(8 * 0.0254, 9);
    expect(of('apple, planted 2024').ifBelow).toBeNull();
    expect(of(`${OLD}, leaf N 1.8 %`).ifBelow).toBeNull();
    // Nobody prints how far a mulberry's kin, a currant, should grow.
    expect(of('currant, planted 2016').ifBelow).toBeNull();
  });
  test('short growth is fed', () => {
    const need = of(`${OLD}, shoots 7 in 2025`);
    expect(need).toMatchObject({ none: null, ifBelow: null, need: { unit: 'g', of: 'N', step: 'growth-short', cite: { source: 'iowa-fruit-trees' } }, followed: { source: 'rhs-feeding' } });
    expect(need.need.value).toBeCloseTo(70, 9);
    expect(need.need.from.map((x) => Number(x.value.toFixed(4)))).toEqual([70, 0.1778, 0.2032]);
    expect(need.need.from[1]).toMatchObject({ unit: 'm', of: 'growth' });
  });
  test('growth as it should be repeats last year\'s, within the rules', () => {
    const again = (lastN: number): NitrogenNeed => of(`${OLD}, shoots 9 in 2025`, 'Ohio, US', { lastN });
    expect(again(50)).toMatchObject({ none: null, ifBelow: null, need: { value: 50, unit: 'g', of: 'N', step: 'repeat', cite: { source: 'medlar', at: 'repeat', mark: 'judgement' } }, followed: { source: 'rhs-feeding' } });
    expect(again(50).need.from[0]).toMatchObject({ value: 50, unit: 'g', of: 'N', step: 'fed-last-year', cite: { source: 'grower', at: 'diary', mark: 'read' } });
    expect(again(50).need.from.map((x) => Number(x.value.toFixed(4)))).toEqual([50, 70, 0.2286, 0.2032, 0.381]);
    expect(again(100).need.value).toBeCloseTo(70, 9);
    expect(again(0.5).need.value).toBe(0.5);
  });
  // Michigan: a tenth more for each 0.1 % that the leaf falls short, of apples and pears.
  test('a leaf that is short raises it', () => {
    const need = of(`${OLD}, leaf N 1.7 %`);
    expect(need.need).toMatchObject({ unit: 'g', of: 'N', step: 'leaf-raise', cite: { source: 'michigan-leaf' } });
    expect(need.need.value).toBeCloseTo(84, 6);
    expect(need.need.from.map((x) => [Number(x.value.toFixed(6)), x.unit, x.of])).toEqual([[70, 'g', 'N'], [0.2, '%', 'leaf']]);
    expect(grams(`${OLD}, leaf N 1.7 %, off year`)).toBeCloseTo(70, 6);
    // 1.4 % short would be 168 g; a dwarf's cap is a quarter of a pound.
    expect(grams(`${OLD}, leaf N 0.5 %`)).toBeCloseTo(168, 6);
    expect(grams(`${OLD}, dwarf, leaf N 0.5 %`)).toBeCloseTo(0.25 * LB, 6);
    // A leaf says more than shoots: fed for all that it grew.
    expect(grams(`${OLD}, leaf N 1.7 %, shoots 20 in 2025`)).toBeCloseTo(84, 6);
    expect(of(`${OLD}, leaf N 1.7 %, shoots 5 in 2025`).need.step).toBe('leaf-raise');
    expect(of(`${OLD}, leaf N 2.0 %, shoots 5 in 2025`).none).toBe('leaf-sufficient');
    // Not of a peach: 140 g/m² of 7 %, its leaf short (Washington 2.7).
    expect(of('peach, planted 2016, bearing, leaf N 2.0 %').need).toMatchObject({ value: expect.closeTo(98, 6) as number, step: 'smallest' });
  });
});

describe('what is taken off', () => {
  // Oklahoma: half where the crop is lost.
  test.each([['fruit none 2026', 35], ['fruit none 2025', 70], ['fruit light 2026', 70]])('%s: %f g', (fruit, wanted) => { expect(grams(`${OLD}, ${fruit}`)).toBeCloseTo(wanted, 9); });
  test('by whom', () => {
    expect(of(`${OLD}, fruit none 2026`).need).toMatchObject({ unit: 'g', of: 'N', step: 'lost-crop', cite: { source: 'oklahoma-hla6232', mark: 'read' } });
    expect(of(`${OLD}, fruit none 2026`).need.cite.at).toMatch(/lost/);
    expect(of(`${OLD}, fruit none 2026`).need.from.map((x) => x.value)).toEqual([expect.closeTo(70, 9)]);
    expect(of(`${OLD}, clover`)).toMatchObject({ half: 'clover', need: { value: expect.closeTo(35, 9) as number } });
    // 1,000 litres of compost bring more than it needs: 950 lb a cubic yard (0.5636 kg a litre) of 1 %, of which a tenth is freed, 564 g.
    expect(of(`${OLD}, compost 1000 L`)).toMatchObject({ need: { value: 0 }, none: 'compost-enough' });
  });
  test('earlier feeds', () => {
    const f = facts(OLD);
    const carried = [{ bag: 'Hen manure', date: '2025-04-01', n: 50, frees: 20, cite: f.crown.area.cite }] as unknown as NonNullable<Facts['tree']['carried']>;
    expect(nitrogenOf({ ...f, tree: { ...f.tree, carried } })).toMatchObject({ carried: 20, need: { value: expect.closeTo(50, 9) as number } });
  });
});

describe('in a tub', () => {
  // memory: half a gram of nitrogen a litre. Measured: blueberries 4.4 g in a pot of 5 gallons, 18.927 L.
  test.each([['apple, planted 2016, tub 60 L', 30], ['blueberry, planted 2016, tub 60 L', (60 * 4.4) / (5 * 3.785411784)], ['olive, planted 2016, tub 30 L', 5.6]] as const)('%s: %f g', (line, wanted) => {
    const need = of(line);
    expect(need).toMatchObject({ none: null, ifBelow: null, cap: Infinity, doses: 1, lead: null, half: null, need: { unit: 'g', of: 'N', step: 'tub' } });
    expect(need.need.value).toBeCloseTo(wanted, 9);
    expect(need.need.from).toMatchObject([{ unit: 'L', of: 'tub' }]);
    expect(need.followed).toEqual(need.need.cite);
  });
});
