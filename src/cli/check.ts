/** `medlar check`: everything that would stop a plan, all at once; changes nothing. */
import { say } from '../words/words.ts';
import { give } from './answer.ts';
import { openFolder } from './folder.ts';
import type { Common, Io } from './io.ts';
import { count } from './counts.ts';

export async function checkCommand(options: Common, io: Io): Promise<number> {
  const folder = await openFolder(options, io, options.today ?? io.today);
  const L = folder.language;
  const bad = !folder.orchard || folder.notices.some((n) => n.severity === 'error');
  const result = { files: folder.files, trees: folder.orchard?.trees.length ?? 0, zones: folder.orchard?.zones.length ?? 0 };
  const text = bad ? undefined : `${say(L, 'say', folder.notices.some((n) => n.severity === 'warning') ? 'checked-warned' : 'checked', { files: folder.files.join(', '), trees: count(L, 'trees', result.trees), zones: count(L, 'zones', result.zones) })}\n`;
  return give({ command: 'check', result, notices: folder.notices, questions: folder.questions, language: L, ...(text ? { text } : {}) }, options.json === true, io);
}
