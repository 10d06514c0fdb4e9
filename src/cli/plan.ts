/** `medlar plan [TREE]`: need, feed, dates and purchases for the season. */
import { collector } from '../json/figures.ts';
import { planJson } from '../json/plan-json.ts';
import type { Plan } from '../plan.ts';
import { planWhole } from './plan-whole.ts';
import { notice, together } from '../reason/notice.ts';
import type { Notice } from '../reason/notice.ts';
import { suggest } from '../reason/suggest.ts';
import type { Folder } from './folder.ts';
import { openFolder } from './folder.ts';
import { say } from '../words/words.ts';
import { give, questionList } from './answer.ts';
import type { Common, Io } from './io.ts';
import { buyLines, noticeLines, phLines, stopLine, treeLines } from './plan-text.ts';

/** A folder's plan, or what stands in its way. */
export async function planOf(folder: Folder, tree?: string): Promise<{ plan: Plan } | { notices: readonly Notice[] }> {
  const { orchard } = folder;
  if (!orchard || folder.notices.some((n) => n.severity === 'error')) return { notices: folder.notices };
  const names = orchard.trees.map((t) => t.name);
  if (tree !== undefined && !names.some((n) => n.toLowerCase() === tree.toLowerCase())) {
    return { notices: [notice('tree-unknown', 'error', { read: tree, guess: suggest(tree, names).join(', '), known: names.join(', ') })] };
  }
  return { plan: await planWhole(orchard, folder.zones, folder.today, { only: tree, diary: folder.diary }) };
}

export async function planCommand(tree: string | undefined, options: Common, io: Io): Promise<number> {
  const folder = await openFolder(options, io, options.today ?? io.today);
  const json = options.json === true;
  const planned = await planOf(folder, tree);
  if ('notices' in planned) return give({ command: 'plan', result: null, notices: planned.notices, questions: folder.questions, language: folder.language }, json, io);
  const { plan } = planned;
  const L = folder.language;
  const notices = [...folder.notices, ...plan.notices];
  const questions = [...folder.questions, ...plan.questions];
  if (json) {
    const figures = collector(L, plan.orchard.where.units);
    const result = planJson(plan, figures);
    return give({ command: 'plan', result, notices, questions, figures: figures.all(), language: L }, true, io);
  }
  const title = plan.orchard.name ? say(L, 'plan', 'title', { orchard: plan.orchard.name, year: plan.season.year }) : say(L, 'plan', 'title-unnamed', { year: plan.season.year });
  const worth = noticeLines(plan);
  const limed = phLines(plan);
  const text = [
    title, treeLines(plan), '',
    ...(limed.length > 0 ? [say(L, 'plan', 'ph'), ...limed.map((l) => `  ${l}`)] : []),
    ...(plan.buy.length > 0 ? [say(L, 'plan', 'buy'), ...buyLines(plan).map((l) => `  ${l}`)] : []),
    ...(plan.days.length > 0 ? [stopLine(plan)] : []),
    ...(worth.length > 0 ? ['', say(L, 'plan', 'notices'), ...worth.map((l) => `  ${l}`)] : []),
    ...(questions.length > 0 ? ['', say(L, 'plan', together(questions).length === 1 ? 'questions-1' : 'questions-n', { n: together(questions).length }), questionList(together(questions), L)] : []),
    '', say(L, 'plan', 'why', { tree: plan.trees[0]?.tree.name ?? '' }), say(L, 'plan', 'sheet'),
  ].join('\n');
  return give({ command: 'plan', result: null, notices, language: L, text: `${text}\n` }, false, io);
}
