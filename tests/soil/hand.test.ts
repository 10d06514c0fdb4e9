// A report typed by hand: what each line does to the text. Expected lines are written out; methods of laboratories are typed again from the pages named.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Hand } from '../../src/soil/hand.ts';
import { answer, answerLine, labAnswer, labOf, openHand, questionsOf, reportOf, typeLab, typeLine, undo } from '../../src/soil/hand.ts';
import { finish, isUnfinished, unfinished } from '../../src/soil/unfinished.ts';
import { readReport } from '../../src/soil/read.ts';
import { methodCalled } from '../../src/soil/vocabulary.ts';
import type { Item, Method } from '../../src/tables/items.ts';
import { LABS, labMethods, labNamed, labsNamed, methodName, methodsOf } from '../../src/tables/labs.ts';
import { MARKS } from '../../src/reason/figure.ts';
import { sourceOf } from '../../src/tables/sources.ts';

const start = (text = ''): Hand => openHand('soil/2025.txt', text);
const typed = (...lines: readonly string[]): Hand => lines.reduce((h, l) => typeLine(h, l).hand, start());
const textOf = (hand: Hand): string[] => hand.text.trimEnd().split('\n');
const kinds = (...lines: readonly string[]): string[] => {
  let hand = start();
  return lines.map((l) => {
    const turn = typeLine(hand, l);
    hand = turn.hand;
    return turn.reply.is;
  });
};

describe('a typed line', () => {
  test('a value is kept as it was typed', () => {
    const { hand, reply } = typeLine(start(), '  P 42 ppm high ');
    expect(textOf(hand)).toEqual(['P 42 ppm high']);
    expect(reply).toMatchObject({ is: 'read', readings: [{ item: 'phosphorus', value: 42, unit: 'ppm', lab: { rating: 'high' } }] });
  });

  test('what is not understood is not kept', () => {
    const hand = typed('pH 6.4', 'Thank you for your order', 'Organic matter three %', '');
    expect(textOf(hand)).toEqual(['pH 6.4']);
    expect(kinds('Thank you for your order', 'Organic matter three %', 'pH 64')).toEqual(['unread', 'wrong', 'wrong']);
  });

  test('a day, a depth and a method are kept', () => {
    expect(kinds('taken: 3 Nov 2025', 'depth: 6 in', 'phosphorus method: Olsen')).toEqual(['kept', 'kept', 'kept']);
    expect(textOf(typed('phosphorus method: Olsen', 'P 12 ppm', 'phosphorus method: Bray 1'))).toEqual(['phosphorus method: Bray 1', 'P 12 ppm']);
  });

  test('the same value again changes nothing', () => {
    const { hand, reply } = typeLine(typed('pH 6.4', 'P 42 ppm'), 'P 42 ppm');
    expect([textOf(hand), reply]).toEqual([['pH 6.4', 'P 42 ppm'], { is: 'same', line: 2 }]);
  });

  test('another value of an item asks, and takes its place', () => {
    const { hand, reply } = typeLine(typed('pH 6.4', 'P 24 ppm', 'K 180 ppm'), 'P 42 ppm');
    expect(textOf(hand)).toEqual(['pH 6.4', 'P 24 ppm', 'K 180 ppm']);
    expect(reply).toMatchObject({ is: 'twice', there: 'P 24 ppm', typed: 'P 42 ppm' });
    expect(textOf((reply as unknown as { either: Hand }).either)).toEqual(['pH 6.4', 'P 42 ppm', 'K 180 ppm']);
  });

  test('in a line of several values only its own gives way', () => {
    const { reply } = typeLine(typed('P 24 ppm, K 180 ppm'), 'P 42 ppm');
    const { either } = reply as unknown as { either: Hand | null };
    expect(either && textOf(either)).toEqual(['P 42 ppm, K 180 ppm']);
  });

  test('a word typed later joins its value', () => {
    const { hand, reply } = typeLine(typed('P 42 ppm'), 'Phosphorus: high');
    expect(textOf(hand)).toEqual(['P 42 ppm', 'Phosphorus: high']);
    expect(reply).toMatchObject({ is: 'read', readings: [{ item: 'phosphorus', value: 42, lab: { rating: 'high' } }] });
  });

  test('two values of one item in one line are a mistake of that line', () => {
    const { hand, reply } = typeLine(start(), 'P 42 ppm, P 43 ppm');
    expect([hand.text, reply]).toMatchObject(['', { is: 'wrong', notices: [{ code: 'reading-twice', place: { line: 1 } }] }]);
  });

  test('a cell of a table is changed by hand', () => {
    const { reply } = typeLine(start('Sample,P,K\n1,42,180\n'), 'P 43');
    expect(reply).toEqual({ is: 'twice', line: 2, there: '42', typed: 'P 43', either: null });
  });

  test('what was told of an earlier line is not told again', () => {
    // "Kali" is the oxide to a German lab, which is told once.
    const first = typeLine(start(), 'Kali 27 mg/100 g');
    const second = typeLine(first.hand, 'Magnesium 9 mg/100 g');
    expect([first, second].map(({ reply }) => reply.is === 'read' && reply.notices.map((n) => n.code))).toEqual([['form-meant'], []]);
  });

  test('a line without a colon takes no other\'s place', () => {
    expect(textOf(typed('pH 6.4', 'P 42 ppm', 'Sampled 3 Nov 2025'))).toEqual(['pH 6.4', 'P 42 ppm', 'Sampled 3 Nov 2025']);
  });

  test('nothing that a terminal obeys is kept', () => {
    expect(textOf(typeLine(start(), 'pH\u001b[2J 6.4').hand).join()).not.toMatch(/[\u0000-\u001f]/);
    expect(textOf(typed('pH 6.4\u0000'))).toEqual(['pH 6.4']);
  });

  test('undo goes back one line, an answer with all that followed of it', () => {
    const before = typed('P 42 ppm', 'K 180 ppm');
    const told = typeLab(before, 'Penn State').hand;
    expect(textOf(told)).toEqual(['P 42 ppm', 'K 180 ppm', 'lab: Penn State', 'phosphorus method: Mehlich 3', 'potassium method: Mehlich 3']);
    expect(textOf(undo(told)!.hand)).toEqual(textOf(before));
    expect(undo(told)!.typed).toBe('lab: Penn State');
    expect(undo(start('pH 6.4\n'))).toBeNull();
  });
});

describe('the lab', () => {
  test('named first, it says the method of what follows', () => {
    expect(textOf(typed('lab: Clemson', 'P 168 lb/acre', 'K 221 lb/acre', 'pH 5.1'))).toEqual(['lab: Clemson', 'P 168 lb/acre', 'phosphorus method: Mehlich 1', 'K 221 lb/acre', 'potassium method: Mehlich 1', 'pH 5.1']);
  });

  test('a method that the paper prints stands', () => {
    expect(textOf(typed('lab: Penn State', 'P 12 ppm (Olsen)'))).toEqual(['lab: Penn State', 'P 12 ppm (Olsen)']);
    expect(textOf(typed('phosphorus method: Olsen', 'P 12 ppm', 'lab: Penn State'))).toEqual(['phosphorus method: Olsen', 'P 12 ppm', 'lab: Penn State']);
  });

  test('a salt pH is said so', () => {
    expect(textOf(typed('lab: Missouri', 'pH 5.9'))).toEqual(['lab: Missouri', 'pH 5.9', 'pH method: CaCl2']);
  });

  test('unknown answers what is asked, now and later', () => {
    const hand = typeLab(typed('P 42 ppm'), 'unknown').hand;
    expect(textOf(hand)).toEqual(['P 42 ppm', 'lab: unknown', 'phosphorus method: unknown']);
    expect(textOf(typeLine(hand, 'K 180 ppm').hand)).toEqual(['P 42 ppm', 'lab: unknown', 'phosphorus method: unknown', 'K 180 ppm', 'potassium method: unknown']);
    expect(questionsOf(typeLine(hand, 'K 180 ppm').hand)).toEqual([]);
  });

  test('however it is spaced, at the start of a line alone', () => {
    expect(['lab:Rutgers', '  Lab :  Rutgers ', 'Laboratory = Rutgers\r', 'Collab: Rutgers', 'Our lab: Rutgers', 'lab:', 'lab: ?', 'pH 6.4'].map((text) => labOf({ text }))).toEqual(['Rutgers', 'Rutgers', 'Rutgers', null, null, null, 'unknown', null]);
    expect(textOf(typed('P 42 ppm', 'Laboratory=Clemson'))).toEqual(['P 42 ppm', 'lab: Clemson', 'phosphorus method: Mehlich 1']);
  });

  test('says the method of what it changes alone', () => {
    // Missouri: calcium by ammonium acetate, pH in CaCl2; North Carolina: pH in water.
    expect(textOf(typed('lab: Missouri', 'Calcium 900 ppm', 'Organic matter 3 %'))).toEqual(['lab: Missouri', 'Calcium 900 ppm', 'Organic matter 3 %']);
    expect(textOf(typed('lab: North Carolina', 'pH 6.4'))).toEqual(['lab: North Carolina', 'pH 6.4']);
    expect(textOf(typed('lab: Penn State', 'K: high'))).toEqual(['lab: Penn State', 'K: high']);
    expect(typeLab(typed('Buffer pH 6.8'), 'Missouri').reply).toEqual({ is: 'lab', named: 'Missouri', lines: ['buffer pH method: Woodruff'] });
    expect(typeLab(typed('Zinc 2 ppm'), 'Penn State').reply).toEqual({ is: 'lab', named: 'Penn State', lines: [] });
  });

  test('unknown answers no other question', () => {
    expect(textOf(typed('lab: unknown', 'Mg 231', 'pH 6.4', 'P 42 ppm'))).toEqual(['lab: unknown', 'Mg 231', 'pH 6.4', 'P 42 ppm', 'phosphorus method: unknown']);
  });

  test('named anew, it takes the old one\'s place', () => {
    const hand = typed('P 42 ppm', 'lab: unknown', 'lab: Rutgers');
    expect(labOf(hand)).toBe('Rutgers');
    expect(textOf(hand)[1]).toBe('lab: Rutgers');
  });

  test.each<[string, unknown]>([
    ['', { is: 'unknown' }], ["don't know", { is: 'unknown' }], ['?', { is: 'unknown' }], ['no idea', { is: 'unknown' }], ['None.', { is: 'unknown' }], ['NO', { is: 'unknown' }], ['\t?\u0007', { is: 'unknown' }],
    ['Nova Soils', { is: 'other', named: 'Nova Soils' }], ['I have no idea', { is: 'other', named: 'I have no idea' }], ['none of these', { is: 'other', named: 'none of these' }], [' Joe\u0007\u0007s\tSoils ', { is: 'other', named: 'Joe s Soils' }], ['Calcium Soils', { is: 'other', named: 'Calcium Soils' }], ['Labs of SoCal', { is: 'other', named: 'Labs of SoCal' }],
    ['Penn State', { is: 'labs', names: ['Penn State'] }], ['pa', { is: 'labs', names: ['Penn State'] }], ['Rutgers soil testing lab, NJ', { is: 'labs', names: ['Rutgers'] }],
    ['Oregon', { is: 'labs', names: ['western Oregon', 'eastern Oregon'] }], ['Mehlich 3', { is: 'method', method: 'mehlich-3' }], ['CAL', { is: 'method', method: 'cal' }],
    ['Joe\'s Soils, Virginia', { is: 'other', named: 'Joe\'s Soils, Virginia' }], ['Olsen Laboratories', { is: 'other', named: 'Olsen Laboratories' }],
  ])('%s', (said, is) => { expect(labAnswer(said)).toEqual(is); });

  test('questions are answered by plain lines', () => {
    let hand = typed('Mg 231', 'P 42 ppm');
    for (const [about, choice] of [['magnesium', 'ppm'], ['phosphorus', 'modified-morgan']] as const) hand = answer(hand, questionsOf(hand).find((q) => q.about === about)!, choice)!;
    expect(textOf(hand)).toEqual(['Mg 231', 'P 42 ppm', 'magnesium unit: ppm', 'phosphorus method: Modified Morgan']);
    expect(questionsOf(hand)).toEqual([]);
  });
});

describe('the form of a new orchard', () => {
  const FORM = '# How to fill it in.\n\nSample 1: lower terrace\ntaken:\npH:\nPhosphorus (P):\n\nSample 2: top strip\ntaken:\npH:\nPhosphorus (P):\n\n# By which method, if the report names one, or "unknown":\nphosphorus method:\n';
  test('each value takes the place of its name, in its sample', () => {
    let hand = start(FORM);
    for (const l of ['taken: 3 Nov 2025', 'pH 6.4', 'P 42 ppm', 'K 180 ppm', 'Sample 2', 'pH 5.9', 'P 12 ppm', 'phosphorus method: Olsen']) hand = typeLine(hand, l).hand;
    expect(hand.text).toBe('# How to fill it in.\n\nSample 1: lower terrace\ntaken: 3 Nov 2025\npH 6.4\nP 42 ppm\nK 180 ppm\n\nSample 2: top strip\ntaken:\npH 5.9\nP 12 ppm\n\n# By which method, if the report names one, or "unknown":\nphosphorus method: Olsen\n');
  });
  test('going on, the first empty sample is next', () => {
    const half = FORM.replace('pH:', 'pH 6.4');
    expect([start(FORM).sample, start(half).sample]).toEqual([0, 1]);
  });
});

describe('samples', () => {
  const names = (...lines: readonly string[]): unknown[] => {
    let hand = start();
    return lines.map((l) => {
      const { hand: next, reply } = typeLine(hand, l);
      hand = next;
      return reply.is === 'sample' ? [reply.name, next.sample] : reply.is;
    });
  };
  test('named anew, gone back to by name or number', () => {
    expect(names('Sample 1: lower terrace', 'pH 6.4', 'sample 2 = Top strip', 'pH 5.9', 'Sample #3')).toEqual([['lower terrace', 0], 'read', ['Top strip', 1], 'read', ['3', 2]]);
    expect(names('Sample 1: lower terrace', 'Sample: top strip', 'Sample #3', 'Sample A', 'SAMPLE 1', 'Sample: TOP STRIP', 'Sample 3', 'sample: a', 'sample: Lower terrace', 'Sample top strip', 'Sample 1: Lower terrace').slice(4)).toEqual([['lower terrace', 0], ['top strip', 1], ['3', 2], ['Sample A', 3], ['lower terrace', 0], ['top strip', 1], ['lower terrace', 0]]);
    expect(names('Sample 1: lower terrace', 'Sample 11', 'Sample: terrace')).toEqual([['lower terrace', 0], ['Sample 11', 1], ['terrace', 2]]);
  });
  test('a line about the sample is no heading of one', () => {
    expect(names('Sample depth: 6 in', 'Sample date: 3 Nov 2025', 'Sample taken 3 Nov 2025', 'Sample weight: 500 g', 'Samples: 2', 'Soil sample', 'Sample 1: pH 6.4')).toEqual(['kept', 'kept', 'kept', 'unread', 'unread', 'unread', 'read']);
  });
  test('values go under their sample, before the gap behind it', () => {
    const hand = typed('Sample A', 'pH 6.4', 'Sample B', 'pH 5.9', 'Sample A', 'P 42 ppm', 'taken: 3 Nov 2025', 'Sample B', 'P 12 ppm');
    expect(textOf(hand)).toEqual(['Sample A', 'pH 6.4', 'P 42 ppm', 'taken: 3 Nov 2025', 'Sample B', 'pH 5.9', 'P 12 ppm']);
    expect(undo(undo(hand)!.hand)).toMatchObject({ typed: 'taken: 3 Nov 2025', hand: { sample: 0 } });
  });
  test('a blank sample holds remarks and names alone', () => {
    const second = (...lines: readonly string[]): number => start(['Sample 1: a', 'pH 6.4', 'Sample 2: b', ...lines, 'Sample 3: c', 'pH 7'].join('\n')).sample;
    expect([second(), second('', '# A remark', '   ', '  pH:', 'Phosphorus (P):  '), second('pH: 6'), second('P 42 ppm')]).toEqual([1, 1, 2, 2]);
  });
  test('a value stays where its name in the form would change its method', () => {
    expect(textOf(typeLine(start('Mehlich 3\nPhosphorus:\nOlsen\nZinc 2 ppm\n'), 'P 42 ppm').hand)).toEqual(['Mehlich 3', 'Phosphorus:', 'Olsen', 'Zinc 2 ppm', 'P 42 ppm']);
  });
});

/** What a line does to a text, typed into its n-th sample. */
const into = (lines: readonly string[], line: string, sample = 0): [lines: string[], reply: unknown] => {
  const { hand, reply } = typeLine({ ...start(lines.join('\n')), sample }, line);
  return [textOf(hand), reply];
};

describe('where a line goes', () => {
  test.each<[string, readonly string[], string, number, readonly string[]]>([
    ['at the end, behind no blanks', ['pH 6.4', '   '], 'P 42 ppm', 0, ['pH 6.4', 'P 42 ppm']],
    ['at the end, where there is one sample', ['Sample 1: a', 'pH 6.4', '', '# End of the paper.'], 'P 42 ppm', 0, ['Sample 1: a', 'pH 6.4', '', '# End of the paper.', 'P 42 ppm']],
    ['before a gap of blanks', ['Sample A', 'pH 6.4', '   ', 'Sample B', 'pH 5.9'], 'P 42 ppm', 0, ['Sample A', 'pH 6.4', 'P 42 ppm', '   ', 'Sample B', 'pH 5.9']],
    ['under a heading that stands further in, from Windows', ['  Sample 1: a\r', 'pH 6.4\r', '  Sample 2: b\r', 'pH 5.9'], 'P 42 ppm', 0, ['  Sample 1: a\r', 'pH 6.4\r', 'P 42 ppm', '  Sample 2: b\r', 'pH 5.9']],
    ['a day, in its own sample', ['Sample A', 'taken: 3 Nov 2025', 'pH 6.4', 'Sample B', 'taken: 4 Nov 2025', 'pH 5.9'], 'taken: 5 Nov 2025', 1, ['Sample A', 'taken: 3 Nov 2025', 'pH 6.4', 'Sample B', 'taken: 5 Nov 2025', 'pH 5.9']],
    ['a day, at the end of its own sample', ['Sample A', 'pH 6.4', 'Sample B', 'taken: 4 Nov 2025', 'pH 5.9'], 'taken: 5 Nov 2025', 0, ['Sample A', 'pH 6.4', 'taken: 5 Nov 2025', 'Sample B', 'taken: 4 Nov 2025', 'pH 5.9']],
    ['a day, in the place of the one before, however it is spaced', ['taken: 3 Nov 2025', 'pH 6.4'], 'TAKEN : 4 Nov 2025', 0, ['TAKEN : 4 Nov 2025', 'pH 6.4']],
    ['a day, in no remark\'s place', ['# taken: when?', 'pH 6.4'], 'taken: 3 Nov 2025', 0, ['# taken: when?', 'pH 6.4', 'taken: 3 Nov 2025']],
    ['a method, at the end of all', ['Sample A', 'pH 6.4', '', 'Sample B', 'pH 5.9'], 'phosphorus method : Olsen', 0, ['Sample A', 'pH 6.4', '', 'Sample B', 'pH 5.9', 'phosphorus method : Olsen']],
    ['a method, in the place of the one before, in whose sample it may be', ['Sample A', 'phosphorus method: Olsen', 'P 42 ppm', '', 'Sample B', 'pH 5.9'], 'phosphorus method: Bray 1', 1, ['Sample A', 'phosphorus method: Bray 1', 'P 42 ppm', '', 'Sample B', 'pH 5.9']],
    ['a lab, at the end of all', ['Sample A', 'pH 6.4', '', 'Sample B', 'pH 5.9'], 'lab: Rutgers', 0, ['Sample A', 'pH 6.4', '', 'Sample B', 'pH 5.9', 'lab: Rutgers']],
    ['into its blank, the first line', ['pH:', 'Phosphorus:'], 'pH 6.4', 0, ['pH 6.4', 'Phosphorus:']],
    ['into its blank with blanks behind, past remarks and what says something', ['# Phosphorus, as printed:', 'Phosphorus: see next page', 'Phosphorus:   '], 'P 42 ppm', 0, ['# Phosphorus, as printed:', 'Phosphorus: see next page', 'P 42 ppm']],
    ['into the blank of its own sample', ['Sample A', 'pH:', 'Zinc:', '', 'Sample B', 'pH:', 'Zinc:'], 'pH 5.9', 1, ['Sample A', 'pH:', 'Zinc:', '', 'Sample B', 'pH 5.9', 'Zinc:']],
    ['into no other sample\'s blank', ['Sample A', 'pH 6.4', '', 'Sample B', 'pH 5.9', 'Zinc:'], 'Zinc 2 ppm', 0, ['Sample A', 'pH 6.4', 'Zinc 2 ppm', '', 'Sample B', 'pH 5.9', 'Zinc:']],
    ['two values take nobody\'s blank', ['Phosphorus:', 'Potassium:'], 'P 42 ppm, K 180 ppm', 0, ['Phosphorus:', 'Potassium:', 'P 42 ppm, K 180 ppm']],
    ['a word of a value takes its blank too', ['Phosphorus:', 'Potassium:', 'P 42 ppm, K 180 ppm'], 'Phosphorus: high', 0, ['Phosphorus: high', 'Potassium:', 'P 42 ppm, K 180 ppm']],
    ['of a lab, only what changes the value', ['lab: Germany'], 'Magnesium 9 mg/100 g', 0, ['lab: Germany', 'Magnesium 9 mg/100 g']],
  ])('%s', (_, before, line, sample, after) => { expect(into(before, line, sample)[0]).toEqual(after); });
  test('its value is told at that place, and so is what there is to say', () => {
    expect(into(['pH:', 'Kali:'], 'Kali 27 mg/100 g')[1]).toMatchObject({ readings: [{ item: 'potassium', place: { line: 2 } }], notices: [{ code: 'form-meant', place: { line: 2, column: 1 } }] });
    expect(into(['Kali:'], 'Kali 27 mg/100 g')[1]).toMatchObject({ readings: [{ place: { line: 1 } }], notices: [{ place: { line: 1 } }] });
    // The blank stands below the gap; and a word tells of the line of its value.
    expect(into(['Sample A', 'pH:', '', 'Phosphorus:', '', 'Sample B', 'pH:'], 'P 42 ppm')).toMatchObject([['Sample A', 'pH:', '', 'P 42 ppm', '', 'Sample B', 'pH:'], { readings: [{ place: { line: 4, column: 1, source: 'P 42 ppm' } }] }]);
    expect(into(['P 42 ppm', 'pH 6.4'], 'Phosphorus: high')[1]).toMatchObject({ readings: [{ place: { line: 1 } }] });
  });
  test('a heading gone to by its name, from the first', () => {
    expect(into(['  Sample 1: a\r', 'pH 6.4', '  Sample 2: b\r', 'pH 5.9'], 'Sample B')[1]).toEqual({ is: 'sample', name: 'b' });
    expect(into([], 'Sample pH 6.4')).toMatchObject([['Sample pH 6.4'], { is: 'read', readings: [{ item: 'ph', value: 6.4 }] }]);
  });
});

describe('what stands there already', () => {
  const TWO = ['Sample A', 'pH 6.4', 'Zinc 2 ppm', '', 'Sample B', 'pH 5.9', 'Zinc 2 ppm'];
  test.each<[string, readonly string[], string, number, unknown]>([
    ['nothing', ['pH 6.4'], ' \u0007 ', 0, { is: 'unread' }],
    ['the same of that item', ['pH 6.4', 'K 42 ppm', 'P 42 ppm'], 'P 42 ppm', 0, { is: 'same', line: 3 }],
    ['the same, in its own sample', TWO, 'Zinc 2 ppm', 1, { is: 'same', line: 7 }],
    ['the same, in the first sample', TWO, 'Zinc 2 ppm', 0, { is: 'same', line: 3 }],
    ['the same, where another value stands above', TWO, 'pH 5.9', 1, { is: 'same', line: 6 }],
    ['chatter, in the second sample', TWO, 'Thank you for your order', 1, { is: 'unread' }],
    ['a day, below chatter', ['Dear grower', 'pH 6.4'], 'taken: 3 Nov 2025', 0, { is: 'kept' }],
    ['the same mistake', ['pH 6.4', 'Phosphorus 4l ppm'], 'Phosphorus 4l ppm', 0, { is: 'wrong', notices: [{ code: 'not-a-number', place: { line: 3 } }] }],
    ['a doubt without a value', [], 'Phosphorus in the topsoil 42 ppm', 0, { is: 'wrong', notices: [{ code: 'line-unclear' }] }],
    ['another value, in its own sample', TWO, 'Zinc 3 ppm', 1, { is: 'twice', line: 7, there: 'Zinc 2 ppm', either: { text: `${[...TWO.slice(0, 6), 'Zinc 3 ppm'].join('\n')}\n` } }],
    ['another value, below the gap', ['Sample A', 'pH 6.4', '', 'P 24 ppm', '', 'Sample B', 'pH 6'], 'P 42 ppm', 0, { is: 'twice', line: 4, there: 'P 24 ppm', either: { text: 'Sample A\npH 6.4\n\nP 42 ppm\n\nSample B\npH 6\n' } }],
    ['another value, with a word before its name', ['low P 24 ppm'], 'P 42 ppm', 0, { is: 'twice', there: 'low P 24 ppm', either: { text: 'P 42 ppm\n' } }],
    ['the second value of its line', ['P 24 ppm, K 180 ppm'], 'K 200 ppm', 0, { is: 'twice', there: 'K 180 ppm', either: { text: 'P 24 ppm, K 200 ppm\n' } }],
    ['a value beside a new one', ['P 24 ppm, K 180 ppm'], 'P 42 ppm, Zinc 2 ppm', 0, { is: 'twice', line: 1, there: 'P 24 ppm', either: null }],
    // All of the line stands there with other values: that opens no sample.
    ['other values of two lines', ['pH 6.4', 'P 24 ppm', 'K 180 ppm'], 'P 42 ppm, K 200 ppm', 0, { is: 'twice', line: 2, there: 'P 24 ppm', either: null }],
    ['other values, in the second sample', ['Sample A', 'pH 6', 'P 24 ppm', '', 'Sample B', 'pH 5', 'P 20 ppm'], 'P 30 ppm, pH 6.2', 1, { is: 'twice', line: 6, there: 'pH 5', either: null }],
  ])('%s', (_, before, line, sample, reply) => {
    const [lines, said] = into(before, line, sample);
    expect(said).toMatchObject(reply as object);
    if ((reply as { is: string }).is !== 'kept') expect(lines.join('\n')).toBe(before.join('\n').trimEnd());
  });
  test('a row of a table, or a year of its own, opens a sample', () => {
    expect(into(['Sample,pH,P', '1,6.4,42'], '2,5.9,12')[1]).toMatchObject({ is: 'read', readings: [{ value: 5.9 }, { value: 12 }] });
    expect(into(['pH 6.4', 'P 24 ppm'], '2024: pH 5.8, P 22 ppm')[1]).toMatchObject({ is: 'read', readings: [{ value: 5.8 }, { value: 22 }] });
  });
});

test('a lab is no line of the report, the remark of a file half typed is one of words, and no line answers a layout', () => {
  expect(reportOf(typed('pH 6.4', 'lab: Rutgers')).samples.map((s) => s.unread)).toEqual([[]]);
  expect(unfinished('pH 6.4\n')).toMatch(/^pH 6\.4\n# [A-Z][^\n]{20,}\n$/);
  const asked = (code: 'layout-unclear' | 'unit-missing' | 'method-missing'): Parameters<typeof answerLine>[0] => ({ code, about: 'potassium', facts: {}, choices: [], changes: 'changes-p-and-k' });
  expect([answerLine(asked('unit-missing'), 'ppm'), answerLine(asked('method-missing'), 'mehlich-3'), answerLine(asked('layout-unclear'), 'ppm'), answer(start(), asked('layout-unclear'), 'ppm')]).toEqual(['potassium unit: ppm', 'potassium method: Mehlich 3', null, null]);
  const told = answer(typed('Mg 231'), { ...asked('unit-missing'), about: 'magnesium' }, 'ppm')!;
  expect([textOf(told), undo(told)]).toMatchObject([['Mg 231', 'magnesium unit: ppm'], { typed: 'magnesium unit: ppm', hand: { text: 'Mg 231\n' } }]);
  expect(textOf(typed('pH\u0007\u00076.4'))).toEqual(['pH 6.4']);
  expect(['Olsen, SoCal', 'Calcium by Olsen'].map((text) => labAnswer(text).is)).toEqual(['other', 'other']);
});

test('any lines at all: no fault, no half-taken line, and undo is exact', () => {
  const word = fc.constantFrom('P', 'K 180', 'ppm', 'pH', '6.4', 'high', 'lab:', 'Penn State', 'Sample 2:', 'method:', 'phosphorus', 'unit', '#', 'unknown', '-', '42', 'mg/kg', 'undo', ':', 'taken');
  const line = fc.oneof(fc.array(word, { minLength: 1, maxLength: 6 }).map((w) => w.join(' ')), fc.string({ maxLength: 60 }));
  fc.assert(fc.property(fc.array(line, { maxLength: 6 }), (lines) => {
    let hand = start();
    for (const l of lines) {
      const next = typeLine(hand, l);
      expect(next.hand.text === '' || next.hand.text.endsWith('\n')).toBe(true);
      expect(finish(unfinished(next.hand.text))).toBe(next.hand.text);
      expect([isUnfinished(unfinished(next.hand.text)), isUnfinished(next.hand.text)]).toEqual([true, false]);
      if (next.hand.past.length > hand.past.length) expect(undo(next.hand)!.hand).toMatchObject({ text: hand.text, sample: hand.sample, past: hand.past });
      else expect(next.hand.text).toBe(hand.text);
      hand = next.hand;
    }
    // Nothing that would stop a plan stands in the file.
    if (hand.text !== '') expect(readReport(hand.text, 'f').notices.filter((n) => n.severity === 'error' && n.code !== 'nothing-read')).toEqual([]);
  }), { numRuns: 60 });
});

describe('laboratories', () => {
  test('every row has a known publication, and names itself alone', () => {
    for (const lab of LABS) {
      expect(sourceOf(lab.cite.source), lab.name).toBeDefined();
      expect(MARKS).toContain(lab.cite.mark);
      expect(labNamed(lab.name)?.name).toBe(lab.name);
      // A row that was only recalled says so, and one that was read has something read in it.
      expect(Object.keys(lab.methods).length > 0, lab.name).toBe(lab.cite.mark === 'read');
    }
    expect(new Set(LABS.map((l) => l.name)).size).toBe(LABS.length);
  });

  test('its line is no value of a report', () => {
    for (const { name } of LABS) expect(readReport(`pH 6.4\nlab: ${name}\n`, 'f').samples.flatMap((s) => s.readings.map((r) => r.item)), name).toEqual([labMethods(name)?.ph === 'cacl2' ? 'ph-salt' : 'ph']);
  });

  test('each method reads back as it is written', () => {
    const written = new Set<Method>(LABS.flatMap((l) => Object.values(methodsOf(l))));
    for (const method of written) expect([method, methodCalled(methodName(method))]).toEqual([method, method]);
  });

  // Typed again from the pages.
  test.each<[string, Partial<Record<Item, Method>>]>([
    // Penn State Agronomy Guide, part 1 section 2: pH water, acidity Mehlich buffer, P, K, Mg, Ca Mehlich 3.
    ['Pennsylvania', { ph: 'water', 'buffer-ph': 'mehlich-buffer', phosphorus: 'mehlich-3', potassium: 'mehlich-3', magnesium: 'mehlich-3', calcium: 'mehlich-3' }],
    // University of Delaware, nutrient recommendations, table 1: Delaware and Rutgers Mehlich 3, Virginia Tech Mehlich 1.
    ['University of Delaware', { phosphorus: 'mehlich-3', potassium: 'mehlich-3' }], ['Rutgers', { phosphorus: 'mehlich-3', potassium: 'mehlich-3' }], ['Virginia Tech', { phosphorus: 'mehlich-1', potassium: 'mehlich-1' }],
    // Clemson, "What is a soil extractant?": Mehlich-1 in Virginia, Georgia, South Carolina; Mehlich-3 in Kentucky and North Carolina.
    ['Georgia', { phosphorus: 'mehlich-1', potassium: 'mehlich-1' }], ['Clemson', { phosphorus: 'mehlich-1', potassium: 'mehlich-1' }], ['Kentucky', { phosphorus: 'mehlich-3', potassium: 'mehlich-3' }], ['North Carolina', { ph: '1:1', phosphorus: 'mehlich-3', potassium: 'mehlich-3' }],
    // University of Missouri, soil test procedures.
    ['Missouri', { ph: 'cacl2', 'buffer-ph': 'woodruff', 'organic-matter': 'loi', phosphorus: 'bray-1', potassium: 'ammonium-acetate', calcium: 'ammonium-acetate', magnesium: 'ammonium-acetate' }],
    // Ontario's accredited tests, table 1.
    ['Ontario', { phosphorus: 'olsen', potassium: 'ammonium-acetate', magnesium: 'ammonium-acetate' }],
    // University of Massachusetts, sample report of 2014.
    ['UMass', { ph: '1:1', 'organic-matter': 'loi', phosphorus: 'modified-morgan', potassium: 'modified-morgan' }],
    // Soil Use and Management 32, 44: Modified Morgan's P of Scottish advisory samples.
    ['Scotland', { phosphorus: 'modified-morgan' }],
    // Ireland's index system is Morgan's; Northern Ireland's statute is Olsen P.
    ['Ireland', { phosphorus: 'morgan', potassium: 'morgan', magnesium: 'morgan' }], ['Northern Ireland', { phosphorus: 'olsen' }],
    // University of New Hampshire, soil test descriptions; Austria's orchard guideline (OENORM L 1087 is CAL).
    ['New Hampshire', { phosphorus: 'mehlich-3' }], ['Austria', { potassium: 'cal' }],
  ])('%s', (name, methods) => { expect(labMethods(name)).toMatchObject(methods); });

  test('half a name is nobody\'s', () => {
    for (const text of ['', 'Ohio', 'Carolina', 'West Virginia', 'Virginia Beach', 'Private Labs, Pennsylvania', 'New York, Pennsylvania', 'Penn State and Rutgers', 'unknown', '日本', 'a'.repeat(5000)]) expect([text.slice(0, 30), labsNamed(text)]).toEqual([text.slice(0, 30), []]);
    expect(labNamed('Arkansas')!.region).toBe('US, Arkansas');
    expect(labNamed('Österreich')!.name).toBe('Austria');
  });

  test('where a text leaves open which, only what all agree on is said', () => {
    expect(labsNamed('Oregon').map((l) => l.name)).toEqual(['western Oregon', 'eastern Oregon']);
    expect(labMethods('Oregon')).toMatchObject({ potassium: 'ammonium-acetate' });
    expect(labMethods('Oregon')).not.toHaveProperty('phosphorus');
    expect(labMethods('Nowhere Labs')).toBeNull();
  });
});
