// Both hemispheres: a northern month and six more is the southern one (practice.md 1.7). And lime a month from every window.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadOrchard } from '../../src/orchard/load.ts';
import type { Timing } from '../../src/tables/windows.ts';
import { TIMINGS } from '../../src/tables/windows.ts';
import type { Day } from '../../src/units/date.ts';
import { addDays, daysBetween } from '../../src/units/date.ts';
import type { Season } from '../../src/when/season.ts';
import { limeWindow, seasonOf } from '../../src/when/season.ts';
import { firstDay, windowsOf } from '../../src/when/windows.ts';
import { medlar } from '../medlar.ts';

const MONTHS = ['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October', 'November', 'December'];
const named = (month: number, date: number): string => `${String(date)} ${MONTHS[month % 12]!}`;
const season = (where: string, bud: string, frost: string, today: Day): Season => seasonOf(loadOrchard(`where: ${where}\nbud-break: ${bud}\nfirst-frost: ${frost}\ntrees:\n  A: apple\n`, 'orchard.yaml').orchard!, today);

// Months differ by three days at most, and half a year is 181 to 184 days long.
const near = (north: Day, south: Day): boolean => daysBetween(north, south) >= 179 && daysBetween(north, south) <= 186;

/** A row of months and of what the tree does holds together only where buds break when they do at home, in the middle of March. */
const isMixed = (t: Timing): boolean => new Set(t.doses.map((d) => d.dates !== undefined)).size > 1;

test('every printed row: half a year later in New Zealand', () => {
  const row = fc.constantFrom(...TIMINGS.filter((t) => t.region !== 'AU' && !(isMixed(t) && t.label)));
  fc.assert(fc.property(row, fc.integer({ min: 1, max: 3 }), fc.integer({ min: 1, max: 20 }), fc.integer({ min: 9, max: 10 }), fc.boolean(), (timing, anyBud, anyDate, frost, sandy) => {
    const [bud, date] = isMixed(timing) ? [2, Math.min(20, 10 + anyDate)] : [anyBud, anyDate];
    const of = (south: boolean): { from: Day; until: Day }[] => {
      const s = south ? season('New Zealand', named(bud + 6, date), named(frost + 6, 15), '2026-03-20') : season('Ohio, US', named(bud, date), named(frost, 15), '2025-11-20');
      return windowsOf({ ...s, today: addDays(s.budBreak, -150) }, timing.even ? 3 : timing.doses.length, { sandy, last: addDays(s.budBreak, 240), south, timing, printed: timing.doses, parts: 3 });
    };
    const [north, south] = [of(false), of(true)];
    expect(south).toHaveLength(north.length);
    north.forEach((w, i) => {
      expect(near(w.from, south[i]!.from), `${timing.id}: ${w.from} and ${south[i]!.from}`).toBe(true);
      expect(near(w.until, south[i]!.until), `${timing.id}: ${w.until} and ${south[i]!.until}`).toBe(true);
    });
  }), { numRuns: 400 });
});

test('whole plans: an orchard in New Zealand beside one in Spain, neither with a row of its own', () => {
  // Bud break 15 March and 15 September, frost 10 November and 10 May.
  const plan = async (where: string, bud: string, frost: string, today: string, facts: string) => {
    const { json } = await medlar(['plan', '--json', '--today', today], { 'orchard.yaml': `where: ${where}\nbud-break: ${bud}\nfirst-frost: ${frost}\ntrees:\n  A: ${facts}\nstore:\n  - Sulphate of ammonia, 21-0-0, 25 kg, $30\n` });
    return json.result.trees[0].feeds as { from: Day; until: Day; phase: string; g: number }[];
  };
  return Promise.all(['apple, planted 2019, 8 m across, shoots 5 cm', 'lemon, planted 2019, 8 m across', 'fig, planted 2019, 8 m across', 'blueberry, planted 2019, 1 m across'].map(async (facts) => {
    const [north, south] = await Promise.all([plan('Spain', '15 March', '10 November', '2025-12-20', facts), plan('New Zealand', '15 September', '10 May', '2026-06-20', facts)]);
    expect(north.length).toBeGreaterThan(0);
    expect(south.map((f) => [f.phase, f.g])).toEqual(north.map((f) => [f.phase, f.g]));
    north.forEach((f, i) => expect(near(f.from, south[i]!.from) && near(f.until, south[i]!.until), `${facts}: ${f.from} and ${south[i]!.from}`).toBe(true));
  }));
});

// UC-CIT: January or February just before bloom, May, perhaps June; six months later in the south, as Australian pages have it (July, November).
test('citrus in New Zealand: July and August, November, December', async () => {
  const { json } = await medlar(['plan', '--json', '--today', '2026-06-01'], { 'orchard.yaml': 'where: New Zealand\nbud-break: 10 September\nfirst-frost: 1 June\ntrees:\n  A: lemon, planted 2019, 8 m across\nstore:\n  - Sulphate of ammonia, 21-0-0, 25 kg, $30\n' });
  const { feeds } = json.result.trees[0] as { feeds: { from: string; until: string }[] };
  expect(feeds).toHaveLength(3);
  for (const [i, [from, until]] of [['07-01', '08-31'], ['11-01', '11-30'], ['12-01', '12-31']].entries()) expect(feeds[i]!.from.slice(5) >= from! && feeds[i]!.until.slice(5) <= until!).toBe(true);
});

describe('lime lies a month from the first nitrogen', () => {
  test('whatever the row, the dates and the day', () => {
    fc.assert(fc.property(fc.constantFrom(null, ...TIMINGS), fc.integer({ min: 1, max: 4 }), fc.integer({ min: 8, max: 10 }), fc.integer({ min: 0, max: 360 }), fc.boolean(), (timing, bud, frost, n, south) => {
      const s = season(south ? 'New Zealand' : 'Ohio, US', named(bud + (south ? 6 : 0), 10), named(frost + (south ? 6 : 0), 15), addDays('2026-01-01', n));
      const options = { sandy: false, last: s.lastNitrogen, south, timing, printed: timing?.doses ?? [], parts: 3 };
      const first = firstDay(s, options);
      const lime = limeWindow(s, first, s.lastNitrogen);
      expect(lime.from <= lime.until).toBe(true);
      const opens = [addDays(s.budBreak, first), addDays(s.budBreak, first + 365)];
      for (const day of opens) expect(daysBetween(lime.until, day) >= 30 || daysBetween(day, lime.from) >= 30, `${timing?.id ?? 'usual'}: lime ${lime.from} to ${lime.until}, nitrogen ${day}`).toBe(true);
      // What is already closed has nothing to meet; what is still open this season must be a month behind.
      if (lime.from > s.lastNitrogen) expect(daysBetween(s.lastNitrogen, lime.from)).toBeGreaterThanOrEqual(30);
    }), { numRuns: 600 });
  });
  // Virginia feeds on 1 March: lime by 30 January.
  test('Virginia: by 30 January', async () => {
    const { json } = await medlar(['plan', '--json', '--today', '2025-12-01'], {
      'orchard.yaml': 'where: Virginia, US\nbud-break: 5 April\nfirst-frost: 25 October\nsoil:\n  bed: soil.txt\ntrees:\n  A: apple, planted 2019, 25 ft across, shoots 2 in 2025, bed\nstore:\n  - Sulphate of ammonia, 21-0-0, 10 lb, $10\n', 'soil.txt': 'taken: 3 Nov 2025\npH 5.2\ntexture: loam\n',
    });
    expect(json.result.ph[0].doses[0].until).toBe('2026-01-30');
  });
});

test('every printed row, whatever the dates and the day: in order, two weeks apart, from today to the last day', () => {
  fc.assert(fc.property(fc.constantFrom(...TIMINGS), fc.integer({ min: 0, max: 11 }), fc.integer({ min: 0, max: 11 }), fc.integer({ min: 0, max: 730 }), fc.boolean(), fc.boolean(), fc.constantFrom('US-OR', 'GB', 'US-VA', 'NZ'), (timing, bud, frost, n, sandy, south, region) => {
    const s = season(south ? 'New Zealand' : 'Ohio, US', named(bud, 10), named(frost, 20), addDays('2026-01-01', n));
    const windows = windowsOf(s, 6, { sandy, last: s.lastNitrogen, south, region, timing, printed: timing.doses, parts: 4 });
    windows.forEach((w, i) => {
      expect(w.from >= s.today && w.from <= w.until && w.until <= s.lastNitrogen, `${timing.id}: ${w.from} to ${w.until}`).toBe(true);
      if (i > 0) expect(daysBetween(windows[i - 1]!.until, w.from)).toBeGreaterThanOrEqual(14);
    });
  }), { numRuns: 1000 });
});
