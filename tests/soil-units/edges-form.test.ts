// In which form, unit and method a value counts, and when two values are one test: asked of the functions themselves.
// What labs mean by their heads is practice; weights by hand: a lab's lb/acre is twice its ppm (ohio-soil-values), K2O is 0.8301 K, a meq of potassium 39.1 mg, in 100 g 391 mg/kg.
import { describe, expect, test } from 'vitest';
import type { Context } from '../../src/soil/context.ts';
import { countedUnit, indexWord, shape } from '../../src/soil/form.ts';
import type { Reading } from '../../src/soil/reading.ts';
import { saysTheSame } from '../../src/soil/same.ts';
import type { Item, Method, ReportUnit } from '../../src/tables/items.ts';

const context = (more: Partial<Context> = {}): Context => ({ file: 'r.txt', method: null, methods: new Map(), unit: null, saturation: false, ground: null, german: false, indexFrom: null, leaf: false, indexBeside: false, ...more }) as Context;

describe('an index of a scale', () => {
  // The UK's targets are at 2 and its scale starts at 0 (RB209); Ireland's start at 1 and aim at 3 (Teagasc).
  test.each<[number | null, Context['indexFrom'], Method | null, string | null]>([
    [0, 0, null, 'very-low'], [1, 0, null, 'low'], [2, 0, null, 'optimum'], [2.5, 0, null, 'optimum'], [3, 0, null, 'high'], [9, 0, null, 'high'], [10, 0, null, null], [-1, 0, null, null], [null, 0, null, null],
    [1, null, 'morgan', 'very-low'], [2, null, 'morgan', 'low'], [3, null, 'morgan', 'optimum'], [4, null, 'morgan', 'high'], [0, null, 'morgan', null], [2, null, 'olsen', null], [2, null, null, null], [2, 0, 'morgan', 'optimum'],
  ])('%j from %j by %j: %j', (said, indexFrom, method, word) => { expect(indexWord(said, method, context({ indexFrom }))).toBe(word); });
});

test.each<[ReportUnit | null, string, string | null]>([
  ['lb/acre', 'Lime requirement (ENM)', 'lb ENM/acre'], ['lb/acre', 'effective neutralizing material', 'lb ENM/acre'], ['lb/acre', 'Lime (ENP)', 'lb ENP/acre'], ['lb/acre', 'effective neutralizing power', 'lb ENP/acre'], ['t/ha', 'Kalkbedarf (CaO)', 't CaO/ha'], ['dt/ha', 'Kalkbedarf CaO', 'dt CaO/ha'], ['kg/ha', 'Kalkbedarf CaO', 'kg CaO/ha'],
  // Nobody prints tons of ENM; no content is an amount to bring out; a word within another is none; what is counted already stays.
  ['ton/acre', 'Lime (ENM)', 'unknown'], ['%', 'Lime (CaO)', '%'], [null, 'Lime (ENM)', null], ['lb/acre', 'Lime requirement', 'lb/acre'], ['lb/acre', 'Lime cenmar', 'lb/acre'], ['t CaO/ha', 'Kalkbedarf (CaO)', 't CaO/ha'],
])('%j of "%s" counts as %j', (unit, text, expected) => { expect(countedUnit(unit, text)).toBe(expected); });

describe('what an item is', () => {
  type Given = { item: Parameters<typeof shape>[0]['item']; form?: 'K2O' | 'P2O5' | 'MgO'; loose?: boolean; name?: string; own?: Method };
  const as = ({ item, form, loose = false, name = item, own }: Given, unit: ReportUnit | null, methods: readonly Method[] = [], more: Partial<Context> = {}): string | null => {
    const s = shape({ item, form: form ?? null, loose, name, method: own ?? null }, unit, context(more), methods);
    return s && [s.item, s.unit, s.form, s.method].filter((x) => x !== null).join(' ');
  };
  test.each<[string, Parameters<typeof as>, string | null]>([
    ['lime by the hectare', [{ item: 'lime' }, 't/ha'], 'lime-requirement t/ha'], ['lime in the soil', [{ item: 'lime' }, '%'], 'carbonate %'], ['lime without a unit', [{ item: 'lime' }, null], 'carbonate'], ['a need', [{ item: 'lime-requirement' }, 't/ha'], 'lime-requirement t/ha'],
    ['what is to be brought out', [{ item: 'phosphorus' }, 'lb/1000sqft'], null], ['a share of CEC', [{ item: 'cec' }, '%'], null], ['CEC', [{ item: 'cec' }, 'meq/100g'], 'cec meq/100g'],
    // A cation in % is a share of the exchange sites; in a leaf it is a content, and so is an oxide.
    ['a cation in %', [{ item: 'potassium' }, '%'], 'saturation-k %'], ['in a leaf', [{ item: 'potassium' }, '%', [], { leaf: true }], 'potassium %'], ['an oxide', [{ item: 'potassium', form: 'K2O' }, '%'], 'potassium % K2O'], ['an oxide by its name alone', [{ item: 'potassium', form: 'K2O', loose: true }, '%'], 'saturation-k %'],
    ['below "base saturation"', [{ item: 'potassium' }, null, [], { saturation: true }], 'saturation-k %'], ['a content below it', [{ item: 'potassium' }, 'ppm', [], { saturation: true }], 'potassium ppm'], ['phosphorus in %', [{ item: 'phosphorus' }, '%'], 'phosphorus %'], ['no unit', [{ item: 'potassium' }, null], 'potassium'],
    // pH by what it was measured in.
    ['pH', [{ item: 'ph' }, null], 'ph pH'], ['in salt', [{ item: 'ph' }, null, ['cacl2']], 'ph-salt pH cacl2'], ['in potassium chloride', [{ item: 'ph' }, null, ['kcl']], 'ph-salt pH kcl'], ['with water, by its parts', [{ item: 'ph' }, null, ['1:1']], 'ph pH water'], ['with salt, by its parts', [{ item: 'ph' }, null, ['1:2', 'cacl2']], 'ph-salt pH cacl2'], ['by a buffer', [{ item: 'ph' }, null, ['smp']], 'buffer-ph pH smp'], ['the buffer behind water', [{ item: 'ph-salt' }, null, ['water', 'smp']], 'buffer-ph pH smp'],
    ['as a heading says', [{ item: 'ph' }, null, [], { methods: new Map<Item, Method>([['ph', 'cacl2']]) }], 'ph-salt pH cacl2'], ['its own before the heading\'s', [{ item: 'ph' }, null, ['water'], { methods: new Map<Item, Method>([['ph', 'cacl2']]) }], 'ph pH water'], ['salt pH', [{ item: 'ph-salt' }, null], 'ph-salt pH'], ['a buffer', [{ item: 'buffer-ph' }, null, ['sikora']], 'buffer-ph pH sikora'],
    // Sodium, hydrogen and acidity as content or as share.
    ['exchangeable sodium by charge', [{ item: 'saturation-na' }, 'cmol/kg'], 'sodium cmol/kg'], ['its share', [{ item: 'saturation-na' }, '%'], 'saturation-na %'], ['its share without a unit', [{ item: 'saturation-na', name: 'esp' }, null], 'saturation-na %'], ['by name, without a unit', [{ item: 'saturation-na', name: 'exchangeable sodium' }, null, [], { unit: 'ppm', method: 'mehlich-3' }], 'sodium ppm mehlich-3'], ['by name, below "base saturation"', [{ item: 'saturation-na', name: 'exchangeable sodium' }, null, [], { saturation: true }], 'saturation-na %'],
    ['hydrogen by charge', [{ item: 'saturation-h' }, 'meq/100g'], 'acidity meq/100g'], ['hydrogen\'s share', [{ item: 'saturation-h' }, '%'], 'saturation-h %'], ['hydrogen without a unit', [{ item: 'saturation-h' }, null], 'saturation-h %'], ['acidity in %', [{ item: 'acidity' }, '%'], 'saturation-h %'], ['acidity', [{ item: 'acidity' }, 'meq/100g'], 'acidity meq/100g'], ['base saturation', [{ item: 'base-saturation' }, null], 'base-saturation %'],
    // What a heading says is of elements; quick-test units of cations; an extract of no nitrate.
    ['a heading\'s unit', [{ item: 'phosphorus' }, null, [], { unit: 'ppm' }], 'phosphorus ppm'], ['its own unit', [{ item: 'phosphorus' }, 'mg/kg', [], { unit: 'ppm' }], 'phosphorus mg/kg'], ['of no element', [{ item: 'organic-matter' }, null, [], { unit: 'ppm', method: 'mehlich-3' }], 'organic-matter'], ['quick test of a cation', [{ item: 'potassium' }, null, [], { unit: 'MAF' }], 'potassium MAF'], ['of phosphorus', [{ item: 'phosphorus' }, null, [], { unit: 'MAF' }], 'phosphorus'],
    ['a heading\'s extract', [{ item: 'potassium' }, 'ppm', [], { method: 'mehlich-3' }], 'potassium ppm mehlich-3'], ['of nitrate', [{ item: 'nitrate-n' }, 'ppm', [], { method: 'mehlich-3' }], 'nitrate-n ppm'], ['its own extract', [{ item: 'phosphorus', own: 'olsen' }, 'ppm', [], { method: 'mehlich-3' }], 'phosphorus ppm olsen'], ['the name\'s before the line\'s', [{ item: 'phosphorus', own: 'olsen' }, 'ppm', ['bray-1']], 'phosphorus ppm olsen'], ['the item\'s before that of all', [{ item: 'phosphorus' }, 'ppm', [], { method: 'mehlich-3', methods: new Map<Item, Method>([['phosphorus', 'olsen']]) }], 'phosphorus ppm olsen'],
  ])('%s', (_, given, expected) => { expect(as(...given)).toBe(expected); });
});

describe('one test printed twice', () => {
  const r = (item: Item, value: number | null, unit: ReportUnit | null, form: Reading['form'] = null): Reading => ({ item, value, unit, form }) as Reading;
  test.each<[string, Reading, Reading, boolean]>([
    ['42 ppm are 84 lb/acre', r('phosphorus', 42, 'ppm'), r('phosphorus', 84, 'lb/acre'), true], ['4 mg in 100 g', r('phosphorus', 4, 'mg/100g'), r('phosphorus', 40, 'mg/kg'), true], ['0.4 g to the kilogram', r('potassium', 0.4, 'g/kg'), r('potassium', 400, 'ppm'), true], ['100 K are 120.5 K2O', r('potassium', 100, 'ppm'), r('potassium', 120.5, 'ppm', 'K2O'), true], ['and not 123', r('potassium', 100, 'ppm'), r('potassium', 123, 'ppm', 'K2O'), false],
    // 0.31 meq is 121.2 mg, give or take 1.96, and half a milligram of the other.
    ['0.31 meq', r('potassium', 0.31, 'meq/100g'), r('potassium', 123, 'ppm'), true], ['0.31 meq and more', r('potassium', 0.31, 'meq/100g'), r('potassium', 124, 'ppm'), false], ['the other way round', r('potassium', 123, 'ppm'), r('potassium', 0.31, 'cmol/kg'), true],
    // A meq, 391 mg, leaves 195 open; no more than a fifth of the lesser is forgiven, 78.
    ['a fifth', r('potassium', 1, 'meq/100g'), r('potassium', 469, 'ppm'), true], ['more than a fifth', r('potassium', 1, 'meq/100g'), r('potassium', 470, 'ppm'), false], ['by charge the ion is meant', r('potassium', 1, 'meq/100g', 'K2O'), r('potassium', 391, 'ppm'), true],
    ['the same', r('phosphorus', 42, 'ppm'), r('phosphorus', 42, 'ppm'), true], ['nearly the same in one unit', r('phosphorus', 42, 'ppm'), r('phosphorus', 42.1, 'ppm'), false], ['nothing is nothing', r('phosphorus', 0, 'ppm'), r('phosphorus', 0, 'lb/acre'), true], ['nothing is not little', r('phosphorus', 0, 'ppm'), r('phosphorus', 1, 'lb/acre'), false], ['no value', r('phosphorus', null, 'ppm'), r('phosphorus', 84, 'lb/acre'), false], ['none of the other', r('phosphorus', 42, 'ppm'), r('phosphorus', null, 'lb/acre'), false], ['no unit', r('phosphorus', 42, null), r('phosphorus', 84, 'lb/acre'), false], ['by volume', r('phosphorus', 42, 'mg/L'), r('phosphorus', 84, 'lb/acre'), false], ['no element', r('organic-matter', 4, 'g/kg'), r('organic-matter', 4, 'g/kg'), false], ['phosphorus has no charge here', r('phosphorus', 1, 'meq/100g'), r('phosphorus', 310, 'ppm'), false],
  ])('%s', (_, a, b, expected) => { expect(saysTheSame(a, b)).toBe(expected); });
});
