/**
 * Which plant gets how much of which bag, and how many bags are bought: all plants and needs at once, in whole bags.
 * First what serves the plants best (`mix.ts`), then least cost, what stands in the shed before what is bought, fewest products,
 * least left over. A mixed-integer program (`allot-model.ts`); what solves it is passed in.
 */
import type { Bag } from '../orchard/bag.ts';
import type { Nutrient } from '../units/substance.ts';
import { NUTRIENTS } from '../units/substance.ts';
import { limeInFeed } from './acidity.ts';
import type { Group, Model, Product } from './allot-model.ts';
import { modelOf } from './allot-model.ts';
import { isSameProduct } from './buy.ts';
import { isQuick } from './choose.ts';
import type { Brought, Wants } from './mix.ts';
import { bestBrought, compareFaults, exactly, faultsOf, surplusOf } from './mix.ts';
import type { Program, Row, Solved, Solver } from './program.ts';
import { inOrder, roundedUp, valueOf } from './program.ts';

/** `wants` in grams for one plant. No more than `mostQuick` of its nitrogen may be quick. An `acid` one thrives on feed that makes the soil so. */
export type Plant = { readonly acid?: boolean; readonly wants: Wants; readonly usable: readonly Bag[]; readonly mostQuick: number; readonly count: number };
export type Share = { readonly bag: Bag; readonly g: number };
/** `shares` of one plant each, in the order of the plants; `dearerAtMost` is nought where the purchase is proved the cheapest; where a limit was reached it tells by how much it might be too dear. */
export type Allotted = { readonly shares: readonly (readonly Share[])[]; readonly stock: ReadonlyMap<Bag, number>; readonly dearerAtMost: number };

export function allot(plants: readonly Plant[], shed: readonly Bag[], store: readonly Bag[], solver: Solver): Allotted {
  const products = productsOf(shed, store);
  const groups = groupsOf(plants, products);
  // What stands in the shed alone may be too little for all to be served as well as could be.
  const found = tried(modelOf(products, groups, false), solver) ?? tried(modelOf(products, groups, true), solver);
  if (!found) throw new Error('no allotment');
  const { model, x, loose } = found;
  return { ...sharesOf(model, x, plants), dearerAtMost: loose ? Math.max(0, valueOf(model.cost, x) - valueOf(model.cost, loose)) : 0 };
}

/** The best that was found, and where that is not proved what parts of bags would cost. Null where no amounts keep the rows. */
function tried(model: Model, solver: Solver): { readonly model: Model; readonly x: readonly number[]; readonly loose: readonly number[] | null } | null {
  const found = solved(model, solver);
  if (found.status === 'none') return null;
  if (found.status === 'best') return { model, x: found.x, loose: null };
  const loose = looseOf(model, solver);
  return loose && { model, x: found.x ?? roundedUp(model.program, loose), loose };
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
    return { shed: bags.filter((b) => b.left !== null), sizes, grade: bags[0]!.grade, left: bags.reduce((sum, b) => sum + (b.left ?? 0), 0) / 1000, endless: sizes.some((b) => (b.g ?? 0) <= 0), acidity: acidityOf(bags[0]!) };
  });
}

const acidityOf = (bag: Bag): number => -limeInFeed({ label: bag.label, material: bag.material?.id ?? null, n: bag.grade.N }).value / 100;

function groupsOf(plants: readonly Plant[], products: readonly Product[]): Group[] {
  const groups = new Map<string, { acid: boolean; products: readonly number[]; wants: Wants; brought: Brought; plants: { at: number; part: number; target: Brought }[] }>();
  plants.forEach((plant, at) => {
    const mine = products.map((_, p) => p).filter((p) => [...products[p]!.shed, ...products[p]!.sizes].some((b) => plant.usable.includes(b)));
    const { wants, brought, usable } = servedBest(plant, mine, products);
    const all = NUTRIENTS.reduce((sum, n) => sum + wants[n], 0) * plant.count;
    if (NUTRIENTS.every((n) => brought[n] <= 0)) return;
    const acid = plant.acid === true;
    const key = `${acid} ${usable.join()} ${NUTRIENTS.map((n) => (wants[n] * plant.count / all).toPrecision(9)).join()}`;
    const group = groups.get(key) ?? { acid, products: usable, wants: { N: 0, P2O5: 0, K2O: 0 }, brought: { N: 0, P2O5: 0, K2O: 0 }, plants: [] };
    const more = (sum: Wants, x: Wants): Wants => ({ N: sum.N + (x.N * plant.count) / 1000, P2O5: sum.P2O5 + (x.P2O5 * plant.count) / 1000, K2O: sum.K2O + (x.K2O * plant.count) / 1000 });
    groups.set(key, { ...group, wants: more(group.wants, wants), brought: more(group.brought, brought), plants: [...group.plants, { at, part: all, target: brought }] });
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
  const [slowFaults, allFaults] = [faultsOf(slowly.brought, wants), faultsOf(all.brought, wants)];
  // More nitrogen is no reason for phosphate or potash that nobody wants.
  return compareFaults(slowFaults, allFaults) < 0 && compareFaults(surplusOf(slowFaults), surplusOf(allFaults)) <= 0 ? slowly : all;
}

/** With the bags decided, the shares: where there is too little, an even one for each; acid feed goes to plants that thrive on it, and the first plants have what stands in the shed. */
function solved(model: Model, solver: Solver): Solved {
  if (model.groups.length === 0) return { status: 'best', x: [] };
  const found = inOrder(model.program, model.aims, solver);
  return found.status === 'best' ? walked(model, found.x, solver) : found;
}

function walked({ program, aims, gets, products, groups, lacks }: Model, x: readonly number[], solver: Solver): Solved {
  const fixed: Row[] = [...program.whole].map((c) => ({ of: new Map([[c, 1]]), least: x[c]!, most: x[c]! }));
  const kept: Row[] = aims.map(({ of, within }) => ({ of, most: valueOf(of, x) + within }));
  const decided = { ...program, whole: new Set<number>(), rows: [...program.rows, ...fixed, ...kept] };
  const even = lacks.length === 0 ? [] : evenly(decided, lacks, solver);
  const most = products.length * gets.length;
  const sour = (k: number, p: number): number => (groups[k]!.acid ? most * (1 - products[p]!.acidity) : 0);
  // By what a product holds, or a strong one from the store would go to the first for being less to carry. Those in the shed come first in the list.
  const early = new Map(gets.flatMap((g, k) => [...g].map(([p, c]): [number, number] => [c, strengthOf(products[p]!.grade) * (p + 1) * (gets.length - k) + sour(k, p)])));
  const found = solver({ ...decided, rows: [...decided.rows, ...even] }, early);
  return found.status === 'best' ? found : { status: 'best', x };
}

/** What each may go without at the most, where the largest share that one goes without of what could best be brought to it is as small as can be, nutrient by nutrient. */
function evenly(decided: Program, lacks: Model['lacks'], solver: Solver): Row[] {
  const share = (n: Nutrient): number => decided.columns + NUTRIENTS.indexOf(n);
  const rows = lacks.map(({ n, at, group: { wants, brought } }): Row => ({ of: new Map([[at, 1], [share(n), -brought[n]]]), most: wants[n] - brought[n] }));
  const found = solver({ ...decided, columns: decided.columns + NUTRIENTS.length, rows: [...decided.rows, ...rows] }, new Map(NUTRIENTS.map((n) => [share(n), 1])));
  return found.status === 'best' ? lacks.map(({ at }) => ({ of: new Map([[at, 1]]), most: found.x[at]! + 1e-6 })) : [];
}

const strengthOf = (grade: Bag['grade']): number => NUTRIENTS.reduce((sum, n) => sum + grade[n], 0);

/** What parts of bags would serve best: no whole ones cost less. */
function looseOf({ program, aims }: Model, solver: Solver): readonly number[] | null {
  const found = inOrder({ ...program, whole: new Set() }, aims.filter((aim) => !aim.minor), solver);
  return found.status === 'best' ? found.x : null;
}

/** Shares of each plant in its part of the group, under the bag that it comes out of; and how much of each there is. */
function sharesOf({ products, groups, gets, bags }: Model, x: readonly number[], plants: readonly Plant[]): Pick<Allotted, 'shares' | 'stock'> {
  const stock = new Map<Bag, number>();
  const from = products.map(({ shed, sizes, left, endless }, p) => {
    const used = gets.reduce((sum, g) => sum + (g.has(p) ? x[g.get(p)!]! : 0), 0);
    const counted = sizes.map((bag) => ({ bag, n: bags.has(bag) ? Math.round(x[bags.get(bag)!]!) : 0 })).filter(({ n }) => n > 0).sort((a, b) => b.bag.g! - a.bag.g!);
    const bag = used <= left * (1 + 1e-6) + 1e-6 && shed[0] ? shed[0] : counted[0]?.bag ?? (endless ? undefined : shed[0]) ?? sizes[0]!;
    stock.set(bag, endless && bag.left === null ? Infinity : 1000 * left + counted.reduce((sum, { bag: b, n }) => sum + n * b.g!, 0));
    return bag;
  });
  const shares: Share[][] = plants.map(() => []);
  const targets: (Brought | null)[] = plants.map(() => null);
  groups.forEach((group, k) => {
    group.plants.forEach(({ at, target }) => (targets[at] = target));
    const all = group.plants.reduce((sum, { part }) => sum + part, 0);
    // What brings the same can be used up bag by bag, plant by plant; each plant has its part of every kind.
    const kinds = new Map<string, { bag: Bag; kg: number; strength: number }[]>();
    for (const [p, c] of gets[k]!) {
      const { grade } = products[p]!;
      const strength = strengthOf(grade);
      const kind = NUTRIENTS.map((n) => (grade[n] / strength).toFixed(6)).join();
      kinds.set(kind, [...(kinds.get(kind) ?? []), { bag: from[p]!, kg: x[c]!, strength }]);
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

/** The solver's arithmetic ends at a milligram; what it brings is taken to be just the target where it is so near, and where bags and nutrients then leave but one answer, that is taken. */
function polished(shares: readonly Share[], target: Brought | null): readonly Share[] {
  if (!target) return shares;
  const meant = (n: Nutrient): number => {
    const brings = shares.reduce((sum, s) => sum + s.g * s.bag.grade[n], 0);
    return Math.abs(brings - target[n]) < 0.02 ? target[n] : brings;
  };
  const exact = exactly(shares.map((s) => s.bag.grade), { N: meant('N'), P2O5: meant('P2O5'), K2O: meant('K2O') });
  return exact?.every((g, i) => Math.abs(g - shares[i]!.g) < 0.1) ? shares.map((s, i) => ({ bag: s.bag, g: exact[i]! })) : shares;
}
