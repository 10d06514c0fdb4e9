// Aims in their order, what keeps a row, and both solvers on programs small enough to solve by hand.
import { beforeAll, describe, expect, test } from 'vitest';
import { highsSolver } from '../../src/bags/by-highs.ts';
import { byYalps } from '../../src/bags/by-yalps.ts';
import type { Aim, Program, Row, Solved, Solver, Sum } from '../../src/bags/program.ts';
import { inOrder, keeps, roundedUp, valueOf } from '../../src/bags/program.ts';
import { solve } from '../../src/bags/solve.ts';

const sum = (...of: [number, number][]): Sum => new Map(of);
const program = (columns: number, rows: readonly Row[], whole: readonly number[] = []): Program => ({ columns, rows, whole: new Set(whole) });

test('what is whole is rounded up, but not for what the arithmetic adds; a sum is of its own columns', () => {
  expect(roundedUp(program(4, [], [0, 1, 3]), [1.2, 1 + 5e-8, 1.2, 2])).toEqual([2, 1, 1.2, 2]);
  expect(valueOf(sum([0, 2], [2, -3]), [5, 7, 1])).toBe(7);
});

describe('what keeps the rows', () => {
  // a + 2b from 3 to 5, b whole.
  const p = program(2, [{ of: sum([0, 1], [1, 2]), least: 3, most: 5 }], [1]);
  test.each<[number[], boolean]>([
    [[1, 1], true], [[1, 2], true], [[3, 0], true], [[1.1, 2], false], [[0.9, 1], false], [[1.8, 1.2], false], [[2.6, 1 + 5e-7], true], [[1], false], [[1, 1, 0], false], [[-0.1, 2], false], [[-5e-7, 2], true], [[5, -1], false],
    // A millionth of the largest part of the sum, which is 2.
    [[1 - 1.5e-6, 1], true], [[1 - 3e-6, 1], false], [[1 + 3e-6, 2], true], [[1 + 5e-6, 2], false],
  ])('%j: %s', (x, wanted) => { expect(keeps(p, x)).toBe(wanted); });
  test('a row without one end; slack by the size of what is summed, whatever its sign, and never less than of one', () => {
    expect([[0], [4]].map((x) => keeps(program(1, [{ of: sum([0, 1]), least: 3 }]), x))).toEqual([false, true]);
    expect([[0], [4]].map((x) => keeps(program(1, [{ of: sum([0, 1]), most: 3 }]), x))).toEqual([true, false]);
    expect(keeps(program(1, [{ of: sum([0, 1]) }]), [9])).toBe(true);
    expect(keeps(program(2, [{ of: sum([0, 1], [1, -1]), most: 0 }]), [1e6, 1e6 - 0.5])).toBe(true);
    expect(keeps(program(1, [{ of: sum([0, -1000]), most: -1e6 - 0.5 }]), [1000])).toBe(true);
    expect(keeps(program(1, [{ of: sum([0, 1]), most: 0 }]), [9e-7])).toBe(true);
    expect(keeps(program(1, [{ of: sum([0, 1]), most: 3 }, { of: sum([0, 1]), least: 2 }]), [1])).toBe(false);
    expect(keeps(program(1, [{ of: sum([0, 1]), most: 3 }]), [3.05], 0.1)).toBe(true);
  });
});

describe('one aim after the other', () => {
  const [A, B, C] = [sum([0, 1]), sum([1, 1]), sum([0, 1], [1, 1])];
  const first: Row = { of: sum([0, 1], [1, 1]), least: 1 };
  /** Answers as they stand in the list, and what was asked. */
  const answering = (...answers: Solved[]): { solver: Solver; asked: { program: Program; least: Sum }[] } => {
    const asked: { program: Program; least: Sum }[] = [];
    return { asked, solver: (p, least) => { asked.push({ program: p, least }); return answers[asked.length - 1]!; } };
  };
  const base = program(2, [first], [1]);
  const run = (aims: Aim[], ...answers: Solved[]) => {
    const { solver, asked } = answering(...answers);
    return { found: inOrder(base, aims, solver), rows: asked.map((a) => a.program.rows), whole: asked.map((a) => [...a.program.whole]), least: asked.map((a) => a.least) };
  };
  test('a later aim keeps the value of the one before', () => {
    const { found, rows, whole, least } = run([{ of: A, within: 0.5 }, { of: B, within: 0 }, { of: C, within: 0 }], { status: 'best', x: [2, 4] }, { status: 'best', x: [2.5, 3] }, { status: 'best', x: [2.5, 3] });
    expect(found).toEqual({ status: 'best', x: [2.5, 3] });
    expect(least).toEqual([A, B, C]);
    expect(rows).toEqual([[first], [first, { of: A, most: 2.5 }], [first, { of: A, most: 2.5 }, { of: B, most: 3 }]]);
    expect(whole).toEqual([[1], [1], [1]]);
  });
  test('an aim of parts asks for no whole numbers; they are rounded up', () => {
    const { found, rows, whole } = run([{ of: B, within: 0, parts: true }, { of: A, within: 0 }], { status: 'best', x: [0.3, 1.4] }, { status: 'best', x: [0, 2] });
    expect(whole).toEqual([[], [1]]);
    expect(rows[1]).toEqual([first, { of: B, most: 2 }]);
    expect(found).toEqual({ status: 'best', x: [0, 2] });
  });
  test('nothing for the first aim: none, or given up; without an aim none', () => {
    expect(run([{ of: A, within: 0 }, { of: B, within: 0 }], { status: 'none' }).found).toEqual({ status: 'none' });
    expect(run([{ of: A, within: 0 }, { of: B, within: 0 }], { status: 'gave-up' }).found).toEqual({ status: 'gave-up' });
    expect(run([]).found).toEqual({ status: 'none' });
  });
  test('given up with something in hand: that is used, and is not sure', () => {
    expect(run([{ of: A, within: 0 }], { status: 'gave-up', x: [3, 3] }).found).toEqual({ status: 'gave-up', x: [3, 3] });
    expect(run([{ of: A, within: 0 }, { of: B, within: 0 }], { status: 'gave-up', x: [3, 3] }, { status: 'best', x: [3, 1] }).found).toEqual({ status: 'gave-up', x: [3, 1] });
    expect(run([{ of: A, within: 0, minor: true }], { status: 'gave-up', x: [3, 3] }).found).toEqual({ status: 'best', x: [3, 3] });
  });
  test.each(['none', 'gave-up'] as const)('a later aim that ends with %s: what served before serves still; of a minor one nothing is held', (status) => {
    const later = run([{ of: A, within: 0 }, { of: B, within: 0 }, { of: C, within: 0 }], { status: 'best', x: [2, 4] }, { status }, { status: 'best', x: [2, 4] });
    expect(later.found).toEqual({ status: 'gave-up', x: [2, 4] });
    expect(later.rows[2]).toEqual([first, { of: A, most: 2 }, { of: B, most: 4 }]);
    const minor = run([{ of: A, within: 0 }, { of: B, within: 0, minor: true }, { of: C, within: 0 }], { status: 'best', x: [2, 4] }, { status }, { status: 'best', x: [2, 5] });
    expect(minor.found).toEqual({ status: 'best', x: [2, 5] });
    expect(minor.rows[2]).toEqual([first, { of: A, most: 2 }]);
  });
});

describe.each(['yalps', 'highs'])('%s', (name) => {
  let strong: Solver;
  beforeAll(async () => { strong = await highsSolver(); });
  const solved = (p: Program, least: Sum): Solved => (name === 'yalps' ? byYalps : strong)(p, least);
  test.each<[string, Program, Sum, number[]]>([
    // Of b a unit costs less; where that is short, a serves.
    ['the cheaper of two', program(2, [{ of: sum([0, 1], [1, 1]), least: 4 }, { of: sum([0, 1]), most: 3 }]), sum([0, 3], [1, 2]), [0, 4]],
    ['as far as it goes', program(2, [{ of: sum([0, 1], [1, 1]), least: 4 }, { of: sum([1, 1]), most: 1 }]), sum([0, 3], [1, 2]), [3, 1]],
    ['just so much', program(2, [{ of: sum([0, 1], [1, 1]), least: 4, most: 4 }, { of: sum([0, 1], [1, -1]), least: 2, most: 2 }]), sum([0, 1]), [3, 1]],
    ['between two', program(1, [{ of: sum([0, 2]), least: 3, most: 5 }]), sum([0, -1]), [2.5]],
    ['a whole number', program(1, [{ of: sum([0, 2]), least: 3 }], [0]), sum([0, 5]), [2]],
    // Three parts at 5 and the whole of 4 at 18: for nine units two wholes at 36 and one part.
    ['whole ones and parts', program(2, [{ of: sum([0, 4], [1, 1]), least: 9 }], [0]), sum([0, 18], [1, 5]), [2, 1]],
    ['minus in a row', program(2, [{ of: sum([0, 1], [1, -2.5]), most: 0 }, { of: sum([0, 1]), least: 4 }], [1]), sum([0, 0.001], [1, 1]), [4, 2]],
    ['a column in no row', program(3, [{ of: sum([1, 1]), least: 2 }]), sum([1, 1]), [0, 2, 0]],
    ['no sum to be least', program(1, [{ of: sum([0, 1]), least: 2, most: 2 }]), sum(), [2]],
    ['a row of nothing', program(2, [{ of: sum(), most: 1 }, { of: sum([1, 1]), least: 2, most: 2 }, { of: sum([0, 1]), most: 0 }]), sum([1, 1]), [0, 2]],
  ])('%s', (_, p, least, x) => {
    const found = solved(p, least);
    if (found.status !== 'best') throw new Error(found.status);
    found.x.forEach((v, i) => expect(v).toBeCloseTo(x[i]!, 6));
    expect(found.x).toHaveLength(x.length);
    for (const i of p.whole) expect(Number.isInteger(found.x[i])).toBe(true);
  });
  test('none where the rows contradict each other, also in whole numbers alone; without an end it gives up', () => {
    expect(solved(program(1, [{ of: sum([0, 1]), least: 2 }, { of: sum([0, 1]), most: 1 }]), sum([0, 1]))).toEqual({ status: 'none' });
    expect(solved(program(1, [{ of: sum([0, 2]), least: 3, most: 3 }], [0]), sum([0, 1]))).toEqual({ status: 'none' });
    expect(solved(program(1, [{ of: sum([0, 1]), least: 2 }]), sum([0, -1]))).toEqual({ status: 'gave-up' });
  });
});

test('the small solver leaves large tables of whole numbers alone, by their cells, and those of parts not', () => {
  const rows = Array.from({ length: 100 }, (): Row => ({ of: sum([0, 1]), least: 1 }));
  // 50 columns and 100 rows beside 100 rows are 15,000 cells.
  expect(byYalps(program(50, rows, [0]), sum([0, 1])).status).toBe('best');
  expect(byYalps(program(51, rows, [0]), sum([0, 1]))).toEqual({ status: 'gave-up' });
  expect(byYalps(program(51, rows), sum([0, 1])).status).toBe('best');
});

test('it counts its branches, and gives up what takes too many', () => {
  // Twos never make 41. Of two columns that is soon proved, of three only by far more branches than are allowed.
  const odd = (columns: number): Program => program(columns, [{ of: sum(...Array.from({ length: columns }, (_, c): [number, number] => [c, 2])), least: 41, most: 41 }], Array.from({ length: columns }, (_, c) => c));
  const least = (columns: number): Sum => sum(...Array.from({ length: columns }, (_, c): [number, number] => [c, 1 + c / 7]));
  expect([2, 3].map((columns) => byYalps(odd(columns), least(columns)).status)).toEqual(['none', 'gave-up']);
});

describe('equations', () => {
  test.each<[string, number[][], number[], number[] | null]>([
    ['one', [[4]], [8], [2]], ['two', [[2, 1], [1, 3]], [5, 10], [1, 3]], ['minus', [[-2, 1], [1, 1]], [1, 4], [1, 3]], ['none', [], [], null], ['a row of noughts', [[0, 0], [1, 1]], [0, 1], null], ['a column of noughts', [[1, 0], [2, 0]], [1, 2], null],
    ['no number', [[Number.NaN]], [1], null], ['endless', [[Infinity]], [1], null], ['one row twice', [[1, 2], [3, 6]], [1, 3], null], ['rows nearly the same', [[1, 1], [1, 1 + 1e-13]], [1, 2], null], ['rows that differ a little', [[1, 1], [1, 1.001]], [2, 2.001], [1, 1]],
    // Rows and columns of very different size are no trouble: a = 1, b = 1.
    ['sizes', [[1e-9, 2e3], [3e-9, 1e3]], [2000.000000001, 1000.000000003], [1, 1]], ['an endless answer', [[1e-300]], [1e300], null],
  ])('%s', (_, a, b, x) => {
    const found = solve(a, b);
    if (x === null) expect(found).toBeNull();
    else found!.forEach((v, i) => expect(v).toBeCloseTo(x[i]!, 2));
  });
});
