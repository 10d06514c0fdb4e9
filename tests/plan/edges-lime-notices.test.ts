// What is said of the lime: what its label left open, ash and what burns, and which kind the soil wants. Magnesium under the edges that `tables/lime-materials.ts` names; rates made up, sums by hand.
import { describe, expect, test } from 'vitest';
import type { AmendmentBag } from '../../src/bags/amend.ts';
import type { ZoneSoil } from '../../src/gather.ts';
import type { Orchard } from '../../src/orchard/load.ts';
import { limeNotices } from '../../src/ph-notices.ts';
import type { TreePlan } from '../../src/planned.ts';
import { sourceOf } from '../../src/tables/sources.ts';
import { feed } from '../bags/parts.ts';
import { fig, limeOf, orchardOf, phOf, plantOf, told, zoneOf } from './parts.ts';

const limed = (name: string, bag: AmendmentBag | null, { zone = 'bank', dose = 200, verdict = 'lime', k = 0 } = {}): TreePlan =>
  plantOf(name, { tree: { zone }, need: { K2O: fig(k, 'g', 'K2O') }, ph: phOf(zone, { bag, g: 500, plan: { verdict, dose: fig(dose, 'g/m2', 'lime') } }) });
const of = (plans: readonly TreePlan[], zones: readonly ZoneSoil[] = [zoneOf('bank', {})], orchard: Orchard = orchardOf()): [string, string, object][] => told(limeNotices(plans, zones, orchard));

const plain = limeOf('Garden lime');
const dolomite = limeOf('Dolomite', { amends: { dolomitic: true } });
/** As the table has it: 6 % K2O, at most 5 lb to 100 sq ft, not over pH 6.5. */
const ashMaterial = { potash: { percent: 6 }, most: { value: 5, unit: 'lb/100 sq ft' }, mostPh: { ph: 6.5 } };
const ash = limeOf('Wood ash', { material: ashMaterial });
const burnt = limeOf('Quicklime', { amends: { burns: true } });

describe('what the label left open', () => {
  const noted = limeOf('Garden lime', { notes: [{ code: 'lime-assumed', facts: { percent: 100, least: '' } }] });
  test('once for a bag, whoever gets of it', () => {
    expect(of([limed('A', noted), limed('B', noted)])).toEqual([['lime-assumed', 'note', { percent: 100, least: '', bag: 'Garden lime' }]]);
  });
  test('once also where the same lime stands in the shed and in the store', () => {
    expect(of([limed('A', noted), limed('B', { ...noted })])).toHaveLength(1);
    expect(of([limed('A', null)], [], orchardOf({ shed: [burnt], store: [{ ...burnt }] }))).toEqual([['lime-burns', 'warning', { bag: 'Quicklime' }]]);
  });
  test('nothing of a bag that nobody gets, and nothing at all where nothing is limed', () => {
    expect(of([limed('A', null)], [], orchardOf({ shed: [noted] }))).toEqual([]);
    expect([of([limed('A', noted, { verdict: 'sulphur' })], [], orchardOf({ shed: [burnt] })), of([plantOf('B')], [], orchardOf({ shed: [burnt] }))]).toEqual([[], []]);
  });
});

describe('ash', () => {
  // 200 g/m2 on ten square metres are 2 kg, of which 6 % are 120 g of potash; 5 lb (2.27 kg) to 100 sq ft (9.29 m2) are 2.44 kg to 10 m2.
  test('what potash it brings, and the most of it in a year', () => {
    expect(of([limed('A', ash, { k: 50 })])).toEqual([['lime-ash', 'warning', { bag: 'Wood ash', potash: '120 g', area: '10 m²', most: '2.44 kg / 10 m²' }]]);
    // To 100 sq ft: 200 g/m2 are 1,858 g, 6 % of them 111.5 g, 3.93 oz.
    expect(of([limed('A', ash, { k: 50 })], [], orchardOf({ where: { units: 'us' } }))).toEqual([['lime-ash', 'warning', { bag: 'Wood ash', potash: '4 oz', area: '100 sq ft', most: '5 lb / 100 sq ft' }]]);
  });
  test('of several zones by one bag the most, whichever comes first', () => {
    for (const doses of [[200, 100], [100, 200]]) expect(of(doses.map((dose, i) => limed('AB'[i]!, ash, { k: 50, dose, zone: `zone ${i}` })), [])[0]![2]).toMatchObject({ potash: '120 g' });
  });
  test('without a limit of its own none is told; other lime brings none', () => {
    expect(of([limed('A', limeOf('Ash', { material: { potash: { percent: 6 } } }))], [])[0]![2]).toMatchObject({ most: '' });
    expect(of([limed('A', plain)], [])).toEqual([]);
  });
  test('left out where its potash is not wanted or the pH is too high for it, each by its name', () => {
    const other = limeOf('Fireplace ash', { material: ashMaterial });
    const left = (k: number, now: number, ...more: TreePlan[]): string[] => of([limed('A', plain, { k }), ...more], [zoneOf('bank', { now: fig(now, 'pH', 'soil') })], orchardOf({ shed: [ash], store: [other, plain] })).map(([code, severity, facts]) => `${code} ${severity} ${Object.values(facts).join()}`);
    const both = ['lime-ash-left note bank,Wood ash', 'lime-ash-left note bank,Fireplace ash'];
    expect([left(0, 5.5), left(50, 5.5), left(50, 6.5), left(50, 6.6), left(0, 5.5, limed('B', plain, { k: 50 })), left(0, 5.5, limed('C', plain, { k: 50, zone: 'hill' }))]).toEqual([both, [], [], both, [], both]);
  });
});

test('what burns is never planned, and said once for each', () => {
  expect(of([limed('A', plain)], [], orchardOf({ shed: [burnt, plain], store: [limeOf('Hydrated lime', { amends: { burns: true } }), limeOf('Sulphur', { amends: { kind: 'sulphur', burns: true } }), feed('Urea', [46, 0, 0])] })).map(([code, severity, facts]) => [code, severity, facts]))
    .toEqual([['lime-burns', 'warning', { bag: 'Quicklime' }], ['lime-burns', 'warning', { bag: 'Hydrated lime' }]]);
});

describe('magnesium', () => {
  const soil = (magnesium: number | null, target: string | null = null): ZoneSoil => zoneOf('bank', { magnesium }, { soil: { rated: [{ reading: { item: 'calcium' }, target: null }, ...(target ? [{ reading: { item: 'magnesium' }, target }] : [])], heaviness: null } });
  test('short, by Ohio under 50 mg/kg: lime with magnesium is the one', () => {
    expect(of([limed('A', plain)], [soil(49.4)])).toEqual([['lime-dolomitic', 'note', { zone: 'bank', source: sourceOf('ohio-lime-source')!.publisher, under: 50, now: 49 }]]);
    expect([of([limed('A', dolomite)], [soil(49.4)]), of([limed('A', plain)], [soil(50)]), of([limed('A', plain)], [soil(null)]), of([limed('A', plain, { zone: 'hill' })], [soil(49.4)])]).toEqual([[], [], [], []]);
  });
  test('told also where the shed\'s own is too little for all', () => {
    for (const bag of [null, plain]) expect(of([limed('A', dolomite), limed('B', bag)], [soil(20)]).map(([code]) => code)).toEqual(['lime-dolomitic']);
  });
  test('sand in North Carolina, whatever the test: no edge is named', () => {
    const where = { country: 'US', state: 'north carolina' };
    expect(of([limed('A', plain)], [zoneOf('bank', { texture: 'sand' })], orchardOf({ where }))).toEqual([['lime-dolomitic', 'note', { zone: 'bank', source: sourceOf('north-carolina-lime')!.publisher, under: '', now: 0 }]]);
  });
  test('plentiful: lime that brings more is told of', () => {
    expect(of([limed('A', plain), limed('B', dolomite)], [soil(2000, 'above')])).toEqual([['lime-calcitic', 'note', { zone: 'bank', bag: 'Dolomite' }]]);
    expect([of([limed('A', dolomite)], [soil(2000, 'at')]), of([limed('A', plain)], [soil(2000, 'above')]), of([limed('A', null)], [soil(2000, 'above')]), of([limed('B', dolomite, { zone: 'hill' })], [soil(2000, 'above')])]).toEqual([[], [], [], []]);
    const calcium = { rated: [{ reading: { item: 'calcium' }, target: 'above' }], heaviness: null };
    expect(of([limed('A', dolomite)], [zoneOf('bank', {}, { soil: calcium })])).toEqual([]);
  });
  test('a zone without a pH is passed over', () => { expect(of([limed('A', plain)], [zoneOf('bank')])).toEqual([]); });
});
