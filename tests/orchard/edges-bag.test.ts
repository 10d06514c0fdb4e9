// A label as a whole, and its numbers alone: what each word adds. Pound 453.59237 g, US gallon 3785.411784 mL; P is 0.4364 of P2O5 and K 0.8301 of K2O by atomic weights (IUPAC).
import { describe, expect, test } from 'vitest';
import { bagName, parseBag } from '../../src/orchard/bag.ts';
import { gradeIn, MARK } from '../../src/orchard/label-grade.ts';
import { materialNamed } from '../../src/orchard/label-material.ts';

const LB = 453.59237;
const PLACE = { file: 'orchard.yaml', line: 9, column: 5, length: 3, source: '  - x' };
const read = (text: string, country: string | null = 'US', inShed = false) => parseBag(text, country, inShed, PLACE);
const bag = (text: string, country: string | null = 'US', inShed = false) => read(text, country, inShed).bag!;
const told = (text: string, country: string | null = 'US') => read(text, country).notices.map(({ code, severity, facts, place }) => ({ code, severity, ...facts, placed: place === PLACE }));

describe('a label as a whole', () => {
  test('all that it says', () => {
    expect(bag('Sulphate of ammonia, 21-0-0 +24S, 4 lb, $9')).toEqual({
      label: 'Sulphate of ammonia', printed: '21-0-0', place: PLACE, g: 4 * LB, material: expect.objectContaining({ id: 'ammonium-sulphate' }), grade: { N: 0.21, P2O5: 0, K2O: 0 }, others: { S: 0.24 }, price: { amount: 9, currency: '$' }, left: null, organic: null, nitrate: false, slowShare: 0, slow: false, liquid: false, chloride: false, weedKiller: false,
    });
  });
  test('by its numbers alone they are its name', () => expect(bag('10-10-10')).toMatchObject({ label: '10-10-10', printed: '10-10-10', g: null, price: null }));
  test('a thousand signs are read, one more is not', () => {
    expect(read(`10-10-10, ${'x'.repeat(990)}`).notices.map((n) => n.code)).not.toContain('bag-long');
    expect(told('x'.repeat(1001))).toEqual([{ code: 'bag-long', severity: 'error', read: 'x'.repeat(40), most: 1000, placed: true }]);
  });
  test('name and numbers together', () => {
    expect(bagName(bag('Bone meal, 3-15-0'))).toBe('Bone meal 3-15-0');
    expect(bagName(bag('10-10-10'))).toBe('10-10-10');
    expect(bagName(bag('Garden lime, 40 lb'))).toBe('Garden lime');
  });
  test.each([['20 g', null], ['19 g', 19], ['500 g', null], ['501 g', 501]] as const)('a cup of %s', (cup, g) => {
    expect(told(`Mix, 10-10-10, cup ${cup}`)).toEqual(g === null ? [] : [{ code: 'cup-odd', severity: 'error', g, low: 20, high: 500, bag: 'Mix', placed: true }]);
    expect(read(`Mix, 10-10-10, cup ${cup}`).bag?.cupG ?? null).toBe(g === null ? Number(cup.split(' ')[0]) : null);
  });
});

describe('what stands in the shed', () => {
  test.each<[string, boolean, number | null]>([['10-10-10, 20 lb', true, 20 * LB], ['10-10-10, 20 lb, half left', true, 10 * LB], ['10-10-10, 20 lb, 3 lb left', true, 3 * LB], ['10-10-10, half left', true, null], ['10-10-10', true, null], ['10-10-10, 20 lb, half left', false, null]])('%s (in the shed: %s)', (text, inShed, left) => {
    const got = bag(text, 'US', inShed).left;
    if (left === null) expect(got).toBeNull();
    else expect(got).toBeCloseTo(left, 6);
  });
  test('lime too', () => {
    expect(bag('Garden lime, 40 lb, half left', 'US', true)).toMatchObject({ left: expect.closeTo(20 * LB, 6), amends: { kind: 'lime' }, grade: { N: 0, P2O5: 0, K2O: 0 }, label: 'Garden lime', printed: '' });
    expect(bag('Garden lime, 40 lb, half left', 'US', false).left).toBeNull();
  });
});

describe('what a price buys', () => {
  test.each<[string, number]>([['10-10-10, 20 lb, $10', 10], ['10-10-10, 20 lb, $0.50/lb', 10], ['10-10-10, 10 kg, $2 per kg', 20], ['10-10-10, $2/lb', 2]])('%s: $%d', (text, amount) => expect(bag(text).price!.amount).toBeCloseTo(amount, 6));
  test('by volume', () => expect(bag('7-2-7 w/v, 5 L, €4 per litre', 'DE').price).toEqual({ amount: expect.closeTo(20, 6), currency: '€' }));
  test('without a weight one measure of it is what is sold', () => expect(bag('10-10-10, $2/lb').g).toBeCloseTo(LB, 6));
});

describe('numbers as a country prints them', () => {
  test.each<[string, string | null, number, number]>([['10-4-6', 'US', 4, 6], ['10-4-6', null, 4, 6], ['10-4-6', 'AU', 4 / 0.4364, 6 / 0.8301], ['10-4-6', 'IE', 4 / 0.4364, 6 / 0.8301], ['10-4-6, as elements', 'US', 4 / 0.4364, 6 / 0.8301], ['10-4-6, as oxides', 'AU', 4, 6], ['10-4-6', 'constructor', 4, 6]])('%s in %s', (text, country, p, k) => {
    const { P2O5, K2O } = bag(text, country).grade;
    expect([P2O5 * 100, K2O * 100]).toEqual([expect.closeTo(p, 2), expect.closeTo(k, 2)]);
  });
  test('by which rule they became oxides', () => {
    expect(bag('10-4-6', 'US')).not.toHaveProperty('elemental');
    expect(bag('10-4-6', 'AU').elemental).toMatchObject({ source: 'stylemanual-au', mark: 'read' });
    expect(bag('10-4-6, as elements', 'US').elemental).toBeDefined();
    expect(bag('10-0-0', 'AU').elemental).toMatchObject({ source: 'stylemanual-au' });
  });
  test('of a material without numbers its own count, told as a bag there would print them', () => {
    expect(bag('Urea', 'US')).toMatchObject({ printed: '46-0-0', grade: { N: 0.46 } });
    expect(bag('Potassium sulphate', 'US').printed).toBe('0-0-50');
    // 50 % K2O are 41.5 % K.
    expect(bag('Potassium sulphate', 'AU').printed).toBe('0-0-41.5');
    expect(bag('Potassium sulphate', 'AU').grade.K2O).toBeCloseTo(0.5, 9);
    expect(bag('Potassium sulphate', 'AU')).not.toHaveProperty('elemental');
  });
});

// Water weighs a kilogram a litre, and a solution of salts more: what is sold in litres and weighs less is a solid (practice: sheep pellets come in bags of 25 and 40 L).
describe('sold in litres', () => {
  test.each<[string, boolean]>([['Tomato feed, 4-3-8, 1 L, 1.2 kg', true], ['Tomato feed, 4-3-8, 1 L, 0.9 kg', true], ['Something, 4-3-8, 40 L, 24 kg', false], ['Something, 4-3-8, 40 L, 35.9 kg', false], ['Sheep pellets, 4-2-1, 40 L, 40 kg', false], ['Granules 4-2-1, 5 L, 6 kg', false], ['Feather meal 12-0-0, 5 L, 5 kg', false], ['Fish emulsion 5-1-1, 1 L, 1 kg', true], ['Tomato feed 4-3-8 w/v, 1 L', true]])('%s is a liquid: %s', (text, liquid) => expect(bag(text, 'NZ').liquid).toBe(liquid));
  test('sheep pellets are dried manure', () => expect(bag('Sheep pellets, 4-2-1, 24 kg', 'NZ')).toMatchObject({ organic: 'manure', material: { id: 'sheep-manure-dried' } }));
});

// Names of the trade in Spanish, French, Italian and Portuguese (practice), as in English and German.
describe('lime and sulphur by their names in other languages', () => {
  const kind = (text: string) => { const { amends } = read(text, 'ES').bag ?? {}; return amends ? [amends.kind, amends.lime?.dolomitic ?? null, amends.burns] : read(text, 'ES').notices.map((n) => n.code); };
  test.each<[string, readonly unknown[]]>([
    ['Azufre 90 %, 5 kg', ['sulphur', null, false]], ['Soufre mouillable 80 %, 1 kg', ['sulphur', null, false]], ['Schwefel 90 %, 5 kg', ['sulphur', null, false]],
    ['Caliza molida, 25 kg', ['lime', false, false]], ['Cal agrícola, 25 kg', ['lime', false, false]], ['Carbonato cálcico, 25 kg', ['lime', false, false]], ['Dolomita, 25 kg', ['lime', true, false]], ['Caliza dolomítica, 25 kg', ['lime', true, false]], ['Chaux dolomitique, 25 kg', ['lime', true, false]], ['Calcaire broyé, 25 kg', ['lime', false, false]], ['Ceniza de leña, 5 kg', ['lime', false, false]], ['Cendres de bois, 5 kg', ['lime', false, false]],
    ['Cal viva, 25 kg', ['lime', false, true]], ['Cal hidratada, 25 kg', ['lime', false, true]], ['Chaux éteinte, 25 kg', ['lime', false, true]],
    ['Zolfo bagnabile 80 %, 1 kg', ['sulphur', null, false]], ['Enxofre 90 %, 5 kg', ['sulphur', null, false]], ['Carbonato di calcio, 25 kg', ['lime', false, false]], ['Calce dolomitica, 25 kg', ['lime', true, false]], ['Cenere di legna, 5 kg', ['lime', false, false]], ['Cinza de madeira, 5 kg', ['lime', false, false]], ['Calce viva, 25 kg', ['lime', false, true]], ['Calce spenta, 25 kg', ['lime', false, true]], ['Cal virgem, 25 kg', ['lime', false, true]], ['Gesso agricolo, 25 kg', ['not-lime']], ['Nitrato di calcio, 25 kg', []],
    ['Yeso agrícola, 25 kg', ['not-lime']], ['Gypse, 25 kg', ['not-lime']], ['Caldo sulfocálcico, azufre 20 %, 1 L', ['grade-missing']],
  ])('%s', (text, expected) => expect(kind(text)).toEqual(expected));
  test('strength as the label says it', () => expect(read('Azufre 90 %, 5 kg', 'ES').bag!.amends!.strength).toBeCloseTo(0.9, 9));
});

describe('what cannot be', () => {
  test.each<[string, object]>([
    ['0-0-0, 5 lb', { code: 'grade-empty', read: '0-0-0' }], ['50-30-30', { code: 'grade-impossible', read: '50-30-30', bag: '50-30-30' }], ['Mix, 60-60-60', { code: 'grade-impossible', bag: 'Mix' }], ['Something nice', { code: 'grade-missing', bag: 'Something nice' }], ['Mix -10-10-10', { code: 'grade-negative', read: '-10-10-10' }], ['Mix 10-10-10, 30 % N', { code: 'grade-two-values', read: '10-10-10, 30 % N' }],
  ])('%s', (text, facts) => {
    expect(told(text)).toEqual([expect.objectContaining({ severity: 'error', placed: true, ...facts })]);
    expect(read(text).bag).toBeNull();
  });
  test('a hundred in all can be, in oxides and in elements', () => {
    expect(told('40-30-30')).toEqual([]);
    expect(told('40-30-31').map((n) => n.code)).toEqual(['grade-impossible']);
    // 20-20-30 of elements would hold 20 + 45.8 + 36.1.
    expect(told('20-20-30', 'AU').map((n) => n.code)).toEqual(['grade-impossible']);
    expect(told('20-20-30', 'US')).toEqual([]);
  });
  test('no feed and told so', () => {
    expect(told('Copperas, 5 lb')).toEqual([{ code: 'acidifier-told', severity: 'warning', bag: 'Copperas', placed: true }]);
    expect(told('Gypsum, 40 lb')).toEqual([{ code: 'not-lime', severity: 'warning', bag: 'Gypsum', placed: true }]);
  });
});

describe('numbers and what follows them', () => {
  const numbers = (text: string, country: string | null = 'US') => gradeIn(text, country);
  test.each<[string, readonly number[]]>([['10-10-10', [10, 10, 10]], ['7 + 7 + 7', [7, 7, 7]], ['NPK 7 7 7', [7, 7, 7]], ['N 12 P 5 K 14', [12, 5, 14]], ['N: 12% P2O5: 5% K2O: 14%', [12, 5, 14]], ['15,5-0-0', [15.5, 0, 0]], ['2.5/1/1', [2.5, 1, 1]], ['N-P-K: 5-5-5', [5, 5, 5]]])('%s', (text, triple) => expect(numbers(text).numbers).toEqual(triple));
  test('the first on a label counts', () => expect(numbers('was 10-10-10 now 5-5-5').numbers).toEqual([10, 10, 10]));
  test('what stood there is marked', () => {
    expect(numbers('Mix 10-10-10 fine').rest.replace(/ +/g, ' ')).toBe(`Mix ${MARK} fine`);
    expect(numbers(`a${MARK}b 10-10-10`).rest.replace(/ +/g, ' ').trim()).toBe(`a b ${MARK}`);
  });
  test.each<[string, object]>([
    ['21-0-0-24S', { S: 24 }], ['21-0-0 +24S', { S: 24 }], ['21-0-0 (24% S)', { S: 24 }], ['10-10-10 +5 S +2MgO', { S: 5, MgO: 2 }], ['10-10-10 + 3SO3', { SO3: 3 }], ['15.5-0-0 +26CaO', { CaO: 26 }], ['10-10-10 +2Mg', { Mg: 2 }], ['10-10-10 +5Ca', { Ca: 5 }], ['10-10-10 +1Cl', { Cl: 1 }], ['10-10-10 +2Fe', {}], ['10-10-10 +TE', {}], ['10-10-10', {}],
  ])('%s', (text, others) => expect(numbers(text).others).toEqual(others));
  test('a list in front names what the brackets hold: oxides, as Poland prints them', () => {
    expect(numbers('NPK (Ca,S) 4-12-12 (14-29)', 'PL')).toMatchObject({ numbers: [4, 12, 12], others: { CaO: 14, SO3: 29 }, notes: [], faults: [] });
    expect(numbers('NPK (Mg) 5-10-20 (7)', 'PL').others).toEqual({ MgO: 7 });
  });
  test('a fourth number is sulphur in Australia; elsewhere it is told', () => {
    expect(numbers('10-4-6-9', 'AU')).toMatchObject({ others: { S: 9 }, notes: [] });
    expect(numbers('10-4-6-9', 'US')).toMatchObject({ others: {}, notes: [{ code: 'grade-bracket', facts: { read: '10-4-6-9' } }] });
    expect(numbers('10-4-6 +9', 'NZ').others).toEqual({ S: 9 });
    expect(numbers('10-4-6-9S', 'AU').others).toEqual({ S: 9 });
    expect(numbers('10-4-6-25 kg', 'AU').others).toEqual({});
  });
  // South Africa: a ratio and its total. 2:3:2 (22) is 22 parted as 2, 3, 2 of 7: 6.3, 9.4, 6.3 % of elements.
  test('a ratio and its total', () => {
    const { numbers: parts, p, k, printed, notes } = numbers('2:3:2 (22)', 'ZA');
    expect(parts!.map((x) => Math.round(x * 10) / 10)).toEqual([6.3, 9.4, 6.3]);
    expect({ p, k, printed }).toEqual({ p: 'element', k: 'element', printed: '2:3:2 (22)' });
    expect(notes).toEqual([{ code: 'grade-ratio-taken', facts: { read: '2:3:2 (22)', n: 6.3, p: 9.4, k: 6.3 } }]);
  });
  test.each<[string, string, string[], string[]]>([
    ['2:3:2', 'ZA', ['grade-ratio-total'], []], ['2-3-2', 'ZA', [], []], ['12:3:2', 'ZA', [], []], ['2.5:3:2', 'ZA', [], []], ['2:3:2', 'US', [], []], ['2-3-2 (22)', 'ZA', [], ['grade-ratio-taken']], ['2:3:2 (22)', 'US', [], ['grade-ratio-taken']], ['2-3-2 (22)', 'US', ['grade-ratio'], []], ['5:5:5 (16)', 'US', ['grade-ratio'], []], ['10-10-10 (30)', 'US', [], []], ['10-10-10 (20)', 'US', [], ['grade-bracket']],
  ])('%s in %s', (text, country, faults, notes) => {
    const found = numbers(text, country);
    expect([found.faults.map((f) => f.code), found.notes.map((n) => n.code)]).toEqual([faults, notes]);
  });
  test('asked with both readings', () => expect(numbers('2-3-2 (22)', 'US').faults).toEqual([{ code: 'grade-ratio', facts: { read: '2-3-2 (22)', percent: '2-3-2', n: 6.3, p: 9.4, k: 6.3 } }]));
  test('named alone', () => {
    expect(numbers('27 % N')).toMatchObject({ numbers: [27, 0, 0], printed: '27-0-0', p: null, k: null });
    expect(numbers('12 % N, 5 % P2O5, 14 % K2O')).toMatchObject({ numbers: [12, 5, 14], p: 'oxide', k: 'oxide' });
    expect(numbers('5 % P')).toMatchObject({ numbers: [0, 5, 0], p: null });
    expect(numbers('fine stuff')).toMatchObject({ numbers: null, printed: '', byVolume: false });
    expect(numbers('120 g/L N')).toMatchObject({ numbers: [12, 0, 0], byVolume: true });
  });
  test('a nitrogen told a little otherwise is rounding, far otherwise a contradiction', () => {
    expect(numbers('10-10-10, 10.8 % N').faults).toEqual([]);
    expect(numbers('10-10-10, 10.9 % N').faults).toMatchObject([{ code: 'grade-two-values' }]);
    expect(numbers('10-10-10, 4 % N').faults).toEqual([]);
  });
});

// The everyday feeds by their names in Italian and Portuguese (practice).
test.each([
  ['Solfato ammonico', 'ammonium-sulphate'], ["Solfato d'ammonio", 'ammonium-sulphate'], ['Ureia', 'urea'], ['Nitrato di calcio', 'calcium-nitrate'], ['Nitrato potassico', 'potassium-nitrate'], ['Perfosfato semplice', 'superphosphate'], ['Perfosfato triplo', 'triple-superphosphate'], ['Solfato di potassio', 'potassium-sulphate'], ['Cloreto de potássio', 'potassium-chloride'], ['Sulfato de potássio', 'potassium-sulphate'], ['Solfato di magnesio', 'magnesium-sulphate'],
  ['Farina di sangue', 'blood-meal'], ['Cornunghia', 'hoof-and-horn'], ["Farina d'ossa", 'bone-meal'], ['Farinha de ossos', 'bone-meal'], ['Torta de mamona', 'castor-meal'], ['Pollina', 'hen-manure'], ['Pollina pellettata', 'hen-manure-dried'], ['Letame bovino', 'cow-manure'], ['Stallatico pellettato', 'cow-manure-dried'], ['Esterco de galinha', 'hen-manure'], ['Fondi di caffè', 'coffee-grounds'], ['Humus de minhoca', 'worm-castings'],
])('%s is %s', (text, id) => expect(materialNamed(text)?.material.id).toBe(id));
