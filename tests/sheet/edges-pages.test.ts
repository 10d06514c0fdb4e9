// The sheet as HTML, where no line may break within an amount, and the years of a zone as a page to keep.
import { describe, expect, test } from 'vitest';
import { compileOwn } from '../../src/sheet/own-template.ts';
import { renderHtml } from '../../src/sheet/render-html.ts';
import { yearsPage } from '../../src/sheet/years.ts';
import { named } from './parts.ts';

describe('no line breaks', () => {
  // A blank of which none may break is U+00A0; "_" stands for it here.
  const bound = (text: string, language = 'en-US'): string => { let out = ''; renderHtml({ language, a: text } as never, (view) => { out = (view as unknown as { a: string }).a; return ''; }); return out.replaceAll('\u00A0', '_'); };
  test.each([
    ['12 1/2 oz each of 3', '12_1/2_oz each of 3'], ['2 lb 3 oz left', '2_lb 3_oz left'], ['1.5 kg, 20 g, 3 t', '1.5_kg, 20_g, 3_t'], ['2 ft 3 in 4 cm 5 m', '2_ft 3_in 4_cm 5_m'], ['9 mL, 9 L, 5 N, 5 %', '9_mL, 9_L, 5_N, 5_%'],
    ['1 1/2 cups or 2 tablespoons', '1_1/2_cups or 2_tablespoons'], ['on 12 April 2026', 'on 12_April 2026'], ['12 g †', '12_g_†'], ['12 oz †', '12_oz_†'],
    ['3 gates, 4 inside, 5 later', '3 gates, 4 inside, 5 later'], ['Made 14 Marching', 'Made 14 Marching'], ['a g', 'a g'], ['text †', 'text †'],
  ])('%s', (text, wanted) => { expect(bound(text)).toBe(wanted); });
  test('in lists and parts as well; drawings, numbers and truths stay as they are', () => {
    let out: unknown;
    const drawing = '<svg><text>12 g</text></svg>';
    renderHtml({ language: 'en-US', list: ['1 g', { deep: '2 g' }], drawing, large: true, none: null, n: 3 } as never, (view) => { out = view; return ''; });
    expect(out).toEqual({ language: 'en-US', list: ['1\u00A0g', { deep: '2\u00A0g' }], drawing, large: true, none: null, n: 3 });
  });
});

describe('the page of years', () => {
  const point = (taken: string, value: number) => ({ taken, value, low: value - 0.1, high: value + 0.1 });
  const series = { item: 'ph', method: null, unit: 'pH', trend: 'up', jump: false, points: [point('2019-11-05', 5.4), point('2022-11-05', 6.04)], elsewhere: [] };
  const between = { from: '2019-11-05', until: '2022-11-05', N: 46, P2O5: 0, K2O: 0, lime: 0, sulphur: 0, unknown: 0 };
  const of = (...zones: object[]): string => yearsPage(zones as never, { orchard: { name: 'A & B', where: { language: 'en-US', units: 'metric' } }, season: { today: '2026-03-14' } } as never);
  const zone = { zone: 'hill <1>', again: 2028, series: [series, { ...series, item: 'ph-salt', trend: null, points: [point('2022-11-05', 5.44)] }], between: [between, { ...between, from: '2022-11-05', until: '2026-03-14', N: 0 }] };
  test('a figure a value, drawn where there are two tests; what went on; when to test again', () => {
    const html = of(zone);
    const figures = [...html.matchAll(/<figure>(.*?)<figcaption>(.*?)<\/figcaption><\/figure>/g)].map((m) => m.slice(1));
    expect(figures.map((f) => f[1])).toEqual(['soil pH: 5.4 (Nov 2019), 6 (Nov 2022). It rises.', 'soil pH (salt): 5.4 (Nov 2022).']);
    expect([named(figures[0]![0]!, 'text').map((t) => t.text), named(figures[0]![0]!, 'svg')[0]!['aria-label'], figures[1]![0]]).toEqual([['5.4', 'Nov 2019', '6', 'Nov 2022'], 'soil pH: 5.4 (Nov 2019), 6 (Nov 2022). It rises.', '']);
    expect([...html.matchAll(/<(h1|h2|p)>(.*?)<\/\1>/g)].map((m) => m[2])).toEqual(['A &#38; B over the years', 'Made 14 March 2026.', 'hill &#60;1&#62;', '5 November 2019 to 5 November 2022: 46 g N.', '5 November 2022 to 14 March 2026: nothing in the diary.', 'Test again in fall 2028.', 'The bars show how far one lab strays with the same soil. Tests of two labs lie further apart.']);
  });
  test('zone by zone, a whole document in its language, and nothing between the parts', () => {
    const html = of(zone, { ...zone, zone: 'low', series: [], between: [] });
    expect([[...html.matchAll(/<h2>(.*?)<\/h2>/g)].map((m) => m[1]), /<html lang="(.*?)">/.exec(html)![1], /<title>(.*?)<\/title>/.exec(html)![1], html.startsWith('<!doctype html>\n'), html.endsWith('</body></html>\n')]).toEqual([['hill &#60;1&#62;', 'low'], 'en-US', 'A &#38; B over the years', true, true]);
    expect(html.slice(html.indexOf('<body>') + 6).replaceAll(/<figure>.*<\/figure>|<(\w+)>.*<\/\1>/g, '').trim()).toBe('</body></html>');
  });
});

describe('where a template is wrong', () => {
  const place = (source: string) => compileOwn(source, 'own.hbs', 'text').notices[0]!.place;
  // Handlebars counts each of the three ends of a line.
  test.each(['\n', '\r\n', '\r'])('line, column and the line itself, after %j', (end) => { expect(place(`x${end} {{orchrd}}${end}y`)).toEqual({ file: 'own.hbs', line: 2, column: 4, length: 1, source: ' {{orchrd}}' }); });
  test('a loop over something that is no list has nothing of its own to name', () => {
    expect([compileOwn('{{#each words}}{{this}}{{/each}}', 'own.hbs', 'text').notices, place('{{#each words}}{{use}}{{/each}}')!.column]).toEqual([[], 18]);
  });
  const read = (source: string): unknown[] => compileOwn(source, 'own.hbs', 'text').notices.map((n) => n.facts.read);
  // `../` goes up a loop or a part at a time, and above the top there is nothing; `@root` is the top (Handlebars' guide, "Paths", "@data Variables").
  test.each(['{{../orchard}}', '{{#each use}}{{../../orchard}}{{/each}}', '{{#if stop}}{{../orchard}}{{/if}}', '{{..}}', '{{@foo}}', '{{@index}}', '{{#each use}}{{@index.foo}}{{/each}}', '{{#each use}}{{else}}{{@first}}{{/each}}', '{{#with back}}{{@key}}{{/with}}', '{{@root.orchrd}}', '{{#each @root.days}}{{titel}}{{/each}}'])('what would stop the sheet is told before: %s', (source) => {
    expect(read(source)).toEqual([/(\.\.[^}]*|@root\.orchrd|@(?!root)[^}]+|titel)\}\}/.exec(source)![1]]);
  });
  test('the nearest field is offered, two that are as near, or none', () => {
    expect(['{{hot}}', '{{..}}', '{{@foo}}'].map((source) => compileOwn(source, 'own.hbs', 'text').notices[0]!.facts.guess)).toEqual(['how, not', '', '']);
  });
  test('and what runs is let run', () => {
    const run = (source: string): string => compileOwn(source, 'own.hbs', 'text').template!({ orchard: 'O', stop: 'S', use: ['a', 'b'], days: [{ title: 'T', rows: [{ name: 'N' }] }], back: { foot: 'F' } } as never);
    expect([run('{{@root.orchard}}'), run('{{#each @root.days}}{{title}}{{#each rows}}{{name}}{{../title}}{{../../orchard}}{{@root.stop}}{{/each}}{{/each}}'), run('{{#each use}}{{@index}} {{@first}} {{@last}} {{#with ../back}}{{@index}}, {{foot}};{{/with}}{{/each}}'), run('{{#with back}}{{../orchard}}{{#if foot}}{{../orchard}}{{/if}}{{/with}}'), run('{{#each back}}{{@key}}{{/each}}')]).toEqual(['O', 'TNTOS', '0 true false 0, F;1 false true 1, F;', 'OO', 'foot']);
  });
  test('what is not Handlebars at all is told by its first line', () => {
    expect(String(compileOwn('{{#if', 'own.hbs', 'text').notices[0]!.facts.why)).toMatch(/^Parse error on line 1:?$/);
  });
});
