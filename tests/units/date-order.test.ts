// Which number of 3/11/2025 is the day, held against the Unicode CLDR's short dates as the runtime carries them (Intl), and against what a report says of itself.
import { describe, expect, test } from 'vitest';
import { readDiary } from '../../src/orchard/diary.ts';
import { readReport } from '../../src/soil/read.ts';
import { dateOrderIn, dateOrderOf } from '../../src/units/date.ts';
import { medlar } from '../medlar.ts';

/** The language whose dates a country writes. */
const LOCALES = { US: 'en-US', GB: 'en-GB', IE: 'en-IE', AU: 'en-AU', NZ: 'en-NZ', IN: 'en-IN', DE: 'de-DE', AT: 'de-AT', CH: 'de-CH', FR: 'fr-FR', ES: 'es-ES', IT: 'it-IT', PT: 'pt-PT', BR: 'pt-BR', MX: 'es-MX', AR: 'es-AR', CL: 'es-CL', PL: 'pl-PL', NL: 'nl-NL', IL: 'he-IL', TR: 'tr-TR' } as const;

test.each(Object.entries(LOCALES))('%s as %s', (country, locale) => {
  const parts = new Intl.DateTimeFormat(locale, { dateStyle: 'short', calendar: 'gregory', timeZone: 'UTC' }).formatToParts(Date.UTC(2025, 10, 3)).map((p) => p.type);
  expect(dateOrderIn(country)).toBe(parts.indexOf('day') < parts.indexOf('month') ? 'day first' : 'month first');
});
// CLDR gives Canada the year first, and both others are common there (practice).
test('where both are usual, and where no country is told, nobody can say', () => { expect([dateOrderIn('CA'), dateOrderIn(null)]).toEqual([null, null]); });

test.each([['3/11/2025 and 13/11/2025', 'day first'], ['3/11/2025 and 11/13/2025', 'month first'], ['3/11/2025', null], ['13/11/2025 and 11/13/2025', null], ['123/11/2025 1/13/20255', null]] as const)('%s: %s', (text, order) => {
  expect(dateOrderOf(text, null)).toBe(order);
});

describe('the day of sampling', () => {
  const taken = (text: string, ...more: ('month first' | 'day first' | null)[]): unknown => [readReport(text, 'a.txt', ...more).samples[0]!.taken, readReport(text, 'a.txt', ...more).notices.map((n) => n.code)];
  const LINE = 'Date sampled: 03/05/2026\npH 6.2\n';
  test('by the country, else it is asked', () => {
    expect([taken(LINE), taken(LINE, 'month first'), taken(LINE, 'day first')]).toEqual([[undefined, ['taken-two-ways']], ['2026-03-05', []], ['2026-05-03', []]]);
  });
  test('within a line as well', () => {
    const within = 'Soil sampled 03/05/2026 to 6 inches\npH 6.2\n';
    expect([taken(within), taken(within, 'month first'), taken(within, 'day first')]).toEqual([[undefined, ['taken-two-ways']], ['2026-03-05', []], ['2026-05-03', []]]);
  });
  test('by another date of the report, against the country', () => {
    expect(taken(`${LINE}Received: 15/05/2026\n`, 'month first')).toEqual(['2026-05-03', []]);
  });
  test.each([['Ohio, US', '2026-03-05'], ['Victoria, Australia', '2026-05-03'], ['Ontario, Canada', undefined]])('in %s', async (where, day) => {
    const { json } = await medlar(['read', '--json', '--today', '2026-08-01'], { 'orchard.yaml': `where: ${where}\nsoil: soil.txt\ntrees:\n  A: apple\n`, 'soil.txt': LINE });
    expect((json.result as { samples: { taken?: string }[] }).samples[0]!.taken).toBe(day);
  });
});

test.each([['US', ['2026-03-05']], ['AU', ['2026-05-03']], ['CA', []]] as const)('a diary in %s', (country, days) => {
  const { entries, notices } = readDiary('date,trees,what,bag,amount,note\n03/05/2026,A,fed,,,\n', 'diary.csv', country);
  expect([entries.map((e) => e.date), notices.length]).toEqual([days, days.length === 0 ? 1 : 0]);
});
