/** How the mutants are made and tried; run.mjs says of which files. The copy that is mutated stands in the system's folder for passing things. */
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export default {
  testRunner: 'vitest',
  vitest: { configFile: 'tests/mutation/vitest.config.ts', related: false },
  coverageAnalysis: 'perTest',
  tempDirName: join(tmpdir(), 'medlar-mutation'),
  ignorePatterns: ['dist'],
  reporters: process.stdout.isTTY ? ['progress'] : [],
  logLevel: 'error',
  concurrency: Number(process.env.MEDLAR_WORKERS ?? 1),
  timeoutMS: 10_000,
};
