/** Builds `dist`: one bundle split by command, so that nothing heavy loads until it is needed; types by tsc. */
import { execFileSync } from 'node:child_process';
import { readFileSync, rmSync, chmodSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { precompiled } from '../templates/precompile.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const { version } = JSON.parse(readFileSync(`${root}/package.json`, 'utf8'));
rmSync(`${root}/dist`, { recursive: true, force: true });

const templates = {
  name: 'templates',
  setup(b) {
    b.onLoad({ filter: /\.hbs$/ }, ({ path }) => ({ contents: precompiled(path), loader: 'js' }));
  },
};

await build({
  absWorkingDir: root,
  entryPoints: { medlar: 'src/cli/medlar.ts', index: 'src/index.ts' },
  outdir: 'dist',
  bundle: true,
  splitting: true,
  format: 'esm',
  platform: 'node',
  target: 'node20.19',
  minify: true,
  legalComments: 'linked',
  define: { MEDLAR_VERSION: JSON.stringify(version) },
  // Some packages are CommonJS and ask for require.
  banner: { js: "import{createRequire as __cr}from'node:module';const require=__cr(import.meta.url);" },
  // The packages' own ES modules: what is not used falls away.
  alias: { yaml: `${root}/node_modules/yaml/browser/dist/index.js` },
  plugins: [templates],
  metafile: false,
});
chmodSync(`${root}/dist/medlar.js`, 0o755);
if (!process.argv.includes('--no-types')) {
  execFileSync(process.execPath, [`${root}/node_modules/typescript/bin/tsc`, '-p', `${root}/src/tsconfig.types.json`], { stdio: 'inherit' });
}
