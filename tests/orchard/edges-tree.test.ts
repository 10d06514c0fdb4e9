// One line a tree: each fact by itself, in the forms of design.md 5. Lengths by the exact factors: inch 0.0254 m, foot 0.3048 m, US gallon 3.785411784 L, pound 453.59237 g.
import { describe, expect, test } from 'vitest';
import type { Place } from '../../src/reason/notice.ts';
import { placeIn } from '../../src/reason/notice.ts';
import { isReserved, itemsOf, parseTree } from '../../src/orchard/tree.ts';

const WHOLE: Place = placeIn('orchard.yaml', 7, 'Gate:', 0, 4);
const at = (start: number, end: number): Place => placeIn('orchard.yaml', 7, 'x'.repeat(90), start, end);
const read = (line: string, zones: readonly string[] = ['Top strip', 'north bed']) => parseTree('Gate', itemsOf(line, at), zones, WHOLE);
const tree = (line: string) => {
  const { tree: found, notices } = read(line);
  expect(notices).toEqual([]);
  return found!;
};
const told = (line: string) => read(line).notices.map(({ code, severity, facts }) => ({ code, severity, ...facts }));

describe('parts of a line', () => {
  test('a comma and a blank part them; a comma within a number does not', () => {
    expect(itemsOf('apple, 2,5 m across,  dwarf', at).map((i) => i.text)).toEqual(['apple', '2,5 m across', 'dwarf']);
  });
  test('each stands where it is written, without its blanks', () => {
    const [apple, dwarf] = itemsOf('apple,  dwarf', at);
    expect(apple!.place).toEqual(at(0, 5));
    expect(dwarf!.place).toEqual(at(8, 13));
  });
  test('blanks before the first are no part of it', () => expect(itemsOf('  apple, dwarf', at)[0]!.place).toEqual(at(2, 7)));
  test('a comma at the very end is nothing', () => {
    expect(itemsOf('apple, dwarf,', at).map((i) => [i.text, i.place])).toEqual([['apple', at(0, 5)], ['dwarf', at(7, 12)]]);
    expect(itemsOf('apple, , dwarf', at).map((i) => i.text)).toEqual(['apple', 'dwarf']);
    expect(itemsOf('', at)).toEqual([]);
  });
});

describe('what a tree is', () => {
  test('the least that can be told', () => expect(tree('apple')).toEqual({ name: 'Gate', count: 1, word: 'apple', crop: 'apple', leaf: [], flags: [], place: WHOLE }));
  test('a row of them, in the plural', () => expect(tree('6 Blueberries')).toMatchObject({ count: 6, word: 'blueberry', crop: 'blueberry' }));
  test('a crop by another of its names keeps the word', () => expect(tree('sour cherries')).toMatchObject({ word: 'sour cherry', crop: 'cherry', count: 1 }));
  test('a plant without figures is another', () => expect(tree('2 pawpaws')).toMatchObject({ word: 'pawpaw', crop: 'other', count: 2 }));
  test('blanks and case do not count', () => expect(tree('SEMI  Dwarf, Cooking   Apple, Not  Bearing, TOP strip')).toMatchObject({ size: 'semi-dwarf', word: 'cooking apple', flags: ['not bearing'], zone: 'Top strip' }));
  test('fed as another', () => {
    expect(tree('pawpaw, fed as an apple')).toMatchObject({ crop: 'other', fedAs: 'apple' });
    expect(tree('pawpaw, fed as a pear').fedAs).toBe('pear');
    expect(tree('pawpaw, fed as plums').fedAs).toBe('plum');
  });
  test('fed as what has no figures itself is not taken', () => {
    expect(told('apple, fed as pawpaw')).toMatchObject([{ code: 'item-unknown', severity: 'error', read: 'fed as pawpaw' }]);
    expect(told('pawpaw, fed as aple')).toMatchObject([{ code: 'item-unknown', guess: 'fed as apple', form: '', tree: 'Gate', expected: '' }]);
  });
});

describe('its measures', () => {
  test.each<[string, object]>([
    ['10 ft across', { across: 3.048 }], ['3 m wide', { across: 3 }], ['5 ft 6 in across', { across: 1.6764 }], ['2.5 m high', { high: 2.5 }], ['2,5 m tall', { high: 2.5 }],
    ['trunk 4 in across', { trunk: { m: 0.1016, measured: 'across' } }], ['trunk 30 cm round', { trunk: { m: 0.3, measured: 'round' } }],
    ['spacing 10 ft', { spacing: [3.048, 3.048] }], ['spacing 3 m x 5 m', { spacing: [3, 5] }], ['spacing 3 x 5 m', { spacing: [3, 5] }], ['spacing 4 x 10 ft', { spacing: [1.2192, 3.048] }],
    ['5 m spacing', { spacing: [5, 5] }], ['bed 1 m x 6 m', { bed: [1, 6] }], ['bed 1 1/2 x 6 m', { bed: [1.5, 6] }], ['bed 4  x  20 ft', { bed: [1.2192, 6.096] }],
    ['tub 40 L', { tub: 40 }], ['tub 10 gal', { tub: 37.85411784 }], ['10 gal tub', { tub: 37.85411784 }], ['in a 40 L pot', { tub: 40 }], ['in an 80 l container', { tub: 80 }], ['container of 60 L', { tub: 60 }], ['in a tub 60 L', { tub: 60 }], ['pot 5 L', { tub: 5 }], ['in 30 l tub', { tub: 30 }],
    ['compost 20 L', { composted: 20 }],
    ['planted 2019', { planted: { year: 2019 } }], ['planted March 2019', { planted: { year: 2019, month: 3 } }], ['planted nov. 2025', { planted: { year: 2025, month: 11 } }], ['planting 2027', { planting: { year: 2027 } }], ['planting oct 2026', { planting: { year: 2026, month: 10 } }],
    ['shoots 20 cm', { shoots: { m: 0.2 } }], ['shoots 10 in', { shoots: { m: 0.254 } }], ['shoots 10 in 2025', { shoots: { m: 0.254, year: 2025 } }], ['shoots 20 cm in 2025', { shoots: { m: 0.2, year: 2025 } }], ['10 in shoots', { shoots: { m: 0.254 } }],
    ['shoots none', { shoots: { m: 0 } }], ['shoots 0 2025', { shoots: { m: 0, year: 2025 } }], ['shoots none in 2024', { shoots: { m: 0, year: 2024 } }], ['shoots 1/2 m', { shoots: { m: 0.5 } }], ['shoots 10" in 2024', { shoots: { m: 0.254, year: 2024 } }],
    ['fruit none', { fruit: { g: 0, said: 'none' } }], ['fruit none 2025', { fruit: { g: 0, said: 'none', year: 2025 } }], ['fruit light', { fruit: { g: null, said: 'light' } }], ['fruit heavy 2024', { fruit: { g: null, said: 'heavy', year: 2024 } }],
    ['fruit 20 kg', { fruit: { g: 20000, said: 'weight' } }], ['fruit 10 lb 2025', { fruit: { g: 4535.9237, said: 'weight', year: 2025 } }],
    ['rootstock M26', { rootstock: 'M26', size: 'dwarf' }], ['MM106 rootstock', { rootstock: 'MM106', size: 'semi-dwarf' }], ['on MM111', { rootstock: 'MM111', size: 'standard' }], ['on St. Julien A rootstock', { rootstock: 'St. Julien A', size: 'semi-dwarf' }], ['rootstock Quince A', { rootstock: 'Quince A', size: 'semi-dwarf' }],
  ])('%s', (fact, expected) => {
    const found = tree(`apple, ${fact}`);
    const { name: _n, count: _c, word: _w, crop: _k, leaf: _l, flags: _f, place: _p, ...rest } = found;
    const close = JSON.parse(JSON.stringify(rest, (_, v: unknown) => (typeof v === 'number' ? Number(v.toPrecision(12)) : v))) as object;
    expect(close).toEqual(expected);
  });

  test('the size that is told counts before that of the rootstock', () => expect(tree('apple, standard, rootstock M9').size).toBe('standard'));
  test('leaf values, the nutrient as it is written in chemistry', () => {
    expect(tree('apple, leaf n 2.1 %, leaf ZN 14 ppm, leaf ca 1,2%').leaf).toEqual([{ nutrient: 'N', value: 2.1, unit: '%' }, { nutrient: 'Zn', value: 14, unit: 'ppm' }, { nutrient: 'Ca', value: 1.2, unit: '%' }]);
  });
  test.each(['p', 'k', 'mg', 's', 'b', 'mn', 'fe', 'cu'])('leaf %s', (name) => expect(tree(`apple, leaf ${name} 2 ppm`).leaf[0]!.nutrient.toLowerCase()).toBe(name));
  test('all flags that it has, in their order', () => expect(tree('apple, mulch, fed lawn, spur-type').flags).toEqual(['mulch', 'fed lawn', 'spur-type']));
});

describe('what is asked and told', () => {
  test('a trunk of which nobody said how it was measured', () => {
    const { tree: found, questions } = read('apple, trunk 4 in');
    expect(found!.trunk!.measured).toBeNull();
    expect(questions).toEqual([{ code: 'trunk-round-or-across', about: 'Gate', facts: { tree: 'Gate' }, choices: ['round', 'across'], changes: 'changes-ring', place: WHOLE }]);
  });
  test('one that is told is not asked about', () => expect(read('apple, trunk 4 in across').questions).toEqual([]));
  test('a stock that is not known is kept and told', () => {
    const { tree: found, notices } = read('apple, rootstock M106');
    expect(found).toMatchObject({ rootstock: 'M106' });
    expect(found).not.toHaveProperty('size');
    expect(notices).toMatchObject([{ code: 'rootstock-unknown', severity: 'warning', facts: { tree: 'Gate', read: 'M106', guess: 'MM106' }, place: WHOLE }]);
  });
  test('a size beside such a stock makes it no matter', () => expect(read('apple, dwarf, rootstock XYZ').notices).toEqual([]));

  test('mistakes are told all at once, each at its place, and no tree comes of them', () => {
    const { tree: found, notices } = read('apple, 0 ft across, 2,500 m high, glorp');
    expect(found).toBeNull();
    expect(notices.map((n) => [n.code, n.severity, n.place])).toEqual([
      ['measure-zero', 'error', at(7, 18)], ['number-two-ways', 'error', at(20, 32)], ['item-unknown', 'error', at(34, 39)],
    ]);
    expect(notices[0]!.facts).toEqual({ read: '0 ft across', tree: 'Gate', guess: '', form: 'line', expected: 'across' });
    expect(notices[1]!.facts).toEqual({ read: '2,500', dot: '2.500', plain: '2500' });
  });
  test.each<[string, string, string]>([
    ['trunk wide', 'measure-wrong', 'trunk'], ['planted spring 2020', 'measure-wrong', 'planted'], ['planting soon 2027', 'measure-wrong', 'planting'], ['tub big', 'measure-wrong', 'tub'], ['fruit lots', 'measure-wrong', 'fruit'], ['compost some', 'measure-wrong', 'composted'], ['spacing wide x 5 m', 'measure-wrong', 'spacing'],
    ['bed 3 x wide', 'measure-wrong', 'bed'], ['leaf n much', 'measure-wrong', 'leaf'], ['leaf xx 2 %', 'measure-wrong', 'leaf'], ['shoots long', 'measure-wrong', 'shoots'], ['planting 27', 'measure-wrong', 'planting'], ['bed 3 m', 'measure-wrong', 'bed'], ['rootstock', 'item-unknown', ''],
  ])('%s', (fact, code, expected) => {
    const [first, ...others] = told(`apple, ${fact}`);
    expect(others).toEqual([]);
    expect(first).toMatchObject({ code, expected, read: fact });
  });
  test.each([['0 apples', 'measure-zero'], ['apple, tub 0 L', 'measure-zero'], ['apple, spacing 0 x 5 m', 'measure-zero'], ['apple, leaf n 2,100 %', 'number-two-ways'], ['apple, spacing 1,500 x 2 m', 'measure-wrong']])('%s', (line, code) => expect(told(line).map((n) => n.code)).toContain(code));

  test.each(['my trunk 4 in', 'wide spacing 3 m', 'some compost 20 L', 'raised bed 1 m x 2 m', 'big tub 40 L', 'newly planted 2019', 'long shoots 20 cm', 'no fruit 2 kg', 'the leaf n 2 %', 'maybe fed as apple', 'stands on M26'])('a fact begins with its word: %s is none', (fact) => expect(told(`pawpaw, ${fact}`).map((n) => n.severity)).toContain('error'));
  test('a fact told twice', () => {
    expect(told('apple, 3 m across, 4 m wide')).toEqual([{ code: 'fact-twice', severity: 'error', read: '4 m wide', tree: 'Gate' }]);
    expect(told('apple, pear')).toMatchObject([{ code: 'fact-twice', read: 'pear' }]);
    expect(told('apple, mulch, mulch')).toMatchObject([{ code: 'fact-twice', read: 'mulch' }]);
    expect(told('apple, leaf n 2 %, leaf N 2 %')).toMatchObject([{ code: 'fact-twice', read: 'leaf N 2 %' }]);
    expect(told('apple, mulch, grass, leaf n 2 %, leaf k 1 %')).toEqual([]);
  });
  test('what cannot both be', () => {
    expect(told('apple, bearing, not bearing')).toEqual([{ code: 'fact-contrary', severity: 'error', tree: 'Gate', a: 'bearing', b: 'not bearing' }]);
    expect(told('apple, planted 2019, planting 2027')).toEqual([{ code: 'fact-contrary', severity: 'error', tree: 'Gate', a: 'planted', b: 'planting' }]);
    expect(told('apple, bearing, planting 2027')).toEqual([]);
  });
  test('no crop: told by itself, but not where a word beside it may have been meant for one', () => {
    expect(told('dwarf, mulch')).toEqual([{ code: 'crop-missing', severity: 'error', tree: 'Gate' }]);
    expect(told('dwarf, aple').map((n) => n.code)).toEqual(['item-unknown']);
    expect(told('dwarf, tub 0 L').map((n) => n.code)).toEqual(['measure-zero', 'crop-missing']);
  });
});

describe('what a word was perhaps meant for', () => {
  test.each([
    ['2018', 'planted 2018'], ['1899', ''], ['12 years old', ''], ['3 m', '3 m across, 3 m high'], ['M9', 'rootstock M9'], ['M106', 'rootstock MM106'], ['dwarf rootstock M9', 'dwarf, rootstock M9'],
    ['apple Bramley', 'apple'], ['Bramley apple', 'apple'], ['aple', 'apple'], ['trnk 3 in', 'trunk'], ['mulhc', 'mulch'], ['top stripe', 'Top strip'], ['12 aples', 'apple'], ['pawpow', 'pawpaw'], ['semi-dwraf', 'semi-dwarf'],
  ])('%s', (fact, guess) => expect(told(`pear, ${fact}`)).toMatchObject([{ code: 'item-unknown', guess, form: guess === '' ? 'line' : '' }]));
});

describe('names that no zone may have', () => {
  test.each(['apple', 'mulch', 'dwarf', 'tub big', 'planted 2019', 'trunk strip', 'bed 3'])('%s', (name) => expect(isReserved(name)).toBe(true));
  test.each(['north bed', 'new planting', 'lower terrace', 'behind the shed'])('%s may be one', (name) => expect(isReserved(name)).toBe(false));
  test('and such a zone is taken as one', () => expect(tree('apple, North Bed').zone).toBe('north bed'));
});
