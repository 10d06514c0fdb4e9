// The worked examples 27 to 33 of the notes of the trade (soil-tests.md 9), by look-up in the printed tables; which table
// is taken for whom; what an index and a lab's word mean by region; the class that the lab's own scatter reaches.
import { describe, expect, test } from 'vitest';
import { rateSample, ratingNotices } from '../../src/rating/rate.ts';
import type { Rated, Region } from '../../src/rating/rate.ts';
import type { Reading } from '../../src/soil/reading.ts';
import type { Item, Method, ReportUnit } from '../../src/tables/items.ts';
import type { Rating } from '../../src/tables/ratings.ts';

type Extra = { word?: Rating; range?: [number | null, number | null]; index?: number; form?: Reading['form']; printed?: string; below?: true };
const value = (item: Item, n: number | null, unit: ReportUnit | null, method: Method | null = null, extra: Extra = {}): Reading => ({
  item, value: n, unit, method, form: extra.form ?? null, asPrinted: extra.printed ?? `${item} ${String(n)}`, place: { file: 'report', line: 1, column: 1, length: 1, source: '' },
  lab: { rating: extra.word ?? null, range: extra.range ?? null }, ...(extra.index === undefined ? {} : { index: extra.index }), ...(extra.below ? { below: true as const } : {}),
});
const texture = (word: string): Reading => value('texture', null, null, null, { printed: word });
const place = (text: string, country: string, state: string | null = null, crops: string[] = []): Region => ({ text, country, state, crops });
const NOWHERE: Region = { country: null, state: null };
const NJ = place('New Jersey, US', 'US', 'new jersey');
const OHIO = place('Ohio, US', 'US', 'ohio');
/** The first reading rated; the others are only there to be known. */
const one = (region: Region, ...readings: Reading[]): Rated => rateSample({ name: 's', readings, unread: [] }, region)[0]!;
const says = (r: Rated): [Rating | null, string | null, string | undefined] => [r.rating, r.target, r.ours?.scale];

describe('worked examples of soil-tests.md 9', () => {
  test('27: New Jersey, Mehlich-3 P 60 lb/acre is medium, 30 ppm likewise', () => {
    expect(one(NJ, value('phosphorus', 60, 'lb/acre', 'mehlich-3')).rating).toBe('medium');
    expect(one(NJ, value('phosphorus', 30, 'ppm', 'mehlich-3')).rating).toBe('medium');
  });
  test('28: New Jersey, Mehlich-3 K 300 lb/acre is very high', () => {
    expect(one(NJ, value('potassium', 300, 'lb/acre', 'mehlich-3')).rating).toBe('very-high');
  });
  test('29: Ireland, tillage, P 6.1 mg/L is index 3', () => {
    expect(one(place('Ireland', 'IE'), value('phosphorus', 6.1, 'mg/L', 'morgan')).ours?.name).toBe('3');
  });
  test('30: Northern Ireland, Olsen P 20 and 21 mg/L are 2- and 2+', () => {
    const ni = place('Northern Ireland', 'GB');
    expect([20, 21].map((n) => one(ni, value('phosphorus', n, 'mg/L', 'olsen')).ours?.name)).toEqual(['2-', '2+']);
  });
  test('31: Austria, heavy soil, K 140 mg/kg is C', () => {
    expect(one(place('Austria', 'AT'), value('potassium', 140, 'mg/kg', 'cal'), value('clay', 35, '%')).ours?.name).toBe('C');
  });
  test('32: New Jersey, organic matter 2.2 % on loamy sand, sandy loam, loam, silt loam is VH, H, M, L', () => {
    const words = ['loamy sand', 'sandy loam', 'loam', 'silt loam'].map((t) => one(NJ, value('organic-matter', 2.2, '%'), texture(t)).rating);
    expect(words).toEqual(['very-high', 'high', 'medium', 'low']);
  });
  test('33: Ohio, Mehlich-3 K 110 ppm is within maintenance at CEC 4, below critical at CEC 12', () => {
    const k = (cec: number): Rated => one(OHIO, value('potassium', 110, 'ppm', 'mehlich-3'), value('cec', cec, 'meq/100g'));
    expect([k(4).target, k(12).target]).toEqual(['at', 'below']);
    expect(k(4).ours?.field).toBe(true);
  });
  test('14: New Jersey, Mn 10 ppm at pH 6.5 is an activity of 40.4, over the critical 25', () => {
    const mn = (ppm: number, ...more: Reading[]): Rated => one(NJ, value('manganese', ppm, 'ppm', 'mehlich-3'), ...more);
    expect(mn(10, value('ph', 6.5, 'pH')).target).toBe('at');
    // 101.7 + 3.75 × 5 − 15.2 × 6.5 = 21.65, and × 27 = 104.15.
    expect(mn(5, value('ph', 6.5, 'pH')).target).toBe('below');
    expect(mn(27, value('ph', 6.5, 'pH')).target).toBe('above');
    expect(mn(10).rating).toBeNull();
  });
});

describe('which table', () => {
  const p = value('phosphorus', 18, 'ppm', 'olsen');
  test('none across extractants, and none for a method nobody names', () => {
    for (const region of [NOWHERE, NJ, OHIO, place('UK', 'GB')]) {
      expect(says(one(region, value('phosphorus', 18, 'ppm')))).toEqual([null, null, undefined]);
      expect(says(one(region, value('phosphorus', 18, 'ppm', 'colwell')))).toEqual([null, null, undefined]);
    }
  });
  test('a table whose extractant has no name here is not used for another that is named', () => {
    // Austria, boron by ÖNORM L 1090: medium soil, over 2.5 mg/kg is E.
    const b = (method: Method | null): unknown => one(place('Austria', 'AT'), value('boron', 3, 'mg/kg', method), texture('loam')).rating;
    expect([b(null), b('unknown'), b('kcl'), b('mehlich-3')]).toEqual(['very-high', 'very-high', null, null]);
  });
  test('the own state before fruit elsewhere, fruit elsewhere before none', () => {
    // Iowa: 14 is the end of optimum, 18 high (PM 1688, memory). Washington: 15 to 40 is optimal.
    expect(says(one(place('Iowa, US', 'US', 'iowa'), p))).toEqual(['high', 'above', 'iowa.phosphorus.olsen']);
    expect(says(one(place('Utah, US', 'US', 'utah'), p))).toEqual(['optimum', 'at', 'washington.phosphorus']);
    expect(says(one(NOWHERE, p))).toEqual(['optimum', 'at', 'washington.phosphorus']);
  });
  test('a field table and a recalled one serve their own region alone', () => {
    const bray = value('phosphorus', 18, 'ppm', 'bray-1');
    expect(one(place('Iowa, US', 'US', 'iowa'), bray).ours?.field).toBe(true);
    for (const region of [NOWHERE, NJ, place('France', 'FR')]) expect(one(region, bray).rating).toBeNull();
  });
  test('a general table of another state serves its country, or who tells no place', () => {
    const m3 = value('phosphorus', 60, 'lb/acre', 'mehlich-3');
    for (const region of [NOWHERE, place('Texas, US', 'US', 'texas')]) expect(one(region, m3).ours?.scale).toBe('rutgers.phosphorus');
    expect(one(place('France', 'FR'), m3).rating).toBeNull();
  });
  test('postal codes name a state too', () => {
    expect(one(place('NJ, US', 'US', 'nj'), value('zinc', 0.9, 'ppm', 'mehlich-3')).target).toBe('below');
  });
  test('one crop’s table where nothing else grows', () => {
    // New Zealand, avocado: Olsen P over 50 mg/L, pH 5.8 to 6.4.
    const region = (crops: string[]): Region => place('New Zealand', 'NZ', null, crops);
    expect(says(one(region(['avocado', 'avocado']), value('phosphorus', 30, 'mg/L', 'olsen')))).toEqual(['low', 'below', 'avocado.phosphorus']);
    for (const crops of [['avocado', 'apple'], []]) expect(one(region(crops), value('phosphorus', 30, 'mg/L', 'olsen')).ours?.scale).not.toBe('avocado.phosphorus');
    // New England, apple: P 9 lb/acre, better than the field table of the same state.
    const ct = (crops: string[]): string | undefined => one(place('Connecticut, US', 'US', 'connecticut', crops), value('phosphorus', 12, 'lb/acre', 'modified-morgan')).ours?.scale;
    expect([ct(['apple']), ct(['plum'])]).toEqual(['new-england-apple.phosphorus', 'connecticut.phosphorus']);
  });
  test('the piedmont of Georgia only where it is named', () => {
    const k = value('potassium', 90, 'lb/acre', 'mehlich-1');
    // Coastal plain: 61 to 150 medium. Piedmont: up to 100 low (memory).
    expect(says(one(place('Georgia, US', 'US', 'georgia'), k))).toEqual(['medium', 'below', 'georgia.potassium']);
    expect(says(one(place('Athens, piedmont, Georgia, US', 'US', 'georgia'), k))).toEqual(['low', 'below', 'georgia-piedmont.potassium']);
  });
  test('by texture: Germany’s chamber, K2O 11 mg/100 g', () => {
    const k = (t: string): Rated => one(place('Germany', 'DE'), value('potassium', 11, 'mg/100g', 'cal', { form: 'K2O' }), texture(t));
    expect(['sand', 'loam', 'clay'].map((t) => k(t).ours?.name)).toEqual(['C', 'C', 'B']);
    expect(k('loamy sand').ours?.name).toBe('C');
    // 13 in sand is D (13 to 19). 16 as the element is 19.3 as K2O: D in loam (19 to 32).
    expect(one(place('Germany', 'DE'), value('potassium', 13, 'mg/100g', 'cal', { form: 'K2O' }), texture('sand')).ours?.name).toBe('D');
    expect(one(place('Germany', 'DE'), value('potassium', 16, 'mg/100g', 'cal'), texture('loam')).ours?.name).toBe('D');
  });
  test('salts by dilution, in any unit of conductivity', () => {
    const wa = place('Washington, US', 'US', 'washington');
    expect(one(wa, value('salts', 0.6, 'mmho/cm', '1:1')).target).toBe('above');
    expect(one(wa, value('salts', 400, 'uS/cm', '1:1')).target).toBe('at');
    expect(one(wa, value('salts', 2, 'dS/m', 'paste')).target).toBe('at');
    expect(one(wa, value('salts', 0.6, 'dS/m')).rating).toBeNull();
  });
  test('the same milliequivalents and ppm, each in the row printed for it', () => {
    // 0.6 meq is optimal in print, though 234.6 ppm is too; 0.65 meq is above, 254 ppm is above.
    const k = (n: number, unit: ReportUnit): string | null => one(NOWHERE, value('potassium', n, unit, 'ammonium-acetate')).target;
    expect([k(0.6, 'meq/100g'), k(0.65, 'cmol/kg'), k(0.39, 'meq/100g'), k(151, 'ppm')]).toEqual(['at', 'above', 'below', 'at']);
  });
});

describe('an index means what the region says', () => {
  const at = (region: Region, n: number): [Rating | null, string | null] => {
    const r = one(region, value('potassium', n, 'index'));
    return [r.rating, r.target];
  };
  test('UK 0 to 9, Ireland 1 to 4', () => {
    expect([0, 1, 2, 3, 4, 9].map((n) => at(place('England', 'GB'), n)[1])).toEqual(['far-below', 'below', 'at', 'above', 'above', 'above']);
    expect([0, 1, 2, 3, 4].map((n) => at(place('Ireland', 'IE'), n)[1])).toEqual([null, 'far-below', 'below', 'at', 'above']);
  });
  test('North Carolina 0-10, 11-25, 26-50, 51-100, over 100; Maryland 0-25, 26-50, 51-100, over 100 (memory)', () => {
    const nc = place('North Carolina, US', 'US', 'north carolina');
    expect([10, 11, 25, 26, 50, 51, 100, 101].map((n) => at(nc, n)[0])).toEqual(['very-low', 'low', 'low', 'medium', 'medium', 'high', 'high', 'very-high']);
    const md = place('Maryland, US', 'US', 'maryland');
    expect([25, 26, 50, 51, 100, 101].map((n) => at(md, n)[0])).toEqual(['low', 'medium', 'medium', 'optimum', 'optimum', 'very-high']);
  });
  test('nothing without a region, nor in another', () => {
    for (const region of [NOWHERE, NJ, place('France', 'FR')]) expect(at(region, 2)).toEqual([null, null]);
  });
  test('an index beside a value leads over the value', () => {
    const r = one(place('UK', 'GB'), value('potassium', 300, 'mg/L', 'ammonium-nitrate', { index: 2 }));
    expect([r.target, r.by]).toEqual(['at', 'index']);
  });
});

describe('the lab’s word leads, ours stands beside it', () => {
  test('High is the target in New Jersey, above it elsewhere', () => {
    const k = value('potassium', null, null, null, { word: 'high' });
    expect([one(NJ, k).target, one(NOWHERE, k).target, one(OHIO, k).target]).toEqual(['at', 'above', 'above']);
    expect(one(NJ, value('potassium', null, null, null, { word: 'very-high' })).target).toBe('above');
    expect(one(NJ, value('potassium', null, null, null, { word: 'medium' })).target).toBe('below');
  });
  test('a word on another side of the target raises a notice with the printed target', () => {
    const r = one(place('Washington, US', 'US', 'washington'), value('potassium', 200, 'ppm', 'ammonium-acetate', { word: 'high' }));
    expect([r.rating, r.target, r.by, r.ours?.rating]).toEqual(['high', 'above', 'word', 'optimum']);
    const [n, ...rest] = ratingNotices([r]);
    expect(rest).toEqual([]);
    expect([n!.code, n!.severity, n!.facts.item, n!.facts.labRating, n!.facts.ourRating, n!.facts.span, n!.facts.source])
      .toEqual(['rating-differs', 'warning', 'potassium', 'high', 'optimum', '150-250 ppm', 'Washington State University']);
  });
  test('another region’s table is only a note', () => {
    expect(ratingNotices([one(NOWHERE, value('potassium', 200, 'ppm', 'ammonium-acetate', { word: 'high' }))])[0]!.severity).toBe('note');
  });
  test('far below and below are one side; a printed range differs as a word does', () => {
    const wa = place('Washington, US', 'US', 'washington');
    expect(ratingNotices([one(wa, value('potassium', 50, 'ppm', 'ammonium-acetate', { word: 'low' }))])).toEqual([]);
    expect(ratingNotices([one(wa, value('potassium', 120, 'ppm', 'ammonium-acetate', { range: [100, 160] }))])).toHaveLength(1);
    expect(ratingNotices([one(wa, value('potassium', 160, 'ppm', 'ammonium-acetate'))])).toEqual([]);
  });
});

describe('near an edge', () => {
  const k = (n: number, extra: Extra = {}): Rated => one(NOWHERE, value('potassium', n, 'ppm', 'ammonium-acetate', extra));
  // Washington: medium under 150, optimal to 250. Within a lab K strays 10 % (memory): 15 ppm at 150.
  test('the class that 10 % of the value reaches, on the side of the nearest edge', () => {
    expect([140, 149, 150, 160, 170, 200, 240].map((n) => k(n).near)).toEqual(['optimum', 'optimum', 'medium', 'medium', null, null, 'high']);
  });
  test('pH by 0.1, sulphur by 15 % or 2 ppm', () => {
    expect([5.85, 5.95, 6.05, 6.15].map((n) => one(NOWHERE, value('ph', n, 'pH')).near)).toEqual([null, 'optimum', 'medium', null]);
    const wa = place('Washington, US', 'US', 'washington');
    // 4 to 9 is between low and optimal: 7.5 reaches 9 by 2 ppm, 6.5 neither end.
    expect([7.5, 6.5].map((n) => one(wa, value('sulphur', n, 'ppm')).near)).toEqual(['optimum', null]);
  });
  test('what is only known to lie below a number is near of nothing', () => {
    expect(k(150, { below: true }).near).toBeNull();
    expect(k(150, { below: true }).rating).toBe('medium');
  });
  test('a printed range has edges too; a word only where our table says the same', () => {
    expect(one(NOWHERE, value('potassium', 105, 'ppm', null, { range: [100, 160] })).near).toBe('low');
    expect(k(149, { word: 'medium' }).near).toBe('optimum');
    expect(k(149, { word: 'high' }).near).toBeNull();
  });
});
