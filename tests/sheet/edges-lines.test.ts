// Lines of the years, lines broken for the printer, a grower's own template: what each must say by its own meaning.
import { describe, expect, test } from 'vitest';
import type { Series } from '../../src/rating/trend.ts';
import { escaped } from '../../src/sheet/escape.ts';
import { compileOwn } from '../../src/sheet/own-template.ts';
import { renderSheet } from '../../src/sheet/render.ts';
import { diluteText } from '../../src/sheet/can.ts';
import { betweenLine, seriesLine } from '../../src/sheet/years.ts';

const L = 'en-US';
const point = (taken: string, value: number): Series['points'][number] => ({ taken, value, low: value, high: value });
const series = (more: Partial<Series> = {}): Series => ({ item: 'phosphorus', method: null, unit: 'mg/kg', trend: null, jump: false, points: [point('2019-11-05', 60), point('2022-11-05', 72.4)], elsewhere: [], ...more }) as Series;

describe('a value over the years', () => {
  test.each<[Partial<Series>, string]>([
    // Two figures, three from a hundred on; the unit once, at the end.
    [{}, 'P: 60 (Nov 2019), 72 mg/kg (Nov 2022).'], [{ points: [point('2019-11-05', 99.6), point('2022-11-05', 123.4)] }, 'P: 100 (Nov 2019), 123 mg/kg (Nov 2022).'], [{ points: [point('2019-11-05', 100.4)] }, 'P: 100 mg/kg (Nov 2019).'],
    [{ points: [point('', 60)] }, 'P: 60 mg/kg.'], [{ trend: 'up' }, 'P: 60 (Nov 2019), 72 mg/kg (Nov 2022). It rises.'], [{ trend: 'down' }, 'P: 60 (Nov 2019), 72 mg/kg (Nov 2022). It falls.'],
    [{ elsewhere: ['2016-03-01', '2017-04-01'] }, 'P: 60 (Nov 2019), 72 mg/kg (Nov 2022). Left out, since measured another way: Mar 2016, Apr 2017.'],
    // pH to a tenth, without unit or method.
    [{ item: 'ph', unit: 'pH', method: 'cacl2', points: [point('2019-11-05', 6.44), point('2022-11-05', 6.46)] }, 'soil pH: 6.4 (Nov 2019), 6.5 (Nov 2022).'], [{ item: 'ph-salt', unit: 'pH', points: [point('2019-11-05', 5.44)] }, 'soil pH (salt): 5.4 (Nov 2019).'],
    [{ method: 'mehlich-3' }, 'P, Mehlich 3: 60 (Nov 2019), 72 mg/kg (Nov 2022).'],
  ])('%j: %s', (more, wanted) => { expect(seriesLine(series(more), L)).toBe(wanted); });
  test('a jump', () => { expect(seriesLine(series({ jump: true }), L)).toMatch(/^P: 60 .* sample again/); });
});

describe('what went on between two tests', () => {
  const none = { from: '2022-11-05', until: '2025-11-06', N: 0, P2O5: 0, K2O: 0, lime: 0, sulphur: 0, unknown: 0 };
  const HEAD = '5 November 2022 to 6 November 2025: ';
  test.each<[Partial<typeof none>, string]>([
    [{}, 'nothing in the diary.'], [{ N: 46 }, '46 g N.'], [{ N: 46, P2O5: 10, K2O: 20, lime: 700, sulphur: 30 }, '46 g N, 10 g P2O5, 20 g K2O, 700 g lime, 30 g sulfur.'],
    [{ unknown: 1 }, 'nothing in the diary, and 1 entry without a weight or with a bag that is not known.'], [{ lime: 700, unknown: 2 }, '700 g lime, and 2 entries without a weight or with a bag that is not known.'],
  ])('%j', (more, wanted) => { expect(betweenLine({ ...none, ...more }, L, 'metric')).toBe(HEAD + wanted); });
  // An ounce is 28.349523 g, a pound 453.59237 g.
  test('in ounces and pounds', () => { expect(betweenLine({ ...none, N: 56.699046, lime: 1360.77711 }, L, 'us')).toBe(`${HEAD}2 oz N, 3 lb lime.`); });
});

test('what stands in HTML as itself', () => { expect(escaped('a<b & "c"')).not.toMatch(/[<"]|&(?!#?\w+;)/); });

test('a can: how often, how much, until when', () => {
  const said = (weeks: number): string => diluteText({ bag: { label: '20-20-20' }, g: { value: 12 }, waterL: 9, weeks, times: 16, from: '2026-04-01', until: '2026-07-15' } as never, L, 'metric');
  for (const part of ['12 g', '20-20-20', '9 L', '1 April', '15 July', '16']) expect(said(1)).toContain(part);
  expect([said(1).includes('2'), said(1) === said(2), said(2).replaceAll(/20-20-20|12 g/g, '').includes('2')]).toEqual([true, false, true]);
});

describe('the sheet as text', () => {
  const wrap = (text: string): string[] => renderSheet({} as never, 'text', () => text).split('\n');
  test('a line of 78 signs stays, one of 79 is broken at its last blank and hangs by nine', () => {
    const a = `${'a'.repeat(40)} ${'b'.repeat(37)}`;
    expect([a.length, wrap(a), wrap(`${a}b`)]).toEqual([78, [a], ['a'.repeat(40), `${' '.repeat(9)}${'b'.repeat(38)}`]]);
    // A blank as the 79th sign ends a full line.
    expect(wrap(`${a} c`)).toEqual([a, `${' '.repeat(9)}c`]);
  });
  test('a word that fills the line is cut; a blank among the first twenty signs is no place to break', () => {
    expect(wrap('x'.repeat(80))).toEqual(['x'.repeat(78), `${' '.repeat(9)}xx`]);
    expect(wrap(`${'a'.repeat(20)} ${'b'.repeat(70)}`)[0]).toBe(`${'a'.repeat(20)} ${'b'.repeat(57)}`);
    expect(wrap(`${'a'.repeat(21)} ${'b'.repeat(60)}`)).toEqual(['a'.repeat(21), `${' '.repeat(9)}${'b'.repeat(60)}`]);
  });
  test('again and again, blanks at the end gone, other lines as they are', () => {
    const word = 'c'.repeat(30);
    expect(wrap(`x  \n${[word, word, word, word].join(' ')}   \ny`)).toEqual(['x', `${word} ${word}`, `${' '.repeat(9)}${word} ${word}`, 'y']);
  });
});

describe('a template of the grower\'s own', () => {
  const of = (source: string): unknown[] => compileOwn(source, 'own.hbs', 'text').notices.map((n) => [n.code, n.facts.read ?? null, n.facts.guess ?? null, n.place?.line ?? null, n.place?.column ?? null]);
  test('fields that are there, in blocks, above and below', () => {
    expect(of('{{orchard}} {{back.measure}}\n{{#each days}}{{title}} {{@index}} {{../orchard}}{{#each rows}}{{name}} {{../../orchard}}{{/each}}{{else}}{{made}}{{/each}}{{#with back}}{{foot}}{{#each lime}}{{text}}{{/each}}{{/with}}{{#if stop}}{{stop}}{{else}}{{test}}{{/if}}{{#unless lost}}{{how}}{{/unless}}{{! a word }}')).toEqual([]);
  });
  test('a field misspelt is told where its name begins, behind the braces, with the nearest', () => {
    expect(of('x\n {{orchrd}}')).toEqual([['template-path', 'orchrd', 'orchard', 2, 4]]);
    expect([of('{{@root}}'), of('x {{days}}'), of('{{#each days}}{{this}}{{/each}}')].map((found) => (found as unknown[][]).map((f) => f.slice(0, 2)))).toEqual([[['template-whole', '@root']], [['template-whole', 'days']], [['template-whole', 'this']]]);
    expect(of('{{#each use}}{{this}}{{/each}}{{use}}{{orchard}}')).toEqual([]);
    expect(of('{{#each days}}{{titel}}{{/each}}')).toEqual([['template-path', 'titel', 'title', 1, 17]]);
    expect(of('{{back.mesure}}')).toEqual([['template-path', 'back.mesure', 'measure', 1, 3]]);
    expect(of('{{#each dais}}{{nothing}}{{else}}{{orchrd}}{{/each}}').map((n) => (n as string[])[1])).toEqual(['dais', 'orchrd']);
    expect(of('{{#with back}}{{mesure}}{{/with}}').length + of('{{#if orchrd}}x{{/if}}').length + of('{{orchard.constructor}}').length + of('{{toString}}').length).toBe(4);
  });
  test('helpers, parts and blocks that run anything are refused', () => {
    expect(of('{{log orchard}}')).toEqual([['template-helper', 'log', null, 1, 1]]);
    for (const source of ['{{#lookup days 0}}x{{/lookup}}', '{{#if}}x{{/if}}', '{{#each days rows}}x{{/each}}', '{{> other}}', '{{"orchard"}}', '{{#each (lookup days 0)}}x{{/each}}']) expect(of(source).map((n) => (n as string[])[0])).toEqual(['template-helper']);
    expect(compileOwn('{{log orchard}}', 'own.hbs', 'text').template).toBeNull();
  });
  test('what cannot be read at all', () => { expect(of('{{#if stop}}').map((n) => (n as string[])[0])).toEqual(['template-broken']); });
  test('HTML is made safe in a page and left alone in text', () => {
    const run = (form: 'html' | 'text'): string => compileOwn('{{orchard}}', 'own.hbs', form).template!({ orchard: 'a<b' } as never);
    expect([run('text'), run('html')]).toEqual(['a<b', 'a&lt;b']);
  });
});
