/**
 * How many faults planted in the code the tests find: one line a room, exit 1 where a room is under its least share (rooms.mjs).
 * A part: npm run mutate -- src/units src/soil/line.ts; `src` alone means the files in src itself.
 * A sample: npm run mutate -- 1/20 src/soil tries each twentieth mutant and prints how far the score may be off
 * (two standard errors of a share, drawn without putting back); sample.mjs says how it is drawn.
 * What lives is looked at a second time, with more patience. Stryker's instrumenter plants; trials.ts tries them where the code stands loaded. What works only as the code loads cannot be switched later
 * and is tried from anew, a start for each: MEDLAR_STARTS=0 leaves these out, and says how many they are.
 */
import { existsSync, readFileSync, readdirSync, statSync } from 'node:fs';
import { relative, resolve } from 'node:path';
import { Instrumenter } from '@stryker-mutator/instrumenter';
import { startVitest } from 'vitest/node';
import { ROOMS, folderOf } from './rooms.mjs';
import { isSampled } from './sample.mjs';

const SAMPLE = /^1\/([1-9]\d*)$/;
const every = Number(process.argv.slice(2).map((a) => SAMPLE.exec(a)?.[1]).find(Boolean) ?? 1);
const asked = process.argv.slice(2).filter((a) => !SAMPLE.test(a)).map((a) => a.replace(/\/$/, ''));
const starts = Number(process.env.MEDLAR_STARTS ?? Infinity);

/** The room that a folder or a file belongs to. */
const roomOf = (part) => Object.keys(ROOMS).find((room) => (room === 'src' ? /^src(\/[^/]+\.ts)?$/.test(part) : part === folderOf(room) || part.startsWith(`${folderOf(room)}/`)));
for (const part of asked) {
  if (!existsSync(part) || !roomOf(part)) throw new Error(`${part}: a folder or file of ${Object.keys(ROOMS).map(folderOf).join(', ')} is expected.`);
}

const isCode = (file) => /(?<!\.d)\.ts$/.test(file);
const filesOf = (part) => (statSync(part).isDirectory() ? readdirSync(part).filter(isCode).map((file) => `${part}/${file}`) : [part]);
const quiet = { isDebugEnabled: () => false, debug() {}, info() {}, warn() {} };

async function planted(files) {
  return new Instrumenter(quiet).instrument(files.map((name) => ({ name: resolve(name), mutate: true, content: readFileSync(name, 'utf8') })), { plugins: null, excludedMutations: [], ignorers: [], noHeader: false });
}

/** The tests of the room once through, on the planted code; what each test file told of the mutants. */
async function go(texts) {
  const vitest = await startVitest('test', [], { config: 'tests/mutation/vitest.config.ts', watch: false }, { plugins: [{ name: 'planted', enforce: 'pre', load: (id) => texts.get(id) ?? null }] });
  const files = vitest.state.getFiles();
  const failed = files.filter((file) => file.result?.state === 'fail').map((file) => file.name);
  await vitest.close();
  return { failed, told: files.map((file) => file.meta.told).filter(Boolean) };
}

async function tryAll(files) {
  const { files: texts, mutants } = await planted(files);
  const byPath = new Map(texts.map((file) => [file.name, file.content]));
  const { failed, told } = await go(byPath);
  if (failed.length > 0) console.log(`These fail without any mutant, what they say does not count: ${failed.join(', ')}`);
  const killed = new Set(told.flatMap((t) => t.killed));
  const reached = new Set(told.flatMap((t) => t.reached));
  const loaded = new Set(told.flatMap((t) => t.loaded));
  const lived = mutants.filter((m) => isSampled(m.id) && reached.has(m.id) && !killed.has(m.id)).map((m) => m.id);
  if (lived.length > 0) {
    process.env.MEDLAR_ONLY = lived.join(',');
    for (const id of (await go(byPath)).told.flatMap((t) => t.killed)) killed.add(id);
    delete process.env.MEDLAR_ONLY;
  }
  const mine = mutants.filter((m) => isSampled(m.id)).map((m) => ({ ...m, status: killed.has(m.id) ? 'killed' : reached.has(m.id) ? 'survived' : loaded.has(m.id) ? 'loads' : 'never run' }));
  let left = starts;
  for (const m of mine.filter((one) => one.status === 'loads')) {
    if (left-- <= 0) break;
    process.env.__STRYKER_ACTIVE_MUTANT__ = m.id;
    m.status = (await go(byPath)).failed.length > 0 ? 'killed' : 'survived';
  }
  delete process.env.__STRYKER_ACTIVE_MUTANT__;
  process.exitCode = 0;
  return mine;
}

const under = [];
function line(name, mutants, least) {
  const of = (status) => mutants.filter((m) => m.status === status).length;
  const [killed, survived, never, loads] = [of('killed'), of('survived'), of('never run'), of('loads')];
  const tried = killed + survived + never;
  if (tried === 0) return;
  const share = killed / tried;
  const error = every === 1 ? '' : ` ± ${(200 * Math.sqrt((share * (1 - share) * (1 - 1 / every)) / tried)).toFixed(1)}`;
  console.log(`${name.padEnd(28)} killed ${String(killed).padStart(5)}  survived ${String(survived).padStart(5)}  never run ${String(never).padStart(5)}  score ${(100 * share).toFixed(1).padStart(5)}${error} %${loads > 0 ? `  (left out, as they work while loading: ${loads})` : ''}`);
  if (100 * share < least) under.push(name);
}

process.env.MEDLAR_EVERY = String(every);
for (const [room, { least }] of Object.entries(ROOMS)) {
  const parts = asked.length > 0 ? asked.filter((part) => roomOf(part) === room) : [folderOf(room)];
  if (parts.length === 0) continue;
  process.env.MEDLAR_ROOM = room;
  const files = parts.flatMap(filesOf);
  const mutants = await tryAll(files);
  for (const m of mutants) {
    if (m.status !== 'killed') console.log(`${relative('', m.fileName)}:${m.location.start.line + 1}:${m.location.start.column + 1} ${m.status}, ${m.mutatorName}: ${m.replacement.replace(/\s+/g, ' ').slice(0, 160)}`);
  }
  if (asked.length > 0) for (const file of files) line(file, mutants.filter((m) => relative('', m.fileName) === file), 0);
  line(room, mutants, least);
}
process.exitCode = under.length > 0 ? 1 : 0;
