/** The sources as one module that plain Node can load: the doors that the fuzzer tries, bundled beside the built page. */
import { copyFileSync, existsSync, mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { templates } from '../../src/page.build.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const folder = `${root}node_modules/.cache/medlar-fuzz`;

const DOORS = `
export { run } from './src/cli/main.ts';
export { ANSWERS } from './src/json/schemas.ts';
export { readReport } from './src/soil/read.ts';
export { LONGEST_LINE } from './src/soil/text.ts';
export { noticeText, questionText } from './src/json/notices.ts';
export { opened, packed, folderOf } from './src/page/files.ts';
export * as page from './src/page/state.ts';
export { see, seeEarly, answerOf, mistakesOf } from './src/page/seen.ts';
export { judge } from './src/page/judge.ts';
export { withUnit } from './src/page/trees.ts';
export { withInside } from './src/page/memory.ts';
export { loadLanguage } from './src/words/load.ts';
export { dice } from './tests/dice.ts';
`;

/** Gives back the path of the bundle. */
export async function bundled() {
  mkdirSync(folder, { recursive: true });
  await build({
    stdin: { contents: DOORS, resolveDir: root, loader: 'ts' }, absWorkingDir: root, outdir: folder, entryNames: 'doors', bundle: true, splitting: true, format: 'esm', platform: 'node', target: 'node20.19',
    packages: 'external', define: { MEDLAR_VERSION: '"0.0.0-fuzz"' }, plugins: [templates], outExtension: { '.js': '.mjs' }, logLevel: 'error',
  });
  for (const file of ['page.html', 'page.de.html', 'page.es.html', 'worker.js', 'icon.svg']) if (existsSync(`${root}dist/${file}`)) copyFileSync(`${root}dist/${file}`, `${folder}/${file}`);
  return `${folder}/doors.mjs`;
}
