/**
 * How many faults planted in the code the tests find: one line a room, exit 1 where a room is under 85 %.
 * All three rooms take hours. A part: npm run mutate -- src/units src/soil/line.ts:10-60, which also lists what survived.
 * MEDLAR_WORKERS=4 uses four processors.
 */
import { existsSync, statSync } from 'node:fs';
import { relative } from 'node:path';
import { Stryker } from '@stryker-mutator/core';

const ROOMS = ['units', 'rating', 'soil'];
const LEAST = 85;
const asked = process.argv.slice(2);

for (const part of asked) {
  if (!existsSync(part.replace(/:[\d:-]+$/, '')) || !ROOMS.some((room) => part.startsWith(`src/${room}`))) throw new Error(`${part}: a folder or file of ${ROOMS.map((room) => `src/${room}`).join(', ')} is expected.`);
}

const where = (m) => `${relative('', m.fileName)}:${m.location.start.line}:${m.location.start.column}`;
const lived = (m) => m.status === 'Survived' || m.status === 'NoCoverage';

/** A mutant that never ends counts as killed; one that was told to be left alone counts as none. */
function line(name, mutants) {
  const of = (...statuses) => mutants.filter((m) => statuses.includes(m.status)).length;
  const [killed, survived, noCoverage] = [of('Killed', 'Timeout'), of('Survived'), of('NoCoverage')];
  const score = (100 * killed) / (killed + survived + noCoverage);
  console.log(`${name.padEnd(24)} killed ${String(killed).padStart(5)}  survived ${String(survived).padStart(5)}  no coverage ${String(noCoverage).padStart(5)}  score ${score.toFixed(1).padStart(5)} %`);
  if (score < LEAST) process.exitCode = 1;
}

for (const room of ROOMS) {
  const parts = asked.length > 0 ? asked.filter((part) => part.startsWith(`src/${room}`)) : [`src/${room}`];
  if (parts.length === 0) continue;
  process.env.MEDLAR_ROOM = room;
  const mutants = await new Stryker({ configFile: 'tests/mutation/stryker.config.mjs', mutate: parts.map((part) => (existsSync(part) && statSync(part).isDirectory() ? `${part}/**/*.ts` : part)) }).runMutationTest();
  if (asked.length > 0) {
    for (const m of mutants.filter(lived)) console.log(`${where(m)} ${m.status === 'NoCoverage' ? 'never run, ' : ''}${m.mutatorName}: ${m.replacement.replace(/\s+/g, ' ').slice(0, 160)}`);
    for (const file of new Set(mutants.map((m) => relative('', m.fileName)))) line(file, mutants.filter((m) => relative('', m.fileName) === file));
  }
  line(room, mutants);
}
