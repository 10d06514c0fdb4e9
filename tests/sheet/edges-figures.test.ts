// The page of all figures, of tables made here: what stands in which cell, by publication and in the order of their names. And text as it stands in HTML.
import { describe, expect, test, vi } from 'vitest';
import { escaped } from '../../src/sheet/escape.ts';
import { figuresPage } from '../../src/sheet/figures.ts';

vi.mock('../../src/tables/sources.ts', () => {
  const sources: Record<string, object> = { unused: { publisher: 'Nobody', title: 'Nothing' }, b: { publisher: 'B & Sons', title: 'Limes', url: 'https://b.example/?a&b', note: 'seen <twice>' }, a: { publisher: 'A', title: 'Trees', year: 1999 } };
  return { SOURCE_IDS: Object.keys(sources), sourceOf: (id: string) => sources[id] };
});
vi.mock('../../src/tables/register.ts', () => {
  const row = (source: string, at: string, mark: string, more: object) => ({ table: 'rates', what: 'sand', value: 1, unit: 'g', label: null, cite: { source, at, mark }, ...more });
  return { register: () => [row('b', 'page 1 & 2', 'read', { table: 'l<s', what: 'clay > loam', value: 1234567.89, unit: 'lb/a"c' }), row('a', 'circle', 'judgement', { value: null, unit: null }), row('b', 'page 3', 'memory', { value: 0.1 + 0.2, label: 'field <crops>' })] };
});

describe('the page of figures', () => {
  const cells = (html: string): string[][] => [...html.matchAll(/<tr>(.*?)<\/tr>/g)].map((m) => [...m[1]!.matchAll(/<t[dh][^>]*>(.*?)<\/t[dh]>/g)].map((c) => c[1]!));
  const HEAD = ['table', 'what', 'value', 'unit', 'where in it', 'how far it was seen'];
  test('a section a publication that is used, in the order of their names, with its address and note', () => {
    const html = figuresPage('en-US', '9.8.7');
    expect([...html.matchAll(/<h2 id="(.*?)">(.*?)<\/h2><p>(.*?)<\/p>/g)].map((m) => m.slice(1))).toEqual([['a', 'A: Trees (1999)', ''], ['b', 'B &#38; Sons: Limes', '<a href="https://b.example/?a&#38;b">https://b.example/?a&#38;b</a> seen &#60;twice&#62;']]);
    expect(html.match(/<table><thead><tr>(?:<th scope="col">[\w ]+<\/th>){6}<\/tr><\/thead><tbody>/g)).toHaveLength(2);
  });
  test('a row a figure: six figures of its value, its place in words, its mark and what it is for', () => {
    expect(cells(figuresPage('en-US', '9.8.7'))).toEqual([
      HEAD, ['rates', 'sand', '', '', 'the area of a circle', 'our judgement'],
      HEAD, ['l&#60;s', 'clay &#62; loam', '1234570', 'lb/a&#34;c', 'page 1 &#38; 2', 'read'], ['rates', 'sand', '0.3', 'g', 'page 3', 'from memory, not yet seen, field &#60;crops&#62;'],
    ]);
  });
  test('how many there are, of how many; a whole document in its language', () => {
    const html = figuresPage('en-US', '9.8.7');
    const TITLE = 'Every figure inside Medlar 9.8.7: 3 figures of 2 publications';
    expect([/<title>(.*?)<\/title>/.exec(html)![1], /<h1>(.*?)<\/h1><p>(Read means .*?)<\/p>/.exec(html)!.slice(1)]).toEqual([TITLE, [TITLE, 'Read means seen in the publication or a copy of it; worked out means plain arithmetic on such a figure. What rests on memory or on our own judgement says so.']]);
    expect([html.startsWith('<!doctype html><html lang="en-US"><head><meta charset="utf-8">'), html.endsWith('</tbody></table></body></html>\n'), /<script|src=/.test(html)]).toEqual([true, true, false]);
  });
});

// Ampersand 38, less 60, more 62, double quote 34, single quote 39 (ASCII).
test('text in HTML', () => { expect(escaped('a & <b> "c" \'d\' é')).toBe('a &#38; &#60;b&#62; &#34;c&#34; &#39;d&#39; é'); });
