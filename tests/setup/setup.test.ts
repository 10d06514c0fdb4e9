// The house rules that no compiler sees: what stands at the top, what is pinned, what no file may say.
import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const textOf = (path: string): string => readFileSync(join(root, path), 'utf8');

const TOP = [
  'README.md', 'DEVELOPERS.md', 'package.json', 'tsconfig.json', 'src', 'templates', 'tests', 'samples',
  'package-lock.json', 'LICENSE', 'CHANGELOG.md', 'eslint.config.js', '.gitignore', '.npmrc', '.ci',
];

// Spelt in pieces, so that this file passes its own test.
const UNSAID: readonly RegExp[] = [
  new RegExp(`\\btran${'scripts?'}\\b`, 'i'),
  new RegExp(`\\b(?:large )?language ${'models?'}\\b`, 'i'),
  new RegExp(`\\b(?:coding|ai) ${'agents?'}\\b`, 'i'),
  new RegExp(`(?<![\\w.:/-])/${'(?:work|farm)'}/`),
];

// Outside a checkout (an unpacked archive, say) there is no list of tracked files.
const checkout = existsSync(join(root, '.git'));
const tracked = checkout ? execFileSync('git', ['ls-files', '-z'], { cwd: root, encoding: 'utf8' }).split('\0').filter((path) => path !== '' && existsSync(join(root, path))) : [];

describe('packages', () => {
  const { dependencies = {}, devDependencies } = JSON.parse(textOf('package.json')) as Record<'dependencies' | 'devDependencies', Record<string, string>>;

  it('are pinned', () => {
    expect(Object.entries({ ...dependencies, ...devDependencies }).filter(([, version]) => !/^\d+\.\d+\.\d+(?:-[\w.]+)?$/.test(version))).toEqual([]);
  });

  it('are locked at the same versions', () => {
    const { packages } = JSON.parse(textOf('package-lock.json')) as { packages: Record<string, { version: string }> };
    for (const [name, version] of Object.entries({ ...dependencies, ...devDependencies })) expect([name, packages[`node_modules/${name}`]?.version]).toEqual([name, version]);
  });

  it('are locked without naming a server', () => {
    expect(textOf('package-lock.json').match(/"resolved": "http[^"]*"/g)).toBeNull();
  });
});

describe.skipIf(!checkout)('tracked files', () => {
  it('stand where they should', () => {
    expect([...new Set(tracked.map((path) => path.split('/')[0]!))].filter((name) => !TOP.includes(name))).toEqual([]);
  });

  it('hold nothing built', () => {
    expect(tracked.filter((path) => /^(?:dist|node_modules)\/|\.tgz$/.test(path))).toEqual([]);
  });

  it('speak of orchards, not of how they were written', () => {
    const said: string[] = [];
    for (const path of tracked) {
      const bytes = readFileSync(join(root, path));
      if (bytes.includes(0)) continue;
      const text = bytes.toString('utf8');
      for (const word of UNSAID) {
        const found = word.exec(text);
        if (found) said.push(`${path}:${text.slice(0, found.index).split('\n').length} ${found[0]}`);
      }
    }
    expect(said).toEqual([]);
  });
});
