// What is said of a zone's soil and of its laboratory's own advice, and whose figures lead: each notice by itself, on soils and plants made by hand. Sums by hand.
import { describe, expect, test } from 'vitest';
import type { ZoneSoil } from '../../src/gather.ts';
import type { Orchard } from '../../src/orchard/load.ts';
import { noticesOf } from '../../src/plan-notices.ts';
import type { TreePlan } from '../../src/planned.ts';
import { sourceOf } from '../../src/tables/sources.ts';
import { feed } from '../bags/parts.ts';
import { fig, limeOf, orchardOf, phOf, plantOf, seasonAt, told, zoneOf } from './parts.ts';

const store = [feed('Urea', [46, 0, 0])];
const stocked = orchardOf({ store });
const us = orchardOf({ store, where: { units: 'us' } });
const of = (plans: readonly TreePlan[], zones: readonly ZoneSoil[], orchard: Orchard = stocked): [string, string, object][] => told(noticesOf(plans, zones, seasonAt(), orchard));

type Value = { item: string; target?: string | null; mgPerKg?: number | null; method?: string | null; asPrinted?: string };
const soilOf = (...values: Value[]): object => ({ heaviness: null, rated: values.map(({ item, target = null, mgPerKg = 10, method = 'olsen', asPrinted = item }) => ({ reading: { item, method, asPrinted }, mgPerKg: mgPerKg === null ? null : fig(mgPerKg, 'mg/kg', 'P'), target })) });
const zoned = (...values: Value[]): ZoneSoil => zoneOf('bank', null, { soil: soilOf(...values) });

describe('magnesium', () => {
  const low = (target: string | null = 'below'): ZoneSoil => zoned({ item: 'calcium', target: 'at' }, { item: 'magnesium', target });
  const wants = (name: string, grams: number | null, more: Parameters<typeof plantOf>[1] = {}): TreePlan => plantOf(name, { tree: { zone: 'bank' }, need: { MgO: grams === null ? null : fig(grams, 'g', 'product') }, ...more });
  // 50 g on a crown of ten square metres; Epsom salts, MgSO4 with seven waters, hold 40.3 of MgO in 246.5 by their formula: 306 g.
  test('what a year wants of it, and as Epsom salts', () => {
    expect(of([wants('A', 50)], [low()])).toEqual([['magnesium-short', 'note', { zone: 'bank', amount: '50 g', area: '10 m²', epsom: '306 g', lime: '' }]]);
    // On 100 sq ft: 46.5 g are 1.64 oz, 284 g of Epsom salts 10.02.
    expect(of([wants('A', 50)], [low()], us)[0]![2]).toEqual({ zone: 'bank', amount: '1 3/4 oz', area: '100 sq ft', epsom: '10 oz', lime: '' });
    expect(of([wants('A', 50, { facts: { crown: { area: fig(20, 'm2', 'crown'), share: null } } })], [low('far-below')])[0]![2]).toMatchObject({ amount: '25 g' });
  });
  test('of the first that wants some, once', () => { expect(of([wants('A', null), wants('B', 0), wants('C', 30), wants('D', 90)], [low()]).map(([code, , facts]) => `${code} ${(facts as { amount: string }).amount}`)).toEqual(['magnesium-short 30 g']); });
  test('it comes with dolomitic lime, where that goes on', () => {
    const limed = (verdict: string, dolomitic: boolean): object => { const plan = wants('A', 50, { ph: phOf('bank', { g: 10, bag: limeOf('Lime', { amends: { dolomitic } }), plan: { verdict, reason: 'inside', dose: fig(10, 'g/m2', 'lime') } }) }); return of([plan], [low()])[0]![2]; };
    expect([limed('lime', true), limed('lime', false), limed('sulphur', true)]).toMatchObject([{ epsom: '', lime: 'yes' }, { epsom: '306 g', lime: '' }, { epsom: '306 g', lime: '' }]);
    expect(of([wants('A', 50, { ph: phOf('bank', { g: 10, bag: null, plan: { verdict: 'lime', reason: 'inside' } }) })], [low()])[0]![2]).toMatchObject({ lime: '' });
  });
  test('nothing where it is not short, or for another zone; a plant that names no zone stands on its soil', () => {
    const [at, unknown, none] = [low('at'), low(null), zoned()];
    expect([of([wants('A', 50)], [at]), of([wants('A', 50)], [unknown]), of([wants('A', 50)], [none]), of([wants('A', 50, { tree: { zone: 'hill' } })], [low()])]).toEqual([[], [], [], []]);
    const zone = low();
    const on = (soil: unknown): TreePlan => wants('A', 50, { tree: {}, facts: { soil } });
    expect([of([on(zone.soil)], [zone]).length, of([on({ rated: [], heaviness: null })], [zone]).length]).toEqual([1, 0]);
  });
});

test('trace elements that read low are told together', () => {
  const zone = zoned({ item: 'iron', target: 'below' }, { item: 'boron', target: 'far-below' }, { item: 'zinc', target: 'at' }, { item: 'copper', target: null }, { item: 'manganese', target: 'below' });
  expect(of([], [zone])).toEqual([['minor-short', 'note', { zone: 'bank', items: 'B, Mn, Fe' }]]);
  expect([of([], [zoned({ item: 'zinc', target: 'below' })])[0]![2], of([], [zoned({ item: 'copper', target: 'below' })])[0]![2], of([], [zoned({ item: 'zinc', target: 'above' })])]).toEqual([{ zone: 'bank', items: 'Zn' }, { zone: 'bank', items: 'Cu' }, []]);
});

describe('phosphorus and potassium that no scale rates', () => {
  const standing = plantOf('A', { tree: { zone: 'bank' } });
  const said = (...values: Value[]): [string, string, object][] => of([standing], [zoned(...values)]);
  test('are told with an example, the first as printed', () => {
    expect(said({ item: 'potassium', asPrinted: 'K 90 ppm' }, { item: 'phosphorus', asPrinted: 'P 20 ppm' })).toEqual([['soil-unrated', 'warning', { zone: 'bank', items: 'P, K', example: 'P 20 ppm' }]]);
    expect(said({ item: 'potassium', asPrinted: 'K 90 ppm' })[0]![2]).toEqual({ zone: 'bank', items: 'K', example: 'K 90 ppm' });
  });
  test('where none of an element is rated, and one at least was measured by a method', () => {
    expect([said({ item: 'phosphorus' }, { item: 'phosphorus', target: 'at' }), said({ item: 'phosphorus', method: null }), said({ item: 'phosphorus', mgPerKg: null }), said({ item: 'magnesium' }), said()]).toEqual([[], [], [], [], []]);
    expect(said({ item: 'phosphorus', method: null }, { item: 'phosphorus' })).toHaveLength(1);
  });
  test('where something stands in that ground', () => {
    const zone = zoned({ item: 'phosphorus' });
    expect([of([], [zone]), of([plantOf('T', { tree: { zone: 'bank', tub: 40 } })], [zone]), of([plantOf('B', { tree: { zone: 'hill' } })], [zone]), of([plantOf('T', { tree: { zone: 'bank', tub: 40 } }), standing], [zone]).length]).toEqual([[], [], [], 1]);
  });
});

describe('the laboratory\'s own advice', () => {
  // 5 g/m2 on ten square metres are 50 g.
  const line = (of: string, value: number, more: object = {}): object => ({ of, value, unit: 'g/m2', per: 'area', product: null, line: 3, ...more });
  const N5 = [line('N', 5), line('K2O', 4.1234)];
  const zoneBy = (advice: readonly object[], byLab = false): ZoneSoil => zoneOf('bank', null, { advice, byLab });
  const fedBy = (name: string, zone: ZoneSoil, { tree = {}, need = {}, ...facts }: { tree?: object; need?: object; years?: number; bed?: unknown } = {}): TreePlan => plantOf(name, { tree, need, facts: { advice: zone.advice, byLab: zone.byLab, ...facts } });
  const zones = [{ name: 'hill', file: 'b.txt', sample: null }, { name: 'bank', file: 'a.txt', sample: 'South' }];
  const home = orchardOf({ store, zones });
  test('stands beside the plan, for the first that is fed', () => {
    const zone = zoneBy(N5);
    expect(of([fedBy('A', zone, { need: { N: fig(0) } }), fedBy('B', zone, { need: { N: fig(70.4) } }), fedBy('C', zone)], [zone], home)).toEqual([['advice-beside', 'note', { zone: 'bank', list: '5 g/m2 N, 4.12 g/m2 K2O', tree: 'B', lab: '50 g', ours: '70 g', file: 'a.txt, South' }]]);
    expect(of([fedBy('A', zone, { need: { N: fig(0) } })], [zone], home)[0]![2]).toMatchObject({ tree: 'A', ours: '0 g' });
    expect(of([fedBy('A', zone)], [zone], orchardOf({ store, zones: [{ name: 'bank', file: 'a.txt', sample: null }] }))[0]![2]).toMatchObject({ file: 'a.txt' });
    expect(of([fedBy('A', zone)], [zone])[0]![2]).toMatchObject({ file: '' });
    // Fifty grams are 1.76 oz, a hundred 3.53.
    expect(of([fedBy('A', zone)], [zone], us)[0]![2]).toMatchObject({ lab: '1.8 oz', ours: '3.5 oz' });
  });
  test('a product beside the nutrients is the way to bring them; alone it is what is told', () => {
    const both = zoneBy([line('N', 3, { product: '10-10-10' }), line('N', 5)]);
    expect(of([fedBy('A', both)], [both], home)[0]![2]).toMatchObject({ list: '5 g/m2 N', lab: '50 g' });
  });
  test('without nitrogen in it, without plants, without advice there is nothing to compare', () => {
    const [potash, zone, none] = [zoneBy([line('K2O', 5)]), zoneBy(N5), zoneBy([])];
    expect([of([fedBy('A', potash)], [potash], home), of([], [zone], home), of([fedBy('A', none)], [none], home), of([plantOf('B')], [zone], home)]).toEqual([[], [], [], []]);
    expect([of([fedBy('T', zone, { tree: { tub: 40 } })], [zone], home), of([fedBy('S', zone, { bed: fig(1, 'm2', 'crown') })], [zone], home), of([fedBy('S', zone, { bed: null })], [zone], home)]).toEqual([[], [], []]);
  });
  test('followed, as asked', () => {
    const zone = zoneBy(N5, true);
    expect(of([fedBy('A', zone), fedBy('B', zone)], [zone], home)).toEqual([['advice-followed', 'note', { zone: 'bank' }]]);
  });
  // 2 lb to 1,000 sq ft are 9.76 g/m2: ten are too much, a hundred grams on the crown.
  test('refused for each plant that it burns', () => {
    const zone = zoneBy([line('N', 10)], true);
    expect(of([fedBy('A', zone), fedBy('B', zone)], [zone], home)).toEqual(['A', 'B'].map((tree) => ['advice-refused', 'warning', { tree, lab: '100 g', limit: '2 lb/1000 sq ft' }]));
    // In its planting year nothing is fed, whoever says it.
    expect(of([fedBy('A', zone, { years: 0 })], [zone], home)).toEqual([]);
    const each = zoneBy([line('N', 90, { unit: 'g', per: 'tree' }), line('P2O5', 31)], true);
    expect(of([fedBy('A', each)], [each], home)[0]![2]).toMatchObject({ lab: '90 g' });
    const phosphate = zoneBy([line('P2O5', 31)], true);
    expect(of([fedBy('A', phosphate)], [phosphate], home)[0]![2]).toMatchObject({ lab: '0 g' });
    // A crown of ten square metres takes 97.6 g: 90 g a tree are followed there, not on five.
    const tree = zoneBy([line('N', 90, { unit: 'g', per: 'tree' })], true);
    const small = plantOf('S', { facts: { advice: tree.advice, byLab: true, crown: { area: fig(5, 'm2', 'crown'), share: null, guessed: false } } });
    expect(of([fedBy('A', tree), small], [tree], home).map(([code]) => code)).toEqual(['advice-followed', 'advice-refused']);
  });
  test('asked for, and none there', () => {
    const none = zoneBy([], true);
    expect(of([fedBy('A', none)], [none], home)).toEqual([['advice-none', 'warning', { zone: 'bank' }]]);
  });
});

describe('whose figures lead', () => {
  const led = (word: string, why: string, source: string, label?: string): TreePlan => plantOf(word, { tree: { word }, need: { nitrogen: { half: null, lead: { why, wants: null, rule: { source, label } } } } });
  const by = (...plans: TreePlan[]): [string, string, object][] => of(plans, []);
  const [michigan, penn] = ['michigan-garden-fruit', 'penn-stone'];
  const publisher = (id: string): string => sourceOf(id)!.publisher;
  test('the own place\'s are as they should be', () => { expect([by(led('apple', 'here', michigan)), by(led('apple', 'own', 'own-rules')), by(plantOf('A'))]).toEqual([[], [], []]); });
  test('a neighbour\'s, each with its crops', () => {
    expect(by(led('apple', 'near', michigan), led('plum', 'near', penn), led('pear', 'near', michigan), led('apple', 'near', michigan))).toEqual([
      ['lead-near', 'note', { where: 'Ohio, US', crops: 'apple, pear', source: publisher(michigan) }], ['lead-near', 'note', { where: 'Ohio, US', crops: 'plum', source: publisher(penn) }]]);
    expect(by(led('apple', 'near', 'a-page'))[0]![2]).toMatchObject({ source: 'a-page' });
  });
  test('two pages of one publisher are one neighbour', () => {
    expect(publisher('penn-blueberry')).toBe(publisher(penn));
    expect(by(led('apple', 'near', penn), led('blueberry', 'near', 'penn-blueberry'), led('apple', 'near', 'penn-blueberry')).map(([, , facts]) => (facts as { crops: string }).crops)).toEqual(['apple, blueberry']);
  });
  test('those of the crop\'s default, all in one, where a country is told', () => {
    expect(by(led('apple', 'default', michigan), led('plum', 'default', penn), led('pear', 'default', michigan))).toEqual([['lead-default', 'note', { where: 'Ohio, US', list: `apple, pear (${publisher(michigan)}); plum (${publisher(penn)})` }]]);
    expect(by(led('apple', 'default', 'a-page'))[0]![2]).toMatchObject({ list: 'apple (a-page)' });
    expect(of([led('apple', 'default', michigan)], [], orchardOf({ store, where: { country: null } }))).toEqual([]);
  });
  test('a crop that two of them lead, as young and old trees may be, stands with both', () => {
    expect(by(led('apple', 'default', michigan), led('apple', 'default', penn))[0]![2]).toMatchObject({ list: `apple (${publisher(michigan)}); apple (${publisher(penn)})` });
  });
  test('rates of orchards alone', () => {
    expect(by(led('fig', 'here', michigan, 'orchard'), led('kiwi', 'here', penn, 'orchard'), led('fig', 'here', michigan, 'orchard'), led('plum', 'here', penn, 'weak'))).toEqual([['lead-orchard', 'warning', { crops: 'fig, kiwi' }]]);
  });
});
