// The same at a real terminal, a pseudo-terminal of `script` (util-linux): arrows for choices, ctrl-C, a closed terminal.
import type { ChildProcess } from 'node:child_process';
import { spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { precompiled } from '../../templates/precompile.mjs';
import { afterAll, beforeAll, beforeEach, afterEach, describe, expect, test } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const hasScript = spawnSync('script', ['--version']).status === 0;

let program = '';
let folder = '';
beforeAll(async () => {
  program = mkdtempSync(join(tmpdir(), 'medlar-program-'));
  await build({
    absWorkingDir: root, entryPoints: ['src/cli/medlar.ts'], outdir: program, outExtension: { '.js': '.mjs' }, bundle: true, splitting: true, format: 'esm', platform: 'node', logLevel: 'error', define: { MEDLAR_VERSION: '"0.0.0-test"' },
    plugins: [{ name: 'templates', setup(b) { b.onLoad({ filter: /\.hbs$/ }, ({ path }) => ({ contents: precompiled(path), loader: 'js' })); } }],
    banner: { js: "import{createRequire as __cr}from'node:module';const require=__cr(import.meta.url);" },
  });
});
afterAll(() => { rmSync(program, { recursive: true, force: true }); });
beforeEach(() => { folder = mkdtempSync(join(tmpdir(), 'medlar-')); });
afterEach(() => { rmSync(folder, { recursive: true, force: true }); });

const pause = (): Promise<void> => new Promise((go) => { setTimeout(go, 50); });
const isAlive = (pid: number): boolean => {
  try {
    return process.kill(pid, 0);
  } catch {
    return false;
  }
};

type Terminal = { child: ChildProcess; seen: () => string; until: (text: string) => Promise<void>; type: (keys: string) => void; ended: Promise<number | null> };

function terminal(argv: string): Terminal {
  const child = spawn('script', ['-qec', `echo $$ > pid; stty cols 80 rows 40; exec ${process.execPath} ${join(program, 'medlar.mjs')} ${argv}`, '/dev/null'], { cwd: folder, env: { ...process.env, TERM: 'xterm', NO_COLOR: '1' } });
  let seen = '';
  let from = 0;
  child.stdout.on('data', (d: Buffer) => { seen += d.toString('utf8'); });
  const until = async (text: string): Promise<void> => {
    for (let i = 0; i < 600; i++) {
      const at = seen.indexOf(text, from);
      if (at >= 0) {
        from = at + text.length;
        return;
      }
      await pause();
    }
    throw new Error(`never seen: ${text}\n${seen}`);
  };
  return { child, seen: () => seen, until, type: (keys) => { child.stdin.write(keys); }, ended: new Promise((go) => { child.on('exit', go); }) };
}
const file = (): string => readFileSync(join(folder, 'soil/2025.txt'), 'utf8');

describe.skipIf(!hasScript)('at a terminal', () => {
  test('lines, a choice by arrows, and done', async () => {
    const t = terminal('read soil/2025.txt --today 2026-03-14');
    await t.until('> ');
    t.type('pH 6.4\r');
    await t.until('soil pH 6.4');
    await t.until('> ');
    t.type('Mg 231\r');
    await t.until('which unit');
    await t.until('don\'t know');
    // The mark stands on "don't know", the last; the list goes round.
    t.type('\u001b[B\u001b[B\u001b[B\r');
    await t.until('Mg 231 lb/acre');
    await t.until('> ');
    t.type('K 180 ppm high\r');
    await t.until('K 180 ppm: high');
    await t.until('> ');
    t.type('done\r');
    expect(await t.ended).toBe(0);
    expect(file()).toBe('pH 6.4\nMg 231\nmagnesium unit: lb/acre\nK 180 ppm high\n');
    expect(t.seen()).toContain('Next: medlar plan');
  });

  test('Enter alone at a choice is "don\'t know"', async () => {
    const t = terminal('read soil/2025.txt --today 2026-03-14');
    await t.until('> ');
    t.type('Mg 231\r');
    await t.until('don\'t know');
    t.type('\r');
    await t.until('Mg 231 ?: ');
    await t.until('> ');
    t.type('done\r');
    expect(await t.ended).toBe(0);
    expect(file()).toBe('Mg 231\nmagnesium unit: unknown\n');
  });

  test('ctrl-C within a choice leaves with all that was typed', async () => {
    const t = terminal('read soil/2025.txt --today 2026-03-14');
    await t.until('> ');
    t.type('Mg 231\r');
    await t.until('lb/acre');
    t.type('\u0003');
    expect(await t.ended).toBe(0);
    expect(file()).toMatch(/^Mg 231\n# .*\n$/);
    expect(t.seen()).toContain('Go on with: medlar read soil/2025.txt');
  });

  test('lines pasted in one go, then the terminal is closed', async () => {
    const t = terminal('read soil/2025.txt --today 2026-03-14');
    await t.until('> ');
    t.type('pH 6.4\rK 180 ppm high\r\rCa 1500 ppm\r');
    await t.until('Ca 1500 ppm:');
    // Without its master side the terminal is gone, and the program is told to hang up.
    const pid = Number(readFileSync(join(folder, 'pid'), 'utf8'));
    t.child.kill('SIGKILL');
    await t.ended;
    for (let i = 0; i < 200 && isAlive(pid); i++) await pause();
    expect(isAlive(pid)).toBe(false);
    expect(file()).toMatch(/^pH 6\.4\nK 180 ppm high\nCa 1500 ppm\n# .*\n$/);
    expect(readdirSync(join(folder, 'soil'))).toEqual(['2025.txt']);
  });
});
