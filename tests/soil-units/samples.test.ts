// Where one sample ends and the next begins: by what a report's reader would say of such lines (practice).
import { describe, expect, test } from 'vitest';
import type { Notice } from '../../src/reason/notice.ts';
import type { Reading } from '../../src/soil/reading.ts';
import type { Draft, Event } from '../../src/soil/samples.ts';
import { readReport } from '../../src/soil/read.ts';
import { samplesOf } from '../../src/soil/samples.ts';
import { made } from '../rating-units/made.ts';

const said = (...readings: Reading[]): Event => ({ kind: 'readings', readings });
const on = (line: number, r: Reading): Reading => ({ ...r, place: { ...r.place, line } });
const p = (value: number | null, more: Partial<Reading> = {}): Reading => made('phosphorus', value, 'ppm', more);
const k = (value: number | null, more: Partial<Reading> = {}): Reading => made('potassium', value, 'ppm', more);
const ph = (value: number): Reading => made('ph', value, 'pH');
const word = (rating: 'low' | 'high'): Partial<Reading> => ({ lab: { rating, range: null } });
const sample = (name: string): Event => ({ kind: 'sample', name });
const heading = (name: string, line = 1): Event => ({ kind: 'heading', name, line, text: `${name}:` });
const parted = (...events: Event[]): { drafts: Draft[]; notices: Notice[] } => {
  const notices: Notice[] = [];
  return { drafts: samplesOf(events, notices), notices };
};
const shape = ({ drafts, notices }: ReturnType<typeof parted>): unknown => [drafts.filter((d) => d.readings.length > 0 || d.named).map((d) => [d.name, ...d.readings.map((r) => r.value)]), notices.map((n) => n.code)];

describe('by its name', () => {
  test('a name before the first reading is that sample\'s; a name behind one opens the next', () => {
    expect(shape(parted(sample('A'), said(ph(6)), sample('B'), said(ph(7))))).toEqual([[['A', 6], ['B', 7]], []]);
    expect(shape(parted(said(ph(6)), sample('B'), said(ph(7))))).toEqual([[['', 6], ['B', 7]], []]);
    // Words alone, such as a texture, stand above the name too.
    expect(shape(parted(said(made('texture', null, null)), sample('A'), said(ph(6))))).toEqual([[['A', null, 6]], []]);
  });
  test('the same name again is the same sample', () => { expect(shape(parted(sample('A'), said(ph(6)), sample('B'), said(ph(7)), sample('A'), said(k(100))))).toEqual([[['A', 6, 100], ['B', 7]], []]); });
});

describe('by a heading', () => {
  test('what comes below has been read already: a new sample', () => {
    expect(shape(parted(heading('Front'), said(ph(6), k(100)), heading('Back', 4), said(ph(7), k(90))))).toEqual([[['Front', 6, 100], ['Back', 7, 90]], []]);
  });
  test('what comes below is new: a line like any other', () => {
    const { drafts } = parted(said(ph(6)), heading('Minor elements', 3), said(k(100)));
    expect(drafts).toMatchObject([{ name: '', readings: [{ value: 6 }, { value: 100 }], unread: [{ line: 3, text: 'Minor elements:' }] }]);
  });
  test('above a lone sample it is unread, before what else was', () => {
    const { drafts } = parted(heading('Soil test'), { kind: 'unread', line: 2, text: 'Dear grower' }, said(ph(6)));
    expect(drafts).toMatchObject([{ name: '', named: false, unread: [{ line: 1, text: 'Soil test:' }, { line: 2, text: 'Dear grower' }] }]);
  });
  test('the first of two above a sample stays, the second is unread', () => {
    const { drafts } = parted(heading('Front'), heading('Results', 2), said(ph(6)), heading('Back', 4), said(ph(7)));
    expect(drafts).toMatchObject([{ name: 'Front', named: true, unread: [{ line: 2, text: 'Results:' }] }, { name: 'Back' }]);
  });
  test('a sample that has its name keeps it', () => {
    const { drafts } = parted(sample('A'), heading('Results', 2), said(ph(6)), sample('B'), said(ph(7)));
    expect(drafts).toMatchObject([{ name: 'A', unread: [{ line: 2, text: 'Results:' }] }, { name: 'B' }]);
  });
});

describe('by the lines themselves', () => {
  test('a whole line said again', () => { expect(shape(parted(said(ph(6), k(100)), said(ph(7), k(90))))).toEqual([[['', 6, 100], ['', 7, 90]], []]); });
  test('behind a gap, a block that begins with the thing that came first', () => {
    expect(shape(parted(said(ph(6)), said(k(100)), { kind: 'gap' }, said(ph(7)), said(k(90))))).toEqual([[['', 6, 100], ['', 7, 90]], []]);
    // Without the gap, or beginning elsewhere, it is a slip.
    expect(shape(parted(said(ph(6)), said(k(100)), said(ph(7)), said(k(90))))).toEqual([[['', 6, 100]], ['reading-twice', 'reading-twice']]);
    expect(shape(parted(said(ph(6)), said(k(100)), { kind: 'gap' }, said(k(90)), said(ph(7))))).toEqual([[['', 6, 100]], ['reading-twice', 'reading-twice']]);
    // One thing alone said again behind a gap.
    expect(shape(parted(said(ph(6)), said(k(100)), { kind: 'gap' }, said(ph(7))))).toEqual([[['', 6, 100]], ['reading-twice']]);
  });
  test('the same said again is no new sample and no slip', () => { expect(shape(parted(said(ph(6), k(100)), said(ph(6), k(100))))).toEqual([[['', 6, 100]], []]); });
});

describe('one test of one thing', () => {
  const two = (a: Reading, b: Reading): unknown => shape(parted(said(on(1, a)), said(on(9, b))));
  test('two methods are two tests, and so are two extracts in brackets', () => {
    expect(two(p(20, { method: 'olsen' }), p(40, { method: 'bray-1' }))).toEqual([[['', 20, 40]], []]);
    expect(two(p(20, { tag: 'aae10' }), p(40, { tag: 'h2o10' }))).toEqual([[['', 20, 40]], []]);
    expect(two(p(20, { method: 'olsen' }), p(40, { method: 'olsen' }))).toEqual([[['', 20]], ['reading-twice']]);
  });
  test('a method told once counts for both, unless one is a charge and one a mass', () => {
    expect(two(p(20, { method: 'olsen' }), p(40))).toEqual([[['', 20]], ['reading-twice']]);
    expect(two(p(20), p(40, { method: 'olsen' }))).toEqual([[['', 20]], ['reading-twice']]);
    expect(two(made('potassium', 88, 'mg/kg', { method: 'colwell' }), made('potassium', 0.2, 'cmol/kg'))).toEqual([[['', 88, 0.2]], []]);
    // 0.2 cmol are 78 mg, and may be up to 98 before rounding: one test printed twice; 0.4 are not.
    expect(two(made('potassium', 88, 'mg/kg'), made('potassium', 0.2, 'cmol/kg'))).toEqual([[['', 88]], []]);
    expect(two(made('potassium', 88, 'mg/kg'), made('potassium', 0.4, 'cmol/kg'))).toEqual([[['', 88]], ['reading-twice']]);
    expect(two(made('potassium', 88, null, { method: 'colwell' }), made('potassium', 0.2, 'cmol/kg'))).toEqual([[['', 88]], ['reading-twice']]);
  });
  test('another value or another unit is a slip, told with both and at the second', () => {
    const { notices } = parted(said(on(1, p(20, { asPrinted: 'P 20 ppm' }))), said(on(9, p(40, { asPrinted: 'P 40 ppm' }))));
    expect(notices).toMatchObject([{ code: 'reading-twice', severity: 'error', facts: { item: 'phosphorus', first: 'P 20 ppm', line: 1, second: 'P 40 ppm' }, place: { line: 9 } }]);
    expect(two(p(20), made('phosphorus', 20, 'lb/acre'))).toEqual([[['', 20]], ['reading-twice']]);
    expect(two(p(20), p(20))).toEqual([[['', 20]], []]);
  });
  test('a word below is the word of the value above, the first word stays', () => {
    expect(parted(said(p(20)), said(p(null, word('low')))).drafts[0]!.readings).toMatchObject([{ value: 20, lab: { rating: 'low' } }]);
    expect(parted(said(p(20, word('high'))), said(p(null, word('low')))).drafts[0]!.readings).toMatchObject([{ value: 20, lab: { rating: 'high' } }]);
  });
  test('a value close below a word takes it, one further down is a slip', () => {
    const at = (line: number): ReturnType<typeof parted> => parted(said(on(1, p(null, word('low')))), said(on(line, p(20))));
    expect(at(3).drafts[0]!.readings).toMatchObject([{ value: 20, lab: { rating: 'low' } }]);
    expect(parted(said(on(1, p(null, word('low')))), said(on(2, p(20, { lab: { rating: 'high', range: [10, 30] } })))).drafts[0]!.readings).toMatchObject([{ value: 20, lab: { rating: 'high', range: [10, 30] } }]);
    expect(at(4).notices).toMatchObject([{ code: 'reading-twice' }]);
  });
});

describe('its day and its depth', () => {
  test('a weak day gives way to none', () => {
    const day = (is: string, weak: boolean): Event => ({ kind: 'taken', is, weak });
    const taken = (...events: Event[]): string | undefined => parted(...events, said(ph(6))).drafts[0]!.taken;
    expect([taken(day('2025-11-03', true)), taken(day('2025-11-03', false), day('2025-12-01', true)), taken(day('2025-12-01', true), day('2025-11-03', false)), taken(day('2025-12-01', false), day('2025-11-03', false))]).toEqual(['2025-11-03', '2025-11-03', '2025-11-03', '2025-11-03']);
    expect(parted({ kind: 'depth', is: '6 in', weak: false }, said(ph(6))).drafts[0]!.depth).toBe('6 in');
  });
  test('once and above all samples it is of each; twice, or below the first, it is not', () => {
    const day = (is: string): Event => ({ kind: 'taken', is, weak: false });
    const depth: Event = { kind: 'depth', is: '6 in', weak: false };
    const [a, b] = [[sample('A'), said(ph(6))], [sample('B'), said(ph(7))]] as const;
    const of = (...events: Event[]): unknown => parted(...events).drafts.map((d) => [d.name, d.taken, d.depth]);
    expect(of(day('2025-11-03'), depth, ...a, ...b)).toEqual([['A', '2025-11-03', '6 in'], ['B', '2025-11-03', '6 in']]);
    expect(of(...a, day('2025-11-03'), depth, ...b)).toEqual([['A', '2025-11-03', '6 in'], ['B', undefined, undefined]]);
    expect(of(day('2025-11-03'), ...a, ...b, day('2025-11-04'))).toEqual([['A', '2025-11-03', undefined], ['B', '2025-11-04', undefined]]);
    // A title above the day is no sample where samples are named; where they are not it may be the first's name.
    expect(of(heading('Soil report'), day('2025-11-03'), ...a, ...b)).toEqual([['A', '2025-11-03', undefined], ['B', '2025-11-03', undefined]]);
    expect(of(heading('Front', 1), day('2025-11-03'), said(ph(6)), heading('Back', 4), said(ph(7)))).toEqual([['Front', '2025-11-03', undefined], ['Back', undefined, undefined]]);
    expect(of(day('2025-11-03'), said(ph(6)), { kind: 'gap' }, ...b)).toEqual([['', '2025-11-03', undefined], ['B', '2025-11-03', undefined]]);
    expect(readReport('taken: 12 October 2026\nNutrient | Front | Back\npH | 6.3 | 5.9\nP ppm | 42 | 12\n', 'r.txt').samples.map((s) => [s.name, s.taken])).toEqual([['Front', '2026-10-12'], ['Back', '2026-10-12']]);
  });
  test('of its own sample', () => {
    const { drafts } = parted(sample('A'), { kind: 'depth', is: '6 in', weak: false }, said(ph(6)), sample('B'), said(ph(7)));
    expect(drafts.map((d) => d.depth)).toEqual(['6 in', undefined]);
  });
});

describe('headings, up to the next', () => {
  test('a heading over what is new parts nothing, though what was read comes further down', () => {
    expect(shape(parted(said(ph(6)), heading('Minor', 3), said(k(100)), heading('Back', 5), said(ph(7))))).toEqual([[['', 6, 100], ['Back', 7]], []]);
    expect(shape(parted(said(ph(6)), heading('Minor', 3), said(k(100)), sample('B'), said(ph(7))))).toEqual([[['', 6, 100], ['B', 7]], []]);
  });
  test('over words of what has a value, or the value of a word, it parts nothing', () => {
    expect(shape(parted(said(p(20)), heading('Notes', 3), said(p(null, word('high')))))).toEqual([[['', 20]], []]);
    expect(shape(parted(said(p(null, word('high'))), heading('Notes', 3), said(p(20))))).toEqual([[['', 20]], []]);
  });
  test('it names no sample where the next has no value', () => { expect(shape(parted(heading('Front'), said(ph(6)), sample('B')))).toEqual([[['', 6], ['B']], []]); });
});

describe('a line said again', () => {
  test('in part is a slip, with one other value or unit a new sample', () => {
    expect(shape(parted(said(ph(6), k(100)), said(ph(7), made('zinc', 2, 'ppm'))))).toEqual([[['', 6, 100, 2]], ['reading-twice']]);
    expect(shape(parted(said(ph(6), k(100)), said(ph(6), k(90))))).toEqual([[['', 6, 100], ['', 6, 90]], []]);
    expect(shape(parted(said(p(20), k(100)), said(made('phosphorus', 20, 'lb/acre'), k(100))))).toEqual([[['', 20, 100], ['', 20, 100]], []]);
  });
  test('a trace is a value: twice the same says nothing new, behind a word far above it is a slip', () => {
    const trace = p(null, { below: true });
    expect(shape(parted(said(on(1, trace)), said(on(9, trace))))).toEqual([[['', null]], []]);
    expect(shape(parted(said(on(1, p(null, word('low')))), said(on(9, trace))))).toEqual([[['', null]], ['reading-twice']]);
  });
});

test('a bare depth displaces none', () => {
  const depth = (...all: readonly [is: string, weak: boolean][]): string | undefined => parted(...all.map(([is, weak]): Event => ({ kind: 'depth', is, weak })), said(ph(6))).drafts[0]!.depth;
  expect([depth(['6 in', true]), depth(['6 in', false], ['8 in', true]), depth(['8 in', true], ['6 in', false]), depth(['8 in', false], ['6 in', false])]).toEqual(Array(4).fill('6 in'));
});

describe('methods and units told below', () => {
  const tell = (items: Partial<Record<Reading['item'], NonNullable<Reading['method']>>>, all: readonly NonNullable<Reading['method']>[] = [], unit: Reading['unit'] = null): Event => ({ kind: 'told', told: { items: new Map(Object.entries(items) as [Reading['item'], NonNullable<Reading['method']>][]), all, unit } });
  const methods = (...events: Event[]): unknown => parted(...events).drafts.map((d) => d.readings.map((r) => r.method));
  test('for all counts from one reading to another, in its own sample before others', () => {
    expect(methods(said(p(20)), tell({}, ['mehlich-3']), said(k(100)), sample('B'), said(ph(7)))).toEqual([['mehlich-3', null], [null]]);
    expect(methods(sample('A'), said(p(20)), tell({}, ['olsen']), sample('B'), said(p(30)), tell({}, ['bray-1']), sample('C'), said(p(40)))).toEqual([['olsen'], ['bray-1'], [null]]);
    expect(methods(sample('A'), said(p(20)), tell({}, ['olsen']), sample('B'), said(p(30)))).toEqual([['olsen'], ['olsen']]);
    // Two lines for all behind the same values.
    expect(methods(said(p(20), k(100)), tell({}, ['olsen']), tell({}, ['ammonium-acetate']))).toEqual([['olsen', 'ammonium-acetate']]);
  });
  test('for one item wherever it stands; what is printed beside a value stays, two that differ say nothing', () => {
    expect(methods(tell({ phosphorus: 'olsen' }), said(p(20)), said(k(100)), tell({ potassium: 'ammonium-acetate' }))).toEqual([['olsen', 'ammonium-acetate']]);
    expect(methods(sample('A'), said(p(20)), tell({ phosphorus: 'olsen' }), tell({ potassium: 'ammonium-acetate' }), sample('B'), said(p(30)))).toEqual([['olsen'], ['olsen']]);
    expect(methods(said(p(20, { method: 'bray-1' }), k(100)), tell({ phosphorus: 'olsen' }))).toEqual([['bray-1', null]]);
    expect(methods(said(p(20)), tell({ phosphorus: 'olsen' }), tell({ phosphorus: 'bray-1' }))).toEqual([[null]]);
  });
  test.each(['cacl2', 'kcl'] as const)('a pH in %s is of the salt pH where both are printed', (salt) => {
    const inSalt = made('ph-salt', 5.8, 'pH');
    expect([methods(said(ph(6.4), inSalt), tell({ ph: salt })), methods(said(ph(5.8), k(100)), tell({ ph: salt })), methods(said(ph(6.4), inSalt), tell({ ph: 'water' })), methods(said(inSalt), tell({ ph: 'smp' }))]).toEqual([[[null, salt]], [[salt, null]], [['water', null]], [[null]]]);
  });
  test('a unit is of values of elements that have none', () => {
    const units = parted(said(made('phosphorus', 20, null), made('potassium', null, null, word('low')), made('salts', 0.4, null), made('zinc', 2, 'mg/kg')), tell({}, [], 'ppm')).drafts[0]!.readings.map((r) => r.unit);
    expect(units).toEqual(['ppm', null, null, 'mg/kg']);
  });
});

// British reports print the index beside milligrams in a litre, in whichever order (RB209's own form).
test.each([['Phosphorus 18 mg/l', 'P index 2'], ['P index 2', 'Phosphorus 18 mg/l']])('%s and %s are one test told twice', (a, b) => {
  const { samples, notices } = readReport(`${a}\n${b}\n`, 'r.txt');
  expect(notices.map((n) => n.code)).not.toContain('reading-twice');
  expect(samples[0]!.readings).toEqual([expect.objectContaining({ item: 'phosphorus', value: 18, unit: 'mg/L', index: 2 })]);
});
