/** How the mutants are made and tried; run.mjs says of which files. The copy that is mutated stands in the system's folder for passing things. */
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export default {
  vitest: { configFile: 'tests/mutation/vitest.config.ts', related: false },
  coverageAnalysis: 'perTest',
  tempDirName: join(tmpdir(), 'medlar-mutation'),
  ignorePatterns: ['dist'],
  logLevel: 'error',
  concurrency: Number(process.env.MEDLAR_WORKERS ?? 1),
  timeoutMS: 10_000,
  dryRunTimeoutMinutes: 20,
};
