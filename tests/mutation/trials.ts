/**
 * Tries the mutants where the code already stands loaded: after each test, the test runs again for each mutant that it reached and no test killed so far.
 * To start the tests anew for every mutant takes seconds a mutant; this takes what the test takes.
 * A kill counts only where the same test passes again without the mutant, so that nothing a mutant left behind counts for another.
 * What a test keeps from an earlier one (an answer asked once for several tests) hides a mutant, so that the score is rather too low than too high.
 */
import { setMaxListeners } from 'node:events';
import fc from 'fast-check';
import { afterAll, afterEach, beforeEach } from 'vitest';
import { getFn } from 'vitest/suite';
import { isSampled } from './sample.mjs';

interface Switch {
  activeMutant?: string | undefined;
  currentTestId?: string;
  hitCount?: number | undefined;
  hitLimit?: number;
  mutantCoverage?: { static: Record<string, number>; perTest: Record<string, Record<string, number>> };
}

const space = globalThis as unknown as { __stryker__?: Switch; medlarKilled?: Set<string>; medlarSpent?: Map<string, number> };
const stryker = (space.__stryker__ ??= {});
const killed = (space.medlarKilled ??= new Set());
const spent = (space.medlarSpent ??= new Map());
const told = { killed: [] as string[], reached: new Set<string>(), loaded: [] as string[] };
/** An endless loop comes by its mutant again and again. */
const MANY = 100;
/**
 * So much time of the processor, in ms, is spent on a mutant that every test lets live: in one file of tests, and in all.
 * Where each of hundreds of cases runs through it, that is soon gone: those that live so are looked at a second time, for longer.
 */
const [A_FILE, ALL] = process.env.MEDLAR_ONLY ? [3000, 60_000] : [300, 4000];
const here = new Map<string, number>();
const spentBy = (): number => process.cpuUsage().user / 1000;

// Vitest adds a listener a file. To know that a property fails is enough, whatever its smallest case.
setMaxListeners(0);
fc.configureGlobal({ ...fc.readConfigureGlobal(), endOnFailure: true });

const passes = async (fn: () => unknown): Promise<boolean> => {
  try {
    await fn();
    return true;
  } catch {
    return false;
  }
};

// A mutant that was there from the start has nothing else tried beside it.
if (!process.env.__STRYKER_ACTIVE_MUTANT__) {
  beforeEach(() => { stryker.currentTestId = 'test'; });
  afterEach(async ({ task }) => {
    const all = stryker.mutantCoverage?.perTest ?? {};
    const reached = Object.entries(all.test ?? {}).filter(([id]) => isSampled(id));
    const fn = getFn(task);
    stryker.currentTestId = 'trial';
    for (const [id, times] of reached) {
      told.reached.add(id);
      const before = spent.get(id) ?? 0;
      const mine = here.get(id) ?? 0;
      if (killed.has(id) || before > ALL || mine > A_FILE) continue;
      const from = spentBy();
      [stryker.activeMutant, stryker.hitCount, stryker.hitLimit] = [id, 0, MANY * (times + 10)];
      const lives = await passes(fn);
      [stryker.activeMutant, stryker.hitCount] = [undefined, undefined];
      const took = spentBy() - from;
      spent.set(id, before + took);
      here.set(id, mine + took);
      if (lives) continue;
      if (!(await passes(fn))) throw new Error(`mutant ${id} left something behind`);
      killed.add(id);
      told.killed.push(id);
    }
    delete all.test;
    delete all.trial;
    stryker.currentTestId = '';
  }, 1e9);
  // Vitest asks for this form of the first argument.
  afterAll(({}, suite) => {
    if (process.env.MEDLAR_PROGRESS) process.stderr.write(`${suite.name}: ${killed.size} killed of ${spent.size}\n`);
    Object.assign(suite.meta, { told: { killed: told.killed, reached: [...told.reached], loaded: Object.keys(stryker.mutantCoverage?.static ?? {}) } });
  });
}
