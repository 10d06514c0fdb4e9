// Clocks, zones and languages of the machine: the day is the grower's own, and a plan of one day is the same bytes everywhere.
// Zones and their hours from UTC: IANA time zone database (Kiritimati +14, Apia +13, Kathmandu +5:45, St John's -3:30 in winter).
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { withFolder } from '../folder.ts';
import { real } from './real.ts';

const sample = (path: string): string => readFileSync(fileURLToPath(new URL(`../../samples/chapel-bank/${path}`, import.meta.url)), 'utf8');
const FILES = { 'orchard.yaml': sample('orchard.yaml'), 'soil/2025.txt': sample('soil/2025.txt') };
const DIARY = 'date,trees,what,bag,amount,note\n';

/** The machine's own clock stands at this moment of UTC. */
const clock = (moment: string): Record<string, string> => {
  const code = `const D=Date,at=${Date.parse(moment)};globalThis.Date=class extends D{constructor(...a){a.length?super(...a):super(at)}static now(){return at}}`;
  return { NODE_OPTIONS: `--import=data:text/javascript,${encodeURIComponent(code)}` };
};
const answer = (stdout: string): { ok: boolean; result: { season: number; days: { from: string; until: string }[] } | null } => JSON.parse(stdout) as ReturnType<typeof answer>;

describe('the day of the machine', () => {
  // At 11:30 of UTC on 13 March it is past one of the next morning in Kiritimati; half past midnight in Apia; 03:30 before midnight is no other day in Newfoundland.
  test.each([
    ['Pacific/Kiritimati', '2026-03-13T11:30:00Z', '2026-03-14'], ['Pacific/Kiritimati', '2026-03-13T09:59:00Z', '2026-03-13'], ['Pacific/Apia', '2026-03-13T11:30:00Z', '2026-03-14'], ['Pacific/Apia', '2026-03-13T10:59:00Z', '2026-03-13'],
    ['Asia/Kathmandu', '2026-03-13T18:14:00Z', '2026-03-13'], ['Asia/Kathmandu', '2026-03-13T18:15:00Z', '2026-03-14'], ['UTC', '2026-03-13T23:59:59Z', '2026-03-13'], ['UTC', '2026-03-14T00:00:00Z', '2026-03-14'],
    ['America/St_Johns', '2026-01-14T03:29:00Z', '2026-01-13'], ['America/St_Johns', '2026-01-14T03:30:00Z', '2026-01-14'],
  ])('%s at %s: %s', async (TZ, moment, day) => {
    await withFolder({ ...FILES, 'diary.csv': DIARY }, (folder) => {
      expect(real(folder, ['diary', 'note Gate apple buds'], { TZ, ...clock(moment) })).toMatchObject({ code: 0, stderr: '' });
      expect(readFileSync(join(folder, 'diary.csv'), 'utf8').split('\n')[1]!.slice(0, 10)).toBe(day);
    });
  });

  test.each(['1970-01-01T00:00:00Z', '1970-01-01T12:00:00Z', '2100-02-28T23:00:00Z', '2100-03-01T00:00:00Z', '2038-01-19T03:14:08Z'])('a clock at %s plans, or says why not', async (moment) => {
    await withFolder(FILES, (folder) => {
      const day = moment.slice(0, 10);
      const own = real(folder, ['plan', '--json'], { TZ: 'UTC', ...clock(moment) });
      expect([0, 3]).toContain(own.code);
      expect(own.stdout).not.toMatch(/NaN|Invalid|undefined/);
      expect(answer(own.stdout).ok).toBe(own.code === 0);
      // The same day by flag is the same answer.
      expect(real(folder, ['plan', '--json', '--today', day]).stdout).toBe(own.stdout);
    });
  });
});

describe('a plan and a sheet of one day are the same bytes', () => {
  const made = (env: Record<string, string>): Promise<Record<string, string>> => {
    const out: Record<string, string> = {};
    return withFolder(FILES, (folder) => {
      for (const argv of [['plan', '--json'], ['sheet'], ['sheet', '--as', 'text'], ['sheet', '--as', 'ics']]) {
        const run = real(folder, [...argv, '--today', '2026-03-14'], env);
        expect(run.code, run.stderr).toBe(0);
        out[argv.join(' ')] = run.stdout;
      }
      for (const file of ['sheet.html', 'sheet.txt', 'calendar.ics']) if (existsSync(join(folder, file))) out[file] = readFileSync(join(folder, file), 'utf8');
    }).then(() => out);
  };
  const plain = made({ TZ: 'UTC', LC_ALL: 'C', LANG: 'C' });
  test('there are sheets to compare', async () => { expect(Object.keys(await plain)).toHaveLength(7); });
  test.each([
    ['LC_ALL', 'tr_TR.UTF-8'], ['LC_ALL', 'ar_EG.UTF-8'], ['LC_ALL', 'C'], ['LC_ALL', 'POSIX'], ['LANG', 'tr_TR.UTF-8'], ['LANG', 'th_TH.UTF-8'], ['LC_ALL', 'de_DE@euro'], ['TZ', 'Pacific/Kiritimati'], ['TZ', 'Pacific/Apia'], ['TZ', 'Asia/Kathmandu'], ['TZ', 'America/St_Johns'], ['TZ', 'No/Such_Place'],
  ])('%s=%s', async (name, value) => {
    expect(await made({ TZ: 'UTC', ...(name === 'LANG' ? { LC_ALL: '' } : {}), [name]: value })).toEqual(await plain);
  });
});
