/** The windows of a plant's doses: of days, never a single day; out of what is printed for its place, else the usual ones from bud break. */
import type { Cite, Otherwise } from '../reason/figure.ts';
import { figure } from '../reason/figure.ts';
import { FIRST_DOSE, FIRST_DOSE_SAND, NEXT_DOSE, SECOND_DOSE } from '../tables/timing.ts';
import type { Phase, TimedDose, Timing } from '../tables/windows.ts';
import { PHASES, PRINTED_APART, WET_WINTERS } from '../tables/windows.ts';
import type { Day } from '../units/date.ts';
import { addDays, day, daysBetween, yearOf } from '../units/date.ts';
import type { Season, Window } from './season.ts';
import { SHORTEST } from './season.ts';

/** `doses` is how many the year is parted into; `printed` the doses of the row that leads. */
export type WindowOptions = {
  readonly sandy: boolean; readonly last: Day; readonly south?: boolean; readonly region?: string | null; readonly tub?: boolean;
  readonly timing?: Timing | null; readonly printed?: readonly TimedDose[]; readonly parts?: number; readonly others?: readonly Otherwise[];
};

type Planned = { readonly from: Day; readonly until: Day; readonly phase: Phase; readonly cite: Cite; readonly printed: boolean };

const WORKING_WEEK = 5;
/** Days from the end of one dose's window to the start of the next. */
export const APART = SECOND_DOSE.from - FIRST_DOSE.until;
/** Days before bud break in which the middle of a printed month may lie; what is earlier is next year's. */
const BEFORE_BUDS = 100;

/** A printed month and day in the season, six months later in the south; the 31st is the last of any month. */
function dateIn([month, date]: readonly [number, number], south: boolean, year: number): Day {
  const there = south ? ((month + 5) % 12) + 1 : month;
  const length = Number(addDays(day(year, (there % 12) + 1, 1), -1).slice(8));
  return day(year, there, Math.min(date, length));
}

function spanOf(season: Season, { phase, dates, span }: TimedDose, sandy: boolean, south: boolean): { from: Day; until: Day } {
  if (!dates) {
    const [from, until] = span ?? (phase === 'month' ? [0, 0] : phase === 'bud-break' && sandy ? [FIRST_DOSE_SAND.from, FIRST_DOSE_SAND.until] : [PHASES[phase].from, PHASES[phase].until]);
    return { from: addDays(season.budBreak, from), until: addDays(season.budBreak, until) };
  }
  const earliest = addDays(season.budBreak, -BEFORE_BUDS);
  for (let year = yearOf(earliest) - 1; ; year++) {
    const from = dateIn(dates[0], south, year);
    const until = dateIn(dates[1], south, dateIn(dates[1], south, year) >= from ? year : year + 1);
    if (addDays(from, Math.round(daysBetween(from, until) / 2)) >= earliest) return { from, until };
  }
}

/** Three weeks at the start of each of as many equal parts. */
function evenly({ from, until }: { from: Day; until: Day }, parts: number): { from: Day; until: Day }[] {
  const each = daysBetween(from, until) / parts;
  return Array.from({ length: parts }, (_, i) => ({ from: addDays(from, Math.round(i * each)), until: addDays(from, Math.round(i * each) + 20) }));
}

/** Where winters are wet no window opens in winter. */
function outOfWinter(season: Season, w: Planned, { region, south = false, tub }: WindowOptions): Planned {
  if (tub || !region || !(WET_WINTERS.regions as readonly string[]).includes(region)) return w;
  const spring = dateIn([WET_WINTERS.month, WET_WINTERS.date], south, yearOf(season.budBreak));
  if (w.from >= spring || daysBetween(w.from, spring) > BEFORE_BUDS) return w;
  const until = daysBetween(spring, w.until) >= SHORTEST ? w.until : addDays(spring, FIRST_DOSE.until);
  return { ...w, from: spring, until, cite: WET_WINTERS.cite };
}

/** The printed windows of the season, two that meet kept apart, each giving way by half. */
function printedWindows(season: Season, options: WindowOptions): Planned[] {
  const { timing, printed = [], sandy, south = false, parts = 1 } = options;
  if (!timing) return [];
  const derived: Cite = { ...timing.cite, mark: 'derived' };
  const spans = printed.flatMap((d) => {
    const span = spanOf(season, d, sandy, south);
    const phase: Phase = d.phase === 'bud-break' && sandy ? 'bloom' : d.phase;
    return (timing.even ? evenly(span, parts) : [span]).map((s) => outOfWinter(season, { ...s, phase, printed: true, cite: d.dates && !timing.even ? timing.cite : derived }, options));
  });
  return spans.sort((a, b) => (a.from < b.from ? -1 : 1)).reduce<Planned[]>(parted, []);
}

/** Appends a window: two that come too close give way by half each; where that leaves either less than a working week, the second is left out. */
function parted(before: Planned[], b: Planned): Planned[] {
  const a = before.at(-1);
  const missing = a ? PRINTED_APART.days - daysBetween(a.until, b.from) : 0;
  if (!a || missing <= 0) return [...before, b];
  const [until, from] = [addDays(a.until, -Math.ceil(missing / 2)), addDays(b.from, Math.floor(missing / 2))];
  return daysBetween(a.from, until) < WORKING_WEEK || daysBetween(from, b.until) < WORKING_WEEK ? before : [...before.slice(0, -1), { ...a, until }, { ...b, from }];
}

/** The usual windows: round bud break, or at bloom on light soil; then 38 days from bud break, then every six weeks. */
function usual(season: Season, i: number, sandy: boolean): Planned {
  const first = sandy ? FIRST_DOSE_SAND : FIRST_DOSE;
  const later = (i - 1) * NEXT_DOSE.every;
  const { from, until, cite } = i === 0 ? first : { from: SECOND_DOSE.from + later, until: SECOND_DOSE.until + later, cite: i === 1 ? SECOND_DOSE.cite : NEXT_DOSE.cite };
  return { from: addDays(season.budBreak, from), until: addDays(season.budBreak, until), phase: i > 0 ? 'later' : sandy ? 'bloom' : 'bud-break', cite, printed: false };
}

/** The printed windows that open a week or more before the last day for nitrogen: after an early autumn there is no time after picking. */
const reachable = (season: Season, options: WindowOptions): Planned[] => printedWindows(season, options).filter((w) => daysBetween(w.from, options.last) >= SHORTEST);

/** Into how many doses the year is parted where no rule prints it: as many of the printed ones as the season has room for. */
export function partsOf(season: Season, doses: number, options: WindowOptions): number {
  return options.timing?.splits ? Math.max(1, Math.min(doses, reachable(season, options).length)) : doses;
}

/** All doses in order: the printed ones, then the usual ones that begin after them, each kept apart from the one before. */
function plannedWindows(season: Season, doses: number, options: WindowOptions): Planned[] {
  const all = reachable(season, options);
  for (let i = all.length > 0 ? 1 : 0; all.length < doses; i++) {
    const next = outOfWinter(season, usual(season, i, options.sandy), options);
    const before = all.at(-1);
    if (!before || next.from > before.until) all.push(before ? { ...next, ...apart(before.until, next) } : next);
  }
  return all.slice(0, doses);
}

/** A window that opens too soon after another opens later, for as long as is left of it or for two weeks. */
function apart(before: Day, { from, until }: { from: Day; until: Day }): { from: Day; until: Day } {
  if (daysBetween(before, from) >= APART) return { from, until };
  const later = addDays(before, APART);
  return { from: later, until: daysBetween(later, until) >= SHORTEST ? until : addDays(later, FIRST_DOSE.until) };
}

/** Days from bud break at which the first dose may go on by what is printed, never later than the usual first window. */
export const firstDay = (season: Season, options: WindowOptions): number => Math.min(FIRST_DOSE.from, daysBetween(season.budBreak, plannedWindows(season, 1, options)[0]!.from));

/** Windows that a feed has served: one for each day of feeding, and the latest of these days. */
export type Served = { readonly days: number; readonly latest: Day };

/**
 * The windows of a plant's doses, at most `doses`, all closed by its last day for nitrogen; what was given on a day took the place of one.
 * A window that has passed opens again from today while the season lasts.
 */
export function windowsOf(season: Season, doses: number, options: WindowOptions, served?: Served): Window[] {
  const { last, others } = options;
  const done = served?.days ?? 0;
  const windows: Window[] = [];
  let wasMoved = false;
  for (const [i, w] of plannedWindows(season, done + doses, options).entries()) {
    if (i < done) continue;
    let { from, until } = w;
    const before = windows.at(-1)?.until ?? served?.latest;
    let isMoved = until < season.today;
    if (isMoved) [from, until] = [season.today, addDays(season.today, FIRST_DOSE.until)];
    if (from < season.today) from = season.today;
    // Printed windows keep the distance that is printed, as long as none of them was moved.
    if (before !== undefined && (wasMoved || isMoved || !w.printed) && daysBetween(before, from) < APART) {
      isMoved = true;
      ({ from, until } = apart(before, { from, until }));
    }
    wasMoved = isMoved;
    // A later dose that opens on the last days is none.
    if (from > last || (before !== undefined && daysBetween(from, last) < SHORTEST)) break;
    const phase = isMoved || (w.phase === 'bud-break' && from > season.budBreak) ? null : w.phase;
    const why = figure(daysBetween(season.budBreak, w.from), 'day', 'time', 'dose-window', w.cite);
    windows.push({ from, until: until < last ? until : last, phase, why: i === 0 && others && others.length > 0 ? { ...why, others } : why });
  }
  return windows;
}

/** What all trees of a day do then; of one that opens after the buds broke it is not said that they do. */
export function phaseOf(from: Day, windows: readonly Window[], season: Season): Phase | null {
  const phases = new Set(windows.flatMap((w) => w.phase ?? []));
  const [phase] = phases;
  return phase === undefined || phases.size > 1 || (phase === 'bud-break' && from > season.budBreak) ? null : phase;
}

/** Whether a year's one dose comes so late that only part of it may go on: its time has passed, and so has the second dose's window. */
export const isLate = (season: Season, window: Window | undefined): boolean => window !== undefined && window.phase === null && daysBetween(season.budBreak, window.from) > SECOND_DOSE.until;
