/** `medlar diary [SENTENCE]`: writes down what was done, and says back what was written; alone, shows the season so far. */
import type { Diary, Entry, What } from '../orchard/diary.ts';
import type { Orchard } from '../orchard/load.ts';
import { massOf } from '../orchard/measure.ts';
import type { Known } from '../orchard/sentence.ts';
import { readSentence } from '../orchard/sentence.ts';
import type { WorkingDay } from '../plan.ts';
import type { Notice } from '../reason/notice.ts';
import { notice } from '../reason/notice.ts';
import type { Day } from '../units/date.ts';
import { yearOf } from '../units/date.ts';
import { OUNCE } from '../units/units.ts';
import { seasonOf } from '../when/season.ts';
import type { System } from '../words/show.ts';
import { showDay, showDose, showWindow } from '../words/show.ts';
import type { Language } from '../words/words.ts';
import { say } from '../words/words.ts';
import { give } from './answer.ts';
import { append, openDiary } from './diary-file.ts';
import type { Folder } from './folder.ts';
import { openFolder } from './folder.ts';
import type { Common, Io } from './io.ts';
import { planOf } from './plan.ts';

export async function diaryCommand(words: readonly string[], options: Common & { readonly again?: true }, io: Io): Promise<number> {
  const folder = openFolder(options, io, options.today ?? io.today);
  const json = options.json === true;
  const L = folder.language;
  const refuse = (notices: readonly Notice[]): number => give({ command: 'diary', result: null, notices, language: L }, json, io);
  const { orchard } = folder;
  if (!orchard) return refuse(folder.notices);
  const typed = words.join(' ');
  // A file of sentences, one a line, is written as a whole or not at all.
  const sentences = typed === '-' ? (await io.stdin()).split(/\r\n|\n|\r/).filter((s) => s.trim() !== '') : words.length > 0 ? [typed] : [];
  const again = options.again === true;
  const read = entriesOf(sentences, folder, orchard, again);
  if (read.notices.length > 0) return refuse(read.notices);

  const written = read.entries.length === 0 ? { first: 0 } : append(folder.path, read.entries, (before) => (again ? null : doneAlready(read.days, before.entries, orchard)));
  if ('notice' in written) return refuse([written.notice]);
  const diary = openDiary(folder.path);
  if (diary.notices.some((n) => n.severity === 'error')) return refuse(diary.notices);
  const season = lately(diary, folder.today);
  const lines = sentences.length > 0
    ? read.entries.map((e) => say(L, 'say', 'diary-written', { day: dayText(e.date, folder.today), entry: entryText(e, orchard, L) }))
    : season.length > 0 ? season.map((e) => say(L, 'say', 'diary-line', { day: showDay(e.date, true), entry: entryText(e, orchard, L) })) : [say(L, 'say', 'diary-empty')];
  return give({ command: 'diary', result: { entries: season, written: read.entries.length }, notices: diary.notices, language: L, text: `${lines.join('\n')}\n` }, json, io);
}

type Done = { readonly day: number; readonly date: Day };

function entriesOf(sentences: readonly string[], folder: Folder, orchard: Orchard, again: boolean): { entries: Entry[]; days: Done[]; notices: Notice[] } {
  const entries: Entry[] = [];
  const done: Done[] = [];
  const notices: Notice[] = [];
  for (const sentence of sentences) {
    const read = readSentence(sentence, knownOf(orchard, folder.today));
    if ('notices' in read) notices.push(...read.notices);
    else if ('entries' in read) entries.push(...read.entries);
    else {
      const stands = again ? null : doneAlready([read], [...folder.diary, ...entries], orchard);
      // What is done is no longer on the plan: a second time is planned as if nothing had been written.
      const planned = planOf({ ...folder, today: read.date, diary: again ? [] : folder.diary });
      if ('notices' in planned) return { entries, days: done, notices: [...planned.notices] };
      const { days } = planned.plan;
      const day = days.find((d) => d.number === read.day);
      done.push(read);
      if (stands) notices.push(stands);
      else if (day) entries.push(...dosesOf(day, read.day, read.date, orchard.where.units));
      else notices.push(notice('diary-day-unknown', 'error', { read: read.day, known: days.map((d) => `${d.number} (${showWindow(d.from, d.until)})`).join(', ') }));
    }
  }
  return { entries, days: done, notices };
}

function knownOf(orchard: Orchard, today: Day): Known {
  const only = orchard.zones.length === 1 ? orchard.zones[0]!.name : undefined;
  return {
    trees: orchard.trees, bags: [...orchard.shed, ...orchard.store], today,
    zones: orchard.zones.map(({ name }) => ({ name, count: orchard.trees.filter((t) => (t.zone ?? only) === name).reduce((sum, t) => sum + t.count, 0) })),
  };
}

/** A working day as lines of the diary: one a tree and bag, each with the note "day N". */
function dosesOf(day: WorkingDay, n: number, date: Day, system: System): Entry[] {
  return day.doses.map(({ plan, feed }) => {
    const amount = exactMass(feed.g, system);
    return { date, trees: [plan.tree.name], what: 'fed', bag: feed.bag.label, g: massOf(amount) as number, m: null, amount, note: dayNote(n), line: 0 };
  });
}

/** Stands in the file, and is the same in every language. */
const dayNote = (n: number): string => `day ${n}`;

/** The dose as the sheet prints it, unless that is too coarse to be read back. */
function exactMass(g: number, system: System): string {
  const shown = showDose(g, system);
  const back = massOf(shown);
  if (typeof back === 'number' && Math.abs(back - g) < 0.05) return shown;
  return system === 'us' ? `${Number((g / OUNCE).toFixed(2))} oz` : `${Math.round(g)} g`;
}

/** A working day that stands there already, in the same season. */
function doneAlready(days: readonly Done[], before: readonly Entry[], orchard: Orchard): Notice | null {
  const season = (d: Day): number => seasonOf(orchard, d).year;
  const twice = days.flatMap(({ day, date }) => before.filter((e) => e.what === 'fed' && e.note === dayNote(day) && season(e.date) === season(date)));
  const [first] = twice;
  return first ? notice('diary-done-already', 'error', { n: first.note.slice(4), date: showDay(first.date, true), trees: [...new Set(twice.flatMap((e) => e.trees))].join(', ') }) : null;
}

/** The last twelve months, newest last. */
function lately(diary: Diary, today: Day): Entry[] {
  const since = `${yearOf(today) - 1}${today.slice(4)}`;
  return diary.entries.filter((e) => e.date > since).sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : a.line - b.line));
}

const dayText = (d: Day, today: Day): string => showDay(d, yearOf(d) !== yearOf(today));

const DID = { fed: 'did-fed', limed: 'did-limed', sulphured: 'did-sulphured', shoots: 'did-shoots', crop: 'did-crop', note: 'did-note' } as const satisfies Record<What, string>;

/** "Gate apple, fed 12 oz Sulphate of ammonia". */
function entryText(e: Entry, orchard: Orchard, L: Language): string {
  const single = e.trees.length === 1 && orchard.trees.some((t) => t.name === e.trees[0] && t.count === 1);
  const amount = e.amount ?? '';
  const weighed = amount !== '' && !single && e.what !== 'shoots' && /\d/.test(amount);
  return say(L, 'say', DID[e.what], { trees: e.trees.join(', '), amount: weighed ? say(L, 'say', 'amount-each', { amount }) : amount, bag: e.bag ?? '', note: e.note });
}
