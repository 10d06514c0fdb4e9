// What the diary knows of one tree. Grams by hand: amount times the share printed on the bag; what manures and meals set free, by the years printed in tables/release.ts (Hartz, Cornell, California).
// Seasons from one first frost to the next, 365 days each.
import { describe, expect, test } from 'vitest';
import type { Bag } from '../../src/orchard/bag.ts';
import { holdsGrade, parseBag } from '../../src/orchard/bag.ts';
import type { Entry } from '../../src/orchard/diary.ts';
import type { History } from '../../src/orchard/history.ts';
import { givenBetween, historyOf, withHistory } from '../../src/orchard/history.ts';
import type { Tree } from '../../src/orchard/tree.ts';

const PLACE = { file: 'orchard.yaml', line: 1, column: 1, length: 1, source: '' };
const TREE: Tree = { name: 'Gate', count: 1, word: 'apple', crop: 'apple', leaf: [], flags: [], place: PLACE };
const entry = (date: string, what: Entry['what'], more: Partial<Entry> = {}): Entry => ({ date, trees: ['Gate'], what, bag: null, g: null, m: null, amount: null, note: '', line: 2, ...more });
const bag = (label: string): Bag => parseBag(label, 'US', false, PLACE).bag!;
// A frost on 12 October 2026: this season began on 12 October 2025, the one before on 12 October 2024, and the one before that on 13 October 2023 (2024 had 366 days).
const BOUNDS = { year: 2026, budBreak: '2026-04-12', firstFrost: '2026-10-12' };
const of = (entries: readonly Entry[], { tree = TREE, zone, bags = [] }: { tree?: Tree; zone?: string; bags?: readonly Bag[] } = {}): History => historyOf(tree, zone, entries, BOUNDS, bags, 'US');
const fed = (date: string, label: string | null, g: number | null, more: Partial<Entry> = {}): Entry => entry(date, 'fed', { bag: label, g, ...more });

describe('whose a line is', () => {
  test('no diary tells nothing, of last season neither', () => expect(of([])).toEqual({ thisSeason: [], lastSeason: null, carried: [], amended: [], shoots: null, fruit: null }));
  test.each([['gate', undefined, true], ['GATE', undefined, true], ['Top strip', 'top strip', true], ['all', undefined, true], ['All trees', undefined, true], ['Gate apple', undefined, false], ['top strip', undefined, false], ['bed', 'top strip', false]] as const)('%s in %s: %s', (name, zone, mine) => {
    expect(of([fed('2026-04-20', '10-10-10', 100, { trees: ['other', name] })], zone === undefined ? {} : { zone }).thisSeason).toHaveLength(mine ? 1 : 0);
  });
});

describe('seasons', () => {
  test.each<[string, 'this' | 'last' | 'neither']>([['2026-10-13', 'neither'], ['2026-10-12', 'this'], ['2025-10-13', 'this'], ['2025-10-12', 'last'], ['2024-10-13', 'last'], ['2024-10-12', 'neither']])('fed on %s: %s', (date, which) => {
    const { thisSeason, lastSeason } = of([fed(date, '10-10-10', 100)]);
    expect(thisSeason).toHaveLength(which === 'this' ? 1 : 0);
    expect(lastSeason).toEqual(which === 'last' ? [{ date, bag: '10-10-10', g: 100, brought: { N: 10, P2O5: 10, K2O: 10 } }] : null);
  });
  test('of last season anything that anybody wrote tells that this tree got nothing', () => {
    expect(of([entry('2025-05-01', 'note', { trees: [], note: 'frost' })]).lastSeason).toEqual([]);
    expect(of([entry('2026-05-01', 'note', { trees: [], note: 'frost' })]).lastSeason).toBeNull();
  });
});

describe('what a feed brought', () => {
  const first = (entries: readonly Entry[], more: Parameters<typeof of>[1] = {}) => of(entries, more).thisSeason[0]!;
  test('without a weight or without a bag nobody knows', () => {
    expect(first([fed('2026-04-20', '10-10-10', null)])).toEqual({ date: '2026-04-20', bag: '10-10-10', g: null, brought: null });
    expect(first([fed('2026-04-20', null, 100)])).toEqual({ date: '2026-04-20', bag: null, g: 100, brought: null });
    expect(first([fed('2026-04-20', 'something nice', 100)]).brought).toBeNull();
  });
  test('by the listed bag of that name, whatever its name says', () => {
    expect(first([fed('2026-04-20', 'orchard MIX', 200)], { bags: [bag('Other, 5-0-0'), bag('Orchard mix, 12-4-8')] }).brought).toEqual({ N: 24, P2O5: 8, K2O: 16 });
  });
  test('by the numbers of a listed bag, and by its name with what holds it', () => {
    const meal = { ...bag('Fish 2-3-1'), label: 'Fish', printed: '2-3-1', grade: { N: 0.02, P2O5: 0.04, K2O: 0.01 } };
    expect(first([fed('2026-04-20', 'some 2-3-1 feed', 100)], { bags: [meal] }).brought!.P2O5).toBeCloseTo(4, 9);
    expect(first([fed('2026-04-20', 'fish in water', 100)], { bags: [meal] }).brought!.P2O5).toBeCloseTo(4, 9);
    expect(first([fed('2026-04-20', 'fishy water', 100)], { bags: [meal] }).brought).toBeNull();
  });
  test('15-10-10 is not the 5-10-10 that is listed, nor 5-10-10 a part of 5-10-100', () => {
    const bags = [bag('Bank feed, 5-10-10')];
    expect(first([fed('2026-04-20', '15-10-10', 100)], { bags }).brought).toEqual({ N: 15, P2O5: 10, K2O: 10 });
    expect(first([fed('2026-04-20', '5-10-15', 100)], { bags: [bag('Bank feed, 5-10-1')] }).brought).toEqual({ N: 5, P2O5: 10, K2O: 15 });
  });
  test.each([['15-10-10', '5-10-10', false], ['5-10-10 granules', '5-10-10', true], ['mix, 5-10-10.', '5-10-10', true], ['5-10-10-2S', '5-10-10', true], ['5-10-100', '5-10-10', false], ['5-10-10.5', '5-10-10', false], ['2.5-10-10', '5-10-10', false], ['anything 5', '', false], ['', '', false]])('%s names %s: %s', (text, printed, names) => expect(holdsGrade(text, printed)).toBe(names));
  test('of blood meal 87 of a hundred in its first year, and the rest is told', () => {
    const { brought, holds } = first([fed('2026-04-20', 'Blood meal 12-2-1', 100)]);
    expect(brought).toEqual({ N: expect.closeTo(10.44, 9), P2O5: 2, K2O: 1 });
    expect(holds).toEqual({ N: 12, P2O5: 2, K2O: 1 });
  });
  test('where all counts, nothing else is told', () => {
    expect(first([fed('2026-04-20', '10-10-10', 100)])).not.toHaveProperty('holds');
    expect(first([fed('2026-04-20', 'Bone meal 0-15-0', 100)])).not.toHaveProperty('holds');
  });
  test('compost of a tree whose yearly compost is told is taken off its need already', () => {
    const compost = [fed('2026-04-20', 'Compost 2-1-1', 1000)];
    expect(first(compost).brought!.N).toBeCloseTo(2, 9);
    expect(first(compost, { tree: { ...TREE, composted: 20 } }).brought).toEqual({ N: 0, P2O5: 10, K2O: 10 });
    expect(first([fed('2026-04-20', 'Blood meal 10-0-0', 100)], { tree: { ...TREE, composted: 20 } }).brought!.N).toBeCloseTo(8.7, 9);
  });
});

describe('what earlier feeds still set free', () => {
  test('sheep manure: 12 of a hundred in its second year, 5 in its third, none before or after', () => {
    const { carried } = of(['2026-04-20', '2025-04-20', '2024-04-20', '2023-04-20'].map((date) => fed(date, 'Sheep manure 1-0-1', 2000)));
    expect(carried.map(({ date, bag: label, n, frees }) => ({ date, label, n, frees }))).toEqual([
      { date: '2025-04-20', label: 'Sheep manure', n: 20, frees: expect.closeTo(2.4, 9) }, { date: '2024-04-20', label: 'Sheep manure', n: 20, frees: expect.closeTo(1, 9) },
    ]);
    expect(carried[0]!.cite).toMatchObject({ source: 'cornell-css412', mark: 'read' });
  });
  test.each<[string, string | null, number | null]>([['a salt', '10-10-10', 500], ['blood meal in its third year', 'Blood meal 12-0-0', 500], ['a feed without nitrogen', 'Sheep manure 0-1-1', 500], ['none of it', 'Sheep manure 1-0-1', 0], ['nobody knows what', null, 500]])('%s: nothing', (what, label, g) => {
    expect(of([fed(what.endsWith('third year') ? '2024-04-20' : '2025-04-20', label, g)]).carried).toEqual([]);
  });
  test('where nobody weighed it, that is told and nothing counted', () => expect(of([fed('2025-04-20', 'Sheep manure 1-0-1', null)]).carried).toMatchObject([{ n: null, frees: 0 }]));
  test('compost that is told in the folder is not told twice', () => {
    expect(of([fed('2025-04-20', 'Compost 2-1-1', 1000)]).carried).toMatchObject([{ n: 20, frees: expect.closeTo(1, 9) }]);
    expect(of([fed('2025-04-20', 'Compost 2-1-1', 1000)], { tree: { ...TREE, composted: 20 } }).carried).toEqual([]);
  });
});

describe('lime and sulphur', () => {
  test('by what was done, or by the bag where they stand as a feed', () => {
    const entries = [entry('2025-11-01', 'limed'), entry('2024-11-01', 'sulphured'), fed('2026-03-01', 'Garden lime', 900), fed('2026-03-02', '10-10-10', 100), fed('2026-03-03', null, 100), entry('2026-03-04', 'note', { bag: 'Garden lime' })];
    const { amended, thisSeason } = of(entries);
    expect(amended).toEqual(['2025-11-01', '2024-11-01', '2026-03-01']);
    expect(thisSeason.map((f) => f.date)).toEqual(['2026-03-02', '2026-03-03']);
  });
  test('a listed feed whose name says lime is a feed', () => expect(of([fed('2026-03-01', 'Lime tree feed', 100)], { bags: [{ ...bag('8-8-8'), label: 'Lime tree feed' }] }).amended).toEqual([]));
});

describe('growth and crop', () => {
  test('the newest counts, wherever it stands', () => {
    const entries = [entry('2025-11-02', 'shoots', { m: 0.2 }), entry('2025-12-02', 'shoots', { m: 0.3 }), entry('2024-12-02', 'shoots', { m: 0.1 }), fed('2026-02-02', '10-10-10', 1, { m: 0.9 })];
    expect(of(entries).shoots).toEqual({ m: 0.3, year: 2025 });
    expect(of([...entries].reverse()).shoots).toEqual({ m: 0.3, year: 2025 });
  });
  test.each([['2026-04-11', 2025], ['2026-04-12', 2026], ['2026-01-05', 2025], ['2025-12-31', 2025]])('measured on %s they grew in %i', (date, year) => expect(of([entry(date, 'shoots', { m: 0.2 })]).shoots).toEqual({ m: 0.2, year }));
  test('none at all is a measure, nothing measured is none', () => {
    expect(of([entry('2025-11-02', 'shoots', { m: 0 })]).shoots).toEqual({ m: 0, year: 2025 });
    expect(of([entry('2025-11-02', 'shoots')]).shoots).toBeNull();
  });
  test.each<[Partial<Entry>, History['fruit']]>([
    [{ g: 9000, amount: '9 kg' }, { said: 'weight', g: 9000, year: 2025 }], [{ g: 0, amount: '0' }, { said: 'none', g: 0, year: 2025 }], [{ amount: 'None' }, { said: 'none', g: 0, year: 2025 }],
    [{ amount: 'light' }, { said: 'light', g: null, year: 2025 }], [{ amount: 'Heavy' }, { said: 'heavy', g: null, year: 2025 }], [{ amount: 'two baskets' }, null], [{}, null],
  ])('a crop of %j', (said, fruit) => expect(of([entry('2025-09-30', 'crop', said)]).fruit).toEqual(fruit));
});

describe('the diary beside the folder', () => {
  const history = (more: Partial<History>): History => ({ thisSeason: [], lastSeason: null, carried: [], amended: [], shoots: null, fruit: null, ...more });
  const shoots = (m: number, year?: number) => ({ m, ...(year === undefined ? {} : { year }) });
  test.each<[string, Tree['shoots'] | undefined, History['shoots'], number | undefined]>([
    ['only the diary', undefined, { m: 0.2, year: 2024 }, 0.2], ['a newer year', shoots(0.1, 2024), { m: 0.2, year: 2025 }, 0.2], ['the same year', shoots(0.1, 2025), { m: 0.2, year: 2025 }, 0.2],
    ['an older year', shoots(0.1, 2025), { m: 0.2, year: 2024 }, 0.1], ['without a year the folder means last season', shoots(0.1), { m: 0.2, year: 2025 }, 0.2], ['and not the one before', shoots(0.1), { m: 0.2, year: 2024 }, 0.1], ['no diary', shoots(0.1), null, 0.1],
  ])('shoots: %s', (_, folder, diary, m) => expect(withHistory({ ...TREE, ...(folder ? { shoots: folder } : {}) }, history({ shoots: diary }), 2026).shoots?.m).toBe(m));
  test('fruit alike', () => {
    const fruit = (g: number, year: number) => ({ said: 'weight' as const, g, year });
    expect(withHistory({ ...TREE, fruit: fruit(1, 2024) }, history({ fruit: fruit(2, 2025) }), 2026).fruit!.g).toBe(2);
    expect(withHistory({ ...TREE, fruit: fruit(1, 2025) }, history({ fruit: fruit(2, 2024) }), 2026).fruit!.g).toBe(1);
    expect(withHistory(TREE, history({ fruit: fruit(2, 2023) }), 2026).fruit!.g).toBe(2);
  });
  test('nothing new leaves the tree as it was', () => expect(withHistory(TREE, history({}), 2026)).toEqual(TREE));
  test('what is carried comes with it', () => {
    const carried = of([fed('2025-04-20', 'Sheep manure 1-0-1', 2000)]).carried;
    expect(withHistory(TREE, history({ carried }), 2026).carried).toBe(carried);
  });
});

describe('all that was given between two days', () => {
  const between = (entries: readonly Entry[], bags: readonly Bag[] = []) => givenBetween(TREE, undefined, entries, '2026-01-01', '2026-12-31', bags, 'US');
  test('sums of each, the first day left out, the last one in', () => {
    expect(between([fed('2026-01-01', '10-10-10', 1), fed('2026-01-02', '10-5-0', 100), fed('2026-12-31', '0-5-10', 100), fed('2027-01-01', '10-10-10', 1)])).toEqual({ N: 10, P2O5: 10, K2O: 10, lime: 0, sulphur: 0, unknown: 0 });
  });
  test('lime and sulphur as they were given, written as such or as a feed', () => {
    const given = between([entry('2026-02-01', 'limed', { g: 900 }), entry('2026-02-02', 'sulphured', { g: 50 }), fed('2026-02-03', 'Garden lime', 100), fed('2026-02-04', 'Sulphur 90 %', 10)]);
    expect(given).toMatchObject({ N: 0, lime: 1000, sulphur: 60, unknown: 0 });
  });
  test('what has no weight or no known bag is counted', () => {
    expect(between([fed('2026-02-01', null, 5), fed('2026-02-02', '10-10-10', null), fed('2026-02-03', 'something nice', 5), entry('2026-02-04', 'limed'), entry('2026-02-05', 'sulphured'), entry('2026-02-06', 'crop'), entry('2026-02-07', 'limed', { g: 5 })])).toEqual({ N: 0, P2O5: 0, K2O: 0, lime: 5, sulphur: 0, unknown: 5 });
  });
  test('by a listed bag', () => expect(between([fed('2026-02-01', 'mix', 100)], [bag('Mix, 20-0-0')]).N).toBe(20));
});
