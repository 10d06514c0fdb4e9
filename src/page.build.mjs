/** Builds the page for a phone: one HTML file with script and style inside, each allowed by its hash alone. */
import { createHash } from 'node:crypto';
import { mkdirSync, readdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { minify } from '@swc/core';
import { build, transform } from 'esbuild';
import { inShort, notices, packagesIn } from './licences.build.mjs';
import { precompiled } from '../templates/precompile.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const read = (path) => readFileSync(`${root}/${path}`, 'utf8');
const hash = (text) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;

/** The handlebars templates as modules that need only the small runtime. */
export const templates = {
  name: 'templates',
  setup(b) {
    b.onLoad({ filter: /\.hbs$/ }, ({ path }) => ({ contents: precompiled(path), loader: 'js' }));
  },
};

/** Modules of libraries that nothing in the page comes to: kinds of YAML that no orchard's file may use, merged keys, a reviver that nobody gives, the log of templates, folding (the page never folds lines), YAML's look for keys told twice (orchard/yaml.ts has its own), helpers that no template calls, leave to reach what an object inherits (none is given). */
const UNUSED = {
  'yaml-1.1/binary': 'export const binary = undefined;', 'yaml-1.1/omap': 'export const omap = undefined;', 'yaml-1.1/pairs': 'export const pairs = undefined;', 'yaml-1.1/set': 'export const set = undefined;',
  'yaml-1.1/timestamp': 'export const timestamp = undefined, intTime = undefined, floatTime = undefined;', 'yaml-1.1/schema': 'export const schema = undefined;', 'json/schema': 'export const schema = undefined;',
  'stringify/foldFlowLines': "export const FOLD_FLOW = 'flow', FOLD_BLOCK = 'block', FOLD_QUOTED = 'quoted'; export const foldFlowLines = (text) => text;", 'parse/cst-visit': 'export const visit = undefined;',
  'yaml-1.1/merge': 'export const merge = undefined; export const isMergeKey = () => false; export const addMergeToJSMap = undefined;', 'doc/applyReviver': 'export const applyReviver = undefined;', 'compose/util-map-includes': 'export const mapIncludes = () => false;',
  'helpers/log': 'exports.__esModule = true; exports.default = () => {};', 'helpers/lookup': 'exports.__esModule = true; exports.default = () => {};', 'handlebars/no-conflict': 'exports.__esModule = true; exports.default = () => {};', 'helpers/block-helper-missing': 'exports.__esModule = true; exports.default = () => {};', 'helpers/helper-missing': 'exports.__esModule = true; exports.default = () => {};', 'handlebars/logger': 'exports.__esModule = true; exports.default = { log() {} };', 'internal/proto-access': 'exports.__esModule = true; exports.createProtoAccessControl = () => undefined; exports.resultIsAllowed = () => false; exports.isPrototypeConstructor = (parent, name) => name === "constructor"; exports.resetLoggedProperties = () => {};', 'decorators/inline': 'exports.__esModule = true; exports.default = () => {};',
};

const SOURCE_ROW = /^ {2}'?([\w-]+)'?: \{ title.*\n/gm;
/** Named by no table: by what a grower or a lab wrote. */
const ALWAYS = ['own-rules', 'grower', 'lab', 'definition', 'medlar'];

/** The page carries what it can use: no publications that nothing in it cites, no addresses, which nothing there can open without a network, and not how the words of reports and the methods of laboratories are known. */
export const lighter = (uncited = []) => ({
  name: 'lighter',
  setup(b) {
    b.onLoad({ filter: /node_modules[\\/](?:yaml|handlebars)[\\/].*\.js$/ }, ({ path }) => {
      const contents = UNUSED[path.replaceAll('\\', '/').split('/').slice(-2).join('/').replace('.js', '')];
      return contents === undefined ? null : { contents, loader: 'js' };
    });
    b.onLoad({ filter: /tables[\\/](?:names-\w+|rating-words)\.ts$/ }, ({ path }) => ({ contents: readFileSync(path, 'utf8').replace(/, (?:mark: '(?:read|practice|memory)'|at: '[^']*')(?=[, ])/g, ''), loader: 'ts' }));
    b.onLoad({ filter: /tables[\\/]labs\.ts$/ }, ({ path }) => ({ contents: readFileSync(path, 'utf8').replace(/, cite: \w+\('[^']*'(?:, '[^']*'){0,2}\)/g, ''), loader: 'ts' }));
    b.onLoad({ filter: /tables[\\/]sources[\w-]*\.ts$/ }, ({ path }) => ({ contents: readFileSync(path, 'utf8').replace(SOURCE_ROW, (row, id) => (uncited.includes(id) ? '' : row)).replace(/, (?:url|note): '[^']*'/g, ''), loader: 'ts' }));
  },
});

/** The publications that stand in the bundle once, where they are listed. */
function uncitedIn(bundle) {
  const ids = readdirSync(`${root}/src/tables`).filter((name) => name.startsWith('sources')).flatMap((name) => [...read(`src/tables/${name}`).matchAll(SOURCE_ROW)].map((m) => m[1]));
  return ids.filter((id) => !ALWAYS.includes(id) && bundle.split(id).length < 3);
}

/** Groups whose keys stand as text in the code that says them; those of the others are put together. */
const LITERAL = ['notice', 'say', 'hand', 'feel', 'ph', 'bags', 'new', 'plan', 'shop', 'none', 'ask', 'read', 'cause'];
/** Groups that no call names as text. */
const PUT_TOGETHER = ['notice', 'ask', 'step', 'page', 'sheet'];
/** Keys that are put together all the same. */
const BUILT = /^(?:ph-|any-|stop-|wait-|limit-|trees|samples|zones|unit-|changes-|perhaps-|asked)/;

/** The American sentences without those that nothing in the page can say. */
function wordsOf(enUS, code) {
  // What no code of the page says at all: the words of other commands.
  const spoken = new Set([...code.matchAll(/\bsay(?:IfKnown)?\([^,()]+(?:\([^()]*\))?, '(\w+)'/g)].map((m) => m[1]));
  const kept = (group, key) => !(group === 'page' && key.startsWith('unrun')) && (spoken.has(group) || PUT_TOGETHER.includes(group)) && (!LITERAL.includes(group) || BUILT.test(key) || code.includes(`'${key}'`) || new RegExp(`(?<![\\w-])${key}(?![\\w-])`).test(code));
  return Object.fromEntries(Object.entries(enUS).map(([group, all]) => [group, Object.fromEntries(Object.entries(all).filter(([key]) => kept(group, key)))]));
}

/** The sheet's own style: it is shown in a frame, which holds to the page's policy. */
function sheetStyles() {
  const [, style] = /<style>([\s\S]*?)<\/style>/.exec(read('templates/sheet.html.hbs'));
  return ['a4', 'letter'].map((paper) => style.replaceAll('{{paper}}', paper)).map((text) => {
    if (text.includes('{{')) throw new Error('the style of templates/sheet.html.hbs holds a field other than the paper');
    return text;
  });
}

/** All words of a language. */
async function wordsIn(language) {
  const { code } = await transform(read(`src/words/${language}.ts`), { loader: 'ts', format: 'esm' });
  return Object.values(await import(`data:text/javascript;base64,${Buffer.from(code).toString('base64')}`))[0];
}

/** A page speaks English, British or American, or one other language in place of both. */
const PAGES = { 'en-US': 'page.html', de: 'page.de.html', es: 'page.es.html' };

/** The words that a page can say; of another language than English in the place of all. */
const spoken = (language, words, code) => ({
  name: 'spoken',
  setup(b) {
    b.onLoad({ filter: /words[\\/]en-US\.ts$/ }, () => ({ contents: `export const enUS = ${JSON.stringify(wordsOf(words, code))};`, loader: 'js' }));
    if (language === 'en-US') return;
    b.onLoad({ filter: /words[\\/]en-GB\.ts$/ }, () => ({ contents: "import { enUS } from './en-US.ts'; export const enGB = (group, key) => enUS[group][key];", loader: 'js' }));
    b.onLoad({ filter: /page[\\/]speech\.ts$/ }, ({ path }) => ({ resolveDir: dirname(path), loader: 'js', contents: `
      import { enUS } from '../words/en-US.ts';
      import { marksOf } from '../words/marks.ts';
      import { LANGUAGES, learn } from '../words/words.ts';
      for (const l of LANGUAGES) learn(l, enUS, marksOf('${language}'));
      export const SPEAKS = '${language}';` }));
  },
});

const escaped = (text) => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');

export const settings = () => ({
  absWorkingDir: root, entryPoints: ['src/page/page.ts'], bundle: true, write: false, format: 'iife', minify: true, platform: 'browser', target: 'es2022', legalComments: 'none',
  charset: 'utf8', define: { MEDLAR_VERSION: JSON.stringify(JSON.parse(read('package.json')).version) }, alias: { yaml: `${root}/node_modules/yaml/browser/dist/index.js` },
});

/** Writes a page for each language to `dist`, and the few files that only a served page needs; gives back the folders of the packages in them. */
export async function buildPage() {
  const { metafile, outputFiles: [whole] } = await build({ ...settings(), plugins: [templates, lighter()], metafile: true });
  const [{ inputs }] = Object.values(metafile.outputs);
  const code = Object.keys(inputs).filter((path) => inputs[path].bytesInOutput > 0 && path.startsWith('src/') && !path.startsWith('src/words/en-')).map(read).join('\n')
    // Comments say nothing on the page.
    .replace(/^\s*\/\*\*[\s\S]*?\*\//gm, '').replace(/^\s*\/\/.*$/gm, '');
  const inside = packagesIn(metafile);
  const pages = await Promise.all(Object.entries(PAGES).map(async ([language, name]) => [name, await pageIn(language, code, uncitedIn(whole.text), inShort(inside))]));
  mkdirSync(`${root}/dist`, { recursive: true });
  for (const [name, text] of [...pages, ['worker.js', read('src/page/worker.js')], ['icon.svg', read('src/page/icon.svg')], ['page.licences.txt', notices('The page', inside)]]) {
    const temporary = `${root}/dist/${name}.${process.pid}.tmp`;
    writeFileSync(temporary, text);
    renameSync(temporary, `${root}/dist/${name}`);
  }
  return inside;
}

async function pageIn(language, written, uncited, inside) {
  const words = await wordsIn(language);
  const bundled = await build({ ...settings(), plugins: [templates, lighter(uncited), spoken(language, words, written)] });
  const { code: small } = await minify(bundled.outputFiles[0].text, { compress: { passes: 4, toplevel: true, ecma: 2022 }, mangle: { toplevel: true }, ecma: 2022, module: false });
  // Inside a script element neither of these may stand; both are the same text to JavaScript.
  const script = small.trim().replace(/<(?=\/script|!--|script)/gi, '\\x3c');
  const { code } = await transform(read('src/page/page.css'), { loader: 'css', minify: true });
  const style = code.trim();
  const policy = [
    "default-src 'none'", `script-src ${hash(script)}`, `style-src ${[style, ...sheetStyles()].map(hash).join(' ')}`, 'img-src data:', "base-uri 'none'", "form-action 'none'",
  ].join('; ');
  const icon = `data:image/svg+xml,${read('src/page/icon.svg').trim().replaceAll('"', "'").replace(/[%#<>]/g, encodeURIComponent)}`;
  const fill = { language: language.slice(0, 2), policy, style, script, icon, inside, unrun: escaped(words.page.unrun), 'unrun-how': escaped(words.page['unrun-how']) };
  return read('src/page/page.html').replace(/\{\{([\w-]+)\}\}/g, (_, key) => fill[key]);
}
