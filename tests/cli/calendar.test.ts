// The season for a calendar, read by another parser (ical.js) and against RFC 5545: lines, ends of lines, whole days, one UID each.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import ICAL from 'ical.js';
import { afterEach, describe, expect, test } from 'vitest';
import { medlar } from '../medlar.ts';

const SAMPLE = { 'orchard.yaml': 'orchard: Chapel Bank\nwhere: Ohio, US\nlast-frost: 5 May\nfirst-frost: 12 October\nsoil:\n  hill: a.txt\ntrees:\n  Gate apple: apple, semi-dwarf, planted 2012, 14 ft across, shoots 6 in, hill\n  Plums: 2 plum, planted 2019, 9 ft across, shoots 8 in, hill\nshed:\n  - Sulfate of ammonia, 21-0-0, 20 lb\nstore:\n  - Garden lime, CCE 90, 40 lb, $6\n', 'a.txt': 'Soil pH 5.4\nBuffer pH (SMP) 6.5\nPhosphorus 90 ppm HIGH\nPotassium 260 ppm HIGH\nSampled: 2025-11-04\n' };
type Entry = { uid: string; from: string; last: string; title: string; text: string };
const parsed = (text: string): Entry[] => new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent').map((c) => {
  const e = new ICAL.Event(c);
  const last = e.endDate.clone();
  last.adjust(-1, 0, 0, 0);
  expect(e.startDate.isDate && e.endDate.isDate).toBe(true);
  expect(c.getAllSubcomponents('valarm')).toHaveLength(1);
  return { uid: e.uid, from: e.startDate.toString(), last: last.toString(), title: e.summary, text: e.description };
});
const calendarOf = async (files: Readonly<Record<string, string>>, ...more: string[]): Promise<string> => {
  let text = '';
  const run = await medlar(['sheet', '--as', 'ics', ...more], files, '', (folder) => { text = readFileSync(join(folder, 'calendar.ics'), 'utf8'); });
  expect(run.code, run.stderr).toBe(0);
  return text;
};

const zone = process.env.TZ;
afterEach(() => { if (zone === undefined) delete process.env.TZ; else process.env.TZ = zone; });

describe('the calendar', () => {
  test('has every working day with its window, trees and weights, the lime, the last day and the next soil test', async () => {
    const entries = parsed(await calendarOf(SAMPLE));
    const { result } = (await medlar(['plan', '--json'], SAMPLE)).json;
    expect(result.days.length).toBeGreaterThan(0);
    for (const day of result.days) {
      const mine = entries.find((e) => e.uid.startsWith(`day-${day.number}-`))!;
      expect([mine.from, mine.last]).toEqual([day.from, day.until]);
      for (const dose of day.doses) {
        // Half an ounce is 14.17 g; the text says each dose as the scale shows it.
        const ounces = Math.round((dose.g / 28.349523125) * 2) / 2;
        const said = new RegExp(`${dose.tree}: (?:(\\d+) lb ?)?(?:(\\d+)?( ?1/2)? oz)?`).exec(mine.text)!;
        expect(16 * Number(said[1] ?? 0) + Number(said[2] ?? 0) + (said[3] ? 0.5 : 0)).toBe(ounces);
      }
    }
    const lime = entries.find((e) => e.uid.startsWith('lime-'))!;
    const windows = result.ph.filter((p: { verdict: string }) => p.verdict === 'lime').flatMap((p: { doses: { from: string; until: string }[] }) => p.doses.map((d) => [d.from, d.until]));
    expect(windows).toContainEqual([lime.from, lime.last]);
    expect(entries.find((e) => e.uid.startsWith('stop-'))!.from).toBe(result.lastNitrogen);
    expect(entries.some((e) => e.uid.startsWith('soil-'))).toBe(true);
    expect(new Set(entries.map((e) => e.uid)).size).toBe(entries.length);
  });
  test('lines are of 75 octets at most and end as the standard has it', async () => {
    const text = await calendarOf(SAMPLE);
    expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true);
    for (const line of text.split('\r\n')) {
      expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
      expect(line).not.toContain('\n');
    }
    expect(text).toMatch(/^BEGIN:VCALENDAR\r\nVERSION:2\.0\r\nPRODID:/);
    expect(text.match(/\r\nDTSTAMP:\d{8}T\d{6}Z\r\n/g)).toHaveLength(text.match(/BEGIN:VEVENT/g)!.length);
  });
  test('is the same wherever the clock stands', async () => {
    const texts: string[] = [];
    for (const tz of ['UTC', 'America/Los_Angeles', 'Pacific/Auckland']) {
      process.env.TZ = tz;
      texts.push(await calendarOf(SAMPLE));
    }
    expect(new Set(texts).size).toBe(1);
  });
  test('says on what a dose depends, as the sheet does', async () => {
    const files = { ...SAMPLE, 'orchard.yaml': SAMPLE['orchard.yaml'].replace(', shoots 6 in, hill', ', hill') };
    const { result } = (await medlar(['plan', '--json'], files)).json;
    expect(result.trees[0].if.code).toBe('shoots-below');
    expect(parsed(await calendarOf(files)).find((e) => e.uid.startsWith('day-1-'))!.text).toMatch(/Gate apple: .*only if last year/);
  });
  test('evergreens have their own last day, in the plan as in the calendar', async () => {
    const files = { ...SAMPLE, 'orchard.yaml': SAMPLE['orchard.yaml'].replace('trees:\n', 'trees:\n  Avo: avocado, planted 2015, 14 ft across, hill\n') };
    const entries = parsed(await calendarOf(files)).filter((e) => e.uid.startsWith('stop-'));
    // Twelve weeks before 12 October, and nine for evergreens (tables/timing.ts, judgement).
    expect(entries.map((e) => e.from)).toEqual(['2026-07-20', '2026-08-10']);
    expect((await medlar(['plan'], files)).stdout).toContain('No nitrogen after 20 July. Avo: 10 August.');
  });
  test('has the can of a tub', async () => {
    const files = { 'orchard.yaml': 'where: Ohio, US\ntrees:\n  Fig: fig, planted 2020, tub 60 L\nstore:\n  - 20-20-20 water soluble, 1 lb, $8\n' };
    const { dilute } = (await medlar(['plan', '--json'], files)).json.result.trees[0];
    const [can] = parsed(await calendarOf(files)).filter((e) => e.uid.startsWith('can-'));
    expect([can!.from, can!.last]).toEqual([dilute.from, dilute.until]);
    expect(can!.text).toContain(`${dilute.g} g`);
  });
  test('a day keeps its name when it is planned again', async () => {
    const ids = async (today: string): Promise<string[]> => parsed(await calendarOf(SAMPLE, '--today', today)).map((e) => e.uid);
    const first = await ids('2026-03-01');
    expect(await ids('2026-03-10')).toEqual(first);
  });
  test('no name of a tree writes an entry of its own', async () => {
    const hostile = { ...SAMPLE, 'orchard.yaml': SAMPLE['orchard.yaml'].replace('orchard: Chapel Bank', 'orchard: "A\\\\nEND:VEVENT\\\\nBEGIN:VEVENT; X"').replace('  Plums:', '  "P\\\\nATTACH:http;//x, y":') };
    const text = await calendarOf(hostile);
    const entries = parsed(text);
    expect(text).not.toMatch(/^ATTACH/m);
    expect(entries).toHaveLength(parsed(await calendarOf(SAMPLE)).length);
    expect(entries[0]!.title).toContain('END:VEVENT');
  });
  test('a calendar changed by hand is left alone', async () => {
    const run = await medlar(['sheet', '--as', 'ics'], { ...SAMPLE, 'calendar.ics': `${await calendarOf(SAMPLE)}X` });
    expect(run.code).toBe(5);
    const again = await medlar(['sheet', '--as', 'ics'], { ...SAMPLE, 'calendar.ics': await calendarOf(SAMPLE) });
    expect(again.code).toBe(0);
  });
});
