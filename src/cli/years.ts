/** `medlar years`: the soil tests of each zone beside each other, and what the diary says was given between them. */
import { join, relative } from 'node:path';
import { betweenLine, seriesLine, yearsPage } from '../sheet/years.ts';
import { nextTest } from '../sheet/back.ts';
import { seasonOf } from '../when/season.ts';
import { say } from '../words/words.ts';
import { yearsOf } from '../years.ts';
import { give } from './answer.ts';
import { openFolder } from './folder.ts';
import type { Common, Io } from './io.ts';
import { planWhole } from './plan-whole.ts';
import { writeOwn } from './write.ts';

type YearsOptions = Common & { readonly as?: 'html' | 'text'; readonly open?: true; readonly force?: true };

export async function yearsCommand(options: YearsOptions, io: Io): Promise<number> {
  const json = options.json === true;
  const folder = await openFolder(options, io, options.today ?? io.today);
  const { orchard, zones, diary, language: L, notices } = folder;
  const errors = notices.filter((n) => n.severity === 'error');
  if (!orchard || errors.length > 0) return give({ command: 'years', result: null, notices: errors, language: L }, json, io);
  const season = seasonOf(orchard, folder.today);
  const again = nextTest(await planWhole(orchard, zones, folder.today, { diary }));
  const years = yearsOf(orchard, zones, diary, season).map((z) => ({ ...z, again }));
  const file = join(folder.path, 'years.html');
  const shown = relative(io.cwd, file) || file;
  const page = options.as === 'html';
  const refused = page ? writeOwn(file, shown, yearsPage(years, { orchard, season }), 'html', options.force === true) : null;
  if (refused) return give({ command: 'years', result: null, notices: [refused], language: L }, json, io);
  const opened = !page || options.open !== true || (await io.open?.(file)) === true;
  const result = {
    files: page ? [shown] : [],
    zones: years.map(({ zone, taken, series, between, again }) => ({
      zone, taken, testAgain: again, series: series.map(({ item, method, unit, trend, jump, points, elsewhere }) => ({ item, method, unit, trend, jump, points, elsewhere })), between,
    })),
  };
  const lines = years.flatMap((z) => [
    say(L, 'years', z.taken.length === 1 ? 'tests1' : 'testsN', { zone: z.zone, n: z.taken.length }),
    ...z.series.map((s) => `  ${seriesLine(s, L)}`), ...z.between.map((b) => `  ${betweenLine(b, L, orchard.where.units)}`), `  ${say(L, 'years', 'again', { year: z.again })}`,
  ]);
  const written = page ? [say(L, 'years', 'written', { file: shown }), ...(opened ? [] : [say(L, 'say', 'not-opened')])] : [];
  return give({ command: 'years', result, notices, questions: [], language: L, text: `${[...lines, ...written].join('\n')}\n` }, json, io);
}
