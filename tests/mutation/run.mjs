/**
 * How many faults planted in the code the tests find: one line a room, exit 1 where a room is under 85 %.
 * All three rooms take hours. A part: npm run mutate -- src/units src/soil/line.ts:10-60, which also lists what survived.
 * A sample: npm run mutate -- 1/20 src/soil tries each twentieth mutant of the room and prints how far the score may be off
 * (two standard errors of a share, drawn without putting back); sampled.mjs says how it is drawn.
 * MEDLAR_WORKERS=4 uses four processors.
 */
import { existsSync, readdirSync, statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { Stryker } from '@stryker-mutator/core';
import { isSampled } from './sampled.mjs';

const ROOMS = ['units', 'rating', 'soil'];
const LEAST = 85;
const SAMPLE = /^1\/([1-9]\d*)$/;
const every = Number(process.argv.slice(2).map((a) => SAMPLE.exec(a)?.[1]).find(Boolean) ?? 1);
const asked = process.argv.slice(2).filter((a) => !SAMPLE.test(a));

for (const part of asked) {
  if (!existsSync(part.replace(/:[\d:-]+$/, '')) || !ROOMS.some((room) => part.startsWith(`src/${room}`))) throw new Error(`${part}: a folder or file of ${ROOMS.map((room) => `src/${room}`).join(', ')} is expected.`);
}

/** A mutant that never ends counts as killed; one that was told to be left alone counts as none. */
function line(name, mutants) {
  const of = (...statuses) => mutants.filter((m) => statuses.includes(m.status)).length;
  const [killed, survived, noCoverage] = [of('Killed', 'Timeout'), of('Survived'), of('NoCoverage')];
  const tried = killed + survived + noCoverage;
  if (tried === 0) return;
  const share = killed / tried;
  const error = every === 1 ? '' : ` ± ${(200 * Math.sqrt((share * (1 - share) * (1 - 1 / every)) / tried)).toFixed(1)}`;
  console.log(`${name.padEnd(24)} killed ${String(killed).padStart(5)}  survived ${String(survived).padStart(5)}  no coverage ${String(noCoverage).padStart(5)}  score ${(100 * share).toFixed(1).padStart(5)}${error} %`);
  if (100 * share < LEAST) process.exitCode = 1;
}

process.env.MEDLAR_EVERY = String(every);
for (const room of ROOMS) {
  const parts = asked.length > 0 ? asked.filter((part) => part.startsWith(`src/${room}`)) : [`src/${room}`];
  if (parts.length === 0) continue;
  process.env.MEDLAR_ROOM = room;
  const files = parts.flatMap((part) => (existsSync(part) && statSync(part).isDirectory() ? readdirSync(part).map((file) => `${part}/${file}`) : [part]));
  const mutants = [];
  // One at a time: which test reaches which mutant of a whole room is more than a process holds.
  for (const file of files) {
    const all = await new Stryker({
      configFile: 'tests/mutation/stryker.config.mjs',
      plugins: ['@stryker-mutator/vitest-runner', fileURLToPath(new URL('sampled.mjs', import.meta.url))],
      testRunner: 'sampled',
      reporters: asked.length > 0 || every > 1 ? ['survivors'] : [],
      mutate: [file],
    }).runMutationTest();
    const mine = all.filter((m) => isSampled(m.id));
    if (asked.length > 0 && every === 1) line(file, mine);
    mutants.push(...mine);
  }
  line(room, mutants);
}
