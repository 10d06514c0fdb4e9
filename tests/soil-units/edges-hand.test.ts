// A report typed by hand, asked a line at a time: where each line goes, what it is taken for, and what `undo` brings back. The forms of the lines are the program's own, as its help shows them.
import { describe, expect, test } from 'vitest';
import type { Hand } from '../../src/soil/hand.ts';
import { answer, answerLine, labAnswer, labOf, openHand, questionsOf, reportOf, typeLine, undo } from '../../src/soil/hand.ts';

const hand = (text: string): Hand => openHand('r.txt', text);
/** What the hand answers to a line, and the text then. */
const typed = (text: string, line: string): unknown[] => {
  const { hand: next, reply } = typeLine(hand(text), line);
  return [reply.is, next.text];
};

describe('a line is put where it belongs', () => {
  test.each<[string, string, string, string, string]>([
    ['a value behind those that stand there', 'Zinc 2 ppm\n', 'Boron 1 ppm', 'read', 'Zinc 2 ppm\nBoron 1 ppm\n'], ['before blank lines at the end', 'Zinc 2 ppm\n\n\n', 'Boron 1 ppm', 'read', 'Zinc 2 ppm\nBoron 1 ppm\n'], ['in the place of its empty line', 'Zinc:\nBoron:\n', 'Zinc 2 ppm', 'read', 'Zinc 2 ppm\nBoron:\n'], ['signs of control are blanks', 'Zinc 2 ppm\n', '  Boron\u00071\u0000ppm\u2028', 'read', 'Zinc 2 ppm\nBoron 1 ppm\n'],
    ['two values in a line fill no empty one', 'Zinc:\n', 'Zinc 2 ppm, boron 1 ppm', 'read', 'Zinc:\nZinc 2 ppm, boron 1 ppm\n'], ['a unit for all is its own line at the end', 'Zinc 2\n', 'zinc unit: ppm', 'read', 'Zinc 2\nzinc unit: ppm\n'],
    ['units of two whose names end alike', 'Calcium 900\nMagnesium 90\ncalcium unit: ppm\n', 'magnesium unit: ppm', 'read', 'Calcium 900\nMagnesium 90\ncalcium unit: ppm\nmagnesium unit: ppm\n'],
    ['a day', 'Zinc 2 ppm\n', 'taken: 2025-11-03', 'kept', 'Zinc 2 ppm\ntaken: 2025-11-03\n'], ['a day in the place of another', 'taken: 2025-11-02\nZinc 2 ppm\n', 'taken: 2025-11-03', 'kept', 'taken: 2025-11-03\nZinc 2 ppm\n'], ['a day in the place of its empty line', 'taken:\nZinc 2 ppm\n', 'Taken: 2025-11-03', 'kept', 'Taken: 2025-11-03\nZinc 2 ppm\n'],
    ['the same again', 'Zinc 2 ppm\n', 'zinc 2 ppm', 'same', 'Zinc 2 ppm\n'], ['nothing', 'Zinc 2 ppm\n', '  ', 'unread', 'Zinc 2 ppm\n'], ['chatter', 'Zinc 2 ppm\n', 'we had a fine day out there, all of us', 'unread', 'Zinc 2 ppm\n'], ['a value that cannot be', 'Zinc 2 ppm\n', 'pH 64', 'wrong', 'Zinc 2 ppm\n'], ['another value', 'Zinc 2 ppm\n', 'Zinc 3 ppm', 'twice', 'Zinc 2 ppm\n'],
  ])('%s', (_, text, line, is, then) => { expect(typed(text, line)).toEqual([is, then]); });
});

describe('another value of what stands there', () => {
  const twice = (text: string, line: string): unknown => {
    const { reply } = typeLine(hand(text), line);
    return reply.is === 'twice' ? [reply.line, reply.there, reply.typed, reply.either?.text ?? null] : reply.is;
  };
  test('either may stand', () => {
    expect(twice('Boron 1 ppm\nZinc 2 ppm\n', 'Zinc 3 ppm')).toEqual([2, 'Zinc 2 ppm', 'Zinc 3 ppm', 'Boron 1 ppm\nZinc 3 ppm\n']);
    expect(twice('Boron 1 ppm, zinc 2 ppm, iron 9 ppm\n', 'Zinc 3 ppm')).toEqual([1, 'zinc 2 ppm', 'Zinc 3 ppm', expect.stringMatching(/^Boron 1 ppm, Zinc 3 ppm/)]);
    const reply = typeLine(hand('Zinc 2 ppm\n'), 'Zinc 3 ppm').reply;
    expect(reply.is === 'twice' && reply.either && undo(reply.either)).toMatchObject({ hand: { text: 'Zinc 2 ppm\n' }, typed: 'Zinc 3 ppm' });
  });
});

describe('what was typed last goes back', () => {
  test('one line after the other', () => {
    const one = typeLine(hand(''), 'Zinc 2 ppm').hand;
    const two = typeLine(one, 'Boron 1 ppm').hand;
    expect(two.past.map((p) => p.typed)).toEqual(['Zinc 2 ppm', 'Boron 1 ppm']);
    const back = undo(two)!;
    expect([back.typed, back.hand.text, undo(back.hand)!.typed, undo(undo(back.hand)!.hand)]).toEqual(['Boron 1 ppm', one.text, 'Zinc 2 ppm', null]);
  });
  test('a sample gone to is no line typed', () => {
    const open = hand('Sample 1\nZinc 2 ppm\nSample 2\n');
    const there = typeLine(open, 'sample 1').hand;
    expect([open.sample, there.sample, there.past]).toEqual([1, 0, []]);
    const more = typeLine(there, 'Boron 1 ppm').hand;
    expect([more.text, undo(more)!.hand.sample]).toEqual(['Sample 1\nZinc 2 ppm\nBoron 1 ppm\nSample 2\n', 0]);
  });
});

describe('samples', () => {
  test.each<[string, string, number]>([
    ['none', 'Zinc 2 ppm\n', 0], ['one', 'Sample 1\nZinc 2 ppm\n', 0], ['the first that is empty', 'Sample 1\nZinc 2 ppm\nSample 2\nSample 3\n', 1], ['one with a form that nobody filled in', 'Sample 1\nZinc 2 ppm\nSample 2\n# a remark\nZinc:\n\nSample 3\n', 1], ['else the last', 'Sample 1\nZinc 2 ppm\nSample 2\nZinc 3 ppm\n', 1], ['"Sample depth" is none', 'Sample depth: 6 in\nSample 1\nZinc 2 ppm\nSample 2\nZinc 2 ppm\n', 1],
  ])('the lines go under %s', (_, text, sample) => { expect(hand(text).sample).toBe(sample); });
  test('a new one stands at the end, one that is there is gone to', () => {
    const text = 'Sample #1: Top strip\nZinc 2 ppm\nSample #2: Low strip\nZinc 3 ppm\n';
    const to = (line: string): unknown => {
      const { hand: next, reply } = typeLine(hand(text), line);
      return [reply.is, reply.is === 'sample' && reply.name, next.sample, next.text === text];
    };
    expect([to('Sample #1: Top strip'), to('sample 1'), to('SAMPLE 2'), to('Sample #2')]).toEqual([['sample', expect.anything(), 0, true], ['sample', expect.anything(), 0, true], ['sample', expect.anything(), 1, true], ['sample', expect.anything(), 1, true]]);
    expect([typed(text, 'Sample 3'), typeLine(hand(text), 'Sample 3').hand.sample]).toEqual([['sample', `${text}Sample 3\n`], 2]);
    expect(typed(text, 'Zinc 4 ppm')[0]).toBe('twice');
    expect(typed(text, 'Boron 1 ppm')).toEqual(['read', `${text}Boron 1 ppm\n`]);
  });
  test('a line about the sample stands in it', () => {
    const there = typeLine(hand('Sample 1\ntaken: 2025-11-02\nZinc 2 ppm\nSample 2\ntaken: 2025-11-02\nZinc 2 ppm\n'), 'Sample 2').hand;
    expect(typeLine(there, 'taken: 2025-11-03').hand.text).toBe('Sample 1\ntaken: 2025-11-02\nZinc 2 ppm\nSample 2\ntaken: 2025-11-03\nZinc 2 ppm\n');
  });
});

describe('the laboratory', () => {
  test('by its line, the last counts', () => {
    expect(['Zinc 2 ppm\n', 'lab: Any Lab\n', 'laboratory = Any Lab \n', 'Lab: unknown\n', 'lab: I don\'t know\n', 'lab: A\nlab: B\n', 'lab:\n', 'labour: x\n'].map((text) => labOf({ text }))).toEqual([null, 'Any Lab', 'Any Lab', 'unknown', 'unknown', 'B', null, null]);
  });
  test('is no line of the report', () => { expect(reportOf(hand('lab: Phosphorus 42 ppm\nZinc 2 ppm\n')).samples.flatMap((s) => s.readings.map((r) => r.item))).toEqual(['zinc']); });
  test('that nobody knows answers what is asked', () => {
    const { hand: next, reply } = typeLine(hand('Phosphorus 42 ppm\n'), 'lab: unknown');
    expect([reply, next.text, questionsOf(next).filter((q) => q.code === 'method-missing')]).toEqual([{ is: 'lab', named: 'unknown', lines: ['phosphorus method: unknown'] }, 'Phosphorus 42 ppm\nlab: unknown\nphosphorus method: unknown\n', []]);
    expect(typeLine(hand('Phosphorus 42 ppm\nlab: unknown\n'), 'Zinc 2 ppm').hand.text).toBe('Phosphorus 42 ppm\nlab: unknown\nZinc 2 ppm\nphosphorus method: unknown\n');
  });
  test('what a grower may answer', () => {
    expect(['', ' ', 'unknown', 'no idea', 'None.', 'no', 'I don\'t know'].map(labAnswer)).toEqual(Array(7).fill({ is: 'unknown' }));
    expect([labAnswer('Olsen'), labAnswer('cal'), labAnswer('Mehlich 3'), labAnswer('Olsen and others'), labAnswer('My neighbour\u0007'), labAnswer('no idea whose')]).toEqual([{ is: 'method', method: 'olsen' }, { is: 'method', method: 'cal' }, { is: 'method', method: 'mehlich-3' }, { is: 'other', named: 'Olsen and others' }, { is: 'other', named: 'My neighbour' }, { is: 'other', named: 'no idea whose' }]);
  });
});

test('a question is answered by a line', () => {
  const open = hand('Calcium 900\nPhosphorus 42 ppm\n');
  const asked = questionsOf(open);
  expect(asked.map((q) => [q.code, q.about])).toEqual(expect.arrayContaining([['unit-missing', 'calcium'], ['method-missing', 'phosphorus']]));
  const lines = asked.map((q) => answerLine(q, q.code === 'unit-missing' ? 'ppm' : 'unknown'));
  expect(lines).toEqual(expect.arrayContaining(['calcium unit: ppm', 'phosphorus method: unknown']));
  const next = answer(open, asked.find((q) => q.code === 'unit-missing')!, 'ppm')!;
  expect([next.text, next.past.map((p) => p.typed), undo(next)!.hand.text]).toEqual(['Calcium 900\nPhosphorus 42 ppm\ncalcium unit: ppm\n', ['calcium unit: ppm'], open.text]);
  const [unclear] = questionsOf(hand('Phosphorus\nPotassium\nMagnesium\n42\n180\n'));
  expect([unclear!.code, answerLine(unclear!, 'x'), answer(open, unclear!, 'x')]).toEqual(['layout-unclear', null, null]);
  const about = { ...asked[0]!, code: 'method-missing' as const };
  expect([answerLine({ ...about, about: 'buffer-ph' }, 'smp'), answerLine({ ...about, about: 'ph' }, 'unknown')].map((l) => l!.split(' method: ')[0])).toEqual(['buffer pH', 'pH']);
});
