// The drawings of the sheet in millimetres: each place worked out by hand from the scale that its page allows, at scales where a day, a gram or a tenth of pH is a whole millimetre.
import { describe, expect, test } from 'vitest';
import type { BalanceDrawing, RingDrawing, StripDrawing, YearsDrawing } from '../../src/sheet/drawings.ts';
import { drawBalance, drawRing, drawStrip, drawYears } from '../../src/sheet/drawings.ts';
import { elements, named, paths } from './parts.ts';

/** Nothing is written between the elements of a drawing but its own letters. */
const letters = (svg: string): string => svg.replaceAll(/<[^>]*>/g, ' ').replaceAll(/ +/g, ' ').trim();
/** All is drawn in black; a letter of 12 points is 12 × 25.4 ÷ 72 = 4.23 mm high, 4.24 as the drawings count it. */
const size = (svg: string): (string | undefined)[] => { const [e] = elements(svg); return [e!.name, e!.class, e!.role, e!['aria-label'], e!.viewBox, e!.width, e!.height]; };
const fonts = (svg: string): (string | undefined)[] => [elements(svg)[0]!['font-size'], elements(svg)[0]!['font-family']];

describe('the ring under a tree', () => {
  const ring = (more: Partial<RingDrawing> = {}): string => drawRing({ from: 0.6, to: 5.3, crown: 4, label: 'a & b', id: 'x', ...more });
  const radii = (svg: string): (string | undefined)[] => named(svg, 'circle').map((c) => c.r);
  test('what reaches furthest has 5.3 of the 5.5 mm to the edge; the trunk is a black dot', () => {
    expect(radii(ring())).toEqual(['5.3', '0.6', '4', '.7']);
    // A crown of 10.6 m halves the scale: 5.3 ÷ 10.6.
    expect(radii(ring({ crown: 10.6, from: 1 }))).toEqual(['2.65', '0.5', '5.3', '.7']);
    // A third of 5.3 is 1.7667.
    expect(radii(ring({ from: 1, to: 3, crown: 2 }))).toEqual(['5.3', '1.77', '3.53', '.7']);
  });
  test('hatched ring, white keep-off disc, dashed crown, all about the middle', () => {
    expect(size(ring())).toEqual(['svg', 'ring', 'img', 'a &#38; b', '0 0 11 11', '11mm', '11mm']);
    const circles = named(ring(), 'circle');
    expect(circles.map((c) => [c.cx, c.cy, c.fill, c['stroke-dasharray']])).toEqual([['5.5', '5.5', 'url(#hx)', undefined], ['5.5', '5.5', '#fff', undefined], ['5.5', '5.5', 'none', '1.2 .8'], ['5.5', '5.5', undefined, undefined]]);
    expect([named(ring(), 'pattern')[0]!.id, paths(ring()), ring().endsWith('</svg>')]).toEqual(['hx', ['M0 0V1.2'], true]);
  });
});

describe('the season as a strip', () => {
  // 178 mm for 178 days: 1 March to 26 August 2026.
  const strip = (more: Partial<StripDrawing> = {}): string => drawStrip({ start: '2026-03-01', end: '2026-08-26', windows: [], stop: '2026-07-01', stopText: 'STOP', months: ['J', 'F', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'O', 'N', 'D'], label: 'l<', ...more });
  const months = (svg: string): string[][] => named(svg, 'text').filter((t) => t.y === '19').map((t) => [t.x!, t.text]);
  const marks = (svg: string): string[] => paths(svg).filter((d) => d.endsWith(' 8V11'));
  test('a month is marked at its first day and named a millimetre after', () => {
    // 31 days of March, 30 of April, 31, 30, 31.
    expect(marks(strip())).toEqual(['M0 8V11', 'M31 8V11', 'M61 8V11', 'M92 8V11', 'M122 8V11', 'M153 8V11']);
    expect(months(strip())).toEqual([['1', 'Mar'], ['32', 'Apr'], ['62', 'May'], ['93', 'Jun'], ['123', 'Jul'], ['154', 'Aug']]);
    // From the middle of a month the next mark is its end all the same; the new year follows December.
    expect(months(strip({ start: '2025-12-15', end: '2026-06-11' }))).toEqual([['1', 'D'], ['18', 'J'], ['49', 'F'], ['77', 'Mar'], ['108', 'Apr'], ['138', 'May']]);
  });
  // 1 March to 26 August are 178 days on 178 mm: 1 July is the 122nd. A capital is 0.72 of its height wide (practice), so the word takes 12.2 mm behind the bar, 123.5 to 135.7, or before it 108.3 to 120.5, and a number half a letter to either side.
  test.each([['2026-07-05', '2026-07-15', '120.5', 'end'], ['2026-06-28', '2026-06-30', '123.5', undefined], ['2026-06-20', '2026-06-28', '123.5', undefined], ['2026-07-20', '2026-07-30', '123.5', undefined], ['2026-07-10', '2026-07-20', '120.5', 'end'], ['2026-07-13', '2026-07-23', '123.5', undefined]])('with a window from %s to %s the word at the last day begins or ends at %s', (from, until, at, anchor) => {
    const word = named(strip({ windows: [{ from, until, text: '3' }] }), 'text').find((t) => t.text === 'STOP')!;
    expect([word.x, word['text-anchor']]).toEqual([at, anchor]);
  });
  test('between two windows there is no better place', () => {
    const word = named(strip({ windows: [{ from: '2026-06-15', until: '2026-06-25', text: '2' }, { from: '2026-07-05', until: '2026-07-15', text: '3' }] }), 'text').find((t) => t.text === 'STOP')!;
    expect([word.x, word['text-anchor']]).toEqual(['123.5', undefined]);
  });
  test('a month that begins on the last day is none of the strip; one within 12 mm of the edge has no name', () => {
    // 1 March to 1 August are 153 days.
    expect(marks(strip({ end: '2026-08-01' }))).toHaveLength(5);
    expect(months(strip({ start: '2026-02-16', end: '2026-08-13' })).at(-1)).toEqual(['136', 'Jul']);
    expect([marks(strip({ start: '2026-02-16', end: '2026-08-13' })).at(-1), letters(strip({ start: '2026-02-16', end: '2026-08-13' }))]).toEqual(['M166 8V11', 'STOP F Mar Apr May Jun Jul']);
    expect(months(strip({ start: '2026-02-17', end: '2026-08-14' })).at(-1)).toEqual(['166', 'Aug']);
  });
  test('a window is a box as long as it lasts, three millimetres at least, within the strip, its number above the middle', () => {
    const boxes = (from: string, until: string): (string | undefined)[] => { const svg = strip({ windows: [{ from, until, text: '1&' }] }); const r = named(svg, 'rect')[1]!; const t = named(svg, 'text')[1]!; return [r.x, r.width, r.y, r.height, r.fill, t.x, t.y, t['text-anchor'], t.text]; };
    expect(boxes('2026-04-01', '2026-04-11')).toEqual(['31', '10', '8', '6', '#fff', '36', '6.6', 'middle', '1&#38;']);
    expect(boxes('2026-04-01', '2026-04-02').slice(0, 2)).toEqual(['31', '3']);
    expect(boxes('2026-02-01', '2026-03-11').slice(0, 2)).toEqual(['0', '10']);
    expect(boxes('2026-08-16', '2026-10-11').slice(0, 2)).toEqual(['168', '10']);
  });
  test('from the last day on all is hatched, and the word stays on the strip', () => {
    const stop = (at: string): (string | undefined)[] => { const svg = strip({ stop: at }); const r = named(svg, 'rect')[0]!; return [r.x, r.width, r.fill, named(svg, 'text')[0]!.x, named(svg, 'text')[0]!.text, paths(svg)[2]]; };
    expect(stop('2026-07-01')).toEqual(['122', '56', 'url(#stop)', '123.5', 'STOP', 'M122 2V14']);
    // Sixteen millimetres before the edge at the latest.
    expect(stop('2026-08-20')).toEqual(['172', '6', 'url(#stop)', '162', 'STOP', 'M172 2V14']);
  });
  test('on a line across the page', () => {
    expect(letters(strip({ windows: [{ from: '2026-04-01', until: '2026-04-11', text: '1' }, { from: '2026-05-01', until: '2026-05-11', text: '2' }] }))).toBe('STOP 1 2 Mar Apr May Jun Jul Aug');
    expect([size(strip()), fonts(strip())]).toEqual([['svg', 'strip', 'img', 'l&#60;', '0 0 178 20', '100%', undefined], ['4.24', 'sans-serif']]);
    expect([named(strip(), 'pattern')[0]!.id, ...paths(strip()).slice(0, 2), strip().endsWith('</svg>')]).toEqual(['stop', 'M0 0V1.4', 'M0 14H178', true]);
    expect([strip({ stopText: '<', months: Array.from({ length: 12 }, () => '<') }).match(/&#60;<\/text>/g)!.length]).toEqual([7]);
  });
});

describe('the years of a value', () => {
  // From 12 to 166 mm are 154 days, 1 March to 2 August; from 30 up to 9 mm are 21 of the value, so long as the greatest is 21.
  const years = (points: readonly (readonly [string, number, number, number])[], more: Partial<YearsDrawing> = {}): string => drawYears({ points: points.map(([taken, value, low, high]) => ({ taken, value, low, high })), label: 'l"', name: (x) => `${x}&`, when: (d) => `<${d}`, ...more });
  const two = [['2026-03-01', 10, 9, 11], ['2026-08-02', 20, 19, 21]] as const;
  test('a point at its day and value, joined by a dashed line; a bar as long as the lab strays', () => {
    expect(paths(years(two))).toEqual(['M6 30H172', 'M12 20L166 10', 'M12 21V19M10.5 21h3M10.5 19h3', 'M166 11V9M164.5 11h3M164.5 9h3']);
    expect(named(years(two), 'circle').map((c) => [c.cx, c.cy, c.r])).toEqual([['12', '20', '1.1'], ['166', '10', '1.1']]);
    expect(named(years(two), 'path')[1]!['stroke-dasharray']).toBe('1.6 1');
  });
  test('the value above its bar, the month at the foot', () => {
    expect(letters(years(two))).toBe('10&#38; &#60;2026-03-01 20&#38; &#60;2026-08-02');
    expect(named(years(two), 'text').map((t) => [t.x, t.y, t['text-anchor'], t.text])).toEqual([['12', '17.5', 'middle', '10&#38;'], ['12', '35.4', 'middle', '&#60;2026-03-01'], ['166', '7.5', 'middle', '20&#38;'], ['166', '35.4', 'middle', '&#60;2026-08-02']]);
    expect([size(years(two)), fonts(years(two)), years(two).endsWith('</svg>')]).toEqual([['svg', 'years', 'img', 'l&#34;', '0 0 178 37', undefined, undefined], ['4.24', 'sans-serif'], true]);
  });
  test('names under 20 mm apart run into each other: the newer keeps its own', () => {
    const third = (taken: string): string[] => named(years([two[0], [taken, 15, 14, 16], two[1]]), 'text').filter((t) => t.y === '35.4').map((t) => t.text.slice(5));
    // 134 and 135 days after the first, 20 and 19 before the last.
    expect(third('2026-07-13')).toEqual(['2026-03-01', '2026-07-13', '2026-08-02']);
    expect(third('2026-07-14')).toEqual(['2026-03-01', '2026-08-02']);
  });
  test('the scale begins at nought, or a quarter of their span below values that lie far from it', () => {
    const heights = (low: number, value: number, high: number): string[] => named(years([['2026-03-01', value, low, high], ['2026-08-02', high, high, high]]), 'circle').map((c) => c.cy!);
    // Half of the greatest is not far from nought: 75 of 100 stand at 30 - 0.75 × 21.
    expect(heights(50, 75, 100)).toEqual(['14.25', '9']);
    // 80 to 100 span 20, so the floor is 75 and 90 stands at 30 - 15/25 × 21.
    expect(heights(80, 90, 100)).toEqual(['17.4', '9']);
  });
  test('one test, no scatter and nought are drawn, too', () => {
    const at = (value: number, low = value, high = value): (string | undefined)[] => { const [c] = named(years([['2026-03-01', value, low, high]]), 'circle'); return [c!.cx, c!.cy]; };
    expect([at(20, 10, 21), at(5), at(0)]).toEqual([['12', '10'], ['12', '30'], ['12', '30']]);
  });
});

describe('need against supply', () => {
  // 102 g on the 102 mm from 16 to 118.
  const balance = (rows: BalanceDrawing['rows']): string => drawBalance({ rows, label: 'l>', id: 'x' });
  const rows: BalanceDrawing['rows'] = [{ name: 'N', need: 51, supply: 102, span: [10, 90] }, { name: 'K<', need: 30, supply: 0, span: null }];
  test('supply hatched, need outlined, seven millimetres a row', () => {
    expect(named(balance(rows), 'rect').map((r) => [r.x, r.y, r.width, r.height, r.fill])).toEqual([['16', '1.6', '102', '3.2', 'url(#bx)'], ['16', '1.6', '51', '3.2', 'none'], ['16', '8.6', '0', '3.2', 'url(#bx)'], ['16', '8.6', '30', '3.2', 'none']]);
    expect(named(balance(rows), 'text').map((t) => [t.x, t.y, t.text])).toEqual([['0', '4.8', 'N'], ['0', '11.8', 'K&#60;']]);
    expect([size(balance(rows)), fonts(balance(rows)), balance(rows).endsWith('</svg>')]).toEqual([['svg', 'balance', 'img', 'l&#62;', '0 0 120 15', '120mm', '15mm'], ['4.24', 'sans-serif'], true]);
  });
  test('other leaflets as a line with ends, which may be the longest', () => {
    expect([named(balance(rows), 'pattern')[0]!.id, ...paths(balance(rows))]).toEqual(['bx', 'M0 0V1', 'M26 6.6H106M26 5.8v1.6M106 5.8v1.6']);
    expect(named(balance([{ name: 'N', need: 51, supply: 20, span: [10, 204] }]), 'rect').map((r) => r.width)).toEqual(['10', '25.5']);
  });
  test('of nothing, nothing', () => { expect([letters(balance(rows)), letters(balance([]))]).toEqual(['N K&#60;', '']); expect(named(balance([{ name: 'N', need: 0, supply: 0, span: null }]), 'rect').map((r) => r.width)).toEqual(['0', '0']); });
});
