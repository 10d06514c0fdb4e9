/**
 * Looks for inputs that break Medlar: real texts, changed by their own grammar, at every door, held against what must hold of every answer
 * (judge.mjs). `npm run fuzz -- 10 7`: ten minutes of CPU from seed 7 (or MEDLAR_FUZZ_MINUTES and MEDLAR_SEED; without a seed the clock gives one).
 * `npm run fuzz -- case 7 1234` repeats one case and prints it. Exit 1 where something was found.
 */
import { fork } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { bundled } from './bundle.mjs';
import { makeCase } from './cases.mjs';
import { judged } from './judge.mjs';

/** Of CPU; `sources` looks through every figure inside, whatever is asked. */
const SLOW_MS = 2000;
const slowFor = (argv) => (argv.includes('sources') ? 10_000 : SLOW_MS);
/** By the clock, for what never ends. */
const STUCK_MS = 120_000;
const path = await bundled();
const args = process.argv.slice(2);

if (args[0] === 'case') {
  const doors = await import(path);
  const c = makeCase(doors.dice, Number(args[1]), Number(args[2]));
  console.log(JSON.stringify({ ...c, bytes: c.bytes && Buffer.from(c.bytes).toString('base64') }, null, 1));
  const root = mkdtempSync(join(tmpdir(), 'medlar-fuzz-'));
  const { faults, ms } = await judged(doors, join(root, 'at'), c);
  rmSync(root, { recursive: true, force: true });
  console.log(`${ms.toFixed(0)} ms\n${faults.join('\n') || 'nothing found'}`);
  process.exit(faults.length > 0 ? 1 : 0);
}

const minutes = Number(args[0] ?? process.env.MEDLAR_FUZZ_MINUTES ?? 10);
const seed = Number(args[1] ?? process.env.MEDLAR_SEED ?? Date.now() % 1_000_000);
if (!(minutes > 0) || !Number.isInteger(seed)) throw new Error('minutes of CPU and a whole number as seed are expected: npm run fuzz -- 10 7');
console.log(`seed ${seed}, ${minutes} min of CPU`);

const finds = new Map();
const found = (number, door, argv, fault) => {
  // The same cause shows in many cases: one example is enough.
  const kind = `${door}: ${fault.replace(/\d+/g, '0').slice(0, 160)}`;
  if (!finds.has(kind)) console.log(`\nFOUND case ${seed} ${number} (${door}) ${JSON.stringify(argv).slice(0, 300)}\n  ${fault}`);
  finds.set(kind, (finds.get(kind) ?? 0) + 1);
};
let cases = 0;
let cpu = 0;
let slowest = { ms: 0 };
const doors = {};

/** One child from a case on; resolves to the next case, or null where the time is over. */
const some = (from) => new Promise((go) => {
  const child = fork(fileURLToPath(new URL('child.mjs', import.meta.url)), [path, seed, from, from + 4000], { stdio: ['ignore', 'inherit', 'pipe', 'ipc'] });
  let at = { number: from, door: '', since: performance.now() };
  let used = 0;
  let said = '';
  let next = from;
  let over = false;
  child.stderr.on('data', (chunk) => { said = (said + chunk).slice(-4000); });
  const watch = setInterval(() => {
    if (performance.now() - at.since < STUCK_MS || over) return;
    found(at.number, at.door, [], `not done after ${STUCK_MS / 1000} s`);
    child.kill('SIGKILL');
  }, 500);
  child.on('message', (m) => {
    if ('begun' in m) {
      at = { number: m.begun, door: m.door, since: performance.now() };
      next = m.begun + 1;
      return;
    }
    cases += 1;
    doors[m.door] = (doors[m.door] ?? 0) + 1;
    used = (m.cpu.user + m.cpu.system) / 60e6;
    if (m.ms > slowest.ms) slowest = { ms: m.ms, number: m.done, door: m.door };
    if (m.ms > slowFor(m.argv)) found(m.done, m.door, m.argv, `slow: ${Math.round(m.ms / 1000)} s`);
    for (const fault of m.faults) found(m.done, m.door, m.argv, fault);
    if (cpu + used >= minutes && !over) {
      over = true;
      child.send('stop');
    }
  });
  child.on('close', (code) => {
    clearInterval(watch);
    if (at.door === '') throw new Error(`no case was begun: ${said}`);
    cpu += used;
    if (code !== 0 && code !== null) found(at.number, at.door, [], `the process ended with ${code}: ${said.trim().slice(-600)}`);
    go(over ? null : next);
  });
});

for (let next = 0; next !== null;) next = await some(next);
console.log(`\nseed ${seed}: ${cases} cases in ${cpu.toFixed(1)} min of CPU (${Object.entries(doors).map(([d, n]) => `${d} ${n}`).join(', ')}); slowest ${slowest.ms.toFixed(0)} ms, case ${slowest.number} (${slowest.door}); ${finds.size === 0 ? 'nothing found' : `${finds.size} kinds of fault`}`);
for (const [kind, n] of finds) console.log(`${String(n).padStart(5)}  ${kind}`);
process.exit(finds.size > 0 ? 1 : 0);
