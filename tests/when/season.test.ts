// Windows and seasons. Expected days: deciding.md, Dates, counted on a calendar.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadOrchard } from '../../src/orchard/load.ts';
import { addDays, daysBetween } from '../../src/units/date.ts';
import type { Season, Window } from '../../src/when/season.ts';
import { lastDayOf, seasonOf } from '../../src/when/season.ts';
import { windowsOf as windowsUntil } from '../../src/when/windows.ts';

function season(today: string, bud = '12 April', frost = '12 October', where = 'Ohio, US'): Season {
  const { orchard } = loadOrchard(`where: ${where}\nbud-break: ${bud}\nfirst-frost: ${frost}\ntrees:\n  A: apple\n`, 'orchard.yaml');
  return seasonOf(orchard!, today);
}
const windowsOf = (s: Season, doses: number, { sandy, evergreen }: { sandy: boolean; evergreen: boolean }): Window[] => windowsUntil(s, doses, { sandy, last: lastDayOf(s, evergreen ? 'citrus' : 'apple', null).day });
const PLAIN = { sandy: false, evergreen: false };
const days = (s: Season, doses = 2, options = PLAIN): string[][] => windowsOf(s, doses, options).map((w) => [w.from, w.until]);

describe('north: bud break 12 April, first frost 12 October', () => {
  test('windows and last day', () => {
    const s = season('2026-03-14');
    expect(s).toMatchObject({ year: 2026, budBreak: '2026-04-12', lastNitrogen: '2026-07-20' });
    expect(days(s)).toEqual([['2026-03-29', '2026-04-26'], ['2026-05-20', '2026-06-01']]);
  });
  test.each([['2026-01-01', 2026], ['2026-07-20', 2026], ['2026-07-21', 2027], ['2026-08-01', 2027], ['2026-12-31', 2027]])('on %s the season is %i', (today, year) => {
    expect(season(today).year).toBe(year);
  });
  test('evergreen: nine weeks before frost', () => {
    // 12 October less 63 days.
    expect(season('2026-03-14').lastNitrogenEvergreen).toBe('2026-08-10');
  });
  test('on sand the first dose waits until after buds break', () => {
    const [first] = windowsOf(season('2026-03-14'), 1, { sandy: true, evergreen: false });
    expect(first!.from > '2026-04-12').toBe(true);
  });
});

describe('south: bud break 12 October, first frost 12 April', () => {
  const south = (today: string): Season => season(today, '12 October', '12 April', 'Tasmania, Australia');
  test('windows and last day', () => {
    const s = south('2026-08-01');
    expect(s).toMatchObject({ year: 2026, budBreak: '2026-10-12', firstFrost: '2027-04-12', lastNitrogen: '2027-01-18' });
    expect(days(s)).toEqual([['2026-09-28', '2026-10-26'], ['2026-11-19', '2026-12-01']]);
  });
  test.each([['2026-01-17', 2025], ['2026-01-18', 2025], ['2026-01-19', 2026], ['2026-12-31', 2026], ['2027-01-18', 2026], ['2027-01-19', 2027]])('on %s the season is %i', (today, year) => {
    expect(south(today).year).toBe(year);
  });
  test('the same distances from bud break and frost as in the north', () => {
    const [n, s] = [season('2026-01-05'), south('2026-07-05')];
    const apart = (x: Season): number[] => [...windowsOf(x, 3, PLAIN).flatMap((w) => [daysBetween(x.budBreak, w.from), daysBetween(x.budBreak, w.until)]), daysBetween(x.lastNitrogen, x.firstFrost)];
    expect(apart(s)).toEqual(apart(n));
    expect(apart(n).slice(0, 4)).toEqual([-14, 14, 38, 50]);
    expect(apart(n).at(-1)).toBe(84);
  });
  test('untold dates lie six months apart from the northern ones', () => {
    const read = (where: string, today: string): Season => seasonOf(loadOrchard(`where: ${where}\ntrees:\n  A: apple\n`, 'o').orchard!, today);
    const [n, s] = [read('Ohio, US', '2026-02-01'), read('Tasmania, Australia', '2026-08-01')];
    expect(n.assumed).toEqual(['bud-break', 'first-frost']);
    expect(Math.abs(daysBetween(n.budBreak, s.budBreak) - 183)).toBeLessThanOrEqual(2);
  });
});

describe('windows that have passed', () => {
  test('open again from today', () => {
    const [first] = windowsOf(season('2026-05-10'), 1, PLAIN);
    expect(first!.from).toBe('2026-05-10');
  });
  test('an open one begins today at the earliest', () => { expect(days(season('2026-04-20'))[0]).toEqual(['2026-04-20', '2026-04-26']); });
  // Planned on 5 June, the first dose ends on the 19th and the next may open 24 days after, on 13 July, a week before the last day; a day later there is less than a week.
  test('a later dose of a few days at the end is left out', () => {
    const all = days(season('2026-06-15'), 6);
    for (const [from, until] of all.slice(1)) expect(daysBetween(from!, until!)).toBeGreaterThanOrEqual(7);
    expect(days(season('2026-06-05'), 2)).toHaveLength(2);
    expect(days(season('2026-06-06'), 2)).toHaveLength(1);
  });
  test('on the last day there is that day, and no second', () => { expect(days(season('2026-07-20'))).toEqual([['2026-07-20', '2026-07-20']]); });
  test('none where frost follows buds within twelve weeks', () => { expect(days(season('2026-04-01', '12 April', '20 June'))).toEqual([]); });
});

// Printed last days: Oakland County's OC414 (none after mid-June), Maine's fertilization page (before June), Pennsylvania's stone fruit page (15 July), Clemson's peach page (15 August).
describe('the last day that the place itself prints', () => {
  test.each([
    ['peach', 'US-MI', '2026-06-15'], ['apple', 'US-MI', '2026-06-15'], ['apple', 'US-ME', '2026-05-31'], ['plum', 'US-PA', '2026-07-15'], ['peach', 'US-SC', '2026-07-20'],
    ['blueberry', 'US-MI', '2026-07-20'], ['apple', 'US-PA', '2026-07-20'], ['apple', 'US-OH', '2026-07-20'], ['apple', null, '2026-07-20'],
  ] as const)('%s in %s: %s, or that of the season where it comes first', (crop, region, day) => {
    const last = lastDayOf(season('2026-03-14'), crop, region);
    expect(last.day).toBe(day);
    expect(last.printed).toBe(day !== '2026-07-20');
  });
  test('South Carolina: 15 August, before a late frost', () => { expect(lastDayOf(season('2026-03-14', '5 March', '20 November'), 'peach', 'US-SC')).toMatchObject({ day: '2026-08-15', printed: true }); });
});

describe('far years', () => {
  test('1970 and 2100', () => {
    expect(season('1970-01-01')).toMatchObject({ year: 1970, lastNitrogen: '1970-07-20' });
    // 2100 has no leap day: two weeks before 12 March is 26 February; in 2096 it is 27 February.
    expect(days(season('2100-01-01', '12 March'), 1)[0]![0]).toBe('2100-02-26');
    expect(days(season('2096-01-01', '12 March'), 1)[0]![0]).toBe('2096-02-27');
  });
});

test('whatever the dates and the day: in order, apart, not before today, not after the last day', () => {
  const at = fc.record({ m: fc.integer({ min: 0, max: 11 }), d: fc.integer({ min: 1, max: 28 }) });
  const name = ({ m, d }: { m: number; d: number }): string => `${d} ${['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October', 'November', 'December'][m]!}`;
  fc.assert(fc.property(at, at, fc.integer({ min: 0, max: 47_000 }), fc.boolean(), fc.boolean(), (bud, frost, n, sandy, evergreen) => {
    const today = addDays('1970-01-01', n);
    const s = season(today, name(bud), name(frost));
    expect(s.lastNitrogen >= today).toBe(true);
    expect(s.firstFrost > s.budBreak).toBe(true);
    // The earliest such season: a year earlier its last day had passed.
    expect(addDays(s.lastNitrogen, -367) < today).toBe(true);
    const last = evergreen ? s.lastNitrogenEvergreen : s.lastNitrogen;
    let before = '';
    for (const w of windowsOf(s, 6, { sandy, evergreen })) {
      expect(w.from >= today && w.from <= w.until && w.until <= last && w.from > before).toBe(true);
      before = w.until;
    }
  }), { numRuns: 300 });
});
