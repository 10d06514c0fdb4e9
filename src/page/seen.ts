/** The grower's files as the loaders see them, and the season's plan: what the command line does with a folder. */
import type { Gathered, ReportText } from '../gather.ts';
import { gather } from '../gather.ts';
import { collector } from '../json/figures.ts';
import type { NoticeJson, QuestionJson } from '../json/notices.ts';
import { noticeJson, noticeText, questionJson } from '../json/notices.ts';
import { planJson } from '../json/plan-json.ts';
import { DIARY_FILE, RULES_FILE } from '../orchard/files.ts';
import { readDiary } from '../orchard/diary.ts';
import type { OwnRules } from '../orchard/own-rules.ts';
import type { Where } from '../orchard/where.ts';
import { countryIn, NOWHERE } from '../orchard/where.ts';
import type { Plan } from '../plan.ts';
import { planSeason } from '../plan.ts';
import type { Place } from '../reason/notice.ts';
import { notice } from '../reason/notice.ts';
import type { Report } from '../soil/read.ts';
import { readReport } from '../soil/read.ts';
import type { DateOrder, Day } from '../units/date.ts';
import type { State } from './state.ts';
import { treeLines, withTree } from './state.ts';

/** `plan` is made when it is first asked for, and null where something stands in its way. */
export type Seen = Gathered & { readonly where: Where; readonly plan: Plan | null };

/** Loads and checks everything, all mistakes at once; with a plan where nothing stands in its way. */
export function see(state: State, today: Day): Seen {
  const reportText = (file: string, place: Place): ReportText => {
    const text = Object.hasOwn(state.reports, file) ? state.reports[file] : undefined;
    return text === undefined ? { refused: notice('file-missing', 'error', { file, why: 'absent' }, place) } : { text };
  };
  const found = gather(state.orchard, reportText, state.diary === '' ? { entries: [], notices: [] } : readDiary(state.diary, DIARY_FILE, countryIn(state.orchard)), today, ownRules(state), readOnce);
  const { orchard, zones, diary } = found;
  let plan: Plan | null | undefined;
  return {
    ...found, where: orchard?.where ?? NOWHERE,
    get plan() { return (plan ??= !orchard || found.notices.some((n) => n.severity === 'error') ? null : planSeason(orchard, zones, today, { diary })); },
  };
}

/** Reports as last read: most touches change none. */
const lastRead = new Map<string, { readonly text: string; readonly dates: DateOrder; readonly report: Report }>();
export function readOnce(text: string, file: string, dates: DateOrder = null): Report {
  const known = lastRead.get(file);
  if (known?.text === text && known.dates === dates) return known.report;
  const report = readReport(text, file, dates);
  lastRead.set(file, { text, dates, report });
  return report;
}

/** The page cannot read `rules.yaml`: its rules count where they were put into it, and are told else. */
const ownRules = ({ rules, others }: State): OwnRules =>
  ({ rules: rules ?? [], notices: rules || others?.[RULES_FILE] === undefined ? [] : [notice('rules-by-command', 'warning', { file: RULES_FILE })] });

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
export const mistakesOf = ({ notices, where }: Pick<Seen, 'notices' | 'where'>): string[] => notices.filter((n) => n.severity === 'error').map((n) => noticeText(n, where.language));
