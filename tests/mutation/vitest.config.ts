/** The tests of one room in the order of rooms.mjs: each mutant of that room runs those of them that reach it, up to the first that fails. */
import { defineConfig, mergeConfig } from 'vitest/config';
import { BaseSequencer } from 'vitest/node';
import base from '../vitest.config.ts';
import { ROOMS } from './rooms.mjs';

const named = ROOMS[process.env.MEDLAR_ROOM ?? 'soil']!.tests;
const tests = named.filter((name) => !name.startsWith('!'));
const left = named.filter((name) => name.startsWith('!')).map((name) => name.slice(1));
const begins = tests.map((name) => new RegExp(`/${name.replaceAll('*', '[^/]+').replace('.', '\\.')}`));

class QuickFirst extends BaseSequencer {
  override sort(files: Parameters<BaseSequencer['sort']>[0]): ReturnType<BaseSequencer['sort']> {
    // The name that says most of a file is the one that counts.
    const place = (file: string): number => tests.indexOf(tests.filter((_, i) => begins[i]!.test(file)).toSorted((a, b) => b.length - a.length)[0]!);
    return Promise.resolve(files.toSorted((a, b) => place(a.moduleId) - place(b.moduleId) || (a.moduleId < b.moduleId ? -1 : 1)));
  }
}

export default mergeConfig({ ...base, test: { ...base.test, include: undefined, reporters: undefined } }, defineConfig({
  test: {
    include: tests.map((name) => `${name}*.test.ts`),
    exclude: left.map((name) => `${name}*.test.ts`),
    // A cut of the 2,000 made reports, and so many cases of each property: enough to tell a mutant, quick enough to do it thousands of times.
    env: { MEDLAR_RUNS: '100', MEDLAR_ORCHARDS: '8' },
    sequence: { sequencer: QuickFirst },
    isolate: false,
    pool: 'threads',
    maxWorkers: 1,
    fileParallelism: false,
    setupFiles: ['tests/mutation/load.ts', 'tests/mutation/trials.ts'],
    // Of a mutant that is there from the start the first failure says enough.
    bail: process.env.__STRYKER_ACTIVE_MUTANT__ ? 1 : 0,
    reporters: [{}],
  },
}));
