// Why a nutrient stays short, and what is said of it: each reason by itself, on bags and needs made up for it. What may feed what: `bags/choose.ts`; a bag passes a want where it would bring too much of another nutrient with it.
import { describe, expect, test } from 'vitest';
import type { Bag } from '../../src/orchard/bag.ts';
import type { Orchard } from '../../src/orchard/load.ts';
import { isShort, noticesOf, printedStops, shortReason } from '../../src/plan-notices.ts';
import type { TreePlan } from '../../src/planned.ts';
import type { Nutrient } from '../../src/units/substance.ts';
import { feed } from '../bags/parts.ts';
import { fig, limeOf, orchardOf, plantOf, seasonAt, told } from './parts.ts';

type Part = Parameters<typeof plantOf>[1];
const wants = (n: number, p: number, k: number): object => ({ N: fig(n), P2O5: fig(p, 'g', 'P2O5'), K2O: fig(k, 'g', 'K2O') });
const short = (more: Part = {}, tree: object = {}): TreePlan => plantOf('A', { tree, need: wants(100, 40, 60), short: { N: 50, P2O5: 40, K2O: 60 }, ...more });
const why = (plan: TreePlan, n: Nutrient, orchard: Orchard = orchardOf(), today = '2026-03-14'): string => shortReason(plan, n, { orchard, season: seasonAt(today) });
const step = (name: string): object => ({ planned: fig(100, 'g', 'product', { step: name }), bag: urea, window: {} });
const urea = feed('Urea', [46, 0, 0]);
const sulphate = feed('Sulphate of potash', [0, 0, 50]);
const muriate = feed('Muriate', [0, 0, 60], { chloride: true });
const store = (...bags: Bag[]): Orchard => orchardOf({ store: bags });
const shed = (...bags: Bag[]): Orchard => orchardOf({ shed: bags.map((b) => ({ ...b, left: 100 })) });

describe('why', () => {
  test('the dose was cut, is late, or belongs in spring: of nitrogen alone', () => {
    for (const [name, code] of [['dose-cut', 'short-ring'], ['dose-late', 'short-late'], ['dose-half', 'short-half'], ['dose', 'short']] as const) {
      const plan = short({ feeds: [step('dose'), step(name)] });
      expect([why(plan, 'N'), why(plan, 'K2O'), why(plan, 'P2O5')]).toEqual([code, 'short', 'short']);
    }
  });
  test('the printed last day has passed, for nitrogen alone', () => {
    const last = (printed: boolean): object => ({ day: '2026-07-15', printed, why: fig(0, 'day', 'time') });
    const of = (today: string, printed = true, n: Nutrient = 'N'): string => why(short({ last: last(printed) }), n, orchardOf(), today);
    expect([of('2026-07-16'), of('2026-07-15'), of('2026-07-16', false), of('2026-07-16', true, 'K2O')]).toEqual(['short-date', 'short', 'short', 'short']);
  });
  // 24 days after the last feed, as two doses stand apart, and a week before the last day: 19 June and 24 days are 13 July, a week before the 20th.
  test('after a feed no time is left for another', () => {
    const last = { day: '2026-07-20', printed: false, why: fig(0, 'day', 'time') };
    const fed = (...dates: string[]): Part => ({ last, fed: dates.map((date) => ({ date, bag: 'Urea', g: 10, brought: null })) });
    const of = (more: Part, today: string, tree: object = {}, n: Nutrient = 'N'): string => why(short(more, tree), n, orchardOf(), today);
    expect([of(fed('2026-05-01'), '2026-07-13'), of(fed('2026-05-01'), '2026-07-14'), of(fed('2026-06-19'), '2026-06-20'), of(fed('2026-06-20'), '2026-06-20'), of(fed('2026-06-20', '2026-05-01'), '2026-06-20')]).toEqual(['short', 'short-late', 'short', 'short-late', 'short-late']);
    expect([of(fed(), '2026-07-19'), of(fed('2026-06-20'), '2026-06-20', {}, 'K2O'), of({ ...fed('2026-06-20'), feeds: [step('dose')] }, '2026-06-20'), of(fed('2026-06-20'), '2026-06-20', { tub: 40 })]).toEqual(['short', 'short', 'short', 'short-tub']);
  });
  test('a tub: too few weeks, too little for its can, or no coated feed', () => {
    const tub = { tub: 40 };
    expect([why(short({ dilute: { bag: urea } }, tub), 'N'), why(short({ dilute: { bag: urea } }, tub), 'K2O')]).toEqual(['short-weeks', 'short']);
    expect([why(short({ tooLittle: true }, tub), 'N'), why(short({}, tub), 'N'), why(short({ feeds: [step('dose')] }, tub), 'N'), why(short({ tooLittle: true }), 'N')]).toEqual(['short-weeks', 'short-tub', 'short', 'short']);
  });
  test('potash with chloride is kept from what takes it badly', () => {
    const cherry = short({}, { crop: 'cherry' });
    expect([why(cherry, 'K2O', store(muriate)), why(cherry, 'K2O', shed(muriate)), why(short(), 'K2O', shed(muriate)), why(cherry, 'P2O5', store(muriate))]).toEqual(['short-chloride', 'short-chloride', 'short', 'short']);
    // One such bag among others is enough.
    expect(why(cherry, 'K2O', store(urea, muriate))).toBe('short-chloride');
    // What has nitrogen too may feed it; what has no potash, or none with chloride, is not the reason.
    expect([why(cherry, 'K2O', shed({ ...muriate, grade: { N: 0.1, P2O5: 0, K2O: 0.1 } })), why(cherry, 'K2O', shed({ ...muriate, grade: { N: 0, P2O5: 0.1, K2O: 0 } })), why(cherry, 'K2O', shed(sulphate))]).toEqual(['short', 'short', 'short']);
  });
  test('too little to be worth another bag: one in the store would do, and chloride is no matter then', () => {
    expect([why(short(), 'K2O', store(sulphate)), why(short(), 'K2O', shed(sulphate)), why(short(), 'P2O5', store(sulphate)), why(short(), 'N', store(urea))]).toEqual(['short-small', 'short', 'short', 'short']);
    expect(why(short({}, { crop: 'cherry' }), 'K2O', store(muriate, sulphate))).toBe('short-small');
    // Lime that brings potash is planned by the pH.
    expect(why(short(), 'K2O', store({ ...limeOf('Wood ash'), grade: { N: 0, P2O5: 0, K2O: 0.06 } }))).toBe('short');
  });
  test('no bag brings it without too much else: more nitrogen to the potash than is wanted, or phosphate where none is', () => {
    // 100 of N to 60 of K2O: 10-0-6 fits exactly, 10-0-5 would pass the nitrogen.
    const of = (grade: [number, number, number], need = wants(100, 0, 60), n: Nutrient = 'K2O'): string => why(short({ need }), n, store(feed('Bag', grade)));
    expect([of([10, 0, 6]), of([10, 0, 5]), of([0, 5, 5]), of([0, 5, 5], wants(100, 1, 60)), of([10, 0, 6], wants(0, 0, 60))]).toEqual(['short-small', 'short-limit', 'short-limit', 'short-small', 'short-limit']);
    expect([of([5, 5, 0], wants(100, 0, 0), 'N'), of([5, 0, 5], wants(100, 0, 0), 'N'), of([5, 5, 0], wants(100, 1, 0), 'N'), of([0, 5, 5], wants(100, 0, 0), 'N')]).toEqual(['short-limit', 'short-limit', 'short', 'short']);
  });
  test('a bag would bring it but may not feed this plant', () => {
    const herbicide = feed('Weed and feed', [20, 0, 5], { weedKiller: true });
    expect([why(short(), 'N', store(herbicide)), why(short(), 'K2O', store(herbicide)), why(short(), 'P2O5', store(herbicide)), why(short(), 'N', store())]).toEqual(['short-kept', 'short-kept', 'short', 'short']);
  });
});

describe('what is said', () => {
  const said = (plan: TreePlan, orchard: Orchard, n: Nutrient = 'N', today = '2026-03-14'): [string, string, object] | undefined => told(noticesOf([plan], [], seasonAt(today), orchard)).find(([code, , facts]) => code.startsWith('short') && (facts as { nutrient: string }).nutrient === n);
  test('how much, as a warning', () => {
    expect(said(short({ short: { N: 50.4, P2O5: 0, K2O: 0 } }, { word: 'plum' }), orchardOf())).toEqual(['short', 'warning', { tree: 'A', word: 'plum', nutrient: 'N', amount: '50 g' }]);
    // Fifty grams are 1.76 oz.
    expect(said(short(), orchardOf({ where: { units: 'us' } }))![2]).toMatchObject({ amount: '1.8 oz' });
  });
  test('a dose that was cut has its own notice', () => {
    const notices = noticesOf([short({ feeds: [step('dose-cut')], short: { N: 50, P2O5: 0, K2O: 0 } })], [], seasonAt(), orchardOf());
    expect(told(notices)).toEqual([['no-bags', 'warning', {}], ['dose-cut', 'warning', { tree: 'A' }]]);
  });
  test('the bag that comes nearest, and what it would pass', () => {
    const need = wants(0, 0, 60);
    // 10-0-5 brings two of nitrogen to one of potash, 3-3-10 three tenths; which of its own it passes first is nitrogen.
    expect(said(short({ need }), store(feed('Far', [10, 0, 5]), feed('Near', [3, 3, 10]), feed('Middle', [5, 0, 10])), 'K2O')).toEqual(['short-limit', 'warning', { tree: 'A', word: 'apple', nutrient: 'K2O', amount: '60 g', bag: 'Near', limit: 'the nitrogen that it may have' }]);
    expect(said(short({ need }), store(feed('First', [5, 0, 10]), feed('Second', [5, 0, 10])), 'K2O')![2]).toMatchObject({ bag: 'First' });
    expect(said(short({ need: wants(100, 0, 60) }), store(feed('P', [0, 5, 5])), 'K2O')![2]).toMatchObject({ limit: 'the phosphate that it wants' });
    expect(said(short({ need: wants(100, 0, 0) }), store(feed('K', [5, 0, 5])))![2]).toMatchObject({ limit: 'the potash that it wants' });
    // One that may not feed the plant, or that fits, is not named.
    expect(said(short({ need }), store(feed('Kept', [1, 0, 10], { weedKiller: true }), feed('Far', [10, 0, 5])), 'K2O')![2]).toMatchObject({ bag: 'Far' });
  });
  test('why a bag is kept away', () => {
    const kept = (bag: Bag, tree: object = {}, n: Nutrient = 'N', more: Part = {}): string => { const [code, , facts] = said(short(more, tree), orchardOf({ store: [bag], never: ['nitrate'] }), n)!; return `${code}: ${(facts as { bag: string }).bag}, ${(facts as { why: string }).why}`; };
    expect(kept({ ...urea, weedKiller: true })).toBe('short-kept: Urea, it holds weed killer');
    expect(kept({ ...urea, nitrate: true })).toBe('short-kept: Urea, you never use such');
    expect(kept({ ...urea, liquid: true })).toBe('short-kept: Urea, a liquid is weighed out by its own label');
    expect(kept({ ...urea, weedKiller: true, nitrate: true, liquid: true })).toContain('weed killer');
    expect(kept({ ...urea, nitrate: true, liquid: true })).toContain('never use');
    const blue = { crop: 'blueberry' };
    const nitrate = { ...urea, nitrate: true };
    expect(said(short({}, blue), store(nitrate))![2]).toMatchObject({ bag: 'Urea', why: 'its nitrate does blueberries harm' });
    // Phosphate and potash without nitrogen, its potash with chloride: no nitrate is in it.
    const pk = feed('Phosphate and potash', [0, 20, 20], { chloride: true });
    for (const crop of ['blueberry', 'cherry']) expect(said(short({}, { crop }), store(pk), 'P2O5')![2]).toMatchObject({ why: 'its chloride does it harm' });
    // Nitrate of potash, which may hold chloride too: its nitrogen is what keeps it from blueberries.
    expect(said(short({}, blue), store({ ...nitrate, grade: { N: 0.13, P2O5: 0, K2O: 0.44 }, chloride: true }), 'K2O')![2]).toMatchObject({ why: 'its nitrate does blueberries harm' });
  });
  test('a tub beside its coated feed: what is not coated would act all at once', () => {
    const coated = step('dose');
    expect(said(short({ feeds: [coated] }, { tub: 40 }), store(sulphate), 'K2O')![2]).toMatchObject({ bag: 'Sulphate of potash', why: 'in a tub it would act all at once' });
    expect(said(short({ feeds: [coated] }, { tub: 40, crop: 'blueberry' }), store(urea))![2]).toMatchObject({ why: 'in a tub it would act all at once' });
    expect(said(short({ feeds: [coated] }, { tub: 40 }), orchardOf({ store: [urea], never: ['mineral'] }))![2]).toMatchObject({ why: 'you never use such' });
  });
  test('an unfed tub says so once', () => {
    const tub = { tub: 40 };
    expect([said(short({}, tub), orchardOf())?.[0], said(short({}, tub), orchardOf(), 'K2O'), said(short({ feeds: [step('dose')] }, tub), orchardOf(), 'K2O')?.[0]]).toEqual(['short-tub', undefined, 'short']);
  });
  test('the printed last day with its publisher, else none', () => {
    const last = (source: string): object => ({ day: '2026-07-15', printed: true, why: fig(0, 'day', 'time', { source }) });
    expect(said(short({ last: last('washington-em119e') }), orchardOf(), 'N', '2026-07-16')![2]).toMatchObject({ day: '15 July', source: expect.stringContaining('Washington') as string });
    expect(said(short({ last: last('a-page') }), orchardOf(), 'N', '2026-07-16')![2]).toMatchObject({ source: '' });
    expect(Object.keys(said(short(), orchardOf())![2])).toEqual(['tree', 'word', 'nutrient', 'amount']);
  });
});

test('short is what rounding does not explain: over 8 % of the need and a tenth of an ounce, 2.83 g', () => {
  const of = (need: number, left: number): boolean => isShort(short({ need: wants(need, 0, 0), short: { N: left, P2O5: 0, K2O: 0 } }), 'N');
  expect([of(100, 8), of(100, 8.1), of(10, 2.8), of(10, 2.9), of(100, 0), of(0, 2.9)]).toEqual([false, true, false, true, false, true]);
  expect(isShort(short({ short: { N: 0, P2O5: 0, K2O: 60 } }), 'K2O')).toBe(true);
});

test('the last days that places print, each with its plants that want nitrogen', () => {
  const last = (name: string, day: string, more: { printed?: boolean; n?: number; tub?: number } = {}): TreePlan => plantOf(name, { tree: { tub: more.tub }, last: { day, printed: more.printed ?? true, why: fig(0, 'day', 'time') }, need: wants(more.n ?? 100, 0, 0) });
  const trees = [last('A', '2026-07-01'), last('B', '2026-06-15'), last('C', '2026-07-01'), last('D', '2026-07-01', { printed: false }), last('E', '2026-07-01', { n: 0 }), last('F', '2026-07-01', { tub: 40 })];
  expect([printedStops({ trees } as never), printedStops({ trees: [] } as never)]).toEqual([[{ day: '2026-07-01', trees: 'A, C' }, { day: '2026-06-15', trees: 'B' }], []]);
});
