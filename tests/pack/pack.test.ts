// The package as a grower gets it: packed, installed with nothing else at hand, and run.
import { execFileSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Answer } from '../medlar.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string };

let work = '';
let home = '';
let contents: string[] = [];

// npm hands its own settings down to what it runs; the folders used here must not see them.
const env = Object.fromEntries(Object.entries(process.env).filter(([name]) => !/^npm_(config|package|lifecycle)/i.test(name)));

function run(command: string, argv: readonly string[], cwd: string): string {
  return execFileSync(command, argv, { cwd, env, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
}

beforeAll(() => {
  work = mkdtempSync(join(tmpdir(), 'medlar-pack-'));
  home = join(work, 'home');
  mkdirSync(home);
  if (!existsSync(join(root, 'dist/medlar.js')) || !existsSync(join(root, 'dist/types/index.d.ts'))) run(process.execPath, ['src/build.mjs'], root);
  // Built just now or by the test command: `prepack` would empty dist under other tests.
  const [packed] = JSON.parse(run('npm', ['pack', '--json', '--ignore-scripts', '--pack-destination', work], root)) as { filename: string; files: { path: string }[] }[];
  contents = packed!.files.map(({ path }) => path);
  writeFileSync(join(home, 'package.json'), '{ "private": true }\n');
  run('npm', ['install', '--offline', '--ignore-scripts', '--no-audit', '--no-fund', join(work, packed!.filename)], home);
}, 180_000);

afterAll(() => { rmSync(work, { recursive: true, force: true }); });

const medlar = (...argv: readonly string[]): string => run(join(home, 'node_modules/.bin/medlar'), argv, home);

it('holds what is built and what is read, and nothing else', () => {
  expect(contents).toEqual(expect.arrayContaining(['package.json', 'LICENSE', 'CHANGELOG.md', 'README.md', 'dist/medlar.js', 'dist/index.js', 'dist/types/index.d.ts', 'dist/THIRD-PARTY.txt', 'dist/page.licences.txt', 'dist/highs.LICENSE']));
  expect(contents.filter((path) => !/^(?:dist\/|package\.json$|LICENSE$|CHANGELOG\.md$|README\.md$)/.test(path))).toEqual([]);
});

it('asks for no other package', () => {
  expect(JSON.parse(readFileSync(join(home, 'node_modules/medlar/package.json'), 'utf8'))).not.toHaveProperty('dependencies');
  expect(existsSync(join(home, 'node_modules/commander'))).toBe(false);
});

it('runs nothing when it is installed, so scripts may be off', () => {
  const { scripts = {} } = JSON.parse(readFileSync(join(home, 'node_modules/medlar/package.json'), 'utf8')) as { scripts?: Record<string, string> };
  expect(Object.keys(scripts).filter((name) => /^(?:pre|post)?install$|^(?:pre|post)?prepare$|^dependencies$/.test(name))).toEqual([]);
});

it('says its version', () => {
  expect(medlar('--version').trim()).toBe(version);
});

it('plans a folder', () => {
  const folder = join(work, 'chapel-bank');
  cpSync(join(root, 'samples/chapel-bank'), folder, { recursive: true });
  const answer = JSON.parse(medlar('plan', '--json', '--folder', folder, '--today', '2026-03-14')) as Answer;
  expect(answer).toMatchObject({ medlar: version, command: 'plan', ok: true });
  expect(JSON.stringify(answer.result)).toContain('Gate apple');
});

it('opens as a library, with types', () => {
  writeFileSync(join(home, 'use.mjs'), `
    const { readReport } = await import('medlar');
    console.log(JSON.stringify(readReport('pH 6.4', 'x').samples.map(({ readings }) => readings.map(({ item, value }) => [item, value]))));
  `);
  expect(JSON.parse(run(process.execPath, ['use.mjs'], home))).toEqual([[['ph', 6.4]]]);
  expect(existsSync(join(home, 'node_modules/medlar/dist/types/index.d.ts'))).toBe(true);
});
