/**
 * The page for a phone: what it weighs by part; how soon it answers with the processor slowed four times, against an empty page of the
 * same size; and what a change costs with 60 trees, against a plain loop over the same sums. Medians, all in one run.
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import { median } from './median.mjs';
import { orchardOf, REPORT } from './orchard.mjs';
import { lighter, settings, templates } from '../../src/page.build.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const { outputFiles: [helper] } = await build({ entryPoints: [join(root, 'tests/browser/chromium.ts')], bundle: true, write: false, platform: 'node', format: 'esm', packages: 'external', target: 'node20' });
const own = join(root, 'node_modules/.medlar-bench.mjs');
writeFileSync(own, helper.text);
const { openBrowser } = await import(pathToFileURL(own));
rmSync(own);

const ROUNDS = 9;
const SLOWED = 4;
const gz = (text) => gzipSync(text, { level: 9 }).length;
const kB = (n) => `${(n / 1000).toFixed(1)} kB`.padStart(10);

// What it weighs. A part counts by how much smaller the page would be without it, names in full.
for (const name of ['page.html', 'page.de.html', 'page.es.html']) console.log(`${name.padEnd(16)}${kB(gz(readFileSync(join(root, 'dist', name))))} gzipped (limit 300.0 kB)`);
const { outputFiles } = await build({ ...settings(), minify: false, minifySyntax: true, minifyIdentifiers: true, plugins: [templates, lighter()] });
const modules = outputFiles[0].text.split(/\n(?=\s*\/\/ (?:src|node_modules|templates)\/)/).map((text) => ({ path: /^\s*\/\/ (\S+)/.exec(text)?.[1] ?? '', text: text.replace(/\n\s*/g, '\n').replace(/ ?([=,:{}()<>+?;&|-]) ?/g, '$1') }));
const partOf = (path) => (path.startsWith('node_modules/') ? path.split('/')[1] : path.startsWith('src/') ? path.split('/')[1].replace(/\.ts$/, '') : path.split('/')[0]);
const whole = gz(modules.map((m) => m.text).join(''));
const parts = [...new Set(modules.map((m) => partOf(m.path)))].map((part) => [part, whole - gz(modules.filter((m) => partOf(m.path) !== part).map((m) => m.text).join(''))]).sort((a, b) => b[1] - a[1]);
for (const [part, bytes] of parts) if (bytes > 300) console.log(`  ${part.padEnd(14)}${kB(bytes)}`);

// How soon it answers, and what a change costs.
const folder = mkdtempSync(join(tmpdir(), 'medlar-bench-'));
const browser = await openBrowser();
if (typeof browser === 'string') throw new Error(browser);
try {
  const paged = (name, n) => {
    mkdirSync(join(folder, name));
    writeFileSync(join(folder, name, 'orchard.yaml'), orchardOf(n));
    writeFileSync(join(folder, name, 'a.txt'), REPORT);
    const { status, stderr } = spawnSync(process.execPath, [join(root, 'dist/medlar.js'), 'page', '--today', '2026-03-14'], { cwd: join(folder, name), encoding: 'utf8' });
    if (status !== 0) throw new Error(stderr);
    return join(folder, name, 'medlar.html');
  };
  const [small, large] = [paged('small', 3), paged('large', 60)];
  const empty = join(folder, 'empty.html');
  // The same bytes, which the browser reads and does not run.
  writeFileSync(empty, readFileSync(small, 'utf8').replace(/<script>(?=[\s\S]*<\/script>\s*<\/body>)/, '<script type="text/plain">'));

  const opened = async (path, ask) => {
    const context = await browser.newContext({ offline: true, viewport: { width: 390, height: 844 } });
    const page = await context.newPage();
    await (await context.newCDPSession(page)).send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
    await page.goto(`${pathToFileURL(path).href}#today=2026-03-14`, { waitUntil: 'load' });
    const took = await ask(page);
    await context.close();
    return took;
  };
  const ANSWERED = "new Promise((done) => { const look = () => { if (document.querySelector('main#main section')) { medlar.answer(); done(performance.now()); } else setTimeout(look, 1); }; look(); })";
  const times = { empty: [], small: [], large: [], first: [], change: [], plan: [], loop: [] };
  for (let round = -1; round < ROUNDS; round += 1) {
    const took = {
      empty: await opened(empty, (page) => page.evaluate('performance.timing.loadEventEnd - performance.timing.navigationStart')),
      small: await opened(small, (page) => page.evaluate(ANSWERED)),
      large: await opened(large, (page) => page.evaluate(ANSWERED)),
      // One tree's line is changed; until the page stands anew.
      ...await opened(large, async (page) => {
        await page.evaluate(ANSWERED);
        await page.locator('#tab-trees').click();
        return page.evaluate(`(() => {
          const field = document.getElementById('tree-30');
          const one = (feet) => { field.value = field.value.replace(/\\d+ ft across/, feet + ' ft across'); const from = performance.now(); field.dispatchEvent(new Event('change', { bubbles: true })); return performance.now() - from; };
          const times = Array.from({ length: 24 }, (_, i) => one(6 + i));
          const warm = times.slice(12).sort((a, b) => a - b)[6];
          field.value = field.value.replace(/\\d+ ft across/, '40 ft across');
          field.dispatchEvent(new Event('change', { bubbles: true }));
          const from = performance.now();
          medlar.plan();
          const plan = performance.now() - from;
          // Need, mix and rounding of 60 trees with four bags as bare sums.
          const loop = () => { const from = performance.now(); let sum = 0; for (let t = 0; t < 60; t += 1) for (let bag = 0; bag < 4; bag += 1) for (let n = 0; n < 3; n += 1) { const area = Math.PI * (1 + t / 20) ** 2; const need = Math.min(area * 9.8, 30 + t) * (n === 0 ? 1 : 0.5); sum += Math.round(need / (0.1 + bag / 10) / 7.0874) * 7.0874; } return [performance.now() - from, sum]; };
          const loops = Array.from({ length: 50 }, () => loop()[0]).sort((a, b) => a - b);
          return { first: times[0], change: warm, plan, loop: Math.max(0.001, loops.reduce((a, b) => a + b, 0) / 50) };
        })()`);
      }),
    };
    if (round >= 0) for (const [name, ms] of Object.entries(took)) times[name].push(ms);
  }
  const [floor, loop] = [median(times.empty), median(times.loop)];
  console.log(`\nprocessor slowed ${SLOWED} times, ${ROUNDS} rounds`);
  console.log(`an empty page of the same size   ${floor.toFixed(0).padStart(6)} ms`);
  console.log(`first answer, 3 trees            ${median(times.small).toFixed(0).padStart(6)} ms, ${(median(times.small) / floor).toFixed(2)} times as long`);
  console.log(`first answer, 60 trees           ${median(times.large).toFixed(0).padStart(6)} ms, ${(median(times.large) / floor).toFixed(2)} times as long`);
  const line = (name, list, aim = '') => console.log(`${name.padEnd(33)}${median(list).toFixed(0).padStart(6)} ms${aim}, ${(median(list) / loop).toFixed(0)} times a plain loop over the sums (${loop.toFixed(3)} ms)`);
  line('a tree of 60 changed, first time', times.first);
  line('after a dozen changes', times.change, ' (aim: under 50)');
  line('the plan that follows it', times.plan);
} finally {
  await browser.close();
  rmSync(folder, { recursive: true, force: true });
}
