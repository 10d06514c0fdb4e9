// Words of a label, each by itself. What a word says of a bag is trade usage (practice) unless a source is named; pound 453.59237 g, US gallon 3785.411784 mL, US cup 236.5882365 mL.
import { describe, expect, test } from 'vitest';
import { bringsNitrate, carriesChloride, isFresh, isSlow, killsWeeds, organicKind, saysLiquid, saysSoluble, sayingsIn, slowShareOf } from '../../src/orchard/label-words.ts';
import { MATERIALS } from '../../src/tables/materials.ts';

const said = (text: string, country: string | null = 'US') => sayingsIn(text, country);
const material = (id: string) => MATERIALS.find((m) => m.id === id)!;

describe('how heavy a cup is', () => {
  test.each<[string, number]>([['Bone meal, cup 150 g', 150], ['a cup is 5 oz', (5 * 453.59237) / 16], ['one level cup of it weighs 8 ounces', (8 * 453.59237) / 16], ['250 g per cup', 250], ['half a pound a cup, 1 lb/cup', 453.59237], ['9.5 oz a level cup', (9.5 * 453.59237) / 16], ['cupful: 200 grams', 200], ['cup = 1,5 lbs', 1.5 * 453.59237], ['cup holds 2 pounds', 2 * 453.59237], ['1 cup of this 1 ounce', 453.59237 / 16], ['1 gram the cup', 1], ['1 pound/cup', 453.59237]])('%s', (text, g) => expect(said(text).cup).toBeCloseTo(g, 9));
  test.each(['half a cup 75 g', '2 cups 300 g', '1/2 cup 75 g', '2 cup 300 g', 'hiccup 5 g', 'cup 150 grains', 'no such word 150 g'])('%s: nothing told', (text) => expect(said(text).cup).toBeNull());
  test('a metric cup is 250 mL; told is what a US cup of 236.6 mL weighs', () => {
    expect(said('cup 250 g', 'GB').cup).toBeCloseTo(236.5882365, 9);
    expect(said('cup 250 g', null).cup).toBe(250);
  });
  test('what it said is gone from the rest', () => expect(said('10-10-10, cup 150 g, 20 lb').rest).toBe('10-10-10,  , 20 lb'));
});

describe('how dense it is', () => {
  test.each<[string, number]>([['density 1.2', 1.2], ['1.25 kg/L', 1.25], ['1,3 g/mL', 1.3], ['1.1 g / cc', 1.1], ['1.1 kg per litre', 1.1], ['1.1 kg per liter', 1.1], ['1.1 kg/dm3', 1.1], ['1.1 g/cm3', 1.1], ['1.1 g/cm³', 1.1], ['10 lb/gal', 4535.9237 / 3785.411784], ['weighs 10 pounds per US gallon', 4535.9237 / 3785.411784], ['10 lbs a gallon', 4535.9237 / 3785.411784], ['specific gravity 1.3', 1.3], ['sp. gr. 1.3', 1.3], ['SG: 1.3', 1.3], ['Dichte 1,24', 1.24], ['densidad = 1,24', 1.24]])('%s', (text, density) => expect(said(text).density).toBeCloseTo(density, 9));
  test.each(['5 kg', 'density 20 %', '12 lb', 'msg 1.3', '1.1 kg'])('%s: nothing told', (text) => expect(said(text).density).toBeNull());
  test('it is gone from the rest', () => expect(said('7-2-7, 1.25 kg/L, 1 L').rest).toBe('7-2-7,  , 1 L'));
});

describe('what the numbers are', () => {
  test.each(['10-4-6 w/v', '10-4-6 % w/v', '10-4-6 (m/v)', '10-4-6 weight by volume', '10 g per 100 ml', '10 grams per 100ml', '10 g/100 ml', '10g/100ml', '10 g per 100ml', '10 gram/100 ml'])('%s is by volume', (text) => expect(said(text).byVolume).toBe(true));
  test.each(['10-4-6 w/w', '10-4-6', 'volume 5 L', 'w/vine', '10-4-6 by weight'])('%s is not', (text) => expect(said(text).byVolume).toBe(false));
  test.each([['10-4-6 w/v, 1 L', '10-4-6  , 1 L'], ['10-4-6 % w/w, 1 L', '10-4-6  , 1 L'], ['10-4-6 (m/m), 1 L', '10-4-6  , 1 L'], ['10-4-6 weight by weight, 1 L', '10-4-6  , 1 L'], ['10-4-6 as elements, 1 L', '10-4-6  , 1 L']])('%s leaves %s', (text, rest) => expect(said(text).rest).toBe(rest));
  test.each<[string, 'element' | 'oxide' | null]>([['10-4-6 elemental', 'element'], ['10-4-6 as elements', 'element'], ['10-4-6 given as the pure element', 'element'], ['10-4-6 (in oxides)', 'oxide'], ['10-4-6 oxides', 'oxide'], ['10-4-6 told as oxide', 'oxide'], ['10-4-6 printed as elemental', 'element'], ['elemental sulphur 90 %', null], ['oxides of iron', null], ['trace elements', null], ['10-4-6', null]])('%s: %s', (text, basis) => expect(said(text).basis).toBe(basis));
});

describe('how slow', () => {
  test.each<[string, number, boolean]>([['50% slow release nitrogen', 50, false], ['30 % of the nitrogen is coated', 30, false], ['30% of its N as controlled-release', 30, false], ['12,5 % water insoluble nitrogen', 12.5, true], ['4% WIN', 4, true], ['6 % slowly available nitrogen', 6, true], ['20% SRN', 20, false], ['slow-release nitrogen: 40%', 40, false], ['timed releasing 40 %', 40, false], ['polymer-coated release 80 %', 80, false], ['25% extended release', 25, false]])('%s', (text, percent, ofBag) => expect(said(text).slow).toEqual({ percent, ofBag }));
  test.each(['slow release', '50% nitrogen', '24 % S', '40% slowpoke'])('%s: no share', (text) => expect(said(text).slow).toBeNull());
  test.each<[{ percent: number; ofBag: boolean } | null, number, string, string | null, number]>([
    [{ percent: 40, ofBag: false }, 10, '', null, 0.4], [{ percent: 4, ofBag: true }, 10, '', null, 0.4], [{ percent: 10, ofBag: true }, 10, '', null, 1], [{ percent: 40, ofBag: true }, 10, '', null, 0.4], [{ percent: 40, ofBag: true }, 0, '', null, 0.4], [{ percent: 140, ofBag: false }, 10, '', null, 1],
    [null, 10, 'slow release', null, 1], [null, 10, 'not slow', null, 0], [null, 10, 'no slow parts', null, 0], [null, 10, 'sr 10-10-10', null, 1], [null, 10, 'sri lanka', null, 0], [null, 10, 'coated', null, 1], [null, 10, 'controlled', null, 1], [null, 10, 'langzeitdünger', null, 1], [null, 10, 'depotdünger', null, 1],
    [null, 10, 'liberación lenta', null, 1], [null, 10, 'liberacion controlada', null, 1], [null, 10, 'libération contrôlée', null, 1], [null, 10, 'liberation lente', null, 1], [null, 10, 'plain', null, 0], [null, 10, 'plain', 'urea', 0],
    [null, 37, 'scu', 'sulphur-coated-urea', 1],
  ])('%j of %i %%, "%s", %s: %d', (slow, n, words, id, share) => expect(slowShareOf(slow, n, words, id === null ? null : material(id))).toBeCloseTo(share, 9));
  test('from a half on', () => expect([0.49, 0.5, 1].map(isSlow)).toEqual([false, true, true]));
});

describe('words for what it is', () => {
  test.each(['liquid feed', 'fish emulsion', 'hydrolysed fish', 'hydrolyzed fish', 'flüssigdünger', 'flussigdunger', 'líquido', 'liquide', '4-2-3 w/v', 'w / v', 'in solution'])('%s is a liquid', (words) => expect(saysLiquid(words)).toBe(true));
  test.each(['granules', 'solutions4u', 'vw/vine'])('%s is none', (words) => expect(saysLiquid(words)).toBe(false));
  test.each(['weed and feed', 'weedkiller', 'herbicide', 'herbizid', 'moss kill', 'mosskiller', 'moss control', 'moss out', 'moosvernichter', 'gegen moos', 'unkraut weg', 'moosfrei', 'désherbant', 'desherbant', 'anti-mousse', 'antimousse', 'malas hierbas', 'mala hierba', 'matamalezas', 'malezas', 'with 2,4-d', '2,4d', 'dicamba', 'atrazine', 'mcpa', 'mcpp', 'mecoprop', 'quinclorac', 'triclopyr', 'fluroxypyr', 'clopyralid', 'dithiopyr', 'prodiamine', 'pendimethalin', 'trifluralin', 'glyphosate', 'glyphosat', 'pre-emergent', 'preemergent', 'crabgrass preventer'])('%s kills weeds', (words) => expect(killsWeeds(words)).toBe(true));
  test.each(['seaweed', 'sea weed', 'weed-free', 'weeds free', 'weed seed free', 'weed-seeds-free', 'no weed killer', 'without weedkillers', 'free of herbicide', 'ohne unkrautvernichter', 'sin herbicidas', 'sans désherbant', 'sans desherbants', 'no weeds', 'free of weed seeds', 'lawn food'])('%s does not', (words) => expect(killsWeeds(words)).toBe(false));
  test('one word of it is enough beside another that denies it', () => expect(killsWeeds('no weed killer but crabgrass preventer')).toBe(true));
  test.each(['soluble feed', 'water soluble', 'crystals', 'wasserlöslich', 'wasserloslich', 'hidrosoluble'])('%s dissolves', (words) => expect(saysSoluble(words)).toBe(true));
  test.each(['insoluble', 'citrate soluble', 'citrate-soluble', 'slowly soluble', 'granules'])('%s does not', (words) => expect(saysSoluble(words)).toBe(false));
});

describe('chloride', () => {
  test.each(['chloride free', 'chloride-free', 'chloridfrei', 'chloridarm', 'no chloride', 'without chloride', 'sin cloro', 'sans chlore', 'potassium sulphate 10-10-10', 'with sulfate of potash', 'organic 5-5-5', 'meal', 'manure', 'seaweed', 'kelp', 'compost', 'wood ash'])('%s: none', (words) => expect(carriesChloride(words, null)).toBe(false));
  test.each(['muriate of potash', 'potassium chloride', 'kaliumchlorid', 'cloruro potásico', 'chlorure', '10-10-10', 'ashford blend', 'muriate and sulphate'])('%s: yes', (words) => expect(carriesChloride(words, null)).toBe(true));
  test('a material tells by itself, a grade that many bags share does not', () => {
    expect(carriesChloride('sop', material('potassium-sulphate'))).toBe(false);
    expect(carriesChloride('10-10-10', material('10-10-10'))).toBe(true);
    expect(carriesChloride('organic 10-10-10', material('10-10-10'))).toBe(false);
    expect(carriesChloride('mop', material('potassium-chloride'))).toBe(true);
  });
});

describe('nitrate', () => {
  const grade = (N: number, P2O5 = 0, K2O = 0) => ({ N, P2O5, K2O });
  test.each(['calcium nitrate', 'kalksalpeter', 'saltpetre', 'nitric', 'nitro-chalk', 'nitrochalk', 'salitre', 'nitrat'])('%s', (words) => expect(bringsNitrate(words, null, grade(0.15))).toBe(true));
  test.each(['no nitrate', 'without nitrate', 'free of nitrates', 'nitrate free', 'nitratfrei', 'nitrate-free', 'urea'])('%s: none', (words) => expect(bringsNitrate(words, null, grade(0.15))).toBe(false));
  // Ammonium nitrate is sold at 33 to 34.5 %; nothing else stands there (practice).
  test.each<[number, number, number, boolean]>([[0.34, 0, 0, true], [0.33, 0, 0, true], [0.32, 0, 0, false], [0.355, 0, 0, false], [0.36, 0, 0, false], [0.34, 0.01, 0, false], [0.34, 0, 0.01, false]])('%d-%d-%d alone: %s', (n, p, k, yes) => expect(bringsNitrate('x', null, grade(n, p, k))).toBe(yes));
  test('by what it is', () => expect(bringsNitrate('x', material('potassium-nitrate'), grade(0.1))).toBe(true));
});

describe('what grew or lived', () => {
  test.each<[string, string | null]>([['garden compost', 'compost'], ['farm manure', 'manure'], ['cow dung', 'manure'], ['guano', 'manure'], ['feather meal', 'meal'], ['organic 4-4-4', 'meal'], ['biologisch', 'meal'], ['biologique', 'meal'], ['abono orgánico', 'meal'], ['organico', 'meal'], ['organo-mineral compost', null], ['mineral manure', null], ['organic matter 20 %', null], ['10-10-10', null], ['oatmeal', null], ['dungarees', null]])('%s: %s', (words, kind) => expect(organicKind(words, null)).toBe(kind));
  test('by the material before the words', () => {
    expect(organicKind('compost', material('blood-meal'))).toBe('meal');
    expect(organicKind('organic', material('urea'))).toBeNull();
    expect(organicKind('organic', material('10-10-10'))).toBe('meal');
  });
  test.each<[string, string, boolean, boolean]>([
    ['cow manure', 'cow-manure', false, true], ['cow manure', 'cow-manure', true, false], ['fresh cow manure', 'cow-manure', true, true], ['raw cow manure', 'cow-manure', true, true], ['frischer mist', 'cow-manure', true, true], ['estiércol fresco', 'cow-manure', true, true], ['fumier frais', 'cow-manure', true, true],
    ['letame maturo', 'cow-manure', false, false], ['letame', 'cow-manure', false, true], ['esterco curtido', 'cow-manure', false, false], ['letame fresco', 'cow-manure', true, true],
    ['composted cow manure', 'cow-manure', false, false], ['well rotted cow manure', 'cow-manure', false, false], ['aged manure', 'cow-manure', false, false], ['dried', 'cow-manure', false, false], ['pellets', 'cow-manure', false, false], ['dehydrated', 'cow-manure', false, false], ['sterilised', 'cow-manure', false, false], ['sterilized', 'cow-manure', false, false], ['cured', 'cow-manure', false, false], ['mature', 'cow-manure', false, false], ['verrottet', 'cow-manure', false, false], ['abgelagert', 'cow-manure', false, false], ['maduro', 'cow-manure', false, false], ['curado', 'cow-manure', false, false], ['composté', 'cow-manure', false, false], ['packaged', 'cow-manure', false, true],
    ['fresh blood meal', 'blood-meal', false, false],
  ])('%s (%s, numbers printed: %s) is fresh: %s', (words, id, graded, fresh) => expect(isFresh(words, material(id), graded)).toBe(fresh));
  test('nothing known is not fresh', () => expect(isFresh('fresh', null, false)).toBe(false));
});
