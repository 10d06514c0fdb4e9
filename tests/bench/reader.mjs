/**
 * The reader of reports: time against length, fitted as length^exponent, and one report warm as a ratio to splitting its text with a regular expression.
 * Bundles src itself, so no build is needed: node tests/bench/reader.mjs. MEDLAR_BENCH_SECONDS bounds the longest single run (10).
 */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { median } from './median.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const [AIM_EXPONENT, AIM_MS] = [1.05, 2];
const LONGEST = Number(process.env.MEDLAR_BENCH_SECONDS ?? 10) * 1000;
const folder = mkdtempSync(join(tmpdir(), 'medlar-bench-'));
const file = join(folder, 'reader.mjs');
const bundled = await build({ stdin: { contents: "export { readReport } from './src/soil/read.ts'; export { rateSample } from './src/rating/rate.ts';", resolveDir: root, loader: 'ts' }, bundle: true, write: false, format: 'esm', platform: 'neutral', minify: true });
writeFileSync(file, bundled.outputFiles[0].text);
const { readReport, rateSample } = await import(pathToFileURL(file).href);
rmSync(folder, { recursive: true, force: true });

const time = (work) => { const before = performance.now(); work(); return performance.now() - before; };
const report = (name) => readFileSync(join(root, name), 'utf8');
const rated = (text) => { const read = readReport(text, 'r.txt'); for (const sample of read.samples) rateSample(sample, 'US'); return read; };

// One report: readings and rating, warm, against the plainest thing that can be done with its text.
const SPLIT = /[\s:=|,;()]+/;
console.log(`Node ${process.versions.node}\n\none report, warm medians${' '.repeat(14)}chars  read µs   and rated   aim   split µs  ratio`);
for (const name of ['samples/chapel-bank/soil/2025.txt', 'samples/two-gullies/soil/results.txt', 'tests/reports/u1.txt']) {
  const text = report(name);
  const [read, both, split] = [[], [], []];
  for (let round = 0; round < 600; round += 1) {
    const [a, b] = [time(() => readReport(text, 'r.txt')), time(() => rated(text))];
    // A split is too short for the clock, so a hundred are timed at once.
    const c = time(() => { for (let i = 0; i < 100; i += 1) text.split(SPLIT); }) / 100;
    if (round >= 200) { read.push(a); both.push(b); split.push(c); }
  }
  const us = (list) => (1000 * median(list)).toFixed(0);
  console.log(`${name.padEnd(38)}${String(text.length).padStart(5)}${us(read).padStart(9)}${us(both).padStart(12)}${String(AIM_MS * 1000).padStart(6)}${(1000 * median(split)).toFixed(1).padStart(11)}${(median(both) / median(split)).toFixed(0).padStart(7)}${median(both) > AIM_MS ? '  over' : ''}`);
}

// Lengths, of one sample after another, of a letter around one report, of tables, and of one report whose lines are blank.
const u1 = report('tests/reports/u1.txt');
const letter = 'We thank you for your order and hope that page 2 of 14 finds you well, Mill Lane 12.\n';
const row = (i) => `Bed ${i}\t6.${i % 10}\t${10 + (i % 90)}\t${100 + (i % 200)}\t3.${i % 10}\n`;
const SHAPES = [
  ['samples', (size) => { let text = ''; for (let i = 1; text.length < size; i += 1) text += `Sample ${i}: bed ${i}\n${u1}\n`; return text; }],
  ['letter', (size) => letter.repeat(Math.ceil(size / letter.length)) + u1],
  ['table', (size) => { let text = 'Sample\tpH\tPhosphorus ppm\tPotassium ppm\tOrganic matter %\n'; for (let i = 1; text.length < size; i += 1) text += row(i); return text; }],
  ['blanks', (size) => u1 + ' \n'.repeat(Math.ceil(size / 2))],
];
// A longer report is refused, which is quick and says nothing of the reader.
const SIZES = [10_000, 31_600, 100_000, 316_000, 1_000_000, 1_990_000];
/** The slope of ln time over ln length, by least squares. */
function exponent(points) {
  const logs = points.map(([x, y]) => [Math.log(x), Math.log(y)]);
  const mean = (k) => logs.reduce((sum, p) => sum + p[k], 0) / logs.length;
  const [mx, my] = [mean(0), mean(1)];
  return logs.reduce((sum, [x, y]) => sum + (x - mx) * (y - my), 0) / logs.reduce((sum, [x]) => sum + (x - mx) ** 2, 0);
}
for (const [name, make] of SHAPES) {
  console.log(`\n${name.padEnd(10)}${'kB'.padStart(8)}${'ms'.padStart(10)}${'µs/kB'.padStart(9)}  readings`);
  const points = [];
  for (const size of SIZES) {
    const text = make(size);
    let found = 0;
    const rounds = size <= 100_000 ? 7 : size <= 1_000_000 ? 3 : 1;
    const ms = median(Array.from({ length: rounds + (size <= 100_000 ? 2 : 0) }, () => time(() => { found = readReport(text, 'r.txt').samples.reduce((sum, s) => sum + s.readings.length, 0); })).slice(-rounds));
    points.push([text.length, ms]);
    console.log(`${''.padEnd(10)}${(text.length / 1000).toFixed(0).padStart(8)}${ms.toFixed(1).padStart(10)}${((1000 * ms) / (text.length / 1000)).toFixed(1).padStart(9)}  ${found}`);
    if (ms * 4 > LONGEST && size !== SIZES.at(-1)) { console.log(`${''.padEnd(10)}longer texts left out: more than ${LONGEST / 1000} s each`); break; }
  }
  const slope = exponent(points);
  console.log(`${''.padEnd(10)}exponent ${slope.toFixed(3)}, aim ${AIM_EXPONENT}${slope > AIM_EXPONENT ? '  over' : ''}`);
}
