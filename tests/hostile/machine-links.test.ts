// Links, pipes, folders in the way and names that lead elsewhere: nothing outside the folder is read or written, and nothing waits for ever.
import { spawnSync } from 'node:child_process';
import { existsSync, lstatSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeEach, describe, expect, test } from 'vitest';
import { GOOD, REPORT } from './hold.ts';
import { withFolder } from '../folder.ts';
import { real } from './real.ts';

const FILES = { 'orchard.yaml': GOOD, 'soil/2025.txt': REPORT };
const SECRET = 'pH 5.9\nsecret of another folder\n';
const outside = mkdtempSync(join(tmpdir(), 'medlar-outside-'));
const secret = join(outside, 'secret.txt');
beforeEach(() => { writeFileSync(secret, SECRET); });
afterAll(() => { rmSync(outside, { recursive: true, force: true }); });
const TODAY = ['--today', '2026-03-14'];
const errors = (stdout: string): string[] => (JSON.parse(stdout) as { notices: { code: string; severity: string }[] }).notices.filter((n) => n.severity === 'error').map((n) => n.code);
const untouched = (): void => {
  expect(readFileSync(secret, 'utf8')).toBe(SECRET);
  expect(readdirSync(outside)).toEqual(['secret.txt']);
};

describe.skipIf(process.platform === 'win32')('links', () => {
  test('orchard.yaml may be a link; its paths are those of the folder it is looked for in', async () => {
    await withFolder({ 'real.yaml': GOOD, 'soil/2025.txt': REPORT }, (folder) => {
      symlinkSync('real.yaml', join(folder, 'orchard.yaml'));
      expect(real(folder, ['plan', ...TODAY])).toMatchObject({ code: 0, signal: null });
    });
  });
  test.each(['the report', 'its folder'])('a report outside, by a link of %s', async (what) => {
    await withFolder({ 'orchard.yaml': what === 'the report' ? GOOD : GOOD.replace('soil/2025.txt', 'soil/secret.txt') }, (folder) => {
      if (what === 'the report') mkdirSync(join(folder, 'soil'));
      symlinkSync(what === 'the report' ? secret : outside, join(folder, what === 'the report' ? 'soil/2025.txt' : 'soil'));
      for (const argv of [['sheet'], ['page']]) {
        const run = real(folder, [...argv, '--json']);
        expect([argv, run.code, errors(run.stdout)]).toEqual([argv, 3, ['path-outside']]);
        expect(run.stdout).not.toContain('secret of');
      }
      untouched();
    });
  });
  test('a name with two points at its beginning is inside', async () => {
    await withFolder({ 'orchard.yaml': GOOD.replace('soil/2025.txt', '..soil.txt'), '..soil.txt': REPORT }, (folder) => { expect(real(folder, ['plan', ...TODAY]).code).toBe(0); });
  });
  test.each([['sheet', 'sheet.html'], ['sheet --as text', 'sheet.txt'], ['sheet --as ics', 'calendar.ics'], ['page', 'medlar.html'], ['years --as html', 'years.html']])('%s: %s as a link to another file, which stays as it is', async (command, file) => {
    await withFolder(FILES, (folder) => {
      symlinkSync(secret, join(folder, file));
      for (const more of [[], ['--force']]) {
        const run = real(folder, [...command.split(' '), ...more]);
        expect([0, 5]).toContain(run.code);
        untouched();
      }
    });
  });
  test('a link that waits under the name of the temporary file', async () => {
    await withFolder(FILES, (folder) => {
      // The run's number is known to the shell, which hands it on by exec.
      const run = spawnSync('sh', ['-c', `ln -s "$1/planted" "sheet.html.$$.tmp"; ln -s "$1/planted" "diary.csv.$$.tmp"; exec "$2" "$3" sheet ${TODAY.join(' ')}`, 'sh', outside, process.execPath, join(process.cwd(), 'dist/medlar.js')], { cwd: folder });
      expect(run.status).toBe(0);
      expect(existsSync(join(folder, 'sheet.html'))).toBe(true);
      untouched();
    });
  });
  test('diary.csv as a link out of the folder', async () => {
    await withFolder(FILES, (folder) => {
      symlinkSync(secret, join(folder, 'diary.csv'));
      for (const argv of [['diary', 'note Gate apple buds'], ['diary'], ['plan']]) {
        const run = real(folder, [...argv, '--json']);
        expect([argv, run.code, errors(run.stdout)]).toEqual([argv, 3, ['link-outside']]);
        expect(run.stdout).not.toContain('secret of');
      }
      untouched();
      expect(readdirSync(folder).sort()).toEqual(['diary.csv', 'orchard.yaml', 'soil']);
    });
  });
  test('a template as a link out of the folder is not made into a sheet', async () => {
    await withFolder(FILES, (folder) => {
      mkdirSync(join(folder, 'templates'));
      symlinkSync(secret, join(folder, 'templates/sheet.html.hbs'));
      const run = real(folder, ['sheet', '--json', ...TODAY]);
      expect([run.code, existsSync(join(folder, 'sheet.html'))]).toEqual([3, false]);
      expect(run.stdout).not.toContain('secret of');
    });
  });
  test('new writes no form through a link of soil', async () => {
    await withFolder({}, (folder) => {
      symlinkSync(outside, join(folder, 'soil'));
      expect(real(folder, ['new', '--tree', 'Apple: apple']).code).toBe(3);
      expect(readdirSync(folder)).toEqual(['soil']);
      untouched();
    });
  });
  test.each(['orchard.yaml', 'soil/2025.txt', 'diary.csv', 'rules.yaml', 'sheet.html'])('links in a circle: %s', async (file) => {
    await withFolder(FILES, (folder) => {
      rmSync(join(folder, file), { force: true });
      symlinkSync(join(folder, `${file}.b`), join(folder, file));
      symlinkSync(join(folder, file), join(folder, `${file}.b`));
      for (const argv of [['sheet'], ['diary', 'note Gate apple buds']]) {
        const run = real(folder, argv);
        expect([argv, [0, 3, 5].includes(run.code!)]).toEqual([argv, true]);
        expect(run.stderr).not.toMatch(/ELOOP|\n\s+at /);
      }
    });
  });
});

/** A pipe that nobody writes to: whoever reads it waits for ever. */
const pipe = (path: string): boolean => spawnSync('mkfifo', [path]).status === 0;
const hasPipes = process.platform !== 'win32' && spawnSync('sh', ['-c', 'command -v mkfifo']).status === 0;

describe('what is no file', () => {
  const COMMANDS = [['sheet'], ['page'], ['diary', 'note Gate apple buds']];
  describe.each(['orchard.yaml', 'soil/2025.txt', 'diary.csv', 'rules.yaml', 'sheet.html', 'medlar.html', 'templates/sheet.html.hbs'])('%s', (file) => {
    test.skipIf(!hasPipes)('as a pipe is told at once', { timeout: 200_000 }, async () => {
      await withFolder(FILES, (folder) => {
        rmSync(join(folder, file), { force: true });
        mkdirSync(join(folder, 'templates'), { recursive: true });
        expect(pipe(join(folder, file))).toBe(true);
        for (const argv of COMMANDS) {
          const run = real(folder, argv);
          expect([argv, run.signal]).toEqual([argv, null]);
          expect([0, 3, 5]).toContain(run.code);
          expect(run.stderr).not.toMatch(/\n\s+at /);
        }
        expect(lstatSync(join(folder, file)).isFIFO()).toBe(true);
      });
    });
    test('as a folder is told', async () => {
      await withFolder(FILES, (folder) => {
        rmSync(join(folder, file), { force: true });
        mkdirSync(join(folder, file, 'within'), { recursive: true });
        for (const argv of COMMANDS) {
          const run = real(folder, argv);
          expect([argv, [0, 3, 5].includes(run.code!)]).toEqual([argv, true]);
          expect(run.stderr).not.toMatch(/EISDIR|\n\s+at /);
        }
        expect(readdirSync(join(folder, file))).toEqual(['within']);
      });
    });
  });
  test.skipIf(!hasPipes)('a report that is piped by its path is read: medlar read <(pdftotext ...)', async () => {
    await withFolder({}, (folder) => {
      const run = spawnSync('sh', ['-c', `mkfifo p; printf 'pH 6.4\\nPhosphorus 42 ppm Olsen\\n' > p & exec "$0" "$1" read p --json`, process.execPath, join(process.cwd(), 'dist/medlar.js')], { cwd: folder, encoding: 'utf8', timeout: 30_000 });
      expect((JSON.parse(run.stdout) as { result: { samples: { readings: unknown[] }[] } }).result.samples[0]!.readings).toHaveLength(2);
    });
  });
});

describe('paths in orchard.yaml', () => {
  const OUT = ['../../etc/passwd', '/etc/passwd', 'soil/../../secret.txt', '..', 'soil/../..', '/', 'soil/../../../../../../../../../../etc/hostname'];
  test.each([...OUT, 'soil/..//', '.', 'soil', './/soil//', 'C:\\Windows\\win.ini', 'C:/Windows/win.ini', '\\\\server\\share\\x.txt', 'soil\\2025.txt', '%2e%2e%2fsecret.txt', 'soil/%00.txt', 'file:///etc/passwd', '~/secret.txt', '$HOME/x', 'soil/2025.txt/x', 'soil/2025.txt/', `${'soil/'.repeat(900)}x.txt`, 'x'.repeat(300)])('%s', async (path) => {
    await withFolder({ ...FILES, 'orchard.yaml': GOOD.replace('soil/2025.txt', JSON.stringify(path)) }, (folder) => {
      for (const argv of [['page']]) {
        const run = real(folder, [...argv, '--json']);
        expect([argv, [3, 5].includes(run.code!)]).toEqual([argv, true]);
        expect(run.stdout).not.toMatch(/root:|secret of/);
        if (OUT.includes(path) && existsSync(join(folder, path))) expect(errors(run.stdout)).toEqual(['path-outside']);
      }
      expect(readdirSync(folder).sort()).toEqual(['orchard.yaml', 'soil']);
    });
  });
  test.each(['soil/\\0.txt', 'soil/2025.txt\\0', '\\0'])('NUL, written as "%s"', async (path) => {
    await withFolder({ ...FILES, 'orchard.yaml': GOOD.replace('soil/2025.txt', `"${path}"`) }, (folder) => {
      const run = real(folder, ['plan']);
      expect([3, 5]).toContain(run.code);
      expect(run.stderr).not.toMatch(/\0|null bytes|ERR_|must be a string/);
    });
  });
});
