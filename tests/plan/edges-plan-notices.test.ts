// What a plan has to say of its bags, its season and each plant, a notice at a time on plants made by hand. What each must say stands in the sentences of the words; limits are named beside the checks.
import { describe, expect, test } from 'vitest';
import type { Bag } from '../../src/orchard/bag.ts';
import type { Orchard } from '../../src/orchard/load.ts';
import { noticesOf } from '../../src/plan-notices.ts';
import type { TreePlan } from '../../src/planned.ts';
import { feed } from '../bags/parts.ts';
import { codes, fig, orchardOf, plantOf, seasonAt, told } from './parts.ts';

type Part = Parameters<typeof plantOf>[1];
const urea = feed('Urea', [46, 0, 0]);
const stocked = orchardOf({ store: [urea] });
const of = (plans: readonly TreePlan[], orchard: Orchard = stocked): [string, string, object][] => told(noticesOf(plans, [], seasonAt(), orchard));
const one = (more: Part, orchard: Orchard = stocked): [string, string, object][] => of([plantOf('A', more)], orchard);
const some = (more: Part, orchard: Orchard = stocked): string[] => one(more, orchard).map(([code]) => code);
const given = (bag: Bag, more: { step?: string; serves?: string } = {}): object => ({ bag, g: 100, planned: fig(100, 'g', 'product', { step: more.step ?? 'dose' }), serves: more.serves ?? 'N', window: {} });

describe('bags and season', () => {
  test('a plant that wants nothing said has nothing said', () => { expect(one({})).toEqual([]); });
  test('no bags at all, where something is to be fed', () => {
    expect(of([plantOf('A'), plantOf('B')], orchardOf())).toEqual([['no-bags', 'warning', {}]]);
    expect([of([plantOf('A')], orchardOf({ shed: [urea] })), one({ need: { verdict: 'none' } }, orchardOf()), of([], orchardOf())]).toEqual([[], [], []]);
  });
  test('dates that nobody told', () => {
    const assumed = (...what: ('bud-break' | 'first-frost')[]): [string, string, object][] => told(noticesOf([], [], seasonAt('2026-03-14', what), stocked));
    expect([assumed('bud-break', 'first-frost'), assumed()]).toEqual([[['bud-break-assumed', 'note', {}], ['first-frost-assumed', 'note', {}]], []]);
  });
});

describe('stops', () => {
  const stop = (stopped: object, tree: object = {}): [string, string, object][] => one({ tree, need: { verdict: 'wait', stops: [stopped] } });
  test('each as a warning, its value to two decimals', () => {
    expect([stop({ id: 'drought' }), stop({ id: 'salts', value: 5.4321 })]).toEqual([[['stop-drought', 'warning', { tree: 'A', word: 'apple' }]], [['stop-salts', 'warning', { tree: 'A', word: 'apple', value: 5.43 }]]]);
    expect(one({ need: { verdict: 'wait', stops: [{ id: 'drought' }, { id: 'lead', value: 500 }] } }).map(([code]) => code)).toEqual(['stop-drought', 'stop-lead']);
  });
  test('a paste that was taken from another dilution, with what the report prints', () => {
    expect(stop({ id: 'salts', value: 6, from: fig(6, 'dS/m', 'salts', { from: [fig(0.756, 'dS/m', 'salts')] }) })[0]![2]).toMatchObject({ value: 6, diluted: 0.76 });
    expect(stop({ id: 'salts', value: 6, from: fig(6.123, 'dS/m', 'salts') })[0]![2]).toMatchObject({ diluted: 6.12 });
  });
  test('no figures: the nearest kin that has some, if there is one', () => {
    expect([stop({ id: 'no-figures' }, { crop: 'other', word: 'crab apple' })[0]![2], stop({ id: 'no-figures' }, { crop: 'other', word: 'banana' })[0]![2]]).toEqual([{ tree: 'A', word: 'crab apple', kin: 'apple' }, { tree: 'A', word: 'banana', kin: '' }]);
  });
  test('what waits is not short', () => { expect(some({ need: { verdict: 'wait', stops: [{ id: 'drought' }] }, short: { N: 50, P2O5: 0, K2O: 0 } })).toEqual(['stop-drought']); });
});

test('borrowed figures are told where they are another crop\'s', () => {
  expect(one({ tree: { word: 'medlar', crop: 'other', fedAs: 'pear' } })).toEqual([['fed-as', 'note', { tree: 'A', word: 'medlar', kin: 'pear' }]]);
  expect([some({ tree: { fedAs: 'apple' } }), some({ tree: { fedAs: 'pear' }, need: { verdict: 'none' } })]).toEqual([[], ['fed-as']]);
});

describe('more than it needs', () => {
  const over = (need: number, more: number, n: 'N' | 'P2O5' | 'K2O' = 'P2O5'): [string, string, object][] => one({ need: { [n]: fig(need, 'g', n) }, over: { N: 0, P2O5: 0, K2O: 0, [n]: more } });
  test('a note, or a warning where none is wanted; in the grower\'s unit', () => {
    expect([over(100, 20), over(0, 20)]).toEqual([[['over', 'note', { tree: 'A', nutrient: 'P2O5', amount: '20 g' }]], [['over', 'warning', { tree: 'A', nutrient: 'P2O5', amount: '20 g' }]]]);
    expect(over(100, 20, 'K2O')[0]![2]).toMatchObject({ nutrient: 'K2O' });
    // Twenty grams are 0.705 oz.
    expect(one({ over: { N: 0, P2O5: 20, K2O: 0 } }, orchardOf({ store: [urea], where: { units: 'us' } }))[0]![2]).toMatchObject({ amount: '0.7 oz' });
  });
  test('over 8 % and a tenth of an ounce of what is wanted (2.83 g), over a gram where none is; nitrogen has its own notices', () => {
    expect([over(100, 8), over(100, 8.1), over(10, 2.8), over(10, 2.9), over(0, 1), over(0, 1.1), over(100, 50, 'N')].map((x) => x.length)).toEqual([0, 1, 0, 1, 0, 1, 0]);
  });
  test('a tub without coated feed says that once, and nothing of the others', () => {
    const many = { over: { N: 0, P2O5: 20, K2O: 20 } };
    expect([some({ tree: { tub: 40 }, ...many }), some({ tree: { tub: 40 }, ...many, feeds: [given(urea)] }), some(many)]).toEqual([[], ['over', 'over'], ['over', 'over']]);
  });
});

describe('crown and share of the spacing', () => {
  const ground = (area: number, share: number | null, tree: object = { across: 3.5 }, orchard: Orchard = stocked): [string, string, object][] => one({ tree, facts: { crown: { area: fig(area, 'm2', 'crown'), share: share === null ? null : fig(share, 'm2', 'crown'), guessed: false } } }, orchard);
  test('are both told where they differ by more than a fifth of the larger', () => {
    expect(ground(10, 13)).toEqual([['area-two-ways', 'note', { tree: 'A', crown: '10 m²', share: '13 m²' }]]);
    expect([ground(10, 8), ground(10, 7.9), ground(8, 10), ground(7.9, 10), ground(10, null), ground(10, 20, {})].map((x) => x.length)).toEqual([0, 1, 0, 1, 0, 0]);
    // Ten square metres are 108 sq ft, twenty 215.
    expect(ground(10, 20, { across: 3.5 }, orchardOf({ store: [urea], where: { units: 'us' } }))[0]![2]).toMatchObject({ crown: '108 sq ft', share: '215 sq ft' });
  });
});

test('a feed of the diary without a bag or a weight', () => {
  const fed = (brought: object | null): object => ({ date: '2026-03-01', bag: null, g: null, brought });
  expect([one({ fed: [fed({ N: 1, P2O5: 0, K2O: 0 }), fed(null)] }), some({ fed: [fed({ N: 1, P2O5: 0, K2O: 0 })] })]).toEqual([[['fed-unknown', 'note', { tree: 'A' }]], []]);
});

test('a dose that was cut', () => { expect([one({ feeds: [given(urea), given(urea, { step: 'dose-cut' })] }), some({ feeds: [given(urea)] })]).toEqual([[['dose-cut', 'warning', { tree: 'A' }]], []]); });

test('chloride on the plan of what takes it badly', () => {
  const salty = { ...urea, label: 'Feed 10-10-10', chloride: true };
  expect(one({ tree: { crop: 'cherry', word: 'sour cherry' }, feeds: [given(urea), given(salty)] })).toEqual([['chloride', 'warning', { tree: 'A', bag: 'Feed 10-10-10', word: 'sour cherry' }]]);
  expect([some({ feeds: [given(salty)] }), some({ tree: { crop: 'cherry' }, feeds: [given(urea)] })]).toEqual([[], []]);
});

test('what halved it', () => {
  expect(['organic', 'clover', 'blight', null].map((half) => some({ need: { nitrogen: { lead: null, half } } }))).toEqual([['organic-half'], ['clover-half'], ['blight-half'], []]);
  expect(one({ need: { nitrogen: { lead: null, half: 'clover' } } })).toEqual([['clover-half', 'note', { tree: 'A' }]]);
});

describe('shoots', () => {
  const shoots = (year?: number, m = 0.3): [string, string, object][] => one({ tree: { shoots: { m, ...(year === undefined ? {} : { year }) } } });
  test('without a year they are last season\'s; older ones are not gone by', () => {
    expect([shoots(), shoots(2025), shoots(2024)]).toEqual([[['fact-last-season', 'note', { tree: 'A', year: 2025 }]], [], [['growth-old', 'note', { tree: 'A', year: 2024 }]]]);
    // None at all is a growth too.
    expect(shoots(2025, 0)).toEqual([]);
  });
});

test('no soil report, but for a tub, which stands in its own mix', () => {
  const bare = { facts: { soil: null } };
  expect([one(bare), some({ ...bare, tree: { tub: 40 } })]).toEqual([[['no-soil', 'note', { tree: 'A' }]], []]);
});

test('phosphate on the surface is slow', () => { expect([one({ feeds: [given(urea), given(urea, { serves: 'P2O5' })] }), some({ feeds: [given(urea, { serves: 'K2O' })] })]).toEqual([[['phosphate-slow', 'note', { tree: 'A' }]], []]); });

test('what is said of plants that are not fed ends with stops, borrowed figures and what was done', () => {
  expect(some({ need: { verdict: 'none' }, facts: { soil: null }, over: { N: 0, P2O5: 20, K2O: 0 }, tree: { shoots: { m: 0.3 } } })).toEqual([]);
});

test('each plant in its order, then what is said of all', () => {
  const notices = noticesOf([plantOf('A', { facts: { soil: null } }), plantOf('B', { need: { nitrogen: { lead: null, half: 'clover' } } })], [], seasonAt('2026-03-14', ['bud-break']), orchardOf());
  expect(codes(notices)).toEqual(['no-bags', 'bud-break-assumed', 'no-soil', 'clover-half']);
});
