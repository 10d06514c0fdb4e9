/** `medlar` alone: what to do now. */
import { planWhole } from './plan-whole.ts';
import { showDay } from '../words/show.ts';
import { say } from '../words/words.ts';
import { give } from './answer.ts';
import { count } from './counts.ts';
import { openFolder } from './folder.ts';
import type { Common, Io } from './io.ts';

export async function hereCommand(options: Common, io: Io, help: () => string): Promise<number> {
  const today = options.today ?? io.today;
  const folder = await openFolder(options, io, today);
  const L = folder.language;
  if (!folder.orchard && folder.notices.some((n) => n.code === 'no-orchard')) {
    return give({ command: 'medlar', result: null, notices: [], language: L, text: `${help()}\n${say(L, 'say', 'no-folder')}\n` }, options.json === true, io);
  }
  if (!folder.orchard || folder.notices.some((n) => n.severity === 'error')) return give({ command: 'medlar', result: null, notices: folder.notices, language: L }, options.json === true, io);
  const plan = await planWhole(folder.orchard, folder.zones, today, { diary: folder.diary });
  const at = plan.days.findIndex((d) => d.until >= today);
  const day = plan.days[at];
  const facts = { orchard: plan.orchard.name, year: plan.season.year, trees: count(L, 'trees', plan.trees.length) };
  const names = [...new Set(day?.doses.map((d) => d.plan.tree.name) ?? [])].join(', ');
  const next = day ? say(L, 'say', 'next-day', { ...facts, n: day.number, from: showDay(day.from, L), names }) : say(L, 'say', 'next-none', facts);
  const questions = [...folder.questions, ...plan.questions];
  const open = questions.length === 0 ? '' : `${say(L, 'say', questions.length === 1 ? 'open-1' : 'open-n', { n: questions.length })}\n`;
  const result = { season: plan.season.year, trees: plan.trees.length, next: day ? { day: day.number, from: day.from, until: day.until, trees: names } : null };
  return give({ command: 'medlar', result, notices: folder.notices, questions, language: L, text: `${next}\n${open}` }, options.json === true, io);
}
