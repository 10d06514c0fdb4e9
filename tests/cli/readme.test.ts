// What README shows of the sample is what the sample says today.
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { run } from '../../src/cli/main.ts';

test('the printed plan', async () => {
  const readme = readFileSync('README.md', 'utf8');
  const block = /`… plan --folder samples\/chapel-bank --today 2026-03-14` says:\n\n```\n([\s\S]*?)```/.exec(readme)![1]!;
  let said = '';
  await run(['plan', '--folder', 'samples/chapel-bank', '--today', '2026-03-14'], { cwd: process.cwd(), today: '2026-03-14', out: (t) => { said += t; }, err: () => undefined, stdin: () => Promise.resolve('') });
  expect(block.split('\n').length).toBeGreaterThan(8);
  expect(said.startsWith(block)).toBe(true);
});
