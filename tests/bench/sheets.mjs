/** Sheets of 1, 14, 60 and 500 trees: medians, as ratios to an empty program in the same run. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { median } from './median.mjs';
import { orchardOf, REPORT } from './orchard.mjs';

const medlar = fileURLToPath(new URL('../../dist/medlar.js', import.meta.url));
const ROUNDS = 5;
const folder = mkdtempSync(join(tmpdir(), 'medlar-sheets-'));
const run = (argv) => {
  const before = performance.now();
  const { status, stderr } = spawnSync(process.execPath, argv, { cwd: folder, encoding: 'utf8' });
  if (status !== 0) throw new Error(stderr);
  return performance.now() - before;
};
try {
  writeFileSync(join(folder, 'a.txt'), REPORT);
  const floor = median(Array.from({ length: ROUNDS }, () => run(['-e', '0'])));
  console.log(`Node ${process.versions.node}, medians of ${ROUNDS}; an empty program takes ${floor.toFixed(0)} ms\n\ntrees       ms   ratio`);
  const took = {};
  for (const n of [1, 14, 60, 500]) {
    writeFileSync(join(folder, 'orchard.yaml'), orchardOf(n));
    took[n] = median(Array.from({ length: ROUNDS }, () => run([medlar, 'sheet', '--force', '--today', '2026-03-14'])));
    console.log(`${String(n).padStart(5)}${took[n].toFixed(0).padStart(9)}${(took[n] / floor).toFixed(2).padStart(8)}`);
  }
  console.log(`\n500 trees take ${(took[500] / took[60]).toFixed(1)} times as long as 60 (aim: under 10)`);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
