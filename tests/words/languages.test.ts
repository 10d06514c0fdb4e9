// German and Spanish. Days, numbers and prices: the locale data of CLDR (de, es: dateFormats, intervalFormats, numbers), written out by hand; its dash is our hyphen.
// What is said of a whole orchard: telltale English words, which no German or Spanish sentence holds.
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { de } from '../../src/words/de.ts';
import type { Words } from '../../src/words/en-US.ts';
import { enUS } from '../../src/words/en-US.ts';
import { es } from '../../src/words/es.ts';
import { loadLanguage } from '../../src/words/load.ts';
import { showDay, showGround, showLength, showMass, showMonth, showNutrient, showPh, showPrice, showRate, showShort, showValue, showVolume, showWindow } from '../../src/words/show.ts';
import type { Language } from '../../src/words/words.ts';
import { LANGUAGES, say, spoken } from '../../src/words/words.ts';
import { medlar } from '../medlar.ts';

const OTHERS: readonly (readonly [Language, Words])[] = [['de', de], ['es', es]];
const all = (w: Words): [string, string][] => Object.entries(w).flatMap(([g, keys]) => Object.entries(keys).map(([k, text]): [string, string] => [`${g}.${k}`, text]));
const pieces = (text: string, form: RegExp): string[] => [...text.matchAll(form)].map((m) => m[1]!).sort();

test('until a language is loaded, English is spoken in its place', async () => {
  expect([spoken('de'), spoken('es'), spoken('en-US'), spoken('en-GB')]).toEqual(['en-GB', 'en-GB', 'en-US', 'en-GB']);
  expect([say('de', 'plan', 'bags'), showDay('2026-04-25', 'de'), showMass(12500, 'metric', 'de')]).toEqual(['bags', '25 April', '12.5 kg']);
  for (const [language] of OTHERS) await loadLanguage(language);
  expect([spoken('de'), say('de', 'plan', 'bags'), say('es', 'plan', 'bags')]).toEqual(['de', 'Säcke', 'sacos']);
  expect(LANGUAGES.map(String)).toEqual(expect.arrayContaining(OTHERS.map(([l]) => l)));
});

describe.each(OTHERS)('the words of %s', (_, words) => {
  const english = new Map(all(enUS));
  test('are those of English, each with the same facts and the same options', () => {
    expect(all(words).map(([key]) => key).sort()).toEqual([...english.keys()].sort());
    for (const [key, text] of all(words)) for (const form of [/\{(\w+)\}/g, /\[(\w+)\|/g]) expect([key, pieces(text, form)]).toEqual([key, pieces(english.get(key)!, form)]);
  });
  test('close their brackets, and end as English does', () => {
    for (const [key, text] of all(words)) {
      expect([key, text.replace(/\[\w+\|[^[\]]*\]/g, '').replace(/\{\w+\}/g, '').match(/[{}[\]]/)]).toEqual([key, null]);
      expect([key, /\s$/.test(text), text.split('|').length, /\S {2,}\S/.test(text.replace(/^ .*$/gm, ''))]).toEqual([key, /\s$/.test(english.get(key)!), english.get(key)!.split('|').length, /\S {2,}\S/.test(english.get(key)!.replace(/^ .*$/gm, ''))]);
    }
  });
  test('keep what a grower types: flags, commands, files, and the keys of orchard.yaml', () => {
    const typed = /--[a-z]+(?:-[a-z]+)*|(?<=medlar )(?:new|read|plan|sheet|diary|why|shop|ph|page|sources|undo)\b|\b(?:orchard|rules)\.yaml|(?<=")(?:soil|trees|shed|store):|#(?:if|unless|each)|(?:by the lab|in all)(?=[";])/g;
    for (const [key, text] of all(words)) expect([key, pieces(text, new RegExp(`(${typed.source})`, 'g'))]).toEqual([key, pieces(english.get(key)!, new RegExp(`(${typed.source})`, 'g'))]);
  });
  test('no sentence is left in English', () => {
    const same = all(words).filter(([key, text]) => text === english.get(key) && (text.replace(/\{\w+\}|\[\w+\|/g, '').match(/\p{L}{2,}/gu) ?? []).length > 1).map(([key]) => key);
    // A list of the reader's own words, one of methods by their names, and a file.
    expect(same).toEqual(['say.opt-texture', 'say.opt-method', 'page.whole']);
  });
});

describe('days', () => {
  // CLDR: de "d. MMMM", "d. MMMM y", "MMM y"; es "d 'de' MMMM", "d 'de' MMMM 'de' y", "MMM y"; months of the Gregorian calendar, format wide.
  test.each<[string, string, string, string, string]>([
    ['2026-01-01', '1. Januar', '1. Januar 2026', '1 de enero', '1 de enero de 2026'],
    ['2026-02-28', '28. Februar', '28. Februar 2026', '28 de febrero', '28 de febrero de 2026'],
    ['2026-03-09', '9. März', '9. März 2026', '9 de marzo', '9 de marzo de 2026'],
    ['2026-04-25', '25. April', '25. April 2026', '25 de abril', '25 de abril de 2026'],
    ['2026-05-02', '2. Mai', '2. Mai 2026', '2 de mayo', '2 de mayo de 2026'],
    ['2027-06-30', '30. Juni', '30. Juni 2027', '30 de junio', '30 de junio de 2027'],
    ['2027-07-20', '20. Juli', '20. Juli 2027', '20 de julio', '20 de julio de 2027'],
    ['2027-08-11', '11. August', '11. August 2027', '11 de agosto', '11 de agosto de 2027'],
    ['2028-09-03', '3. September', '3. September 2028', '3 de septiembre', '3 de septiembre de 2028'],
    ['2028-10-12', '12. Oktober', '12. Oktober 2028', '12 de octubre', '12 de octubre de 2028'],
    ['2028-11-15', '15. November', '15. November 2028', '15 de noviembre', '15 de noviembre de 2028'],
    ['2028-12-31', '31. Dezember', '31. Dezember 2028', '31 de diciembre', '31 de diciembre de 2028'],
  ])('%s', (day, deShort, deLong, esShort, esLong) => {
    expect([showDay(day, 'de'), showDay(day, 'de', true), showDay(day, 'es'), showDay(day, 'es', true)]).toEqual([deShort, deLong, esShort, esLong]);
  });
  test('months with their year', () => {
    expect([showMonth('2025-11-03', 'de'), showMonth('2026-03-03', 'de'), showMonth('2025-11-03', 'es'), showMonth('2026-01-20', 'es')]).toEqual(['Nov. 2025', 'März 2026', 'nov 2025', 'ene 2026']);
  });
  // CLDR intervalFormats: de "d.–d. MMMM", "d. MMMM – d. MMMM"; es "d–d 'de' MMMM", "d 'de' MMMM – d 'de' MMMM".
  test.each<[string, string, boolean, string, string]>([
    ['2026-04-10', '2026-04-25', false, '10.-25. April', '10-25 de abril'],
    ['2026-03-29', '2026-04-26', false, '29. März - 26. April', '29 de marzo - 26 de abril'],
    ['2026-04-12', '2026-04-12', false, '12. April', '12 de abril'],
    ['2027-10-15', '2027-12-14', true, '15. Oktober - 14. Dezember 2027', '15 de octubre - 14 de diciembre de 2027'],
    ['2026-12-01', '2027-02-27', true, '1. Dezember 2026 - 27. Februar 2027', '1 de diciembre de 2026 - 27 de febrero de 2027'],
  ])('%s to %s', (from, until, withYear, german, spanish) => {
    expect([showWindow(from, until, 'de', withYear), showWindow(from, until, 'es', withYear)]).toEqual([german, spanish]);
  });
});

test.each(['de', 'es'] as const)('%s: numbers with a comma, quarters as they are', (L) => {
  expect([showMass(12500, 'metric', L), showMass(350, 'metric', L), showNutrient(3.04, 'metric', L), showLength(2.34, 'metric', L), showRate(7.5, 'metric', L), showGround(10.507, 'metric', L), showPh(6.4, L), showValue(1.2346, 'm2', L), showVolume(55, 'metric', L)])
    .toEqual(['12,5 kg', '350 g', '3 g', '2,3 m', '7,5 g/m²', '11 m²', '6,4', '1,235 m²', '55 mL']);
  expect([showMass(354.4, 'us', L), showShort(0.165, 'us', L), showNutrient(73.7, 'us', L)]).toEqual(['12 1/2 oz', '6,5 in', '2,6 oz']);
  // Years keep no groups.
  expect(say(L, 'sheet', 'feeding', { year: 2026 })).toMatch(/ 2026$/);
});
test('cups by their names', () => {
  expect([showVolume(355, 'us', 'de'), showVolume(30, 'us', 'de'), showVolume(355, 'us', 'es'), showVolume(5, 'us', 'es')]).toEqual(['1 1/2 Tassen', '2 Esslöffel', '1 1/2 tazas', '1 cucharadita']);
});
test('prices: the sign of the euro and codes behind, the dollar before', () => {
  expect([showPrice(9.5, '€', 'de'), showPrice(9, 'CHF', 'de'), showPrice(21.5, '€', 'es'), showPrice(9.5, '$', 'es')]).toEqual(['9,50 €', '9 CHF', '21,50 €', '$9,50']);
});

const SAMPLE = fileURLToPath(new URL('../../samples/chapel-bank', import.meta.url));
const orchard = readFileSync(`${SAMPLE}/orchard.yaml`, 'utf8');
const report = readFileSync(`${SAMPLE}/soil/2025.txt`, 'utf8');
const files = (top: string, where = 'Ohio, US'): Record<string, string> => ({ 'orchard.yaml': `${top}${orchard.replace('Ohio, US', where)}`, 'soil/2025.txt': report });

const TELLTALE = /\b(?:the|of|and|with|each|nothing|bags?|feed(?:s|ing)?|soil|trees?|year|this|that|needs?|write|than|more|your|days?|wait|about|from|stop|sheet|back|made|only|crown|shoots|grows?|enough|lime|test|weigh|damp|done|buy|why|are|were|its|it|by|on|at|which|left)\b/gi;
/** Without what the grower typed, what a publisher is called, and what is typed as a command. */
const ours = (text: string): string => [/Sulphate of ammonia/g, /Bone meal/g, /Balanced/g, /(?:Gate apple|Wall plum|Lawn pear|Chapel Bank|lower terrace|top strip)/gi, /(?:Michigan State University|Penn State) Extension/g, /medlar [a-z]+/g, /Ohio, US/g, /sheet\.html/g, /soil\/2025\.txt/g, /\b(?:apple|plum|pear)\b/g]
  .reduce((t, name) => t.replace(name, ''), text);
const html = (text: string): string => text.replace(/<style>[\s\S]*?<\/style>/g, ' ').replace(/aria-label="([^"]*)"/g, '>$1<').replace(/<[^>]*>/g, ' ');

describe.each([['de', 'language: de\n', 'Ohio, US'], ['es', 'language: es\n', 'Ohio, US'], ['de', '', 'Bayern, Deutschland'], ['es', '', 'Valencia, España'], ['es', '', 'Sonora, México']])('the sample in %s (%s%s)', (language, top, where) => {
  test('a plan, a sheet and a reading hold no English', async () => {
    const plan = await medlar(['plan'], files(top, where));
    const text = await medlar(['sheet', '--as', 'text'], files(top, where));
    const read = await medlar(['read', 'soil/2025.txt'], files(top, where));
    let page = '';
    const written = await medlar(['sheet'], files(top, where), '', (folder) => { page = readFileSync(`${folder}/sheet.html`, 'utf8'); });
    expect([plan.code, text.code, read.code, written.code]).toEqual([0, 0, 0, 0]);
    expect(page).toContain(`<html lang="${language}">`);
    for (const said of [plan.stdout, text.stdout, written.stdout, html(page)]) {
      expect(said.length).toBeGreaterThan(30);
      expect(ours(said).match(TELLTALE) ?? []).toEqual([]);
    }
    expect(ours(read.stdout.replace(/^ +\d.*$/gm, '').replace(/"Magnesium 231"/g, '').replace(/zum Beispiel: .*|por ejemplo: .*/g, '')).match(TELLTALE) ?? []).toEqual([]);
    // Days do not part from their months at the end of a line.
    expect(page).toMatch(language === 'de' ? /20\.\u00a0Juli/ : /20\u00a0de\u00a0julio/);
  });
});

test('telltale words would be seen', async () => {
  const { stdout } = await medlar(['plan'], files(''));
  expect(ours(stdout).match(TELLTALE)!.length).toBeGreaterThan(5);
});

describe('language in orchard.yaml', () => {
  const title = async (top: string, where?: string): Promise<string> => (await medlar(['plan'], files(top, where))).stdout.split('\n')[0]!;
  test('comes before what the country speaks', async () => {
    expect(await title('language: en\n', 'Bayern, Deutschland')).toBe('Chapel Bank, feeding 2026');
    expect(await title('language: ES\n', 'Bayern, Deutschland')).toBe('Chapel Bank, abonado 2026');
    expect(await title('language: "de"   # wie zu Hause\n')).toBe('Chapel Bank, Düngung 2026');
  });
  test('"en" is that of the country', async () => {
    const sulphur = async (top: string, where: string): Promise<string> => (await medlar(['ph', '--now', '7', '--crop', 'blueberry', '--texture', 'loam'], files(top, where))).stdout;
    expect(await sulphur('language: en\n', 'Ohio, US')).toMatch(/\bsulfur\b/);
    expect(await sulphur('language: en-GB\n', 'Ohio, US')).toMatch(/\bsulphur\b/);
    expect(await sulphur('language: en-US\n', 'Kent, UK')).toMatch(/\bsulfur\b/);
  });
  test.each([['fr', ''], ['en-BG', 'en-GB'], ['deu', 'de']])('%s is an error with all that may stand there', async (read, guess) => {
    const { code, json } = await medlar(['plan', '--json'], files(`language: ${read}\n`));
    expect(code).toBe(3);
    expect(json.notices).toMatchObject([{ code: 'language-unknown', severity: 'error', line: 1, column: 11 }]);
    for (const part of [`"${read}"`, ...LANGUAGES, 'for instance language: en', ...(guess ? [`Did you mean "${guess}"?`] : [])]) expect(json.notices[0]!.text).toContain(part);
  });
  test('a file with mistakes is spoken of in its own language too', async () => {
    const { stderr } = await medlar(['plan'], { 'orchard.yaml': 'where: Tirol, Österreich\nbud-break: neulich\ntrees:\n  A: apple\n' });
    expect(stderr).toContain('orchard.yaml, Zeile 2: bud-break: "neulich" ist kein Tag im Jahr.');
  });
});

test('new asks in the language of the place, once that is told', async () => {
  const { stderr, stdout } = await medlar(['new'], {}, '', undefined, ['Kapelle', 'Tirol, Österreich', 'weiß nicht', '12 October', 'nein', 'Apfel: apple, planted 2019', '', '', '']);
  expect(stderr).toContain('Which state and country');
  expect(stderr).toContain('Wann ist Austrieb');
  expect(stdout).toContain('Geschrieben: orchard.yaml');
});

test('what a diary keeps is read back, whatever the language', async () => {
  const top = 'language: de\n';
  let diary = '';
  await medlar(['diary', 'day', '1', 'done'], files(top, 'Valencia, España'), '', (folder) => { diary = readFileSync(`${folder}/diary.csv`, 'utf8'); });
  expect(diary).toMatch(/\d g|\d kg/);
  expect((await medlar(['check'], { ...files(top), 'diary.csv': diary })).code).toBe(0);
});
