// The diary under SIGKILL, two writers and a full disk: nothing that was reported as written is lost, nothing stands twice.
// MEDLAR_KILLS=10000 for the full count.
import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'esbuild';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readDiary } from '../../src/orchard/diary.ts';

const KILLS = Number(process.env.MEDLAR_KILLS ?? 60);
const folder = mkdtempSync(join(tmpdir(), 'medlar-kill-'));
const writer = join(folder, 'writer.mjs');

/** Writes notes until it is stopped, and says each on a line of its own once the diary has it. */
const WRITER = `
import { writeSync } from 'node:fs';
import { append } from './src/cli/diary-file.ts';
const [, , folder, name, most] = process.argv;
for (let i = 0; i < Number(most); i++) {
  const note = name + '-' + i;
  const done = append(folder, [{ date: '2026-04-10', trees: ['Gate apple'], what: 'note', bag: null, g: null, m: null, amount: null, note, line: 0 }]);
  writeSync(1, 'notice' in done ? 'refused ' + JSON.stringify(done.notice.facts) + '\\n' : note + '\\n');
}`;

beforeAll(async () => {
  await build({ stdin: { contents: WRITER, resolveDir: process.cwd(), loader: 'ts' }, bundle: true, platform: 'node', format: 'esm', outfile: writer, logLevel: 'error' });
});
afterAll(() => { rmSync(folder, { recursive: true, force: true }); });

/** Starts a writer, kills it some milliseconds after its first line, and gives back the lines that it had said. */
function killed(orchard: string, name: string, after: number): Promise<string[]> {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, [writer, orchard, name, '1000000'], { stdio: ['ignore', 'pipe', 'inherit'] });
    let said = '';
    child.stdout.on('data', (chunk: Buffer) => {
      if (said === '') setTimeout(() => child.kill('SIGKILL'), after);
      said += chunk.toString();
    });
    child.on('close', () => resolve(said.split('\n').filter(Boolean)));
  });
}

/** All that was said stands once; of what was not said no more than one line for each kill; every line can be read. */
function sound(orchard: string, said: readonly string[], kills: number): void {
  const { entries, notices } = readDiary(readFileSync(join(orchard, 'diary.csv'), 'utf8'), 'diary.csv');
  expect(notices).toEqual([]);
  const notes = entries.map((e) => e.note);
  expect(new Set(notes).size).toBe(notes.length);
  const known = new Set(notes);
  expect(said.filter((note) => !known.has(note))).toEqual([]);
  expect(notes.length - said.length).toBeLessThanOrEqual(kills);
}

describe.skipIf(process.platform === 'win32')('killed at any moment', () => {
  test('one writer, and two at once', { timeout: 10_800_000 }, async () => {
    let kills = 0;
    for (let round = 0; kills < KILLS; round++) {
      // A new diary now and then keeps it short.
      const orchard = join(folder, `r${round}`);
      mkdirSync(orchard);
      const said: string[] = [];
      let here = 0;
      for (let i = 0; i < 20 && kills < KILLS; i++) {
        const writers = i % 2 === 0 ? 1 : 2;
        const runs = await Promise.all(Array.from({ length: writers }, (_, k) => killed(orchard, `${round}-${i}-${k}`, (7 * i + 5 * k) % 13)));
        said.push(...runs.flat());
        here += writers;
        kills += writers;
      }
      expect(said.filter((s) => s.startsWith('refused'))).toEqual([]);
      // The next run clears what the killed ones left.
      said.push(...spawnSync(process.execPath, [writer, orchard, `${round}-last`, '1']).stdout.toString().split('\n').filter(Boolean));
      expect(readdirSync(orchard)).toEqual(['diary.csv']);
      sound(orchard, said, here);
      rmSync(orchard, { recursive: true });
    }
    console.log(`${kills} kills, nothing lost or doubled`);
  });
  test('what a killed run left behind does not stop the next', () => {
    const orchard = join(folder, 'left');
    mkdirSync(orchard);
    const gone = spawnSync(process.execPath, ['-e', 'process.stdout.write(require("os").hostname() + " " + process.pid)']).stdout.toString();
    writeFileSync(join(orchard, 'diary.csv.lock'), gone);
    const from = performance.now();
    expect(spawnSync(process.execPath, [writer, orchard, 'next', '1']).stdout.toString()).toBe('next-0\n');
    expect(performance.now() - from).toBeLessThan(8000);
    expect(readdirSync(orchard)).toEqual(['diary.csv']);
  });
});

describe.skipIf(process.platform === 'win32')('a disk without room', () => {
  /** Files of at most so many kilobytes, as on a disk that fills up in the middle of a write. */
  test('by a limit on the size of files', () => {
    const orchard = join(folder, 'limit');
    mkdirSync(orchard);
    const run = spawnSync('sh', ['-c', `ulimit -f 4; exec "$0" "$@"`, process.execPath, writer, orchard, 'n', '200']);
    const lines = run.stdout.toString().split('\n').filter(Boolean);
    const said = lines.filter((l) => !l.startsWith('refused'));
    expect(lines.length).toBeGreaterThan(said.length);
    sound(orchard, said, 0);
    expect(readdirSync(orchard)).toEqual(['diary.csv']);
  });
  const disk = join(folder, 'disk');
  mkdirSync(disk);
  const mounted = spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=16k', 'medlar', disk]).status === 0;
  afterAll(() => { if (mounted) spawnSync('umount', [disk]); });
  test.skipIf(!mounted)('by a small disk of its own', () => {
    const run = spawnSync(process.execPath, [writer, disk, 'n', '400']);
    const lines = run.stdout.toString().split('\n').filter(Boolean);
    const said = lines.filter((l) => !l.startsWith('refused'));
    expect(lines.some((l) => l.startsWith('refused'))).toBe(true);
    sound(disk, said, 0);
    expect(existsSync(join(disk, 'diary.csv'))).toBe(true);
    expect(readdirSync(disk)).toEqual(['diary.csv']);
  });
});
