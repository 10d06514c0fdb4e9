/** The grower's folder: reads `orchard.yaml` and the reports it names. Nothing outside the folder is read. */
import { join, resolve } from 'node:path';
import type { ReportText, ZoneSoil } from '../gather.ts';
import { gather } from '../gather.ts';
import { DIARY_FILE, ORCHARD_FILE, RULES_FILE } from '../orchard/files.ts';
import type { Entry } from '../orchard/diary.ts';
import type { Orchard } from '../orchard/load.ts';
import type { OwnRules } from '../orchard/own-rules.ts';
import { languageAsked } from '../orchard/language.ts';
import { countryIn, NOWHERE } from '../orchard/where.ts';
import type { Notice, Place, Question } from '../reason/notice.ts';
import { notice } from '../reason/notice.ts';
import type { Day } from '../units/date.ts';
import type { Language } from '../words/words.ts';
import { spoken } from '../words/words.ts';
import { openDiary } from './diary-file.ts';
import { leadsOut, readReportFile, readText, reason, unreadable } from './files.ts';
import type { Common, Io } from './io.ts';

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
export async function openFolder(options: Common, io: Io, today: Day): Promise<Folder> {
  const path = folderOf(options, io);
  const shown = options.folder ? join(options.folder, ORCHARD_FILE) : ORCHARD_FILE;
  const base = { path, zones: [], diary: [], files: [], questions: [], language: NOWHERE.language, today };
  const source = readText(join(path, ORCHARD_FILE));
  if ('why' in source) return { ...base, orchard: null, notices: [notice(source.why === 'absent' ? 'no-orchard' : 'file-missing', 'error', { folder: options.folder ?? path, file: shown, why: source.why })] };
  const diary = openDiary(path, countryIn(source.text));
  const ruleText = readText(join(path, RULES_FILE));
  const own: OwnRules = 'text' in ruleText ? (await import('../orchard/own-rules.ts')).loadRules(ruleText.text) : ruleText.why === 'absent' ? { rules: [], notices: [] } : { rules: [], notices: [notice('file-missing', 'error', { file: RULES_FILE, why: ruleText.why })] };
  const found = gather(source.text, (file, place) => inside(path, file, place), diary, today, own);
  const files = [ORCHARD_FILE, ...('text' in ruleText ? [RULES_FILE] : []), ...found.reports.keys(), ...(diary.entries.length + diary.notices.length > 0 ? [DIARY_FILE] : [])];
  return { path, ...found, files, language: found.orchard?.where.language ?? spoken(languageAsked(source.text)), today };
}

/** A report inside the folder; a path or link that leads out of it is refused. */
function inside(folder: string, file: string, place: Place): ReportText {
  const path = join(folder, file);
  try {
    if (leadsOut(folder, path)) return { refused: notice('path-outside', 'error', { path: file }, place) };
    const why = unreadable(path);
    if (why) return { refused: notice('file-missing', 'error', { file, why }, place) };
  } catch (e) {
    return { refused: notice('file-missing', 'error', { file, why: reason(e) }, place) };
  }
  const read = readReportFile(path, file);
  // A file that is not there is a fault of the line that names it; one that is no text is its own.
  return 'refused' in read && read.refused.code === 'file-missing' ? { refused: { ...read.refused, place } } : read;
}
