// The back of the sheet on each tree: why so little or nothing, need against supply, what stays short. Words by design.md and sketches.md, sums by hand.
import { describe, expect, test } from 'vitest';
import type { TreePlan } from '../../src/plan.ts';
import { backOf, idleReason, richZones, usedBags } from '../../src/sheet/back.ts';
import { feed } from '../bags/parts.ts';
import { can, day, dose, fig, limed, named, NONE, paths, plan, tree, w, zone } from './parts.ts';

type More = Parameters<typeof plan>[1];
const SULPHATE = feed('Sulfate of ammonia', [21, 0, 0]);
const POTASH = feed('Potash', [0, 0, 50]);
const MEAL = feed('Bone meal', [3, 15, 0]);
const FEEDS = { feeds: [dose(SULPHATE, 350)] };
const back = (trees: readonly TreePlan[], more: More = {}) => backOf(plan(trees, more), w);
const why = (t: TreePlan, more: More = {}): string => back([t], more).why[0]!.text;

describe('why a tree gets nothing', () => {
  const said = (...[more, rest]: [Parameters<typeof tree>[1], Parameters<typeof tree>[2]]): string => idleReason(tree('A', more, rest), 'en-US');
  test('it waits for the first stop', () => {
    expect(said({}, { need: { verdict: 'wait', stops: [{ id: 'drought' }, { id: 'salts' }] }, fed: [{ date: '2026-04-01' }] })).toBe('too dry: water first');
  });
  test('it was fed, last on its latest day', () => {
    const fed = [{ date: '2026-05-05' }, { date: '2026-04-20' }];
    expect([said({}, { fed }), said({}, { fed, ...FEEDS })]).toEqual(['fed on 5 May; nothing more this season', 'no bag that suits it is listed']);
    expect(said({}, { fed, need: { verdict: 'none' }, nitrogen: { none: 'fed-lawn' } })).toBe('fed on 5 May; nothing more this season');
  });
  test('it would feed, but for the bag or the tub', () => {
    expect([said({}, {}), said({}, { tooLittle: true }), said({ tub: 40 }, {}), said({ tub: 1 }, { tooLittle: true })]).toEqual(['no bag that suits it is listed', 'no bag that suits it is listed', 'a tub takes coated (slow-release) or water-soluble feed, and neither is listed', 'what it could take at once is too little to weigh: a larger tub, or fresh mix']);
  });
  test('it needs none', () => {
    expect([said({}, { need: { verdict: 'none' }, nitrogen: { none: 'pruned-hard' } }), said({}, { need: { verdict: 'none' } })]).toEqual(['pruned hard: it will grow by itself', 'its table gives none at this age']);
  });
});

describe('why so little', () => {
  const cite = { source: 'followed' };
  const leaflets = (...values: number[]): object => ({ leaflets: [{ cite, value: 900 }, ...values.map((value) => ({ cite: { source: 'other' }, value }))] });
  test('nitrogen beside what other leaflets give, least and most', () => {
    expect(why(tree('A', {}, FEEDS))).toBe('100 g of nitrogen.');
    expect(why(tree('A', {}, { ...FEEDS, need: leaflets(1000, 90, 120), nitrogen: { followed: cite } }))).toBe('100 g of nitrogen (90 to 1000 g).');
    expect([why(tree('A', {}, { ...FEEDS, need: leaflets(120), nitrogen: { followed: cite } })), why(tree('A', {}, { ...FEEDS, need: leaflets(120, 120), nitrogen: { followed: cite } })), why(tree('A', {}, { ...FEEDS, need: leaflets(), nitrogen: { followed: cite } }))]).toEqual(['100 g of nitrogen (120 g).', '100 g of nitrogen (120 g).', '100 g of nitrogen.']);
    // Where the followed table is no leaflet, all of them are others.
    expect(why(tree('A', {}, { ...FEEDS, need: leaflets(120) }))).toBe('100 g of nitrogen (120 to 900 g).');
  });
  test('phosphate and potash where they are needed and brought', () => {
    const need = { P2O5: fig(20), K2O: fig(60) };
    const all = { need, feeds: [dose(SULPHATE, 350), dose(MEAL, 100), dose(POTASH, 60)] };
    expect([why(tree('A', {}, all)), why(tree('A', {}, { ...all, feeds: [dose(SULPHATE, 350), dose(POTASH, 60)] })), why(tree('A', {}, { ...all, need: {} })), why(tree('A', {}, { ...FEEDS, need }))])
      .toEqual(['100 g of nitrogen, 20 g of phosphate (P2O5), 60 g of potash (K2O).', '100 g of nitrogen, 60 g of potash (K2O).', '100 g of nitrogen.', '100 g of nitrogen.']);
    expect(why(tree('A', {}, { ...all, nitrogen: { none: 'fed-lawn' } }))).toBe('no nitrogen, the fed lawn feeds it; 20 g of phosphate (P2O5), 60 g of potash (K2O).');
  });
  test('nothing, with its reason; a tub by its can as others', () => {
    expect([why(tree('A', {}, { need: { verdict: 'none' }, nitrogen: { none: 'fed-lawn' } })), why(tree('A')), why(tree('A', {}, { ...FEEDS, need: { verdict: 'wait', stops: [{ id: 'salts' }] } }))]).toEqual(['the fed lawn feeds it.', 'no bag that suits it is listed.', 'too much salt in the soil.']);
    expect(why(tree('Fig', { tub: 40 }, { dilute: can(feed('Soluble', [20, 20, 20])) }))).toBe('100 g of nitrogen.');
  });
  test('what stands in parentheses is told where there are any', () => {
    const lead = (rest: object): string => back([tree('B'), tree('A', {}, rest)]).whyLead;
    expect([lead({ ...FEEDS, need: leaflets(120), nitrogen: { followed: cite } }), lead(FEEDS), lead({ need: leaflets(120) }), lead({ ...FEEDS, need: leaflets(120), nitrogen: { none: 'fed-lawn' } })]).toEqual(['In parentheses: what other leaflets give such a tree.', '', '', '']);
    expect(back([tree('A'), tree('B')]).why.map((x) => x.name)).toEqual(['A', 'B']);
  });
});

describe('need against supply', () => {
  const cite = { source: 'followed' };
  const of = (rest: Parameters<typeof tree>[2], name = 'A'): TreePlan => tree(name, {}, { ...FEEDS, supplied: { N: 102, P2O5: 0, K2O: 0 }, ...rest });
  const text = (rest: Parameters<typeof tree>[2]): string => back([of(rest)]).balances[0]!.text;
  test('what is needed or brought, beside the span of two other leaflets or more', () => {
    expect(text({})).toBe('N needs 100 g, gets 102 g');
    expect(text({ need: { N: fig(0), K2O: fig(60) }, supplied: { N: 0, P2O5: 5, K2O: 50 } })).toBe('P2O5 needs 0 g, gets 5 g; K2O needs 60 g, gets 50 g');
    const need = { leaflets: [{ cite, value: 900 }, { cite: {}, value: 1000 }, { cite: {}, value: 90 }], K2O: fig(60) };
    expect(text({ need, nitrogen: { followed: cite } })).toBe('N needs 100 g, gets 102 g, other leaflets 90 g to 1000 g; K2O needs 60 g, gets 0 g');
    expect([text({ need: { leaflets: need.leaflets.slice(0, 2) }, nitrogen: { followed: cite } }), text({ need, nitrogen: { none: 'fed-lawn' } })]).toEqual(['N needs 100 g, gets 102 g', 'N needs 100 g, gets 102 g; K2O needs 60 g, gets 0 g']);
  });
  test('drawn to its own scale, a number each', () => {
    const { balances, balanceLead } = back([of({}, 'A'), tree('Unfed'), of({ need: { leaflets: [{ cite: {}, value: 10 }, { cite: {}, value: 90 }] } }, 'B')]);
    expect([balances.map((b) => b.name), balances.map((b) => named(b.drawing, 'rect').map((r) => `${r.width} ${r.fill}`)), named(balances[1]!.drawing, 'svg')[0]!['aria-label'] === balances[1]!.text]).toEqual([['A', 'B'], [['102 url(#b0)', '100 none'], ['102 url(#b1)', '100 none']], true]);
    expect(paths(balances[1]!.drawing)[1]).toBe('M26 6.6H106M26 5.8v1.6M106 5.8v1.6');
    expect(balanceLead).toBe('On screen: what each tree needs (outline), what it gets (hatched), and how far other leaflets lie apart (line).');
  });
  test('of sixty trees, and of no more nor of none', () => {
    const many = (n: number): unknown => { const { balances, balanceLead } = back(Array.from({ length: n }, () => of({}))); return [balances.length, balanceLead !== '']; };
    expect([many(60), many(61), [back([tree('A')]).balances, back([tree('A')]).balanceLead]]).toEqual([[60, true], [0, false], [[], '']]);
  });
});

describe('what stays short', () => {
  const short = (name: string, grams: Partial<typeof NONE>, rest: Parameters<typeof tree>[2] = {}, more: Parameters<typeof tree>[1] = {}): TreePlan => tree(name, more, { ...FEEDS, short: { ...NONE, ...grams }, ...rest, need: { P2O5: fig(100), K2O: fig(100), ...rest.need } });
  const said = (trees: readonly TreePlan[], more: More = {}): string[] => back(trees, more).short;
  const NO_BAG = 'no listed bag that fits brings more.';
  test('each reason once, with its trees and their amounts', () => {
    expect(said([short('A', { N: 50, K2O: 60 }), short('B', { K2O: 20 }), tree('C', {}, FEEDS)])).toEqual([`A 50 g N, 60 g K2O; B 20 g K2O: ${NO_BAG}`]);
    const cut = { feeds: [dose(SULPHATE, 350, { planned: { step: 'dose-cut' } })] };
    expect(said([short('A', { N: 50, K2O: 60 }, cut), short('B', { N: 20 }, cut)])).toEqual(['A 50 g N; B 20 g N: more would burn roots on so small a ring.', `A 60 g K2O: ${NO_BAG}`]);
  });
  // Eight parts in a hundred are rounding.
  test('rounding is no want, nor is what needs nothing or has had its feed', () => {
    expect([said([short('A', { N: 8 })]), said([short('A', { N: 50 }, { need: { verdict: 'none' } })]), said([short('A', { N: 50 }, { feeds: [], fed: [{ date: '2026-04-01' }] })]), said([short('A', { N: 50 }, { fed: [{ date: '2026-04-01' }] })])]).toEqual([[], [], [], [`A 50 g N: ${NO_BAG}`]]);
    expect(said([short('A', { N: 50 }, { feeds: [] })])).toEqual([`A 50 g N: ${NO_BAG}`]);
  });
  test('too late, half, too few weeks, coated alone, too little to buy', () => {
    const step = (s: string): object => ({ feeds: [dose(SULPHATE, 350, { planned: { step: s } })] });
    expect(['dose-late', 'dose-half'].map((s) => said([short('A', { N: 50 }, step(s))])[0])).toEqual(['A 50 g N: the season has too few doses left, and a missed one is not made up.', 'A 50 g N: it belongs in spring; so late half goes on and no more.']);
    expect([said([short('Fig', { N: 50 }, { feeds: [], dilute: can(feed('Soluble', [20, 20, 20])) }, { tub: 40 })])[0], said([short('Fig', { N: 50 }, { feeds: [] }, { tub: 40 })])[0]]).toEqual(['Fig 50 g N: too few weeks are left.', 'Fig 50 g N: a tub takes coated (slow-release) or water-soluble feed, and neither is listed.']);
    expect(said([short('A', { K2O: 20 })], { orchard: { store: [POTASH] } })).toEqual(['A 20 g K2O: too little to be worth another bag.']);
  });
  test('by the day that a place prints, each day by itself', () => {
    const after = (name: string, on: string): TreePlan => short(name, { N: 50 }, { last: { day: on, printed: true } });
    expect(said([after('A', '2026-06-15'), after('B', '2026-06-30'), after('C', '2026-06-15')], { season: { today: '2026-07-01' } })).toEqual(['A 50 g N; C 50 g N: none after 15 June here; wait for next spring.', 'B 50 g N: none after 30 June here; wait for next spring.']);
    // Of two that come to one reason by other ways, one sentence.
    expect(said([after('A', '2026-06-30'), short('B', { K2O: 50 })], { season: { today: '2026-06-01' } })).toEqual([`A 50 g N; B 50 g K2O: ${NO_BAG}`]);
  });
});

describe('of the whole orchard', () => {
  test('bags of the days and of the cans, each once', () => {
    const soluble = feed('Soluble', [20, 20, 20]);
    const [a, tub, twin] = [tree('A', {}, FEEDS), tree('Fig', {}, { dilute: can(soluble) }), tree('Lime', {}, { dilute: can(soluble) })];
    expect(usedBags(plan([a, tub, twin], { days: [day(1, [[a, a.feeds[0]!]]), day(2, [[a, a.feeds[0]!]])] })).map((b) => b.label)).toEqual(['Sulfate of ammonia', 'Soluble']);
  });
  test('zones that are rich in phosphorus', () => {
    const other = { ...zone('low'), soil: { rated: [{ reading: { item: 'potassium' }, target: 'above' }] } } as never;
    expect(richZones(plan([], { zones: [zone('hill', { phosphorus: 'above' }), zone('top'), other, { ...zone('both'), soil: { rated: [{ reading: { item: 'potassium' }, target: 'at' }, { reading: { item: 'phosphorus' }, target: 'above' }] } }] })).map((z) => z.zone)).toEqual(['hill', 'both']);
  });
  test('seven plants fill the page, a drawing of pH counts as two', () => {
    const drawnOne = tree('L', {}, { ph: limed({ curve: [{ ph: 5.4, low: 0, high: 0 }, { ph: 6, low: 100, high: 150 }] }) });
    const crowded = (n: number, ...rest: TreePlan[]): boolean => back([...Array.from({ length: n }, () => tree('A')), ...rest]).crowded;
    expect([crowded(7), crowded(8), crowded(4, drawnOne), crowded(5, drawnOne), back([drawnOne]).curves.length]).toEqual([false, true, false, true, 1]);
  });
});
