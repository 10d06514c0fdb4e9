// The way to the pH that suits: who goes it together, what is said of it, and where each line of its drawing lies, in millimetres worked out by hand.
import { describe, expect, test } from 'vitest';
import type { CurvePoint } from '../../src/ph/curve.ts';
import type { TreePlan } from '../../src/plan.ts';
import { curveGroups, curvesOf } from '../../src/sheet/curves.ts';
import type { CurveDrawing } from '../../src/sheet/drawings.ts';
import { drawCurve } from '../../src/sheet/drawings.ts';
import { elements, fig, limed, named, paths, tree } from './parts.ts';

// From 10 to 61 mm are 51 g/m²; from 19 up to 2.5 mm are 16.5 mm for 1.65 of pH, so a tenth is a millimetre: 5 stands at 19, 6 at 9, 6.5 at 4.
const curve = (more: Partial<CurveDrawing> = {}): string => drawCurve({ now: 5, low: 6, high: 6.65, points: [{ ph: 5, low: 0, high: 0 }, { ph: 6, low: 20, high: 40 }, { ph: 6.5, low: 30, high: 51 }], goals: [6.5], amount: '51 g', label: '"', name: (ph) => `<${ph}`, id: '7', ...more });
const letters = (svg: string): (string | undefined)[][] => named(svg, 'text').map((t) => [t.x, t.y, t['text-anchor'], t.text]);

describe('the drawing', () => {
  test('hatched between dashed lines what suits, as wide as publications lie apart the way, a line down from the goal', () => {
    expect(named(curve(), 'rect').map((r) => [r.x, r.y, r.width, r.height, r.fill])).toEqual([['10', '2.5', '51', '6.5', 'url(#band7)']]);
    expect(paths(curve())).toEqual(['M0 0V3.2', 'M0 0V0.8', 'M10 9H61', 'M10 2.5H61', 'M10 19L30 9L40 4L61 4L50 9L10 19Z', 'M61 4V19', 'M10 2.5V19H61']);
    expect(named(curve(), 'path').map((p) => [p['stroke-dasharray'], p.fill])).toEqual([[undefined, undefined], [undefined, undefined], ['1.2 .8', undefined], ['1.2 .8', undefined], [undefined, 'url(#span7)'], [undefined, undefined], [undefined, 'none']]);
    expect(named(curve(), 'pattern').map((p) => [p.id, p.width, p.height, p.patternTransform])).toEqual([['band7', '3.2', '3.2', 'rotate(45)'], ['span7', '0.8', '0.8', 'rotate(-45)']]);
    expect(named(curve(), 'circle').map((c) => [c.cx, c.cy, c.r])).toEqual([['10', '19', '1']]);
  });
  test('the pH that is there may lie above or below what suits, and the goals on the way each have their line', () => {
    const down = curve({ now: 6.65, low: 5, high: 6, points: [{ ph: 6.65, low: 0, high: 0 }, { ph: 6, low: 20, high: 40 }, { ph: 5.5, low: 30, high: 51 }], goals: [5.5, 6] });
    expect(paths(down).slice(2)).toEqual(['M10 19H61', 'M10 9H61', 'M10 2.5L30 9L40 14L61 14L50 9L10 2.5Z', 'M50 9V19', 'M61 14V19', 'M10 2.5V19H61']);
    expect(named(down, 'circle')[0]!.cy).toBe('2.5');
    // The way alone may reach past what suits: 5 to 6.65 all the same.
    expect(paths(curve({ high: 6.2, points: [{ ph: 5, low: 0, high: 0 }, { ph: 6.65, low: 20, high: 51 }] })).slice(2, 5)).toEqual(['M10 9H61', 'M10 7H61', 'M10 19L30 2.5L61 2.5L10 19Z']);
  });
  test('the present pH is named first, then the edges that stand 4.84 mm or more from what is named', () => {
    expect(letters(curve()).slice(0, 3)).toEqual([['8.4', '20.5', 'end', '&#60;5'], ['8.4', '10.5', 'end', '&#60;6'], ['8.4', '4', 'end', '&#60;6.65']]);
    // 0.45 of pH are 4.5 mm, 0.5 are 5: the high edge goes, or the low one where it stands so near the present.
    expect(letters(curve({ low: 6.2 })).slice(0, -2).map((t) => t[3])).toEqual(['&#60;5', '&#60;6.2']);
    expect(letters(curve({ low: 6.15 })).slice(0, -2).map((t) => t[3])).toEqual(['&#60;5', '&#60;6.15', '&#60;6.65']);
    expect(letters(curve({ low: 5.45 })).slice(0, -2).map((t) => t[3])).toEqual(['&#60;5', '&#60;6.65']);
  });
  test('the amount stands at its end, the nought where that leaves it room', () => {
    expect(letters(curve({ amount: 'a&b' })).slice(3)).toEqual([['10', '24.4', undefined, '0'], ['61', '24.4', 'end', 'a&#38;b']]);
    // 51 mm less one letter of 4.24 hold 46.76 ÷ (0.56 × 4.24) = 19.7 letters.
    expect([19, 20].map((many) => letters(curve({ amount: 'x'.repeat(many) })).length)).toEqual([5, 4]);
    expect(curve({ amount: 'x'.repeat(20) }).replaceAll(/<[^>]*>/g, ' ').trim().split(/ +/)).toEqual(['&#60;5', '&#60;6', '&#60;6.65', 'x'.repeat(20)]);
  });
  test('its frame, with nothing between its elements', () => {
    expect(curve({ goals: [6, 6.5] }).replaceAll(/<[^>]*>/g, ' ').trim().split(/ +/)).toEqual(['&#60;5', '&#60;6', '&#60;6.65', '0', '51', 'g']);
    const [e] = elements(curve());
    expect([e!.class, e!.role, e!['aria-label'], e!.viewBox, e!.width, e!.height, e!['font-size'], e!['font-family'], curve().endsWith('</svg>')]).toEqual(['curve', 'img', '&#34;', '0 0 62 26', '62mm', '26mm', '4.24', 'sans-serif', true]);
  });
});

const way: readonly CurvePoint[] = [{ ph: 5.4, low: 0, high: 0 }, { ph: 6, low: 100, high: 150 }, { ph: 6.5, low: 200, high: 280 }];
const of = (name: string, points: readonly CurvePoint[], more: Parameters<typeof limed>[0] = {}): TreePlan => tree(name, {}, { ph: limed({ curve: points, ...more }) });
const names = (trees: readonly TreePlan[]): string[] => curveGroups(trees).map((g) => g.map((t) => t.tree.name).join(' '));

describe('who goes it together', () => {
  test('plants of a zone whose ways are one, the one that goes furthest first', () => {
    expect(names([of('A', way.slice(0, 2)), of('B', way), of('C', way.slice(0, 2))])).toEqual(['B A C']);
    expect(names([of('A', way), of('B', way, { zone: 'low' })])).toEqual(['A', 'B']);
    expect(names([of('A', way), of('B', way, { plan: { verdict: 'sulphur' } })])).toEqual(['A', 'B']);
    expect(names([of('A', way), of('B', [way[0]!, { ph: 6, low: 100, high: 151 }])])).toEqual(['A', 'B']);
  });
  test('none without lime or sulphur, or with a rate for one goal alone', () => {
    expect(names([tree('A'), of('B', way, { g: 0 }), of('C', way.slice(0, 1)), of('D', []), of('E', way.slice(0, 2))])).toEqual(['E']);
    expect(curvesOf([tree('A')], 'en-US', 'metric')).toEqual([]);
  });
});

describe('what is said of it', () => {
  const said = (trees: readonly TreePlan[]): string[] => curvesOf(trees, 'en-US', 'metric').map((c) => c.text);
  test('lime is dug in so deep, each goal with its plants, a span where publications lie apart', () => {
    expect(said([of('A', way, { plan: { dugIn: { depthM: 0.15 } } }), of('B', way.slice(0, 2), { plan: { dugIn: { depthM: 0.15 } } }), of('C', way, { plan: { dugIn: { depthM: 0.15 } } })]))
      .toEqual(['From pH 5.4 all the way, in pure lime dug in 15 cm deep: A, C 200 to 280 g/m² to 6.5; B 100 to 150 g/m² to 6. Striped: what suits.']);
    expect(said([of('A', [way[0]!, { ph: 6, low: 120, high: 120 }], { plan: { dugIn: { depthM: 0.2 } } })])).toEqual(['From pH 5.4 all the way, in pure lime dug in 20 cm deep: A 120 g/m² to 6. Striped: what suits.']);
    expect(said([of('A', [{ ph: 6.5, low: 0, high: 0 }, { ph: 5, low: 30, high: 60 }], { plan: { verdict: 'sulphur', now: fig(6.5) } })])).toEqual(['From pH 6.5 all the way, in pure sulfur: A 30 to 60 g/m² to 5. Striped: what suits.']);
  });
  test('the drawing is labelled with it, numbered, and ends at the furthest amount', () => {
    const [a, b] = curvesOf([of('A', way), of('B', way, { zone: 'low' })], 'en-US', 'metric');
    expect([named(a!.drawing, 'svg')[0]!['aria-label'], named(a!.drawing, 'text').at(-1)!.text, named(a!.drawing, 'rect')[0]!.fill, named(b!.drawing, 'rect')[0]!.fill]).toEqual([a!.text, '200 to 280 g/m²', 'url(#band0)', 'url(#band1)']);
    // A line down from each goal.
    expect([curvesOf([of('A', way)], 'en-US', 'metric'), curvesOf([of('A', way), of('C', way.slice(0, 2))], 'en-US', 'metric')].map((list) => paths(list[0]!.drawing).filter((d) => /^M\S+ \S+V19$/.test(d)).length)).toEqual([1, 2]);
  });
  // From 5.4 to 7 are 16.5 mm: of pH 6 to 7 the band takes 10.31, of 6.2 to 6.8 it takes 16.5 × 0.6 ÷ 1.4 = 7.07 of a scale to 6.8.
  test('what suits all of them is striped, else what suits the one that goes furthest', () => {
    const band = (low: number, high: number): string => named(curvesOf([of('A', way), of('B', way.slice(0, 2), { plan: { suits: { low, high } } })], 'en-US', 'metric')[0]!.drawing, 'rect')[0]!.height!;
    expect([band(5, 8), band(6.2, 6.8), band(4, 5.5), band(5, 6)]).toEqual(['10.31', '7.07', '10.31', '10.31']);
  });
});
