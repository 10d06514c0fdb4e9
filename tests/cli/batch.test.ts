// `plan --batch`, a filter of orchards: each line's answer is that of `plan --json` in a folder of the same files; order, bad lines, and memory.
import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { folderOf } from '../browser/orchards.ts';
import { medlar } from '../medlar.ts';

const lines = (text: string): any[] => text.trimEnd().split('\n').map((l) => JSON.parse(l));
const lineOf = (files: Readonly<Record<string, string>>, today?: string): string => `${JSON.stringify({ files, ...(today ? { today } : {}) })}\n`;
const batch = async (input: string): Promise<any[]> => lines((await medlar(['plan', '--batch'], {}, input)).stdout);

test('each line as in a folder of its own, in order', { timeout: 60_000 }, async () => {
  const folders = Array.from({ length: 25 }, (_, i) => folderOf(500 + i));
  const answers = await batch(folders.map((f) => lineOf(f)).join(''));
  expect(answers).toHaveLength(folders.length);
  for (const [i, files] of folders.entries()) expect([i, answers[i]]).toEqual([i, (await medlar(['plan', '--json'], files)).json]);
});

describe('lines that are wrong', () => {
  const good = folderOf(501);
  test.each([['nonsense', 'batch-line'], ['[]', 'batch-line'], ['null', 'batch-line'], ['{"files":{"orchard.yaml":7}}', 'batch-line'], ['{"files":{}}', 'orchard-empty'], ['{"files":{"orchard.yaml":"trees: 3"}}', 'value-misshapen'],
    ['{"files":{"orchard.yaml":"trees:\\n  A: apple\\n"},"today":"soon"}', 'date-wrong'], ['{"files":{"__proto__":{"x":1},"orchard.yaml":"trees:\\n  A: aple\\n"}}', 'batch-line'], ['{"files":{"orchard.yaml":"soil:\\n  a: ../../etc/passwd\\ntrees:\\n  A: apple, a\\n"}}', 'path-outside']])('%s', async (line, code) => {
    const [before, bad, after] = await batch(`${lineOf(good)}${line}\n${lineOf(good)}`);
    expect([bad.ok, bad.result, bad.notices.map((n: { code: string }) => n.code)]).toEqual([false, null, expect.arrayContaining([code])]);
    expect(before.ok).toBe(true);
    expect(after).toEqual(before);
  });
  test('blank lines, and a last line without its end', async () => {
    expect(await batch(`\n\n${lineOf(good)}\r\n${lineOf(good).trimEnd()}`)).toHaveLength(2);
  });
  test('today for one line alone; a language for one line alone', async () => {
    const [march, april, german, english] = await batch([lineOf(good), lineOf(good, '2026-04-20'), lineOf({ 'orchard.yaml': 'language: de\ntrees:\n  A: aple\n' }), lineOf({ 'orchard.yaml': 'trees:\n  A: aple\n' })].join(''));
    expect(march.result).toEqual((await medlar(['plan', '--json'], good)).json.result);
    expect(april.result).toEqual((await medlar(['plan', '--json', '--today', '2026-04-20'], good)).json.result);
    expect(german.notices[0].text).not.toBe(english.notices[0].text);
  });
});

test('a line without end is passed over, and memory stays flat', { timeout: 120_000 }, async () => {
  const child = spawn(process.execPath, ['--max-old-space-size=96', fileURLToPath(new URL('../../dist/medlar.js', import.meta.url)), 'plan', '--batch'], { stdio: ['pipe', 'pipe', 'inherit'] });
  let said = '';
  let answers = 0;
  child.stdout.on('data', (chunk: Buffer) => {
    said = (said + chunk.toString()).slice(-400);
    answers += chunk.toString().split('\n').length - 1;
  });
  const done = new Promise<number | null>((resolve) => { child.on('close', resolve); });
  const put = (text: string): Promise<void> => new Promise((resolve) => { if (child.stdin.write(text)) resolve(); else child.stdin.once('drain', resolve); });
  const tiny = lineOf({ 'orchard.yaml': 'where: Ohio, US\ntrees:\n  A: apple, planted 2019\nstore:\n  - 21-0-0, 4 lb, $9\n' }, '2026-03-14');
  // 300 MB on one line, in a heap of 96.
  for (let i = 0; i < 300; i++) await put('x'.repeat(1_000_000));
  await put('\n');
  for (let i = 0; i < 300; i++) await put(tiny);
  child.stdin.end();
  expect(await done).toBe(0);
  expect(answers).toBe(301);
  expect(said.endsWith('}}}\n')).toBe(true);
});
