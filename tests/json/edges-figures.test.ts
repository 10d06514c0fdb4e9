// A figure as its arithmetic and as a sentence: each line here is the sum done by hand, in the units of the reckoning or of the grower.
import { describe, expect, test } from 'vitest';
import { collector } from '../../src/json/figures.ts';
import { citeOf, reasonOf, valueOf } from '../../src/json/reason.ts';
import { sumOf } from '../../src/json/sum.ts';
import type { Figure } from '../../src/reason/figure.ts';
import { figure } from '../../src/reason/figure.ts';
import type { Substance } from '../../src/units/substance.ts';
import type { Unit } from '../../src/units/units.ts';

const CITE = { source: 'made', at: 'made', mark: 'read' } as const;
const fig = (value: number, unit: Unit, step: Figure['step'] = 'told', from: Figure[] = [], of: Substance = 'soil'): Figure => figure(value, unit, of, step, CITE, from);
const m = (x: number): Figure => fig(x, 'm');
const g = (x: number, of: Substance = 'N'): Figure => fig(x, 'g', 'told', [], of);
const L = 'en-US';

describe('the arithmetic of a step', () => {
  test.each<[Figure, string]>([
    // π/4 × 16 = 12.57; π × (4 - 1) = 9.425; 6 ÷ π = 1.910.
    [fig(12.566371, 'm2', 'crown-area', [m(4)]), '12.57 m² = π/4 × (4 m)²'], [fig(9.424778, 'm2', 'ring-area', [m(1), m(2)]), '9.425 m² = π × ((2 m)² - (1 m)²)'],
    [fig(12, 'm2', 'spacing-share', [m(4), m(3)]), '12 m² = 4 m × 3 m'], [fig(0.5, 'm2', 'bed-share', [m(4), m(2)]), '0.5 m² = 4 m × 2 m ÷ 16'], [fig(1.9098593, 'm', 'girth-to-diameter', [m(6)]), '1.91 m = 6 m ÷ π'],
    // Half of four metres times 1.25.
    [fig(2.5, 'm', 'ring-outer', [m(4)]), '2.5 m = 4 m ÷ 2 × 1.25'], [fig(2, 'm', 'smallest', [m(3), m(2)]), '2 m = min(3 m, 2 m)'],
    ...(['organic-half', 'clover-half', 'blight-half', 'lost-crop', 'young-half'] as const).map((step): [Figure, string] => [fig(5, 'g', step, [g(10)], 'N'), '5 g N = 10 g N ÷ 2']),
    ...(['less-compost', 'less-carried'] as const).map((step): [Figure, string] => [fig(7, 'g', step, [g(10), g(3)], 'N'), '7 g N = 10 g N - 3 g N']),
    [fig(12, 'g', 'leaf-raise', [g(10, 'K2O')], 'K2O'), '12 g K2O = 10 g K2O × 1.2'], [fig(20, 'g', 'twice-removal', [g(10, 'K2O')], 'K2O'), '20 g K2O = 2 × 10 g K2O'],
    [fig(6, 'g/m2', 'lab-advice', [fig(3, 'g/m2'), m(2)]), '6 g/m² = 3 g/m² × 2 m'],
    // 10.5 × 7 = 73.5.
    ...(['rule', 'per-area', 'dug-in', 'removal', 'tub', 'compost-brings', 'carried-brings'] as const).map((step): [Figure, string] => [fig(73.5, 'g', step, [fig(10.5, 'm2')], 'N'), '73.5 g N = 10.5 m² × 7 g/m2']),
    ...(['dose', 'dose-split', 'dose-late', 'dose-half', 'dose-cut'] as const).map((step): [Figure, string] => [fig(50, 'g', step, [g(10)], 'N'), '50 g N = 10 g N × 5']),
    // Of nothing no share can be told.
    [fig(3, 'g', 'rule', [fig(0, 'm2')], 'N'), '3 g N = 0 m²'], [fig(3, 'g', 'dose', [g(0)], 'N'), '3 g N = 0 g N'],
    // What was taken: the first if it is that, else the second, or the first where there is no other.
    ...(['growth-short', 'repeat', 'bounded'] as const).flatMap((step): [Figure, string][] => [[fig(5, 'g', step, [g(5), g(4)], 'N'), '5 g N'], [fig(5, 'g', step, [g(4), g(3)], 'N'), '5 g N = 3 g N'], [fig(5, 'g', step, [g(4)], 'N'), '5 g N = 4 g N']]),
    [fig(5, 'g', 'rule-capped', [g(9)], 'N'), '5 g N'],
    // A look-up shows what it looked up, and nothing twice.
    [fig(5, 'g', 'told', [m(1), m(2)], 'P2O5'), '5 g P2O5 = 1 m, 2 m'], [fig(5, 'g', 'told', [g(5)], 'N'), '5 g N'], [fig(5, 'g', 'told', [], 'MgO'), '5 g MgO'], [fig(5, 'g', 'told', [], 'lime'), '5 g'],
    // Four figures.
    [fig(1234.56, 'g', 'twice-removal', [g(617.28)], 'N'), '1235 g N = 2 × 617.3 g N'], [fig(10, 'g', 'dose', [g(3)], 'N'), '10 g N = 3 g N × 3.333'],
  ])('%#: %s', (f, wanted) => { expect(sumOf(f, L)).toBe(wanted); });
});

describe('a value in the grower\'s units', () => {
  test.each<[Figure, string, string]>([
    // An ounce is 28.349523 g, a pound 16 of them, an inch 2.54 cm, a foot 12 inches, a US gallon 3.785411784 l; two pounds are shown as pounds.
    [g(56.699046), '2 oz N', '57 g N'], [g(56.699046, 'P2O5'), '2 oz P2O5', '57 g P2O5'], [g(56.699046, 'K2O'), '2 oz K2O', '57 g K2O'], [g(56.699046, 'MgO'), '2 oz MgO', '57 g MgO'],
    [g(907.18474, 'lime'), '2 lb', '907 g'], [fig(5, 'g', 'dilute', [], 'product'), '5 g', '5 g'],
    [fig(0.254, 'm', 'told', [], 'growth'), '10 in', '25 cm'], [fig(0.254, 'm', 'told', [], 'trunk'), '10 in', '25 cm'], [fig(0.2032, 'm', 'told', [], 'soil'), '8 in', '20 cm'], [fig(3.048, 'm', 'told', [], 'crown'), '10 ft', '3 m'],
    // 1000 sq ft are 92.90304 m²: 50 g/m² there are 4645 g or 10.24 lb.
    [fig(50, 'g/m2', 'told', [], 'lime'), '10.2 lb/1,000 sq ft', '50 g/m²'], [fig(50, 'g/m2', 'told', [], 'sulphur'), '10.2 lb/1,000 sq ft', '50 g/m²'], [fig(50, 'g/m2', 'told', [], 'N'), '50 g/m²', '50 g/m²'],
    [fig(9.290304, 'm2'), '100 sq ft', '9.29 m²'], [fig(1, 'year'), '1 year', '1 year'], [fig(4, 'year'), '4 years', '4 years'], [fig(6.456, 'pH'), '6.46', '6.46'], [fig(7.570823568, 'L'), '2 gal', '7.5 L'],
    // From four weeks on in weeks, where they are whole.
    [fig(-14, 'day'), '14 days before', '14 days before'], [fig(-27, 'day'), '27 days before', '27 days before'], [fig(-28, 'day'), '4 weeks before', '4 weeks before'], [fig(28, 'day'), '4 weeks after', '4 weeks after'], [fig(38, 'day'), '38 days after', '38 days after'], [fig(84, 'day'), '12 weeks after', '12 weeks after'], [fig(0, 'day'), '0 days after', '0 days after'],
    [fig(3.5, 'mg/kg'), '3.5 mg/kg', '3.5 mg/kg'],
  ])('%#: %s, %s', (f, us, metric) => { expect([valueOf(f, L, 'us'), valueOf(f, L, 'metric')]).toEqual([us, metric]); });
  test('filled into the sentence of its step', () => {
    expect(reasonOf(fig(12.566371, 'm2', 'crown-area', [fig(4, 'm', 'told', [], 'crown')]), L, 'metric')).toBe('A crown 4 m across covers 12.57 m².');
    expect(reasonOf({ ...m(4), others: [] }, L, 'metric')).toBe(reasonOf(m(4), L, 'metric'));
  });
  test('what others say, each time once with all of its places', () => {
    const f = { ...fig(3, 'm', 'told', [], 'crown'), others: [{ said: 'january', region: 'US-MI' }, { said: 'march', region: 'US-KS' }, { said: 'january', region: 'US-IA' }, { said: 'january', region: 'US-MI' }] } as Figure;
    expect(reasonOf(f, L, 'metric')).toBe('3 m: you wrote it. Other publications: January (Michigan, Iowa); March (Kansas).');
    const labelled = { ...f, others: [{ said: 'january', region: 'US-MI', label: 'weak' }, { said: 'january', region: 'US-OH', label: 'orchard' }] } as Figure;
    expect(reasonOf(labelled, L, 'metric')).toContain('January (Michigan, a weak page, Ohio, for orchards).');
  });
  test('its source', () => {
    expect(citeOf({ source: 'in no table', at: 'A', mark: 'read' }, L)).toBe('A');
    expect(citeOf({ source: 'medlar', at: 'no such reason', mark: 'judgement' }, L)).toBe('no such reason (our judgement)');
    expect(citeOf({ source: 'colorado-7612', at: 'page 2', mark: 'memory' }, L)).toMatch(/^Colorado State University.*, .* \(page 2; from memory, not yet seen\)$/);
  });
});

test('figures by number, each once, whatever it stands under', () => {
  const base = m(4);
  const area = fig(12.566371, 'm2', 'crown-area', [base]);
  const c = collector(L, 'metric');
  // The area is met first; what it came from follows, and keeps its number when it is met again.
  expect([c.id(area), c.id(base), c.id(m(4)), c.id(area)]).toEqual(['f1', 'f2', 'f3', 'f1']);
  expect(c.all().f1).toEqual({ value: 12.566371, unit: 'm2', of: 'soil', step: 'crown-area', text: 'A crown 400 cm across covers 12.57 m².', from: ['f2'], cite: CITE });
  expect([Object.keys(c.all()), c.all().f2!.from, c.figure('f2') === base, c.figure('f9')]).toEqual([['f1', 'f2', 'f3'], [], true, undefined]);
});
