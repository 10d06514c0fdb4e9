/** The grower's folder: reads `orchard.yaml` and the reports it names. Nothing outside the folder is read. */
import { realpathSync } from 'node:fs';
import { isAbsolute, join, relative, resolve } from 'node:path';
import type { Entry } from '../orchard/diary.ts';
import { DIARY_FILE } from '../orchard/diary.ts';
import type { Orchard } from '../orchard/load.ts';
import { loadOrchard } from '../orchard/load.ts';
import { NOWHERE } from '../orchard/where.ts';
import type { ZoneSoil } from '../plan.ts';
import { seasonMistakes, zonesOf } from '../plan.ts';
import type { Notice, Place, Question } from '../reason/notice.ts';
import { notice } from '../reason/notice.ts';
import type { Report } from '../soil/read.ts';
import { readReport } from '../soil/read.ts';
import type { Day } from '../units/date.ts';
import type { Language } from '../words/words.ts';
import { seasonOf } from '../when/season.ts';
import { openDiary } from './diary-file.ts';
import { readText, reason } from './files.ts';
import type { Common, Io } from './io.ts';

const ORCHARD_FILE = 'orchard.yaml';

export type Folder = {
  readonly path: string;
  readonly orchard: Orchard | null;
  readonly zones: readonly ZoneSoil[];
  readonly diary: readonly Entry[];
  readonly files: readonly string[];
  readonly notices: readonly Notice[];
  readonly questions: readonly Question[];
  readonly language: Language;
  readonly today: Day;
};

export const folderOf = (options: Common, io: Io): string => resolve(io.cwd, options.folder ?? '.');

/** Loads and checks everything, all mistakes at once. */
export function openFolder(options: Common, io: Io, today: Day): Folder {
  const path = folderOf(options, io);
  const shown = options.folder ? join(options.folder, ORCHARD_FILE) : ORCHARD_FILE;
  const base = { path, zones: [], diary: [], files: [], questions: [], language: NOWHERE.language, today };
  const source = readText(join(path, ORCHARD_FILE));
  if ('why' in source) return { ...base, orchard: null, notices: [notice(source.why === 'absent' ? 'no-orchard' : 'file-missing', 'error', { folder: options.folder ?? path, file: shown, why: source.why })] };
  const { orchard, notices, questions } = loadOrchard(source.text, ORCHARD_FILE);
  if (!orchard) return { ...base, orchard: null, files: [ORCHARD_FILE], notices, questions };
  const all = [...notices];
  const reports = new Map<string, Report>();
  const asked: Question[] = [];
  const unreadable = new Set<string>();
  for (const zone of orchard.zones) {
    if (reports.has(zone.file) || unreadable.has(zone.file)) continue;
    const text = inside(path, zone.file, zone.place);
    if ('refused' in text) {
      all.push(text.refused);
      unreadable.add(zone.file);
      continue;
    }
    const report = readReport(text.text, zone.file);
    reports.set(zone.file, report);
    all.push(...report.notices);
    asked.push(...report.questions);
  }
  const readable = { ...orchard, zones: orchard.zones.filter((z) => reports.has(z.file)) };
  const soils = zonesOf(readable, reports);
  const used = new Set(soils.zones.map((z) => z.sample.name));
  const asking = asked.filter((q) => q.facts.sample === '' || q.facts.sample === undefined || used.has(String(q.facts.sample)));
  const diary = openDiary(path);
  return {
    path, orchard, zones: soils.zones, diary: diary.entries, files: [ORCHARD_FILE, ...reports.keys(), ...(diary.entries.length + diary.notices.length > 0 ? [DIARY_FILE] : [])], language: orchard.where.language, today,
    notices: [...all, ...soils.notices, ...diary.notices, ...seasonMistakes(orchard, seasonOf(orchard, today))], questions: [...questions, ...asking],
  };
}

/** A report inside the folder; a path or link that leads out of it is refused. */
function inside(folder: string, file: string, place: Place): { text: string } | { refused: Notice } {
  const path = join(folder, file);
  try {
    const out = relative(realpathSync(folder), realpathSync(path));
    if (out.startsWith('..') || isAbsolute(out)) return { refused: notice('path-outside', 'error', { path: file }, place) };
  } catch (e) {
    return { refused: notice('file-missing', 'error', { file, why: reason(e) }, place) };
  }
  const read = readText(path);
  return 'why' in read ? { refused: notice('file-missing', 'error', { file, why: read.why }, place) } : read;
}
