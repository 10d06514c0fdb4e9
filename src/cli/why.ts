/** `medlar why TREE [N|P2O5|K2O|dose|date]` or `medlar why ID`: a figure in one sentence, then all it came from, with the sources. */
import { noticeText, questionText } from '../json/notices.ts';
import { collector } from '../json/figures.ts';
import { planJson } from '../json/plan-json.ts';
import { citeOf, reasonOf, valueOf } from '../json/reason.ts';
import { uncertaintyOf } from '../need/uncertain.ts';
import type { Plan, TreePlan } from '../plan.ts';
import { phFigures } from '../planned.ts';
import { planWhole } from './plan-whole.ts';
import type { Figure } from '../reason/figure.ts';
import { notice } from '../reason/notice.ts';
import { idleReason } from '../sheet/back.ts';
import { diluteText } from '../sheet/can.ts';
import { showDay, showNutrient, showWindow } from '../words/show.ts';
import type { Nutrient } from '../units/substance.ts';
import { say } from '../words/words.ts';
import { give } from './answer.ts';
import { explain } from './explain.ts';
import { openFolder } from './folder.ts';
import type { Common, Io } from './io.ts';
import { rangesText } from './ph-text.ts';
import { planOf } from './plan.ts';

const ASKED = ['N', 'P2O5', 'K2O', 'lime', 'dose', 'date'] as const;
type Asked = (typeof ASKED)[number];

export async function whyCommand(tree: string, what: string | undefined, options: Common & { readonly as?: 'sentence' | 'tree' | 'sum' }, io: Io): Promise<number> {
  const folder = await openFolder(options, io, options.today ?? io.today);
  const json = options.json === true;
  const L = folder.language;
  const isId = /^f\d+$/.test(tree) && what === undefined && !folder.orchard?.trees.some((t) => t.name.toLowerCase() === tree.toLowerCase());
  const asked = what === undefined ? undefined : /^(?:ph|sul(?:ph|f)ur)$/i.test(what) ? 'lime' : ASKED.find((a) => a.toLowerCase() === what.toLowerCase());
  if (what !== undefined && !asked) {
    return give({ command: 'why', result: null, notices: [notice('usage', 'error', { why: say(L, 'say', 'unknown-nutrient', { read: what }) })], language: L }, json, io);
  }
  const planned = await planOf(folder, isId ? undefined : tree);
  if ('notices' in planned) return give({ command: 'why', result: null, notices: planned.notices, language: L }, json, io);

  // Ids are those of the whole plan, so that what `plan --json` shows can be asked here.
  const whole = await planWhole(folder.orchard!, folder.zones, folder.today, { diary: folder.diary });
  const figures = collector(L, whole.orchard.where.units);
  planJson(whole, figures);
  const all = figures.all();
  if (isId && !all[tree]) return give({ command: 'why', result: null, notices: [notice('figure-unknown', 'error', { read: tree })], language: L }, json, io);
  const t = whole.trees.find((x) => x.tree.name.toLowerCase() === tree.toLowerCase());
  const roots = isId ? [figures.figure(tree)!] : rootsOf(t!, asked);
  const ids = roots.map((f) => figures.id(f));
  const { units } = whole.orchard.where;
  const explained = roots.map((f) => (options.as === 'sentence' ? `${reasonOf(f, L, units)} ${citeOf(f.cite, L)}` : explain(f, L, units, options.as === 'sum')));
  // Without a dose there is no figure, but there is a reason.
  const text = explained.length === 0 && t ? (asked === 'lime' ? unlimed(t, whole) : idleReason(t, L)) : [...new Set(explained)].join(isId || asked !== undefined ? '\n' : '\n\n');
  const dates = t && (asked === 'date' || asked === undefined) ? `\n${dateText(t, whole)}${asked === undefined && options.as === undefined ? timingText(t, whole) : ''}` : '';
  const range = options.as === undefined && t && (asked === 'N' || asked === 'P2O5' || asked === 'K2O' || asked === undefined) ? rangeText(t, asked ?? 'N', whole) : '';
  const others = options.as === undefined && t && (asked === 'N' || asked === undefined) && t.need.rules.length > 0 ? `\n\n${otherRules(t, whole)}` : '';
  return give({ command: 'why', result: { ids }, notices: [], figures: all, language: L, text: `${text}${dates}${range}${others}${asked === 'lime' && t?.ph && options.as === undefined ? `\n\n${rangesText(t.ph.plan, L)}` : ''}\n` }, json, io);
}

function rootsOf(t: TreePlan, asked: Asked | undefined): Figure[] {
  switch (asked) {
    case 'N': case 'P2O5': case 'K2O': return [t.need[asked]];
    case 'lime': return phFigures(t);
    case 'dose': return [...t.feeds.map((f) => f.planned), ...(t.dilute ? [t.dilute.g] : [])];
    case 'date': return [...t.feeds.map((f) => f.window.why), t.last.why];
    default: return [t.need.N, t.need.P2O5, t.need.K2O];
  }
}

/** Why nothing is known of its pH. */
function unlimed({ tree }: TreePlan, { notices, orchard: { where } }: Plan): string {
  const none = notices.find((n) => n.code === 'ph-no-range' && String(n.facts.tree).split(', ').includes(tree.name));
  return none ? noticeText(none, where.language) : say(where.language, 'sheet', 'lime-unknown');
}

function dateText(t: TreePlan, plan: Plan): string {
  const L = plan.orchard.where.language;
  const windows = t.dilute ? diluteText(t.dilute, L, plan.orchard.where.units) : t.feeds.length > 0 ? [...new Set(t.feeds.map((f) => showWindow(f.window.from, f.window.until, L)))].join(', ') : say(L, 'say', 'nothing-fed');
  return say(L, 'say', 'why-date', { tree: t.tree.name, windows, stop: say(L, 'plan', 'stop', { day: showDay(t.last.day, L) }) });
}

/** Whose time of feeding it is, and how other publications differ. */
function timingText(t: TreePlan, plan: Plan): string {
  const { language: L, units } = plan.orchard.where;
  const [first] = t.feeds;
  return first ? `\n  ${reasonOf(first.window.why, L, units)}\n    ${citeOf(first.window.why.cite, L)}` : '';
}

/** How far the answer would move, and what would narrow it most. */
function rangeText(t: TreePlan, of: Nutrient, plan: Plan): string {
  const { language: L, units: system } = plan.orchard.where;
  const { range, narrow } = uncertaintyOf(t.facts, t.need);
  const [low, high] = range[of];
  const lines = [
    ...(high - low > 0.005 * Math.max(high, 1) ? [say(L, 'say', 'why-range', { low: showNutrient(low, system, L), high: `${showNutrient(high, system, L)} ${of}` })] : []),
    ...(narrow ? [say(L, 'say', 'why-narrow', { question: questionText(narrow.question, L) })] : []),
  ];
  return lines.length > 0 ? `\n\n${lines.join('\n')}` : '';
}

function otherRules(t: TreePlan, plan: Plan): string {
  const { language: L, units: system } = plan.orchard.where;
  const lines = [...t.need.rules].sort((a, b) => a.value - b.value).map((r) => `  ${valueOf(r, L, system).padEnd(12)} ${citeOf(r.cite, L)}`);
  // Both ends of a span that round to the same stand once.
  return [say(L, 'say', 'why-other'), ...new Set(lines)].join('\n');
}
