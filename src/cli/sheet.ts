/** `medlar sheet [TREE]`: writes the feeding sheet, and says where. A sheet changed by hand is left alone. */
import { existsSync } from 'node:fs';
import { join, relative } from 'node:path';
import { notice } from '../reason/notice.ts';
import type { Notice } from '../reason/notice.ts';
import { sheetView } from '../sheet/build.ts';
import { renderSheet } from '../sheet/render.ts';
import type { SheetForm, Template } from '../sheet/render.ts';
import { say } from '../words/words.ts';
import { give } from './answer.ts';
import { count } from './counts.ts';
import { readText } from './files.ts';
import { openFolder } from './folder.ts';
import type { Common, Io } from './io.ts';
import { planOf } from './plan.ts';
import { treeLines } from './plan-text.ts';
import { writeOwn } from './write.ts';

type SheetOptions = Common & { readonly as?: SheetForm; readonly paper?: 'a4' | 'letter'; readonly large?: true; readonly force?: true };

export async function sheetCommand(tree: string | undefined, options: SheetOptions, io: Io): Promise<number> {
  const folder = openFolder(options, io, options.today ?? io.today);
  const json = options.json === true;
  const L = folder.language;
  const planned = await planOf(folder, tree);
  if ('notices' in planned) return give({ command: 'sheet', result: null, notices: planned.notices, language: L }, json, io);
  const { plan } = planned;
  const form = options.as ?? 'html';
  const own = await ownTemplate(folder.path, form);
  if (own.notices.length > 0) return give({ command: 'sheet', result: null, notices: own.notices, language: L }, json, io);

  const view = sheetView(plan, { paper: options.paper ?? plan.orchard.where.paper, large: options.large === true });
  const text = renderSheet(view, form, own.template);
  const name = `sheet${tree === undefined ? '' : `-${fileNameOf(plan.trees[0]!.tree.name, plan.orchard.trees.map((t) => t.name))}`}.${form === 'html' ? 'html' : 'txt'}`;
  const path = join(folder.path, name);
  const shown = relative(io.cwd, path) || name;
  const refused = writeOwn(path, shown, text, form, options.force === true);
  if (refused) return give({ command: 'sheet', result: null, notices: [refused], language: L }, json, io);
  const said = [
    say(L, 'say', 'orchard-line', { orchard: plan.orchard.name || say(L, 'plan', 'title-unnamed', { year: plan.season.year }), trees: count(L, 'trees', plan.trees.length), samples: count(L, 'samples', plan.zones.length) }),
    treeLines(plan), say(L, 'say', 'sheet-written', { file: shown }), say(L, 'say', 'next-why', { tree: plan.trees[0]!.tree.name }),
  ].join('\n');
  return give({
    command: 'sheet', result: { files: [shown] }, notices: [...folder.notices, ...plan.notices], questions: [...folder.questions, ...plan.questions], language: L,
    text: form === 'text' ? text : `${said}\n`,
  }, json, io);
}

const slug = (name: string): string => name.normalize('NFKD').replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-+|-+$/g, '').toLowerCase() || 'tree';

/** Two names that would share a file are told apart by a number. */
function fileNameOf(name: string, all: readonly string[]): string {
  const alike = all.filter((n) => slug(n) === slug(name));
  return alike.indexOf(name) > 0 ? `${slug(name)}-${alike.indexOf(name) + 1}` : slug(name);
}

async function ownTemplate(folder: string, form: SheetForm): Promise<{ template?: Template; notices: readonly Notice[] }> {
  const file = `templates/sheet.${form === 'html' ? 'html' : 'txt'}.hbs`;
  const path = join(folder, file);
  if (!existsSync(path)) return { notices: [] };
  const source = readText(path);
  if ('why' in source) return { notices: [notice('file-missing', 'error', { file, why: source.why })] };
  const { compileOwn } = await import('../sheet/own-template.ts');
  const { template, notices } = compileOwn(source.text, file, form);
  return template ? { template, notices } : { notices };
}
