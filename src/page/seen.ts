/** The grower's files as the loaders see them, and the season's plan: what the command line does with a folder. */
import { collector } from '../json/figures.ts';
import type { NoticeJson, QuestionJson } from '../json/notices.ts';
import { noticeJson, noticeText, questionJson } from '../json/notices.ts';
import { planJson } from '../json/plan-json.ts';
import { DIARY_FILE, readDiary } from '../orchard/diary.ts';
import { loadOrchard } from '../orchard/load.ts';
import type { Orchard } from '../orchard/load.ts';
import type { Where } from '../orchard/where.ts';
import { NOWHERE } from '../orchard/where.ts';
import type { Plan, ZoneSoil } from '../plan.ts';
import { planSeason, seasonMistakes, zonesOf } from '../plan.ts';
import type { Notice, Question } from '../reason/notice.ts';
import { notice } from '../reason/notice.ts';
import type { Report } from '../soil/read.ts';
import { readReport } from '../soil/read.ts';
import type { Day } from '../units/date.ts';
import { seasonOf } from '../when/season.ts';
import type { State } from './state.ts';
import { treeLines, withTree } from './state.ts';

export const ORCHARD_FILE = 'orchard.yaml';

export type Seen = {
  readonly orchard: Orchard | null;
  readonly where: Where;
  readonly zones: readonly ZoneSoil[];
  readonly reports: ReadonlyMap<string, Report>;
  readonly notices: readonly Notice[];
  readonly questions: readonly Question[];
  readonly plan: Plan | null;
};

/** Loads and checks everything, all mistakes at once; with a plan where nothing stands in its way. */
export function see(state: State, today: Day): Seen {
  const { orchard, notices, questions } = loadOrchard(state.orchard, ORCHARD_FILE);
  if (!orchard) return { orchard: null, where: NOWHERE, zones: [], reports: new Map(), notices, questions, plan: null };
  const all = [...notices];
  const reports = new Map<string, Report>();
  const asked: Question[] = [];
  const absent = new Set<string>();
  for (const { file, place } of orchard.zones) {
    if (reports.has(file) || absent.has(file)) continue;
    const text = Object.hasOwn(state.reports, file) ? state.reports[file] : undefined;
    if (text === undefined) {
      all.push(notice('file-missing', 'error', { file, why: 'absent' }, place));
      absent.add(file);
      continue;
    }
    const report = readReport(text, file);
    reports.set(file, report);
    all.push(...report.notices);
    asked.push(...report.questions);
  }
  const soils = zonesOf({ ...orchard, zones: orchard.zones.filter((z) => reports.has(z.file)) }, reports);
  const used = new Set(soils.zones.map((z) => z.sample.name));
  const asking = asked.filter((q) => q.facts.sample === '' || q.facts.sample === undefined || used.has(String(q.facts.sample)));
  const diary = state.diary === '' ? { entries: [], notices: [] } : readDiary(state.diary, DIARY_FILE);
  const found = [...all, ...soils.notices, ...diary.notices, ...seasonMistakes(orchard, seasonOf(orchard, today))];
  const plan = found.some((n) => n.severity === 'error') ? null : planSeason(orchard, soils.zones, today, { diary: diary.entries });
  return { orchard, where: orchard.where, zones: soils.zones, reports, notices: found, questions: [...questions, ...asking], plan };
}

/** An orchard without trees yet, seen as if one stood there, so that all else is checked. */
export function seeEarly(state: State, today: Day): Seen {
  const text = treeLines(state.orchard).length > 0 ? state.orchard : withTree(state.orchard, 'tree', 'apple') ?? state.orchard;
  return see({ ...state, orchard: text }, today);
}

export type PageAnswer = { readonly result: unknown; readonly questions: readonly QuestionJson[]; readonly notices: readonly NoticeJson[] };

/** What `medlar plan --json` prints of the same files. */
export function answerOf({ orchard, where, plan, notices, questions }: Seen): PageAnswer {
  const L = orchard ? where.language : NOWHERE.language;
  return {
    result: plan ? planJson(plan, collector(L, where.units)) : null,
    questions: [...questions, ...(plan?.questions ?? [])].map((q) => questionJson(q, L)),
    notices: [...notices, ...(plan?.notices ?? [])].map((n) => noticeJson(n, L)),
  };
}

/** The mistakes of a state, each as a sentence. */
export const mistakesOf = ({ notices, where }: Seen): string[] => notices.filter((n) => n.severity === 'error').map((n) => noticeText(n, where.language));
