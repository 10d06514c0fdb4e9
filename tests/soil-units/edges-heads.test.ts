// Heads of a table's columns, asked of the functions themselves: what each column holds, whose value it says something of, and whose sample it is. How labs lay their tables out is practice.
import { describe, expect, test } from 'vitest';
import { cellsOf, nearest, under } from '../../src/soil/grid-cells.ts';
import type { Cell, Parting } from '../../src/soil/grid-cells.ts';
import { besideOf, besides, isIgnored, isItem, itemOf, labelled, lettersOf, namesIn, namesSamples, ratingOnly, roleOf, rolesOf, sampleColumn, twoRows } from '../../src/soil/grid-heads.ts';
import { wordsOf } from '../../src/soil/vocabulary.ts';
import type { Language } from '../../src/tables/name-set.ts';

const w = wordsOf(null);
/** "Top/mg/l": a head with its sample. */
const said = (cells: readonly Cell[] | null): string[] | null => cells && cells.map((c) => (c.sample === undefined ? c.text : `${c.sample}/${c.text}`));

test('a cell that names one item and holds no value', () => {
  expect(['P', 'P (ppm)', 'Phosphorus (Olsen)', 'K 0-6 in', 'K 0 to 15cm', 'Zn 10 cm', 'P mg/100 g', 'P Mehlich 3', 'Phosphorus (P)'].map((t) => itemOf(t, w))).toEqual(['phosphorus', 'phosphorus', 'phosphorus', 'potassium', 'potassium', 'zinc', 'phosphorus', 'phosphorus', 'phosphorus']);
  expect(['', 'ppm', 'P 42', 'P and K', 'Ca:Mg', 'K 0-6', 'Zn 10 m', 'Front'].map((t) => [isItem(t, w), itemOf(t, w)])).toEqual(Array(8).fill([false, null]));
  expect(['Ca:Mg', 'moisture', 'P', 'Front', ''].map((t) => isIgnored(t, w))).toEqual([true, true, false, false, false]);
  expect(['P (phosphorus)', 'P, K', 'Ca:Mg', 'Front', 'P, Ca:Mg'].map((t) => namesIn(t, w))).toEqual([1, 2, 0, 0, 1]);
});

test('a word of rating alone', () => { expect(['High', ' very high ', 'Low', 'low high', 'High P', 'High (VH)', '', 'x', 'high 3'].map((t) => ratingOnly(t, w))).toEqual([true, true, true, false, false, false, false, false, false]); });
test('what a head says its column holds', () => { expect([' Result ', '"Unit"', '*Rating*', 'METHOD', 'Result P', 'Foo', '', 'Previous result', 'Low', 'Soil test'].map(roleOf)).toEqual(['value', 'unit', 'rating', 'method', 'value', null, null, 'skip', 'low', 'value']); });

test('which column names the samples: by the plainest of its words, else the first', () => {
  expect([['Lab', 'Plot', 'Name'], ['Lab', 'Sample', 'Field'], ['Lab', 'Probe'], ['Lab', 'x'], [null, 'x'], [null, 'Plots'], ['Sampled', 'x']].map(sampleColumn)).toEqual([2, 2, 1, 0, -1, 1, 0]);
  expect(['Field', 'Sample ID', 'Parzelle', 'Bezeichnung', 'Fields', 'Fielder', 'Nutrient', ''].map(namesSamples)).toEqual([true, true, true, true, true, false, false, false]);
});

describe('a column that says something of the value in another', () => {
  const beside = (row: string): string => besideOf(cellsOf(row, '|'), w).map((b) => (b ? `${b.of} ${b.role}` : '-')).join(', ');
  test.each([
    ['Sample | K ppm | K rating', '-, -, 1 rating'], ['Sample | K rating | K ppm', '-, 2 rating, -'], ['Sample | K ppm | P ppm | K rating | P rating', '-, -, -, 1 rating, 2 rating'], ['Sample | K ppm | K % | K rating', '-, -, -, 2 rating'], ['Sample | K ppm | Zn rating', '-, -, -'],
    ['Sample | K ppm | Rating of K', '-, -, 1 rating'], ['Sample | K ppm | Rating for K', '-, -, 1 rating'], ['Sample | K ppm | K - rating:', '-, -, 1 rating'], ['Sample | K ppm | K (rating)', '-, -, 1 rating'], ['Sample | K ppm | K_rating', '-, -, 1 rating'], ['Sample | K ppm | K index', '-, -, 1 index'], ['Sample | K ppm | K range', '-, -, 1 range'], ['Sample | K ppm | K method', '-, -, 1 method'], ['Sample | K | K units', '-, -, 1 unit'], ['Sample | K ppm | K last year', '-, -, 1 skip'], ['Sample | K ppm | Previous K', '-, -, 1 skip'],
    ['Sample | Potassium level (ppm) | Zn ppm', '-, -, -'], ['Sample | K ppm | K low', '-, -, -'],
    // A bare word, where there are several, belongs to the value before it, with others between or not.
    ['Sample | P ppm | Rating | K ppm | Rating', '-, -, 1 rating, -, 3 rating'], ['Sample | P ppm | Rating | K ppm', '-, -, -, -'], ['Sample | Rating | P ppm | Rating', '-, -, -, 2 rating'], ['Sample | P ppm | Unit | K ppm | Unit', '-, -, -, -, -'], ['Sample | P ppm | Index | Rating | K ppm | Index | Rating', '-, -, 1 index, 1 rating, -, 4 index, 4 rating'], ['Sample | P ppm | P rating | Range | K ppm | K rating | Range', '-, -, 1 rating, 1 range, -, 4 rating, 4 range'], ['Sample | P ppm | Plot | Rating | K ppm | Rating', '-, -, -, -, -, 4 rating'],
  ])('%s', (row, expected) => { expect(beside(row)).toBe(expected); });
});

test('what such a cell adds to its value', () => {
  const adds = (cell: string, role: Parameters<typeof besides>[1], head: string, language: Language | null = null): string | null => besides(cell, role, head, wordsOf(language));
  expect([adds('', 'rating', 'K rating'), adds('-', 'rating', 'K rating'), adds('...', 'range', 'K range'), adds('42', 'skip', 'K previous')]).toEqual(['', '', '', '']);
  expect([adds('(30-50)', 'range', 'K range'), adds('2', 'index', 'K index'), adds('Olsen', 'method', 'K method'), adds('ppm', 'unit', 'K unit')]).toEqual([' | (range  30-50 )', ' | index 2', ' Olsen', ' ppm']);
  expect([adds('5', 'rating', 'K rating'), adds('high', 'rating', 'K rating'), adds('VH', 'rating', 'K rating'), adds('H+', 'rating', 'K rating'), adds('l-', 'rating', 'K rating'), adds('D', 'rating', 'K rating'), adds('Q', 'rating', 'K rating')]).toEqual([null, ' | high | ', ' | very high | ', ' | high | ', ' | low | ', ' | low | ', ' | Q | ']);
  expect([adds('C', 'rating', 'K Klasse', 'de'), adds('C', 'rating', 'K Status', 'de'), adds('H', 'rating', 'K Status', 'es'), adds('H', 'rating', 'K Status', 'en'), adds('c', 'rating', 'K class', 'en')]).toEqual([' | klasse C | ', ' | C | ', ' | H | ', ' | high | ', ' | klasse c | ']);
  expect([lettersOf('A', 'Gehaltsklasse'), lettersOf('F', 'Stufe'), lettersOf('G', 'Stufe'), lettersOf('AB', 'Stufe'), lettersOf('E', 'Bewertung'), lettersOf('E', 'Einstufung'), lettersOf('E', 'Beurteilung'), lettersOf('E', 'Kl'), lettersOf('E', 'Klima'), lettersOf('EX', 'x')]).toEqual(['klasse A', 'klasse F', 'G', 'AB', 'klasse E', 'klasse E', 'klasse E', 'klasse E', 'very high', 'very high']);
});

describe('heads that begin or end with the name of a sample', () => {
  const heads = (row: string): string[] | null => said(labelled(cellsOf(row, '|'), w));
  test.each<[string, string[] | null]>([
    ['Nutrient | Top mg/l | Top index | Bottom mg/l | Bottom index', ['Nutrient', 'Top/mg/l', 'Top/index', 'Bottom/mg/l', 'Bottom/index']], ['Nutrient | mg/l Top | mg/l Bottom', ['Nutrient', 'Top/mg/l', 'Bottom/mg/l']], ['Nutrient | Front value | Back value', ['Nutrient', 'Front/value', 'Back/value']], ['Nutrient | (Top) mg/l | (Bottom): mg/l', ['Nutrient', 'Top/mg/l', 'Bottom/mg/l']], ['Nutrient | mg/l, Top | mg/l, Bottom', ['Nutrient', 'Top/mg/l,', 'Bottom/mg/l,']], ['Nutrient | Old Well Field rating | East Field rating', ['Nutrient', 'Old Well Field/rating', 'East Field/rating']],
    ['Nutrient | Unit | Top value | Bottom value', ['Nutrient', 'Unit', 'Top/value', 'Bottom/value']], ['Nutrient | Method | Range | Top value | Bottom value', ['Nutrient', 'Method', 'Range', 'Top/value', 'Bottom/value']], ['Nutrient | Top value | Bottom value | Previous', ['Nutrient', 'Top/value', 'Bottom/value', 'Previous']], ['Nutrient | A value | B value', ['Nutrient', 'A/value', 'B/value']], ['Nutrient | 3 value | 4 value', null],
    ['Nutrient | Top mg/l', null], ['Nutrient | Top mg/l | Top index | Bottom mg/l', null], ['Nutrient | Top value | Bottom value | Foo', null], ['Nutrient | Top value | Bottom value | Result', null], ['Nutrient | Result | Unit', null], ['Top value | Bottom value', null], ['Nutrient | P value | K value', null], ['Nutrient | High value | Low value', null], ['Nutrient | 9 mg/l | 8 mg/l', null], [`Nutrient | ${'a '.repeat(20)}value | ${'b '.repeat(20)}value`, null],
  ])('%s', (row, expected) => { expect(heads(row)).toEqual(expected); });
  test('twenty words are the most', () => { expect(heads(`Nutrient | ${'a '.repeat(19)}value | ${'b '.repeat(19)}value`)).toEqual(['Nutrient', `${'a '.repeat(18)}a/value`, `${'b '.repeat(18)}b/value`]); });
});

describe('two rows of heads', () => {
  const rows = (top: string, low: string, by: Parting = '|'): string[] | null => said(twoRows(cellsOf(top, by), cellsOf(low, by), by, w));
  test.each<[string, string, string, string[] | null]>([
    ['samples over kinds', 'Nutrient | Top | | Bottom |', 'x | mg/l | Index | mg/l | Index', ['x', 'Top/mg/l', 'Top/Index', 'Bottom/mg/l', 'Bottom/Index']], ['names of samples over columns not their own', 'Nutrient | Top | | Bottom | East', 'x | mg/l | Index | mg/l | Index', null], ['names in the middle of their columns', 'Nutrient | | Top | | Bottom', 'x | mg/l | Index | mg/l | Index', ['x', 'Top/mg/l', 'Top/Index', 'Bottom/mg/l', 'Bottom/Index']], ['names without the empty cells between', 'Nutrient | Top | Bottom', 'x | mg/l | Index | mg/l | Index', ['x', 'Top/mg/l', 'Top/Index', 'Bottom/mg/l', 'Bottom/Index']], ['one kind each', 'Nutrient | Top | Bottom', 'Item | mg/l | mg/l', ['Item', 'Top/mg/l', 'Bottom/mg/l']], ['three', 'Nutrient | A | B | C', 'Item | value | value | value', ['Item', 'A/value', 'B/value', 'C/value']],
    ['kinds over items', 'Plot | Index | | mg/l |', 'Field | P | K | P | K', ['Field', 'P Index', 'K Index', 'P mg/l', 'K mg/l']], ['one item each is no repeat', 'Plot | Index | mg/l', 'Field | P | P', null], ['the name above', 'Plot, Index,, mg/l,', ', P, K, P, K', null], ['names twice', 'Nutrient | Top | Top', 'Item | mg/l | mg/l', null], ['no kinds below', 'Nutrient | Top | Bottom', 'Item | foo | foo', null], ['no names above', 'Nutrient | 3/ppm | Result', 'Item | mg/l | mg/l', null], ['words of rating above', 'Nutrient | Low | High', 'Item | mg/l | mg/l', null], ['a row that does not repeat', 'Nutrient | Top | Bottom', 'Item | mg/l | Index', null], ['values below', 'Nutrient | Top | Bottom', 'P | 4 | 4', null], ['none at the end', 'Nutrient | Top | Bottom', 'Item | mg/l | ', null],
  ])('%s', (_, top, low, expected) => { expect(rows(top, low)).toEqual(expected); });
  test('an empty head below is that above', () => {
    expect([rows('Nutrient,Top,Bottom', ',mg/l,mg/l', ','), rows('Nutrient,Method,Top,Bottom', ',,mg/l,mg/l', ',')]).toEqual([['Nutrient', 'Top/mg/l', 'Bottom/mg/l'], ['Nutrient', 'Method', 'Top/mg/l', 'Bottom/mg/l']]);
    expect([rows('Plot,Index,,mg/l,', ',P,K,P,K', ','), rows('Plot,mg/l,Index', ',P,P', ',')]).toEqual([['Plot', 'P Index', 'K Index', 'P mg/l', 'K mg/l'], null]);
  });
  test('in gaps, by their places', () => {
    expect(rows('Nutrient   Top             Bottom', '           mg/l   Index    mg/l   Index', ' ')).toEqual(['Nutrient', 'Top/mg/l', 'Top/Index', 'Bottom/mg/l', 'Bottom/Index']);
    expect(rows('           Top             Bottom', 'Nutrient   mg/l   Index    mg/l   Index', ' ')).toEqual(['Nutrient', 'Top/mg/l', 'Top/Index', 'Bottom/mg/l', 'Bottom/Index']);
    // "Plot" stands over "No"; "Soil" ends where that begins.
    expect(rows('    Plot   Top    Bottom', '    No     mg/l   mg/l', ' ')).toEqual(['No', 'Top/mg/l', 'Bottom/mg/l']);
    expect(rows('SoilPlot   Top    Bottom', '        No mg/l   mg/l', ' ')).toBeNull();
    expect(rows('Soil       Top    Bottom', '    No     mg/l   mg/l', ' ')).toEqual(['Soil', 'No', 'Top/mg/l', 'Bottom/mg/l']);
    expect(rows('    Soil   Top    Bottom', 'No         mg/l   mg/l', ' ')).toEqual(['No', 'Soil', 'Top/mg/l', 'Bottom/mg/l']);
  });
});

describe('the columns of a header', () => {
  const roles = (row: string, by: Parting = '|', below = ''): string | null => rolesOf(cellsOf(row, by), by, w, cellsOf(below, by))?.map((c) => c.role ?? '-').join(' ') ?? null;
  test.each<[string, string | null]>([
    ['Test | Result | Unit', 'name value unit'], ['Foo | Result', 'name value'], ['Foo | Result | Bar', 'name value -'], ['Test | ppm', 'name value'], ['Test | Olsen (ppm)', 'name value'], ['Test | ppm | mg/kg', 'name value -'], ['Test | Result | Result', 'name value -'], ['Test | Result | Level', 'name value rating'], ['Test | Level | Result', 'name value -'], ['Test | Level', 'name value'], ['Test | Result | Level | Rating', 'name value rating rating'],
    ['Test | Low | Medium | High', 'name mark mark mark'], ['Test | Low | High', null], ['Test | Result | Low | High', 'name value low high'], ['Test | Result | Medium', 'name value -'], ['Test | Result | Very low | Very high', 'name value mark mark'], ['Test | Medium | Optimum', null], ['Result | Unit', 'name value unit'],
    ['Test | Front | Back', 'name sample sample'], ['Test | Front', null], ['Test | Front | Back | Unit', 'name sample sample unit'], ['Test | Method | Front | Back | Range', 'name method sample sample range'], ['Test | Front | Back | Index', null], ['Test | Front | P', null], ['Front | Back | East', null], ['Foo | Unit', null],
  ])('%s', (row, expected) => { expect(roles(row)).toBe(expected); });
  test('a name without its head', () => { expect([roles(',Result', ','), roles(',Front,Back', ','), roles(',Unit', ','), roles('Foo,Result', ',')]).toEqual(['name value', 'name sample sample', null, 'name value']); });
  test('in gaps, names may stand left of all heads', () => { expect([roles('Result  Unit', ' '), roles('Foo  Result', ' '), roles('Foo  Bar  Result', ' '), roles('Foo  Bar  Baz  Result', ' '), roles('Test  Bar  Result', ' '), roles('Test  Bar  Baz  Result', ' '), roles('Front  Back', ' '), roles('Test  Front  Back', ' ')]).toEqual(['name value unit', 'name - value', 'name - value', null, 'name - value', null, null, 'name sample sample']); });
  test('what stands below an unknown head tells', () => { expect([roles('Test | Result | Foo', '|', 'P | 42 | ppm'), roles('Test | Result | Foo', '|', 'P | 42 | high'), roles('Test | Result | Foo', '|', 'P | 42 | 7'), roles('Test | Result | Unit', '|', 'P | 42 | high'), roles('Foo | Result | x', '|', 'ppm | 42 | 3'), roles('Test | Result | Foo', '|', 'P | 42'), roles('Test  Result  Foo', ' ', 'P  42  ppm')]).toEqual(['name value unit', 'name value rating', 'name value -', 'name value unit', 'name value -', 'name value -', 'name value -']); });
});

describe('cells under their heads', () => {
  const at = (...spans: readonly (readonly [number, number])[]): Cell[] => spans.map(([start, end]) => ({ text: `${start}`, start, end }));
  test('the head that shares most with a cell, or is nearest', () => {
    const heads = at([0, 4], [10, 14], [20, 24]);
    expect(([[0, 2], [3, 12], [5, 6], [8, 9], [7, 7], [16, 17], [40, 41]] as const).map((span) => nearest(heads, at(span)[0]!))).toEqual([0, 1, 0, 1, 0, 1, 2]);
  });
  test('parted by a sign: by count', () => {
    const heads = at([0, 1], [2, 3], [4, 5]);
    const placed = (n: number): (string | undefined)[] | null => under(heads, at(...Array.from({ length: n }, (_, i) => [i, i + 1] as const)), '|')?.map((c) => c?.text) ?? null;
    expect([1, 2, 3, 4, 5].map(placed)).toEqual([null, ['0', '1', undefined], ['0', '1', '2'], ['0', '1', '2'], null]);
  });
  test('in gaps: by place', () => {
    const heads = at([0, 4], [10, 14], [20, 24]);
    const placed = (...spans: readonly (readonly [number, number])[]): (string | undefined)[] | null => under(heads, at(...spans), ' ')?.map((c) => c?.text) ?? null;
    expect([placed([0, 2], [20, 22]), placed([10, 12]), placed([0, 1], [2, 3]), placed([0, 2], [12, 13], [20, 21])]).toEqual([['0', undefined, '20'], [undefined, '10', undefined], null, ['0', '12', '20']]);
    // As many cells as heads, of which one stands under its neighbour's.
    expect(under(at([0, 4], [10, 14], [30, 34]), at([10, 12], [30, 32], [40, 42]), ' ')).toBeNull();
  });
  test('quotes hold commas, not bars', () => { expect([said(cellsOf('a,"b,c", d', ',')), said(cellsOf('a|"b|c"', '|')), said(cellsOf('a;"b;c"', ';')), said(cellsOf('a||b', '\t')), said(cellsOf(' | a | b | ', '|')), said(cellsOf('|a|', '\t')), said(cellsOf('a b  c', ' ')), said(cellsOf('P 0-6" deep|x', '|'))]).toEqual([['a', 'b,c', 'd'], ['a', 'b', 'c'], ['a', 'b;c'], ['a', '', 'b'], ['a', 'b'], ['', 'a', ''], ['a b', 'c'], ['P 0-6" deep', 'x']]); });
});
