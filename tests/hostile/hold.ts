/** What must hold of every answer, however bad the input: a known exit code, no crash showing, nothing that drives a terminal. */
import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { expect } from 'vitest';
import { run } from '../../src/cli/main.ts';
import type { Answer, Run } from '../medlar.ts';
import { medlar } from '../medlar.ts';

const TODAY = '2026-03-14';
export type Files = Readonly<Record<string, string | Buffer>>;

export const STORE = 'store:\n  - Sulphate of ammonia, 21-0-0, 4 lb, $9\n';
export const GOOD = `orchard: Test Bank
where: Ohio, US
bud-break: 12 April
first-frost: 12 October
soil:
  bank: soil/2025.txt
trees:
  Gate apple: apple, semi-dwarf, planted 2019, 12 ft across, shoots 6 in 2025, mulch, bank
${STORE}`;
export const REPORT = 'taken: 3 Nov 2025\npH 6.4\nPhosphorus 164 ppm = very high\nPotassium 180 ppm (120-200)\n';

/** The good orchard with other trees in it, no soil. */
export const withTrees = (lines: readonly string[]): string =>
  `where: Ohio, US\nbud-break: 12 April\nfirst-frost: 12 October\ntrees:\n${lines.map((l) => `  ${l}\n`).join('')}${STORE}`;

const CRASH = /^\s+at \S+ ?\(|^\s+at (?:file|node):|\b(?:Type|Range|Reference|Syntax)?Error:|wrong in Medlar itself|\[object Object\]/m;

export function held(result: Run): void {
  for (const text of [result.stdout, result.stderr]) {
    expect(text).not.toMatch(CRASH);
    expect(text).not.toMatch(/\bNaN\b|\bundefined\b|\bInfinity\b/);
    // Apart from line breaks and tabs nothing below a blank, and no C1 code, reaches the terminal.
    expect(text).not.toMatch(/[\u0000-\u0008\u000b-\u001f\u007f-\u009f]/);
  }
}

export type Both = { readonly text: Run; readonly json: Run; readonly notices: Answer['notices'] };

/** Runs a command plain and with --json: both must end alike, and the JSON must be one envelope. */
export async function both(argv: readonly string[], files: Files, stdin = ''): Promise<Both> {
  const text = await medlar(argv, files, stdin);
  const json = await medlar([...argv, '--json'], files, stdin);
  held(text);
  held(json);
  expect(json.code).toBe(text.code);
  expect(Object.keys(json.json)).toEqual(['medlar', 'schema', 'command', 'ok', 'result', 'questions', 'notices', 'figures']);
  expect(json.json.ok).toBe(json.code === 0);
  if (json.code !== 0) {
    // Design 7: without a result, `result` is null; a failure says why, as text on stderr and as an error in JSON.
    expect(json.json.notices.some((n) => n.severity === 'error')).toBe(true);
    expect(text.stderr.trim()).not.toBe('');
  }
  return { text, json, notices: json.json.notices };
}

/** A real folder that a test may shape itself (links, folders in the way) and look into afterwards. */
export async function inFolder(files: Files, act: (folder: string, medlarHere: (...argv: string[]) => Promise<Run>) => Promise<void>): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'medlar-hostile-'));
  try {
    for (const [name, text] of Object.entries(files)) {
      mkdirSync(dirname(join(folder, name)), { recursive: true });
      writeFileSync(join(folder, name), text);
    }
    await act(folder, async (...argv) => {
      let stdout = '';
      let stderr = '';
      const code = await run(argv, { cwd: folder, today: TODAY, out: (t) => { stdout += t; }, err: (t) => { stderr += t; }, stdin: () => Promise.resolve('') });
      return { code, stdout, stderr, json: (argv.includes('--json') && stdout ? JSON.parse(stdout) : null) as Answer };
    });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** No temporary file is left anywhere in the folder. */
export const leftovers = (folder: string): string[] => readdirSync(folder, { recursive: true }).map(String).filter((f) => f.includes('.tmp'));
