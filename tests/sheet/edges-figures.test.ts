// The page of all figures, of rows made here: what stands in which cell, by publication and in the order of their names. And text as it stands in HTML.
import { describe, expect, test } from 'vitest';
import { escaped } from '../../src/sheet/escape.ts';
import { figuresPage } from '../../src/sheet/figures.ts';
import type { Row } from '../../src/tables/register.ts';

// Publications of the sources table: with address, year and note; with a note alone; with an address alone.
const [MEXICO, KANSAS, PENN] = ['new-mexico-nrcs-76', 'kansas-mf2586', 'penn-stone'];
const row = (source: string, at: string, mark: string, more: object = {}): Row => ({ table: 'rates', what: 'sand', value: 1, unit: 'g', label: null, cite: { source, at, mark }, ...more }) as unknown as Row;
const page = (): string => figuresPage('en-US', '9.8.7', [
  row(PENN, 'page 1 & 2', 'read', { table: 'l<s', what: 'clay > loam', value: 1234567.89, unit: 'lb/a"c' }), row(MEXICO, 'circle', 'judgement', { value: null, unit: null }), row(KANSAS, 'page 2', 'derived'), row(PENN, 'page 3', 'memory', { value: 0.1 + 0.2, label: 'field <crops>' }),
]);
const cells = (html: string): string[][] => [...html.matchAll(/<tr>(.*?)<\/tr>/g)].map((m) => [...m[1]!.matchAll(/<t[dh][^>]*>(.*?)<\/t[dh]>/g)].map((c) => c[1]!));
const HEAD = ['table', 'what', 'value', 'unit', 'where in it', 'how far it was seen'];

describe('the page of figures', () => {
  test('a section a publication that is used, in the order of their names, with its address and note', () => {
    const html = page();
    const link = (url: string): string => `<a href="${url}">${url}</a> `;
    expect([...html.matchAll(/<h2 id="(.*?)">(.*?)<\/h2><p>(.*?)<\/p>/g)].map((m) => m.slice(1))).toEqual([
      ['kansas-mf2586', 'Kansas State University: MF-2586, Soil Test Interpretations and Fertilizer Recommendations', 'recalled'],
      ['penn-stone', 'Penn State Extension: Stone Fruit: Nutritional Requirements, Fruit Production for the Home Gardener', link('http://extension.psu.edu/plants/gardening/fphg/stone/nutritional-requirements')],
      ['new-mexico-nrcs-76', 'USDA NRCS New Mexico: Agronomy Technical Note 76, Nitrogen Fertilizer Guide (2000)', `${link('https://docslib.org/doc/3058196')}read in a copy`],
    ]);
    expect(html.match(/<table><thead><tr>(?:<th scope="col">[\w ]+<\/th>){6}<\/tr><\/thead><tbody>/g)).toHaveLength(3);
  });
  test('a row a figure: six figures of its value, its place in words, its mark and what it is for', () => {
    expect(cells(page())).toEqual([
      HEAD, ['rates', 'sand', '1', 'g', 'page 2', 'worked out from it'],
      HEAD, ['l&#60;s', 'clay &#62; loam', '1234570', 'lb/a&#34;c', 'page 1 &#38; 2', 'read'], ['rates', 'sand', '0.3', 'g', 'page 3', 'from memory, not yet seen, field &#60;crops&#62;'],
      HEAD, ['rates', 'sand', '', '', 'the area of a circle', 'our judgement'],
    ]);
  });
  test('how many there are, of how many; a whole document in its language, and nothing between the parts', () => {
    const html = page();
    const TITLE = 'Every figure inside Medlar 9.8.7: 4 figures of 3 publications';
    expect([/<title>(.*?)<\/title>/.exec(html)![1], /<h1>(.*?)<\/h1><p>(Read means .*?)<\/p><h2/.exec(html)!.slice(1)]).toEqual([TITLE, [TITLE, 'Read means seen in the publication or a copy of it; worked out means plain arithmetic on such a figure. What rests on memory or on our own judgement says so.']]);
    expect([html.startsWith('<!doctype html><html lang="en-US"><head><meta charset="utf-8">'), html.endsWith('</tr></tbody></table></body></html>\n'), /<script|src=/.test(html), html.match(/<\/tr><tr>/g)!.length, html.match(/<\/table><h2/g)!.length]).toEqual([true, true, false, 1, 2]);
  });
});

// Ampersand 38, less 60, more 62, double quote 34, single quote 39 (ASCII).
test('text in HTML', () => { expect(escaped('a & <b> "c" \'d\' é')).toBe('a &#38; &#60;b&#62; &#34;c&#34; &#39;d&#39; é'); });
