/**
 * Plans of 10 to 10,000 trees by the library: how time and memory grow, against a plain loop that a grower's programmer would write for
 * the same arithmetic (areas, rates, caps, three bags by their grades, two doses, rounding, totals), without a reason, a check or a date;
 * then what the choice of bags costs by their number, and what a filter of many orchards holds. All in one run; each size in a process of its own.
 */
import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import { median } from './median.mjs';
import { orchardOf, REPORT } from './orchard.mjs';

const [library, medlar] = ['index.js', 'medlar.js'].map((name) => new URL(`../../dist/${name}`, import.meta.url));
const TODAY = '2026-03-14';

/** Rates of one leaflet by hand: N by the crown with a cap by years, P and K by the ring, lime by the ring. */
function loop(trees) {
  const used = [0, 0, 0, 0];
  let sum = 0;
  for (const { years, across } of trees) {
    const area = (Math.PI / 4) * (across * 0.3048) ** 2;
    const outer = Math.max(0.75 * across * 0.3048, 1.2);
    const ring = Math.PI * (outer * outer - 0.3048 * 0.3048);
    const n = Math.min(9.8 * area, 45.4 * years, 454);
    const [p, k] = [Math.max(0, 50 - 18) * 0.34 * ring, Math.max(0, 150 - 95) * 0.18 * ring];
    const grams = [n / 0.46, p / 0.46, k / 0.5, 224 * ring];
    for (let bag = 0; bag < 4; bag += 1) for (let dose = 0; dose < 2; dose += 1) {
      const g = Math.round(grams[bag] / 2 / 14.1748) * 14.1748;
      used[bag] += g;
      sum += g;
    }
  }
  return sum + used.reduce((a, b) => Math.max(a, Math.ceil(b / 18_144)), 0);
}

async function one(n, bags) {
  const { gather, planSeason } = await import(library);
  const text = orchardOf(n, bags);
  const folder = () => gather(text, () => ({ text: REPORT, name: 'a.txt' }), { entries: [], notices: [] }, TODAY, { rules: [], notices: [] });
  const times = { load: [], plan: [] };
  const rounds = n >= 10_000 ? 1 : n >= 1000 ? 3 : 9;
  for (let i = -1; i < rounds; i += 1) {
    const from = performance.now();
    const { orchard, zones } = folder();
    const between = performance.now();
    const plan = planSeason(orchard, zones, TODAY);
    if (plan.trees.length !== n) throw new Error(`${plan.trees.length} trees planned, not ${n}`);
    if (i >= 0 || n >= 10_000) times.load.push(between - from), times.plan.push(performance.now() - between);
    if (n >= 10_000) break;
  }
  const trees = Array.from({ length: n }, (_, i) => ({ years: 3 + ((7 * i) % 18), across: 6 + ((5 * i) % 14) }));
  const loops = [];
  for (let i = 0; i < 200; i += 1) {
    const from = performance.now();
    if (!(loop(trees) > 0)) throw new Error('the loop summed nothing');
    loops.push(performance.now() - from);
  }
  return { load: median(times.load), plan: median(times.plan), loop: loops.reduce((a, b) => a + b) / loops.length, peak: process.resourceUsage().maxRSS / 1024 };
}

if (process.argv[2] === 'one') {
  console.log(JSON.stringify(await one(Number(process.argv[3]), process.argv[4] ? Number(process.argv[4]) : undefined)));
  process.exit(0);
}

const child = (...argv) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [fileURLToPath(import.meta.url), 'one', ...argv.map(String)], { encoding: 'utf8' });
  if (status !== 0) throw new Error(stderr);
  return JSON.parse(stdout);
};

const SIZES = [10, 100, 1000, 10_000];
const found = SIZES.map((n) => ({ n, ...child(n) }));
console.log(`Node ${process.versions.node}; warm, but for 10,000 trees, which are planned once\n\n  trees   load ms   plan ms   ms a tree   loop ms   plan/loop    peak MB`);
for (const { n, load, plan, loop: floor, peak } of found) console.log(`${String(n).padStart(7)}${load.toFixed(1).padStart(10)}${plan.toFixed(1).padStart(10)}${(plan / n).toFixed(3).padStart(12)}${floor.toFixed(4).padStart(10)}${(plan / floor).toFixed(0).padStart(12)}${peak.toFixed(0).padStart(11)}`);
/** The slope of a straight line through the logarithms. */
function exponent(points) {
  const logs = points.map(({ n, plan }) => [Math.log(n), Math.log(plan)]);
  const mean = (i) => logs.reduce((sum, l) => sum + l[i], 0) / logs.length;
  const [x, y] = [mean(0), mean(1)];
  return logs.reduce((sum, l) => sum + (l[0] - x) * (l[1] - y), 0) / logs.reduce((sum, l) => sum + (l[0] - x) ** 2, 0);
}
console.log(`\ntime grows as trees to the power ${exponent(found).toFixed(2)} (aim: at most 1.05); from 1,000 on ${exponent(found.slice(2)).toFixed(2)}`);
console.log(`memory: ${((1024 * (found[3].peak - found[1].peak)) / (found[3].n - found[1].n)).toFixed(1)} kB a tree`);

console.log('\nthe choice of bags, 14 trees\n   bags   plan ms');
for (const bags of [1, 2, 4, 8, 12, 16]) console.log(`${String(bags).padStart(7)}${child(14, bags).plan.toFixed(1).padStart(10)}`);

/** Peak memory and time of the filter for so many orchards of three trees. */
async function batch(count) {
  const watched = spawn(process.execPath, ['--import', 'data:text/javascript,process.on("exit",()=>process.stderr.write("peak "+process.resourceUsage().maxRSS))', fileURLToPath(medlar), 'plan', '--batch'], { stdio: ['pipe', 'pipe', 'pipe'] });
  let [lines, said] = [0, ''];
  watched.stdout.on('data', (chunk) => { for (const byte of chunk) if (byte === 10) lines += 1; });
  watched.stderr.on('data', (chunk) => { said += chunk; });
  const ended = once(watched, 'close');
  const from = performance.now();
  const line = `${JSON.stringify({ files: { 'orchard.yaml': orchardOf(3), 'a.txt': REPORT }, today: TODAY })}\n`;
  for (let i = 0; i < count; i += 1) if (!watched.stdin.write(line)) await once(watched.stdin, 'drain');
  watched.stdin.end();
  await ended;
  if (lines !== count) throw new Error(`${lines} answers to ${count} orchards: ${said}`);
  return { ms: performance.now() - from, peak: Number(/peak (\d+)/.exec(said)[1]) / 1024 };
}
console.log('\nplan --batch, orchards of 3 trees\n  lines    ms a line   peak MB');
for (const count of [100, 1000, 4000]) {
  const { ms, peak } = await batch(count);
  console.log(`${String(count).padStart(7)}${(ms / count).toFixed(2).padStart(13)}${peak.toFixed(0).padStart(10)}`);
}
