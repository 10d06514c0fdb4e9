// Readings, verdicts on bags, entries of the diary and notices in English words: what each must say by its own meaning.
import { describe, expect, test } from 'vitest';
import { entryText } from '../../src/json/diary-words.ts';
import { noticeJson, questionJson } from '../../src/json/notices.ts';
import { leafText, ratingText, summary, takenAs } from '../../src/json/read-words.ts';
import { readJson } from '../../src/json/read-json.ts';
import { collector } from '../../src/json/figures.ts';
import { lineOf } from '../../src/json/shop-words.ts';
import type { Ranked } from '../../src/bags/shop.ts';
import type { Entry } from '../../src/orchard/diary.ts';
import { loadOrchard } from '../../src/orchard/load.ts';
import type { Rated } from '../../src/rating/rate.ts';
import { told } from '../../src/reason/figure.ts';
import { notice } from '../../src/reason/notice.ts';
import { dollars, feed } from '../bags/parts.ts';

const orchard = loadOrchard('where: Ohio, US\ntrees:\n  A: apple, planted 2016\n  Row: 3 pears, planted 2016\n', 'orchard.yaml').orchard!;
const W = orchard.where;
const place = { file: 'soil.txt', line: 7, column: 1, length: 1, source: '' };
const rated = (reading: Partial<Rated['reading']>, more: Partial<Rated> = {}): Rated => ({
  reading: { item: 'phosphorus', value: 20, unit: 'ppm', asPrinted: 'P 20', place, method: null, form: null, lab: { rating: null, range: null }, ...reading },
  mgPerKg: null, rating: null, target: null, by: null, cite: null, ours: null, near: null, ...more,
});
const cite = { source: 'colorado-7612', at: 'page 1', mark: 'read' } as const;

describe('what a line was taken as', () => {
  test.each<[Partial<Rated['reading']>, string]>([
    [{}, 'P 20 ppm'], [{ value: null }, 'P'], [{ form: 'P2O5' }, 'P2O5 20 ppm'], [{ below: true }, 'P <20 ppm'], [{ above: true }, 'P >20 ppm'], [{ to: 30 }, 'P 20-30 ppm'], [{ unit: null }, 'P 20 ?'],
    [{ item: 'ph', value: 6.5, unit: 'pH' }, 'soil pH 6.5'], [{ item: 'buffer-ph', value: 6.8, unit: 'pH' }, 'buffer pH 6.8'],
    // A lime index is the buffer pH times ten: 68 is 6.8 (practice).
    [{ item: 'buffer-ph', value: 68, unit: 'pH' }, 'buffer pH 6.8 (68 ÷ 10)'], [{ item: 'clay', value: 68, unit: '%' }, 'clay 68 %'],
  ])('%j: %s', (reading, wanted) => { expect(takenAs(rated(reading), W)).toBe(wanted); });
});

describe('the rating and who says so', () => {
  test.each<[string, Rated, string]>([
    ['pH at', rated({ item: 'ph' }, { target: 'at', rating: 'medium' }), 'fine for most fruit'], ['above', rated({ item: 'ph' }, { target: 'above' }), 'above what fruit likes'], ['below', rated({ item: 'ph' }, { target: 'below' }), 'below what fruit likes'], ['far below', rated({ item: 'ph' }, { target: 'far-below' }), 'below what fruit likes'], ['pH unrated', rated({ item: 'ph' }), 'changes nothing here'],
    ['a buffer', rated({ item: 'buffer-ph' }), 'sets the lime where the pH is low'], ['texture', rated({ item: 'texture' }, { rating: 'high' }), 'sets how much lime or sulfur'], ['salts', rated({ item: 'salts' }), 'stops feeding where it is too high'], ['humus', rated({ item: 'organic-matter' }), 'halves the nitrogen where it is over 5 %'],
    ['salts by their word', rated({ item: 'salts' }, { rating: 'high', by: 'word' }), 'high (lab\'s word)'],
    ['no scale', rated({}), 'not rated'], ['boron', rated({ item: 'boron' }), 'not rated; never dosed'], ['boron high', rated({ item: 'boron' }, { rating: 'high', by: 'range' }), 'high (lab\'s range); never dosed'], ['lead', rated({ item: 'density' }), 'changes nothing here'],
    ['by index', rated({}, { rating: 'low', by: 'index' }), 'low (index)'], ['near', rated({}, { rating: 'low', by: 'word', near: 'medium' }), 'low, within the lab\'s scatter of medium (lab\'s word)'],
  ])('%s', (_, r, wanted) => { expect(ratingText(r, W)).toBe(wanted); });
  test.each(['zinc', 'manganese', 'copper', 'iron'] as const)('%s is never dosed', (item) => { expect(ratingText(rated({ item }), W)).toContain('never dosed'); });
  test.each(['acidity', 'lime-requirement'] as const)('%s sets lime', (item) => { expect(ratingText(rated({ item }), W)).toBe('sets the lime where the pH is low'); });
  test.each(['cec', 'clay', 'carbonate'] as const)('%s sets the amount', (item) => { expect(ratingText(rated({ item }), W)).toBe('sets how much lime or sulfur'); });
  test.each(['sar', 'saturation-na'] as const)('%s may stop', (item) => { expect(ratingText(rated({ item }), W)).toBe('stops feeding where it is too high'); });
  test('a scale by its publisher, for field crops, recalled', () => {
    const ours = { rating: 'low', target: 'below', scale: 's', cite } as NonNullable<Rated['ours']>;
    const said = (more: Partial<Rated>): string => ratingText(rated({}, { rating: 'low', by: 'scale', cite, ours, ...more }), W);
    expect(said({})).toMatch(/^low \(Colorado State University[^,]*\)$/);
    expect(said({ ours: { ...ours, field: true } })).toMatch(/, for field crops\)$/);
    expect(said({ cite: { ...cite, mark: 'memory' } })).toMatch(/, recalled\)$/);
    expect(said({ cite: null })).toBe('low ()');
  });
  test('pH in calcium chloride stands below that in water', () => {
    expect(ratingText(rated({ item: 'ph-salt', value: 6, unit: 'pH', method: 'cacl2' }), W)).toMatch(/^rated about 0\.[5-9] higher, as in water$/);
    expect(ratingText(rated({ item: 'ph-salt', value: 6, unit: 'pH', method: 'cacl2' }, { rating: 'low', by: 'word' }), W)).toBe('low (lab\'s word)');
  });
});

describe('what follows of a sample', () => {
  const soil = (p: Rated['target'], k: Rated['target'], ph: Rated['target']): string => summary([rated({}, { target: p }), rated({ item: 'potassium' }, { target: k }), rated({ item: 'ph' }, { target: ph })], W);
  test.each<[Rated['target'], Rated['target'], Rated['target'], string]>([
    [null, null, null, 'phosphate is not known, potash is not known'], ['at', 'at', 'at', 'no phosphate, potash only for what you pick, no lime'], ['above', 'above', 'above', 'no phosphate, no potash, pH is high for most fruit'],
    ['below', 'below', 'below', 'phosphate is short, potash is short, pH is low for most fruit'], ['far-below', 'far-below', 'far-below', 'phosphate is short, potash is short, pH is low for most fruit'],
  ])('%s, %s, %s', (p, k, ph, wanted) => { expect(soil(p, k, ph)).toBe(`So: ${wanted}. Nitrogen is set by the tree.`); });
});

describe('leaves', () => {
  const leaf = (value: number | null, more: Partial<Rated['reading']> = {}, rest: Partial<Rated> = {}, crops = ['apple']): string => leafText(rated({ item: 'nitrogen', value, unit: '%', ...more }, rest), W, crops);
  // The first row for apples as such: its ends count as enough.
  const [low, high] = /^apple ([\d.]+)-([\d.]+) % \(/.exec(leaf(0.1))!.slice(1).map(Number) as [number, number];
  test('short, enough, plenty', () => {
    expect([leaf(low - 0.01), leaf(low), leaf(high), leaf(high + 0.01)].map((t) => /\((.*)\)$/.exec(t)![1])).toEqual(['short', 'enough', 'enough', 'plenty']);
  });
  test('without a range of this unit, value or crop the lab\'s own word, or nothing', () => {
    expect([leaf(2, { unit: 'ppm' }), leaf(null), leaf(2, { form: 'P2O5' }), leaf(2, {}, {}, []), leaf(2, {}, {}, ['medlar'])]).toEqual(['', '', '', '', '']);
    expect(leaf(2, { unit: 'ppm' }, { rating: 'low', by: 'word' })).toBe('low (lab\'s word)');
    expect(leaf(low, {}, {}, ['apple', 'pear'])).toMatch(/^apple .*\), pear .*\)$/);
  });
});

describe('the verdict on a bag', () => {
  const NONE = { N: 0, P2O5: 0, K2O: 0 };
  const said = (more: Partial<Omit<Ranked, 'offer'>>, offer: Partial<Ranked['offer']> = {}, system: 'us' | 'metric' = 'metric', forTrees = true): string => lineOf({
    offer: { bag: feed('A', [20, 0, 0], { g: 1000, price: dollars(10) }), usedG: 500, supplied: NONE, over: NONE, short: NONE, wanted: { N: 100, P2O5: 100, K2O: 100 }, unwanted: NONE, ...offer },
    verdict: 'buy', why: 'best', bags: 1, cost: 10, costPerNeededKg: null, leftG: null, ...more }, forTrees, system, 'en-US');
  const extra = (N: number, P2O5 = 0): typeof NONE => ({ N, P2O5, K2O: 0 });
  test.each<[string, () => string, string]>([
    ['bought', () => said({}), 'BUY 1. $10 feeds them all.'], ['for a typed need', () => said({}, {}, 'metric', false), 'BUY 1. $10 meets the need.'], ['no price: the amount', () => said({ cost: null }), 'BUY 1. 500 g feeds them all.'], ['no weight', () => said({ bags: null, cost: null }), 'BUY. 500 g feeds them all.'],
    // Over 8 % of the need and a gram is told, the nutrient by its name.
    ['over', () => said({}, { over: extra(9, 30) }), 'BUY 1. $10 feeds them all. Brings more than is needed: 9 g N, 30 g P2O5.'], ['rounding', () => said({}, { over: extra(8) }), 'BUY 1. $10 feeds them all.'], ['a gram', () => said({}, { over: extra(1), wanted: NONE }), 'BUY 1. $10 feeds them all.'],
    ['short', () => said({}, { short: extra(9) }), 'BUY 1. $10; still short: 9 g N.'], ['left', () => said({ leftG: 500 }), 'BUY 1. $10 feeds them all. 500 g over; it keeps.'], ['a gram left', () => said({ leftG: 1 }), 'BUY 1. $10 feeds them all.'],
    // $50 a kilogram is 50 × 0.45359237 = $22.68 a pound.
    ['a kilo', () => said({ costPerNeededKg: 50 }), 'BUY 1. $10 feeds them all. $50 a kilo of what is needed.'], ['a pound', () => said({ costPerNeededKg: 50 }, {}, 'us'), 'BUY 1. $10 feeds them all. $22.68 a pound of what is needed.'], ['no cost, no rate', () => said({ costPerNeededKg: 50, cost: null }), 'BUY 1. 500 g feeds them all.'],
    ['fine', () => said({ verdict: 'fine', why: 'dearer', bags: 2, costPerNeededKg: 50 }), 'FINE, 2. Dearer: $10. $50 a kilo of what is needed.'], ['surplus', () => said({ verdict: 'fine', why: 'surplus', bags: null }, { over: extra(9) }), 'FINE. It brings more than is needed: 9 g N.'],
    ['left where it is', () => said({ verdict: 'leave', why: 'short' }, { short: extra(9), over: extra(0, 50) }), 'LEAVE IT. It leaves short: 9 g N.'], ['tubs', () => said({ verdict: 'leave', why: 'tubs' }), 'LEAVE IT. For the tubs alone: 500 g, $10.'],
  ])('%s', (_, is, wanted) => { expect(is()).toBe(wanted); });
});

test('an entry of the diary: "each" where it is weighed for several', () => {
  const said = (more: Partial<Entry>): string => entryText({ date: '2026-03-01', trees: ['A'], what: 'fed', bag: 'Urea', g: 100, m: null, amount: '12 oz', note: '', line: 1, ...more }, orchard, 'en-US');
  expect(said({})).toBe('A, fed 12 oz Urea');
  expect(said({ trees: ['Row'] })).toBe('Row, fed 12 oz each Urea');
  expect(said({ trees: ['A', 'Row'], note: 'wet' })).toBe('A, Row, fed 12 oz each Urea (wet)');
  expect(said({ trees: ['Gone'] })).toBe('Gone, fed 12 oz each Urea');
  expect([said({ what: 'shoots', trees: ['Row'], amount: '7 in', bag: null }), said({ what: 'crop', trees: ['Row'], amount: 'light', bag: null }), said({ what: 'fed', trees: ['Row'], amount: null, bag: null })]).toEqual(['Row, shoots 7 in', 'Row, crop light', 'Row, fed']);
  expect([said({ what: 'limed', bag: null }), said({ what: 'sulphured', bag: null }), said({ what: 'note', note: 'x' }), said({ what: 'withdrawn', note: 'x' })]).toEqual(['A, limed 12 oz', 'A, sulfur 12 oz', 'A, note: x', 'A, note: x']);
});

test('a reading as data: what was not printed is left out', () => {
  const c = collector('en-US', 'metric');
  const json = (r: Rated): object => (readJson([{ sample: { name: 'S', readings: [], unread: [] }, rated: [r] }], c) as { samples: { readings: object[] }[] }).samples[0]!.readings[0]!;
  const bare = { item: 'phosphorus', value: 20, unit: 'ppm', asPrinted: 'P 20', line: 7, method: null, basis: 'element', mgPerKg: null, lab: { rating: null, range: null }, rating: null, target: null };
  expect(json(rated({}))).toStrictEqual(bare);
  const ours = { rating: 'low', target: 'below', scale: 's', cite } as NonNullable<Rated['ours']>;
  expect(json(rated({ form: 'P2O5', index: 0, scheme: 'north-carolina.index', to: 0, below: true, above: true }, { mgPerKg: told(9, 'mg/kg', 'P', 'x'), cite, near: 'high', ours: { ...ours, name: 'II', field: true } })))
    .toStrictEqual({ ...bare, basis: 'oxide', mgPerKg: 9, mgPerKgWhy: 'f1', ratingCite: cite, near: 'high', ours: { ...ours, class: 'II', field: true }, index: 0, scheme: 'north-carolina.index', to: 0, below: true, above: true });
  expect(json(rated({}, { ours }))).toStrictEqual({ ...bare, ours });
  const head = (more: object): object => readJson([{ sample: { name: 'S', readings: [], unread: [{ line: 1, text: 'x' }], ...more }, rated: [] }], c) as object;
  expect(head({})).toStrictEqual({ samples: [{ name: 'S', readings: [], unread: [{ line: 1, text: 'x' }] }] });
  expect(head({ kind: 'leaf', taken: '2025-03-01', depth: '0-8 in' })).toStrictEqual({ samples: [{ name: 'S', kind: 'leaf', taken: '2025-03-01', depth: '0-8 in', readings: [], unread: [{ line: 1, text: 'x' }] }] });
});

describe('notices and questions', () => {
  const facts = { item: 'phosphorus', labRating: 'very-low', ourRating: 'high', source: 'S' };
  test('facts that are keys are said in words, others stay', () => {
    expect(noticeJson(notice('file-missing', 'error', { file: 'a.txt', why: 'absent' }), 'en-US')).toStrictEqual({ code: 'file-missing', severity: 'error', text: 'I cannot read a.txt: it is not there.' });
    expect(noticeJson(notice('file-missing', 'error', { file: 'a.txt', why: 'of its own kind' }), 'en-US').text).toBe('I cannot read a.txt: of its own kind.');
    expect(noticeJson(notice('share-impossible', 'error', { item: 'phosphorus', read: '120 %' }, place), 'en-US')).toStrictEqual({ code: 'share-impossible', severity: 'error', text: 'P: "120 %" is more than 100 %. Check the number.', file: 'soil.txt', line: 7, column: 1 });
    expect(noticeJson(notice('rating-differs', 'note', facts), 'en-US').text).toMatch(/^P: the lab says very low; the table of S for this method says high\b/);
    expect(noticeJson(notice('texture-guessed', 'note', { heaviness: 'light', cec: 9, ph: 6, items: 'P' }), 'en-US').text).toContain('taken as light, a guess from its CEC of 9');
  });
  test('a question ends with that one may not know', () => {
    const q = questionJson({ code: 'method-missing', about: 'potassium', facts: { line: 3, item: 'potassium' }, choices: ['Mehlich 3'], changes: 'dont-know' }, 'en-US');
    expect(q).toStrictEqual({ code: 'method-missing', text: 'Line 3: by which method was K measured? Which lab, or which state, will do.', about: 'potassium', choices: ['Mehlich 3', 'don\'t know'], changes: 'don\'t know' });
  });
});
