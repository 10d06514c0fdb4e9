// The windows of lime, sulphur, planting and the next soil test, on the first and the last day on which each holds.
// Counted on a calendar by hand from the printed spans; bud break 12 April, first frost 12 October, last nitrogen 20 July, unless said otherwise.
import { describe, expect, test } from 'vitest';
import { loadOrchard } from '../../src/orchard/load.ts';
import type { Season, Window } from '../../src/when/season.ts';
import { isTold, lastDayOf, limeWindow, plantingWindow, retestYear, seasonOf, sulphurBedWindow, sulphurWindow, yearTold } from '../../src/when/season.ts';
import { isLate, phaseOf, windowsOf } from '../../src/when/windows.ts';
import { TIMINGS } from '../../src/tables/windows.ts';

const orchard = (dates: string): NonNullable<ReturnType<typeof loadOrchard>['orchard']> => loadOrchard(`where: Ohio, US\n${dates}trees:\n  A: apple\n`, 'orchard.yaml').orchard!;
const season = (today: string, dates = 'bud-break: 12 April\nfirst-frost: 12 October\n'): Season => seasonOf(orchard(dates), today);
const span = (w: Window | null): string | null => w && `${w.from} ${w.until}`;
const source = (w: Window | null): string | undefined => w?.why.cite.source;

describe('dates that are told', () => {
  test('both: nothing is assumed, and the last day lies twelve weeks before frost', () => {
    expect(season('2026-03-14').assumed).toEqual([]);
    expect(season('2026-03-14').lastFigure).toMatchObject({ value: -84, unit: 'day', of: 'time' });
  });
  // practice: buds of most fruit break about three weeks before the last spring frost. 3 May less 21 days.
  test('the last spring frost alone', () => {
    expect(season('2026-03-14', 'last-frost: 3 May\n')).toMatchObject({ budBreak: '2026-04-12', assumed: ['first-frost'] });
    expect(season('2026-03-14', 'last-frost: 10 March\nfirst-frost: 12 October\n')).toMatchObject({ budBreak: '2026-02-17', assumed: [] });
  });
  // Oakland County's OC414: none after mid-June. Frost on 7 September: twelve weeks before it is 15 June as well, so nothing is cut.
  test.each([['7 September', false], ['8 September', true]])('a printed last day counts where it comes first: frost %s', (frost, printed) => {
    expect(lastDayOf(season('2026-03-14', `bud-break: 12 April\nfirst-frost: ${frost}\n`), 'apple', 'US-MI')).toMatchObject({ day: '2026-06-15', printed });
  });
});

describe('sulphur in spring: six weeks from bud break (Illinois: spring application best)', () => {
  test.each([
    ['2026-03-14', '2026-04-12 2026-05-24'], ['2026-04-12', '2026-04-12 2026-05-24'], ['2026-04-13', '2026-04-13 2026-05-24'],
    // Eight days are left of it; then seven, which is too few, and four weeks are given.
    ['2026-05-16', '2026-05-16 2026-05-24'], ['2026-05-17', '2026-05-17 2026-06-14'],
    // Four weeks that end on the last day for nitrogen; a day later they would not.
    ['2026-06-22', '2026-06-22 2026-07-20'], ['2026-06-23', null],
  ])('on %s: %s', (today, wanted) => { expect(span(sulphurWindow(season(today)))).toBe(wanted); });
  test('its source', () => { expect(source(sulphurWindow(season('2026-03-14')))).toBe('illinois-homeowners'); });
});

describe('lime in the leafless months (Georgia: late fall best), a month before the first nitrogen, which opens 14 days before bud break', () => {
  test.each([
    // 12 April less 44 days is 27 February: 38 days are left, then the fourteen that are asked for, then thirteen.
    ['2026-01-20', '2026-01-20 2026-02-27'], ['2026-02-13', '2026-02-13 2026-02-27'], ['2026-02-14', '2026-10-12 2026-12-11'], ['2026-03-14', '2026-10-12 2026-12-11'],
    // In August the leaves are on: it waits for frost.
    ['2025-08-01', '2025-10-12 2026-02-27'], ['2025-10-12', '2025-10-12 2026-02-27'], ['2025-10-13', '2025-10-13 2026-02-27'],
  ])('on %s: %s', (today, wanted) => { expect(span(limeWindow(season(today)))).toBe(wanted); });
  // Nitrogen from 42 days before bud break on 1 February, so lime by 21 November: six days after frost. Last nitrogen 23 August; a month on is 22 September.
  test('nitrogen so soon after frost: from a month after its last day', () => {
    expect(span(limeWindow(season('2026-03-14', 'bud-break: 1 February\nfirst-frost: 15 November\n'), -42))).toBe('2026-09-22 2026-11-21');
  });
  test('its source', () => { for (const today of ['2026-01-20', '2026-03-14']) expect(source(limeWindow(season(today)))).toBe('georgia-nectarine'); });
});

describe('what is dug in before planting (Colorado: P and K are worked in before planting)', () => {
  const s = season('2026-03-14');
  test.each([
    // Half a year, 182 days, before 1 November; from today where that has begun; with the year alone until bud break.
    [{ year: 2026, month: 11 }, '2026-05-03 2026-11-01'], [{ year: 2026, month: 5 }, '2026-03-14 2026-05-01'], [{ year: 2027 }, '2026-10-12 2027-04-12'], [{ year: 2026 }, '2026-03-14 2026-04-12'],
    // A month that has begun leaves today.
    [{ year: 2026, month: 3 }, '2026-03-14 2026-03-14'],
  ])('%j: %s', (planting, wanted) => {
    expect(span(plantingWindow(s, planting))).toBe(wanted);
    expect(plantingWindow(s, planting)).toMatchObject({ phase: null, why: { value: 0, unit: 'day', of: 'time', cite: { source: 'colorado-1216', mark: 'read' } } });
  });
  // Ontario: three to twelve months until sulphur has worked. Three are 91 days: 2 August before 1 November, 2 March before 1 June.
  test.each([
    ['2026-03-14', 11, '2026-03-14 2026-08-02'], ['2026-02-23', 6, '2026-02-23 2026-03-02'], ['2026-02-24', 6, null], ['2026-03-14', 5, null],
  ])('sulphur on %s for a plant of month %i: %s', (today, month, wanted) => {
    const at = season(today);
    const window = sulphurBedWindow(at, plantingWindow(at, { year: 2026, month }));
    expect(span(window)).toBe(wanted);
    if (window) expect(window.why).toMatchObject({ value: 91, unit: 'day', of: 'time', cite: { source: 'ontario-blueberry-ph' } });
  });
});

describe('the next soil test', () => {
  // Organic sampling guide: every 3 to 5 years.
  test.each([['2025-11-03', 2028], ['2023-01-01', 2026], ['2019-05-05', 2026], [null, 2026]])('taken %s: %i', (taken, year) => { expect(retestYear(season('2026-03-14'), taken)).toBe(year); });
  // North Carolina: lime may take up to twelve months; eleven, 335 days, are near enough. 1 March and 335 days is 30 January.
  test('after lime', () => {
    expect(isTold('2025-03-01', '2026-01-30')).toBe(true);
    expect(isTold('2025-03-01', '2026-01-29')).toBe(false);
  });
  test.each([
    ['2025-03-01', false, 2026], ['2025-12-30', false, 2026], ['2025-12-31', false, 2027], ['2025-06-30', true, 2026], ['2025-07-01', true, 2027], ['2025-07-01', false, 2026],
  ])('limed %s, south %s: an autumn sample of %i', (amended, south, year) => { expect(yearTold(amended, south)).toBe(year); });
});

describe('what is said of a day', () => {
  const s = season('2026-03-14');
  const opens = (from: string, phase: Window['phase']): Window => ({ from, until: '2026-12-31', phase, why: s.lastFigure });
  test('one phase for all trees, or none; buds that have broken are not about to', () => {
    expect(phaseOf('2026-04-12', [opens('2026-04-12', 'bud-break'), opens('2026-04-12', 'bud-break')], s)).toBe('bud-break');
    expect(phaseOf('2026-04-13', [opens('2026-04-13', 'bud-break')], s)).toBeNull();
    expect(phaseOf('2026-05-01', [opens('2026-05-01', 'bloom'), opens('2026-05-01', null)], s)).toBe('bloom');
    expect(phaseOf('2026-05-01', [opens('2026-05-01', 'bloom'), opens('2026-05-01', 'petal-fall')], s)).toBeNull();
    expect(phaseOf('2026-05-01', [opens('2026-05-01', null)], s)).toBeNull();
  });
  // Michigan: late May after a dose at bud break, which is over 50 days from it, on 1 June.
  test('late is what opens after the second dose has closed', () => {
    expect(isLate(s, opens('2026-06-01', null))).toBe(false);
    expect(isLate(s, opens('2026-06-02', null))).toBe(true);
    expect(isLate(s, opens('2026-06-02', 'after-harvest'))).toBe(false);
    expect(isLate(s, undefined)).toBe(false);
  });
});

describe('how far a window can be trusted', () => {
  const windows = (id: string, parts = 1): Window[] => {
    const timing = TIMINGS.find((t) => t.cite.source === id)!;
    const s = season('2026-01-01', 'bud-break: 1 February\nfirst-frost: 31 December\n');
    return windowsOf(s, timing.even ? parts : timing.doses.length, { sandy: false, last: s.lastNitrogen, timing, printed: timing.doses, parts });
  };
  // Virginia prints March and April; Michigan's bud break is counted in days by us; Florida prints February to October, which we part.
  test('printed months are read, days that we counted are derived', () => {
    expect(windows('virginia-note-21').map((w) => w.why.cite.mark)).toEqual(['read', 'read']);
    expect(windows('iowa-fruit-trees').map((w) => w.why.cite.mark)).toEqual(['derived']);
    expect(new Set(windows('florida-citrus', 3).map((w) => w.why.cite.mark))).toEqual(new Set(['derived']));
  });
  test('what others print is told once, beside the first', () => {
    const s = season('2026-01-01');
    const others = [{ said: 'at-bloom', region: 'US-KS' }] as const;
    const told = windowsOf(s, 2, { sandy: false, last: s.lastNitrogen, others });
    expect(told.map((w) => w.why.others)).toEqual([others, undefined]);
    expect('others' in windowsOf(s, 1, { sandy: false, last: s.lastNitrogen, others: [] })[0]!.why).toBe(false);
  });
});
