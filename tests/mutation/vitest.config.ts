/** The tests that exercise a room, and no others, the quick and telling ones first: each mutant of that room runs those of them that reach it, up to the first that fails. */
import { defineConfig, mergeConfig } from 'vitest/config';
import { BaseSequencer } from 'vitest/node';
import base from '../vitest.config.ts';

// What reports say, and for the other rooms what is made of it.
const PUBLISHED = process.env.MEDLAR_ROOM === 'soil' ? 'tests/published/*/{readings,sample,contents,units}.test.ts' : 'tests/published/*/{ratings,readings,sample,contents,units,salts}.test.ts';
const TESTS: Record<string, readonly string[]> = {
  units: ['tests/units/', 'tests/rating-units/', 'tests/published/'],
  rating: ['tests/rating-units/', 'tests/texture/', 'tests/rating-sense/', 'tests/rating/', 'tests/published/'],
  soil: ['tests/soil-units/', 'tests/reports/', 'tests/tables/', 'tests/generated/', 'tests/published/', 'tests/soil/', 'tests/hostile/'],
};
const tests = TESTS[process.env.MEDLAR_ROOM ?? 'soil']!;

class QuickFirst extends BaseSequencer {
  override sort(files: Parameters<BaseSequencer['sort']>[0]): ReturnType<BaseSequencer['sort']> {
    const place = (file: string): number => tests.findIndex((folder) => file.includes(folder));
    return Promise.resolve(files.toSorted((a, b) => place(a.moduleId) - place(b.moduleId) || (a.moduleId < b.moduleId ? -1 : 1)));
  }
}

export default mergeConfig({ ...base, test: { ...base.test, include: undefined, reporters: undefined } }, defineConfig({
  test: {
    include: tests.map((folder) => (folder === 'tests/published/' ? PUBLISHED : folder === 'tests/hostile/' ? `${folder}reports*.test.ts` : `${folder}*.test.ts`)),
    // Minutes of long texts, which must end in time (Stryker's own clock tells of a mutant that does not), and hundreds of made reports a property.
    exclude: ['tests/soil/any-text.test.ts', 'tests/soil/reader-properties.test.ts', 'tests/hostile/reports-signs.test.ts'],
    // A cut of the 2,000 made reports, and so many cases of each property: enough to tell a mutant, quick enough to do it thousands of times.
    env: { MEDLAR_RUNS: '100' },
    sequence: { sequencer: QuickFirst },
    isolate: false,
    setupFiles: ['tests/mutation/load.ts'],
    reporters: [{}],
  },
}));
