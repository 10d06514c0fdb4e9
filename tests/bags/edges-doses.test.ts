// The doses of one tree on ten square metres of crown. Its ring ends at 1.25 times the crown's radius and begins half a foot from the trunk: 15.625 - 0.073 = 15.552 m²,
// which take 75.9 g of quick nitrogen at once (1 lb on 1,000 square feet, 4.8824 g/m²); out to twice the radius 39.927 m², 194.9 g.
import { describe, expect, test } from 'vitest';
import type { PlannedDose, Wanted } from '../../src/bags/doses.ts';
import { dosesOf, roundDoses, wantedOf } from '../../src/bags/doses.ts';
import type { Facts } from '../../src/need/facts.ts';
import type { Need } from '../../src/need/need.ts';
import type { Bag } from '../../src/orchard/bag.ts';
import { told } from '../../src/reason/figure.ts';
import type { Window } from '../../src/when/season.ts';
import { facts } from '../need/parts.ts';
import { feed } from './parts.ts';

const OLD = 'apple, planted 2016, bearing';
const PER_M2 = 453.59237 / 92.90304;
const HALF_FOOT = Math.PI * 0.1524 ** 2;
const [AT_ONCE, WIDEST] = [PER_M2 * (15.625 - HALF_FOOT), PER_M2 * (40 - HALF_FOOT)];
const window = (month: number): Window => ({ from: `2026-0${month}-01`, until: `2026-0${month}-15`, phase: null, why: told(month, 'day', 'time', 'test') });
const windows = (many: number): Window[] => Array.from({ length: many }, (_, i) => window(i + 3));
const figures = { N: told(1, 'g', 'N', 'need'), P2O5: told(1, 'g', 'P2O5', 'need'), K2O: told(1, 'g', 'K2O', 'need') };
const need = (doses = 1, cap = Infinity): Need => ({ ...figures, nitrogen: { doses, cap } }) as unknown as Need;
const light: Partial<Facts> = { soil: { rated: [], heaviness: 'light' } };

describe('what may be given in the windows that are open', () => {
  const of = (doses: number, many: number, more: { done?: number; late?: boolean } = {}, line = OLD) => wantedOf(facts(line), need(doses), { N: 100, P2O5: 40, K2O: 60 }, { windows: windows(many), done: 0, late: false, ...more });
  test('nothing where none is', () => { expect(of(1, 0)).toBeNull(); });
  test.each<[string, number, number, { done?: number; late?: boolean }, Partial<Wanted> & { n: number }]>([
    ['one in one', 1, 1, {}, { asked: 1, missed: false, half: false, n: 100 }], ['one in three', 1, 3, {}, { asked: 1, missed: false, half: false, n: 100 }],
    // One window of two: half of the nitrogen; two of three, when the first is in the diary, all of what is left.
    ['two in one', 2, 1, {}, { asked: 2, missed: true, half: false, n: 50 }], ['two in one, late', 2, 1, { late: true }, { asked: 2, missed: true, half: false, n: 50 }], ['two of three in two', 3, 2, { done: 1 }, { asked: 2, missed: false, half: false, n: 100 }], ['one of three in one, late', 3, 1, { done: 2, late: true }, { asked: 1, missed: false, half: true, n: 50 }],
    ['more done than asked', 1, 1, { done: 2 }, { asked: 1, missed: false, n: 100 }], ['one, late', 1, 2, { late: true }, { asked: 1, half: true, n: 50 }], ['two, late', 2, 2, { late: true }, { asked: 2, half: false, n: 100 }],
  ])('%s', (_, doses, many, more, { n, ...wanted }) => {
    const found = of(doses, many, more)!;
    expect(found).toMatchObject(wanted);
    expect(found.wants).toEqual({ N: n, P2O5: 40, K2O: 60 });
  });
  test('quick nitrogen: what the widest ring takes in so many windows, three at the most', () => {
    expect([1, 2, 3, 5].map((many) => of(1, many)!.mostQuick)).toEqual([1, 2, 3, 3].map((doses) => expect.closeTo(doses * WIDEST, 3)));
  });
  test('in a tub there is no ring, and nothing is missed', () => {
    expect(of(3, 1, {}, 'fig, planted 2016, tub 60 L')).toMatchObject({ wants: { N: 100, P2O5: 40, K2O: 60 }, missed: false, mostQuick: Infinity });
  });
});

type Told = { g: number[]; step: string; ring?: number | null; most?: number[] };
const wanted = (many: number, more: Partial<Wanted> & { done?: number; shares?: readonly number[] } = {}): Wanted => {
  const { done = 0, shares, ...rest } = more;
  return { wants: { N: 100, P2O5: 0, K2O: 0 }, open: { windows: windows(many), done, late: false, ...(shares ? { shares } : {}) }, asked: 1, missed: false, half: false, mostQuick: 1000, ...rest };
};
const doses = (how: Wanted, shares: readonly (readonly [Bag, number])[], f = facts(OLD), n = need()): PlannedDose[] => dosesOf(f, n, how, shares.map(([bag, g]) => ({ bag, g })), 'metric');
const tell = (list: readonly PlannedDose[]): Told => ({ g: list.map((d) => Math.round(d.planned.value * 100) / 100), step: [...new Set(list.map((d) => d.planned.step))].join(), ring: list[0]!.ring && Math.round(list[0]!.ring.area.value * 100) / 100 });

describe('how a bag is given', () => {
  const [quick, weak, slow, potash] = [feed('Quick', [20, 0, 0]), feed('Weak', [10, 0, 0]), feed('Slow', [20, 0, 0], { slow: true }), feed('Potash', [0, 0, 50])];
  test('at once where the ring takes it, else in two, else on a wider ring', () => {
    expect(tell(doses(wanted(3), [[quick, 250]]))).toEqual({ g: [250], step: 'dose', ring: 15.55 });
    expect(tell(doses(wanted(3), [[quick, 500]]))).toEqual({ g: [250, 250], step: 'dose-split', ring: 15.55 });
    // 200 g of N: two doses of 100 on 22.43 m², which take 109.5.
    expect(tell(doses(wanted(3), [[quick, 1000]]))).toEqual({ g: [500, 500], step: 'dose-split', ring: 22.43 });
    expect(tell(doses(wanted(1), [[quick, 500]]))).toEqual({ g: [500], step: 'dose', ring: 22.43 });
    expect(doses(wanted(3), [[quick, 500]]).map((d) => d.window.from)).toEqual(['2026-03-01', '2026-04-01']);
  });
  test('slow feed at once', () => { expect(tell(doses(wanted(3), [[slow, 1000]]))).toEqual({ g: [1000], step: 'dose', ring: 15.55 }); });
  test('quick nitrogen of two bags counts together', () => {
    // 50 + 50 g of N in two doses, slow feed beside it in one.
    expect(tell(doses(wanted(2), [[quick, 250], [weak, 500], [slow, 300]])).g).toEqual([125, 125, 250, 250, 300]);
    expect(tell(doses(wanted(2), [[quick, 250], [weak, 240]])).g).toEqual([250, 240]);
  });
  test('the most of a dose: its part of what the ring takes, and of the rule\'s ceiling', () => {
    const most = (list: readonly PlannedDose[]): number[] => list.map((d) => d.most);
    const near = (...list: number[]): unknown[] => list.map((x) => expect.closeTo(x, 4));
    expect(most(doses(wanted(2), [[quick, 250]]))).toEqual(near(AT_ONCE / 0.2));
    // Two parts of three of the nitrogen are in the first.
    expect(most(doses(wanted(2), [[quick, 200], [weak, 200]]))).toEqual(near((AT_ONCE * 2) / 3 / 0.2, AT_ONCE / 3 / 0.1));
    // A ceiling of 60 g for the year: by parts, and by doses.
    expect(most(doses(wanted(2), [[quick, 200], [weak, 200]], facts(OLD), need(1, 60)))).toEqual(near(40 / 0.2, 20 / 0.1));
    expect(most(doses(wanted(2), [[quick, 500]], facts(OLD), need(1, 60)))).toEqual(near(30 / 0.2, 30 / 0.2));
    expect(most(doses(wanted(2), [[slow, 500]], facts(OLD), need(1, 60)))).toEqual(near(60 / 0.2));
    expect(most(doses(wanted(2, { wants: { N: 0, P2O5: 0, K2O: 9 } }), [[potash, 500]], facts(OLD), need(1, 60)))).toEqual([Infinity]);
  });
  test('potash on sand goes in halves, where half can be weighed and there are two windows', () => {
    const how = (many: number): Wanted => wanted(many, { wants: { N: 0, P2O5: 0, K2O: 50 } });
    const g = (many: number, of: number, f = facts(OLD, [], light), bag = potash): number[] => tell(doses(how(many), [[bag, of]], f)).g;
    expect([g(2, 100), g(3, 100), g(1, 100), g(2, 20), g(2, 19)]).toEqual([[50, 50], [50, 50], [100], [10, 10], [19]]);
    expect(g(2, 100, facts(OLD))).toEqual([100]);
    expect(g(2, 100, facts(OLD, [], { soil: { rated: [], heaviness: 'medium' } }))).toEqual([100]);
    // Phosphate is not washed out.
    expect(tell(doses(wanted(2, { wants: { N: 0, P2O5: 9, K2O: 0 } }), [[feed('P', [0, 20, 0]), 100]], facts(OLD, [], light))).g).toEqual([100]);
    expect(tell(doses(wanted(2), [[slow, 100]], facts(OLD, [], light))).g).toEqual([100]);
  });
  test('printed shares of a whole year, where the greatest does not burn', () => {
    const of = (g: number, more: Parameters<typeof wanted>[1] = {}): number[] => tell(doses(wanted(2, { asked: 2, shares: [0.75, 0.25], ...more }), [[quick, g]])).g;
    // 75 g of 100 in the first; of 110 g 82.5 would be too much.
    expect(of(500)).toEqual([375, 125]);
    expect(of(550)).toEqual([275, 275]);
    expect(of(500, { done: 1 })).toEqual([250, 250]);
    expect(of(500, { missed: true })).toEqual([250, 250]);
    expect(of(500, { shares: [0.5, 0.25, 0.25] })).toEqual([250, 250]);
    expect(tell(doses(wanted(2, { asked: 2, shares: [0.75, 0.25] }), [[slow, 500]])).g).toEqual([500]);
    expect(doses(wanted(2, { asked: 2, shares: [0.75, 0.25] }), [[quick, 500]], facts(OLD), need(1, 60)).map((d) => Math.round(d.most))).toEqual([225, 75]);
  });
});

describe('what is told of a dose', () => {
  const [quick, slow, potash] = [feed('Quick', [20, 0, 0]), feed('Slow', [20, 0, 0], { slow: true }), feed('Potash', [0, 0, 50])];
  const steps = (how: Wanted, shares: readonly (readonly [Bag, number])[], f = facts(OLD)): string[] => doses(how, shares, f).map((d) => d.planned.step);
  const both = { N: 100, P2O5: 0, K2O: 50 };
  test('cut, late, half: of quick nitrogen alone', () => {
    expect(steps(wanted(1, { wants: both, mostQuick: 80 }), [[quick, 400], [potash, 100]])).toEqual(['dose-cut', 'dose']);
    expect(steps(wanted(1, { wants: both, mostQuick: 100 }), [[quick, 500]])).toEqual(['dose']);
    expect(steps(wanted(1, { wants: both, mostQuick: 100 / (1 + 5e-10) }), [[quick, 500]])).toEqual(['dose']);
    expect(steps(wanted(1, { wants: both, mostQuick: 80 }), [[quick, 400 * (1 - 5e-7)]])).toEqual(['dose-cut']);
    expect(steps(wanted(1, { wants: both, mostQuick: 80 }), [[quick, 300], [slow, 200]])).toEqual(['dose', 'dose']);
    expect(steps(wanted(1, { wants: both, missed: true }), [[quick, 250], [slow, 250], [potash, 100]])).toEqual(['dose-late', 'dose', 'dose']);
    expect(steps(wanted(1, { wants: both, half: true }), [[quick, 250], [slow, 250], [potash, 100]])).toEqual(['dose-half', 'dose', 'dose']);
    expect(steps(wanted(2, { half: true }), [[slow, 250]], facts('fig, planted 2016, tub 60 L'))).toEqual(['dose-half']);
  });
  test('why: the half is our judgement, else the grade', () => {
    expect(doses(wanted(1, { half: true }), [[quick, 250]])[0]!.planned.cite).toMatchObject({ source: 'medlar', at: 'late-half' });
    expect(doses(wanted(1, { half: true }), [[slow, 250]])[0]!.planned.cite).toEqual({ source: 'definition', at: 'grade 20-0-0', mark: 'derived' });
    expect(doses(wanted(1, { half: true }), [[slow, 250]], facts('fig, planted 2016, tub 60 L'))[0]!.planned.cite.at).toBe('late-half');
    expect(doses(wanted(1), [[quick, 250]])[0]!.planned).toMatchObject({ unit: 'g', of: 'product', cite: { at: 'grade 20-0-0' } });
  });
  test('which nutrient it serves: the first that is wanted; fed in that order', () => {
    const [all, none] = [feed('All', [10, 10, 10]), feed('P', [0, 20, 0])];
    const serves = (wants: Wanted['wants'], ...bags: Bag[]): string[] => doses(wanted(1, { wants }), bags.map((b) => [b, 100])).map((d) => `${d.portion.bag.label} ${d.portion.serves}`);
    expect(serves(both, potash, all)).toEqual(['All N', 'Potash K2O']);
    expect(serves({ N: 0, P2O5: 5, K2O: 5 }, potash, all)).toEqual(['All P2O5', 'Potash K2O']);
    expect(serves({ N: 1e-10, P2O5: 0, K2O: 5 }, all)).toEqual(['All K2O']);
    expect(serves({ N: 5, P2O5: 0, K2O: 0 }, none)).toEqual(['P N']);
  });
  test('from the need and the ring; no ring in a tub or a bed', () => {
    const [dose] = doses(wanted(1, { wants: both }), [[potash, 100]]);
    expect(dose!.planned.from).toEqual([figures.K2O, dose!.ring!.area]);
    expect(dose).toMatchObject({ count: 1, window: window(3) });
    expect(doses(wanted(1), [[quick, 100]], facts(`7 ${OLD}`))[0]!.count).toBe(7);
    for (const f of [facts('fig, planted 2016, tub 60 L'), facts(OLD, [], { bed: null })]) {
      const [kept] = doses(wanted(1), [[slow, 100]], f);
      expect([kept!.ring, kept!.planned.from]).toEqual([null, [figures.N]]);
    }
    // In a tub nothing burns a ring: one dose, and no other ceiling than the rule's.
    expect(doses(wanted(3), [[quick, 2000]], facts('fig, planted 2016, tub 60 L'), need(1, 60)).map((d) => [d.planned.value, Math.round(d.most)])).toEqual([[2000, 300]]);
  });
});

describe('rounded for the scale, 10 g a step', () => {
  const [a, b] = [feed('A', [20, 0, 0], { density: 2 }), feed('B', [20, 0, 0])];
  const dose = (bag: Bag, g: number, serves: 'N' | 'K2O' = 'N', more: Partial<PlannedDose> = {}): PlannedDose => ({ portion: { bag, g, serves }, planned: told(g, 'g', 'product', 'test'), most: Infinity, count: 1, window: window(3), ring: null, ...more });
  const g = (list: readonly PlannedDose[], stock = new Map<Bag, number>()): (number | null)[] => roundDoses(list, 'metric', stock).map((d) => d && d.g);
  test('nitrogen of one bag together, so that its sum stays true; what serves another nutrient each by itself', () => {
    expect(g([dose(a, 14), dose(a, 14), dose(a, 14)])).toEqual([20, 10, 10]);
    expect(g([dose(a, 14, 'K2O'), dose(a, 14, 'K2O'), dose(a, 14, 'K2O')])).toEqual([10, 10, 10]);
    expect(g([dose(a, 14), dose(a, 14)])).toEqual([20, 10]);
    expect(g([dose(a, 14), dose(b, 14)])).toEqual([10, 10]);
    expect(g([dose(a, 14), dose(a, 14, 'K2O'), dose(a, 14)])).toEqual([20, 10, 10]);
    // By their plants: two of 14.9 g for ten plants come to 298 g: 200 rounded, 300 with one a step up.
    expect(g([dose(a, 14.9, 'N', { count: 10 }), dose(a, 14.9, 'N', { count: 10 })])).toEqual([20, 10]);
    expect(g([dose(a, 14, 'N', { most: 19 }), dose(a, 14), dose(a, 14)])).toEqual([10, 20, 10]);
    expect(g([dose(a, 18, 'K2O', { most: 19 })])).toEqual([10]);
  });
  test('no more than there is of a bag, of all that it serves', () => {
    expect(g([dose(a, 28), dose(b, 28), dose(a, 18, 'K2O')], new Map([[a, 45]]))).toEqual([20, 30, 20]);
    expect(g([dose(a, 28, 'N', { count: 2 }), dose(b, 28)], new Map([[a, 50], [b, 30]]))).toEqual([20, 30]);
  });
  test('what a dose holds; none where nothing is left', () => {
    const ring = { from: 1 } as unknown as PlannedDose['ring'];
    expect(roundDoses([dose(a, 28, 'K2O', { ring }), dose(b, 0.05, 'K2O')], 'metric', new Map())).toEqual([{ bag: a, serves: 'K2O', g: 30, planned: told(28, 'g', 'product', 'test'), mL: 15, window: window(3), ring }, null]);
    expect(roundDoses([], 'metric', new Map())).toEqual([]);
  });
});
