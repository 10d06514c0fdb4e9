/**
 * Which plant gets how much of which bag, and how many bags are bought: all plants and needs at once, in whole bags.
 * First what serves the plants best (`mix.ts`), then least cost, what stands in the shed before what is bought, fewest products,
 * least left over. A mixed-integer program (`program.ts`); what solves it is passed in.
 */
import type { Bag } from '../orchard/bag.ts';
import { CLOSELY_MET } from '../tables/limits.ts';
import type { Nutrient } from '../units/substance.ts';
import { NUTRIENTS } from '../units/substance.ts';
import { isSameProduct } from './buy.ts';
import { isQuick } from './choose.ts';
import type { Brought, Wants } from './mix.ts';
import { bestBrought, compareFaults, exactly, faultsOf } from './mix.ts';
import type { Aim, Program, Row, Solved, Solver, Sum } from './program.ts';
import { inOrder, valueOf } from './program.ts';

/** `wants` in grams for one plant. No more than `mostQuick` of its nitrogen may be quick. */
export type Plant = { readonly wants: Wants; readonly usable: readonly Bag[]; readonly mostQuick: number; readonly count: number };
export type Share = { readonly bag: Bag; readonly g: number };
/** `shares` of one plant each, in the order of the plants; `dearerAtMost` is nought where the purchase is proved the cheapest; where a limit was reached it tells by how much it might be too dear. */
export type Allotted = { readonly shares: readonly (readonly Share[])[]; readonly stock: ReadonlyMap<Bag, number>; readonly dearerAtMost: number };

/** One product: what stands of it in the shed, and the sizes in which it is sold. */
type Product = { readonly shed: readonly Bag[]; readonly sizes: readonly Bag[]; readonly grade: Bag['grade']; readonly left: number; readonly endless: boolean };
/** Plants that can take the same products and want the same in proportion are one: `weight` is how much of its wants each plant is. */
type Group = { readonly products: readonly number[]; readonly wants: Wants; readonly brought: Brought; readonly plants: readonly { readonly at: number; readonly part: number; readonly target: Brought }[] };

export function allot(plants: readonly Plant[], shed: readonly Bag[], store: readonly Bag[], solver: Solver): Allotted {
  const products = productsOf(shed, store);
  const groups = groupsOf(plants, products);
  const model = modelOf(products, groups, false);
  let found = solved(model, solver);
  // What stands in the shed alone may be too little for all to be served as well as could be.
  const short = found.status === 'none';
  const used = short ? modelOf(products, groups, true) : model;
  if (short) found = solved(used, solver);
  const sure = found.status === 'best';
  const loose = sure ? null : looseOf(used, solver);
  const x = found.status !== 'none' && found.x ? found.x : loose && inWholeBags(used, loose);
  if (!x) throw new Error('no allotment');
  return { ...sharesOf(used, x, plants), dearerAtMost: loose ? Math.max(0, valueOf(used.cost, x) - valueOf(used.cost, loose)) : 0 };
}

function productsOf(shed: readonly Bag[], store: readonly Bag[]): Product[] {
  const found: Bag[][] = [];
  for (const bag of [...shed, ...store]) {
    const same = found.find((p) => isSameProduct(p[0]!, bag));
    if (same) same.push(bag);
    else found.push([bag]);
  }
  return found.map((bags) => {
    const sizes = bags.filter((b) => b.left === null);
    return { shed: bags.filter((b) => b.left !== null), sizes, grade: bags[0]!.grade, left: bags.reduce((sum, b) => sum + (b.left ?? 0), 0) / 1000, endless: sizes.some((b) => b.g === null || b.g <= 0) };
  });
}

function groupsOf(plants: readonly Plant[], products: readonly Product[]): Group[] {
  const groups = new Map<string, { products: readonly number[]; wants: Wants; brought: Brought; plants: { at: number; part: number; target: Brought }[] }>();
  plants.forEach((plant, at) => {
    const mine = products.map((_, p) => p).filter((p) => [...products[p]!.shed, ...products[p]!.sizes].some((b) => plant.usable.includes(b)));
    const { wants, brought, usable } = servedBest(plant, mine, products);
    const all = NUTRIENTS.reduce((sum, n) => sum + wants[n], 0) * plant.count;
    if (usable.length === 0 || all <= 0 || NUTRIENTS.every((n) => brought[n] <= 0)) return;
    const key = `${usable.join()} ${NUTRIENTS.map((n) => (wants[n] * plant.count / all).toPrecision(9)).join()}`;
    const group = groups.get(key) ?? { products: usable, wants: { N: 0, P2O5: 0, K2O: 0 }, brought: { N: 0, P2O5: 0, K2O: 0 }, plants: [] };
    const more = (sum: Wants, x: Wants): Wants => ({ N: sum.N + (x.N * plant.count) / 1000, P2O5: sum.P2O5 + (x.P2O5 * plant.count) / 1000, K2O: sum.K2O + (x.K2O * plant.count) / 1000 });
    groups.set(key, { ...group, wants: more(group.wants, wants), brought: more(group.brought, brought), plants: [...group.plants, { at, part: all / 1000, target: brought }] });
  });
  return [...groups.values()];
}

/** The best that the products can bring to a plant: by any of them within the limit of quick nitrogen, or by slow ones alone. */
function servedBest({ wants, mostQuick }: Plant, mine: readonly number[], products: readonly Product[]): { wants: Wants; brought: Brought; usable: readonly number[] } {
  const distinct = (of: readonly number[]): Bag['grade'][] => [...new Map(of.map((p) => [Object.values(products[p]!.grade).join(), products[p]!.grade])).values()];
  const within = { ...wants, N: Math.min(wants.N, mostQuick) };
  const all = { wants: within, brought: bestBrought(distinct(mine), within), usable: mine };
  if (within.N === wants.N) return all;
  const slow = mine.filter((p) => !isQuick([...products[p]!.shed, ...products[p]!.sizes][0]!));
  const slowly = { wants, brought: bestBrought(distinct(slow), wants), usable: slow };
  return compareFaults(faultsOf(slowly.brought, wants), faultsOf(all.brought, wants)) < 0 ? slowly : all;
}

/** Columns in kilograms: what each group gets of each product, what is bought of it, how many bags of each size, whether it is used. */
type Model = { readonly program: Program; readonly aims: readonly Aim[]; readonly cost: Sum; readonly products: readonly Product[]; readonly groups: readonly Group[]; readonly gets: readonly ReadonlyMap<number, number>[]; readonly bags: ReadonlyMap<Bag, number>; readonly faulty: boolean };

/** `faulty`: where not all can be served as well as could be, the faults are columns too, and the first aims. */
function modelOf(products: readonly Product[], groups: readonly Group[], faulty: boolean): Model {
  let columns = 0;
  const rows: Row[] = [];
  const whole = new Set<number>();
  const column = (): number => columns++;
  const gets = groups.map((g) => new Map(g.products.filter((p) => NUTRIENTS.every((n) => products[p]!.grade[n] === 0 || (faulty ? n !== 'N' || g.wants.N > 0 : g.brought[n] > 0))).map((p) => [p, column()])));
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
      if (!faulty) rows.push({ of: new Map([[unmet, 1]]), most: goal - least });
    }
    if (n !== 'N' && most > goal) {
      const over = column();
      of.set(over, -1);
      faults[group.wants[n] <= 1e-12 ? i : i + 4]!.set(over, 1);
      if (!faulty) rows.push({ of: new Map([[over, 1]]), most: most - goal });
    }
    rows.push({ of, least: goal, most: goal });
  }));
  if (!faulty) for (const [i, n] of NUTRIENTS.entries()) {
    const short = faults[i + 2]!;
    if (n !== 'N' && short.size > 0) rows.push({ of: short, most: Math.max(CLOSELY_MET.under.grams / 1000, CLOSELY_MET.under.orchard * groups.reduce((sum, g) => sum + g.wants[n], 0)) });
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
    if (!endless) leftOver!.set(buys, -1);
    const is = column();
    whole.add(is);
    const most = mine.length === 0 ? 0 : groups.reduce((sum, g, k) => sum + (gets[k]!.has(p) ? mostOf(g, grade, faulty) : 0), 0);
    rows.push({ of: new Map([...take, [is, -most]]), most: 0 }, { of: new Map([[is, 1]]), most: 1 });
    used!.set(is, 1);
    ties!.set(is, (p + 1) / 1000);
  });
  const within = 1e-6;
  const served = faults.filter((f) => f.size > 0).map((of) => ({ of, within }));
  const aims: Aim[] = [
    ...(faulty ? served : []),
    { of: unpriced!, within }, { of: cost!, within: 1e-4 },
    // Least surplus phosphate, then potash, then least short: what the band leaves open.
    ...(faulty ? [] : [faults[5]!, faults[6]!, faults[3]!, faults[4]!].map((of) => ({ of, within, minor: true as const }))),
    ...(products.some((p) => p.left > 0) ? [{ of: bought!, within, minor: true as const }] : []),
    ...[used!, leftOver!, ties!].map((of, i) => ({ of, within: [0.01, within, 1e-5][i]!, minor: true as const })),
  ].filter((aim) => aim.of.size > 0);
  return { program: { columns, whole, rows }, aims, cost: cost!, products, groups, gets, bags, faulty };
}

/** Phosphate and potash that are wanted may come out so far off before another bag is worth buying. */
function bandOf({ wants, brought }: Group, n: Nutrient): readonly [least: number, most: number] {
  if (n === 'N' || wants[n] <= 1e-12) return [brought[n], brought[n]];
  return [Math.min(brought[n], wants[n] * (1 - CLOSELY_MET.under.plant)), Math.max(brought[n], wants[n] * (1 + CLOSELY_MET.over))];
}

/** More of a product than this a group cannot take. */
function mostOf(group: Group, grade: Bag['grade'], faulty: boolean): number {
  const { wants } = group;
  const limits = NUTRIENTS.filter((n) => grade[n] > 0).map((n) => (faulty ? (n === 'N' || grade.N === 0 ? wants[n] : Infinity) : bandOf(group, n)[1]) / grade[n]);
  const most = faulty && grade.N === 0 ? Math.max(...limits) : Math.min(...limits);
  return (Number.isFinite(most) ? most : 0) * (1 + 1e-6) + 1e-6;
}

function commonCurrency(products: readonly Product[]): string | null {
  const all = products.flatMap((p) => p.sizes.flatMap((b) => (b.price ? [b.price.currency] : [])));
  return [...new Set(all)].sort((a, b) => all.filter((c) => c === b).length - all.filter((c) => c === a).length || (a < b ? -1 : 1))[0] ?? null;
}

/** With the bags decided, the shares: the first plants have what stands in the shed. */
function solved(model: Model, solver: Solver): Solved {
  if (model.groups.length === 0) return { status: 'best', x: Array.from({ length: model.program.columns }, () => 0) };
  const found = inOrder(model.program, model.aims, solver);
  return found.status === 'best' ? walked(model, found.x, solver) : found;
}

function walked({ program, aims, gets, products }: Model, x: readonly number[], solver: Solver): Solved {
  const fixed: Row[] = [...program.whole].map((c) => ({ of: new Map([[c, 1]]), least: x[c]!, most: x[c]! }));
  const kept: Row[] = aims.map(({ of, within }) => ({ of, most: valueOf(of, x) + within }));
  const early = new Map(gets.flatMap((g, k) => [...g].map(([p, c]): [number, number] => [c, (products[p]!.left > 0 ? 1 : 2) * (p + 1) * (gets.length - k)])));
  const found = solver({ ...program, whole: new Set(), rows: [...program.rows, ...fixed, ...kept] }, early);
  return found.status === 'best' ? found : { status: 'best', x };
}

/** What parts of bags would serve best: no whole ones cost less. */
function looseOf({ program, aims }: Model, solver: Solver): readonly number[] | null {
  const found = inOrder({ ...program, whole: new Set() }, aims.filter((aim) => !aim.minor), solver);
  return found.status === 'best' ? found.x : null;
}

const inWholeBags = ({ program }: Model, loose: readonly number[]): number[] => loose.map((v, c) => (program.whole.has(c) ? Math.ceil(v - 1e-7) : v));

/** Shares of each plant in its part of the group, under the bag that it comes out of; and how much of each there is. */
function sharesOf({ products, groups, gets, bags, faulty }: Model, x: readonly number[], plants: readonly Plant[]): Pick<Allotted, 'shares' | 'stock'> {
  const stock = new Map<Bag, number>();
  const from = products.map(({ shed, sizes, left, endless }, p) => {
    const used = gets.reduce((sum, g) => sum + (g.has(p) ? x[g.get(p)!]! : 0), 0);
    const counted = sizes.map((bag) => ({ bag, n: bags.has(bag) ? Math.round(x[bags.get(bag)!]!) : 0 })).filter(({ n }) => n > 0).sort((a, b) => b.bag.g! - a.bag.g!);
    const bag = used <= left * (1 + 1e-6) + 1e-6 && shed[0] ? shed[0] : counted[0]?.bag ?? sizes.find(() => endless) ?? shed[0] ?? sizes[0]!;
    stock.set(bag, endless && bag.left === null ? Infinity : 1000 * left + counted.reduce((sum, { bag: b, n }) => sum + n * b.g!, 0));
    return bag;
  });
  const shares: Share[][] = plants.map(() => []);
  const targets: (Brought | null)[] = plants.map(() => null);
  groups.forEach((group, k) => {
    if (!faulty) group.plants.forEach(({ at, target }) => (targets[at] = target));
    const all = group.plants.reduce((sum, { part }) => sum + part, 0);
    // What brings the same can be used up bag by bag, plant by plant; each plant has its part of every kind.
    const kinds = new Map<string, { bag: Bag; kg: number; strength: number }[]>();
    for (const [p, c] of gets[k]!) {
      const { grade } = products[p]!;
      const strength = NUTRIENTS.reduce((sum, n) => sum + grade[n], 0);
      const kind = NUTRIENTS.map((n) => (grade[n] / strength).toFixed(6)).join();
      if (x[c]! > 1e-7) kinds.set(kind, [...(kinds.get(kind) ?? []), { bag: from[p]!, kg: x[c]!, strength }]);
    }
    for (const kind of kinds.values()) {
      const whole = kind.reduce((sum, { kg, strength }) => sum + kg * strength, 0);
      const open = kind.map(({ kg }) => kg);
      for (const { at, part } of group.plants) {
        let wanted = (whole * part) / all;
        kind.forEach(({ bag, strength }, i) => {
          const kg = Math.min(open[i]!, wanted / strength);
          open[i]! -= kg;
          wanted -= kg * strength;
          const g = (1000 * kg) / plants[at]!.count;
          if (g > 0.05) shares[at]!.push({ bag, g });
        });
      }
    }
  });
  return { shares: shares.map((mine, i) => polished(mine, targets[i]!)), stock };
}

/** The solver's arithmetic ends at a milligram; where bags and nutrients leave but one answer, that is taken. */
function polished(shares: readonly Share[], target: Brought | null): readonly Share[] {
  const exact = target && exactly(shares.map((s) => s.bag.grade), target);
  return exact?.every((g, i) => Math.abs(g - shares[i]!.g) < 0.1) ? shares.map((s, i) => ({ bag: s.bag, g: exact[i]! })) : shares;
}
