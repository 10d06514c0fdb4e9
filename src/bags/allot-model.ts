/** The purchase of an orchard as a linear program: what is decided, what must hold, and the aims in their order. */
import type { Bag } from '../orchard/bag.ts';
import { CLOSELY_MET } from '../tables/limits.ts';
import type { Nutrient } from '../units/substance.ts';
import { NUTRIENTS } from '../units/substance.ts';
import type { Brought, Wants } from './mix.ts';
import type { Aim, Program, Row, Sum } from './program.ts';

/** One product: what stands of it in the shed, and the sizes in which it is sold. */
export type Product = { readonly shed: readonly Bag[]; readonly sizes: readonly Bag[]; readonly grade: Bag['grade']; readonly left: number; readonly endless: boolean;
  /** Lime that a kilogram uses up, kg. */
  readonly acidity: number };
/** Plants that can take the same products and want the same in proportion, as one: `wants` and `brought` in kilograms of all of them, `part` is what one place takes of it, `target` the grams of one plant. */
export type Group = { readonly acid: boolean; readonly products: readonly number[]; readonly wants: Wants; readonly brought: Brought; readonly plants: readonly { readonly at: number; readonly part: number; readonly target: Brought }[] };

/** Columns in kilograms: what each group gets of each product, what is bought of it, how many bags of each size, whether it is used. */
export type Model = { readonly program: Program; readonly aims: readonly Aim[]; readonly cost: Sum; readonly products: readonly Product[]; readonly groups: readonly Group[]; readonly gets: readonly ReadonlyMap<number, number>[]; readonly bags: ReadonlyMap<Bag, number>;
  /** Where not all can be served: what each group goes without of each nutrient. */
  readonly lacks: readonly { readonly n: Nutrient; readonly at: number; readonly group: Group }[] };

/** `faulty`: where not all can be served as well as could be, the faults are columns too, and the first aims. */
export function modelOf(products: readonly Product[], groups: readonly Group[], faulty: boolean): Model {
  let columns = 0;
  const rows: Row[] = [];
  const whole = new Set<number>();
  const column = (): number => columns++;
  const gets = groups.map((g) => new Map(g.products.filter((p) => faulty || NUTRIENTS.every((n) => products[p]!.grade[n] === 0 || g.brought[n] > 0)).map((p) => [p, column()])));
  const lacks: { n: Nutrient; at: number; group: Group }[] = [];
  const faults = Array.from({ length: 7 }, () => new Map<number, number>());
  groups.forEach((group, k) => NUTRIENTS.forEach((n, i) => {
    const of = new Map([...gets[k]!].filter(([p]) => products[p]!.grade[n] > 0).map(([p, c]) => [c, products[p]!.grade[n]]));
    if (of.size === 0 && !faulty) return;
    const goal = faulty ? group.wants[n] : group.brought[n];
    const [least, most] = faulty ? [0, Infinity] : bandOf(group, n);
    if (faulty || least < goal) {
      const unmet = column();
      of.set(unmet, 1);
      faults[n === 'N' ? 0 : i + 2]!.set(unmet, 1);
      if (faulty) lacks.push({ n, at: unmet, group });
      else rows.push({ of: new Map([[unmet, 1]]), most: goal - least });
    }
    if (n !== 'N' && most > goal) {
      const over = column();
      of.set(over, -1);
      faults[group.wants[n] <= 1e-12 ? i : i + 4]!.set(over, 1);
      if (!faulty) rows.push({ of: new Map([[over, 1]]), most: most - goal });
    }
    rows.push({ of, least: goal, most: goal });
  }));
  if (!faulty) for (const [n, short] of [['P2O5', faults[3]!], ['K2O', faults[4]!]] as const) {
    rows.push({ of: short, most: Math.max(CLOSELY_MET.under.grams / 1000, CLOSELY_MET.under.orchard * groups.reduce((sum, g) => sum + g.wants[n], 0)) });
  }
  const bags = new Map<Bag, number>();
  const [unpriced, cost, bought, used, leftOver, ties] = Array.from({ length: 6 }, () => new Map<number, number>());
  const currency = commonCurrency(products);
  products.forEach(({ sizes, grade, left, endless }, p) => {
    const mine = gets.flatMap((g) => (g.has(p) ? [g.get(p)!] : []));
    if (mine.length === 0) return;
    const take: [number, number][] = mine.map((c) => [c, 1]);
    const buys = column();
    const counts = endless ? [] : sizes.map((bag) => ({ bag, at: column(), kg: bag.g! / 1000 }));
    // What is used is in the shed or bought; what is bought is in whole bags.
    rows.push({ of: new Map([...take, [buys, -1]]), most: left });
    if (!endless) rows.push({ of: new Map([[buys, 1], ...counts.map(({ at, kg }): [number, number] => [at, -kg])]), most: 0 });
    for (const { bag, at, kg } of counts) {
      whole.add(at);
      bags.set(bag, at);
      if (bag.price && bag.price.currency === currency) cost!.set(at, bag.price.amount);
      else unpriced!.set(at, kg);
      leftOver!.set(at, kg);
      ties!.set(at, 1 + p / 1000);
    }
    if (endless) unpriced!.set(buys, 1);
    bought!.set(buys, NUTRIENTS.reduce((sum, n) => sum + grade[n], 0));
    // More than is used may count as bought; only beside a shed does an aim keep that down.
    if (!endless) for (const c of left > 0 ? [buys] : mine) leftOver!.set(c, -1);
    const is = column();
    whole.add(is);
    const most = groups.reduce((sum, g, k) => sum + (gets[k]!.has(p) ? mostOf(g, grade, faulty) : 0), 0);
    rows.push({ of: new Map([...take, [is, -most]]), most: 0 }, { of: new Map([[is, 1]]), most: 1 });
    used!.set(is, 1);
    ties!.set(is, (p + 1) / 1000);
  });
  const within = 1e-6;
  // A tenth of a gram over the whole orchard; and however little of a bag serves, the whole bag does too.
  const served = faults.filter((f) => f.size > 0).map((of): Aim => ({ of, within: 1e-4, parts: true }));
  const aims: Aim[] = [
    ...(faulty ? served : []),
    { of: unpriced!, within }, { of: cost!, within: 1e-4 },
    // Least surplus phosphate, then potash, then least short: what the band leaves open.
    ...(faulty ? [] : [faults[5]!, faults[6]!, faults[3]!, faults[4]!].map((of) => ({ of, within, minor: true as const }))),
    ...(products.some((p) => p.left > 0) ? [{ of: bought!, within, minor: true as const }] : []),
    ...[used!, leftOver!, ties!].map((of, i) => ({ of, within: [0.01, within, 1e-5][i]!, minor: true as const })),
  ].filter((aim) => aim.of.size > 0);
  return { program: { columns, whole, rows }, aims, cost: cost!, products, groups, gets, bags, lacks };
}

/** Phosphate and potash that are wanted may come out so far off before another bag is worth buying. */
function bandOf({ wants, brought }: Group, n: Nutrient): readonly [least: number, most: number] {
  if (n === 'N' || wants[n] <= 1e-12) return [brought[n], brought[n]];
  return [Math.min(brought[n], wants[n] * (1 - CLOSELY_MET.under.plant)), Math.max(brought[n], wants[n] * (1 + CLOSELY_MET.over))];
}

/** More of a product than this a group cannot take. */
function mostOf(group: Group, grade: Bag['grade'], faulty: boolean): number {
  const limits = NUTRIENTS.filter((n) => grade[n] > 0).map((n) => (faulty ? group.wants[n] : bandOf(group, n)[1]) / grade[n]);
  return (faulty ? Math.max(...limits) : Math.min(...limits)) * (1 + 1e-6) + 1e-6;
}

function commonCurrency(products: readonly Product[]): string | null {
  const all = products.flatMap((p) => p.sizes.flatMap((b) => (b.price ? [b.price.currency] : [])));
  return [...new Set(all)].sort((a, b) => all.filter((c) => c === b).length - all.filter((c) => c === a).length || (a < b ? -1 : 1))[0] ?? null;
}
