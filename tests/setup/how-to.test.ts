// The recipes of DEVELOPERS.md, "How to add", are done as they are written, on a copy of the sources: what they promise must happen, and all of them together must compile.
import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { afterAll, describe, expect, it } from 'vitest';
import { precompiled } from '../../templates/precompile.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const TODAY = '2026-03-14';

type Block = { readonly kind: string; readonly file: string; readonly of: string | undefined; readonly lines: readonly string[] };
type Recipe = { readonly name: string; readonly blocks: readonly Block[] };

/** The fenced blocks below each heading of the part that tells how to add. */
function recipes(): Recipe[] {
  const part = readFileSync(join(root, 'DEVELOPERS.md'), 'utf8').split(/^## /m).find((p) => p.startsWith('How to add\n'))!;
  return part.split(/^### /m).slice(1).map((text) => ({
    name: text.slice(0, text.indexOf('\n')),
    blocks: [...text.matchAll(/^```(\w+)(?: (\S+?)(?: of (\S+))?)?\n([\s\S]*?)^```$/gm)].map(([, kind, file, of, body]) => ({ kind: kind!, file: file ?? '', of, lines: body!.replace(/\n$/, '').split('\n') })),
  })).filter((r) => r.blocks.length > 0);
}

/** Where a piece stands, and that it stands there alone. */
function only(source: string, piece: string, file: string): number {
  const at = source.indexOf(piece);
  if (at < 0) throw new Error(`${file} no longer holds: ${piece}`);
  if (source.includes(piece, at + 1)) throw new Error(`${file} holds more than once: ${piece}`);
  return at;
}

/** "- piece" becomes the "+ piece" below it; what is added below "  piece" is a line of its own below the line that holds that piece. */
function changed(source: string, lines: readonly string[], file: string): string {
  let text = source;
  let from: { at: number; end: number; whole: boolean } | null = null;
  for (const line of lines) {
    const [sign, piece] = [line[0], line.slice(2)];
    if (sign === '+') {
      if (!from) throw new Error(`${file}: nothing says where this goes: ${piece}`);
      const added: string = from.whole ? `\n${piece}` : piece;
      text = text.slice(0, from.at) + added + text.slice(from.end);
      from = { at: from.at + added.length, end: from.at + added.length, whole: true };
      continue;
    }
    const at = only(text, piece, file);
    const end = text.indexOf('\n', at + piece.length);
    from = sign === '-' ? { at, end: at + piece.length, whole: false } : { at: end, end, whole: true };
  }
  return text;
}

/** A copy of the sources that recipes may change. */
function copied(): string {
  const home = mkdtempSync(join(tmpdir(), 'medlar-how-to-'));
  for (const name of ['src', 'templates', 'package.json', 'tsconfig.json']) cpSync(join(root, name), join(home, name), { recursive: true });
  symlinkSync(join(root, 'node_modules'), join(home, 'node_modules'));
  return home;
}

const put = (home: string, file: string, text: string): void => {
  mkdirSync(dirname(join(home, file)), { recursive: true });
  writeFileSync(join(home, file), text);
};

/** Code goes into the sources, by change or as a file of its own; anything else that has a name is a file of the grower's folder. */
function apply(home: string, { kind, file, of, lines }: Block): void {
  if (kind === 'diff') put(home, file, changed(readFileSync(join(home, of ?? file), 'utf8'), lines, of ?? file));
  else if (kind === 'ts') put(home, file, `${lines.join('\n')}\n`);
  else put(home, `garden/${file}`, `${lines.join('\n')}\n`);
}

async function bundled(home: string): Promise<string> {
  const outfile = join(home, 'made/medlar.mjs');
  await build({
    absWorkingDir: home, entryPoints: ['src/cli/medlar.ts'], outfile, bundle: true, format: 'esm', platform: 'node', logLevel: 'error', external: ['highs'],
    define: { MEDLAR_VERSION: '"0.0.0-how-to"' }, banner: { js: "import{createRequire as __cr}from'node:module';const require=__cr(import.meta.url);" },
    plugins: [{ name: 'templates', setup(b) { b.onLoad({ filter: /\.hbs$/ }, ({ path }) => ({ contents: precompiled(path), loader: 'js' })); } }],
  });
  return outfile;
}

/** Words as a shell parts them. */
const wordsOf = (line: string): string[] => [...line.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, bare]) => quoted ?? bare!);

/** Without the blanks that make columns. */
const plain = (line: string): string => line.replace(/\s+/g, ' ').trim();

/** Runs what stands behind "$ medlar" and looks for what stands below it, in the same order. */
function shown(program: string, home: string, lines: readonly string[]): void {
  mkdirSync(join(home, 'garden'), { recursive: true });
  let said: string[] = [];
  for (const line of lines) {
    if (line.startsWith('$ medlar')) {
      const { stdout, stderr } = spawnSync(process.execPath, [program, ...wordsOf(line.slice(8)), '--today', TODAY], { cwd: join(home, 'garden'), encoding: 'utf8' });
      said = `${stdout}${stderr}`.split('\n').map(plain);
      continue;
    }
    const at = said.findIndex((l) => l.includes(plain(line)));
    expect(at, `"${plain(line)}" among\n${said.join('\n')}`).toBeGreaterThanOrEqual(0);
    said = said.slice(at);
  }
}

const all = recipes();
const homes: string[] = [];
afterAll(() => { for (const home of homes) rmSync(home, { recursive: true, force: true }); });

describe('the drawing of the house', () => {
  it('has every room and file of src, and none that is not there', () => {
    const [, drawing] = /^```\n([\s\S]*?)^```$/m.exec(readFileSync(join(root, 'DEVELOPERS.md'), 'utf8'))!;
    // What each holds stands in the column behind.
    const drawn = drawing!.split('\n').flatMap((line) => line.slice(0, 48).split(/[\s→]+/)).concat([.../\bindex\.ts\b/.exec(drawing!) ?? []]).filter(Boolean);
    const there = readdirSync(join(root, 'src')).filter((name) => !/\.d\.m?ts$|\.json$/.test(name));
    expect([...new Set(drawn)].sort()).toEqual(there.sort());
  });
});

describe('the recipes of DEVELOPERS.md', () => {
  it('are there: a crop, a table, a scale, a unit, a layout, a language, a command', () => {
    const names = all.map((r) => r.name);
    for (const wanted of [/crop/i, /table/i, /scale/i, /unit/i, /layout/i, /language/i, /command/i]) expect(names.filter((n) => wanted.test(n)), String(wanted)).not.toEqual([]);
    for (const { name, blocks } of all) expect([name, blocks.at(-1)!.kind]).toEqual([name, 'console']);
  });

  it.each(all)('$name', async ({ blocks }) => {
    const home = copied();
    homes.push(home);
    let program: string | null = null;
    for (const block of blocks) {
      if (block.kind !== 'console') {
        apply(home, block);
        program = block.kind === 'diff' || block.kind === 'ts' ? null : program;
        continue;
      }
      program ??= await bundled(home);
      shown(program, home, block.lines);
    }
  });

  it('compile, all of them together', () => {
    const home = copied();
    homes.push(home);
    // A copy of a file is made of what all others have left.
    const changes = all.flatMap((r) => r.blocks).filter((b) => b.kind !== 'console');
    for (const block of [...changes.filter((b) => b.of === undefined), ...changes.filter((b) => b.of !== undefined)]) apply(home, block);
    const { status, stdout } = spawnSync(process.execPath, [join(root, 'node_modules/typescript/bin/tsc'), '-p', home, '--noEmit'], { encoding: 'utf8' });
    expect([status, stdout]).toEqual([0, '']);
  }, 120_000);
});
