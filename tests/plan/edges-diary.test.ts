// Working days by themselves: what is done on one day, how days keep their numbers, and how a day that is done stands in the diary. Windows and weights are made up; days and sums by hand.
import { describe, expect, test } from 'vitest';
import type { Feed } from '../../src/bags/doses.ts';
import { doneAlready, dosesOf, lately, writtenLast } from '../../src/done.ts';
import type { Entry } from '../../src/orchard/diary.ts';
import { loadOrchard } from '../../src/orchard/load.ts';
import { daysOf, windowOptionsOf, withNumbers } from '../../src/plan-days.ts';
import type { TreePlan, WorkingDay } from '../../src/planned.ts';
import { weighedOut } from '../../src/planned.ts';
import { told } from '../../src/reason/figure.ts';
import { seasonOf } from '../../src/when/season.ts';
import { feed } from '../bags/parts.ts';
import { facts } from '../need/parts.ts';

const orchard = loadOrchard('where: Ohio, US\nbud-break: 12 April\nfirst-frost: 12 October\ntrees:\n  A: apple, planted 2016\n  B: apple, planted 2016\n', 'orchard.yaml').orchard!;
const season = seasonOf(orchard, '2026-03-01');
const urea = feed('Urea', [46, 0, 0]);
const potash = feed('Potash', [0, 0, 50]);
type Made = { from: string; until: string; phase?: string | null; bag?: typeof urea; g?: number; serves?: 'N' | 'K2O' };
const made = ({ from, until, phase = null, bag = urea, g = 100, serves = 'N' }: Made): Feed => ({ bag, g, mL: null, planned: told(g, 'g', 'product', 'test'), window: { from, until, phase, why: told(1, 'day', 'time', 'test') }, ring: null, serves }) as unknown as Feed;
const plant = (name: string, feeds: readonly Feed[], count = 1): TreePlan => ({ tree: { name, count }, feeds }) as unknown as TreePlan;
const days = (...plans: TreePlan[]): string[] => daysOf(plans, season).map((d) => `${d.from} ${d.until} ${d.phase} ${d.doses.map((x) => `${x.plan.tree.name}:${x.feed.bag.label}`).join(' ')}`);

describe('feeds whose windows overlap are done on one day', () => {
  const one = (a: Made, b: Made): string[] => days(plant('A', [made(a)]), plant('B', [made(b)]));
  test('the day is what both windows have, in walking order whichever opens first', () => {
    expect(one({ from: '2026-04-10', until: '2026-05-10' }, { from: '2026-04-01', until: '2026-04-30' })).toEqual(['2026-04-10 2026-04-30 null A:Urea B:Urea']);
  });
  test('where a week is left to choose from: six days from first to last', () => {
    expect(one({ from: '2026-04-01', until: '2026-04-20' }, { from: '2026-04-14', until: '2026-05-20' })).toEqual(['2026-04-14 2026-04-20 null A:Urea B:Urea']);
    expect(one({ from: '2026-04-01', until: '2026-04-20' }, { from: '2026-04-15', until: '2026-05-20' })).toEqual(['2026-04-01 2026-04-20 null A:Urea', '2026-04-15 2026-05-20 null B:Urea']);
  });
  test('a short window needs no more than itself, whichever of the two it is', () => {
    expect(one({ from: '2026-04-01', until: '2026-04-20' }, { from: '2026-04-17', until: '2026-04-20' })).toEqual(['2026-04-17 2026-04-20 null A:Urea B:Urea']);
    expect(one({ from: '2026-04-17', until: '2026-04-20' }, { from: '2026-04-18', until: '2026-05-20' })).toEqual(['2026-04-17 2026-04-20 null A:Urea', '2026-04-18 2026-05-20 null B:Urea']);
    expect(one({ from: '2026-04-17', until: '2026-04-17' }, { from: '2026-04-17', until: '2026-05-20' })).toEqual(['2026-04-17 2026-04-17 null A:Urea B:Urea']);
  });
  test('two doses of one nutrient for one plant never meet; another nutrient, or two bags of one window, may', () => {
    const [first, second] = [{ from: '2026-04-01', until: '2026-04-30' }, { from: '2026-04-10', until: '2026-05-10' }];
    expect(days(plant('A', [made(first), made(second)]))).toHaveLength(2);
    expect(days(plant('A', [made(first), made({ ...second, bag: potash, serves: 'K2O' })]))).toEqual(['2026-04-10 2026-04-30 null A:Urea A:Potash']);
    const window = made(first);
    expect(days(plant('A', [window, { ...window, bag: potash }]))).toEqual(['2026-04-01 2026-04-30 null A:Urea A:Potash']);
    // A third that meets what stands on the day since is kept apart too.
    expect(days(plant('A', [made({ ...first, bag: potash, serves: 'K2O' }), made(first), made(second)]))).toHaveLength(2);
  });
  test('what the trees do then, where all do the same', () => {
    const at = (a: string | null, b: string | null): string => one({ from: '2026-05-01', until: '2026-05-30', phase: a }, { from: '2026-05-01', until: '2026-05-30', phase: b })[0]!.split(' ')[2]!;
    expect([at('bloom', 'bloom'), at('bloom', null), at('bloom', 'petal-fall'), at(null, null)]).toEqual(['bloom', 'bloom', 'null', 'null']);
  });
});

test('days come in the order of their first day, each in walking order', () => {
  const at = (from: string, until: string): Made => ({ from, until });
  expect(days(plant('A', [made(at('2026-07-01', '2026-07-10'))]), plant('B', [made(at('2026-04-01', '2026-04-10'))]), plant('C', [made(at('2026-05-01', '2026-05-10'))]), plant('D', [made(at('2026-07-01', '2026-07-10'))])))
    .toEqual(['2026-04-01 2026-04-10 null B:Urea', '2026-05-01 2026-05-10 null C:Urea', '2026-07-01 2026-07-10 null A:Urea D:Urea']);
  // Two windows that only touch share no day, however short they are.
  expect(days(plant('A', [made(at('2026-04-01', '2026-04-03'))]), plant('B', [made(at('2026-04-05', '2026-04-05'))]))).toHaveLength(2);
});

describe('whose time of feeding leads', () => {
  const options = (line: string, heaviness: string | null = null, where = 'Ohio, US') => windowOptionsOf({ ...facts(line, [], {}, where), soil: heaviness && { rated: [], heaviness } } as never, { nitrogen: { doses: 3, lead: null } } as never);
  test('what the soil, the place and the tub say', () => {
    expect(options('medlar, planted 2016', 'light')).toMatchObject({ sandy: true, south: false, region: 'US-OH', tub: false, parts: 3 });
    expect([options('medlar, planted 2016', 'heavy').sandy, options('medlar, planted 2016').sandy, options('medlar, planted 2016, tub 40 l').tub, options('medlar, planted 2016', null, 'New South Wales, Australia').south]).toEqual([false, false, true, true]);
  });
  test('a row of the place\'s own, else none; others are told of no tub', () => {
    // Kansas feeds at bloom (Kansas State University).
    const kansas = options('apple, planted 2016', null, 'Kansas, US');
    expect([kansas.timing !== null, kansas.printed!.length > 0, options('apple, planted 2016, tub 40 l', null, 'Kansas, US').others]).toEqual([true, true, []]);
  });
});

describe('numbers', () => {
  const [a, b, c] = ['2026-04-01', '2026-05-01', '2026-06-01'].map((from) => ({ from, until: from, phase: null, doses: [{ plan: plant('A', []), feed: made({ from, until: from }) }] }));
  const of = (...known: [typeof a, number][]): number[] => withNumbers([a!, b!, c!], new Map(known.map(([d, n]) => [d!.doses[0]!.feed.planned, n]))).map((d) => d.number);
  test('a day keeps its own; what is new goes on after the highest', () => {
    expect([of(), of([a, 1], [b, 2], [c, 3]), of([b, 2], [c, 3]), of([b, 4])]).toEqual([[1, 2, 3], [1, 2, 3], [4, 2, 3], [5, 4, 6]]);
    // A number stands once.
    expect(of([a, 1], [b, 1])).toEqual([1, 2, 3]);
  });
});

const work = (...doses: [string, number, number][]): WorkingDay => ({ number: 1, from: '2026-04-01', until: '2026-04-30', phase: null, doses: doses.map(([name, g, count]) => ({ plan: plant(name, [], count), feed: made({ from: '2026-04-01', until: '2026-04-30', g }) })) });
describe('a day that is done', () => {
  test('what it takes of a bag: each plant', () => {
    const { doses, ...day } = work(['A', 100, 3], ['B', 50, 1]);
    expect([...weighedOut({ ...day, doses: [...doses, { plan: plant('A', [], 3), feed: made({ from: '2026-04-01', until: '2026-04-30', g: 10, bag: potash }) }] })]).toEqual([['Urea', 350], ['Potash', 30]]);
  });
  test('a line a tree, as printed where that reads back, else exactly', () => {
    const said = (g: number, system: 'us' | 'metric'): [string | null, number | null] => { const [e] = dosesOf(work(['A', g, 1]), 2, '2026-04-03', system); return [e!.amount, Math.round(e!.g! * 100) / 100]; };
    expect([said(100, 'metric'), said(1230, 'metric'), said(1234.6, 'metric')]).toEqual([['100 g', 100], ['1.23 kg', 1230], ['1235 g', 1235]]);
    // Twelve ounces are 340.19 g; 100 g are 3.5274 oz, which the half and quarter ounces cannot say: 3.53 of them are 100.07 g.
    expect([said(12 * 28.349523125, 'us'), said(100, 'us')]).toEqual([['12 oz', 340.19], ['3.53 oz', 100.07]]);
    expect(dosesOf(work(['A', 100, 1], ['B', 50, 1]), 2, '2026-04-03', 'metric')).toEqual([
      { date: '2026-04-03', trees: ['A'], what: 'fed', bag: 'Urea', g: 100, m: null, amount: '100 g', note: 'day 2', line: 0 }, { date: '2026-04-03', trees: ['B'], what: 'fed', bag: 'Urea', g: 50, m: null, amount: '50 g', note: 'day 2', line: 0 }]);
  });
  const entry = (date: string, more: Partial<Entry> = {}): Entry => ({ date, trees: ['A'], what: 'fed', bag: 'Urea', g: 100, m: null, amount: '100 g', note: 'day 2', line: 1, ...more });
  test('stands there already: the same day of the same season for one of its trees', () => {
    const again = (trees: string[] | null, ...before: Entry[]): unknown => doneAlready([{ day: 2, date: '2026-04-20', trees }], before, orchard)?.facts ?? null;
    expect(again(['A'], entry('2026-04-03'), entry('2026-04-03', { trees: ['B'] }))).toEqual({ n: '2', date: '3 April 2026', trees: 'A' });
    expect(again(null, entry('2026-04-03'), entry('2026-04-04'), entry('2026-04-03', { trees: ['B'] }))).toEqual({ n: '2', date: '3 April 2026', trees: 'A, B' });
    expect(again(['B', 'A'], entry('2026-04-03', { trees: ['X', 'A'] }))).toMatchObject({ trees: 'X, A' });
    expect([again(['B'], entry('2026-04-03')), again(['A'], entry('2026-04-03', { note: 'day 3' })), again(['A'], entry('2025-04-03')), again(['A'], entry('2026-04-03', { what: 'note' })), again(['A'])]).toEqual([null, null, null, null, null]);
    expect(doneAlready([{ day: 2, date: '2026-04-20', trees: ['A'] }], [entry('2026-04-03')], orchard)).toMatchObject({ code: 'diary-done-already', severity: 'error' });
  });
  test('what was written together is what is taken back together', () => {
    const [x, y, z] = [entry('2026-04-03', { line: 1 }), entry('2026-04-03', { line: 2, trees: ['B'] }), entry('2026-04-03', { line: 3, note: 'wet' })];
    expect([writtenLast([]), writtenLast([x]), writtenLast([x, y]), writtenLast([x, y, z]), writtenLast([z, x, y]), writtenLast([x, z, y])]).toEqual([[], [x], [x, y], [z], [x, y], [y]]);
    const [older, alike] = [entry('2026-04-02', { line: 0 }), entry('2026-04-03', { note: 'wet', line: 4 })];
    expect([writtenLast([older, x]), writtenLast([z, alike]), writtenLast([entry('2026-04-03', { note: 'day 2 wet' }), { ...x, note: 'day 2 wet' }]).length, writtenLast([{ ...x, note: 'a day 2' }, { ...y, note: 'a day 2' }]).length, writtenLast([{ ...x, note: 'day 12' }, { ...y, note: 'day 12' }]).length]).toEqual([[x], [alike], 1, 1, 2]);
  });
  test('the last twelve months, newest last, a day in the order of the file', () => {
    const of = (...dates: [string, number][]): number[] => lately(dates.map(([d, line]) => entry(d, { line })), '2026-05-10').map((e) => e.line);
    expect(of(['2025-05-10', 1], ['2025-05-11', 2], ['2026-05-10', 4], ['2026-01-01', 5], ['2026-05-10', 3])).toEqual([2, 5, 3, 4]);
  });
});
