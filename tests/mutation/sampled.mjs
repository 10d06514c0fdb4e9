/**
 * Stryker's vitest runner, that leaves out what a sample leaves out, and a reporter that names each survivor as soon as it is known and says how far it is.
 * The sample is each nth mutant of a file by Stryker's own numbering, from its top: no choice of ours,
 * and every file, and every kind of mutant, has its share. What is left out is answered as an error, which no score counts.
 */
import { relative } from 'node:path';
import { strykerPlugins as vitest } from '@stryker-mutator/vitest-runner';

export const isSampled = (id, every = Number(process.env.MEDLAR_EVERY ?? 1)) => Number(id) % every === Math.floor(every / 2);
const lived = (m) => m.status === 'Survived' || m.status === 'NoCoverage';
const place = (m) => `${relative('', m.fileName)}:${m.location.start.line}:${m.location.start.column}`;

const { factory } = vitest.find((p) => p.name === 'vitest');
function sampling(injector) {
  const runner = factory(injector);
  const run = runner.mutantRun.bind(runner);
  runner.mutantRun = (options) => (isSampled(options.activeMutant.id) ? run(options) : Promise.resolve({ status: 'error', errorMessage: 'not in the sample' }));
  return runner;
}
sampling.inject = factory.inject;

let [tried, most, from] = [0, 0, 0];
const naming = () => ({
  onMutationTestingPlanReady({ mutantPlans }) { [tried, most, from] = [0, mutantPlans.filter((p) => isSampled(p.mutant.id)).length, Date.now()]; },
  onMutantTested(m) {
    if (isSampled(m.id) && ++tried % 25 === 0) console.error(`${tried} of ${most} mutants tried in ${Math.round((Date.now() - from) / 1000)} s`);
    if (lived(m) && isSampled(m.id)) console.log(`${place(m)} ${m.status === 'NoCoverage' ? 'never run, ' : ''}${m.mutatorName}: ${m.replacement.replace(/\s+/g, ' ').slice(0, 160)}`);
  },
});

export const strykerPlugins = [
  { kind: 'TestRunner', name: 'sampled', factory: sampling },
  { kind: 'Reporter', name: 'survivors', factory: naming },
];
