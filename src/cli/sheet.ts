/** `medlar sheet [TREE]`: writes the feeding sheet or, with `--as ics`, the season for a calendar, and says where. A file changed by hand is left alone. */
import { existsSync } from 'node:fs';
import { join, relative } from 'node:path';
import { notice } from '../reason/notice.ts';
import type { Notice } from '../reason/notice.ts';
import type { Plan } from '../plan.ts';
import { sheetView } from '../sheet/build.ts';
import { renderSheet } from '../sheet/render.ts';
import type { SheetForm, Template } from '../sheet/render.ts';
import { say } from '../words/words.ts';
import { give } from './answer.ts';
import { count } from './counts.ts';
import { leadsOut, readText } from './files.ts';
import { openFolder } from './folder.ts';
import type { Common, Io } from './io.ts';
import { planOf } from './plan.ts';
import { treeLines } from './plan-text.ts';
import { writeOwn } from './write.ts';

type SheetOptions = Common & { readonly as?: SheetForm | 'ics'; readonly open?: true; readonly paper?: 'a4' | 'letter'; readonly large?: true; readonly force?: true };

export async function sheetCommand(tree: string | undefined, options: SheetOptions, io: Io): Promise<number> {
  const folder = await openFolder(options, io, options.today ?? io.today);
  const json = options.json === true;
  const L = folder.language;
  const planned = await planOf(folder, tree);
  if ('notices' in planned) return give({ command: 'sheet', result: null, notices: planned.notices, language: L }, json, io);
  const { plan } = planned;
  const form = options.as ?? 'html';
  const one = tree === undefined ? '' : `-${fileNameOf(plan.trees[0]!.tree.name, plan.orchard.trees.map((t) => t.name))}`;
  const own: Made = form === 'ics' ? { text: await calendarOfPlan(plan, one) } : await sheetOf(plan, form, folder.path, options);
  if (!('text' in own)) return give({ command: 'sheet', result: null, notices: own.notices, language: L }, json, io);
  const { text } = own;
  const path = join(folder.path, `${form === 'ics' ? 'calendar' : 'sheet'}${one}.${form === 'text' ? 'txt' : form}`);
  const shown = relative(io.cwd, path) || path;
  const refused = writeOwn(path, shown, text, form, options.force === true);
  if (refused) return give({ command: 'sheet', result: null, notices: [refused], language: L }, json, io);
  const opened = options.open !== true || (await io.open?.(path)) === true;
  const said = [
    say(L, 'say', 'orchard-line', { orchard: plan.orchard.name || say(L, 'plan', 'title-unnamed', { year: plan.season.year }), trees: count(L, 'trees', plan.trees.length), samples: count(L, 'samples', plan.zones.length) }),
    treeLines(plan), say(L, 'say', form === 'ics' ? 'calendar-written' : 'sheet-written', { file: shown }), ...(opened ? [] : [say(L, 'say', 'not-opened')]), ...(opened && options.open ? [] : [say(L, 'say', form === 'ics' ? 'calendar-open' : 'sheet-print')]), say(L, 'say', 'next-why', { tree: plan.trees[0]!.tree.name }),
  ].join('\n');
  return give({
    command: 'sheet', result: { files: [shown] }, notices: [...folder.notices, ...plan.notices], questions: [...folder.questions, ...plan.questions], language: L,
    text: form === 'text' ? text : `${said}\n`,
  }, json, io);
}

type Made = { readonly text: string } | { readonly notices: readonly Notice[] };

async function sheetOf(plan: Plan, form: SheetForm, folder: string, options: SheetOptions): Promise<Made> {
  const own = await ownTemplate(folder, form);
  if (own.notices.length > 0) return own;
  return { text: renderSheet(sheetView(plan, { paper: options.paper ?? plan.orchard.where.paper, large: options.large === true }), form, own.template) };
}

async function calendarOfPlan(plan: Plan, one: string): Promise<string> {
  const [{ calendarOf }, { calendarText }] = await Promise.all([import('../sheet/calendar.ts'), import('./calendar-file.ts')]);
  const name = plan.orchard.name || say(plan.orchard.where.language, 'calendar', 'orchard');
  return calendarText(calendarOf(plan), { name, key: `${slug(name)}${one}`, today: plan.season.today });
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
  // A folder that somebody sent may link to what is no part of it, and a sheet is handed on.
  if (leadsOut(folder, path)) return { notices: [notice('link-outside', 'error', { file })] };
  const source = readText(path);
  if ('why' in source) return { notices: [notice('file-missing', 'error', { file, why: source.why })] };
  const { compileOwn } = await import('../sheet/own-template.ts');
  const { template, notices } = compileOwn(source.text, file, form);
  return template ? { template, notices } : { notices };
}
