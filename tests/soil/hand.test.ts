// A report typed by hand: what each line does to the text. Expected lines are written out; methods of laboratories are typed again from the pages named.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Hand } from '../../src/soil/hand.ts';
import { answer, finish, isUnfinished, labAnswer, labOf, openHand, questionsOf, typeLab, typeLine, undo, unfinished } from '../../src/soil/hand.ts';
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
