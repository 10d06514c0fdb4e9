// `medlar diary`: design.md 5 to 7. Doses of the day: the orchard worked by hand in deciding.md.
import { execFile } from 'node:child_process';
import { chmodSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, symlinkSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { buildSync } from 'esbuild';
import { describe, expect, test } from 'vitest';
import { append, openDiary } from '../../src/cli/diary-file.ts';
import { ANSWERS } from '../../src/json/schemas.ts';
import type { Entry } from '../../src/orchard/diary.ts';
import { both, GOOD, held, inFolder, leftovers, REPORT } from '../hostile/hold.ts';
import { readDiary } from '../../src/orchard/diary.ts';
import { medlar } from '../medlar.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const HEAD = 'date,trees,what,bag,amount,note\n';
const FILES = {
  'orchard.yaml': GOOD.replace('store:', '  Wall plum: plum, planted 2024, 6 ft across, shoots 6 in 2025, mulch, bank\n  Blueberries: 6 blueberry, planted 2022, bank\nstore:'),
  'soil/2025.txt': REPORT,
};
const file = (folder: string): string => readFileSync(join(folder, 'diary.csv'), 'utf8');
const entry = (note: string): Entry => ({ date: '2026-03-14', trees: ['Gate apple'], what: 'note', bag: null, g: null, m: null, amount: null, note, line: 0 });

describe('writing', () => {
  test('appends and says back what it wrote', async () => {
    await inFolder(FILES, async (folder, run) => {
      const first = await run('diary', 'fed Gate apple 12 oz sulphate of ammonia on 1 March');
      held(first);
      expect(first).toMatchObject({ code: 0, stdout: 'Written: 1 March, Gate apple, fed 12 oz Sulphate of ammonia.\n', stderr: '' });
      expect(file(folder)).toBe(`${HEAD}2026-03-01,Gate apple,fed,Sulphate of ammonia,12 oz,\n`);
      // Without quotation marks round the sentence, as it is typed in a hurry.
      expect((await run('diary', 'shoots', 'Gate', 'apple', '7', 'in')).stdout).toBe('Written: 14 March, Gate apple, shoots 7 in.\n');
      expect((await run('diary', 'fed Blueberries 2 oz each 21-0-0')).stdout).toBe('Written: 14 March, Blueberries, fed 2 oz each Sulphate of ammonia.\n');
      expect((await run('diary', 'note Gate apple scab on 3 November 2025')).stdout).toBe('Written: 3 November 2025, Gate apple, note: scab.\n');
      const shown = await run('diary');
      expect(shown.stdout.split('\n')).toEqual([
        '3 November 2025: Gate apple, note: scab', '1 March 2026: Gate apple, fed 12 oz Sulphate of ammonia', '14 March 2026: Gate apple, shoots 7 in', '14 March 2026: Blueberries, fed 2 oz each Sulphate of ammonia', '',
      ]);
      expect(readdirSync(folder).sort()).toEqual(['diary.csv', 'orchard.yaml', 'soil']);
    });
  });

  test('JSON holds the season so far, and how many were written', async () => {
    const diary = `${HEAD}2025-03-13,Gate apple,note,,,long ago\n2026-01-02,Gate apple,shoots,,7 in,\n2025-10-20,bank,limed,Garden lime,1 kg,\n`;
    const run = await medlar(['diary', 'fed Gate apple', '--json'], { ...FILES, 'diary.csv': diary });
    expect(ANSWERS.diary.safeParse(run.json).error?.issues ?? []).toEqual([]);
    expect(run.json.result).toEqual({
      written: 1,
      entries: [
        { date: '2025-10-20', trees: ['bank'], what: 'limed', bag: 'Garden lime', amount: '1 kg', g: 1000, m: null, note: '', line: 4 },
        { date: '2026-01-02', trees: ['Gate apple'], what: 'shoots', bag: null, amount: '7 in', g: null, m: expect.closeTo(0.1778, 10), note: '', line: 3 },
        { date: '2026-03-14', trees: ['Gate apple'], what: 'fed', bag: null, amount: null, g: null, m: null, note: '', line: 5 },
      ],
    });
    const shown = await medlar(['diary', '--json'], { ...FILES, 'diary.csv': diary });
    expect(shown.json.result.written).toBe(0);
    expect(shown.json.result.entries).toHaveLength(2);
  });

  test('nothing written yet', async () => {
    const { text, json } = await both(['diary'], FILES);
    expect(text.code).toBe(0);
    expect(text.stdout).toContain('medlar diary "fed Gate apple');
    expect(json.json.result).toEqual({ entries: [], written: 0 });
  });

  test('- reads sentences, a line each, and writes all or none', async () => {
    await medlar(['diary', '-'], FILES, 'fed Gate apple 12 oz\n\nshoots Wall plum 9 in\r\n', (folder) => { expect(file(folder).split('\n')).toHaveLength(4); });
    const bad = await medlar(['diary', '-'], FILES, 'fed Gate apple 12 oz\nshoots Wal plum 9 in\nfed Gate apple 12\n', (folder) => { expect(existsSync(join(folder, 'diary.csv'))).toBe(false); });
    held(bad);
    expect(bad.code).not.toBe(0);
    expect(bad.stderr).toContain('Did you mean "Wall plum"?');
    expect(bad.stderr).toContain('"12"');
  });

  test.each([
    ['fed Gate aple 12 oz', 2, 'Gate apple'], ['hello', 3, 'fed Gate apple'], ['fed Gate apple 12 oz sulphate of amonia', 3, 'Sulphate of ammonia'], ['fed Gate apple 1 oz on 15 March 2026', 3, 'ahead'], ['fed Gate apple and Wall plum 2 oz', 3, '2 oz each'],
    ['fed Gate apple 1 oz 4/14/2025', 3, '2026-04-14'], ['', 3, 'fed Gate apple'], ['note Gate apple \u001b[31mred', 0, ''],
  ] as const)('%j exits %i', async (sentence, code, hint) => {
    const { text } = await both(['diary', sentence], FILES);
    expect(text.code).toBe(code);
    expect(text.stderr).toContain(hint);
  });

  test('the same on the same day is refused, unless it is said', async () => {
    await inFolder(FILES, async (folder, run) => {
      await run('diary', 'fed Gate apple 1 oz 21-0-0');
      const before = file(folder);
      const second = await run('diary', 'Fed the gate apple with 1 oz sulphate of ammonia');
      held(second);
      expect(second.code).toBe(3);
      expect(second.stderr).toContain('line 2');
      expect(second.stderr).toContain('--again');
      expect(file(folder)).toBe(before);
      expect((await run('diary', 'fed Gate apple 1 oz 21-0-0 on 13 March')).code).toBe(0);
      expect((await run('diary', 'fed Gate apple 1 oz 21-0-0', '--again')).code).toBe(0);
      expect(file(folder).split('\n')).toHaveLength(5);
    });
    expect((await medlar(['diary', '-'], FILES, 'note Gate apple scab\nnote Gate apple scab\n')).code).toBe(3);
  });

  test('lime on blueberries is written, and asked about', async () => {
    for (const [sentence, warns] of [['limed Blueberries 2 oz each', true], ['limed bank 8 oz in all', true], ['limed everything', true], ['limed Gate apple 2 oz', false]] as const) {
      const { text, notices } = await both(['diary', sentence], FILES);
      expect([sentence, text.code, notices.map((n) => n.code)]).toEqual([sentence, 0, warns ? ['diary-limed-sour'] : []]);
      expect(text.stdout.includes('acid soil')).toBe(warns);
    }
  });

  test('a zone\'s lime in all is shared by the number of plants', async () => {
    // One apple, one plum and six blueberries stand on the bank: 8 lb ÷ 8.
    await medlar(['diary', 'limed bank 8 lb in all'], FILES, '', (folder) => { expect(file(folder)).toBe(`${HEAD}2026-03-14,bank,limed,,1 lb,\n`); });
  });

  test('undo takes back what was written last, and the file only grows', async () => {
    await inFolder(FILES, async (folder, run) => {
      expect((await run('diary', 'undo')).code).toBe(0);
      await run('diary', 'note frost');
      await run('diary', 'shoots Gate apple 7 in');
      const before = file(folder);
      const said = await run('diary', 'undo last');
      held(said);
      expect(said.code).toBe(0);
      expect(said.stdout).toContain('Gate apple');
      expect(file(folder)).toBe(`${before}2026-03-14,Gate apple,withdrawn,,7 in,"shoots, 2026-03-14"\n`);
      const { entries } = readDiary(file(folder), 'diary.csv');
      expect(entries.map((e) => e.what)).toEqual(['note']);
      // Again, and once more, when nothing stands any longer.
      expect((await run('diary', 'undo')).code).toBe(0);
      expect(readDiary(file(folder), 'diary.csv')).toMatchObject({ entries: [], notices: [] });
      const grown = file(folder);
      expect((await run('diary', 'undo')).stdout).not.toContain('withdrawn');
      expect(file(folder)).toBe(grown);
      // What was taken back may be written again.
      expect((await run('diary', 'shoots Gate apple 7 in')).code).toBe(0);
      expect(readDiary(file(folder), 'diary.csv').entries).toHaveLength(1);
    });
  });

  test('a day taken back is planned again as it was', async () => {
    await inFolder(FILES, async (folder, run) => {
      const plan = async () => (await run('plan', '--json')).json.result.days;
      const first = await plan();
      expect(first.length).toBeGreaterThan(0);
      await run('diary', 'day 1 done');
      expect(await plan()).not.toEqual(first);
      await run('diary', 'undo');
      expect(readDiary(file(folder), 'diary.csv').entries).toEqual([]);
      expect(await plan()).toEqual(first);
    });
  });

  test('a dose of the plan\'s own, done as it said, is no burn', async () => {
    // A young fig's yearly nitrogen goes on a ring twice as wide as its crown.
    const files = { 'orchard.yaml': 'where: Georgia, US\nbud-break: 15 March\nfirst-frost: 5 November\ntrees:\n  Fig: fig, planted 2020\nstore:\n  - Sulfate of ammonia, 21-0-0, 40 lb, $20\n' };
    await inFolder(files, async (_, run) => {
      expect((await run('diary', 'day 1 done')).code).toBe(0);
      const { notices, result } = (await run('plan', '--json')).json;
      expect(result.trees[0].fed).toHaveLength(1);
      expect(notices.map((n) => n.code)).not.toContain('fed-burn');
      // As much again on one day is one.
      await run('diary', 'fed Fig 12 oz Sulfate of ammonia');
      expect((await run('plan', '--json')).json.notices.map((n) => n.code)).toContain('fed-burn');
    });
  });

  test('of two alike one is taken back; a line that takes back nothing is told', async () => {
    const line = '2026-03-01,Gate apple,fed,Urea,2 oz,';
    const back = '2026-03-01,Gate apple,withdrawn,Urea,2 oz,"fed, 2026-03-02"';
    expect(readDiary([HEAD.trim(), line, line, back, ''].join('\n'), 'diary.csv').entries.map((e) => e.line)).toEqual([2]);
    const odd = readDiary([HEAD.trim(), back, line, ''].join('\n'), 'diary.csv');
    expect(odd.entries).toHaveLength(1);
    expect(odd.notices).toEqual([expect.objectContaining({ code: 'diary-withdrawn', place: expect.objectContaining({ line: 2 }) })]);
    const run = await medlar(['check', '--json'], { ...FILES, 'diary.csv': [HEAD.trim(), back, ''].join('\n') });
    expect([run.code, run.json.notices.map((n) => n.code)]).toEqual([0, ['diary-withdrawn']]);
  });

  test('--help shows six sentences, each of which is read', async () => {
    const { stdout } = await medlar(['diary', '--help']);
    const examples = [...stdout.matchAll(/medlar diary "(.+)"/g)].map((m) => m[1]!);
    expect(examples).toHaveLength(6);
    const files = { ...FILES, 'orchard.yaml': FILES['orchard.yaml'].replaceAll('bank', 'top strip') };
    for (const example of examples.filter((e) => !e.startsWith('day'))) expect([example, (await medlar(['diary', example], files)).code]).toEqual([example, 0]);
  });

  test('metric examples where the orchard is metric', async () => {
    const { stderr } = await medlar(['diary', 'hello'], { ...FILES, 'orchard.yaml': FILES['orchard.yaml'].replace('Ohio, US', 'Kent, UK') });
    expect(stderr).toContain('kg');
    expect(stderr).not.toMatch(/\d (?:oz|lb|in)\b/);
  });

  test('no orchard, no diary', async () => { expect((await both(['diary', 'fed Gate apple'], {})).text.code).toBe(5); });
});

describe('day N done', () => {
  test('a day that was planned afresh since a sheet may have been printed is told; what was only ticked off is not', async () => {
    await inFolder(FILES, async (folder, run) => {
      const planned = (await run('plan', '--json')).json.result.days[0].doses as { tree: string }[];
      expect(planned.map((d) => d.tree)).toContain('Wall plum');
      await run('diary', 'fed Wall plum 1/2 oz sulphate of ammonia on 10 March');
      const other = await run('diary', 'day 1 done', '--json');
      expect(other.json.notices.map((n: { code: string }) => n.code)).toEqual(['diary-day-changed']);
      expect(other.json.notices[0]!.text).toContain('Wall plum');
      rmSync(join(folder, 'diary.csv'));
      const first = (await run('plan', '--json')).json.result.days[0].doses.find((d: { tree: string }) => d.tree === 'Gate apple');
      await run('diary', `fed Gate apple ${(first.g / 28.349523125).toFixed(1)} oz sulphate of ammonia on 10 March`);
      const ticked = await run('diary', 'day 1 done', '--json');
      expect(ticked.json.notices).toEqual([]);
      expect(ticked.json.result.written).toBeGreaterThan(0);
    });
  });
  test('writes each dose of the day', async () => {
    await inFolder(FILES, async (folder, run) => {
      const day = (await run('plan', '--json')).json.result.days[0] as { doses: { tree: string; bag: string; g: number }[] };
      const said = await run('diary', 'day 1 done', '--json');
      expect(said.code).toBe(0);
      expect(said.json.result.written).toBe(day.doses.length);
      const got = said.json.result.entries.map((e: Entry) => ({ tree: e.trees.join(), bag: e.bag, g: e.g, note: e.note, what: e.what }));
      expect(got).toEqual(day.doses.map(({ tree, bag, g }) => ({ tree, bag, g: expect.closeTo(g, 1), note: 'day 1', what: 'fed' })));
      // 350 g of 21-0-0 is 12 1/2 oz (deciding.md, worked by hand).
      expect(file(folder)).toContain('2026-03-14,Gate apple,fed,Sulphate of ammonia,12 1/2 oz,day 1\n');
    });
  });

  test('twice is refused, unless it is said', async () => {
    await inFolder(FILES, async (folder, run) => {
      await run('diary', 'day 1 done on 12 March');
      const before = file(folder);
      const twice = await run('diary', 'did day 1');
      held(twice);
      expect(twice.code).toBe(3);
      expect(twice.stderr).toContain('12 March 2026');
      expect(twice.stderr).toContain('Gate apple');
      expect(file(folder)).toBe(before);
      expect((await run('diary', 'did day 1', '--again')).code).toBe(0);
      expect(file(folder).length).toBeGreaterThan(before.length);
    });
  });

  test('some trees left out may follow, and only they', async () => {
    await inFolder(FILES, async (folder, run) => {
      const trees = (text: string): string[] => text.trim().split('\n').slice(1).filter((l) => l.endsWith(',day 1')).map((l) => l.split(',')[1]!);
      const all = [...new Set(((await run('plan', '--json')).json.result.days[0] as { doses: { tree: string }[] }).doses.map((d) => d.tree))];
      expect(all.length).toBeGreaterThan(1);
      expect((await run('diary', 'day 1 done except Gate apple')).code).toBe(0);
      expect([...new Set(trees(file(folder)))].sort()).toEqual(all.filter((t) => t !== 'Gate apple').sort());
      expect((await run('diary', 'day 1 done')).code).toBe(0);
      expect([...new Set(trees(file(folder)))].sort()).toEqual([...all].sort());
      const third = await run('diary', 'day 1 done');
      expect(third.code).toBe(3);
      expect(third.stderr).toContain('Day 1 stands in the diary already');
    });
    const { text } = await both(['diary', 'day 1 done without bank'], FILES);
    expect(text.code).toBe(3);
    expect(text.stderr).toContain('Gate apple');
  });

  test('twice in one breath is refused too', async () => {
    const run = await medlar(['diary', '-'], FILES, 'day 1 done\nday 1 done\n', (folder) => { expect(existsSync(join(folder, 'diary.csv'))).toBe(false); });
    expect(run.code).toBe(3);
  });

  test('last year\'s day is another', async () => {
    const run = await medlar(['diary', 'day 1 done'], { ...FILES, 'diary.csv': `${HEAD}2025-04-12,Gate apple,fed,Sulphate of ammonia,12 oz,day 1\n` });
    expect(run.code).toBe(0);
  });

  test('an unknown day names the days there are', async () => {
    const { text } = await both(['diary', 'day 9 done'], FILES);
    expect(text.code).toBe(3);
    expect(text.stderr).toMatch(/no day 9\. It has 1 \(\d/);
    const none = await both(['diary', 'day 1 done'], { 'orchard.yaml': GOOD.replace('mulch', 'fed lawn'), 'soil/2025.txt': REPORT });
    expect(none.text.code).toBe(3);
  });
});

describe('the file', () => {
  const broken = `${HEAD}2026-03-01,"Gate apple,fed,,1 oz,\r\nnonsense\n2026-03-02,Wall plum,note,,,é "x"\n14/14/2026,Gate apple,fed,,1 oz,`;

  test('broken lines stay byte for byte, and are told', async () => {
    await inFolder({ ...FILES, 'diary.csv': broken }, async (folder, run) => {
      const said = await run('diary', 'fed Gate apple 1 oz');
      held(said);
      expect(said.code).toBe(0);
      expect(file(folder)).toBe(`${broken}\n2026-03-14,Gate apple,fed,,1 oz,\n`);
      expect(said.stderr.match(/diary\.csv, line \d/g)).toEqual(['diary.csv, line 2', 'diary.csv, line 3', 'diary.csv, line 5']);
      expect(said.stderr).toContain('    3 | nonsense');
    });
  });

  test('without its columns nothing is added', async () => {
    await inFolder({ ...FILES, 'diary.csv': 'my notes\n' }, async (folder, run) => {
      const said = await run('diary', 'fed Gate apple 1 oz');
      expect(said.code).toBe(3);
      expect(said.stderr).toContain('date,trees,what,bag,amount,note');
      expect(file(folder)).toBe('my notes\n');
    });
  });

  test('UTF-16, as a spreadsheet may save it, stays so', async () => {
    await inFolder({ ...FILES, 'diary.csv': Buffer.from(`\ufeff${HEAD}`, 'utf16le') }, async (folder, run) => {
      expect((await run('diary', 'fed Gate apple 1 oz')).code).toBe(0);
      expect(readFileSync(join(folder, 'diary.csv')).toString('utf16le')).toBe(`\ufeff${HEAD}2026-03-14,Gate apple,fed,,1 oz,\n`);
    });
  });

  test('a failing write leaves the old file and nothing else', async () => {
    await inFolder({ ...FILES, 'diary.csv': HEAD }, async (folder, run) => {
      // A folder where the temporary file would be.
      mkdirSync(join(folder, `diary.csv.${process.pid}.tmp`));
      const said = await run('diary', 'fed Gate apple 1 oz', '--json');
      expect(said.code).toBe(5);
      expect(said.json.notices.map((n) => n.code)).toEqual(['file-unwritable']);
      expect(file(folder)).toBe(HEAD);
      expect(existsSync(join(folder, 'diary.csv.lock'))).toBe(false);
      rmSync(join(folder, `diary.csv.${process.pid}.tmp`), { recursive: true });
      expect((await run('diary', 'fed Gate apple 1 oz')).code).toBe(0);
    });
    await inFolder(FILES, async (folder, run) => {
      // The rename itself fails where the diary is a folder.
      mkdirSync(join(folder, 'diary.csv'));
      const said = await run('diary', 'fed Gate apple 1 oz');
      held(said);
      expect(said.code).toBe(5);
      expect(leftovers(folder)).toEqual([]);
      expect((await run('diary')).code).toBe(5);
    });
  });

  test.skipIf(process.getuid?.() === 0)('a folder that may not be written', async () => {
    await inFolder({ ...FILES, 'diary.csv': HEAD }, async (folder, run) => {
      chmodSync(folder, 0o500);
      try {
        expect((await run('diary', 'fed Gate apple 1 oz')).code).toBe(5);
        expect(file(folder)).toBe(HEAD);
      } finally {
        chmodSync(folder, 0o700);
      }
    });
  });

  test('its rights stay as they were', async () => {
    await inFolder({ ...FILES, 'diary.csv': HEAD }, async (folder, run) => {
      chmodSync(join(folder, 'diary.csv'), 0o640);
      await run('diary', 'fed Gate apple 1 oz');
      expect(statSync(join(folder, 'diary.csv')).mode & 0o777).toBe(0o640);
    });
  });

  test('a link out of the folder is refused; one inside is followed', async () => {
    await inFolder({ ...Object.fromEntries(Object.entries(FILES).map(([n, t]) => [`in/${n}`, t])), 'out.csv': HEAD, 'in/kept/diary.csv': HEAD }, async (folder, run) => {
      symlinkSync('../out.csv', join(folder, 'in/diary.csv'));
      for (const argv of [['diary'], ['diary', 'fed Gate apple 1 oz']]) {
        const said = await run(...argv, '--folder', 'in');
        held(said);
        expect(said.code).toBe(3);
      }
      expect(readFileSync(join(folder, 'out.csv'), 'utf8')).toBe(HEAD);
      rmSync(join(folder, 'in/diary.csv'));
      symlinkSync('kept/diary.csv', join(folder, 'in/diary.csv'));
      expect((await run('diary', 'fed Gate apple 1 oz', '--folder', 'in')).code).toBe(0);
      expect(readFileSync(join(folder, 'in/kept/diary.csv'), 'utf8')).toBe(`${HEAD}2026-03-14,Gate apple,fed,,1 oz,\n`);
      rmSync(join(folder, 'in/diary.csv'));
      symlinkSync('nowhere.csv', join(folder, 'in/diary.csv'));
      expect((await run('diary', 'fed Gate apple 1 oz', '--folder', 'in')).code).toBe(5);
    });
  });
});

describe('two at once', () => {
  test('a lock left by a run that died is taken over', async () => {
    await inFolder({ 'diary.csv.lock': '' }, (folder) => {
      const old = new Date(Date.now() - 11_000);
      utimesSync(join(folder, 'diary.csv.lock'), old, old);
      expect(append(folder, [entry('x')])).toEqual({ first: 2 });
      expect(readdirSync(folder)).toEqual(['diary.csv']);
      return Promise.resolve();
    });
  });

  test('four runs that each add twenty lines lose none', async () => {
    await inFolder({}, async (folder) => {
      const script = join(folder, 'writer.cjs');
      buildSync({
        stdin: {
          contents: `import { append } from './src/cli/diary-file.ts';
            for (let i = 0; i < 20; i++) {
              const done = append(process.argv[2], [{ date: '2026-03-14', trees: ['Gate apple'], what: 'note', bag: null, g: null, m: null, amount: null, note: process.argv[3] + i, line: 0 }]);
              if ('notice' in done) throw new Error(JSON.stringify(done));
            }`,
          resolveDir: ROOT, loader: 'ts',
        },
        bundle: true, platform: 'node', format: 'cjs', outfile: script, logLevel: 'error',
      });
      writeFileSync(join(folder, 'diary.csv'), HEAD);
      await Promise.all(['a', 'b', 'c', 'd'].map((name) => promisify(execFile)(process.execPath, [script, folder, name])));
      const { entries, notices } = openDiary(folder, null);
      expect(notices).toEqual([]);
      expect(entries.map((e) => e.note).sort()).toEqual(['a', 'b', 'c', 'd'].flatMap((name) => Array.from({ length: 20 }, (_, i) => `${name}${i}`)).sort());
      expect(readdirSync(folder).sort()).toEqual(['diary.csv', 'writer.cjs']);
    });
  });
});
