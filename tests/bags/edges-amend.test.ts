// Which lime, and what feed does to the pH: rows as their publications print them (named beside each), the rest by hand.
import { describe, expect, test } from 'vitest';
import { limeInFeed, limeOfYear } from '../../src/bags/acidity.ts';
import { amendmentBagOf, isWelcome, magnesiumRule, withinOwnLimit } from '../../src/bags/amend.ts';
import type { Amendment } from '../../src/orchard/amendment.ts';
import type { Bag } from '../../src/orchard/bag.ts';
import type { Ring } from '../../src/orchard/geometry.ts';
import type { Fed } from '../../src/orchard/history.ts';
import type { PhSoil } from '../../src/ph/soil.ts';
import { told } from '../../src/reason/figure.ts';
import { LIME_MATERIALS } from '../../src/tables/lime-materials.ts';
import { MATERIALS } from '../../src/tables/materials.ts';
import { dollars, feed } from './parts.ts';

const amendment = (id: string | null, more: Partial<Amendment> = {}): Amendment => ({ kind: 'lime', strength: 1, dolomitic: false, burns: false, ...(id === null ? {} : { lime: { material: LIME_MATERIALS.find((m) => m.id === id)! } as unknown as NonNullable<Amendment['lime']> }), ...more });
const lime = (label: string, price: number | null, more: Partial<Amendment> = {}, rest: Partial<Bag> = {}, id = 'ground-limestone'): Bag => feed(label, [0, 0, 0], { printed: '', g: 1000, price: price === null ? null : dollars(price), amends: amendment(id, more), ...rest });
const ash = (label: string, price: number, rest: Partial<Bag> = {}): Bag => lime(label, price, {}, rest, 'wood-ash');

describe('which bag of lime', () => {
  const PLAIN = { magnesium: false, potash: false, ph: 5 };
  const of = (bags: readonly Bag[], wants = PLAIN, kind: Amendment['kind'] = 'lime'): string | null => amendmentBagOf(kind, bags, wants)?.label ?? null;
  const dolomite = lime('Dolomite', 9, { dolomitic: true });
  test('of its kind, and none that burns', () => {
    const sulphur = feed('Sulphur', [0, 0, 0], { amends: amendment(null, { kind: 'sulphur' }) });
    expect(of([])).toBeNull();
    expect(of([sulphur, feed('Urea', [46, 0, 0])])).toBeNull();
    expect(of([sulphur, lime('Lime', 5)], PLAIN, 'sulphur')).toBe('Sulphur');
    expect(of([sulphur, feed('Half', [0, 0, 0], { price: dollars(1), g: 1000, amends: amendment(null, { kind: 'sulphur', strength: 0.5 }) }), feed('Whole', [0, 0, 0], { price: dollars(1.5), g: 1000, amends: amendment(null, { kind: 'sulphur' }) })], { ...PLAIN, magnesium: true }, 'sulphur')).toBe('Whole');
    expect(of([lime('Burnt', 1, { burns: true })])).toBeNull();
    expect(of([lime('Burnt', 1, { burns: true }), lime('Lime', 9)])).toBe('Lime');
  });
  test('the cheapest for what it does, what stands in the shed first, without a price last, then by name', () => {
    // $5 for a kilogram at its full worth; $4 for one of half, so $8.
    expect(of([lime('Weak', 4, { strength: 0.5 }), lime('Strong', 5)])).toBe('Strong');
    expect(of([lime('Large', 9, {}, { g: 2000 }), lime('Small', 5)])).toBe('Large');
    expect(of([lime('Cheap', 1), lime('Mine', null, {}, { left: 500 })])).toBe('Mine');
    expect(of([lime('A', null), lime('B', 99)])).toBe('B');
    expect(of([lime('A', 1, {}, { g: null }), lime('B', 99)])).toBe('B');
    for (const bags of [[lime('B', null), lime('A', null)], [lime('A', 5), lime('B', 5)]]) for (const list of [bags, bags.toReversed()]) expect(of(list)).toBe('A');
  });
  test('with magnesium where the soil is short of it, and only there, whatever it costs', () => {
    expect(of([lime('Lime', 1), dolomite])).toBe('Lime');
    expect(of([dolomite, lime('Lime', 99)])).toBe('Lime');
    expect(of([lime('Lime', 1), dolomite], { ...PLAIN, magnesium: true })).toBe('Dolomite');
    expect(of([dolomite])).toBe('Dolomite');
  });
  test('ash only where its potash is wanted and the soil is not above its pH, behind every other', () => {
    const list = [ash('Ash', 1), lime('Lime', 99)];
    expect(of([ash('Ash', 1)])).toBeNull();
    expect(of([ash('Ash', 1)], { ...PLAIN, potash: true })).toBe('Ash');
    expect(of(list, { ...PLAIN, potash: true })).toBe('Lime');
    expect(of([ash('Ash', 1), dolomite], { ...PLAIN, potash: true })).toBe('Dolomite');
    // Up to pH 6.5 (recalled).
    expect([6.5, 6.6].map((ph) => isWelcome(ash('Ash', 1), { potash: true, ph }))).toEqual([true, false]);
    expect(isWelcome(lime('Lime', 1), { potash: false, ph: 8 })).toBe(true);
    expect(isWelcome(feed('Sulphur', [0, 0, 0], { amends: amendment(null, { kind: 'sulphur' }) }), { potash: false, ph: 8 })).toBe(true);
    expect(isWelcome(feed('Urea', [46, 0, 0]), { potash: false, ph: 8 })).toBe(true);
  });
});

test('ash has a limit of its own: 5 lb on 100 square feet a year (mini-farming-ash)', () => {
  const limit = (5 * 453.59237) / 9.290304;
  const of = (g: number, id = 'wood-ash') => withinOwnLimit(told(g, 'g/m2', 'lime', 'dose'), amendment(id));
  expect(of(200)).toEqual(told(200, 'g/m2', 'lime', 'dose'));
  expect(of(300)).toMatchObject({ value: expect.closeTo(limit, 6), step: 'lime-limited', unit: 'g/m2', cite: { source: 'mini-farming-ash' } });
  expect(of(300).from.map((f) => Math.round(f.value))).toEqual([300, Math.round(limit)]);
  expect(of(300).from[1]).toMatchObject({ step: 'lime-limit', unit: 'g/m2', of: 'lime' });
  expect(of(limit).step).toBe('told');
  for (const id of ['ground-limestone', 'marl']) expect(of(9999, id).value).toBe(9999);
  expect(withinOwnLimit(told(9999, 'g/m2', 'lime', 'dose'), amendment(null)).value).toBe(9999);
});

describe('lime with magnesium', () => {
  const rule = (country: string, state: string | null, soil: Partial<PhSoil>) => magnesiumRule({ magnesium: null, cec: null, texture: null, ...soil } as unknown as PhSoil, { country, state });
  // Ohio prints 50 ppm, Ontario 100.
  test.each([['US', 'ohio', 49, true, 50], ['US', 'ohio', 50, false, 50], ['US', 'ontario', 60, false, 50], ['CA', 'ontario', 99, true, 100], ['CA', 'ontario', 100, false, 100], ['CA', 'quebec', 60, false, 50], ['GB', null, 10, true, 50], ['GB', null, null, false, 50]])('%s %s, %s ppm: %s', (country, state, magnesium, wants, under) => {
    expect(rule(country, state, { magnesium })).toEqual({ wants, under, source: under === 100 ? 'ontario-lime' : 'ohio-lime-source' });
  });
  test('North Carolina: on sand always; on clay not where magnesium holds over a fifth of the exchange', () => {
    expect(rule('US', 'north carolina', { texture: 'sand', magnesium: 500 })).toEqual({ wants: true, source: 'north-carolina-lime', under: null });
    // 1 cmol of Mg is 24.305 ÷ 2 × 10 = 121.525 mg; a fifth of 10 cmol is 243.05 ppm.
    expect(rule('US', 'north carolina', { texture: 'clay', magnesium: 244, cec: 10 })).toEqual({ wants: false, source: 'north-carolina-lime', under: null });
    expect(rule('US', 'north carolina', { texture: 'clay', magnesium: 242, cec: 10 }).source).toBe('ohio-lime-source');
    for (const soil of [{ texture: 'loam', magnesium: 244, cec: 10 }, { texture: 'clay', magnesium: 244, cec: null }, { texture: 'clay', magnesium: null, cec: 10 }] as Partial<PhSoil>[]) expect(rule('US', 'north carolina', soil).source).toBe('ohio-lime-source');
    for (const [country, state] of [['US', 'ohio'], ['CA', 'north carolina']] as const) expect(rule(country, state, { texture: 'sand', magnesium: 500 }).source).toBe('ohio-lime-source');
  });
});

describe('lime that feed brings or uses up', () => {
  // Alabama ANR-174, lb to 100 lb: ammonium sulphate of 21 % -110, urea of 45 % -81, calcium nitrate +20; Norganics: bone meal +20. Else 1.8 lb to each lb of N (Crop Adviser).
  test.each<[string, string | null, number, number]>([
    ['Sulphate of ammonia', null, 0.21, -110], ['AMMONIUM SULFATE', null, 0.205, (-110 * 20.5) / 21], ['Starter', 'dap', 0.18, -70], ['Starter', 'dap', 0.09, -35], ['Urea', 'ammonium-sulphate', 0.45, -81], ['Calcium nitrate', null, 0.15, 20], ['Calcium ammonium nitrate', null, 0.27, 0], ['Bone meal', null, 0.03, 20], ['Bone meal', null, 0.04, 20],
    ['Garden feed', null, 0.1, -18], ['Bureau feed', null, 0.1, -18], ['Garden feed', 'no-such', 0.1, -18], ['Sulphur-coated urea', null, 0.37, -118],
  ])('%s, %s, %f: %f', (label, material, n, wanted) => { expect(limeInFeed({ label, material, n }).value).toBeCloseTo(wanted, 9); });
  test('why', () => {
    expect(limeInFeed({ label: 'Garden feed', material: null, n: 0.1 })).toMatchObject({ step: 'feed-lime-by-n', unit: '%', of: 'lime', cite: { source: 'crop-adviser-acidity' } });
    expect(limeInFeed({ label: 'Urea', material: null, n: 0.46 })).toMatchObject({ step: 'feed-lime', unit: '%', of: 'lime', cite: { source: 'alabama-anr174' } });
  });
  const ring = { area: told(10, 'm2', 'ring', 'test') } as unknown as Ring;
  const ammonia = feed('Sulphate of ammonia', [21, 0, 0]);
  const starter = feed('Starter', [18, 46, 0], { material: MATERIALS.find((m) => m.id === 'dap')! });
  const done = (bag: string | null, g: number | null, n: number | null, holds?: number): Fed => ({ date: '2026-04-01', bag, g, brought: n === null ? null : { N: n, P2O5: 0, K2O: 0 }, ...(holds === undefined ? {} : { holds: { N: holds, P2O5: 0, K2O: 0 } }) });
  const year = (feeds: { bag: Bag; g: number }[], fed: Fed[], bags: Bag[] = [ammonia, starter]): number | null => limeOfYear({ feeds, fed, ring }, bags)?.value ?? null;
  test('a square metre of the ring, of what is planned and what is done', () => {
    // 100 g at -110 % on 10 m²; 100 g of diammonium phosphate, 18 g of N, at -70 %.
    expect(year([{ bag: ammonia, g: 100 }], [])).toBeCloseTo(-11, 9);
    expect(year([{ bag: starter, g: 100 }], [])).toBeCloseTo(-7, 9);
    expect(year([{ bag: ammonia, g: 100 }], [done('starter', 100, 18)])).toBeCloseTo(-18, 9);
    expect(year([], [])).toBe(0);
    expect(limeOfYear({ feeds: [], fed: [], ring: null }, [])).toBeNull();
    expect(limeOfYear({ feeds: [{ bag: ammonia, g: 100 }], fed: [], ring }, [])).toMatchObject({ step: 'feed-lime-year', unit: 'g/m2', of: 'lime', cite: { source: 'definition', at: 'feed × its lime / ring', mark: 'derived' } });
    expect(limeOfYear({ feeds: [{ bag: ammonia, g: 100 }], fed: [done('starter', 100, 18)], ring }, [starter])!.from.map((f) => Math.round(f.value))).toEqual([-110, -70, 10]);
  });
  test('a name of the diary is that of a bag, or has its numbers; else it speaks for itself', () => {
    expect(year([], [done('blue 18-46-0', 100, 18)])).toBeCloseTo(-7, 9);
    expect(year([], [done('STARTER', 100, 18)])).toBeCloseTo(-7, 9);
    expect(year([], [done('Starter', 100, 18)], [ammonia])).toBeCloseTo(-3.24, 9);
    expect(year([], [done('Calcium nitrate', 100, 15)])).toBeCloseTo(2, 9);
    // Lime prints no numbers: an empty text stands in every name.
    expect(year([], [done('Something', 100, 10)], [feed('Bone meal', [0, 0, 0], { printed: '' })])).toBeCloseTo(-1.8, 9);
    // All that it holds, where that is more than was set free.
    expect(year([], [done('Something', 100, 2, 10)])).toBeCloseTo(-1.8, 9);
  });
  test('what nobody weighed or named does not count', () => {
    for (const f of [done(null, 100, 18), done('Starter', null, 18), done('Starter', 0, 18), done('Starter', 100, null)]) expect(year([], [f])).toBe(0);
  });
});
