/** Builds `dist`: one bundle split by command, so that nothing heavy loads until it is needed; types by tsc. */
import { execFileSync } from 'node:child_process';
import { chmodSync, copyFileSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { notices, packagesIn } from './licences.build.mjs';
import { buildPage, templates } from './page.build.mjs';
import { tablesAsJson } from './tables.build.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const { version } = JSON.parse(readFileSync(`${root}/package.json`, 'utf8'));
rmSync(`${root}/dist`, { recursive: true, force: true });

/** Rarely loaded and fond of all of zod: built apart, so that the everyday commands carry only the part they use. */
const apart = { schema: 'src/cli/schema.ts', 'own-template': 'src/sheet/own-template.ts' };
const setApart = {
  name: 'set apart',
  setup(b) {
    b.onResolve({ filter: /\/(?:schema|own-template)\.ts$/ }, ({ path, kind }) => (kind === 'dynamic-import' ? { path: `./${path.split('/').pop().replace('.ts', '.js')}`, external: true } : null));
  },
};

/** The strong solver comes as it is, with its program for all machines beside it. */
const solver = {
  name: 'solver',
  setup(b) {
    b.onResolve({ filter: /^highs$/ }, () => ({ path: './highs.mjs', external: true }));
  },
};

/** The library of the command line would load Node's network code, to start commands that are programs of their own. Ours are none. */
const noPrograms = {
  name: 'no programs',
  setup(b) {
    b.onResolve({ filter: /^node:child_process$/ }, ({ importer }) => (/[\\/]commander[\\/]/.test(importer) ? { path: 'none', namespace: 'none' } : null));
    b.onLoad({ filter: /./, namespace: 'none' }, () => ({ contents: 'module.exports = {};', loader: 'js' }));
  },
};

const tables = tablesAsJson(root);

const shared = {
  absWorkingDir: root,
  outdir: 'dist',
  bundle: true,
  splitting: true,
  format: 'esm',
  platform: 'node',
  target: 'node20.19',
  minify: true,
  legalComments: 'linked',
  metafile: true,
  define: { MEDLAR_VERSION: JSON.stringify(version) },
  // Some packages are CommonJS and ask for require.
  banner: { js: "import{createRequire as __cr}from'node:module';const require=__cr(import.meta.url);" },
  // The packages' own ES modules: what is not used falls away.
  alias: { yaml: `${root}/node_modules/yaml/browser/dist/index.js` },
};

const { metafile } = await build({ ...shared, entryPoints: ['src/cli/medlar.ts'], plugins: [templates, tables, noPrograms, setApart, solver] });
for (const file of ['build/highs.mjs', 'build/highs.wasm', 'LICENSE']) copyFileSync(`${root}/node_modules/highs/${file}`, `${root}/dist/${file === 'LICENSE' ? 'highs.LICENSE' : file.slice(6)}`);
// Apart, so that no file is split for the sake of the other.
const { metafile: library } = await build({ ...shared, entryPoints: ['src/index.ts'], plugins: [templates, tables] });
const { metafile: besides } = await build({ ...shared, entryPoints: apart, plugins: [templates] });
// One letter beyond ASCII makes Node read a file at half the speed; patterns hold some, and mean the same by number.
for (const name of readdirSync(`${root}/dist`).filter((n) => n.endsWith('.js'))) {
  const text = readFileSync(`${root}/dist/${name}`, 'utf8');
  const plain = text.replace(/[^\0-\x7f]/g, (c) => `\\u${c.charCodeAt(0).toString(16).padStart(4, '0')}`);
  if (plain !== text) writeFileSync(`${root}/dist/${name}`, plain);
}
const inPage = await buildPage();
writeFileSync(`${root}/dist/THIRD-PARTY.txt`, notices('Medlar', [...new Set([...packagesIn(metafile, library, besides), 'node_modules/highs', ...inPage])].sort()));
chmodSync(`${root}/dist/medlar.js`, 0o755);
// Every figure on a page, for somebody who reads no code.
writeFileSync(`${root}/dist/figures.html`, execFileSync(process.execPath, [`${root}/dist/medlar.js`, 'sources', '--as', 'html'], { maxBuffer: 64 * 1024 * 1024 }));
if (!process.argv.includes('--no-types')) {
  execFileSync(process.execPath, [`${root}/node_modules/typescript/bin/tsc`, '-p', `${root}/src/tsconfig.types.json`], { stdio: 'inherit' });
}
