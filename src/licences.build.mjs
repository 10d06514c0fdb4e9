/** Whose work stands in what is shipped, with the notices that their licences ask for; and a list of everything that is needed to build and check it (`npm run licences`). */
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const read = (path) => readFileSync(`${root}/${path}`, 'utf8');
const inOrder = (a, b) => (a < b ? -1 : a > b ? 1 : 0);

/** The folders of packages of which a bundle holds code, by what esbuild tells of it. */
export const packagesIn = (...metafiles) => [...new Set(metafiles.flatMap(({ outputs }) => Object.values(outputs)).flatMap(({ inputs }) => Object.entries(inputs))
  .filter(([path, { bytesInOutput }]) => bytesInOutput > 0 && path.includes('node_modules/')).map(([path]) => /^.*node_modules\/(?:@[^/]+\/)?[^/]+/.exec(path)[0]))].sort(inOrder);

/** Name, version and licence of a package, and what its licence wants shipped: licence and notice, as they stand in it. */
function told(folder) {
  const { name, version, license, author } = JSON.parse(read(`${folder}/package.json`));
  const texts = readdirSync(`${root}/${folder}`).filter((file) => /^(?:licen[cs]e|notice|copying)(?:\.(?:md|txt))?$/i.test(file)).sort().map((file) => read(`${folder}/${file}`).trim());
  if (texts.length === 0) throw new Error(`${folder} holds no licence that could be shipped`);
  return { name, version, license, author: typeof author === 'string' ? author : author?.name, texts };
}

/** The notices of packages as one text. */
export function notices(what, folders) {
  const parts = folders.map(told).map(({ name, version, license, author, texts }) => `${'='.repeat(72)}\n${name} ${version}, ${license}${author ? `, by ${author}` : ''}\n${'='.repeat(72)}\n\n${texts.join('\n\n')}\n`);
  return `${what} holds code of the packages below, each under its own licence. Medlar itself is under the MIT licence (LICENSE).\n\n${parts.join('\n')}`;
}

/** Names by licence, in one line for a place where there is no room for the texts. */
export function inShort(folders) {
  const all = folders.map(told);
  return [...new Set(all.map((p) => p.license))].sort(inOrder).map((license) => `${all.filter((p) => p.license === license).map((p) => p.name).join(', ')}: ${license}`).join('; ');
}

/** Name and version of what `dist` was built with. */
export const shipped = () => [...read('dist/THIRD-PARTY.txt').matchAll(/^={72}\n(\S+) (\S+), .*\n={72}$/gm)].map(([, name, version]) => `${name} ${version}`);

/** Everything that the lock file names, those for other machines too. */
export function licences() {
  const { packages } = JSON.parse(read('package-lock.json'));
  const all = Object.entries(packages).filter(([path]) => path !== '').map(([path, locked]) => {
    const here = existsSync(`${root}/${path}/package.json`) ? JSON.parse(read(`${path}/package.json`)) : null;
    return `${/node_modules\/((?:@[^/]+\/)?[^/]+)$/.exec(path)[1]} ${locked.version} | ${here?.license ?? locked.license}`;
  });
  const rows = [...new Set(all)].sort(inOrder).map((row) => row.split(' | '));
  const inside = shipped();
  const table = (list) => ['| package | licence |', '| --- | --- |', ...list.map(([name, license]) => `| ${name} | ${license} |`)].join('\n');
  return `# Licences

Medlar is under the MIT licence. This list is written by \`npm run licences\` after a build, and a test holds it to the lock file.

## Shipped

Of these, code stands in \`dist\`; their licences are shipped with it in \`dist/THIRD-PARTY.txt\`, and those of the page in \`dist/page.licences.txt\`.

${table(rows.filter(([name]) => inside.includes(name)))}

## Needed to build and check

None of these is shipped.

${table(rows.filter(([name]) => !inside.includes(name)))}
`;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) writeFileSync(`${root}/tests/setup/licences.md`, licences());
