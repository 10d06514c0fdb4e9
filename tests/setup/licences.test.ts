// Whose work is used and shipped, by which licence, and that each licence stands where it must. Run after a build, whose lists these are.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { licences, shipped } from '../../src/licences.build.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const textOf = (path: string): string => readFileSync(join(root, path), 'utf8');
const flat = (text: string): string => text.replace(/\s+/g, ' ');
const list = textOf('tests/setup/licences.md');

/** Those of SPDX that let anybody hand on the program, changed or not, with the notice kept. */
const FREE = ['MIT', 'ISC', '0BSD', 'BSD-2-Clause', 'BSD-3-Clause', 'Apache-2.0', 'BlueOak-1.0.0', 'Zlib', 'Unlicense'];

const { packages } = JSON.parse(textOf('package-lock.json')) as { packages: Record<string, { version: string; license?: string }> };
const locked = Object.entries(packages).filter(([path]) => path !== '').map(([path, { version, license }]) => ({ path, id: `${path.split('node_modules/').pop()!} ${version}`, license }));

/** What the sources of the program name, without the build's own files. */
function named(folder: string): string[] {
  return readdirSync(join(root, folder), { withFileTypes: true }).flatMap((entry) => {
    const path = `${folder}/${entry.name}`;
    if (entry.isDirectory()) return named(path);
    if (!path.endsWith('.ts') || path.endsWith('.d.ts')) return [];
    return [...textOf(path).matchAll(/^import (?!type\b).*from '([^.'][^']*)'|\bimport\('([^.'][^']*)'\)/gm)].map(([, a, b]) => (a ?? b)!);
  }).filter((name) => !name.startsWith('node:')).map((name) => name.split('/').slice(0, name.startsWith('@') ? 2 : 1).join('/'));
}

describe('the list of licences', () => {
  it('is what the lock file and the last build say: write it with "npm run licences" after a build', () => {
    expect(list).toBe(licences());
  });

  it('names every package of the lock file once, with a licence', () => {
    const rows = [...list.matchAll(/^\| (\S+ \d\S*) \| (.+) \|$/gm)].map(([, id, license]) => ({ id, license }));
    expect(new Set(rows.map((r) => r.id)).size).toBe(rows.length);
    expect(rows.map((r) => r.id!).sort()).toEqual([...new Set(locked.map((p) => p.id))].sort());
    expect(rows.filter((r) => !/^[A-Z0-9][\w.-]*(?: (?:AND|OR) [\w.-]+)*$/i.test(r.license!))).toEqual([]);
  });

  it('says of each what its own package says', () => {
    for (const { path, id } of locked.filter((p) => existsSync(join(root, p.path, 'package.json')))) {
      expect(list).toContain(`| ${id} | ${(JSON.parse(textOf(`${path}/package.json`)) as { license: string }).license} |`);
    }
  });
});

describe('what is shipped', () => {
  const inside = locked.filter((p) => shipped().includes(p.id));

  it('holds every library that the sources name', () => {
    const names = [...new Set(named('src'))];
    expect(names.length).toBeGreaterThan(8);
    expect(names.filter((name) => !shipped().some((id) => id.startsWith(`${name} `)))).toEqual([]);
  });

  it('is argued for in DEVELOPERS.md, each library that was chosen', () => {
    const { devDependencies } = JSON.parse(textOf('package.json')) as { devDependencies: Record<string, string> };
    const chosen = Object.keys(devDependencies).filter((name) => shipped().includes(`${name} ${devDependencies[name]!}`));
    const [, table] = textOf('DEVELOPERS.md').split('## What we ship of others');
    expect([...table!.split('\n## ')[0]!.matchAll(/^\| (?!package|---)(\S+) \|/gm)].map(([, name]) => name!).sort()).toEqual(chosen.sort());
  });

  it('may be handed on by its licence', () => {
    expect(new Set(inside.map((p) => p.id)).size).toBe(shipped().length);
    expect(inside.filter(({ license }) => !FREE.includes(license!))).toEqual([]);
  });

  it('has the whole licence of each beside it', () => {
    const text = flat(textOf('dist/THIRD-PARTY.txt'));
    for (const { path, id } of inside) {
      const files = readdirSync(join(root, path)).filter((name) => /^(?:licen[cs]e|notice|copying)/i.test(name));
      expect(files, id).not.toEqual([]);
      for (const file of files) expect(text.includes(flat(textOf(`${path}/${file}`)).trim()), `${path}/${file}`).toBe(true);
    }
  });

  it('names in each page whose work is in it, and lays their licences beside', () => {
    const text = textOf('dist/page.licences.txt');
    const libraries = ['yaml', 'handlebars', 'idb-keyval', 'littlezipper', 'but-unzip', 'yalps'];
    for (const name of libraries) expect(text).toMatch(new RegExp(`^${name} \\d+\\.\\d+\\.\\d+, `, 'm'));
    for (const page of ['page.html', 'page.de.html', 'page.es.html']) {
      const [, said] = /<body>\s*<!-- (.*?) -->/s.exec(textOf(`dist/${page}`))!;
      for (const name of [...libraries, 'page.licences.txt']) expect(said, page).toContain(name);
    }
  });
});
