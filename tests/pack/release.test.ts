// `npm run release`: what it refuses, each with its reason; a rehearsal elsewhere; and publishing only where a CI vouches. npm itself is a stand-in here, so nothing can leave.
import { execFileSync, spawnSync } from 'node:child_process';
import { chmodSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { missing, vouches, wrongFiles } from '../../src/release.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const REPOSITORY = 'git+https://example.org/garden/medlar.git';
const CHANGELOG = '# Changelog\n\n## [Unreleased]\n\n## [1.2.3] - 2026-03-14\n\n- Something.\n';
const ready = { manifest: { version: '1.2.3', repository: { url: REPOSITORY } }, lock: { version: '1.2.3', packages: { '': { version: '1.2.3' } } }, changelog: CHANGELOG, changed: '', branch: 'main', env: {} };

describe('what stands against a release', () => {
  it('is nothing where all is in order, on main or at the version\'s tag', () => {
    expect(missing(ready)).toEqual([]);
    expect(missing({ ...ready, branch: '', env: { GITHUB_REF_NAME: 'v1.2.3' } })).toEqual([]);
  });

  it.each([
    ['no repository', { manifest: { version: '1.2.3' } }, /names no repository/],
    ['another repository than the CI\'s', { env: { GITHUB_REPOSITORY: 'somebody/else' } }, /this CI builds somebody\/else/],
    ['a changed file', { changed: ' M src/plan.ts\n' }, /not clean.*src\/plan\.ts/],
    ['another branch', { branch: 'try' }, /This is try/],
    ['another lock', { lock: { version: '1.2.2' } }, /package-lock\.json 1\.2\.2/],
    ['lines that belong to no version', { changelog: CHANGELOG.replace('## [1', '- Not moved.\n\n## [1') }, /under \[Unreleased\]/],
    ['another version in the changelog', { changelog: CHANGELOG.replace('1.2.3', '1.2.2') }, /is 1\.2\.2, package\.json says 1\.2\.3/],
    ['no day', { changelog: CHANGELOG.replace(' - 2026-03-14', '') }, /no day/],
  ])('%s', (_, change, said) => {
    expect(missing({ ...ready, ...change })).toEqual([expect.stringMatching(said)]);
  });

  it('a file too many or too few', () => {
    const all = ['package.json', 'README.md', 'LICENSE', 'CHANGELOG.md', 'dist/medlar.js', 'dist/index.js', 'dist/types/index.d.ts', 'dist/page.html', 'dist/THIRD-PARTY.txt', 'dist/page.licences.txt'];
    expect(wrongFiles([...all, 'dist/more.js'])).toEqual([]);
    expect(wrongFiles([...all.slice(1), 'src/plan.ts', '.npmrc'])).toEqual([expect.stringContaining('lacks package.json'), expect.stringContaining('src/plan.ts'), expect.stringContaining('.npmrc')]);
  });

  it('a machine vouches only as a CI that gives out tokens', () => {
    expect([{}, { CI: 'true' }, { GITHUB_ACTIONS: 'true' }, { ACTIONS_ID_TOKEN_REQUEST_URL: 'x' }, { GITLAB_CI: 'true' }].map(vouches)).toEqual([false, false, false, false, false]);
    expect([{ GITHUB_ACTIONS: 'true', ACTIONS_ID_TOKEN_REQUEST_URL: 'x' }, { GITLAB_CI: 'true', SIGSTORE_ID_TOKEN: 'x' }].map(vouches)).toEqual([true, true]);
  });
});

describe('the script', () => {
  let home = '';
  const calls = (): string[] => (existsSync(join(home, 'said')) ? readFileSync(join(home, 'said'), 'utf8').trim().split('\n') : []);
  const FILES = ['package.json', 'README.md', 'LICENSE', 'CHANGELOG.md', 'dist/medlar.js', 'dist/index.js', 'dist/types/index.d.ts', 'dist/page.html', 'dist/THIRD-PARTY.txt', 'dist/page.licences.txt'].map((path) => ({ path }));

  beforeAll(() => {
    home = mkdtempSync(join(tmpdir(), 'medlar-release-'));
    mkdirSync(join(home, 'bin'));
    mkdirSync(join(home, 'garden'));
    // Notes what it was asked, and answers "npm pack".
    writeFileSync(join(home, 'bin/npm'), `#!${process.execPath}\nrequire('node:fs').appendFileSync(${JSON.stringify(join(home, 'said'))}, process.argv.slice(2).join(' ') + '\\n');\nif (process.argv[2] === 'pack') console.log(${JSON.stringify(JSON.stringify([{ files: FILES }]))});\n`);
    chmodSync(join(home, 'bin/npm'), 0o755);
    const put = (name: string, text: string): void => { writeFileSync(join(home, 'garden', name), text); };
    put('package.json', JSON.stringify({ name: 'garden', ...ready.manifest }));
    put('package-lock.json', JSON.stringify(ready.lock));
    put('CHANGELOG.md', CHANGELOG);
    const git = (...argv: string[]): void => { execFileSync('git', ['-c', 'user.name=x', '-c', 'user.email=x@example.org', ...argv], { cwd: join(home, 'garden'), stdio: 'pipe' }); };
    git('init', '-q', '-b', 'main');
    git('add', '-A');
    git('commit', '-qm', 'x');
  });
  afterAll(() => { rmSync(home, { recursive: true, force: true }); });

  function run(env: Record<string, string> = {}): { status: number | null; said: string } {
    rmSync(join(home, 'said'), { force: true });
    const { status, stdout, stderr } = spawnSync(process.execPath, [join(root, 'src/release.mjs')], { cwd: join(home, 'garden'), encoding: 'utf8', env: { PATH: `${join(home, 'bin')}${delimiter}${process.env.PATH}`, ...env } });
    return { status, said: stdout + stderr };
  }

  it('elsewhere than in a CI tests, looks into the package, and publishes nothing', () => {
    expect(run()).toMatchObject({ status: 0, said: expect.stringMatching(/garden 1\.2\.3 is ready[\s\S]*Nothing was published/) });
    expect(calls()).toEqual(['test', 'pack --dry-run --json --ignore-scripts']);
  });

  it('in a CI with identity tokens publishes with provenance, to everybody', () => {
    expect(run({ GITHUB_ACTIONS: 'true', ACTIONS_ID_TOKEN_REQUEST_URL: 'x', GITHUB_REPOSITORY: 'garden/medlar' }).status).toBe(0);
    expect(calls().at(-1)).toBe('publish --provenance --access public --ignore-scripts');
  });

  it('refuses before any test is run, and tells all reasons at once', () => {
    writeFileSync(join(home, 'garden/CHANGELOG.md'), '# Changelog\n');
    const { status, said } = run({ GITHUB_ACTIONS: 'true', ACTIONS_ID_TOKEN_REQUEST_URL: 'x' });
    expect(status).toBe(1);
    expect(said).toMatch(/not clean[\s\S]*newest version in CHANGELOG\.md is none[\s\S]*The tests were not run[\s\S]*Nothing was published/);
    expect(calls()).toEqual([]);
  });
});
