/** Tries cases one after the other and tells its parent of each; a case that never ends is ended by the parent. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { makeCase } from './cases.mjs';
import { judged } from './judge.mjs';

const [path, seed, from, until] = process.argv.slice(2);
const doors = await import(path);
await Promise.all(['de', 'es'].map((l) => doors.loadLanguage(l)));
const root = mkdtempSync(join(tmpdir(), 'medlar-fuzz-'));
let stop = false;
process.on('message', () => { stop = true; });
process.on('disconnect', () => { stop = true; });
/** What every case loads is loaded before the first is timed. */
for (const c of ['plan', 'read', 'weigh', 'blend', 'shop', 'sources', 'schema', 'sheet', 'diary', 'new', 'page', 'ph', 'why', 'years', 'check']) await judged(doors, join(root, 'at'), { argv: c === 'weigh' ? [c, '1 lb N', '10-10-10', '21-0-0'] : c === 'blend' ? [c, '10-10-10', '21-0-0'] : [c], files: {}, today: '2026-03-14' });
const tell = (what) => new Promise((go) => { process.send(what, () => { go(); }); });

for (let i = Number(from); i < Number(until) && !stop; i += 1) {
  const c = makeCase(doors.dice, Number(seed), i);
  await tell({ begun: i, door: c.name });
  const { faults, ms } = await judged(doors, join(root, 'at'), c);
  await tell({ done: i, door: c.name, ms, faults, argv: c.argv ?? [c.door], cpu: process.cpuUsage() });
}
rmSync(root, { recursive: true, force: true });
process.disconnect();
