/**
 * Properties are tried on the same cases in every run, so that a green commit stays green.
 * To search further: MEDLAR_SEED=7 MEDLAR_RUNS=5000 npx vitest run --config tests/vitest.config.ts
 */
import fc from 'fast-check';

fc.configureGlobal({ seed: Number(process.env.MEDLAR_SEED ?? 20260314), ...(process.env.MEDLAR_RUNS ? { numRuns: Number(process.env.MEDLAR_RUNS) } : {}) });
