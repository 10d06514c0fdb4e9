/**
 * `npm run release`: looks whether this folder may be published, says all that is missing, and publishes with provenance
 * only where a CI vouches for where it was built. Anywhere else it is a rehearsal: the same checks, and nothing leaves.
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** What a package must hold, and all that it may hold. */
const MUST = ['package.json', 'README.md', 'LICENSE', 'CHANGELOG.md', 'dist/medlar.js', 'dist/index.js', 'dist/types/index.d.ts', 'dist/page.html', 'dist/THIRD-PARTY.txt', 'dist/page.licences.txt'];
const MAY = /^(?:dist\/|(?:package\.json|README\.md|LICENSE|CHANGELOG\.md)$)/;

const address = (repository) => (typeof repository === 'string' ? repository : repository?.url) ?? '';

/** Whether the machine can prove which repository and run built the package. */
export const vouches = (env) => (env.GITHUB_ACTIONS === 'true' && Boolean(env.ACTIONS_ID_TOKEN_REQUEST_URL)) || (env.GITLAB_CI === 'true' && Boolean(env.SIGSTORE_ID_TOKEN));

/** All that stands against a release, each with what to do. */
export function missing({ manifest, lock, changelog, changed, branch, env }) {
  const { version, repository } = manifest;
  const said = [];
  if (!/^(?:git\+)?(?:https|ssh):\/\/\S+\/\S+/.test(address(repository))) said.push('package.json names no repository, and provenance is a statement about one. Add "repository": { "type": "git", "url": "git+https://…" } with the address that the CI builds from.');
  else if (env.GITHUB_REPOSITORY && !address(repository).replace(/\.git$/, '').endsWith(`/${env.GITHUB_REPOSITORY}`)) said.push(`package.json names the repository ${address(repository)}, and this CI builds ${env.GITHUB_REPOSITORY}.`);
  if (changed !== '') said.push(`The tree is not clean: commit or put away ${changed.trim().split('\n').map((line) => line.trim().split(/\s+/).pop()).slice(0, 5).join(', ')}.`);
  if (branch !== 'main' && env.GITHUB_REF_NAME !== `v${version}`) said.push(`This is ${branch || 'no branch'}: a release is made from main, or from the tag v${version}.`);
  if (lock.version !== version || lock.packages?.['']?.version !== version) said.push(`package.json says ${version}, package-lock.json ${lock.version}: run npm install --package-lock-only.`);
  const heads = [...changelog.matchAll(/^## \[([^\]]+)\](?: - (\S.*))?$/gm)].map(([, name, day], i, all) => ({ name, day, body: changelog.slice(all[i].index + all[i][0].length, all[i + 1]?.index) }));
  const open = heads.find((h) => h.name === 'Unreleased');
  if (open && open.body.trim() !== '') said.push('CHANGELOG.md still has lines under [Unreleased]: move them under the version.');
  const newest = heads.find((h) => h.name !== 'Unreleased');
  if (newest?.name !== version) said.push(`The newest version in CHANGELOG.md is ${newest?.name ?? 'none'}, package.json says ${version}.`);
  else if (!/^\d{4}-\d{2}-\d{2}$/.test(newest.day ?? '')) said.push(`CHANGELOG.md gives ${version} no day: write "## [${version}] - YYYY-MM-DD".`);
  return said;
}

/** What is wrong with the files of a package. */
export const wrongFiles = (files) => [...MUST.filter((path) => !files.includes(path)).map((path) => `The package lacks ${path}.`), ...files.filter((path) => !MAY.test(path)).map((path) => `The package holds ${path}, which is not for shipping.`)];

const read = (path) => (existsSync(path) ? readFileSync(path, 'utf8') : '');
const git = (...argv) => execFileSync('git', argv, { encoding: 'utf8' });

function stop(said) {
  console.error(`${said.join('\n')}\nNothing was published.`);
  process.exitCode = 1;
}

function release() {
  const facts = { manifest: JSON.parse(read('package.json')), lock: JSON.parse(read('package-lock.json') || '{}'), changelog: read('CHANGELOG.md'), changed: git('status', '--porcelain'), branch: git('branch', '--show-current').trim(), env: process.env };
  // The tests take long: they wait until all that is quick to see is right.
  const first = missing(facts);
  if (first.length > 0) return stop([...first, 'The tests were not run.']);
  if (spawnSync('npm', ['test'], { stdio: 'inherit' }).status !== 0) return stop(['The tests fail.']);
  const [{ files }] = JSON.parse(execFileSync('npm', ['pack', '--dry-run', '--json', '--ignore-scripts'], { encoding: 'utf8', maxBuffer: 1e8 }));
  const wrong = wrongFiles(files.map(({ path }) => path));
  if (wrong.length > 0) return stop(wrong);
  if (!vouches(process.env)) {
    console.log(`${facts.manifest.name} ${facts.manifest.version} is ready, ${files.length} files. A rehearsal: only a CI that gives out identity tokens (OIDC) can vouch for where a package was built, and this is none.\nNothing was published.`);
    return;
  }
  // Built by the tests just now, so no script runs between the look at the files and their sending.
  process.exitCode = spawnSync('npm', ['publish', '--provenance', '--access', 'public', '--ignore-scripts'], { stdio: 'inherit' }).status ?? 1;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) release();
