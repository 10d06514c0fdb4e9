/** A zone over the years: its soil tests beside each other, and what went on between them by the diary. */
import type { ZoneSoil } from './gather.ts';
import type { Entry } from './orchard/diary.ts';
import type { Given } from './orchard/history.ts';
import { givenBetween } from './orchard/history.ts';
import type { Orchard } from './orchard/load.ts';
import { zoneOf } from './orchard/load.ts';
import type { Series } from './rating/trend.ts';
import { trendsOf } from './rating/trend.ts';
import type { Day } from './units/date.ts';
import type { Season } from './when/season.ts';

/** `given` in grams over all plants of the zone; `from` is the day of the earlier test, `until` that of the later, or today. */
export type Between = Given & { readonly from: Day; readonly until: Day };
export type ZoneYears = { readonly zone: string; readonly taken: readonly string[]; readonly series: readonly Series[]; readonly between: readonly Between[] };

export function yearsOf(orchard: Orchard, zones: readonly ZoneSoil[], diary: readonly Entry[], season: Season): ZoneYears[] {
  const bags = [...orchard.shed, ...orchard.store];
  return zones.map((z): ZoneYears => {
    const tests = [...z.earlier, { sample: z.sample, rated: z.soil.rated }].map(({ sample, rated }) => ({ taken: sample.taken ?? '', rated }));
    const taken = tests.map((t) => t.taken);
    const trees = orchard.trees.filter((t) => zoneOf(t, orchard) === z.zone && t.tub === undefined);
    const days = [...taken.filter((d) => d !== ''), season.today];
    const between = days.slice(1).map((until, i): Between => {
      const from = days[i]!;
      const each = trees.map((t) => ({ count: t.count, given: givenBetween(t, z.zone, diary, from, until, bags, orchard.where.country) }));
      const sum = (of: keyof Given): number => each.reduce((all, { count, given }) => all + (of === 'unknown' ? 1 : count) * given[of], 0);
      return { from, until, N: sum('N'), P2O5: sum('P2O5'), K2O: sum('K2O'), lime: sum('lime'), sulphur: sum('sulphur'), unknown: sum('unknown') };
    });
    return { zone: z.zone, taken, series: trendsOf(tests), between };
  });
}
