/**
 * The same 60 trees by what a grower would use instead: a spreadsheet with formulas, recalculated by LibreOffice without a window, and an
 * awk script. Both do the plain arithmetic of one leaflet (areas, rates, a cap, distance from target, three bags, two doses, rounding,
 * bags to buy); neither reads a report, rates it, dates a dose, checks a label, draws a sheet or says where a number came from. Medians of
 * whole programs, as ratios to an empty Node program in the same run, and the lines that a person writes. What is not installed is left out.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { median } from './median.mjs';
import { orchardOf, REPORT } from './orchard.mjs';

const TREES = 60;
const medlar = fileURLToPath(new URL('../../dist/medlar.js', import.meta.url));
const trees = Array.from({ length: TREES }, (_, i) => ({ name: `T${i + 1}`, years: 2026 - (2005 + ((7 * i) % 18)), across: 6 + ((5 * i) % 14) }));

/** Columns behind name, years and feet across: what a person types into the first row and drags down. */
const FORMULAS = [
  ['crown m2', 'PI()/4*([.C#]*0.3048)^2'],
  ['ring m2', 'PI()*(MAX(0.75*[.C#]*0.3048;1.2)^2-0.3048^2)'],
  ['N g', 'MIN(9.8*[.D#];45.4*[.B#];454)'],
  ['P2O5 g', 'MAX(0;50-18)*0.34*[.E#]'],
  ['K2O g', 'MAX(0;150-95)*0.18*[.E#]'],
  ['urea oz, twice', 'ROUND([.F#]/0.46/2/14.1748)/2'],
  ['superphosphate oz, twice', 'ROUND([.G#]/0.46/2/14.1748)/2'],
  ['sulphate of potash oz, twice', 'ROUND([.H#]/0.5/2/14.1748)/2'],
];
const BAGS = ['I', 'J', 'K'].map((column) => `ROUNDUP(SUM([.${column}2:.${column}${TREES + 1}])*2/16/40;0)`);
const attribute = (text) => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');
const cell = (value) => (typeof value === 'number' ? `<table:table-cell office:value-type="float" office:value="${value}"/>` : `<table:table-cell office:value-type="string"><text:p>${value}</text:p></table:table-cell>`);
const formula = (text) => `<table:table-cell table:formula="of:=${attribute(text)}"/>`;
const row = (cells) => `<table:table-row>${cells.join('')}</table:table-row>`;
const spreadsheet = `<?xml version="1.0" encoding="UTF-8"?>
<office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2" office:version="1.3" office:mimetype="application/vnd.oasis.opendocument.spreadsheet"><office:body><office:spreadsheet><table:table table:name="Trees">
${row(['tree', 'years', 'feet across', ...FORMULAS.map(([head]) => head)].map(cell))}
${trees.map((t, i) => row([cell(t.name), cell(t.years), cell(t.across), ...FORMULAS.map(([, text]) => formula(text.replaceAll('#', i + 2)))])).join('\n')}
${row([cell('bags of 40 lb'), cell(''), cell(''), ...FORMULAS.slice(3).map(() => cell('')), ...BAGS.map(formula)])}
</table:table></office:spreadsheet></office:body></office:document>
`;

const awk = `BEGIN { FS = "," ; pi = atan2(0, -1) }
function larger(a, b) { return a > b ? a : b }
function smaller(a, b) { return a < b ? a : b }
function round(x) { return int(x + 0.5) }
{
  crown = pi / 4 * ($3 * 0.3048) ^ 2
  ring = pi * (larger(0.75 * $3 * 0.3048, 1.2) ^ 2 - 0.3048 ^ 2)
  n = smaller(smaller(9.8 * crown, 45.4 * $2), 454)
  p = larger(0, 50 - 18) * 0.34 * ring
  k = larger(0, 150 - 95) * 0.18 * ring
  u = round(n / 0.46 / 2 / 14.1748) / 2; s = round(p / 0.46 / 2 / 14.1748) / 2; o = round(k / 0.5 / 2 / 14.1748) / 2
  print $1 "," u "," s "," o
  us += u; ss += s; os += o
}
function bags(oz,  x) { x = oz * 2 / 16 / 40; return x > int(x) ? int(x) + 1 : int(x) }
END { print "bags of 40 lb," bags(us) "," bags(ss) "," bags(os) }
`;

const folder = mkdtempSync(join(tmpdir(), 'medlar-others-'));
const put = (name, text) => writeFileSync(join(folder, name), text);
put('orchard.yaml', orchardOf(TREES));
put('a.txt', REPORT);
put('trees.fods', spreadsheet);
put('trees.awk', awk);
put('trees.csv', trees.map((t) => `${t.name},${t.years},${t.across}\n`).join(''));
const has = (program) => spawnSync(program, ['--version'], { stdio: 'ignore' }).error === undefined;
const profile = `-env:UserInstallation=file://${folder}/profile`;
const ways = [
  { name: 'node -e 0', program: process.execPath, argv: ['-e', '0'] },
  { name: 'awk script', program: 'awk', argv: ['-f', 'trees.awk', 'trees.csv'], lines: awk.trim().split('\n').length },
  { name: 'spreadsheet', program: 'soffice', argv: [profile, '--headless', '--convert-to', 'csv', '--outdir', 'out', 'trees.fods'], lines: FORMULAS.length + BAGS.length },
  { name: 'medlar sheet', program: process.execPath, argv: [medlar, 'sheet', '--force', '--today', '2026-03-14'], lines: 0 },
].filter((w) => w.program !== 'awk' && w.program !== 'soffice' ? true : has(w.program));
try {
  for (const way of ways) way.times = [];
  for (let round = -1; round < 7; round += 1) for (const way of ways) {
    const from = performance.now();
    const { status, stdout, stderr } = spawnSync(way.program, way.argv, { cwd: folder, encoding: 'utf8' });
    if (status !== 0) throw new Error(`${way.name}: ${stderr}`);
    way.said = stdout;
    if (round >= 0) way.times.push(performance.now() - from);
  }
  const floor = median(ways[0].times);
  console.log(`${TREES} trees, medians of 7, floor ${floor.toFixed(0)} ms\n\n${''.padEnd(14)}     ms   ratio   lines of rules to write`);
  for (const { name, times, lines } of ways) console.log(`${name.padEnd(14)}${median(times).toFixed(0).padStart(7)}${(median(times) / floor).toFixed(2).padStart(8)}${lines === undefined ? '' : String(lines).padStart(26)}`);
  // Two that do the same arithmetic must agree, or the comparison is of nothing.
  const csv = join(folder, 'out/trees.csv');
  const recalculated = existsSync(csv) ? readFileSync(csv, 'utf8').trim().split('\n').at(-1).split(',').slice(-3).join() : null;
  const byAwk = ways.find((w) => w.name === 'awk script')?.said.trim().split('\n').at(-1).split(',').slice(1).join();
  if (ways.some((w) => w.name === 'spreadsheet') && byAwk !== undefined) console.log(byAwk === recalculated ? `\nscript and spreadsheet buy the same bags: ${byAwk}` : `\nscript (${byAwk}) and spreadsheet (${recalculated}) differ`);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
