// Labels as printed in many countries. Every number expected was worked by hand from the label itself by the factors of
// materials.md 5 (P × 2.29132 = P2O5, K × 1.20460 = K2O, CaO × 0.71470 = Ca, MgO × 0.60304 = Mg, SO3 × 0.40046 = S), or stands in the source named.
import { describe, expect, test } from 'vitest';
import { noticeText } from '../../src/json/notices.ts';
import { bagOf, codes, LB, read } from './labels.ts';

/** Percent of N, P2O5, K2O to two decimals. */
const percent = (text: string, country: string | null = 'US'): number[] => Object.values(bagOf(text, country).grade).map((x) => Math.round(x * 1e4) / 1e2);

describe('numbers as they are printed', () => {
  test.each([
    // One nutrient by name: the label means just that.
    ['Feed, N 21%', 'US', [21, 0, 0]], ['27% N', 'US', [27, 0, 0]], ['46 % N', 'US', [46, 0, 0]], ['CAN 27% N', 'GB', [27, 0, 0]], ['CAN 27N', 'GB', [27, 0, 0]], ['K2O 60%', 'US', [0, 0, 60]], ['Superphosphate, 18% P2O5', 'US', [0, 18, 0]], ['Blutmehl 14 % N', 'DE', [14, 0, 0]],
    ['Stickstoff 12 %, Phosphat 12 %, Kali 17 %', 'DE', [12, 12, 17]], ['12 % nitrógeno, 8 % fosfato, 16 % potasa', 'ES', [12, 8, 16]],
    ['Guaranteed analysis: total nitrogen (N) 10%, available phosphate (P2O5) 5%, soluble potash (K2O) 8%', 'US', [10, 5, 8]], ['10% nitrogen, 5% phosphate, 8% potash', 'US', [10, 5, 8]],
    ['N 12 P 5 K 14', 'US', [12, 5, 14]], ['N12 P5 K14', 'US', [12, 5, 14]], ['N: 12, P: 5, K: 14', 'US', [12, 5, 14]], ['N-P2O5-K2O 12-5-14', 'AU', [12, 11.46, 16.86]], ['NPK 15 15 15, 25 kg', 'ES', [15, 15, 15]], ['12+12+17', 'DE', [12, 12, 17]],
    ['12% N, 5% P, 14% K', 'US', [12, 5, 14]], ['15 % N (7 % nitrate nitrogen, 8 % ammoniacal nitrogen)', 'US', [15, 0, 0]],
    // The element told again in brackets, as British labels do.
    ['P2O5 5% (2.2% P), K2O 6% (5.0% K), N 4%', 'GB', [4, 5, 6]],
    ['Urea 46%', 'US', [46, 0, 0]], ['Ammonium nitrate 33.5 %', 'US', [33.5, 0, 0]], ['UAN 32', 'US', [32, 0, 0]], ['UAN-28', 'US', [28, 0, 0]], ['CAN 26, 25 kg', 'IE', [26, 0, 0]], ['Muriate of potash, 62 %', 'US', [0, 0, 62]],
  ])('%s in %s', (text, country, expected) => { expect(percent(text, country)).toEqual(expected); });

  test.each([
    // 5 × 2.29132 = 11.457, 14 × 1.20460 = 16.864 (materials.md D6).
    ['12% N, 5% P, 14% K', 'AU', [12, 11.46, 16.86]], ['12-5-14 as elements', 'US', [12, 11.46, 16.86]], ['12-5-14 (elemental)', 'GB', [12, 11.46, 16.86]], ['Elemental 12-5-14', null, [12, 11.46, 16.86]], ['12-5-14', 'IE', [12, 11.46, 16.86]], ['12-5-14', 'NZ', [12, 11.46, 16.86]],
    ['12-5-14 as oxides', 'AU', [12, 5, 14]], ['12-5-14 (oxides)', 'IE', [12, 5, 14]], ['12% N, 5% P2O5, 14% K2O', 'AU', [12, 5, 14]], ['12-5-14', null, [12, 5, 14]],
    // A label may mix them: 5 % P is 11.46, 14 % K2O stays.
    ['12% N, 5% P, 14% K2O', 'AU', [12, 11.46, 14]],
    // Vegetables WA, READ: single superphosphate 0:8.8:0:11; 8.8 × 2.29132 = 20.16.
    ['Single superphosphate 0:8.8:0:11', 'AU', [0, 20.16, 0]],
  ])('elements or oxides: %s in %s', (text, country, expected) => { expect(percent(text, country)).toEqual(expected); });

  test.each([
    // agrispex.co.za, READ: 4:3:4 (33) is 12 % N, 9 % P, 12 % K; 9 × 2.29132 = 20.62, 12 × 1.20460 = 14.46.
    ['4:3:4(33)', 'ZA', [12, 20.62, 14.46]], ['4:3:4(33)+0.5%Zn, 50 kg', 'ZA', [12, 20.62, 14.46]],
    // 22 × 2/7 = 6.29, 22 × 3/7 = 9.43 P = 21.60 P2O5, 6.29 K = 7.57 K2O.
    ['2:3:2 (22)', 'ZA', [6.29, 21.6, 7.57]], ['2:3:2 (22)', 'US', [6.29, 21.6, 7.57]], ['2:3:2 (14), 10 kg', null, [4, 13.75, 4.82]],
    // 26 × 3/9, 26/9, 26 × 5/9.
    ['3:1:5 (26) SR, 5 kg', 'ZA', [8.67, 6.62, 17.4]],
    ['10-10-10', 'ZA', [10, 22.91, 12.05]],
  ])('a ratio with its total: %s in %s', (text, country, expected) => { expect(percent(text, country)).toEqual(expected); });
  test.each([['2:3:2', 'ZA', 'grade-ratio-total'], ['2-3-2 (22)', 'US', 'grade-ratio'], ['6:5:5 (20)', 'GB', 'grade-ratio']])('asked where it may be one: %s in %s', (text, country, code) => {
    expect(codes(text, country)).toEqual([code]);
    expect(read(text, country).bag).toBeNull();
  });
  test('no ratio: brackets that hold the sum, or less', () => {
    expect(percent('5-10-10 (25)')).toEqual([5, 10, 10]);
    expect(codes('5-10-10 (25)')).toEqual([]);
    expect(percent('20-10-10(4)', 'GB')).toEqual([20, 10, 10]);
    expect(codes('20-10-10(4)', 'GB')).toEqual(['grade-bracket']);
  });

  test.each([
    ['0-0-0', 'grade-empty'], ['50-50-50', 'grade-impossible'], ['NaN-1-1', 'grade-missing'], ['-5-10-10', 'grade-negative'], ['Balanced -5-10-10, 4 lb', 'grade-negative'], ['10% N, 20% N', 'grade-two-values'], ['5-10-10, 21% N', 'grade-two-values'], ['Something 110 % N', 'grade-impossible'],
    ['0% N', 'grade-empty'], ['10-10-10 $9 $12', 'bag-part-unknown'], ['10-10-10, 1,000 kg bulk bag, $900', 'number-two-ways'], ['12-25-30 as elements', 'grade-impossible'], ['10-10-10, cup 7 lb', 'cup-odd'], ['10-10-10, 1 gal, density 12 kg/L', 'density-odd'],
  ])('refused: %s', (text, code) => {
    expect(read(text).bag).toBeNull();
    expect(codes(text)).toContain(code);
    const said = noticeText(read(text).notices[0]!, 'en-US');
    // What was read, and an example or what to do.
    expect(said).toMatch(/\d/);
    expect(said).toMatch(/instance|Check|Write|like:|Copy/);
  });
  test('a very long line is no bag', () => expect(codes(`${'very good feed '.repeat(200)}10-10-10`)).toEqual(['bag-long']));
});

describe('sulphur, calcium, magnesium', () => {
  test.each([
    // materials.md 6: 14 % CaO = 10.0 % Ca, 29 % SO3 = 11.6 % S.
    ['NPK (Ca,S) 4-12-12 (14-29)', 'PL', { Ca: 10.01, S: 11.61 }], ['NPK (S) 8-20-30-(5)', 'PL', { S: 2 }], ['NPK(Mg,S) 12-12-17 (2-20)', 'DE', { Mg: 1.21, S: 8.01 }],
    ['15.5-0-0 +26CaO', 'US', { Ca: 18.58 }], ['12-12-17+2MgO', 'DE', { Mg: 1.21 }], ['12-12-17 +2MgO +8S', 'DE', { Mg: 1.21, S: 8 }], ['20-10-10+4SO3', 'GB', { S: 1.6 }], ['10-10-10-5S', 'US', { S: 5 }], ['10-10-10 (5S)', 'US', { S: 5 }],
    // Four numbers: N:P:K:S in Australia (Vegetables WA, READ).
    ['21-0-0-24', 'AU', { S: 24 }], ['0:8.8:0:11', 'AU', { S: 11 }], ['10-10-10-5', 'US', {}],
    ['Feed 20-0-0, 24% S, 2 % Mg', 'US', { S: 24, Mg: 2 }],
    // Where the label is silent, what the material has: IFA, READ.
    ['Ammonium sulphate, 4 lb', 'US', { S: 24 }], ['Sulphate of potash 0-0-50', 'US', { S: 18 }], ['0-0-60', 'US', { Cl: 47.5 }], ['10-10-10', 'US', {}],
  ])('%s in %s', (text, country, expected) => {
    const { others } = bagOf(text, country);
    expect(Object.fromEntries(Object.entries(others).map(([e, x]) => [e, Math.round(x * 1e4) / 1e2]))).toEqual(expected);
  });
});

describe('what a name says', () => {
  test.each([
    ['Calcium ammonium nitrate, 20 lb', 'calcium-ammonium-nitrate', [27, 0, 0]], ['CAN', 'calcium-ammonium-nitrate', [27, 0, 0]], ['Kalkammonsalpeter, 25 kg', 'calcium-ammonium-nitrate', [27, 0, 0]], ['Ammonium nitrate, 20 lb', 'ammonium-nitrate', [34, 0, 0]], ['Ammonsulfat', 'ammonium-sulphate', [21, 0, 0]],
    ['Sulfato de amonio 25 kg', 'ammonium-sulphate', [21, 0, 0]], ['Harnstoff', 'urea', [46, 0, 0]], ['Nitrato de calcio', 'calcium-nitrate', [15.5, 0, 0]], ['Chile saltpetre', 'sodium-nitrate', [16, 0, 0]], ['Saltpetre', 'potassium-nitrate', [13, 0, 44]], ['Triple superphosphate', 'triple-superphosphate', [0, 46, 0]],
    ['Superfosfato triple', 'triple-superphosphate', [0, 46, 0]], ['Cloruro de potasio', 'potassium-chloride', [0, 0, 60]], ['Potassium magnesium sulfate', 'potassium-magnesium-sulphate', [0, 0, 22]], ['Patentkali', 'patentkali', [0, 0, 30]], ['Sulfur coated urea, 20 lb', 'sulphur-coated-urea', [37, 0, 0]],
    ['Hornspäne 2,5 kg', 'hoof-and-horn', [13, 1, 0]], ['Harina de sangre', 'blood-meal', [12, 1, 0.6]], ['Cottonseed meal, 50 lb', 'cottonseed-meal', [6, 2.5, 1.5]], ['Coffee grounds', 'coffee-grounds', [2.1, 0.3, 0.3]],
  ])('%s', (text, id, grade) => {
    expect(bagOf(text).material?.id).toBe(id);
    expect(percent(text)).toEqual(grade);
  });
  test('the label outranks the table', () => {
    expect(percent('Calcium ammonium nitrate 26-0-0')).toEqual([26, 0, 0]);
    expect(percent('Bone meal 4-12-0')).toEqual([4, 12, 0]);
  });
  test('numbers that the named thing cannot have belong to a blend', () => {
    expect(bagOf('Lawn feed with urea 20-5-10').material).toBeNull();
    expect(bagOf('Rose food, 10-10-10 with bone meal').material?.id).toBe('10-10-10');
    expect(bagOf('Compost starter 4-4-4').material).toBeNull();
    expect(bagOf('Watering can feed 5-5-5').material).toBeNull();
  });
  test('what varies too much is asked, and the spread told', () => {
    for (const text of ['Bat guano, 5 lb', 'Seabird guano', 'Tankage, 10 lb', 'Chicken manure pellets, 25 lb', 'Dried poultry manure', 'Rock phosphate, 20 lb', 'UAN']) {
      expect([text, codes(text)]).toEqual([text, ['material-bag-only']]);
      expect(noticeText(read(text).notices[0]!, 'en-US')).toMatch(/\d–\d+/);
    }
    expect(percent('Bat guano 10-3-1, 5 lb')).toEqual([10, 3, 1]);
  });
  test('a wide spread is told, a narrow one not', () => {
    expect(codes('Bone meal, 5 lb')).toEqual(['material-spread']);
    expect(codes('Bone meal, 3-15-0, 5 lb')).toEqual([]);
    expect(codes('Urea, 50 lb')).toEqual([]);
  });
  test('a table of oxides is no table of elements', () => {
    // 60 % K2O × 0.83015 = 49.8 % K is what such a bag prints in Australia.
    const bag = bagOf('Muriate of potash, 5 kg', 'AU');
    expect(bag.grade.K2O).toBeCloseTo(0.6, 9);
    expect(bag.printed).toBe('0-0-49.8');
  });
  test.each(['constructor 1-1-1', '__proto__ 1-1-1', 'toString, 1-1-1, 5 lb', '🍎 Apple food 1-1-1 🍏', 'hasOwnProperty 1-1-1'])('a name is only a name: %s', (text) => { expect(percent(text)).toEqual([1, 1, 1]); });
  test('two bags of one name are two bags', () => { expect(bagOf('Balanced, 10-10-10, 5 lb').label).toBe(bagOf('Balanced, 5-10-10, 5 lb').label); });
  test('an ampersand, a comma and a hyphen in a name', () => {
    for (const text of ['Blood, fish and bone 5-5-6.5, 10 kg', 'Blood, fish & bone 5-5-6.5', 'Fish-blood-and-bone 5-5-6.5']) expect(bagOf(text, 'GB').material?.id, text).toBe('blood-fish-and-bone');
    expect(bagOf('Blood, fish & bone 5-5-6.5, 10 kg', 'GB').label).toBe('Blood, fish & bone');
  });
});

describe('words', () => {
  test.each([
    ['Weed & feed 29-0-4', true], ['Lawn feed with dicamba 20-5-5', true], ['Feed weed and moss killer 10-2-4', true], ['Rasendünger mit Unkrautvernichter 20-5-8', true], ['Abono con herbicida 15-5-5', true], ['Engrais désherbant 10-5-5', true], ['Crabgrass preventer 30-0-4', true],
    ['Seaweed feed 5-2-8', false], ['Weed-free compost 1-1-1', false], ['Weed seed free manure 1-1-1', false], ['No herbicide, 10-10-10', false], ['Lawn feed 20-5-5', false],
  ])('weed killer: %s', (text, kills) => { expect(bagOf(text).weedKiller).toBe(kills); });
  test.each([
    ['10-10-10', 0, false], ['10-10-10 slow release', 1, true], ['Coated 15-5-10', 1, true], ['10-10-10, 50% slow release nitrogen', 0.5, true], ['29-0-4 30% slow release nitrogen', 0.3, false], ['29-0-4, 25% of N slow release', 0.25, false], ['20-5-10, 70 % coated', 0.7, true],
    // 2.5 points of 15 are a sixth.
    ['15-5-10 with 2.5% slowly available nitrogen', 2.5 / 15, false], ['3:1:5 (26) SR', 1, true],
  ])('slow: %s', (text, share, slow) => {
    expect(bagOf(text).slowShare).toBeCloseTo(share, 9);
    expect(bagOf(text).slow).toBe(slow);
  });
  test('nitrate: by name, by material, by grade', () => {
    for (const text of ['Calcium ammonium nitrate', '27-0-0', 'Potassium nitrate', '34-0-0', '33.5-0-0', 'Kalksalpeter', 'UAN 28', 'Feed 12-5-14, 7 % nitrate nitrogen']) expect([text, bagOf(text).nitrate]).toEqual([text, true]);
    for (const text of ['Urea', 'Ammonium sulphate', '10-10-10', 'Nitrate-free feed 5-5-5', 'Blood meal']) expect([text, bagOf(text).nitrate]).toEqual([text, false]);
  });
  test('organic kinds, and raw manure', () => {
    const kinds = (text: string) => [bagOf(text).organic, bagOf(text).fresh === true];
    expect(kinds('Blood meal')).toEqual(['meal', false]);
    expect(kinds('Horse manure')).toEqual(['manure', true]);
    expect(kinds('Well rotted horse manure')).toEqual(['manure', false]);
    expect(kinds('Fresh horse manure 0.6-0.3-0.6')).toEqual(['manure', true]);
    expect(kinds('Cow manure 0.5-0.5-0.5, 40 lb')).toEqual(['manure', false]);
    expect(kinds('Composted horse manure')).toEqual(['compost', false]);
    expect(kinds('Garden compost')).toEqual(['compost', false]);
    expect(kinds('Wood ash 0-1-5')).toEqual(['ash', false]);
    expect(kinds('Organic tomato feed 4-3-8')).toEqual(['meal', false]);
    expect(kinds('10-10-10')).toEqual([null, false]);
  });
  test('lime, sulphur, gypsum and ash without numbers are what they were', () => {
    expect(bagOf('Garden lime, CCE 90, 40 lb').amends?.kind).toBe('lime');
    expect(bagOf('Elemental sulfur, 5 lb').amends?.kind).toBe('sulphur');
    expect(bagOf('Wood ash, 20 lb').amends?.kind).toBe('lime');
    expect(codes('Gypsum, 40 lb')).toEqual(['not-lime']);
    // Names a lime or sulphur, and feeds.
    expect(bagOf('Nitro-chalk, 25 kg', 'GB').amends).toBeUndefined();
    expect(bagOf('Ammonium sulphate, 21 % N, 24 % sulphur').amends).toBeUndefined();
  });
  test('a cup of one\'s own, as US cups', () => {
    expect(bagOf('10-10-10, 40 lb, cup 7 oz').cupG).toBeCloseTo((7 * LB) / 16, 6);
    expect(bagOf('Bone meal 3-15-0, level cup 210 g').cupG).toBeCloseTo(210, 9);
    // A metric cup is 250 mL, a US cup 236.588.
    expect(bagOf('10-10-10, 5 kg, level cup 250 g', 'GB').cupG).toBeCloseTo(236.588, 3);
    expect(bagOf('10-10-10, 200 g a cup').cupG).toBeCloseTo(200, 9);
    expect(bagOf('10-10-10, one level cup weighs 7.5 oz').cupG).toBeCloseTo((7.5 * LB) / 16, 6);
    expect(bagOf('10-10-10, 40 lb').cupG).toBeUndefined();
    expect(bagOf('10-10-10, 40 lb, cup 7 oz').g).toBeCloseTo(40 * LB, 6);
    expect(codes('10-10-10, 1/2 cup 3 oz')).not.toEqual([]);
  });
});
