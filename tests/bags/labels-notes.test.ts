// How a label was taken is told beside the answer; only a mistake stops it.
import { describe, expect, test } from 'vitest';
import { judge } from '../../src/page/judge.ts';
import type { Judging } from '../../src/page/judge.ts';
import { medlar } from '../medlar.ts';

describe('notes on bags that are typed', () => {
  // Blood meal holds 10 to 15 % nitrogen (materials.md 1.2): without numbers on the label that is told.
  test.each([['weigh', ['1 lb N', 'Blood meal']], ['blend', ['Blood meal', '0-0-60']], ['shop', ['--need', '1 lb N', 'Blood meal']]] as const)('%s gives them with its answer, and in words', async (command, args) => {
    const run = await medlar([command, ...args, '--json']);
    expect(run.code).toBe(0);
    const [note] = run.json.notices;
    expect([note?.code, note?.severity, note?.file, note?.text.includes('10–15 % N')]).toEqual(['material-spread', 'note', undefined, true]);
    const text = await medlar([command, ...args]);
    expect([text.code, text.stdout.includes(note!.text), text.stderr]).toEqual([0, true, '']);
  });
  test('a label with its numbers has none', async () => { expect((await medlar(['weigh', '1 lb N', 'Blood meal 12-0-0', '--json'])).json.notices).toEqual([]); });
  test('a mistake still stops it', async () => {
    const run = await medlar(['weigh', '1 lb N', 'Bat guano', '--json']);
    expect([run.code, run.json.result, run.json.notices.map((n) => n.code)]).toEqual([3, null, ['material-bag-only']]);
  });
});

describe('in the page', () => {
  const ctx = { language: 'en-US', system: 'us', today: () => '2026-03-14', seen: () => ({ orchard: null, zones: [], plan: null, where: { country: 'US', state: null } }) } as unknown as Judging;
  test.each([['Blood meal, 5 lb, $12', false], ['Compost, 1 cu ft, $6', false], ['Blood meal, -3 lb', true], ['Bat guano, 5 lb', true], ['Iron sulphate, 5 lb, $9', true]])('%s is a mistake: %s', (label, mistaken) => {
    expect(judge(ctx, [label]).mistakes.length > 0).toBe(mistaken);
  });
});
