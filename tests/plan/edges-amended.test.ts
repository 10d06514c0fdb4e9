// Lime or sulphur of each plant: whether, out of which bag, when and how much, on drafts made by hand; and what of it is to buy. The lab's own rate is the dose, on a crown of ten square metres; bud break 12 April, first frost 12 October 2026.
import { describe, expect, test } from 'vitest';
import type { Bag } from '../../src/orchard/bag.ts';
import { loadOrchard } from '../../src/orchard/load.ts';
import { allAmended, amendmentPurchases } from '../../src/plan-lime.ts';
import type { Amended, Draft } from '../../src/planned.ts';
import { phFigures } from '../../src/planned.ts';
import { plantingWindow, seasonOf } from '../../src/when/season.ts';
import { facts } from '../need/parts.ts';
import { fig, limeOf, orchardOf, phOf, plantOf, zoneOf } from './parts.ts';

const home = loadOrchard('where: Ohio, US\nbud-break: 12 April\nfirst-frost: 12 October\ntrees:\n  A: apple, planted 2016\n', 'orchard.yaml').orchard!;
const season = seasonOf(home, '2026-03-14');
const sulphur = limeOf('Sulphur', { amends: { kind: 'sulphur' } });
type Made = { line?: string; ph?: object | null; stops?: readonly string[]; amended?: readonly string[]; taken?: string; k?: number; count?: number; bed?: unknown; zone?: string };
const APPLE = 'apple, planted 2010';
const SOUR = { now: fig(5.2, 'pH', 'soil'), lime: fig(100, 'g/m2', 'lime'), depthM: 0.15 };

function draft({ line = APPLE, ph = SOUR, stops = [], amended = [], taken, k = 0, count = 1, zone = 'bank', ...more }: Made = {}): Draft {
  const own = facts(line, [], ('bed' in more ? { bed: more.bed } : {}) as object);
  return {
    facts: { ...own, tree: { ...own.tree, count } }, last: { day: '2026-07-20' }, history: { amended },
    need: plantOf('A', { need: { stops: stops.map((id) => ({ id })), K2O: fig(k, 'g', 'K2O') } }).need,
    zone: zoneOf(zone, ph && { organic: null, carbonate: null, acidity: null, aluminium: null, ...ph }, { sample: { taken } }),
  } as unknown as Draft;
}
const of = (made: Made, shed: readonly Bag[] = [], store: readonly Bag[] = []): Amended | null => allAmended([draft(made)], season, orchardOf({ shed, store }))[0]!;
const why = (made: Made): string | undefined => of(made)?.plan.reason;

describe('whether', () => {
  test('nothing of a soil without a pH, of a plant without ground or without a range', () => {
    expect([of({ ph: null }), allAmended([{ ...draft(), zone: null }], season, orchardOf())[0], of({ line: 'banana, planted 2016' })]).toEqual([null, null, null]);
  });
  test('salts and sodium stand against it, other stops do not', () => {
    expect([why({}), why({ stops: ['salts'] }), why({ stops: ['drought', 'sodium'] }), why({ stops: ['drought'] })]).toEqual(['lab', 'stopped-lime', 'stopped-lime', 'lab']);
  });
  // A year tells what lime did; without a day of the sample three years are waited, 36 months of 30.44 days: 1,096 days.
  test('nothing again before a sample a year later', () => {
    expect([why({ amended: ['2024-10-01'], taken: '2025-11-01' }), why({ amended: ['2025-10-01'], taken: '2025-11-01' }), why({ amended: ['2024-10-01', '2025-10-01'], taken: '2025-11-01' }), why({ taken: '2020-01-01' })]).toEqual(['lab', 'retest', 'retest', 'lab']);
    expect([why({ amended: ['2023-03-13'] }), why({ amended: ['2023-03-15'] }), why({ amended: ['2015-01-01'] })]).toEqual(['lab', 'retest', 'lab']);
  });
  test('when some last went on', () => { expect([of({ amended: ['2024-10-01', '2023-01-01'], taken: '2026-01-01' })!.last, of({})!.last]).toEqual(['2024-10-01', null]); });
});

describe('how much, when and of what', () => {
  test('the dose on the ring of each plant', () => {
    const found = of({})!;
    expect([found.zone, found.bag, found.g > 0, 'bed' in found]).toEqual(['bank', null, true, false]);
    // Downward, to ten grams.
    const exact = found.plan.dose!.value * found.ring.area.value;
    expect([found.g <= exact, found.g > exact - 10, found.g % 10]).toEqual([true, true, 0]);
  });
  test('twice as much of a lime half as strong', () => {
    const weak = limeOf('Weak', { amends: { strength: 0.5 } });
    expect(of({}, [weak])!.plan.dose!.value).toBeCloseTo(2 * of({})!.plan.dose!.value, 6);
  });
  test('a lime with a limit of its own stays under it: 20 g/m2', () => {
    const limited = limeOf('Ash', { material: { most: { value: 20, unit: 'g/m2', cite: { source: 'grower', at: 'test', mark: 'read' } } } });
    expect([of({}, [limited])!.plan.dose!.value, of({}, [limeOf('Plain')])!.plan.dose!.value > 20]).toEqual([20, true]);
  });
  test('ash where potash is wanted too', () => {
    const ash = limeOf('Wood ash', { material: { potash: { percent: 6 } } });
    expect([of({ k: 50 }, [ash])!.bag?.label, of({ k: 0 }, [ash])!.bag]).toEqual(['Wood ash', null]);
  });
  test('the one with magnesium where the soil is short of it', () => {
    const bags = [limeOf('Dolomite', { amends: { dolomitic: true } }), limeOf('Limestone')];
    expect([of({ ph: { ...SOUR, magnesium: 20 } }, bags)!.bag?.label, of({ ph: { ...SOUR, magnesium: 200 } }, bags)!.bag?.label]).toEqual(['Dolomite', 'Limestone']);
  });
  test('sulphur for what wants acid soil, of its own bag and in its own window', () => {
    const blue = { line: 'blueberry, planted 2010', ph: { now: fig(5.8, 'pH', 'soil'), texture: 'loam', depthM: 0.15 } };
    const found = of(blue, [limeOf('Limestone'), sulphur])!;
    expect([found.plan.verdict, found.bag?.label, found.g > 0, found.window!.from !== of({})!.window!.from]).toEqual(['sulphur', 'Sulphur', true, true]);
    expect(of(blue, [limeOf('Half', { amends: { kind: 'sulphur', strength: 0.5 } })])!.plan.dose!.value).toBeCloseTo(2 * found.plan.dose!.value, 6);
    expect(of(blue)!.bag).toBeNull();
  });
  test('left alone: no bag, no window, no weight', () => {
    const left = of({ ph: { now: fig(6.5, 'pH', 'soil') } }, [limeOf('Limestone'), sulphur])!;
    expect([left.plan.verdict, left.bag, left.window, left.g]).toEqual(['leave', null, null, 0]);
  });
  test('before planting it is dug into the bed, in the time before', () => {
    const tocome = { line: 'apple, planting October 2026' };
    const bed = fig(2, 'm2', 'crown');
    const dug = of({ ...tocome, bed })!;
    expect([dug.bed, dug.window]).toEqual([bed, plantingWindow(season, { year: 2026, month: 10 })]);
    expect([dug.g <= dug.plan.dose!.value * 2, dug.g > dug.plan.dose!.value * 2 - 10]).toEqual([true, true]);
    const unknown = of({ ...tocome, bed: null })!;
    expect([unknown.bed, unknown.window, unknown.g]).toEqual([null, null, 0]);
    expect('bed' in of({ ...tocome, bed, ph: { now: fig(6.5, 'pH', 'soil') } })!).toBe(false);
  });
  test('sulphur in a bed wants its months before', () => {
    const sour = { now: fig(5.8, 'pH', 'soil'), texture: 'loam', depthM: 0.15 };
    const bed = fig(2, 'm2', 'crown');
    const [soon, later] = [of({ line: 'blueberry, planting April 2026', bed, ph: sour })!, of({ line: 'blueberry, planting April 2027', bed, ph: sour })!];
    expect([soon.window, soon.g, later.window !== null, later.g > 0, later.window!.until < '2027-04-01']).toEqual([null, 0, true, true, true]);
  });
});

describe('out of the shed while that holds a plant\'s whole dose', () => {
  const dose = of({})!.g;
  const shed = (left: number): Bag => ({ ...limeOf('Limestone'), left });
  const bags = (left: number, ...counts: number[]): (string | null)[] => allAmended(counts.map((count) => draft({ count })), season, orchardOf({ shed: [shed(left)], store: [limeOf('Bought')] })).map((a) => a!.bag?.label ?? null);
  test('in walking order; what it does not hold comes from another', () => {
    expect([bags(2 * dose, 1, 1), bags(2 * dose - 1, 1, 1), bags(dose, 2, 1), bags(3 * dose, 2, 1), bags(3 * dose - 1, 1, 2)]).toEqual([['Limestone', 'Limestone'], ['Limestone', 'Bought'], ['Bought', 'Limestone'], ['Limestone', 'Limestone'], ['Limestone', 'Bought']]);
  });
  test('without end where nobody told how much is left; none where none is listed', () => {
    expect(allAmended([draft(), draft()], season, orchardOf({ shed: [limeOf('Limestone')] })).map((a) => a!.bag?.label)).toEqual(['Limestone', 'Limestone']);
    expect(allAmended([draft(), draft()], season, orchardOf({ shed: [shed(dose)] })).map((a) => a!.bag?.label ?? null)).toEqual(['Limestone', null]);
  });
});

describe('what is to buy', () => {
  const plant = (verdict: string, g: number, bag: Bag | null, count = 1) => plantOf('A', { tree: { count, place: { line: 7 } }, ph: phOf('bank', { g, bag, plan: { verdict } }) });
  const buy = (...plans: ReturnType<typeof plantOf>[]) => amendmentPurchases(plans, orchardOf()).map((b) => [b.bag.label, b.needG]);
  test('nothing where nothing goes on', () => { expect(buy(plantOf('B'), plant('leave', 0, null))).toEqual([]); });
  test('each plant of a row, one line for a bag', () => { expect(buy(plant('lime', 100, limeOf('X'), 3)).map(([label, g]) => [label, g])).toEqual([['X', 300]]); });
  test('what no bag serves by itself, lime apart from sulphur', () => {
    const bag = limeOf('X');
    const list = amendmentPurchases([plant('lime', 100, bag), plant('lime', 50, null, 2), plant('sulphur', 7, null), plant('lime', 20, null), plant('lime', 1, bag)], orchardOf());
    expect(list.map((b) => [b.bag.amends!.kind, b.needG, b.bag.unlisted ?? false])).toEqual([['lime', 101, false], ['lime', 120, true], ['sulphur', 7, true]]);
    expect(list[1]!.bag).toMatchObject({ g: null, price: null, left: null, place: { line: 7 }, amends: { strength: 1, dolomitic: false, burns: false } });
    expect(list.map((b) => b.bag.label)[1]).not.toBe(list.map((b) => b.bag.label)[2]);
  });
});

test('the figures that stand behind it: the dose, what free lime would swallow, else the goal; then every rate', () => {
  const [dose, goal, rate, swallowed] = [fig(50, 'g/m2', 'lime'), fig(6.5, 'pH', 'soil'), fig(60, 'g/m2', 'lime'), fig(900, 'lb/acre', 'sulphur')];
  const figures = (plan: object): unknown => phFigures(plantOf('A', { ph: phOf('bank', { plan: { goal, rates: [rate], ...plan } }) }));
  expect([figures({ dose }), figures({ swallowed: { sulphur: swallowed } }), figures({}), figures({ dose, swallowed: { sulphur: swallowed } }), phFigures(plantOf('A'))]).toEqual([[dose, rate], [swallowed, rate], [goal, rate], [dose, swallowed, rate], []]);
});
