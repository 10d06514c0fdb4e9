// Ratings at their edges: a lab's own range by its definition (under its low end is low, under half of it very low: our reading of a range, tables/scale.ts),
// the printed target that a notice names (Washington EM119E, Rutgers, Tri-State: typed again), whose region is whose.
import { describe, expect, test } from 'vitest';
import type { Rated, Region } from '../../src/rating/rate.ts';
import { rateSample, ratingNotices, schemeNotes } from '../../src/rating/rate.ts';
import type { Reading } from '../../src/soil/reading.ts';
import type { Rating } from '../../src/tables/ratings.ts';
import { made } from '../rating-units/made.ts';

const NOWHERE: Region = { country: null, state: null };
const us = (state: string, text = `${state}, US`): Region => ({ country: 'US', state, text });
const one = (region: Region, ...readings: Reading[]): Rated => rateSample({ name: 's', readings, unread: [] }, region)[0]!;
const word = (rating: Rating): Partial<Reading> => ({ lab: { rating, range: null } });

describe('a printed range', () => {
  const k = (low: number | null, high: number | null, value: number, more: Partial<Reading> = {}): Rated => one(NOWHERE, made('potassium', value, 'ppm', { lab: { rating: null, range: [low, high] }, ...more }));
  test.each<[number | null, number | null, number, string, string]>([
    [100, 160, 49, 'very-low', 'far-below'], [100, 160, 50, 'low', 'below'], [100, 160, 99, 'low', 'below'], [100, 160, 100, 'optimum', 'at'], [100, 160, 160, 'optimum', 'at'], [100, 160, 161, 'high', 'above'],
    [null, 160, 0, 'optimum', 'at'], [null, 160, 160, 'optimum', 'at'], [null, 160, 161, 'high', 'above'],
    [100, null, 99, 'low', 'below'], [100, null, 100, 'optimum', 'at'], [100, null, 5000, 'optimum', 'at'],
  ])('%s to %s: %d is %s', (low, high, value, rating, target) => { expect(k(low, high, value)).toMatchObject({ rating, target, by: 'range' }); });
  test('a span that ends above it is above', () => { expect([k(100, 160, 150, { to: 161 }).target, k(100, 160, 150, { to: 160 }).target, k(100, 160, 90, { to: 161 }).target]).toEqual(['above', 'at', 'below']); });
  // Within a lab potassium strays 10 % (memory).
  test.each<[number | null, number | null, number, string | null]>([
    [null, 160, 155, 'high'], [null, 160, 165, 'optimum'], [null, 160, 120, null], [100, null, 95, 'optimum'], [100, null, 105, 'low'], [100, null, 52, 'very-low'], [100, null, 48, 'low'], [100, null, 500, null],
    // Two edges in reach: the nearer one.
    [100, 110, 104, 'low'], [100, 110, 107, 'high'],
  ])('%s to %s: %d is near %s', (low, high, value, near) => { expect(k(low, high, value).near).toBe(near); });
  test('what is only known as more, or less, than a number is near of nothing', () => { expect([k(100, 160, 155, { above: true }).near, k(100, 160, 155, { below: true }).near]).toEqual([null, null]); });
});

test('the two ends of a printed span in two classes: the other one is near', () => {
  // Washington: medium under 150, optimal to 250.
  const k = (value: number, to: number): Rated => one(NOWHERE, made('potassium', value, 'ppm', { method: 'ammonium-acetate', to }));
  expect([k(120, 200).rating, k(120, 200).near, k(170, 200).near, k(148, 149).near]).toEqual(['medium', 'optimum', null, null]);
});

describe('the notice names the printed target', () => {
  const ph = made('ph', 6.5, 'pH');
  test.each<[string, Region, Reading[], string, string]>([
    ['at least: iron by DTPA, over 4.5', us('washington'), [made('iron', 3, 'ppm', { method: 'dtpa', ...word('high') })], '≥ 4.5 ppm', ''],
    ['at most: sodium, 0.5 meq', us('washington'), [made('sodium', 0.2, 'meq/100g', { method: 'ammonium-acetate', ...word('high') })], '≤ 0.5 meq/100g', ''],
    ['both: calcium, 4.1 to 20 meq', us('washington'), [made('calcium', 8, 'meq/100g', { method: 'ammonium-acetate', ...word('low') })], '4.1-20 meq/100g', ''],
    ['pH has no unit', us('washington'), [{ ...ph, ...word('low') }], '6-7.5', ''],
    ['nor has an index of availability: 25 to 100', us('new jersey'), [made('manganese', 10, 'ppm', { method: 'mehlich-3', ...word('low') }), ph], '25-100', ''],
    ['for field crops: Tri-State, critical 20 ppm', us('ohio'), [made('phosphorus', 40, 'ppm', { method: 'mehlich-3', ...word('low') })], '≥ 20 ppm', ' '],
    ['none: Georgia\'s sheets name no target; K 151 and over is high', us('georgia'), [made('potassium', 200, 'lb/acre', { method: 'mehlich-1', ...word('low') })], '', ''],
  ])('%s', (_, region, readings, span, field) => {
    const [n, ...rest] = ratingNotices([one(region, ...readings)]);
    expect(rest).toEqual([]);
    expect(n).toMatchObject({ code: 'rating-differs', severity: 'warning', facts: { item: readings[0]!.item, span, field, source: expect.stringMatching(/Univ|Rutgers/) }, place: { line: 7 } });
  });
});

test('a leaf is held against the lab\'s own word and range alone, whatever the region makes of a word', () => {
  const leaf = (r: Reading): Rated => rateSample({ name: 's', kind: 'leaf', readings: [r], unread: [] }, us('new jersey'))[0]!;
  const k = made('potassium', 200, 'ppm', { method: 'ammonium-acetate' });
  expect(leaf(k)).toEqual({ reading: k, mgPerKg: null, rating: null, target: null, by: null, cite: null, ours: null, near: null });
  expect(leaf({ ...k, ...word('high') })).toMatchObject({ rating: 'high', target: 'above', by: 'word', cite: { source: 'lab', at: 'line 7', mark: 'read' }, ours: null });
});

describe('whose region', () => {
  const k = made('potassium', 200, 'ppm', { method: 'ammonium-acetate' });
  test('a town that bears a state\'s name is not the state', () => {
    expect(one(us('washington'), k).ours?.home).toBe(true);
    expect(one(us('ohio', 'Washington, Ohio, US'), k).ours?.home).toBe(false);
    expect(one({ country: 'US', state: null, text: 'Washington, US' }, k).ours?.home).toBe(false);
  });
  // Northern Ireland prints its index as 2- and 2+ (AFBI), England as 2 (RB209); 20 mg/L is the upper end of 2-.
  test('elsewhere any part of the place may name it', () => {
    const p = (text: string): string | undefined => one({ country: 'GB', state: null, text }, made('phosphorus', 20, 'mg/L', { method: 'olsen' })).ours?.name;
    expect([p('Belfast,  Northern Ireland , UK'), p('Kent, UK'), p('near Northern Ireland, UK')]).toEqual(['2-', '2', '2']);
  });
  test('no country, no home', () => { expect(one({ country: null, state: 'washington', text: 'Washington' }, k).ours?.home).toBe(false); });
});

// North Carolina's index alone is written "P-I": it says whose it is, where the grower says nothing. 26 to 50 is medium there (memory); of the UK's, 4 and over is above.
test('an index that says whose it is needs no region, and heeds none', () => {
  const at = (region: Region, value: number): string | null => one(region, made('potassium', value, 'index', { scheme: 'north-carolina.index' })).rating;
  expect([at(NOWHERE, 40), at({ country: 'GB', state: null, text: 'Kent, UK' }, 40), at(NOWHERE, 10)]).toEqual(['medium', 'medium', 'very-low']);
});
// Tri-State: to a CEC of 5 the critical level of K is 100 ppm, over it 120.
test('a table by exchange capacity, at its edge', () => {
  const k = (value: number, cec: number): Rated => one(us('ohio'), made('potassium', value, 'ppm', { method: 'mehlich-3' }), made('cec', cec, 'meq/100g'));
  expect([k(110, 5).target, k(110, 5.1).target]).toEqual(['at', 'below']);
  expect(k(110, 0).ours?.scale).not.toMatch(/^tri-state/);
  expect(one(us('ohio'), made('potassium', 110, 'ppm', { method: 'mehlich-3' })).ours?.scale).not.toBe('tri-state.potassium.light');
});

test('Germany\'s two schemes: the value in mg P/100 g, both targets, at its line', () => {
  const de: Region = { country: 'DE', state: null, text: 'Germany' };
  const p = one(de, made('phosphorus', 50, 'mg/kg', { method: 'cal' }));
  // Class C: 3.1 to 6.0 mg P since 2018, 10 to 20 mg P2O5 before (memory).
  expect(schemeNotes([one(de, made('ph', 6, 'pH')), p, p])).toMatchObject([{ code: 'german-phosphorus', severity: 'note', facts: { read: 5, low: 3, high: 6, oldLow: 10, oldHigh: 20 }, place: { line: 7 } }]);
  expect(schemeNotes([one(de, made('phosphorus', 50, 'mg/kg', { method: 'cal', ...word('low') }))])).toEqual([]);
});
