/** Start-up: medians of interleaved rounds, as ratios to an empty program in the same run; then what the bundle weighs. */
import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, readFileSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { median } from './median.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const dist = join(root, 'dist');
const medlar = join(dist, 'medlar.js');
const [WARM, ROUNDS] = [3, 21];
if (!existsSync(medlar)) {
  console.error('No build. Run: npm run build');
  process.exit(1);
}

const folder = mkdtempSync(join(tmpdir(), 'medlar-bench-'));
cpSync(join(root, 'samples/chapel-bank'), folder, { recursive: true });
const day = ['--today', '2026-03-14'];
const cases = [
  { name: 'node -e 0', argv: ['-e', '0'] },
  { name: 'medlar --help', argv: [medlar, '--help'], aim: 1.25 },
  { name: 'medlar check', argv: [medlar, 'check', ...day], aim: 1.4 },
  { name: 'medlar plan', argv: [medlar, 'plan', ...day], aim: 1.8 },
  { name: 'medlar sheet', argv: [medlar, 'sheet', '--force', ...day], aim: 2.0 },
  { name: 'medlar ph', argv: [medlar, 'ph', ...day] },
  { name: 'medlar weigh', argv: [medlar, 'weigh', '0.5 lb N, 0.2 lb P2O5, 0.4 lb K2O', '18-46-0', '46-0-0', '0-0-60', ...day] },
  { name: 'medlar shop', argv: [medlar, 'shop', ...day] },
].map((c) => ({ ...c, times: [] }));

try {
  for (let round = -WARM; round < ROUNDS; round += 1) {
    for (const { name, argv, times } of cases) {
      const before = performance.now();
      const { status, stderr } = spawnSync(process.execPath, argv, { cwd: folder, encoding: 'utf8' });
      const took = performance.now() - before;
      if (status !== 0) throw new Error(`${name} ended with ${status}: ${stderr}`);
      if (round >= 0) times.push(took);
    }
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}

const floor = median(cases[0].times);
console.log(`Node ${process.versions.node}, ${ROUNDS} rounds, medians\n`);
console.log(`${'command'.padEnd(16)}${'ms'.padStart(7)}${'ratio'.padStart(8)}${'aim'.padStart(7)}`);
for (const { name, times, aim } of cases) {
  const ms = median(times);
  console.log(`${name.padEnd(16)}${ms.toFixed(0).padStart(7)}${(ms / floor).toFixed(2).padStart(8)}${(aim?.toFixed(2) ?? '').padStart(7)}${aim && ms / floor > aim ? '  over' : ''}`);
}

const files = readdirSync(dist).filter((name) => name.endsWith('.js'));
const text = new Map(files.map((name) => [name, readFileSync(join(dist, name), 'utf8')]));
const weight = (names) => {
  const list = [...names].map((name) => text.get(name));
  const kB = (sum) => `${(sum / 1000).toFixed(1)} kB`.padStart(10);
  return `${kB(list.reduce((sum, t) => sum + Buffer.byteLength(t), 0))}${kB(list.reduce((sum, t) => sum + gzipSync(t).length, 0))} gzipped, ${list.length} ${list.length === 1 ? 'file' : 'files'}`;
};

/** A file with all that it imports at once; what `import()` names is loaded only when its turn comes. */
function closure(name, seen = new Set()) {
  if (seen.has(name) || !text.has(name)) return seen;
  seen.add(name);
  for (const [, next] of text.get(name).matchAll(/(?:\bfrom|\bimport)\s*["']\.\/([^"']+\.js)["']/g)) closure(next, seen);
  return seen;
}

const marker = /mathjs|typed-function|createUnitClass/i;
const start = closure('medlar.js');
console.log(`\n${'all of dist'.padEnd(24)}${weight(files)}`);
console.log(`${'medlar.js at start'.padEnd(24)}${weight(start)}`);
for (const name of files.filter((f) => !/^(?:chunk-|medlar\.js)/.test(f)).sort()) {
  const label = name === 'index.js' ? 'the library' : name.replace(/-[A-Z0-9]{8}\.js$/, '');
  const needed = [...closure(name)].filter((f) => name === 'index.js' || !start.has(f));
  console.log(`${`${name === 'index.js' ? '' : '+ '}${label}`.padEnd(24)}${weight(needed)}`);
}
const page = readFileSync(join(dist, 'page.html'));
console.log(`${'the page'.padEnd(24)}${`${(page.length / 1000).toFixed(1)} kB`.padStart(10)}${`${(gzipSync(page).length / 1000).toFixed(1)} kB`.padStart(10)} gzipped, 1 file`);
const found = files.filter((name) => marker.test(text.get(name)));
console.log(`\nmathjs in dist: ${found.length > 0 ? `yes, in ${found.join(', ')}` : 'no'}`);
