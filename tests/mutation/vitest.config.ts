/** The tests that exercise soil, rating and units, and no others: every mutant runs those of them that reach it. */
import { defineConfig, mergeConfig } from 'vitest/config';
import base from '../vitest.config.ts';

export default mergeConfig({ ...base, test: { ...base.test, include: undefined, reporters: undefined } }, defineConfig({
  test: {
    include: [
      'tests/{units,soil,rating,rating-units,rating-sense,texture,tables,reports,generated}/**/*.test.ts',
      'tests/hostile/reports*.test.ts',
      'tests/published/*/{ratings,readings,sample,contents,units,salts}.test.ts',
    ],
    // A cut of the 2,000 made reports, and of the cases of each property: enough to tell a mutant, quick enough to do it thousands of times.
    env: { MEDLAR_RUNS: '150' },
    reporters: [{}],
  },
}));
