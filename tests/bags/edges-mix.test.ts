// The sums behind a mix, each by hand: what is unmet, over or not wanted; the best that some grades can do; what comes nearest; the grade of a blend.
import { describe, expect, test } from 'vitest';
import { balance, batchOf, blend } from '../../src/bags/blend.ts';
import { bestBrought, compareFaults, exactly, faultsOf, surplusOf } from '../../src/bags/mix.ts';
import { solve } from '../../src/bags/solve.ts';
import { mostOut, overOf, shortOf, weigh } from '../../src/bags/weigh.ts';
import type { Bag } from '../../src/orchard/bag.ts';
import { MATERIALS } from '../../src/tables/materials.ts';
import { dollars, feed } from './parts.ts';

type Three = readonly [number, number, number];
const three = ([n, p, k]: Three): { N: number; P2O5: number; K2O: number } => ({ N: n, P2O5: p, K2O: k });
const percent = (...g: Three): { N: number; P2O5: number; K2O: number } => three([g[0] / 100, g[1] / 100, g[2] / 100]);
const round = (x: number): number => Math.round(x * 1e4) / 1e4;

describe('faults in their order: N unmet, P2O5 and K2O that are not wanted, those unmet, those over', () => {
  test.each<[Three, Three, number[]]>([
    [[5, 30, 0], [10, 20, 0], [5, 0, 0, 0, 0, 10, 0]], [[10, 3, 4], [10, 0, 0], [0, 3, 4, 0, 0, 3, 4]], [[10, 5, 6], [10, 20, 30], [0, 0, 0, 15, 24, 0, 0]], [[12, 20, 39], [10, 20, 30], [0, 0, 0, 0, 0, 0, 9]], [[0, 2, 0], [0, 1e-9, 0], [0, 2 - 1e-9, 0, 0, 0, 2 - 1e-9, 0]],
  ])('%j of %j', (brought, wants, wanted) => { expect(faultsOf(three(brought), three(wants))).toEqual(wanted); });
  test('surplus', () => { expect(surplusOf([1, 2, 3, 4, 5, 6, 7])).toEqual([2, 3, 6, 7]); });
  test('the first that differs decides, if by more than a thousandth of a gram or a millionth', () => {
    expect(compareFaults([0, 5, 1], [0, 3, 9])).toBe(2);
    expect(compareFaults([0, 3, 9], [0, 5, 1])).toBe(-2);
    expect(compareFaults([1, 2], [1.0009, 2])).toBe(0);
    expect(compareFaults([1, 2], [1.0011, 2])).toBeCloseTo(-0.0011, 9);
    expect([compareFaults([1e6], [1e6 + 0.9]), compareFaults([1e6], [1e6 + 1.1])].map(Math.sign)).toEqual([0, -1]);
    expect(compareFaults([1, 7], [1.0005, 6])).toBe(1);
  });
});

describe('the best that grades can do', () => {
  test.each<[string, Three[], Three, Three]>([
    ['one', [[20, 0, 0]], [100, 0, 0], [100, 0, 0]], ['none', [], [100, 0, 0], [0, 0, 0]], ['nothing wanted', [[20, 0, 0]], [0, 0, 0], [0, 0, 0]],
    // Nitrogen before all, with what comes along; but no more of it than is wanted.
    ['a mixed one for N alone', [[10, 10, 0]], [100, 0, 0], [100, 100, 0]], ['the plain one', [[10, 10, 0], [20, 0, 0]], [100, 0, 0], [100, 0, 0]], ['N not over for phosphate', [[10, 10, 0]], [20, 100, 0], [20, 20, 0]], ['no N wanted', [[10, 10, 0]], [0, 100, 0], [0, 0, 0]], ['only phosphate', [[0, 20, 0]], [0, 100, 0], [0, 100, 0]],
    // Two wants exactly by two grades; a third want by a third.
    ['a pair', [[10, 10, 0], [20, 0, 0]], [100, 50, 0], [100, 50, 0]], ['a pair of N and K2O', [[10, 0, 10], [20, 0, 0]], [100, 0, 50], [100, 0, 50]], ['a pair without N', [[0, 20, 0], [0, 10, 10]], [0, 60, 20], [0, 60, 20]], ['the last two of three', [[20, 0, 20], [0, 10, 10], [0, 20, 0]], [0, 60, 20], [0, 60, 20]],
    ['three', [[10, 10, 10], [20, 0, 0], [0, 0, 50]], [100, 30, 80], [100, 30, 80]], ['three, each of two', [[10, 10, 0], [10, 0, 10], [0, 10, 10]], [100, 100, 100], [100, 100, 100]], ['three of four', [[0, 0, 1], [10, 10, 0], [10, 0, 10], [0, 10, 10]], [40, 60, 80], [40, 60, 80]],
    // What is not wanted at all is worse than potash unmet; phosphate unmet worse than potash unmet.
    ['unwanted', [[20, 0, 0], [0, 10, 10]], [100, 0, 50], [100, 0, 0]], ['phosphate first', [[20, 20, 0], [20, 0, 20]], [20, 40, 40], [20, 20, 0]],
    // 100 g of N bring 200 of P2O5; less would leave N unmet.
    ['over where N asks it', [[10, 20, 0]], [100, 50, 0], [100, 200, 0]],
    // Amounts below zero are none: 50 g of P2O5 would take less than no 20-0-0.
    ['no less than none', [[10, 5, 0], [20, 0, 0]], [100, 60, 0], [100, 50, 0]],
  ])('%s', (_, grades, wants, wanted) => {
    const found = bestBrought(grades.map((g) => percent(...g)), three(wants));
    expect([found.N, found.P2O5, found.K2O].map(round)).toEqual(wanted);
    const turned = bestBrought(grades.toReversed().map((g) => percent(...g)), three(wants));
    expect([turned.N, turned.P2O5, turned.K2O].map(round)).toEqual(wanted);
  });
});

test.each<[string, Three[], Three, number[] | null]>([
  ['no grade', [], [1, 1, 1], null], ['one of one', [[20, 0, 0]], [100, 0, 0], [500]], ['one of two: by the first', [[10, 20, 0]], [100, 200, 0], [1000]], ['potash alone', [[0, 0, 50]], [0, 0, 50], [100]], ['nothing in it', [[0, 0, 0]], [1, 0, 0], null],
  ['two of two', [[10, 10, 0], [20, 0, 0]], [100, 50, 0], [500, 250]], ['two of three: the first two', [[10, 10, 5], [20, 0, 0]], [100, 50, 25], [500, 250]], ['two of N and K2O', [[10, 0, 10], [20, 0, 0]], [100, 0, 50], [500, 250]], ['two of one', [[10, 0, 0], [20, 0, 0]], [100, 0, 0], null], ['two alike', [[10, 10, 0], [20, 20, 0]], [100, 100, 0], null],
  // 100x + 0.1y … by substitution: 1 kg, 0.5 kg, 0.2 kg.
  ['three', [[10, 5, 2], [20, 0, 10], [0, 10, 50]], [200, 70, 170], [1000, 500, 200]], ['three, turned', [[0, 10, 50], [10, 5, 2], [20, 0, 10]], [200, 70, 170], [200, 1000, 500]], ['four', [[1, 2, 3], [3, 2, 1], [1, 1, 2], [5, 5, 1]], [1, 1, 1], null],
])('exactly: %s', (_, grades, brought, wanted) => { expect(exactly(grades.map((g) => percent(...g)), three(brought))?.map(round) ?? null).toEqual(wanted); });

const bag = (label: string, grade: Three, price: number | null = null, more: Partial<Bag> = {}): Bag => feed(label, grade, { ...(price === null ? {} : { g: 1000, price: dollars(price) }), ...more });
const amounts = (goal: Parameters<typeof weigh>[0], ...bags: Bag[]): number[] => weigh(goal, bags, solve).bags.map((b) => round(b.g));

describe('weighed', () => {
  test('over and short: of what is named alone, and not what arithmetic leaves', () => {
    expect(overOf({ N: 100, P2O5: 0 }, three([120, 5, 9]))).toEqual(three([20, 5, 0]));
    expect(shortOf({ N: 100, P2O5: 50 }, three([80, 60, 0]))).toEqual(three([20, 0, 0]));
    expect(shortOf({ N: 100 }, three([100 - 1e-7, 0, 0])).N).toBe(0);
    expect(shortOf({ N: 100 }, three([100 - 2e-6, 0, 0])).N).toBeGreaterThan(0);
    expect(overOf({ N: 1000, K2O: 1 }, three([1000, 0, 1 + 9e-6])).K2O).toBe(0);
  });
  test('at least price, then weight, then the first named', () => {
    // A kilogram of N: $50 of A, $45 of B.
    expect(amounts({ N: 100 }, bag('A', [20, 0, 0], 10), bag('B', [40, 0, 0], 18))).toEqual([0, 250]);
    expect(amounts({ N: 100 }, bag('A', [20, 0, 0], 9), bag('B', [40, 0, 0], 19))).toEqual([500, 0]);
    expect(amounts({ N: 100 }, bag('A', [20, 0, 0], 10), bag('B', [40, 0, 0], 20))).toEqual([0, 250]);
    expect(amounts({ N: 100 }, bag('A', [20, 0, 0]), bag('B', [40, 0, 0]))).toEqual([0, 250]);
    expect(amounts({ N: 100 }, bag('A', [20, 0, 0], 10), bag('B', [20, 0, 0], 10))).toEqual([500, 0]);
    // A kilogram of A, or half a kilogram of each of the others.
    expect(amounts({ N: 100, P2O5: 100 }, bag('B', [20, 0, 0]), bag('C', [0, 20, 0]), bag('A', [10, 10, 0]))).toEqual([500, 500, 0]);
    expect(amounts({ N: 100, P2O5: 100 }, bag('A', [10, 10, 0]), bag('B', [20, 0, 0]), bag('C', [0, 20, 0]))).toEqual([1000, 0, 0]);
  });
  test('without price or weight last, out of the shed for nothing', () => {
    expect(amounts({ N: 100 }, bag('A', [40, 0, 0]), bag('B', [20, 0, 0], 99))).toEqual([0, 500]);
    expect(amounts({ N: 100 }, bag('A', [40, 0, 0], 1, { g: null }), bag('B', [20, 0, 0], 99))).toEqual([0, 500]);
    expect(amounts({ N: 100 }, bag('A', [40, 0, 0], 1, { g: 0 }), bag('B', [20, 0, 0], 99))).toEqual([0, 500]);
    expect(amounts({ N: 100 }, bag('A', [40, 0, 0], 1), bag('Mine', [20, 0, 0], null, { left: 600 }))).toEqual([0, 500]);
    expect(amounts({ N: 100 }, bag('A', [40, 0, 0], 1), bag('Mine', [20, 0, 0], 50, { left: 600 }))).toEqual([0, 500]);
    expect(amounts({ N: 100 }, bag('A', [40, 0, 0], 1), bag('B', [20, 0, 0], 0.4, { g: 2000 }))).toEqual([0, 500]);
  });
  test('three wants of three bags, one of them with all', () => { expect(amounts({ N: 100, P2O5: 30, K2O: 80 }, bag('A', [10, 10, 10]), bag('B', [20, 0, 0]), bag('C', [0, 0, 50]))).toEqual([300, 350, 100]); });
  test('what carries something unwanted stays out, nutrient by nutrient, while others bring anything wanted', () => {
    expect(amounts({ N: 100, P2O5: 0, K2O: 0 }, bag('A', [10, 10, 0]), bag('B', [10, 0, 10]), bag('C', [5, 0, 0]))).toEqual([0, 0, 2000]);
    // Without phosphate there is B; that it brings potash cannot be helped: 1 kg would meet the N, half of it is nearest.
    expect(amounts({ N: 100, P2O5: 0, K2O: 0 }, bag('A', [10, 10, 0]), bag('B', [10, 0, 10]))).toEqual([0, 500]);
    expect(amounts({ N: 100, K2O: 0 }, bag('A', [10, 0, 10]))).toEqual([500]);
    expect(amounts({ N: 20, P2O5: 0 }, bag('A', [10, 10, 0]), bag('K', [0, 0, 30]))).toEqual([100, 0]);
    expect(amounts({ N: 0 }, bag('A', [10, 0, 0]))).toEqual([0]);
  });
  test('nearest by least squares, none below zero', () => {
    // For 20 and 10 of one bag of 10-10: 150 g. With another of N alone nothing is amiss; N cannot be taken away.
    expect(amounts({ N: 20, P2O5: 10 }, bag('A', [10, 10, 0]))).toEqual([150]);
    expect(amounts({ N: 20, P2O5: 10 }, bag('A', [10, 10, 0]), bag('B', [20, 0, 0]))).toEqual([100, 50]);
    expect(amounts({ N: 10, P2O5: 20 }, bag('A', [10, 10, 0]), bag('B', [20, 0, 0]))).toEqual([150, 0]);
  });
  test('of a single bag the limiting and the covering amount; its measure', () => {
    const one = (goal: Parameters<typeof weigh>[0], grade: Three) => { const w = weigh(goal, [bag('A', grade, null, { density: 2 })], solve); return [w.limiting && [w.limiting.nutrient, round(w.limiting.g)], w.covering && [w.covering.nutrient, round(w.covering.g)]]; };
    expect(one({ N: 20, P2O5: 30 }, [10, 10, 0])).toEqual([['N', 200], ['P2O5', 300]]);
    expect(one({ N: 30, P2O5: 20 }, [10, 10, 0])).toEqual([['P2O5', 200], ['N', 300]]);
    expect(one({ N: 20, P2O5: 30 }, [10, 0, 0])).toEqual([['N', 200], null]);
    expect(one({ N: 20, P2O5: 0 }, [10, 10, 0])).toEqual([['P2O5', 0], ['N', 200]]);
    expect(one({ N: 20, P2O5: 0 }, [10, 0, 0])).toEqual([['N', 200], ['N', 200]]);
    expect(one({ N: 20 }, [0, 10, 0])).toEqual([null, null]);
    expect(one({ N: 0 }, [10, 0, 0])).toEqual([['N', 0], null]);
    expect(weigh({ N: 20 }, [bag('A', [10, 0, 0], null, { density: 2 })], solve).bags[0]!.mL).toBeCloseTo(100, 9);
    expect(weigh({ N: 20 }, [bag('A', [10, 0, 0]), bag('B', [10, 0, 0])], solve)).not.toHaveProperty('limiting');
  });
  test('the nutrient that is most out', () => {
    const out = (goal: Parameters<typeof weigh>[0], ...grades: Three[]) => mostOut(goal, grades.map((g) => bag('A', g)), solve);
    expect(out({ N: 30, P2O5: 10, K2O: 10 }, [10, 10, 10])).toEqual({ nutrient: 'N', over: false });
    expect(out({ N: 10, P2O5: 10, K2O: 30 }, [10, 10, 10])).toEqual({ nutrient: 'K2O', over: false });
    expect(out({ N: 30, P2O5: 30, K2O: 10 }, [10, 10, 10])).toEqual({ nutrient: 'K2O', over: true });
    // As far over as short: the one named first.
    expect(out({ N: 20, P2O5: 10 }, [10, 10, 0])).toEqual({ nutrient: 'N', over: false });
    expect(out({ N: 10, P2O5: 20 }, [10, 10, 0])).toEqual({ nutrient: 'N', over: true });
    expect(out({ N: 10, P2O5: 10 }, [10, 10, 0])).toBeNull();
  });
});

describe('blends', () => {
  const [n, p, k] = [bag('N', [20, 0, 0]), bag('P', [0, 20, 0]), bag('K', [0, 0, 50])];
  test('a mix by its parts', () => { expect(blend([{ bag: n, parts: 1 }, { bag: p, parts: 3 }])).toEqual({ grade: three([5, 15, 0]), parts: [{ bag: n, share: 0.25 }, { bag: p, share: 0.75 }] }); });
  test('balanced: 5, 5 and 2 parts of twelve, whatever they cost', () => {
    for (const first of [n, { ...n, price: dollars(99), g: 1000 }]) {
      const made = balance([first, p, k], solve);
      if (!('parts' in made)) throw new Error('unbalanced');
      expect(made.parts.map((x) => round(x.share))).toEqual([5, 5, 2].map((x) => round(x / 12)));
      for (const x of Object.values(made.grade)) expect(x).toBeCloseTo(100 / 12, 6);
    }
    const shed = balance([bag('Mine', [5, 5, 5], null, { left: 100 }), n, p, k], solve);
    expect('parts' in shed && shed.parts[0]!.share).toBe(0);
  });
  test('why not: a nutrient that no bag brings, or one over or under in every mix', () => {
    expect(balance([n, p], solve)).toEqual({ unbalanced: 'missing', nutrient: 'K2O' });
    expect(balance([p, k], solve)).toEqual({ unbalanced: 'missing', nutrient: 'N' });
    // Twice as much P2O5 as N: 6 parts bring 0.6 and 1.2. 20-20-35: 3.7 parts bring 0.74 and 1.3.
    expect(balance([bag('A', [10, 20, 0]), k], solve)).toEqual({ unbalanced: 'under', nutrient: 'N' });
    expect(balance([bag('A', [20, 20, 35])], solve)).toEqual({ unbalanced: 'over', nutrient: 'K2O' });
  });
  const batch = (grade: Three, g: number, ...bags: Bag[]): (string | number)[] => {
    const made = batchOf(percent(...grade), g, bags, solve);
    return 'parts' in made ? [...made.parts.map((x) => round(x.g)), round(made.fillerG)] : 'apart' in made ? [made.apart.a.label, made.apart.b.label] : [made.noBatch, round(made.out.N), round(made.out.P2O5), round(made.out.K2O)];
  };
  test('a batch and what fills it up; what cannot be made', () => {
    expect(batch([10, 10, 10], 1000, bag('N', [40, 0, 0]), bag('P', [0, 40, 0]), k)).toEqual([250, 250, 200, 300]);
    expect(batch([10, 0, 25], 1000, n, k)).toEqual([500, 500, 0]);
    expect(batch([10, 10, 10], 1000, n, p, k)).toEqual(['full', 0, 0, 0]);
    expect(batch([10, 0, 10], 1000, n)).toEqual(['grade', 0, 0, 100]);
    expect(batch([10, 0, 10], 1000, bag('A', [10, 10, 10]), bag('Mine', [20, 0, 0], null, { left: 9 }))).toEqual(['grade', 0, 0, 100]);
    // The lightest, whatever it costs.
    expect(batch([10, 0, 0], 1000, bag('A', [20, 0, 0], 1), bag('B', [40, 0, 0], 99), bag('C', [10, 0, 0], null, { left: 5000 }))).toEqual([0, 250, 0, 750]);
  });
  // Urea and superphosphate make slush (IPNI SEAP 3024); with sulphate of ammonia there is no harm.
  const material = (id: string): Partial<Bag> => ({ material: MATERIALS.find((m) => m.id === id)! });
  const [urea, ammonia, triple, dap] = [bag('Urea', [46, 0, 0], null, material('urea')), bag('Ammonia', [21, 0, 0], null, material('ammonium-sulphate')), bag('Triple', [0, 46, 0], null, material('triple-superphosphate')), bag('DAP', [18, 46, 0], null, material('dap'))];
  test('bags that must not meet do not, and of the ways out the lighter is taken', () => {
    // What is left out of a pair is not told of. 46 g of each in a kilogram: of urea 100 g, of sulphate of ammonia 219.05 g, of triple 100 g.
    expect(batch([4.6, 4.6, 0], 1000, urea, triple)).toEqual(['Urea', 'Triple']);
    expect(batch([4.6, 4.6, 0], 1000, urea, triple, ammonia)).toEqual([100, 219.0476, 680.9524]);
    // 115 g of a phosphate that harms nobody beside the urea weigh less than sulphate of ammonia beside the triple.
    expect(batch([4.6, 4.6, 0], 1000, urea, triple, ammonia, bag('Plain', [0, 40, 0]))).toEqual([100, 0, 115, 785]);
    expect(batch([4.6, 4.6, 0], 1000, triple, urea, bag('Weak', [0, 10, 0]), ammonia)).toEqual([100, 0, 219.0476, 680.9524]);
    expect(batch([4.6, 4.6, 0], 1000, urea, triple, bag('Weak', [0, 10, 0]), ammonia)).toEqual([100, 0, 219.0476, 680.9524]);
    // Of all four the lightest mix is urea and DAP, which may meet.
    expect(batch([4.6, 4.6, 0], 1000, urea, triple, ammonia, dap)).toEqual([60.8696, 0, 0, 100, 839.1304]);
    const used = (...bags: Bag[]): unknown => { const made = balance(bags, solve); return 'parts' in made && made.parts.map((x) => [x.bag.label, x.share > 0]); };
    expect(used(urea, triple, k, ammonia)).toEqual([['Triple', true], ['K', true], ['Ammonia', true]]);
    expect(used(urea, triple, bag('Weak', [0, 10, 0]), k, ammonia)).toEqual([['Triple', true], ['Weak', false], ['K', true], ['Ammonia', true]]);
    expect(used(triple, urea, bag('Weak', [0, 10, 0]), k, ammonia)).toEqual([['Triple', true], ['Weak', false], ['K', true], ['Ammonia', true]]);
    // What is not used meets nothing.
    expect(used(bag('All', [20, 20, 20]), urea, triple)).toEqual([['All', true], ['Urea', false], ['Triple', false]]);
    // Where there is no other way, each can be spread by itself.
    const alone = balance([urea, triple, k], solve);
    expect('parts' in alone && alone.parts.every((x) => x.share > 0)).toBe(true);
  });
});
