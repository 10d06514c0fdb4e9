// Ctrl-C at any moment, folders that may not be written, and disks that are full: a file is there whole, or not at all, and the next run goes on.
// MEDLAR_KILLS=2000 for more moments.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { dice } from '../dice.ts';
import { GOOD, REPORT } from './hold.ts';
import { withFolder } from '../folder.ts';
import { real, stopped } from './real.ts';

const FILES = { 'orchard.yaml': GOOD, 'soil/2025.txt': REPORT };
const MOMENTS = Math.ceil(Number(process.env.MEDLAR_KILLS ?? 60) / 5);
const namesIn = (folder: string): string[] => readdirSync(folder, { recursive: true }).map(String).sort();
/** What each command makes, and how its last line begins: a file that has it stands to its end. */
const MAKES = {
  plan: { argv: ['plan', '--today', '2026-03-14'], file: null, end: null },
  sheet: { argv: ['sheet', '--today', '2026-03-14'], file: 'sheet.html', end: /<!-- medlar [0-9a-f]{16} -->\n$/ },
  diary: { argv: ['diary', 'note Gate apple buds', '--today', '2026-03-14'], file: 'diary.csv', end: /^date,[^\n]*\n2026-03-14,[^\n]*\n$/ },
  new: { argv: ['new', '--tree', 'Apple: apple'], file: 'orchard.yaml', end: /apple[^\n]*\n[^]*\n$/ },
  page: { argv: ['page'], file: 'medlar.html', end: /<!-- medlar [0-9a-f]{16} -->\n$/ },
} as const;

describe.skipIf(process.platform === 'win32')('ctrl-C at any moment', () => {
  test.each(Object.keys(MAKES) as (keyof typeof MAKES)[])('%s', { timeout: 3_600_000 }, async (command) => {
    const { argv, file, end } = MAKES[command];
    const rnd = dice(20260314);
    // From before the program is loaded until after it is done, however fast the machine.
    const from = performance.now();
    await withFolder(command === 'new' ? {} : FILES, (folder) => { expect(real(folder, argv).code).toBe(0); });
    const whole = performance.now() - from;
    for (let i = 0; i < MOMENTS; i += 1) {
      await withFolder(command === 'new' ? {} : FILES, async (folder) => {
        const before = namesIn(folder);
        const run = await stopped(folder, argv, rnd() * whole * 1.1);
        expect([run.code === 0 || run.code === 130 || run.signal === 'SIGINT', run.code, run.signal]).toEqual([true, run.code, run.signal]);
        expect(run.stderr).not.toMatch(/\n\s+at /);
        const made = namesIn(folder).filter((f) => !before.includes(f));
        if (file === null) expect(made).toEqual([]);
        else if (made.length > 0) {
          // Nothing but what the command makes, and that to its end.
          expect(made).toEqual(command === 'new' ? ['orchard.yaml', 'soil', 'soil/report.txt'].filter((f) => f === 'orchard.yaml' || existsSync(join(folder, f))).sort() : [file]);
          expect(readFileSync(join(folder, file), 'utf8')).toMatch(end);
        }
        // The next run is not hindered: it makes what is missing, or says that it is there.
        const next = real(folder, argv);
        expect(next.code, next.stderr).toBe(made.length > 0 && command === 'new' ? 5 : made.length > 0 && command === 'diary' ? 3 : 0);
        expect(namesIn(folder).filter((f) => /\.tmp$|\.lock$|\.taking$/.test(f))).toEqual([]);
      });
    }
  });
  test('what a killed run left is taken away by a later one; what another may still be writing is not', async () => {
    await withFolder(FILES, (folder) => {
      for (const [name, age] of [['sheet.html.4194999.tmp', 3600], ['sheet.html.4194998.tmp', 1], ['sheet.html.note.tmp', 3600]] as const) {
        writeFileSync(join(folder, name), 'half');
        utimesSync(join(folder, name), Date.now() / 1000 - age, Date.now() / 1000 - age);
      }
      expect(real(folder, ['sheet']).code).toBe(0);
      expect(readdirSync(folder).filter((f) => f.endsWith('.tmp')).sort()).toEqual(['sheet.html.4194998.tmp', 'sheet.html.note.tmp']);
    });
  });
});

/** A disk of its own, so that not even root may write where it is read-only, or more than it holds; null where none may be mounted. */
const disks: string[] = [];
function disk(size: string): string | null {
  const at = mkdtempSync(join(tmpdir(), 'medlar-disk-'));
  disks.push(at);
  return spawnSync('mount', ['-t', 'tmpfs', '-o', `size=${size}`, 'medlar', at]).status === 0 ? at : null;
}
afterAll(() => {
  for (const at of disks) {
    spawnSync('umount', [at]);
    rmSync(at, { recursive: true, force: true });
  }
});
function fill(at: string): void {
  for (const [name, text] of Object.entries(FILES)) {
    mkdirSync(join(at, 'soil'), { recursive: true });
    writeFileSync(join(at, name), text);
  }
}
const WRITERS = [['sheet'], ['sheet', '--as', 'text'], ['sheet', '--as', 'ics'], ['diary', 'note Gate apple buds'], ['page'], ['page', '--site', 'site'], ['years', '--as', 'html']];

const fixed = process.platform === 'win32' ? null : disk('8m');
describe.skipIf(fixed === null)('a folder that may only be read', () => {
  test('is read by all, and each that writes says so', () => {
    const at = fixed!;
    fill(at);
    expect(spawnSync('mount', ['-o', 'remount,ro', at]).status).toBe(0);
    for (const argv of [['plan'], ['check'], ['read'], ['shop'], ['ph'], ['diary'], ['years'], []]) expect([argv, real(at, argv).code]).toEqual([argv, 0]);
    for (const argv of WRITERS) {
      const run = real(at, argv);
      expect([argv, run.code, run.stdout]).toEqual([argv, 5, '']);
      expect(run.stderr).toMatch(/read-only/);
    }
    expect(namesIn(at)).toEqual(['orchard.yaml', 'soil', 'soil/2025.txt']);
  });
});

const small = process.platform === 'win32' ? null : disk('16k');
describe.skipIf(small === null)('a disk that is full', () => {
  test('each that writes says so, and leaves nothing half-written', () => {
    const at = small!;
    fill(at);
    let block = 0;
    try {
      for (; block < 100; block += 1) writeFileSync(join(at, `fill-${block}`), 'x'.repeat(1024));
    } catch {
      rmSync(join(at, `fill-${block}`), { force: true });
    }
    const before = namesIn(at);
    const texts = (): string[] => Object.keys(FILES).map((f) => readFileSync(join(at, f), 'utf8'));
    for (const argv of WRITERS) {
      const run = real(at, argv);
      expect([argv, run.code, run.stdout]).toEqual([argv, 5, '']);
      expect(run.stderr).toMatch(/full/);
      expect(texts()).toEqual(Object.values(FILES));
      expect(namesIn(at).filter((f) => f !== 'site')).toEqual(before);
    }
  });
});
