// A table as one reader's lines, asked of the reader of tables itself: each value in words of its own, with its sample. How labs lay their tables out is practice.
import { describe, expect, test } from 'vitest';
import { readGrid } from '../../src/soil/grid.ts';
import { readReport } from '../../src/soil/read.ts';
import { linesOf } from '../../src/soil/text.ts';
import { wordsOf } from '../../src/soil/vocabulary.ts';
import type { Language } from '../../src/tables/name-set.ts';

const plain = (text: string): string => text.replace(/\s+/g, ' ').replace(/(?: \|)+ ?$/, '').trim();
/** "Front: P ppm | 42": the rows of a table with their samples; then how many lines it takes and whose heads nobody knows. */
const grid = (text: string, language: Language | null = null): unknown => {
  const g = readGrid(linesOf(text), 0, wordsOf(language));
  return g && [g.rows.map((r) => `${r.sample === null ? '' : `${r.sample}: `}${r.lines.map((l) => plain(l.text)).join('; ')}`.trim()), g.length, g.strange.map((c) => c.text).join(', '), g.commas];
};
const table = (rows: string[], length: number, strange = '', commas = false): unknown[] => [rows, length, strange, commas];

describe('names across the page', () => {
  test.each<[string, string, unknown]>([
    ['in bars', 'Sample | P ppm | K ppm\nFront | 42 | 180\nBack | 12 | 90\n', table(['Front: P ppm | 42; K ppm | 180', 'Back: P ppm | 12; K ppm | 90'], 3)], ['in commas', 'Sample,P ppm,K ppm\nFront,42,180', table(['Front: P ppm | 42; K ppm | 180'], 2, '', true)], ['in semicolons', 'Sample;P ppm;K ppm\nFront;42;180', table(['Front: P ppm | 42; K ppm | 180'], 2)], ['in tabs', 'Sample\tP ppm\tK ppm\nFront\t42\t180', table(['Front: P ppm | 42; K ppm | 180'], 2)], ['in gaps', 'Sample   P ppm   K ppm\nFront    42      180', table(['Front: P ppm | 42; K ppm | 180'], 2)],
    ['one item where samples are named', 'Sample | P ppm\nFront | 42', table(['Front: P ppm | 42'], 2)], ['else two', 'Foo | P ppm\nFront | 42', null], ['without samples', 'P ppm | K ppm\n42 | 180', table(['P ppm | 42; K ppm | 180'], 2)], ['a ratio is left out', 'Sample | P ppm | Ca:Mg | K ppm\nFront | 42 | 6 | 180', table(['Front: P ppm | 42; K ppm | 180'], 2)], ['a strange column with numbers', 'Sample | P ppm | Foo | K ppm\nFront | 42 | 6 | 180', table(['Front: P ppm | 42; K ppm | 180'], 2, 'Foo')], ['with words', 'Sample | P ppm | Foo | K ppm\nFront | 42 | dry | 180', table(['Front: P ppm | 42; K ppm | 180'], 2)], ['an older value', 'Sample | P ppm | Previous | K ppm\nFront | 42 | 6 | 180', table(['Front: P ppm | 42; K ppm | 180'], 2)], ['a year over a column', 'Sample | P ppm | Crop 2025 | K ppm\nFront | 42 | dry | 180', table(['Front: P ppm | 42; K ppm | 180'], 2)], ['another number', 'Sample | P ppm | Crop 25 | K ppm\nFront | 42 | dry | 180', null],
    ['a rule below the heads', 'Sample | P ppm | K ppm\n--- | --- | ---\nFront | 42 | 180', table(['Front: P ppm | 42; K ppm | 180'], 3)], ['a rule between rows', 'Sample | P ppm | K ppm\nFront | 42 | 180\n-----\nBack | 12 | 90', table(['Front: P ppm | 42; K ppm | 180', 'Back: P ppm | 12; K ppm | 90'], 4)], ['units below', 'Sample | P | K\n | ppm | mg/kg\nFront | 42 | 180', table(['Front: P | 42 ppm; K | 180 mg/kg'], 3)], ['methods too', 'Sample | P | K\n | Olsen | Olsen\n | ppm | ppm\nFront | 42 | 180', table(['Front: P | 42 Olsen ppm; K | 180 Olsen ppm'], 4)], ['a blank line before them', 'Sample | P | K\n\n | ppm | ppm\nFront | 42 | 180', table(['Front: P | 42 ppm; K | 180 ppm'], 4)], ['a pH in its unit', 'Sample | LBC | K\n | ppm CaCO3/pH | ppm\nFront | 352 | 180', table(['Front: LBC | 352 ppm CaCO3/pH; K | 180 ppm'], 3)],
    ['a word of the value beside it', 'Sample | P ppm | P rating | K ppm\nFront | 42 | high | 180', table(['Front: P ppm | 42 | high; K ppm | 180'], 2)], ['a number that nobody can place', 'Sample | P ppm | P rating | K ppm\nFront | 42 | 5 | 180', table(['Front: P ppm | 42; K ppm | 180'], 2, 'P rating')], ['a word without a value', 'Sample | P ppm | P rating | K ppm\nFront | | high | 180', table(['Front: P ppm | | high; K ppm | 180'], 2)], ['an index and a rating', 'Sample | P ppm | Index | Rating | K ppm | Index | Rating\nFront | 42 | 3 | high | 180 | 2 | low', table(['Front: P ppm | 42 | index 3 | high; K ppm | 180 | index 2 | low'], 2)], ['an empty cell', 'Sample | P ppm | K ppm\nFront | | 180', table(['Front: K ppm | 180'], 2)],
    ['one remark among four', 'Sample | P ppm | K ppm | Zn ppm | Cu ppm\nFront | 42 | see the next page please | 2 | 1', table(['Front: P ppm | 42; K ppm | see the next page please; Zn ppm | 2; Cu ppm | 1'], 2)], ['one of three', 'Sample | P ppm | K ppm | Zn ppm\nFront | 42 | see the next page please | 2', null], ['a name for a value', 'Sample | P ppm | K ppm\nFront | 42 | zinc', null], ['a row of words ends it', 'Sample | P ppm | K ppm\nFront | 42 | 180\nThanks for all\nBack | 12 | 90', table(['Front: P ppm | 42; K ppm | 180'], 2)], ['a row of more cells ends it', 'Sample | P ppm | K ppm\nFront | 42 | 180\nBack | 12 | 90 | 3 | 4', table(['Front: P ppm | 42; K ppm | 180'], 2)], ['a row of one cell less', 'Sample | P ppm | K ppm\nFront | 42', table(['Front: P ppm | 42'], 2)],
    ['classes behind values', 'Plot   P ppm   K ppm\nA      42   H   180   VL', table(['A: P ppm | 42 | high; K ppm | 180 | very low'], 2)], ['a limit and a class', 'Plot   P ppm   K ppm\nA      <42   M+   180   L-', table(['A: P ppm | <42 | medium; K ppm | 180 | low'], 2)], ['no class', 'Plot   P ppm   K ppm\nA      42   Q   180   Q', null], ['numbers for samples', 'Sample | 1 | 2\nP ppm | 42 | 12', table(['sample 1: P ppm | 42', 'sample 2: P ppm | 12'], 2)], ['three figures are none', 'Sample | 1 | 123\nP ppm | 42 | 12', null],
    ['a unit drawn over columns', 'Sample    P ppm     Ca        Mg\n                    ----- meq/100g -----\nFront     20        3.5       1.2', table(['Front: P ppm | 20; Ca | 3.5 meq/100g; Mg | 1.2 meq/100g'], 3)], ['columns of three told by a row of kinds', 'Sample   P       K       Mg\n         ppm  Rating  ppm  Rating  ppm  Rating\nFront    42   high    180  low  90  VH', table(['Front: P | 42 ppm | high; K | 180 ppm | low; Mg | 90 ppm | very high'], 3)], ['of two', 'Sample   P       K\n         ppm  Rating  ppm  Rating\nFront    42   high    180  low', table(['Front: P | 42 ppm | high; K | 180 ppm | low'], 3)],
  ])('%s', (_, text, expected) => { expect(grid(text)).toEqual(expected); });
  test('in German', () => { expect(grid('Probe   P mg/100g   K mg/100g\nVorn    12   B   20   C', 'de')).toEqual(table(['Vorn: P mg/100g | 12 | klasse B; K mg/100g | 20 | klasse C'], 2)); });
});

describe('names down the page', () => {
  test.each<[string, string, unknown]>([
    ['results and units', 'Test | Result | Unit\nP | 42 | ppm\nK | 180 | ppm', table(['P | 42 ppm', 'K | 180 ppm'], 3)], ['a unit in the head', 'Test | Result (ppm)\nP | 42', table(['P | 42 ppm'], 2)], ['its own goes before', 'Test | Result (ppm) | Unit\nP | 42 | mg/kg', table(['P | 42 mg/kg'], 2)], ['a method in the head', 'Test | Result (Olsen)\nP | 42', table(['P | Olsen | 42'], 2)], ['a column of methods', 'Test | Method | Result\nP | Olsen | 42\nK | by hand | 180', table(['P | Olsen | 42', 'K | 180 | by hand'], 3)], ['ranges', 'Test | Result | Range\nP | 42 | (30-50)\nK | 180 | --', table(['P | 42 | (range 30-50 )', 'K | 180'], 3)], ['a range from a point', 'Test | Result | Range\nZn ppm | 2 | .5-.9', table(['Zn ppm | 2 | (range .5-.9)'], 2)], ['ends of a range', 'Test | Result | Low | High\nP | 42 | 30 | 50\nK | 180 | 120 |\nZn | 2 | | (4)', table(['P | 42 | (range 30-50)', 'K | 180 | (range >120)', 'Zn | 2 | (range <4)'], 4)], ['an index', 'Test | Result | Index\nP ppm | 42 | 3', table(['P ppm | 42 | index 3'], 2)], ['a rating', 'Test | Result | Rating\nP ppm | 42 | low', table(['P ppm | 42 | low'], 2)],
    ['a row without a name', 'Test | Result\nP ppm | 42\n | 38', table(['P ppm | 42', ''], 3)], ['an unknown name', 'Test | Result\nP ppm | 42\nFoo | 38', table(['P ppm | 42', ''], 3)], ['more unknown than known', 'Test | Result\nP ppm | 42\nFoo | 38\nBar | 7', null], ['a strange column', 'Test | Result | Foo\nP ppm | 42 | 7', table(['P ppm | 42'], 2, 'Foo')], ['of words', 'Test | Result | Foo\nP ppm | 42 | dry', table(['P ppm | 42'], 2)], ['of years', 'Test | Result 2025\nP ppm | 42', table(['P ppm | 42'], 2)], ['of two years', 'Test | 2024 | 2025\nP ppm | 42 | 38', null], ['a head with a number', 'Test | Result | 5 - 6\nP ppm | 42 | 7', null], ['a blank line in bars goes on', 'Test | Result\nP ppm | 42\n\nK ppm | 180', table(['P ppm | 42', 'K ppm | 180'], 4)], ['in gaps it ends', 'Test     Result\nP ppm    42\n\nK ppm    180', table(['P ppm | 42'], 2)], ['but above the first row', 'Test     Result\n\nP ppm    42', table(['P ppm | 42'], 3)],
    ['a column a sample', 'Test | Front | Back\nP ppm | 42 | 12', table(['Front: P ppm | 42', 'Back: P ppm | 12'], 2)], ['one of them empty', 'Test | Front | Back\nP ppm | 42 |', table(['Front: P ppm | 42', 'Back: P ppm'], 2)], ['with units and methods', 'Test | Front | Back | Unit | Method | Range\nP | 42 | 12 | ppm | Olsen | 30-50', table(['Front: P | Olsen | 42 ppm | (range 30-50)', 'Back: P | Olsen | 12 ppm | (range 30-50)'], 2)], ['an unknown row', 'Test | Front | Back\nP ppm | 42 | 12\nFoo | 3 | 5', table(['Front: P ppm | 42', 'Back: P ppm | 12', 'Front: Foo | 3', 'Back: Foo | 5'], 3)], ['an unknown row of words', 'Test | Front | Back\nP ppm | 42 | 12\nFoo | x | 5', table(['Front: P ppm | 42', 'Back: P ppm | 12', 'Front:', 'Back: Foo | 5'], 3)],
    ['kinds under samples', 'Nutrient | Top mg/l | Top index | East mg/l | East index\nP | 18 | 2 | 9 | 0', table(['Top: P | 18 mg/l | index 2', 'East: P | 9 mg/l | index 0'], 2)], ['two rows of heads', 'Nutrient | Top | | East |\nx | mg/l | Index | mg/l | Index\nP | 18 | 2 | 9 | 0', table(['Top: P | 18 mg/l | index 2', 'East: P | 9 mg/l | index 0'], 3)], ['a rule between them', 'Nutrient | Top | | East |\n---|---|---|---|---\nx | mg/l | Index | mg/l | Index\nP | 18 | 2 | 9 | 0', table(['Top: P | 18 mg/l | index 2', 'East: P | 9 mg/l | index 0'], 4)],
    ['marks', 'Test | Low | Medium | High\nP | | x |\nK | 42 | |', table(['P | Medium', 'K | 42 | Low'], 3)], ['two marks are limits', 'Test | Low | Medium | High\nP | 20 | 40 |', table(['P'], 2)], ['a stroke is no mark', 'Test | Low | Medium | High\nP | - | x | -', table(['P | Medium'], 2)], ['a bar that ends under its word', 'Test        Low    Medium   High\nP 42 ppm    xxxxxxxxxx\nK 180 ppm   xxx', table(['P 42 ppm | Medium', 'K 180 ppm | Low'], 3)], ['a mark beside its result', 'Test     Result    Low    Medium   High\nP ppm    42                x', table(['P ppm | 42 | Medium'], 2)],
  ])('%s', (_, text, expected) => { expect(grid(text)).toEqual(expected); });
});

describe('a kit\'s table, one blank between', () => {
  test.each<[string, string, unknown]>([
    ['its heads', 'Area pH N P\nSouth bed 6.7 0 4', table(['South bed: pH | 6.7; N | 0; P | 4'], 2)], ['steps with words', 'pH N P\n6.7/good 0/depleted 4/surplus', table(['pH | 6.7 | good; N | index 0 | depleted; P | index 4 | surplus'], 2)], ['two rows', 'pH N P\n6.7 0 4\n6.5 <1 >3', table(['pH | 6.7; N | 0; P | 4', 'pH | 6.5; N | <1; P | >3'], 3)], ['a row of other things ends it', 'pH N P\n6.7 0 4\nall is well', table(['pH | 6.7; N | 0; P | 4'], 2)],
    ['two heads', 'Area pH N\nBed 6.7 1', null], ['a number in the head', 'Area 1 pH N P\nBed 6.7 1 4', null], ['an unknown head among them', 'pH N foo P\n6.7 1 4 5', null], ['a number for a name', 'Area pH N P\n7 6.7 1 4', null], ['too few', 'pH N P\n6.7 1', null], ['no number', 'pH N P\n6.7 x 4', null], ['no row', 'pH N P\n', null],
  ])('%s', (_, text, expected) => { expect(grid(text)).toEqual(expected); });
});

test('what is no table', () => { expect(['Phosphorus 42 ppm', 'P | 42', 'Sample | P ppm | K ppm', 'Sample | P ppm | K ppm\nall is well', 'Dear | customer\nP | 42', ''].map((text) => grid(text))).toEqual(Array(6).fill(null)); });

test('a rating behind an index is the value\'s', () => {
  expect(readReport('Sample | P ppm | Index | Rating | K ppm | Index | Rating\nFront | 42 | 3 | high | 180 | 2 | low\n', 'r.txt').samples[0]!.readings.map((r) => [r.item, r.value, r.unit, r.index, r.lab.rating])).toEqual([['phosphorus', 42, 'ppm', 3, 'high'], ['potassium', 180, 'ppm', 2, 'low']]);
});

test('of a table each value is shown as its cell has it, a lone one as its line has it', () => {
  const shown = (text: string): unknown => readReport(text, 'r.txt').samples.map((s) => [s.name, s.readings.map((r) => r.asPrinted)]);
  expect(shown('pH | P ppm | K ppm\n6.2 | 40 | 120\n')).toEqual([['sample 1', ['6.2', '40', '120']]]);
  expect(shown('Sample | pH | P ppm\nFront | 6.2 | 40\n')).toEqual([['Front', ['6.2', '40']]]);
  expect(shown('Test | Front | Back\npH | 6.2 | 6.4\n')).toEqual([['Front', ['6.2']], ['Back', ['6.4']]]);
  expect(shown('Test | Result\npH | 6.2\nP ppm | 40\n')).toEqual([['sample 1', ['pH | 6.2', 'P ppm | 40']]]);
});

test('a row whose value is told as impossible is not listed as unread besides', () => {
  const { samples, notices } = readReport('Test | Result\npH | 55\nPhosphorus ppm | 40\n', 'r.txt');
  expect([samples[0]!.unread, notices.map((n) => n.code)]).toEqual([[], ['ph-impossible']]);
});

test('an index as a unit of its own', () => {
  const units = (text: string): unknown => readReport(text, 'r.txt').samples.map((s) => [s.name, s.readings.map((r) => [r.item, r.value, r.unit].join(' '))]);
  expect(units('Nutrient | Unit | Front | Back\nP | index | 2 | 3\nMg | mg/l | 60 | 90\n')).toEqual([['Front', ['phosphorus 2 index', 'magnesium 60 mg/L']], ['Back', ['phosphorus 3 index', 'magnesium 90 mg/L']]]);
  expect(units('Nutrient | Unit | Result\nP | index | 2\nK | Index | 1\npH | | 6.4\n')).toEqual([['sample 1', ['phosphorus 2 index', 'potassium 1 index', 'ph 6.4 pH']]]);
});
