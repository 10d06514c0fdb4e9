// Calendar days against the calendar itself.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays, day, daysBetween, isoDate, monthDay, monthOf, yearOf } from '../../src/units/date.ts';

test.each([
  ['2024-02-28', 1, '2024-02-29'], ['2025-02-28', 1, '2025-03-01'], ['2000-02-28', 1, '2000-02-29'], ['2100-02-28', 1, '2100-03-01'], ['2026-12-31', 1, '2027-01-01'],
  ['2026-01-01', -1, '2025-12-31'], ['2026-10-12', -84, '2026-07-20'], ['2026-04-12', -14, '2026-03-29'], ['1970-01-01', -1, '1969-12-31'], ['2024-03-01', -1, '2024-02-29'], ['2026-03-29', 0, '2026-03-29'],
] as const)('%s and %i days is %s', (from, days, to) => {
  expect(addDays(from, days)).toBe(to);
  expect(daysBetween(from, to)).toBe(days);
});

test('adding and taking away the same days changes nothing; 400 years hold 146,097 days', () => {
  fc.assert(fc.property(fc.integer({ min: -30_000, max: 60_000 }), fc.integer({ min: -5000, max: 5000 }), (start, days) => {
    const from = addDays('1970-01-01', start);
    expect(addDays(addDays(from, days), -days)).toBe(from);
    expect(daysBetween(from, addDays(from, days))).toBe(days);
  }));
  expect(addDays('1800-01-01', 146_097)).toBe('2200-01-01');
});

describe('a day of the year', () => {
  test.each([['12 April', 4, 12], ['April 12', 4, 12], ['12 Apr', 4, 12], ['1. Oct.', 10, 1], ['31 December', 12, 31], ['9 sept', 9, 9]] as const)('%s', (text, month, date) => {
    expect(monthDay(text)).toEqual({ month, date });
  });
  test.each(['31 April', '30 February', '0 May', '32 Jan', '4/12', 'April', '12', '', '12 Aprl', '12 Ju', '-1 May', '12 April 2026', 'tomorrow'])('%j is none', (text) => {
    expect(monthDay(text)).toBeNull();
  });
});

describe('a date', () => {
  test.each([['3 Nov 2025', '2025-11-03'], ['November 3, 2025', '2025-11-03'], ['2025-11-03', '2025-11-03'], ['3.11.2025', '2025-11-03'], ['29 Feb 2024', '2024-02-29'], ['Nov 2025', '2025-11-01']])('%s', (text, iso) => {
    expect(isoDate(text)).toBe(iso);
  });
  // 3/11/2025 is 3 November or 11 March.
  test.each(['3/11/2025', '29 Feb 2025', '31.4.2025', '2025-00-10', '2025-13-01', '', 'soon', '3 Nov 25'])('%j is none', (text) => {
    expect(isoDate(text)).toBeNull();
  });
});

test('a month by three letters', () => {
  expect(monthOf('mar')).toBe(3);
  expect(monthOf('May')).toBe(5);
  expect(monthOf('ma')).toBeNull();
  expect(monthOf('marx')).toBeNull();
});

// Definition of the ISO form: four digits, two, two.
test('a day from its parts, and its year', () => {
  expect(day(2026, 3, 4)).toBe('2026-03-04');
  expect(day(2026, 12, 31)).toBe('2026-12-31');
  expect(yearOf('2026-03-04')).toBe(2026);
});

describe('one or two digits, wide gaps, full stops and commas are the same date', () => {
  test.each([
    ['13 Nov 2025', '2025-11-13'], ['3. Nov. 2025', '2025-11-03'], ['3 Nov., 2025', '2025-11-03'], ['13.  November  2025', '2025-11-13'],
    ['Nov. 3, 2025', '2025-11-03'], ['Nov 13 2025', '2025-11-13'], ['NOVEMBER  3,  2025', '2025-11-03'],
    ['13.11.2025', '2025-11-13'], ['3.1.2025', '2025-01-03'], ['2025-1-3', '2025-01-03'], ['Nov. 2025', '2025-11-01'], ['november  2025', '2025-11-01'],
  ])('%s', (text, iso) => { expect(isoDate(text)).toBe(iso); });
  test.each([['3.  Oct.', 10, 3], ['Oct.  13', 10, 13], ['1 May', 5, 1], ['May 1', 5, 1]] as const)('%s', (text, month, date) => { expect(monthDay(text)).toEqual({ month, date }); });
  test.each([['mar.', 3], ['MAR', 3], ['January', 1], ['dec', 12]] as const)('%s', (word, month) => { expect(monthOf(word)).toBe(month); });
  test.each(['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October', 'November', 'December'].map((name, i) => [name, i + 1] as const))('%s is month %i', (name, month) => {
    expect([monthOf(name), monthOf(name.slice(0, 3)), monthDay(`1 ${name}`)?.month]).toEqual([month, month, month]);
  });
  test('a full stop stands only behind', () => { expect(monthOf('m.ar')).toBeNull(); });
});

// The calendar's years of one to three digits are another age; a report of it is a slip.
test('a year of four digits', () => { expect([isoDate('0050-03-04'), isoDate('4.3.0050'), isoDate('1950-03-04')]).toEqual([null, null, '1950-03-04']); });

// A number of more digits, or a sentence, is another thing that holds a date.
test.each([
  '12025-11-03', '2025-11-031', '13 Nov 20251', '113 Nov 2025', 'xNov 3 2025', '1 Nov 3, 2025', 'Nov 3, 20251', '113.11.2025', '13.11.20251', '13x11x2025', '1Nov 2025', 'Nov 20251', '3 No 2025', 'No 3, 2025',
])('%j is no date', (text) => { expect(isoDate(text)).toBeNull(); });
test.each(['112 April', '12 April1', '1April 12', 'April 112', '12 Ap', 'Ap 12', 'x 12 April', 'April 12 x'])('%j is no day of a year', (text) => { expect(monthDay(text)).toBeNull(); });
