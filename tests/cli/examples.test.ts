// Every command's help shows what to type, and what it shows works as it stands: on the sample, with nothing else at hand.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { EXAMPLES } from '../../src/words/examples.ts';
import { medlar } from '../medlar.ts';

const sample = fileURLToPath(new URL('../../samples/chapel-bank/', import.meta.url));
const texts = ['orchard.yaml', ...readdirSync(join(sample, 'soil')).map((name) => `soil/${name}`)].map((name) => [name, readFileSync(join(sample, name), 'utf8')] as const);
/** Where the examples say that they are, and once more where they name its folder. */
const files = Object.fromEntries(texts.flatMap(([name, text]) => [[name, text], [`samples/chapel-bank/${name}`, text]]));
const wordsOf = (line: string): string[] => [...line.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, bare]) => quoted ?? bare!).slice(1);

describe('--help', () => {
  test('of every command shows what to type', async () => {
    const { stdout } = await medlar(['--help']);
    const commands = [...stdout.split('Commands:')[1]!.matchAll(/^ {2}(\w+) (?:\[|<)/gm)].map(([, name]) => name!);
    expect(commands.length).toBeGreaterThanOrEqual(14);
    for (const name of commands) {
      const help = await medlar([name, '--help']);
      expect([name, help.code]).toEqual([name, 0]);
      expect(help.stdout, name).toMatch(new RegExp(`^ {2}medlar ${name}`, 'm'));
      for (const line of EXAMPLES[name] ?? []) expect(help.stdout).toContain(`  ${line}\n`);
    }
  });

  test('is pointed at where a command is given what it does not take', async () => {
    const { code, stderr } = await medlar(['why']);
    expect([code, stderr]).toEqual([2, expect.stringContaining('medlar why --help')]);
  });
});

describe('what it shows', () => {
  const lines = Object.values(EXAMPLES).flat();
  // Without a terminal nobody can be asked.
  test.each(lines.filter((line) => line !== 'medlar new'))('%s', async (line) => {
    const argv = wordsOf(line);
    const { code, stdout, stderr } = await medlar(argv, argv[0] === 'new' ? {} : files);
    expect([code, stderr]).toEqual([0, expect.not.stringContaining('error')]);
    expect(stdout).not.toBe('');
  });
});
