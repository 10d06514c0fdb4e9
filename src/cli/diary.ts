/** `medlar diary [SENTENCE]`: writes down what was done, and says back what was written; alone, shows the season so far. */
import { noticeText } from '../json/notices.ts';
import { DIARY_FILE } from '../orchard/files.ts';
import type { Entry } from '../orchard/diary.ts';
import { withdrawalOf, writeEntry } from '../orchard/diary.ts';
import type { Orchard } from '../orchard/load.ts';
import { zoneOf } from '../orchard/load.ts';
import type { Known } from '../orchard/sentence-names.ts';
import type { DayDone } from '../orchard/sentence.ts';
import { readSentence } from '../orchard/sentence.ts';
import type { Done } from '../done.ts';
import { doneAlready, dosesOf, lately, writtenLast } from '../done.ts';
import type { WorkingDay } from '../plan.ts';
import type { Notice } from '../reason/notice.ts';
import { notice } from '../reason/notice.ts';
import type { Day } from '../units/date.ts';
import { yearOf } from '../units/date.ts';
import { seasonOf } from '../when/season.ts';
import { showDay, showWindow } from '../words/show.ts';
import type { Language } from '../words/words.ts';
import { say } from '../words/words.ts';
import { entryText } from '../json/diary-words.ts';
import { give } from './answer.ts';
import { append, openDiary } from './diary-file.ts';
import type { Folder } from './folder.ts';
import { openFolder } from './folder.ts';
import type { Common, Io } from './io.ts';
import { planOf } from './plan.ts';

export async function diaryCommand(words: readonly string[], options: Common & { readonly again?: true }, io: Io): Promise<number> {
  const folder = await openFolder(options, io, options.today ?? io.today);
  const json = options.json === true;
  const L = folder.language;
  const refuse = (notices: readonly Notice[]): number => give({ command: 'diary', result: null, notices, language: L }, json, io);
  const { orchard } = folder;
  if (!orchard) return refuse(folder.notices);
  const typed = words.join(' ');
  if (/^undo\b/i.test(typed.trim())) return undo(folder, json, io);
  // A file of sentences, one a line, is written as a whole or not at all.
  const sentences = typed === '-' ? (await io.stdin()).split(/\r\n|\n|\r/).filter((s) => s.trim() !== '') : words.length > 0 ? [typed] : [];
  const again = options.again === true;
  const read = await entriesOf(sentences, folder, orchard, again);
  if (read.notices.length > 0) return refuse(read.notices);

  const written = read.entries.length === 0 ? { first: 0 } : append(folder.path, read.entries, (before) => (again ? null : doneAlready(read.days, before.entries, orchard) ?? twice(read.entries, before.entries, orchard, L)), orchard.where.country);
  if ('notice' in written) return refuse([written.notice]);
  const diary = openDiary(folder.path, folder.orchard!.where.country);
  if (diary.notices.some((n) => n.severity === 'error')) return refuse(diary.notices);
  const season = lately(diary.entries, folder.today);
  const lines = sentences.length > 0
    ? read.entries.map((e) => say(L, 'say', 'diary-written', { day: dayText(e.date, folder.today, L), entry: entryText(e, orchard, L) }))
    : season.length > 0 ? season.map((e) => say(L, 'say', 'diary-line', { day: showDay(e.date, L, true), entry: entryText(e, orchard, L) })) : [say(L, 'say', 'diary-empty')];
  const sour = limedAcidLovers(read.entries, orchard);
  const told = [...read.changed, ...sour];
  const text = [...lines, ...told.map((n) => noticeText(n, L))].join('\n');
  return give({ command: 'diary', result: { entries: season, written: read.entries.length }, notices: [...diary.notices, ...told], language: L, text: `${text}\n` }, json, io);
}

/** Takes back what was written last: the file only grows, by a line that withdraws another. */
function undo(folder: Folder, json: boolean, io: Io): number {
  const L = folder.language;
  const standing = openDiary(folder.path, folder.orchard!.where.country).entries;
  const last = standing.at(-1);
  const answer = (notices: readonly Notice[], gone: readonly Entry[]): number => {
    const diary = openDiary(folder.path, folder.orchard!.where.country);
    const lines = [...gone.map((e) => say(L, 'say', 'diary-taken-back', { day: dayText(e.date, folder.today, L), entry: entryText(e, folder.orchard!, L) })), ...notices.map((n) => noticeText(n, L))];
    return give({ command: 'diary', result: { entries: lately(diary.entries, folder.today), written: gone.length }, notices: [...diary.notices, ...notices], language: L, text: `${lines.join('\n')}\n` }, json, io);
  };
  if (!last) return answer([notice('diary-undo-none', 'note', { file: DIARY_FILE })], []);
  const together = writtenLast(standing);
  // The newest first, so that of two alike each takes its own.
  const written = append(folder.path, together.toReversed().map((e) => withdrawalOf(e, folder.today)), (before) => (before.entries.at(-1)?.line === last.line ? null : notice('diary-changed', 'error', { file: DIARY_FILE })), folder.orchard!.where.country);
  if ('notice' in written) return give({ command: 'diary', result: null, notices: [written.notice], language: L }, json, io);
  return answer([], together);
}

/** Lime on plants that want a sour soil is written down, and asked about. */
function limedAcidLovers(entries: readonly Entry[], orchard: Orchard): Notice[] {
  const limed = entries.filter((e) => e.what === 'limed' && e.g !== 0).flatMap((e) => e.trees);
  const trees = orchard.trees.filter((t) => t.crop === 'blueberry' && (limed.includes(t.name) || limed.includes(zoneOf(t, orchard) ?? t.name)));
  return trees.length > 0 ? [notice('diary-limed-sour', 'warning', { trees: trees.map((t) => t.name).join(', ') })] : [];
}

async function entriesOf(sentences: readonly string[], folder: Folder, orchard: Orchard, again: boolean): Promise<{ entries: Entry[]; days: Done[]; changed: Notice[]; notices: Notice[] }> {
  const entries: Entry[] = [];
  const changed: Notice[] = [];
  const done: Done[] = [];
  const notices: Notice[] = [];
  for (const sentence of sentences) {
    const read = readSentence(sentence, knownOf(orchard, folder.today));
    if ('notices' in read) notices.push(...read.notices);
    else if ('entries' in read) {
      const stands = again ? null : twice(read.entries, [...folder.diary, ...entries], orchard, folder.language);
      if (stands) notices.push(stands);
      else entries.push(...read.entries);
    }
    else {
      // What is done is no longer on the plan: a second time is planned as if nothing had been written.
      const planned = await planOf({ ...folder, today: read.date, diary: again ? [] : folder.diary });
      if ('notices' in planned) return { entries, days: done, changed, notices: [...planned.notices] };
      const { days } = planned.plan;
      const day = days.find((d) => d.number === read.day);
      const left = day ? withoutTrees(day, read, orchard) : null;
      const doses = left && 'doses' in left ? dosesOf(left, read.day, read.date, orchard.where.units) : null;
      const of = { ...read, trees: doses?.flatMap((e) => e.trees) ?? null };
      const stands = again ? null : doneAlready([of], [...folder.diary, ...entries], orchard);
      done.push(of);
      if (stands) notices.push(stands);
      else if (left && 'notice' in left) notices.push(left.notice);
      else if (doses) {
        entries.push(...doses);
        if (!again) changed.push(...await sinceFirst(doses, read, folder, orchard));
      }
      else notices.push(notice('diary-day-unknown', 'error', { read: read.day, known: days.map((d) => `${d.number} (${showWindow(d.from, d.until, orchard.where.language)})`).join(', ') }));
    }
  }
  return { entries, days: done, changed, notices };
}

/** A day that had other doses before this season's first feed, when a sheet may have been printed. */
async function sinceFirst(doses: readonly Entry[], { day: n, date }: DayDone, folder: Folder, orchard: Orchard): Promise<Notice[]> {
  const { year } = seasonOf(orchard, date);
  const [first] = folder.diary.filter((e) => e.what === 'fed' && seasonOf(orchard, e.date).year === year && e.date <= date).map((e) => e.date).sort();
  if (first === undefined) return [];
  const planned = await planOf({ ...folder, today: first, diary: folder.diary.filter((e) => e.date < first) });
  const before = 'plan' in planned ? planned.plan.days.find((d) => d.number === n) : undefined;
  if (!before) return [];
  const then = dosesOf(before, n, date, orchard.where.units);
  const same = (a: Entry, b: Entry): boolean => b.trees.includes(a.trees[0]!) && a.bag === b.bag && Math.abs(a.g! - (b.g ?? Infinity)) < 1;
  const fed = folder.diary.filter((e) => e.what === 'fed' && e.date >= first);
  const lost = then.filter((t) => ![...doses, ...fed].some((e) => same(t, e)));
  const isNew = doses.some((e) => !then.some((t) => same(e, t)));
  const L = orchard.where.language;
  return lost.length === 0 && !isNew ? [] : [notice('diary-day-changed', 'warning', { n, date: showDay(first, L), before: lost.map((t) => `${t.trees[0]} ${t.amount} ${t.bag}`).join(', ') })];
}

function knownOf(orchard: Orchard, today: Day): Known {
  return {
    trees: orchard.trees, bags: [...orchard.shed, ...orchard.store], today,
    zones: orchard.zones.map(({ name }) => ({ name, count: orchard.trees.filter((t) => zoneOf(t, orchard) === name).reduce((sum, t) => sum + t.count, 0) })),
  };
}

/** A working day without the trees that were left out; a notice where it feeds none of one name, or nothing is left. */
function withoutTrees(day: WorkingDay, { without = [] }: DayDone, orchard: Orchard): WorkingDay | { notice: Notice } {
  const isOf = ({ plan }: WorkingDay['doses'][number], name: string): boolean => plan.tree.name === name || zoneOf(plan.tree, orchard) === name;
  const doses = day.doses.filter((d) => !without.some((name) => isOf(d, name)));
  const idle = without.filter((name) => !day.doses.some((d) => isOf(d, name)));
  const known = [...new Set(day.doses.map((d) => d.plan.tree.name))].join(', ');
  if (idle.length > 0) return { notice: notice('diary-day-except', 'error', { n: day.number, trees: idle.join(', '), known }) };
  return doses.length > 0 ? { ...day, doses } : { notice: notice('diary-day-nothing', 'error', { n: day.number, known }) };
}

/** The same deed on the same day; the doses of working days are looked at by their day. */
function twice(entries: readonly Entry[], before: readonly Entry[], orchard: Orchard, L: Language): Notice | null {
  const line = (e: Entry): string => writeEntry(e).toLowerCase();
  const stand = new Map(before.map((e) => [line(e), e]));
  const again = entries.filter((e) => !/^day \d+$/.test(e.note)).find((e) => stand.has(line(e)));
  return again ? notice('diary-twice', 'error', { entry: entryText(again, orchard, L), date: showDay(again.date, L, true), line: stand.get(line(again))!.line || '' }) : null;
}

const dayText = (d: Day, today: Day, L: Language): string => showDay(d, L, yearOf(d) !== yearOf(today));
