/** Working days as lines of the diary: what a day that is done adds, what stands there already, what was written together. */
import type { Entry } from './orchard/diary.ts';
import type { Orchard } from './orchard/load.ts';
import { massOf } from './orchard/measure.ts';
import type { DayDone } from './orchard/sentence.ts';
import type { WorkingDay } from './plan.ts';
import type { Notice } from './reason/notice.ts';
import { notice } from './reason/notice.ts';
import type { Day } from './units/date.ts';
import { yearOf } from './units/date.ts';
import { OUNCE } from './units/units.ts';
import { seasonOf } from './when/season.ts';
import type { System } from './words/show.ts';
import { showDay, showDose } from './words/show.ts';

/** `trees`: those that its doses are for; null where the plan holds no such day. */
export type Done = DayDone & { readonly trees: readonly string[] | null };

/** A working day as lines of the diary: one a tree and bag, each with the note "day N". */
export function dosesOf(day: WorkingDay, n: number, date: Day, system: System): Entry[] {
  return day.doses.map(({ plan, feed }) => {
    const amount = exactMass(feed.g, system);
    return { date, trees: [plan.tree.name], what: 'fed', bag: feed.bag.label, g: massOf(amount) as number, m: null, amount, note: dayNote(n), line: 0 };
  });
}

/** Stands in the file, and is the same in every language. */
const dayNote = (n: number): string => `day ${n}`;

/** The dose as the sheet prints it, unless that is too coarse to be read back. */
function exactMass(g: number, system: System): string {
  const shown = showDose(g, system, 'en-GB');
  const back = massOf(shown);
  if (typeof back === 'number' && Math.abs(back - g) < 0.05) return shown;
  return system === 'us' ? `${Number((g / OUNCE).toFixed(2))} oz` : `${Math.round(g)} g`;
}

/** A working day that stands there already, in the same season, for one of its trees; what was left out then may follow. */
export function doneAlready(days: readonly Done[], before: readonly Entry[], orchard: Orchard): Notice | null {
  const season = (d: Day): number => seasonOf(orchard, d).year;
  const stand = days.flatMap(({ day, date, trees }) => before.filter((e) => e.what === 'fed' && (trees === null || e.trees.some((t) => trees.includes(t))) && e.note === dayNote(day) && season(e.date) === season(date)));
  const [first] = stand;
  return first ? notice('diary-done-already', 'error', { n: first.note.slice(4), date: showDay(first.date, orchard.where.language, true), trees: [...new Set(stand.flatMap((e) => e.trees))].join(', ') }) : null;
}

/** The last entry with those that were written with it: the lines of a working day. */
export function writtenLast(standing: readonly Entry[]): readonly Entry[] {
  const last = standing.at(-1);
  const isWith = (e: Entry): boolean => e === last || (last !== undefined && /^day \d+$/.test(last.note) && e.note === last.note && e.date === last.date);
  return standing.slice(standing.findLastIndex((e) => !isWith(e)) + 1);
}

/** The last twelve months, newest last. */
export function lately(entries: readonly Entry[], today: Day): Entry[] {
  const since = `${yearOf(today) - 1}${today.slice(4)}`;
  return entries.filter((e) => e.date > since).sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : a.line - b.line));
}
