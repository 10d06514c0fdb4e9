// The season as entries of a calendar: each with its days, a name that stays, and the words of the sheet; by the layout of the plans made here.
import { describe, expect, test } from 'vitest';
import type { TreePlan } from '../../src/plan.ts';
import { calendarOf } from '../../src/sheet/calendar.ts';
import { diluteAmount, diluteText } from '../../src/sheet/can.ts';
import { feed } from '../bags/parts.ts';
import { can, day, dose, fig, limed, plan, tree, zone } from './parts.ts';

type More = Parameters<typeof plan>[1];
const SULPHATE = feed('Sulfate of ammonia', [21, 0, 0]);
const POTASH = feed('Potash', [0, 0, 50]);
const SOLUBLE = feed('Soluble', [20, 20, 20]);
const APPLE = tree('Apple', {}, { feeds: [dose(SULPHATE, 350)] });
const ROW = tree('Row', { count: 3 }, { feeds: [dose(SULPHATE, 100), dose(POTASH, 60, { serves: 'K2O' })] });
const entries = (trees: readonly TreePlan[], more: More = {}) => calendarOf(plan(trees, more));
const onDay = (...trees: TreePlan[]) => day(1, trees.flatMap((t) => t.feeds.map((f) => [t, f] as const)));
const STOP = { id: 'stop-2026', from: '2026-07-20', until: '2026-07-20', title: 'Hill: last day for nitrogen', text: 'No nitrogen after 20 July, even if a day was missed.' };
const HOW = 'Pull mulch back. Spread evenly over the ring. Mulch back. Water. Nothing against the trunk. Cups are rough: weigh. Skip it if the ground is dry, frozen, snowy or flooded, or a storm is due.';

describe('a working day', () => {
  test('its window, what is weighed out, each dose, how', () => {
    expect(entries([APPLE, ROW], { days: [onDay(APPLE, ROW)] })).toEqual([{
      id: 'day-1-2026', from: '2026-04-10', until: '2026-04-25', title: 'Hill: feed, day 1 (10-25 April)',
      text: ['Weigh out 650 g Sulfate of ammonia, 180 g Potash.', 'Apple: 350 g Sulfate of ammonia', 'Row: 100 g each of 3 Sulfate of ammonia', 'Row: 60 g each of 3 Potash', HOW, 'The feeding sheet tells where on the ground.'].join('\n'),
    }, STOP]);
  });
  test('on what a dose of nitrogen hangs, and no other', () => {
    const t = { ...ROW, need: { ...ROW.need, nitrogen: { ...ROW.need.nitrogen, ifBelow: fig(0.2) as never } } };
    expect(entries([t], { days: [onDay(t)] })[0]!.text.split('\n').slice(1, 3)).toEqual(['Row: 100 g each of 3 Sulfate of ammonia (only if last year\'s shoots were under 20 cm)', 'Row: 60 g each of 3 Potash']);
  });
  test('of an orchard without a name', () => { expect(entries([APPLE], { days: [onDay(APPLE)], orchard: { name: '' } }).map((e) => e.title)).toEqual(['Orchard: feed, day 1 (10-25 April)', 'Orchard: last day for nitrogen']); });
});

test('the last day of evergreens stands by itself beside that of others', () => {
  const lemon = tree('Lemon', { crop: 'citrus' }, { feeds: [dose(SULPHATE, 350)] });
  expect(entries([APPLE, lemon], { days: [onDay(APPLE, lemon)] }).slice(1)).toEqual([STOP, { ...STOP, id: 'stop-evergreen-2026', from: '2026-08-10', until: '2026-08-10', text: 'Lemon: 10 August.' }]);
  expect(entries([lemon], { days: [onDay(lemon)] }).slice(1)).toEqual([{ ...STOP, from: '2026-08-10', until: '2026-08-10', text: 'No nitrogen after 10 August, even if a day was missed.' }]);
  expect(entries([APPLE])).toEqual([]);
});

describe('a can', () => {
  const WATER = '12 g Soluble in 9 L of water, once a week, 1 April to 15 July (16 times)';
  test('from its first week to its last, numbered as the tree is in the walk', () => {
    expect(entries([tree('A'), tree('Fig', {}, { dilute: can(SOLUBLE) })])).toEqual([{ id: 'can-2-2026', from: '2026-04-01', until: '2026-07-15', title: 'Hill: feed in the water: Fig', text: `${WATER}\nA white crust on a tub is salt: flush it with plain water.` }, STOP]);
  });
  // A gallon is 3.785 l; a small weight is in grams for everyone.
  test('in words, water by the gallon where that is usual', () => {
    expect([diluteText(can(SOLUBLE), 'en-US', 'metric'), diluteText(can(SOLUBLE, { waterL: 7.571, weeks: 2 }), 'en-US', 'us'), diluteAmount(can(SOLUBLE), 'en-US')]).toEqual([WATER, '12 g Soluble in 2 gal of water, every 2 weeks, 1 April to 15 July (16 times)', '12 g']);
  });
});

describe('lime and sulphur', () => {
  const of = (name: string, more: Parameters<typeof limed>[0] = {}, own: object = {}): TreePlan => tree(name, own, { ph: limed(more) });
  test('plants of one window in one entry, each with its amount', () => {
    expect(entries([of('A'), tree('B'), of('C', { g: 0 }), of('D', { bag: { label: 'Garden lime' } }, { count: 3 })])).toEqual([{ id: 'lime-12-14-2026', from: '2026-10-15', until: '2026-12-14', title: 'Hill: lime (15 October-14 December)', text: 'A: 700 g Ground limestone\nD: 700 g each of 3 Garden lime' }]);
  });
  test('another window, and sulphur in the same, apart', () => {
    const [early, short] = [{ window: { from: '2026-03-14', until: '2026-12-14' } as never }, { window: { from: '2026-10-15', until: '2026-11-01' } as never }];
    expect(entries([of('A'), of('B', early), of('C', { plan: { verdict: 'sulphur' } }), of('D', short)]).map((e) => [e.id, e.until, e.title, e.text])).toEqual([
      ['lime-12-14-2026', '2026-12-14', 'Hill: lime (15 October-14 December)', 'A: 700 g Ground limestone'], ['lime-12-14-2-2026', '2026-12-14', 'Hill: lime (14 March-14 December)', 'B: 700 g Ground limestone'],
      ['sulphur-12-14-2026', '2026-12-14', 'Hill: sulfur (15 October-14 December)', 'C: 700 g Elemental sulfur'], ['lime-11-01-2026', '2026-11-01', 'Hill: lime (15 October-1 November)', 'D: 700 g Ground limestone'],
    ]);
  });
  // Two entries of one name are one to a calendar (RFC 5545, 3.8.4.7), and one that has changed its name stays there beside the new.
  test('no two names are alike, and a window that is open keeps its own from day to day, over New Year, too', () => {
    const ids = (...windows: [string, string][]): string[] => entries(windows.map(([from, until], i) => of(`T${i}`, { window: { from, until } }))).map((e) => e.id);
    expect(new Set(ids(['2026-10-15', '2026-12-14'], ['2026-10-15', '2026-11-01'], ['2026-10-01', '2026-11-01'], ['2026-09-01', '2026-11-01'])).size).toBe(4);
    expect(ids(['2026-12-20', '2027-03-01'])).toEqual(ids(['2027-01-05', '2027-03-01']));
  });
});

describe('the next soil test', () => {
  const soil = (today: string, south: boolean, taken = '2023-03-01') => entries([], { zones: [zone('hill', { taken })], where: { south }, season: { today } }).map((e) => [e.id, e.from, e.until, e.title, e.text]);
  // October in the north and April in the south (practice), thirty days.
  test('thirty days of autumn', () => {
    expect([soil('2026-03-14', false), soil('2026-03-14', true), soil('2026-03-14', false, '2025-11-04')]).toEqual([[['soil-2026', '2026-10-01', '2026-10-30', 'Hill: take a soil sample', '']], [['soil-2026', '2026-04-01', '2026-04-30', 'Hill: take a soil sample', '']], [['soil-2028', '2028-10-01', '2028-10-30', 'Hill: take a soil sample', '']]]);
    expect(entries([])).toEqual([]);
  });
  test('what is left of them once they have begun', () => {
    expect([soil('2026-04-01', true), soil('2026-04-10', true), soil('2026-04-30', true), soil('2026-05-01', true)].map((list) => list.map((e) => e.slice(1, 3)))).toEqual([[['2026-04-01', '2026-04-30']], [['2026-04-10', '2026-04-30']], [['2026-04-30', '2026-04-30']], []]);
  });
});
