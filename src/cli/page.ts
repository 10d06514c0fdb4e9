/** `medlar page [FILE]`: one HTML file for a phone, with this orchard inside; `--site DIR`: the same as a small site that works offline. */
import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { basename, join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { notice } from '../reason/notice.ts';
import type { Notice } from '../reason/notice.ts';
import { say } from '../words/words.ts';
import { give } from './answer.ts';
import { readText } from './files.ts';
import type { Folder } from './folder.ts';
import { openFolder } from './folder.ts';
import type { Common, Io } from './io.ts';
import type { OwnForm } from './write.ts';
import { refusal, writeOwn } from './write.ts';
import { DIARY_FILE, RULES_FILE } from '../orchard/files.ts';

type PageOptions = Common & { readonly site?: string; readonly force?: true };
type Made = { readonly path: string; readonly text: string; readonly form: OwnForm };

/** Beside the bundle; or, run from the sources, where the build puts it. */
const BUILT = [new URL('./', import.meta.url), new URL('../../dist/', import.meta.url)].map((url) => fileURLToPath(url));

function built(name: string): { text: string } | { why: string } {
  return readText(join(BUILT.find((folder) => existsSync(join(folder, name))) ?? BUILT[0]!, name));
}

export async function pageCommand(file: string | undefined, options: PageOptions, io: Io): Promise<number> {
  const json = options.json === true;
  const folder = await openFolder(options, io, options.today ?? io.today);
  const L = folder.language;
  const stop = (notices: readonly Notice[]): number => give({ command: 'page', result: null, notices, language: L }, json, io);
  const bare = folder.notices.some((n) => n.code === 'no-orchard');
  // A page for others to fill in may tell place and language alone.
  if (!bare && folder.notices.some((n) => n.severity === 'error' && n.code !== 'trees-missing')) return stop(folder.notices);
  if (file !== undefined && options.site !== undefined) return stop([notice('usage', 'error', { why: say(L, 'say', 'page-or-site') })]);

  const parts = { page: built(L === 'de' || L === 'es' ? `page.${L}.html` : 'page.html'), worker: built('worker.js'), icon: built('icon.svg'), licences: built('page.licences.txt') };
  for (const [name, part] of Object.entries(parts)) if ('why' in part) return stop([notice('file-missing', 'error', { file: `dist/${name}`, why: part.why })]);
  const [page, worker, icon, licences] = Object.values(parts).map((part) => ('text' in part ? part.text : ''));
  const html = withOrchard(page!, bare ? null : orchardOf(folder));
  const made: Made[] = options.site === undefined
    ? [{ path: file === undefined ? join(folder.path, 'medlar.html') : resolve(io.cwd, file), text: html, form: 'html' }]
    : siteOf(resolve(io.cwd, options.site), html, worker!, icon!, licences!);

  const shown = made.map(({ path }) => relative(io.cwd, path) || basename(path));
  // All or none: nothing is written where one file has to stay.
  const refused = options.force === true ? [] : made.flatMap(({ path }, i) => refusal(path, shown[i]!) ?? []);
  if (refused.length > 0) return stop(refused);
  for (const [i, { path, text, form }] of made.entries()) {
    const failed = writeOwn(path, shown[i]!, text, form, options.force === true);
    if (failed) return stop([failed]);
  }
  const said = [say(L, 'say', 'page-written', { file: shown[0]! }), say(L, 'say', bare ? 'page-empty' : 'page-inside'), say(L, 'say', options.site === undefined ? 'page-next' : 'site-next')];
  return give({ command: 'page', result: { files: shown }, notices: bare ? [] : folder.notices.filter((n) => n.code !== 'trees-missing'), language: L, text: `${said.join('\n')}\n` }, json, io);
}

/** The folder's files as the page keeps them. */
function orchardOf({ path, files, orchard }: Folder): unknown {
  const text = (name: string): string => {
    const read = readText(join(path, name));
    return 'text' in read ? read.text : '';
  };
  const reports = files.slice(1).filter((name) => name !== DIARY_FILE && name !== RULES_FILE);
  return {
    orchard: text(files[0]!), reports: Object.fromEntries(reports.map((name) => [name, text(name)])), diary: files.includes(DIARY_FILE) ? text(DIARY_FILE) : '',
    ...(files.includes(RULES_FILE) ? { others: { [RULES_FILE]: text(RULES_FILE) }, rules: orchard?.rules ?? [] } : {}),
  };
}

/** No part of a text may end the block that holds it. */
function withOrchard(html: string, orchard: unknown): string {
  const block = '<script type="application/json" id="orchard">';
  return orchard === null ? html : html.replace(block, () => `${block}${JSON.stringify(orchard).replaceAll('<', '\\u003c')}`);
}

const digest = (text: string): string => createHash('sha256').update(text).digest('hex').slice(0, 16);

/** The page may then ask its own site for its icon, manifest and worker, and for nothing else. */
function siteOf(folder: string, html: string, worker: string, icon: string, licences: string): Made[] {
  const links = '<link rel="manifest" href="manifest.webmanifest">';
  const index = html.replace('<!--site-->', links).replace('img-src data:', "img-src data: 'self'; manifest-src 'self'; worker-src 'self'");
  const manifest = {
    name: 'Medlar', short_name: 'Medlar', start_url: './', scope: './', display: 'standalone', background_color: '#fbf8f1', theme_color: '#fbf8f1',
    icons: [{ src: 'icon.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' }],
  };
  const files: [name: string, text: string, form: OwnForm][] = [
    ['index.html', index, 'html'], ['worker.js', worker.replace('{{digest}}', digest(index + icon)), 'js'], ['manifest.webmanifest', JSON.stringify(manifest), 'json'], ['icon.svg', icon, 'svg'], ['page.licences.txt', licences, 'text'],
  ];
  return files.map(([name, text, form]) => ({ path: join(folder, name), text, form }));
}
