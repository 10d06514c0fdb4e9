/** The season: its year, its bud break, its last day for nitrogen. Windows of days, never a single day. */
import type { Figure } from '../reason/figure.ts';
import { figure } from '../reason/figure.ts';
import type { MonthDay, Orchard } from '../orchard/load.ts';
import type { Crop } from '../tables/crops.ts';
import { EVERGREEN } from '../tables/crops.ts';
import { AMENDMENT_RETEST, BUD_BREAK_BEFORE_LAST_FROST, FIRST_DOSE, LAST_DATES, LAST_NITROGEN, LIME_WINDOW, RETEST, SULPHUR_WINDOW, UNTOLD } from '../tables/timing.ts';
import { SULPHUR_TIME } from '../tables/sulphur.ts';
import type { Phase } from '../tables/windows.ts';
import type { Day } from '../units/date.ts';
import { addDays, day, daysBetween, yearOf } from '../units/date.ts';

/** A window of fewer days is no use to somebody with a job. */
export const SHORTEST = 7;

export type Season = {
  readonly year: number;
  readonly today: Day;
  readonly budBreak: Day;
  readonly firstFrost: Day;
  readonly lastNitrogen: Day;
  readonly lastNitrogenEvergreen: Day;
  /** Weeks before the first frost, with their reason. */
  readonly lastFigure: Figure<'day', 'time'>;
  /** Which dates were assumed, since nobody told them. */
  readonly assumed: readonly ('bud-break' | 'first-frost')[];
};

/** The last day for nitrogen of one crop. */
export type LastDay = { readonly day: Day; readonly why: Figure<'day', 'time'>; /** Printed by the place's own publisher. */ readonly printed: boolean };

/** `phase`: what the tree does then; null where the time has passed and the window was opened again. */
export type Window = { readonly from: Day; readonly until: Day; readonly phase: Phase | null; readonly why: Figure<'day', 'time'> };

/** The year of the earliest bud break whose last day for nitrogen has not passed on `today`. */
export function seasonOf(orchard: Orchard, today: Day): Season {
  const { south } = orchard.where;
  const untold = (at: readonly [number, number]): MonthDay => ({ month: south ? ((at[0] + 5) % 12) + 1 : at[0], date: at[1] });
  const budBreak = orchard.budBreak ?? fromLastFrost(orchard.lastFrost) ?? untold(UNTOLD.budBreak);
  const frost = orchard.firstFrost ?? untold(UNTOLD.firstFrost);
  const assumed: Season['assumed'] = [
    ...(orchard.budBreak ?? orchard.lastFrost ? [] : (['bud-break'] as const)), ...(orchard.firstFrost ? [] : (['first-frost'] as const)),
  ];
  const weeks = LAST_NITROGEN.weeks * 7;
  for (let year = yearOf(today) - 1; ; year++) {
    const start = on(year, budBreak);
    const sameYear = on(year, frost);
    const firstFrost = sameYear > start ? sameYear : on(year + 1, frost);
    const lastNitrogen = addDays(firstFrost, -weeks);
    if (lastNitrogen < today) continue;
    const cite = orchard.firstFrost ? LAST_NITROGEN.cite : UNTOLD.cite;
    return {
      year, today, budBreak: start, firstFrost, lastNitrogen, lastNitrogenEvergreen: addDays(firstFrost, -LAST_NITROGEN.evergreenWeeks * 7), assumed,
      lastFigure: figure(-weeks, 'day', 'time', 'last-nitrogen', cite),
    };
  }
}

/** The last day for nitrogen of a crop: that of the season or, where it comes first, the one that the place's own publisher prints. */
export function lastDayOf(season: Season, crop: Crop, region: string | null): LastDay {
  const usual = { day: EVERGREEN.includes(crop) ? season.lastNitrogenEvergreen : season.lastNitrogen, why: season.lastFigure, printed: false };
  const own = LAST_DATES.find((r) => r.region === region && r.crops.includes(crop));
  if (!own) return usual;
  const printed = day(yearOf(season.budBreak), own.month, own.date);
  return printed < usual.day ? { day: printed, why: figure(daysBetween(season.budBreak, printed), 'day', 'time', 'last-printed', own.cite), printed: true } : usual;
}

const on = (year: number, at: MonthDay): Day => day(year, at.month, at.date);

function fromLastFrost(frost: MonthDay | null): MonthDay | null {
  if (!frost) return null;
  const [, month, date] = addDays(day(2025, frost.month, frost.date), -BUD_BREAK_BEFORE_LAST_FROST.days).split('-').map(Number) as [number, number, number];
  return { month, date };
}

/** Half a year: from the season before to the day of planting. */
const DIG_IN_DAYS = 182;

/** Dug in before planting: from today to the month of planting, or to bud break where no month is told. */
export function plantingWindow(season: Season, planting: { readonly year: number; readonly month?: number }): Window {
  const until = planting.month === undefined ? addDays(season.budBreak, 365 * (planting.year - season.year)) : day(planting.year, planting.month, 1);
  const ready = addDays(until, -DIG_IN_DAYS);
  const from = ready > season.today ? ready : season.today;
  return { from, until: until > from ? until : from, phase: null, why: figure(0, 'day', 'time', 'before-planting', { source: 'colorado-1216', at: 'P and K worked in before planting', mark: 'read' }) };
}

/** Sulphur in the ground of what is still to be planted: from now until its bacteria have had their least time. Null where that is too late. */
export function sulphurBedWindow(season: Season, planting: Window): Window | null {
  const days = Math.round(SULPHUR_TIME.months[0] * 30.44);
  const until = addDays(planting.until, -days);
  if (daysBetween(season.today, until) < SHORTEST) return null;
  return { from: season.today, until, phase: null, why: figure(days, 'day', 'time', 'sulphur-before', SULPHUR_TIME.cite) };
}

/** When to send soil again: three years after the sample, or this season where nobody said when it was taken. */
export function retestYear(season: Season, taken: Day | null): number {
  return taken ? Math.max(yearOf(taken) + RETEST.years, season.year) : season.year;
}

/** Whether a soil sample tells what lime or sulphur did that went on so long before it: a year, or a month less. */
const tellsFrom = (amended: Day): Day => addDays(amended, Math.round(AMENDMENT_RETEST.nearEnough * 30.44));
export const isTold = (amended: Day, taken: Day): boolean => tellsFrom(amended) <= taken;

/** The last month and day of autumn, the time for a soil sample. */
export const autumnEnd = (south: boolean): string => (south ? '05-31' : '11-30');

/** The year of the first autumn whose sample tells it. */
export function yearTold(amended: Day, south: boolean): number {
  const from = tellsFrom(amended);
  return from.slice(5) <= autumnEnd(south) ? yearOf(from) : yearOf(from) + 1;
}

/**
 * Lime: in the leafless months, a month before the first dose of nitrogen, where two weeks of them are left; else after the next frost.
 * `first`: days from bud break of that dose. Where nitrogen begins again so soon after frost, from a month after its last day.
 */
export function limeWindow(season: Season, first: number = FIRST_DOSE.from, last: Day = season.lastNitrogen): Window {
  const offset = first - LIME_WINDOW.beforeNitrogen;
  const before = addDays(season.budBreak, offset);
  const lastFrost = addDays(season.firstFrost, -365);
  const open = season.today > lastFrost ? season.today : lastFrost;
  const now = daysBetween(open, before) >= 2 * SHORTEST;
  if (now) return { from: open, until: before, phase: null, why: figure(offset, 'day', 'time', 'lime-before', LIME_WINDOW.cite) };
  const next = addDays(season.budBreak, 365 + offset);
  const afterFrost = addDays(season.firstFrost, LIME_WINDOW.from);
  const from = daysBetween(afterFrost, next) >= 2 * SHORTEST ? afterFrost : addDays(last, LIME_WINDOW.beforeNitrogen);
  const until = addDays(from, LIME_WINDOW.until);
  return { from, until: until < next ? until : next, phase: null, why: figure(LIME_WINDOW.from, 'day', 'time', 'lime-after', LIME_WINDOW.cite) };
}

/** Sulphur: in spring; where spring has passed, within four weeks while nitrogen may still go on; null after that. */
export function sulphurWindow(season: Season): Window | null {
  const from = addDays(season.budBreak, SULPHUR_WINDOW.from);
  const until = addDays(season.budBreak, SULPHUR_WINDOW.until);
  const why = figure(SULPHUR_WINDOW.from, 'day', 'time', 'dose-window', SULPHUR_WINDOW.cite);
  if (season.today <= from) return { from, until, phase: null, why };
  const end = until > addDays(season.today, SHORTEST) ? until : addDays(season.today, 28);
  return end <= season.lastNitrogen ? { from: season.today, until: end, phase: null, why } : null;
}
