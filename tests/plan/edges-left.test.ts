// What may still be given after what the diary has, part by part. Bud break 12 April and first frost 12 October: the first dose from 29 March to 26 April, the second from 20 May to 1 June, no nitrogen after 20 July, of evergreens 10 August (twelve and nine weeks before the frost). Days and sums by hand.
import { describe, expect, test } from 'vitest';
import type { Feed } from '../../src/bags/doses.ts';
import type { Fed } from '../../src/orchard/history.ts';
import { loadOrchard } from '../../src/orchard/load.ts';
import { dilutedFor, finished, reopened, sumOf, treeWants } from '../../src/plan-left.ts';
import type { Draft } from '../../src/planned.ts';
import { seasonOf } from '../../src/when/season.ts';
import { feed } from '../bags/parts.ts';
import { facts } from '../need/parts.ts';
import { fig, orchardOf, plantOf } from './parts.ts';

const home = loadOrchard('where: Ohio, US\nbud-break: 12 April\nfirst-frost: 12 October\ntrees:\n  A: apple, planted 2016\n', 'orchard.yaml').orchard!;
const at = (today: string): ReturnType<typeof seasonOf> => seasonOf(home, today);
const urea = feed('Urea', [46, 0, 0]);
const potash = feed('Potash', [0, 0, 50]);
const dose = (bag: typeof urea, from: string, until: string, g = 100): Feed => ({ bag, g, serves: 'N', ring: null, window: { from, until, phase: 'later', why: fig(0, 'day', 'time') } }) as unknown as Feed;
const fed = (date: string, n: number | null): Fed => ({ date, bag: 'Urea', g: 100, brought: n === null ? null : { N: n, P2O5: n / 2, K2O: 0 } });
const draft = (line = 'apple, planted 2010', { need, last = '2026-07-20', printed = false, ...more }: { need?: object; last?: string; printed?: boolean; bed?: unknown; crop?: string } = {}): Draft => ({
  facts: facts(line, [], more as object), last: { day: last, printed, why: fig(0, 'day', 'time') }, zone: null, history: null,
  need: plantOf('A', { need: { P2O5: fig(20, 'g', 'P2O5'), K2O: fig(60, 'g', 'K2O'), nitrogen: { doses: 1, cap: Infinity, lead: null, half: null }, ...need } }).need,
}) as unknown as Draft;

describe('a dose whose window has passed', () => {
  const open = (today: string, feeds: readonly Feed[], d = draft()): string[] => reopened(feeds, at(today), d).map(({ window: w }) => `${w.from} ${w.until} ${w.phase}`);
  const [first, second] = [dose(urea, '2026-03-29', '2026-04-26'), dose(urea, '2026-05-20', '2026-06-01')];
  test('opens again from today for two weeks; one that closes today holds', () => {
    expect([open('2026-04-26', [first]), open('2026-04-27', [first]), open('2026-03-01', [first])]).toEqual([['2026-03-29 2026-04-26 later'], ['2026-04-27 2026-05-11 null'], ['2026-03-29 2026-04-26 later']]);
  });
  test('the next of its bag keeps 24 days from it, as the usual two do; one far enough, or of another bag, stays', () => {
    // 15 May and 24 days are 8 June.
    expect(open('2026-05-01', [first, second])).toEqual(['2026-05-01 2026-05-15 null', '2026-06-08 2026-06-22 null']);
    expect(open('2026-05-01', [first, dose(urea, '2026-06-08', '2026-06-20')])).toEqual(['2026-05-01 2026-05-15 null', '2026-06-08 2026-06-20 later']);
    expect(open('2026-05-01', [first, dose(urea, '2026-06-07', '2026-06-20')])[1]).toBe('2026-06-08 2026-06-22 null');
    expect(open('2026-05-01', [first, dose(potash, '2026-05-20', '2026-06-01')])[1]).toBe('2026-05-20 2026-06-01 later');
    // What holds moves nothing behind it.
    expect(open('2026-04-20', [first, dose(urea, '2026-05-10', '2026-05-20')])).toEqual(['2026-03-29 2026-04-26 later', '2026-05-10 2026-05-20 later']);
  });
  test('ends with the last day, and is none after it', () => {
    expect([open('2026-07-15', [first]), open('2026-07-20', [first]), open('2026-06-30', [dose(urea, '2026-07-01', '2026-07-30')]), open('2026-07-01', [first, second])]).toEqual([['2026-07-15 2026-07-20 null'], ['2026-07-20 2026-07-20 null'], ['2026-07-01 2026-07-20 later'], ['2026-07-01 2026-07-15 null']]);
  });
  test('a printed last day holds for nitrogen alone; potash has the usual one, of evergreens theirs', () => {
    const michigan = draft('peach, planted 2010', { last: '2026-06-15' });
    expect([open('2026-06-20', [first], michigan), open('2026-06-20', [dose(potash, '2026-03-29', '2026-04-26')], michigan), open('2026-07-15', [dose(potash, '2026-03-29', '2026-04-26')], michigan)]).toEqual([[], ['2026-06-20 2026-07-04 null'], ['2026-07-15 2026-07-20 null']]);
    // Also of what is fed as one.
    expect(open('2026-07-19', [dose(potash, '2026-03-29', '2026-04-26')], draft('apple, planted 2010', { crop: 'citrus' }))).toEqual(['2026-07-19 2026-08-02 null']);
  });
});

test('what was fed: unknown where one feed is', () => {
  expect([sumOf([], 'N'), sumOf([fed('2026-04-01', 10), fed('2026-04-02', 20)], 'N'), sumOf([fed('2026-04-01', 10)], 'P2O5'), sumOf([fed('2026-04-01', 10), fed('2026-04-02', null)], 'N')]).toEqual([0, 30, 5, null]);
});

describe('what it may still have', () => {
  const wants = (today: string, list: readonly Fed[] = [], d = draft()) => treeWants(d, at(today), list);
  const windows = (today: string, list: readonly Fed[] = [], d = draft()): string[] => wants(today, list, d)!.open.windows.slice(0, 1).map((w) => `${w.from} ${w.until}`);
  test('nothing where nothing is wanted', () => { expect([wants('2026-03-14', [], draft(undefined, { need: { verdict: 'none' } })), wants('2026-03-14', [], draft(undefined, { need: { verdict: 'wait' } }))]).toEqual([null, null]); });
  test('all of it, in the first window', () => {
    expect(wants('2026-03-14')).toMatchObject({ wants: { N: 100, P2O5: 20, K2O: 60 }, open: { done: 0, late: false }, asked: 1, half: false });
    expect(windows('2026-03-14')).toEqual(['2026-03-29 2026-04-26']);
  });
  test('less what was fed, in the window after it; days and not feeds count as doses', () => {
    const after = wants('2026-04-20', [fed('2026-04-12', 30), fed('2026-04-12', 30)]);
    expect(after).toMatchObject({ wants: { N: 40, P2O5: 0, K2O: 60 }, open: { done: 1, late: false } });
    expect(windows('2026-04-20', [fed('2026-04-12', 60)])).toEqual(['2026-05-20 2026-06-01']);
    expect(wants('2026-04-20', [fed('2026-04-12', 30), fed('2026-04-02', 30)])!.open.done).toBe(2);
  });
  // A window that was served opens no more, so it pushes none behind it; the next begins 24 days after the last feed, or in its own time, or today.
  test.each([
    ['2026-04-14', '2026-05-01', '2026-05-20 2026-06-01'], ['2026-05-01', '2026-05-02', '2026-05-25 2026-06-01'], ['2026-05-05', '2026-05-06', '2026-05-29 2026-06-12'], ['2026-05-01', '2026-06-10', '2026-06-10 2026-06-24'], ['2026-06-10', '2026-06-11', '2026-07-04 2026-07-18'], ['2026-06-19', '2026-06-20', '2026-07-13 2026-07-20'],
  ])('fed on %s, the rest as planned on %s: %s', (latest, today, window) => expect(windows(today, [fed(latest, 60)])).toEqual([window]));
  test('nothing where a week before the last day is no longer left', () => expect(wants('2026-06-21', [fed('2026-06-20', 60)])).toBeNull());
  test('no more of what rounding alone leaves: 8 % of the need', () => {
    expect([92, 91.9].map((n) => Number(wants('2026-04-20', [fed('2026-04-12', n)])!.wants.N.toFixed(3)))).toEqual([0, 8.1]);
  });
  test('an unknown feed counts as all of it', () => { expect(wants('2026-04-20', [fed('2026-04-12', null)])!.wants).toEqual({ N: 0, P2O5: 0, K2O: 0 }); });
  test('after a printed last day potash alone, else nothing after the last day', () => {
    const printed = draft(undefined, { last: '2026-06-15', printed: true });
    expect(wants('2026-06-20', [], printed)!.wants).toEqual({ N: 0, P2O5: 20, K2O: 60 });
    expect(wants('2026-06-01', [], printed)!.wants.N).toBeGreaterThan(0);
    expect(wants('2026-06-20', [], draft(undefined, { last: '2026-06-15' }))).toBeNull();
  });
  // A year's one dose after the second's window has closed on 1 June: half of it, unless it belongs after harvest.
  test('late in the season half', () => {
    const lead = (when: string): object => ({ nitrogen: { doses: 1, cap: Infinity, half: null, lead: { why: 'here', rule: { when } } } });
    expect([wants('2026-06-01')!.wants.N, wants('2026-06-02')!.wants.N, wants('2026-06-02', [], draft(undefined, { need: lead('spring') }))!.wants.N, wants('2026-06-02', [], draft(undefined, { need: lead('after-harvest') }))!.open.late]).toEqual([100, 50, 50, false]);
  });
  test('before planting phosphate and potash alone, into the bed', () => {
    const d = draft('apple, planting October 2026', { bed: fig(2, 'm2', 'crown') });
    expect(wants('2026-03-14', [], d)).toMatchObject({ wants: { N: 0, P2O5: 20, K2O: 60 }, open: { done: 0, late: false } });
    expect(wants('2026-03-14', [], d)!.open.windows).toHaveLength(1);
  });
});

describe('what comes of it', () => {
  const made = (feeds: readonly Feed[], list: readonly Fed[] = [], d = draft(), planned: readonly Feed[] = feeds, can?: object) => finished(d, { feeds, fed: list }, null, planned, can as never);
  const [april, may] = [dose(urea, '2026-03-29', '2026-04-26', 100), dose(urea, '2026-05-20', '2026-06-01', 50)];
  test('supplied by what was fed and is planned; what is over and short of the need', () => {
    // 100 g of urea bring 46, 50 g 23; 60 of potash are wanted and 80 g of it bring 40.
    const plan = made([april, may, dose(potash, '2026-03-29', '2026-04-26', 80)], [fed('2026-03-20', 60)]);
    expect([plan.supplied, plan.over, plan.short]).toEqual([{ N: 129, P2O5: 30, K2O: 40 }, { N: 29, P2O5: 10, K2O: 0 }, { N: 0, P2O5: 0, K2O: 20 }]);
    expect(made([], [fed('2026-03-20', null)]).supplied).toEqual({ N: 100, P2O5: 20, K2O: 60 });
  });
  test('the most nitrogen that one window was to have, as it was planned first', () => {
    expect([made([april, dose(urea, '2026-03-29', '2026-04-26', 10), may]).mostPlanned, made([may], [], draft(), [may, april]).mostPlanned, made([]).mostPlanned]).toEqual([50.6, 46, 0].map((x) => expect.closeTo(x, 9)));
  });
  test('what goes into a tub\'s water counts', () => {
    const plan = made([], [], draft('lemon, planted 2016, tub 40 l'), [], { dilute: { bag: feed('Soluble', [20, 10, 10]), times: 10, g: fig(5, 'g', 'product') }, tooLittle: false });
    expect(plan.supplied).toEqual({ N: 10, P2O5: 5, K2O: 5 });
    expect([plan.dilute?.times, plan.tooLittle, made([]).dilute, made([]).tooLittle]).toEqual([10, false, null, false]);
  });
  test('the ring of its feed, else its own; none of a tub or a bed', () => {
    const ring = { area: fig(3, 'm2', 'ring') };
    expect(made([{ ...april, ring } as unknown as Feed]).ring).toEqual(ring);
    expect(made([]).ring!.area.value).toBeGreaterThan(0);
    expect([made([], [], draft('lemon, planted 2016, tub 40 l')).ring, made([], [], draft(undefined, { bed: null })).ring]).toEqual([null, null]);
  });
});

describe('a tub in its water', () => {
  const soluble = feed('Soluble', [20, 20, 20], { soluble: true });
  const tub = draft('lemon, planted 2016, tub 60 l');
  const can = (today: string, { d = tub, feeds = [], list = [], shed = [soluble], store = [] }: { d?: Draft; feeds?: readonly Feed[]; list?: readonly Fed[]; shed?: (typeof urea)[]; store?: (typeof urea)[] } = {}) => dilutedFor(d, { feeds, fed: list }, at(today), orchardOf({ shed, store }));
  test('from bud break on, or from today, to its last day', () => {
    // Fourteen whole weeks from 12 April end on 19 July.
    expect(can('2026-03-14').dilute).toMatchObject({ from: '2026-04-12', until: '2026-07-19' });
    expect(can('2026-05-03').dilute).toMatchObject({ from: '2026-05-03' });
    expect(can('2026-03-14', { shed: [], store: [soluble] }).dilute?.bag.label).toBe('Soluble');
  });
  test('a week after the last can', () => { expect(can('2026-05-03', { list: [fed('2026-05-01', 1), fed('2026-04-12', 1)] }).dilute).toMatchObject({ from: '2026-05-08' }); });
  test('not beside coated feed, not for what stands in the ground or wants nothing, not without what dissolves', () => {
    const none = { dilute: null, tooLittle: false };
    expect([can('2026-05-03', { feeds: [dose(urea, '2026-05-03', '2026-05-10')] }), can('2026-05-03', { d: draft() }), can('2026-05-03', { d: draft('lemon, planted 2016, tub 60 l', { need: { verdict: 'none' } }) }), can('2026-05-03', { shed: [urea] })]).toEqual([none, none, none, none]);
  });
  test('nothing more where all was fed; too little where the tub holds too small a can', () => {
    expect(can('2026-05-03', { list: [fed('2026-05-01', null)] })).toEqual({ dilute: null, tooLittle: false });
    expect(can('2026-05-03', { d: draft('lemon, planted 2016, tub 0.01 l', { need: { N: fig(0.001), P2O5: fig(0, 'g', 'P2O5'), K2O: fig(0, 'g', 'K2O') } }) })).toEqual({ dilute: null, tooLittle: true });
  });
});
