// What the reader says of lines it cannot take, where it says it, and what it says of a reading that no scale rates.
// Expected places are counted by hand in the line as typed (practice).
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { medlar } from '../medlar.ts';
import { expected } from './expected.ts';

const read = (text: string) => medlar(['read', '--json', '-'], {}, text);
const textOf = (name: string): string => readFileSync(new URL(`./${name}.txt`, import.meta.url), 'utf8');

describe('a day that reads two ways', () => {
  test.each([['taken: 5/11/2026', '5/11/2026', 8], ['date sampled 11/5/2026', '11/5/2026', 14], ['taken: 5/11/26', '5/11/26', 8]])('%s', async (line, said, column) => {
    const { code, json } = await read(`${line}\npH 6.4\n`);
    expect(code).toBe(0);
    // 5 November or May 11, either way round.
    const [told, ...others] = json.notices;
    expect(others).toEqual([]);
    expect(told).toMatchObject({ code: 'taken-two-ways', severity: 'warning', line: 1, column });
    for (const part of [said, '2026-05-11', '2026-11-05']) expect(told!.text).toContain(part);
    expect(json.result.samples).toHaveLength(1);
    expect(json.result.samples[0].taken).toBeUndefined();
  });

  // No year has a month 20, and 5/5 is the same day both ways.
  test.each([['taken: 10/20/2026', '2026-10-20'], ['taken: 20/10/2026', '2026-10-20'], ['taken: 5/5/2026', '2026-05-05'], ['Probenahme am 3.4.26', '2026-04-03'], ['Probenahme: 12. März 2026', '2026-03-12']])('%s has one reading', async (line, day) => {
    const { json } = await read(`${line}\npH 6.4\n`);
    expect(json.notices).toEqual([]);
    expect(json.result.samples[0]).toMatchObject({ taken: day, unread: [] });
  });
});

describe('day and depth of sampling on a line with other words', () => {
  // Days and depths counted by hand; the day of receipt or report is never the sampling's.
  test.each([
    ['Sampled 3 Nov 2025 to 6 inches, received 5 Nov', '2025-11-03', '6 inches'],
    ['Date sampled: 3 Nov 2025   Depth: 0-6 in   Received: 5 Nov 2025', '2025-11-03', '0-6 in'],
    ['Received 5 Nov 2025, sampled 3 Nov 2025, depth 20 cm', '2025-11-03', '20 cm'],
    ['Sampled on November 3, 2025 at a depth of 6 inches', '2025-11-03', '6 inches'],
    ['Sample depth 6 in, taken 2025-11-03', '2025-11-03', '6 in'],
    ['Sample collected by J. Miller on 3 Nov 2025 from 0 to 6 inches', '2025-11-03', '0 to 6 inches'],
    ['Soil sampled to 6 in on 3 Nov 2025', '2025-11-03', '6 in'],
    ['Reported: 12 Nov 2025   Received: 5 Nov 2025   Sampled: 3 Nov 2025', '2025-11-03', undefined],
    ['Sampling date 03-Nov-2025, sampling depth (cm): 15', '2025-11-03', '15 cm'],
    ['Probenahme am 3.11.2025, Tiefe 0-30 cm, Eingang 5.11.2025', '2025-11-03', '0-30 cm'],
    ['Fecha de muestreo: 3/11/2025  Profundidad: 0-20 cm  Fecha de recepción: 5/11/2025', '2025-11-03', '0-20 cm'],
    ['Prélèvement le 3 novembre 2025, profondeur 0-25 cm, reçu le 5 novembre', '2025-11-03', '0-25 cm'],
    ['Prelevato il 3 novembre 2025 a 30 cm di profondità, ricevuto il 5 novembre', '2025-11-03', '30 cm'],
    ['Coletada em 3 de novembro de 2025, profundidade 0-20 cm', '2025-11-03', '0-20 cm'],
    ['Received 5 Nov 2025, reported 12 Nov 2025', undefined, undefined],
  ])('%s', async (line, taken, depth) => {
    const { code, json } = await medlar(['read', '--json', '-'], {}, `${line}\npH 6.4\n`);
    expect(code).toBe(0);
    expect(json.notices).toEqual([]);
    expect(json.result.samples).toHaveLength(1);
    const [sample] = json.result.samples;
    expect(sample.readings.map((r: { item: string }) => r.item)).toEqual(['ph']);
    expect([sample.taken, sample.depth]).toEqual([taken, depth]);
  });

  test('a day that reads two ways is told there too', async () => {
    const { json } = await medlar(['read', '--json', '-'], {}, 'Collected 11/03/2025 0-8", reported 11/12/2025\npH 6.4\n');
    expect(json.notices.map((n) => n.code)).toEqual(['taken-two-ways']);
    expect(json.result.samples[0].taken).toBeUndefined();
    expect(json.result.samples[0].depth).toBe('0-8"');
  });
});

describe('a name and a number of which nothing was made', () => {
  test('is told at its place; advice and prose are not', async () => {
    const { code, json } = await read(textOf('lost-lines'));
    expect(code).toBe(0);
    expect(json.notices.map((n) => [n.code, n.severity, n.line, n.column])).toEqual([['line-unclear', 'warning', 2, 1], ['line-unclear', 'warning', 3, 1], ['line-unclear', 'warning', 4, 1]]);
    for (const [i, words] of [['Phosphorus', '3'], ['Potassium', '3.5'], ['Magnesium', '38']].entries()) for (const word of words) expect(json.notices[i]!.text).toContain(word);
  });

  test('a row of a table, at its value', async () => {
    const { json } = await read('Test,Result,Unit\nPhosphorus,about double 42,ppm\npH,6.4,\n');
    // "about" begins behind the comma, at the twelfth sign.
    expect(json.notices.map((n) => [n.code, n.line, n.column])).toEqual([['line-unclear', 2, 12]]);
    expect(json.result.samples[0].unread.map((u: { line: number }) => u.line)).toEqual([2]);
  });

  test.each(Object.keys(expected).filter((name) => name !== 'lost-lines'))('%s holds no such line', async (name) => {
    const { json } = await read(textOf(name));
    expect(json.notices.filter((n) => n.code === 'line-unclear' || n.code === 'taken-two-ways')).toEqual([]);
  });
});

test.each(['I don\'t know', 'I don’t know', 'i dont know', 'don\'t know', 'I do not know.', 'unknown', '?'])('"%s" is an answer: nothing is asked again', async (said) => {
  const { code, json } = await read(`Magnesium 231\nPhosphorus 42 ppm\nmagnesium unit: ${said}\nphosphorus method: ${said}\n`);
  expect(code).toBe(0);
  expect(json.notices).toEqual([]);
  expect(json.questions).toEqual([]);
});

// l is a 1, O a 0 in a scan (practice); nothing is made of a number spelt out.
test.each([['Potassium l56 ppm', 'l56', '156'], ['Phosphorus 4O ppm', '4O', '40'], ['Calcium 12B5 ppm', '12B5', '1285']])('%s: the example is the value itself', async (line, read, meant) => {
  const { code, json } = await medlar(['read', '--json', '-'], {}, `pH 6.4\n${line}\n`);
  expect(code).toBe(3);
  expect(json.notices.map((n) => n.code)).toEqual(['not-a-number']);
  expect(json.notices[0]!.text).toContain(`"${read}"`);
  expect(json.notices[0]!.text).toContain(`for instance ${meant} `);
});
test('a number spelt out has no example', async () => {
  const { json } = await medlar(['read', '--json', '-'], {}, 'pH 6.4\nMagnesium forty ppm\n');
  expect(json.notices.map((n) => n.code)).toEqual(['not-a-number']);
  expect(json.notices[0]!.text).not.toContain('for instance');
});

describe('what a reading without a scale is for', () => {
  // The pH in salt is raised by 0.6 (nsw-ac19, see tables/lime.ts); texture chooses the lime and sulphur tables.
  test('pH in salt and texture do not "change nothing"', async () => {
    const { stdout } = await medlar(['read', '-'], { 'orchard.yaml': 'where: Ohio, US\ntrees:\n  Gate apple: apple\n' }, 'Soil pH (salt) 5.1\ntexture: loam\n');
    expect(stdout).toContain('about 0.6 higher');
    expect(stdout).toContain('sets how much lime or sulfur');
    expect(stdout).not.toContain('changes nothing');
  });
  test('a lab\'s own class of the pH stays', async () => {
    const { stdout } = await medlar(['read', '-'], {}, 'pH-Wert (CaCl2) 6,1 C\n');
    expect(stdout).toContain('enough (lab\'s word)');
  });
});
