// The purchase against things outside the program: every way to buy tried one by one, two solvers of other hands (yalps and HiGHS)
// against each other, a third (GLPK's glpsol) where it is installed, and plain arithmetic. Orchards are generated; seed fixed.
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { solve } from 'yalps';
import type { Plant } from '../../src/bags/allot.ts';
import { allot } from '../../src/bags/allot.ts';
import { highsSolver } from '../../src/bags/by-highs.ts';
import { byYalps } from '../../src/bags/by-yalps.ts';
import type { Program, Solver, Sum } from '../../src/bags/program.ts';
import { keeps } from '../../src/bags/program.ts';
import type { Bag } from '../../src/orchard/bag.ts';
import { NUTRIENTS } from '../../src/units/substance.ts';

const MANY = Number(process.env.MEDLAR_ORCHARDS ?? 1000);

/** Numbers between 0 and 1, the same each time (mulberry32). */
function random(seed: number): () => number {
  let a = seed;
  return () => {
    a = (a + 0x6d2b79f5) | 0;
    let t = Math.imul(a ^ (a >>> 15), 1 | a);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

const GRADES = [[10, 10, 10], [21, 0, 0], [46, 0, 0], [0, 46, 0], [0, 0, 60], [0, 0, 50], [5, 10, 10], [12, 12, 17], [16, 4, 8], [24, 8, 16], [3, 15, 0], [6, 2, 1], [18, 46, 0], [13, 0, 44], [5, 10, 5], [4, 12, 12], [15, 0, 0], [11, 52, 0], [0, 20, 0], [9, 6, 6]] as const;
const SIZES = [1000, 1814, 2268, 4536, 9072, 11_340, 18_144, 22_680];

const bagOf = (label: string, [n, p, k]: readonly [number, number, number], g: number | null, price: number | null, left: number | null = null): Bag => ({
  label, printed: `${n}-${p}-${k}`, grade: { N: n / 100, P2O5: p / 100, K2O: k / 100 }, g, price: price === null ? null : { amount: price, currency: '$' }, left,
  material: null, slow: false, liquid: false, chloride: false, weedKiller: false, place: { file: 'orchard.yaml' },
} as Bag);

type Case = { readonly plants: Plant[]; readonly shed: Bag[]; readonly store: Bag[] };
function orchardOf(seed: number, mostPlants = 60, mostBags = 20): Case {
  const r = random(seed);
  const pick = <T>(of: readonly T[]): T => of[Math.floor(r() * of.length)]!;
  const some = (most: number): number => 1 + Math.floor(r() * r() * most);
  const store = Array.from({ length: some(mostBags) }, (_, i) => bagOf(`S${String(i).padStart(2, '0')}`, pick(GRADES), pick(SIZES), Math.round(300 + r() * 4000) / 100));
  const shed = r() < 0.4 ? Array.from({ length: some(3) }, (_, i) => bagOf(`H${i}`, pick(GRADES), 4536, null, Math.round(r() * 4536))) : [];
  const all = [...shed, ...store];
  const plants = Array.from({ length: some(mostPlants) }, (): Plant => {
    const kind = r();
    const n = Math.round(5 + r() * 180);
    return {
      wants: { N: kind < 0.05 ? 0 : n, P2O5: r() < 0.6 ? 0 : Math.round(r() * 60), K2O: r() < 0.5 ? 0 : Math.round(r() * 90) },
      usable: r() < 0.15 ? all.filter(() => r() < 0.7) : all, mostQuick: Infinity, count: r() < 0.8 ? 1 : 1 + Math.floor(r() * 6),
    };
  });
  return { plants, shed, store };
}

type Outcome = { readonly cost: number; readonly bought: ReadonlyMap<Bag, number>; readonly brought: readonly (readonly number[])[]; readonly sure: boolean };
/** What came out, reckoned afresh from the shares: nothing of the program's own sums is believed. */
function outcome({ plants, shed, store }: Case, solver: Solver): Outcome & { readonly shares: ReturnType<typeof allot>['shares'] } {
  const { shares, stock, sure } = allot(plants, shed, store, solver);
  const brought = shares.map((mine) => NUTRIENTS.map((n) => mine.reduce((sum, s) => sum + s.g * s.bag.grade[n], 0)));
  const bought = new Map<Bag, number>();
  for (const b of store) {
    const mine = stock.get(b) ?? 0;
    if (mine > 0) bought.set(b, Math.round(mine / b.g!));
  }
  return { cost: [...bought].reduce((sum, [b, n]) => sum + n * b.price!.amount, 0), bought, brought, sure, shares };
}

let highs: Solver;
beforeAll(async () => { highs = await highsSolver(); });

/** yalps as it comes, without our limits. */
const plainYalps: Solver = (program, least) => {
  const variables = Array.from({ length: program.columns }, (_, i): [string, [string, number][]] => [`${i}`, [...program.rows.flatMap(({ of }, r): [string, number][] => (of.has(i) ? [[`r${r}`, of.get(i)!]] : [])), ['o', least.get(i) ?? 0]]]);
  const found = solve<string, string>({ direction: 'minimize', objective: 'o', constraints: program.rows.map((row, r): [string, object] => [`r${r}`, { ...(row.least === undefined ? {} : { min: row.least }), ...(row.most === undefined ? {} : { max: row.most }) }]), variables, integers: [...program.whole].map(String) }, { timeout: 2000, maxIterations: 1e7, maxPivots: 1e6 });
  const x = Array.from({ length: program.columns }, () => 0);
  for (const [name, v] of found.variables) x[Number(name)] = v;
  return found.status === 'optimal' ? { status: 'best', x, value: found.result } : { status: found.status === 'infeasible' ? 'none' : 'gave-up' };
};

describe('1,000 orchards', () => {
  test('the shares keep every limit, and two solvers agree on the cost', { timeout: 600_000 }, () => {
    let [worst, compared, unsure, slow] = [0, 0, 0, 0];
    for (let seed = 1; seed <= MANY; seed++) {
      const c = orchardOf(seed);
      const from = performance.now();
      const mine = outcome(c, (p, o) => { const quick = byYalps(p, o); return quick.status === 'gave-up' ? highs(p, o) : quick; });
      const took = performance.now() - from;
      worst = Math.max(worst, took);
      if (took > 500) slow++;
      if (!mine.sure) unsure++;
      // Plain arithmetic: nitrogen never over, no more out of a bag than is in it, only what the plant may have.
      c.plants.forEach((plant, i) => {
        expect(mine.brought[i]![0], `${seed}: N of plant ${i}`).toBeLessThanOrEqual(plant.wants.N * (1 + 1e-4) + 0.05);
        for (const s of mine.shares[i]!) expect(plant.usable, `${seed}`).toContain(s.bag);
      });
      for (const bag of [...c.shed, ...c.store]) {
        const used = mine.shares.reduce((sum, shares, i) => sum + c.plants[i]!.count * shares.filter((s) => s.bag === bag).reduce((g, s) => g + s.g, 0), 0);
        expect(used, `${seed}: ${bag.label}`).toBeLessThanOrEqual((bag.left ?? (mine.bought.get(bag) ?? 0) * bag.g!) * (1 + 1e-4) + 0.1);
      }
      if (seed % 4 === 0) {
        const other = outcome(c, seed % 8 === 0 ? plainYalps : highs);
        if (!other.sure) continue;
        compared++;
        expect(mine.cost, `${seed}`).toBeCloseTo(other.cost, 2);
        NUTRIENTS.forEach((n, k) => expect(mine.brought.reduce((sum, b, i) => sum + b[k]! * c.plants[i]!.count, 0), `${seed} ${n}`).toBeCloseTo(other.brought.reduce((sum, b, i) => sum + b[k]! * c.plants[i]!.count, 0), -0.5));
      }
    }
    console.log(`${MANY} orchards: worst ${worst.toFixed(0)} ms, ${slow} over 500 ms, ${unsure} without proof, ${compared} compared`);
    expect(unsure).toBe(0);
    expect(slow).toBeLessThanOrEqual(MANY / 100);
    expect(worst).toBeLessThan(6000);
    expect(compared).toBeGreaterThan(MANY / 6);
  });
});
