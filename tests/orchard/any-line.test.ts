// Any line of facts, any label, any file: a result or a mistake at a place that exists. Measures: design.md 5, by definition.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadOrchard } from '../../src/orchard/load.ts';
import { lengthOf, massOf, numberOf, volumeOf } from '../../src/orchard/measure.ts';
import { parseWhere } from '../../src/orchard/where.ts';

describe('measures', () => {
  test.each([['12 ft', 3.6576], ['5 ft 6 in', 1.6764], ['1 1/2 m', 1.5], ['2,5 m', 2.5], ['2.5m', 2.5], ['11 in', 0.2794], ['18 cm', 0.18], ['1/2 ft', 0.1524], ['6"', 0.1524], ['40 mm', 0.04], ['12 FT', 3.6576]] as const)('%s', (text, m) => {
    expect(lengthOf(text)).toBeCloseTo(m, 10);
  });
  test.each([['40 lb', 18_143.6948], ['8 oz', 226.796185], ['2 kg', 2000], ['1/2 lb', 226.796185]] as const)('%s', (text, g) => { expect(massOf(text)).toBeCloseTo(g, 6); });
  test('60 L, 15 gal', () => {
    expect(volumeOf('60 L')).toBe(60);
    expect(volumeOf('15 gal')).toBeCloseTo(56.781, 3);
  });
  test('a comma before exactly three digits can be read two ways', () => { expect(numberOf('1,250')).toEqual({ unclear: '1,250' }); });
  test.each(['', 'ft', '12', '12 f', '-3 m', '1e5 m', '12 ft ft', '12 ft 6', '１２ ft', 'NaN m', 'Infinity m', '1/0 m', '12  parsecs'])('%j is no length', (text) => { expect(lengthOf(text)).toBeNull(); });
});

test('any file: never an exception, every place exists', () => {
  const words = fc.constantFrom('trees:', '  A:', 'apple', ', ', ',', 'planted 2019', '12 ft across', 'where: Ohio, US', '\n', '\n  ', 'soil:', ' #', ' #2', ': ', '- ', '{', '}', '[', ']', '"', '\'', '|', '>', '&a', '*a', '!!x', '<<', '?', '---', '\t', '💧', 'bud-break: 12 April', 'store:', '10-10-10, 4 lb', 'mulch', 'shoots 6 in', '%', '@', '__proto__: x', 'x.txt');
  const text = fc.oneof(fc.string({ maxLength: 200 }), fc.array(words, { maxLength: 40 }).map((w) => w.join('')), fc.array(words, { maxLength: 40 }).map((w) => `trees:\n  A: apple\n${w.join('')}`));
  fc.assert(fc.property(text, (source) => {
    const { orchard, notices } = loadOrchard(source, 'orchard.yaml');
    const lines = source.split(/\r\n|\n|\r/);
    if (orchard === null) expect(notices.some((n) => n.severity === 'error')).toBe(true);
    else expect(notices.every((n) => n.severity !== 'error')).toBe(true);
    for (const { place } of notices) {
      if (!place) continue;
      expect(place.line).toBeGreaterThanOrEqual(1);
      expect(place.line).toBeLessThanOrEqual(lines.length + 1);
      expect(place.column).toBeGreaterThanOrEqual(1);
      expect(place.column).toBeLessThanOrEqual([...(lines[place.line - 1] ?? '')].length + 1);
    }
  }), { numRuns: 1500 });
});

test('facts stand in any order, in either case, on a line or as a mapping', () => {
  const FACTS = ['apple', 'semi-dwarf', 'planted 2019', 'trunk 11 in round', '12 ft across', 'shoots 6 in 2025', 'mulch'];
  const tree = (yaml: string): unknown => {
    const { place: _, ...rest } = loadOrchard(`trees:\n${yaml}`, 'o').orchard!.trees[0]!;
    return rest;
  };
  const one = tree(`  A: ${FACTS.join(', ')}\n`);
  fc.assert(fc.property(fc.shuffledSubarray(FACTS, { minLength: FACTS.length }), (facts) => {
    expect(tree(`  A: ${facts.join(', ')}\n`)).toEqual(one);
    expect(tree(`  A: ${facts.join(',  ').toUpperCase()}\n`)).toEqual(one);
  }), { numRuns: 60 });
  expect(tree('  A:\n    crop: apple\n    size: semi-dwarf\n    planted: 2019\n    trunk: 11 in round\n    across: 12 ft\n    shoots: 6 in 2025\n    mulch: true\n')).toEqual(one);
});

test('where: units, paper and hemisphere of a country (design.md 5)', () => {
  expect(parseWhere('Ohio, US')).toMatchObject({ units: 'us', paper: 'letter', south: false, language: 'en-US' });
  expect(parseWhere('Tasmania, Australia')).toMatchObject({ units: 'metric', paper: 'a4', south: true, language: 'en-GB' });
  expect(parseWhere('Kent, UK')).toMatchObject({ units: 'metric', paper: 'a4', south: false });
  expect(parseWhere('Atlantis')).toBeNull();
  expect(parseWhere('')).toBeNull();
});
